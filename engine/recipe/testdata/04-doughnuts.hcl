# not read: vegetable oil, for frying
formula "Ferry Steps doughnuts" {
  makes = "18 doughnuts"

  dough "dough" {
    ingredients = {
      "active dry yeast"  = "2 1/4 teaspoons"   # written 1 packet too
      "whole milk"        = { amount = "1 cup", temp = "110 F" }
      "sugar"             = "1/3 cup"
      "egg"               = "2 pieces"
      "unsalted butter"   = { amount = "6 tablespoons", as = "melted" }
      "kosher salt"       = "1 tsp"
      "all-purpose flour" = "500 g"   # written 4 cups too
    }
    steps = [
      { soak = "5 min", note = "until foamy", at = "room", with = ["active dry yeast", "whole milk"] },   # not said where: read as the room
      { mix = "6 min", note = "stir, add, knead", by = "dough hook" },
      { rest = "1 to 1 1/2 h", note = "until doubled in size", at = "room", covered = true },   # not said where: read as the room
      { sheet = "1/2 in" },
      { divide = 18 },
      { proof = "30 min", at = "room" },   # not said where: read as the room
      { cook = "1 min", at = "360 F", by = "frying" },
      { cool = "10 min", at = "room" },
    ]
  }
}
