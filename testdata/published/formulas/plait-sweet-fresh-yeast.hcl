# schokopuck.de, Hefezopf ohne Rosinen (read). One cube of yeast, 42 g; about an hour
# covered, half an hour; about 35 min at 180 C. The kneading time is not printed; 10 min stands for
# it. A little milk in the wash is entered as 1 tbsp.
formula "Sweet plait, fresh yeast" {
  family = "zopf"
  makes  = "1 loaf"

  dough "plait dough" {
    ingredients = {
      "flour"       = "550 g"
      "fresh yeast" = "42 g"
      "sugar"       = "50 g"
      "egg"         = "1 piece"
      "milk"        = "250 ml"
      "salt"        = "?"
      "butter"      = "50 g"
    }
    steps = [
      { mix    = "10 min" },
      { rest   = "1 h", covered = true },
      { divide = 3 },
      { shape  = "plait" },
      { wash   = "egg wash" },
      { proof  = "30 min" },
      { bake   = "35 min", at = "180 C" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"  = "1 piece"
      "milk" = "1 tbsp"
    }
  }
}
