figure "Richness" {
  on    = "dough"
  is    = "dough.fat_pct"
  means = "its name is not one"
}

figure "bare" {
}

figure "extra" {
  on     = "dough"
  is     = "dough.fat_pct"
  means  = "a key that no figure has"
  source = "nobody"
}

figure "mass_g" {
  on    = "part"
  is    = "part.flour_g"
  means = "the program has this one"
}

figure "twice_pct" {
  on    = "dough"
  is    = "dough.fat_pct"
  means = "the first"
}

figure "twice_pct" {
  on    = "dough"
  is    = "dough.egg_pct"
  means = "the second"
}

figure "own_tail_pct" {
  on    = "dough"
  is    = "dough.fat_pct + dough.own_tail_pct"
  means = "it bites itself"
}

figure "hen_pct" {
  on    = "dough"
  is    = "dough.egg_pct + dough.chick_pct"
  means = "a circle of three"
}

figure "chick_pct" {
  on    = "dough"
  is    = "max(dough.nest_pct, 1)"
  means = "a circle of three"
}

figure "nest_pct" {
  on    = "dough"
  is    = "dough.hen_pct > 1 ? 2 : 3"
  means = "a circle of three"
}

figure "misspelt_pct" {
  on    = "dough"
  is    = "dough.fat_pc + dough.egg_pct"
  means = "a fact with a slip"
}

figure "reader_of_misspelt_pct" {
  on    = "dough"
  is    = "dough.misspelt_pct * 2"
  means = "nothing is wrong here"
}

figure "limited_pct" {
  on    = "dough"
  is    = "dough.fat_pct - limit.fat_pct"
  means = "figures have no limits"
}

figure "mixed_pct" {
  on    = "dough"
  is    = "dough.fat_pct + dough.egg_g"
  means = "percent and grams"
}

figure "compared" {
  on    = "dough"
  is    = "dough.retard_h > dough.family_floor_c"
  means = "hours and degrees"
}

figure "wrong_end_g" {
  on    = "dough"
  is    = "dough.fat_pct + dough.egg_pct"
  means = "named for grams"
}

figure "two_units_pct" {
  on    = "dough"
  is    = "dough.fat_pct"
  unit  = "g"
  means = "the name says percent"
}

figure "no_such_unit" {
  on    = "dough"
  is    = "dough.fat_pct"
  unit  = "mL/gg"
  means = "a unit with a slip"
}

figure "which_unit" {
  on    = "dough"
  is    = "dough.fat_pct * dough.egg_g"
  means = "percent times grams"
}

figure "is_wet_pct" {
  on    = "dough"
  is    = "dough.hydration_pct > 60"
  means = "a yes or no with a unit"
}

figure "what_is_in_it" {
  on    = "dough"
  is    = "dough.allergens"
  means = "a list"
}

figure "chilled_h" {
  on    = "step"
  is    = "step.h_to_10c"
  means = "not every step has it"
}

figure "only_doughs_pct" {
  on    = "dough"
  is    = "dough.fat_pct"
  means = "of doughs alone"
}

figure "on_nothing" {
  on    = "doug"
  is    = "dough.fat_pct"
  means = "no such subject"
}

figure "on_two_sorts" {
  on    = ["dough", "bake"]
  is    = "dough.fat_pct"
  means = "two sorts"
}

figure "long_winded" {
  on    = "dough"
  is    = ""
  means = ""
}

rule "reads-a-doughs" {
  on     = "filling"
  level  = "note"
  when   = "filling.only_doughs_pct > 1"
  say    = "A filling is no dough: {filling.only_doughs_pct}."
  why    = "Taste."
  source = "common practice"
}

rule "reads-a-part" {
  on     = "bake"
  level  = "note"
  when   = "part.only_doughs_pct > 1"
  say    = "Which part?"
  why    = "Taste."
  source = "common practice"
}

rule "reads-a-misspelt" {
  on     = "dough"
  level  = "note"
  when   = "dough.misspelt_pct > 1 && dough.twice_pc > 1"
  say    = "{dough.misspelt_pct}, {dough.only_dough_pct}."
  why    = "Taste."
  source = "common practice"
}
