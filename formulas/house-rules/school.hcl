# What Saltmarsh Lane asks of the buns that it bakes for the school: a pack of the house's own, beside the shipped ones. No Go is needed;
# forebake trial in the school's folder runs the trials below. Copy a block, rename it, and change what it says.

needs = "0.1"
about = "what the school's order asks: no nuts, a price, weights in grams, parts with names"

rule "nuts-kept-out" {
  on     = "part"
  level  = "stop"
  when   = "part.has_nuts"
  say    = "{part.name} holds nuts, and this kitchen bakes for the school without. Use toasted sunflower or pumpkin seeds, and read their label for traces."
  why    = "The order says nut-free, and two pupils carry an auto-injector. Traces on benches and tins are another matter: see the cautions."
  source = "the school's order, and our own agreement with it"
}

trial "what a filling is made of" {
  rule  = "nuts-kept-out"
  cases = { "ground hazelnuts" = "flagged", "sunflower seeds" = "clear" }
  formula "t" {
    filling "paste" { ingredients = { "$case" = "100 g", "sugar" = "50 g" } }
  }
}

trial "almond paste in a dough" {
  rule   = "nuts-kept-out"
  expect = "flagged"
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "500 g", "almond paste" = "50 g" } }
  }
}

figure "cost_each" {
  on    = "formula"
  is    = "formula.cost / formula.pieces"
  unit  = "money"
  means = "cost of the ingredients of one piece"
}

rule "costs-too-much" {
  on     = "formula"
  level  = "risk"
  limits = { each = 0.25 }
  when   = "known(formula.cost_each) && formula.cost_each > limit.each"
  say    = "The ingredients come to {formula.cost} for {formula.pieces}; the order allows {limit.each} each. Make them smaller, or change what is dear."
  why    = "The price is fixed for the school year."
  source = "the school's order"
}

trial "price of each" {
  rule  = "costs-too-much"
  cases = {
    "309.6 g" = "flagged" # 26 pence
    "285.7 g" = "clear"   # 24 pence
  }
  formula "t" {
    makes = "10 pieces"
    dough "d" { ingredients = { "farm butter" = "$case" } }
  }
}

trial "not every price is known" {
  rule   = "costs-too-much"
  expect = "clear"
  formula "t" {
    makes = "10 pieces"
    dough "d" { ingredients = { "farm butter" = "900 g", "bread flour" = "500 g" } }
  }
}

rule "grams-only" {
  on     = "ingredient"
  level  = "risk"
  when   = "ingredient.by_volume"
  say    = "{ingredient.name} is measured by spoon or cup; {ingredient.amount_g} is what that comes to. Write the grams."
  why    = "The school's cooks bake from the same sheet, and their spoons are not ours."
  source = "house practice"

  adjust "amount" { to = "ingredient.amount_g" }
}

trial "cinnamon by spoon or weight" {
  rule  = "grams-only"
  cases = { "1 tbsp" = "flagged", "8 g" = "clear" }
  formula "t" {
    filling "f" { ingredients = { "sugar" = "100 g", "cinnamon" = "$case" } }
  }
}

rule "part-unnamed" {
  on     = "part"
  level  = "note"
  when   = "part.name in ['dough', 'filling', 'topping', 'syrup', 'wash', 'preferment', 'sponge']"
  say    = "This part is named {part.name} and nothing more. Say which: two formulas lie side by side on the bench."
  why    = "A tub labelled 'filling' has gone into the wrong buns before."
  source = "house practice"
}

trial "name of a filling" {
  rule  = "part-unnamed"
  cases = {
    "filling"        = "flagged" # says nothing
    "cinnamon sugar" = "clear"   # says which
  }
  formula "t" {
    filling "$case" { ingredients = { "sugar" = "100 g" } }
  }
}
