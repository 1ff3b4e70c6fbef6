package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"forebake/engine/report"
)

// What the tests look at in a SARIF log.
type (
	sarifRegion  struct{ StartLine, StartColumn, EndLine, EndColumn int }
	sarifMessage struct{ Text string }
	sarifPlace   struct {
		PhysicalLocation *struct {
			ArtifactLocation struct{ URI string }
			Region           sarifRegion
		}
	}
	sarifResult struct {
		RuleID              string
		RuleIndex           int
		Kind, Level         string
		Message             sarifMessage
		Locations           []sarifPlace
		PartialFingerprints map[string]string
		Suppressions        []struct{ Kind, Status, Justification string }
		Properties          struct{ Answer string }
	}
	sarifRun struct {
		ColumnKind string
		Properties struct {
			Cautions []any
			Totals   struct{ Formulas, Rules, Stop, Risk, Note, Unsure, Waived, Backlog int }
		}
		Tool struct {
			Driver struct {
				Rules []struct {
					ID                   string
					Help                 struct{ Text, Markdown string }
					DefaultConfiguration struct{ Level string }
				}
			}
		}
		Invocations []struct {
			ExecutionSuccessful        bool
			ToolExecutionNotifications []struct{ Message sarifMessage }
		}
		Results []sarifResult
	}
)

// sarifSchema is read once, by its place in the project: tests
// change folders.
var sarifSchema = sync.OnceValue(func() *jsonschema.Schema {
	_, here, _, _ := runtime.Caller(0)
	f, err := os.Open(
		filepath.Join(filepath.Dir(here), "../../testdata/sarif/sarif-schema-2.1.0.json"),
	)
	if err != nil {
		panic(err)
	}
	defer f.Close()
	doc, err := jsonschema.UnmarshalJSON(f)
	if err != nil {
		panic(err)
	}
	c := jsonschema.NewCompiler()
	c.AssertFormat() // uri-reference, uri, date-time
	if err := c.AddResource("sarif.json", doc); err != nil {
		panic(err)
	}
	return c.MustCompile("sarif.json")
})

// readSARIF holds a log to the published schema, and to what the schema
// cannot say.
func readSARIF(t *testing.T, text string) sarifRun {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	if err := sarifSchema().Validate(doc); err != nil {
		t.Fatalf("not valid by the schema: %v", err)
	}
	if bad := unclean(text); bad != "" {
		t.Error(bad)
	}
	// Decoded texts are shown on screens too.
	var walk func(v any)
	walk = func(v any) {
		switch x := v.(type) {
		case map[string]any:
			for _, y := range x {
				walk(y)
			}
		case []any:
			for _, y := range x {
				walk(y)
			}
		case string:
			if bad := unclean(x); bad != "" {
				t.Error(bad)
			}
		}
	}
	walk(doc)
	var log struct{ Runs []sarifRun }
	if err := json.Unmarshal([]byte(text), &log); err != nil {
		t.Fatal(err)
	}
	r := log.Runs[0]
	if len(log.Runs) != 1 || r.ColumnKind != "utf16CodeUnits" {
		t.Errorf("%d runs, columns in %q", len(log.Runs), r.ColumnKind)
	}
	rules := r.Tool.Driver.Rules
	for i, rule := range rules {
		for _, other := range rules[:i] {
			if other.ID == rule.ID {
				t.Errorf("two descriptors of %s", rule.ID)
			}
		}
		if strings.Contains(rule.Help.Markdown, "<") {
			t.Errorf("%s: HTML in the help: %s", rule.ID, rule.Help.Markdown)
		}
		if rule.Help.Text == "" || rule.Help.Markdown == "" ||
			rule.DefaultConfiguration.Level == "" {
			t.Errorf("%s: no help or no level: %+v", rule.ID, rule)
		}
	}
	prints := map[string]bool{}
	for i, one := range r.Results {
		if one.RuleIndex < 0 || one.RuleIndex >= len(rules) ||
			rules[one.RuleIndex].ID != one.RuleID {
			t.Errorf("result %d: rule %s is not at %d", i, one.RuleID, one.RuleIndex)
		}
		if (one.Kind != "fail") != (one.Level == "none") ||
			one.Properties.Answer != "waived" &&
				(one.Kind == "open") != slices.Contains([]string{"unsure", "assumed"},
					one.Properties.Answer) {
			t.Errorf(
				"result %d is %s: kind %s, level %s",
				i,
				one.Properties.Answer,
				one.Kind,
				one.Level,
			)
		}
		if one.Suppressions == nil ||
			(len(one.Suppressions) == 1) != (one.Properties.Answer == "waived") {
			t.Errorf("result %d is %s: suppressions %v", i, one.Properties.Answer, one.Suppressions)
		}
		print := one.PartialFingerprints["forebake/v1"]
		if print == "" || prints[print] {
			t.Errorf("result %d: fingerprint %q is missing or stands twice", i, print)
		}
		prints[print] = true
		if len(one.Locations) != 1 || one.Locations[0].PhysicalLocation == nil {
			t.Errorf("result %d has no place", i)
			continue
		}
		g := one.Locations[0].PhysicalLocation.Region
		if g.StartLine < 1 || g.StartColumn < 1 || g.EndLine < g.StartLine ||
			g.EndLine == g.StartLine && g.EndColumn < g.StartColumn {
			t.Errorf("result %d: region %+v", i, g)
		}
	}
	return r
}

// folder writes files into a new folder and goes there.
func folder(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	if err := noHouseAbove(dir); err != nil {
		t.Fatal(err)
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
	t.Chdir(dir)
	return dir
}

// answered runs the program on usable input and gives its print.
func answered(t *testing.T, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if status := run(args, strings.NewReader(""), &out, &errs); status == exitUnused {
		t.Fatalf("%s: %s", args, errs.String())
	}
	return out.String()
}

func TestSARIFOfTheDemoFormulas(t *testing.T) {
	t.Chdir("../..")
	r := readSARIF(t, answered(t, "check", "--as", "sarif", "formulas"))
	if len(r.Tool.Driver.Rules) < r.Properties.Totals.Rules || len(r.Results) < 50 {
		t.Errorf("%d descriptors, %d results", len(r.Tool.Driver.Rules), len(r.Results))
	}
}

// The log holds all that a house sets aside, loosens and leaves out, on
// formulas with odd names.
func TestSARIFOfAHouse(t *testing.T) {
	folder(t, map[string]string{
		"odd: näme/a b#%.hcl": strings.Replace(
			cautious,
			"Custard doughnuts",
			"A {0} [link](http://x.example) \u202e<b>",
			1,
		),
		"b.hcl":             cautious,
		"house-rules/c.hcl": ownSafety,
		"house.hcl": `house "h" {
  packs = ["balance", "./house-rules"]
  set "dairy-warm" {
    limits  = { cold_c = 8 }
    because = "we are quick"
  }
  waive "dairy-warm" {
    because = "the {dairy} delivers [here](http://x.example)"
    formula = "Custard*"
  }
  waive "salt-high" { because = "tasted" }
}
`})
	r := readSARIF(t, answered(t, "check", "--as", "sarif", "."))
	seen := map[string]int{}
	for _, one := range r.Results {
		seen[one.RuleID]++
		uri := one.Locations[0].PhysicalLocation.ArtifactLocation.URI
		if uri != "b.hcl" && uri != "house.hcl" && uri != "odd%3A%20n%C3%A4me/a%20b%23%25.hcl" {
			t.Errorf("the address %s", uri)
		}
		if strings.Contains(one.Message.Text, "](") ||
			strings.Contains(strings.ReplaceAll(one.Message.Text, "{{", ""), "{") {
			t.Errorf("a link or a placeholder in %q", one.Message.Text)
		}
	}
	for _, id := range []string{"food-safety/unchecked", "food-safety/loosened",
		"food-safety/set-aside", "dairy-warm", "waiver-idle"} {
		if seen[id] == 0 {
			t.Errorf("no result of %s in %v", id, seen)
		}
	}
}

// Nothing found and nothing to caution of is a log too; one of a
// formula that was never baked has no findings.
func TestSARIFOfNothing(t *testing.T) {
	folder(
		t,
		map[string]string{
			"f.hcl": "formula \"Syrup\" {\n  syrup \"s\" {\n" +
				"    ingredients = { \"sugar\" = \"100 g\", \"water\" = \"100 g\" }\n  }\n}\n",
			"house.hcl": "house \"h\" { packs = [\"yeast\"] }\n",
		},
	)
	readSARIF(t, answered(t, "check", "--as", "sarif", "f.hcl"))
}

// An unusable file has no result, so the log itself says that the run
// is not whole.
func TestSARIFOfABrokenFile(t *testing.T) {
	folder(
		t,
		map[string]string{
			"a.hcl": cautious,
			"b.hcl": "formula \"b\" {\n" +
				"  dough \"d\" { ingredients = { \"bread flour\" = 12 } }\n}\n",
		},
	)
	var out, errs bytes.Buffer
	args := []string{"check", "--as", "sarif", "."}
	if status := run(args, strings.NewReader(""), &out, &errs); status != exitUnused {
		t.Errorf("status %d", status)
	}
	r := readSARIF(t, out.String()).Invocations[0]
	if n := r.ToolExecutionNotifications; r.ExecutionSuccessful || len(n) != 2 ||
		!strings.Contains(n[0].Message.Text, "has no unit") ||
		!strings.HasPrefix(n[1].Message.Text, "Assumed where nothing is written: ") {
		t.Errorf("%+v", r)
	}
}

// Columns are UTF-16 code units: one for an accented letter, one for a
// combining mark, two for an emoji. The finding is on the milk.
func TestSARIFColumns(t *testing.T) {
	line := "  dough \"x\" {\n    ingredients = { /* \u00e9 e\u0301 \U0001F950 */ " +
		"\"bread flour\" = \"1 kg\", \"instant yeast\" = \"10 g\", \"salt\" = \"5 g\", " +
		"\"whole milk\" = { amount = \"600 g\", temp = \"9 C\" } }\n  }\n"
	dir := folder(
		t,
		map[string]string{
			"house-rules/c.hcl": ownSafety,
			"house.hcl":         "house \"h\" { packs = [\"./house-rules\"] }\n",
			"f.hcl":             "formula \"f\" {\n" + line + "}\n",
		},
	)
	find := func() (at sarifRegion) {
		for _, one := range readSARIF(t, answered(t, "check", "--as", "sarif", "f.hcl")).Results {
			if one.RuleID == "dairy-warm" {
				return one.Locations[0].PhysicalLocation.Region
			}
		}
		t.Fatal("no finding")
		return at
	}
	text := strings.Split(line, "\n")[1]
	before := text[:strings.Index(text, "whole milk")]
	units := 0
	for _, r := range before {
		units++
		if r > 0xffff {
			units++
		}
	}
	got := find()
	if got.StartLine != 3 || got.EndLine != 3 ||
		got.EndColumn-got.StartColumn < len("whole milk") ||
		got.StartColumn != units+1 && got.StartColumn != units {
		t.Errorf("the region is %+v; the name begins after %d UTF-16 units", got, units)
	}
	// In bare letters the finding is one unit further left, for the
	// emoji alone: letter for letter all else is one unit.
	bare := strings.NewReplacer("\u00e9", "e", "\u0301", "x", "\U0001F950", "y").
		Replace("formula \"f\" {\n" + line + "}\n")
	if err := os.WriteFile(filepath.Join(dir, "f.hcl"), []byte(bare), 0o666); err != nil {
		t.Fatal(err)
	}
	if plain := find(); plain.StartColumn != got.StartColumn-1 {
		t.Errorf(
			"column %d without the emoji's second unit, %d with it",
			plain.StartColumn,
			got.StartColumn,
		)
	}
}

// Fingerprints stay when lines move, the file is renamed, or another
// formula is inserted before.
func TestSARIFFingerprintsSurvive(t *testing.T) {
	prints := func(file string) map[string]bool {
		out := map[string]bool{}
		for _, one := range readSARIF(t, answered(t, "check", "--as", "sarif", file)).Results {
			out[one.RuleID+" "+one.PartialFingerprints["forebake/v1"]] = true
		}
		return out
	}
	dir := folder(t, map[string]string{"a.hcl": cautious})
	before := prints("a.hcl")
	if len(before) < 10 {
		t.Fatalf("only %d", len(before))
	}
	moved := "# a line\n\n" + strings.ReplaceAll(
		cautious,
		"    steps = [",
		"\n    # moved\n    steps = [",
	)
	if err := os.WriteFile(filepath.Join(dir, "z.hcl"), []byte(moved), 0o666); err != nil {
		t.Fatal(err)
	}
	if after := prints("z.hcl"); !reflect.DeepEqual(before, after) {
		t.Errorf("the fingerprints differ:\n%v\n%v", before, after)
	}
	other := strings.Replace(cautious, "Custard doughnuts", "Another", 1)
	if err := os.WriteFile(filepath.Join(dir, "z.hcl"), []byte(other+moved), 0o666); err != nil {
		t.Fatal(err)
	}
	after := prints("z.hcl")
	for p := range before {
		if !after[p] {
			t.Errorf("%s is gone", p)
		}
	}
}

// A run's text, SARIF and Markdown give the same totals, to which the
// log's results add up. All are the same bytes for any number of
// workers and any order of files.
func TestOutputsAgree(t *testing.T) {
	files := map[string]string{
		"house.hcl": "house \"h\" {\n  waive \"salt-low\" { because = \"tasted\" }\n}\n",
	}
	var forth, back []string
	for i, salt := range []string{"9 g", "?", "30 g", "18 g"} {
		name := fmt.Sprintf("%d.hcl", i)
		named := strings.ReplaceAll(cautious, "Custard doughnuts", "Doughnuts "+salt)
		files[name] = strings.ReplaceAll(named, `"9 g"`, `"`+salt+`"`)
		forth, back = append(forth, name), append([]string{name}, back...)
	}
	dir := folder(t, files)
	formats := report.FormatNames()
	printed := func(workers string, names []string) string {
		args := []string{"check", "--workers", workers}
		for _, format := range formats {
			args = append(args, "--as", format+":out."+format)
		}
		all := answered(t, append(args, names...)...)
		for _, format := range formats {
			text, err := os.ReadFile(filepath.Join(dir, "out."+format))
			if err != nil {
				t.Fatal(err)
			}
			all += "\n" + string(text)
		}
		return all
	}
	want := printed("1", forth)
	for _, workers := range []string{"1", "2", "8"} {
		if printed(workers, back) != want {
			t.Errorf("other bytes with %s workers and the files shuffled", workers)
		}
	}
	last := func(format string) string {
		lines := strings.Split(strings.TrimSpace(answered(t, "check", "--as", format, ".")), "\n")
		return lines[len(lines)-1]
	}
	text := last("text")
	if got := last("markdown"); got != text {
		t.Errorf("markdown ends %q, text %q", got, text)
	}
	r := readSARIF(t, answered(t, "check", "--as", "sarif", "."))
	s := r.Properties.Totals
	got := fmt.Sprintf(
		"%d formulas, %d rules: %d stop, %d risk, %d note, %d unsure, %d waived.",
		s.Formulas, s.Rules, s.Stop, s.Risk, s.Note, s.Unsure, s.Waived)
	if got != text {
		t.Errorf("sarif gives %q, text %q", got, text)
	}
	count := map[string]int{}
	for _, one := range r.Results {
		if one.Properties.Answer == "flagged" {
			count[one.Level]++
		} else {
			count[one.Properties.Answer]++
		}
	}
	if count["error"] != s.Stop || count["warning"] != s.Risk || count["note"] != s.Note ||
		count["unsure"] != s.Unsure ||
		count["waived"] != s.Waived ||
		count["caution"] != s.Formulas {
		t.Errorf("the results add up to %v, the totals are %+v", count, s)
	}
}

// Several outputs of one run; a report that cannot be written whole
// leaves the old file.
func TestOutputFiles(t *testing.T) {
	dir := folder(t, map[string]string{"a.hcl": cautious})
	text := answered(
		t,
		"check",
		"--as",
		"text",
		"--as",
		"sarif:out.sarif",
		"--as",
		"markdown:out.md",
		"a.hcl",
	)
	if !strings.HasPrefix(text, "Cautions (whole") {
		t.Errorf("no text on the screen: %s", text)
	}
	for name, format := range map[string]string{"out.sarif": "sarif", "out.md": "markdown"} {
		got, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		if want := answered(t, "check", "--as", format, "a.hcl"); string(got) != want {
			t.Errorf("%s is not what --as %s prints", name, format)
		}
	}
	var out, errs bytes.Buffer
	args := []string{"check", "--as", "sarif:nowhere/out.sarif", "a.hcl"}
	if status := run(args, strings.NewReader(""), &out, &errs); status != exitUnused ||
		!strings.Contains(errs.String(), "nowhere") {
		t.Errorf("status %d, %s", status, errs.String())
	}
	left, err := os.ReadDir(dir)
	if err != nil || len(left) != 3 {
		t.Errorf("the folder holds %v (%v)", left, err)
	}
}
