# From a plain text: 1 thing not read, 14 questions or guesses besides. Each stands in a comment at its place.
# not read: Ingredient Weight Baker's %
formula "CLASSIC BRIOCHE - Formula for 6 loaves" {

  dough "dough" {
    ingredients = {
      "bread flour"                = "2000 g"   # 100% of the flour, as written
      "whole eggs"                 = "1000 g"   # 50% of the flour, as written
      "whole milk"                 = "200 g"   # 10% of the flour, as written
      "sugar"                      = "240 g"   # 12% of the flour, as written
      "salt"                       = "40 g"   # 2% of the flour, as written
      "osmotolerant instant yeast" = "30 g"   # 1.5% of the flour, as written
      "butter"                     = { amount = "1000 g", temp = "2 to 8 C" }   # read as unsalted butter; it may be salted butter, European-style butter; cold: read as 2 to 8 C; 50% of the flour, as written
    }
    steps = [
      # Mix all ingredients except butter 4 min on first speed and 6 min on second speed
      { mix = "10 min", note = "mix" },   # 10 min in all: 4 min on first speed and 6 min on second speed
      # Add butter in four additions and mix 8 min to full gluten development
      { mix = "8 min", note = "add, mix", to = "76 F", with = ["butter"] },
      # DDT 76F
      # Bulk ferment 1 hour at room temperature, fold, retard overnight at 38F
      { rest = "1 h", at = "room" },
      { fold = 1, note = "fold" },
      { chill = "8 h to 14 h", at = "38 F" },   # overnight: read as 8 h to 14 h
      # Divide at 500 g
      { divide = "500 g" },
      # Preshape, rest 20 minutes
      { rest = "20 min", at = "room" },   # not said where: read as the room
      # Shape into loaf pans
      { shape = "loaf" },
      # Final proof 2 1/2 hours at 80F, 75% RH
      { proof = "2 1/2 h", humidity = "75 %", at = "80 F" },
      # Egg wash
      { wash = "egg wash" },
      # Bake 35 minutes at 350F convection, internal temperature 190F
      { bake = "35 min", at = "350 F", by = "fan oven", core = "190 F" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice; in no list: from the method
    }
  }
}
