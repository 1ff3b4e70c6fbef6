# backen-und-kochen.ch/butterzopf (read). Plait flour of 400 g wheat and 100 g spelt;
# 1 to 2 h at room temperature, half an hour, 15 min; 35 to 45 min at 200 C. The kneading time is
# not printed; 10 min stands for it.
formula "Butter plait, wheat and spelt" {
  family = "zopf"
  makes  = "1 loaf"

  dough "plait dough" {
    ingredients = {
      "flour"             = "400 g"
      "white spelt flour" = "100 g"
      "salt"              = "10 g"
      "fresh yeast"       = "15 g"
      "milk"              = "300 ml"
      "butter"            = "60 g"
    }
    steps = [
      { mix    = "10 min" },
      { rest   = "1 h to 2 h", at = "room" },
      { rest   = "30 min", at = "room" },
      { divide = 2 },
      { shape  = "plait" },
      { proof  = "15 min" },
      { wash   = "milk wash" },
      { bake   = "35 min to 45 min", at = "200 C" },
    ]
  }

  wash "milk wash" {
    ingredients = {
      "milk" = "1 tbsp"
    }
  }
}
