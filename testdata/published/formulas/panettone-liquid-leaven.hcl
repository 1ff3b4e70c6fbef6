# company.goodeatingcompany.com, raffs-panettone (read); family rows of a published collection. 65
# g of leaven at 100 %; flour 344 g and water 157 g with those of the leaven; fruit 78.5 % of the
# flour; baked 50 min at 165 C. The rest of the method is not stored, so only weights are entered.
formula "Panettone with a liquid leaven" {
  family = "panettone"

  dough "panettone dough" {
    ingredients = {
      "sourdough starter" = "65 g"
      "strong flour"      = "311.5 g"
      "water"             = "124.5 g"
      "egg yolk"          = "100 g"
      "butter"            = "150 g"
      "sugar"             = "115 g"
      "honey"             = "16 g"
      "salt"              = "2 g"
      "raisins"           = "270 g"
    }
  }
}
