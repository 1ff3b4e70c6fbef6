house "Our kitchen" {
  like = "./house.hcl"
}
