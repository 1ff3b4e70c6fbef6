# A straight egg bread: 90 min and an hour in the warm.
formula "Challah of the morning" {
  makes = "4 loaves of 600 g"
  start = "06:00"
  keep  = "2 day"

  dough "braid dough" {
    ingredients = {
      "bread flour"   = { amount = "1500 g", protein = "12.5 %" }
      "water"         = { amount = "580 g", temp = "23 C" }
      "egg"           = { amount = "5 pieces", temp = "12 C" }
      "vegetable oil" = { amount = "130 g", temp = "21 C" }
      "honey"         = "90 g"
      "sugar"         = "60 g"
      "instant yeast" = "22 g"
      "salt"          = "27 g"
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "90 min", at = "27 C", as = "bowl", covered = true },
      { divide = "200 g", pieces = 12 },
      { shape  = "three-strand braids" },
      { proof  = "60 min", at = "28 C", as = "log 80 mm", covered = true },
      { wash   = "egg wash" },
      { bake   = "35 min", at = "177 C", core = "90 C", measured = "94 C core" },
      { cool   = "2 h", at = "room" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"   = { amount = "2 pieces", temp = "6 C" }
      "water" = "20 g"
    }
    steps = [
      { mix = "1 min", by = "hand" },
    ]
  }
}
