# Hotel brioche, a forum thread on hydration (read). Printed total 230.5 %. Butter is the thread's fat; its 7 % of yeast is
# taken as fresh.
formula "Hotel brioche" {
  family = "brioche moderate"

  dough "brioche" {
    ingredients = {
      "bread flour"     = "1000 g"
      "water"           = "9 %"
      "sugar"           = "12 %"
      "unsalted butter" = "50 %"
      "egg"             = "50 %"
      "salt"            = "2.5 %"
      "fresh yeast"     = "7 %"
    }
  }
}
