formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = { amount = "500 g", strain = "osmotolerant", protein = "13" }
      "instant yeast" = { amount = "6 g", strain = "osmotic", protein = "12 %" }
      "strong white bread flour" = { amount = "500 g", protein = "60 %" }
      "whole milk"    = { amount = "200 g", amount = "90 g" }
      "hazelnuts"     = "3 pieces"
      "raisins" = "some"
      "salt" = "${9} g"
      "sugar" = "%{ if true }9 g%{ endif }"
      "honey" = upper("9 g")
      "egg" = "2 pieces" == "2 pieces"
      "vanilla extract" = []
    }
  }
}
