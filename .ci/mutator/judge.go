package main

import (
	"fmt"
	"strings"

	"forebake/.ci/outside"
)

// verdict is what became of the answers of one mutation.
type verdict struct {
	clear, gone, opposite, fell, unsaid []string // violations, each told
	excused                             int
	model                               int
}

func (v *verdict) violated() bool {
	return len(v.clear)+len(v.gone)+len(v.opposite)+len(v.fell)+len(v.unsaid) > 0
}

// subjectKey tells one question from another: which rule asks it of what.
type subjectKey struct{ formula, rule, subject string }

type answers map[subjectKey][]outside.Finding

func byKey(findings []outside.Finding) answers {
	out := answers{}
	for _, f := range findings {
		k := subjectKey{f.Formula, f.Rule, f.Subject}
		out[k] = append(out[k], f)
	}
	return out
}

// rungs are the ends of names of rules that answer one question at three levels: the harsher speaks
// where the milder falls silent.
var rungs = []string{"-stop", "-risk", "-note"}

// rungOf gives what the rungs of one question have in common in their names.
func rungOf(rule string) (string, bool) {
	for _, end := range rungs {
		if stem, ok := strings.CutSuffix(rule, end); ok {
			return stem, true
		}
	}
	return "", false
}

// onRung finds the harshest answer that other rungs of a finding's question give of its subject.
func (after answers) onRung(f outside.Finding) (outside.Finding, bool) {
	stem, ok := rungOf(f.Rule)
	if !ok {
		return outside.Finding{}, false
	}
	for _, end := range rungs {
		for _, g := range after[subjectKey{f.Formula, stem + end, f.Subject}] {
			return g, true
		}
	}
	return outside.Finding{}, false
}

// still finds what became of a finding: the answer at its line, else one of the same rule and
// subject at a line that had none before. Several steps of a part share a subject.
func (after answers) still(f outside.Finding, before answers) (outside.Finding, bool) {
	k := subjectKey{f.Formula, f.Rule, f.Subject}
	for _, g := range after[k] {
		if g.Line == f.Line {
			return g, true
		}
	}
next:
	for _, g := range after[k] {
		for _, h := range before[k] {
			if h.Line == g.Line {
				continue next
			}
		}
		return g, true
	}
	return outside.Finding{}, false
}

// toldWith reports whether another finding of the rule names the subject of this one.
func (after answers) toldWith(f outside.Finding) bool {
	for k, list := range after {
		if k.formula != f.Formula || k.rule != f.Rule {
			continue
		}
		for _, g := range list {
			if strings.Contains(g.Text, "The same of ") && strings.Contains(g.Text, f.Subject+" (line ") {
				return true
			}
		}
	}
	return false
}

func tell(f outside.Finding, became string) string {
	safety := ""
	if f.Safety {
		safety = " (food safety)"
	}
	return fmt.Sprintf("%s %s%s, %s: %s", f.Level, f.Rule, safety, f.Subject, became)
}

// known is what the comparison must know of a change.
type known struct {
	group     string // row of the table
	change    string // opened, widened, removed, narrowed, line removed
	key       string // of the setting
	hasOwn    bool   // README states a default for the setting
	slips     bool   // the text has slips in it, so a reading may speak against the model
	from, to  [2]int // where the setting stood: line and column of its first and its last byte
	remaining map[string]bool
	house     bool
}

// compare holds the answers to the worse known text against those to the better known one.
//
// Opened, widened and removed settings: a flagged answer stays flagged at its level, or turns
// unsure. Narrowed settings: before is the range, after is a point inside it. A definite answer for
// the range holds for the point; an answer that is flagged in doubt is not definite.
//
// What is excused, and counted as such:
//   - An ingredient's line taken out makes another food. Its row counts what is flagged no more, and
//     looks for crashes; no answer there can be a violation.
//   - A finding that stands at the removed setting itself: its subject is gone.
//   - A rule that is told once names its other subjects in the text of the first: a finding that is
//     named there is still told.
//   - A finding of food safety over a range, at a point inside: such rules take the careful end of
//     what is not known, so knowing more may clear them. The reverse is a violation: a range never
//     says less than a point inside.
//   - A removed wish (makes, family, core, to, reserve, pieces): its rule has no yardstick left, since
//     it holds what is wanted against what comes out. Not so for food safety: the food is there,
//     whatever is wanted of it.
//   - A removed figure of a house's ingredient: like says what holds then, and it is written.
//   - A setting for which something is taken where it is not written (README names them), where the
//     report says more of what it assumed than before. Where it does not say so, the answer counts as
//     unsaid, which is a violation.
//   - A removed reading in a text with slips, also a pH or a water activity: a reading may speak
//     against the model there, and it is believed over the model. Without it the model's answer
//     stands. So it is in the scenarios, some of which hold a reading that nobody would expect. In
//     any other text as written, no excuse.
func compare(before, after *outside.Answer, k known) verdict {
	var v verdict
	b, a := byKey(before.Findings), byKey(after.Findings)
	for _, f := range before.Findings {
		if !f.Flagged() || k.change == "narrowed" && !f.Definite() {
			continue
		}
		g, ok := a.still(f, b)
		if !ok {
			g, ok = a.onRung(f)
			if ok && k.change == "narrowed" && !f.Safety {
				v.opposite = append(v.opposite, harsher(g, f)...)
				continue
			}
		}
		if ok {
			fell := k.change != "narrowed" && g.Flagged() &&
				outside.Severity(g.Level) < outside.Severity(f.Level)
			switch { // a milder answer has the excuses of none
			case !fell:
			case k.change == "line removed":
				v.excused++
			case k.change == "removed" && k.group == "reading" && k.slips:
				v.model++
			case k.change == "removed" && k.hasOwn && after.Assumed > before.Assumed:
				v.excused++
			default:
				v.fell = append(v.fell, tell(f, "now "+g.Level))
			}
			continue
		}
		switch {
		case k.change == "narrowed" && f.Safety:
			v.excused++
		case k.change == "narrowed" && a.toldWith(f):
			v.excused++
		case k.change == "narrowed":
			v.opposite = append(v.opposite, tell(f, "flagged over the range, clear at the point"))
		case k.change == "line removed":
			v.excused++
		case a.toldWith(f):
			v.excused++
		case !k.remaining[f.Subject] && !k.house:
			v.gone = append(v.gone, tell(f, "the subject is gone"))
		case k.change == "removed" && wishes[k.key] && !f.Safety:
			v.excused++
		case k.change == "removed" && k.group == "house ingredient":
			v.excused++
		case k.change == "removed" && (k.group == "reading" || k.group == "part figure") && k.slips:
			v.model++
		case k.change == "removed" && !k.house && within(f, k):
			v.excused++
		case k.change == "removed" && k.hasOwn && after.Assumed > before.Assumed:
			v.excused++
		case k.change == "removed" && k.hasOwn:
			v.unsaid = append(
				v.unsaid,
				tell(f, "clear by a default, and nothing says that it was assumed"),
			)
		default:
			v.clear = append(v.clear, tell(f, "flagged before, no answer after"))
		}
	}
	if k.change == "narrowed" {
		for _, g := range after.Findings {
			if !g.Definite() {
				continue
			}
			if h, ok := b.onRung(g); ok { // told above, or a rung of a range that was harsher
				v.opposite = append(v.opposite, harsher(g, h)...)
				continue
			}
			if _, ok := b.still(g, a); !ok {
				v.opposite = append(
					v.opposite,
					tell(g, "clear over the range, flagged at the point"),
				)
			}
		}
	}
	return v
}

// harsher tells an answer at a point that is harsher than that of the range around it. A milder one
// is no fault: the rungs of food safety take the careful end of what is not known.
func harsher(point, over outside.Finding) []string {
	if outside.Severity(point.Level) <= outside.Severity(over.Level) {
		return nil
	}
	return []string{tell(point, over.Level+" over the range, "+point.Level+" at the point")}
}

// within reports whether a finding stands at the setting that was removed.
func within(f outside.Finding, k known) bool {
	return f.Line == k.from[0] && f.Column >= k.from[1] && (f.Line < k.to[0] || f.Column <= k.to[1])
}

// place gives line and column of a byte offset, both from 1.
func place(text string, at int) [2]int {
	return [2]int{outside.Line(text, at), at - strings.LastIndex(text[:at], "\n")}
}
