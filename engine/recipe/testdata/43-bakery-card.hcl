# From a plain text: 1 thing not read, 5 questions or guesses besides. Each stands in a comment at its place.
formula "BRIOCHE NANTERRE - Production card" {
  makes = "6 pieces of 450 g"

  dough "dough" {
    ingredients = {
      "T45 Flour"   = "1250 g"
      "salt"        = "25 g"
      "sugar"       = "150 g"
      "fresh yeast" = "45 g"
      "eggs"        = "625 g"
      "milk"        = "125 g"   # read as whole milk; it may be reduced-fat milk, skim milk
      "butter"      = { amount = "600 g", temp = "2 to 8 C", as = "cubed" }   # read as unsalted butter; it may be salted butter, European-style butter; cold: read as 2 to 8 C
    }
    steps = [
      # Mix: 5 min 1st speed, 8 min 2nd speed, spiral
      { mix = "13 min", by = "spiral", note = "mix" },   # 13 min in all: 5 min 1st speed, 8 min 2nd speed, spiral
      # Butter: add in 3 lots, 6 min
      { mix = "6 min", note = "add", to = "24 C", with = ["butter"] },
      # not read in it: 3 lots
      # DDT: 24 C
      # Bulk: 60 min @ 24 C
      { rest = "60 min", at = "24 C" },
      # Fold: 1
      { fold = 1, note = "fold: 1" },
      # Retard: 14 h @ 3 C
      { chill = "14 h", at = "3 C" },
      # Scale: 75 g
      { divide = "75 g" },
      # Shape: balls, 6 per tin
      { shape = "balls", note = "Shape: balls, 6 per tin" },
      # Tin: 22 x 10 cm loaf tin
      { pan = "tin: 22 x 10 cm loaf tin", tin = "22 x 10 cm loaf tin" },
      # Proof: 2 h 30 min @ 27 C, 80 % RH
      { proof = "2 h 30 min", humidity = "80 %", at = "27 C" },
      # Wash: egg
      { wash = "wash" },
      # Snip: tops
      { score = "Snip: tops" },
      # Bake: 28 min @ 170 C, core 92 C
      { bake = "28 min", at = "170 C", core = "92 C" },
      # Depan: at once
      { handle = "Depan: at once" },
      # Cool: 60 min
      { cool = "60 min", at = "room" },
    ]
  }

  wash "wash" {
    ingredients = {
      "egg"         = "100 g"
      "heavy cream" = "20 g"   # "Cream" can mean several things: read as heavy cream; it may be double cream, light cream, half-and-half
    }
  }
}
