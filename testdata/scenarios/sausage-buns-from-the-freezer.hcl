# A 300 g bun with a raw pork ball goes frozen hard into the oven for 17 minutes; the meat in the middle stays raw.
formula "Giant sausage bombs from the freezer" {
  family = "sweet dough"
  makes  = "6 pieces of 460 g"

  dough "bun dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = { amount = "500 g", temp = "6 C" }
      "egg"             = "150 g"
      "instant yeast"   = "14 g"
      "sugar"           = "110 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "150 g", temp = "18 C" }
    }
    steps = [
      { mix   = "10 min", by = "spiral", to = "25 C", measured = "25 C" },
      { rest  = "1 h", at = "room", as = "bowl", covered = true, measured = "1.8 x after 1 h" },
      { divide = "6 pieces" },
      { fill   = "sausage ball" },
      { shape  = "balls", pieces = 6 },
      { freeze = "24 h", at = "freezer", covered = true },
      { bake   = "17 min", at = "220 C", note = "straight from the freezer, out when dark brown" },
    ]
  }

  filling "sausage ball" {
    ingredients = {
      "raw pork sausage meat" = "900 g"
      "fennel seed"           = "6 g"
    }
  }
}
