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

figure "is_batter" {
  on    = "part"
  is    = "part.is_dropped && part.hydration_pct > 80"
  means = "a batter, spooned in hot fat or poured on a griddle: wetter than 80 %, and never divided, sheeted or rolled"
}

figure "is_short_pastry" {
  on    = "part"
  is    = "part.fat_pct > 35 && part.hydration_pct < 45"
  means = "a short yeast pastry: over 35 % fat in a dry dough; its yeast loosens it, and it hardly rises"
}

figure "dissolved_sugar_pct" {
  on    = "part"
  is    = "part.sugar_pct - part.whole_sugar_pct"
  means = "sugar that the dough's water can take up, on flour: not that which stays in grains"
}
