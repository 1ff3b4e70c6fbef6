package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// marked is a run with one of everything that a report must not leave
// out. Each text holds its own mark.
func marked() *finding.Run {
	file := source.New("buns.hcl", []byte("formula \"Buns\" {\n}\n"))
	house := source.New("house.hcl", []byte("house \"h\" {\n}\n"))
	at, by := source.Place{
		File:  file,
		Start: 8,
		End:   14,
	}, source.Place{
		File:  house,
		Start: 6,
		End:   9,
	}
	broken := source.Place{File: source.New("broken.hcl", []byte("formula\n")), Start: 0, End: 7}
	found := func(rule string, answer finding.Answer, safety bool) *finding.Finding {
		return &finding.Finding{
			Rule:    rule,
			Pack:    "p",
			Level:   finding.Risk,
			Answer:  answer,
			Formula: "Buns",
			Subject: "dough",
			Place:   at,
			Safety:  safety,
			Text:    "text of " + rule,
			Why:     "why of " + rule,
			Source:  "source of " + rule,
			Reason:  "reason of " + rule,
			Because: "because of " + rule,
			By:      by,
		}
	}
	run := &finding.Run{
		Version: "0.1.0",
		Cautions: []*finding.Caution{
			{
				Kind:    "raw",
				Text:    "text of the caution.",
				Detail:  "detail of the caution",
				Source:  "source of the caution",
				Formula: "Buns",
				Place:   at,
			},
		},
		Formulas: []finding.Formula{{Name: "Buns", Place: at}, {Name: "Clear buns", Place: at}},
		Problems: source.Problems{
			{Place: broken, Text: "text of the broken file"},
			{Text: "nowhere.hcl: text of the missing file"},
		},
		Unchecked: []finding.Unchecked{{Pack: "pack-left-out", Place: by}},
		Loosened: []finding.Loosened{
			{
				Rule:    "loosened-rule",
				Pack:    "p",
				What:    "limit a",
				From:    "1 h",
				To:      "2 h",
				Because: "because of the loosened",
				Place:   by,
			},
		},
		Assumed: []finding.Assumptions{{File: "a.hcl", Formula: "mark-assumed", Line: 1,
			List: []finding.Assumption{{What: "in the fridge", Of: "chill", Line: 2}}}},
		Notices: []string{"text of the notice"},
		Findings: []*finding.Finding{
			found("flagged-rule", finding.Flagged, false),
			found("unsure-rule", finding.Unsure, false),
			found("aside-rule", finding.Waived, true),
		},
		Totals: finding.Totals{
			Formulas: 1201,
			Rules:    1202,
			Stop:     1203,
			Risk:     1204,
			Note:     1205,
			Unsure:   1206,
			Waived:   1207,
			Backlog:  1208,
			Unread:   1209,
		},
	}
	run.Findings[1].Text = "unsure-rule cannot be answered: reason of unsure-rule"
	return run
}

// parts are a run's parts, each with what every report says of it.
var parts = map[string][]string{
	"caution": {"text of the caution.", "detail of the caution"},
	"unread": {
		"broken.hcl",
		"text of the broken file",
		"nowhere.hcl: text of the missing file",
	},
	"set aside": {"text of aside-rule", "because of aside-rule", "house.hcl"},
	"unchecked": {"pack-left-out", "house.hcl"},
	"loosened": {
		"loosened-rule",
		"limit a",
		"1 h",
		"2 h",
		"because of the loosened",
		"house.hcl",
	},
	"finding": {
		"text of flagged-rule",
		"flagged-rule",
		"unsure-rule",
		"eason of unsure-rule",
		"buns.hcl",
	},
	"notice":     {"text of the notice"},
	"the totals": {"1201", "1202", "1203", "1204", "1205", "1206", "1207", "1208", "1209"},
}

// read gives a report as its reader sees it: long lines joined, JSON
// texts decoded.
func read(t *testing.T, printed string) string {
	t.Helper()
	if strings.HasPrefix(printed, "{") {
		var v any
		if err := json.Unmarshal([]byte(printed), &v); err != nil {
			t.Fatal(err)
		}
		return fmt.Sprint(v)
	}
	return strings.NewReplacer(`\-`, "-", `\_`, "_").
		Replace(strings.Join(strings.Fields(printed), " "))
}

func inFormat(t *testing.T, f Format, run *finding.Run) string {
	t.Helper()
	var out bytes.Buffer
	if err := Write(&out, f, run, Options{}); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// Every format prints every part of a run, the cautions before all else
// about the formulas. A new format is tested by its row in Formats.
func TestEveryFormatPrintsEveryPart(t *testing.T) {
	for _, f := range Formats {
		t.Run(f.Name, func(t *testing.T) {
			text := read(t, inFormat(t, f, marked()))
			for part, marks := range parts {
				for _, mark := range marks {
					if !strings.Contains(text, mark) {
						t.Errorf("%s: no %q in\n%s", part, mark, text)
					}
				}
			}
			printed := read(t, inFormat(t, f, marked()))
			if strings.HasPrefix(inFormat(t, f, marked()), "{") {
				printed = inFormat(t, f, marked())
			}
			caution := strings.Index(printed, "text of the caution")
			for _, mark := range []string{"text of flagged-rule", "because of aside-rule",
				"because of the loosened", "text of the broken file"} {
				if i := strings.Index(printed, mark); i < caution {
					t.Errorf("%q stands before the caution", mark)
				}
			}
		})
	}
}

// A report without one part of a run would be the same without that
// part: so each part is taken out of the run, and every format must
// show it.
func TestEveryFormatDependsOnEveryPart(t *testing.T) {
	without := map[string]func(*finding.Run){
		"Version":  nil, // text, lines and Markdown are read beside the program
		"Formulas": nil, // the totals count them
		"Cards":    nil, // only SARIF describes rules
		"House":    nil, // only text names the flag

		"Cautions":  func(r *finding.Run) { r.Cautions = nil },
		"Findings":  func(r *finding.Run) { r.Findings = r.Findings[1:] },
		"Problems":  func(r *finding.Run) { r.Problems = nil },
		"Loosened":  func(r *finding.Run) { r.Loosened = nil },
		"Unchecked": func(r *finding.Run) { r.Unchecked = nil },
		"Notices":   func(r *finding.Run) { r.Notices = nil },
		"Assumed":   func(r *finding.Run) { r.Assumed = nil },
		"Totals":    func(r *finding.Run) { r.Totals.Unread = 0 },
	}
	for i := range reflect.TypeFor[finding.Run]().NumField() {
		name := reflect.TypeFor[finding.Run]().Field(i).Name
		take, known := without[name]
		if !known {
			t.Errorf("finding.Run has a part %s, and this test does not say who prints it", name)
		}
		if take == nil {
			continue
		}
		for _, f := range Formats {
			run := marked()
			take(run)
			if f.Name == "lines" && name == "Assumed" {
				continue // an editor jumps from line to line, and what is assumed has none
			}
			if inFormat(t, f, run) == inFormat(t, f, marked()) {
				t.Errorf("%s prints the same with and without %s", f.Name, name)
			}
		}
	}
}

// Names are found, and stand in order; no two formats share one.
func TestFormatNames(t *testing.T) {
	for i, f := range Formats {
		if found, ok := FormatNamed(f.Name); !ok || found.Name != f.Name || f.Suffix == "" {
			t.Errorf("%q is found as %q, %v; its files end in %q", f.Name, found.Name, ok, f.Suffix)
		}
		if i > 0 && Formats[i-1].Name >= f.Name {
			t.Errorf("%s stands after %s", f.Name, Formats[i-1].Name)
		}
	}
	if _, ok := FormatNamed("txt"); ok {
		t.Error("a format that is none is found")
	}
}
