package main

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/mend/levers"
)

// The reference page is what the program prints of itself. It stands
// beside the formulas, where a baker looks; testdata is for tests. The
// page equals the print, and the print names every declaration and
// nothing else.
const referencePage = "../../formulas/REFERENCE.md"

const referenceHead = "<!-- Written by the program: go test ./cmd/forebake -run Reference " +
	"-update. Do not edit. -->\n\n"

func printedReference(t *testing.T) string {
	t.Helper()
	folder(t, nil)
	return referenceHead + answered(
		t,
		"facts",
		"--list",
		"--as",
		"markdown",
	) + "\n" + answered(
		t,
		"packs",
		"--as",
		"markdown",
	)
}

func TestReferencePage(t *testing.T) {
	old, err := os.ReadFile(referencePage)
	if err != nil && !*update {
		t.Fatal(err)
	}
	here, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	want := printedReference(t)
	t.Chdir(here)
	if *update {
		if err := os.WriteFile(referencePage, []byte(want), 0o666); err != nil {
			t.Fatal(err)
		}
		return
	}
	if string(old) != want {
		t.Error(
			"formulas/REFERENCE.md is not what the program prints; go test ./cmd/forebake -run " +
				"Reference -update writes it anew",
		)
	}
}

func TestReferenceIsWhole(t *testing.T) {
	page := printedReference(t)
	section := ""
	onPage := map[string]map[string]int{}
	rowName := regexp.MustCompile("^\\| `([^`]+)` \\| ([a-z]*)")
	for _, line := range strings.Split(page, "\n") {
		if title, ok := strings.CutPrefix(line, "## "); ok {
			section = title
			onPage[section] = map[string]int{}
		}
		if m := rowName.FindStringSubmatch(line); m != nil {
			name := m[1]
			if section == "House file" {
				name = m[2] + " " + name
			}
			onPage[section][name]++
		}
		if name, ok := strings.CutPrefix(line, "### "); ok {
			if onPage["rules"] == nil {
				onPage["rules"] = map[string]int{}
			}
			onPage["rules"][name]++
		}
	}
	declared := map[string]map[string]int{}
	add := func(section, name string) {
		if declared[section] == nil {
			declared[section] = map[string]int{}
		}
		declared[section][name]++
	}
	l, problems := engine.New().Load(".")
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, name := range l.Rules.Names() {
		add("rules", name)
	}
	for _, f := range l.Rules.Figures.List() {
		add("rules", "Figure: "+f.Name)
	}
	c := engine.Catalogue(l)
	about := map[string]string{
		"formula":    "a formula",
		"part":       "a part (a dough, a filling, ...)",
		"step":       "a step",
		"ingredient": "an ingredient",
		"kitchen":    "the kitchen",
	}
	for _, f := range c.Facts {
		add("Figures of "+about[f.Subject], f.Name)
	}
	for _, v := range c.Verbs {
		add("Steps", v.Name)
	}
	for _, o := range c.Options {
		add("Options of "+about[o.Subject], o.Name)
	}
	for _, w := range c.Words {
		add(
			map[string]string{
				"way":   "Ways of a step (by)",
				"place": "Places of a step (at)",
				"group": "Groups of steps (on, in a rule)",
			}[w.List],
			w.Name,
		)
	}
	for _, k := range levers.Kinds() {
		add("Levers (adjust, in a rule)", k.Names()[0])
	}
	for _, u := range c.Units {
		add("Units", u.Name)
	}
	for _, k := range c.Keys {
		add("House file", k.Block+" "+k.Name)
	}
	for section, names := range declared {
		for name, n := range names {
			if onPage[section][name] != n {
				t.Errorf(
					"%s: %s is declared %d times and on the page %d times",
					section,
					name,
					n,
					onPage[section][name],
				)
			}
		}
	}
	for section, names := range onPage {
		for name := range names {
			if declared[section][name] == 0 {
				t.Errorf("%s: the page names %s, which does not exist", section, name)
			}
		}
	}
	if len(declared["rules"]) < 90 || len(declared["Steps"]) < 20 ||
		len(declared["Ways of a step (by)"]) < 20 ||
		len(declared["House file"]) < 30 {
		t.Errorf(
			"only %d rules, %d steps, %d keys",
			len(declared["rules"]),
			len(declared["Steps"]),
			len(declared["House file"]),
		)
	}
	if n := strings.Count(page, "From rules/"); n < len(declared["rules"])+len(l.Rules.Cautions) {
		t.Errorf(
			"%d places in packs for %d rules and %d cautions",
			n,
			len(declared["rules"]),
			len(l.Rules.Cautions),
		)
	}
}

// Every key of a house block on the page is one that its reader takes,
// and any other is refused with exactly those.
func TestReferenceKeysAreRead(t *testing.T) {
	blocks := map[string]string{
		"house":      "",
		"kitchen":    "kitchen",
		"tin":        "tin \"t\"",
		"ingredient": "ingredient \"i\"",
		"set":        "set \"salt-low\"",
		"waive":      "waive \"salt-low\"",
	}
	none, _ := engine.New().Load(".")
	for block, head := range blocks {
		body := "  zzz = 1\n"
		if head != "" {
			body = "  " + head + " {\n    zzz = 1\n  }\n"
		}
		folder(t, map[string]string{"house.hcl": "house \"h\" {\n" + body + "}\n"})
		_, problems := engine.New().Load(".")
		said := problems.Error()
		for _, k := range engine.Catalogue(none).Keys {
			if k.Block == block && !strings.Contains(said, k.Name) &&
				!isBlockOfHouse(k.Block, k.Name) {
				t.Errorf("%s: the reader does not know %s: %s", block, k.Name, said)
			}
		}
	}
}

func isBlockOfHouse(block, name string) bool {
	return block == "house" &&
		regexp.MustCompile("^(kitchen|tin|ingredient|set|waive)$").MatchString(name)
}
