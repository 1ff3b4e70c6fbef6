formula "Rolls" {
  dough "roll dough" {
    ingredients = {
      "bread flour" = "500 g"
      "the spong"   = "all"
      "the butter"  = "50 g"
      "water"       = "all"
    }
    steps = [
      { fill = "the nut filling" },
      { brush = "glaze" },
    ]
  }
  preferment "sponge" { ingredients = { "bread flour" = "100 g", "water" = "100 g" } }
}
