rule "never-closed" {
  on     = "dough"
  level  = "note"
  when   = "dough.salt_pct < 1"
  say    = "Salt is {dough.salt_pct."
  why    = "Taste."
  source = "common practice"
}

rule "closes-nothing" {
  on     = "dough"
  level  = "note"
  when   = "dough.salt_pct < 1"
  say    = "Salt is dough.salt_pct}."
  why    = "Taste."
  source = "common practice"
}

rule "empty-figure" {
  on     = "dough"
  level  = "note"
  when   = "dough.salt_pct < 1"
  say    = "Salt is {}."
  why    = "Taste."
  source = "common practice"
}

rule "interpolation" {
  on     = "dough"
  level  = "note"
  when   = "dough.salt_pct < 1"
  say    = "Salt is ${dough.salt_pct}."
  why    = "Taste."
  source = "common practice"
}

rule "says-nothing" {
  on     = "dough"
  level  = "note"
  when   = "dough.salt_pct > 3"
  say    = "  "
  why    = ""
  source = " "
}
