formula "Fried buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
    }
    steps = [
      { mix = "10 min", by = "spyral" },
      { mix = "2 min", by = "frying" },
      { mix = "2 min", by = "the way it is done at home" },
      { mix = "2 min", by = "" },
      { mix = "2 min", by = 3 },
      { rest = "1 h", by = "hand" },
      { chill = "1 h", by = "snow" },
      { cook = "3 min", by = "deep fryed" },
      { cook = "3 min", by = "ice bath" },
      { melt = "3 min", by = "fried" },
      { bake = "20 min", by = "camp fire" },
      { cool = "1 h", by = "fann", at = "celler" },
    ]
  }
}
