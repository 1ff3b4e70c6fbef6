package tolerant_test

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/engine/tolerant"
)

var larderOfAll = larder.New()

var tins = []string{"long tin", "short tin"}

var words = tolerant.Words(slices.Concat([]string{"formula"}, formula.FormulaKeys,
	formula.KindNames, formula.PartKeys))

// mentions reports whether two texts of a part differ in lines alone
// that name another part.
func sameButMentions(got, want string) bool {
	have := map[string]bool{}
	for _, l := range strings.Split(got, "\n") {
		have[strings.TrimSpace(l)] = true
	}
	for _, l := range strings.Split(want, "\n") {
		if !have[strings.TrimSpace(l)] && !mention.MatchString(l) {
			return false
		}
	}
	return true
}

// begun matches a text that holds a whole line of an ingredient.
var begun = regexp.MustCompile(`ingredients += \{\n +"[^"\n]+" += [^\n]+\n`)

var mention = regexp.MustCompile(`"the |fill +=|wash +=|brush +=|with +=`)

// problemsOf gives every problem of a formula file, as the program would.
func problemsOf(f *source.File) source.Problems {
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return problems
	}
	r := &reading.Reader{File: f}
	for _, b := range body.Blocks {
		if b.Type != "formula" {
			r.Fault(r.Place(b.TypeRange), "no block %q here", b.Type)
			continue
		}
		read.Formula(r, b, formula.Options{Larder: larderOfAll, Tins: tins})
	}
	for _, a := range body.Attributes {
		r.Fault(r.Place(a.NameRange), "no setting %q here", a.Name)
	}
	if len(body.Blocks) == 0 {
		r.Fault(source.Place{File: f}, "no formula")
	}
	return r.Problems
}

// demos are the formulas of the demo kitchen.
func demos(t testing.TB) map[string][]byte {
	paths, _ := filepath.Glob("../../formulas/*.hcl")
	out := map[string][]byte{}
	for _, p := range paths {
		if filepath.Base(p) == "house.hcl" {
			continue
		}
		text, err := os.ReadFile(p)
		if err != nil {
			t.Fatal(err)
		}
		// The house's own ingredients are not in the larder.
		text = bytes.ReplaceAll(text, []byte(`"farm butter"`), []byte(`"unsalted butter"`))
		text = bytes.ReplaceAll(text, []byte(`"strong mill flour"`), []byte(`"bread flour"`))
		f := source.New(p, text)
		if ps := problemsOf(f); len(ps) > 0 {
			t.Fatalf("%s: %v", p, ps)
		}
		out[p] = text
	}
	if len(out) < 8 {
		t.Fatalf("%d demo formulas", len(out))
	}
	return out
}

// parts gives the text of each part of the first formula by its
// first line.
func parts(text []byte) map[string]string {
	out := map[string]string{}
	name := ""
	for _, l := range strings.SplitAfter(string(text), "\n") {
		if strings.HasPrefix(l, "  ") && !strings.HasPrefix(l, "   ") &&
			strings.Contains(l, "\" {") {
			name = strings.TrimSpace(l)
		}
		if name != "" {
			out[name] += l
		}
		if strings.HasPrefix(l, "  }") {
			name = ""
		}
	}
	return out
}

// TestDeletions takes one byte out of each demo formula, at every
// place: the repaired text reads, and holds every part that the byte
// was not in, byte for byte.
func TestDeletions(t *testing.T) {
	tried, judged := 0, 0
	for path, text := range demos(t) {
		whole := parts(text)
		for at := 0; at < len(text); at += 3 {
			cut := append(bytes.Clone(text[:at]), text[at+1:]...)
			tried++
			r := tolerant.Repair(source.New(path, cut), words, problemsOf)
			if r.File == nil {
				t.Errorf("%s: no repair without byte %d, line %d (%q)", path, at,
					bytes.Count(text[:at], []byte("\n"))+1, text[at])
				continue
			}
			judged++
			got := string(r.File.Text)
			for name, part := range whole {
				start := bytes.Index(text, []byte(part))
				if at >= start-1 && at < start+len(part) {
					continue
				}
				if !sameButMentions(got, part) {
					t.Errorf("%s: without byte %d, line %d (%q) %s is not whole:\n%s", path, at,
						bytes.Count(text[:at], []byte("\n"))+1, text[at], name, got)
				}
			}
		}
	}
	t.Logf("%d deletions, %d read", tried, judged)
}

// TestPrefixes types each demo formula from its start: from the first
// ingredient on there is something to judge, and the parts that are
// complete stay whole.
func TestPrefixes(t *testing.T) {
	tried, judged := 0, 0
	for path, text := range demos(t) {
		whole := parts(text)
		for at := 1; at <= len(text); at += 3 {
			tried++
			r := tolerant.Repair(source.New(path, text[:at]), words, problemsOf)
			if r.File == nil {
				if begun.Match(text[:at]) {
					t.Errorf("%s: no repair of the first %d bytes, line %d: %q", path, at,
						bytes.Count(text[:at], []byte("\n"))+1, text[max(0, at-40):at])
				}
				continue
			}
			judged++
			for name, part := range whole {
				if bytes.Contains(text[:at], []byte(part)) &&
					!sameButMentions(string(r.File.Text), part) {
					t.Errorf("%s: of the first %d bytes %s is not whole", path, at, name)
				}
			}
		}
	}
	if least := 80; judged*100 < least*tried {
		t.Errorf("of %d prefixes %d can be judged; %d %% is the least", tried, judged, least)
	}
	t.Logf("%d prefixes, %d read: %d %%", tried, judged, 100*judged/tried)
}

// TestMissingSign takes the sign = out before a bracket: the value is
// read all the same, and told.
func TestMissingSign(t *testing.T) {
	const whole = "formula \"R\" {\n  dough \"d\" {\n    ingredients = {\n" +
		"      \"bread flour\" = \"1 kg\"\n    }\n    steps = [\n      { mix = \"8 min\" },\n" +
		"    ]\n  }\n}\n"
	for _, c := range [][2]string{{"ingredients = {", "ingredients {"},
		{"ingredients = {", "ingredients  {"},
		{"steps = [", "steps ["},
		{"ingredients = {\n      \"bread flour\" = \"1 kg\"\n    }",
			"ingredients { \"bread flour\" = \"1 kg\" }"}} {
		text := strings.Replace(whole, c[0], c[1], 1)
		r := tolerant.Repair(source.New("r.hcl", []byte(text)), words, problemsOf)
		if r.File == nil || len(r.Problems) == 0 {
			t.Errorf("%q: no repair, or nothing told: %v", c[1], r.Problems)
			continue
		}
		got := string(r.File.Text)
		if !strings.Contains(got, `"bread flour" = "1 kg"`) || !strings.Contains(got, "mix") {
			t.Errorf("%q becomes\n%s", c[1], got)
		}
	}
}
