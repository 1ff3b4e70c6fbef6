# cooking.danglazier.me/?p=22 (read); family rows of a published collection. Baked 28 min at 190 C
# to a core of 88 C. The rest of the method is not stored, so only weights are entered.
formula "Honey challah" {
  family = "challah"

  dough "challah dough" {
    ingredients = {
      "flour"            = "450 g"
      "active dry yeast" = "7.75 g"
      "water"            = "170 g"
      "sugar"            = "2 g"
      "salt"             = "6 g"
      "oil"              = "75 g"
      "egg"              = "2 pieces"
      "egg yolk"         = "1 piece"
      "honey"            = "86 g"
    }
  }
}
