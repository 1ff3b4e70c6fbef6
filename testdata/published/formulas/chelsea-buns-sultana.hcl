# thepantler.blogspot.com/2012/05/chelsea-buns.html (read). 500 g strong
# flour, 7 g dried yeast, 300 ml warm milk, an egg; 10 to 15 min, an hour, slices of about 3 cm,
# about 30 min, 20 to 25 min at 190 C. Cinnamon to taste.
formula "Chelsea buns with sultanas" {
  family = "cinnamon roll"
  dough "bun dough" {
    ingredients = {
      "strong plain flour" = "500 g"
      "salt"               = "1 tsp"
      "dried yeast"        = "7 g"
      "milk"               = "300 ml"
      "egg"                = "1 piece"
    }
    steps = [
      { mix   = "10 min to 15 min", by = "hand" },
      { rest  = "1 h", covered = true },
      { fill  = "sugar and sultanas" },
      { roll  = "coil", slice = "30 mm" },
      { proof = "30 min", covered = true },
      { bake  = "20 min to 25 min", at = "190 C" },
    ]
  }

  filling "sugar and sultanas" {
    ingredients = {
      "butter"           = { amount = "25 g", as = "melted" }
      "soft brown sugar" = "75 g"
      "cinnamon"         = "?"
      "sultanas"         = "150 g"
    }
  }
}
