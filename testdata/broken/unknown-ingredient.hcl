formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour" = "500 g"
      "caster suger" = "50 g"
      "quandong flour"      = "5 g"
    }
  }
}
