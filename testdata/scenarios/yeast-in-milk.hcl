# Yeast woken in milk.
formula "Yeast woken in milk" {
  makes = "12 pieces"
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "whole milk" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { soak = "10 min", with = ["instant yeast", "whole milk"] },
      { mix = "10 min", to = "26 C", measured = "26 C" },
      { rest = "60 min", at = "26 C", as = "bowl", covered = true, measured = "1.9 x after 60 min" },
      { shape = "balls", pieces = 12, as = "pieces 70 g" },
      { proof = "50 min", at = "28 C", as = "pieces 70 g" },
      { bake = "14 min", at = "200 C", core = "93 C", measured = "94 C core" },
    ]
  }
}
