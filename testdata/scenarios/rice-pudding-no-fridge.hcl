# Ground rice cooked in milk, filled into buns after the bake, two days in the shop.
formula "Rice pudding buns" {
  makes = "12 pieces"
  keep  = "2 day"

  filling "rice pudding" {
    ph          = 6.6
    ingredients = { "whole milk" = "1000 g", "rice flour" = "90 g", "sugar" = "120 g" }
    steps       = [{ cook = "20 min", to = "92 C" }, { cool = "40 min", by = "ice bath", as = "tray 15 mm", covered = false, measured = "12 C after 40 min" }]
  }

  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "whole milk" = { amount = "280 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g", "unsalted butter" = "50 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool  = "1 h", at = "room" },
      { fill  = "rice pudding" },
    ]
  }
}
