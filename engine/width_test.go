package engine_test

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"forebake/engine"
)

// readings are what a demo formula has read at the bench or by the meter.
var readings = regexp.MustCompile(`(?m), measured = "[^"]*"|^ *ph = [0-9.]+`)

// TestWidthOfModels counts the answers that only a model's error leaves open, in the demo formulas
// without what was read. With -v it prints each.
func TestWidthOfModels(t *testing.T) {
	paths, err := filepath.Glob("../formulas/*.hcl")
	if err != nil {
		t.Fatal(err)
	}
	more, _ := filepath.Glob("../formulas/school/*.hcl")
	files, open, taken := 0, 0, 0
	for _, path := range append(paths, more...) {
		if filepath.Base(path) == "house.hcl" {
			continue
		}
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		taken += len(readings.FindAll(text, -1))
		bare := readings.ReplaceAll(text, nil)
		res := engine.New().Check([]engine.Input{{Name: filepath.Base(path), Text: bare,
			Dir: filepath.Dir(path)}})
		if len(res.Problems) > 0 {
			t.Fatal(res.Problems)
		}
		files++
		for _, f := range res.Findings {
			any := false
			for _, c := range f.Causes {
				any = any || c.ByModel
			}
			if any {
				open++
				t.Logf("%v %v %v %s:%d %s: %s", f.Answer, f.Level, f.Doubt, filepath.Base(path), f.Place.Line(), f.Rule, f.Reason)
			}
		}
	}
	t.Logf("%d answers of %d files are open by a model's error; %d readings taken out", open, files, taken)
}
