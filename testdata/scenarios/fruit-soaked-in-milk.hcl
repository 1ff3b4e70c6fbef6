# Raisins soaked in milk and egg for a night in the room, folded into cream after the bake.
formula "Raisin cream slices" {
  makes = "12 pieces"

  filling "soaked raisins" {
    ingredients = { "raisins" = "300 g", "whole milk" = { amount = "400 g", temp = "20 C" }, "egg" = "50 g" }
    steps       = [{ soak = "12 h", at = "23 C" }]
  }

  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { fill  = "soaked raisins" },
    ]
  }
}
