# aktuellestunde.de (WDR), Elsaesser Gugelhupf (read). 20 g wheat sour with 100 g flour and 100 ml
# water, 12 h; 15 g yeast with milk at 30 C and flour, 30 min; an hour, then about 2 h in the
# mould; about 45 min at 200 C. The kneading time is not printed; 15 min stands for it.
formula "Kugelhopf with two leavens" {
  family = "kugelhopf"
  makes  = "1 piece"

  preferment "sour" {
    ingredients = {
      "sourdough starter" = "20 g"
      "type 550 flour"    = "100 g"
      "water"             = "100 ml"
    }
    steps = [
      { rest = "12 h", covered = true },
    ]
  }

  preferment "yeast sponge" {
    ingredients = {
      "fresh yeast"    = "15 g"
      "milk"           = { amount = "100 g", temp = "30 C" }
      "type 550 flour" = "100 g"
    }
    steps = [
      { rest = "30 min", covered = true },
    ]
  }

  dough "kugelhopf dough" {
    ingredients = {
      "the sour"         = "all"
      "the yeast sponge" = "all"
      "type 550 flour"   = "300 g"
      "butter"           = { amount = "200 g", as = "soft" }
      "sugar"            = "80 g"
      "salt"             = "5 g"
      "egg"              = "4 pieces"
      "raisins"          = "150 g"
      "kirsch"           = "2 tbsp"
    }
    steps = [
      { mix   = "15 min" },
      { rest  = "1 h", covered = true },   # until doubled
      { pan   = "kugelhopf mould" },
      { proof = "2 h", covered = true },
      { bake  = "45 min", at = "200 C" },
      { cool  = "10 min" },
    ]
  }
}
