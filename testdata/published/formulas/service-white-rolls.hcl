# timhowell.info, an adaptation of US Armed Forces Recipe Service TM 10-412, the column for 100
# (read). 110 oz bread flour, milk at 105 to 110 F, 12 eggs; 10 min at medium to high speed. Not
# every time or temperature is printed or stored, so only weights are entered.
formula "White rolls of the armed services" {
  family = "sweet dough"

  dough "roll dough" {
    ingredients = {
      "active dry yeast" = "2.5 oz"
      "milk"             = { amount = "40 oz", temp = "105 F to 110 F" }
      "egg"              = "12 pieces"
      "sugar"            = "19 oz"
      "salt"             = "2 oz"
      "bread flour"      = "110 oz"
      "butter"           = { amount = "16 oz", as = "soft" }
    }
  }
}
