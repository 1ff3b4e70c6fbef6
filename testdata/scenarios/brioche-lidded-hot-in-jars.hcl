# Moist pumpkin brioche is baked in preserving jars, lidded hot and kept six months on the shelf: botulism in a sealed low-acid loaf.
formula "Pumpkin brioche in a jar" {
  family = "sweet dough"
  makes  = "12 pieces of 190 g"
  keep   = "180 day"

  dough "bun dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = { amount = "500 g", temp = "6 C" }
      "egg"             = "150 g"
      "instant yeast"   = "14 g"
      "sugar"           = "110 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "150 g", temp = "18 C" }
      "pumpkin puree"   = "400 g"
    }
    steps = [
      { mix   = "10 min", by = "spiral", to = "25 C", measured = "25 C" },
      { rest  = "1 h", at = "room", as = "bowl", covered = true, measured = "1.8 x after 1 h" },
      { divide = "12 pieces", note = "one in each greased preserving jar, half full" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake  = "35 min", at = "170 C", core = "94 C", measured = "94 C core", note = "in the open jars" },
      { store = "180 day", at = "room", covered = true, note = "lids screwed on straight from the oven so that they seal airtight; no fridge" },
    ]
  }
}
