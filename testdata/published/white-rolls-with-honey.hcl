# White rolls with honey, National Honey Board formula on the Bake magazine site (read). The page names compressed yeast,
# unsalted butter, 7 % sugar and 10 % honey; yeast food, GMS and propionate are left out, under 1 %
# together. The mix time of the dough is not given; 10 min stands for it.
formula "White rolls with honey" {
  family = "lean sweet roll"

  preferment "sponge" {
    ingredients = {
      "bread flour" = "700 g"
      "fresh yeast" = "20 g"            # 2 % of all the flour
      "water"       = "420 g"
    }
    steps = [
      { mix  = "2 min", to = "79 F" },
      { rest = "3 h", at = "84 F", covered = true },
    ]
  }

  dough "roll dough" {
    ingredients = {
      "the sponge"      = "all"
      "bread flour"     = "300 g"
      "sugar"           = "7 %"
      "dried whole egg" = "3 %"
      "dry skim milk"   = "3 %"
      "salt"            = "2 %"
      "honey"           = "10 %"
      "unsalted butter" = "5 %"
      "water"           = "18 %"
    }
    steps = [
      { mix   = "10 min", to = "79 F" },
      { rest  = "10 min", at = "84 F", covered = true },
      { shape = "rolls" },
      { proof = "40 min to 55 min", at = "110 F" },
      { bake  = "15 min", at = "400 F" },
    ]
  }
}
