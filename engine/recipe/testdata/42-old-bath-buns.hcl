# From a plain text: 1 thing not read, 14 questions or guesses besides. Each stands in a comment at its place.
formula "BATH BUNS" {

  dough "dough" {
    ingredients = {
      "best white flour" = "1 lb"
      "fresh yeast"      = "1 oz"
      "milk"             = { amount = "½ UK pint", note = "new" }   # read as a UK pint, by the other words here; read as whole milk; it may be reduced-fat milk, skim milk
      "butter"           = "4 oz"   # read as unsalted butter; it may be salted butter, European-style butter
      "castor sugar"     = "4 oz"
      "eggs"             = "3 pieces"
      "salt"             = "½ teaspoon"   # written: ½ teaspoonful salt
      "sultanas"         = "4 oz"
      "candied peel"     = { amount = "2 oz", as = "chopped" }
      "loaf sugar"       = { amount = "?", as = "crushed" }   # a little: weigh it
    }
    steps = [
      # Cream the yeast with a teaspoonful of the sugar, add the milk made lukewarm, and stir in a third of the flour
      { mix = "2 to 10 min", note = "cream the, add, stir" },   # how long? 2 to 10 min: common practice
      # not read in it: a third of the flour alone; say what goes in later, with reserve
      # Set this sponge to rise in a warm place for half an hour
      { rest = "1/2 h", at = "25 C to 30 C" },   # a warm place: read as 25 to 30 C
      # Rub the butter into the remainder of the flour, and add the salt and sugar
      { mix = "10 min", note = "rub, add, beat", with = ["best white flour", "butter", "castor sugar", "eggs", "salt", "loaf sugar"] },
      # Beat the eggs and add, with the sponge, to the flour
      # Beat all well together with the hand for ten minutes
      # Cover with a cloth and stand by the fire till twice its bulk, about one hour and a half
      { rest = "1 1/2 h", at = "25 C to 30 C", covered = true },   # a warm place: read as 25 to 30 C
      # Work in the fruit and peel
      { mix = "2 to 10 min", note = "work in", with = ["sultanas", "candied peel"] },   # how long? 2 to 10 min: common practice
      # Divide into twelve, shape roughly and lay on a greased baking sheet
      { divide = 12 },
      { shape = "shape" },
      { pan = "lay on a greased baking sheet" },
      # Prove for twenty minutes
      { proof = "20 min", at = "room" },   # not said where: read as the room
      # Brush over with beaten egg, strew with the crushed sugar, and bake in a hot oven for fifteen to twenty minutes
      { wash = "beaten egg" },
      { dust = "strew with the crushed sugar," },
      { bake = "15 to 20 min", at = "200 C to 220 C" },   # hot oven: read as 200 C to 220 C, common practice
      # Take the buns out of the tin and cool on a sieve
      { cool = "30 min to 2 h", at = "room" },   # how long? 30 min to 2 h: common practice
    ]
  }

  wash "beaten egg" {
    ingredients = {
      "beaten egg" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice; in no list: from the method
    }
  }
}
