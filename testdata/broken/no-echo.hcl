formula "One fault each" {
  dough "main" {
    ingredients = {
      "the sponge" = "all"
      "salt"       = "2 %"
    }
  }
  dough "second" { ingredients = { "the sponge" = "20 g", "bread flour" = "80 %" } }
  dough "third" { ingredients = { "the starter" = "20 g", "sugar" = "8 %" } }
  preferment "sponge" { ingredients = { "bread flour" = "200", "water" = "200 g" } }
  preferment "starter" { ingredients = { "bred flour" = "200 g", "water" = "100 %" } }
}
