formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { divide = "75 g", pieces = 1.5 },
      { shape = "buns", pieces = "2.5 pieces" },
      { pan = "tray", count = "two" },
      { fold = 2.5 },
      { fold = "2.5 pieces" },
      { fold = "some" },
      { divide = "75" },
      { rest = "1 h", measured = "2 x core" },
    ]
  }
}
