# From a plain text: 5 things not read, 13 questions or guesses besides. Each stands in a comment at its place.
# not read: Mrs. Harold Lindqvist, Bethany Circle
# not read: Melted oleo
formula "REFRIGERATOR ROLLS" {
  makes = "48 pieces"

  dough "dough" {
    ingredients = {
      "dry yeast"     = "14 g"   # read as active dry yeast; it may be instant yeast; a package of dry yeast is 7 g; read the label; 2 of them; written: 2 pkg. dry yeast
      "warm water"    = { amount = "1/2 cup", note = "warm" }   # warm: how warm? add temp = "40 C"
      "shortening"    = "1 cup"
      "sugar"         = "3/4 cup"
      "salt"          = "2 tsp"
      "boiling water" = { amount = "1 cup", temp = "95 to 100 C" }   # boiling: how hot is it when it goes in? read as 95 to 100 C
      "eggs"          = { amount = "2 pieces", as = "beaten" }
      "cold water"    = "1 cup"
      "flour"         = "6 to 6 1/2 cup"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
    }
    steps = [
      # Soften yeast in warm water
      { soak = "5 to 15 min", with = ["dry yeast", "warm water"] },   # how long? 5 to 15 min: common practice
      # Pour boiling water over shortening, sugar & salt
      { mix = "1 to 10 min", note = "pour boiling water over, blend, add, mix" },   # how long? 1 to 10 min: common practice
      # blend & cool
      # Add eggs & yeast
      # Add cold water & flour alternately
      # Mix well
      # cover & put in refrig. overnight
      { chill = "8 h to 14 h", at = "fridge", covered = true },   # overnight: read as 8 h to 14 h
      # not read: (Will keep 4 days.)
      # not read: Three hours before serving, make out rolls
      # Roll dough 1/2" thick, cut with biscuit cutter, brush with melted oleo & fold over
      { sheet = "1/2 in" },
      { divide = "?" },   # into how many? cut with biscuit cutter
      # { wash = "?" }   # not read: which part is it? write a wash part: brush with melted oleo & fold over
      # Place close tog. in greased 9x13 pan
      { pan = "place close tog. in greased 9x13 pan", tin = "9x13 pan" },
      # Let stand in warm place 2-3 hrs
      { proof = "2 to 3 h", at = "25 C to 30 C" },   # a warm place: read as 25 to 30 C
      # Bake at 425° for 12-15 min
      { bake = "12 to 15 min", at = "425 F" },   # 425° has no letter: read as 425 F
      # Makes abt. 4 doz
    ]
  }
}
