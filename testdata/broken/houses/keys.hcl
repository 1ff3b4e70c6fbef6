house "Our kitchen" {
  pack    = ["balance"]
  fail_at = "never"

  kitchn {
    room = "22 C"
  }

  kitchen {
    room   = "22"
    fridge = "40 C"
    code   = "moon"
  }

  tin "loaf" {
    size = "300 x 100 x 100 mm"
  }
}
