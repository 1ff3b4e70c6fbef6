package sheet

import (
	"testing"

	"forebake/engine/jsontext/schema"
)

func TestSchema(t *testing.T) {
	schema.Hold(t, "../../formulas/schemas/sheet.json", "forebake sheet --as json", jsonSheet{})
}
