//go:build ignore

// This program writes table.go from larder.csv, allergens.csv,
// ambiguous.csv, hazards.csv and abroad.csv. Run it with "go generate" in this
// folder after a change of any of them.
package main

import (
	"log"
	"os"

	"forebake/engine/larder/internal/tablegen"
)

func main() {
	log.SetFlags(0)
	larder, err := os.ReadFile("larder.csv")
	if err != nil {
		log.Fatal(err)
	}
	allergens, err := os.ReadFile("allergens.csv")
	if err != nil {
		log.Fatal(err)
	}
	ambiguous, err := os.ReadFile("ambiguous.csv")
	if err != nil {
		log.Fatal(err)
	}
	hazards, err := os.ReadFile("hazards.csv")
	if err != nil {
		log.Fatal(err)
	}
	abroad, err := os.ReadFile("abroad.csv")
	if err != nil {
		log.Fatal(err)
	}
	src, err := tablegen.Generate(larder, allergens, ambiguous, hazards, abroad)
	if err != nil {
		log.Fatal(err)
	}
	if err := os.WriteFile("table.go", src, 0o644); err != nil {
		log.Fatal(err)
	}
}
