formula "Syrup" {
  syrup "citrus syrup" {
    ingredients = {
      "water" = "100 g"
      "sugar" = "80 %"
    }
  }
}
