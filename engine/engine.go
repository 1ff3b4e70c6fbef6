// Package engine is the library's front door: it finds the house of a formula, loads the packs in force, reads formulas
// and judges them.
//
// The command line and the editor's protocol call it. It prints nothing, and writes nothing.
package engine

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"sort"
	"strings"
	"sync"
	"time"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/source"
	"forebake/rules"
)

// Version is the version of the program; a pack may ask for at least one.
const Version = "0.1.0"

// Shipped files that are no packs: they are in force in every house, whatever it names.
const (
	CautionFile = "cautions"
	FigureFile  = "figures" // that the rules of several packs read
)

// inForce are the files that are no packs, with what they are called in a message.
var inForce = []struct{ file, says string }{
	{CautionFile, "the cautions are no pack: they are in force in every house; take the name out"},
	{FigureFile, "the figures are no pack: they are in force in every house; take the name out"},
}

// isNoPack says why a house cannot name a shipped file; "" where it can.
func isNoPack(name string) string {
	for _, f := range inForce {
		if f.file == name {
			return f.says
		}
	}
	return ""
}

// Engine checks formulas. It keeps the houses and packs that it has loaded, and serves one call at a time.
type Engine struct {
	// Workers is how many files are checked at once; 0 means as many as there are processors.
	Workers int

	// Today is the day that waivers are held against. Left zero, the clock is read once a check.
	Today time.Time

	// Timed asks Check for the time that each rule takes.
	Timed bool

	houses  map[string]*Loaded // by path of the house file; "" for none
	shipped fs.FS              // the packs in the program
}

// Loaded is a house with its rules in force.
type Loaded struct {
	House     *house.House
	Rules     *rule.Set
	Unchecked []finding.Unchecked // food-safety packs that the house leaves out
}

// New makes an engine.
func New() *Engine { return &Engine{houses: map[string]*Loaded{}, shipped: rules.Files} }

// Input is one formula file to check.
type Input struct {
	Name   string // as shown
	Path   string // where to read it; "" when Text is given
	Text   []byte
	Dir    string // where the search for its house begins
	Walked bool   // found by walking a folder, not named itself
}

// Result is what a check found.
type Result struct {
	Cautions  []*finding.Caution
	Findings  []*finding.Finding
	Formulas  []Checked // every formula judged, in order of file and line
	Loosened  []finding.Loosened
	Unchecked []finding.Unchecked
	Totals    finding.Totals
	FailAt    map[string]finding.Level // by formula file and house file: the level at which the house fails a run
	Problems  source.Problems          // inputs that could not be used
	Notices   []string
	Times     []finding.RuleTime // the longest first; nil unless asked for

	houses []*Loaded // of the formulas, in order of their files
}

// Checked is a formula that was judged.
type Checked struct {
	Name  string
	Place source.Place
}

// Failed tells whether a flagged finding stands at or above the failing level of its house, or of override when it is not nil.
func (r *Result) Failed(override *finding.Level) bool {
	for _, f := range r.Findings {
		level := finding.Stop
		if override != nil {
			level = *override
		} else if f.Place.File != nil {
			level = r.FailAt[f.Place.File.Name]
		}
		if f.At(level) {
			return true
		}
	}
	return false
}

// Inputs turns the paths of a command into formula files: a file as it is named, a folder by its *.hcl files that hold
// formulas, in order of name, without hidden folders, house files and folders of rules.
func Inputs(paths []string) ([]Input, source.Problems) {
	var out []Input
	var problems source.Problems
	seen := map[string]bool{}
	fail := func(format string, args ...any) {
		problems = append(problems, source.Problem{Text: fmt.Sprintf(format, args...)})
	}
	add := func(path string, walked bool) {
		path = filepath.Clean(path)
		if !seen[path] {
			seen[path] = true
			out = append(out, Input{Name: filepath.ToSlash(path), Path: path, Dir: filepath.Dir(path), Walked: walked})
		}
	}
	for _, path := range paths {
		info, err := os.Stat(path)
		switch {
		case err != nil:
			fail("%s: no such file or folder; name a formula file, or a folder that holds some", path)
		case !info.IsDir():
			add(path, false)
		default:
			found := 0
			err := filepath.WalkDir(path, func(p string, d fs.DirEntry, err error) error {
				if err != nil {
					fail("%s", err)
					return nil
				}
				name := d.Name()
				if d.IsDir() {
					if p != path && strings.HasPrefix(name, ".") {
						return filepath.SkipDir
					}
					return nil
				}
				if strings.HasSuffix(name, ".hcl") && name != house.FileName && !strings.HasPrefix(name, ".") && holdsFormulas(p) {
					found++
					add(p, true)
				}
				return nil
			})
			if err != nil {
				fail("%s", err)
			}
			if found == 0 {
				fail("%s: no formulas in this folder; a formula file ends in .hcl and holds formula \"name\" { ... }", path)
			}
		}
	}
	return out, problems
}

// holdsFormulas tells whether a file found in a folder is to be checked: one that holds rules and no formula is a pack. A
// file that cannot be read or is broken is kept, so that its fault is shown.
func holdsFormulas(path string) bool {
	text, err := os.ReadFile(path)
	if err != nil {
		return true
	}
	blocks, sure := source.Blocks(source.New(path, text))
	if !sure {
		return true
	}
	rules := false
	for _, b := range blocks {
		switch b.Type {
		case "formula":
			return true
		case "house", "backlog":
			rules = true
		default:
			rules = rules || slices.Contains(rule.Blocks, b.Type)
		}
	}
	return !rules
}

// HouseFor finds the nearest house file upward from a folder; "" when there is none.
func HouseFor(dir string) string {
	abs, err := filepath.Abs(dir)
	if err != nil {
		return ""
	}
	for at, shown := abs, dir; ; {
		candidate := filepath.Join(at, house.FileName)
		if info, err := os.Stat(candidate); err == nil && !info.IsDir() {
			return filepath.Clean(filepath.Join(shown, house.FileName))
		}
		parent := filepath.Dir(at)
		if parent == at {
			return ""
		}
		at, shown = parent, filepath.Join(shown, "..")
	}
}

// Load gives the house of a folder, with its packs. Loading it again costs nothing.
func (e *Engine) Load(dir string) (*Loaded, source.Problems) {
	return e.load(HouseFor(dir), false)
}

// Trials runs the trials of the packs in force in a folder, or of those named.
func (e *Engine) Trials(dir string, names []string) (rule.TrialReport, source.Problems) {
	l, problems := e.load(HouseFor(dir), true)
	if len(problems) > 0 {
		return rule.TrialReport{}, problems
	}
	packs := l.Rules.Packs
	if len(names) > 0 {
		var known []string
		byName := map[string]*rule.Pack{}
		for _, p := range packs {
			known = append(known, p.Name)
			byName[p.Name] = p
		}
		packs = nil
		for _, name := range names {
			if byName[name] == nil {
				problems = append(problems, source.Problem{Text: reading.UnknownText("pack", name, "this house", known)})
				continue
			}
			packs = append(packs, byName[name])
		}
	}
	if len(problems) > 0 {
		return rule.TrialReport{}, problems
	}
	return rule.RunTrials(packs), nil
}

func (e *Engine) load(path string, trials bool) (*Loaded, source.Problems) {
	if l := e.houses[path]; l != nil && !trials {
		return l, nil
	}
	h := house.Default()
	if path != "" {
		var problems source.Problems
		if h, problems = readHouse(path, nil); len(problems) > 0 {
			return nil, problems
		}
	}
	packs, problems := e.readPacks(h, trials)
	if len(problems) > 0 {
		return nil, problems
	}
	left := e.leftOut(h)
	set, problems := rule.Join(packs, h, left.packOf)
	if len(problems) > 0 {
		return nil, problems
	}
	l := &Loaded{House: h, Rules: set, Unchecked: left.safety(h.PacksAt)}
	e.houses[path] = l
	return l, nil
}

// loadAll loads the house of each input, nil where it cannot be used. What is wrong with a house is told once.
func (e *Engine) loadAll(inputs []Input) ([]*Loaded, source.Problems) {
	var problems source.Problems
	loaded := make([]*Loaded, len(inputs))
	byDir, broken := map[string]string{}, map[string]bool{}
	for i, in := range inputs {
		path, seen := byDir[in.Dir]
		if !seen {
			path = HouseFor(in.Dir)
			byDir[in.Dir] = path
		}
		if broken[path] {
			continue
		}
		l, faults := e.load(path, false)
		broken[path] = len(faults) > 0
		problems = append(problems, faults...)
		loaded[i] = l
	}
	return loaded, problems
}

// MaxJoined is how many houses may stand upon each other.
const MaxJoined = 16

// readHouse reads a house file, and those that it is like. chain holds the files on the way here.
func readHouse(path string, chain []string) (*house.House, source.Problems) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, source.Problems{{Text: err.Error()}}
	}
	chain = append(chain, filepath.ToSlash(path))
	return house.Read(source.New(filepath.ToSlash(path), text), func(like string, at source.Place) (*house.House, source.Problems) {
		other := filepath.FromSlash(like)
		if !filepath.IsAbs(other) {
			other = filepath.Join(filepath.Dir(path), other)
		}
		info, err := os.Stat(other)
		if err == nil && info.IsDir() {
			other = filepath.Join(other, house.FileName)
			info, err = os.Stat(other)
		}
		if err != nil || info.IsDir() {
			return nil, source.Problems{{Place: at, Text: fmt.Sprintf("no house file at %s; like names one, such as \"../house.hcl\"", filepath.ToSlash(other))}}
		}
		for _, before := range chain {
			if was, err := os.Stat(filepath.FromSlash(before)); err == nil && os.SameFile(was, info) {
				return nil, source.Problems{{Place: at, Text: "houses that are like each other in a circle: " + strings.Join(append(chain, filepath.ToSlash(other)), ", ") + "; take one like out"}}
			}
		}
		if len(chain) >= MaxJoined {
			return nil, source.Problems{{Place: at, Text: fmt.Sprintf("%d houses stand upon each other; %d is the most", len(chain)+1, MaxJoined)}}
		}
		return readHouse(other, chain)
	})
}

// ShippedPacks lists the packs in the program, in order of name. The cautions are not among them: they are no pack.
func ShippedPacks() []string { return packNames(rules.Files) }

func packNames(files fs.FS) []string {
	entries, _ := fs.ReadDir(files, ".")
	var names []string
	for _, entry := range entries {
		if name, ok := strings.CutSuffix(entry.Name(), ".hcl"); ok && isNoPack(name) == "" {
			names = append(names, name)
		}
	}
	return names
}

// readPacks reads the packs that a house names, or all shipped ones, and always the files that are
// no packs. The packs are parsed, then their figures are checked together, then their rules are
// read; each pack on its own goroutine.
func (e *Engine) readPacks(h *house.House, trials bool) ([]*rule.Pack, source.Problems) {
	var named []house.Named
	for _, f := range inForce {
		named = append(named, house.Named{Name: f.file})
	}
	if h.Packs == nil {
		for _, name := range packNames(e.shipped) {
			named = append(named, house.Named{Name: name})
		}
	}
	named = append(named, h.Packs...)
	drafts := make([]*rule.Draft, len(named))
	faults := make([]source.Problems, len(named))
	together(len(named), func(i int) {
		drafts[i], faults[i] = e.openPack(named[i], rule.Options{Trials: trials, Formula: h.FormulaOptions(), Version: Version})
	})
	figures := rule.Figures(drafts)
	packs := make([]*rule.Pack, len(named))
	together(len(named), func(i int) {
		if drafts[i] != nil {
			packs[i], faults[i] = drafts[i].Read(figures)
		}
	})
	return packs, slices.Concat(faults...).Sort()
}

// together calls a function for each of n things at once, and waits for all.
func together(n int, do func(i int)) {
	var wait sync.WaitGroup
	for i := range n {
		wait.Go(func() { do(i) })
	}
	wait.Wait()
}

// openPack parses one pack: a shipped one by its name, or a file or folder that starts with "./" or
// "../". It gives nil where there is none.
func (e *Engine) openPack(n house.Named, o rule.Options) (*rule.Draft, source.Problems) {
	if !strings.HasPrefix(n.Name, "./") && !strings.HasPrefix(n.Name, "../") {
		if says := isNoPack(n.Name); says != "" && !n.Place.IsZero() {
			return nil, source.Problems{{Place: n.Place, Text: says}}
		}
		text, err := fs.ReadFile(e.shipped, n.Name+".hcl")
		if err != nil {
			return nil, source.Problems{{Place: n.Place, Text: reading.UnknownText("pack", n.Name, "the program", packNames(e.shipped)) + "; a pack of your own starts with \"./\""}}
		}
		o.Shipped = true
		return rule.Open(n.Name, []*source.File{source.New("rules/"+n.Name+".hcl", text)}, o), nil
	}
	path := filepath.Join(filepath.Dir(filepath.FromSlash(n.Place.File.Name)), filepath.FromSlash(n.Name))
	files, err := packFiles(path)
	if err != nil || len(files) == 0 {
		return nil, source.Problems{{Place: n.Place, Text: fmt.Sprintf("no pack at %s: name a rule file, or a folder that holds some (*.hcl)", filepath.ToSlash(path))}}
	}
	return rule.Open(n.Name, files, o), nil
}

// packFiles reads the files of a pack, in order of name.
func packFiles(path string) ([]*source.File, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, err
	}
	paths := []string{path}
	if info.IsDir() {
		if paths, err = filepath.Glob(filepath.Join(path, "*.hcl")); err != nil {
			return nil, err
		}
		sort.Strings(paths)
	}
	var files []*source.File
	for _, p := range paths {
		text, err := os.ReadFile(p)
		if err != nil {
			return nil, err
		}
		files = append(files, source.New(filepath.ToSlash(p), text))
	}
	return files, nil
}

// ReadFormulas reads the formulas of one file. They are usable only when there are no problems.
func ReadFormulas(f *source.File, h *house.House) ([]*formula.Formula, source.Problems) {
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return nil, problems
	}
	return readFormulas(f, body, h.FormulaOptions())
}

func readFormulas(f *source.File, body *hclsyntax.Body, o formula.Options) ([]*formula.Formula, source.Problems) {
	r := &reading.Reader{File: f}
	for _, b := range body.Blocks {
		if slices.Contains(rule.Blocks, b.Type) {
			r.Fault(r.Place(b.TypeRange), "this file holds rules, not formulas; name it under packs in house.hcl, and run forebake trial")
			return nil, r.Problems
		}
		switch b.Type {
		case "backlog":
			r.Fault(r.Place(b.TypeRange), "this is a backlog, not a formula; give it to a check with --backlog")
			return nil, r.Problems
		case "house":
			r.Fault(r.Place(b.TypeRange), "this is a house file, not a formula; it is found by itself when a formula beside or below it is checked")
			return nil, r.Problems
		case "set", "waive", "kitchen", "tin", "ingredient":
			r.Fault(r.Place(b.TypeRange), "%s is a block of the house file: write it in house.hcl, inside house \"our kitchen\" { ... }", b.Type)
			return nil, r.Problems
		}
	}
	r.Known(body, "a formula file", nil, []string{"formula"})
	var out []*formula.Formula
	for _, b := range body.Blocks {
		if b.Type != "formula" {
			continue
		}
		one := formula.Read(r, b, o)
		for _, other := range out {
			if other.Name == one.Name {
				r.Fault(one.Place, "two formulas are named %q; the other is at line %d; give one of them another name", source.Safe(one.Name), other.Place.Line())
			}
		}
		out = append(out, one)
	}
	if len(out) == 0 && len(r.Problems) == 0 {
		r.Fault(source.Place{File: f}, "no formula in this file: write formula \"name\" { ... }")
	}
	return out, r.Problems.Sort()
}

// Check judges every formula of the inputs. The answers are the same bytes whatever the number of workers.
func (e *Engine) Check(inputs []Input) *Result {
	inputs = slices.Clone(inputs)
	slices.SortStableFunc(inputs, func(a, b Input) int { return strings.Compare(a.Name, b.Name) }) // whatever order they were named in
	res := &Result{FailAt: map[string]finding.Level{}}
	loaded, problems := e.loadAll(inputs)
	res.Problems = problems
	for i, l := range loaded {
		if l == nil {
			continue
		}
		if !slices.Contains(res.houses, l) {
			res.houses = append(res.houses, l)
		}
		res.FailAt[inputs[i].Name] = l.House.FailAt
		res.Totals.Rules = max(res.Totals.Rules, len(l.Rules.Rules))
	}
	for _, l := range e.houses {
		res.Notices = append(res.Notices, l.Rules.Notices...)
	}
	sort.Strings(res.Notices)

	today := e.Today
	if today.IsZero() {
		today = time.Now()
	}
	one := make([]fileResult, len(inputs))
	crew := make([]*worker, crewSize(e.Workers, len(inputs)))
	for k := range crew {
		crew[k] = newWorker()
		crew[k].timed = e.Timed
	}
	each(len(inputs), len(crew), func(k, i int) {
		if loaded[i] != nil {
			one[i] = crew[k].check(inputs[i], loaded[i])
		}
	})
	res.addTimes(crew)
	for i := range one {
		res.Findings = append(res.Findings, one[i].findings...)
		res.Cautions = append(res.Cautions, one[i].cautions...)
		res.Formulas = append(res.Formulas, one[i].formulas...)
		res.Problems = append(res.Problems, one[i].problems...)
	}
	res.addHouses(inputs, loaded, one, today)
	res.Totals.Formulas = len(res.Formulas)
	finding.Sort(res.Findings)
	for _, f := range res.Findings {
		res.Totals.Count(f)
	}
	res.Problems = res.Problems.Sort()
	return res
}

// fileResult is what one file gave.
type fileResult struct {
	formulas []Checked
	findings []*finding.Finding
	cautions []*finding.Caution
	problems source.Problems
}

// worker checks files one after the other with one sheet and one judge.
type worker struct {
	sheet facts.Sheet
	judge *rule.Judge
	timed bool
	times map[string]*finding.RuleTime // by rule; of a timed run
}

func newWorker() *worker { return &worker{judge: rule.NewJudge()} }

func (w *worker) check(in Input, l *Loaded) (out fileResult) {
	text := in.Text
	if in.Path != "" {
		var err error
		if text, err = readFormula(in.Path); err != nil {
			out.problems = source.Problems{{Text: fmt.Sprintf("%s: %s", in.Name, err)}}
			return out
		}
	}
	list, problems := ReadFormulas(source.New(in.Name, text), l.House)
	if len(problems) > 0 {
		out.problems = problems
		return out
	}
	for _, f := range list {
		out.formulas = append(out.formulas, Checked{f.Name, f.Place})
		w.sheet.Reset(f, l.House.Kitchen)
		w.judge.Open(&w.sheet)
		if w.timed {
			w.judgeTimed(f, l, &out)
			continue
		}
		for _, r := range l.Rules.Rules {
			out.findings = w.judge.Findings(r, out.findings)
		}
		out.cautions = w.cautions(l, out.cautions)
	}
	if len(out.findings) > rule.MaxFindings {
		return fileResult{problems: source.Problems{{Place: list[0].Place, Text: fmt.Sprintf("more than %d findings in one file; give its formulas files of their own, or see with check --timing which rule looks at so much", rule.MaxFindings)}}}
	}
	return out
}

func (w *worker) cautions(l *Loaded, out []*finding.Caution) []*finding.Caution {
	for _, c := range l.Rules.Cautions {
		if shown := w.judge.Cautions(c); shown != nil {
			out = append(out, shown)
		}
	}
	return out
}

// readFormula reads a file, but not one that is far too large to be a formula: the guard would refuse it anyway.
func readFormula(path string) ([]byte, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, err
	}
	if info.IsDir() {
		return nil, fmt.Errorf("is a folder")
	}
	if info.Size() > source.MaxFileBytes {
		return nil, fmt.Errorf("%d KB is too large for a formula file; %d KB is the most", info.Size()>>10, source.MaxFileBytes>>10)
	}
	return os.ReadFile(path)
}
