package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"io/fs"
	"math/rand/v2"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

const scenarioDir = "../../testdata/scenarios"

// scenario is one row of scenarios.csv: a whole formula and what a
// food-safety check must say.
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
	want := []string{"file", "verdict", "class", "level", "about", "law", "basis", "why"}
	if !slices.Equal(rows[0], want) {
		t.Fatalf("columns %v, not %v", rows[0], want)
	}
	var out []scenario
	for _, r := range rows[1:] {
		if r[1] != "unsafe" && r[1] != "safe" {
			t.Errorf("%s: verdict %q is neither unsafe nor safe", r[0], r[1])
		}
		s := scenario{
			File:    r[0],
			Unsafe:  r[1] == "unsafe",
			Class:   r[2],
			Level:   r[3],
			Law:     r[5],
			Basis:   r[6],
			Because: r[7],
		}
		if r[4] != "" {
			s.About = strings.Split(strings.ToLower(r[4]), ";")
		}
		out = append(out, s)
	}
	return out
}

// TestScenarioList holds scenarios.csv and its files together: every
// formula has a row, every row names its law, and each side is large
// enough to mean something.
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
		if s.Law == "" || s.Because == "" ||
			!slices.Contains(
				[]string{"read", "quoted", "memory", "computed", "judgement"},
				s.Basis,
			) {
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

// TestScenarios runs every scenario through the whole program. An
// unsafe one must get a food-safety finding of its level or higher
// about the part or step at fault; rules are matched by their words,
// not their names. A safe one must get nothing above its level, and
// never a stop.
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
				return strings.Contains(strings.ToLower(f.Subject), word) ||
					strings.Contains(strings.ToLower(f.Text), word)
			})
			enough = enough || about && severity[f.Level] >= severity[s.Level]
		}
		switch {
		case s.Unsafe && refused == "" && enough:
			unsafe++
			caught++
		case s.Unsafe:
			unsafe++
			t.Errorf(
				"%s (%s): a %s or more is wanted about %s, since %s [%s, %s]; got %v%s",
				s.File,
				s.Class,
				s.Level,
				strings.Join(s.About, " or "),
				s.Because,
				s.Law,
				s.Basis,
				said,
				refused,
			)
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

// worst is the highest level of a food-safety finding in each file of a
// folder, except some rules'.
func worst(t *testing.T, dir, but string) map[string]string {
	t.Helper()
	var out, errs bytes.Buffer
	run([]string{"check", "--as", "json", dir}, strings.NewReader(""), &out, &errs)
	var report struct {
		Findings []struct {
			Level, Answer, File, Rule string
			Safety                    bool `json:"food_safety"`
		}
	}
	if err := json.Unmarshal(out.Bytes(), &report); err != nil {
		t.Fatalf("%v: %s", err, errs.String())
	}
	levels := map[string]string{}
	// a refused file clears nothing
	for _, line := range strings.Split(errs.String(), "\n") {
		if name, _, ok := strings.Cut(line, ".hcl:"); ok {
			if rel, err := filepath.Rel(dir, name+".hcl"); err == nil {
				levels[rel] = "stop"
			}
		}
	}
	for _, f := range report.Findings {
		rel, err := filepath.Rel(dir, f.File)
		if err != nil {
			t.Fatal(err)
		}
		if but != "" && strings.HasPrefix(f.Rule, but) {
			continue
		}
		if f.Safety && f.Answer == "flagged" && severity[f.Level] > severity[levels[rel]] {
			levels[rel] = f.Level
		}
	}
	return levels
}

// worsenings make a formula less safe by one figure of one line: the
// pattern's second group is the figure, and by makes it worse.
var worsenings = []struct {
	name string
	line *regexp.Regexp
	by   func(x float64) float64
}{
	{
		"longer",
		regexp.MustCompile(`(\{ (?:rest|hold|store|proof|temper) += ")(\d+)( (?:min|h|day)")`),
		func(x float64) float64 { return x * 1.5 },
	},
	{
		"warmer",
		regexp.MustCompile(`((?:rest|hold|store|proof|temper) .*at = ")([12]\d|3[0-3])( C")`),
		func(x float64) float64 { return x + 4 },
	},
	{"warmer cold", regexp.MustCompile(`((?:chill|store) .*at = ")(\d)( C")`),
		func(x float64) float64 { return x + 4 }},
	{"deeper", regexp.MustCompile(`((?:chill|cool) .*as = "(?:tray|slab) )(\d+)( mm")`),
		func(x float64) float64 { return x * 2 }},
	{"lower core", regexp.MustCompile(`(bake .*measured = ")(\d+)( C core")`),
		func(x float64) float64 { return x - 12 }},
	{"shorter bake", regexp.MustCompile(`(\{ bake += ")(\d+)( min", at = "\d+ C" \})`),
		func(x float64) float64 { return x / 2 }},
}

// aboutCores begins the names of rules on the middle of a bake.
const aboutCores = "core-"

// TestWorseNeverClears makes every scenario worse by random figures:
// warmer, longer, deeper, a lower core. No food-safety answer may
// become milder.
func TestWorseNeverClears(t *testing.T) {
	before := worst(t, scenarioDir, "")
	grown := worst(t, scenarioDir, aboutCores) // a warmer dough grows more, and is sooner baked
	random := rand.New(rand.NewPCG(13, 31))
	for round := range 12 {
		dir := t.TempDir()
		changed := map[string][]string{}
		err := filepath.WalkDir(scenarioDir, func(name string, e fs.DirEntry, err error) error {
			if err != nil || e.IsDir() || filepath.Ext(name) != ".hcl" {
				return err
			}
			rel, err := filepath.Rel(scenarioDir, name)
			if err != nil {
				return err
			}
			text, err := os.ReadFile(name)
			if err != nil {
				return err
			}
			if e.Name() != "house.hcl" {
				for range 1 + round%3 {
					lines := strings.Split(string(text), "\n")
					type place struct{ way, line int }
					var all []place
					for k, w := range worsenings {
						for i, line := range lines {
							if w.line.MatchString(line) {
								all = append(all, place{k, i})
							}
						}
					}
					if len(all) == 0 {
						continue
					}
					at := all[random.IntN(len(all))]
					w, i := worsenings[at.way], at.line
					m := w.line.FindStringSubmatchIndex(lines[i])
					x, err := strconv.ParseFloat(lines[i][m[4]:m[5]], 64)
					if err != nil {
						return err
					}
					lines[i] = lines[i][:m[4]] + strconv.FormatFloat(
						w.by(x),
						'f',
						-1,
						64,
					) + lines[i][m[5]:]
					changed[rel] = append(changed[rel], w.name+":"+lines[i])
					text = []byte(strings.Join(lines, "\n"))
				}
			}
			to := filepath.Join(dir, rel)
			if err := os.MkdirAll(filepath.Dir(to), 0o777); err != nil {
				return err
			}
			return os.WriteFile(to, text, 0o666)
		})
		if err != nil {
			t.Fatal(err)
		}
		after := worst(t, dir, "")
		if len(changed) < 60 {
			t.Fatalf("only %d scenarios were made worse", len(changed))
		}
		for rel, how := range changed {
			before := before
			if slices.ContainsFunc(how, func(s string) bool {
				return !strings.HasPrefix(s, "lower core") && !strings.HasPrefix(s, "shorter bake")
			}) {
				before = grown
			}
			if severity[after[rel]] < severity[before[rel]] {
				t.Errorf(
					"%s: %s became %q by %s",
					rel,
					before[rel],
					after[rel],
					strings.Join(how, "; "),
				)
			}
		}
	}
}
