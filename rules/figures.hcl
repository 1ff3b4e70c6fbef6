# Figures that the rules of several packs read. They are in force in every house, like the cautions; a house's own rules read them, too.
# A figure is declared by its block alone: conditions, messages, other figures, forebake facts and the lists know it from here.

needs = "0.1"
about = "figures that several rules read"

figure "has_wished_temp" {
  on    = "mix"
  is    = "known(mix.to_c) && !mix.is_measured"
  means = "its dough temperature is a wish: to is written, and no probe has read it"
}

figure "tin_fill_ml_per_g" {
  on    = "pan"
  is    = "pan.holds_filling ? pan.fill_total_ml_per_g : pan.fill_ml_per_g"
  means = "tin volume for each gram that goes into it; for each gram of dough, where nothing is in it by then"
}

figure "tin_content" {
  on    = "pan"
  is    = "pan.holds_filling ? 'dough and filling' : 'dough'"
  means = "what goes into the tin, by then"
}

figure "is_buttery" {
  on    = "part"
  is    = "!(part.family in ['panettone', 'pandoro', 'colomba'])"
  means = "its butter is to stay cool: doughs that are mixed to an emulsion with yolk are published at 26 to 27 C"
}

figure "loose_water_pct" {
  on    = "part"
  is    = "part.free_water_pct - part.firm_water_pct"
  means = "free water that nothing in it holds: not that of cheese, meat, fish and thick sweet pastes"
}
