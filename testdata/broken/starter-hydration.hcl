formula "Panettone" {
  dough "first dough" {
    ingredients = {
      "bread flour"   = { amount = "500 g", hydration = "50 %" }
      "stiff starter" = { amount = "100 g", hydration = "12 %" }
      "lievito madre" = { amount = "100 g", hydration = "45 g" }
      "glucose syrup" = { amount = "100 g", de = 60 }
      "sugar"         = { amount = "100 g", de = 42 }
    }
  }
}
