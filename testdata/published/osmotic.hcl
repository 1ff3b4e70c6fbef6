# Doughs of rising sugar at 2 % salt, once with each strain of yeast. osmotic.csv holds what is published of them. The true
# hydrations are not published: these reproduce the published molalities.
formula "Standard" {
  dough "lean" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "60 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "standard" }
    }
  }

  dough "sugar 5" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "60 %"
      "sugar"         = "5 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "standard" }
    }
  }

  dough "sugar 10" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "58.6 %"
      "sugar"         = "10 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "standard" }
    }
  }

  dough "sugar 15" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "57.3 %"
      "sugar"         = "15 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "standard" }
    }
  }

  dough "sugar 20" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "61 %"
      "sugar"         = "20 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "standard" }
    }
  }

  dough "sugar 25" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "61.7 %"
      "sugar"         = "25 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "standard" }
    }
  }

  dough "sugar 30" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "63.8 %"
      "sugar"         = "30 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "standard" }
    }
  }
}

formula "Osmotolerant" {
  dough "lean" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "60 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "osmotolerant" }
    }
  }

  dough "sugar 5" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "60 %"
      "sugar"         = "5 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "osmotolerant" }
    }
  }

  dough "sugar 10" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "58.6 %"
      "sugar"         = "10 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "osmotolerant" }
    }
  }

  dough "sugar 15" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "57.3 %"
      "sugar"         = "15 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "osmotolerant" }
    }
  }

  dough "sugar 20" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "61 %"
      "sugar"         = "20 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "osmotolerant" }
    }
  }

  dough "sugar 25" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "61.7 %"
      "sugar"         = "25 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "osmotolerant" }
    }
  }

  dough "sugar 30" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "63.8 %"
      "sugar"         = "30 %"
      "salt"          = "2 %"
      "instant yeast" = { amount = "1 %", strain = "osmotolerant" }
    }
  }
}
