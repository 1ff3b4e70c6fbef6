formula "Buns ‮gnirts‬" {
  dough "d​ough" {
    ingredients = {
      "bread flour⁦" = "500 g"
      "‮lohocla" = "5 g"
      "wat[31mer" = "300 g"
      "salt" = "9 g‍"
    }
    steps = [{ "re‮st" = "1 h" }, { rest = "1 h", at = "2J" }]
  }
}
