house "Harbour kitchen" {
  packs = ["draft", "balance", "yeast", "hygiene", "./rules"]

  kitchen {
    room   = "21 C"
    fridge = "3 C"
  }

  tin "long tin" { inside = "300 x 100 x 100 mm" }

  ingredient "farm butter" {
    like = "unsalted butter"
    salt = "1.2 %"
  }

  set "salt-low" {
    limits  = { salt_pct = 1.4 }
    because = "tasted twice"
  }
}
