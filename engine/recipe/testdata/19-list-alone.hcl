# From a plain text: 0 things not read, 2 questions or guesses besides. Each stands in a comment at its place.
# the text has no title: name the formula
formula "Recipe" {

  dough "dough" {
    ingredients = {
      "T55"                   = "1000 g"
      "salt"                  = "20 g"
      "sugar"                 = "120 g"
      "fresh yeast"           = "30 g"
      "whole milk"            = "500 g"
      "egg"                   = "100 g"
      "butter"                = "200 g"   # read as unsalted butter; it may be salted butter, European-style butter
      "diastatic malt powder" = "5 g"
    }
  }
}
