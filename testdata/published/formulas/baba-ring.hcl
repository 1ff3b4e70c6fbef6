# yves.huot-marchand.pagesperso-orange.fr, le baba au rhum (read). 6 tbsp
# milk, 85 g melted butter, 3 eggs; 15 min, 10 min, at least 2 h and half an hour; 30 min at 220 C;
# syrup of 150 g sugar, rum by the glass, four liqueur glasses. 10 min stands for the mixing.
formula "Rum baba in a ring" {
  family = "savarin and baba"
  makes  = "1 piece"

  dough "baba dough" {
    ingredients = {
      "flour"       = "250 g"
      "fresh yeast" = "20 g"
      "milk"        = "6 tbsp"
      "butter"      = { amount = "85 g", as = "melted" }
      "egg"         = "3 pieces"
      "sugar"       = "2 tbsp"
      "lemon zest"  = "?"
      "salt"        = "?"
    }
    steps = [
      { rest  = "15 min" },   # yeast and milk in the flour
      { mix   = "10 min", by = "hand" },
      { rest  = "10 min" },
      { pan   = "ring mould" },
      { proof = "2 h", covered = true },   # tepid
      { proof = "30 min" },
      { bake  = "30 min", at = "220 C" },
      { brush = "rum syrup" },
    ]
  }

  syrup "rum syrup" {
    ingredients = {
      "water" = "250 ml"
      "sugar" = "150 g"
      "rum"   = "?"
    }
  }
}
