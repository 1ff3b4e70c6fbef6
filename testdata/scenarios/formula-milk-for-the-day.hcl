# Powdered infant formula stirred with water of 40 C, left five hours in a warm room and poured over rusks for a newborn: Cronobacter.
formula "Soft pap of milk rusks for babies from 4 weeks" {
  family = "sweet dough"
  makes  = "24 pieces of 75 g"

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
      { shape = "balls", pieces = 24 },
      { proof = "1 h", at = "27 C", covered = true },
      { bake  = "15 min", at = "195 C", core = "94 C", measured = "94 C core" },
      { cool  = "1 h", at = "room" },
      { brush = "bottle milk", note = "soak the crumbled bun in it and feed with a spoon" },
    ]
  }

  syrup "bottle milk" {
    ingredients = {
      "powdered infant formula" = "150 g"
      "water"                   = { amount = "1000 g", temp = "40 C" }
    }
    steps = [
      { mix  = "1 min", by = "hand" },
      { hold = "5 h", at = "28 C", note = "made up once in the morning, for the whole day" },
    ]
  }
}
