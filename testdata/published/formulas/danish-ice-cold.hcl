# abcdocz.com 3132829, grund-wienerdej (read), for about 20 pieces. Ice-cold water, egg and flour;
# mixed only just; 625 g butter on 625 g flour; three turns with at least 15 min in the fridge
# between them: 27 layers. Not every time or temperature is printed or stored, so only weights are
# entered.
formula "Danish dough, ice-cold" {
  family = "danish"
  makes  = "20 pieces"

  filling "roll-in butter" {
    ingredients = {
      "butter" = "625 g"
    }
  }

  dough "danish dough" {
    ingredients = {
      "fresh yeast" = "40 g"
      "ice water"   = "250 ml"
      "egg"         = "206 g"
      "sugar"       = "75 g"
      "salt"        = "15 g"
      "flour"       = "625 g"
    }
  }
}
