# A custard of soy milk and starch, cooled five hours in the room.
formula "Soy custard" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "soy custard" {
    ingredients = {
      "soy milk"    = "1000 g"
      "sugar"       = "200 g"
      "corn starch" = "90 g"
    }
    steps = [
      { cook  = "8 min", to = "92 C", by = "pan", measured = "92 C core" },
      { cool  = "5 h", at = "room", as = "slab 60 mm", covered = true },
      { chill = "3 h", at = "fridge", as = "tray 20 mm", covered = true, measured = "4 C core after 3 h" },
    ]
  }

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "22 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = { amount = "20 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "45 min", at = "26 C", as = "bowl", covered = true },
      { divide = "72 g", pieces = 25 },
      { rest   = "10 min", at = "room", covered = true },
      { fill   = "soy custard" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "17 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { cool   = "20 min", at = "room" },
      { cool   = "4 h", at = "fridge", as = "pieces 100 g", covered = false },
      { store  = "1 day", at = "fridge", covered = true },
    ]
  }
}
