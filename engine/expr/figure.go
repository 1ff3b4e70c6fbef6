package expr

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"forebake/engine/expr/subject"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// MaxDeclared bounds the figures that one pack declares.
const MaxDeclared = 100

const maxNameLength = 64

// FigureKeys are the keys of a figure block.
var FigureKeys = []string{"on", "is", "unit", "means"}

// Figure is a figure that a rule file declares: a named expression, which
// conditions, messages and other figures read like the program's facts.
type Figure struct {
	Name    string
	Pack    string
	Place   source.Place
	Subject *subject.Subject
	Means   string
	Is      *Expr
	Fact    *facts.Fact // nil while the figure is not checked, and of a faulty one

	r       *reading.Reader // of its file
	is      hclsyntax.Expression
	written string // the unit, as written
	unitAt  source.Place
	state   figureState
	wrong   bool // its block has a fault beside what it is
}

type figureState uint8

const (
	unchecked figureState = iota
	checking              // a figure that reads one in this state is computed from itself
	checked
	faulty
)

// Figures are those that a house's rule files declare, beside the
// program's own. A nil *Figures holds the program's own only. After Check
// they do not change, and several goroutines may read them.
type Figures struct {
	list  []*Figure
	stack []*Figure // those being checked, the outermost first
}

// List gives the declared figures in file order. The caller must not
// change it.
func (s *Figures) List() []*Figure {
	if s == nil {
		return nil
	}
	return s.list
}

// All gives the facts of one kind of subject: the program's, then
// the declared.
func (s *Figures) All(on facts.On) []*facts.Fact {
	list := facts.All(on)
	for _, f := range s.List() {
		if f.Fact != nil && f.Subject.On == on {
			list = append(slices.Clip(list), f.Fact)
		}
	}
	return list
}

func (s *Figures) names(on facts.On) []string {
	var list []string
	for _, f := range facts.All(on) {
		list = append(list, f.Name)
	}
	for _, f := range s.List() {
		if f.Subject != nil && f.Subject.On == on {
			list = append(list, f.Name)
		}
	}
	return list
}

// errFaulty is the error of a reference to a figure with faults of
// its own.
var errFaulty = errors.New("the figure has faults")

// find finds a fact by subject and name, nil for none. It checks a
// declared one first, if unchecked.
func (s *Figures) find(on facts.On, name string) (*facts.Fact, error) {
	if f, ok := facts.Find(on, name); ok {
		return f, nil
	}
	for _, f := range s.List() {
		if f.Name != name || f.Subject != nil && f.Subject.On != on {
			continue
		}
		switch f.state {
		case unchecked:
			s.check(f)
		case checking:
			return nil, s.circle(f)
		}
		if f.state == faulty {
			return nil, errFaulty
		}
		return f.Fact, nil
	}
	return nil, nil
}

// circle names the figures through which a figure is computed
// from itself.
func (s *Figures) circle(f *Figure) error {
	var names []string
	for _, g := range s.stack[slices.Index(s.stack, f):] {
		names = append(names, g.Name)
	}
	if len(names) == 1 {
		return fmt.Errorf("figure %q is computed from itself; write what it is without it", f.Name)
	}
	return fmt.Errorf("figure %q is computed from itself, by way of %s; write one of them "+
		"without the next",
		f.Name, strings.Join(names[1:], ", "))
}

// IsName reports whether a name is of lower-case letters and figures, begins with a letter, and has
// one sign between its words.
func IsName(name string, between byte) bool {
	begins := true // a word does
	for i := range len(name) {
		switch c := name[i]; {
		case c >= 'a' && c <= 'z', c >= '0' && c <= '9' && i > 0:
			begins = false
		case c == between && !begins:
			begins = true
		default:
			return false
		}
	}
	return !begins
}

// missing says what to write for a key that a figure needs.
var missing = map[string]string{
	"on":    subject.HowOn,
	"is":    `add is = "dough.fat_pct + dough.egg_pct"`,
	"means": `add means = "what it is, in one line"`,
}

// Read reads a figure block except its expression, which may name figures
// of other files.
func (s *Figures) Read(r *reading.Reader, b *hclsyntax.Block, pack string) {
	before := len(r.Problems)
	f := &Figure{Pack: pack, r: r}
	f.Name, f.Place = r.Label(b)
	named := strings.TrimSpace(f.Name) != ""
	if named && (!IsName(f.Name, '_') || len(f.Name) > maxNameLength) {
		r.Fault(f.Place,
			"a figure's name is small letters, digits and single underscores, such as "+
				"\"richness_pct\"; not %q",
			source.Safe(f.Name))
	}
	r.Known(b.Body, "a figure", FigureKeys, nil)
	attr := b.Body.Attributes
	for _, key := range []string{"on", "is", "means"} {
		if attr[key] == nil {
			r.Fault(f.Place, "figure %q has no %s; %s", source.Safe(f.Name), key, missing[key])
		}
	}
	f.Subject = subject.Read(r, attr["on"], "figure")
	if a := attr["is"]; a != nil {
		f.is = a.Expr
	}
	if a := attr["means"]; a != nil {
		f.Means = s.readMeans(r, a.Expr)
	}
	if a := attr["unit"]; a != nil {
		f.written, f.unitAt = readUnit(r, a.Expr)
	}
	if f.Subject != nil {
		s.unique(f)
	}
	if s.ofPack(pack) == MaxDeclared { // told once
		r.Fault(f.Place, "more than %d figures are declared in one pack;"+
			" write some of them into the rules that read them", MaxDeclared)
	}
	f.wrong = len(r.Problems) > before
	if f.is == nil || f.Subject == nil || s.ofPack(pack) >= MaxDeclared {
		f.state = faulty
	}
	if named {
		s.list = append(s.list, f)
	}
}

// ofPack counts the figures of a pack.
func (s *Figures) ofPack(pack string) int {
	n := 0
	for _, f := range s.list {
		if f.Pack == pack {
			n++
		}
	}
	return n
}

// MaxMeansBytes bounds the line that says what a figure is, since every
// list of figures prints it.
const MaxMeansBytes = 256

func (s *Figures) readMeans(r *reading.Reader, e hclsyntax.Expression) string {
	text, at, ok := r.Text(e, "means")
	switch {
	case !ok:
	case strings.TrimSpace(text) == "":
		r.Fault(at, "means is empty; %s", strings.Replace(missing["means"], "add", "write", 1))
	case len(text) > MaxMeansBytes:
		r.Fault(at, "means is %d bytes long; %d is the most, since every list of figures prints it",
			len(text), MaxMeansBytes)
	case strings.ContainsAny(text, "\n\r"):
		r.Fault(at, "means is one line; take the line break out")
	}
	return text
}

// unique records a name that another fact of the same kind of
// subject has.
func (s *Figures) unique(f *Figure) {
	if _, own := facts.Find(f.Subject.On, f.Name); own {
		f.r.Fault(f.Place,
			"the program has a figure %q of its own, of %s; give this one another name",
			f.Name, facts.OnNames[f.Subject.On])
	}
	for _, o := range s.list {
		if o.Name == f.Name && o.Subject != nil && o.Subject.On == f.Subject.On {
			f.r.Fault(f.Place,
				"figure %q is declared already, at %s; give one of them another name",
				f.Name, o.Place)
		}
	}
}

// Units lists the units that figures are in.
func Units() []string {
	var list []string
	for on := range facts.OnNames {
		for _, f := range facts.All(facts.On(on)) {
			if f.Unit != "" && !slices.Contains(list, f.Unit) {
				list = append(list, f.Unit)
			}
		}
	}
	return list
}

func readUnit(r *reading.Reader, e hclsyntax.Expression) (string, source.Place) {
	unit, at, ok := r.Text(e, "unit")
	if ok && !slices.Contains(Units(), unit) {
		text := fmt.Sprintf("no unit %q", source.Safe(unit))
		if near := spelling.Nearest(unit, Units(), 3); len(near) > 0 {
			text += "; nearest is " + strings.Join(near, ", ")
		}
		r.Fault(at,
			"%s; leave unit out where the name ends in one, as fat_pct does, or where the figure "+
				"has none", text)
		return "", at
	}
	return unit, at
}

// Check checks the figures' types, names and units, and that none is
// computed from itself. It records problems with each file's reader.
func (s *Figures) Check() {
	for _, f := range s.list {
		if f.state == unchecked {
			s.check(f)
		}
	}
}

func (s *Figures) check(f *Figure) {
	f.state = checking
	s.stack = append(s.stack, f)
	f.Is = Parse(f.r, f.is, f.Names(s), "is")
	s.stack = s.stack[:len(s.stack)-1]
	f.state = faulty
	if f.Is == nil {
		return
	}
	if f.Is.Type() == facts.List {
		f.r.Fault(f.r.Place(f.is.Range()),
			"a figure is a number, a yes or no, or a text, and this is a list; ask what is in "+
				"it: 'milk' in part.allergens")
		return
	}
	unit, ok := f.settleUnit()
	if !ok || f.wrong {
		return
	}
	f.Fact = f.fact(unit, slices.Index(s.list, f))
	f.state = checked
}

// Names gives the names in the figure's expression their meaning.
func (f *Figure) Names(s *Figures) *Names {
	return &Names{Subject: f.Subject, Figures: s, inFigure: true}
}

// settleUnit gives the figure's unit, and records why none fits.
func (f *Figure) settleUnit() (unit string, ok bool) {
	at := f.unitAt
	if at.IsZero() {
		at = f.Place
	}
	ending := figure.UnitOf(f.Name)
	if f.Is.Type() != facts.Number {
		if ending != "" || f.written != "" {
			f.r.Fault(at,
				"figure %q is a %s, which has no unit; leave unit out, and end its name otherwise",
				f.Name, typeName(f.Is.Type()))
			return "", false
		}
		return "", true
	}
	unit, fault := f.Is.measure.unitOf(f.Name, ending, f.written)
	if fault != "" {
		f.r.Fault(at, "%s", fault)
	}
	return unit, fault == ""
}

// fact makes the fact of a checked figure. Its error and remedy come from
// what it reads.
func (f *Figure) fact(unit string, index int) *facts.Fact {
	var errs, remedies []string
	for i := range f.Is.reads {
		r := f.Is.reads[i].Fact
		if r.Error != "" {
			errs = append(errs, "that of "+r.Name+": "+r.Error)
		}
		if r.Settle != "" && !slices.Contains(remedies, r.Settle) {
			remedies = append(remedies, r.Settle)
		}
	}
	return facts.Declare(facts.Fact{
		Name: f.Name, On: f.Subject.On, Type: f.Is.Type(), Unit: unit, Means: f.Means,
		Source: fmt.Sprintf("computed: %s; declared at %s:%d",
			strings.Join(strings.Fields(f.Is.text), " "), f.Place.File.Name, f.Place.Line()),
		Error: strings.Join(errs, "; "), Settle: strings.Join(remedies, "; "),
		Verbs: f.Subject.Verbs, Kinds: f.Subject.Kinds,
	}, index, f)
}

// sizeOf is the power of ten that bounds a fact's magnitude.
func sizeOf(f *facts.Fact) int {
	if d, ok := f.Declared().(*Figure); ok {
		return max(factSize, d.Is.root.size)
	}
	return factSize
}
