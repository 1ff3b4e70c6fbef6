# gutgemacht.at/butterzopf-rezept (read). 42 g fresh yeast, 5.5 dl lukewarm milk, 1
# to 1.5 tbsp salt. First rise until doubled, no time printed. Not every time or temperature is
# printed or stored, so only weights are entered.
formula "Butter plait, one kilo" {
  family = "zopf"
  dough "plait dough" {
    ingredients = {
      "flour"       = "1000 g"
      "salt"        = "1 to 1.5 tbsp"
      "butter"      = "150 g"
      "fresh yeast" = "42 g"
      "milk"        = "550 ml"
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"
    }
  }
}
