# Steamed buns with sweet bean paste that was bought, eaten in hours.
formula "Steamed buns" {
  makes = "25 pieces of 90 g"

  filling "bean paste" {
    ingredients = {
      "sweet red bean paste" = "600 g"
    }
  }

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "20 C" }
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
      { fill   = "bean paste" },
      { shape  = "closed buns", pieces = 25, as = "pieces 95 g" },
      { proof  = "40 min", at = "30 C", as = "pieces 95 g", covered = true },
      { cook   = "14 min", by = "steaming", measured = "95 C core" },
      { hold   = "90 min", at = "65 C", covered = true },
    ]
  }
}
