# Solutions and foods of known water activity, one a part. water-activity.csv holds what each should come to, and its source.
formula "Solutions and foods" {
  syrup "equal syrup" {
    ingredients = {
      "sugar" = "500 g"
      "water" = "500 g"
    }
  }

  # 67.4 g of sugar in 100 g is all that water of 25 C holds.
  syrup "just saturated syrup" {
    ingredients = {
      "sugar" = "674 g"
      "water" = "326 g"
    }
  }

  # More sugar than dissolves at 25 C: the rest is crystal and lowers nothing.
  syrup "oversaturated syrup" {
    ingredients = {
      "sugar" = "780 g"
      "water" = "220 g"
    }
  }

  syrup "sucrose 26 percent" {
    ingredients = {
      "sugar" = "260 g"
      "water" = "740 g"
    }
  }

  wash "salt 3.5 percent" {
    ingredients = {
      "salt"  = "35 g"
      "water" = "965 g"
    }
  }

  wash "salt 10 percent" {
    ingredients = {
      "salt"  = "100 g"
      "water" = "900 g"
    }
  }

  wash "salt 17 percent" {
    ingredients = {
      "salt"  = "170 g"
      "water" = "830 g"
    }
  }

  filling "pastry cream" {
    ingredients = {
      "whole milk"  = "1000 g"
      "egg yolk"    = "200 g"
      "sugar"       = "250 g"
      "corn starch" = "80 g"
    }
  }

  dough "lean dough" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "62 %"
      "salt"          = "2 %"
      "instant yeast" = "1 %"
    }
  }

  filling "honey alone" {
    ingredients = {
      "honey" = "100 g"
    }
  }

  filling "jam alone" {
    ingredients = {
      "jam" = "100 g"
    }
  }

  filling "marmalade alone" {
    ingredients = {
      "marmalade" = "100 g"
    }
  }

  filling "sweetened condensed milk" {
    ingredients = {
      "condensed milk" = "100 g"
    }
  }

  filling "cream cheese alone" {
    ingredients = {
      "cream cheese" = "100 g"
    }
  }

  # University of Minnesota Extension: about 2 parts of sugar to 1 of cream cheese, 65 Brix or more, is judged shelf-stable.
  topping "cream cheese frosting" {
    ingredients = {
      "powdered sugar" = "200 g"
      "cream cheese"   = "100 g"
    }
  }

  filling "raisins alone" {
    ingredients = {
      "raisins" = "100 g"
    }
  }
}
