# US Armed Forces Recipe Service, TM 10-412 (2003), card D-055, bread and roll dough (read).
# Fat: the published true hydration holds no water from it, so shortening. The mix time is not on record; 10 min
# stands for it.
formula "AFRS D-055 bread and roll dough" {
  family = "lean sweet roll"

  dough "roll dough" {
    ingredients = {
      "bread flour"      = "1000 g"
      "water"            = "63.31 %"    # of 68 + 56 oz in all, flour 196 oz
      "sugar"            = "8.57 %"
      "shortening"       = "5.85 %"
      "salt"             = "2.02 %"
      "dry skim milk"    = "3.63 %"
      "active dry yeast" = "1.34 %"
    }
    steps = [
      { mix   = "10 min", to = "78 F to 82 F" },
      { rest  = "2 h", at = "80 F", covered = true },
      { shape = "rolls" },
      { proof = "1 h", at = "90 F to 100 F", covered = true },
    ]
  }
}
