rule "Salt Low" {
  on     = "doug"
  level  = "warning"
  when   = "dough.salt_pct < 1"
  say    = "Salt is low."
  why    = "Taste."
  source = "common practice"
}

rule "bare" {
}

rule "extra" {
  on       = "dough"
  level    = "note"
  severity = "high"
  when     = "dough.salt_pct < 1"
  say      = "Salt is low."
  why      = "Taste."
  source   = "common practice"
}

rule "waiver-idle" {
  on     = ["dough", "bake"]
  level  = "note"
  when   = "dough.salt_pct < 1"
  say    = "Salt is low."
  why    = "Taste."
  source = "common practice"
}

rule "twice" {
  on     = "dough"
  level  = "note"
  doubt  = "maybe"
  when   = "dough.salt_pct < 1"
  say    = "Salt is low."
  why    = "Taste."
  source = "common practice"
}

formula "not here" {
}

rule "eased-risk" {
  on      = "dough"
  level   = "risk"
  careful = "risk"
  risk    = "dough.salt_pct < 0.5"
  when    = "dough.salt_pct < 1"
  say     = "Salt is low."
  why     = "Taste."
  source  = "common practice"
}

rule "eased-too-far" {
  on      = "dough"
  level   = "stop"
  doubt   = "flag"
  careful = "note"
  when    = "dough.salt_pct < 1"
  say     = "Salt is low."
  why     = "Taste."
  source  = "common practice"
}
