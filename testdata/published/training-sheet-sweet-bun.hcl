# Sweet bun of a training sheet (read). Yeast taken as fresh. Fat: the published true hydration holds no water from it,
# so shortening. Dough 28 C, proof at 35 C and 80 % humidity, baked at 220 C.
formula "Training-sheet sweet bun" {
  family = "sweet dough"

  dough "bun dough" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "52 %"
      "sugar"         = "10 %"
      "shortening"    = "8 %"
      "egg"           = "9.8 %"
      "salt"          = "0.5 %"
      "dry skim milk" = "3 %"
      "fresh yeast"   = "4 %"
    }
  }
}
