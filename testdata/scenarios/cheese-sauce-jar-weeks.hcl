# Cheese sauce bottled and kept on the shelf.
formula "Cheese sauce bottled and kept on the shelf" {
  makes = "12 pieces"
  filling "cheese sauce" {
    ingredients = { "whole milk" = "400 g", "cheddar" = "200 g", "corn starch" = "30 g" }
    steps       = [{ cook = "8 min", to = "95 C" }, { store = "21 day", at = "room", covered = true }]
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix = "10 min", to = "26 C", measured = "26 C" },
      { rest = "60 min", at = "26 C", as = "bowl", covered = true, measured = "1.9 x after 60 min" },
      { shape = "balls", pieces = 12, as = "pieces 70 g" },
      { proof = "50 min", at = "28 C", as = "pieces 70 g" },
      { bake = "14 min", at = "200 C", core = "93 C", measured = "94 C core" },
      { cool = "60 min", at = "room", as = "pieces 70 g" },
      { fill = "cheese sauce" },
    ]
  }
}
