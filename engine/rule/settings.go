package rule

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"forebake/engine/expr"
	"forebake/engine/finding"
	"forebake/engine/house"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Set is the rules in force: a house's packs, with its settings.
type Set struct {
	Packs    []*Pack
	Rules    []*Rule // sorted by name
	Cautions []*Caution
	Figures  *expr.Figures      // of all packs, and the program's own
	Notices  []string           // renamed rules, and waivers of rules that are not in force
	Loosened []finding.Loosened // settings that loosen food-safety rules, in file order
	Waivers  []*Waiver          // in file order
}

// joined is a set while the house's settings are applied.
type joined struct {
	*Set
	byName   map[string]*Rule
	old      map[string]*Rule // by a former name
	names    []string         // of the rules, sorted
	problems source.Problems
}

// Join joins packs and applies the house: its kitchen to limits that
// are kitchen figures, its set blocks and its waivers. Two packs with a
// rule of one name are a problem. leftOut gives the shipped pack that
// holds a rule and that the house leaves out, "" for none.
func Join(packs []*Pack, h *house.House, leftOut func(rule string) string) (*Set, source.Problems) {
	s := &joined{Set: &Set{Packs: packs}, byName: map[string]*Rule{}, old: map[string]*Rule{}}
	for _, p := range packs {
		for _, r := range p.Rules {
			if other := s.byName[r.ID]; other != nil {
				s.fault(r.Place, "rule %q is in pack %q too, at %s; give one of them another name",
					r.ID, other.Pack, other.Place)
				continue
			}
			s.byName[r.ID] = r
		}
		for _, c := range p.Cautions {
			if other := s.caution(c.Kind); other != nil {
				s.fault(c.Place, "caution %q is in pack %q too, at %s; give it another name,"+
					" since it replaces none", c.Kind, other.Pack, other.Place)
				continue
			}
			s.Cautions = append(s.Cautions, c)
		}
		s.Figures = p.figures
	}
	for i, c := range s.Cautions {
		c.Rank = i
	}
	s.Loosened = append(s.Loosened, h.Loosened...)
	for name := range s.byName {
		s.names = append(s.names, name)
	}
	sort.Strings(s.names)
	figures := figuresIn(h.Kitchen)
	for _, name := range s.names {
		r := s.byName[name]
		for _, was := range r.Was {
			s.old[was] = r
		}
		if limits := limitsIn(r.Limits, figures); len(limits) > 0 && &limits[0] != &r.Limits[0] {
			inHouse := *r // the pack's rule serves its trials, which have kitchens of their own
			inHouse.Limits = limits
			s.byName[name] = &inHouse
		}
	}
	for _, set := range h.Sets {
		s.set(set)
	}
	for _, w := range h.Waivers {
		s.waive(w, leftOut)
	}
	for _, name := range s.names {
		s.Rules = append(s.Rules, s.byName[name])
	}
	return s.Set, s.problems.Sort()
}

func (s *joined) fault(at source.Place, format string, args ...any) {
	s.problems = append(s.problems, source.Problem{Place: at, Text: fmt.Sprintf(format, args...)})
}

// find finds a rule in force by its name in a house file; nil for none.
// A former name gives a notice.
func (s *joined) find(name string, at source.Place) *Rule {
	if r := s.byName[name]; r != nil {
		return r
	}
	r := s.old[name]
	if r == nil {
		return nil
	}
	s.Notices = append(s.Notices, fmt.Sprintf("%s: rule %q is now named %q", at, name, r.ID))
	return s.byName[r.ID]
}

func (s *joined) unknown(name string, at source.Place) {
	s.fault(at, "%s", reading.UnknownText("rule", name, "the packs in force", s.names))
}

// set applies one set block to its rule.
func (s *joined) set(set house.Set) {
	r := s.find(set.Rule, set.Place)
	if r == nil {
		s.unknown(set.Rule, set.Place)
		return
	}
	changed := *r // other houses share the rule of the pack
	changed.Limits = append([]expr.Limit{}, r.Limits...)
	changed.Because = set.Because
	if set.HasLevel {
		by := set.LevelAt
		changed.Level, changed.LevelBy = set.Level, &by
		if set.Level > r.Level {
			s.loosen(r, set, set.LevelAt, "level", r.Level.String(), set.Level.String(), true)
		}
	}
	for _, l := range set.Limits {
		found := false
		for i := range changed.Limits {
			if changed.Limits[i].Name != l.Name {
				continue
			}
			by := l.Place
			before := changed.Limits[i]
			changed.Limits[i] = expr.Limit{
				Name: l.Name, Value: l.Value, Place: before.Place, By: &by, SetUnit: before.Unit(),
			}
			if loose, sure := r.looser(i, before.Interval(), l.Value); loose {
				s.loosen(r, set, l.Place, "limit "+l.Name, before.Shown(),
					changed.Limits[i].Shown(), sure)
			}
			found = true
		}
		if !found {
			known := expr.LimitNames(r.Limits)
			s.fault(l.Place, "%s", reading.UnknownText("limit", l.Name, "rule "+r.ID, known))
		}
	}
	s.byName[r.ID] = &changed
}

// loosen records a setting that makes a food-safety rule less strict:
// every report shows it. One without a reason is a problem.
func (s *joined) loosen(r *Rule, set house.Set, at source.Place, what, from, to string, sure bool) {
	if !r.Safety {
		return
	}
	if strings.TrimSpace(set.Because) == "" {
		less := fmt.Sprintf("is less strict than %s", from)
		if !sure {
			less = fmt.Sprintf("may be less strict than %s (its condition does not tell)", from)
		}
		s.problems = append(s.problems, source.Problem{
			Place: at,
			Text: fmt.Sprintf("rule %q is of food safety, and %s %s %s;"+
				" add the reason, which every report will show", r.ID, what, to, less),
			Paste: "because = \"why this is safe here, and who watches it\"",
		})
		return
	}
	s.Loosened = append(s.Loosened, finding.Loosened{
		Rule: r.ID, Pack: r.Pack, What: what, From: from, To: to, Because: set.Because, Place: at,
	})
}

// waive finds the rule of a waiver. A rule of a shipped pack that the
// house leaves out is no mistake: the waiver does nothing.
func (s *joined) waive(w house.Waiver, leftOut func(rule string) string) {
	r := s.find(w.Rule, w.Place)
	switch {
	case r != nil:
		s.Waivers = append(s.Waivers, &Waiver{Waiver: w, ID: r.ID, InForce: true})
		return
	case s.caution(w.Rule) != nil:
		s.fault(w.Place, "%q is a caution, and cautions cannot be waived:"+
			" they are shown whatever a house says; take this block out", source.Safe(w.Rule))
		return
	}
	if pack := leftOut(w.Rule); pack != "" {
		s.Notices = append(s.Notices, fmt.Sprintf("%s: rule %q is of pack %q,"+
			" which this house leaves out; its waiver does nothing", w.Place, w.Rule, pack))
		s.Waivers = append(s.Waivers, &Waiver{Waiver: w, ID: w.Rule})
		return
	}
	s.unknown(w.Rule, w.Place)
}

// caution finds a caution in force by its name; nil for none.
func (s *joined) caution(name string) *Caution {
	for _, c := range s.Cautions {
		if c.Kind == name {
			return c
		}
	}
	return nil
}

// Find finds a rule by its name or a former one.
func (s *Set) Find(name string) (*Rule, bool) {
	for _, r := range s.Rules {
		if r.ID == name || slices.Contains(r.Was, name) {
			return r, true
		}
	}
	return nil, false
}

// Names lists the rules' names.
func (s *Set) Names() []string {
	list := make([]string, len(s.Rules))
	for i, r := range s.Rules {
		list[i] = r.ID
	}
	return list
}
