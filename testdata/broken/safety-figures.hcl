formula "t" {
  filling "f" {
    ph = 15
    water_activity = 1.2
    ingredients = { "whole milk" = "500 g" }
    steps = [
      { chill = "4 h", at = "fridge", by = "ice bth" },
      { store = "-3 day", at = "fridge" },
    ]
  }
}
