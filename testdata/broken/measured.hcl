formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { chill = "6 h", measured = "cold" },
      { proof = "1 h", measured = "doubled" },
      { bake = "20 min", measured = "94 core" },
      { rest = "1 h", measured = "2 x after lunch" },
      { rest = "1 h", measured = 11 },
      { rest = "1 h", measured = "2 x core" },
      { chill = "2 h", measured = "4 C after 70 h" },
      { rest = "1 h", measured = "2 x after 5 h" },
    ]
  }
}
