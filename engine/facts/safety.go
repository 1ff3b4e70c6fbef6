package facts

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"forebake/engine/exposure"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/science/heat"
	"forebake/engine/science/microbe"
)

// What could make someone ill: which parts need time and temperature control, how long they are warm, how fast they cool, what the
// heat kills. The unfavourable end of every error is in the figures; the rules take it.

const (
	srcControl  = "FDA Food Code 2022, 1-201.10(B), table B (read)"
	srcExposure = microbe.LimitSource + ", made for fish and careful; summed over the modelled core and surface, the worse of the two"
	srcCooling  = "FDA Food Code 2022, 3-501.14 (read); " + srcHeat
	srcKill     = "Channaiah et al. 2016, 2017 and others by the water activity of the food (see D and z in microbe); the core at its slow end"
	errExposure = "that of the modelled temperatures; the published times are careful ends"
)

// limits are the food-safety figures in force in the kitchen.
func (s *Sheet) limits() *microbe.Limits {
	if s.law == nil || s.lawOf != s.Kitchen {
		l := s.Kitchen.Law()
		s.law, s.lawOf = &l, s.Kitchen
	}
	return s.law
}

// needsControl: a dough counts while it holds egg or milk, since it is judged before its bake; a baked crumb is not judged. Anything
// else goes by the table.
func needsControl(p *part) Value {
	if p.isDough() {
		p.add()
		return yes(p.ingredientTraits&(larder.Egg|larder.Dairy) != 0)
	}
	c := p.control()
	switch {
	case c.Answer == microbe.NotNeeded:
		return yes(false)
	case c.Certain:
		return yes(true)
	case !p.PH.Set:
		return maybe("ph of \""+p.Name+"\" (measure it); until then it counts as needing control", p.Place)
	}
	return maybe("water_activity of \""+p.Name+"\" (measure it); until then it counts as needing control", p.Place)
}

// control asks the table. Water that sugar has saturated holds its water activity down however dry the part is, so a part too dry for
// the model is answered by the high end all the same.
func (p *part) control() microbe.Control {
	if p.controlled == nil {
		c := microbe.Control{Answer: microbe.NotNeeded, Certain: true, Cell: "no water in it"}
		if p.WaterActivity.Set || p.grams(allWater).Hi > 0 {
			c = microbe.NeedsControl(microbe.TableB, p.awEnds(), microbe.Interval{Lo: p.PH.Lo, Hi: p.PH.Hi}, p.PH.Set)
		}
		p.controlled = &c
	}
	return *p.controlled
}

// awEnds is the water activity, from 0 where the model does not answer; made once.
func (p *part) awEnds() microbe.Interval {
	if p.activity == nil {
		v := waterActivity(p)
		if v.Absent {
			v.Lo, v.Hi = 0, highestActivity(p)
		}
		p.activity = &microbe.Interval{Lo: v.Lo, Hi: v.Hi}
	}
	return *p.activity
}

func controlCell(p *part) Value {
	if p.isDough() {
		if needsControl(p).Lo == 1 {
			return text("egg or milk in a raw dough")
		}
		return text("no egg or milk in it")
	}
	return text(p.control().Cell)
}

// clock runs along the part's life up to its bake, and on after it for what comes through as spores.
func (p *part) clock() *exposure.Clock {
	if p.exposed != nil {
		return p.exposed
	}
	c := p.ownClock()
	p.exposed = c // before the places are looked at, so that nothing can go round
	var worst *exposure.Clock
	for _, q := range p.Formula.Parts {
		for i, step := range q.Steps {
			if step.Uses != p.Part {
				continue
			}
			there := *c
			p.sheet.part(q).along(&there, i+1, true)
			if worst == nil {
				worst = &there
			} else {
				worst.Worse(&there)
			}
		}
	}
	if worst != nil {
		p.exposed = worst
	}
	return p.exposed
}

// ownClock runs along the part's own steps; what it takes in brings its own time with it.
func (p *part) ownClock() *exposure.Clock {
	if p.ownExposed != nil {
		return p.ownExposed
	}
	l := p.sheet.limits()
	c := exposure.New(l.ColdC.Value, l.HotHoldC.Value)
	p.ownExposed = c
	for _, in := range p.Ingredients {
		if in.Of != nil && needsControl(p.sheet.part(in.Of)).Hi == 1 {
			c.Inherit(p.sheet.part(in.Of).ownClock())
		}
	}
	p.along(c, 0, !p.isDough())
	return c
}

// along takes a clock through the steps of the part from one on. A dough's own clock ends at its bake (onward false); what is in it or
// on it goes on.
func (p *part) along(c *exposure.Clock, from int, onward bool) {
	life := p.follow()
	sinceKill := math.Inf(1) // h; the cooling straight after a kill counts for spores alone, as long as the code gives it
	allowed := p.sheet.limits().TotalHours.Value
	for i := from; i < len(life.Stages); i++ {
		st := &life.Stages[i]
		step := st.Step
		hours := Interval{}
		if step.Time.Set {
			hours = step.Time.Interval.Scale(1.0 / 60)
		}
		verb := step.Verb
		hot := st.Known && st.Core.Low >= p.sheet.limits().CoolFromC.Value
		if verb.Touched() && !hot { // what gets in now is alive
			sinceKill = math.Inf(1)
		}
		sporesOnly := allowed - sinceKill
		switch {
		case st.InOwnBowl:
		case !st.Known && !step.Time.Set && verb.Waits():
			c.Unknown(figure.Positive())
		case !st.Known && verb.Bakes():
			c.Unknown(Interval{Hi: ovenH})
		case !st.Known && verb.HeatUnknown(): // it may be an oven
			c.Unknown(Interval{Lo: hours.Lo, Hi: max(hours.Hi, ovenH)})
		case !st.Known:
			c.Unknown(hours)
		case verb.Waits() && st.HasAmbient && st.Ambient.Hi > growthEndsC && st.StartCore.Low < p.sheet.limits().HotHoldC.Value:
			c.Unknown(hours) // warmed by a wait in the heat, which is no cook: the faster it is taken to go, the less it would count
		case st.Trace[2] != nil:
			c.Wait(st, sporesOnly)
		case verb.Waits() && hours.Hi > 0: // nothing here needs control, or it is a crumb: its course was not drawn
			c.Straight(st.StartCore, st.CoreMax, hours, sporesOnly)
		case verb.Bakes():
			c.Straight(st.StartCore, heatedThrough, intoHeat(st, hours), sporesOnly)
		case hours.Hi > 0:
			c.Straight(st.StartCore, st.Core, hours, sporesOnly)
		}
		if sinceKill += hours.Hi; hot && sinceKill > 0 && !math.IsInf(sinceKill, 1) {
			sinceKill = 0 // kept hot: its cooling has not begun
		}
		switch {
		case p.bakesDough(step) && !st.InOwnBowl:
			if !onward || from > 0 && p.Steps[from-1].Verb.Washes() { // what was brushed on before the bake is dry crust after it
				return
			}
			c.Bake()
			sinceKill = math.Inf(-1) // what gets in later is for the rules on keeping it
		case verb.Cooks() && st.Known && !st.InOwnBowl && microbe.EggCooked(st.Core.Low, 1):
			c.Kill()
			sinceKill = 0
		}
	}
}

// growthEndsC is where the fastest growth of the organisms ends, C: above it a hotter run is not the worse one.
const growthEndsC = 45

// heatedThrough is where nothing grows any more, C.
var heatedThrough = figure.Estimate{Low: 60, Mid: 60, High: 60}

// ovenH is the longest that a middle is taken to warm in an oven, h, however long or short the bake is: one that is too short leaves it
// warm as long all the same. A large tin loaf is at 60 C by then in the middle of the model's error (judgement).
const ovenH = 0.5

// intoHeat is the time that an oven takes to bring the middle to where nothing grows, however long the bake goes on after that.
func intoHeat(st *history.Stage, hours Interval) Interval {
	g, ok := st.Oven.MinutesToCore(heatedThrough.Mid)
	if !ok {
		return Interval{Lo: min(hours.Lo, ovenH), Hi: ovenH}
	}
	if r := st.Step.Reading; r != nil && r.Temp.Set { // the reading says how fast this oven is
		if end, ok := st.Oven.MinutesToCore(r.Temp.Mid()); ok && end.Mid > 0 {
			h := hours.Scale(min(1, g.Mid/end.Mid))
			return Interval{Lo: min(h.Lo, ovenH), Hi: min(h.Hi, ovenH)}
		}
	}
	return Interval{Lo: min(hours.Lo, ovenH, g.Low/60), Hi: min(ovenH, g.High/60)}
}

// bakesDough reports whether a step does to the part what an oven does: it bakes it, or it fries
// a dough.
func (p *part) bakesDough(step *formula.Step) bool {
	return step.Verb.Bakes() || p.isDough() && step.InHotFat()
}

// grows tells whether the organism grows in the part at all.
func (p *part) grows(o microbe.Organism) bool {
	return microbe.Grows(o, p.awEnds(), microbe.Interval{Lo: p.PH.Lo, Hi: p.PH.Hi}, p.PH.Set)
}

func budget(o microbe.Organism) func(*part) Value {
	return func(p *part) Value {
		if !p.grows(o) {
			return num(Interval{})
		}
		return p.spentValue(p.clock().Spent(o))
	}
}

func warmHours(p *part) Value { return p.spentValue(p.clock().WarmHours()) }

// spentValue names what is missing where the warmest run cannot be followed.
func (p *part) spentValue(b figure.Estimate) Value {
	v := bandValue(b, false)
	if math.IsInf(v.Hi, 1) || v.Hi > v.Lo {
		v.Need = p.unknownStage()
	}
	if math.IsInf(v.Mid, 1) {
		v.Mid = math.NaN()
	}
	return v
}

// unknownStage is what would have to be written so that the part can be followed; nil when it can.
func (p *part) unknownStage() *Need {
	look := func(q *part) *Need {
		for i := range q.follow().Stages {
			if st := &q.follow().Stages[i]; !st.Known {
				return lacking(st).Need
			}
		}
		return nil
	}
	if need := look(p); need != nil {
		return need
	}
	for _, q := range p.Formula.Parts {
		for _, step := range q.Steps {
			if step.Uses == p.Part {
				if need := look(p.sheet.part(q)); need != nil {
					return need
				}
			}
		}
	}
	return nil
}

// counted are the organisms that rules are held against, with the function of each budget.
var counted = [...]microbe.Organism{microbe.Salmonella, microbe.SAureus, microbe.BCereus, microbe.LMonocytogenes}

// fastest is the organism that has used up most of its time at the careful end, of those that may be asked about.
func fastest(toxinOnly bool) func(*part) Value {
	return func(p *part) Value {
		name, most := "none", 0.0
		for _, o := range counted {
			if toxinOnly && !o.LeavesToxin() || !p.grows(o) {
				continue
			}
			if spent := p.clock().Spent(o).High; spent > most {
				name, most = o.String(), spent
			}
		}
		return text(name)
	}
}

// foodFor is the kind of food that the published lines of dying are chosen by.
func (p *part) foodFor() microbe.Food {
	p.add()
	chocolate := Interval{}
	for _, in := range p.Ingredients {
		if in.Item != nil && in.Item.Class == larder.ClassChocolate {
			chocolate = chocolate.Add(p.sheet.amount(in))
		}
	}
	switch {
	case chocolate.Hi > p.grams(mass).Lo/2:
		return microbe.Chocolate
	case p.isDough():
		return microbe.Dough
	case p.ingredientTraits&(larder.Egg|larder.Dairy) != 0:
		return microbe.Custard
	}
	return microbe.Dough
}

// wantsKill tells whether what a bake does to a filling matters: it holds raw egg or flour, or needs control and was never cooked.
func (p *part) wantsKill() bool {
	return p.raw(larder.RawEgg, eggCookC).Hi == 1 || p.raw(larder.RawFlour, floursCookC).Hi == 1 || !p.cooksAll() && needsControl(p).Hi == 1
}

// wantKill lists the fillings on a step's part for which the step has to be a kill.
func (s *Sheet) wantKill(step *formula.Step) []*part {
	var out []*part
	for _, other := range step.Part.Steps[:step.Index] {
		if other.Verb.Fills() && other.Uses != nil && s.part(other.Uses).wantsKill() {
			out = append(out, s.part(other.Uses))
		}
	}
	return out
}

// lethality is how far a bake or cook brings Salmonella down in what is least sure of it: the fillings that want it, else the part.
func lethality(s *Sheet, step *formula.Step) Value {
	of := s.wantKill(step)
	if len(of) == 0 {
		of = append(of, s.part(step.Part))
	}
	return s.killedBy(step, of, false)
}

// killedBy integrates over the core in the step, and over the cooling straight after a bake: the slow end of the oven with the quick
// end of the cooling, and the middle of both. No more than the low end is needed, so the high one is a mirror of it; sure leaves the
// middle alone where the low end is a kill step already.
func (s *Sheet) killedBy(step *formula.Step, of []*part, sure bool) Value {
	st, missing := s.stage(step)
	if st == nil {
		return missing
	}
	if !step.Time.Set {
		return absent("the time of this "+step.Verb.Name, step.Place)
	}
	low, mid := math.Inf(1), math.Inf(1)
	for _, p := range of {
		kill := microbe.KillFor(p.foodFor(), p.awEnds().Lo)
		var slow, usual float64
		if step.Verb.Bakes() {
			slow = ovenLog(&kill, st, step.Time.Lo, true) + s.coolingLog(&kill, step, 0)
			if sure && slow >= microbe.BakeLogTarget {
				usual = slow
			} else {
				usual = ovenLog(&kill, st, step.Time.Mid(), false) + s.coolingLog(&kill, step, 1)
			}
		} else {
			slow = kill.Log(st.StartCore.Low, st.Core.Low, step.Time.Lo)
			usual = kill.Log(st.StartCore.Mid, st.Core.Mid, step.Time.Mid())
		}
		low, mid = min(low, slow), min(mid, usual)
	}
	mid = max(low, mid)
	return Value{Lo: low, Mid: mid, Hi: 2*mid - low, Origin: Model}
}

// ovenLog follows the core through an oven: by the model's slow end or its middle; through a reading at the end, where there is one.
func ovenLog(kill *microbe.Kill, st *history.Stage, minutes float64, slow bool) float64 {
	const steps = 24
	stretch := 1.0
	if slow {
		stretch = 1 / heat.BakeFactor
	}
	if r := st.Step.Reading; r != nil && r.Temp.Set && minutes > 0 {
		end := r.Temp.Mid()
		if slow {
			end = r.Temp.Lo
		}
		if g, ok := st.Oven.MinutesToCore(end); ok {
			stretch = g.Mid / minutes
		}
	}
	var at, cores [steps]float64
	for i := range at {
		at[i] = minutes * stretch * float64(i+1) / steps
	}
	if !st.Oven.Cores(at[:], cores[:]) {
		return 0
	}
	sum, last := 0.0, st.StartCore.Low
	for _, core := range cores {
		sum += kill.Log(last, core, minutes/steps)
		last = core
	}
	return sum
}

// coolingLog goes on over the waits straight after a bake: the middle stays hot for a while. run is 0 for the quickest cooling.
func (s *Sheet) coolingLog(kill *microbe.Kill, bake *formula.Step, run int) float64 {
	sum := 0.0
	life := s.part(bake.Part).follow()
	for i := bake.Index + 1; i < len(life.Stages); i++ {
		st := &life.Stages[i]
		trace := st.Trace[run]
		switch {
		case !st.Known || st.Step.Verb.Bakes():
			return sum
		case trace == nil && st.Step.Time.Set: // not drawn where nothing in it needs control: then the oven alone has to do
			return sum
		}
		for k := 1; k < len(trace); k++ {
			sum += kill.Log(trace[k-1].Core, trace[k].Core, 60*(trace[k].Hours-trace[k-1].Hours))
		}
	}
	return sum
}

// isKilled tells whether a bake that is a proven kill step follows what the part goes through: at its slow end.
func isKilled(p *part) Value {
	return p.once(&p.killed, killedLater)
}

func killedLater(p *part) Value {
	out, found := yes(true), false
	ask := func(q *part, from int) {
		for _, step := range q.Steps[from:] {
			if q.bakesDough(step) {
				found = true
				v := p.sheet.killedBy(step, []*part{p}, true)
				switch {
				case v.Absent && out.Hi == 1:
					out = maybe(v.Need.What, v.Need.Place)
				case !v.Absent && v.Lo < microbe.BakeLogTarget && (v.Hi < microbe.BakeLogTarget || out.Hi == 0):
					out = yes(false)
				case !v.Absent && v.Lo < microbe.BakeLogTarget:
					out = maybe("a core reading in this "+step.Verb.Name+": measured = \"93 C core\"", step.Place)
				}
				return
			}
		}
		out, found = yes(false), true
	}
	if p.hasStep((*formula.Verb).Bakes) || p.fried() {
		ask(p, 0)
		return out
	}
	for _, q := range p.Formula.Parts {
		for i, step := range q.Steps {
			if step.Uses == p.Part {
				ask(p.sheet.part(q), i+1)
			}
		}
		for _, in := range q.Ingredients {
			if in.Of == p.Part {
				if v := isKilled(p.sheet.part(q)); v.Hi == 0 || out.Lo == 1 {
					out = v
				}
				found = true
			}
		}
	}
	if !found {
		return yes(false)
	}
	return out
}

// eggHeat is the hottest that the part is sure to get, by its own cooks and bakes and by those of what it goes into or onto; what is
// brushed on before a bake is crust.
func eggHeat(p *part) Value {
	return p.once(&p.heated, hottest)
}

func hottest(p *part) Value {
	best := Value{Lo: math.Inf(-1), Hi: math.Inf(-1), Origin: AsGiven}
	hotter := func(v Value) {
		if v.Absent {
			best.Hi, best.Need = math.Inf(1), v.Need
			return
		}
		best.Lo, best.Hi = max(best.Lo, v.Lo), max(best.Hi, v.Hi)
	}
	for _, step := range p.Steps {
		if step.HeatsAll() {
			hotter(p.sheet.reached(step))
		}
	}
	users, later := 0, Value{Lo: math.Inf(1), Hi: math.Inf(1)} // the coolest of the places where it ends
	cooler := func(v Value) {
		users++
		later.Lo, later.Hi = min(later.Lo, v.Lo), min(later.Hi, v.Hi)
		if v.Need != nil {
			later.Need = v.Need
		}
	}
	for _, q := range p.Formula.Parts {
		for i, step := range q.Steps {
			if step.Uses == p.Part {
				cooler(p.sheet.heatAfter(q, i))
			}
		}
		for _, in := range q.Ingredients {
			if in.Of == p.Part {
				cooler(eggHeat(p.sheet.part(q)))
			}
		}
	}
	if users > 0 {
		if later.Need != nil && best.Need == nil {
			best.Need = later.Need
		}
		best.Lo, best.Hi = max(best.Lo, later.Lo), max(best.Hi, later.Hi)
	}
	if math.IsInf(best.Hi, -1) { // it is never heated: as warm as its own ingredients
		room := p.sheet.Kitchen.Room.Interval
		return num(room)
	}
	if math.IsInf(best.Lo, -1) { // heated, and nobody says how far
		best.Lo = min(best.Hi, 0)
	}
	best.Mid = middle(Interval{Lo: best.Lo, Hi: best.Hi})
	return best
}

// heatAfter is how hot what step i of q puts on gets there; nothing where no bake follows.
func (s *Sheet) heatAfter(q *formula.Part, i int) Value {
	for _, step := range q.Steps[i+1:] {
		if !step.Verb.Bakes() {
			continue
		}
		if q.Steps[i].Verb.Washes() {
			return num(figure.Point(100))
		}
		return s.reached(step)
	}
	return num(s.Kitchen.Room.Interval)
}

// reached is the temperature that a cook or bake brings all of its part to: as read, else as aimed at, else as modelled.
func (s *Sheet) reached(step *formula.Step) Value {
	switch r := step.Reading; {
	case r != nil && r.Temp.Set:
		return num(r.Temp.Interval)
	case step.Core.Set:
		return num(step.Core.Interval)
	case step.To.Set:
		return num(step.To.Interval)
	case step.Verb.Bakes():
		return coreEnd(s, step)
	}
	return absent("to = \"... C\" in this "+step.Verb.Name, step.Place)
}

// flourEatenRaw: raw flour that no bake reaches. A part without a step says nothing yet.
func flourEatenRaw(p *part) Value {
	raw := p.raw(larder.RawFlour, floursCookC)
	if raw.Hi == 0 || len(p.takers()) > 0 {
		return yes(false)
	}
	heat := eggHeat(p)
	switch {
	case heat.Lo >= floursCookC:
		return yes(false)
	case heat.Hi >= floursCookC:
		return maybe("the core that this is baked to", p.Place)
	case len(p.Steps) == 0 && len(p.Taken) == 0:
		return maybe("the step that bakes \""+p.Name+"\"", p.Place)
	}
	return raw
}

// standsHere tells whether what stands in a step needs control: the part itself; after a bake, what is in it or on it.
func standsHere(s *Sheet, step *formula.Step) Value {
	p := s.part(step.Part)
	if !p.isDough() || !afterBake(step) {
		return needsControl(p)
	}
	out := yes(false)
	for _, other := range p.Steps[:step.Index] {
		if other.Uses == nil || other.Verb.Washes() || onlyFat(other.Uses) {
			continue // a wash is crust after the bake, and butter that was rolled in is crumb
		}
		if v := needsControl(s.part(other.Uses)); v.Hi > out.Hi || v.Lo > out.Lo {
			out = v
		}
	}
	return out
}

// onlyFat tells whether a part is nothing but butter or another fat.
func onlyFat(p *formula.Part) bool {
	for _, in := range p.Ingredients {
		if in.Item == nil || in.Item.Class != larder.ClassFat {
			return false
		}
	}
	return true
}

// startsHot reports whether a wait begins a cooling: the part comes to it hot, from a cook or bake
// and not from another wait in which it cooled. In hot surroundings no cooling begins.
func startsHot(s *Sheet, step *formula.Step) Value {
	hot := s.limits().CoolFromC.Value
	keptHot := func(step *formula.Step) bool {
		around, ok := history.Around(s.Kitchen, step)
		return ok && around.Lo >= hot
	}
	before := false
	for k := step.Index - 1; k >= 0 && !before; k-- {
		switch other := step.Part.Steps[k]; {
		case other.Verb.Heats():
			before = true
		case other.Verb.Waits() && !keptHot(other):
			return yes(false)
		}
	}
	if !before || keptHot(step) {
		return yes(false)
	}
	st, missing := s.stage(step)
	if st == nil {
		return maybe(missing.Need.What, missing.Need.Place)
	}
	switch {
	case st.StartCore.Low >= hot:
		return yes(true)
	case st.StartCore.High < hot:
		return yes(false)
	}
	return maybe("measured = \"... C\" in the step before", step.Place)
}

// cooling gives the hours from the start of the code's clock until the part is at a temperature, over all the waits of a cooling. In
// surroundings that are cold enough to keep it the last wait is taken to last as long as it takes; elsewhere the clock ends with the
// steps as written. second lets a bake that follows in time end the clock, once the first stage is done.
func cooling(second bool) func(*Sheet, *formula.Step) Value {
	return func(s *Sheet, step *formula.Step) Value {
		p, l := s.part(step.Part), s.limits()
		if st, missing := s.stage(step); st == nil {
			return missing
		}
		target := l.FirstToC.Value
		if second {
			target = l.SecondToC.Value
		}
		from, ok1 := p.fallsTo(step, l.CoolFromC.Value)
		to, ok2 := p.fallsTo(step, target)
		if !ok1 || !ok2 {
			return absent("the surroundings of every wait from this "+step.Verb.Name+" on", step.Place)
		}
		if second {
			if first, ok := p.fallsTo(step, l.FirstToC.Value); ok && first.done {
				if baked, ok := p.untilBaked(step); ok {
					to = to.sooner(baked)
				}
			}
		}
		between := func(from, to float64) float64 {
			if math.IsInf(from, 1) {
				return 0 // kept hot: the clock never starts
			}
			return max(0, to-from)
		}
		v := Value{Lo: between(from.quick, to.quick), Mid: between(from.usual, to.usual), Hi: between(from.slow, to.slow), Origin: Model}
		v.Lo, v.Hi = min(v.Lo, v.Mid), max(v.Hi, v.Mid)
		if math.IsInf(v.Mid, 1) {
			v.Mid = math.NaN()
		}
		if math.IsInf(v.Lo, 1) { // no run ever comes there: it lasts as long as is written, at the least
			v.Lo = 0
			for _, st := range p.coolingFrom(step) {
				v.Lo += st.Step.Time.Lo / 60
			}
		}
		return v
	}
}

// fall is the time until a part has fallen to a temperature, h from the start of its cooling.
type fall struct {
	quick, usual, slow float64
	done               bool // it is there by the end of the steps as written, in every run
}

func (f fall) sooner(h Interval) fall {
	return fall{min(f.quick, h.Lo), min(f.usual, h.Mid()), min(f.slow, h.Hi), f.done}
}

// fallsTo looks along the courses of a cooling, wait after wait, for where each run comes down to a temperature. The coldest run is
// the quick one.
func (p *part) fallsTo(step *formula.Step, targetC float64) (fall, bool) {
	waits := p.coolingFrom(step)
	keeps := false
	for _, st := range waits {
		if at := stepAt(p.sheet, st.Step); !at.Absent && at.Hi <= p.sheet.limits().ColdC.Value {
			keeps = true
		}
	}
	out, done := [3]float64{math.NaN(), math.NaN(), math.NaN()}, true
	var at [3]float64
	for i, st := range waits {
		if !st.Known {
			return fall{}, false
		}
		ambient := [...]float64{st.Ambient.Lo, st.Ambient.Mid(), st.Ambient.Hi}
		last := i == len(waits)-1
		for r := range out {
			if !math.IsNaN(out[r]) {
				continue
			}
			trace := st.Trace[r]
			end := trace[len(trace)-1].Hours
			h, met := downTo(trace, ambient[r], targetC)
			switch {
			case met:
				out[r] = at[r] + h
			case !last:
				at[r] += end
			case keeps:
				h, ok := p.onTo(st, r, ambient[r], targetC)
				if !ok {
					return fall{}, false
				}
				out[r], done = at[r]+h, false
			default:
				out[r], done = at[r]+end, false
			}
		}
	}
	return fall{out[0], out[1], out[2], done}, len(waits) > 0
}

// coolingFrom lists the waits of a cooling that begins in a step, up to the next cook or bake.
func (p *part) coolingFrom(step *formula.Step) []*history.Stage {
	var out []*history.Stage
	life := p.follow()
	for i := step.Index; i < len(life.Stages); i++ {
		st := &life.Stages[i]
		switch verb := st.Step.Verb; {
		case verb.HeatsThrough():
			return out
		case st.Trace[0] != nil || !st.Known && verb.Waits():
			out = append(out, st)
		}
	}
	return out
}

// downTo is when a course comes down to a temperature, h; between two points of it what is above the surroundings dies away.
func downTo(trace []history.Sample, ambientC, targetC float64) (hours float64, met bool) {
	for i, b := range trace {
		switch {
		case b.Core > targetC:
		case i == 0:
			return 0, true
		default:
			a := trace[i-1]
			share := (a.Core - targetC) / (a.Core - b.Core)
			if above := b.Core - ambientC; above > 0 {
				share = math.Log((a.Core-ambientC)/(targetC-ambientC)) / math.Log((a.Core-ambientC)/above)
			}
			return a.Hours + share*(b.Hours-a.Hours), true
		}
	}
	return 0, false
}

// onTo follows a run past the end of its course: by the pace at which it was dying away, once it is well on its way; else by following
// it again.
func (p *part) onTo(st *history.Stage, run int, ambientC, targetC float64) (hours float64, ok bool) {
	trace := st.Trace[run]
	first, before, last := trace[0].Core-ambientC, trace[len(trace)-2], trace[len(trace)-1]
	if targetC <= ambientC {
		return math.Inf(1), true
	}
	if a, b := before.Core-ambientC, last.Core-ambientC; b > 0 && b < a && a < 0.6*first {
		pace := math.Log(a/b) / (last.Hours - before.Hours)
		return last.Hours + math.Log(b/(targetC-ambientC))/pace, true
	}
	b, ok := p.sheet.follower.TimeTo(p.setup(), st.Step, targetC)
	return [...]float64{b.Low, b.Mid, b.High}[run], ok
}

// untilBaked is how long after the start of a step its part goes into the oven in all that it is spread on, h; ok is false where it
// does not.
func (p *part) untilBaked(step *formula.Step) (h Interval, ok bool) {
	sum := func(steps []*formula.Step) Interval {
		total := Interval{}
		for _, other := range steps {
			if other.Time.Set {
				total = total.Add(other.Time.Interval.Scale(1.0 / 60))
			} else if other.Verb.Waits() {
				total.Hi = math.Inf(1)
			}
		}
		return total
	}
	latest := Interval{}
	for _, q := range p.Formula.Parts {
		for i, use := range q.Steps {
			if use.Uses != p.Part {
				continue
			}
			baked := false
			for k := i + 1; k < len(q.Steps) && !baked; k++ {
				if baked = q.Steps[k].Verb.Bakes(); baked {
					h := sum(p.Steps[step.Index:]).Add(sum(q.Steps[i:k]))
					latest = figure.Between(max(latest.Lo, h.Lo), max(latest.Hi, h.Hi))
				}
			}
			if !baked {
				return Interval{}, false
			}
			ok = true
		}
	}
	return latest, ok
}

// madeToCold is the time from the end of a part's mix until its core is cold, h.
func madeToCold(s *Sheet, step *formula.Step) Value {
	p := s.part(step.Part)
	before := Interval{}
	mixed := !p.hasStep((*formula.Verb).Mixes)
	for _, other := range p.Steps[:step.Index] {
		if mixed && other.Time.Set {
			before = before.Add(other.Time.Interval.Scale(1.0 / 60))
		}
		mixed = mixed || other.Verb.Mixes()
	}
	cold := s.limits().SecondToC.Value
	v := hoursTo(cold)(s, step)
	if v.Absent {
		return v
	}
	// A run that comes cold to this step was cold in time or not in an earlier one.
	st, _ := s.stage(step)
	for _, x := range [...]struct {
		start, before float64
		h             *float64
	}{{st.StartCore.Low, before.Lo, &v.Lo}, {st.StartCore.Mid, before.Mid(), &v.Mid}, {st.StartCore.High, before.Hi, &v.Hi}} {
		if x.start > cold {
			*x.h += x.before
		}
	}
	return v
}

// coolingWay says in words how shallow the part would have to stand to cool in time: here, and in an ice bath.
func coolingWay(s *Sheet, step *formula.Step) Value {
	if st, missing := s.stage(step); st == nil {
		return missing
	}
	var ways []string
	if mm := s.trayFor(step, nil); mm > 0 {
		ways = append(ways, fmt.Sprintf("trays of %s here", quantity.Format(mm, "mm")))
	}
	if mm := s.trayFor(step, formula.IceBath); mm > 0 {
		ways = append(ways, fmt.Sprintf("%s in an ice bath", quantity.Format(mm, "mm")))
	}
	if len(ways) == 0 {
		return text("an ice bath, thinner and stirred")
	}
	return text(strings.Join(ways, ", or "))
}

// trayFor is the deepest open tray, mm in whole steps of 5 (1 below 10), that keeps both stages at the slow end; 0 where none does.
func (s *Sheet) trayFor(step *formula.Step, by *formula.Way) float64 {
	l := s.limits()
	open := false
	keeps := func(mm float64) bool {
		instead := *step
		instead.Reading, instead.Covered = nil, &open
		instead.Form = &formula.Geometry{Shape: "tray", MM: figure.Point(mm)}
		if by != nil {
			instead.Way, instead.At, instead.Where = by, formula.Given{}, nil
		}
		setup := s.part(step.Part).setup()
		at := func(c float64) float64 {
			b, ok := s.follower.TimeToIf(setup, step, &instead, c)
			if !ok {
				return math.Inf(1)
			}
			return b.High
		}
		from := at(l.CoolFromC.Value)
		return at(l.FirstToC.Value)-from <= l.FirstHours.Value && at(l.SecondToC.Value)-from <= l.TotalHours.Value
	}
	depths := []float64{2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80}
	i, _ := slices.BinarySearchFunc(depths, true, func(mm float64, _ bool) int {
		if keeps(mm) {
			return -1
		}
		return 1
	})
	if i == 0 {
		return 0
	}
	return depths[i-1]
}

// Times as long as at 5 C that a day at up to 7.2 C (45 F) counts: older editions of the code gave 4 days there in place of 7. Warmer
// than that one day is all.
const (
	warmFridgeC    = 7.2
	daysAtWarm     = 4
	daysAtWarmer   = 1
	frozenStopsAtC = 0
)

// keptDays counts the days that a part is kept cold, as days at 5 C, the day it is made being the first; frozen days do not count.
func keptDays(s *Sheet, step *formula.Step) Value {
	l := s.limits()
	sum := figure.Point(1)
	for _, other := range step.Part.Steps[:step.Index+1] {
		if !other.Verb.Stores() {
			continue
		}
		if !other.Time.Set {
			return absent("the time of this "+other.Verb.Name, other.Place)
		}
		at := stepAt(s, other)
		if at.Absent {
			return at
		}
		weigh := func(c float64) float64 {
			switch {
			case c <= frozenStopsAtC:
				return 0
			case c <= l.KeepAtC.Value:
				return 1
			case c <= warmFridgeC:
				return l.KeepDays.Value / daysAtWarm
			}
			return l.KeepDays.Value / daysAtWarmer
		}
		days := other.Time.Interval.Scale(1.0 / 1440)
		sum = sum.Add(Interval{Lo: days.Lo * weigh(at.Lo), Hi: days.Hi * weigh(at.Hi)})
	}
	return num(sum)
}

// warmAfterBake is the longest that something which needs control stands after a bake in surroundings that are neither cold nor hot,
// h. Where the formula shall keep and no step says in the cold, that time may be warm as well.
func warmAfterBake(s *Sheet) Value {
	l := s.limits()
	out := num(Interval{})
	for _, p := range s.Formula.Parts {
		if p.Kind != formula.Dough {
			continue
		}
		sum, cold := Interval{}, false
		var need *Need
		held := yes(false)
		for _, step := range p.Steps {
			if !afterBake(step) || !step.Verb.Waits() {
				continue
			}
			if held = standsHere(s, step); held.Hi == 0 {
				continue
			}
			time := step.Time.Interval.Scale(1.0 / 60)
			if !step.Time.Set {
				time = figure.Positive()
				need = &Need{"the time of this " + step.Verb.Name, step.Place}
			}
			switch at := stepAt(s, step); {
			case at.Absent:
				sum.Hi += time.Hi
				need = at.Need
			case at.Hi <= l.ColdC.Value:
				cold = true
			case at.Lo >= l.HotHoldC.Value:
			default:
				sum = sum.Add(time)
			}
		}
		if held.Hi > 0 && !cold && s.Formula.Keep.Set {
			sum.Hi += s.Formula.Keep.Interval.Hi / 60
			need = &Need{"a step that keeps it in the cold: { store = \"1 day\", at = \"fridge\" }", p.Place}
		}
		if held.Lo == 0 && sum.Lo > 0 {
			sum.Lo, need = 0, held.Need
		}
		if sum.Hi > out.Hi {
			out = num(sum)
			out.Need = need
		}
	}
	return out
}

// alcoholLast tells whether something with a spirit in it goes on after the bake, or into what is never baked.
func alcoholLast(s *Sheet) Value {
	for i := range s.parts {
		p := &s.parts[i]
		if p.has(larder.Spirit).Lo == 0 || p.baked() {
			continue
		}
		before := false
		for _, q := range s.Formula.Parts {
			for k, step := range q.Steps {
				before = before || step.Uses == p.Part && s.heatAfter(q, k).Hi > 60
			}
		}
		if !before && len(p.takers()) == 0 {
			return yes(true)
		}
	}
	return yes(false)
}
