# greekreporter.com/2019/04/18 (read). 6 eggs beaten with 310 g sugar, 2 lb
# flour, 235 ml hot milk, 90 ml melted butter, 15 g dry yeast; 10 min, an hour, 45 min; 30 to 40
# min at 160 C. No salt is printed. Half a teaspoon of mastic is entered as 1 g.
formula "Tsoureki of a newspaper" {
  family = "tsoureki"
  dough "tsoureki dough" {
    ingredients = {
      "flour"     = "2 lb"
      "egg"       = "6 pieces"
      "sugar"     = "310 g"
      "mahlepi"   = "2 tsp"
      "mastic"    = "1 g"
      "milk"      = "235 ml"
      "butter"    = { amount = "90 ml", as = "melted" }
      "dry yeast" = "15 g"
    }
    steps = [
      { mix   = "10 min" },
      { rest  = "1 h" },
      { shape = "braid" },
      { proof = "45 min" },
      { wash  = "yolk wash" },
      { bake  = "30 min to 40 min", at = "160 C" },
    ]
  }

  wash "yolk wash" {
    ingredients = {
      "egg yolk" = "1 piece"
    }
  }
}
