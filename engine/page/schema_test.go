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
		"batches":   jsonBatches{},
		"begin":     jsonBegin{},
		"cautions":  jsonCautions{},
		"compare":   jsonComparisons{},
		"history":   jsonHistory{},
		"log":       jsonLogged{},
		"mend":      jsonMends{},
		"plan":      jsonPlan{},
		"read":      jsonRead{},
		"scale":     jsonScaling{},
		"trial":     jsonTrials{},
		"why":       jsonWhy{},
	} {
		title := "forebake " + name + " --as json"
		switch name {
		case "catalogue":
			title = "forebake facts --list --as json"
		case "history":
			title = "forebake facts --history --as json"
		case "batches":
			title = "forebake log FILE --as json, forebake compare FILE --as json"
		case "log":
			title = "forebake log FILE --step N --as json"
		}
		schema.Hold(t, "../../formulas/schemas/"+name+".json", title, v)
	}
}
