package rule

import (
	"fmt"
	"strings"
	"time"

	"forebake/engine/finding"
	"forebake/engine/house"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// Waiver is a house's waiver, with the rule that it is of.
type Waiver struct {
	house.Waiver
	ID      string // the rule's name of today
	InForce bool   // the rule's pack is in force
}

// OwnPack is the pack that findings about the house file itself are said to be of.
const OwnPack = "house"

// ownFindings are the findings of that pack, each with what it is said of. No rule may bear one of these names.
var ownFindings = map[string]string{
	"waiver-expired": "a waive block in the house file whose last day is past",
	"waiver-undated": "a waive block in the house file whose date cannot be read",
	"waiver-idle":    "a waive block in the house file that sets nothing aside",
}

// OwnFinding tells what a finding about the house file is said of; false for a name that is none.
func OwnFinding(name string) (string, bool) {
	says, ok := ownFindings[name]
	return says, ok
}

// dateForm is how a day is written.
const dateForm = "2006-01-02"

// Seen is what a run has seen of the formulas of one house.
type Seen struct {
	Today    time.Time
	Formulas []string // names of the formulas judged
	Folder   bool     // a folder was walked, so that a formula that is not there is likely gone
	Broken   bool     // a file could not be judged, so nothing can be said of what is not there
}

// Waive sets aside the findings that the house's waivers cover, and gives those about the waivers themselves: one that is over, one
// whose date cannot be read, one that set nothing aside. A finding that was set aside keeps all it says.
func (s *Set) Waive(list []*finding.Finding, seen Seen) []*finding.Finding {
	var own []*finding.Finding
	for _, w := range s.Waivers {
		if fault := w.fault(seen.Today); fault != nil {
			own = append(own, fault)
			continue
		}
		any := false
		for _, f := range list {
			if f.Rule != w.ID || !w.covers(f.Formula) {
				continue
			}
			any = true
			if f.Answer != finding.Waived { // the first waiver of the file has the word
				f.Answer, f.Because, f.Until, f.By = finding.Waived, w.Because, w.Until, w.Place
			}
		}
		if !any && w.InForce && !seen.Broken {
			if idle := w.idle(seen); idle != nil {
				own = append(own, idle)
			}
		}
	}
	return own
}

// Waives tells whether the house sets a rule aside for a formula on that day.
func (s *Set) Waives(rule, formula string, today time.Time) bool {
	for _, w := range s.Waivers {
		if w.ID == rule && w.covers(formula) && w.fault(today) == nil {
			return true
		}
	}
	return false
}

// covers tells whether a waiver is for a formula.
func (w *Waiver) covers(formula string) bool { return w.Formula == "" || glob(w.Formula, formula) }

// fault gives what is wrong with a waiver's date today: then it does not hold. nil when it holds. The day it names is the last on which
// it does.
func (w *Waiver) fault(today time.Time) *finding.Finding {
	if !w.HasUntil {
		return nil
	}
	if _, err := time.Parse(dateForm, w.Until); err != nil {
		return w.finding("waiver-undated", finding.Risk, w.UntilAt,
			fmt.Sprintf("The waiver of %s does not hold: its last day is written %q, and no date can be read from that. Write year, month and day with hyphens, such as until = \"%s\".", w.Rule, w.Until, today.AddDate(0, 3, 0).Format(dateForm)),
			"Nobody can tell how long a waiver with such a date was meant to hold, and to guess would set aside what nobody looks at any more.")
	}
	if today.Format(dateForm) > w.Until { // such dates sort as texts
		return w.finding("waiver-expired", finding.Risk, w.UntilAt,
			fmt.Sprintf("The waiver of %s held until %s and does not hold any more: what it set aside counts again. Take it out, or look again whether its reason still stands and give it a later date.", w.Rule, w.Until),
			"A date was given so that somebody looks again.")
	}
	return nil
}

// idle gives the note on a waiver that set nothing aside, nil where that says nothing: the formulas it is for were not checked.
func (w *Waiver) idle(seen Seen) *finding.Finding {
	const why = "A waiver that is needed no more hides the same fault when it comes back."
	for _, name := range seen.Formulas {
		if w.covers(name) {
			return w.finding("waiver-idle", finding.Note, w.Place, fmt.Sprintf("The waiver of %s sets nothing aside: the rule finds nothing in the formulas checked that it is for. Take it out if it is needed no more.", w.Rule), why)
		}
	}
	if !seen.Folder {
		return nil
	}
	text := fmt.Sprintf("The waiver of %s is for formulas named %q, and none of those checked is.", w.Rule, w.Formula)
	if near := spelling.Nearest(w.Formula, seen.Formulas, 1); len(near) > 0 {
		text += fmt.Sprintf(" The nearest name is %q.", near[0])
	}
	return w.finding("waiver-idle", finding.Note, w.FormulaAt, text+" Mend the name, or take the waiver out.", why)
}

func (w *Waiver) finding(id string, level finding.Level, at source.Place, text, why string) *finding.Finding {
	return &finding.Finding{Rule: id, Pack: OwnPack, Level: level, Answer: finding.Flagged, Subject: "waiver of " + w.Rule, Place: at, Text: text, Why: why, Source: "the house file"}
}

// glob matches a name against a pattern in which * stands for any letters, also none, and ? for one. Letter case does not count, as
// nowhere in names.
func glob(pattern, name string) bool {
	p, n := []rune(strings.ToLower(pattern)), []rune(strings.ToLower(name))
	star, from := -1, 0 // the last star met, and where the name went on after it
	i, k := 0, 0
	for k < len(n) {
		switch {
		case i < len(p) && p[i] == '*':
			star, from = i, k
			i++
		case i < len(p) && (p[i] == '?' || p[i] == n[k]):
			i, k = i+1, k+1
		case star >= 0: // let the star take one letter more
			from++
			i, k = star+1, from
		default:
			return false
		}
	}
	for i < len(p) && p[i] == '*' {
		i++
	}
	return i == len(p)
}
