package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/report"
	"forebake/engine/rule"
	"forebake/engine/source"
	"forebake/rules"
)

// flaggedTrials gives a shipped pack's trials that expect a flag, the
// first of each rule: the kitchen and the tins, and the formula.
func flaggedTrials(t *testing.T, name string) map[string][2]string {
	t.Helper()
	var drafts []*rule.Draft
	for _, n := range []string{"figures", name} {
		text, err := fs.ReadFile(rules.Files, n+".hcl")
		if err != nil {
			t.Fatal(err)
		}
		o := rule.Options{
			Trials:  true,
			Formula: formula.Options{Larder: larder.New()},
			Version: engine.Version,
		}
		drafts = append(drafts, rule.Open(n, []*source.File{source.New(n+".hcl", text)}, o))
	}
	pack, problems := drafts[1].Read(rule.Figures(drafts))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	out := map[string][2]string{}
	for _, trial := range pack.Trials {
		if _, has := out[trial.Rule]; has || !flags(trial.Expect) {
			continue
		}
		at := trial.Formula.Place
		body, _ := source.Parse(at.File)
		blocks := body.Blocks // of a case: the text of its trial alone
		for _, b := range blocks {
			if b.Type == "trial" && b.Range().Start.Byte <= at.Start &&
				at.Start < b.CloseBraceRange.End.Byte {
				blocks = b.Body.Blocks
				break
			}
		}
		var texts [2]string
		for _, b := range blocks {
			text := string(at.File.Text[b.TypeRange.Start.Byte:b.CloseBraceRange.End.Byte]) + "\n"
			if b.Type == "formula" {
				texts[1] = text
			} else {
				texts[0] += text
			}
		}
		out[trial.Rule] = texts
	}
	return out
}

// flags reports whether a trial expects its rule to flag, at
// whatever level.
func flags(expect string) bool {
	_, isLevel := finding.LevelNamed(expect)
	return expect == "flagged" || isLevel
}

// A waived food-safety finding stays visible in every output, whole,
// before all but the cautions, with who set it aside and why. Each rule
// is tried on its first trial that flags.
func TestWaivedFoodSafetyStaysVisible(t *testing.T) {
	pack, err := fs.ReadFile(rules.Files, "hygiene.hcl")
	if err != nil {
		t.Fatal(err)
	}
	named := regexp.MustCompile(`(?m)^rule "([^"]*)"`).FindAllStringSubmatch(string(pack), -1)
	trials := flaggedTrials(t, "hygiene")
	if len(named) < 15 {
		t.Fatalf("only %d rules found", len(named))
	}
	for _, m := range named {
		id := m[1]
		t.Run(id, func(t *testing.T) {
			trial, ok := trials[id]
			if !ok {
				t.Fatal("no trial that flags")
			}
			dir := t.TempDir()
			house := fmt.Sprintf(
				"house \"h\" {\n%s  packs = [\"hygiene\"]\n  waive %q {\n"+
					"    because = \"we keep our own records\"\n  }\n}\n",
				trial[0],
				id,
			)
			for name, text := range map[string]string{"f.hcl": trial[1], "house.hcl": house} {
				if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o666); err != nil {
					t.Fatal(err)
				}
			}
			t.Chdir(dir)
			printed := map[string]string{}
			for _, format := range report.FormatNames() {
				var out, errs bytes.Buffer
				status := run([]string{"check", "--as", format, "--color", "never", "f.hcl"},
					strings.NewReader(""), &out, &errs)
				if status == exitUnused {
					t.Fatalf("%s: %s", format, errs.String())
				}
				printed[format] = out.String()
				words := strings.Join(strings.Fields(out.String()), " ")
				for _, part := range []string{id, "we keep our own records", "house.hcl"} {
					if !strings.Contains(words, part) {
						t.Errorf("%s: no %q in\n%s", format, part, out.String())
					}
				}
			}
			asideInOrder(t, id, formulaName(trial[1]), printed)
			asideInJSON(t, id, printed["json"])
			asideInSARIF(t, id, printed["sarif"])
		})
	}
}

// formulaName is the name of the first formula of a text.
func formulaName(text string) string {
	_, rest, _ := strings.Cut(text, `formula "`)
	name, _, _ := strings.Cut(rest, `"`)
	return name
}

// asideInOrder holds the place of the waived finding in formats that
// are read from the top.
func asideInOrder(t *testing.T, rule, formula string, printed map[string]string) {
	t.Helper()
	inOrder := func(text string, parts ...string) {
		t.Helper()
		at := 0
		for _, part := range parts {
			i := strings.Index(text[at:], part)
			if i < 0 {
				t.Fatalf("%q is not there, or too early, in\n%s", part, text)
			}
			at += i + len(part)
		}
	}
	inOrder(
		printed["text"],
		"Cautions",
		"\n! ",
		"Food safety, set aside by the house",
		"we keep our own records",
		"Rule: "+rule,
		formula+"  (f.hcl)",
		"waived.",
	)
	inOrder(
		printed["markdown"],
		"## Cautions",
		"## Food safety, set aside by the house",
		"- **waived ",
		"Why: ",
		"Set aside at house.hcl:",
		"because we keep our own records",
		"Rule: `"+rule+"`",
		"## "+formula,
		"waived.",
	)
	ok, _ := regexp.MatchString(`(?m)^f\.hcl:\d+:\d+: waived (stop|risk|note): .* \[`+rule+
		`\] \(because we keep our own records, house\.hcl:\d+\)$`, printed["lines"])
	if !ok {
		t.Errorf("not among the lines:\n%s", printed["lines"])
	}
}

func asideInJSON(t *testing.T, rule, printed string) {
	t.Helper()
	var got struct {
		Cautions []any
		Findings []struct {
			Rule, Answer string
			Safety       bool `json:"food_safety"`
			Waived       *struct{ Because, By string }
		}
		Totals struct{ Waived int }
	}
	if err := json.Unmarshal([]byte(printed), &got); err != nil {
		t.Fatal(err)
	}
	seen := false
	for _, f := range got.Findings {
		seen = seen ||
			f.Rule == rule && f.Answer == "waived" && f.Safety && f.Waived != nil &&
				f.Waived.Because == "we keep our own records" &&
				strings.HasPrefix(f.Waived.By, "house.hcl:")
	}
	if !seen || got.Totals.Waived == 0 || len(got.Cautions) == 0 {
		t.Errorf("not in the JSON: %+v", got)
	}
}

// asideInSARIF holds that the finding appears twice: suppressed with
// its reason, and open, since sites hide what is suppressed.
func asideInSARIF(t *testing.T, rule, printed string) {
	t.Helper()
	hidden, open := false, false
	for _, r := range readSARIF(t, printed).Results {
		switch {
		case r.RuleID == rule && len(r.Suppressions) == 1:
			hidden = hidden ||
				r.Suppressions[0].Kind == "external" &&
					strings.HasPrefix(
						r.Suppressions[0].Justification,
						"we keep our own records, house.hcl:",
					)
		case r.RuleID == "food-safety/set-aside":
			open = open ||
				r.Level == "warning" && len(r.Suppressions) == 0 &&
					strings.Contains(r.Message.Text, rule+": ") &&
					strings.Contains(r.Message.Text, "because we keep our own records")
		}
	}
	if !hidden || !open {
		t.Errorf("not in the SARIF: suppressed %v, in the open %v", hidden, open)
	}
}
