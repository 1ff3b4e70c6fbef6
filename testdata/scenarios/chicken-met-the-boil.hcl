# Chicken in boiling water for a minute, on buns that are baked already.
formula "Chicken that met the boil" {
  makes = "12 buns"
  filling "chicken" {
    ingredients = { "chicken breast" = "500 g", "water" = "500 g", "salt" = "5 g" }
    steps = [
      { cook  = "1 min", by = "boiling" },
    ]
  }
  dough "d" {
    ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "5 g", "salt" = "9 g" }
    steps = [ { mix = "10 min", by = "spiral", to = "26 C" }, { rest = "1 h", at = "room", covered = true }, { divide = 12 }, { proof = "1 h", at = "27 C" }, { bake = "16 min", at = "200 C", measured = "95 C core" }, {fill = "chicken" } ]
  }
}
