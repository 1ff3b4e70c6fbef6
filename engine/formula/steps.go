package formula

import (
	"slices"

	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/said/around"
	"forebake/engine/source"
)

// Step is one line of a part's steps.
type Step struct {
	Part   *Part
	Index  int // 0 for the first step of the part
	Serial int // 0 for the first step of the formula
	Verb   *Verb
	Place  source.Place // of the verb

	Time    Given  // how long, min
	Measure Given  // the verb's own length, mass or count: sheet = "5 mm", fold = "3 pieces"
	Words   string // the verb's own text: shape = "knots", pan = "long tin"
	Uses    *Part  // the part that the verb puts on

	At    Given  // ambient temperature, C
	Where *Place // or a named place of the kitchen; nil when none is written

	To, Core Given     // target temperature; target core temperature, C
	Way      *Way      // how it is done; nil when nothing is written
	Form     *Geometry // nil when not given, as are the next ones
	Tin      string
	Count    *Given
	Pieces   *Given
	Slice    *Given   // length of one slice cut from a coil, mm
	Wide     *Given   // the side of a sheet that is rolled up, mm
	Sides    [2]Given // of a sheet, the longer first, mm; not set where they are not written
	Covered  *bool
	Sealed   bool  // words of where it stands or how it is covered shut the air out
	Amount   Given // of the part that the verb puts on, g, where it is split
	Steam    *bool
	Reading  *Reading
	With     []*Ingredient // what goes in here: the yeast that is soaked, the butter held back
	optionValues

	root    *Step     // what a copy was made of, while it is as that one
	Word    string    // for the verb, as written
	Manner  string    // words beside the time
	Sign    *Sign     // what is waited for, in the place of a time; nil when none is written
	Open    []*Option // the options that are "?", to be decided
	OpenOwn bool      // so is the verb's own value
}

// IsProbed reports whether a temperature was read in the step.
func (s *Step) IsProbed() bool { return s.Reading != nil && s.Reading.Temp.Set }

// Airless reports whether the step shuts air out: a jar, a vacuum bag.
func (s *Step) Airless() bool {
	return s.Sealed || around.Airless(s.Words+" "+s.Tin+" "+s.Manner) || around.Airless(s.Note)
}

// ServesWarm reports whether the step's words say that the part is eaten warm.
func (s *Step) ServesWarm() bool {
	return around.ServedWarm(s.Words) || around.ServedWarm(s.Note) || around.ServedWarm(s.Manner)
}

// Unpacks reports whether the step takes the part out of its container.
func (s *Step) Unpacks() bool { return around.Unpacked(s.Words) }

// Stands is the place of the part: as written, else the verb's own if no temperature is written;
// nil for none.
func (s *Step) Stands() *Place {
	switch {
	case s.Where != nil:
		return s.Where
	case s.At.Set:
		return nil
	}
	return s.Verb.place
}

// Ambient temperature of a step without a place, K from the room (judgement). A warm corner is 4 K
// warmer. A proof is in the warm place of package said.
const (
	coolCornerK = 4
	warmCornerK = 4
	warmPlaceK  = 8
)

// Usual is the ambient temperature of a step without a place, C. ok is false if the step needs a
// written place.
func (s *Step) Usual(room figure.Interval) (around figure.Interval, ok bool) {
	if s.At.Set || s.Stands() != nil {
		return around, false
	}
	around = figure.Interval{Lo: room.Lo - coolCornerK, Hi: room.Hi + warmCornerK}
	switch s.Verb.Usual {
	case InRoom:
		return around, true
	case inWarmth:
		around.Hi = room.Hi + warmPlaceK
		return around, true
	}
	return around, false
}

// MixesLater reports whether a later step of the part mixes something in.
func (s *Step) MixesLater() bool {
	return slices.ContainsFunc(s.Part.Steps[s.Index+1:], func(later *Step) bool {
		return later.Verb.Mixes()
	})
}

// HeatsLater reports whether a later step of the part heats it or mixes something in.
func (s *Step) HeatsLater() bool {
	return slices.ContainsFunc(s.Part.Steps[s.Index+1:], func(later *Step) bool {
		return later.Verb.Heats() || later.Verb.Mixes()
	})
}

// CoolsTo is what a cooling aims at, C: the core where one is written, else to.
func (s *Step) CoolsTo() Given {
	if s.Core.Set {
		return s.Core
	}
	return s.To
}

// OwnAir is the temperature of the water or air that the step's way brings along, C. A written
// temperature stands before it, and before cold air a written place or a freezer.
func (s *Step) OwnAir() (around figure.Interval, ok bool) {
	if s.Way == nil || s.Way.Holds == (figure.Interval{}) || s.At.Set ||
		!s.Way.Iced() && (s.Where != nil || s.Verb.Freezes()) {
		return around, false
	}
	return s.Way.Holds, true
}

// Iced reports whether the part is in ice and water.
func (s *Step) Iced() bool { return s.Way.Iced() && !s.At.Set }

// InHotFat reports whether the step cooks in hot fat.
func (s *Step) InHotFat() bool { return s.Verb.Cooks() && s.Way.HotFat() }

// InOven lists the bakes of one stay in the oven up to this step, in order. A change of heat or a
// wash does not end the stay. For other verbs it is the step alone.
func (s *Step) InOven() []*Step {
	from := s.Index
	if s.Verb.Bakes() {
		for i := s.Index - 1; i >= 0 && s.Part.Steps[i].staysInOven(); i-- {
			if s.Part.Steps[i].Verb.Bakes() {
				from = i
			}
		}
	}
	out := make([]*Step, 0, 2)
	for _, other := range s.Part.Steps[from : s.Index+1] {
		if other.Verb.Bakes() || other == s {
			out = append(out, other)
		}
	}
	return out
}

// CoreTarget is the target core temperature, C: the last one written in this stay in the oven.
func (s *Step) CoreTarget() (target Given) {
	for _, one := range s.InOven() {
		if one.Core.Set {
			target = one.Core
		}
	}
	return target
}

// BakesOn reports whether another bake continues this one.
func (s *Step) BakesOn() bool {
	if !s.Verb.Bakes() {
		return false
	}
	for _, next := range s.Part.Steps[s.Index+1:] {
		if next.Verb.Bakes() {
			return true
		}
		if !next.staysInOven() {
			return false
		}
	}
	return false
}

// staysInOven reports whether a bake may continue after the step.
func (s *Step) staysInOven() bool {
	return s.Verb.Bakes() || (s.Verb.Washes() || s.Verb.Tops()) && !s.Time.Set
}

// LeavesOven reports whether the step ends a stay in the oven.
func (s *Step) LeavesOven() bool { return !s.staysInOven() }

// HeatsAll reports whether the step cooks or bakes the whole part.
func (s *Step) HeatsAll() bool { return s.Verb.Bakes() || s.Verb.Cooks() && len(s.With) == 0 }

// IsAfterHeat reports whether an earlier step cooks or bakes the whole part.
func (s *Step) IsAfterHeat() bool {
	return slices.ContainsFunc(s.Part.Steps[:s.Index], (*Step).HeatsAll)
}

// IsBeforeHeat reports whether a later step cooks or bakes the whole part.
func (s *Step) IsBeforeHeat() bool {
	return slices.ContainsFunc(s.Part.Steps[s.Index+1:], (*Step).HeatsAll)
}

// IsSized reports whether both sides of a sheet are written.
func (s *Step) IsSized() bool { return s.Sides[0].Set }

// TellsThickness reports whether how thick a sheet is follows from what is written.
func (s *Step) TellsThickness() bool { return s.Measure.Set || s.IsSized() }

// AreaCM2 is the area of a sheet whose sides are written, cm2.
func (s *Step) AreaCM2() float64 { return s.Sides[0].Hi * s.Sides[1].Hi / 100 }

// Wound is the side of a sheet that is rolled up, mm: as written, else the shorter, for bakers roll
// from the long side, unless the step that rolls it says the short one. ok is false where no side
// is written.
func (s *Step) Wound() (side Given, ok bool) {
	switch {
	case s.Wide != nil:
		return *s.Wide, true
	case !s.IsSized():
		return Given{}, false
	}
	for _, next := range s.Part.Steps[s.Index+1:] {
		if next.Verb.Coils() && said.FromShortSide(next.Words+" "+next.Note) {
			return s.Sides[0], true
		}
	}
	return s.Sides[1], true
}

// Text names a step as the baker wrote it: "chill 14 h", "sheet 5 mm", "fill almond filling".
func (s *Step) Text() string {
	text := s.Verb.Name + s.ownText()
	if s.Time.Set {
		text += " " + s.Time.Text
	}
	return text
}

// Line is the step with its options: "chill 14 h, at fridge, as slab 30 mm".
func (s *Step) Line() string {
	text := s.Verb.Name + s.ownText()
	asOption := s.Verb.Takes(OptTime)
	if s.Time.Set && !asOption {
		text += " " + s.Time.Text
	}
	for _, set := range s.Settings() {
		if set.Name != OptTime.Name || asOption {
			text += ", " + set.Name + " " + set.Text
		}
	}
	return text
}

// ownText is a blank and the verb's own value; "" for a time.
func (s *Step) ownText() string {
	switch {
	case s.Measure.Set && s.Measure.Text == "": // a bare number: divide = 5
		return " " + quantity.Plain(s.Measure.Hi)
	case s.Measure.Set:
		return " " + s.Measure.Text
	case s.Words != "":
		return " " + s.Words
	}
	return ""
}

// Sign is the sign of a step's end, instead of or beside a time: "until doubled".
type Sign struct {
	Text string
	At   source.Place
}

// coldRiseC is the highest temperature of an overnight rise, C.
const coldRiseC = 10

// IsCold reports whether the part waits in the cold, as written or by its verb.
func (s *Step) IsCold() bool {
	return s.Verb.Waits() && (s.Stands().Cold() || s.At.Set && s.At.Hi <= coldRiseC)
}

// HeatIsOfWay reports whether only the way gives the step's temperature: a boil.
func (s *Step) HeatIsOfWay() bool {
	return s.Way != nil && s.To.Set && s.To.Place == s.Place &&
		s.Way.Food.Hull(s.To.Interval) == s.Way.Food
}

// IsWhole reports whether the part cooks as pieces with a core cooler than the water: dough, raw
// meat, fish.
func (p *Part) IsWhole() bool {
	return p.Kind == Dough || slices.ContainsFunc(p.Ingredients, func(in *Ingredient) bool {
		return in.Item != nil && in.Item.CookC() > 0
	})
}

// HeatUnsaid reports whether the step cooks without a target, reading or way.
func (s *Step) HeatUnsaid() bool {
	return s.Verb.Cooks() && !s.To.Set && !s.Core.Set && s.Reading == nil
}
