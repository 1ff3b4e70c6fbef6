# The side that is rolled up is the sheet's: no other step takes it.
formula "Wide" {
  dough "coil dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { mix   = "10 min", wide = "30 cm" },
      { sheet = "5 mm", wide = "30" },
      { sheet = "5 mm", wide = "30 g" },
      { sheet = "5 mm", wide = 30 },
      { sheet = "5 mm", wide = "0 cm" },
      { sheet = "5 mm", wyde = "30 cm" },
      { sheet = "5 mm", slice = "40 mm" },
      { roll  = "coil", wide = "30 cm" },
      { bake  = "20 min", at = "200 C", wide = "30 cm" },
    ]
  }
}
