package mend

import (
	"errors"
	"fmt"
	"slices"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/formula/edit"
	"forebake/engine/formula/read"
	"forebake/engine/mend/asked"
	"forebake/engine/mend/levers"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// version is one text of the formula with what was read from it.
type version struct {
	text    []byte
	file    *source.File
	formula *formula.Formula
	draft   bool          // some amounts are still open
	changer *edit.Changer // nil until a lever was set

	answers map[question]finding.Answer // that are not clear; nil until all rules were judged
	excess  map[question]float64        // how far each of them is from clear
	levels  map[question]finding.Level  // of those that are flagged
	outside []float64                   // of a figure's published range; below 0 under it
	replies map[question]reply          // to questions that were asked alone
}

// reply is the answer to one question, and how far it is from clear.
type reply struct {
	answer finding.Answer
	excess float64
}

// mostKept bounds the texts of the versions that are kept, in bytes. Another
// search may come to the same text: those of a demo draft come up three times
// on average. A version takes some twenty times its text.
const mostKept = 2 << 20

// read gives the version of a text, the kept one where the text was read
// before.
func (m *Mender) read(text []byte) (*version, error) {
	if v := m.kept[string(text)]; v != nil {
		return v, nil
	}
	v, err := m.parse(text)
	if err != nil {
		return nil, err
	}
	if m.keptBytes += len(text); m.keptBytes > mostKept {
		clear(m.kept)
		m.keptBytes = len(text)
	}
	m.kept[string(text)] = v
	return v, nil
}

// parse reads a text that was not read before.
func (m *Mender) parse(text []byte) (*version, error) {
	m.Reads++
	v := &version{text: text, file: source.New(m.name, text)}
	body, problems := source.Parse(v.file)
	if len(problems) > 0 {
		return nil, problems
	}
	n := 0
	for _, b := range body.Blocks {
		if b.Type != "formula" {
			continue
		}
		if n == m.index {
			r := &reading.Reader{File: v.file}
			v.formula = read.Formula(r, b, m.Options)
			if m.Believe != nil && len(r.Problems) == 0 {
				m.Believe(v.formula)
			}
			v.draft = isDraft(v.formula)
			m.work += m.textWork(v.formula)
			return v, r.Problems.Err()
		}
		n++
	}
	return nil, errors.New("the formula is not there")
}

// textWork is the work of reading a text and judging it: its entries, once for each sheet that its
// open settings and ranges ask for.
func (m *Mender) textWork(f *formula.Formula) int {
	return (f.Ingredients + f.Steps) * (1 + facts.Readings(f, m.Kitchen))
}

// isDraft reports whether an amount of the formula is still open.
func isDraft(f *formula.Formula) bool {
	open := func(in *formula.Ingredient) bool { return in.Amount.Open }
	return slices.ContainsFunc(f.Parts, func(p *formula.Part) bool {
		return slices.ContainsFunc(p.Ingredients, open)
	})
}

// change sets a lever on a version and reads the result.
func (m *Mender) change(v *version, l *levers.Lever, to levers.Setting) (
	*version, []source.Edit, error,
) {
	// Most versions are never changed, so that their syntax tree is not kept.
	if v.changer == nil {
		c, err := edit.New(v.file)
		if err != nil {
			return nil, nil, err
		}
		v.changer = c
	}
	edits, err := l.Kind.Edit(l, &levers.Text{Changer: v.changer, Formula: v.formula}, to)
	if err != nil {
		return nil, nil, err
	}
	text, err := source.Apply(v.text, edits)
	if err != nil {
		return nil, nil, err
	}
	next, err := m.read(text)
	return next, edits, err
}

// prove gives an error unless an edit set the lever's value, and changed no
// more values than its kind may.
func prove(l *levers.Lever, before, after *formula.Formula, to levers.Setting) error {
	names := edit.Differ(before, after)
	traits := l.Kind.Traits()
	if len(names) == 0 {
		return errors.New("the edit would change nothing")
	}
	if len(names) > 1 && traits.Extent == levers.OneValue {
		slices.Sort(names)
		return fmt.Errorf("the edit would change %d values (%q) and not one", len(names), names)
	}
	if got := l.Kind.Value(l, after); traits.Basis == levers.Absolute && !got.Equals(to) {
		return fmt.Errorf("the edit would set %v and not %v", got, to)
	}
	return nil
}

// open loads a version into the sheet and the judge.
func (m *Mender) open(v *version) {
	if m.judge == nil {
		m.judge = rule.NewJudge()
	}
	if m.on != v {
		m.sheet.Reset(v.formula, m.Kitchen)
		m.judge.Open(&m.sheet)
		m.on = v
	}
}

// judgeAll judges every rule on a version, once.
func (m *Mender) judgeAll(v *version) {
	if v.answers != nil {
		return
	}
	m.open(v)
	v.answers, v.excess = map[question]finding.Answer{}, map[question]float64{}
	v.levels = map[question]finding.Level{}
	for _, r := range m.Rules {
		waived := m.Waived != nil && m.Waived(r.ID, v.formula.Name)
		if waived && !r.Safety {
			continue
		}
		m.judge.Each(r, func(x facts.Subject, a finding.Answer) {
			m.count()
			if a == finding.Clear {
				return
			}
			if waived {
				a = finding.Waived
			}
			q := asked.Of(r, x)
			v.answers[q], v.excess[q] = a, m.judge.Excess(r, x)
			if a == finding.Flagged {
				v.levels[q] = m.levelOf(r, x)
			}
		})
	}
}

// levelOf is the level of a finding. Where open seasonings are taken as usual, it
// may be that of the usual.
func (m *Mender) levelOf(r *rule.Rule, x facts.Subject) finding.Level {
	if m.sheet.Usual() != nil {
		return m.judge.Finding(r, x).Level
	}
	return m.judge.Level(r, x)
}

// count counts an answer.
func (m *Mender) count() {
	m.Judgements++
	m.work++
}

// ask judges one rule on one subject of a version, once.
func (m *Mender) ask(v *version, q question) reply {
	if r, known := v.replies[q]; known {
		return r
	}
	m.open(v)
	x := q.Subject(v.formula)
	r := reply{excess: m.judge.Excess(q.Rule, x)}
	if v.answers != nil {
		r.answer = v.answers[q]
	} else {
		m.count()
		r.answer = m.judge.Answer(q.Rule, x)
	}
	if v.replies == nil {
		v.replies = map[question]reply{}
	}
	v.replies[q] = r
	return r
}

// finding words a rule's answer on one subject of a version.
func (m *Mender) finding(v *version, q question) *finding.Finding {
	m.open(v)
	return m.judge.Finding(q.Rule, q.Subject(v.formula))
}

// levers lists the levers that an adjust block means for a finding, without the
// wishes of the baker.
func (m *Mender) levers(v *version, q question, a *rule.Adjust) []*levers.Lever {
	list := slices.DeleteFunc(levers.Find(m.query(v, q, a)), (*levers.Lever).IsWish)
	if v == m.written || !q.IsIn(m.written.formula) {
		return list
	}
	// Several changes of one value together keep within the bounds of one: those
	// of what the baker wrote.
	for _, asWritten := range levers.Find(m.query(m.written, q, a)) {
		for _, l := range list {
			if l.Same(asWritten) {
				l.Low, l.High = asWritten.Low, asWritten.High
			}
		}
	}
	return list
}

// wishes lists what an adjust block means and a mend leaves alone.
func (m *Mender) wishes(v *version, q question, a *rule.Adjust) []*levers.Lever {
	wish := func(l *levers.Lever) bool { return !l.IsWish() }
	return slices.DeleteFunc(levers.Find(m.query(v, q, a)), wish)
}

// query is what an adjust block asks for about a finding.
func (m *Mender) query(v *version, q question, a *rule.Adjust) *levers.Query {
	return &levers.Query{
		Name: a.Lever, Formula: v.formula, Subject: q.Subject(v.formula), Kitchen: m.Kitchen,
		Within: a.Within, Computed: a.To != nil,
	}
}
