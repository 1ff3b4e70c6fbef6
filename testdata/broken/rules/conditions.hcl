rule "one-equals-sign" {
  on     = "dough"
  level  = "note"
  when   = "dough.salt_pct = 2"
  say    = "Salt is {dough.salt_pct}."
  why    = "Taste."
  source = "common practice"
}

rule "misspelt-figure" {
  on     = "dough"
  level  = "note"
  when   = "dough.sugr_pct > 20"
  say    = "Sugar is high."
  why    = "Taste."
  source = "common practice"
}

rule "misspelt-limit" {
  on     = "dough"
  level  = "note"
  limits = { most_pct = 20 }
  when   = "dough.sugar_pct > limit.mots_pct"
  say    = "Sugar is high."
  why    = "Taste."
  source = "common practice"
}

rule "no-comparison" {
  on     = "dough"
  level  = "note"
  when   = "dough.sugar_pct"
  say    = "Sugar is high."
  why    = "Taste."
  source = "common practice"
}

rule "a-program" {
  on     = "dough"
  level  = "note"
  when   = "len(map(1..1000000, #)) > 1"
  say    = "Sugar is high."
  why    = "Taste."
  source = "common practice"
}

rule "text-and-number" {
  on     = "ingredient"
  level  = "note"
  when   = "ingredient.class > 3"
  say    = "Odd."
  why    = "Taste."
  source = "common practice"
}

rule "ends-too-soon" {
  on     = "dough"
  level  = "note"
  when   = "dough.sugar_pct > "
  say    = "Odd."
  why    = "Taste."
  source = "common practice"
}
