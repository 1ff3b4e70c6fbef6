# From a plain text: 1 thing not read, 12 questions or guesses besides. Each stands in a comment at its place.
formula "Ropemakers' Chelsea buns" {
  makes = "12 pieces"

  dough "dough" {
    ingredients = {
      "strong white flour" = "500 g"   # left out: plus extra for dusting
      "fast-action yeast"  = "7 g"   # written: 7g sachet fast-action yeast
      "caster sugar"       = "50 g"
      "fine salt"          = "1 tsp"
      "whole milk"         = { amount = "225 ml", note = "warmed" }   # warmed: how warm? add temp = "40 C"
      "unsalted butter"    = { amount = "50 g", temp = "25 to 35 C" }   # melted and cooled: read as 25 to 35 C
      "size M egg"         = "1 piece"   # read as a UK medium egg, by the other words here
    }
    steps = [
      # Sift the flour, yeast, sugar and salt into a bowl
      # Add the milk, butter and egg and bring together to a dough
      { mix = "8 to 10 min", note = "add, knead", by = "hand" },
      # Knead for 8-10 mins, by hand or in a mixer
      # Cover with cling film and leave somewhere warm for 1 hr 15 mins
      { rest = "1 h 15 min", at = "25 C to 30 C", covered = true },   # a warm place: read as 25 to 30 C
      # Knock back the dough and roll out to a rectangle about 40 x 30cm
      { fold = 1, note = "knock back" },
      { sheet = "3 mm to 12 mm", wide = "40 cm" },   # 40 x 30cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # Spread with the softened butter and scatter over the sugar, spice and currants
      { fill = "filling" },
      # Roll up tightly from the long side and cut into 12 slices
      { roll = "coil" },
      { divide = 12 },
      # Arrange cut-side up in a buttered 23cm square tin, cover and prove for 45 mins
      { proof = "45 min", at = "room", covered = true },   # not said where: read as the room
      # not read in it: 23cm square
      # Heat oven to 190C/170C fan/gas 5
      # Bake for 25 mins
      { bake = "25 min", at = "190 C" },
      { brush = "glaze" },
      # Leave to cool in the tin
      { cool = "30 min to 2 h", at = "room" },   # how long? 30 min to 2 h: common practice
    ]
  }

  filling "filling" {
    ingredients = {
      "butter"                = { amount = "40 g", as = "softened" }   # read as unsalted butter; it may be salted butter, European-style butter
      "light muscovado sugar" = "80 g"
      "mixed spice"           = "1 tsp"
      "currants"              = "150 g"
    }
  }

  topping "glaze" {
    ingredients = {
      "caster sugar" = "3 tbsp"
      "milk"         = "3 tbsp"   # read as whole milk; it may be reduced-fat milk, skim milk
    }
    steps = [
      # Simmer the sugar and milk for the glaze for 2 mins, then brush over the hot buns
      { cook = "2 min", by = "simmering" },
    ]
  }
}
