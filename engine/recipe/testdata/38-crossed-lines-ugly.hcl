# From a plain text: 1 thing not read, 11 questions or guesses besides. Each stands in a comment at its place.
# not read: Serves 10
formula "CINNAMON PULL-APART" {

  dough "dough" {
    ingredients = {
      "milk"          = "1/2 cup"   # read as whole milk; it may be reduced-fat milk, skim milk; Scald milk, cool: how warm does it go in? add temp = "40 C"
      "instant yeast" = "2 1/4 tsp"   # "yeast" can mean several things: read as instant yeast; it may be active dry yeast, fresh yeast; written 1 pkg. too
      "sugar"         = "¼ cup"
      "salt"          = "1 tsp"
      "AP flour"      = "2 cup 2 tbsp"
      "butter"        = { amount = "3 tbsp", temp = "18 to 24 C" }   # read as unsalted butter; it may be salted butter, European-style butter; soft: read as 18 to 24 C
      "beaten egg"    = "1 piece"
    }
    steps = [
      # Scald milk, cool
      # Add yeast
      { mix = "5 min", note = "add, knead" },
      # Add everything else
      # Knead 5 min
      # Let rise till double (1 hr. or so)
      { rest = "1 h", note = "until doubled", at = "room" },   # not said where: read as the room
      # Roll 1/4" thick
      { sheet = "1/4 in" },
      # Brush with melted butter
      { fill = "filling" },
      # sprinkle with cinnamon sugar
      # Cut in 2" squares, stack in loaf pan (greased)
      { divide = "?" },   # into how many? Cut in 2" squares
      { pan = "stack in loaf pan" },
      # Rise 30 min
      { proof = "30 min", at = "room" },   # not said where: read as the room
      # Bake 30 min. @ 350
      { bake = "30 min", at = "350 F" },   # 350: read as 350 F
      # Cool 10 min. in pan
      { cool = "10 min", at = "room" },
    ]
  }

  filling "filling" {
    ingredients = {
      "sugar"    = "1/2 cup"
      "cinnamon" = "1 tbsp"
      "butter"   = { amount = "1/4 cup", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
    }
  }
}
