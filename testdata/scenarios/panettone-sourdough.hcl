# Two doughs raised by a stiff sourdough, twelve hours at 26 C and five at 28 C.
formula "Sourdough panettone" {
  makes = "2 pieces of 900 g"

  preferment "first dough" {
    ingredients = {
      "bread flour" = { amount = "500 g", protein = "13.5 %" }
      "stiff sourdough" = "150 g"
      "water" = { amount = "240 g", temp = "24 C" }
      "egg yolk" = "100 g"
      "sugar" = "150 g"
      "unsalted butter" = "150 g"
    }
    steps = [
      { mix = "15 min", by = "diving arm", to = "25 C" },
      { rest = "12 h", at = "26 C", as = "bowl", covered = true, measured = "3 x after 12 h" },
    ]
  }

  dough "second dough" {
    ingredients = {
      "the first dough" = "all"
      "bread flour" = { amount = "150 g", protein = "13.5 %" }
      "egg yolk" = "80 g"
      "sugar" = "60 g"
      "salt" = "8 g"
      "unsalted butter" = "120 g"
      "raisins" = "200 g"
    }
    steps = [
      { mix = "20 min", by = "diving arm", to = "26 C", measured = "26 C" },
      { rest = "40 min", at = "28 C", as = "bowl", covered = true },
      { shape = "balls", pieces = 2, as = "pieces 900 g" },
      { proof = "5 h", at = "28 C", as = "pieces 900 g", covered = true },
      { bake = "50 min", at = "175 C", core = "94 C", measured = "94 C core" },
      { cool = "10 h", at = "room" },
    ]
  }
}
