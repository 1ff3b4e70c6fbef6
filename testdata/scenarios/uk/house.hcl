house "A kitchen in England" {
  kitchen {
    code   = "uk"
    room   = "21 C"
    fridge = "4 C"
  }
}
