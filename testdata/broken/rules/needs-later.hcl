needs = "99.1"

rule "salt-low-here" {
  on     = "dough"
  level  = "note"
  when   = "dough.salt_pct < 1"
  say    = "Salt is low."
  why    = "Taste."
  source = "common practice"
}
