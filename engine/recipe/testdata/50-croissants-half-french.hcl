# From a plain text: 1 thing not read, 5 questions or guesses besides. Each stands in a comment at its place.
formula "Pâte à croissants (for 4 kg)" {

  dough "détrempe" {
    ingredients = {
      "farine T45"                = "2000 g"
      "sel"                       = "40 g"
      "sucre"                     = "240 g"
      "levure biologique fraîche" = "80 g"
      "beurre"                    = "200 g"
      "lait"                      = "500 g"
      "eau"                       = "500 g"
    }
    steps = [
      # Pétrissage: 4 min 1st speed, 6 min 2nd speed
      { mix = "10 min", note = "pétrissage", to = "24 C" },   # 10 min in all: 4 min 1st speed, 6 min 2nd speed
      # Dough temperature 24°C
      # Pointage 30 min, then 12 h at 3°C
      { rest = "30 min", at = "room" },   # not said where: read as the room
      { rest = "12 h", at = "3 C" },
      # Enclose the butter
      { fill = "butter block" },
      # Give one double turn and one single turn
      { fold = 1, note = "give one double turn" },
      { fold = 1, note = "one single turn" },
      # Détente 30 min at 4°C
      { rest = "30 min", at = "4 C" },
      # Sheet to 3.5 mm, cut triangles of 80 g
      { sheet = "3.5 mm" },
      { divide = "80 g" },
      # not read: Roll
      # Dorure
      { wash = "egg wash" },
      # Apprêt 2 h at 27°C
      { proof = "2 h", at = "27 C" },
      # Dorure
      { wash = "egg wash" },
      # Bake 16 min at 180°C in a fan oven
      { bake = "16 min", at = "180 C" },
    ]
  }

  filling "butter block" {
    ingredients = {
      "beurre de tourage" = "1000 g"   # read as folded in, no part of the détrempe
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice; in no list: from the method
    }
  }
}
