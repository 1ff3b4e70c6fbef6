// Faults plants one fault at a time into sound formulas and asks the
// program: does a new finding speak of it?
//
//	go build -o /tmp/forebake ./cmd/forebake
//	go run ./.ci/faults /tmp/forebake
//
// The faults stand in faults.csv. A fault counts as found when a
// finding of its level or a higher one is new. It speaks of the part
// or the step at fault, or of the whole formula, and holds one of the
// fault's words. A refused file counts too. A reading in a changed
// step is removed, from the sound formula as well: it was read of
// another plan.
//
// The program ends with status 1 where less than -least percent
// are found.
package main

import (
	_ "embed"
	"encoding/csv"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"forebake/.ci/outside"
)

//go:embed faults.csv
var list string

// fault is one row of faults.csv.
type fault struct {
	class, file, op, part, target, key, value, level string
	words                                            *regexp.Regexp
	dough                                            bool // the part is a dough
	safety                                           bool // a food-safety finding can be about it
}

func (f fault) String() string {
	s := f.op
	if f.part != "" {
		s += " " + f.part + ","
	}
	s += " " + f.target
	if f.key != "" {
		s += " " + f.key
	}
	if f.value != "" {
		s += " " + f.value
	}
	return s
}

func main() {
	project := flag.String("project", ".", "the project's folder")
	least := flag.Float64("least", 90, "share that must be found, percent")
	verbose := flag.Bool("all", false, "tell the faults that were found as well")
	flag.Parse()
	if flag.NArg() != 1 {
		fmt.Fprintln(os.Stderr, "usage: go run ./.ci/faults [flags] PROGRAM")
		flag.PrintDefaults()
		os.Exit(2)
	}
	program, err := outside.NewProgram(flag.Arg(0))
	if err != nil {
		fmt.Fprintln(os.Stderr, "faults:", err)
		os.Exit(2)
	}
	share, err := measure(os.Stdout, program, *project, *verbose)
	if err != nil {
		fmt.Fprintln(os.Stderr, "faults:", err)
		os.Exit(2)
	}
	if share < *least {
		os.Exit(1)
	}
}

func faults() ([]fault, error) {
	rows, err := csv.NewReader(strings.NewReader(list)).ReadAll()
	if err != nil {
		return nil, err
	}
	var out []fault
	for i, r := range rows[1:] {
		words, err := regexp.Compile("(?i)" + r[9])
		if err != nil || outside.Severity(r[7]) == 0 || r[8] != "yes" && r[8] != "no" {
			return nil, fmt.Errorf(
				"faults.csv, row %d: level %q, safety %q, words %q: %v",
				i+2,
				r[7],
				r[8],
				r[9],
				err,
			)
		}
		out = append(
			out,
			fault{
				class:  r[0],
				file:   r[1],
				op:     r[2],
				part:   r[3],
				target: r[4],
				key:    r[5],
				value:  r[6],
				level:  r[7],
				safety: r[8] == "yes",
				words:  words,
				dough:  strings.HasSuffix(r[3], "dough") || r[3] == "challah",
			},
		)
	}
	return out, nil
}

// planted is a formula with its fault in it.
type planted struct {
	text  string
	sound string   // the formula that it is compared with
	line  int      // of the change
	takes []string // other parts that the changed place names
}

var firstNumber = regexp.MustCompile(`\d+(\.\d+)?`)

// plant puts a fault into the text of a sound formula.
func plant(text string, f fault) (planted, error) {
	sound, err := unread(text, f)
	if err != nil {
		return planted{}, err
	}
	at, err := put(sound, f)
	at.sound = sound
	return at, err
}

// unread takes the reading out of a step that is to be changed.
func unread(text string, f fault) (string, error) {
	if f.op != "set" && f.op != "times" || !strings.HasPrefix(f.target, "step:") {
		return text, nil
	}
	root, err := outside.Parse(text)
	if err != nil {
		return "", err
	}
	place, err := find(root, f.part, f.target)
	if err != nil {
		return "", err
	}
	if p := outside.Find(place.pairs, "measured"); p != nil {
		return outside.Remove(text, p.Start, p.End), nil
	}
	return text, nil
}

func put(text string, f fault) (planted, error) {
	root, err := outside.Parse(text)
	if err != nil {
		return planted{}, err
	}
	if f.target == "formula" {
		p := outside.Find(root.Blocks[0].Pairs, f.key)
		if p == nil {
			return planted{}, fmt.Errorf("no %q in the formula", f.key)
		}
		return change(text, f, p)
	}
	place, err := find(root, f.part, f.target)
	if err != nil {
		return planted{}, err
	}
	at := planted{line: outside.Line(text, place.start), takes: place.takes()}
	switch f.op {
	case "drop":
		at.text = outside.Remove(text, place.start, place.end)
	case "double":
		at.text = text[:place.end] + ", " + text[place.start:]
	case "rename":
		at.text = outside.Replace(
			text,
			place.start,
			place.pair.Value.Start,
			strconv.Quote(f.value)+" = ",
		)
	case "swap":
		other, err := find(root, f.part, f.value)
		if err != nil {
			return planted{}, err
		}
		at.text = exchange(text, place.start, place.end, other.start, other.end)
		at.takes = append(at.takes, other.takes()...)
	case "exchange":
		other, err := find(root, f.part, f.value)
		if err != nil {
			return planted{}, err
		}
		a, b := amount(place.pair), amount(other.pair)
		at.text = exchange(text, a.Start, a.End, b.Start, b.End)
	case "set", "times":
		pairs := place.pairs
		if f.key == "amount" && place.pair != nil && place.pair.Value.Kind == outside.Quoted {
			return change(text, f, place.pair)
		}
		p := outside.Find(pairs, f.key)
		if p == nil {
			return planted{}, fmt.Errorf("no %q at %s", f.key, f.target)
		}
		return change(text, f, p)
	default:
		return planted{}, fmt.Errorf("no change %q", f.op)
	}
	return at, nil
}

// change sets or multiplies the value of a setting.
func change(text string, f fault, p *outside.Pair) (planted, error) {
	at := planted{line: outside.Line(text, p.Start)}
	value := text[p.Value.Start:p.Value.End]
	switch f.op {
	case "set":
		value = strconv.Quote(f.value)
		if p.Value.Kind == outside.Bare {
			value = f.value
		}
	case "times":
		by, err := strconv.ParseFloat(f.value, 64)
		if err != nil {
			return planted{}, err
		}
		m := firstNumber.FindStringIndex(value)
		if m == nil {
			return planted{}, fmt.Errorf("no number in %s", value)
		}
		x, _ := strconv.ParseFloat(value[m[0]:m[1]], 64)
		value = value[:m[0]] + strconv.FormatFloat(x*by, 'g', 6, 64) + value[m[1]:]
	default:
		return planted{}, fmt.Errorf("no change %q of a setting", f.op)
	}
	at.text = outside.Replace(text, p.Value.Start, p.Value.End, value)
	if at.text == text {
		return planted{}, fmt.Errorf("%s changes nothing", f)
	}
	return at, nil
}

func exchange(text string, a, b, c, d int) string {
	if a > c {
		a, b, c, d = c, d, a, b
	}
	return text[:a] + text[c:d] + text[b:c] + text[a:b] + text[d:]
}

func amount(p *outside.Pair) *outside.Value {
	if p.Value.Kind == outside.Object {
		return outside.Find(p.Value.Pairs, "amount").Value
	}
	return p.Value
}

// found is the place of a target: an ingredient's setting, or a step.
type found struct {
	start, end int
	pair       *outside.Pair // of an ingredient
	pairs      []*outside.Pair
}

// takes names the parts that are taken in there.
func (p found) takes() []string {
	if p.pair != nil {
		if name, ok := strings.CutPrefix(p.pair.Key, "the "); ok {
			return []string{name}
		}
		return nil
	}
	var out []string
	for _, verb := range []string{"fill", "brush", "wash"} {
		if o := outside.Find(p.pairs, verb); o != nil {
			out = append(out, o.Value.Text)
		}
	}
	return out
}

// find looks up ingredient:NAME or step:VERB:N in a part.
func find(root *outside.Block, part, target string) (found, error) {
	for _, formula := range root.Blocks {
		for _, b := range formula.Blocks {
			if b.Label != part {
				continue
			}
			kind, rest, _ := strings.Cut(target, ":")
			if kind == "ingredient" {
				if all := outside.Find(b.Pairs, "ingredients"); all != nil {
					if p := outside.Find(all.Value.Pairs, rest); p != nil {
						return found{p.Start, p.End, p, p.Value.Pairs}, nil
					}
				}
				continue
			}
			verb, n, _ := strings.Cut(rest, ":")
			wanted, _ := strconv.Atoi(n)
			if all := outside.Find(b.Pairs, "steps"); all != nil {
				for _, step := range all.Value.Items {
					if outside.Find(step.Pairs, verb) == nil {
						continue
					}
					if wanted--; wanted == 0 {
						return found{start: step.Start, end: step.End, pairs: step.Pairs}, nil
					}
				}
			}
		}
	}
	return found{}, fmt.Errorf("no %s in part %q", target, part)
}

// question tells one finding from another: steps of one verb in a part
// share rule and subject.
type question struct{ formula, rule, subject string }

// news gives the findings that the sound formula does not have, or has
// at a lower level.
func news(sound, faulty []outside.Finding) []outside.Finding {
	had := map[question][]int{}
	for _, f := range sound {
		if f.Flagged() {
			k := question{f.Formula, f.Rule, f.Subject}
			had[k] = append(had[k], outside.Severity(f.Level))
		}
	}
	var out []outside.Finding
	for _, f := range faulty {
		if !f.Flagged() {
			continue
		}
		k := question{f.Formula, f.Rule, f.Subject}
		i := slices.IndexFunc(had[k], func(level int) bool {
			return level >= outside.Severity(f.Level)
		})
		if i >= 0 {
			had[k] = slices.Delete(had[k], i, i+1)
			continue
		}
		out = append(out, f)
	}
	return out
}

// speaks reports whether a finding is about the fault. It may name its
// part or step, a part that the step takes in, or the whole formula.
func (f fault) speaks(g outside.Finding, takes []string) bool {
	if outside.Severity(g.Level) < outside.Severity(f.level) || g.Safety && !f.safety {
		return false
	}
	// What is wrong with a filling or a preferment may be reported
	// where it is taken in, and the reverse.
	named := func(part string) bool { return strings.Contains(g.Subject, strconv.Quote(part)) }
	if f.dough && g.Subject != "formula" && !named(f.part) && !slices.ContainsFunc(takes, named) {
		return false
	}
	return f.words.MatchString(g.Text) || f.words.MatchString(g.Rule)
}

func measure(w io.Writer, program *outside.Program, project string, verbose bool) (float64, error) {
	all, err := faults()
	if err != nil {
		return 0, err
	}
	work, err := os.MkdirTemp("", "faults")
	if err != nil {
		return 0, err
	}
	defer os.RemoveAll(work)

	// One folder with the kitchens, so that each formula is judged by
	// its own house.
	for _, top := range []string{"formulas", "testdata/published", "testdata/scenarios"} {
		err := filepath.WalkDir(
			filepath.Join(project, top),
			func(path string, e os.DirEntry, err error) error {
				if err != nil || e.IsDir() || filepath.Ext(path) != ".hcl" {
					return err
				}
				rel, _ := filepath.Rel(project, path)
				text, err := os.ReadFile(path)
				if err != nil {
					return err
				}
				if err := os.MkdirAll(filepath.Dir(filepath.Join(work, rel)), 0o777); err != nil {
					return err
				}
				return os.WriteFile(filepath.Join(work, rel), text, 0o666)
			},
		)
		if err != nil {
			return 0, err
		}
	}
	texts, count := map[string]string{}, map[string]int{}
	var files []string
	write := func(name, text string) error {
		count[name] = 1
		files = append(files, name)
		return os.WriteFile(filepath.Join(work, name), []byte(text), 0o666)
	}
	lines, takes := make([]int, len(all)), make([][]string, len(all))
	sounds, names := make([]string, len(all)), make([]string, len(all))
	for i, f := range all {
		if _, ok := texts[f.file]; !ok {
			text, err := os.ReadFile(filepath.Join(work, f.file))
			if err != nil {
				return 0, err
			}
			texts[f.file] = string(text)
			count[f.file] = 1
			files = append(files, f.file)
		}
		p, err := plant(texts[f.file], f)
		if err != nil {
			return 0, fmt.Errorf("faults.csv, row %d (%s): %w", i+2, f, err)
		}
		takes[i] = p.takes
		stem := strings.TrimSuffix(f.file, ".hcl")
		sounds[i], names[i], lines[i] = f.file, fmt.Sprintf("%s-fault-%03d.hcl", stem, i+2), p.line
		if p.sound != texts[f.file] {
			sounds[i] = fmt.Sprintf("%s-sound-%03d.hcl", stem, i+2)
			if err := write(sounds[i], p.sound); err != nil {
				return 0, err
			}
		}
		if err := write(names[i], p.text); err != nil {
			return 0, err
		}
	}
	answers := program.Check(work, files, count)

	type tally struct{ planted, found, refused int }
	classes := map[string]*tally{}
	var order []string
	silenced := 0
	for i, f := range all {
		t := classes[f.class]
		if t == nil {
			t = &tally{}
			classes[f.class] = t
			order = append(order, f.class)
		}
		t.planted++
		sound, faulty := answers[sounds[i]], answers[names[i]]
		if sound.Refused != "" || sound.Crashed != "" {
			return 0, fmt.Errorf("%s is not judged: %s%s", sounds[i], sound.Refused, sound.Crashed)
		}
		if faulty.Crashed != "" {
			fmt.Fprintf(w, "CRASH   row %d %s: %s: %s\n", i+2, f.file, f, faulty.Crashed)
			continue
		}
		if faulty.Refused != "" {
			t.refused++
			t.found++
			if verbose {
				fmt.Fprintf(
					w,
					"refused row %d %s:%d: %s\n          %s\n",
					i+2,
					f.file,
					lines[i],
					f,
					faulty.Refused,
				)
			}
			continue
		}
		new := news(sound.Findings, faulty.Findings)
		told := slices.IndexFunc(new, func(g outside.Finding) bool { return f.speaks(g, takes[i]) })
		lost := len(news(faulty.Findings, sound.Findings))
		silenced += lost
		switch {
		case told >= 0:
			t.found++
			if verbose {
				fmt.Fprintf(
					w,
					"found   row %d %s:%d: %s\n          %s %s, %s\n",
					i+2,
					f.file,
					lines[i],
					f,
					new[told].Level,
					new[told].Rule,
					new[told].Subject,
				)
			}
		default:
			fmt.Fprintf(
				w,
				"MISSED  row %d %s:%d: %s; wanted: %s or more\n",
				i+2,
				f.file,
				lines[i],
				f,
				f.level,
			)
			for _, g := range new {
				fmt.Fprintf(w, "          says %s %s, %s\n", g.Level, g.Rule, g.Subject)
			}
		}
		if lost > 0 && (verbose || told < 0) {
			fmt.Fprintf(w, "          %d findings of the sound formula are said no more\n", lost)
		}
	}
	fmt.Fprintf(
		w,
		"\n%-24s %8s %6s %8s %6s\n",
		"class of fault",
		"planted",
		"found",
		"refused",
		"share",
	)
	var sum tally
	for _, class := range order {
		t := classes[class]
		fmt.Fprintf(
			w,
			"%-24s %8d %6d %8d %5.0f%%\n",
			class,
			t.planted,
			t.found,
			t.refused,
			100*float64(t.found)/float64(t.planted),
		)
		sum = tally{sum.planted + t.planted, sum.found + t.found, sum.refused + t.refused}
	}
	share := 100 * float64(sum.found) / float64(sum.planted)
	fmt.Fprintf(w, "%-24s %8d %6d %8d %5.0f%%\n", "all", sum.planted, sum.found, sum.refused, share)
	fmt.Fprintf(w, "findings of the sound formulas that a fault silenced: %d\n", silenced)
	return share, nil
}
