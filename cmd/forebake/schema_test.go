package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// TestJSONFitsItsSchema holds real output of every verb with JSON to
// its schema file, by a separate validator.
func TestJSONFitsItsSchema(t *testing.T) {
	compiler := jsonschema.NewCompiler()
	dir := t.TempDir()
	buns, recipe := filepath.Join(dir, "buns.hcl"), filepath.Join(dir, "recipe.txt")
	for path, text := range map[string]string{buns: soundBuns,
		recipe: "Buns\n\n500 g bread flour\n" +
			"300 g water\na little salt\n\nMix for 8 minutes. Bake for 20 minutes at 200 C.\n"} {
		if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
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
		{"mend", "mend --as json ../../formulas/first-draft.hcl"},
		{"compare", "compare --as json ../../formulas/first-draft.hcl " +
			"../../formulas/second-draft.hcl"},
		{"log", "log --as json " + buns + " --step 2 --read 1.9x"},
		{"batches", "compare --as json " + buns},
		{"batches", "log --as json " + buns},
		{"plan", "plan --as json ../../formulas/cinnamon-buns.hcl --ready 07:00"},
		{"scale", "scale --as json ../../formulas/cinnamon-buns.hcl --flour 40kg"},
		{"why", "why --as json core-unsafe"},
		{"trial", "trial --as json"},
		{"cautions", "cautions --as json ../../formulas ../../testdata/broken/empty.hcl"},
		{"history", "facts --history --as json ../../formulas/cinnamon-buns.hcl"},
		{"sheet", "sheet --as json ../../formulas/cinnamon-buns.hcl"},
		{"begin", "begin --as json"},
		{"begin", "begin --as json house"},
		{"read", "read --as json " + recipe},
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
		if doc.(map[string]any)["format"] == nil {
			t.Errorf("%s: no version of its format", c.args)
		}
		if err := s.Validate(doc); err != nil {
			t.Errorf("%s: %v", c.args, err)
		}
	}
}
