house "Our kitchen" {
  ingredient "the paste" {
    like = "sugar"
  }

  ingredient "nut paste" {
    water = "60 %"
    fat   = "50 %"
    sugar = "20 %"
  }

  ingredient "odd flour" {
    like = "bred flour"
  }

  ingredient "bare" {
    salt = "1 g"
  }
}
