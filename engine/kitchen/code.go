package kitchen

import (
	"strings"
	"sync"

	"forebake/engine/science/microbe"
)

// Codes are the codes of law that a kitchen can name. Consumer advice
// and texts known at second hand are not among them.
var Codes = []string{"us-food-code", "eu-852-2004", "uk"}

// law holds the limits of one code, and a note that names their origin.
type law struct {
	limits microbe.Limits
	note   string
}

// ownLimits holds what each code itself says.
var ownLimits = sync.OnceValue(func() map[string]*microbe.Limits {
	all := map[string]*microbe.Limits{}
	for _, code := range Codes {
		own, _ := microbe.ForCode(code)
		all[code] = &own
	}
	return all
})

// laws holds the limits of each code, and under "" those of a kitchen
// that names no code. They are computed on first use, because most runs
// need none.
var laws = sync.OnceValue(func() map[string]*law {
	strictest := microbe.Strictest(Codes...)
	ofAll := joinAnd(Codes)
	all := map[string]*law{"": {
		limits: strictest,
		note: "the strictest figures of " + ofAll +
			", since the house file names no code (kitchen { code = \"...\" })",
	}}
	for _, code := range Codes {
		own, _ := microbe.ForCode(code)
		limits, borrowed := own.Or(strictest)
		note := "those of " + code
		switch {
		case own.ColdC.Known() && len(borrowed) > 0:
			note += "; it has no figure for " + joinAnd(borrowed) +
				", so the strictest of " + ofAll + " holds there"
		case len(borrowed) > 0:
			note = code + " gives no figures (" + own.Note +
				"); these are the strictest of " + ofAll
		}
		all[code] = &law{limits, note}
	}
	return all
})

// law gives nothing for a code that is not known.
func (k *Kitchen) law() *law {
	if l := laws()[k.Code]; l != nil {
		return l
	}
	return &law{}
}

// Law returns the limits of the kitchen's code for food that needs time
// and temperature control. Where the code has no figure, or the kitchen
// names no code, the strictest figure of all Codes holds: silence is
// not permission.
func (k *Kitchen) Law() microbe.Limits { return k.law().limits }

// CodeNote names the origin of the figures of Law.
func (k *Kitchen) CodeNote() string { return k.law().note }

// lawFigures maps the names of facts to the figures of a code.
var lawFigures = map[string]func(*microbe.Limits) microbe.Limit{
	"cold_hold_c":    func(l *microbe.Limits) microbe.Limit { return l.ColdC },
	"hot_hold_c":     func(l *microbe.Limits) microbe.Limit { return l.HotHoldC },
	"cool_from_c":    func(l *microbe.Limits) microbe.Limit { return l.CoolFromC },
	"cool_first_c":   func(l *microbe.Limits) microbe.Limit { return l.FirstToC },
	"cool_end_c":     func(l *microbe.Limits) microbe.Limit { return l.SecondToC },
	"cool_first_h":   func(l *microbe.Limits) microbe.Limit { return l.FirstHours },
	"cool_total_h":   func(l *microbe.Limits) microbe.Limit { return l.TotalHours },
	"ambient_made_h": func(l *microbe.Limits) microbe.Limit { return l.AmbientHours },
	"cold_out_h":     func(l *microbe.Limits) microbe.Limit { return l.ColdOutHours },
	"hot_out_h":      func(l *microbe.Limits) microbe.Limit { return l.HotOutHours },
	"keep_cold_days": func(l *microbe.Limits) microbe.Limit { return l.KeepDays },
	"thaw_water_c":   func(l *microbe.Limits) microbe.Limit { return l.ThawWaterC },
}

// Figure returns the kitchen's legal limit for the name of its fact,
// and false for another name.
func (k *Kitchen) Figure(name string) (microbe.Limit, bool) {
	of, ok := lawFigures[name]
	if !ok {
		return microbe.Limit{}, false
	}
	return of(&k.law().limits), true
}

// FigureSource returns the source of the kitchen's legal limit: the
// section of the code, and the reason for a code that the kitchen did
// not choose. It returns "" for a name without a legal limit.
func (k *Kitchen) FigureSource(name string) string {
	l, ok := k.Figure(name)
	if !ok {
		return ""
	}
	own := ownLimits()[k.Code]
	switch {
	case k.Code == "":
		return l.Source + ", the strictest of " + joinAnd(Codes)
	case own == nil || !lawFigures[name](own).Known():
		return l.Source + ", the strictest of " + joinAnd(Codes) +
			", since " + k.Code + " has no figure for it"
	}
	return l.Source
}

// LawSources lists the section of each code that has a figure of
// that name.
func LawSources(name string) string {
	var list []string
	for _, code := range Codes {
		own := ownLimits()[code]
		if of := lawFigures[name]; of != nil && of(own).Known() {
			list = append(list, of(own).Source+" ("+code+")")
		}
	}
	return strings.Join(list, "; ")
}

// joinAnd joins names with commas and a final "and".
func joinAnd(names []string) string {
	last := len(names) - 1
	if last < 1 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:last], ", ") + " and " + names[last]
}
