package main

import (
	"bytes"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/house"
)

const (
	readmeFile = "../../README.md"
	guideFile  = "../../formulas/GUIDE.md"
)

// The sessions in README.md are real: every "$ forebake ..." line in a
// console block runs here from the top of the project, and must print
// what is below it. A line "[...]" stands for any lines; a last line
// "exit status N" for a status other than 0.
//
// -update fills in numbers: a line printed with other numbers is
// replaced. So a new rule or trial needs no edit of README.md by hand.
func TestReadmeSessions(t *testing.T) { holdSessions(t, readmeFile, 2) }

func TestGuideSessions(t *testing.T) { holdSessions(t, guideFile, 5) }

// TestReadmeShort holds that the first page can be read to its end.
func TestReadmeShort(t *testing.T) {
	text, err := os.ReadFile(readmeFile)
	if err != nil {
		t.Fatal(err)
	}
	if n := bytes.Count(text, []byte("\n")); n > 200 {
		t.Errorf("README.md has %d lines; 200 are the most", n)
	}
}

// TestReadmeFiles holds that the first page's formula is sound, and
// that its rule is in force in a house that names it.
func TestReadmeFiles(t *testing.T) {
	text, err := os.ReadFile(readmeFile)
	if err != nil {
		t.Fatal(err)
	}
	files := map[string]string{
		"house.hcl": "house \"h\" {\n  packs = [\"hygiene\", \"balance\", \"./own.hcl\"]\n}\n"}
	for _, block := range strings.Split(string(text), "```hcl\n")[1:] {
		block, _, _ = strings.Cut(block, "```")
		switch {
		case strings.HasPrefix(block, "formula "):
			files["buns.hcl"] = block
		case strings.HasPrefix(block, "rule "):
			files["own.hcl"] = "about = \"own rules\"\n\n" + block
		}
	}
	if len(files) != 3 {
		t.Fatalf("README.md shows %d of a formula and a rule", len(files)-1)
	}
	folder(t, files)
	if got := answered(t, "check", "--as", "lines", "buns.hcl"); !strings.HasSuffix(got,
		": 0 stop, 0 risk, 0 note, 0 unsure, 0 waived\n") {
		t.Errorf("the formula: %s", got)
	}
	got := answered(t, "why", "sweet-and-lean")
	if !strings.Contains(got, "Two batches came back.") {
		t.Errorf("the rule: %s", got)
	}
}

// holdSessions holds the sessions of a page, at least so many.
func holdSessions(t *testing.T, page string, least int) {
	t.Helper()
	text, err := os.ReadFile(page)
	if err != nil {
		t.Fatal(err)
	}
	readme := string(text)
	here, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir("../..")
	t.Setenv("NO_COLOR", "1")
	sessions := 0
	for i, block := range strings.Split(readme, "```console\n")[1:] {
		block, _, _ = strings.Cut(block, "```")
		for _, session := range strings.Split("\n"+block, "\n$ ")[1:] {
			command, want, _ := strings.Cut(session, "\n")
			line, ok := strings.CutPrefix(command, "forebake ")
			if !ok {
				continue // the go command itself
			}
			sessions++
			got := printedBy(line)
			if *update {
				filled := fillIn(got, want)
				readme = strings.Replace(readme, "$ "+session, "$ "+command+"\n"+filled, 1)
				want = filled
			}
			if at, ok := matches(got, want); !ok {
				t.Errorf(
					"%s, block %d, %q: not what the program prints (-update fills in numbers); "+
						"first difference at %q\nprogram:\n%s",
					page,
					i+1,
					command,
					at,
					got,
				)
			}
		}
	}
	if sessions < least {
		t.Errorf("%d sessions in %s; there should be at least %d", sessions, page, least)
	}
	t.Chdir(here)
	if *update && readme != string(text) {
		if err := os.WriteFile(page, []byte(readme), 0o666); err != nil {
			t.Fatal(err)
		}
	}
}

// README.md's first two commands are for a fresh copy: the program runs
// from source, reports faults and ends with 0; then come the tests,
// which run here.
func TestReadmeFirstCommands(t *testing.T) {
	readme, err := os.ReadFile(readmeFile)
	if err != nil {
		t.Fatal(err)
	}
	_, after, _ := strings.Cut(string(readme), "\n## Two commands\n")
	var commands []string
	for _, line := range strings.Split(after, "\n") {
		if command, ok := strings.CutPrefix(line, "    "); ok {
			commands = append(commands, command)
		} else if len(commands) > 0 {
			break
		}
	}
	if len(commands) != 2 || commands[1] != "go test ./..." {
		t.Fatalf("the first commands are %q", commands)
	}
	args, ok := strings.CutPrefix(commands[0], "go run ./cmd/forebake ")
	if !ok {
		t.Fatalf("the first command is %q", commands[0])
	}
	t.Chdir("../..")
	var out, errs bytes.Buffer
	if status := run(strings.Fields(args), strings.NewReader(""), &out, &errs); status != 0 ||
		errs.Len() > 0 {
		t.Errorf("%q ends with %d: %s", commands[0], status, errs.String())
	}
	for _, part := range []string{"Cautions (whole, ", "\n  stop  formulas/",
		"Could hurt someone:"} {
		if !strings.Contains(out.String(), part) {
			t.Errorf("%q prints no %q", commands[0], part)
		}
	}
}

// printedBy runs a line of arguments and gives its print, with a status
// other than 0.
func printedBy(line string) string {
	var out bytes.Buffer
	if status := run(strings.Fields(line), strings.NewReader(""), &out, &out); status != 0 {
		fmt.Fprintf(&out, "exit status %d\n", status)
	}
	return out.String()
}

var digits = regexp.MustCompile(`\d+(?:\.\d+)?`)

// fillIn gives the wanted lines with the printed numbers: each line not
// printed as it is takes the one printed line that differs from it only
// in numbers.
func fillIn(got, want string) string {
	printed := strings.Split(got, "\n")
	masked := map[string][]string{}
	for _, line := range printed {
		key := digits.ReplaceAllString(line, "0")
		masked[key] = append(masked[key], line)
	}
	lines := strings.Split(want, "\n")
	for i, line := range lines {
		if slices.Contains(printed, line) {
			continue
		}
		if same := masked[digits.ReplaceAllString(line, "0")]; len(same) == 1 {
			lines[i] = same[0]
		}
	}
	return strings.Join(lines, "\n")
}

func TestFillIn(t *testing.T) {
	got := "12 trials of 3 rules with 4 limits: 0 failed.\n" +
		"  risk line 9\n  risk line 12\nthe same\n"
	want := "11 trials of 2 rules with 4 limits: 0 failed.\n[...]\n  risk line 8\nthe same\n" +
		"not printed 5\n"
	filled := "12 trials of 3 rules with 4 limits: 0 failed.\n[...]\n  risk line 8\nthe same\n" +
		"not printed 5\n"
	if out := fillIn(got, want); out != filled {
		t.Errorf(
			"%q, not %q: a line that two printed ones are like is left for a person",
			out,
			filled,
		)
	}
}

// TestReadmeRuleFile reads the guide's rule file; its own trials pass
// and try all of it.
func TestReadmeRuleFile(t *testing.T) {
	readme, err := os.ReadFile(guideFile)
	if err != nil {
		t.Fatal(err)
	}
	_, text, _ := strings.Cut(string(readme), "## Rule files")
	_, text, found := strings.Cut(text, "```hcl\n")
	text, _, _ = strings.Cut(text, "```")
	if !found {
		t.Fatal("no rule file in the guide")
	}
	folder(
		t,
		map[string]string{
			"house.hcl": "house \"h\" {\n  packs = [\"./mine.hcl\"]\n}\n",
			"mine.hcl":  text,
		},
	)
	got := answered(t, "trial", "./mine.hcl")
	if !strings.HasSuffix(got, ": 0 failed; untouched: 0 rules, 0 limits.\n") ||
		strings.Count(got, "\n") > 1 {
		t.Errorf("its trials: %s", got)
	}
}

// matches compares output with the lines wanted; "[...]" skips to the
// next line that follows. It returns the first line that differs.
func matches(got, want string) (string, bool) {
	g, w := strings.Split(
		strings.TrimSpace(got),
		"\n",
	), strings.Split(
		strings.TrimSpace(want),
		"\n",
	)
	i := 0
	for k := 0; k < len(w); k++ {
		if w[k] == "[...]" {
			if k+1 == len(w) {
				return "", true
			}
			for i < len(g) && g[i] != w[k+1] {
				i++
			}
			continue
		}
		if i >= len(g) || strings.TrimRight(g[i], " ") != strings.TrimRight(w[k], " ") {
			return w[k], false
		}
		i++
	}
	if i < len(g) {
		return g[i], false
	}
	return "", true
}

// TestReadmeSamples runs the guide's sample formula, house and rule
// file together. The house must leave no food safety out, and the
// rule's trials must pass and try each limit.
func TestReadmeSamples(t *testing.T) {
	readme, err := os.ReadFile(guideFile)
	if err != nil {
		t.Fatal(err)
	}
	names := map[string]string{
		"formula ": "knots.hcl",
		"house ":   house.FileName,
		"about ":   "house-rules/own.hcl", // the opening of a rule file
	}
	t.Chdir(t.TempDir())
	for _, block := range strings.Split(string(readme), "```hcl\n")[1:] {
		block, _, _ = strings.Cut(block, "```")
		for opening, name := range names {
			if strings.HasPrefix(block, opening) {
				writeFile(t, name, block)
				delete(names, opening)
			}
		}
	}
	if len(names) > 0 {
		t.Fatalf("the guide shows no sample that opens with %v", slices.Collect(maps.Keys(names)))
	}

	var out bytes.Buffer
	status := run([]string{"check", "."}, nil, &out, &out)
	if status > exitFound || !strings.Contains(out.String(), "Cardamom almond knots  (knots.hcl)") {
		t.Errorf("the sample formula cannot be read: exit status %d\n%s", status, out.String())
	}
	if strings.Contains(out.String(), "Food safety is not checked") {
		t.Errorf("the sample house leaves food safety out\n%s", out.String())
	}
	text, err := os.ReadFile(house.FileName)
	if err != nil {
		t.Fatal(err)
	}
	for _, pack := range engine.ShippedPacks() {
		if !strings.Contains(string(text), `"`+pack+`"`) {
			t.Errorf("the sample house leaves out the shipped pack %q", pack)
		}
	}

	out.Reset()
	status = run([]string{"trial"}, nil, &out, &out)
	told := strings.Join(strings.Fields(out.String()), " ") // unwrapped
	if status != 0 || !strings.Contains(told, " 0 failed; untouched: 0 rules, 0 limits.") {
		t.Errorf("the sample rule's trials: exit status %d\n%s", status, out.String())
	}
}

func writeFile(t *testing.T, path, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
}
