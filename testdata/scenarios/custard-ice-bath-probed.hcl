# Pastry cream in 20 mm, stirred in ice and probed at 4 C.
formula "Cream buns" {
  makes = "25 pieces of 90 g"

  filling "pastry cream" {
    ingredients = {
      "whole milk" = "1000 g"
      "egg yolk" = "200 g"
      "sugar" = "200 g"
      "corn starch" = "85 g"
    }
    steps = [
      { cook = "8 min", to = "92 C", by = "pan", measured = "92 C core" },
      { cool = "70 min", by = "stirred ice bath", as = "tray 20 mm", measured = "4 C core after 70 min" },
      { chill = "3 h", at = "fridge", as = "tray 20 mm", covered = true },
    ]
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
      { shape  = "closed buns", pieces = 25, as = "pieces 95 g" },
      { proof  = "1 h", at = "28 C", as = "pieces 95 g", covered = true },
      { bake   = "16 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room" },
      { fill   = "pastry cream" },
      { store  = "1 day", at = "fridge" },
    ]
  }
}
