# Raw milk scalded and probed, cooled in ice and mixed in.
formula "Farm milk buns" {
  makes = "25 pieces of 90 g"

  filling "scalded milk" {
    ingredients = {
      "raw milk" = "470 g"
    }
    steps = [
      { cook = "6 min", to = "88 C", by = "pan", measured = "88 C core" },
      { cool = "40 min", by = "ice bath", measured = "22 C after 40 min" },
    ]
  }

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "the scalded milk" = "all"
      "egg"             = { amount = "100 g", temp = "12 C" }
      "instant yeast"   = { amount = "18 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "1 h", at = "26 C", as = "bowl", covered = true },
      { divide = "72 g", pieces = 25 },
      { shape  = "closed buns", pieces = 25, as = "pieces 95 g" },
      { proof  = "1 h", at = "28 C", as = "pieces 95 g", covered = true },
      { bake   = "16 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room" },
    ]
  }
}
