package report

import (
	"testing"

	"forebake/engine/jsontext/schema"
)

func TestSchema(t *testing.T) {
	schema.Hold(t, "../../formulas/schemas/check.json", "forebake check --as json", jsonRun{})
}
