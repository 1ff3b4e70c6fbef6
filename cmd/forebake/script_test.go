package main

import (
	"bytes"
	"cmp"
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"sync"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/rogpeppe/go-internal/testscript"

	"forebake/engine"
	"forebake/engine/house"
)

var update = flag.Bool(
	"update",
	false,
	"write what the program printed into the scripts and the broken files' texts",
)

func TestMain(m *testing.M) {
	os.Unsetenv("COLUMNS")
	testscript.Main(m, map[string]func(){"forebake": main})
}

// TestScripts runs the sessions of testdata/script, each in a folder of
// its own that nothing outside reaches.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "../../testdata/script",
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(e *testscript.Env) error {
			for name, n := range shippedCounts(t) {
				e.Setenv(name, strconv.Itoa(n))
			}
			return noHouseAbove(e.WorkDir)
		},
		Cmds: map[string]func(ts *testscript.TestScript, neg bool, args []string){
			"schema": schemaCommand,
			"gnu":    gnuCommand,
			"totals": totalsCommand,
			"clean":  cleanCommand,
			"status": statusCommand,
			"when":   whenCommand,
			"before": beforeCommand,
			"house":  houseCommand,
			"frames": framesCommand,
		},
	})
}

// shippedCounts are the numbers of shipped rules, trials and so on, by
// their names in scripts: '1 formula, '$RULES' rules'. RULES_balance
// are the rules of one pack.
var shippedCounts = func() func(t *testing.T) map[string]int {
	count := sync.OnceValues(func() (map[string]int, error) {
		e := engine.New()
		l, problems := e.Load(os.TempDir())
		if len(problems) > 0 {
			return nil, problems
		}
		trials, problems := e.Trials(os.TempDir(), nil)
		counts := map[string]int{
			"RULES":    len(l.Rules.Rules),
			"CAUTIONS": len(l.Rules.Cautions),
			"PACKS":    len(engine.ShippedPacks()),
			"TRIALS":   len(trials.Verdicts),
			"LIMITS":   trials.Limits,
		}
		for _, p := range l.Rules.Packs {
			counts["RULES_"+p.Name] = len(p.Rules)
		}
		return counts, problems.Err()
	})
	return func(t *testing.T) map[string]int {
		t.Helper()
		counts, err := count()
		if err != nil {
			t.Fatal(err)
		}
		return counts
	}
}()

// noHouseAbove refuses a test folder below a house file, which would
// change every answer.
func noHouseAbove(dir string) error {
	for dir = filepath.Dir(dir); ; dir = filepath.Dir(dir) {
		path := filepath.Join(dir, house.FileName)
		if _, err := os.Stat(path); err == nil {
			return fmt.Errorf(
				"%s stands above the test's folder; set TMPDIR to another place",
				path,
			)
		}
		if dir == filepath.Dir(dir) {
			return nil
		}
	}
}

// statusCommand runs forebake and holds its exit status: status 2 check
// nowhere.hcl. Like exec it leaves stdout and stderr for later lines.
func statusCommand(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: status N verb [argument ...]")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	err = ts.Exec("forebake", args[1:]...)
	got := 0
	if exited, ok := err.(interface{ ExitCode() int }); ok {
		got = exited.ExitCode()
	} else if err != nil {
		ts.Fatalf("forebake: %v", err)
	}
	if got != want {
		ts.Fatalf(
			"forebake %s: exit status %d, want %d\n%s",
			strings.Join(args[1:], " "),
			got,
			want,
			ts.ReadFile("stderr"),
		)
	}
	for _, name := range []string{"stdout", "stderr"} {
		if text := ts.ReadFile(name); strings.Contains(text, "goroutine ") ||
			strings.Contains(text, "panic:") {
			ts.Fatalf("a stack trace on %s:\n%s", name, text)
		}
	}
}

// whenCommand writes house-rules/mine.hcl with one rule on doughs and
// the given condition: when 'dough.salt_pct < 1'. The condition begins
// at column 13 of line 5.
func whenCommand(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: when CONDITION")
	}
	text := "rule \"mine\" {\n  on     = \"dough\"\n  level  = \"risk\"\n" +
		"  limits = { salt_pct = 1.4 }\n  when   = " + strconv.Quote(
		args[0],
	) +
		"\n  say    = \"Salt is {dough.salt_pct}.\"\n  why    = \"It tastes flat.\"\n" +
		"  source = \"common practice\"\n}\n"
	path := ts.MkAbs("house-rules/mine.hcl")
	ts.Check(os.MkdirAll(filepath.Dir(path), 0o777))
	ts.Check(os.WriteFile(path, []byte(text), 0o666))
}

// houseCommand writes house.hcl with the given text from line 2 on, a
// semicolon ending a line: house 'tin "loaf" {; inside = "300 x 100 x
// 100 mm"; }'.
func houseCommand(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: house SETTINGS")
	}
	ts.Check(
		os.WriteFile(
			ts.MkAbs("house.hcl"),
			[]byte("house \"h\" {\n"+strings.ReplaceAll(args[0], "; ", "\n")+"\n}\n"),
			0o666,
		),
	)
}

// beforeCommand holds the order of texts in a file, wherever its lines
// break: before stdout Cautions 'Milk buns'.
func beforeCommand(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 3 {
		ts.Fatalf("usage: before FILE text text [text ...]")
	}
	words := func(s string) string { return strings.Join(strings.Fields(s), " ") }
	rest := words(ts.ReadFile(args[0]))
	for _, text := range args[1:] {
		text = words(text)
		i := strings.Index(rest, text)
		if i < 0 {
			ts.Fatalf("%q does not stand in %s after what goes before it", text, args[0])
		}
		rest = rest[i+len(text):]
	}
}

// cleanCommand holds that nothing in the files could move a cursor,
// hide, or reorder what is read. "coloured" before them allows
// colour codes.
func cleanCommand(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) == 0 {
		ts.Fatalf("usage: clean [coloured] FILE ...")
	}
	for _, name := range args {
		if name == "coloured" {
			continue
		}
		text := ts.ReadFile(name)
		if args[0] == "coloured" {
			text = colourCode.ReplaceAllString(text, "")
		}
		if bad := unclean(text); bad != "" {
			ts.Fatalf("%s: %s", name, bad)
		}
	}
}

var colourCode = regexp.MustCompile("\x1b\\[[0-9;]*m")

// unclean finds the first character that a program must not print: a
// control character other than the line feed, a format character, a
// line or paragraph separator, or a byte that is not UTF-8.
func unclean(text string) string {
	for i, r := range text {
		_, size := utf8.DecodeRuneInString(text[i:])
		if r != '\n' &&
			(unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp) ||
				r == utf8.RuneError && size == 1) {
			return fmt.Sprintf("%U stands raw after %q", r, text[max(0, i-40):i])
		}
	}
	return ""
}

var (
	gnuLine = regexp.MustCompile(
		`^[^:\s][^:]*:[1-9]\d*:[1-9]\d*: (?:(caution): .*\S|unchecked: .*\S|unread: .*\S|(?:stop|` +
			`risk|note|unsure|waived|waived stop|waived risk|waived note|` +
			`loosened): .*\S \[[a-z0-9]+(?:-[a-z0-9]+)*\](?: \(because .*\S, \S+:\d+\))?)$`,
	)
	totalsLine = regexp.MustCompile(
		`^(?:forebake: )?(\d+) formulas?, (\d+) rules?: (\d+) stop, (\d+) risk, (\d+) note, ` +
			`(\d+) unsure, (\d+) waived(?:, \d+ in the backlog)?(?:, \d+ not read)?\.?$`,
	)
)

// gnuCommand holds that every line has the form that editors jump by,
// and that the last gives the totals.
func gnuCommand(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: gnu FILE")
	}
	lines := strings.Split(strings.TrimSuffix(ts.ReadFile(args[0]), "\n"), "\n")
	last := len(lines) - 1
	if !strings.HasPrefix(lines[last], "forebake: ") || totalsLine.FindString(lines[last]) == "" {
		ts.Fatalf("the last line is not that of the totals: %s", lines[last])
	}
	findings := false
	for i, line := range lines[:last] {
		match := gnuLine.FindStringSubmatch(line)
		if match == nil {
			ts.Fatalf("line %d is not \"file:line:column: level: text [rule]\": %s", i+1, line)
		}
		if match[1] == "caution" && findings {
			ts.Fatalf("line %d is a caution below a finding: %s", i+1, line)
		}
		findings = findings || match[1] != "caution"
	}
}

// totalsCommand holds that a run's text, lines and JSON give the same
// numbers, to which the findings of lines and JSON add up.
func totalsCommand(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: totals TEXT LINES JSON")
	}
	var numbers [2][]string
	for i, name := range args[:2] {
		lines := strings.Split(strings.TrimSpace(ts.ReadFile(name)), "\n")
		match := totalsLine.FindStringSubmatch(lines[len(lines)-1])
		if match == nil {
			ts.Fatalf("%s: the last line is not that of the totals: %s", name, lines[len(lines)-1])
		}
		numbers[i] = match[1:]
	}
	var run struct {
		Findings []struct{ Level, Answer string }
		Totals   struct{ Formulas, Rules, Stop, Risk, Note, Unsure, Waived int }
	}
	ts.Check(json.Unmarshal([]byte(ts.ReadFile(args[2])), &run))
	t := run.Totals
	want := fmt.Sprint([]int{t.Formulas, t.Rules, t.Stop, t.Risk, t.Note, t.Unsure, t.Waived})
	for i, name := range args[:2] {
		if got := fmt.Sprint(numbers[i]); got != want {
			ts.Fatalf("%s gives %s, and %s %s", name, got, args[2], want)
		}
	}
	counts, inLines := map[string]int{}, map[string]int{}
	for _, f := range run.Findings {
		if f.Answer == "flagged" {
			counts[f.Level]++
		} else {
			counts[f.Answer]++
		}
	}
	for _, word := range []string{"stop", "risk", "note", "unsure", "waived"} {
		inLines[word] = len(
			regexp.MustCompile(`(?m)^[^:]+:\d+:\d+: `+word+`(?: stop| risk| note)?: `).
				FindAllString(ts.ReadFile(args[1]), -1),
		)
	}
	for i, word := range []string{"stop", "risk", "note", "unsure", "waived"} {
		total, _ := strconv.Atoi(numbers[0][2+i])
		if counts[word] != total || inLines[word] != total {
			ts.Fatalf(
				"%s: %d in the totals, %d in the findings of %s, %d in those of %s",
				word,
				total,
				counts[word],
				args[2],
				inLines[word],
				args[1],
			)
		}
	}
}

// schemaCommand holds the JSON of check or facts to its schema: every
// key there, no other, each of its type.
func schemaCommand(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 || schemas[args[0]] == nil {
		ts.Fatalf("usage: schema check|facts FILE")
	}
	text := []byte(ts.ReadFile(args[1]))
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	var value any
	ts.Check(d.Decode(&value))
	if d.More() {
		ts.Fatalf("%s: more than one value", args[1])
	}
	faults := schemas[args[0]].check("", value)
	if args[0] == "check" {
		faults = append(faults, outOfOrder(text)...)
	}
	if len(faults) > 0 {
		ts.Fatalf("%s:\n%s", args[1], strings.Join(faults, "\n"))
	}
}

// outOfOrder holds that findings stand by file, line, column, level,
// rule, subject and text.
func outOfOrder(text []byte) (faults []string) {
	var run struct {
		Findings []struct {
			File                       string
			Line, Column               int
			Level, Rule, Subject, Text string
		}
	}
	if err := json.Unmarshal(text, &run); err != nil {
		return []string{err.Error()}
	}
	rank := map[string]int{"stop": 0, "risk": 1, "note": 2}
	for i := 1; i < len(run.Findings); i++ {
		a, b := run.Findings[i-1], run.Findings[i]
		if cmp.Or(
			cmp.Compare(a.File, b.File),
			cmp.Compare(a.Line, b.Line),
			cmp.Compare(a.Column, b.Column),
			cmp.Compare(rank[a.Level], rank[b.Level]),
			cmp.Compare(
				a.Rule,
				b.Rule,
			),
			cmp.Compare(a.Subject, b.Subject),
			cmp.Compare(a.Text, b.Text),
		) > 0 {
			faults = append(
				faults,
				fmt.Sprintf(
					"finding %d, %s at %s:%d:%d, stands after %s at %s:%d:%d",
					i,
					b.Rule,
					b.File,
					b.Line,
					b.Column,
					a.Rule,
					a.File,
					a.Line,
					a.Column,
				),
			)
		}
	}
	return faults
}

// A schema checks a decoded JSON value and says what is wrong with it,
// by its path.
type schema interface {
	check(path string, v any) []string
}

type (
	object map[string]schema
	list   struct{ of schema }
	words  []string // one of these texts
	orNull struct{ of schema }
	kind   func(path string, v any) bool
)

func (o object) check(path string, v any) (faults []string) {
	m, ok := v.(map[string]any)
	if !ok {
		return []string{fmt.Sprintf("%s is no object: %v", path, v)}
	}
	for key, s := range o {
		if x, has := m[key]; has {
			faults = append(faults, s.check(path+"."+key, x)...)
		} else {
			faults = append(faults, path+"."+key+" is missing")
		}
	}
	for key := range m {
		if o[key] == nil {
			faults = append(faults, path+"."+key+" is not in the schema")
		}
	}
	// A figure's value lies within its ends.
	if lo, has := number(m["low"]); has {
		if hi, has := number(m["high"]); has && lo > hi {
			faults = append(faults, fmt.Sprintf("%s: low %v is above high %v", path, lo, hi))
		}
		if x, has := number(m["value"]); has && x < lo {
			faults = append(faults, fmt.Sprintf("%s: value %v is below low %v", path, x, lo))
		}
	}
	if (m["answer"] == "unsure" || m["doubt"] == true) && fmt.Sprint(m["needs"]) == "[]" {
		faults = append(faults, path+": unsure, and nothing is needed")
	}
	if _, finding := m["mends"]; finding && (m["answer"] == "waived") != (m["waived"] != nil) {
		faults = append(
			faults,
			fmt.Sprintf("%s: the answer is %v, and waived is %v", path, m["answer"], m["waived"]),
		)
	}
	return faults
}

func (l list) check(path string, v any) (faults []string) {
	items, ok := v.([]any)
	if !ok {
		return []string{fmt.Sprintf("%s is no list: %v", path, v)}
	}
	for i, item := range items {
		faults = append(faults, l.of.check(fmt.Sprintf("%s[%d]", path, i), item)...)
	}
	return faults
}

func (o orNull) check(path string, v any) []string {
	if v == nil {
		return nil
	}
	return o.of.check(path, v)
}

func (w words) check(path string, v any) []string {
	for _, word := range w {
		if v == word {
			return nil
		}
	}
	return []string{fmt.Sprintf("%s is %v, none of %s", path, v, strings.Join(w, ", "))}
}

func (k kind) check(path string, v any) []string {
	if !k(path, v) {
		return []string{fmt.Sprintf("%s is not what it should be: %v", path, v)}
	}
	return nil
}

func number(v any) (float64, bool) {
	n, ok := v.(json.Number)
	if !ok {
		return 0, false
	}
	x, err := n.Float64()
	return x, err == nil
}

var (
	isText = kind(func(_ string, v any) bool { _, ok := v.(string); return ok })
	filled = kind(func(_ string, v any) bool { s, ok := v.(string); return ok && s != "" })
	whole  = kind(func(_ string, v any) bool {
		n, ok := v.(json.Number)
		if !ok {
			return false
		}
		i, err := n.Int64()
		return err == nil && i >= 0
	})
	yesOrNo    = kind(func(_ string, v any) bool { _, ok := v.(bool); return ok })
	textOrNull = kind(
		func(_ string, v any) bool { s, ok := v.(string); return ok && s != "" || v == nil },
	)
	numberOrNull = kind(func(_ string, v any) bool { _, ok := number(v); return ok || v == nil })
	anyFigure    = kind(func(_ string, v any) bool {
		switch x := v.(type) {
		case nil, bool, string:
			return x != "unknown"
		case []any:
			for _, item := range x {
				if _, ok := item.(string); !ok {
					return false
				}
			}
			return true
		}
		_, ok := number(v)
		return ok
	})
)

var schemas = map[string]object{
	"check": {
		"format":   whole,
		"version":  filled,
		"cautions": list{object{"text": filled, "source": filled, "formula": filled}},
		"findings": list{object{
			"rule": filled, "pack": filled, "level": words{"stop", "risk", "note"},
			"answer":  words{"flagged", "unsure", "waived", "assumed"},
			"formula": isText, "subject": filled, "file": filled, "line": whole, "column": whole,
			"text": filled, "why": filled, "source": filled,
			"facts": list{
				object{
					"name":  filled,
					"value": anyFigure,
					"low":   numberOrNull,
					"high":  numberOrNull,
					"unit":  isText,
				},
			},
			"needs": list{filled},
			"mends": list{object{"text": filled, "trust": words{"exact", "searched", "taste"},
				"edits": list{object{"start": whole, "end": whole, "old": isText, "new": isText}}}},
			"doubt": yesOrNo, "food_safety": yesOrNo,
			"waived": orNull{object{"because": filled, "until": textOrNull, "by": filled}},
		}},
		"unread": list{object{"file": isText, "line": whole, "column": whole, "text": filled}},
		"assumed": list{object{"file": isText, "formula": isText, "line": whole,
			"assumed": list{filled}}},
		"notices":   list{filled},
		"unchecked": list{object{"pack": filled, "text": filled, "by": filled}},
		"loosened": list{
			object{
				"rule":    filled,
				"pack":    filled,
				"what":    filled,
				"from":    filled,
				"to":      filled,
				"because": filled,
				"by":      filled,
			},
		},
		"totals": object{
			"formulas": whole,
			"rules":    whole,
			"stop":     whole,
			"risk":     whole,
			"note":     whole,
			"unsure":   whole,
			"waived":   whole,
			"backlog":  whole,
			"unread":   whole,
		},
	},
	"facts": {
		"format":   whole,
		"cautions": list{object{"text": filled, "source": filled, "formula": filled}},
		"facts": list{object{
			"formula": isText, "subject": filled, "name": filled, "value": anyFigure,
			"low": numberOrNull, "high": numberOrNull, "unit": isText,
			"kind": words{"arithmetic", "model", "measured", "given"}, "source": filled,
		}},
	},
}

func init() { // what a house changes stands in every output
	check := schemas["check"]
	schemas["facts"]["unchecked"] = check["unchecked"]
	schemas["facts"]["loosened"] = check["loosened"]
	schemas["facts"]["set_aside"] = check["findings"]
}

// framesCommand writes messages of the Language Server Protocol,
// one a line of a file, as sent over standard input: frames
// messages.txt session.
func framesCommand(ts *testscript.TestScript, _ bool, args []string) {
	if len(args) != 2 {
		ts.Fatalf("frames takes two files")
	}
	var out strings.Builder
	for _, line := range strings.Split(strings.TrimSpace(ts.ReadFile(args[0])), "\n") {
		line = strings.ReplaceAll(line, "$WORK", filepath.ToSlash(ts.Getenv("WORK")))
		fmt.Fprintf(&out, "Content-Length: %d\r\n\r\n%s", len(line), line)
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[1]), []byte(out.String()), 0o666))
}
