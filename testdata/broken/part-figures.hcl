formula "Custard" {
  filling "custard" {
    ph             = 15
    water_activity = 1.2
    ingredients    = ["whole milk", "egg"]
    steps          = { cook = "5 min" }
  }
  dough {
    ingredients = { "bread flour" = "500 g" }
  }
  dough "a" "b" {
    ingredients = { "bread flour" = "500 g" }
  }
  dough = "c"
}
