# Saltmarsh Lane is invented, and so is everything that it bakes. The formulas beside this file are held against it.

house "Saltmarsh Lane test kitchen" {
  about = "A small test kitchen by the water: one spiral mixer, one deck oven, one upright fridge."

  kitchen {
    room     = "21 C"
    fridge   = "3 C"           # read on a thermometer in a glass of water, not on the dial
    freezer  = "-18 C"
    scale    = "1 g"           # so batches are sized until the yeast, salt and spice weigh 10 g or more
    bowl     = "9 kg"
    bench    = "180 x 75 cm"
    altitude = "10 m"
    friction = "5 C to 7 C"    # what the spiral adds to a dough of 6 to 12 minutes: ten batches, each probed at its end
  }

  # Inside measures, taken with a rule at half height because the sides taper.
  tin "long tin"  { inside = "300 x 100 x 100 mm" }
  tin "short tin" { inside = "220 x 105 x 95 mm" }

  # Churned salted by the dairy down the road; its salt counts wherever it goes.
  ingredient "farm butter" {
    like  = "unsalted butter"
    salt  = "1.2 %"
    price = "8.40 per kg"
  }

  # The bag says 12.8 g protein: stronger than the larder's bread flour, for doughs rich in butter and egg.
  ingredient "strong mill flour" {
    like    = "bread flour"
    protein = "12.8 %"
    price   = "1.15 per kg"
  }

  # Unsalted crumb sells badly here: two batches came back. The house asks for more salt than the shipped rule does.
  set "salt-low" {
    limits  = { salt_pct = 1.4 }
    because = "tasted against 1.2 % twice; the panel called it flat"
  }
}
