# Will it make the dough it says? Percentages are on the dough's total flour, preferment flour included. "Family" limits
# come from the range table of the formula's family. The table is soft: up to margin_pct outside it nothing is said, up to
# twice that a note, beyond it a risk. A house sets the margin.
# The first trials of each rule stand close beside its limits, one on either side.

needs = "0.1"
about = "hydration, sugar, fat, salt, egg and flour against what such a dough can carry"

rule "hydration-low" {
  on     = "dough"
  level  = "risk"
  limits = { margin_pct = 3 }
  note   = "dough.hydration_pct >= dough.family_hydration_min_pct - 2 * max(limit.margin_pct, dough.family_hydration_margin_pct)"
  when   = "dough.hydration_pct < dough.family_hydration_min_pct - max(limit.margin_pct, dough.family_hydration_margin_pct)"
  say    = "True hydration is {dough.hydration_pct}, and {dough.family} starts at {dough.family_hydration_min_pct}. Add water, milk or egg."
  why    = "Water of eggs, milk, butter and syrups is counted, the flour's own is not. Too dry a dough tears in the mixer, rises slowly and bakes hard."
  source = "range of the published formulas of the family and textbook memory (Gisslen; Suas; Pyler & Gorton), rounded: a judgement, not a survey"

  adjust "liquid" { within = [20, 80] }
}

trial "water of a sweet dough, about the least" {
  rule  = "hydration-low"
  cases = {
    "415 g" = "risk"    # 41.5 %
    "425 g" = "note"    # 42.5 %
    "447 g" = "note"    # 44.7 %
    "453 g" = "clear"   # 45.3 %
    "?"     = "unsure"  # still a question mark
  }
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "water" = "$case" } }
  }
}

trial "eggs and butter bring the water" {
  rule   = "hydration-low"
  expect = "clear"
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "water" = "100 g", "egg" = "450 g", "unsalted butter" = "400 g" } }
  }
}

rule "hydration-high" {
  on     = "dough"
  level  = "risk"
  limits = { margin_pct = 4, batter_pct = 102, egg_pct = 60 }
  note   = "dough.hydration_pct - dough.held_water_pct <= (dough.family == 'any enriched dough' && dough.egg_pct >= limit.egg_pct ? limit.batter_pct : dough.family_hydration_max_pct) + 2 * max(limit.margin_pct, dough.family_hydration_margin_pct)"
  when   = "!(dough.family == 'any enriched dough' && dough.is_batter) && dough.hydration_pct - dough.held_water_pct > (dough.family == 'any enriched dough' && dough.egg_pct >= limit.egg_pct ? limit.batter_pct : dough.family_hydration_max_pct) + max(limit.margin_pct, dough.family_hydration_margin_pct)"
  say    = "True hydration is {dough.hydration_pct}, and {dough.family} ends at {dough.family == 'any enriched dough' && dough.egg_pct >= limit.egg_pct ? limit.batter_pct : dough.family_hydration_max_pct}. Take liquid out or add flour."
  why    = "Eggs, milk, butter and syrups bring water that the written liquid does not show. Too wet a dough will not sheet, braid or stand. Water held in curd, potato or thick puree is not counted here."
  source = "range of the published formulas of the family and textbook memory (Gisslen; Suas; Pyler & Gorton), rounded: a judgement, not a survey; a dough of 60 % egg and more is a baba, piped and not shaped: published ones reach 102 % (derived); that curd and potato hold their water is common practice, no source; a batter that is fried or griddled by the spoon is left alone unless a family is named"

  adjust "liquid" { within = [20, 80] }
}

trial "90 % hydration, no family: a batter, or a dough" {
  rule  = "hydration-high"
  cases = {
    "fried by the spoon" = { expect = "clear", water = "900 g", do = "rest", what = "1 h", by = "frying" }
    "in a waffle iron"   = { expect = "clear", water = "900 g", do = "rest", what = "1 h", by = "waffle iron" }
    "divided and fried"  = { expect = "flagged", water = "900 g", do = "divide", what = "60 g", by = "frying" }
    "spooned into steam"   = { expect = "flagged", water = "900 g", do = "rest", what = "1 h", by = "steaming" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "$water" }
      steps       = [{ mix = "5 min" }, { "$do" = "$what" }, { cook = "5 min", by = "$by" }]
    }
  }
}

trial "water of a sweet dough, about the most" {
  rule  = "hydration-high"
  cases = {
    "715 g" = "risk"    # 71.5 %
    "705 g" = "note"    # 70.5 %
    "673 g" = "note"    # 67.3 %
    "667 g" = "clear"   # 66.7 %
  }
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "water" = "$case" } }
  }
}

trial "70 % hydration, and what brings a quarter of it" {
  rule  = "hydration-high"
  cases = { "whole milk" = "flagged", "quark" = "clear", "boiled potato" = "clear" }
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "water" = "470 g", "$case" = "290 g" } }
  }
}

trial "no family, 104 % hydration, by its egg" {
  rule  = "hydration-high"
  cases = {
    "58 %"  = { expect = "risk", egg = "580 g", water = "596 g" }
    "62 %"  = { expect = "clear", egg = "620 g", water = "566 g" }
    "1.1 L" = { expect = "note", egg = "620 g", water = "610 g" }
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "egg" = "$egg", "water" = "$water" } }
  }
}

trial "milk still a question mark" {
  rule   = "hydration-high"
  expect = "unsure"
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "whole milk" = "?" } }
  }
}

rule "sugar-high" {
  on     = "dough"
  level  = "risk"
  limits = { margin_pct = 3 }
  note   = "dough.sugar_pct - dough.whole_sugar_pct <= dough.family_sugar_max_pct + 2 * max(limit.margin_pct, dough.family_sugar_margin_pct)"
  when   = "dough.sugar_pct - dough.whole_sugar_pct > dough.family_sugar_max_pct + max(limit.margin_pct, dough.family_sugar_margin_pct)"
  say    = "Sugar is {dough.sugar_pct - dough.whole_sugar_pct} % of the flour, and {dough.family} ends at {dough.family_sugar_max_pct}. Take sugar out, or move it to the filling or the glaze."
  why    = "Sugar slows the yeast, softens the dough and darkens the crust before the middle is done."
  source = "range of the published formulas of the family and textbook memory (Gisslen; Suas; Pyler & Gorton), rounded: a judgement, not a survey; pearl sugar stays in grains and is not counted (common practice, no source)"

  adjust "sugar" { within = [0, 45] }
}

trial "50 % of sugar, dissolved or in grains" {
  rule  = "sugar-high"
  cases = { "pearl sugar" = "clear", "sugar" = "risk", "brown sugar" = "risk" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "honey" = "40 g", "$case" = "500 g" } }
  }
}

trial "sugar of a sweet dough" {
  rule  = "sugar-high"
  cases = {
    "320 g" = "risk"    # 31.9 %
    "305 g" = "note"    # 30.4 %
    "283 g" = "note"    # 28.2 %
    "279 g" = "clear"   # 27.8 %
    "?"     = "unsure"  # still a question mark
  }
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "sugar" = "$case" } }
  }
}

# The range of a laminated family is that of its base dough. Roll-in butter that stands in the dough's own list is allowed for.
rule "fat-high" {
  on     = "dough"
  level  = "risk"
  limits = { margin_pct = 4 }
  note   = "dough.fat_pct <= dough.family_fat_max_pct + 2 * max(limit.margin_pct, dough.family_fat_margin_pct)"
  when   = "dough.fat_pct > dough.family_fat_max_pct + max(limit.margin_pct, dough.family_fat_margin_pct)"
  say    = "Fat is {dough.fat_pct} of the flour, and {dough.family} ends at {dough.family_fat_max_pct}. Take fat out, or name the family that it really is."
  why    = "Fat shortens the crumb and weighs on the rise; past the range the dough turns greasy and falls. In a laminated dough the roll-in butter is a part of its own that a fill step spreads."
  source = "range of the published formulas of the family and textbook memory (Gisslen; Suas; Pyler & Gorton), rounded: a judgement, not a survey; of laminated doughs before the roll-in"

  adjust "fat" { within = [0, 90] }
}

trial "butter of a sweet dough" {
  rule  = "fat-high"
  cases = {
    "420 g" = "risk"    # 34.1 % fat
    "400 g" = "note"    # 32.4 % fat
    "362 g" = "note"    # 29.4 % fat
    "350 g" = "clear"   # 28.4 % fat
    "?"     = "unsure"  # how much is open
  }
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "unsalted butter" = "$case" } }
  }
}

trial "Danish with its roll-in mixed in" {
  rule   = "fat-high"
  expect = "flagged"
  formula "t" {
    family = "danish"
    dough "d" { ingredients = { "bread flour" = "1000 g", "unsalted butter" = "620 g" } }
  }
}

trial "Danish with its roll-in as a part" {
  rule   = "fat-high"
  expect = "clear"
  formula "t" {
    family = "danish"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "unsalted butter" = "120 g" }
      steps       = [{ sheet = "12 mm" }, { fill = "butter block" }]
    }
    filling "butter block" { ingredients = { "unsalted butter" = "500 g" } }
  }
}

rule "salt-low" {
  on     = "dough"
  level  = "risk"
  limits = { salt_pct = 1.2, sweet_pct = 0.6, sugar_pct = 15, margin_pct = 0.2, butter_pct = 0.1 }
  note   = "!dough.weighs_salt && dough.salt_pct >= limit.butter_pct || dough.salt_pct >= min(dough.sugar_pct >= limit.sugar_pct ? limit.sweet_pct : limit.salt_pct, dough.family_salt_min_pct) - 2 * max(limit.margin_pct, dough.family_salt_margin_pct)"
  when   = "dough.salt_pct > 0 && dough.cooked_by != 'steaming' && dough.salt_pct < min(dough.sugar_pct >= limit.sugar_pct ? limit.sweet_pct : limit.salt_pct, dough.family_salt_min_pct) - max(limit.margin_pct, dough.family_salt_margin_pct) && !formula.is_for_babies"
  say    = "Salt is {dough.salt_pct} of the flour; {min(dough.sugar_pct >= limit.sugar_pct ? limit.sweet_pct : limit.salt_pct, dough.family_salt_min_pct)} % is the low end. Add salt[: {dough.sugar_pct >= limit.sugar_pct ? round(0.01 * dough.flour_g) : round(0.018 * dough.flour_g)} g is usual]."
  why    = "With little salt the dough is slack and the crumb tastes flat, sugar or not."
  source = "1.2 %: common practice, no source; published doughs of 15 % sugar and more begin at 0.56 to 0.68 %, their middle is 0.9 to 1.1 % from 20 % sugar (tsoureki, panettone, pandoro, colomba; derived); a family whose published formulas reach lower, down to where they do (derived); steamed buns are made with a pinch or none, and bakers who use salted butter often add no other salt (common practice, no source)"

  adjust "salt" {
    to     = "dough.sugar_pct >= limit.sugar_pct ? 1.0 : 1.8"
    within = [0.8, 2.5]
  }
}

trial "a pinch of salt, in steam and in the oven" {
  rule  = "salt-low"
  cases = {
    "steamed" = { expect = "clear", do = "cook", by = "steaming" }
    "fried"   = { expect = "risk", do = "cook", by = "frying" }
    "baked"   = { expect = "risk", do = "bake", by = "fan oven" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "salt" = "1 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min" }, { "$do" = "12 min", by = "$by" }]
    }
  }
}

trial "salted butter and no salt" {
  rule  = "salt-low"
  cases = { "62 g" = "note", "60 g" = "risk" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "water" = "500 g", "salted butter" = "$case" } }
  }
}

trial "salted butter and a pinch of salt" {
  rule   = "salt-low"
  expect = "risk"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "water" = "500 g", "salted butter" = "100 g", "salt" = "0.5 g" } }
  }
}

trial "salt about the least" {
  rule  = "salt-low"
  cases = {
    "7.5 g"  = "risk"    # 0.75 %
    "8.5 g"  = "note"    # 0.85 %
    "9.8 g"  = "note"    # 0.98 %
    "10.2 g" = "clear"   # 1.02 %
    "?"      = "unsure"  # still a question mark
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "salt" = "$case" } }
  }
}

trial "0.5 % salt, by the sugar beside it" {
  rule  = "salt-low"
  cases = { "144 g" = "risk", "156 g" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "sugar" = "$case", "salt" = "5 g" } }
  }
}

trial "salt at 27 % sugar, about the least" {
  rule  = "salt-low"
  cases = { "3.8 g" = "note", "4.2 g" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "sugar" = "270 g", "salt" = "$case" } }
  }
}

trial "salt of a panettone" {
  rule  = "salt-low"
  cases = {
    "1.8 g" = "risk"    # 0.18 %
    "3.8 g" = "note"    # 0.38 %
    "4.2 g" = "clear"   # 0.42 %
  }
  formula "t" {
    family = "panettone"
    dough "d" { ingredients = { "bread flour" = "1000 g", "salt" = "$case" } }
  }
}

trial "no salt is another matter" {
  rule   = "salt-low"
  expect = "clear"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "water" = "600 g" } }
  }
}

rule "salt-high" {
  on     = "dough"
  level  = "risk"
  limits = { salt_pct = 2.5, margin_pct = 0.2 }
  note   = "dough.salt_pct <= limit.salt_pct + 2 * limit.margin_pct"
  when   = "dough.salt_pct > limit.salt_pct + limit.margin_pct"
  say    = "Salt is {dough.salt_pct} of the flour, over {limit.salt_pct}. Take salt out; salted butter and cheese are counted."
  why    = "The dough tastes of salt, and the yeast feels it as it feels sugar."
  source = "upper end of the published brioche and croissant formulas, 2.5 % (derived)"

  adjust "salt" { within = [1.2, 2.5] }
}

trial "salt about the most" {
  rule  = "salt-high"
  cases = {
    "29.5 g" = "risk"    # 2.95 %
    "28 g"   = "note"    # 2.8 %
    "27.1 g" = "note"    # 2.71 %
    "26.9 g" = "clear"   # 2.69 %
    "?"      = "unsure"  # how much is open
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "salt" = "$case" } }
  }
}

trial "salted butter tips it over" {
  rule   = "salt-high"
  expect = "flagged"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "salt" = "25 g", "salted butter" = "300 g" } }
  }
}

rule "egg-high" {
  on     = "dough"
  level  = "note"
  limits = { margin_pct = 8, batter_pct = 80 }
  when   = "dough.egg_pct > (dough.family == 'any enriched dough' ? limit.batter_pct : dough.family_egg_max_pct) + max(limit.margin_pct, dough.family_egg_margin_pct)"
  say    = "Egg is {dough.egg_pct} of the flour, and {dough.family} ends at {dough.family == 'any enriched dough' ? limit.batter_pct : dough.family_egg_max_pct}. Trade some of the egg for milk, or expect a dry crumb."
  why    = "Egg white sets firm and dries the crumb; yolk and milk keep it soft."
  source = "range of the published formulas of the family and textbook memory (Gisslen; Suas; Pyler & Gorton), rounded: a judgement, not a survey; dryness is common practice"

  adjust "egg" { within = [0, 70] }
}

trial "egg where no family is named" {
  rule  = "egg-high"
  cases = { "890 g" = "flagged", "870 g" = "clear" } # published babas reach 80 %
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "egg" = "$case" } }
  }
}

trial "egg of a sweet dough" {
  rule  = "egg-high"
  cases = {
    "335 g" = "flagged" # 33.5 %
    "325 g" = "clear"   # 32.5 %
    "?"     = "unsure"  # still a question mark
  }
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "egg" = "$case" } }
  }
}

# A stronger flour is the answer, and which one the store holds only the baker knows: no lever. Butter and sugar are no excuse for
# it. The protein of a bag without a label is not known closely enough for a finding.
rule "flour-weak" {
  on     = "dough"
  level  = "risk"
  limits = { fat_sugar_pct = 40, protein_pct = 11.5, margin_pct = 1.55, least_pct = 8.4 }
  note   = "dough.flour_protein_pct >= limit.protein_pct - 2 * limit.margin_pct && dough.flour_protein_pct >= limit.least_pct"
  when   = "dough.knows_protein && dough.cooked_by != 'steaming' && (dough.fat_pct + dough.sugar_pct > limit.fat_sugar_pct && dough.flour_protein_pct < limit.protein_pct - limit.margin_pct || dough.flour_protein_pct < limit.least_pct)"
  say    = "The flour has {dough.flour_protein_pct} protein, and the dough {dough.fat_pct} fat and {dough.sugar_pct} sugar. Use a flour with {limit.protein_pct} protein or more."
  why    = "Fat and sugar both weaken gluten. A rich dough needs strong flour to hold its gas."
  source = "common practice, no source; the published brioche formulas ask for 11.5 % protein or more (derived); five French ones are of type 45 flour, 8.4 % by the Ciqual table (read); steamed buns are made of flour of 8 to 9 % (common practice, no source); of French flour bags for viennoiserie hold 10.5 to 12 % (common practice, no source)"
}

trial "butter on all-purpose flour" {
  rule  = "flour-weak"
  cases = {
    "253 g" = "flagged" # 40.5 % fat and sugar
    "240 g" = "clear"   # 39.4 % fat and sugar
    "?"     = "unsure"  # how much is open
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = { amount = "1000 g", protein = "9.8 %" }, "sugar" = "200 g", "unsalted butter" = "$case" } }
  }
}

trial "a rich dough, by the flour's name" {
  rule  = "flour-weak"
  cases = { "cake flour" = "risk", "pastry flour" = "note", "farine T45" = "clear", "farine T55" = "clear", "all-purpose flour" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "$case" = "1000 g", "sugar" = "250 g", "unsalted butter" = "300 g" } }
  }
}

trial "cake flour in a lean dough" {
  rule  = "flour-weak"
  cases = { "8.2 %" = "risk", "8.6 %" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = { amount = "1000 g", protein = "$case" }, "water" = "600 g" } }
  }
}

trial "protein under a rich dough" {
  rule  = "flour-weak"
  cases = { "8.38 %" = "risk", "8.5 %" = "note", "9.9 %" = "note", "10.1 %" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = {
        "bread flour"     = { amount = "1000 g", protein = "$case" }
        "sugar"           = "250 g"
        "unsalted butter" = "300 g"
      }
    }
  }
}

trial "flour of 8.2 %, its bun" {
  rule  = "flour-weak"
  cases = { "steaming" = "clear", "deep frying" = "flagged" }
  formula "t" {
    makes = "20 pieces"
    dough "d" {
      ingredients = { "bread flour" = { amount = "600 g", protein = "8.2 %" }, "water" = "300 g", "instant yeast" = "8 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { cook = "12 min", at = "100 C", by = "$case" }]
    }
  }
}

# The answer is in the mixing, not in the amounts: no lever. Roll-in butter of a laminated dough is never mixed in.
rule "fat-without-structure" {
  on     = "dough"
  level  = "note"
  limits = { fat_pct = 45, sponge_pct = 45 }
  when   = "dough.has_process && dough.mixes <= 1 && dough.fat_pct > limit.fat_pct && dough.prefermented_flour_pct < limit.sponge_pct"
  say    = "Fat is {dough.fat_pct} of the flour, over {limit.fat_pct}. Mix the dough to full development first, then add the butter late, cold and in stages."
  why    = "Fat coats the flour and keeps gluten from forming. What is not built before the butter goes in will not come after."
  source = "Suas M., Advanced Bread and Pastry (2009) p. 374: butter goes in after development above 20 % (read); 45 % as the limit is common practice, no source; where a first dough holds about half of the flour, that one was developed before (panettone and its kin)"
}

trial "butter about the most" {
  rule  = "fat-without-structure"
  cases = {
    "565 g"          = "flagged" # 45.8 % fat
    "545 g"          = "clear"   # 44.2 % fat
    "500 g to 600 g" = "unsure"  # a range
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "unsalted butter" = "$case" }
      steps       = [{ mix = "20 min" }]
    }
  }
}

trial "butter in a second dough, by the flour of the first" {
  rule  = "fat-without-structure"
  cases = {
    "440 g" = { expect = "flagged", first = "440 g", second = "560 g" }
    "460 g" = { expect = "clear", first = "460 g", second = "540 g" }
  }
  formula "t" {
    preferment "p" {
      ingredients = { "bread flour" = "$first", "water" = "200 g", "instant yeast" = "2 g" }
      steps       = [{ mix = "15 min" }]
    }
    dough "d" {
      ingredients = { "the p" = "all", "bread flour" = "$second", "egg yolk" = "200 g", "unsalted butter" = "600 g" }
      steps       = [{ mix = "20 min" }]
    }
  }
}

trial "butter in a second mix" {
  rule   = "fat-without-structure"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "unsalted butter" = "600 g" }
      steps       = [{ mix = "8 min", with = "bread flour" }, { mix = "8 min", with = "unsalted butter" }]
    }
  }
}

rule "milk-solids-high" {
  on     = "dough"
  level  = "note"
  limits = { milk_solids_pct = 8, margin_pct = 1 }
  when   = "dough.milk_solids_pct > limit.milk_solids_pct + limit.margin_pct"
  say    = "Milk solids are {dough.milk_solids_pct} of the flour, over {limit.milk_solids_pct}. Use less milk powder, or water for part of the milk."
  why    = "Lactose is left over by the yeast and browns; whey softens the gluten."
  source = "upper end of the published milk bread and lean roll formulas, 8 % (derived)"

  adjust "milk" { within = [0, 80] }
}

trial "milk powder" {
  rule  = "milk-solids-high"
  cases = {
    "94 g" = "flagged" # 9.04 % of solids
    "93 g" = "clear"   # 8.95 %: within the margin
    "80 g" = "clear"   # 8 %
    "?"    = "unsure"  # still a question mark
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "dry skim milk" = "$case" } }
  }
}

# How much of the flour goes into the pan is two lines at once, in two parts: no lever.
rule "pregel-share" {
  on     = "dough"
  level  = "note"
  limits = { low_pct = 3, high_pct = 12 }
  when   = "dough.pregel_flour_pct > 0 && (dough.pregel_flour_pct < limit.low_pct || dough.pregel_flour_pct > limit.high_pct)"
  say    = "Scalded or cooked flour is {dough.pregel_flour_pct} of the flour; {limit.low_pct} to {limit.high_pct} is useful. Scald {dough.pregel_flour_pct < limit.low_pct ? 'more' : 'less'} of it."
  why    = "Under that it binds too little water to be worth the pan; over it the crumb turns gummy and the dough slack."
  source = "common practice, no source (5 to 10 % is usual)"
}

trial "flour scalded" {
  rule  = "pregel-share"
  cases = {
    "2.8 % of the flour scalded"              = { expect = "flagged", flour = "972 g", scalded = "28 g", water = "140 g" }
    "3.2 % of the flour scalded"              = { expect = "clear", flour = "968 g", scalded = "32 g", water = "160 g" }
    "12.5 % of the flour scalded"             = { expect = "flagged", flour = "875 g", scalded = "125 g", water = "625 g" }
    "11.5 % of the flour scalded"             = { expect = "clear", flour = "885 g", scalded = "115 g", water = "575 g" }
    "flour of the roux still a question mark" = { expect = "unsure", flour = "950 g", scalded = "?", water = "250 g" }
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "$flour", "the roux" = "all" } }
    filling "roux" {
      ingredients = { "bread flour" = "$scalded", "water" = "$water" }
      steps       = [{ cook = "5 min", to = "65 C" }]
    }
  }
}

trial "nothing scalded" {
  rule   = "pregel-share"
  expect = "clear"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "water" = "600 g" } }
  }
}

rule "spice-slows-yeast" {
  on     = "dough"
  level  = "risk"
  limits = { cinnamon_pct = 1.5, clove_allspice_pct = 0.5 }
  when   = "dough.cinnamon_pct > limit.cinnamon_pct || dough.clove_allspice_pct > limit.clove_allspice_pct"
  say    = "Cinnamon is {dough.cinnamon_pct} of the flour, clove and allspice {dough.clove_allspice_pct}; yeast slows over {limit.cinnamon_pct} and {limit.clove_allspice_pct}. Move the spice to the filling, or use less."
  why    = "The oils of cinnamon, clove and allspice hold yeast back. No usable measurement in dough was found, so the limits are custom."
  source = "common practice, no source"

  adjust "spice" { within = [0, 5] }
}

trial "cinnamon" {
  rule  = "spice-slows-yeast"
  cases = {
    "16 g" = "flagged" # 1.6 %
    "14 g" = "clear"   # 1.4 %
    "?"    = "unsure"  # still a question mark
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "cinnamon" = "$case" } }
  }
}

trial "other spices" { # of a blend 0.5 is cinnamon, 0.2 clove and allspice
  rule  = "spice-slows-yeast"
  cases = {
    "much of a blend"    = { expect = "flagged", spice = "mixed spice", grams = "34 g" }
    "a blend"            = { expect = "clear", spice = "mixed spice", grams = "20 g" }
    "much of one tree"   = { expect = "flagged", spice = "Ceylon cinnamon", grams = "16 g" }
    "cinnamon, one tree" = { expect = "clear", spice = "Ceylon cinnamon", grams = "14 g" }
    "clove at 0.52 %"    = { expect = "flagged", spice = "cloves", grams = "5.2 g" }
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "$spice" = "$grams" } }
  }
}

trial "clove and allspice at 0.48 %" {
  rule   = "spice-slows-yeast"
  expect = "clear"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "cloves" = "2.4 g", "allspice" = "2.4 g" } }
  }
}

trial "cinnamon in the filling only" {
  rule   = "spice-slows-yeast"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g" }
      steps       = [{ fill = "sugar and spice" }]
    }
    filling "sugar and spice" { ingredients = { "brown sugar" = "200 g", "cinnamon" = "30 g" } }
  }
}

rule "spirit-slows-yeast" {
  on     = "dough"
  level  = "note"
  limits = { alcohol_pct = 4 }
  when   = "dough.has_alcohol && dough.alcohol_on_water_pct > limit.alcohol_pct"
  say    = "Alcohol is {dough.alcohol_on_water_pct} of the dough's water, over {limit.alcohol_pct}. Drain the soaked fruit, use less spirit, or brush it on after the bake."
  why    = "Alcohol slows yeast and loosens gluten. No usable measurement in dough was found, so the limit is custom."
  source = "common practice, no source"

  adjust "spirit" { within = [0, 20] }
}

trial "rum on the water of the dough" {
  rule  = "spirit-slows-yeast"
  cases = {
    "86 g" = "note"    # 5.2 %
    "66 g" = "note"    # 4.06 %
    "63 g" = "clear"   # 3.9 %
    "?"    = "unsure"  # still a question mark
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "water" = "500 g", "rum" = "$case" } }
  }
}

trial "no spirit and no water yet" {
  rule   = "spirit-slows-yeast"
  expect = "clear"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g" } }
  }
}

# Cooking the fruit is the answer (as = "cooked", or a cook step): no lever.
rule "fresh-enzyme-fruit" {
  on     = "ingredient"
  level  = "risk"
  when   = "ingredient.is_enzyme_fruit && ingredient.is_raw && (part.has_milk || part.has_egg || part.has_gelatin)"
  say    = "The raw fruit ({ingredient.name}) breaks down protein: milk turns bitter, egg and gelatin do not set. Boil the fruit first, or use it canned."
  why    = "Raw pineapple, papaya, kiwi and fig hold an enzyme that takes protein apart. Heat ends it."
  source = "common practice, no source"
}

trial "raw kiwi" {
  rule  = "fresh-enzyme-fruit"
  cases = {
    "raw kiwi in milk"     = { expect = "flagged", with = "whole milk", amount = "200 g" }
    "kiwi and sugar alone" = { expect = "clear", with = "sugar", amount = "50 g" }
  }
  formula "t" {
    filling "f" { ingredients = { "kiwi" = "100 g", "$with" = "$amount" } }
  }
}

trial "fresh figs beside egg" {
  rule   = "fresh-enzyme-fruit"
  expect = "flagged"
  formula "t" {
    topping "f" { ingredients = { "fresh figs" = "100 g", "egg" = "50 g" } }
  }
}

trial "raw papaya in gelatin" {
  rule   = "fresh-enzyme-fruit"
  expect = "flagged"
  formula "t" {
    filling "f" { ingredients = { "papaya" = "100 g", "gelatin" = "5 g" } }
  }
}

trial "canned pineapple in milk" {
  rule   = "fresh-enzyme-fruit"
  expect = "clear"
  formula "t" {
    filling "f" { ingredients = { "pineapple" = { amount = "100 g", as = "canned" }, "whole milk" = "200 g" } }
  }
}

trial "pineapple cooked with the cream" {
  rule   = "fresh-enzyme-fruit"
  expect = "clear"
  formula "t" {
    filling "f" {
      ingredients = { "pineapple" = "100 g", "whole milk" = "200 g" }
      steps       = [{ cook = "5 min", to = "95 C" }]
    }
  }
}

rule "sugar-low" {
  on     = "dough"
  level  = "risk"
  limits = { margin_pct = 3 }
  note   = "dough.sugar_pct >= dough.family_sugar_min_pct - 2 * max(limit.margin_pct, dough.family_sugar_margin_pct)"
  when   = "dough.family != 'any enriched dough' && dough.sugar_pct < dough.family_sugar_min_pct - max(limit.margin_pct, dough.family_sugar_margin_pct)"
  say    = "Sugar is {dough.sugar_pct} of the flour, and {dough.family} starts at {dough.family_sugar_min_pct}. Look for a line left out, or a point that slipped."
  why    = "Without its sugar the dough is another bread: it browns little and ferments fast."
  source = "range of the published formulas of the family and textbook memory (Gisslen; Suas; Pyler & Gorton), rounded: a judgement, not a survey"

  adjust "sugar" { within = [0, 45] }
}

trial "sugar of a sweet dough, about the least" {
  rule  = "sugar-low"
  cases = {
    "38 g" = "risk"   # 3.8 %
    "42 g" = "note"   # 4.2 %
    "69 g" = "note"   # 6.9 %
    "72 g" = "clear"  # 7.2 %
    "?"    = "unsure"
  }
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "sugar" = "$case" } }
  }
}

rule "fat-low" {
  on     = "dough"
  level  = "risk"
  limits = { margin_pct = 3, butter_margin = 0.17 }
  note   = "dough.fat_pct + (dough.family_roll_in_min_pct > 0 ? 0 : dough.roll_in_pct) >= dough.family_fat_min_pct - 2 * max(limit.margin_pct, dough.family_fat_margin_pct, limit.butter_margin * dough.family_fat_min_pct)"
  when   = "dough.family != 'any enriched dough' && dough.fat_pct + (dough.family_roll_in_min_pct > 0 ? 0 : dough.roll_in_pct) < dough.family_fat_min_pct - max(limit.margin_pct, dough.family_fat_margin_pct, limit.butter_margin * dough.family_fat_min_pct)"
  say    = "Fat is {dough.fat_pct} of the flour, and {dough.family} starts at {dough.family_fat_min_pct}. Look for butter left out, or a point that slipped."
  why    = "Fat makes the crumb soft and keeps it so. Without it the piece is dry by the evening."
  source = "range of the published formulas of the family and textbook memory (Gisslen; Suas; Pyler & Gorton), rounded: a judgement, not a survey; books give butter as weighed, of which 17 % is no fat: a brioche of 50 % butter is one of 41 % fat"

  adjust "fat" { within = [0, 90] }
}

trial "butter of a rich brioche, about the least" {
  rule  = "fat-low"
  cases = { "508 g" = "note", "516 g" = "clear" } # 41.2 and 41.9 % fat
  formula "t" {
    family = "brioche rich"
    dough "d" { ingredients = { "bread flour" = "1000 g", "unsalted butter" = "$case" } }
  }
}

trial "butter of a brioche that is rolled in, not mixed in" {
  rule  = "fat-low"
  cases = { "40 g" = "risk", "450 g" = "clear" }
  formula "t" {
    family = "brioche rich"
    filling "block" { ingredients = { "unsalted butter" = "$case" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "unsalted butter" = "150 g" }
      steps       = [{ mix = "8 min" }, { fill = "block" }, { fold = 1 }, { bake = "40 min", at = "180 C" }]
    }
  }
}

trial "butter of a sweet dough, about the least" {
  rule  = "fat-low"
  cases = {
    "46 g"  = "risk"   # 3.9 % fat
    "52 g"  = "note"   # 4.4 % fat
    "84 g"  = "note"   # 7 % fat
    "88 g"  = "clear"  # 7.2 % fat
    "?"     = "unsure"
  }
  formula "t" {
    family = "sweet dough"
    dough "d" { ingredients = { "bread flour" = "1000 g", "unsalted butter" = "$case" } }
  }
}

rule "egg-low" {
  on     = "dough"
  level  = "note"
  limits = { margin_pct = 6 }
  when   = "dough.family != 'any enriched dough' && dough.family != 'sweet dough' && dough.egg_pct < dough.family_egg_min_pct - max(limit.margin_pct, dough.family_egg_margin_pct)"
  say    = "Egg is {dough.egg_pct} of the flour, and {dough.family} starts at {dough.family_egg_min_pct}. Look for egg left out, or a white for a whole one."
  why    = "Egg gives colour, structure and water; a dough planned with it is stiff and pale without."
  source = "range of the published formulas of the family and textbook memory (Gisslen; Suas; Pyler & Gorton), rounded: a judgement, not a survey; a sweet dough on milk is as often made without egg (Swedish wheat dough and others: common practice, no source)"

  adjust "egg" { within = [0, 70] }
}

trial "no egg at all" {
  rule  = "egg-low"
  cases = { "kugelhopf" = "flagged", "brioche" = "flagged", "danish" = "flagged", "sweet dough" = "clear", "milk bread" = "clear" }
  formula "t" {
    family = "$case"
    dough "d" { ingredients = { "bread flour" = "1000 g", "whole milk" = "550 g" } }
  }
}

trial "egg of a challah, about the least" {
  rule  = "egg-low"
  cases = { "38 g" = "flagged", "42 g" = "clear", "?" = "unsure" }
  formula "t" {
    family = "challah"
    dough "d" { ingredients = { "bread flour" = "1000 g", "egg" = "$case" } }
  }
}

# Roll-in fat stands in a part of its own, of fat alone.
rule "roll-in-off" {
  on     = "dough"
  level  = "risk"
  limits = { margin_pct = 8 }
  note   = "2 * dough.roll_in_pct >= dough.family_roll_in_min_pct && dough.roll_in_pct >= dough.family_roll_in_min_pct - 2 * max(limit.margin_pct, dough.family_roll_in_margin_pct) && dough.roll_in_pct <= dough.family_roll_in_max_pct + 2 * max(limit.margin_pct, dough.family_roll_in_margin_pct)"
  when   = "dough.is_laminated && dough.roll_in_pct > 0 && (dough.roll_in_pct < dough.family_roll_in_min_pct - max(limit.margin_pct, dough.family_roll_in_margin_pct) || dough.roll_in_pct > dough.family_roll_in_max_pct + max(limit.margin_pct, dough.family_roll_in_margin_pct))"
  say    = "Roll-in butter is {dough.roll_in_pct} of the flour; {dough.family} takes {dough.family_roll_in_min_pct} to {dough.family_roll_in_max_pct}. Weigh it again, or look for a point that slipped."
  why    = "Too thin a layer breaks and the sheets bake to one; too thick a one runs out."
  source = "range of the published formulas of the family, rounded: a judgement, not a survey"
}

trial "roll-in butter of a croissant dough" {
  rule  = "roll-in-off"
  cases = {
    "230 g" = "risk"
    "250 g" = "note"
    "315 g" = "note"
    "325 g" = "clear"
    "675 g" = "clear"
    "690 g" = "note"
    "770 g" = "risk"
  }
  formula "t" {
    family = "croissant"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "520 g", "instant yeast" = "12 g" }
      steps       = [{ fill = "block" }]
    }
    filling "block" { ingredients = { "unsalted butter" = "$case" } }
  }
}
