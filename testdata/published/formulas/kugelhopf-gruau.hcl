# jeanpaul.sandre.free.fr/recettes, Kougelhopf (read). 100 ml of the milk and some of the flour,
# amount not printed and entered as 100 g, make the leaven, about an hour; kneaded 5, 5 and 5 to 10
# min; an hour at 22 to 25 C; about an hour in the mould. The oven is set to 190 C; its time is not
# stored. Not every time or temperature is printed or stored, so only weights are entered.
formula "Kugelhopf, strong flour" {
  family = "kugelhopf"

  preferment "leaven" {
    ingredients = {
      "flour"       = "100 g"
      "milk"        = "100 ml"
      "fresh yeast" = "25 g"
    }
  }

  dough "kugelhopf dough" {
    ingredients = {
      "the leaven" = "all"
      "flour"      = "400 g"
      "milk"       = "100 ml"
      "egg"        = "2 pieces"
      "butter"     = { amount = "200 g", reserve = "200 g" }
      "raisins"    = "80 g"
      "sugar"      = "75 g"
      "salt"       = "1 tsp"
    }
  }
}
