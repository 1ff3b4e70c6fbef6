package hazard

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/safety"
)

// What the heat of a step must reach, C.
const (
	stuffedC  = 74 // raw meat in a dough: FDA Food Code 2022, 3-401.11(A)(3) (read)
	boiledC   = 95 // a boil, a little under it for the height of the place (judgement)
	leastFryM = 5  // min that a pan of mince takes at the least (judgement)
	othersC   = 100
)

// longs are times at a low heat that UK advice counts as a cook, C and
// min: 45 min at 60 C and 2 at 70 C (memory). Each has the heating time
// added (judgement). The US code has other figures.
var longs = [...]struct{ c, minutes float64 }{{60, 75}, {70, 15}}

// HasRawMeat reports whether the part's own ingredients hold raw meat
// or fish.
func HasRawMeat(p *Part) Value {
	return figure.YesNo(slices.ContainsFunc(p.Ingredients, makeup.IsRawMeat))
}

// heat is how hot the raw meat of a part gets. Where a bake or hot fat
// follows, other rules judge it: othersC. unread says that a step may
// well cook it, and no figure says so.
type heat struct {
	Interval
	need   *figure.Need
	unread *formula.Step
}

// hotter takes the better of two heats that the same meat goes through.
func (h heat) hotter(o heat) heat {
	return heat{
		Interval: Interval{Lo: max(h.Lo, o.Lo), Hi: max(h.Hi, o.Hi)},
		need:     cmp.Or(o.need, h.need), unread: cmp.Or(o.unread, h.unread),
	}
}

// MeatNeeds is what the raw meat and fish of a part must reach, C: by
// its kind, or stuffed in a dough.
func MeatNeeds(s *Sheet, p *Part) Value {
	c := 0.0
	for _, in := range p.Ingredients {
		if makeup.IsRawMeat(in) {
			c = max(c, in.Item.CookC())
		}
	}
	if c > 0 && !p.IsCooked() && (p.IsDough() || stuffs(s, p)) {
		c = stuffedC
	}
	return figure.ValueOf(figure.Point(c))
}

// stuffs reports whether the part is put in or on a dough that is
// heated after it.
func stuffs(s *Sheet, p *Part) bool {
	for _, q := range s.Formula.Parts {
		for _, step := range q.Steps {
			if step.Uses == p.Part && step.IsBeforeHeat() {
				return true
			}
		}
	}
	return false
}

// MeatHeated is how hot the raw meat and fish of a part gets: by its
// own cooks, and where it goes.
func MeatHeated(s *Sheet, p *Part) Value {
	if HasRawMeat(p).Lo == 0 {
		return figure.ValueOf(figure.Point(othersC))
	}
	h := meat(s, p)
	if h.need != nil && h.Lo < h.Hi {
		return figure.Absent(h.need.What, h.need.Place)
	}
	return figure.ValueOf(h.Interval)
}

// MeatUnread reports whether a step probably cooks the raw meat,
// without a reading that shows it. Its temperature is not written, or
// it is long at a low heat.
func MeatUnread(s *Sheet, p *Part) Value {
	return figure.YesNo(HasRawMeat(p).Lo == 1 && meat(s, p).unread != nil)
}

// meat follows the raw meat of a part through its own steps and where
// it goes.
func meat(s *Sheet, p *Part) heat {
	way := journey{s, map[*formula.Part]heat{}}
	return way.in(p, makeup.IsRawMeat).hotter(way.after(p))
}

// journey remembers where parts go on: paths through parts within parts
// are too many to walk twice.
type journey struct {
	sheet *Sheet
	known map[*formula.Part]heat
}

// in is how hot a part's own steps make the ingredients that is
// tells of.
func (j journey) in(p *Part, is func(*formula.Ingredient) bool) heat {
	out := heat{Interval: j.sheet.Kitchen.Room.Interval}
	for _, step := range p.Steps {
		if step.Verb.HeatsThrough() && makeup.HeatsEach(step, is) {
			out = out.hotter(heated(j.sheet, p, step))
		}
	}
	return out
}

// after is how hot a part gets where it goes, in the coolest of the
// places; as in the room where it goes nowhere.
func (j journey) after(p *Part) heat {
	if h, ok := j.known[p.Part]; ok {
		return h
	}
	room := heat{Interval: j.sheet.Kitchen.Room.Interval}
	users, coolest := 0, heat{Interval: figure.Point(math.Inf(1))}
	cooler := func(h heat) {
		users++
		if h.Lo < coolest.Lo {
			coolest = h
		}
	}
	for _, q := range j.sheet.Formula.Parts {
		part := j.sheet.Part(q)
		for _, step := range q.Steps {
			if step.Uses == p.Part {
				cooler(j.on(part, step))
			}
		}
		taken := func(in *formula.Ingredient) bool { return in.Of == p.Part }
		if slices.ContainsFunc(q.Ingredients, taken) {
			cooler(j.in(part, taken).hotter(j.after(part)))
		}
	}
	if users == 0 {
		coolest = room
	}
	j.known[p.Part] = coolest
	return coolest
}

// on is how hot what a step of a part puts on gets there.
func (j journey) on(q *Part, on *formula.Step) heat {
	out := heat{Interval: j.sheet.Kitchen.Room.Interval}
	warm := on.IsAfterHeat() // the crumb's heat says nothing of what comes onto it
	for _, later := range q.Steps[on.Index+1:] {
		switch {
		case !later.HeatsAll():
		case warm && later.Verb.Bakes():
			out = out.hotter(flashed(j.sheet, later))
		default:
			out = out.hotter(heated(j.sheet, q, later))
		}
	}
	if !warm && on.Verb.Washes() && out.Hi >= othersC {
		return heat{Interval: figure.Point(othersC)} // crust
	}
	return out
}

// flashed is how hot a bake makes what has come onto a crumb that is
// hot already: as read there, else not known.
func flashed(s *Sheet, bake *formula.Step) heat {
	if bake.IsProbed() {
		return heat{Interval: bake.Reading.Temp.Interval}
	}
	return heat{Interval: Interval{Lo: s.Kitchen.Room.Lo, Hi: othersC}, need: &figure.Need{
		What: "measured = \"75 C core\" in this bake, probed in the meat", Place: bake.Place}}
}

// heated is how hot a step makes what is in it. An aim is believed of a
// stirred pan, not of the middle of a dough.
func heated(s *Sheet, p *Part, step *formula.Step) heat {
	if step.Verb.Bakes() || p.IsDough() && step.InHotFat() {
		return heat{Interval: figure.Point(othersC)}
	}
	unknown := heat{Interval: Interval{Lo: s.Kitchen.Room.Lo, Hi: othersC}, need: &figure.Need{
		What: "measured = \"75 C core\" in this " + step.Verb.Name, Place: step.Place}}
	switch reached := s.Reached(step); {
	case step.IsProbed():
		return heat{Interval: reached.Interval()}
	case !p.IsDough() && !reached.Absent:
		out := heat{Interval: reached.Interval()}
		for _, long := range longs {
			if reached.Lo >= long.c && step.Time.Set && step.Time.Lo >= long.minutes {
				out.unread = step
			}
		}
		return out
	case p.IsDough() && s.CookedLong(step),
		!p.IsDough() && step.Time.Set && step.Time.Lo >= leastFryM:
		unknown.unread = step
	}
	return unknown
}

// BoiledMinutes is how long the pulses of a part boil, by its own
// steps, at the least. What boils by its way alone is as hot as water
// boils at the kitchen's height.
func BoiledMinutes(s *Sheet, p *Part) Value {
	sum := Interval{}
	pulse := func(in *formula.Ingredient) bool {
		return in.Item != nil && in.Item.Hazard == larder.HazardLectin
	}
	for _, step := range p.Steps {
		aim := step.To
		if step.IsProbed() {
			aim = step.Reading.Temp
		} else if step.HeatIsOfWay() && step.Way.Boils() {
			aim.Interval = figure.Point(s.BoilsAtC())
		}
		if !step.Verb.Cooks() || !makeup.HeatsEach(step, pulse) || !aim.Set || aim.Hi < boiledC {
			continue
		}
		time := step.Time.Interval
		if !step.Time.Set {
			time = figure.Positive()
		}
		if aim.Lo < boiledC {
			time.Lo = 0
		}
		sum = sum.Add(time)
	}
	return figure.ValueOf(sum)
}

// FlourDusted reports whether a step dusts raw flour on what no later
// step heats.
func FlourDusted(step *formula.Step) Value {
	words := strings.ToLower(step.Words)
	if !strings.Contains(words, "flour") || strings.Contains(words, "treated") ||
		strings.Contains(words, "pasteuri") {
		return figure.YesNo(false)
	}
	return figure.YesNo(step.IsAfterHeat() && !step.IsBeforeHeat())
}

// OnlyHeat reports whether a step is the only heat of a dough cooked
// outside an oven. After a bake, or a reading that shows it cooked, the
// step only warms it again.
func OnlyHeat(step *formula.Step) bool {
	if step.Part.Kind != formula.Dough || !step.Verb.Cooks() || !step.HeatsAll() ||
		step.IsBeforeHeat() {
		return false
	}
	for _, before := range step.Part.Steps[:step.Index] {
		if before.Verb.Bakes() || before.InHotFat() ||
			before.HeatsAll() && before.IsProbed() && before.Reading.Temp.Lo >= safety.FloursCookC {
			return false
		}
	}
	return true
}

// CoreUnread reports whether the core of such a cook is neither read
// nor aimed at in a time that may do.
func CoreUnread(s *Sheet, step *formula.Step) Value {
	return figure.YesNo(DoughCore(s, step).Absent)
}

// DoughCore is what the last cook of a dough outside an oven brings its
// middle to; of any other step othersC.
func DoughCore(s *Sheet, step *formula.Step) Value {
	v := s.Reached(step)
	byFat := step.InHotFat() && !step.IsProbed() && (v.Absent || !step.Core.Set)
	if !OnlyHeat(step) || byFat { // the fat and its time are judged by themselves
		return figure.ValueOf(figure.Point(othersC))
	}
	return v
}

// ComesFrozen reports whether the last step before this in which the part stands is a freezer.
func ComesFrozen(step *formula.Step) Value {
	for _, s := range slices.Backward(step.Part.Steps[:step.Index]) {
		if s.Verb.Waits() || s.Verb.Heats() {
			return figure.YesNo(s.Verb.Freezes())
		}
	}
	return figure.YesNo(false)
}
