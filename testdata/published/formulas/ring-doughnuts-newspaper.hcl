# indiatodayne.in, classic donuts (read). 3/4 cup warm milk, 2.25 tsp active dry yeast, 2.5 cups
# flour; 5 to 7 min, an hour warm, half an inch thick, 30 min, fat of 350 F for 1 to 2 min a side.
formula "Ring doughnuts of a newspaper" {
  family = "doughnut"

  dough "doughnut dough" {
    ingredients = {
      "milk"              = "0.75 cup"
      "sugar"             = "0.25 cup"
      "active dry yeast"  = "2.25 tsp"
      "all-purpose flour" = "2.5 cups"
      "unsalted butter"   = "2 tbsp"
      "egg"               = "1 piece"
      "salt"              = "0.5 tsp"
    }
    steps = [
      { mix   = "5 min to 7 min" },
      { rest  = "1 h", covered = true },   # warm, until doubled
      { sheet = "0.5 in" },
      { shape = "rings" },
      { proof = "30 min", covered = true },
      { cook  = "2 min to 4 min", at = "350 F", by = "frying" },
    ]
  }
}
