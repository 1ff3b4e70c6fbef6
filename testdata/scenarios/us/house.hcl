house "A kitchen under the Food Code" {
  kitchen {
    code   = "us-food-code"
    room   = "22 C"
    fridge = "3 C"
  }
}
