rule "salt-low-here" {
  on     = "dough"
  level  = "risk"
  when   = "dough.salt_pct < 1.4"
  say    = "Salt is {dough.salt_pct} of the flour."
  why    = "It tastes flat."
  source = "common practice"
}
