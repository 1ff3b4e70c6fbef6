# From a plain text: 1 thing not read, 16 questions or guesses besides. Each stands in a comment at its place.
# makes 16: the text says about
formula "Spandauer (Danish pastries)" {
  makes = "16 pieces"

  dough "dough" {
    ingredients = {
      "fresh yeast" = "25 g"
      "cold milk"   = "1½ dl"
      "egg"         = "1 piece"
      "sugar"       = "1 tbsp"
      "salt"        = "½ tsp"
      "plain flour" = "325 g"
    }
    steps = [
      # Stir the yeast into the cold milk
      { soak = "5 to 15 min", with = ["fresh yeast", "cold milk"] },   # how long? 5 to 15 min: common practice
      # Add the egg, sugar, salt and flour and knead briefly
      { mix = "5 to 15 min", note = "add, knead" },   # how long? 5 to 15 min: common practice
      # Wrap and chill for 30 minutes
      { chill = "30 min", at = "fridge", covered = true },
      # Roll out the dough to 35 x 35 cm
      { sheet = "3 mm to 12 mm", wide = "35 cm" },   # 35 x 35 cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # not read: Roll the butter between paper to 25 x 25 cm
      # Lay the butter on the dough and enclose
      { fill = "rolling in" },
      # Roll out to 50 x 30 cm and fold in thirds
      { sheet = "3 mm to 12 mm", wide = "50 cm" },   # 50 x 30 cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      { fold = 1, note = "fold in thirds" },
      # Chill for 20 minutes
      { chill = "20 min", at = "fridge" },
      # Repeat twice
      { fold = 1, note = "fold in thirds" },   # again
      { chill = "20 min", at = "fridge" },   # again
      { fold = 1, note = "fold in thirds" },   # again
      { chill = "20 min", at = "fridge" },   # again
      # Roll out to 40 x 40 cm, 4 mm thick, and cut into 16 squares
      { sheet = "4 mm", wide = "40 cm" },   # 40 x 40 cm: the longer side is read as the one rolled up
      { divide = 16 },
      # Put a spoonful of custard on each and fold the corners in
      { fill = "custard" },
      # Place on baking sheets and prove for 30 minutes
      { pan = "place on baking sheets" },
      { proof = "30 min", at = "room" },   # not said where: read as the room
      # Brush with the egg, scatter with the almonds and bake at 220°C for 12-15 minutes
      { wash = "to finish" },
      { wash = "almonds" },
      { bake = "12 to 15 min", at = "220 C" },
    ]
  }

  filling "rolling in" {
    ingredients = {
      "cold butter" = "250 g"
    }
  }

  filling "custard" {
    ingredients = {
      "milk"        = "2 dl"   # read as whole milk; it may be reduced-fat milk, skim milk
      "egg yolk"    = "1 piece"
      "cornflour"   = "1 tbsp"
      "sugar"       = "2 tbsp"
      "vanilla pod" = "½ pieces"
    }
    steps = [
      # For the custard, whisk the yolk, sugar and cornflour
      # Bring the milk to the boil with the vanilla, pour over the yolk mixture, return to the pan and cook for 2 minutes
      { cook = "2 to 20 min", by = "boiling", with = ["milk"] },   # how long? 2 to 20 min: common practice
      { cook = "2 min" },
      # Cool
      { cool = "1 h to 4 h", at = "room" },   # how long? 1 h to 4 h: common practice
    ]
  }

  wash "to finish" {
    ingredients = {
      "egg" = { amount = "1 piece", as = "beaten" }
    }
  }

  topping "almonds" {
    ingredients = {
      "flaked almonds" = "50 g"
    }
  }
}
