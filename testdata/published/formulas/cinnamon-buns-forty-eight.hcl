# donnacoulling.com/2013/10/02 (read). 5 dl milk with the butter at 37 C, 50
# g yeast, 1 to 1.5 dl sugar at 90 g a dl, 1.4 l flour at 60 g a dl; 4 min in the machine, 30 min,
# 48 pieces, 30 min, 5 to 8 min at 250 C.
formula "Cinnamon buns, forty-eight" {
  family = "cinnamon roll"
  makes  = "48 pieces"

  dough "bun dough" {
    ingredients = {
      "butter"      = { amount = "150 g", as = "melted" }
      "milk"        = { amount = "500 ml", temp = "37 C" }
      "fresh yeast" = "50 g"
      "salt"        = "0.5 tsp"
      "sugar"       = "90 g to 135 g"
      "flour"       = "840 g"
    }
    steps = [
      { mix   = "4 min" },
      { rest  = "30 min", covered = true },
      { fill  = "cinnamon butter" },
      { roll  = "coil", pieces = 48 },
      { proof = "30 min", covered = true },
      { wash  = "egg wash" },
      { bake  = "5 min to 8 min", at = "250 C" },
    ]
  }

  filling "cinnamon butter" {
    ingredients = {
      "butter"   = { amount = "50 g to 75 g", as = "soft" }
      "sugar"    = "45 g to 90 g"
      "cinnamon" = "2 tsp"
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"
    }
  }
}
