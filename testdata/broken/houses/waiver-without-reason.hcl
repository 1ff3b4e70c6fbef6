house "Our kitchen" {
  waive "salt-low" {
  }

  waive "egg-high" {
    because = ""
  }
}
