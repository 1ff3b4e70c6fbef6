package main

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// TestJSONFitsItsSchema holds real output of every verb with JSON to the schema files, by a
// validator of its own.
func TestJSONFitsItsSchema(t *testing.T) {
	compiler := jsonschema.NewCompiler()
	for _, c := range []struct{ schema, args string }{
		{"check", "check --as json ../../formulas/first-draft.hcl"},
		{"check", "check --as json ../../formulas"},
		{"check", "check --as json ../../testdata/broken"},
		{"facts", "facts --as json ../../formulas/cinnamon-buns.hcl --all"},
		{"catalogue", "facts --list --as json"},
		{"cost", "cost --as json ../../formulas/cinnamon-buns.hcl"},
		{"mix", "mix --as json ../../formulas/plain-milk-loaf.hcl"},
		{"packs", "packs --as json"},
		{"packs", "packs --as json --house ../../formulas/school"},
		{"larder", "larder butter --as json"},
		{"larder", "larder --as json"},
	} {
		path := filepath.Join("../../formulas/schemas", c.schema+".json")
		s, err := compiler.Compile(path)
		if err != nil {
			t.Fatal(err)
		}
		var out, errs bytes.Buffer
		run(strings.Fields(c.args), strings.NewReader(""), &out, &errs)
		doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(out.Bytes()))
		if err != nil {
			t.Fatalf("%s: %v: %s", c.args, err, errs.String())
		}
		if err := s.Validate(doc); err != nil {
			t.Errorf("%s: %v", c.args, err)
		}
	}
}
