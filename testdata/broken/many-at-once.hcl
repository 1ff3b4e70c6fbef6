formula "Everything at once" {
  famly = "brioche"
  makes = "two dozen"

  dough "first" {
    ingredients = {
      "bread flour"  = "500"
      "caster suger" = "50 g"
      "salt"         = "9,5 g"
    }
    steps = [
      { proove = "1 h" },
      { bake = "20 min", at = "200" },
    ]
  }

  filling "second" {
    ingredients = { "the third" = "all" }
    steps       = [{ cook = 5 }]
  }
}
