# pst-algerie.org/easy-homemade-donuts (read). 8 to 10 min by hand, 1 to 1.5 h warm, half an inch
# thick, 30 to 40 min, fried at 170 to 175 C for 1 to 2 min a side. Rolled in caster sugar, no
# amount printed.
formula "Ring doughnuts, metric" {
  family = "doughnut"

  dough "doughnut dough" {
    ingredients = {
      "all-purpose flour" = "250 g"
      "milk"              = "120 g"
      "sugar"             = "30 g"
      "salt"              = "2 g"
      "instant yeast"     = "3 g"
      "egg"               = "55 g"
      "unsalted butter"   = { amount = "30 g", as = "soft" }
    }
    steps = [
      { mix   = "8 min to 10 min", by = "hand" },
      { rest  = "1 h to 1.5 h", covered = true },   # warm, until doubled
      { sheet = "0.5 in" },
      { shape = "rings" },
      { proof = "30 min to 40 min", covered = true },
      { cook  = "2 min to 4 min", at = "170 C to 175 C", by = "frying" },
    ]
  }
}
