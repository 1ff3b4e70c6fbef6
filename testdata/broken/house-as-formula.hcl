house "Our kitchen" {
  kitchen { room = "22 C" }
}
