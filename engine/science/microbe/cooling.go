package microbe

import (
	"math"
	"strings"
)

// Op says which side of a limit's value is allowed.
type Op uint8

// The sides. From is no bound: a clock starts as the food falls through
// the value, or a rule applies after it.
const (
	AtMost Op = iota
	Under     // the value itself is too much
	AtLeast
	From
)

// Limit is one figure of a code. The zero Limit means that the code
// has none.
type Limit struct {
	ID         string  // the row of the published limits
	Value      float64 // in the unit that ends the field's name
	Fahrenheit float64 // as the source prints it beside Celsius; 0 where it prints none
	Op         Op
	Source     string
	// of the value; Fahrenheit figures are read or memory, see the
	// published limits
	Basis string
}

// Known reports whether the code has this figure.
func (l Limit) Known() bool { return l.Source != "" }

// Allows reports whether x, in the limit's unit, keeps it. A
// temperature keeps it by either printed figure, so that Celsius and
// Fahrenheit readings of one law agree. They differ by rounding, up to
// 0.45 C. Without a figure, or for NaN, nothing is allowed.
func (l Limit) Allows(x float64) bool {
	most, least := l.Value, l.Value
	if l.Fahrenheit != 0 {
		c := (l.Fahrenheit - 32) * 5 / 9
		most, least = math.Max(most, c), math.Min(least, c)
	}
	const ulps = 1e-9 // C, what conversions leave
	switch {
	case l.Source == "" && l.Value == 0:
		return false
	case l.Op == Under:
		return x < l.Value
	case l.Op == AtLeast:
		return x >= least-ulps
	}
	return x <= most+ulps
}

// Limits are one jurisdiction's, for food that needs time and
// temperature control. The law of the place as it stands today decides,
// not this copy.
type Limits struct {
	Code, Name, Note string

	ColdC    Limit // cold holding
	HotHoldC Limit // hot holding

	CoolFromC  Limit // cooling: the clock starts as the slowest point falls through this
	FirstToC   Limit // first stage: to reach
	FirstHours Limit // ... within, from CoolFromC
	SecondToC  Limit // second stage: to reach
	TotalHours Limit // ... within, from CoolFromC, the first stage included

	AmbientHours  Limit // made of ingredients at room temperature: time to ColdC
	ReceivedHours Limit // received above ColdC: time to it
	ColdOutHours  Limit // cold food out of control, then served or thrown away
	HotOutHours   Limit // the same of hot food

	KeepAfterHours Limit // ready to eat: a date is owed after
	KeepDays       Limit // ready to eat, at KeepAtC: days, the day made being the first
	KeepAtC        Limit
	ReheatC        Limit // for hot holding
	ReheatHours    Limit // most time on the way there
	ShellEggC      Limit // air round raw shell eggs
	ThawWaterC     Limit // running water for thawing
	ThawHours      Limit // raw food above ColdC while thawing so
}

// field reaches one figure of Limits; high says that more is stricter,
// about what the figure is of.
type field struct {
	name  string
	of    func(*Limits) *Limit
	high  bool
	about string
}

var fields = [...]field{
	{"ColdC", func(l *Limits) *Limit { return &l.ColdC }, false, "cold holding"},
	{"HotHoldC", func(l *Limits) *Limit { return &l.HotHoldC }, true, "hot holding"},
	{"CoolFromC", func(l *Limits) *Limit { return &l.CoolFromC }, true, "cooling"},
	{"FirstToC", func(l *Limits) *Limit { return &l.FirstToC }, false, "cooling"},
	{"FirstHours", func(l *Limits) *Limit { return &l.FirstHours }, false, "cooling"},
	{"SecondToC", func(l *Limits) *Limit { return &l.SecondToC }, false, "cooling"},
	{"TotalHours", func(l *Limits) *Limit { return &l.TotalHours }, false, "cooling"},
	{"AmbientHours", func(l *Limits) *Limit { return &l.AmbientHours }, false, "cooling"},
	{"ReceivedHours", func(l *Limits) *Limit { return &l.ReceivedHours }, false, "cooling"},
	{
		"ColdOutHours",
		func(l *Limits) *Limit { return &l.ColdOutHours },
		false,
		"cold food out of the cold",
	},
	{
		"HotOutHours",
		func(l *Limits) *Limit { return &l.HotOutHours },
		false,
		"hot food out of the heat",
	},
	{"KeepAfterHours", func(l *Limits) *Limit { return &l.KeepAfterHours }, false, "keeping"},
	{"KeepDays", func(l *Limits) *Limit { return &l.KeepDays }, false, "keeping"},
	{"KeepAtC", func(l *Limits) *Limit { return &l.KeepAtC }, false, "keeping"},
	{"ReheatC", func(l *Limits) *Limit { return &l.ReheatC }, true, "reheating"},
	{"ReheatHours", func(l *Limits) *Limit { return &l.ReheatHours }, false, "reheating"},
	{"ShellEggC", func(l *Limits) *Limit { return &l.ShellEggC }, false, "shell eggs"},
	{"ThawWaterC", func(l *Limits) *Limit { return &l.ThawWaterC }, false, "thawing"},
	{"ThawHours", func(l *Limits) *Limit { return &l.ThawHours }, false, "thawing"},
}

// ForCode gives the limits of the jurisdiction with that code; false
// for an unknown one.
func ForCode(code string) (Limits, bool) {
	for _, l := range codes {
		if l.Code == code {
			return l, true
		}
	}
	return Limits{}, false
}

// Strictest takes the strictest of each figure among the named codes.
// What keeps it keeps them all. Its cooling starts hotter and runs
// shorter to a colder end. No place asks for all of it. An unknown code
// asks nothing.
func Strictest(of ...string) Limits {
	s := Limits{
		Code: "strictest",
		Name: "the strictest figure of each of " + strings.Join(of, ", "),
	}
	for _, f := range fields {
		best := f.of(&s)
		for _, code := range of {
			one, _ := ForCode(code)
			l := *f.of(&one)
			switch {
			case !l.Known(): // asks nothing
			case !best.Known(),
				l.Value == best.Value && l.Op == Under,
				l.Value != best.Value && (l.Value > best.Value) == f.high:
				*best = l
			}
		}
	}
	return s
}

// Or fills figures that l lacks from other, and lists their subjects. A
// code that is silent on cooling does not allow slow cooling.
func (l Limits) Or(other Limits) (filled Limits, borrowed []string) {
	for _, f := range fields {
		own, spare := f.of(&l), f.of(&other)
		if own.Known() || !spare.Known() {
			continue
		}
		*own = *spare
		if n := len(borrowed); n == 0 ||
			borrowed[n-1] != f.about { // figures of one thing stand together
			borrowed = append(borrowed, f.about)
		}
	}
	return l, borrowed
}

// NewtonHours is the time of Newton's cooling (or warming) from fromC
// to toC, h: T = Ta + (T0 - Ta) exp(-t/tau), with the time constant tau
// in h, above 0. +Inf where toC is never reached, NaN for unreadable
// figures. A law, so its error is tau's.
func NewtonHours(tauHours, ambientC, fromC, toC float64) float64 {
	if !(tauHours > 0) || !readable(ambientC) || !readable(fromC) || !readable(toC) {
		return math.NaN()
	}
	ratio := (fromC - ambientC) / (toC - ambientC)
	switch {
	case fromC == toC:
		return 0
	case !(ratio >= 1):
		return math.Inf(1)
	}
	return tauHours * math.Log(ratio)
}

// LargestTau is the largest time constant of Newton's cooling that
// keeps both stages, h, and whether the first governs. 0 where the air
// is too warm for either end; +Inf where the code sets no stage. Where
// a stage's Op is Under, tau must lie below.
func (l Limits) LargestTau(ambientC float64) (tauHours float64, firstGoverns bool) {
	tauHours = math.Inf(1)
	for i, stage := range [...][2]Limit{{l.FirstToC, l.FirstHours}, {l.SecondToC, l.TotalHours}} {
		if !stage[0].Known() || !stage[1].Known() || !l.CoolFromC.Known() {
			continue
		}
		most := stage[1].Value / NewtonHours(1, ambientC, l.CoolFromC.Value, stage[0].Value)
		if !(most >= 0) {
			most = 0
		}
		if most < tauHours {
			tauHours, firstGoverns = most, i == 0
		}
	}
	return tauHours, firstGoverns
}
