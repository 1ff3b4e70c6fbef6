# A stiff sourdough in a milk dough, thirty hours at 28 C.
formula "Milk dough, long" {
  makes = "2 pieces of 900 g"

  dough "milk dough" {
    ingredients = {
      "bread flour" = "1000 g"
      "stiff sourdough" = "200 g"
      "whole milk" = { amount = "500 g", temp = "24 C" }
      "egg" = "100 g"
      "sugar" = "100 g"
      "salt" = "17 g"
    }
    steps = [
      { mix = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest = "30 h", at = "28 C", as = "bowl", covered = true },
      { shape = "balls", pieces = 2, as = "pieces 900 g" },
      { bake = "45 min", at = "180 C", core = "94 C", measured = "94 C core" },
    ]
  }
}
