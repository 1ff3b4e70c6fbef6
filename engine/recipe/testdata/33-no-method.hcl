# From a plain text: 0 things not read, 3 questions or guesses besides. Each stands in a comment at its place.
formula "Milk rolls for 30" {

  dough "dough" {
    ingredients = {
      "strong flour" = "1000 g"   # read as bread flour; it may be high-gluten flour
      "milk"         = "520 g"   # read as whole milk; it may be reduced-fat milk, skim milk
      "butter"       = "150 g"   # read as unsalted butter; it may be salted butter, European-style butter
      "sugar"        = "120 g"
      "salt"         = "18 g"
      "fresh yeast"  = "40 g"
      "eggs"         = "2 pieces"
    }
  }
}
