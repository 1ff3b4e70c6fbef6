formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { rest = "1 h", at = "warm" },
      { rest = "1 h", at = "27" },
      { rest = "1 h", at = 27 },
      { bake = "20 min", at = "200 g" },
      { bake = "20 min", core = "92" },
      { rest = "1 h", at = "-300 C" },
      { rest = "1 h", at = "frige" },
      { bake = "20 min", covered = "yes" },
      { rest = "400 day" },
      { rest = "2 h to 1 h" },
      { rest = "90" },
      { sheet = "5" },
      { fold = "some" },
      { mix = "10 min", with = "cocoa powder" },
    ]
  }
}
