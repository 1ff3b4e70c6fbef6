// Package mend looks for the smallest change of a formula that clears what the rules flag, and proves it.
//
// A rule's adjust blocks name its levers. A lever is set to what the block computes (exact), or searched: outward from
// the written value until the rule is clear, then back to the nearest value that a person can weigh or set. Every try is a
// real edit of the file's text, read again by the real reader and judged by the real judge; there is no second model of a
// formula here that could disagree with the first. Inside a search only the rule at hand is judged; before a change is
// taken every rule is, and one that brings a finding of the same or a higher level, or makes a food-safety finding worse, is
// refused. After each round changes that others made needless are taken back, and the rest moved back as far as they can be.
//
// Package engine calls it and does the reading and writing of files. It prints nothing, writes nothing, and never picks what
// is a matter of taste unless asked to.
package mend

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// Mender mends formulas of one house, one at a time. It belongs to one goroutine.
type Mender struct {
	Kitchen *kitchen.Kitchen
	Rules   []*rule.Rule
	Options formula.Options
	Taste   bool                            // make the baker's choices too
	Waived  func(rule, formula string) bool // what the house sets aside: it is not mended, but no mend may worsen food safety behind it

	// Judgements counts the answers asked for, Reads how often a changed text was read, since the mender was made.
	Judgements, Reads int

	index int // which formula block of the file
	name  string
	sheet facts.Sheet
	judge *rule.Judge
	open  *state // whose figures the sheet holds
	found map[asked][]*candidate

	disputes map[key][]key // findings that pull one lever opposite ways
}

// asked is a question that the search need not answer twice: what an adjust block can do for a finding of one version;
// with the block nil, what two together can.
type asked struct {
	state  *state
	key    key
	adjust *rule.Adjust
}

// isSafety tells whether a rule is about food safety: no mend may worsen what it says.
func isSafety(r *rule.Rule) bool { return r.Safety }

// key names a rule's answer on a subject in a way that outlives an edit: serials and indexes stay, since a mend adds
// ingredients at the end of a list only.
type key struct {
	rule        *rule.Rule
	on          facts.On
	part, index int
}

func keyOf(r *rule.Rule, x facts.Subject) key {
	k := key{rule: r, on: x.On}
	if x.Part != nil {
		k.part = x.Part.Serial
	}
	switch x.On {
	case facts.OnStep:
		k.index = x.Step.Index
	case facts.OnIngredient:
		k.index = indexOf(x.Ingredient)
	}
	return k
}

func (k key) subject(f *formula.Formula) facts.Subject {
	x := facts.Subject{On: k.on}
	if k.on == facts.OnFormula || k.on == facts.OnKitchen {
		return x
	}
	x.Part = f.Parts[k.part]
	switch k.on {
	case facts.OnStep:
		x.Step = x.Part.Steps[k.index]
	case facts.OnIngredient:
		x.Ingredient = x.Part.Ingredients[k.index]
	}
	return x
}

// state is one version of the text with what was read from it.
type state struct {
	text    []byte
	file    *source.File
	formula *formula.Formula
	answers map[key]finding.Answer // that are not clear; nil until all rules were judged
	excess  map[key]float64        // how far each of them is from clear
	draft   bool                   // amounts are still open: what is unsure for them is not a mend's doing
}

// read reads a version of the text.
func (m *Mender) read(text []byte) (*state, error) {
	m.Reads++
	s := &state{text: text, file: source.New(m.name, text)}
	body, problems := source.Parse(s.file)
	if len(problems) > 0 {
		return nil, problems
	}
	n := 0
	for _, b := range body.Blocks {
		if b.Type != "formula" {
			continue
		}
		if n == m.index {
			r := &reading.Reader{File: s.file}
			s.formula = formula.Read(r, b, m.Options)
			for _, p := range s.formula.Parts {
				for _, in := range p.Ingredients {
					s.draft = s.draft || in.Amount.Open
				}
			}
			return s, r.Problems.Err()
		}
		n++
	}
	return nil, errors.New("the formula is not there")
}

// use turns sheet and judge to a version.
func (m *Mender) use(s *state) {
	if m.judge == nil {
		m.judge = rule.NewJudge()
	}
	if m.open != s {
		m.sheet.Reset(s.formula, m.Kitchen)
		m.judge.Open(&m.sheet)
		m.open = s
	}
}

// judgeAll judges every rule on a version, once.
func (m *Mender) judgeAll(s *state) {
	if s.answers != nil {
		return
	}
	m.use(s)
	s.answers, s.excess = map[key]finding.Answer{}, map[key]float64{}
	for _, r := range m.Rules {
		aside := m.Waived != nil && m.Waived(r.ID, s.formula.Name)
		if aside && !isSafety(r) {
			continue
		}
		m.judge.Each(r, func(x facts.Subject, a finding.Answer) {
			m.Judgements++
			if a == finding.Clear {
				return
			}
			k := keyOf(r, x)
			if s.answers[k] = a; aside {
				s.answers[k] = finding.Waived
			}
			s.excess[k] = m.judge.Excess(r, x)
		})
	}
}

// ask judges one rule on one subject.
func (m *Mender) ask(s *state, k key) finding.Answer {
	if s.answers != nil {
		return s.answers[k]
	}
	m.use(s)
	m.Judgements++
	return m.judge.Answer(k.rule, k.subject(s.formula))
}

// rank orders answers from good to bad.
func rank(a finding.Answer) int {
	switch a {
	case finding.Clear:
		return 0
	case finding.Unsure:
		return 1
	}
	return 2
}

// worse lists what a change to next makes worse, of the same level or a higher one, and of food safety at any level. An
// answer that was clear and no longer is sure counts too, but not in a draft: there an amount that is still open leaves
// whatever a new figure lets be asked unsure.
func worse(before, next *state, level finding.Level) []key {
	var out []key
	for k, a := range next.answers {
		safety := isSafety(k.rule)
		if k.rule.Level > level && !safety {
			continue
		}
		if rank(a) > rank(before.answers[k]) && !(a == finding.Unsure && before.draft) || safety && next.excess[k] > before.excess[k]+1e-6 {
			out = append(out, k)
		}
	}
	sortKeys(out)
	return out
}

// sortKeys puts food safety first, then goes by level; then what a rule computes comes before what is searched, amounts
// before steps, and the formula as a whole, which hangs on all of them, last.
func sortKeys(list []key) {
	yes := func(b bool) int {
		if b {
			return 0
		}
		return 1
	}
	computed := func(r *rule.Rule) bool { return len(r.Adjust) > 0 && r.Adjust[0].To != nil }
	slices.SortFunc(list, func(a, b key) int {
		return cmp.Or(cmp.Compare(yes(isSafety(a.rule)), yes(isSafety(b.rule))), cmp.Compare(a.rule.Level, b.rule.Level),
			cmp.Compare(yes(a.on != facts.OnFormula), yes(b.on != facts.OnFormula)), cmp.Compare(yes(computed(a.rule)), yes(computed(b.rule))),
			cmp.Compare(a.on, b.on), cmp.Compare(a.part, b.part), cmp.Compare(a.index, b.index), cmp.Compare(a.rule.ID, b.rule.ID))
	})
}

// flagged lists the findings of a version in the order in which they are taken up.
func flagged(s *state) []key {
	var out []key
	for k, a := range s.answers {
		if a == finding.Flagged {
			out = append(out, k)
		}
	}
	sortKeys(out)
	return out
}

// turned applies a lever to a version and reads the result.
func (m *Mender) turned(s *state, l *lever, x float64, word string) (*state, []source.Edit, error) {
	c, err := formula.NewChanger(s.file)
	if err != nil {
		return nil, nil, err
	}
	edits, err := l.set(c, s.formula, x, word)
	if err != nil {
		return nil, nil, err
	}
	text, err := source.Apply(s.text, edits)
	if err != nil {
		return nil, nil, err
	}
	next, err := m.read(text)
	return next, edits, err
}

// proven tells whether an edit changed the values that its lever turns and no others.
func proven(l *lever, before, after *formula.Formula) error {
	names := formula.Differ(before, after)
	most := 1
	switch l.turn {
	case turnClass, turnTins, turnBatch, turnKind, turnCool:
		most = len(names)
	}
	if len(names) == 0 || len(names) > most {
		slices.Sort(names)
		return fmt.Errorf("the edit would change %d values (%q) and not one", len(names), names)
	}
	return nil
}
