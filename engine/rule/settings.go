package rule

import (
	"fmt"
	"sort"

	"forebake/engine/house"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Set is the rules in force: all packs of a house, with its settings.
type Set struct {
	Packs    []*Pack
	Rules    []*Rule // sorted by name
	Cautions []*Caution
	Notices  []string // old rule names that the house still uses
}

// Join puts packs together and applies what the house sets. Two packs with a rule of one name are a problem that names both.
func Join(packs []*Pack, sets []house.Set) (*Set, source.Problems) {
	s := &Set{Packs: packs}
	var problems source.Problems
	byName := map[string]*Rule{}
	for _, p := range packs {
		for _, r := range p.Rules {
			if other := byName[r.ID]; other != nil {
				problems = append(problems, source.Problem{Place: r.Place, Text: fmt.Sprintf("rule %q is in pack %q too, at %s; give one of them another name", r.ID, other.Pack, other.Place)})
				continue
			}
			byName[r.ID] = r
		}
		s.Cautions = append(s.Cautions, p.Cautions...)
	}
	for i, c := range s.Cautions {
		c.Rank = i
	}
	old := map[string]*Rule{}
	for _, r := range byName {
		for _, name := range r.Was {
			old[name] = r
		}
	}
	var names []string
	for name := range byName {
		names = append(names, name)
	}
	sort.Strings(names)
	for _, set := range sets {
		r := byName[set.Rule]
		if r == nil && old[set.Rule] != nil {
			r = old[set.Rule]
			s.Notices = append(s.Notices, fmt.Sprintf("%s: rule %q is now named %q", set.Place, set.Rule, r.ID))
		}
		if r == nil {
			problems = append(problems, source.Problem{Place: set.Place, Text: reading.UnknownText("rule", set.Rule, "the packs in force", names)})
			continue
		}
		changed := *r // the shipped rule stays as it is for other houses
		changed.Limits = append([]Limit{}, r.Limits...)
		if set.HasLvl {
			by := set.LvlAt
			changed.Level, changed.LevelBy = set.Level, &by
		}
		for _, l := range set.Limits {
			found := false
			for i := range changed.Limits {
				if changed.Limits[i].Name == l.Name {
					by := l.Place
					changed.Limits[i].Value, changed.Limits[i].By, found = l.Value, &by, true
				}
			}
			if !found {
				problems = append(problems, source.Problem{Place: l.Place, Text: reading.UnknownText("limit", l.Name, "rule "+r.ID, limitNames(r.Limits))})
			}
		}
		byName[r.ID] = &changed
	}
	for _, name := range names {
		s.Rules = append(s.Rules, byName[name])
	}
	return s, problems.Sort()
}

// Find finds a rule by its name or an old one.
func (s *Set) Find(name string) (*Rule, bool) {
	for _, r := range s.Rules {
		if r.ID == name || hasWord(r.Was, name) {
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
