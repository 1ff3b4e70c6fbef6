# One amount or temperature a part, in units that are not the larder's own. Water weighs 1 g/mL in the larder, so its
# millilitres are its grams. units.csv holds the exact values.
formula "Units" {
  wash "ounce" {
    ingredients = {
      "sugar" = "1 oz"
    }
  }

  wash "pound" {
    ingredients = {
      "sugar" = "1 lb"
    }
  }

  wash "pound and ounces" {
    ingredients = {
      "sugar" = "1 lb 4 oz"
    }
  }

  wash "half pound" {
    ingredients = {
      "sugar" = "1/2 lb"
    }
  }

  wash "cup" {
    ingredients = {
      "water" = "1 cup"
    }
  }

  wash "mixed number of cups" {
    ingredients = {
      "water" = "1 1/2 cups"
    }
  }

  wash "tablespoon" {
    ingredients = {
      "water" = "1 tbsp"
    }
  }

  wash "teaspoon" {
    ingredients = {
      "water" = "1 tsp"
    }
  }

  wash "half teaspoon" {
    ingredients = {
      "water" = "½ tsp"
    }
  }

  wash "fluid ounce" {
    ingredients = {
      "water" = "1 floz"
    }
  }

  wash "litre" {
    ingredients = {
      "water" = "1 l"
    }
  }

  wash "range of ounces" {
    ingredients = {
      "sugar" = "2 oz to 3 oz"
    }
  }

  wash "freezing" {
    ingredients = {
      "water" = { amount = "100 g", temp = "32 F" }
    }
  }

  wash "boiling" {
    ingredients = {
      "water" = { amount = "100 g", temp = "212 F" }
    }
  }

  wash "same on both scales" {
    ingredients = {
      "salt" = { amount = "100 g", temp = "-40 F" }
    }
  }

  wash "blood heat" {
    ingredients = {
      "water" = { amount = "100 g", temp = "98.6 F" }
    }
  }

  wash "butter out" {
    ingredients = {
      "unsalted butter" = { amount = "100 g", temp = "65 F" }
    }
  }

  dough "in the oven" {
    ingredients = {
      "bread flour" = "1 lb"
      "water"       = "60 %"
    }
    steps = [
      { rest  = "90 min", at = "80 F" },
      { sheet = "1/4 in" },
      { bake  = "20 min", at = "400 F", core = "200 F" },
    ]
  }
}
