package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

const scenarioDir = "../../testdata/scenarios"

// scenario is one row of scenarios.csv: a whole formula and what a food-safety check must say of it.
type scenario struct {
	File    string
	Unsafe  bool
	Class   string
	Level   string   // unsafe: the least level that catches it; safe: the most that may be said
	About   []string // unsafe: a finding counts when its subject or its text holds one of these
	Law     string   // the law or the study that decides
	Basis   string
	Because string
}

// severity orders the levels of findings; "none" is below all of them.
var severity = map[string]int{"none": 0, "note": 1, "risk": 2, "stop": 3}

func scenarios(t *testing.T) []scenario {
	t.Helper()
	file, err := os.Open(filepath.Join(scenarioDir, "scenarios.csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if want := []string{"file", "verdict", "class", "level", "about", "law", "basis", "why"}; !slices.Equal(rows[0], want) {
		t.Fatalf("columns %v, not %v", rows[0], want)
	}
	var out []scenario
	for _, r := range rows[1:] {
		if r[1] != "unsafe" && r[1] != "safe" {
			t.Errorf("%s: verdict %q is neither unsafe nor safe", r[0], r[1])
		}
		s := scenario{File: r[0], Unsafe: r[1] == "unsafe", Class: r[2], Level: r[3], Law: r[5], Basis: r[6], Because: r[7]}
		if r[4] != "" {
			s.About = strings.Split(strings.ToLower(r[4]), ";")
		}
		out = append(out, s)
	}
	return out
}

// TestScenarioList holds scenarios.csv and the files beside it together: every formula has its row, every row
// names its law, and each side is large enough to mean something.
func TestScenarioList(t *testing.T) {
	listed := map[string]bool{}
	unsafe, safe := 0, 0
	classes := map[string]int{}
	for _, s := range scenarios(t) {
		if listed[s.File] {
			t.Errorf("%s has two rows", s.File)
		}
		listed[s.File] = true
		if _, ok := severity[s.Level]; !ok || s.Unsafe && s.Level == "none" {
			t.Errorf("%s: level %q", s.File, s.Level)
		}
		if s.Law == "" || s.Because == "" || !slices.Contains([]string{"read", "quoted", "memory", "computed", "judgement"}, s.Basis) {
			t.Errorf("%s: law %q, basis %q, why %q", s.File, s.Law, s.Basis, s.Because)
		}
		if s.Unsafe {
			unsafe++
			class, _, _ := strings.Cut(s.Class, ";")
			classes[class]++
			if len(s.About) == 0 {
				t.Errorf("%s: nothing says what the finding must be about", s.File)
			}
		} else {
			safe++
		}
	}
	if unsafe < 40 || safe < 20 {
		t.Errorf("%d unsafe and %d safe scenarios; 40 and 20 are the least", unsafe, safe)
	}
	err := filepath.WalkDir(scenarioDir, func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || filepath.Ext(name) != ".hcl" || e.Name() == "house.hcl" {
			return err
		}
		rel, err := filepath.Rel(scenarioDir, name)
		if rel = filepath.ToSlash(rel); !listed[rel] {
			t.Errorf("%s has no row", rel)
		}
		delete(listed, rel)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	for file := range listed {
		t.Errorf("%s is in the list, and there is no such file", file)
	}
}

// TestScenarios runs every scenario through the whole program. An unsafe one must get a food-safety finding of its
// level or a higher one that speaks of the part or the step at fault; rules are asked for by what they say and not by
// their names. A safe one must get nothing above its level, and never a stop.
func TestScenarios(t *testing.T) {
	var out, errs bytes.Buffer
	run([]string{"check", "--as", "json", scenarioDir}, strings.NewReader(""), &out, &errs)
	var report struct {
		Findings []struct {
			Rule, Level, Answer, Subject, File, Text string
			Line                                     int
			Safety                                   bool `json:"food_safety"`
		}
		Totals struct{ Formulas int }
	}
	if err := json.Unmarshal(out.Bytes(), &report); err != nil {
		t.Fatalf("%v: %s", err, errs.String())
	}
	unsafe, caught, safe, passed := 0, 0, 0, 0
	for _, s := range scenarios(t) {
		name := path.Join(scenarioDir, s.File)
		refused := ""
		for _, line := range strings.Split(errs.String(), "\n") {
			if strings.HasPrefix(line, name+":") {
				refused = line
				break
			}
		}
		var said []string
		enough, worst := false, "none"
		for _, f := range report.Findings {
			if f.File != name || !f.Safety || f.Answer != "flagged" {
				continue
			}
			said = append(said, f.Level+" "+f.Rule+" at "+f.Subject)
			if severity[f.Level] > severity[worst] {
				worst = f.Level
			}
			about := slices.ContainsFunc(s.About, func(word string) bool {
				return strings.Contains(strings.ToLower(f.Subject), word) || strings.Contains(strings.ToLower(f.Text), word)
			})
			enough = enough || about && severity[f.Level] >= severity[s.Level]
		}
		switch {
		case s.Unsafe && refused == "" && enough:
			unsafe++
			caught++
		case s.Unsafe:
			unsafe++
			t.Errorf("%s (%s): a %s or more is wanted about %s, since %s [%s, %s]; got %v%s",
				s.File, s.Class, s.Level, strings.Join(s.About, " or "), s.Because, s.Law, s.Basis, said, refused)
		case refused == "" && severity[worst] <= severity[s.Level]:
			safe++
			passed++
		default:
			safe++
			t.Errorf("%s (%s): %s is the most that may be said, since %s [%s, %s]; got %v%s",
				s.File, s.Class, s.Level, s.Because, s.Law, s.Basis, said, refused)
		}
	}
	t.Logf("unsafe caught %d of %d, safe without stop %d of %d", caught, unsafe, passed, safe)
}
