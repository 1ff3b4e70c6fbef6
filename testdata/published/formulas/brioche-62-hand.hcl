# beatricechristiana.wordpress.com/2011/07/13/french-brioche (read). One sachet of dry yeast taken
# as 7 g; 2 tbsp of the flour stand with milk and yeast for 30 min; the butter is rubbed in by
# hand. Overnight is written as 8 to 14 h. Baked 15 min at 220 C, then about 20 min at 180 C.
# Mixing and kneading times are not printed; 5 and 15 min stand for them.
formula "Brioche by hand" {
  family = "brioche rich"

  preferment "yeast sponge" {
    ingredients = {
      "flour"     = "2 tbsp"
      "milk"      = "50 ml"
      "dry yeast" = "7 g"
    }
    steps = [
      { rest = "30 min", covered = true },
    ]
  }

  dough "brioche dough" {
    ingredients = {
      "the yeast sponge" = "all"
      "flour"            = "384 g"
      "egg"              = "4 pieces"
      "egg yolk"         = "3 pieces"
      "sugar"            = "50 g"
      "salt"             = "1 tsp"
      "unsalted butter"  = { amount = "250 g", as = "soft", reserve = "250 g" }
    }
    steps = [
      { mix   = "5 min", by = "hand" },
      { rest  = "30 min", covered = true },
      { mix   = "15 min", by = "hand", with = "unsalted butter" },
      { chill = "8 h to 14 h", at = "fridge", covered = true },
      { shape = "loaf and small heads" },
      { proof = "2 h", covered = true },
      { wash  = "egg wash" },
      { bake  = "15 min", at = "220 C" },
      { bake  = "20 min", at = "180 C" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"
    }
  }
}
