# Cautions are printed first, always. They have no level, and nothing lowers or silences them. The order of
# this file is the order of print: the most serious first. A caution whose condition cannot be settled is shown.
# short is its one line in a report: the thing, a colon, the danger and what to do. With names the caution whose
# line says this one too, where both are shown.

needs = "0.1"
about = "what can hurt someone: printed first, whatever the findings say"

caution "raw-dough" {
  on     = "part"
  when   = "part.has_flour || part.has_raw_flour"
  say    = "Do not taste raw dough, batter or crumb topping. Flour is raw: it can carry E. coli and Salmonella until it is baked through. Wash hands, bowls and bench after it."
  short  = "Raw dough: never taste it; raw flour can carry E. coli. Wash hands."
  source = "US CDC and FDA, raw flour and dough (read)"
}

trial "any dough" {
  caution = "raw-dough"
  expect  = "shown"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "water" = "300 g" } }
  }
}

trial "a baked dough all the same" {
  caution = "raw-dough"
  expect  = "shown"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g" }
      steps       = [{ mix = "10 min" }, { bake = "20 min", at = "200 C", core = "92 C" }]
    }
  }
}

trial "flour in a crumb topping" {
  caution = "raw-dough"
  expect  = "shown"
  formula "t" {
    topping "crumb" { ingredients = { "bread flour" = "100 g", "unsalted butter" = "80 g" } }
  }
}

trial "sugar syrup alone" {
  caution = "raw-dough"
  expect  = "absent"
  formula "t" {
    syrup "s" { ingredients = { "sugar" = "100 g", "water" = "100 g" } }
  }
}

caution "raw-egg" {
  on     = "part"
  when   = "part.has_egg"
  say    = "Raw egg can carry Salmonella. Keep it cold, keep it off other food, wash hands and tools after it. Cook it to the code's time and temperature, or use pasteurised egg."
  short  = "Raw egg: Salmonella. Cook it; child, frail, pregnant: pasteurised."
  source = "FDA Food Code 3-401.11, 3-302.13 (read)"
}

trial "dough with and without egg" {
  caution = "raw-egg"
  cases   = {
    "egg in a dough" = { expect = "shown", with = "egg", amount = "100 g" }
    "no egg in it"   = { expect = "absent", with = "water", amount = "300 g" }
  }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "$with" = "$amount" } }
  }
}

trial "egg in a wash" {
  caution = "raw-egg"
  expect  = "shown"
  formula "t" {
    wash "w" { ingredients = { "egg yolk" = "20 g", "water" = "10 g" } }
  }
}

caution "egg-susceptible" {
  on     = "part"
  when   = "part.has_egg"
  say    = "For small children, older people, pregnant women and people with weak immunity use pasteurised egg, unless the egg goes straight into something baked right through. Soft custards and meringues are not baked through."
  short  = "Egg: child, frail, pregnant: pasteurised, or baked right through."
  with   = "raw-egg"
  source = "FDA Food Code 3-801.11 (read)"
}

trial "custard with and without egg" {
  caution = "egg-susceptible"
  cases   = {
    "egg in a custard"    = { expect = "shown", with = "egg yolk", amount = "100 g" }
    "custard without egg" = { expect = "absent", with = "corn starch", amount = "40 g" }
  }
  formula "t" {
    filling "f" { ingredients = { "whole milk" = "500 g", "$with" = "$amount" } }
  }
}

caution "raw-meat" {
  on     = "part"
  when   = "part.has_raw_meat"
  say    = "Raw meat, poultry and fish carry Salmonella, Campylobacter and E. coli. Keep them cold and off other food, wash hands and tools after them, and cook them through: 63 C whole, 68 C minced, 74 C poultry and what is stuffed."
  short  = "Raw meat or fish: keep it cold and apart; cook to 63, 68 or 74 C."
  source = "FDA Food Code 3-302.11 (memory), 3-401.11 (read)"
}

trial "meat in a filling" {
  caution = "raw-meat"
  cases   = { "minced beef" = "shown", "shrimp" = "shown", "ham" = "absent", "smoked salmon" = "absent" }
  formula "t" {
    filling "f" { ingredients = { "$case" = "300 g" } }
  }
}

caution "sprouts" {
  on     = "part"
  when   = "part.has_sprouts"
  say    = "Raw sprouted seeds can carry Salmonella and E. coli inside the seed, where no washing gets. None for small children, older people, pregnant women and people with weak immunity; keep them cold, or cook them."
  short  = "Raw sprouts: germs inside. Cook; none for child, frail, pregnant."
  source = "FDA Food Code 1-201.10, 3-801.11(C) (read)"
}

trial "sprouts in a roll" {
  caution = "sprouts"
  cases   = { "alfalfa sprouts" = "shown", "lettuce" = "absent" }
  formula "t" {
    topping "t" { ingredients = { "$case" = "60 g" } }
  }
}

caution "lye" {
  on     = "part"
  when   = "part.has_caustic"
  say    = "Lye burns skin and blinds eyes. Goggles, gloves, long sleeves; stir lye into cold water, never water onto lye; no aluminium, no children near. On skin or in eyes: running water for 20 minutes, and get help."
  short  = "Lye: burns, blinds. Goggles, gloves; into cold water, no aluminium."
  source = "general safety of caustics (memory)"
}

trial "a bath for rolls" {
  caution = "lye"
  cases   = { "sodium hydroxide" = "shown", "baking soda" = "absent" }
  formula "t" {
    wash "w" { ingredients = { "water" = "1000 g", "$case" = "35 g" } }
  }
}

caution "allergens-present" {
  on     = "formula"
  when   = "true"
  say    = "Name every allergen in it, from every ingredient's own label. This list is from the larder and stands for no label."
  detail = "US list: {formula.allergens_us}. EU and UK list: {formula.allergens_eu}."
  short  = "Allergens: {formula.allergens_brief}. Read labels, traces too."
  source = "FD&C Act 201(qq) as amended by FALCPA (2004) and the FASTER Act (2021); Regulation (EU) 1169/2011, Annex II (read)"
}

trial "wheat and milk" {
  caution = "allergens-present"
  expect  = "shown"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "whole milk" = "300 g" } }
  }
}

trial "sugar syrup too" {
  caution = "allergens-present"
  expect  = "shown"
  formula "t" {
    syrup "s" { ingredients = { "sugar" = "100 g", "water" = "100 g" } }
  }
}

caution "allergens-traces" {
  on     = "formula"
  when   = "true"
  say    = "Read every label, for traces too. Traces travel on dust, boards, brushes and frying oil. Clean first, make the allergen-free batch first, and do not promise 'free from' without a controlled room."
  detail = "Often in such ingredients, so check first: {formula.allergens_to_check}."
  short  = "Traces of allergens: read every label, clean first, promise nothing."
  with   = "allergens-present"
  source = "allergen cross-contact practice (memory); which ingredients often hold what: larder"
}

trial "margarine to be read" {
  caution = "allergens-traces"
  expect  = "shown"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "salted margarine" = "80 g" } }
  }
}

trial "nothing to check by the larder" {
  caution = "allergens-traces"
  expect  = "shown"
  formula "t" {
    syrup "s" { ingredients = { "sugar" = "100 g", "water" = "100 g" } }
  }
}

caution "hot-fat" {
  on     = "part"
  when   = "part.is_fried"
  say    = "Hot fat burns and can catch fire. Fill the pot half at most, keep water away, watch the thermometer, keep a lid to hand, never leave it."
  short  = "Hot fat: burns and flames. Pot half full, lid to hand, stay by it."
  source = "general kitchen safety (memory)"
}

trial "fried dough" {
  caution = "hot-fat"
  expect  = "shown"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g" }
      steps       = [{ cook = "3 min", at = "180 C", by = "deep frying" }]
    }
  }
}

trial "flour and milk cooked to a paste" {
  caution = "hot-fat"
  expect  = "absent"
  formula "t" {
    preferment "scald" {
      ingredients = { "bread flour" = "50 g", "whole milk" = "250 g" }
      steps       = [{ cook = "3 min", to = "65 C" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "the scald" = "all" }
      steps       = [{ bake = "20 min", at = "200 C" }]
    }
  }
}

trial "baked dough" {
  caution = "hot-fat"
  expect  = "absent"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g" }
      steps       = [{ bake = "20 min", at = "200 C" }]
    }
  }
}

caution "hot-sugar" {
  on     = "part"
  when   = "part.has_sugar_cooked"
  say    = "Boiling sugar runs well above 100 C and sticks to skin. Long sleeves, dry tools, no children near, a bowl of cold water at hand; if burnt, cool under running water for 20 minutes and get help."
  short  = "Hot sugar: sticks and burns. No children; cold water to hand."
  source = "burn first-aid advice, several sources (memory)"
}

trial "syrup on the stove" {
  caution = "hot-sugar"
  expect  = "shown"
  formula "t" {
    syrup "s" {
      ingredients = { "sugar" = "100 g", "water" = "100 g" }
      steps       = [{ cook = "2 min", to = "101 C" }]
    }
  }
}

trial "butter and honey warmed, or boiled" {
  caution = "hot-sugar"
  cases = {
    "60 C"  = "absent"
    "85 C"  = "absent" # a custard, a chocolate cream
    "105 C" = "shown"
  }
  formula "t" {
    filling "f" {
      ingredients = { "honey" = "50 g", "unsalted butter" = "50 g", "whole milk" = "50 g" }
      steps       = [{ cook = "3 min", to = "$case" }]
    }
  }
}

trial "honey melted with butter" {
  caution = "hot-sugar"
  expect  = "shown"
  formula "t" {
    topping "t" {
      ingredients = { "honey" = "50 g", "unsalted butter" = "50 g" }
      steps       = [{ melt = "3 min" }]
    }
  }
}

trial "sugar stirred in cold" {
  caution = "hot-sugar"
  expect  = "absent"
  formula "t" {
    filling "f" { ingredients = { "sugar" = "100 g", "ground almonds" = "100 g" } }
  }
}

# Shown whether or not a step cooks it: a filling with milk, egg or starch mostly is, and a draft may not say so yet.
caution "cool-fast" {
  on     = ["filling", "topping", "syrup"]
  when   = "part.has_milk || part.has_egg || part.has_starch && part.is_cooked"
  say    = "Cool a cooked filling fast, shallow and open: 57 to 21 C within 2 hours, and down to 5 C within 6 hours in all. Spread it thin, stir it, use an ice bath; a deep pot in a fridge will not make it. Cover it when it is cold."
  short  = "Cooked filling: bacteria grow. Cool to 21 C in 2 h, 5 C in 6 h."
  with   = "filled-cold"
  source = "FDA Food Code 3-501.14 (read), 3-501.15 (memory)"
}

trial "pastry cream" {
  caution = "cool-fast"
  expect  = "shown"
  formula "t" {
    filling "f" {
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min", to = "95 C" }]
    }
  }
}

trial "nut paste without milk, egg or starch" {
  caution = "cool-fast"
  expect  = "absent"
  formula "t" {
    filling "f" { ingredients = { "ground almonds" = "200 g", "sugar" = "100 g" } }
  }
}

trial "flour in a crumb that no step cooks" {
  caution = "cool-fast"
  expect  = "absent"
  formula "t" {
    topping "t" { ingredients = { "bread flour" = "100 g", "sugar" = "60 g" } }
  }
}

trial "a scald of flour and water" {
  caution = "cool-fast"
  expect  = "shown"
  formula "t" {
    filling "f" {
      ingredients = { "bread flour" = "50 g", "water" = "250 g" }
      steps       = [{ cook = "4 min", to = "70 C" }]
    }
  }
}

trial "milk in the dough only" {
  caution = "cool-fast"
  expect  = "absent"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "whole milk" = "300 g" } }
  }
}

# Shown for every part with egg or milk in it, before anybody has counted its hours.
caution "stood-too-warm" {
  on     = "part"
  when   = "part.has_egg || part.has_milk"
  say    = "Warm minutes add up: weighing, filling, resting, proofing and display all count, and a fridge does not set the clock back. What has stood warm too long is thrown out: some bacteria leave a poison that baking does not destroy."
  short  = "Warm hours: add up to a poison no oven destroys. Too long: bin it."
  source = "FDA Fish and Fishery Products Hazards and Controls Guidance, ch. 15 (read); review of B. cereus toxins (read)"
}

trial "milk or water in the dough" {
  caution = "stood-too-warm"
  cases   = { "whole milk" = "shown", "water" = "absent" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "$case" = "300 g" } }
  }
}

caution "filled-cold" {
  on     = ["filling", "topping"]
  when   = "part.needs_control"
  say    = "A piece with custard, cream or cheese in it or on it is a fridge food, unless its water activity and pH prove otherwise. At room warmth it has a clock: 4 hours, then it is thrown away. In the fridge it has a date: 7 days, the day it is made being the first."
  short  = "Filling: bacteria grow. To 21 C in 2 h, 5 C in 6; out 4 h at most."
  source = "FDA Food Code 3-501.16, 3-501.17, 3-501.19 (read)"
}

trial "custard in a bun" {
  caution = "filled-cold"
  expect  = "shown"
  formula "t" {
    filling "f" { ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "corn starch" = "40 g" } }
  }
}

trial "cinnamon sugar in a bun" {
  caution = "filled-cold"
  expect  = "absent"
  formula "t" {
    filling "f" { ingredients = { "brown sugar" = "300 g", "cinnamon" = "20 g", "unsalted butter" = "40 g" } }
  }
}

caution "nuts-choking" {
  on     = "part"
  when   = "part.has_whole_nuts"
  say    = "Whole nuts can choke small children. Leave them out, or chop or grind them fine, for anyone under five."
  short  = "Whole nuts: choke small children. Under five: leave out or grind."
  source = "UK NHS advice; other bodies set 4 to 6 (memory)"
}

trial "whole almonds on top" {
  caution = "nuts-choking"
  expect  = "shown"
  formula "t" {
    topping "t" { ingredients = { "almonds" = "60 g" } }
  }
}

trial "ground almonds" {
  caution = "nuts-choking"
  expect  = "absent"
  formula "t" {
    filling "f" { ingredients = { "ground almonds" = "200 g", "sugar" = "100 g" } }
  }
}

trial "hazelnuts bought whole" {
  caution = "nuts-choking"
  cases   = {
    "ground"  = "absent" # ground
    "chopped" = "shown"  # nobody says how fine
  }
  formula "t" {
    filling "f" { ingredients = { "hazelnuts" = { amount = "200 g", as = "$case" }, "sugar" = "100 g" } }
  }
}

caution "honey-infant" {
  on     = "part"
  when   = "part.has_honey"
  say    = "No honey for babies under one year, even baked: its spores survive the oven."
  short  = "Honey: none for babies under one, even baked: spores survive."
  source = "INSPQ; same advice from CDC and NHS (read)"
}

trial "honey or sugar in the dough" {
  caution = "honey-infant"
  cases   = { "honey" = "shown", "sugar" = "absent" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "$case" = "40 g" } }
  }
}

caution "alcohol" {
  on     = "part"
  when   = "part.has_alcohol"
  say    = "Some alcohol stays in a baked piece and all of it in a soaked one. Say so on the label."
  short  = "Alcohol: some stays after baking, all of it in a soak. Label it."
  source = "general practice (memory)"
}

trial "rum syrup" {
  caution = "alcohol"
  expect  = "shown"
  formula "t" {
    syrup "s" { ingredients = { "sugar" = "100 g", "water" = "100 g", "rum" = "30 g" } }
  }
}

trial "plain syrup" {
  caution = "alcohol"
  expect  = "absent"
  formula "t" {
    syrup "s" { ingredients = { "sugar" = "100 g", "water" = "100 g" } }
  }
}

caution "probe" {
  on     = "part"
  when   = "part.is_baked || part.has_flour || part.has_egg || part.has_milk"
  say    = "Measure the middle with a clean, checked probe. Oven settings, crust colour and clock time do not prove a core temperature."
  short  = "Core: probe the middle; crust, clock and dial prove nothing. Wrap bread cool."
  source = "USDA safe temperature chart (read)"
}

trial "a bake" {
  caution = "probe"
  expect  = "shown"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g" }
      steps       = [{ bake = "20 min", at = "200 C" }]
    }
  }
}

trial "custard on the stove" {
  caution = "probe"
  expect  = "shown"
  formula "t" {
    filling "f" { ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g" } }
  }
}

trial "syrup needs no probe" {
  caution = "probe"
  expect  = "absent"
  formula "t" {
    syrup "s" { ingredients = { "sugar" = "100 g", "water" = "100 g" } }
  }
}

caution "wrap-cool" {
  on     = "dough"
  when   = "true"
  say    = "Wrap bread when its core is near room warmth, about 32 to 35 C. Warm loaves sweat in the wrap, and mould follows."
  short  = "Wrapping: wait for a core of 32 to 35 C; warm bread sweats and moulds."
  with   = "probe"
  source = "BakeInfo, Science of bread making (read)"
}

trial "a loaf" {
  caution = "wrap-cool"
  expect  = "shown"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g" } }
  }
}

trial "no dough in the formula" {
  caution = "wrap-cool"
  expect  = "absent"
  formula "t" {
    syrup "s" { ingredients = { "sugar" = "100 g", "water" = "100 g" } }
  }
}

caution "local-code" {
  on     = "formula"
  when   = "true"
  say    = "Your local code, your inspector and your own food-safety plan decide, not this check. Limits differ from place to place. For food made for sale or for institutions, get a licensed food-safety professional or your authority to agree the process first."
  detail = "The limits used here are {kitchen.code_note}."
  short  = "Local code: your code, inspector and safety plan decide, not this check."
  source = "general; FDA Food Code 3-502.11, 8-201.13 (memory)"
}

trial "always" {
  caution = "local-code"
  expect  = "shown"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g" } }
  }
}
