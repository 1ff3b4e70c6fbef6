# From a plain text: 2 things not read, 7 questions or guesses besides. Each stands in a comment at its place.
formula "Brioche from Madame Lenoir" {
  makes = "2 brioches"

  dough "dough" {
    ingredients = {
      "T45 flour"    = "500 g"
      "caster sugar" = "60 g"
      "salt"         = "10 g"
      "fresh yeast"  = "20 g"   # "baker's yeast" can mean several things: read as fresh yeast; it may be instant yeast, active dry yeast
      "whole eggs"   = "250 g"   # written 5 pieces too
      "milk"         = "50 g"   # read as whole milk; it may be reduced-fat milk, skim milk
      "butter"       = { amount = "250 g", temp = "2 to 8 C", note = "in pieces" }   # read as unsalted butter; it may be salted butter, European-style butter; cold: read as 2 to 8 C
    }
    steps = [
      # In the bowl of the mixer fitted with the hook, put the flour, salt, sugar, crumbled yeast, eggs and milk
      # Knead for 5 min at speed 1, then 10 min at speed 2
      { mix = "15 min", note = "knead" },   # 15 min in all: 5 min at speed 1, then 10 min at speed 2
      # Incorporate the butter in 3 additions and knead for a further 8 to 10 minutes
      { mix = "8 to 10 min", note = "incorporate, knead", to = "24 C", with = ["butter"] },
      # not read in it: 3 additions
      # The dough should not exceed 24°C
      # Leave to rise for 1 h at 24°C
      { rest = "1 h", at = "24 C" },
      # Turn the dough over and chill for 12 h at 4°C
      { chill = "12 h", at = "4 C" },
      # Weigh out 8 balls of 125 g
      { divide = 8, note = "of 125 g" },
      # not read: Arrange 4 per tin
      # Prove for 2 h 30 min at 27°C
      { proof = "2 h 30 min", at = "27 C" },
      # Glaze with the beaten egg
      { wash = "egg wash" },
      # Bake for 10 min at 180°C then 20 min at 160°C
      { bake = "10 min", at = "180 C" },
      { bake = "20 min", at = "160 C" },
      # Unmould immediately
      { handle = "Unmould immediately" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"   # for glazing: read as no part of the dough
    }
  }
}
