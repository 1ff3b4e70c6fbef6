house "A kitchen with a warm fridge" {
  kitchen {
    fridge = "7 C"
  }
}
