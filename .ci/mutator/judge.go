package main

import (
	"fmt"
	"slices"
	"strings"

	"forebake/.ci/outside"
)

// verdict is what became of the answers of one mutation.
type verdict struct {
	clear, gone, opposite, fell, unsaid []string // violations, each told
	excused                             int
	model                               int
	excuses                             []excuse
}

// excuse is one answer that fell silent or milder, and why that is
// no violation.
type excuse struct{ why, told string }

// excuse counts an answer as excused; a reading that spoke against
// the model is counted apart.
func (v *verdict) excuse(why string, f outside.Finding) {
	if why == overModel {
		v.model++
	} else {
		v.excused++
	}
	v.excuses = append(v.excuses, excuse{why, tell(f, "excused")})
}

// The excuses; compare says what each stands for.
const (
	otherFood   = "an ingredient's line taken out makes another food"
	overModel   = "a reading spoke against the model"
	toldDefault = "the report says what is taken where nothing is written"
	carefulEnd  = "food safety takes the careful end of a range"
	toldOnce    = "told with another subject of its rule"
	wishGone    = "nothing is wished for, or read, that it could compare"
	likeHolds   = "the ingredient it is like says it"
	atSetting   = "it was said of the removed setting itself"
	aimUnsaid   = "an aim that is unsafe is worse than none"
	othersLevel = "its level was that of another subject that was told with it"
)

func (v *verdict) violated() bool {
	return len(v.clear)+len(v.gone)+len(v.opposite)+len(v.fell)+len(v.unsaid) > 0
}

// subjectKey tells one question from another: which rule asks it
// of what.
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

// ladders are rules that answer one question at several levels, the
// harshest first: the harsher speaks where the milder falls silent.
// Those of one stem and these ends need no line here.
var ladders = [][]string{
	{"core-unsafe", "core-unproven-risk", "core-unproven-note"},
	{"filling-needs-cold", "baked-filling-kept"},
	{"cool-first-stage", "hot-out-long"},
}

// rungs are the ends of the names of a ladder's rules.
var rungs = []string{"-stop", "-risk", "-note"}

// rungsOf lists the rules of a rule's ladder, the harshest first;
// none where it stands alone.
func rungsOf(rule string) []string {
	for _, ladder := range ladders {
		if slices.Contains(ladder, rule) {
			return ladder
		}
	}
	for _, end := range rungs {
		if stem, ok := strings.CutSuffix(rule, end); ok {
			return []string{stem + rungs[0], stem + rungs[1], stem + rungs[2]}
		}
	}
	return nil
}

// onRung finds the harshest answer that other rungs of a finding's
// question give of its subject.
func (after answers) onRung(f outside.Finding) (outside.Finding, bool) {
	for _, rule := range rungsOf(f.Rule) {
		for _, g := range after[subjectKey{f.Formula, rule, f.Subject}] {
			return g, true
		}
	}
	return outside.Finding{}, false
}

// still finds the later answer to a finding. It stands at its line,
// else at a line without one before, with the same rule and subject.
// Several steps of a part share a subject.
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

// spot is how another finding of its rule names a finding's subject.
func spot(f outside.Finding) string {
	name, _, _ := strings.Cut(f.Subject, " in ")
	return fmt.Sprintf(" %s (line %d)", name, f.Line)
}

// toldWith reports whether another finding of the rule names the
// subject of this one.
func (after answers) toldWith(f outside.Finding) bool {
	for k, list := range after {
		if k.formula != f.Formula || k.rule != f.Rule {
			continue
		}
		for _, g := range list {
			if _, others, ok := strings.Cut(g.Text, "The same of"); ok &&
				strings.Contains(others, spot(f)) {
				return true
			}
		}
	}
	return false
}

// toldOf reports whether a finding names the subject of a change as
// another of its own, and the rule still answers there.
func (after answers) toldOf(f outside.Finding, k known) bool {
	name, _, _ := strings.Cut(k.of, " in ")
	_, others, _ := strings.Cut(f.Text, "The same of")
	return strings.Contains(others, " "+name+" (line ") &&
		len(after[subjectKey{f.Formula, f.Rule, k.of}]) > 0
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
	of        string // what the setting belongs to, in the words of a finding's subject
	hasOwn    bool   // README states a default for the setting
	thing     string // what a report names where it assumes the setting
	ownSlip   bool   // it has a slip, or is in a scenario: as a reading it may oppose the model
	from, to  [2]int // where the setting stood: line and column of its first and its last byte
	remaining map[string]bool
	house     bool
}

// compare holds the answers to the worse known text against those
// to the better known one.
//
// Opened, widened and removed settings: a flagged answer stays
// flagged at its level, or turns unsure. Narrowed settings: before
// is the range, after is a point inside it. A definite answer for
// the range holds for the point; an answer that is flagged in doubt
// is not definite.
//
// What is excused, and counted as such:
//   - An ingredient's line taken out makes another food. Its row
//     counts what is flagged no more, and looks for crashes; no answer
//     there can be a violation.
//   - A finding that stands at the removed setting itself, but of food
//     safety: its subject is gone.
//   - A rule that is told once names its other subjects in the text of
//     the first: a finding that is named there is still told.
//   - A finding of food safety over a range, at a point inside, by a
//     rule whose figure takes the worst of what is not known
//     (carefulRules), or over the range of a pH or water activity,
//     which counts as needing control unless all of it needs none:
//     knowing more may clear it. The reverse is a violation: a range
//     never says less than a point inside.
//   - A removed wish: the rules that hold what comes out against it
//     (wishes) have no yardstick left. Not so for food safety: the
//     food is there, whatever is wanted of it.
//   - A removed "to" of a cook that was too low for its egg or meat
//     (cookAims): that aim is a stop, and a cook without one is a
//     risk, since it is usually hot enough. It stays flagged.
//   - A rule that is told once bears the harshest level of its
//     subjects. Where the worst of them is the one that is known less,
//     and the rule still answers there, the others keep their own.
//   - A removed figure of a house's ingredient: like says what holds
//     then, and it is written. Not so for food safety.
//   - A setting for which something is taken where it is not written
//     (README names them), where the report names what it belongs to
//     among what it assumed, and did not before. Where it does not say
//     so, the answer counts as unsaid, which is a violation.
//   - A removed reading with a slip in it, also a pH or a water
//     activity: a reading may speak against the model there, and it is
//     believed over the model. Without it the model's answer stands.
//     So it is in the scenarios, some of which hold a reading that
//     nobody would expect. In any other text as written, no excuse.
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
			// A milder rung that cannot be answered says nothing of
			// the harsher one's fault.
			fell := k.change != "narrowed" && (g.Flagged() || g.Rule != f.Rule) &&
				outside.Severity(g.Level) < outside.Severity(f.Level)
			switch { // a milder answer has the excuses of none
			case !fell:
			case k.change == "line removed":
				v.excuse(otherFood, f)
			case k.change == "removed" && k.group == "reading" && k.ownSlip:
				v.excuse(overModel, f)
			case k.change == "removed" && k.hasOwn && k.assumed(before, after):
				v.excuse(toldDefault, f)
			case k.change == "removed" && k.key == "to" && k.group == "step option" &&
				cookAims[f.Rule] && g.Rule == f.Rule && g.Level == "risk":
				v.excuse(aimUnsaid, f)
			case g.Rule == f.Rule && !f.Safety && a.toldOf(f, k):
				v.excuse(othersLevel, f)
			default:
				v.fell = append(v.fell, tell(f, "now "+g.Level))
			}
			continue
		}
		switch {
		case k.change == "narrowed" && f.Safety &&
			(carefulRules[f.Rule] || k.group == "part figure"):
			v.excuse(carefulEnd, f)
		case k.change == "narrowed" && a.toldWith(f):
			v.excuse(toldOnce, f)
		case k.change == "narrowed":
			v.opposite = append(v.opposite, tell(f, "flagged over the range, clear at the point"))
		case k.change == "line removed":
			v.excuse(otherFood, f)
		case a.toldWith(f):
			v.excuse(toldOnce, f)
		case !k.remaining[f.Subject] && !k.house:
			v.gone = append(v.gone, tell(f, "the subject is gone"))
		case k.change == "removed" && slices.Contains(wishes[k.key], f.Rule) && !f.Safety:
			v.excuse(wishGone, f)
		case k.change == "removed" && k.group == "house ingredient" && !f.Safety:
			v.excuse(likeHolds, f)
		case k.change == "removed" && k.ownSlip &&
			(k.group == "reading" || k.group == "part figure"):
			v.excuse(overModel, f)
		case k.change == "removed" && !k.house && !f.Safety && within(f, k):
			v.excuse(atSetting, f)
		case k.change == "removed" && k.hasOwn && k.assumed(before, after):
			v.excuse(toldDefault, f)
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
			if _, ok := b.still(g, a); !ok && !b.toldWith(g) {
				v.opposite = append(
					v.opposite,
					tell(g, "clear over the range, flagged at the point"),
				)
			}
		}
	}
	return v
}

// harsher tells an answer at a point that is harsher than that of
// the range around it. A milder one is no fault: the rungs of food
// safety take the careful end of what is not known.
func harsher(point, over outside.Finding) []string {
	if outside.Severity(point.Level) <= outside.Severity(over.Level) {
		return nil
	}
	return []string{tell(point, over.Level+" over the range, "+point.Level+" at the point")}
}

// assumed reports whether the report says that something was taken
// for the removed setting.
func (k known) assumed(before, after *outside.Answer) bool {
	count := func(a *outside.Answer) (n int) {
		for _, said := range a.Assumed {
			if strings.Contains(said, k.thing) {
				n++
			}
		}
		return n
	}
	return count(after) > count(before)
}

// within reports whether a finding stands at the setting that
// was removed.
func within(f outside.Finding, k known) bool {
	return f.Line == k.from[0] && f.Column >= k.from[1] && (f.Line < k.to[0] || f.Column <= k.to[1])
}

// place gives line and column of a byte offset, both from 1.
func place(text string, at int) [2]int {
	return [2]int{outside.Line(text, at), at - strings.LastIndex(text[:at], "\n")}
}
