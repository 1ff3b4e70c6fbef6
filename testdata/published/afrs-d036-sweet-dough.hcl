# US Armed Forces Recipe Service, card D-036, sweet dough (read). Flour 160 oz, water 24 + 36 oz.
# Fat: the published true hydration holds no water from it, so shortening. Baked at 400 F.
formula "AFRS D-036 sweet dough" {
  family = "sweet dough"

  dough "sweet dough" {
    ingredients = {
      "bread flour"      = "160 oz"
      "water"            = "60 oz"      # 37.5 %, 24 + 36 oz
      "sugar"            = "17.5 %"
      "shortening"       = "16.25 %"
      "egg"              = "17.5 %"
      "salt"             = "1.88 %"
      "dry skim milk"    = "3.12 %"
      "active dry yeast" = "5 %"
    }
  }
}
