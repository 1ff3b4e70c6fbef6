# pressreader.com, a cookery magazine of January 2019 (read). A little
# tepid water, entered as 20 g; 10 min of kneading, 45 min warm, an hour in the moulds, 15 to 20
# min at 200 C; syrup simmered 15 min and poured on hot. 5 min stands for working in the butter.
formula "Rum babas, six" {
  family = "savarin and baba"
  makes  = "6 pieces"

  dough "baba dough" {
    ingredients = {
      "flour"       = "165 g"
      "butter"      = { amount = "90 g", as = "soft", reserve = "90 g" }
      "egg"         = "2 pieces"
      "sugar"       = "20 g"
      "fresh yeast" = "10 g"
      "salt"        = "?"
      "water"       = "20 g"
    }
    steps = [
      { mix   = "10 min", by = "hand" },
      { mix   = "5 min", by = "hand", with = "butter" },
      { rest  = "45 min", covered = true },   # warm
      { pan   = "baba moulds", pieces = 6 },
      { proof = "1 h" },
      { bake  = "15 min to 20 min", at = "200 C" },
      { brush = "rum syrup" },
    ]
  }

  syrup "rum syrup" {
    ingredients = {
      "water" = "400 ml"
      "sugar" = "200 g"
      "rum"   = "1 tbsp"
    }
    steps = [
      { cook = "15 min", to = "100 C", by = "pan" },
    ]
  }
}
