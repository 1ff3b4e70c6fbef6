package kitchen

import (
	"strings"
	"sync"

	"forebake/engine/science/microbe"
)

// Codes are the codes that a kitchen can name. Advice to consumers and texts known at second hand are not among them.
var Codes = []string{"us-food-code", "eu-852-2004", "uk"}

// law is the limits of one code, what it borrows them for, and in words whose they are.
type law struct {
	limits microbe.Limits
	note   string
}

// laws holds the limits of every code, and under "" those of a kitchen that names none. They are put together when first asked
// for: most runs ask for none.
var laws = sync.OnceValue(func() map[string]law {
	strictest := microbe.Strictest(Codes...)
	all := map[string]law{"": {strictest, "the strictest figures of " + and(Codes) + ", since the house file names no code (kitchen { code = \"...\" })"}}
	for _, code := range Codes {
		own, _ := microbe.ForCode(code)
		limits, borrowed := own.Or(strictest)
		note := "those of " + code
		switch {
		case own.ColdC.Known() && len(borrowed) > 0:
			note += "; it has no figure for " + and(borrowed) + ", and there the strictest of " + and(Codes) + " stands"
		case len(borrowed) > 0:
			note = code + " gives no figures (" + own.Note + "); these are the strictest of " + and(Codes)
		}
		all[code] = law{limits, note}
	}
	return all
})

// Law is what the code of the kitchen asks of food that needs time and temperature control. A code that has no figure for
// something takes the strictest of all of Codes, and so does a kitchen that names no code: a silent code is no leave.
func (k *Kitchen) Law() microbe.Limits { return laws()[k.Code].limits }

// CodeNote says whose figures Law gives.
func (k *Kitchen) CodeNote() string { return laws()[k.Code].note }

// lawFigures are the figures of a code by the names that facts and rules know them by.
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

// Figure gives the kitchen's figure of the law under the name of its fact; false for a name that is none.
func (k *Kitchen) Figure(name string) (microbe.Limit, bool) {
	of, ok := lawFigures[name]
	if !ok {
		return microbe.Limit{}, false
	}
	l := k.Law()
	return of(&l), true
}

// FigureSource says where the kitchen's figure comes from: the section of the law, and why this law where the kitchen did not
// choose it. "" for a name that is no figure of the law.
func (k *Kitchen) FigureSource(name string) string {
	l, ok := k.Figure(name)
	if !ok {
		return ""
	}
	own, _ := microbe.ForCode(k.Code)
	switch {
	case k.Code == "":
		return l.Source + ", the strictest of " + and(Codes)
	case !lawFigures[name](&own).Known():
		return l.Source + ", the strictest of " + and(Codes) + ", since " + k.Code + " has no figure for it"
	}
	return l.Source
}

// LawSources names the section of each code that has a figure of that name.
func LawSources(name string) string {
	var list []string
	for _, code := range Codes {
		l, _ := microbe.ForCode(code)
		if of := lawFigures[name]; of != nil && of(&l).Known() {
			list = append(list, of(&l).Source+" ("+code+")")
		}
	}
	return strings.Join(list, "; ")
}

// and puts names in a row as one says them.
func and(names []string) string {
	last := len(names) - 1
	if last < 1 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:last], ", ") + " and " + names[last]
}

func contains(list []string, word string) bool {
	for _, x := range list {
		if x == word {
			return true
		}
	}
	return false
}
