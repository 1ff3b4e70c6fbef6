package page

import (
	"testing"

	"forebake/engine/jsontext/schema"
)

func TestSchemas(t *testing.T) {
	for name, v := range map[string]any{
		"facts":     jsonFacts{},
		"catalogue": jsonCatalogue{},
		"cost":      jsonCosts{},
		"mix":       jsonMixes{},
		"packs":     jsonPacks{},
	} {
		title := "forebake " + name + " --as json"
		if name == "catalogue" {
			title = "forebake facts --list --as json"
		}
		schema.Hold(t, "../../formulas/schemas/"+name+".json", title, v)
	}
}
