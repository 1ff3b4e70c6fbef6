package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/report"
)

// A kitchen's dangers: raw flour and egg, a custard, nuts, hot oil.
const cautious = `formula "Custard doughnuts" {
  dough "doughnut dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = { amount = "400 g", temp = "9 C" }
      "egg"             = "3 pieces"
      "instant yeast"   = "12 g"
      "sugar"           = "100 g"
      "salt"            = "9 g"
      "unsalted butter" = "120 g"
    }
    steps = [
      { mix = "10 min", to = "26 C" },
      { rest = "1 h", at = "room" },
      { shape = "balls", pieces = 24 },
      { proof = "1 h", at = "28 C" },
      { cook = "3 min", at = "180 C", by = "frying" },
      { fill = "custard" },
    ]
  }
  filling "custard" {
    ingredients = {
      "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g", "corn starch" = "40 g"
      "ground hazelnuts" = "?"
    }
    steps = [
      { cook = "6 min", to = "85 C", by = "stirring" },
      { cool = "3 h", at = "room", as = "bowl" },
    ]
  }
}
`

const ownSafety = `about       = "what must stay cold"
food_safety = true

rule "dairy-warm" {
  on     = "ingredient"
  level  = "stop"
  limits = { cold_c = "kitchen.cold_hold_c" }
  when   = "ingredient.class == 'dairy' && ingredient.temp_c > limit.cold_c"
  say    = "{ingredient.temp_c} is over {limit.cold_c}."
  why    = "It may grow something."
  source = "common practice"
  doubt  = "flag"
}
`

// The cautions are the same bytes in every format, whatever house file
// and flags say: packs left out, levels, loosened limits, codes of law,
// a waiver of every rule.
func TestNothingRemovesACaution(t *testing.T) {
	e := engine.New()
	l, problems := e.Load(t.TempDir())
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	var everyWaiver, everySet strings.Builder
	for _, name := range append(l.Rules.Names(), "dairy-warm") {
		fmt.Fprintf(&everyWaiver, "  waive %q {\n    because = \"we know\"\n  }\n", name)
		fmt.Fprintf(
			&everySet,
			"  set %q {\n    level   = \"note\"\n    because = \"we know\"\n  }\n",
			name,
		)
	}
	all := "\"" + strings.Join(engine.ShippedPacks(), "\", \"") + "\", \"./house-rules\""
	houses := map[string]string{
		"empty":         "",
		"one pack":      "packs = [\"balance\"]\n",
		"own pack only": "packs = [\"./house-rules\"]\n",
		"fail at note":  "fail_at = \"note\"\n",
		"us":            "kitchen { code = \"us-food-code\" }\n",
		"uk":            "kitchen { code = \"uk\" }\n",
		"all waived":    "packs = [" + all + "]\n" + everyWaiver.String(),
		"all waived once": "packs = [" + all + "]\n" + strings.ReplaceAll(
			everyWaiver.String(),
			"\n  }",
			"\n    until   = \"2001-01-01\"\n  }",
		),
		"all lowered":      "packs = [" + all + "]\n" + everySet.String(),
		"waived and lower": "packs = [" + all + "]\n" + everySet.String() + everyWaiver.String(),
		"loosened": "packs = [" + all + "]\n  set \"dairy-warm\" {\n" +
			"    limits  = { cold_c = 30 }\n    because = \"we know\"\n  }\n",
	}
	flags := [][]string{
		nil,
		{"--fail-at", "stop"},
		{"--fail-at", "note"},
		{"--workers", "1"},
		{"--workers", "8"},
		{"--color", "always"},
		{"--all"},
	}
	formats := report.FormatNames()
	check := func(dir, format string, flags []string) string {
		t.Helper()
		t.Chdir(dir)
		var out, errs bytes.Buffer
		status := run(append([]string{"check", "--as", format}, flags...), strings.NewReader(""),
			&out, &errs)
		if status == exitUnused {
			t.Fatalf("%s %s: %s", format, flags, errs.String())
		}
		return out.String()
	}
	folder := func(house string, own bool) string {
		dir := t.TempDir()
		files := map[string]string{
			"a.hcl": cautious,
			"b.hcl": strings.Replace(
				cautious,
				"Custard doughnuts",
				"More doughnuts",
				1,
			),
			"house-rules/cold.hcl": ownSafety,
		}
		if own {
			files["house.hcl"] = "house \"h\" {\n  " + house + "}\n"
		}
		for name, text := range files {
			path := filepath.Join(dir, filepath.FromSlash(name))
			if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
				t.Fatal(err)
			}
		}
		if err := noHouseAbove(dir); err != nil {
			t.Fatal(err)
		}
		return dir
	}
	want := map[string]any{}
	bare := folder("", false)
	for _, format := range formats {
		want[format] = cautionsOf(t, format, check(bare, format, nil))
	}
	if n := len(want["json"].([]map[string]string)); n < 20 {
		t.Fatalf("only %d cautions to lose", n)
	}
	for format, marks := range map[string][]string{ // each kind of the formulas in its own words
		"text": {"! Raw dough: ", "! Raw egg: ", "! Allergens: egg, gluten, milk, nuts, wheat",
			"! Hot fat: ", "! Warm hours: ", "! Filling: ", "! Core: ", "! Local code: "},
		"lines": {"Raw dough, line 4: ", "Raw egg, line 6: ",
			"Allergens: egg, gluten, milk, nuts, wheat", "Hot fat, 180 C, line 17: ",
			"Warm hours, line 6: ", "Filling, line 21: ", "Core: ", "Local code: "},
	} {
		for _, mark := range marks {
			if !strings.Contains(want[format].(string), mark) {
				t.Errorf("%s: no %q in\n%s", format, mark, want[format])
			}
		}
	}
	whole := wholeCautions(t, bare)
	for name, house := range houses {
		dir := folder(house, true)
		if got := wholeCautions(t, dir); got != whole {
			t.Errorf("%s: the whole cautions are\n%s\nwithout the house\n%s", name, got, whole)
		}
		for _, format := range formats {
			var first string
			for i, f := range flags {
				printed := colourCode.ReplaceAllString(check(dir, format, f), "")
				if i == 0 {
					first = printed
				} else if slices.Contains(f, "--all") { // tells more of what is unsure
					got := cautionsOf(t, format, printed)
					if !reflect.DeepEqual(got, want[format]) {
						t.Errorf("%s, %s: with %s the cautions are\n%v", name, format, f, got)
					}
				} else if printed != first {
					t.Errorf("%s, %s: %s changes what is printed", name, format, f)
				}
			}
			if got := cautionsOf(t, format, first); !reflect.DeepEqual(got, want[format]) {
				t.Errorf(
					"%s, %s: the cautions are\n%v\nwithout the house\n%v",
					name,
					format,
					got,
					want[format],
				)
			}
		}
	}
}

// wholeCautions is what the verb cautions prints in a folder.
func wholeCautions(t *testing.T, dir string) string {
	t.Helper()
	t.Chdir(dir)
	var out, errs bytes.Buffer
	status := run([]string{"cautions"}, strings.NewReader(""), &out, &errs)
	if status != exitClear {
		t.Fatal(errs.String())
	}
	text := whoseLimits.ReplaceAllString(out.String(), "$1")
	if !strings.Contains(text, "Do not taste raw dough") || !strings.Contains(text, lastCaution) {
		t.Fatalf("not whole:\n%s", text)
	}
	return text
}

// whoseLimits is what the last caution says of the house's code: the
// only thing in a caution that a house can change.
var whoseLimits = regexp.MustCompile(
	`(?s)The\s+limits\s+used\s+here\s+are\s.*?(Source:|\n[^ ]|"[,}\n])`,
)

// cautionsOf takes the cautions out of what was printed, and holds that
// they come first. A format of unknown layout is read as words:
// everything up to the last caution.
func cautionsOf(t *testing.T, format, printed string) any {
	t.Helper()
	printed = whoseLimits.ReplaceAllString(printed, "$1")
	if read := cautionReaders[format]; read != nil {
		return read(t, printed)
	}
	words := strings.Join(strings.Fields(printed), " ")
	last := strings.LastIndex(words, lastCaution)
	if last < 0 {
		t.Fatalf("%s: no %q in\n%s", format, lastCaution, printed)
	}
	return words[:last]
}

// lastCaution ends the cautions of the formulas of these tests.
const lastCaution = "differ from place to place"

// cautionReaders take the cautions out of formats of known layout.
var cautionReaders = map[string]func(t *testing.T, printed string) any{
	"json": jsonCautions, "sarif": sarifCautions, "markdown": markdownCautions,
	"lines": lineCautions, "text": textCautions,
}

func jsonCautions(t *testing.T, printed string) any {
	var out struct{ Cautions []map[string]string }
	if err := json.Unmarshal([]byte(printed), &out); err != nil {
		t.Fatal(err)
	}
	if strings.Index(printed, `"cautions"`) > strings.Index(printed, `"findings"`) {
		t.Error("json: the cautions do not stand first")
	}
	return out.Cautions
}

func sarifCautions(t *testing.T, printed string) any {
	var out struct {
		Runs []struct {
			Properties struct{ Cautions []map[string]string }
			Results    []struct {
				RuleID, Level string
				Message       struct{ Text string }
				Suppressions  []any
			}
		}
	}
	if err := json.Unmarshal([]byte(printed), &out); err != nil {
		t.Fatal(err)
	}
	r := out.Runs[0]
	said := []any{r.Properties.Cautions}
	formulas := map[string]bool{}
	for _, c := range r.Properties.Cautions {
		formulas[c["formula"]] = true
	}
	for i, one := range r.Results {
		if i >= len(formulas) {
			if strings.HasPrefix(one.RuleID, "caution/") {
				t.Error("sarif: a caution stands below something else")
			}
			continue
		}
		if !strings.HasPrefix(one.RuleID, "caution/") || one.Level != "note" ||
			len(one.Suppressions) > 0 {
			t.Errorf("sarif: result %d is no caution: %+v", i, one)
		}
		for _, c := range r.Properties.Cautions {
			if i == 0 && c["formula"] == r.Properties.Cautions[0]["formula"] &&
				!strings.Contains(
					one.Message.Text,
					strings.ReplaceAll(strings.ReplaceAll(c["text"], "{", "{{"), "}", "}}"),
				) {
				t.Errorf("sarif: the result of the cautions does not hold %q", c["text"])
			}
		}
		said = append(said, one)
	}
	if strings.Index(printed, `"cautions"`) > strings.Index(printed, `"results"`) {
		t.Error("sarif: the cautions do not stand first")
	}
	return said
}

func markdownCautions(t *testing.T, printed string) any {
	head, rest, _ := strings.Cut(printed, "\n\n")
	if head != "## Cautions" {
		t.Fatalf("markdown: the cautions do not stand first:\n%s", printed)
	}
	list, _, _ := strings.Cut(rest, "\n\n")
	return list
}

func lineCautions(t *testing.T, printed string) any {
	var out strings.Builder
	lines := strings.SplitAfter(printed, "\n")
	for i, line := range lines {
		if !strings.Contains(line, ": caution: ") {
			if strings.Contains(strings.Join(lines[i:], ""), ": caution: ") {
				t.Error("lines: a caution stands below something else")
			}
			break
		}
		out.WriteString(line)
	}
	return out.String()
}

func textCautions(t *testing.T, printed string) any {
	list, _, _ := strings.Cut(printed, "\n\n")
	if !strings.HasPrefix(list, "Cautions (whole, with sources: forebake cautions)\n! ") {
		t.Fatalf("text: the cautions do not stand first:\n%s", printed)
	}
	return list
}

// Each shipped caution has a short line that fits 80 columns with a
// line number in it.
func TestShortCautionsFit(t *testing.T) {
	text, err := os.ReadFile("../../rules/cautions.hcl")
	if err != nil {
		t.Fatal(err)
	}
	shorts := regexp.MustCompile(`(?m)^  short  = "([^:"]+): ([^"]+)"$`).
		FindAllStringSubmatch(string(text), -1)
	if blocks := strings.Count(string(text), "\ncaution \""); blocks != len(shorts) || blocks < 16 {
		t.Fatalf("%d short lines for %d cautions", len(shorts), blocks)
	}
	for _, s := range shorts {
		line := "! " + s[1] + ", line 999: " + s[2]
		if strings.HasPrefix(s[1], "Core") || strings.HasPrefix(s[1], "Local") ||
			strings.HasPrefix(s[1], "Allergens") ||
			strings.HasPrefix(s[1], "Traces") ||
			strings.HasPrefix(s[1], "Wrapping") {
			line = "! " + s[1] + ": " + strings.ReplaceAll(
				s[2],
				"{formula.allergens_brief}",
				"egg, gluten, milk, nuts, sulphites, wheat",
			) // general: it marks no line
		}
		if len(line) > 80 {
			t.Errorf("%d columns: %s", len(line), line)
		}
	}
}
