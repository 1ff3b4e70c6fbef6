# From a plain text: 0 things not read, 11 questions or guesses besides. Each stands in a comment at its place.
formula "Sufganiyot" {
  makes = "15 pieces"

  dough "dough" {
    # left out: oil for deep-frying
    # left out: powdered sugar for dusting
    ingredients = {
      "flour"         = "500 g"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
      "instant yeast" = "10 g"
      "sugar"         = "70 g"
      "salt"          = "1 tsp"
      "eggs"          = "2 pieces"
      "lukewarm milk" = { amount = "200 ml", temp = "35 to 40 C" }   # lukewarm: read as 35 to 40 C
      "soft butter"   = "60 g"
      "brandy"        = "1 tbsp"
    }
    steps = [
      # Put flour, yeast, sugar and salt in a mixer fitted with a dough hook
      # Add eggs, milk, brandy
      { mix = "10 min", note = "add, knead" },   # 10 min in all: 2 min, then on medium speed 8 min, adding the butter gradually
      # knead on low speed 2 min, then on medium speed 8 min, adding the butter gradually
      # Cover, let rise 1.5 hours
      { rest = "1.5 h", at = "room", covered = true },   # not said where: read as the room
      # Roll to 1.5 cm, cut 6 cm circles
      { sheet = "1.5 cm" },
      { divide = 15 },   # into how many? as many as it makes: cut 6 cm circles
      # Let rise again 30-45 min
      { proof = "30 to 45 min", at = "room" },   # not said where: read as the room
      # Fry in oil at 165–170°C, 2 min per side
      { cook = "4 min", at = "165 to 170 C", by = "frying" },   # 2 min per side: read as both sides
      # Drain on paper
      { handle = "Drain on paper" },
      # When cool, pipe in the jam and dust with powdered sugar
      { cool = "30 min to 2 h", at = "room" },   # how long? 30 min to 2 h: common practice
      { fill = "strawberry jam" },
      { dust = "dust with powdered sugar" },
    ]
  }

  filling "strawberry jam" {
    ingredients = {
      "strawberry jam" = "300 g"   # read as the filling, by the method: not in the dough
    }
  }
}
