package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// mixAnswer is what mix --as json prints of one mix.
type mixAnswer struct {
	LiquidC *struct{ Low, Mid, High float64 } `json:"liquid_c"`
	FactorC *struct{ Low, Mid, High float64 } `json:"liquid_by_factor_c"`
}

// TestMixPublished holds the program's mix to the factor method's
// published examples, rows W01 to W07 of dough-worked-examples.csv, and
// its own answer to the heat balance.
func TestMixPublished(t *testing.T) {
	raw, err := os.ReadFile("../../testdata/tables/dough-worked-examples.csv")
	if err != nil {
		t.Fatal(err)
	}
	r := csv.NewReader(bytes.NewReader(raw))
	r.Comment = '#'
	r.FieldsPerRecord = -1
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	published := map[string]string{}
	for _, row := range rows {
		if strings.HasPrefix(row[0], "W0") {
			published[row[0]] = row[4] + row[5]
		}
	}
	// The rows' inputs: the dough wanted, flour, room and preferment,
	// and the friction as it enters the sum: a rise of a third of it,
	// or a quarter with a preferment.
	for _, c := range []struct {
		id, aim, flour, room, preferment string
		friction                         float64 // K, in the sum
	}{
		{"W01", "75F", "65F", "65F", "", 8 / 1.8},
		{"W02", "75F", "71F", "71F", "71F", 20 / 1.8},
		{"W03", "78F", "60F", "70F", "", 16 / 1.8},
		{"W04", "24C", "18C", "18C", "", 8},
		{"W05", "23C", "18C", "18C", "", 11}, // base 58 = 3 x 23 - 11; flour and room 36 together
		{"W06", "78F", "85F", "67F", "", 0},
		{"W07", "78F", "72F", "62F", "", 0},
	} {
		want, ok := published[c.id]
		if !ok {
			t.Errorf("%s is not in the table", c.id)
			continue
		}
		terms := 3.0
		line, sponge := "", ""
		if c.preferment != "" {
			terms = 4
			line = "      \"the sponge\" = \"all\"\n"
			sponge = `  preferment "sponge" {
    ingredients = { "bread flour" = "300 g", "water" = "300 g" }
    steps = [ { mix = "3 min", by = "hand" } ]
  }
`
		}
		text := "formula \"f\" {\n" + sponge + "  dough \"d\" {\n    ingredients = {\n" + line +
			"      \"bread flour\" = \"1000 g\"\n      \"water\" = \"600 g\"\n    }\n" +
			"    steps = [ { mix = \"9 min\", by = \"spiral\", to = \"25 C\" } ]\n  }\n}\n"
		path := filepath.Join(t.TempDir(), "f.hcl")
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		rise := c.friction / terms
		args := []string{"mix", path, "--as", "json", "--to", c.aim, "--flour", c.flour,
			"--room", c.room, "--friction", fmt.Sprintf("%.9f C", rise)}
		if c.preferment != "" {
			args = append(args, "--preferment", c.preferment)
		}
		var out, errs bytes.Buffer
		if status := run(args, strings.NewReader(""), &out, &errs); status != 0 {
			t.Fatalf("%s: status %d: %s", c.id, status, errs.String())
		}
		var got struct{ Mixes []mixAnswer }
		if err := json.NewDecoder(io.Reader(&out)).Decode(&got); err != nil {
			t.Fatal(err)
		}
		last := got.Mixes[len(got.Mixes)-1]
		if last.FactorC == nil || last.LiquidC == nil {
			t.Fatalf("%s: no answer", c.id)
		}
		if says := last.FactorC.Mid; math.Abs(says-celsius(t, want)) > 0.5/1.8 {
			t.Errorf("%s: %.2f C by the factor, published %s (%.2f C)", c.id, says, want,
				celsius(t, want))
		}
		if c.preferment != "" {
			continue
		}
		// The temperature that the answer gives the dough, by the heat
		// of each.
		flour, water := 1.0*1.76, 0.6*4.18
		ends := (flour*celsius(t, c.flour)+water*last.LiquidC.Mid)/(flour+water) + rise
		if math.Abs(ends-celsius(t, c.aim)) > 0.05 {
			t.Errorf("%s: water at %.2f C brings the dough to %.2f C, and %s is wanted", c.id,
				last.LiquidC.Mid, ends, c.aim)
		}
	}
}

// celsius reads "75F" or "24C".
func celsius(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text[:len(text)-1], 64)
	if err != nil {
		t.Fatal(err)
	}
	if strings.HasSuffix(text, "F") {
		return (x - 32) / 1.8
	}
	return x
}
