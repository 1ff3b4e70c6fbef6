# donnesulweb.it, colomba di Pasqua (read). 1250 g flour, about 150 g of it in the
# leaven with a little water, amount not printed; 8 yolks in the dough, the ninth egg for the wash;
# 200 g butter first and the rest in two lots; about 10 min at 190 C, then half an hour at 150 C.
# Not every time or temperature is printed or stored, so only weights are entered.
formula "Easter dove, a ball of leaven" {
  family = "colomba"
  preferment "leaven" {
    ingredients = {
      "flour"       = "150 g"
      "fresh yeast" = "50 g"
      "water"       = "?"
    }
  }

  dough "dove dough" {
    ingredients = {
      "the leaven"    = "all"
      "flour"         = "1100 g"
      "egg yolk"      = "8 pieces"
      "salt"          = "?"
      "lemon zest"    = "?"
      "sugar"         = "300 g"
      "whole milk"    = "120 g"
      "butter"        = { amount = "450 g", reserve = "250 g" }
      "candied fruit" = "350 g"
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"
    }
  }
}
