# From a plain text: 1 thing not read, 13 questions or guesses besides. Each stands in a comment at its place.
formula "monkey bread!!" {

  dough "dough" {
    ingredients = {
      "flour"         = "3 1/4 cup"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
      "sugar"         = "2 tbsp"
      "instant yeast" = "7 g"   # "yeast" can mean several things: read as instant yeast; it may be active dry yeast, fresh yeast; a package of dry yeast is 7 g; read the label; written: yeast 1 pkg
      "salt"          = "2 tsp"
      "milk"          = { amount = "1 cup", note = "warm" }   # read as whole milk; it may be reduced-fat milk, skim milk; warm: how warm? add temp = "40 C"
      "water"         = "1/3 cup"
      "melted butter" = { amount = "2 tbsp", as = "melted" }
    }
    steps = [
      # mix it all, knead 10 min. let rise 1 hr. cut into 64 pcs & roll in balls
      { mix = "10 min", note = "mix, knead" },
      { rest = "1 h", at = "room" },   # not said where: read as the room
      { divide = "?" },   # into how many? cut into 64 pcs &
      { shape = "balls" },
      # dip in butter, roll in sugar & cinnamon
      { wash = "coating" },
      { wash = "brown sugar" },
      # put in greased bundt pan
      { pan = "put in greased bundt pan" },
      # rise 1 hr. bake 350 for 30-35 min. turn out after 5 min
      { proof = "1 h", at = "room" },   # not said where: read as the room
      { bake = "30 to 35 min", at = "350 F" },   # 350: read as 350 F
      # not read in it: 5 min
    ]
  }

  topping "coating" {
    ingredients = {
      "butter" = { amount = "4 oz", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter; a US stick of butter is 4 oz; written: 1 stick butter, melted
    }
  }

  topping "brown sugar" {
    ingredients = {
      "brown sugar" = "1 cup"
      "cinnamon"    = "2 tsp"
    }
  }
}
