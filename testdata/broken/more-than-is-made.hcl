formula "Rolls" {
  dough "roll dough" { ingredients = { "bread flour" = "500 g", "the sponge" = "450 g" } }
  dough "little one" { ingredients = { "bread flour" = "500 g", "the sponge" = "20 %" } }
  dough "third" { ingredients = { "bread flour" = "500 g", "the sponge" = { amount = "all", strain = "osmotolerant" } } }
  preferment "sponge" { ingredients = { "bread flour" = "100 g", "water" = "100 g" } }
}
