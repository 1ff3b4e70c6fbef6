# how-tasty.com, milk bread (read). 35 g flour and 175 g water to 65 C, cooled at room temperature;
# about 155 g of it goes in; 40 g of egg; about 15 min by hand; about 45 min warm. Not every time
# or temperature is printed or stored, so only weights are entered.
formula "Milk bread, very strong flour" {
  family = "milk bread"

  filling "flour paste" {
    ingredients = {
      "Manitoba flour" = "35 g"
      "water"          = "175 g"
    }
  }

  dough "milk bread dough" {
    ingredients = {
      "the flour paste"  = "155 g"
      "Manitoba flour"   = "340 g"
      "salt"             = "3 g"
      "sugar"            = "30 g"
      "active dry yeast" = "5 g"
      "egg"              = "40 g"
      "whole milk"       = "140 g"
      "unsalted butter"  = "40 g"
    }
  }
}
