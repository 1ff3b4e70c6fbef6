# potskids.de, duftender Hefezopf (read). One packet of dry yeast taken as 7 g; a
# quarter of an hour, 40 to 60 min warm, half an hour; about 35 min at 175 C. The kneading time is
# not printed; 10 min stands for it.
formula "Sweet plait, dry yeast" {
  family = "zopf"
  makes  = "1 loaf"

  dough "plait dough" {
    ingredients = {
      "flour"     = "500 g"
      "milk"      = "180 ml"
      "dry yeast" = "7 g"
      "butter"    = { amount = "100 g", as = "soft" }
      "egg"       = "1 piece"
      "salt"      = "?"
      "sugar"     = "100 g"
    }
    steps = [
      { rest   = "15 min" },   # yeast, milk and some flour
      { mix    = "10 min" },
      { rest   = "40 min to 60 min" },   # warm
      { divide = 3 },
      { shape  = "plait" },
      { proof  = "30 min", covered = true },
      { wash   = "milk wash" },
      { bake   = "35 min", at = "175 C" },
    ]
  }

  wash "milk wash" {
    ingredients = {
      "milk" = "1 tsp"
    }
  }
}
