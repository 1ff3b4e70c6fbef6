# Sheet, coil, tin, pieces: do they come out? Areas and coils are reckoned from the dough's weight, at 1.15 g a mL, and a sheet
# that shrinks back can be 15 % off. The first trials of each rule stand close beside its limits, one on either side.

needs = "0.1"
about = "how thin it is rolled, whether bench and tin take it, and whether the pieces come out of the dough"

# Laminated doughs are rolled to their own measure.
rule "sheet-thin" {
  on     = "sheet"
  level  = "risk"
  limits = { sheet_mm = 3, drawn_mm = 1 }
  note   = "sheet.thickness_mm >= limit.drawn_mm"
  when   = "sheet.is_wound && !part.is_laminated && sheet.thickness_mm < (sheet.is_meant_thin ? limit.drawn_mm : limit.sheet_mm)"
  say    = "The sheet is rolled to {sheet.thickness_mm}; to be filled and rolled up {limit.sheet_mm} is usual. Roll it thicker, or say that it is to be paper thin."
  why    = "A sheet that thin tears under the filling, and its layers bake to one with no crumb between."
  source = "rolled, filled and twisted doughs 3 to 6 mm, about 5: common practice, no source; a cinnamon roll of 1/4 inch after an Armed Forces card (read); nut rolls, strudels and tahini rolls are drawn to 1 or 2 mm on purpose (common practice, no source)"

  adjust "step.measure" { within = [3, 6] }
}

trial "filled sheet about the thinnest" {
  rule  = "sheet-thin"
  cases = { "0.9 mm" = "risk", "1.1 mm" = "note", "2.8 mm" = "note", "3.2 mm" = "clear", "2 mm to 4 mm" = "unsure", "paper thin, 2 mm" = "clear", "paper thin, 0.8 mm" = "risk" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "$case" }, { fill = "f" }, { roll = "coil" }]
    }
    filling "f" { ingredients = { "almond paste" = "300 g" } }
  }
}

trial "1 mm thin, and what lies on it" {
  rule  = "sheet-thin"
  cases = { "almond paste" = "flagged", "lard" = "clear" } # a fat may lie on a film
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "1 mm" }, { fill = "f" }, { roll = "coil" }]
    }
    filling "f" { ingredients = { "$case" = "200 g" } }
  }
}

trial "crackling thin, but nothing in it" {
  rule   = "sheet-thin"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "2 mm" }]
    }
  }
}

rule "sheet-thick" {
  on     = "sheet"
  level  = "risk"
  limits = { sheet_mm = 10 }
  when   = "sheet.is_wound && !part.is_laminated && sheet.thickness_mm > limit.sheet_mm"
  say    = "The sheet is rolled to {sheet.thickness_mm}; to be filled and rolled up it needs {limit.sheet_mm} or less. Roll it to about 5 mm."
  why    = "A thick sheet makes few turns: the filling lies in one lump, and the middle of the coil bakes last."
  source = "rolled, filled and twisted doughs 3 to 6 mm, about 5: common practice, no source; 10 mm as the limit is a judgement"

  adjust "step.measure" {
    to     = "5"
    within = [3, 10]
  }
}

trial "filled sheet about the thickest" {
  rule  = "sheet-thick"
  cases = { "10.5 mm" = "flagged", "9.5 mm" = "clear", "9 mm to 12 mm" = "unsure" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "$case" }, { fill = "f" }, { roll = "coil" }]
    }
    filling "f" { ingredients = { "almond paste" = "300 g" } }
  }
}

trial "12 mm, rolled up or split and filled" {
  rule  = "sheet-thick"
  cases = {
    "rolled up"   = { expect = "flagged", a = "fill", b = "f", c = "roll", d = "coil" }
    "folded in"   = { expect = "flagged", a = "fill", b = "f", c = "fold", d = "1" }
    "laid on top" = { expect = "clear", a = "fill", b = "f", c = "bake", d = "25 min" }
    "split cold"  = { expect = "clear", a = "bake", b = "25 min", c = "fill", d = "f" }
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "12 mm" }, { "$a" = "$b" }, { "$c" = "$d" }]
    }
    filling "f" { ingredients = { "almond paste" = "300 g" } }
  }
}

trial "Danish before the roll-in" {
  rule   = "sheet-thick"
  expect = "clear"
  formula "t" {
    family = "danish"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "12.7 mm" }, { fill = "block" }]
    }
    filling "block" { ingredients = { "unsalted butter" = "500 g" } }
  }
}

# The limit is the bench of the house file, less 20 mm along each edge.
rule "sheet-off-bench" {
  on     = "sheet"
  level  = "risk"
  when   = "sheet.lots > 1 || known(sheet.lots) && sheet.has_width && sheet.width_cm > max(kitchen.bench_length_cm, kitchen.bench_width_cm)"
  say    = "At {sheet.thickness_mm} the bench takes {sheet.largest_g}, and this sheet is {sheet.sheet_g}. {sheet.lots > 1 ? 'Roll it in lots' : 'Write a width that the bench holds'}[: {sheet.length_cm} by {sheet.width_cm}]."
  why    = "A sheet that hangs over the edge stretches and tears, and comes out thick where the pin does not reach."
  source = "area is weight over density and thickness, density of mixed dough 1.10 to 1.20 g/mL (Cauvain; food property tables, memory); 20 mm kept free along each edge is a judgement"
}

trial "flour of a sheet of 5 mm on 120 by 60 cm" {
  rule  = "sheet-off-bench"
  cases = {
    "2400 g" = "flagged" # 3.8 kg of dough
    "2300 g" = "clear"   # 3.7 kg of dough
  }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "$case", "water" = "1400 g" }
      steps       = [{ sheet = "5 mm" }]
    }
  }
}

trial "3.8 kg on a longer bench" {
  rule   = "sheet-off-bench"
  expect = "clear"
  kitchen { bench = "180 x 75 cm" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "2400 g", "water" = "1400 g" }
      steps       = [{ sheet = "5 mm" }]
    }
  }
}

trial "written width on 120 by 60 cm" {
  rule  = "sheet-off-bench"
  cases = { "121 cm" = "flagged", "119 cm" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "5 mm", wide = "$case" }]
    }
  }
}

trial "too wide, and the thickness a question mark" {
  rule   = "sheet-off-bench"
  expect = "unsure"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "?", wide = "121 cm" }]
    }
  }
}

trial "water still a question mark" {
  rule   = "sheet-off-bench"
  expect = "unsure"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "2400 g", "water" = "?" }
      steps       = [{ sheet = "5 mm" }]
    }
  }
}

# leeway_mm lets the coil stand over the tin (above 0) or asks for room (below 0).
rule "coil-too-fat" {
  on     = "roll"
  level  = "risk"
  limits = { leeway_mm = 0 }
  when   = "known(roll.tin_width_mm) && roll.coil_mm > roll.tin_width_mm + limit.leeway_mm"
  say    = "The coil is {roll.coil_mm} thick, and the tin {roll.tin_width_mm} wide. [Roll it up from a shorter side: wide = \"{roll.wide_for_tin_cm}\" in the sheet|Roll a narrower sheet, or take less dough to a tin]."
  why    = "A coil pressed into its tin has no room to proof: it rides up, folds over the rim and stays dense below."
  source = "cross-section of the coil is length times layer of the sheet (geometry); the sheet's area is 15 % uncertain, since dough shrinks back"
}

trial "coil in a narrow tin" {
  rule  = "coil-too-fat"
  cases = {
    "300 x 55 x 100 mm" = "flagged"
    "300 x 60 x 100 mm" = "clear"
    "300 x 57 x 100 mm" = "unsure"  # about as wide as the tin
  }
  tin "t" { inside = "$case" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "5 mm" }, { roll = "coil" }, { pan = "t", tin = "t" }]
    }
  }
}

trial "sheet rolled up for a tin of 55 mm" {
  rule  = "coil-too-fat"
  cases = { "48 cm" = "flagged", "47 cm" = "clear" }
  tin "t" { inside = "300 x 55 x 100 mm" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "5 mm", wide = "$case" }, { roll = "coil" }, { pan = "t", tin = "t" }]
    }
  }
}

trial "coil that goes into no tin" {
  rule   = "coil-too-fat"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g" }
      steps       = [{ sheet = "5 mm" }, { roll = "coil", slice = "40 mm" }]
    }
  }
}

# A pan step without a tin of the house is a flat tray, and not judged. leeway_ml_per_g widens the family's range (above 0) or
# narrows it (below 0) for a house.
rule "tin-overfull" {
  on     = "pan"
  level  = "risk"
  limits = { leeway_ml_per_g = 0, margin_pct = 5 }
  note   = "pan.tin_fill_ml_per_g >= (pan.fill_low_ml_per_g - limit.leeway_ml_per_g) * (1 - 3 * limit.margin_pct / 100)"
  when   = "known(pan.tin_width_mm) && pan.tin_fill_ml_per_g < (pan.fill_low_ml_per_g - limit.leeway_ml_per_g) * (1 - limit.margin_pct / 100)"
  say    = "{round(pan.tin_ml / pan.tin_fill_ml_per_g)} g of {pan.tin_content} goes into a tin that takes about {round(pan.tin_ml / (pan.fill_low_ml_per_g - limit.leeway_ml_per_g))} g. Take less, use a larger tin, or measure this one with water."
  why    = "Too much dough in a tin mushrooms over the rim, sets a thick crust there and stays close in the middle."
  source = "mL of tin for a gram: milk bread 3.8 to 4.3, wholesale white 4.4 (read); brioche 2.6 to 3.6, filled 2.4 to 3.2 of dough and filling, panettone and its kin from 2.2, since they dome over the rim: 1050 to 1100 g in a mould of a kilo (common practice, no source)"

  adjust "tins" {}
  adjust "batch" {}
}

trial "brioche in a full tin" {
  rule  = "tin-overfull"
  cases = {
    "brioche at 2.2 mL a gram"               = { expect = "risk", flour = "800 g", egg = "563 g" }
    "brioche at 2.22 mL a gram"              = { expect = "note", flour = "795 g", egg = "556 g" }
    "brioche at 2.46 mL a gram"              = { expect = "note", flour = "715 g", egg = "504 g" }
    "brioche at 2.48 mL a gram"              = { expect = "clear", flour = "710 g", egg = "500 g" }
    "tin, and the egg still a question mark" = { expect = "unsure", flour = "650 g", egg = "?" }
  }
  tin "t" { inside = "300 x 100 x 100 mm" }
  formula "t" {
    family = "brioche moderate"
    dough "d" {
      ingredients = { "bread flour" = "$flour", "egg" = "$egg" }
      steps       = [{ pan = "t", tin = "t" }]
    }
  }
}

trial "filled loaf in a full tin" {
  rule  = "tin-overfull"
  cases = {
    "filled loaf at 2.2 mL a gram in all" = { expect = "flagged", flour = "620 g", water = "370 g", filling = "370 g" }
    "filled loaf at 2.5 mL a gram in all" = { expect = "clear", flour = "550 g", water = "320 g", filling = "330 g" }
  }
  tin "t" { inside = "300 x 100 x 100 mm" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "$flour", "water" = "$water" }
      steps       = [{ sheet = "5 mm" }, { fill = "f" }, { roll = "coil" }, { pan = "t", tin = "t" }]
    }
    filling "f" { ingredients = { "almond paste" = "$filling" } }
  }
}

trial "1080 g in a mould, by what the family does there" {
  rule  = "tin-overfull"
  cases = { "panettone" = "clear", "brioche" = "flagged", "milk bread" = "risk" }
  tin "t" { inside = "170 x 150 x 98 mm" } # 2.5 L
  formula "t" {
    family = "$case"
    dough "d" {
      ingredients = { "bread flour" = "700 g", "egg" = "500 g" }
      steps       = [{ divide = "1080 g", pieces = 1 }, { pan = "t", tin = "t" }]
    }
  }
}

trial "the scrap goes into no tin" {
  rule  = "tin-overfull"
  cases = { "1050 g" = "clear", "1180 g" = "flagged" } # of 1200 g
  tin "t" { inside = "300 x 100 x 93 mm" }
  formula "t" {
    family = "brioche moderate"
    dough "d" {
      ingredients = { "bread flour" = "700 g", "egg" = "500 g" }
      steps       = [{ divide = "$case", pieces = 1 }, { pan = "t", tin = "t" }]
    }
  }
}

trial "panned on a flat tray" {
  rule   = "tin-overfull"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "550 g", "water" = "320 g" }
      steps       = [{ pan = "trays" }]
    }
  }
}

rule "tin-underfull" {
  on     = "pan"
  level  = "risk"
  limits = { leeway_ml_per_g = 0, margin_pct = 5 }
  note   = "pan.tin_fill_ml_per_g <= (pan.fill_high_ml_per_g + limit.leeway_ml_per_g) * (1 + 3 * limit.margin_pct / 100)"
  when   = "known(pan.tin_width_mm) && !pan.tin_is_shallow && pan.tin_fill_ml_per_g > (pan.fill_high_ml_per_g + limit.leeway_ml_per_g) * (1 + limit.margin_pct / 100)"
  say    = "{round(pan.tin_ml / pan.tin_fill_ml_per_g)} g of {pan.tin_content} goes into a tin that needs about {round(pan.tin_ml / (pan.fill_high_ml_per_g + limit.leeway_ml_per_g))} g. Take more, use a smaller tin, or measure this one with water."
  why    = "Too little dough never reaches the rim: a low loaf with pale sides, or an over-proofed one that has chased the tin."
  source = "mL of tin for a gram: milk bread 3.8 to 4.3, wholesale white 4.4 (read); brioche 2.6 to 3.6, filled 2.4 to 3.2 of dough and filling, panettone and its kin from 2.2, since they dome over the rim: 1050 to 1100 g in a mould of a kilo (common practice, no source)"

  adjust "tins" {}
  adjust "batch" {}
}

trial "brioche in a large tin" {
  rule  = "tin-underfull"
  cases = {
    "brioche at 4.3 mL a gram"  = { expect = "risk", flour = "400 g", egg = "298 g" }
    "brioche at 3.79 mL a gram" = { expect = "note", flour = "451.6 g", egg = "340 g" }
    "brioche at 3.77 mL a gram" = { expect = "clear", flour = "455.8 g", egg = "340 g" }
  }
  tin "t" { inside = "300 x 100 x 100 mm" }
  formula "t" {
    family = "brioche moderate"
    dough "d" {
      ingredients = { "bread flour" = "$flour", "egg" = "$egg" }
      steps       = [{ pan = "t", tin = "t" }]
    }
  }
}

trial "filled loaf in a large tin" {
  rule  = "tin-underfull"
  cases = {
    "filled loaf at 3.5 mL a gram in all" = { expect = "flagged", flour = "400 g", water = "220 g", filling = "240 g" }
    "filled loaf at 3.1 mL a gram in all" = { expect = "clear", flour = "450 g", water = "260 g", filling = "260 g" }
  }
  tin "t" { inside = "300 x 100 x 100 mm" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "$flour", "water" = "$water" }
      steps       = [{ sheet = "5 mm" }, { fill = "f" }, { roll = "coil" }, { pan = "t", tin = "t" }]
    }
    filling "f" { ingredients = { "almond paste" = "$filling" } }
  }
}

trial "a tray cake, by the depth of the tin" {
  rule  = "tin-underfull"
  cases = { "330 x 230 x 75 mm" = "clear", "330 x 230 x 90 mm" = "flagged" }
  tin "t" { inside = "$case" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "420 g", "whole milk" = "240 g" }
      steps       = [{ pan = "t", tin = "t" }]
    }
  }
}

trial "tin, and the milk still a question mark" {
  rule   = "tin-underfull"
  expect = "unsure"
  tin "t" { inside = "300 x 100 x 100 mm" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "400 g", "whole milk" = "?" }
      steps       = [{ pan = "t", tin = "t" }]
    }
  }
}

# Up to loss_pct of the dough stays in the bowl and on the bench: for each piece made, that much of a piece. Only what usual
# losses cannot eat counts, so a batch of 15 or more is never flagged. A whole piece more is makes-mismatch's to say.
rule "pieces-uneven" {
  on     = "divide"
  level  = "note"
  limits = { left_pct = 25, loss_pct = 5, short_pct = 4, gap_pct = 3 }
  when   = "(!known(formula.makes_gap_pct) || abs(formula.makes_gap_pct) <= limit.gap_pct) && known(divide.remainder_pct) && known(formula.pieces) && divide.remainder_pct < 100 - limit.short_pct * formula.pieces && divide.remainder_pct - limit.loss_pct * max(formula.pieces, divide.pieces) > limit.left_pct"
  say    = "After the whole pieces {divide.remainder_pct} of a piece is left over, usual losses allowed. Change the weight of the pieces, their number, or the dough."
  why    = "A left-over lump is thrown away, or goes in as one piece that bakes unlike the others."
  source = "mixing and scaling loss up to 5 %: an ingredient maker's baking compendium 13.5 (read); a quarter of a piece as the limit is a judgement"

  adjust "makes" {}
}

trial "dough divided into loaves" {
  rule  = "pieces-uneven"
  cases = {
    "561 g"          = "flagged" # four loaves and 46 % of another
    "554 g"          = "clear"   # four loaves and 44 % of another
    "540 g to 620 g" = "unsure"  # between two weights
  }
  formula "t" {
    makes = "4 loaves of 390 g"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "$case" }
      steps       = [{ divide = "350 g" }]
    }
  }
}

trial "three loaves and most of the fourth" {
  rule  = "pieces-uneven"
  cases = {
    "340 g" = "flagged" # 83 % of it
    "346 g" = "clear"   # it is a little short
  }
  formula "t" {
    makes = "4 loaves of 340 g"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "$case" }
      steps       = [{ divide = "350 g" }]
    }
  }
}

trial "a dough that is off is told once" {
  rule  = "pieces-uneven"
  cases = { "4 loaves of 402 g" = "flagged", "4 loaves of 403 g" = "clear" } # 2.9 and 3.2 % short
  formula "t" {
    makes = "$case"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "561 g" }
      steps       = [{ divide = "350 g" }]
    }
  }
}

trial "sixty buns and some" {
  rule   = "pieces-uneven"
  expect = "clear"
  formula "t" {
    makes = "60 buns"
    dough "d" {
      ingredients = { "bread flour" = "2000 g", "water" = "1150 g" }
      steps       = [{ divide = "52 g" }]
    }
  }
}

trial "divided by number" {
  rule   = "pieces-uneven"
  expect = "clear"
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "561 g" }
      steps       = [{ divide = "4 pieces" }]
    }
  }
}

rule "sheet-slipped" {
  on     = "sheet"
  level  = "risk"
  limits = { sheet_mm = 35 }
  when   = "(!part.is_filled || part.is_laminated) && sheet.thickness_mm > limit.sheet_mm"
  say    = "The dough is rolled to {sheet.thickness_mm}; over {limit.sheet_mm} it is a block, not a sheet. Did you mean a tenth of that?"
  why    = "Rings and rounds are cut from 10 to 20 mm; thicker, they fry brown and stay raw inside."
  source = "doughnuts 10 to 20 mm: published formulas (read); the limit is a judgement"

  adjust "step.measure" { within = [3, 20] }
}

trial "thickest sheet with nothing in it" {
  rule  = "sheet-slipped"
  cases = { "36 mm" = "flagged", "34 mm" = "clear" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ sheet = "$case" }]
    }
  }
}

# A sheet's area is 15 % uncertain, and ends are trimmed: only what is far off counts.
rule "slices-off" {
  on     = "roll"
  level  = "risk"
  limits = { factor = 1.5 }
  when   = "known(roll.slices) && known(formula.pieces) && (roll.slices > limit.factor * formula.pieces || limit.factor * roll.slices < formula.pieces)"
  say    = "The coil gives {roll.slices}, and {formula.pieces} are wanted. Change the slice, or the width of the sheet."
  why    = "The number of slices is the length of the coil over their thickness."
  source = "length of the coil from the sheet's area (geometry), 15 % uncertain; the factor is a judgement"

  adjust "makes" {}
}

trial "pieces asked of a coil" {
  rule  = "slices-off"
  cases = { "17 pieces" = "clear", "13 pieces" = "flagged", "120 pieces" = "flagged" }
  formula "t" {
    makes = "$case"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ sheet = "5 mm", wide = "30 cm" }, { roll = "coil", slice = "40 mm" }]
    }
  }
}

# Ropes of a braid are up to eight a piece.
rule "divide-slipped" {
  on     = "divide"
  level  = "risk"
  limits = { factor = 9, most = 16, cut_pct = 40 }
  when   = "known(divide.cut_pct) && (divide.cut_pct < limit.cut_pct || limit.cut_pct * divide.cut_pct > 10000) || !known(divide.cut_pct) && known(divide.pieces) && known(formula.pieces) && (divide.pieces > limit.factor * formula.pieces && divide.pieces < limit.most * formula.pieces || limit.factor * divide.pieces < formula.pieces)"
  say    = "The dough divides into {divide.pieces}, and {formula.pieces} are wanted. Did a point slip in the weight of a piece?"
  why    = "A braid takes up to eight ropes a piece, and a point that slips makes it ten. More are small balls, piled into one tin."
  source = "common practice, no source"
}

trial "four pieces of a weight" {
  rule  = "divide-slipped"
  cases = { "155 g" = "flagged", "162 g" = "clear", "1020 g" = "flagged" }
  formula "t" {
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ divide = "$case", pieces = 4 }]
    }
  }
}

trial "small balls piled into one loaf, by the weight of a ball" {
  rule  = "divide-slipped"
  cases = { "24 g" = "clear", "2.4 g" = "flagged", "240 g" = "flagged" }
  formula "t" {
    makes = "1 loaf"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ divide = "$case", pieces = 64 }]
    }
  }
}

trial "loaves divided, ropes or a slip" {
  rule  = "divide-slipped"
  cases = { "37 pieces" = "flagged", "35 pieces" = "clear", "63 pieces" = "flagged", "65 pieces" = "clear" }
  formula "t" {
    makes = "4 loaves"
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g", "instant yeast" = "10 g" }
      steps       = [{ divide = "$case" }]
    }
  }
}

rule "turns-without-cold" {
  on     = "fold"
  level  = "risk"
  when   = "part.is_laminated && part.is_baked && fold.turns_warm > 2"
  say    = "{fold.turns_warm} since the dough was last cold; two are the most. Chill it half an hour first; a three-fold is one fold, and a lock-in is none."
  why    = "Each turn warms the butter and tires the gluten: past 16 to 18 C the layers run together."
  source = "published croissant and Danish doughs rest cold after one or two turns (read)"
}

trial "the lock-in is no turn" {
  rule  = "turns-without-cold"
  cases = { "lock-in" = "clear", "letter turn" = "flagged" }
  formula "t" {
    family = "croissant"
    filling "butter" { ingredients = { "unsalted butter" = "500 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "540 g", "salt" = "20 g", "instant yeast" = "12 g" }
      steps = [
        { mix = "7 min", to = "22 C" },
        { chill = "12 h", as = "slab 20 mm" },
        { fill = "butter" },
        { fold = 1, note = "$case" },
        { fold = 2 },
        { bake = "18 min", at = "190 C" },
      ]
    }
  }
}

trial "one fold, then more before the cold" {
  rule  = "turns-without-cold"
  cases = { "1 turn" = "clear", "2 turns" = "flagged" }
  formula "t" {
    family = "croissant"
    filling "butter" { ingredients = { "unsalted butter" = "500 g" } }
    dough "d" {
      ingredients = { "bread flour" = "1000 g", "water" = "540 g", "salt" = "20 g", "instant yeast" = "12 g" }
      steps = [
        { mix = "7 min", to = "22 C" },
        { chill = "12 h", as = "slab 20 mm" },
        { fill = "butter" },
        { fold = 1 },
        { fold = "$case" },
        { chill = "1 h", as = "slab 20 mm" },
        { fold = 1 },
        { bake = "18 min", at = "190 C" },
      ]
    }
  }
}

