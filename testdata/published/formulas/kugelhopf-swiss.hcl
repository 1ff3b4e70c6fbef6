# marmiteag.ch/Kougelhopf (read); family rows of a published collection. Milk 2 dl, 2 eggs; raisins
# 20 % of the flour; baked 45 min at 180 C. The method is not stored, so only weights are entered.
formula "Kugelhopf, rich" {
  family = "kugelhopf"

  dough "kugelhopf dough" {
    ingredients = {
      "flour"       = "500 g"
      "milk"        = "200 ml"
      "fresh yeast" = "20 g"
      "sugar"       = "75 g"
      "egg"         = "2 pieces"
      "butter"      = "220 g"
      "salt"        = "7 g"
      "raisins"     = "100 g"
    }
  }
}
