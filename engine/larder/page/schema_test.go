package page

import (
	"testing"

	"forebake/engine/jsontext/schema"
)

func TestSchema(t *testing.T) {
	schema.Hold(t, "../../../formulas/schemas/larder.json", "forebake larder --as json", Answer{})
}
