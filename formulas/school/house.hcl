# The school's buns are baked at Saltmarsh Lane: its kitchen, tins and larder, with rules of their own on top.

house "Saltmarsh Lane, for the school" {
  like  = "../house.hcl"
  packs = ["draft", "balance", "yeast", "mixing", "ferment", "filling", "shaping", "baking", "hygiene", "../house-rules"]

  # Small hands wait for these: the filling goes on colder than elsewhere, so that the dough's butter stays where it is.
  set "spread-too-warm" { limits = { spread_c = 20 } }
  set "cool-not-done"   { limits = { spread_c = 20 } }

  # A fault in the draft of an order is a fault in the order.
  set "amount-missing" { level = "stop" }
}
