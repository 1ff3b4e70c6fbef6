rule "limit-in-words" {
  on     = "dough"
  level  = "note"
  limits = { most_pct = "twenty", most_c = "kitchen.frige_c", far_g = 1e12, most_h = "kitchen.fridge_c" }
  when   = "dough.sugar_pct > limit.most_pct"
  say    = "Sugar is high."
  why    = "Taste."
  source = "common practice"
}

rule "lever" {
  on     = "dough"
  level  = "note"
  when   = "dough.sugar_pct > 20"
  say    = "Sugar is high."
  why    = "Taste."
  source = "common practice"

  adjust "sugr" {
    within = [4, 0.3]
  }
}
