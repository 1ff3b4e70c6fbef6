formula "Round and round" {
  dough "main" { ingredients = { "bread flour" = "500 g", "the sponge" = "all" } }
  preferment "sponge" { ingredients = { "bread flour" = "100 g", "the old dough" = "50 g" } }
  preferment "old dough" { ingredients = { "bread flour" = "100 g", "the main" = "50 g" } }
}

formula "Biting its tail" {
  dough "d" {
    ingredients = { "bread flour" = "500 g", "the d" = "20 g" }
    steps       = [{ fill = "d" }]
  }
}
