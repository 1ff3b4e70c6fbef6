# bakeit-easy.com/dresdner-christstollen (read). 65 g sweet and 10 g bitter almonds, entered as
# almonds; raisins covered with rum, amount not printed and not entered; the yeast milk stands 30
# min in the flour; an hour at 180 C.
formula "Stollen with ground almonds" {
  family = "stollen"

  dough "stollen dough" {
    ingredients = {
      "type 550 flour" = "500 g"
      "milk"           = "165 ml"
      "butter"         = "250 g"
      "raisins"        = "325 g"
      "ground almonds" = "75 g"
      "fresh yeast"    = "42 g"
      "sugar"          = "85 g"
      "candied peel"   = "110 g"
      "lemon zest"     = "1 tsp"
      "vanilla pod"    = "1 piece"
      "nutmeg"         = "?"
      "star anise"     = "?"
      "cinnamon"       = "?"
      "salt"           = "5 g"
    }
    steps = [
      { rest  = "30 min", covered = true },   # yeast and milk in the flour
      { mix   = "5 min" },
      { rest  = "1 h", covered = true },
      { shape = "stollen" },
      { bake  = "1 h", at = "180 C" },
      { brush = "butter and sugar" },
    ]
  }

  topping "butter and sugar" {
    ingredients = {
      "butter"         = "150 g"
      "powdered sugar" = "200 g"
    }
  }
}
