package main

import (
	"os"
	"path/filepath"
	"testing"

	"forebake/.ci/outside"
)

// Every fault of the list can be planted: one change, and the file is
// still one that can be read.
func TestFaultsCanBePlanted(t *testing.T) {
	all, err := faults()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 90 {
		t.Errorf("%d faults; 90 are the least", len(all))
	}
	seen := map[string]bool{}
	for i, f := range all {
		if id := f.file + f.String(); seen[id] {
			t.Errorf("row %d (%s) stands twice", i+2, f)
		} else {
			seen[id] = true
		}
		text, err := os.ReadFile(filepath.Join("../..", f.file))
		if err != nil {
			t.Fatal(err)
		}
		p, err := plant(string(text), f)
		if err != nil {
			t.Errorf("row %d: %v", i+2, err)
			continue
		}
		if p.text == p.sound {
			t.Errorf("row %d (%s) changes nothing", i+2, f)
		}
		if _, err := outside.Parse(p.text); err != nil {
			t.Errorf("row %d (%s): %v", i+2, f, err)
		}
	}
}

func TestNews(t *testing.T) {
	f := func(rule, level, answer string) outside.Finding {
		return outside.Finding{Rule: rule, Level: level, Answer: answer, Subject: "s"}
	}
	sound := []outside.Finding{
		f("a", "note", "flagged"),
		f("b", "risk", "unsure"),
		f("c", "risk", "flagged"),
	}
	faulty := []outside.Finding{
		f("a", "risk", "flagged"),
		f("b", "risk", "flagged"),
		f("c", "risk", "flagged"),
		f("c", "risk", "flagged"),
		f("d", "risk", "unsure"),
	}
	got := news(sound, faulty)
	if len(got) != 3 || got[0].Rule != "a" || got[1].Rule != "b" || got[2].Rule != "c" {
		t.Errorf("new are %v", got)
	}
}
