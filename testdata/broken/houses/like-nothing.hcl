house "Our kitchen" {
  like = "../nowhere/house.hcl"
}
