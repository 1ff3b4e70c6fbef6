# Worked examples of published baker's arithmetic, as formulas. worked-examples.csv says what each must come to.

# A baking blog on baker's percentage: poolish of 468 g flour and 468 g water.
formula "P01 poolish" {
  preferment "poolish" {
    ingredients = {
      "bread flour" = "468 g"
      "water"       = "468 g"
    }
  }

  dough "bread" {
    ingredients = {
      "the poolish"   = "all"
      "bread flour"   = "900 g"
      "water"         = "468 g"
      "salt"          = "27 g"
      "instant yeast" = "9 g"
    }
  }
}

# A baking forum comment: 1000 g flour at 70 %, a quarter of the flour prefermented at 100 %.
formula "P02 a quarter prefermented" {
  preferment "preferment" {
    ingredients = {
      "bread flour" = "250 g"
      "water"       = "100 %"
    }
  }

  dough "bread" {
    ingredients = {
      "the preferment" = "500 g"
      "bread flour"    = "750 g"
      "water"          = "450 g"
    }
  }
}

# Baker's math slides: 40 lb of flour, 23 lb of water, 1.75 % of yeast.
formula "B05 B06 forty pounds" {
  dough "bread" {
    ingredients = {
      "bread flour"   = "40 lb"
      "water"         = "23 lb"
      "instant yeast" = "1.75 %"
    }
  }
}

# Gisslen, Professional Cooking: percentages of 377.5 in all, 96 oz of dough wanted, so 25.43 oz of flour.
formula "S01 ninety-six ounces" {
  makes = "96 oz"

  dough "dough" {
    ingredients = {
      "bread flour" = "25.43 oz"
      "water"       = "277.5 %"
    }
  }
}

# The same, 3000 g wanted, so 794.7 g of flour.
formula "S02 three kilos" {
  makes = "3000 g"

  dough "dough" {
    ingredients = {
      "bread flour" = "794.7 g"
      "water"       = "277.5 %"
    }
  }
}

# Gisslen, baking losses: scale 17.5 to 18 oz for a pound baked.
formula "S03 a pound baked" {
  dough "dough" {
    ingredients = {
      "bread flour" = "11 oz"
      "water"       = "7 oz"
    }
  }
}

# Accum F., A Treatise on Bread (1821): 5 lb of dough gave 4 lb 5.5 oz of bread.
formula "S04 five pounds" {
  dough "dough" {
    ingredients = {
      "bread flour" = "3 lb"
      "water"       = "2 lb"
    }
  }
}

# Gisslen, Professional Cooking: 40 g of fresh yeast do the work of 14 g of instant.
formula "Y01 fresh for instant" {
  dough "with fresh" {
    ingredients = {
      "bread flour" = "1000 g"
      "water"       = "60 %"
      "fresh yeast" = "40 g"
    }
  }
}

# The same book: 1.5 oz of fresh yeast do the work of 0.75 oz of active dry.
formula "Y02 fresh for active dry" {
  dough "with fresh" {
    ingredients = {
      "bread flour" = "100 oz"
      "water"       = "60 %"
      "fresh yeast" = "1.5 oz"
    }
  }

  dough "with active dry" {
    ingredients = {
      "bread flour"      = "100 oz"
      "water"            = "60 %"
      "active dry yeast" = "0.75 oz"
    }
  }
}
