# How far will it have risen? Yeast times equivalent hours at 26 C, in %-hours; 1.25 is about one doubling. The dough's own
# temperature is followed through its steps, never the fridge's setting.
# The ranges were read off published formulas by this same model. A modelled figure counts as short or long where it is out by
# more than the model's error; a rise that the baker measured, measured = "1.8 x after 60 min", has less of it.
# The first trials of each rule stand close beside its limits, one on either side.

needs = "0.1"
about = "rise in bulk, in the cold and in the proof, and a dough too warm or too cold for its next step"

# Laminated doughs are left alone: they rise in the turns, and no bulk range was found for them.
rule "bulk-short" {
  on     = "dough"
  level  = "risk"
  limits = { bulk_e = 0.9, sponge_pct = 45, model_factor = 1.4, sweet_factor = 2, sugar_pct = 15, osmol = 4.9, note_h = 1, long_min = 480 }
  note   = "dough.sugar_pct >= limit.sugar_pct && dough.rise_h >= limit.note_h"
  when   = "dough.has_leaven && !dough.has_culture && dough.is_mixed && dough.is_baked && !dough.is_laminated && dough.prefermented_flour_pct < limit.sponge_pct && !dough.is_short_pastry && !(dough.proof_min >= limit.long_min) && dough.family != 'stollen' && (dough.dough_rise_measured || dough.solute_molality <= limit.osmol) && (dough.dough_rise_measured ? 1 : dough.sugar_pct >= limit.sugar_pct ? limit.sweet_factor : limit.model_factor) * dough.ferment_e < limit.bulk_e"
  doubt  = "middle"
  say    = "At the bench the dough is {dough.ferment_e} its size, under {limit.bulk_e}. Rest it longer; if you saw more, write measured = \"1.8 x after 60 min\"."
  why    = "A young dough is bucky: it tears and shrinks at the bench, the crumb is tight and tastes of flour."
  source = "published cards come to 1.06 to 1.54 by the same model for a doubling: US Armed Forces card D-055, a challah, quantity rolls (computed); 0.9 is a judgement; a dough whose sponge holds most of the flour has risen there (published sponge doughs rest 10 to 30 min, read); the model's error is a factor of 1.4, twice the scatter of the cards, and so far a dough that was not measured may fall short; from 15 % sugar the model is slow by a factor of 2: US Armed Forces sweet dough F-50, 20 % sugar, doubles in 2 h, 0.54 of the pace of a lean dough (quoted), where the model has a quarter (computed); beyond 4.9 osmol/kg no pace is known; published stollen rest half an hour (read); a short yeast pastry rests in the cold and hardly rises (common practice, no source)"

  adjust "rest.time" { within = [5, 360] }
  adjust "yeast" { within = [0.3, 3.8] }
}

trial "short yeast pastry, an hour in the cold (bulk-short)" {
  rule  = "bulk-short"
  cases = {
    "short"      = { expect = "clear", water = "400 g", lard = "400 g" }
    "wetter"     = { expect = "flagged", water = "500 g", lard = "400 g" }
    "less short" = { expect = "flagged", water = "400 g", lard = "300 g" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "$water", "lard" = "$lard", "salt" = "12 g", "instant yeast" = "8 g" }
      steps       = [{ mix = "6 min", to = "20 C" }, { chill = "1 h", as = "slab 30 mm" }, { sheet = "4 mm" }, { roll = "log" }, { bake = "35 min", at = "180 C" }]
    }
  }
}

trial "rise of the bulk, measured" {
  rule  = "bulk-short"
  cases = { "1.52 x after 60 min" = "flagged", "1.7 x after 60 min" = "clear", "1.6 x after 60 min" = "unsure" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { rest = "1 h", at = "26 C", covered = true, measured = "$case" },
        { shape = "loaf" },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

trial "a sponge with its share of the flour, then 10 min" {
  rule  = "bulk-short"
  cases = { "790 g" = "clear", "880 g" = "flagged" } # 47, then 44.3 % in the sponge
  formula "t" {
    preferment "sponge" {
      ingredients = { "bread flour" = "700 g", "water" = "420 g", "instant yeast" = "7 g" }
      steps       = [{ mix = "2 min", to = "26 C" }, { rest = "3 h", at = "28 C", covered = true }]
    }
    dough "d" {
      ingredients = { "the sponge" = "all", "bread flour" = "$case", "water" = "400 g", "salt" = "28 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { rest = "10 min", at = "26 C", covered = true },
        { shape = "loaf" },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

trial "sweet dough, sugar about the share that counts (bulk-short)" {
  rule  = "bulk-short"
  cases = {
    "156 g and 63 min" = { expect = "note", sugar = "156 g", proof = "57 min" }
    "144 g and 63 min" = { expect = "risk", sugar = "144 g", proof = "57 min" }
    "156 g and 57 min" = { expect = "risk", sugar = "156 g", proof = "51 min" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "540 g", "sugar" = "$sugar", "salt" = "18 g", "instant yeast" = "20 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { rest = "6 min", at = "26 C" }, { shape = "loaf" }, { proof = "$proof", at = "26 C" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "minutes in bulk of a dough of 20 % sugar" {
  rule  = "bulk-short"
  cases = { "40 min" = "note", "46 min" = "unsure", "75 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "540 g", "sugar" = "200 g", "salt" = "18 g", "instant yeast" = "20 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { rest = "$case", at = "26 C" }, { shape = "loaf" }, { proof = "90 min", at = "26 C" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "sugar in a bulk of 6 min, up to where the pace is known" {
  rule  = "bulk-short"
  cases = { "231 g" = "risk", "236 g" = "clear" } # 4.86, then 4.93 osmol/kg
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "540 g", "sugar" = "$case", "salt" = "18 g", "instant yeast" = "20 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { rest = "6 min", at = "26 C" }, { shape = "loaf" }, { proof = "20 min", at = "26 C" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "minutes in bulk at 26 C, not measured" {
  rule  = "bulk-short"
  cases = { "24 min" = "risk", "29 min" = "risk", "36 min" = "unsure", "44 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { rest = "$case", at = "26 C", covered = true },
        { shape = "loaf" },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

trial "nobody says how warm the bulk is" {
  rule  = "bulk-short"
  cases = { "40 min" = "unsure", "1 h" = "clear" } # 4 C about the room
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { rest = "$case" }, { shape = "loaf" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "a culture rises by its own clock" {
  rule   = "bulk-short"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "sourdough culture" = "200 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "loaf" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "croissant dough straight to the fridge" {
  rule   = "bulk-short"
  expect = "clear"
  formula "t" {
    family = "croissant"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "520 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "6 min", to = "18 C" }, { chill = "1 h", as = "slab 15 mm" }, { shape = "crescents" }, { bake = "18 min", at = "190 C" }]
    }
  }
}

# A night in the cold is yeast-for-overnight's to judge.
trial "half an hour at the bench, and a final rise of" {
  rule  = "bulk-short"
  cases = { "8 h 10 min" = "clear", "7 h 50 min" = "flagged" } # the rise is the coil's on its tray
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "4 g" }
      steps       = [{ mix = "10 min", measured = "24 C" }, { rest = "20 min", at = "24 C" }, { shape = "snails", pieces = 12 }, { proof = "$case", at = "20 C" }, { bake = "18 min", at = "190 C" }]
    }
  }
}

rule "bulk-long" {
  on     = "dough"
  level  = "risk"
  limits = { bulk_e = 1.9 }
  when   = "dough.has_leaven && !dough.has_culture && dough.is_mixed && dough.is_baked && !dough.is_retarded && dough.ferment_e > limit.bulk_e"
  doubt  = "middle"
  say    = "At the bench the dough is {dough.ferment_e} its size, over {limit.bulk_e}. Rest it shorter; if you saw less, write measured = \"2 x after 90 min\"."
  why    = "An old dough has spent its sugar and its strength: it spreads, proofs unevenly, bakes pale and smells of yeast."
  source = "published cards come to 1.06 to 1.54 by the same model for a doubling: US Armed Forces card D-055, a challah, quantity rolls (computed); 1.9 is a judgement; the model's error is a factor of 1.4, twice the scatter of the cards"

  adjust "rest.time" { within = [5, 360] }
  adjust "yeast" { within = [0.3, 3.8] }
}

trial "rise of a long bulk, measured" {
  rule  = "bulk-long"
  cases = { "3.5 x after 120 min" = "flagged", "2.7 x after 120 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { rest = "2 h", at = "26 C", covered = true, measured = "$case" },
        { shape = "loaf" },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

trial "hours in bulk at 26 C, not measured" {
  rule  = "bulk-long"
  cases = { "172 min" = "flagged", "6 h" = "flagged", "140 min" = "unsure", "105 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { rest = "$case", at = "26 C", covered = true },
        { shape = "loaf" },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

trial "a night in the cold is another rule's" {
  rule   = "bulk-long"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { rest = "5 h", at = "26 C", covered = true },
        { chill = "12 h", as = "slab 30 mm", covered = true },
        { shape = "loaf" },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

# Laminated doughs and doughnuts go to the heat at three quarters of a full proof.
rule "proof-short" {
  on     = "proof"
  level  = "risk"
  limits = { proof_e = 0.7, three_quarter_e = 0.6, model_factor = 1.4, sweet_factor = 2, sugar_pct = 15, osmol = 4.9, note_min = 30 }
  note   = "(part.is_retarded || part.sugar_pct >= limit.sugar_pct) && part.proof_min >= limit.note_min || part.cooked_by == 'griddle' || part.has_open_filling"
  when   = "part.has_leaven && !part.has_culture && part.family != 'stollen' && !part.has_sugar_turns && !part.is_batter && !part.is_short_pastry && (part.dough_rise_measured || part.solute_molality <= limit.osmol) && (part.dough_rise_measured ? 1 : part.sugar_pct >= limit.sugar_pct ? limit.sweet_factor : limit.model_factor) * part.proof_e < (part.is_laminated || part.family == 'doughnut' ? limit.three_quarter_e : limit.proof_e)"
  doubt  = "middle"
  say    = "The dough proofs to {part.proof_e} its size; {part.is_laminated || part.family == 'doughnut' ? limit.three_quarter_e : limit.proof_e} is the least. Proof it longer; if you saw more, write measured = \"1.8 x after 60 min\"."
  why    = "An under-proofed piece bursts at its seams, springs wild in the oven and stays tight inside."
  source = "card D-055, one hour at 32 to 38 C, comes to 1.04 to 1.21 by the same model (computed); three-quarter proof for Danish and doughnut: Gisslen, Professional Baking (read); 0.7 and 0.6 are judgements; the model's error is a factor of 1.4, twice the scatter of the cards, and so far a dough that was not measured may fall short; after a night in the cold the model is weak evidence; sweet dough as in bulk-short; where sugar lies in the turns it weeps out in a long proof, so little is given (kouign-amann: common practice, no source); a batter and a short yeast pastry are not proofed as bread, and under open fruit and on a griddle a short rise harms little (common practice, no source)"

  adjust "step.time" { within = [15, 480] }
  adjust "step.at" { within = [20, 35] }
}

trial "short yeast pastry, half an hour (proof-short)" {
  rule  = "proof-short"
  cases = {
    "short"      = { expect = "clear", water = "400 g", lard = "400 g" }
    "wetter"     = { expect = "risk", water = "500 g", lard = "400 g" }
    "less short" = { expect = "risk", water = "400 g", lard = "300 g" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "$water", "lard" = "$lard", "salt" = "12 g", "instant yeast" = "8 g" }
      steps       = [{ mix = "6 min", to = "24 C" }, { sheet = "4 mm" }, { roll = "log" }, { proof = "20 min", at = "22 C", as = "pieces 75 g" }, { bake = "35 min", at = "180 C" }]
    }
  }
}

trial "minutes of proof of a dough of 20 % sugar" {
  rule  = "proof-short"
  cases = { "32 min" = "note", "33 min" = "unsure", "55 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "540 g", "sugar" = "200 g", "salt" = "18 g", "instant yeast" = "20 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { rest = "90 min", at = "26 C" }, { shape = "loaf" }, { proof = "$case", at = "26 C" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "sugar in a proof of 12 min, up to where the pace is known" {
  rule  = "proof-short"
  cases = { "231 g" = "risk", "236 g" = "clear" } # 4.86, then 4.93 osmol/kg
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "540 g", "sugar" = "$case", "salt" = "18 g", "instant yeast" = "20 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { rest = "60 min", at = "26 C" }, { shape = "loaf" }, { proof = "12 min", at = "26 C" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "15 min of proof, and how it is heated" {
  rule  = "proof-short"
  cases = {
    "muffins"         = { expect = "note", water = "600 g", heat = "cook", by = "griddle", do = "divide", what = "60 g" }
    "poured batter"   = { expect = "clear", water = "900 g", heat = "cook", by = "waffle iron", do = "rest", what = "10 min" }
    "fried doughnuts" = { expect = "risk", water = "600 g", heat = "cook", by = "frying", do = "divide", what = "60 g" }
    "baked"           = { expect = "risk", water = "600 g", heat = "bake", by = "deck oven", do = "divide", what = "60 g" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "$water", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "24 C" }, { "$do" = "$what" }, { proof = "15 min", at = "22 C", as = "pieces 75 g" }, { "$heat" = "8 min", by = "$by", at = "190 C" }]
    }
  }
}

trial "20 min under plums, open or closed in" {
  rule  = "proof-short"
  cases = {
    "open on the tray" = { expect = "note", a = "pan", x = "on the tray", b = "fill", y = "plums" }
    "then panned"      = { expect = "risk", a = "fill", x = "plums", b = "shape", y = "balls" }
  }
  formula "t" {
    filling "plums" { ingredients = { "plums" = "800 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "24 C" }, { sheet = "6 mm" }, { "$a" = "$x" }, { "$b" = "$y" }, { proof = "20 min", at = "22 C", as = "slab 20 mm" }, { bake = "40 min", at = "190 C" }]
    }
  }
}

trial "rise of the proof, measured" {
  rule  = "proof-short"
  cases = { "1.38 x after 60 min" = "flagged", "1.5 x after 60 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { shape = "loaf" },
        { proof = "1 h", at = "26 C", as = "pieces 75 g", measured = "$case" },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

trial "croissant proof of 1.32 x measured" {
  rule   = "proof-short"
  expect = "flagged"
  formula "t" {
    family = "croissant"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { shape = "crescents" },
        { proof = "1 h", at = "26 C", as = "pieces 75 g", measured = "1.32 x after 60 min" },
        { bake = "18 min", at = "190 C" },
      ]
    }
  }
}

trial "45 min at the room, and what was folded in" {
  rule  = "proof-short"
  cases = { "sugar" = "clear", "unsalted butter" = "flagged" }
  formula "t" {
    filling "block" { ingredients = { "unsalted butter" = "400 g" } }
    filling "turns" { ingredients = { "$case" = "300 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "salt" = "20 g", "instant yeast" = "4 g" }
      steps = [
        { mix = "8 min", to = "22 C" },
        { chill = "2 h", as = "slab 20 mm" },
        { fill = "block" },
        { fold = 1 },
        { chill = "1 h", as = "slab 20 mm" },
        { fill = "turns" },
        { fold = 1 },
        { shape = "squares", pieces = 24 },
        { proof = "45 min", at = "22 C", as = "pieces 75 g" },
        { bake = "30 min", at = "190 C" },
      ]
    }
  }
}

trial "doughnut proof of 1.42 x measured" {
  rule   = "proof-short"
  expect = "clear"
  formula "t" {
    family = "doughnut"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { shape = "rings" },
        { proof = "1 h", at = "26 C", as = "pieces 75 g", measured = "1.42 x after 60 min" },
        { cook = "2 min", at = "180 C", by = "frying" },
      ]
    }
  }
}

trial "sweet dough, sugar about the share that counts (proof-short)" {
  rule  = "proof-short"
  cases = {
    "156 g and 32 min" = { expect = "note", sugar = "156 g", time = "32 min" }
    "144 g and 32 min" = { expect = "risk", sugar = "144 g", time = "32 min" }
    "156 g and 28 min" = { expect = "risk", sugar = "156 g", time = "28 min" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "540 g", "sugar" = "$sugar", "salt" = "18 g", "instant yeast" = "6 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "loaf" }, { proof = "$time", at = "26 C", as = "pieces 75 g" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "minutes of proof" {
  rule  = "proof-short"
  cases = { "22 min" = "risk", "28 min" = "unsure", "33 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { shape = "loaf" },
        { proof = "$case", at = "26 C", as = "pieces 75 g", covered = true },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

trial "nobody says how warm the proof is" {
  rule  = "proof-short"
  cases = { "25 min" = "unsure", "1 h" = "clear" } # from a cool room to a warm place
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "loaf" }, { proof = "$case" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

rule "proof-long" {
  on     = "proof"
  level  = "risk"
  limits = { proof_e = 1.5, three_quarter_e = 1.1 }
  when   = "part.has_leaven && !part.has_culture && part.proof_e > (part.is_laminated || part.family == 'doughnut' ? limit.three_quarter_e : limit.proof_e)"
  doubt  = "middle"
  say    = "The dough proofs to {part.proof_e} its size; {part.is_laminated || part.family == 'doughnut' ? limit.three_quarter_e : limit.proof_e} is the most. Proof it shorter; if you saw less, write measured = \"2 x after 90 min\"."
  why    = "An over-proofed piece sinks at a touch, flattens in the oven and bakes coarse; one rich in butter leaks."
  source = "card D-055, one hour at 32 to 38 C, comes to 1.04 to 1.21 by the same model (computed); three-quarter proof for Danish and doughnut: Gisslen, Professional Baking (read); 1.5 and 1.1 are judgements; the model's error is a factor of 1.4, twice the scatter of the cards"

  adjust "step.time" { within = [15, 480] }
  adjust "step.at" { within = [20, 35] }
}

trial "rise of a long proof, measured" {
  rule  = "proof-long"
  cases = { "2.75 x after 120 min" = "flagged", "2.25 x after 120 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { shape = "loaf" },
        { proof = "2 h", at = "26 C", as = "pieces 75 g", measured = "$case" },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

trial "croissant proof of 2.1 x measured" {
  rule   = "proof-long"
  expect = "flagged"
  formula "t" {
    family = "croissant"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { shape = "crescents" },
        { proof = "2 h", at = "26 C", as = "pieces 75 g", measured = "2.1 x after 120 min" },
        { bake = "18 min", at = "190 C" },
      ]
    }
  }
}

trial "doughnut proof of 1.8 x measured" {
  rule   = "proof-long"
  expect = "clear"
  formula "t" {
    family = "doughnut"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { shape = "rings" },
        { proof = "2 h", at = "26 C", as = "pieces 75 g", measured = "1.8 x after 120 min" },
        { cook = "2 min", at = "180 C", by = "frying" },
      ]
    }
  }
}

trial "hours of proof at 26 C" {
  rule  = "proof-long"
  cases = { "140 min" = "flagged", "112 min" = "unsure", "90 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps = [
        { mix = "10 min", to = "26 C" },
        { shape = "loaf" },
        { proof = "$case", at = "26 C", as = "pieces 75 g", covered = true },
        { bake = "30 min", at = "200 C" },
      ]
    }
  }
}

trial "proof without a time" {
  rule   = "proof-long"
  expect = "unsure"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "loaf" }, { proof = "?", at = "28 C" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

# A chill no longer than chill_h is not judged: the dough is cooled for the pin, not kept.
rule "chill-too-slow" {
  on     = "chill"
  level  = "risk"
  limits = { chill_h = 4 }
  when   = "part.has_leaven && chill.minutes > 60 * limit.chill_h && chill.h_to_10c > limit.chill_h"
  say    = "The middle of the dough needs {chill.h_to_10c} to cool to 10 C; {limit.chill_h} is the most. Flatten it[ to {chill.slab_for_10c_mm} or less], and cover it."
  why    = "Down to 10 C yeast goes on raising the dough, and its own heat slows the cooling. A thick dough is half risen before it is cold, and unevenly so."
  source = "series solution of transient conduction, good to about 27 % in time; yeast at 10 C works at about 15 % of its pace at 26 C (fit); 4 h is common practice, no source"

  adjust "step.as" { within = [20, 200] }
}

trial "thickness of a slab chilled for a night" {
  rule  = "chill-too-slow"
  cases = { "slab 56 mm" = "flagged", "slab 23 mm" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { chill = "12 h", as = "$case", covered = true }]
    }
  }
}

trial "80 mm thick for two hours" {
  rule   = "chill-too-slow"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { chill = "2 h", as = "slab 80 mm", covered = true }]
    }
  }
}

trial "nobody says how it stands in the fridge" {
  rule   = "chill-too-slow"
  expect = "unsure"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { chill = "12 h", covered = true }]
    }
  }
}

# A laminated dough is rolled at 16 to 20 C by design, and its roll-in is a part of its own that fat_pct does not count. A
# same-day dough with less than fat_pct of fat is rolled from the bench: that works, and nothing is said.
rule "not-cold-yet" {
  on     = "sheet"
  level  = "risk"
  limits = { core_c = 12, margin_c = 3, fat_pct = 25, laminated_c = 17 }
  note   = "sheet.start_c <= (part.is_laminated ? limit.laminated_c : limit.core_c) + 2 * limit.margin_c"
  when   = "part.has_leaven && (part.is_laminated || part.butterfat_pct > limit.fat_pct && !sheet.is_by_hand) && sheet.start_c > (part.is_laminated ? limit.laminated_c : limit.core_c) + limit.margin_c"
  doubt  = "middle"
  say    = "The dough is rolled at {sheet.start_c}; {part.is_laminated ? 'laminated' : 'so rich in fat'}, it needs {part.is_laminated ? limit.laminated_c : limit.core_c} C or less. Chill it longer or flatter, and probe the middle."
  why    = "Warm butter sticks to pin and bench and presses out; the sheet tears, and layers run together."
  source = "4 to 12 C at the pin for rich doughs: common practice, no source; 25 % fat and the margin are judgements; laminated 16 to 20 C: an ingredient maker's baking compendium 11.3 (read); a soft dough is patted into its pan with floured hands (common practice, no source)"

  adjust "chill.time" { within = [15, 2880] }
  adjust "chill.as" { within = [25, 200] }
}

trial "26 % fat, temperature at the pin" {
  rule  = "not-cold-yet"
  cases = { "18.2 C" = "risk", "17.5 C" = "note", "15.2 C" = "note", "14.8 C" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "unsalted butter" = "330 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", measured = "$case" }, { sheet = "5 mm" }]
    }
  }
}

trial "rolled at 25 C, butter about the share that counts" {
  rule  = "not-cold-yet"
  cases = {
    "314 g" = "flagged" # 25.5 % fat
    "300 g" = "clear"   # 24.4 % fat
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "unsalted butter" = "$case", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", measured = "25 C" }, { sheet = "5 mm" }]
    }
  }
}

trial "rolled at 25 C, by the fat" {
  rule  = "not-cold-yet"
  cases = { "unsalted butter" = "flagged", "lard" = "clear", "vegetable oil" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "$case" = "350 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", measured = "25 C" }, { sheet = "5 mm" }]
    }
  }
}

trial "rolled, or patted out" {
  rule  = "not-cold-yet"
  cases = {
    "by a pin"       = { expect = "flagged", verb = "roll out", how = "5 mm" }
    "patted"         = { expect = "clear", verb = "pat", how = "12 mm" }
    "by the fingers" = { expect = "clear", verb = "flatten", how = "12 mm, with your fingers" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "unsalted butter" = "330 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", measured = "25 C" }, { "$verb" = "$how" }]
    }
  }
}

trial "24.3 % fat, straight from the bench" {
  rule   = "not-cold-yet"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "unsalted butter" = "300 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", measured = "25 C" }, { sheet = "5 mm" }]
    }
  }
}

trial "croissant dough, temperature at the pin" {
  rule  = "not-cold-yet"
  cases = { "23.5 C" = "risk", "20.5 C" = "note", "19.5 C" = "clear" }
  formula "t" {
    family = "croissant"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "520 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "6 min", measured = "$case" }, { sheet = "8 mm" }]
    }
  }
}

trial "rich dough, nobody says where it rests" {
  rule   = "not-cold-yet"
  expect = "flagged"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "unsalted butter" = "330 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { rest = "1 h" }, { sheet = "5 mm" }]
    }
  }
}

rule "proof-too-warm" {
  on     = "proof"
  level  = "risk"
  limits = { proof_c = 28, emulsion_c = 30, margin_c = 2, fat_pct = 20 }
  note   = "proof.at_c <= (part.is_buttery ? limit.proof_c : limit.emulsion_c) + 2 * limit.margin_c"
  was    = ["proof-warm"]
  when   = "part.has_leaven && (part.is_laminated || part.fat_pct > limit.fat_pct) && proof.at_c > (part.is_buttery ? limit.proof_c : limit.emulsion_c) + limit.margin_c"
  say    = "The proof is at {proof.at_c}; a dough rich in butter takes {part.is_buttery ? limit.proof_c : limit.emulsion_c} at most. Set it to 24 to 28 C."
  why    = "Butter begins to run out near 28 C, and what has run out fries the bottom and leaves the crumb coarse."
  source = "laminated 26 to 30 C, 28 C with butter: an ingredient maker's baking compendium (read); brioche over 20 % butter 24 to 28 C: Suas (memory); panettone and its kin, mixed to an emulsion, proof at 28 to 30 C (common practice, no source)"

  adjust "step.at" { within = [20, 28] }
}

trial "25 % fat, proofed warm" {
  rule  = "proof-too-warm"
  cases = {
    "32.5 C"       = "risk"
    "31.9 C"       = "note"
    "30.05 C"      = "note"
    "29.95 C"      = "clear"
    "26 C to 31 C" = "unsure" # a range
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "unsalted butter" = "310 g", "instant yeast" = "10 g" }
      steps       = [{ proof = "1 h", at = "$case" }]
    }
  }
}

trial "25 % fat, an emulsion, proofed warm" {
  rule  = "proof-too-warm"
  cases = { "31.9 C" = "clear", "32.1 C" = "note", "34.1 C" = "risk" }
  formula "t" {
    family = "panettone"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "unsalted butter" = "310 g", "instant yeast" = "10 g" }
      steps       = [{ proof = "1 h", at = "$case" }]
    }
  }
}

trial "proof at 32 C, butter about the share that counts" {
  rule  = "proof-too-warm"
  cases = {
    "251 g" = "flagged" # 20.5 % fat
    "238 g" = "clear"   # 19.5 % fat
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "unsalted butter" = "$case", "instant yeast" = "10 g" }
      steps       = [{ proof = "1 h", at = "32 C" }]
    }
  }
}

trial "Danish proofed at 33 C" {
  rule   = "proof-too-warm"
  expect = "flagged"
  formula "t" {
    family = "danish"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "instant yeast" = "10 g" }
      steps       = [{ proof = "1 h", at = "33 C" }]
    }
  }
}

trial "rich proof, no temperature" { # the room or a warm place: up to 30 C
  rule   = "proof-too-warm"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "500 g", "unsalted butter" = "310 g", "instant yeast" = "10 g" }
      steps       = [{ proof = "1 h" }]
    }
  }
}

rule "retard-too-long" {
  on     = "chill"
  level  = "note"
  limits = { chill_h = 48 }
  when   = "part.has_leaven && chill.minutes > 60 * limit.chill_h"
  say    = "This dough stays cold for {round(chill.minutes / 60)} h; after {limit.chill_h} it turns sour and weak. Bake it sooner, or freeze it."
  why    = "Even at 4 C yeast works slowly: 48 h come to about one more doubling, and enzymes slacken the dough all the while."
  source = "longest retard of shaped pieces 48 h at 0 to 5 C: an ingredient maker's baking compendium 6.3 (read); about 1 equivalent hour at 26 C by the model (computed)"

  adjust "step.time" { within = [0, 2880] }
}

trial "time in the fridge" {
  rule  = "retard-too-long"
  cases = {
    "49 h" = "flagged"
    "47 h" = "clear"
    "?"    = "unsure"  # until it is needed
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "5 g" }
      steps       = [{ chill = "$case" }]
    }
  }
}

trial "butter for three days" {
  rule   = "retard-too-long"
  expect = "clear"
  formula "t" {
    filling "f" {
      ingredients = { "unsalted butter" = "500 g" }
      steps       = [{ chill = "3 day" }]
    }
  }
}

rule "cold-into-oven" {
  on     = "bake"
  level  = "note"
  limits = { core_c = 16 }
  when   = "part.has_leaven && bake.start_c < limit.core_c"
  doubt  = "middle"
  say    = "The middle is at {bake.start_c} when the piece goes into the oven, under {limit.core_c}. Let it warm first; 3 to 5 h from the fridge is usual."
  why    = "A cold middle rises late, after the crust has set: the piece splits at the side, and the core is still raw when the crust is done."
  source = "core before baking 16 C or more, recovery to 25 C in 3 to 5 h: an ingredient maker's baking compendium 6.3 (read)"
}

trial "dough at the oven" {
  rule  = "cold-into-oven"
  cases = { "15.5 C" = "flagged", "16.5 C" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "5 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { proof = "1 h", at = "14 C", as = "pieces 75 g", measured = "$case" }, { bake = "15 min", at = "200 C" }]
    }
  }
}

trial "from the fridge, an hour on the bench" {
  rule   = "cold-into-oven"
  expect = "unsure"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "5 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { chill = "12 h", as = "pieces 75 g" }, { proof = "1 h", at = "room", as = "pieces 75 g" }, { bake = "15 min", at = "200 C" }]
    }
  }
}

# Only the baker can say whether it is covered: no lever.
rule "rest-uncovered" {
  on     = "rest"
  level  = "note"
  limits = { rest_min = 20 }
  when   = "part.has_leaven && !rest.is_after_bake && rest.minutes > limit.rest_min && !rest.is_covered"
  say    = "The dough rests uncovered for {rest.minutes}; over {limit.rest_min} it forms a skin. Cover it with a lid, film or a damp cloth."
  why    = "The air dries a skin on it. The skin holds the rise back, tears in shaping, and stays as a streak in the crumb."
  source = "common practice, no source"
}

trial "minutes uncovered" {
  rule  = "rest-uncovered"
  cases = { "21 min" = "flagged", "19 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "10 g" }
      steps       = [{ rest = "$case", at = "room", covered = false }]
    }
  }
}

trial "covered for 2 h" {
  rule   = "rest-uncovered"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "10 g" }
      steps       = [{ rest = "2 h", at = "room", covered = true }]
    }
  }
}

trial "2 h, nobody says whether covered" {
  rule   = "rest-uncovered"
  expect = "unsure"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "instant yeast" = "10 g" }
      steps       = [{ rest = "2 h", at = "room" }]
    }
  }
}

rule "freezer-for-fridge" {
  on     = "chill"
  level  = "risk"
  limits = { at_c = -5, freeze_h = 4 }
  when   = "part.has_leaven && chill.at_c < limit.at_c && chill.minutes > 60 * limit.freeze_h"
  say    = "This dough chills for {round(chill.minutes / 60)} h at {chill.at_c}, and freezes through. Write at = \"fridge\", or freeze and thaw as steps of their own."
  why    = "Frozen dough does not rise, and many cells of the yeast die. It needs a night to thaw before it proofs."
  source = "doughs freeze from about -5 C (computed from their sugar and salt); 4 h: common practice, no source, of slabs that are firmed for an hour or two in the freezer"

  adjust "step.at" { within = [2, 5] }
}

trial "a night in the freezer for one in the fridge" {
  rule  = "freezer-for-fridge"
  cases = {
    "an hour"             = { expect = "clear", at = "-18 C", time = "1 h" }
    "just under 4 h"      = { expect = "clear", at = "freezer", time = "3.9 h" }
    "just over 4 h"       = { expect = "flagged", at = "freezer", time = "4.1 h" }
    "a night, just frozen" = { expect = "flagged", at = "-5.1 C", time = "12 h" }
    "a night, not frozen" = { expect = "clear", at = "-4.9 C", time = "12 h" }
    "a night in the fridge" = { expect = "clear", at = "fridge", time = "12 h" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "600 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "25 C" }, { chill = "$time", at = "$at" }]
    }
  }
}

rule "proof-missing" {
  on     = "dough"
  level  = "risk"
  limits = { proof_min = 10 }
  when   = "dough.has_leaven && dough.is_mixed && dough.is_baked && known(dough.proof_min) && dough.proof_min < limit.proof_min && dough.family != 'stollen' && !dough.is_thin_fried && !dough.is_batter"
  say    = "Between shaping and the heat this dough has {dough.proof_min} to rise, under {limit.proof_min}. Write the proof: its time and its warmth."
  why    = "A piece baked straight from the bench bursts at its seams and stays tight."
  source = "common practice, no source; published formulas proof 30 min or more, stollen apart: two published ones go straight from the bench (read); beignets are rolled to 6 mm and fried as cut, batters by the spoon (common practice, no source)"
}

trial "straight from the bowl into the fat" {
  rule  = "proof-missing"
  cases = { "850 g" = "clear", "750 g" = "flagged" } # a batter from 80 % on
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "$case", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "5 min", to = "26 C" }, { rest = "1 h", at = "26 C" }, { shape = "balls, with two spoons" }, { cook = "6 min", at = "180 C", by = "frying" }]
    }
  }
}

trial "minutes between shaping and the oven" {
  rule  = "proof-missing"
  cases = { "9.5 min" = "flagged", "10.5 min" = "clear", "?" = "unsure" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { rest = "1 h", at = "26 C" }, { shape = "loaf" }, { proof = "$case", at = "26 C", as = "pieces 75 g" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "cut from a sheet and fried" {
  rule  = "proof-missing"
  cases = { "6 mm" = "clear", "9 mm" = "flagged" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { rest = "1 h", at = "26 C" }, { sheet = "$case" }, { shape = "squares" }, { cook = "3 min", at = "185 C", by = "frying" }]
    }
  }
}

trial "a stollen goes straight from the bench" {
  rule   = "proof-missing"
  expect = "clear"
  formula "t" {
    family = "stollen"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { rest = "1 h", at = "26 C" }, { shape = "stollen" }, { bake = "1 h", at = "180 C" }]
    }
  }
}

# Laminated and rich doughs have limits of their own, in proof-too-warm.
rule "rise-too-hot" {
  on     = ["rest", "proof"]
  level  = "risk"
  limits = { at_c = 38, margin_c = 3 }
  note   = "step.at_c <= limit.at_c + 2 * limit.margin_c"
  when   = "part.has_leaven && part.is_baked && !step.is_after_proof && known(step.at_c) && step.at_c > limit.at_c + limit.margin_c"
  say    = "The dough rises at {step.at_c}; {limit.at_c} is the warm end of published proofs. Set it cooler, or look for a slip: C for F?"
  why    = "Past 40 C yeast tires, the outside runs ahead of the middle, and butter runs out."
  source = "US Armed Forces cards: proof at 32 to 38 C (read); the margin is a judgement"

  adjust "step.at" { within = [20, 35] }
}

trial "warmth of a proof" {
  rule  = "rise-too-hot"
  cases = {
    "40.9 C" = "clear"
    "41.1 C" = "note"
    "43.9 C" = "note"
    "44.2 C" = "risk"
    "75 C"   = "risk"
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "loaf" }, { proof = "1 h", at = "$case" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

# A short stay in the fridge before the pin is a chill; a night of it is a retard.
rule "rise-too-cold" {
  on     = ["rest", "proof"]
  level  = "risk"
  limits = { at_c = 16, margin_c = 3, long_h = 4, short_min = 30 }
  note   = "step.at_c >= limit.at_c - 2 * limit.margin_c"
  when   = "part.has_leaven && part.is_baked && !part.is_laminated && !step.is_after_proof && known(step.at_c) && known(step.minutes) && step.at_c < limit.at_c - limit.margin_c && step.minutes < 60 * limit.long_h && (step.verb == 'proof' || step.minutes > limit.short_min)"
  say    = "The dough is to rise at {step.at_c}; under {limit.at_c} it hardly rises within hours. Set it warmer, or call it a chill."
  why    = "At 8 C yeast works at an eighth of its pace at 26 C."
  source = "pace of yeast by temperature (fit); 16 C as the limit is a judgement; a rest of up to half an hour in the cold firms or slackens the dough, and is no rise (common practice, no source)"

  adjust "step.at" { within = [20, 35] }
}

trial "cold of a proof" {
  rule  = "rise-too-cold"
  cases = { "13.2 C" = "clear", "12.8 C" = "note", "9.8 C" = "risk" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "loaf" }, { proof = "1 h", at = "$case" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "a short rest in the fridge is no rise" {
  rule  = "rise-too-cold"
  cases = {
    "a rest of 28 min"  = { expect = "clear", verb = "rest", time = "28 min" }
    "a rest of 32 min"  = { expect = "flagged", verb = "rest", time = "32 min" }
    "a proof of 28 min" = { expect = "flagged", verb = "proof", time = "28 min" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "loaf" }, { "$verb" = "$time", at = "fridge" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

trial "hours of a cold proof" {
  rule  = "rise-too-cold"
  cases = { "230 min" = "flagged", "250 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { shape = "loaf" }, { proof = "$case", at = "9 C" }, { bake = "30 min", at = "200 C" }]
    }
  }
}

rule "chill-not-cold" {
  on     = "chill"
  level  = "risk"
  limits = { at_c = 8, margin_c = 3 }
  note   = "chill.at_c <= limit.at_c + 2 * limit.margin_c"
  when   = "part.has_leaven && known(chill.at_c) && chill.at_c > limit.at_c + limit.margin_c"
  say    = "The dough chills at {chill.at_c}; {limit.at_c} is the warm end of a fridge. Set it colder, or the dough rises on and stays soft."
  why    = "At 15 C yeast works at a third of its pace at 26 C, and butter is soft."
  source = "retard at 0 to 5 C: an ingredient maker's baking compendium 6.3 (read); 8 C as the limit is a judgement"

  adjust "step.at" { within = [1, 8] }
}

trial "warmth of a chill" {
  rule  = "chill-not-cold"
  cases = { "10.8 C" = "clear", "11.2 C" = "note", "14.2 C" = "risk" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ mix = "10 min", to = "26 C" }, { chill = "2 h", at = "$case" }]
    }
  }
}

rule "preferment-unripe" {
  on     = "preferment"
  level  = "note"
  limits = { stand_min = 15, culture_min = 150 }
  when   = "preferment.has_leaven && preferment.steps > 0 && preferment.stand_min < (preferment.has_culture && preferment.yeast_pct == 0 ? limit.culture_min : limit.stand_min)"
  say    = "This preferment stands {preferment.stand_min} before the dough takes it, under {preferment.has_culture && preferment.yeast_pct == 0 ? limit.culture_min : limit.stand_min}. Write its rest, or let it rise longer."
  why    = "An unripe sponge brings neither flavour nor strength, and a culture is slow."
  source = "common practice, no source; by a culture alone: a first dough of panettone 10 to 12 h (course notes, read), a refreshed starter 3 to 4 h (common practice)"
}

trial "minutes of a sponge" {
  rule  = "preferment-unripe"
  cases = { "14 min" = "flagged", "16 min" = "clear", "?" = "unsure" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "800 g", "water" = "400 g", "the sponge" = "all" }
      steps       = [{ mix = "10 min" }]
    }
    preferment "sponge" {
      ingredients = { "bread flour" = "200 g", "water" = "200 g", "instant yeast" = "5 g" }
      steps       = [{ mix = "3 min", to = "26 C" }, { rest = "$case", at = "26 C", as = "bowl" }]
    }
  }
}

trial "minutes of what a culture alone raises" {
  rule  = "preferment-unripe"
  cases = { "145 min" = "flagged", "155 min" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "800 g", "water" = "400 g", "the sponge" = "all" }
      steps       = [{ mix = "10 min" }]
    }
    preferment "sponge" {
      ingredients = { "bread flour" = "200 g", "water" = "100 g", "stiff sourdough" = "100 g" }
      steps       = [{ mix = "3 min", to = "26 C" }, { rest = "$case", at = "28 C", as = "bowl" }]
    }
  }
}
