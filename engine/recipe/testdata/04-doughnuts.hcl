# From a plain text: 0 things not read, 7 questions or guesses besides. Each stands in a comment at its place.
formula "Ferry Steps doughnuts" {
  makes = "18 doughnuts"

  dough "dough" {
    # left out: vegetable oil for frying
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
      # Sprinkle the yeast over the warm milk and let stand until foamy, about 5 minutes
      { soak = "5 min", note = "until foamy", at = "room", with = ["active dry yeast", "whole milk"] },   # not said where: read as the room
      # Stir in the sugar, eggs, butter and salt
      { mix = "6 min", note = "stir, add, knead", by = "dough hook" },
      # Add the flour and knead with the dough hook for 6 minutes
      # Cover and let rise until doubled in size, 1 to 1 1/2 hours
      { rest = "1 to 1 1/2 h", note = "until doubled in size", at = "room", covered = true },   # not said where: read as the room
      # Roll out the dough to 1/2-inch thickness
      { sheet = "1/2 in" },
      # Cut into 18 rounds
      { divide = 18 },
      # Let rise 30 minutes
      { proof = "30 min", at = "room" },   # not said where: read as the room
      # Fry in batches at 360°F for 1 minute a side
      { cook = "2 min", at = "360 F", by = "frying" },   # 1 min a side: read as both sides
      # Cool for 10 minutes
      { cool = "10 min", at = "room" },
    ]
  }
}
