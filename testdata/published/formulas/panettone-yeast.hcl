# kitchennostalgia.com, panettone (read). 650 g flour, 50 g fresh yeast, 5 yolks; 15 min, 5 to 10
# min of kneading, half an hour warm, half an hour in the mould, an hour and a half at 200 C.
formula "Panettone with yeast" {
  family = "panettone"
  makes  = "1 loaf"

  dough "panettone dough" {
    ingredients = {
      "all-purpose flour"   = "650 g"
      "fresh yeast"         = "50 g"
      "sugar"               = "150 g"
      "milk"                = "250 ml"
      "butter"              = { amount = "200 g", as = "melted" }
      "egg yolk"            = "5 pieces"
      "salt"                = "1 tsp"
      "nutmeg"              = "?"
      "lemon zest"          = "?"
      "candied lemon peel"  = "100 g"
      "candied orange peel" = "50 g"
      "raisins"             = "150 g"
    }
    steps = [
      { rest  = "15 min" },   # yeast and milk in the flour
      { mix   = "5 min to 10 min" },
      { rest  = "30 min" },   # warm
      { pan   = "panettone mould" },
      { proof = "30 min", covered = true },
      { bake  = "90 min", at = "200 C" },
    ]
  }
}
