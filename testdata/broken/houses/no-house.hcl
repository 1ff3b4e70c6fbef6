kitchen {
  room = "22 C"
}
