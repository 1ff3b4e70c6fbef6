# Hot custard goes into a butter cream, stands five hours, and only then into the cold.
formula "Custard butter cream buns" {
  makes = "12 pieces"

  filling "custard" {
    ph          = 6.5
    ingredients = { "whole milk" = "600 g", "egg yolk" = "120 g", "sugar" = "120 g", "corn starch" = "45 g" }
    steps       = [{ cook = "6 min", to = "88 C" }]
  }

  filling "custard butter cream" {
    ph          = 6.3
    ingredients = { "the custard" = "all", "unsalted butter" = "250 g" }
    steps       = [{ mix = "8 min" }, { rest = "5 h", at = "24 C", as = "bowl" }, { chill = "6 h", at = "3 C", as = "tray 20 mm" }]
  }

  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool  = "1 h", at = "room" },
      { fill  = "custard butter cream" },
      { store = "1 day", at = "3 C" },
    ]
  }
}
