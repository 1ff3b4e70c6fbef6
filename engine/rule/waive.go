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

// Waiver is a house's waiver, with its rule.
type Waiver struct {
	house.Waiver
	ID      string // the rule's present name
	InForce bool   // the rule's pack is in force
}

// OwnPack is the pack of findings about the house file itself.
const OwnPack = "house"

// ownFindings are that pack's findings by name, each with its subject.
// No rule may have one of these names.
var ownFindings = map[string]string{
	"waiver-expired": "a waive block in the house file whose last day is past",
	"waiver-undated": "a waive block in the house file whose date cannot be read",
	"waiver-idle":    "a waive block in the house file that matches no finding",
}

// OwnFinding gives the subject of a finding about the house file.
func OwnFinding(name string) (string, bool) {
	says, ok := ownFindings[name]
	return says, ok
}

// dateForm is the form of a date.
const dateForm = "2006-01-02"

// Seen tells which formulas of a house a run has judged.
type Seen struct {
	Today    time.Time
	Formulas []string // names of the formulas judged
	Folder   bool     // a folder was walked: a formula that was not judged is likely gone
	Broken   bool     // a file could not be judged: a missing formula may be in it
}

// Waive marks the findings that the house's waivers cover, and gives
// findings about waivers that have expired, have no readable date, or
// match nothing. A waived finding keeps its text, level and figures.
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
			if f.Answer != finding.Waived { // the first waiver of the file counts
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

// Waives reports whether the house waives a rule for a formula today.
func (s *Set) Waives(rule, formula string, today time.Time) bool {
	for _, w := range s.Waivers {
		if w.ID == rule && w.covers(formula) && w.fault(today) == nil {
			return true
		}
	}
	return false
}

// covers reports whether a waiver is for a formula.
func (w *Waiver) covers(formula string) bool { return w.Formula == "" || glob(w.Formula, formula) }

// fault gives the finding on a waiver that does not hold today; nil for
// one that holds. Its date is its last day.
func (w *Waiver) fault(today time.Time) *finding.Finding {
	if !w.HasUntil {
		return nil
	}
	if _, err := time.Parse(dateForm, w.Until); err != nil {
		return w.finding("waiver-undated", finding.Risk, w.UntilAt,
			fmt.Sprintf("The waiver of %s does not hold: its last day is written %q, and no date "+
				"can be read from that. Write year, month and day with hyphens, such as until = "+
				"\"%s\".", w.Rule, w.Until, today.AddDate(0, 3, 0).Format(dateForm)),
			"Nobody can tell how long a waiver with such a date was meant to hold, and to guess "+
				"would set aside what nobody looks at any more.")
	}
	if today.Format(dateForm) > w.Until { // dates of this form sort as texts
		return w.finding("waiver-expired", finding.Risk, w.UntilAt,
			fmt.Sprintf("The waiver of %s held until %s and does not hold any more: what it set "+
				"aside counts again. Take it out, or look again whether its reason still stands "+
				"and give it a later date.", w.Rule, w.Until),
			"A date was given so that somebody looks again.")
	}
	return nil
}

// idle gives the note on a waiver that matched no finding; nil where
// its formulas were not checked.
func (w *Waiver) idle(seen Seen) *finding.Finding {
	const why = "A waiver that is needed no more hides the same fault when it comes back."
	for _, name := range seen.Formulas {
		if w.covers(name) {
			text := fmt.Sprintf("The waiver of %s matches no finding in"+
				" the formulas that it is for. Take it out if it is needed no more.", w.Rule)
			return w.finding("waiver-idle", finding.Note, w.Place, text, why)
		}
	}
	if !seen.Folder {
		return nil
	}
	text := fmt.Sprintf("The waiver of %s is for formulas named %q, and none of those checked is.",
		w.Rule, w.Formula)
	if near := spelling.Nearest(w.Formula, seen.Formulas, 1); len(near) > 0 {
		text += fmt.Sprintf(" The nearest name is %q.", near[0])
	}
	return w.finding("waiver-idle", finding.Note, w.FormulaAt,
		text+" Mend the name, or take the waiver out.", why)
}

func (w *Waiver) finding(
	id string, level finding.Level, at source.Place, text, why string,
) *finding.Finding {
	return &finding.Finding{
		Rule: id, Pack: OwnPack, Level: level, Answer: finding.Flagged, Place: at,
		Subject: "waiver of " + w.Rule, Text: text, Why: why, Source: "the house file",
	}
}

// glob reports whether a name matches a pattern, whatever its letter
// case: * matches any letters, ? one letter.
func glob(pattern, name string) bool {
	p, n := []rune(strings.ToLower(pattern)), []rune(strings.ToLower(name))
	star, from := -1, 0 // the last star, and where the name continues after it
	i, k := 0, 0
	for k < len(n) {
		switch {
		case i < len(p) && p[i] == '*':
			star, from = i, k
			i++
		case i < len(p) && (p[i] == '?' || p[i] == n[k]):
			i, k = i+1, k+1
		case star >= 0: // the star takes one letter more
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
