# Basic sweet roll dough, an institutional quantity recipe (read). 12 eggs taken as 21.2 oz; two fat lines, 24 + 32 oz, on
# 224 oz of flour. Fat: the published true hydration holds no water from it, so shortening. Baked at 375 F.
formula "Basic sweet roll dough" {
  family = "sweet dough"

  dough "sweet roll dough" {
    ingredients = {
      "bread flour"      = "1000 g"
      "water"            = "44.64 %"
      "sugar"            = "21.43 %"
      "shortening"       = "25 %"
      "egg"              = "9.46 %"
      "salt"             = "0.89 %"
      "dry skim milk"    = "6.7 %"
      "active dry yeast" = "4.02 %"
    }
  }
}
