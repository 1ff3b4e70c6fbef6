house "Our kitchen" {
  packs = ["balanse", "./nowhere", "cautions"]
}
