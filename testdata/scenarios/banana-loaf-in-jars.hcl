# Eight weeks in lidded jars in the room.
formula "Banana loaf in jars" {
  family = "sweet dough"
  dough "banana dough" {
    ingredients = {
      "bread flour" = "1 kg"
      "banana" = "500 g"
      "whole milk" = { amount = "200 g", temp = "20 C" }
      "egg" = "100 g"
      "sugar" = "120 g"
      "salt" = "16 g"
      "instant yeast" = "12 g"
      "unsalted butter" = { amount = "100 g", temp = "18 C" }
    }
    steps = [
      { mix = "10 min", by = "spiral", to = "26 C" },
      { rest = "75 min", at = "room", as = "bowl", covered = true },
      { divide = "250 g" },
      { pan = "in preserving jars" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "35 min", at = "170 C", core = "95 C" },
      { handle = "screw the lids on hot, so that the jars seal" },
      { store = "8 week", at = "room", covered = true },
    ]
  }

}
