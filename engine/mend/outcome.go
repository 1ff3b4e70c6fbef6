package mend

import (
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/finding"
	"forebake/engine/mend/levers"
	"forebake/engine/source"
)

// outcome words what was found: the lines that differ, the changes, the
// findings that are left.
func (m *Mender) outcome(base, now *version, list []*change) *Outcome {
	o := &Outcome{Text: now.text}
	at := base.formula.Place
	o.Mending = finding.Mending{Formula: base.formula.Name, File: base.file.Name, Line: at.Line()}
	for _, d := range source.Compare(base.text, now.text) {
		o.Mending.Lines = append(o.Mending.Lines, finding.ChangedLines(d))
	}
	o.Mending.Doubted = doubted(now.text, o.Mending.Lines)
	o.Mending.Worse = m.worse(base, now)
	m.reportChanges(o, base, now, list)
	for _, q := range m.flagged(now) {
		m.reportLeft(o, now, q)
	}
	o.Mending.Spent = m.budgetSpent()
	return o
}

// worse lists every answer that is worse than it was for the text as written,
// of any rule.
func (m *Mender) worse(base, now *version) []finding.Worse {
	var list []question
	for q, a := range now.answers {
		if rank(a) > rank(base.answers[q]) {
			list = append(list, q)
		}
	}
	m.sortQuestions(list, now)
	var out []finding.Worse
	for _, q := range list {
		f := m.finding(now, q)
		out = append(out, finding.Worse{
			Rule: q.Rule.ID, Subject: f.Subject, Level: f.Level, Line: f.Place.Line(),
			Was: base.answers[q], Is: now.answers[q],
		})
	}
	return out
}

// doubted lists the comments that end a changed line: the program cannot read
// whether they are still true.
func doubted(text []byte, lines []finding.ChangedLines) []finding.Doubted {
	comments := map[int]string{}
	tokens, _ := hclsyntax.LexConfig(text, "", hcl.InitialPos)
	for _, t := range tokens {
		if t.Type == hclsyntax.TokenComment {
			comments[t.Range.Start.Line] = strings.TrimSpace(string(t.Bytes))
		}
	}
	var out []finding.Doubted
	for _, d := range lines {
		for i, line := range d.New {
			comment := comments[d.NewLine+i]
			alone := strings.TrimSpace(line) == comment
			if comment != "" && !alone {
				out = append(out, finding.Doubted{Line: d.NewLine + i, Text: comment})
			}
		}
	}
	return out
}

// reportChanges words each change with the findings that it cleared.
func (m *Mender) reportChanges(o *Outcome, base, now *version, list []*change) {
	steps := m.stepwise(base, list)
	clearedBy := m.clearedBy(base, now, steps)
	from := base
	for i, v := range steps {
		c := list[i]
		one := finding.Change{Mend: finding.Mend{Text: c.describe(from), Trust: c.trust}}
		for _, q := range m.flagged(base) {
			if at, cleared := clearedBy[q]; !cleared || at != i {
				continue
			}
			f := m.finding(base, q)
			one.Rules = append(one.Rules, finding.Helped{
				Rule: q.Rule.ID, Subject: f.Subject, Level: f.Level, Line: f.Place.Line(),
				Unsure: now.answers[q] == finding.Unsure,
			})
			for _, figure := range m.changedFigures(q, base, now) {
				one.Figures = withNew(one.Figures, figure)
			}
		}
		if len(list) > 1 {
			one.Alone = m.differs(base, c)
		}
		if len(one.Rules) == 0 {
			for _, q := range c.questions {
				one.With = withNew(one.With, q.Rule.ID)
			}
		}
		o.Mending.Changes = append(o.Mending.Changes, one)
		from = v
	}
}

// stepwise gives the version after each change, with every rule judged, and
// notes the edits.
func (m *Mender) stepwise(base *version, list []*change) []*version {
	var out []*version
	v := base
	for _, c := range list {
		next, edits, err := m.change(v, c.lever, c.to)
		if err != nil {
			break // cannot happen: the same changes were replayed before
		}
		m.judgeAll(next)
		c.edits = edits
		v = next
		out = append(out, v)
	}
	return out
}

// clearedBy says which change cleared each finding. One lever may serve several
// findings, and two may serve one: the last that made the answer better counts.
func (m *Mender) clearedBy(base, now *version, steps []*version) map[question]int {
	out := map[question]int{}
	for _, q := range m.flagged(base) {
		if now.answers[q] == finding.Flagged {
			continue
		}
		before := base
		for i, v := range steps {
			if rank(v.answers[q]) < rank(before.answers[q]) {
				out[q] = i
			}
			before = v
		}
	}
	return out
}

// withNew adds an item to a list that lacks it.
func withNew[T comparable](list []T, item T) []T {
	if slices.Contains(list, item) {
		return list
	}
	return append(list, item)
}

// changedFigures gives the figures behind a finding that differ between two versions.
func (m *Mender) changedFigures(q question, before, after *version) []finding.BeforeAfter {
	a, b := m.finding(before, q), m.finding(after, q)
	var out []finding.BeforeAfter
	for i, was := range a.Figures {
		if i >= len(b.Figures) || was.Kind == "limit" || !was.Numeric && was.Text == "" {
			continue
		}
		if is := b.Figures[i]; is.Shown != was.Shown {
			out = append(out, finding.BeforeAfter{
				Label: was.Label, Subject: a.Subject, Before: withError(was), After: withError(is),
			})
		}
	}
	return out
}

// withError shows a figure with the error of its model.
func withError(f *finding.Figure) string {
	if f.Error != "" && f.Error != strings.TrimPrefix(f.Shown, "about ") {
		return f.Shown + " (" + f.Error + ")"
	}
	return f.Shown
}

// reportLeft words a finding that is left, and why.
func (m *Mender) reportLeft(o *Outcome, now *version, q question) {
	f := m.finding(now, q)
	o.After = append(o.After, f)
	left := finding.Left{
		Rule: q.Rule.ID, Subject: f.Subject, Level: f.Level, Line: f.Place.Line(),
	}
	if choice := m.choice(now, q); choice != nil {
		o.Mending.Choose(*choice)
		left.Why = "it is a matter of taste: see above"
		if choice.Trust != finding.Taste {
			left.Why = "the change is larger than a note is worth: see above"
		}
	} else {
		m.explain(now, q, &left)
	}
	o.Mending.Left = append(o.Mending.Left, left)
}

// choice gives a change of taste for a finding that is left.
func (m *Mender) choice(v *version, q question) *finding.Change {
	if m.Taste {
		return nil
	}
	const withTaste = true
	c := m.best(v, q, withTaste)
	if c == nil || !c.forBaker() && m.level(v, q) < finding.Note || !c.harmless() {
		return nil
	}
	f := m.finding(v, q)
	return &finding.Change{
		Mend: finding.Mend{Text: c.describe(v), Trust: c.trust},
		Rules: []finding.Helped{{
			Rule: q.Rule.ID, Subject: f.Subject, Level: f.Level,
			Unsure: c.answer == finding.Unsure,
		}},
	}
}

// explain says why a finding is left, and what a baker would do about it.
func (m *Mender) explain(v *version, q question, left *finding.Left) {
	if len(q.Rule.Adjust) == 0 {
		left.Why = "no value of the formula is named for it"
		left.Instead = advice(m.finding(v, q).Text)
		return
	}
	for i := range q.Rule.Adjust {
		if left.Instead == "" {
			left.Instead = levers.Instead(m.query(v, q, &q.Rule.Adjust[i]))
		}
	}
	if left.Instead == "" {
		left.Instead = advice(m.finding(v, q).Text)
	}
	if m.explainTried(v, q, left) {
		return
	}
	var tried []string
	for i := range q.Rule.Adjust {
		for _, l := range m.levers(v, q, &q.Rule.Adjust[i]) {
			tried = withNew(tried, l.Kind.Noun(l, v.formula))
		}
	}
	if left.Why = m.wish(v, q); left.Why != "" {
		return
	}
	left.Why = "the formula writes no value that would clear it"
	if len(tried) > 0 {
		left.Why = "no value within reason clears it: tried " + strings.Join(tried, "; ")
	}
}

// explainTried says why the first candidate with a reason was not accepted.
func (m *Mender) explainTried(v *version, q question, left *finding.Left) bool {
	for i := range q.Rule.Adjust {
		for _, c := range m.candidates(v, q, &q.Rule.Adjust[i]) {
			if m.level(v, q) == finding.Note && c.isLarge() && c.next != nil {
				continue // nobody would make it
			}
			if m.explainCandidate(v, q, c, left) {
				return true
			}
		}
	}
	return false
}

// wish words the wish of the baker that would have to change; "" for none.
func (m *Mender) wish(v *version, q question) string {
	const own = "it is what you want to reach, and a mend leaves it to you"
	text := ""
	for i := range q.Rule.Adjust {
		for _, l := range m.wishes(v, q, &q.Rule.Adjust[i]) {
			c := m.newSearch(v, q, l).best()
			if c != nil && c.harmless() && c.answer == finding.Clear {
				return c.describe(v) + " would clear it; " + own
			}
			if text == "" {
				text = l.Kind.Noun(l, v.formula) + " would have to change; " + own
			}
		}
	}
	return text
}

// advice gives what a message says to do: all but its first sentence.
func advice(message string) string {
	for at := 0; ; {
		end := strings.Index(message[at:], ". ")
		if end < 0 {
			return ""
		}
		at += end + len(". ")
		if word := message[:at]; !strings.HasSuffix(word, " S. ") && word != "S. " &&
			!strings.HasSuffix(word, " B. ") && word != "B. " {
			return strings.TrimSuffix(message[at:], ".")
		}
	}
}

// explainCandidate says why a candidate was not accepted. It reports false
// where it has no reason.
func (m *Mender) explainCandidate(v *version, q question, c *candidate, left *finding.Left) bool {
	switch {
	case len(m.disputes[q]) > 0 && c.next != nil:
		left.Why = c.describe(v) + " would clear it, and take it further from the other"
		for _, other := range m.disputes[q] {
			left.Against = withNew(left.Against, other.Rule.ID)
		}
	case c.lever.IsAdvice():
		left.Why = c.describe(v)
	case !c.harmless():
		explainHarm(v, c, left)
	default:
		return false
	}
	return true
}

// explainHarm names the rules that a candidate would make worse, and the
// nearest harmless value.
func explainHarm(v *version, c *candidate, left *finding.Left) {
	var unsure []string
	for _, q := range c.worsens {
		if c.next.answers[q] == finding.Unsure {
			unsure = withNew(unsure, q.Rule.ID)
		} else {
			left.Against = withNew(left.Against, q.Rule.ID)
		}
	}
	left.Why = c.describe(v) + " would clear it"
	if len(left.Against) > 0 {
		left.Why += ", and bring " + strings.Join(left.Against, ", ")
	}
	if len(unsure) > 0 {
		left.Why += ", and leave " + strings.Join(unsure, ", ") + " unsure"
	}
	if c.farthest != nil {
		left.Nearest = c.farthest.describe(v)
	}
}
