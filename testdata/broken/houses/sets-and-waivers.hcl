house "Our kitchen" {
  set "salt-lov" {
    level   = "note"
    because = "taste"
  }

  set "salt-low" {
    limits = { least_pkt = 1 }
  }

  waive "salt-low" {
    because = "taste"
    until   = "soon"
  }

  waive "salt-hig" {
    because = "taste"
  }
}
