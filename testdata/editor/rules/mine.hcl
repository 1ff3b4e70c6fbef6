about = "what this kitchen holds dear"

rule "sweet-and-lean" {
  on     = "dough"
  level  = "note"
  limits = { sugar_pct = 15, fat_pct = 10 }
  when   = "dough.sugar_pct > limit.sugar_pct && dough.fat_pct < limit.fat_pct"
  say    = "Sugar is {dough.sugar_pct} with only {dough.fat_pct} of fat. Add a yolk."
  why    = "Two batches came back."
  source = "common practice"
}

trial "a lean sweet dough" {
  rule   = "sweet-and-lean"
  expect = "flagged"

  formula "lean" {
    dough "d" {
      ingredients = {
        "bread flour" = "500 g"
        "water"       = "300 g"
        "sugar"       = "90 g"
      }
    }
  }
}
