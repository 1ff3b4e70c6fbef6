# Dinner rolls, an institutional quantity recipe (read). The fat was not recorded, so none is entered: fat and total weight
# mean nothing here. 15 cups of water taken as 125 oz.
formula "Dinner rolls" {
  family = "lean sweet roll"

  dough "dinner roll dough" {
    ingredients = {
      "bread flour"      = "1000 g"
      "water"            = "55.8 %"
      "sugar"            = "10.71 %"
      "egg"              = "4.73 %"
      "salt"             = "1.79 %"
      "dry skim milk"    = "7.14 %"
      "active dry yeast" = "2.23 %"
    }
  }
}
