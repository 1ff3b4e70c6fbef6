# Food safety. The unfavourable end of every error and range decides, and what is not known counts against the formula: that is what
# doubt = "flag" means. None of this proves a food safe, and the law of the place and licensed practice decide.

needs       = "0.1"
food_safety = true
about       = "food safety: published limits held against the real history of each part"

# Cooling

rule "cool-first-stage" {
  on      = "wait"
  level   = "stop"
  doubt   = "flag"
  careful = "risk"
  limits  = { first_h = "kitchen.cool_first_h" }
  when    = "step.surely_needs_control && step.starts_hot && step.h_57_to_21 > limit.first_h"
  say     = "Cooling to 21 C [{step.h_57_to_21 > limit.first_h ? 'takes' : 'stays under'} {step.h_57_to_21}|may take {step.h_57_to_21}|may take too long]; {limit.first_h} is the most. Use [{step.cooling_way}|shallow trays], or throw it away."
  why     = "Between 57 and 21 C the spores that came through the cook grow fastest. A deep mass holds its warmth in the middle however cold the fridge is."
  source  = "FDA Food Code 2022, 3-501.14(A)(1) (read), and not where it is baked within the hours of 3-501.19(B) (read); ways to cool: 3-501.15 (memory)"

  adjust "step.as" { within = [10, 60] }
}

trial "custard in the fridge, down to 21 C" {
  rule  = "cool-first-stage"
  cases = {
    "21 C after 125 min" = "flagged" # 2 hours and 5 minutes
    "21 C after 115 min" = "clear"   # 1 hour and 55 minutes
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min", to = "57 C" }, { chill = "8 h", at = "3 C", as = "tray 40 mm", measured = "$case" }]
    }
  }
}

trial "three kilos in a bowl" {
  rule   = "cool-first-stage"
  expect = "flagged"
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "2000 g", "egg yolk" = "480 g", "sugar" = "400 g", "corn starch" = "160 g" }
      steps       = [{ cook = "8 min", to = "85 C" }, { chill = "12 h", at = "4 C", as = "bowl" }]
    }
  }
}

trial "trays in an ice bath first" {
  rule   = "cool-first-stage"
  expect = "clear"
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "2000 g", "egg yolk" = "480 g", "sugar" = "400 g", "corn starch" = "160 g" }
      steps       = [{ cook = "8 min", to = "85 C" }, { cool = "1 h", by = "ice bath", as = "tray 15 mm", covered = false }, { chill = "12 h", at = "4 C", as = "tray 15 mm", covered = false }]
    }
  }
}

trial "cooked to nobody knows what" { # from the boil at the most
  rule  = "cool-first-stage"
  cases = { "tray 40 mm" = "flagged", "tray 10 mm" = "clear" }
  formula "t" {
    filling "custard" {
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min" }, { chill = "8 h", at = "3 C", as = "$case", covered = false }]
    }
  }
}

trial "left on the bench for half a day" {
  rule   = "cool-first-stage"
  expect = "flagged"
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min", to = "90 C" }, { rest = "6 h", at = "room", as = "bowl" }]
    }
  }
}

trial "a nut filling too sweet to need it" {
  rule   = "cool-first-stage"
  expect = "clear"
  formula "t" {
    filling "nuts" {
      ingredients = { "ground hazelnuts" = "500 g", "sugar" = "300 g", "water" = "100 g", "honey" = "100 g" }
      steps       = [{ cook = "5 min", to = "108 C" }, { cool = "5 h", at = "room", as = "bowl" }]
    }
  }
}

trial "custard buns left to cool in a stack, then in the fridge" {
  rule   = "cool-first-stage"
  expect = "flagged"
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min", to = "90 C" }, { chill = "4 h", at = "3 C", as = "tray 10 mm", covered = false }]
    }
    dough "d" {
      ingredients = { "bread flour" = { amount = "1000 g" }, "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "25 C" },
        { fill = "custard" },
        { shape = "buns", pieces = 20 },
        { proof = "1 h", at = "28 C", as = "pieces 110 g" },
        { bake = "16 min", at = "200 C", core = "93 C", measured = "94 C core" },
        { cool = "3 h", at = "room", as = "slab 90 mm" },
        { chill = "5 h", at = "3 C", as = "slab 90 mm" },
      ]
    }
  }
}

trial "cream in trays in the fridge, by the model and by the probe" {
  rule  = "cool-first-stage"
  cases = {
    "20 mm"               = { expect = "risk", as = "tray 20 mm", to = "90 C" }  # 1.6 h by the middle: the slow end alone is over
    "30 mm"               = { expect = "stop", as = "tray 30 mm", to = "90 C" }  # the middle is over
    "20 mm, cooked to ?"  = { expect = "stop", as = "tray 20 mm", to = "?" }
    "in a bowl, not said" = { expect = "stop", as = "bowl", to = "90 C" }
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "300 g", "egg yolk" = "60 g", "sugar" = "70 g", "corn starch" = "28 g" }
      steps       = [{ cook = "3 min", to = "$to" }, { chill = "3 h", at = "fridge", as = "$as", covered = true }]
    }
  }
}

trial "hot for long in its middle only" {
  rule  = "cool-first-stage"
  cases = {
    "240 mm" = "stop" # the middle of the model is quick: it is still hot when the chill begins, and its outside is not
    "60 mm"  = "stop"
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "soy milk" = "1000 g", "sugar" = "200 g", "corn starch" = "90 g" }
      steps       = [{ cook = "8 min", to = "92 C" }, { cool = "5 h", at = "room", as = "slab $case", covered = true }, { chill = "3 h", at = "fridge", as = "tray 20 mm", covered = true, measured = "4 C core after 3 h" }]
    }
  }
}

trial "a scalded paste that goes into a dough and is baked" {
  rule  = "cool-first-stage"
  cases = {
    "3 h 40 min after it stood hot" = { expect = "clear", rest = "1 h 15 min", at = "27 C" } # time is its control
    "4 h 10 min after it"           = { expect = "flagged", rest = "1 h 45 min", at = "27 C" }
    "the next day"                  = { expect = "flagged", rest = "14 h", at = "fridge" }
  }
  formula "t" {
    filling "paste" {
      ph          = 6.3
      ingredients = { "bread flour" = "50 g", "whole milk" = "250 g" }
      steps       = [{ cook = "5 min", to = "68 C" }, { chill = "1 h", at = "fridge", as = "slab 60 mm", covered = true }]
    }
    dough "d" {
      ingredients = { "the paste" = "all", "bread flour" = "450 g", "whole milk" = "150 g", "instant yeast" = "6 g", "salt" = "8 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { rest = "$rest", at = "$at", as = "bowl" },
        { shape = "rolls", pieces = 12 },
        { proof = "1 h 15 min", at = "30 C", as = "pieces 70 g" },
        { bake = "16 min", at = "190 C", core = "93 C", measured = "94 C core" },
      ]
    }
  }
}

trial "a custard that is baked on in time, or kept" {
  rule  = "cool-first-stage"
  cases = { "2 h" = "clear", "4 h" = "flagged" }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min", to = "90 C" }, { chill = "$case", at = "3 C", as = "slab 80 mm" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "custard" }, { shape = "buns", pieces = 20 }, { proof = "1 h", at = "28 C", as = "pieces 110 g" }, { bake = "16 min", at = "200 C", core = "93 C", measured = "94 C core" }]
    }
  }
}

trial "a custard that is put on after the bake" {
  rule   = "cool-first-stage"
  expect = "flagged"
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min", to = "90 C" }, { chill = "2 h", at = "3 C", as = "slab 80 mm" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { shape = "buns", pieces = 20 }, { proof = "1 h", at = "28 C", as = "pieces 110 g" }, { bake = "16 min", at = "200 C", core = "93 C", measured = "94 C core" }, { brush = "custard" }]
    }
  }
}

rule "cool-second-stage" {
  on      = "wait"
  level   = "stop"
  doubt   = "flag"
  careful = "risk"
  limits  = { total_h = "kitchen.cool_total_h" }
  when    = "step.surely_needs_control && step.starts_hot && step.h_57_to_5 > limit.total_h"
  say     = "Cooling to 5 C [{step.h_57_to_5 > limit.total_h ? 'takes' : 'stays under'} {step.h_57_to_5}|may take {step.h_57_to_5}|may take too long]; {limit.total_h} is the most. Use [{step.cooling_way}|shallow trays], then a cold fridge."
  why     = "Below 21 C growth slows and does not stop: the second stage has what the first has left of the six hours."
  source  = "FDA Food Code 2022, 3-501.14(A)(2) (read), and not where it is baked within the hours of 3-501.19(B) (read); ways to cool: 3-501.15 (memory)"

  adjust "step.as" { within = [10, 60] }
}

trial "custard in the fridge, down to 5 C" {
  rule  = "cool-second-stage"
  cases = {
    "5 C after 370 min" = "flagged" # 6 hours and 10 minutes
    "5 C after 350 min" = "clear"   # 5 hours and 50 minutes
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min", to = "57 C" }, { chill = "8 h", at = "3 C", as = "tray 40 mm", measured = "$case" }]
    }
  }
}

trial "three kilos in a bowl in the fridge" {
  rule   = "cool-second-stage"
  expect = "flagged"
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "2000 g", "egg yolk" = "480 g", "sugar" = "400 g", "corn starch" = "160 g" }
      steps       = [{ cook = "8 min", to = "85 C" }, { chill = "12 h", at = "4 C", as = "bowl" }]
    }
  }
}

trial "trays in an ice bath, then the fridge" {
  rule   = "cool-second-stage"
  expect = "clear"
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "2000 g", "egg yolk" = "480 g", "sugar" = "400 g", "corn starch" = "160 g" }
      steps       = [{ cook = "8 min", to = "85 C" }, { cool = "1 h", by = "ice bath", as = "tray 15 mm", covered = false }, { chill = "12 h", at = "4 C", as = "tray 15 mm", covered = false }]
    }
  }
}

trial "cool in an hour, and in the oven after three" {
  rule   = "cool-second-stage"
  expect = "clear"
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min", to = "90 C" }, { chill = "1 h", at = "3 C", as = "tray 10 mm", covered = false, measured = "15 C after 1 h" }]
    }
    dough "d" {
      ingredients = { "bread flour" = { amount = "1000 g" }, "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "25 C" },
        { fill = "custard" },
        { shape = "buns", pieces = 20 },
        { proof = "1 h", at = "28 C", as = "pieces 110 g" },
        { bake = "16 min", at = "200 C", core = "93 C", measured = "94 C core" },
      ]
    }
  }
}

trial "cream in trays, down to 5 C by the model" {
  rule  = "cool-second-stage"
  cases = { "20 mm" = "risk", "30 mm" = "stop" } # 5 h by the middle, and over 6 h
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "300 g", "egg yolk" = "60 g", "sugar" = "70 g", "corn starch" = "28 g" }
      steps       = [{ cook = "3 min", to = "90 C" }, { chill = "3 h", at = "fridge", as = "tray $case", covered = true }]
    }
  }
}

trial "a blast chiller blows cold air of its own" {
  rule  = "cool-second-stage"
  cases = {
    "blast chiller" = "risk" # its air may be no colder than 3 C
    "fan"           = "stop"
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "700 g", "egg yolk" = "160 g", "sugar" = "160 g", "corn starch" = "60 g" }
      steps       = [{ cook = "8 min", to = "92 C" }, { cool = "1 h", by = "$case", as = "tray 20 mm", covered = true }, { chill = "12 h", at = "fridge", as = "tray 20 mm", covered = true }]
    }
  }
}

rule "hot-out-long" {
  on     = "wait"
  level  = "risk"
  doubt  = "flag"
  limits = { out_h = "kitchen.hot_out_h" }
  when   = "step.surely_needs_control && step.hot_out_h > limit.out_h"
  say    = "Out of the oven it stands [{step.hot_out_h}|too long] and is neither kept hot nor cooled; {limit.out_h} is the most by your code. Sell it sooner, or keep it hot."
  why    = "With time as the control, what is left is thrown away. The US gives hot food four hours and the UK two; a cooling is another thing."
  source = "FDA Food Code 2022, 3-501.19(B), 4 h (read); UK SI 2013/2996, para 7(2), 2 h (quoted)"

  adjust "step.time" {}
}

trial "ham and cheese buns, out of the oven and sold" {
  rule  = "hot-out-long"
  cases = {
    "115 min"     = { expect = "clear", time = "115 min", of = "ham" }
    "125 min"     = { expect = "flagged", time = "125 min", of = "ham" }
    "235 min"     = { expect = "flagged", time = "235 min", of = "ham" }
    "over 4 h"    = { expect = "clear", time = "245 min", of = "ham" } # its cooling counts then, as a stop
    "sugar alone" = { expect = "clear", time = "235 min", of = "brown sugar" }
  }
  formula "t" {
    filling "f" { ingredients = { "$of" = "300 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "25 C" },
        { fill = "f" },
        { shape = "buns", pieces = 20 },
        { proof = "1 h", at = "28 C", as = "pieces 95 g" },
        { bake = "16 min", at = "200 C", core = "93 C", measured = "94 C core" },
        { hold = "$time", at = "room" },
      ]
    }
  }
}

rule "cooling-not-measured" {
  on     = "wait"
  level  = "note"
  doubt  = "flag"
  when   = "step.needs_control && !step.surely_needs_control && step.starts_hot && (step.h_57_to_21 > kitchen.cool_first_h || step.h_57_to_5 > kitchen.cool_total_h)"
  say    = "Cooling from 57 to 21 C [takes {step.h_57_to_21}|may take too long]; food that needs control has {kitchen.cool_first_h}. Measure its water activity or pH: either settles whether it does."
  why    = "A sweet or sour filling that was baked in may need no control at all, and no calculation says so for certain."
  source = "FDA Food Code 2022, 1-201.10(B) table B and 3-501.14 (read); the repealed UK SI 1991/1343 let an uncut baked-in filling stand a day (read)"
}

trial "a sweet poppy filling in the fridge, deep" {
  rule  = "cooling-not-measured"
  cases = {
    "deep"    = { expect = "flagged", as = "slab 120 mm" }
    "shallow" = { expect = "clear", as = "tray 8 mm" }
  }
  formula "t" {
    filling "poppy" {
      ingredients = { "poppy seeds" = "300 g", "sugar" = "180 g", "honey" = "60 g", "whole milk" = "160 g", "dry bread crumbs" = "40 g" }
      steps       = [{ cook = "5 min", to = "90 C" }, { chill = "12 h", at = "3 C", as = "$as", covered = false }]
    }
  }
}

rule "ambient-made-chill" {
  on     = ["chill", "freeze"]
  level  = "risk"
  doubt  = "flag"
  limits = { made_h = "kitchen.ambient_made_h" }
  when   = "!(part.kind in ['dough', 'preferment']) && !part.is_cooked && part.needs_control && step.h_made_to_5c > limit.made_h"
  say    = "Chilling to 5 C [ends {step.h_made_to_5c} after the mix|may take too long]; {limit.made_h} is the most. Mix it cold, or chill it in shallow trays."
  why    = "What is made of ingredients at room warmth has had no kill step: its time in the warm counts from the bowl on."
  source = "FDA Food Code 2022, 3-501.14(B) (read)"

  adjust "step.as" { within = [10, 60] }
}

trial "cream cheese filling, down to 5 C" {
  rule  = "ambient-made-chill"
  cases = {
    "5 C after 250 min" = "flagged" # 4 hours and 10 minutes
    "5 C after 230 min" = "clear"   # 3 hours and 50 minutes
  }
  formula "t" {
    filling "cheese" {
      ph          = 5.2
      ingredients = { "cream cheese" = "1000 g", "sugar" = "200 g" }
      steps       = [{ mix = "5 min", to = "18 C" }, { chill = "8 h", at = "3 C", as = "tray 40 mm", measured = "$case" }]
    }
  }
}

trial "cream, whipped cold and put back" {
  rule  = "ambient-made-chill"
  cases = {
    "4 C"  = "clear"
    "20 C" = "flagged"
  }
  formula "t" {
    filling "cream" {
      ingredients = { "heavy cream" = { amount = "500 g", temp = "$case" }, "icing sugar" = "50 g" }
      steps       = [{ mix = "4 min" }, { chill = "30 min", at = "4 C" }]
    }
  }
}

trial "a bowl of cream cheese filling" {
  rule   = "ambient-made-chill"
  expect = "flagged"
  formula "t" {
    filling "cheese" {
      ph          = 5.2
      ingredients = { "cream cheese" = "2000 g", "sugar" = "400 g" }
      steps       = [{ mix = "5 min", to = "18 C" }, { chill = "12 h", at = "3 C", as = "bowl" }]
    }
  }
}

trial "chilled again when it is cold" {
  rule   = "ambient-made-chill"
  expect = "clear"
  formula "t" {
    filling "cheese" {
      ph          = 5.2
      ingredients = { "cream cheese" = "1000 g", "sugar" = "200 g" }
      steps       = [{ mix = "5 min", to = "18 C" }, { chill = "8 h", at = "3 C", as = "tray 20 mm", covered = false, measured = "4 C after 3 h" }, { chill = "8 h", at = "3 C" }]
    }
  }
}

trial "a dough that will be baked" {
  rule   = "ambient-made-chill"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "whole milk" = { amount = "250 g", temp = "20 C" }, "egg" = "100 g", "instant yeast" = "4 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { chill = "12 h", at = "fridge", as = "bowl" }, { bake = "30 min", at = "180 C", core = "93 C" }]
    }
  }
}

# Cold and hot

rule "fridge-warm" {
  on     = "formula"
  level  = "risk"
  doubt  = "flag"
  limits = { fridge_c = "kitchen.cold_hold_c" }
  when   = "formula.needs_cold && kitchen.fridge_c > limit.fridge_c"
  say    = "The fridge is at {kitchen.fridge_c}; {limit.fridge_c} is the most. Set it colder, and read it in a glass of water on the warmest shelf."
  why    = "Listeria grows in any fridge, and three to seven times as fast a few degrees up."
  source = "FDA Food Code 2022, 3-501.16(A)(2) (read); growth: FDA Hazards Guidance, App. 4 table A-2 (memory)"
}

trial "temperature of the fridge" {
  rule  = "fridge-warm"
  cases = {
    "5.3 C"      = "flagged"
    "5 C"        = "clear"
    "41 F"       = "clear"
    "3 C to 7 C" = "flagged" # a fridge that runs to 7 C
  }
  kitchen { fridge = "$case" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "egg" = "100 g" } }
  }
}

rule "hot-hold-low" {
  on     = "hold"
  level  = "stop"
  doubt  = "flag"
  limits = { hot_c = "kitchen.hot_hold_c", meant_c = 30 }
  when   = "hold.needs_control && hold.at_c >= limit.meant_c && hold.at_c < limit.hot_c"
  say    = "This stands at {hold.at_c}, where bacteria grow; to be kept hot it needs {limit.hot_c}. Hold it hotter, or cool it."
  why    = "Under its holding temperature a hot food is as warm as bacteria like it."
  source = "FDA Food Code 2022, 3-501.16(A)(1): 57 C (read); UK SI 2013/2996: 63 C (quoted); a hold under 30 C is no hot holding: common practice, no source"

  adjust "step.at" {}
}

trial "custard held warm" {
  rule  = "hot-hold-low"
  cases = {
    "60 C" = "flagged"
    "65 C" = "clear"
    "31 C" = "flagged"
    "28 C" = "clear"   # a bench of 28 C is no hot holding
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "80 C" }, { hold = "1 h", at = "$case" }]
    }
  }
}

trial "held at 135 F by the US code" {
  rule   = "hot-hold-low"
  expect = "clear"
  kitchen { code = "us-food-code" }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "176 F" }, { hold = "1 h", at = "135 F" }]
    }
  }
}

# Hours in the warm

rule "warm-time" {
  on     = "part"
  level  = "risk"
  doubt  = "flag"
  limits = { warm_h = "kitchen.cold_out_h" }
  when   = "part.needs_control && !part.is_live_dough && part.warm_h > limit.warm_h"
  say    = "This [stands {part.warm_h} between cold and hot|may stand warm too long]; {limit.warm_h} is the most for food that needs control. Shorten the rests, work cooler, or chill it thinner."
  why    = "Time in the warm adds up, and a chill stops the clock without setting it back. A dough with live yeast is judged by growth measured in such dough: see live-dough-stop."
  source = "FDA Food Code 2022, 3-501.19(B), time as a control, 4 h (read)"

  adjust "rest.time" { within = [20, 1440] }
  adjust "proof.time" { within = [60, 1440] }
  adjust "hold.time" {}
  adjust "chill.as" { within = [15, 200] }
}

trial "cream cheese on the bench" {
  rule  = "warm-time"
  cases = {
    "250 min" = "flagged" # 4 hours and 10 minutes
    "230 min" = "clear"   # 3 hours and 50 minutes
  }
  formula "t" {
    filling "cheese" {
      ph          = 5.2
      ingredients = { "cream cheese" = { amount = "1000 g", temp = "20 C" }, "sugar" = "200 g" }
      steps       = [{ hold = "$case", at = "20 C", as = "bowl" }]
    }
  }
}

trial "in the dough the time runs on" {
  rule   = "warm-time"
  expect = "flagged"
  formula "t" {
    filling "cheese" {
      ph          = 5.2
      ingredients = { "cream cheese" = { amount = "1000 g", temp = "20 C" }, "sugar" = "200 g" }
      steps       = [{ hold = "2 h", at = "20 C", as = "bowl" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "cheese" }, { shape = "buns", pieces = 20 }, { proof = "130 min", at = "28 C", as = "pieces 110 g" }, { bake = "16 min", at = "200 C", core = "93 C" }]
    }
  }
}

trial "a lean dough needs no control" {
  rule   = "warm-time"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "2 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { rest = "8 h", at = "room" }, { bake = "30 min", at = "220 C", core = "96 C" }]
    }
  }
}

trial "an egg dough without yeast, at nobody knows what temperature" {
  rule   = "warm-time"
  expect = "flagged"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "whole milk" = "500 g", "egg" = "100 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { rest = "5 h" }, { bake = "30 min", at = "200 C", core = "93 C" }]
    }
  }
}

rule "growth-budget" {
  on     = "part"
  level  = "risk"
  doubt  = "flag"
  limits = { budget = 1 }
  when   = "part.needs_control && !part.is_live_dough && part.warm_h > kitchen.cold_out_h && max(part.budget_salmonella, part.budget_s_aureus, part.budget_b_cereus, part.budget_l_monocytogenes) >= limit.budget && !part.is_killed"
  say    = "[{part.fastest_organism}|Bacteria] could grow here: the published time is used up, and no proven kill step follows. Shorten the warm hours, or keep it cold."
  why    = "Each organism has a longest time at each warmth; the shares of it add up along the part's history. At 1 nothing is left."
  source = "FDA Fish and Fishery Products Hazards and Controls Guidance, App. 4 table A-2 (two bands of 17 read, two quoted, the rest memory); 4 h: FDA Food Code 2022, 3-501.19(B) (read)"

  adjust "rest.time" { within = [20, 1440] }
  adjust "proof.time" { within = [60, 1440] }
  adjust "hold.time" {}
  adjust "chill.as" { within = [15, 200] }
}

trial "egg and cheese at 12 C" {
  rule  = "growth-budget"
  cases = {
    "306 min" = "flagged" # 5 hours and 6 minutes
    "294 min" = "clear"   # 4 hours and 54 minutes
  }
  formula "t" {
    filling "cheese" {
      ph          = 6
      ingredients = { "cream cheese" = { amount = "1000 g", temp = "12 C" }, "egg" = { amount = "100 g", temp = "12 C" } }
      steps       = [{ hold = "$case", at = "12 C", as = "bowl" }]
    }
  }
}

trial "a dough that is baked through answers for what dies" {
  rule   = "growth-budget"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "whole milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C", measured = "26 C" },
        { rest = "100 min", at = "26 C", as = "bowl" },
        { shape = "buns", pieces = 20 },
        { proof = "60 min", at = "28 C", as = "pieces 80 g" },
        { bake = "14 min", at = "200 C", core = "93 C", measured = "94 C core" },
        { cool = "45 min", at = "room" },
      ]
    }
  }
}

trial "the same without yeast, never baked" {
  rule   = "growth-budget"
  expect = "flagged"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "whole milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g" }
      steps = [
        { mix = "10 min", to = "26 C", measured = "26 C" },
        { rest = "200 min", at = "26 C", as = "bowl" },
        { shape = "buns", pieces = 20 },
        { proof = "60 min", at = "28 C", as = "pieces 80 g" },
      ]
    }
  }
}

rule "toxin-not-baked-out" {
  on      = "part"
  level   = "stop"
  doubt   = "flag"
  careful = "risk"
  limits  = { budget = 1 }
  when    = "part.surely_needs_control && !part.is_live_dough && part.warm_h > kitchen.cold_out_h && max(part.budget_s_aureus, part.budget_b_cereus) > limit.budget"
  say     = "[{part.fastest_toxin}|Bacteria] can leave toxin here that baking may not undo: the published time is used up. Keep it cold, or use it sooner."
  why     = "These two can leave a toxin that heat may not destroy. The table is careful, and made for wet food without live yeast: a filling inside a dough is such food."
  source  = "S. aureus 3 h above 21 C, 12 h from 10 to 21 C: FDA Fish and Fishery Products Hazards and Controls Guidance, ch. 15 (read); B. cereus from 6 to 21 C (quoted), other bands: App. 4 table A-2 (memory); toxins: EFSA and ICMSF, by reviews (quoted); 4 h: FDA Food Code 2022, 3-501.19(B) (read)"

  adjust "rest.time" { within = [20, 1440] }
  adjust "proof.time" { within = [60, 1440] }
  adjust "hold.time" {}
  adjust "chill.as" { within = [15, 200] }
}

trial "milk and egg at 12 C" {
  rule  = "toxin-not-baked-out"
  cases = {
    "728 min" = "flagged" # 12 hours and 8 minutes
    "712 min" = "clear"   # 11 hours and 52 minutes
  }
  formula "t" {
    filling "cheese" {
      ph          = 6
      ingredients = { "cream cheese" = { amount = "1000 g", temp = "12 C" }, "egg" = { amount = "100 g", temp = "12 C" } }
      steps       = [{ hold = "$case", at = "12 C", as = "bowl" }]
    }
  }
}

trial "without yeast, at 28 C and 30 C" {
  rule  = "toxin-not-baked-out"
  cases = {
    "three hours of without yeast, at 28 C and three of proof at 30 C" = { expect = "flagged", bulk = "3 h", proof = "3 h" }
    "an hour of bulk and an hour of proof"                   = { expect = "clear", bulk = "1 h", proof = "1 h" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "whole milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g" }
      steps = [
        { mix = "10 min", to = "26 C", measured = "26 C" },
        { rest = "$bulk", at = "28 C", as = "bowl" },
        { shape = "buns", pieces = 20 },
        { proof = "$proof", at = "30 C", as = "pieces 80 g" },
        { bake = "14 min", at = "200 C", core = "93 C", measured = "94 C core" },
      ]
    }
  }
}

# Live dough: growth measured in it, and not the table for wet food without yeast

rule "live-dough-stop" {
  on     = "part"
  level  = "stop"
  doubt  = "flag"
  limits = { rise_log = 3, raw_milk_log = 2 }
  when   = "part.staph_log_most >= (part.has_raw_milk ? limit.raw_milk_log : limit.rise_log) && part.staph_log_open >= (part.has_raw_milk ? limit.raw_milk_log : limit.rise_log)"
  say    = "S. aureus can grow[ up to {part.staph_log_most}] here; from 3 log (raw milk: 2) toxin is likely, and baking may not undo it. Chill the dough sooner."
  why    = "One study measured it in a live dough: a lean one. We doubled it for egg and milk, which nobody has measured. Studies part on whether a bake ends the toxin."
  source = "growth: J. Food Prot. 74(2):285-288 (2011), abstract (read), its curve computed; toxin from 10^4/g: BC Centre for Disease Control (read); the doubling and the three logs: judgement; outlives 35 min at 180 C: Campos et al. 2022 (read), lost in a cake bake: Anunciacao et al. 1995 (read; abstracts)"

  adjust "rest.time" { within = [20, 1440] }
  adjust "proof.time" { within = [60, 1440] }
  adjust "hold.time" {}
  adjust "chill.as" { within = [15, 200] }
}

trial "an enriched dough in a warm room" {
  rule  = "live-dough-stop"
  cases = {
    "28 h at 32 C" = { expect = "flagged", time = "28 h", at = "32 C" }
    "12 h at 28 C" = { expect = "clear", time = "12 h", at = "28 C" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "whole milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g", "instant yeast" = "1 g" }
      steps       = [{ mix = "10 min", to = "26 C", measured = "26 C" }, { rest = "$time", at = "$at", as = "bowl" }, { bake = "30 min", at = "180 C", core = "93 C", measured = "94 C core" }]
    }
  }
}

trial "at 30 C, about the limits" {
  rule  = "live-dough-stop"
  cases = {
    "18 h of whole milk" = { expect = "flagged", milk = "whole milk", time = "18 h" }
    "17 h of whole milk" = { expect = "clear", milk = "whole milk", time = "17 h" }
    "12 h of raw milk" = { expect = "flagged", milk = "raw milk", time = "12 h" }
    "11 h of raw milk" = { expect = "clear", milk = "raw milk", time = "11 h" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "$milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g", "instant yeast" = "1 g" }
      steps       = [{ mix = "10 min", to = "26 C", measured = "26 C" }, { rest = "$time", at = "30 C", as = "bowl" }, { shape = "loaf" }, { bake = "30 min", at = "180 C", core = "93 C", measured = "94 C core" }]
    }
  }
}

rule "live-dough-risk" {
  on     = "part"
  level  = "risk"
  doubt  = "flag"
  limits = { rise_log = 2, raw_milk_log = 1, stop_log = 3, raw_milk_stop_log = 2 } # from the stops on live-dough-stop speaks
  when   = "part.staph_log_most >= (part.has_raw_milk ? limit.raw_milk_log : limit.rise_log) && part.staph_log_open >= (part.has_raw_milk ? limit.raw_milk_log : limit.rise_log) && part.staph_log_most < (part.has_raw_milk ? limit.raw_milk_stop_log : limit.stop_log)"
  say    = "S. aureus can grow[ up to {part.staph_log_most}] here, {part.has_culture ? 'near what makes toxin' : 'within ten times of the count that makes toxin'}. {part.has_culture ? 'Chill it, or measure its pH: ph = 4.3 settles it, in a sweet dough 4.6.' : 'Chill the dough, or rest it less.'}"
  why    = "The test was a lean dough; we doubled it for egg and milk, which nobody has measured. A culture without milk is not doubled, and ends it with a measured pH of 4.6."
  source = "growth: J. Food Prot. 74(2):285-288 (2011), abstract (read), its curve computed; the doubling and the two logs: judgement; culture: Korean J. Food Preserv. 32(2):232 (2025), rye (read); pH: J. Food Sci. 48 (1983), abstract (read)"

  adjust "rest.at" { within = [18, 30] }
  adjust "proof.at" { within = [18, 30] }
  adjust "rest.time" { within = [20, 1440] }
  adjust "proof.time" { within = [60, 1440] }
  adjust "chill.as" { within = [15, 200] }
}

trial "an enriched dough, less warm" {
  rule  = "live-dough-risk"
  cases = {
    "15 h at 30 C" = { expect = "flagged", time = "15 h", at = "30 C" }
    "10 h at 24 C" = { expect = "clear", time = "10 h", at = "24 C" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "whole milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g", "instant yeast" = "1 g" }
      steps       = [{ mix = "10 min", to = "26 C", measured = "26 C" }, { rest = "$time", at = "$at", as = "bowl" }, { bake = "30 min", at = "180 C", core = "93 C", measured = "94 C core" }]
    }
  }
}

trial "at 30 C, about the limits of a risk" {
  rule  = "live-dough-risk"
  cases = {
    "12 h of whole milk" = { expect = "flagged", milk = "whole milk", time = "12 h" }
    "11 h of whole milk" = { expect = "clear", milk = "whole milk", time = "11 h" }
    "17 h of whole milk" = { expect = "flagged", milk = "whole milk", time = "17 h" }
    "18 h of whole milk" = { expect = "clear", milk = "whole milk", time = "18 h" }
    "380 min of raw milk" = { expect = "flagged", milk = "raw milk", time = "380 min" }
    "6 h of raw milk" = { expect = "clear", milk = "raw milk", time = "6 h" }
    "11 h of raw milk" = { expect = "flagged", milk = "raw milk", time = "11 h" }
    "12 h of raw milk" = { expect = "clear", milk = "raw milk", time = "12 h" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "$milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g", "instant yeast" = "1 g" }
      steps       = [{ mix = "10 min", to = "26 C", measured = "26 C" }, { rest = "$time", at = "30 C", as = "bowl" }, { shape = "loaf" }, { bake = "30 min", at = "180 C", core = "93 C", measured = "94 C core" }]
    }
  }
}

trial "twelve hours and six more at 28 C, raised by" {
  rule  = "live-dough-risk"
  cases = {
    "instant yeast"         = { expect = "flagged", of = "instant yeast", g = "1 g", wet = "water", ph = "6" }
    "stiff sourdough"       = { expect = "clear", of = "stiff sourdough", g = "250 g", wet = "water", ph = "6" } # a note
    "a spoon of it"         = { expect = "flagged", of = "stiff sourdough", g = "15 g", wet = "water", ph = "6" }
    "stiff sourdough, milk" = { expect = "flagged", of = "stiff sourdough", g = "250 g", wet = "whole milk", ph = "6" }
  }
  formula "t" {
    dough "d" {
      ph          = "$ph"
      ingredients = { "bread flour" = "1000 g", "$wet" = { amount = "450 g", temp = "24 C" }, "egg yolk" = { amount = "200 g", temp = "10 C" }, "sugar" = "200 g", "unsalted butter" = "250 g", "$of" = "$g" }
      steps       = [{ mix = "15 min", to = "26 C", measured = "26 C" }, { rest = "12 h", at = "28 C", as = "bowl" }, { proof = "6 h", at = "28 C", as = "pieces 900 g" }, { bake = "50 min", at = "175 C", core = "94 C", measured = "94 C core" }]
    }
  }
}

rule "live-dough-hot" {
  on     = ["rest", "proof"]
  level  = "risk"
  doubt  = "flag"
  limits = { hot_c = 35, hot_min = 240 }
  when   = "part.is_live_dough && part.needs_control && step.at_c >= limit.hot_c && step.minutes > limit.hot_min"
  say    = "A dough with egg or milk stands [for {step.minutes}|too long] at {step.at_c}, where S. aureus grows fastest; 4 h is the most there. Rest it cooler, or less."
  why    = "The growth that we go by was measured in a lean dough, at 35 C at the most. The guide for wet food without yeast gives 3 h."
  source = "4 h: FDA Food Code 2022, 3-501.19(B) (read); 3 h above 21 C: FDA Fish and Fishery Products Hazards and Controls Guidance, ch. 15 (read)"

  adjust "step.at" { within = [20, 34] }
  adjust "step.time" {}
}

trial "an egg dough in great heat" {
  rule  = "live-dough-hot"
  cases = {
    "250 min at 36 C" = { expect = "flagged", time = "250 min", at = "36 C" }
    "230 min at 36 C" = { expect = "clear", time = "230 min", at = "36 C" }
    "5 h at 34 C"     = { expect = "clear", time = "5 h", at = "34 C" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "whole milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g", "instant yeast" = "1 g" }
      steps       = [{ mix = "10 min", to = "26 C", measured = "26 C" }, { rest = "$time", at = "$at", as = "bowl" }, { bake = "30 min", at = "180 C", core = "93 C", measured = "94 C core" }]
    }
  }
}

rule "live-dough-note" {
  on     = "part"
  level  = "note"
  doubt  = "flag"
  limits = { rise_log = 1, raw_milk_log = 0.5, risk_log = 2, raw_milk_risk_log = 1 } # from the risks on live-dough-risk speaks
  when   = "!(part.kind == 'preferment' && part.is_used) && part.staph_log_most >= (part.has_raw_milk ? limit.raw_milk_log : limit.rise_log) && part.staph_log_open >= (part.has_raw_milk ? limit.raw_milk_log : limit.rise_log) && part.staph_log_most < (part.has_raw_milk ? limit.raw_milk_risk_log : limit.risk_log)"
  say    = "S. aureus could grow[ up to {part.staph_log_most}] here; from 2 log (raw milk: 1) it is a risk. Keep the dough cooler, or rest it less."
  why    = "The code names raw yeast dough neither way. Growth in a live lean dough was measured, and doubled here for egg and milk. An inspector may ask after the four hours of a raw working supply."
  source = "growth: J. Food Prot. 74(2):285-288 (2011), abstract (read), its curve computed; the doubling: judgement; 4 h: FDA Food Code 2022, 3-501.19(B) (read)"
}

trial "an enriched dough over night" {
  rule  = "live-dough-note"
  cases = {
    "12 h at 26 C" = { expect = "flagged", time = "12 h", at = "26 C" }
    "2 h at 26 C"  = { expect = "clear", time = "2 h", at = "26 C" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "whole milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g", "instant yeast" = "2 g" }
      steps       = [{ mix = "10 min", to = "26 C", measured = "26 C" }, { rest = "$time", at = "$at", as = "bowl" }, { bake = "30 min", at = "180 C", core = "93 C", measured = "94 C core" }]
    }
  }
}

trial "at 30 C, about the limits of a note" {
  rule  = "live-dough-note"
  cases = {
    "380 min of whole milk" = { expect = "flagged", milk = "whole milk", time = "380 min" }
    "6 h of whole milk" = { expect = "clear", milk = "whole milk", time = "6 h" }
    "11 h of whole milk" = { expect = "flagged", milk = "whole milk", time = "11 h" }
    "12 h of whole milk" = { expect = "clear", milk = "whole milk", time = "12 h" }
    "200 min of raw milk" = { expect = "flagged", milk = "raw milk", time = "200 min" }
    "3 h of raw milk" = { expect = "clear", milk = "raw milk", time = "3 h" }
    "6 h of raw milk" = { expect = "flagged", milk = "raw milk", time = "6 h" }
    "380 min of raw milk" = { expect = "clear", milk = "raw milk", time = "380 min" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "$milk" = { amount = "450 g", temp = "20 C" }, "egg" = { amount = "150 g", temp = "10 C" }, "sugar" = "80 g", "instant yeast" = "1 g" }
      steps       = [{ mix = "10 min", to = "26 C", measured = "26 C" }, { rest = "$time", at = "30 C", as = "bowl" }, { shape = "loaf" }, { bake = "30 min", at = "180 C", core = "93 C", measured = "94 C core" }]
    }
  }
}

rule "b-cereus-grown" {
  on      = "part"
  level   = "stop"
  doubt   = "flag"
  careful = "risk"
  risk    = "part.keeps_cooling_hours"
  limits  = { rise = 2 }
  when    = "part.surely_needs_control && part.b_cereus_log >= limit.rise"
  say     = "B. cereus spores survive the cook and can grow[ {part.b_cereus_log}] while this is warm; {limit.rise} log is the most. Cool it at once and keep it cold."
  why     = "Cooked starch, vegetables, milk and custard have no live yeast in them that would hold anything back. Baking may not undo its toxin."
  source  = "growth in cooked rice: J. Food Prot. 72(11) (2009); in milk: J. Food Prot. 54:372 (1991), abstracts (read), their curves computed; two logs: judgement. A cooling just within FDA Food Code 2022, 3-501.14(A) (read) comes to less than two (computed)"

  adjust "rest.time" { within = [20, 1440] }
  adjust "hold.time" {}
}

trial "cold cream in a fried dough whose core nobody wrote" {
  rule  = "b-cereus-grown"
  cases = {
    "cooled, then chilled" = { expect = "clear", cool = "40 min", hold = "4 h", at = "fridge" }
    "held out for a day"   = { expect = "stop", cool = "40 min", hold = "2 day", at = "room" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "16 g", "instant yeast" = "15 g" }
      steps = [
        { mix = "10 min", to = "25 C" }, { shape = "rounds", pieces = 30 }, { proof = "1 h", at = "27 C" },
        { cook = "4 min", at = "175 C", by = "frying" }, { cool = "$cool", at = "room" },
        { fill = "cream" }, { hold = "$hold", at = "$at" },
      ]
    }
    filling "cream" {
      ph          = 6.5
      ingredients = { "whole milk" = "700 g", "egg yolk" = "160 g", "sugar" = "160 g", "corn starch" = "60 g" }
      steps       = [{ cook = "8 min", to = "92 C" }, { cool = "1 h", by = "ice bath", as = "tray 10 mm", measured = "8 C" }, { chill = "12 h", at = "fridge", as = "tray 10 mm" }]
    }
  }
}

trial "a scald in a warm room" {
  rule  = "b-cereus-grown"
  cases = { "305 min" = "flagged", "295 min" = "clear", "12 h" = "flagged" }
  formula "t" {
    filling "scald" {
      ingredients = { "bread flour" = "100 g", "water" = "400 g" }
      steps       = [{ cook = "5 min", to = "75 C" }, { rest = "$case", at = "24 C", as = "tray 8 mm" }]
    }
  }
}

trial "pastry cream cooled in the hours of the code, then in rolls" {
  rule  = "b-cereus-grown"
  cases = {
    "50 min in the proof"   = { expect = "risk", as = "tray 20 mm", rest = "10 min", proof = "50 min" }
    "under four hours warm" = { expect = "risk", as = "tray 20 mm", rest = "2 h", proof = "80 min" } # 3 h 50 min with the rack
    "over four hours warm"  = { expect = "stop", as = "tray 20 mm", rest = "2 h", proof = "100 min" } # 4 h 10 min
    "cooled too deep"       = { expect = "stop", as = "tray 40 mm", rest = "10 min", proof = "50 min" }
    "nobody says how long"  = { expect = "stop", as = "tray 20 mm", rest = "10 min", proof = "?" }
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "300 g", "egg yolk" = "60 g", "sugar" = "70 g", "corn starch" = "28 g" }
      steps       = [{ cook = "3 min", to = "90 C" }, { chill = "3 h", at = "fridge", as = "$as", covered = true }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "7 g" }
      steps = [
        { mix = "10 min", to = "25 C", measured = "25 C" },
        { fill = "custard" },
        { shape = "buns", pieces = 16 },
        { rest = "$rest", at = "24 C", as = "pieces 75 g" },
        { proof = "$proof", at = "27 C", as = "pieces 75 g" },
        { bake = "18 min", at = "190 C", core = "90 C", measured = "92 C core" },
        { cool = "30 min", at = "room", as = "pieces 75 g" },
        { chill = "4 h", at = "fridge", as = "pieces 75 g" },
      ]
    }
  }
}

# Cooked, baked, eaten

rule "egg-undercooked" {
  on     = ["filling", "topping", "syrup", "wash"]
  level  = "stop"
  doubt   = "flag"
  careful = "risk"
  risk    = "part.cook_heat_unsaid" # a custard that nobody probed is usually hot enough (judgement)
  limits = { egg_c = 70 }
  when   = "part.has_shell_egg && (part.shell_egg_raw || part.is_cooked) && (part.is_used || part.is_mixed || part.is_cooked) && part.egg_heated_c < limit.egg_c"
  say    = "Shell egg in this [reaches {part.egg_heated_c}|may stay raw]; {limit.egg_c} cooks it. Cook it, bake it through, or use pasteurised egg."
  why    = "Raw egg can carry Salmonella. The code asks for 68 C held 17 seconds, or 70 C at once; advice for egg dishes at home is 71 C."
  source = "FDA Food Code 2022, 3-401.11(A)(2), 3-302.13 (read); USDA chart: 71 C, 160 F (read)"

  adjust "cook.to" {}
}

trial "custard cooked for a time, and no heat" {
  rule  = "egg-undercooked"
  cases = { "5 min" = "risk" }
  formula "t" {
    filling "custard" {
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "$case" }]
    }
  }
}

trial "egg in a raw filling, a range of bakes" { # as its ends are, whatever follows the bake
  rule  = "egg-undercooked"
  cases = { "25 min" = "risk", "25 min to 30 min" = "risk", "30 min" = "clear", "8 min to 30 min" = "stop", "?" = "stop" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "480 g", "whole milk" = { amount = "180 g", temp = "40 C" }, "egg" = "80 g", "unsalted butter" = "85 g", "sugar" = "65 g", "active dry yeast" = "7 g", "salt" = "9 g" }
      steps = [
        { mix = "10 min", by = "hand" },
        { rest = "1 h 30 min to 2 h", at = "25 C to 30 C" },
        { fill = "cream cheese" },
        { shape = "ring" },
        { proof = "45 min", at = "room" },
        { bake = "$case", at = "190 C" },
        { cool = "1 h to 4 h" },
      ]
    }
    filling "cream cheese" {
      ingredients = { "cream cheese" = "227 g", "sugar" = "100 g", "cinnamon" = "8 g", "egg yolk" = "18 g" }
    }
  }
}

trial "custard cooked to" {
  rule  = "egg-undercooked"
  cases = { "66 C" = "flagged", "75 C" = "clear", "160 F" = "clear" }
  formula "t" {
    filling "custard" {
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "$case" }]
    }
  }
}

trial "custard taken into a butter cream" {
  rule  = "egg-undercooked"
  cases = { "66 C" = "flagged", "85 C" = "clear" }
  formula "t" {
    filling "custard" {
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "$case" }]
    }
    filling "butter cream" {
      ingredients = { "the custard" = "all", "unsalted butter" = "200 g" }
      steps       = [{ mix = "5 min" }]
    }
  }
}

trial "egg that goes in after the cook of its part" {
  rule  = "egg-undercooked"
  cases = {
    "white folded in cold"    = { expect = "stop", with = "egg white" }
    "butter stirred in"       = { expect = "clear", with = "unsalted butter" }
    "yolk stirred in cold"    = { expect = "stop", with = "egg yolk" }
  }
  formula "t" {
    filling "custard" {
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "egg white" = "100 g", "sugar" = "100 g", "unsalted butter" = "50 g" }
      steps       = [{ cook = "5 min", to = "85 C" }, { mix = "4 min", with = "$with" }]
    }
  }
}

trial "half the egg held back" {
  rule  = "egg-undercooked"
  cases = { "cooked again" = { expect = "clear", to = "85 C" }, "only warmed" = { expect = "stop", to = "50 C" } }
  formula "t" {
    filling "custard" {
      ingredients = { "whole milk" = "500 g", "egg yolk" = { amount = "100 g", reserve = "50 g" }, "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }, { mix = "4 min", with = "egg yolk" }, { cook = "2 min", to = "$to" }]
    }
  }
}

trial "egg wash that goes into the oven" {
  rule   = "egg-undercooked"
  expect = "clear"
  formula "t" {
    wash "w" { ingredients = { "egg" = "50 g", "water" = "10 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { wash = "w" }, { bake = "20 min", at = "200 C", core = "93 C" }]
    }
  }
}

trial "a raw egg foam put on after the bake" {
  rule   = "egg-undercooked"
  expect = "flagged"
  formula "t" {
    topping "foam" { ingredients = { "egg white" = "100 g", "sugar" = "200 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { brush = "foam" }]
    }
  }
}

trial "raw egg in a filling, and a bake to nobody knows what" {
  rule   = "egg-undercooked"
  expect = "flagged"
  formula "t" {
    filling "f" { ingredients = { "ground almonds" = "200 g", "egg" = "50 g", "sugar" = "100 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "f" }, { bake = "?", at = "200 C" }]
    }
  }
}

rule "raw-flour-eaten" {
  on     = "part"
  level  = "stop"
  doubt  = "flag"
  risk   = "part.flour_usually_baked"
  when   = "(part.has_process || formula.has_steps && part.kind != 'dough') && !(part.kind == 'dough' && part.has_leaven && !part.is_baked && !part.says_eaten) && part.flour_eaten_raw"
  say    = "The flour in this is raw when it is eaten: no bake and no cook to 74 C reaches it. Bake it, cook it, or buy flour sold as heat-treated."
  why    = "Flour is a raw food: it can carry E. coli and Salmonella, and neither milling nor toasting it at home is a proven kill."
  source = "US CDC and FDA, raw flour and dough (read); 74 C: the careful end of consumer advice, no code names a figure for flour"
}

trial "a leavened dough that nothing bakes" {
  rule  = "raw-flour-eaten"
  cases = { "served cold, as a sweet" = "flagged", "never eat it" = "clear", "until tomorrow" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { shape = "balls", pieces = 40 }, { store = "1 day", at = "fridge", covered = true, note = "$case" }]
    }
  }
}

trial "raw crumb put on after the bake" {
  rule   = "raw-flour-eaten"
  expect = "flagged"
  formula "t" {
    topping "crumb" { ingredients = { "all-purpose flour" = "100 g", "unsalted butter" = "80 g", "sugar" = "60 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { brush = "crumb" }]
    }
  }
}

trial "crumb put on before the bake" {
  rule   = "raw-flour-eaten"
  expect = "clear"
  formula "t" {
    topping "crumb" { ingredients = { "all-purpose flour" = "100 g", "unsalted butter" = "80 g", "sugar" = "60 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { wash = "crumb" }, { bake = "20 min", at = "200 C", core = "93 C" }]
    }
  }
}

trial "flour in a filling, baked by the clock" {
  rule  = "raw-flour-eaten"
  cases = {
    "4 min"  = "stop"
    "14 min" = "risk" # 74 C by the middle of the model, and less in a slow oven
    "20 min" = "clear"
  }
  formula "t" {
    filling "f" { ingredients = { "ground almonds" = "200 g", "all-purpose flour" = "40 g", "sugar" = "150 g", "unsalted butter" = "150 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "f" }, { shape = "buns", pieces = 20 }, { proof = "1 h", at = "28 C", as = "pieces 95 g" }, { bake = "$case", at = "200 C" }]
    }
  }
}

trial "a dough with steps and no bake" {
  rule   = "raw-flour-eaten"
  expect = "flagged"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }]
    }
  }
}

trial "flour stirred in after the cook" {
  rule  = "raw-flour-eaten"
  cases = { "all-purpose flour" = "flagged", "sugar" = "clear" }
  formula "t" {
    filling "custard" {
      ingredients = { "whole milk" = "500 g", "sugar" = "100 g", "all-purpose flour" = "40 g" }
      steps       = [{ cook = "5 min", to = "92 C" }, { mix = "2 min", with = "$case" }]
    }
  }
}

trial "pastry cream cooked to 92 C" {
  rule   = "raw-flour-eaten"
  expect = "clear"
  formula "t" {
    filling "custard" {
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "all-purpose flour" = "40 g" }
      steps       = [{ cook = "5 min", to = "92 C" }]
    }
  }
}

rule "bake-missing" {
  on     = "dough"
  level  = "risk"
  doubt  = "flag"
  when   = "dough.has_process && !dough.is_baked && !dough.cooks_all && dough.flour_eaten_raw"
  say    = "Steps are written for this dough, and none bakes or fries it: flour, egg and meat in it stay raw. Write the bake: its time, oven and core."
  why    = "An unbaked dough is raw flour, and often raw egg. A formula that ends at the proof cannot be checked for the oven."
  source = "US CDC and FDA, raw flour and dough (read)"
}

trial "mixed and left" {
  rule   = "bake-missing"
  expect = "flagged"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g" }
      steps       = [{ mix = "10 min" }, { rest = "1 h" }]
    }
  }
}

trial "mixed and baked" {
  rule   = "bake-missing"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g" }
      steps       = [{ mix = "10 min" }, { bake = "20 min", at = "200 C" }]
    }
  }
}

trial "mixed and fried" {
  rule   = "bake-missing"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g" }
      steps       = [{ mix = "10 min" }, { cook = "3 min", at = "180 C", by = "frying" }]
    }
  }
}

trial "filled, and nothing else written" {
  rule   = "bake-missing"
  expect = "flagged"
  formula "t" {
    filling "butter" { ingredients = { "unsalted butter" = "250 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "280 g", "instant yeast" = "6 g" }
      steps       = [{ fill = "butter" }]
    }
  }
}

trial "a dough without steps, beside a cooked filling" {
  rule   = "bake-missing"
  expect = "clear" # process-missing says that it is not written
  formula "t" {
    filling "custard" {
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }]
    }
    dough "d" { ingredients = { "bread flour" = "500 g", "water" = "280 g", "instant yeast" = "6 g" } }
  }
}

trial "nothing mixed yet" {
  rule   = "bake-missing"
  expect = "clear"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g" } }
  }
}

rule "core-unsafe" {
  on     = "bake"
  level  = "stop"
  limits = { core_c = 71, meat_c = 74 }
  when   = "(part.has_leaven || bake.holds_raw_meat) && bake.core_usual_c < (bake.holds_raw_meat ? limit.meat_c : limit.core_c)"
  say    = "The middle gets to {bake.core_usual_c}; raw flour and egg need {limit.core_c}, raw meat {limit.meat_c}. Bake it longer, and probe the middle."
  why    = "Colour is no proof. 71 C in the slowest place is the oldest finding for baked goods with egg."
  source = "71 C: Adequacy of cooking procedures for the destruction of salmonellae, abstract (read); meat: FDA Food Code 2022, 3-401.11(A) (read); flour is raw until baked: US CDC and FDA (read)"

  adjust "step.time" { within = [5, 90] }
}

trial "loaf in a falling oven" {
  rule  = "core-unsafe"
  cases = { "2 min" = "flagged", "40 min" = "clear" }
  formula "t" {
    makes = "1 loaf"
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "280 g", "instant yeast" = "7 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "loaf" }, { bake = "10 min", at = "220 C" }, { bake = "$case", at = "180 C" }]
    }
  }
}

trial "an egg dough, probed at" {
  rule  = "core-unsafe"
  cases = { "70.5 C core" = "flagged", "71.5 C core" = "clear" }
  formula "t" {
    makes = "20 pieces"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "egg" = "100 g", "water" = "500 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { bake = "15 min", at = "200 C", core = "92 C", measured = "$case" }]
    }
  }
}

trial "a raw meat filling, probed at" {
  rule  = "core-unsafe"
  cases = { "73.5 C core" = "flagged", "74.5 C core" = "clear" }
  formula "t" {
    makes = "20 pieces"
    filling "meat" { ingredients = { "raw sausage" = "500 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { fill = "meat" }, { bake = "15 min", at = "200 C", core = "92 C", measured = "$case" }]
    }
  }
}

trial "baked to, cooled and warmed again" {
  rule  = "core-unsafe"
  cases = {
    "94 C"                 = { expect = "clear", read = "94 C core", on = "butter" }
    "94 C, then meat"      = { expect = "flagged", read = "94 C core", on = "raw sausage" }
    "62 C, and not enough" = { expect = "flagged", read = "62 C core", on = "butter" }
  }
  formula "t" {
    makes = "20 pieces"
    topping "t" { ingredients = { "$on" = "200 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "egg" = "100 g", "water" = "500 g", "instant yeast" = "15 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { bake = "15 min", at = "200 C", measured = "$read" },
        { cool = "1 h", at = "room" },
        { brush = "t" },
        { bake = "5 min", at = "160 C", measured = "50 C core" },
      ]
    }
  }
}

trial "balls divided by weight, their number unsaid" {
  rule  = "core-unsafe"
  cases = { "5 min" = "flagged", "16 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "egg" = "100 g", "water" = "500 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { divide = "75 g" }, { shape = "balls" }, { bake = "$case", at = "190 C" }]
    }
  }
}

rule "core-shape-open" {
  on     = "bake"
  level  = "risk"
  limits = { core_c = 71 }
  when   = "part.has_leaven && bake.shape_open && bake.core_low_as_round_c < limit.core_c"
  say    = "As a round, the middle gets to {bake.core_low_as_round_c}, under {limit.core_c}; nothing says how this large piece stands. Write shape = \"ring\" or \"loaf\", or probe it."
  why    = "A ring or a plait bakes through in half the time of a round of the same weight."
  source = "71 C: Adequacy of cooking procedures for the destruction of salmonellae, abstract (read); length to width and height of each shape: common practice, no source"
}

trial "a kilo of egg dough, 16 min" {
  rule  = "core-shape-open"
  cases = {
    "pushed together" = "flagged" # as a ring it is done, as a round it is not
    "cut in two"      = "flagged"
    "a ring"          = "clear"
    "a round"         = "clear" # a stop of core-unsafe
  }
  formula "t" {
    makes = "1 piece"
    dough "d" {
      ingredients = { "bread flour" = "550 g", "egg" = "100 g", "milk" = "220 g", "butter" = "100 g", "instant yeast" = "8 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "$case" }, { bake = "16 min", at = "190 C" }]
    }
  }
}

trial "a kilo of egg dough that nobody shapes, by the clock" {
  rule  = "core-shape-open"
  cases = { "19 min" = "flagged", "22 min" = "clear" }
  formula "t" {
    makes = "1 piece"
    dough "d" {
      ingredients = { "bread flour" = "550 g", "egg" = "100 g", "milk" = "220 g", "butter" = "100 g", "instant yeast" = "8 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { bake = "$case", at = "190 C" }]
    }
  }
}

trial "a kilo of egg dough, by how it stands" {
  rule  = "core-unsafe"
  cases = {
    "wreath, 16 min"   = { expect = "clear", how = "a wreath", min = "16 min" }
    "wreath, 8 min"    = { expect = "flagged", how = "a wreath", min = "8 min" }
    "plaited crown"    = { expect = "clear", how = "plaited crown", min = "16 min" }
    "log, 16 min"      = { expect = "clear", how = "rolled up, a log", min = "16 min" }
    "log, 12 min"      = { expect = "flagged", how = "rolled up, a log", min = "12 min" }
    "round, 22 min"    = { expect = "flagged", how = "a round", min = "22 min" }
    "round loaf"       = { expect = "flagged", how = "a round loaf", min = "22 min" }
    "loaf, 22 min"     = { expect = "clear", how = "a loaf", min = "22 min" }
    "disc, 16 min"     = { expect = "flagged", how = "a disc", min = "12 min" }
    "not said, 16 min" = { expect = "unsure", how = "pushed together", min = "16 min" }
    "not said, 5 min"  = { expect = "flagged", how = "pushed together", min = "5 min" }
  }
  formula "t" {
    makes = "1 piece"
    dough "d" {
      ingredients = { "bread flour" = "550 g", "egg" = "100 g", "milk" = "220 g", "butter" = "100 g", "instant yeast" = "8 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "$how" }, { bake = "$min", at = "190 C" }]
    }
  }
}

rule "core-unproven-risk" {
  on     = "bake"
  level  = "risk"
  limits = { core_c = 71, lean_c = 74, rich_c = 82 }
  when   = "part.has_leaven && bake.core_usual_c >= limit.core_c && (bake.core_low_c < limit.core_c || bake.core_usual_c < (part.is_heat_shielded ? limit.rich_c : limit.lean_c))"
  say    = "In a slow oven the middle reaches {bake.core_low_c}; [this dough needs {part.is_heat_shielded ? limit.rich_c : limit.lean_c}|sweet or egg dough needs {limit.rich_c}]. Probe it and write core = \"92 C\"."
  why    = "Sugar shields bacteria from heat: 5 log takes 9 minutes at 71 C in sweet batter, and 1.2 at 80 C."
  source = "muffin batter: Channaiah et al., Int. J. Food Microbiol. 250:1-6 (2017), bun dough: J. Food Prot. 79(4):544 (2016), abstracts (read), carried straight on from the tested 61 C (computed)"
}

rule "core-unproven-note" {
  on     = "bake"
  level  = "note"
  limits = { lean_c = 74, rich_c = 82 }
  when   = "part.has_leaven && bake.core_low_c >= 71 && bake.core_usual_c >= (part.is_heat_shielded ? limit.rich_c : limit.lean_c) && bake.core_low_c < (part.is_heat_shielded ? limit.rich_c : limit.lean_c)"
  say    = "In a slow oven the middle reaches {bake.core_low_c}; [this dough needs {part.is_heat_shielded ? limit.rich_c : limit.lean_c}|sweet or egg dough needs {limit.rich_c}]. Probe it and write core = \"92 C\"."
  why    = "Sugar shields bacteria from heat: 5 log takes 9 minutes at 71 C in sweet batter, and 1.2 at 80 C."
  source = "muffin batter: Channaiah et al., Int. J. Food Microbiol. 250:1-6 (2017), bun dough: J. Food Prot. 79(4):544 (2016), abstracts (read), carried straight on from the tested 61 C (computed)"
}

trial "an egg dough, by the clock" {
  rule  = "core-unproven-note"
  cases = { "8.2 min" = "flagged", "9.2 min" = "clear" }
  formula "t" {
    makes = "20 pieces"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "egg" = "100 g", "water" = "500 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { bake = "$case", at = "200 C" }]
    }
  }
}

trial "a lean dough, by the clock" {
  rule  = "core-unproven-note"
  cases = { "6.9 min" = "clear", "7.3 min" = "flagged", "8 min" = "clear" } # a risk, a note, nothing
  formula "t" {
    makes = "20 pieces"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { bake = "$case", at = "200 C" }]
    }
  }
}

trial "a lean dough that a slow oven leaves raw, by the clock" {
  rule  = "core-unproven-risk"
  cases = { "6.8 min" = "flagged", "7.3 min" = "clear" }
  formula "t" {
    makes = "20 pieces"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { bake = "$case", at = "200 C" }]
    }
  }
}

trial "an egg dough between, probed at" {
  rule  = "core-unproven-risk"
  cases = { "81.5 C core" = "flagged", "82.5 C core" = "clear" }
  formula "t" {
    makes = "20 pieces"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "egg" = "100 g", "water" = "500 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { bake = "15 min", at = "200 C", core = "92 C", measured = "$case" }]
    }
  }
}

trial "a lean dough between, probed at" {
  rule  = "core-unproven-risk"
  cases = { "73.5 C core" = "flagged", "74.5 C core" = "clear" }
  formula "t" {
    makes = "20 pieces"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { bake = "15 min", at = "200 C", core = "92 C", measured = "$case" }]
    }
  }
}

rule "cook-core-unsafe" {
  on     = "cook"
  level  = "stop"
  doubt  = "flag"
  limits = { core_c = 71 }
  risk   = "cook.is_core_unread"
  when   = "cook.is_only_heat && part.has_flour && cook.dough_core_c < limit.core_c"
  say    = "The middle of this dough [gets to {cook.dough_core_c}|may stay raw]; {limit.core_c} cooks its flour, and egg in it. Probe it, and write measured = \"92 C core\"."
  why    = "Steam, water and a plate heat from the outside. A core that is aimed at counts once the time may do: about 7 min for 70 g, 10 for 120 g."
  source = "71 C: Adequacy of cooking procedures for the destruction of salmonellae, abstract (read); flour is raw until cooked: US CDC and FDA (read); the minutes: judgement, by common practice of 10 to 15 min for buns"
}

trial "a steamed dough, probed at" {
  rule  = "cook-core-unsafe"
  cases = { "70.5 C core" = "stop", "71.5 C core" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "balls", pieces = 20 }, { cook = "12 min", by = "steaming", at = "100 C", measured = "$case" }]
    }
  }
}

trial "a dough in steam" {
  rule  = "cook-core-unsafe"
  cases = {
    "a minute, and an aim"       = { expect = "risk", time = "1 min", core = "92 C" }
    "twelve minutes, and an aim" = { expect = "clear", time = "12 min", core = "92 C" }
    "nobody says how long"       = { expect = "stop", time = "?", core = "92 C" }
    "too low an aim"             = { expect = "stop", time = "12 min", core = "65 C" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "balls", pieces = 20 }, { cook = "$time", by = "steaming", at = "100 C", core = "$core" }]
    }
  }
}

trial "boiled, and baked after it" {
  rule   = "cook-core-unsafe"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "rings", pieces = 12 }, { cook = "1 min", by = "boiling" }, { bake = "18 min", at = "220 C", core = "96 C" }]
    }
  }
}

rule "meat-raw" {
  on     = "part"
  level  = "stop"
  doubt  = "flag"
  risk   = "part.meat_unread"
  when   = "part.has_raw_meat && (part.has_process || part.is_mixed || part.is_cooked) && part.meat_heated_c < part.meat_needs_c"
  say    = "Raw meat or fish in this [reaches {part.meat_heated_c}|may stay raw]; {part.meat_needs_c} cooks it. Cook it before it goes on, or bake it in, and probe its middle."
  why    = "Raw meat carries Salmonella, Campylobacter and E. coli, raw fish parasites. What goes on after the bake gets no heat at all; fish that is eaten raw must have been frozen for that."
  source = "FDA Food Code 2022, 3-401.11(A): 63 C whole, 68 C minced, 74 C poultry and stuffed (read); fish eaten raw: 3-402.11 (memory); a risk and no stop from 15 min at 70 C and 75 at 60 C: after UK advice (memory)"
}

trial "minced beef filled after the bake, cooked to" {
  rule  = "meat-raw"
  cases = {
    "55 C" = "flagged"
    "67 C" = "flagged"
    "70 C" = "clear"
  }
  formula "t" {
    filling "meat" {
      ingredients = { "minced beef" = "400 g", "onion" = "60 g" }
      steps       = [{ cook = "8 min", to = "$case", by = "pan" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { fill = "meat" }]
    }
  }
}

trial "chicken cooked in water" {
  rule  = "meat-raw"
  cases = {
    "poached"              = { expect = "risk", time = "25 min", to = "71 C to 85 C" } # 71 C for long
    "an hour and a half at 65 C" = { expect = "risk", time = "90 min", to = "65 C" }
    "ten minutes at 65 C"  = { expect = "stop", time = "10 min", to = "65 C" }
    "simmered"             = { expect = "clear", time = "25 min", to = "85 C to 96 C" }
  }
  formula "t" {
    filling "chicken" {
      ingredients = { "raw chicken" = "400 g" }
      steps       = [{ cook = "$time", to = "$to" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { fill = "chicken" }]
    }
  }
}

trial "laid on after the bake" {
  rule  = "meat-raw"
  cases = { "bacon" = "flagged", "raw salmon" = "flagged", "smoked salmon" = "clear", "raw cured ham" = "clear", "cooked shrimp" = "clear", "ham" = "clear" }
  formula "t" {
    topping "top" { ingredients = { "$case" = "200 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { brush = "top" }]
    }
  }
}

trial "raw pork in a steamed bun, probed at" {
  rule  = "meat-raw"
  cases = { "73.5 C core" = "flagged", "74.5 C core" = "clear" }
  formula "t" {
    filling "pork" { ingredients = { "minced pork" = "400 g" } }
    dough "d" {
      ingredients = { "bread flour" = "600 g", "water" = "320 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "pork" }, { shape = "balls", pieces = 20 }, { cook = "12 min", by = "steaming", measured = "$case" }]
    }
  }
}

trial "raw pork in a steamed bun, aimed at" {
  rule  = "meat-raw"
  cases = { "3 min" = "stop", "12 min" = "risk" }
  formula "t" {
    filling "pork" { ingredients = { "minced pork" = "400 g" } }
    dough "d" {
      ingredients = { "bread flour" = "600 g", "water" = "320 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "pork" }, { shape = "balls", pieces = 20 }, { cook = "$case", by = "steaming", core = "75 C" }]
    }
  }
}

rule "flour-dusted" {
  on     = "dust"
  level  = "stop"
  when   = "dust.dusts_raw_flour"
  say    = "Raw flour is dusted on after the bake, and eaten raw. Dust it before the bake, or use icing sugar, starch or flour sold as heat-treated."
  why    = "Flour is a raw food: it can carry E. coli and Salmonella, and a little of either is enough."
  source = "US CDC and FDA, raw flour and dough (read)"
}

trial "dusted with flour" {
  rule  = "flour-dusted"
  cases = {
    "flour, before"        = { expect = "clear", a = "flour", b = "sugar" }
    "flour, after"         = { expect = "flagged", a = "sugar", b = "flour" }
    "icing sugar"          = { expect = "clear", a = "flour", b = "icing sugar" }
    "heat-treated flour"   = { expect = "clear", a = "flour", b = "heat-treated flour" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { dust = "$a" }, { bake = "20 min", at = "200 C", core = "93 C" }, { dust = "$b" }]
    }
  }
}

# Soaks

rule "soak-warm" {
  on     = "soak"
  level  = "stop"
  doubt  = "flag"
  limits = { share = 1 }
  when   = "soak.soak_share > limit.share"
  say    = "Milk, egg or other food that needs control soaks too long and warm, without yeast. Soak it in the fridge; above 21 C 3 h is the most."
  why    = "Until the yeast is in, it is wet food: S. aureus can leave toxin in it that no bake undoes."
  source = "S. aureus 3 h above 21 C, 12 h from 10 to 21 C: FDA Fish and Fishery Products Hazards and Controls Guidance, ch. 15 (read)"

  adjust "step.time" {}
}

trial "oats in milk before the mix" {
  rule  = "soak-warm"
  cases = {
    "190 min warm"      = { expect = "flagged", time = "190 min", at = "28 C" }
    "170 min warm"      = { expect = "clear", time = "170 min", at = "28 C" }
    "14 h in the fridge" = { expect = "clear", time = "14 h", at = "fridge" }
    "nobody says how long" = { expect = "flagged", time = "?", at = "28 C" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "whole milk" = "300 g", "rolled oats" = "50 g", "instant yeast" = "6 g" }
      steps       = [{ soak = "$time", at = "$at", with = ["whole milk", "rolled oats"] }, { mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }]
    }
  }
}

trial "what soaks is not milk, or has yeast in it" {
  rule  = "soak-warm"
  cases = {
    "raisins in water" = { expect = "clear", a = "water", b = "raisins" }
    "yeast in milk"    = { expect = "clear", a = "whole milk", b = "instant yeast" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "whole milk" = "200 g", "water" = "100 g", "raisins" = "50 g", "instant yeast" = "6 g" }
      steps       = [{ soak = "10 h", at = "room", with = ["$a", "$b"] }, { mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }]
    }
  }
}

rule "seeds-soaked-long" {
  on     = "part"
  level  = "risk"
  doubt  = "flag"
  limits = { soak_h = 20 }
  when   = "part.soaked_h > limit.soak_h"
  say    = "Raw nuts, seeds or grain stand wet and warm [for {part.soaked_h}|too long]; {limit.soak_h} is the most. Soak them in the fridge, or over one night."
  why    = "Raw seeds can carry Salmonella, and wet and warm they feed it as they do sprouts. Creams of soaked raw cashews made people ill."
  source = "outbreaks by raw cashew cheese: US CDC 2014, 2021 (memory); about a day: judgement"
}

trial "seeds in water for" {
  rule  = "seeds-soaked-long"
  cases = {
    "21 h"                = { expect = "flagged", time = "21 h", at = "room", of = "sunflower seeds" }
    "19 h"                = { expect = "clear", time = "19 h", at = "room", of = "sunflower seeds" }
    "two days cold"       = { expect = "clear", time = "2 day", at = "fridge", of = "sunflower seeds" }
    "two days of raisins" = { expect = "clear", time = "2 day", at = "room", of = "raisins" }
  }
  formula "t" {
    filling "f" {
      ingredients = { "$of" = "200 g", "water" = "200 g" }
      steps       = [{ soak = "$time", at = "$at" }]
    }
  }
}

# Poisons and doses

rule "pulses-not-boiled" {
  on     = "part"
  level  = "stop"
  doubt  = "flag"
  limits = { boil_min = 30, least_min = 10 }
  risk   = "part.boiled_min >= limit.least_min"
  when   = "'lectin' in part.hazards && part.has_process && part.boiled_min < limit.boil_min"
  say    = "Dried beans in this boil [for {part.boiled_min}|too briefly]; {limit.boil_min} is the least. Soak them 5 h, pour the water away, boil them in fresh water."
  why    = "Raw beans hold phytohaemagglutinin: four or five of them make ill, and a slow cooker under the boil makes it worse."
  source = "FDA Bad Bug Book, as told by Kansas State University Extension (quoted); 10 min: UK Food Standards Agency (memory)"
}

trial "dried beans at the boil, no figure written" {
  rule  = "pulses-not-boiled"
  cases = {
    "boil"   = { expect = "clear", way = "boiling" }
    "simmer" = { expect = "stop", way = "simmering" }
  }
  formula "t" {
    filling "beans" {
      ingredients = { "dried kidney beans" = "400 g", "water" = "900 g" }
      steps       = [{ soak = "12 h", at = "4 C" }, { cook = "45 min", by = "$way" }]
    }
  }
}

trial "dried beans cooked" {
  rule  = "pulses-not-boiled"
  cases = {
    "eight hours at 78 C" = { expect = "stop", time = "8 h", to = "78 C", of = "dried kidney beans" }
    "boiled 9.5 min"      = { expect = "stop", time = "9.5 min", to = "99 C", of = "dried kidney beans" }
    "boiled 10.5 min"     = { expect = "risk", time = "10.5 min", to = "99 C", of = "dried kidney beans" }
    "boiled 29 min"       = { expect = "risk", time = "29 min", to = "99 C", of = "dried kidney beans" }
    "boiled 31 min"       = { expect = "clear", time = "31 min", to = "99 C", of = "dried kidney beans" }
    "canned"              = { expect = "clear", time = "5 min", to = "78 C", of = "cooked beans" }
  }
  formula "t" {
    filling "beans" {
      ingredients = { "$of" = "400 g", "water" = "900 g" }
      steps       = [{ cook = "$time", to = "$to", by = "pan" }]
    }
  }
}

rule "elderberries-raw" {
  on     = "part"
  level  = "risk"
  doubt  = "flag"
  limits = { cook_c = 80 }
  when   = "'raw elderberry' in part.hazards && part.has_process && part.heated_to_c < limit.cook_c"
  say    = "Elderberries in this [reach {part.heated_to_c}|may stay raw]; cook them to {limit.cook_c} or more, without stems and leaves."
  why    = "Raw elderberries, their stems and leaves give off cyanide and make people sick."
  source = "raw juice with stems and leaves: US CDC, MMWR 33(13) (1984) (memory); the figure: judgement"
}

trial "elderberries" {
  rule  = "elderberries-raw"
  cases = { "78 C" = "flagged", "82 C" = "clear" }
  formula "t" {
    filling "f" {
      ingredients = { "elderberries" = "300 g", "sugar" = "100 g" }
      steps       = [{ cook = "10 min", to = "$case" }]
    }
  }
}

rule "frozen-berries-raw" {
  on     = "part"
  level  = "risk"
  doubt  = "flag"
  limits = { cook_c = 90 }
  when   = "'frozen berries' in part.hazards && (part.has_process || part.is_used) && part.heated_to_c < limit.cook_c"
  say    = "Frozen berries in this are eaten unboiled. Boil them for 1 min, or buy ones that are sold as ready to eat."
  why    = "Hepatitis A and norovirus came with frozen berries again and again: over 1000 fell ill in Europe in 2013. Freezing kills neither."
  source = "Food Safety Authority of Ireland, advice to boil imported frozen berries for one minute (read); Danish Food Agency, the same for raspberries, as told (read); 90 C for the boil: judgement"
}

trial "frozen berries" {
  rule  = "frozen-berries-raw"
  cases = {
    "warmed"         = { expect = "flagged", of = "frozen raspberries", to = "88 C" }
    "boiled"         = { expect = "clear", of = "frozen raspberries", to = "92 C" }
    "another name"   = { expect = "flagged", of = "frozen mixed berries", to = "60 C" }
    "fresh, warmed"  = { expect = "clear", of = "raspberries", to = "40 C" }
  }
  formula "t" {
    topping "f" {
      ingredients = { "$of" = "300 g", "sugar" = "100 g" }
      steps       = [{ cook = "2 min", to = "$to" }]
    }
  }
}

rule "juice-raw" {
  on     = "part"
  level  = "risk"
  doubt  = "flag"
  limits = { cook_c = 71 }
  when   = "'raw juice' in part.hazards && (part.has_process || part.is_used) && part.heated_to_c < limit.cook_c"
  say    = "The juice in this is not pasteurised and stays raw. Heat it to {limit.cook_c}, or use pasteurised juice."
  why    = "E. coli and Salmonella live in raw juice, sour as it is: an apple off the ground is enough."
  source = "21 CFR 101.17(g), the warning that raw juice bears (memory); 71 C: FDA juice guidance, 71.1 C for 6 s in apple juice (memory)"
}

trial "raw apple juice" {
  rule  = "juice-raw"
  cases = { "69 C" = "flagged", "73 C" = "clear" }
  formula "t" {
    topping "f" {
      ingredients = { "raw apple juice" = "60 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "$case" }]
    }
  }
}

rule "cassava-raw" {
  on     = "part"
  level  = "stop"
  doubt  = "flag"
  limits = { cook_c = 90 }
  when   = "'raw cassava' in part.hazards && ((part.has_process || part.is_used) && part.heated_to_c < limit.cook_c || part.bitter_cassava)"
  say    = "Cassava here is bitter, keeps its juice, or is not boiled: it gives off cyanide. Peel sweet cassava, slice it and boil it soft; throw the water away."
  why    = "Raw cassava holds linamarin, which turns to cyanide as it is cut or grated. Heat and plenty of water drive it off, but not from the bitter kind, the peel or the juice."
  source = "FAO; Food Standards Australia New Zealand: sweet cassava is peeled, sliced and cooked through (memory); the figure: judgement"
}

rule "cassava-told" {
  on     = "part"
  level  = "note"
  limits = { cook_c = 90 }
  when   = "'raw cassava' in part.hazards && part.heated_to_c >= limit.cook_c"
  say    = "Cassava in this must be the sweet kind. Bitter cassava stays poisonous however long you bake it: it needs days of soaking, or grating and souring."
  why    = "Bitter roots hold ten times the linamarin of sweet ones, and look alike. The kind is known from the seller alone."
  source = "FAO; Food Standards Australia New Zealand, advice on cassava (memory)"
}

trial "cassava" {
  rule  = "cassava-raw"
  cases = {
    "88 C"  = { expect = "flagged", of = "cassava", to = "88 C" }
    "92 C"  = { expect = "clear", of = "cassava", to = "92 C" }
    "a ?"   = { expect = "flagged", of = "cassava", to = "?" }
    "flour" = { expect = "clear", of = "cassava flour", to = "30 C" }
    "bitter" = { expect = "flagged", of = "bitter cassava root", to = "92 C" }
    "peel"   = { expect = "flagged", of = "cassava, grated with the peel", to = "92 C" }
    "peeled" = { expect = "clear", of = "cassava, peeled and grated", to = "92 C" }
  }
  formula "t" {
    filling "f" {
      ingredients = { "$of" = "300 g", "sugar" = "100 g" }
      steps       = [{ cook = "30 min", to = "$to" }]
    }
  }
}

trial "which cassava" {
  rule  = "cassava-told"
  cases = { "88 C" = "clear", "92 C" = "flagged" }
  formula "t" {
    filling "f" {
      ingredients = { "cassava" = "300 g", "sugar" = "100 g" }
      steps       = [{ cook = "30 min", to = "$case" }]
    }
  }
}

rule "formula-milk-cool" {
  on     = "part"
  level  = "stop"
  doubt  = "flag"
  limits = { water_c = 70 }
  when   = "'infant formula' in part.hazards && (part.has_process || part.is_used) && part.heated_to_c < limit.water_c"
  say    = "Powdered infant formula is not sterile, and nothing brings this to {limit.water_c}. Mix it with water of {limit.water_c} or more, cool it, and use it within 2 h."
  why    = "Cronobacter and Salmonella stay alive in the dry powder, grow in lukewarm milk, and kill small babies."
  source = "WHO and FAO, Safe preparation, storage and handling of powdered infant formula (2007) (memory)"
}

trial "a pap of powdered formula, heated to" {
  rule  = "formula-milk-cool"
  cases = { "40 C" = "flagged", "68 C" = "flagged", "72 C" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { cool = "1 h" }, { fill = "pap" }]
    }
    filling "pap" {
      ingredients = { "infant formula powder" = "100 g", "water" = "600 g" }
      steps       = [{ cook = "5 min", to = "$case" }]
    }
  }
}

rule "raw-for-frail" {
  on     = "part"
  level  = "stop"
  limits = { cook_c = 71, milk_c = 75 }
  when   = "formula.for_frail && (part.has_process || part.is_used) && (('raw juice' in part.hazards || 'frozen berries' in part.hazards || part.has_sprouts) && part.heated_to_c < limit.cook_c || part.has_raw_milk && part.heated_to_c < limit.milk_c)"
  say    = "This is named for guests whom a small dose makes ill, and holds raw juice, raw milk, frozen berries or sprouts that nothing cooks. Take pasteurised or cooked ones."
  why    = "For the very young, the pregnant, the ill and the old such food is not served at all: Listeria and E. coli kill there."
  source = "FDA Food Code 2022, 3-801.11: juice, sprouts and raw animal food for highly susceptible guests (read); frozen berries, and 75 C for milk: as in the rules for everybody"
}

trial "raw apple juice on buns for" {
  rule  = "raw-for-frail"
  cases = {
    "the care home"          = "flagged"
    "the antenatal class"    = "flagged"
    "Sunday"                 = "clear"
    "lunch, not in hospital" = "clear"
  }
  formula "Buns for $case" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { brush = "juice" }]
    }
    syrup "juice" {
      ingredients = { "unpasteurised apple juice" = "200 g" }
    }
  }
}

trial "raw milk in a dough, baked to" {
  rule  = "raw-for-frail"
  cases = { "74 C" = "flagged", "76 C" = "clear" }
  formula "Buns for the nursing home" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "unpasteurised milk" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", measured = "$case core" }]
    }
  }
}

trial "a soak of raw juice, to" {
  rule  = "raw-for-frail"
  cases = { "70 C" = "flagged", "72 C" = "clear" }
  formula "Buns for the nursing home" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { brush = "juice" }]
    }
    syrup "juice" {
      ingredients = { "unpasteurised apple juice" = "200 g" }
      steps       = [{ cook = "5 min", to = "$case" }]
    }
  }
}

rule "sprouts-raw" {
  on     = "part"
  level  = "risk"
  doubt  = "flag"
  limits = { cook_c = 74 }
  when   = "part.has_sprouts && (part.has_process || part.is_used) && part.heated_to_c < limit.cook_c"
  say    = "Sprouts in this are eaten raw. Cook them to {limit.cook_c}, or tell each guest; serve none to a child, the frail or the pregnant."
  why    = "Salmonella and E. coli sit inside the seed and multiply as it sprouts. No washing and no fridge takes them away."
  source = "raw seed sprouts are not served to highly susceptible guests: FDA Food Code 2022, 3-801.11(C) (read); to anybody else: judgement"
}

trial "sprouts strewn in after the cook" {
  rule  = "sprouts-raw"
  cases = { "bean sprouts" = "flagged", "soy sauce" = "clear" }
  formula "t" {
    filling "f" {
      ingredients = { "bean sprouts" = "300 g", "carrots" = "200 g", "soy sauce" = "20 g" }
      steps       = [{ cook = "5 min", to = "90 C" }, { mix = "1 min", with = "$case" }]
    }
  }
}

trial "sprouts" {
  rule  = "sprouts-raw"
  cases = { "72 C" = "flagged", "76 C" = "clear" }
  formula "t" {
    filling "f" {
      ingredients = { "bean sprouts" = "300 g", "soy sauce" = "20 g" }
      steps       = [{ cook = "5 min", to = "$case" }]
    }
  }
}

rule "no-food" {
  on     = "part"
  level  = "stop"
  when   = "'no food' in part.hazards"
  say    = "An ingredient of this is no food, but a poison. Leave it out."
  why    = "Some plants and parts of plants kill. Of rhubarb only the stalks are eaten: its leaves hold oxalate."
  source = "common knowledge (memory)"
}

trial "rhubarb" {
  rule  = "no-food"
  cases = { "rhubarb leaves" = "flagged", "rhubarb" = "clear", "foxglove leaves" = "flagged" }
  formula "t" {
    filling "f" { ingredients = { "$case" = "300 g", "sugar" = "100 g" } }
  }
}

rule "poison-named" {
  on     = "part"
  level  = "stop"
  when   = "part.names_poison"
  say    = "A poisonous plant is named here: {part.poison_words}. Leave it off, and use flowers that are sold as food."
  why    = "One flower or leaf of some holds a harmful dose, and its sap and pollen stay where it lay."
  source = "plants that poison by the mouth: lists of gardeners and poison centres (memory); left off by trade lists of flowers for cakes (excerpts read)"
}

trial "flowers on the icing" {
  rule  = "poison-named"
  cases = {
    "fresh lily of the valley flowers"  = "flagged"
    "foxglove petals"                   = "flagged"
    "Maiglöckchen"                      = "flagged"
    "holly leaves cut from dough"       = "clear"
    "sugar daffodils"                   = "clear"
    "rose petals"                       = "clear"
    "ivy leaves laid on the icing"      = "flagged"
    "viola flowers, no lily of the valley" = "clear"
    "elder leaves and stalks"           = "flagged"
    "elderberries with their stalks"    = "flagged"
    "elderflowers without stalks"       = "clear"
    "elderberries with the stalks taken off" = "clear"
    "elderberry jam and mint leaves"    = "clear"
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { dust = "$case" }]
    }
  }
}

rule "thing-in-food" {
  on     = "part"
  level  = "risk"
  when   = "part.names_thing"
  say    = "This is no food, and chokes or breaks teeth: {part.thing_words}. Leave it out, or take it out and tell each guest."
  why    = "A coin or a figure in a slice is a foreign body, and nobody who was not told looks for one. Sticks and string stay in where no step takes them out."
  source = "US FDA, Compliance Policy Guide 555.425: hard or sharp objects of 7 to 25 mm (memory)"
}

trial "something pushed into the loaf" {
  rule  = "thing-in-food"
  cases = {
    "press one lucky coin into the underside"           = "flagged"
    "hide a porcelain figure in one of them"            = "flagged"
    "close with toothpicks"                             = "flagged"
    "cut the rope into coins and press the coins flat"  = "clear"
    "press each flat, the size of a coin"               = "clear"
    "test with a skewer"                                = "clear"
    "close with toothpicks, remove them after the bake" = "clear"
    "hide an almond in one of them"                     = "clear"
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { handle = "$case" }, { bake = "20 min", at = "200 C", core = "93 C" }]
    }
  }
}

rule "frozen-into-fat" {
  on     = "cook"
  level  = "risk"
  when   = "cook.is_in_fat && cook.comes_frozen"
  say    = "This goes from the freezer into hot fat: frost boils in it, and the pot spits or boils over. Thaw it, wipe it dry, and fill the pot by half."
  why    = "Ice becomes steam at once, some 1700 times its room, and throws burning fat out of the pot. The middle stays cold besides."
  source = "USDA FSIS, Deep fat frying and food safety: no frost on what is fried (memory); the volume of steam at 100 C (computed)"
}

trial "doughnuts straight from the freezer, by" {
  rule  = "frozen-into-fat"
  cases = { "frying" = "flagged", "boiling" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { shape = "balls", pieces = 12 }, { freeze = "1 day" }, { handle = "off the tray" }, { cook = "5 min", by = "$case" }]
    }
  }
}

trial "doughnuts thawed before they are fried" {
  rule   = "frozen-into-fat"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { shape = "balls", pieces = 12 }, { freeze = "1 day" }, { thaw = "2 h", at = "fridge" }, { cook = "5 min", at = "180 C", by = "frying" }]
    }
  }
}

rule "frozen-meat-baked" {
  on     = "bake"
  level  = "stop"
  when   = "bake.comes_frozen && bake.holds_uncooked_meat && !bake.is_measured"
  say    = "Raw meat goes into the oven frozen, and nothing proves its middle. Thaw it in the fridge, or bake it to a probe: measured = \"75 C core\"."
  why    = "From the freezer the middle takes half as long again and more, and the crust is brown long before. Colour and clock say nothing."
  source = "USDA FSIS, The big thaw: meat cooked from frozen takes about half as long again (memory); 74 C for stuffed food: FDA Food Code 2022, 3-401.11(A)(3) (read)"
}

trial "sausage rolls from the freezer" {
  rule  = "frozen-meat-baked"
  cases = {
    "raw sausage"    = { expect = "flagged", a = "raw sausage", b = "200 C" }
    "cooked sausage" = { expect = "clear", a = "cooked sausage", b = "200 C" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { divide = 6 }, { fill = "meat" }, { shape = "balls", pieces = 6 }, { freeze = "1 day" }, { bake = "17 min", at = "$b" }]
    }
    filling "meat" {
      ingredients = { "$a" = "300 g" }
    }
  }
}

trial "sausage rolls from the freezer, thawed or probed" {
  rule  = "frozen-meat-baked"
  cases = { "75 C core" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { divide = 6 }, { fill = "meat" }, { shape = "balls", pieces = 6 }, { freeze = "1 day" }, { bake = "40 min", at = "190 C", measured = "$case" }]
    }
    filling "meat" {
      ingredients = { "raw sausage" = "300 g" }
    }
  }
}

rule "fat-near-fire" {
  on     = "cook"
  level  = "stop"
  limits = { smokes_c = 215 }
  when   = "cook.is_in_fat && known(cook.at_c) && cook.at_c > limit.smokes_c"
  say    = "Fat at {cook.at_c} smokes, and a little hotter it catches fire. Fry at 170 to 195 C with a thermometer in it, and leave it never."
  why    = "Smoking fat is the last sign before it burns, and water makes a burning pot explode: smother it with a lid."
  source = "smoke points of refined oils of some 220 C and more, less when used; fire services' advice on frying (memory); the figure: judgement"

  adjust "step.at" { within = [170, 195] }
}

trial "fat at" {
  rule  = "fat-near-fire"
  cases = { "220 C" = "flagged", "210 C" = "clear", "180 C" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { shape = "balls", pieces = 12 }, { cook = "5 min", at = "$case", by = "frying" }]
    }
  }
}

rule "raw-meat-beside" {
  on     = "part"
  level  = "stop"
  when   = "part.names_contact"
  say    = "Raw meat, or its juice, touches this unheated: {part.contact_words}. Throw out what it touched; keep raw below and apart."
  why    = "One drop carries Salmonella, Campylobacter and E. coli on to food that is eaten as it is. What raw meat lay in is a sauce only after it has boiled."
  source = "FDA Food Code 2022, 3-302.11: raw animal food apart from ready-to-eat food; Regulation (EC) 852/2004, Annex II, chapter IX; USDA FSIS: boil a marinade that held raw meat (memory)"
}

trial "cream buns in the fridge" {
  rule  = "raw-meat-beside"
  cases = {
    "bottom shelf, open, under the tray of thawing raw chicken"  = "flagged"
    "raw pork juices ran on to two of them, wiped off"           = "flagged"
    "on the board of the raw fish"                               = "flagged"
    "top shelf, above the raw chicken"                           = "clear"
    "keep away from raw meat"                                    = "clear"
    "covered, on a shelf of their own"                           = "clear"
    "never beside raw chicken"                                   = "clear"
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { store = "10 h", at = "fridge", note = "$case" }]
    }
  }
}

trial "raw sausage that is baked in" {
  rule  = "raw-meat-beside"
  cases = { "wrap each round a raw sausage" = "clear", "lay beside the raw mince" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { handle = "$case" }, { bake = "20 min", at = "200 C", core = "93 C" }]
    }
  }
}

rule "lye-eaten" {
  on     = "part"
  level  = "stop"
  doubt  = "flag"
  when   = "part.has_caustic && !(part.kind == 'wash' && part.heated_to_c >= 100)"
  say    = "Lye in this is eaten as it is, and burns the mouth. Use it as a thin bath before the bake only: a wash of 3 to 4 %."
  why    = "On the crust the oven turns a thin bath to carbonate; inside a dough, or put on after the bake, it stays a caustic."
  source = "common practice of lye rolls, and general safety (memory)"
}

trial "lye on the rolls" {
  rule  = "lye-eaten"
  cases = {
    "before the bake" = { expect = "clear", a = "lye", b = "milk" }
    "after the bake"  = { expect = "flagged", a = "milk", b = "lye" }
  }
  formula "t" {
    wash "lye" { ingredients = { "water" = "1000 g", "sodium hydroxide" = "35 g" } }
    wash "milk" { ingredients = { "water" = "10 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "280 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { wash = "$a" }, { bake = "18 min", at = "220 C", core = "95 C" }, { brush = "$b" }]
    }
  }
}

rule "bitter-kernels" {
  on     = "formula"
  level  = "stop"
  doubt  = "flag"
  limits = { g_per_kg = 0.6, adult_g_per_kg = 3.7 }
  risk   = "formula.kernels_g_per_kg <= limit.adult_g_per_kg"
  when   = "formula.kernels_g_per_kg > limit.g_per_kg"
  say    = "Bitter kernels come to {formula.kernels_g_per_kg}; {limit.g_per_kg} is the most a toddler may eat in 100 g. Use extract sold free of cyanide, or ordinary almonds."
  why    = "They give off cyanide when they are chewed or wetted. The dose that harms is 0.37 g for an adult and 0.06 g for a toddler."
  source = "EFSA Journal 14(4):4424 (2016), abstract (read); bitter almonds taken as apricot kernels (memory)"
}

trial "apricot kernels in a dough" {
  rule  = "bitter-kernels"
  cases = { "3.3 g" = "stop", "3.2 g" = "risk", "0.54 g" = "risk", "0.51 g" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "600 g", "water" = "400 g", "apricot kernels" = "$case" } }
  }
}

rule "nitrite-high" {
  on     = "formula"
  level  = "stop"
  doubt  = "flag"
  limits = { mg_per_kg = 150 }
  when   = "formula.nitrite_mg_per_kg > limit.mg_per_kg"
  say    = "Nitrite and nitrate come to {formula.nitrite_mg_per_kg}; {limit.mg_per_kg} is the most for cured meat. Use common salt, or weigh the curing salt anew."
  why    = "Curing salt looks like salt. A gram of nitrite stops the blood from carrying oxygen."
  source = "150 mg/kg: UK SI 2007/1778, Schedule 1 (read); curing salt with 6.25 % of nitrite (memory)"
}

trial "curing salt for salt" {
  rule  = "nitrite-high"
  cases = { "1.7 g" = "flagged", "1.6 g" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "water" = "300 g", "curing salt" = "$case" } }
  }
}

rule "bromate-used" {
  on     = "formula"
  level  = "stop"
  doubt  = "flag"
  limits = { mg_per_kg = 40 }
  risk   = "formula.bromate_mg_per_kg <= limit.mg_per_kg"
  when   = "formula.bromate_mg_per_kg > 0"
  say    = "Potassium bromate is in this; most countries forbid it. Use ascorbic acid, 20 to 60 mg for a kilogram of flour."
  why    = "What the bake leaves of it may cause cancer."
  source = "not among the additives of the EU and UK; US: 50 mg/kg of flour, 21 CFR 137.155 (memory)"
}

trial "bromate" {
  rule  = "bromate-used"
  cases = { "0.034 g" = "risk", "0.035 g" = "stop" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "600 g", "water" = "400 g", "potassium bromate" = "$case" } }
  }
}

trial "no bromate" {
  rule   = "bromate-used"
  expect = "clear"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "600 g", "water" = "400 g" } }
  }
}

rule "coumarin-high" {
  on     = "formula"
  level  = "risk"
  limits = { mg_per_kg = 100 }
  when   = "formula.coumarin_mg_per_kg > limit.mg_per_kg"
  say    = "Coumarin of tonka bean or cassia comes to {formula.coumarin_mg_per_kg}, twice what the EU lets. Use less, or Ceylon cinnamon."
  why    = "Much of it harms the liver. The EU lets 15 mg/kg in fine bakery wares, 50 in seasonal ones that name cinnamon; the US lets no tonka bean."
  source = "Regulation (EC) 1334/2008, Annex III; 21 CFR 189.130 (memory); cassia 2.1 to 4.4 mg/g, tests told by a trade page (quoted)"
}

trial "tonka bean in a dough" {
  rule  = "coumarin-high"
  cases = { "3.6 g" = "flagged", "2.8 g" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "600 g", "water" = "400 g", "tonka bean" = "$case" } }
  }
}

rule "coumarin-told" {
  on     = "formula"
  level  = "note"
  limits = { mg_per_kg = 50 }
  when   = "formula.coumarin_mg_per_kg > limit.mg_per_kg && formula.coumarin_mg_per_kg <= 100"
  say    = "Coumarin of tonka bean or cassia comes to {formula.coumarin_mg_per_kg}; the EU lets {limit.mg_per_kg} where cinnamon is named. Use less, or Ceylon cinnamon."
  why    = "Much of it harms the liver. In other fine bakery wares the EU lets 15 mg/kg; the US lets no tonka bean."
  source = "Regulation (EC) 1334/2008, Annex III; 21 CFR 189.130 (memory); cassia 2.1 to 4.4 mg/g, tests told by a trade page (quoted)"
}

trial "cassia in a dough" {
  rule  = "coumarin-told"
  cases = { "25.5 g" = "flagged", "20 g" = "clear", "90 g" = "clear" } # 90 g are a risk
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "600 g", "water" = "400 g", "cinnamon" = "$case" } }
  }
}

rule "nutmeg-high" {
  on     = "formula"
  level  = "stop"
  limits = { g_per_kg = 10, stop_g_per_kg = 25 }
  risk   = "formula.nutmeg_g_per_kg <= limit.stop_g_per_kg"
  when   = "formula.nutmeg_g_per_kg > limit.g_per_kg"
  say    = "Nutmeg comes to {formula.nutmeg_g_per_kg}; over {limit.g_per_kg} a few pieces make ill. Weigh it anew: a dough takes 1 or 2."
  why    = "From 5 g of it people have been poisoned: it makes sick and confused."
  source = "Rahman et al., review of myristicin, abstract (read); a fifth of it in 100 g, and half of it as a stop: judgement"
}

trial "nutmeg in a dough" {
  rule  = "nutmeg-high"
  cases = { "23.6 g" = "stop", "22 g" = "risk", "10.8 g" = "risk", "8.4 g" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "600 g", "water" = "400 g", "nutmeg" = "$case" } }
  }
}

rule "liquorice-told" {
  on     = "formula"
  level  = "note"
  limits = { mg_per_kg = 100 }
  when   = "formula.glycyrrhizin_mg_per_kg > limit.mg_per_kg"
  say    = "Glycyrrhizic acid of liquorice comes to {formula.glycyrrhizin_mg_per_kg}. From {limit.mg_per_kg} name liquorice on the label; from 4000 warn of high blood pressure."
  why    = "It raises the blood pressure of who eats much of it."
  source = "Regulation (EU) 1169/2011, Annex III (memory); 5 % of it in the root (memory)"
}

trial "liquorice in a dough" {
  rule  = "liquorice-told"
  cases = { "2.15 g" = "flagged", "1.7 g" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "600 g", "water" = "400 g", "liquorice powder" = "$case" } }
  }
}

rule "kill-step" {
  on     = "bake"
  level  = "risk"
  doubt  = "flag"
  limits = { kill_log = 5 }
  when   = "bake.wants_kill && bake.lethality_log_salmonella < limit.kill_log"
  say    = "In this raw filling the bake kills [{bake.lethality_log_salmonella} of Salmonella|too little Salmonella]; {limit.kill_log} is a kill step. Bake longer, probe the filling, or cook it first."
  why    = "Sugar and fat shield bacteria from heat, and the middle of a filling is the last to get hot. Melted chocolate has had no kill step at all."
  source = "5 log: Channaiah et al. 2016, 2017, bun and muffin studies (read); D and z by the water activity of the food, the drier row between two (read and derived)"

  adjust "step.time" {}
}

trial "bean paste that came cooked, and one with raw egg" {
  rule  = "kill-step"
  cases = {
    "sugar" = "clear"
    "egg"   = "flagged"
  }
  formula "t" {
    filling "f" { ingredients = { "red bean paste" = "300 g", "$case" = "30 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = { amount = "300 g", temp = "20 C" }, "instant yeast" = "6 g" }
      steps = [
        { mix = "10 min", to = "25 C" },
        { fill = "f" },
        { shape = "balls", pieces = 10 },
        { proof = "1 h", at = "28 C", as = "pieces 110 g" },
        { bake = "13 min", at = "190 C", core = "92 C" },
      ]
    }
  }
}

trial "raw egg in a nut filling, sixteen minutes" {
  rule  = "kill-step"
  cases = {
    "92.8 C core" = "clear"
    "92.2 C core" = "flagged" # a little less hot
  }
  formula "t" {
    filling "f" { ingredients = { "ground almonds" = "200 g", "egg" = "100 g", "sugar" = "200 g", "unsalted butter" = "150 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "25 C" },
        { fill = "f" },
        { shape = "buns", pieces = 20 },
        { proof = "1 h", at = "28 C", as = "pieces 110 g" },
        { bake = "16 min", at = "200 C", core = "93 C", measured = "$case" },
      ]
    }
  }
}

trial "and with the hot minutes after the bake" {
  rule   = "kill-step"
  expect = "clear"
  formula "t" {
    filling "f" { ingredients = { "ground almonds" = "200 g", "egg" = "100 g", "sugar" = "200 g", "unsalted butter" = "150 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "25 C" },
        { fill = "f" },
        { shape = "buns", pieces = 20 },
        { proof = "1 h", at = "28 C", as = "pieces 110 g" },
        { bake = "16 min", at = "200 C", core = "93 C", measured = "89 C core" },
        { cool = "40 min", at = "room", as = "pieces 110 g" },
      ]
    }
  }
}

trial "a raw filling, and a core that is written and not read" {
  rule  = "kill-step"
  cases = {
    "an hour, to 94 C" = { expect = "clear", time = "60 min", core = "94 C" } # no model: its shape is not written
    "to 80 C"          = { expect = "flagged", time = "60 min", core = "80 C" }
    "too short for it" = { expect = "flagged", time = "20 min", core = "94 C" }
  }
  formula "t" {
    filling "f" { ingredients = { "ground almonds" = "400 g", "egg" = "100 g", "sugar" = "150 g", "honey" = "150 g" } }
    dough "d" {
      ingredients = { "bread flour" = "600 g", "water" = { amount = "350 g", temp = "20 C" }, "instant yeast" = "8 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "f" }, { bake = "$time", at = "175 C", core = "$core" }]
    }
  }
}

trial "raw egg in melted chocolate" {
  rule   = "kill-step"
  expect = "flagged"
  formula "t" {
    filling "f" { ingredients = { "dark chocolate" = "300 g", "egg" = "100 g", "unsalted butter" = "100 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "25 C" },
        { fill = "f" },
        { shape = "buns", pieces = 20 },
        { proof = "1 h", at = "28 C", as = "pieces 110 g" },
        { bake = "16 min", at = "200 C", core = "93 C", measured = "94 C core" },
      ]
    }
  }
}

trial "cinnamon sugar wants no kill" {
  rule   = "kill-step"
  expect = "clear"
  formula "t" {
    filling "f" { ingredients = { "brown sugar" = "300 g", "cinnamon" = "20 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "f" }, { bake = "5 min", at = "200 C" }]
    }
  }
}

rule "fried-meat-raw" {
  on     = "cook"
  level  = "stop"
  doubt  = "flag"
  limits = { meat_c = 74 }
  when   = "part.kind == 'dough' && cook.method == 'frying' && cook.holds_uncooked_meat && !(cook.is_measured && cook.core_end_c >= limit.meat_c)"
  say    = "Raw meat or fish is fried inside this dough, and no probe read its middle; it needs {limit.meat_c}. Cook it first, or probe it: measured = \"75 C core\"."
  why    = "The crust is brown in two minutes, and the filling in the middle is the last to get hot."
  source = "FDA Food Code 2022, 3-401.11(A) (read)"
}

trial "raw sausage fried in a dough" {
  rule  = "fried-meat-raw"
  cases = {
    "not probed"    = { expect = "flagged", of = "raw sausage", core = "60 C core" }
    "probed at 73"  = { expect = "flagged", of = "raw sausage", core = "73.5 C core" }
    "probed at 75"  = { expect = "clear", of = "raw sausage", core = "74.5 C core" }
    "cooked before" = { expect = "clear", of = "cooked sausage", core = "60 C core" }
  }
  formula "t" {
    filling "f" {
      ingredients = { "$of" = "500 g" }
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { fill = "f" }, { shape = "balls", pieces = 20 }, { cook = "4 min", by = "frying", at = "180 C", measured = "$core" }]
    }
  }
}

rule "fried-filling-raw" {
  on     = "cook"
  level  = "risk"
  doubt  = "flag"
  limits = { filling_c = 74 }
  when   = "part.kind == 'dough' && cook.method == 'frying' && cook.wants_kill && !cook.holds_uncooked_meat && !(cook.is_measured && cook.core_end_c >= limit.filling_c)"
  say    = "The filling is fried raw, or was never cooked, and no probe has read its middle; it needs {limit.filling_c}. Cook it first, fill after frying, or probe it."
  why    = "The crust is brown in two minutes, and the filling in the middle is the last to get hot."
  source = "FDA Food Code 2022, 3-401.11(A) (read): 74 C for a filling with egg or cheese is the careful figure (judgement)"
}

trial "a raw almond cream fried in a dough" {
  rule  = "fried-filling-raw"
  cases = {
    "73.5 C core" = "flagged"
    "74.5 C core" = "clear"
  }
  formula "t" {
    filling "f" {
      ingredients = { "ground almonds" = "200 g", "egg" = "100 g", "sugar" = "200 g", "unsalted butter" = "150 g" }
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { fill = "f" }, { shape = "balls", pieces = 20 }, { cook = "4 min", by = "frying", at = "180 C", measured = "$case" }]
    }
  }
}

trial "jam fried in a dough" {
  rule   = "fried-filling-raw"
  expect = "clear"
  formula "t" {
    filling "f" {
      ingredients = { "jam" = "300 g" }
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { fill = "f" }, { shape = "balls", pieces = 20 }, { cook = "4 min", by = "frying", at = "180 C" }]
    }
  }
}

rule "bake-time-open" {
  on     = "bake"
  level  = "risk"
  doubt  = "flag"
  limits = { least_min = 4 }
  when   = "part.has_leaven && !bake.is_measured && bake.in_oven_min < limit.least_min"
  say    = "This bake may end at once: its time is open, or under {limit.least_min}. Write its minutes, or the core that a probe read."
  why    = "What is not written counts against the formula: nothing says that flour and egg are cooked."
  source = "flour is raw until baked: US CDC and FDA (read); 4 min for the smallest roll: common practice, no source"
}

trial "minutes of a bake" {
  rule  = "bake-time-open"
  cases = { "?" = "flagged", "3.8 min" = "flagged", "4.2 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "15 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { bake = "$case", at = "230 C" }]
    }
  }
}

rule "custard-left-warm" {
  on     = "formula"
  level  = "stop"
  doubt  = "flag"
  limits = { warm_h = "kitchen.cold_out_h" }
  when   = "formula.warm_custard_after_bake_h > limit.warm_h"
  say    = "Its custard, cream, meat or fish [stands {formula.warm_custard_after_bake_h}|may stand] warm after the bake; {limit.warm_h} is the most. Chill it and write the step, or throw it away."
  why    = "Cream put into a baked piece is the reported cause of illness by toxin: 10^5/g of S. aureus in cream filling within a day at 25 C."
  source = "FDA Food Code 2022, 3-501.16(A), 3-501.19(B) (read); Sumner et al., J. Food Prot. 56(8):722-724 (1993), abstract (read)"
}

trial "custard put in after the bake" {
  rule  = "custard-left-warm"
  cases = {
    "250 min" = "flagged" # 4 hours and 10 minutes
    "230 min" = "clear"   # 3 hours and 50 minutes
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { fill = "custard" }, { hold = "$case", at = "room" }]
    }
  }
}

trial "custard as the last step, kept two days" {
  rule   = "custard-left-warm"
  expect = "flagged"
  formula "t" {
    keep = "2 day"
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { fill = "custard" }]
    }
  }
}

rule "filling-needs-cold" {
  on     = "formula"
  level  = "risk"
  doubt  = "flag"
  limits = { warm_h = "kitchen.cold_out_h" }
  when   = "formula.warm_after_bake_h > limit.warm_h"
  say    = "After the bake it [stands {formula.warm_after_bake_h} neither cold nor hot|may stand warm too long]; {limit.warm_h} is the most. Chill it and write the step, or throw it away."
  why    = "A bun with custard, cream or cheese in it is a fridge food unless water activity and pH prove otherwise."
  source = "FDA Food Code 2022, 3-501.16, 3-501.19(B) (read)"
}

trial "jam boiled with water, brushed on after the bake" {
  rule  = "filling-needs-cold"
  cases = { "apricot jam" = "clear", "strawberry jam" = "clear", "fig jam" = "flagged", "jam" = "flagged" }
  formula "t" {
    makes = "12 buns"
    keep  = "2 day"
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "280 g", "instant yeast" = "7 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "balls", pieces = 12 }, { bake = "14 min", at = "195 C", core = "92 C" }, { brush = "glaze" }]
    }
    topping "glaze" {
      ingredients = { "$case" = "200 g", "water" = "60 g" }
      steps       = [{ cook = "3 min", to = "95 C" }]
    }
  }
}

trial "custard buns at room temperature" {
  rule  = "filling-needs-cold"
  cases = {
    "250 min" = "flagged" # 4 hours and 10 minutes
    "230 min" = "clear"   # 3 hours and 50 minutes
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "custard" }, { bake = "20 min", at = "200 C", core = "93 C" }, { cool = "$case", at = "room" }]
    }
  }
}

trial "custard buns that shall keep two days, nobody says where" {
  rule   = "filling-needs-cold"
  expect = "flagged"
  formula "t" {
    keep = "2 day"
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "custard" }, { bake = "20 min", at = "200 C", core = "93 C" }, { cool = "1 h", at = "room" }]
    }
  }
}

trial "cinnamon sugar needs no fridge" {
  rule   = "filling-needs-cold"
  expect = "clear"
  formula "t" {
    keep = "2 day"
    filling "cinnamon" { ingredients = { "brown sugar" = "300 g", "cinnamon" = "20 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "cinnamon" }, { bake = "20 min", at = "200 C", core = "93 C" }, { cool = "5 h", at = "room" }]
    }
  }
}

trial "icing sugar with little milk, past saturation" {
  rule  = "filling-needs-cold"
  cases = {
    "22 g"  = "clear"   # saturated: 0.85, under 0.88 at the careful end
    "70 g"  = "clear"   # 67 % sugar on its water: about saturated
    "120 g" = "flagged" # 59 %: 0.88 to 0.90, which needs a pH
  }
  formula "t" {
    keep = "2 day"
    topping "icing" {
      ingredients = { "icing sugar" = "150 g", "whole milk" = "$case" }
      steps       = [{ mix = "2 min" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { cool = "30 min", at = "room" }, { brush = "icing" }]
    }
  }
}

trial "a paste of flour and water, baked on, and its like" {
  rule  = "filling-needs-cold"
  cases = {
    "a cross"             = { expect = "clear", flour = "100 g", wet = "water", g = "95 g" }
    "a cross with milk"   = { expect = "clear", flour = "100 g", wet = "whole milk", g = "95 g" }
    "with egg"            = { expect = "flagged", flour = "100 g", wet = "egg", g = "95 g" }
    "soup of flour"       = { expect = "flagged", flour = "50 g", wet = "whole milk", g = "250 g" }
  }
  formula "t" {
    keep = "2 day"
    topping "paste" { ingredients = { "all-purpose flour" = "$flour", "$wet" = "$g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "paste" }, { bake = "20 min", at = "200 C", core = "93 C" }, { cool = "1 h", at = "room" }]
    }
  }
}

trial "milk and sugar brushed on a bun" {
  rule  = "filling-needs-cold"
  cases = {
    "hot, 80 g of each"   = { expect = "clear", sugar = "80 g", wet = "whole milk", milk = "80 g" }
    "hot, little sugar"   = { expect = "flagged", sugar = "40 g", wet = "whole milk", milk = "80 g" }
    "hot, a soaking"      = { expect = "flagged", sugar = "300 g", wet = "whole milk", milk = "300 g" }
    "hot, of egg"         = { expect = "flagged", sugar = "80 g", wet = "egg", milk = "80 g" }
  }
  formula "t" {
    keep = "2 day"
    topping "wash" {
      ingredients = { "sugar" = "$sugar", "$wet" = "$milk" }
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { brush = "wash" }, { cool = "1 h", at = "room" }]
    }
  }
}

trial "milk and sugar on a bun that has cooled" {
  rule   = "filling-needs-cold"
  expect = "flagged"
  formula "t" {
    keep = "2 day"
    topping "wash" { ingredients = { "sugar" = "80 g", "whole milk" = "80 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { cool = "1 h", at = "room" }, { brush = "wash" }, { cool = "1 h", at = "room" }]
    }
  }
}

trial "a flour paste closed in the dough" {
  rule   = "filling-needs-cold"
  expect = "flagged"
  formula "t" {
    keep = "2 day"
    filling "paste" { ingredients = { "all-purpose flour" = "100 g", "whole milk" = "95 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "paste" }, { bake = "20 min", at = "200 C", core = "93 C" }, { cool = "1 h", at = "room" }]
    }
  }
}

rule "baked-filling-kept" {
  on     = "formula"
  level  = "note"
  doubt  = "flag"
  limits = { warm_h = "kitchen.cold_out_h" }
  when   = "formula.warm_dry_filling_h > limit.warm_h"
  say    = "Its baked-in filling stands [{formula.warm_dry_filling_h} out of the cold|long out of the cold]. It is dry enough by its make-up; measure its water activity once: under 0.88 settles it."
  why    = "Nut, seed, sugar and butter fillings with little water bake to about the wetness of the crumb. Nobody has published theirs; an inspector may ask for it."
  source = "baked goods without cream, custard or meat fillings are not potentially hazardous: California Health and Safety Code 114365.5(b)(1) (read); table B: FDA Food Code 2022, 1-201.10(B) (read)"
}

trial "fillings baked in and kept in the room" {
  rule  = "baked-filling-kept"
  cases = {
    "frangipane"    = { expect = "flagged", of = "ground almonds", wet = "egg", g = "110 g", h = "48 h" }
    "over 4 h"      = { expect = "flagged", of = "ground almonds", wet = "egg", g = "110 g", h = "190 min" }
    "under 4 h"     = { expect = "clear", of = "ground almonds", wet = "egg", g = "110 g", h = "170 min" }
    "with ricotta"  = { expect = "clear", of = "ground almonds", wet = "ricotta", g = "110 g", h = "48 h" } # filling-needs-cold speaks
    "wet with milk" = { expect = "clear", of = "ground almonds", wet = "whole milk", g = "400 g", h = "48 h" }
    "sugar alone"   = { expect = "clear", of = "brown sugar", wet = "vegetable oil", g = "50 g", h = "48 h" }
  }
  formula "t" {
    filling "f" {
      ingredients = { "$of" = "200 g", "sugar" = "150 g", "unsalted butter" = "150 g", "$wet" = "$g" }
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "f" }, { bake = "20 min", at = "200 C", core = "93 C", measured = "94 C core" }, { cool = "1 h", at = "room" }, { store = "$h", at = "room" }]
    }
  }
}

trial "the same fillings ask for the cold by what is in them" {
  rule  = "filling-needs-cold"
  cases = {
    "frangipane"    = { expect = "clear", of = "ground almonds", wet = "egg", g = "110 g" }
    "with ricotta"  = { expect = "flagged", of = "ground almonds", wet = "ricotta", g = "110 g" }
    "wet with milk" = { expect = "flagged", of = "ground almonds", wet = "whole milk", g = "400 g" }
  }
  formula "t" {
    filling "f" {
      ingredients = { "$of" = "200 g", "sugar" = "150 g", "unsalted butter" = "150 g", "$wet" = "$g" }
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "f" }, { bake = "20 min", at = "200 C", core = "93 C", measured = "94 C core" }, { cool = "1 h", at = "room" }, { store = "2 day", at = "room" }]
    }
  }
}

trial "cooked fruit in rolls, in the room" {
  rule  = "filling-needs-cold"
  cases = {
    "apple"            = { expect = "clear", of = "apple", with = "sugar" }
    "apple with egg"   = { expect = "flagged", of = "apple", with = "egg" }
    "apple with cream" = { expect = "flagged", of = "apple", with = "heavy cream" }
    "banana"           = { expect = "flagged", of = "banana", with = "sugar" }
    "pumpkin"          = { expect = "flagged", of = "pumpkin puree", with = "sugar" }
    "pears"            = { expect = "flagged", of = "pears", with = "sugar" }
  }
  formula "t" {
    filling "f" {
      ingredients = { "$of" = "600 g", "corn starch" = "20 g", "$with" = "80 g" }
      steps       = [{ cook = "8 min", to = "95 C" }]
    }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "20 C" }, "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "f" }, { bake = "20 min", at = "200 C", core = "93 C", measured = "94 C core" }, { cool = "1 h", at = "room" }, { store = "1 day", at = "room" }]
    }
  }
}

rule "keep-too-long" {
  on     = ["store", "chill", "hold"]
  level  = "risk"
  doubt  = "flag"
  limits = { keep_days = "kitchen.keep_cold_days" }
  when   = "step.needs_control && step.kept_days > limit.keep_days"
  say    = "Kept [{step.days_stored}|too long], its first day counted[, at up to {step.stored_at_c}]: as [{step.kept_days}|too many days] at 5 C, where {limit.keep_days} is the most. Keep it colder, or less long."
  why    = "Listeria grows slowly in the cold. Over 5 C a day counts for more, since everything grows faster; out of the cold one day is all."
  source = "FDA Food Code 2022, 3-501.17 and .18: 7 days at 5 C (read); older editions: 4 days at 7 C (read)"

  adjust "step.time" {}
}

trial "custard kept, with its day before" {
  rule  = "keep-too-long"
  cases = {
    "152 h" = "flagged" # into the eighth day
    "6 day" = "clear"   # seven days
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }, { chill = "4 h", at = "fridge", as = "tray 10 mm" }, { store = "$case", at = "fridge" }]
    }
  }
}

trial "custard kept at other temperatures" {
  rule  = "keep-too-long"
  cases = {
    "four days at 7 C"       = { expect = "flagged", time = "4 day", at = "7 C" }
    "a month in the freezer" = { expect = "clear", time = "30 day", at = "freezer" }
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }, { store = "$time", at = "$at" }]
    }
  }
}

trial "days in the room count more, and are told as days" {
  rule  = "keep-too-long"
  cases = {
    "20 h"   = "clear" # 1 and 7 times 20 h: 6.8 days at 5 C
    "21 h"   = "flagged" # 7.1
    "7 days" = "flagged"
  }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }, { store = "$case", at = "room" }]
    }
  }
}

rule "reheat-low" {
  on     = "cook"
  level  = "stop"
  doubt  = "flag"
  limits = { reheat_c = 74 }
  when   = "cook.needs_control && cook.is_reheat && cook.core_end_c < limit.reheat_c"
  say    = "It is [reheated to {cook.core_end_c}|not surely reheated through] to be held warm; {limit.reheat_c} in every part is the least. Heat it through, or serve it at once."
  why    = "What grew in the cold, and what spores left, has to be killed before the food is held warm again."
  source = "FDA Food Code 2022, 3-403.11(A) (read); Scotland asks for 82 C: SSI 2006/3, Schedule 4 (memory)"
}

trial "a sauce heated again to" {
  rule  = "reheat-low"
  cases = { "73 C" = "flagged", "75 C" = "clear" }
  formula "t" {
    filling "sauce" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "corn starch" = "30 g" }
      steps       = [{ cook = "5 min", to = "90 C" }, { chill = "8 h", as = "tray 10 mm" }, { cook = "10 min", to = "$case" }, { hold = "1 h", at = "65 C" }]
    }
  }
}

rule "reheat-slow" {
  on     = "cook"
  level  = "risk"
  doubt  = "flag"
  limits = { reheat_min = 120 }
  when   = "cook.needs_control && cook.is_rewarmed && cook.minutes > limit.reheat_min"
  say    = "Heating it again [takes {cook.minutes}|may take too long]; {limit.reheat_min} is the most. Heat it in a shallow pan, or in smaller lots."
  why    = "On its way up it goes through every temperature at which bacteria grow."
  source = "FDA Food Code 2022, 3-403.11(D) (read)"
}

trial "a sauce heated again in" {
  rule  = "reheat-slow"
  cases = { "125 min" = "flagged", "115 min" = "clear" }
  formula "t" {
    filling "sauce" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "corn starch" = "30 g" }
      steps       = [{ cook = "5 min", to = "90 C" }, { chill = "8 h", as = "tray 10 mm" }, { cook = "$case", to = "80 C" }, { hold = "1 h", at = "65 C" }]
    }
  }
}

trial "a sauce that was bought, warmed in" {
  rule  = "reheat-slow"
  cases = { "125 min" = "flagged", "115 min" = "clear" }
  formula "t" {
    filling "sauce" {
      ingredients = { "bechamel" = "500 g" }
      steps       = [{ cook = "$case", to = "80 C" }, { hold = "1 h", at = "65 C" }]
    }
  }
}

rule "raw-milk" {
  on     = "part"
  level  = "risk"
  doubt  = "flag"
  when   = "part.has_raw_milk"
  say    = "The milk or cheese in this is raw; food that is sold needs it pasteurised. Use pasteurised milk, or scald it."
  why    = "Raw milk can carry Listeria, Salmonella and E. coli, and up to 1000 S. aureus in a millilitre: it has less far to go to a toxin."
  source = "FDA Food Code 2022, 3-202.14 (memory); scalded from 75 C: 21 CFR 1240.61(b), 72 C for 15 s and 3 C more with sugar or fat (read); counts: J. Food Prot. 69(9):2161 (2006), abstract (read)"
}

trial "milk in a dough" {
  rule  = "raw-milk"
  cases = { "raw milk" = "flagged", "whole milk" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "$case" = "300 g" } }
  }
}

trial "raw milk scalded before the mix" {
  rule  = "raw-milk"
  cases = { "88 C" = "clear", "73 C" = "flagged", "?" = "flagged" }
  formula "t" {
    filling "scald" {
      ingredients = { "raw milk" = "500 g" }
      steps       = [{ cook = "6 min", to = "$case" }]
    }
    dough "d" { ingredients = { "bread flour" = "500 g", "the scald" = "all" } }
  }
}

trial "raw milk that goes in after the cook" {
  rule  = "raw-milk"
  cases = { "raw milk" = "flagged", "sugar" = "clear" }
  formula "t" {
    filling "custard" {
      ingredients = { "raw milk" = "500 g", "sugar" = "100 g", "corn starch" = "40 g" }
      steps       = [{ cook = "5 min", to = "92 C" }, { mix = "2 min", with = "$case" }]
    }
  }
}

rule "no-air-stop" {
  on     = "part"
  level  = "stop"
  when   = "part.botulinum == 'stop'"
  say    = "C. botulinum can grow in this: covered, low in acid and not cold. Throw it away; make it fresh and keep it in the fridge, 3 days at most."
  why    = "Boiling kills no spores of it, and under oil or in a closed jar they have what they need. The toxin has no taste. At pH 4.6 or less they do not grow: write ph = 4.6 as measured."
  source = "growth over pH 4.6 and from 10 C: USDA ARS growth factors table (read); oil: University of Missouri Extension (read); spores at 97 C: Daifas et al., J. Food Prot. 62(4):349 (1999), abstract (read)"
}

trial "fresh garlic in oil" {
  rule  = "no-air-stop"
  cases = {
    "in the room"       = { expect = "flagged", at = "room", of = "garlic" }
    "in the fridge"     = { expect = "clear", at = "fridge", of = "garlic" }
    "basil in the room" = { expect = "flagged", at = "room", of = "basil" }
    "dried thyme"       = { expect = "clear", at = "room", of = "dried thyme" }
  }
  formula "t" {
    wash "oil" {
      ingredients = { "$of" = "60 g", "olive oil" = "300 g" }
      steps       = [{ mix = "2 min" }, { store = "1 day", at = "$at", covered = true }]
    }
  }
}

trial "bread after the bake" {
  rule  = "no-air-stop"
  cases = {
    "lidded jars"      = { expect = "flagged", into = "screw the lids of the jars on", at = "room", sugar = "80 g", time = "3 week" }
    "a vacuum bag"     = { expect = "flagged", into = "vacuum-pack it", at = "room", sugar = "80 g", time = "3 week" }
    "jars in the cold" = { expect = "clear", into = "screw the lids of the jars on", at = "fridge", sugar = "80 g", time = "3 week" }
    "jars for a day"   = { expect = "clear", into = "screw the lids of the jars on", at = "room", sugar = "80 g", time = "20 h" }
    "a very sweet one" = { expect = "clear", into = "screw the lids of the jars on", at = "room", sugar = "900 g", time = "3 week" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "sugar" = "$sugar", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "25 C" },
        { proof = "1 h", at = "28 C" },
        { bake = "40 min", at = "180 C", measured = "95 C core" },
        { handle = "$into" },
        { store = "$time", at = "$at", covered = true },
      ]
    }
  }
}

trial "bread baked in jars" {
  rule  = "no-air-stop"
  cases = { "put the lids on" = "flagged", "turn out" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "sugar" = "80 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "25 C" },
        { pan = "preserving jars" },
        { proof = "1 h", at = "28 C" },
        { bake = "40 min", at = "180 C", measured = "95 C core" },
        { handle = "$case" },
        { store = "9 day", at = "room" },
      ]
    }
  }
}

rule "no-air-risk" {
  on     = "part"
  level  = "risk"
  when   = "part.botulinum == 'risk'"
  say    = "C. botulinum may grow: over 3 days under oil, 10 in a vacuum, or sealed moist out of the cold. Make it fresh, or write ph = 4.6 as measured."
  why    = "In the cold C. botulinum grows slowly; sources give such oil from 2 to 21 days, and the careful ones 3."
  source = "10 days without air: UK Food Standards Agency, vacuum packed chilled foods (2020), its summary (read); University of Missouri Extension, storing herbs and garlic in oil (read); pH 4.6: an Australian rule, as told by CSIRO (read)"
}

trial "fresh garlic in oil in the fridge for" {
  rule  = "no-air-risk"
  cases = { "4 day" = "flagged", "2 day" = "clear" }
  formula "t" {
    wash "oil" {
      ingredients = { "garlic" = "60 g", "olive oil" = "300 g" }
      steps       = [{ mix = "2 min" }, { store = "$case", at = "fridge", covered = true }]
    }
  }
}

trial "bread in a vacuum bag in the fridge" {
  rule  = "no-air-risk"
  cases = {
    "9 days"            = { expect = "clear", time = "9 day", at = "4 C" }
    "11 days"           = { expect = "flagged", time = "11 day", at = "4 C" }
    "11 days at 3 C"    = { expect = "clear", time = "11 day", at = "3 C" }
    "two months frozen" = { expect = "clear", time = "60 day", at = "-18 C" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "700 g", "instant yeast" = "10 g", "salt" = "18 g" }
      steps       = [{ mix = "10 min" }, { cook = "30 min", by = "steaming", to = "97 C" }, { store = "$time", in = "a vacuum bag", at = "$at" }]
    }
  }
}

rule "thaw-warm" {
  on     = "thaw"
  level  = "risk"
  doubt  = "flag"
  limits = { thaw_c = "kitchen.cold_hold_c" }
  when   = "thaw.needs_control && thaw.at_c > limit.thaw_c"
  say    = "[It thaws at {thaw.at_c}|Where it thaws is not written]; {limit.thaw_c} is the most. Thaw it in the fridge."
  why    = "A thaw on the bench warms the outside for hours while the middle is still ice."
  source = "FDA Food Code 2022, 3-501.13 (read)"

  adjust "step.at" {}
}

trial "custard thawed at" {
  rule  = "thaw-warm"
  cases = { "5.3 C" = "flagged", "4.8 C" = "clear" }
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }, { freeze = "12 h" }, { thaw = "8 h", at = "$case" }]
    }
  }
}

trial "a thaw at nobody says where" {
  rule   = "thaw-warm"
  expect = "flagged"
  formula "t" {
    filling "custard" {
      ph          = 6.5
      ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g" }
      steps       = [{ cook = "5 min", to = "85 C" }, { freeze = "12 h" }, { thaw = "8 h" }]
    }
  }
}

rule "name-belied" {
  on     = "formula"
  level  = "stop"
  risk   = "!formula.belied_harms" # vegan, vegetarian, alcohol-free: a broken word, not a poison
  when   = "formula.is_belied"
  say    = "Its name promises what its ingredients break: {formula.belied}. Change the name or the ingredient before anyone trusts it."
  why    = "Whoever has an allergy reads the name first. Honey can give a baby botulism, baked or not."
  source = "undeclared allergens are the commonest cause of food recalls: FDA, by its reports (memory); honey, not even cooked: INSPQ, Honey, never for babies under age 1 (excerpt read)"
}

trial "a nut-free bun" {
  rule  = "name-belied"
  cases = { "almonds" = "stop", "sunflower seeds" = "clear", "peanut butter" = "stop" }
  formula "Nut-free buns" {
    dough "d" { ingredients = { "bread flour" = "500 g", "water" = "300 g", "$case" = "60 g" } }
  }
}

trial "a vegan bun" {
  rule  = "name-belied"
  cases = { "honey" = "risk", "whole milk" = "risk", "lard" = "risk", "oat milk" = "clear", "sunflower oil" = "clear" }
  formula "Vegane Brötchen" {
    dough "d" { ingredients = { "bread flour" = "500 g", "water" = "250 g", "$case" = "40 g" } }
  }
}

trial "a bun that is said not to be vegan" {
  rule   = "name-belied"
  expect = "clear"
  formula "Brioche, not vegan" {
    dough "d" { ingredients = { "bread flour" = "500 g", "egg" = "250 g" } }
  }
}

trial "honey in a bun for babies" {
  rule  = "name-belied"
  cases = { "honey" = "stop", "almonds" = "stop", "sugar" = "clear" }
  formula "Soft buns for babies" {
    dough "d" { ingredients = { "bread flour" = "500 g", "water" = "250 g", "$case" = "40 g" } }
  }
}

trial "honey in what its name says an infant eats" {
  rule  = "name-belied"
  cases = {
    "Baby teething rolls, from 8 months" = "stop"
    "Zwieback ab dem 6. Monat"           = "stop"
    "Biscuits dès 8 mois"                = "stop"
    "Panini dai 10 mesi"                 = "stop"
    "Panecillos desde los 6 meses"       = "stop"
    "Weaning fingers"                    = "stop"
    "Rusks, 7+ months"                   = "stop"
    "Baby brioches"                      = "risk" # small ones, as likely
    "Buns from 12 months on"             = "clear"
    "Dutch baby buns"                    = "clear"
    "Baby carrot buns"                   = "clear"
    "Buns that are not for babies"       = "clear"
  }
  formula "$case" {
    dough "d" { ingredients = { "bread flour" = "500 g", "water" = "250 g", "honey" = "40 g" } }
  }
}

trial "oats in a bun without gluten" {
  rule  = "name-belied"
  cases = { "rolled oats" = "risk", "spelt flour" = "stop", "buckwheat flour" = "clear" }
  formula "Gluten-free buns" {
    dough "d" { ingredients = { "rice flour" = "500 g", "water" = "300 g", "$case" = "60 g" } }
  }
}

trial "a custard without eggs in a dough with eggs" {
  rule  = "name-belied"
  cases = { "corn starch" = "clear", "egg yolk" = "flagged" }
  formula "Buns" {
    filling "eggless custard" { ingredients = { "oat milk" = "250 g", "$case" = "25 g" } }
    dough "d" { ingredients = { "bread flour" = "500 g", "egg" = "100 g", "water" = "250 g" } }
  }
}

rule "alcohol-served" {
  on     = "formula"
  level  = "note"
  doubt  = "flag"
  when   = "formula.alcohol_after_bake"
  say    = "A spirit goes on after the bake, so all of its alcohol is served. Say so on the label, and keep it from children."
  why    = "What soaks into a baked piece does not boil off."
  source = "common practice, no source"
}

trial "rum syrup brushed on after the bake" {
  rule   = "alcohol-served"
  expect = "flagged"
  formula "t" {
    syrup "s" {
      ingredients = { "sugar" = "100 g", "water" = "100 g", "rum" = "30 g" }
      steps       = [{ cook = "2 min", to = "101 C", with = ["sugar", "water"] }]
    }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { bake = "20 min", at = "200 C", core = "93 C" }, { brush = "s" }]
    }
  }
}

trial "rum in a filling that is baked" {
  rule   = "alcohol-served"
  expect = "clear"
  formula "t" {
    filling "f" { ingredients = { "ground almonds" = "200 g", "sugar" = "100 g", "rum" = "20 g" } }
    dough "d" {
      ingredients = { "bread flour" = "500 g", "water" = "300 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { fill = "f" }, { bake = "20 min", at = "200 C", core = "93 C" }]
    }
  }
}
