formula "A" {
  makes = "two dozen"
  start = "6 pm"
  keep  = "a while"
  dough "d" { ingredients = { "bread flour" = "500 g" } }
}

formula "B" {
  makes = "24"
  start = "25:00"
  keep  = "3 kg"
  dough "d" { ingredients = { "bread flour" = "500 g" } }
}

formula "C" {
  makes = "2.5 loaves of 450 g"
  start = "6:30"
  keep  = 3
  dough "d" { ingredients = { "bread flour" = "500 g" } }
}

formula "D" {
  makes = "2 loaves of some size"
  start = 1800
  keep  = "0 day"
  family = "bryoche"
  dough "d" { ingredients = { "bread flour" = "500 g" } }
}

formula "E" {
  makes = "0 pieces"
  start = ""
  dough "d" { ingredients = { "bread flour" = "500 g" } }
}
