formula "Nothing yet" {
}

formula "" {
  dough "d" { ingredients = {} }
  dough "e" { }
}
