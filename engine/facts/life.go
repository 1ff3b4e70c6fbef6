package facts

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/science/bakersmath"
)

// What a part goes through: its history, and the temperature that it begins with.

const (
	srcHeat    = "series solution of transient conduction over the staged history (Carslaw & Jaeger; Incropera ch. 5), surface coefficients computed or from memory; butter and heat of fermentation to first order"
	errHeat    = "about 27 % in time for dough in a fridge; a probe reading beats it"
	srcBalance = "heat balance over the ingredients; specific heats from food engineering tables; friction by method"
	errBalance = "the friction's own range, and temperatures that are not written lie between fridge and room"
)

// follow gives the part's life, made once.
func (p *part) follow() *history.Record {
	if p.life == nil {
		if p.following { // parts cannot go round in a circle; this only keeps a mistake from hanging
			return &history.Record{}
		}
		p.following = true
		setup := p.setup()
		p.life = p.sheet.follower.Follow(setup)
	}
	return p.life
}

// setup is what the part is followed with, made once.
func (p *part) setup() history.Setup {
	if p.prepared == nil {
		s := p.prepare()
		p.prepared = &s
	}
	return *p.prepared
}

func (p *part) prepare() history.Setup {
	s := history.Setup{Part: p.Part, Kitchen: p.sheet.Kitchen, MassG: p.grams(mass), Material: p.material()}
	start := p.startTemp()
	switch {
	case !s.Material.Known:
		s.Missing = p.thermal().density.Need.What
	case start.Absent:
		s.Missing = start.Need.What
	default:
		s.Start, s.Started = figure.Estimate{Low: start.Lo, Mid: start.Mid, High: start.Hi}, true
	}
	if f, ok := p.factor(); ok && p.strain() != "none" {
		if y, ok := p.ofFlour(yeast); ok && y.IsFinite() && f.IsFinite() {
			s.Gas = 100 * y.Mid() * f.Mid()
		}
	}
	// The lives of the fillings are made before this one: they share the follower's memory.
	fillings := map[*formula.Part]*history.Filling{}
	for _, step := range p.Steps {
		if step.Uses != nil && step.Verb.Fills() {
			fillings[step.Uses] = p.sheet.part(step.Uses).asFilling()
		}
	}
	s.Trace, s.TraceBaked = p.traced()
	s.Filling = func(q *formula.Part) *history.Filling { return fillings[q] }
	return s
}

// traced tells whether the part's course is wanted for what lives on warmth, and after a bake too: that of a dough for its own sake
// when it needs control, and for what is on it or in it.
func (p *part) traced() (raw, baked bool) {
	raw = needsControl(p).Hi == 1
	if !p.isDough() {
		return raw, raw
	}
	for _, step := range p.Steps {
		if step.Uses != nil && !baked {
			q := p.sheet.part(step.Uses)
			baked = needsControl(q).Hi == 1 || q.wantsKill()
		}
	}
	return raw || baked, baked
}

// asFilling gives the part as it is when it is spread: as its own steps leave it.
func (p *part) asFilling() *history.Filling {
	t := p.endTemp()
	if t.Absent {
		return nil
	}
	return &history.Filling{Temp: figure.Estimate{Low: t.Lo, Mid: t.Mid, High: t.Hi}, MassG: p.grams(mass), Material: p.material()}
}

// endTemp is the mean temperature that the part's own steps leave it with.
func (p *part) endTemp() Value {
	life := p.follow()
	if len(life.Stages) == 0 {
		return p.startTemp()
	}
	last := &life.Stages[len(life.Stages)-1]
	if !last.Known {
		return lacking(last)
	}
	return bandValue(last.Mean, last.Measured)
}

func bandValue(b figure.Estimate, measured bool) Value {
	v := Value{Lo: min(b.Low, b.Mid, b.High), Hi: max(b.Low, b.Mid, b.High), Mid: b.Mid, Origin: Model}
	if measured {
		v.Origin = Measured
	}
	return v
}

func (p *part) material() history.Material {
	t := p.thermal()
	if t.density.Absent {
		return history.Material{}
	}
	m := history.Material{Known: true, Conductivity: t.conductivity.Mid, Density: t.density.Mid * 1000, SpecificHeat: t.specificHeat.Mid}
	m.Diffusivity = m.Conductivity / (m.Density * m.SpecificHeat)
	if total := p.grams(mass).Mid(); total > 0 {
		m.Butterfat = p.grams(butterfat).Mid() / total
	}
	return m
}

// startTemp is the temperature that the part begins its steps with: as the first mix leaves it, else that of its ingredients.
func (p *part) startTemp() Value {
	for _, s := range p.Steps {
		if s.Verb.Mixes() {
			return p.mixTemp(s)
		}
	}
	return p.balance(nil)
}

// mixTemp is the dough's temperature at the end of a mix: as measured; else by the heat balance when the temperatures of all
// cold and wet ingredients are written; else as the baker aims at it; else by the heat balance between fridge and room.
func (p *part) mixTemp(s *formula.Step) Value {
	if r := s.Reading; r != nil && r.Temp.Set {
		v := num(r.Temp.Interval)
		v.Origin = Measured
		return v
	}
	if s.To.Set && (!p.tempsWritten() || !p.isDough() || !firstMix(s)) {
		return given(s.To, "", s.Place)
	}
	if !firstMix(s) {
		return absent("to = \"25 C\" or measured = \"25 C\" in this mix", s.Place)
	}
	return p.balance(s)
}

func (p *part) isDough() bool { return p.Kind == formula.Dough || p.Kind == formula.Preferment }

// firstMix tells whether no mix stands before it: the first takes the ingredients, later ones only work them on.
func firstMix(s *formula.Step) bool {
	for _, other := range s.Part.Steps[:s.Index] {
		if other.Verb.Mixes() {
			return false
		}
	}
	return true
}

func lastMix(s *formula.Step) bool {
	for _, other := range s.Part.Steps[s.Index+1:] {
		if other.Verb.Mixes() {
			return false
		}
	}
	return true
}

// tempsWritten tells whether every ingredient that is usually cold or wet has its temperature written, so that the balance
// can be trusted over the baker's aim.
func (p *part) tempsWritten() bool {
	wet := false
	for _, in := range p.Ingredients {
		if !usuallyCold(in) {
			continue
		}
		wet = true
		if !in.Temp.Set {
			return false
		}
	}
	return wet
}

func usuallyCold(in *formula.Ingredient) bool {
	if in.Of != nil {
		return false
	}
	switch in.Item.Class {
	case larder.ClassLiquid, larder.ClassDairy, larder.ClassEgg, larder.ClassFat:
		return !in.Item.Is(larder.Solid) || in.Item.Class == larder.ClassFat
	}
	return in.Item.Is(larder.Pourable)
}

// ingredientTemp is as written; another part's as its steps leave it; else dry goods are at the room, and what is usually
// cold lies between fridge and room.
func (p *part) ingredientTemp(in *formula.Ingredient) Value {
	k := p.sheet.Kitchen
	switch {
	case in.Temp.Set:
		return num(in.Temp.Interval)
	case in.Of != nil:
		if t := p.sheet.part(in.Of).endTemp(); !t.Absent {
			return t
		}
		v := num(k.Fridge.Interval.Hull(k.Room.Interval))
		ends := p.sheet.part(in.Of).anyTemp()
		v.Lo, v.Hi = ends.Lo, ends.Hi
		return v
	case usuallyCold(in):
		return num(k.Fridge.Interval.Hull(k.Room.Interval))
	}
	return num(k.Room.Interval)
}

// anyTemp is what a part can be at when its steps cannot be followed: anything between the fridge, the room and every temperature that
// its steps and ingredients name; no hotter than boiling. Made once: of parts within parts within parts there are more ways through
// than anyone can walk.
func (p *part) anyTemp() Interval {
	if p.named != nil {
		return *p.named
	}
	k := p.sheet.Kitchen
	out := k.Fridge.Interval.Hull(k.Room.Interval)
	for _, s := range p.Steps {
		for _, g := range [...]formula.Given{s.To, s.Core} {
			if g.Set {
				out = out.Hull(g.Interval)
			}
		}
		if around, ok := history.Around(k, s); ok {
			out = out.Hull(around)
		}
		if s.Reading != nil && s.Reading.Temp.Set {
			out = out.Hull(s.Reading.Temp.Interval)
		}
	}
	for _, in := range p.Ingredients {
		switch {
		case in.Temp.Set:
			out = out.Hull(in.Temp.Interval)
		case in.Of != nil:
			out = out.Hull(p.sheet.part(in.Of).anyTemp())
		}
	}
	p.named = &Interval{Lo: out.Lo, Hi: max(out.Lo, min(out.Hi, 100))}
	return *p.named
}

// Friction of what holds no flour: there is nothing to develop, C (judgement).
const pasteFriction, pasteFrictionHigh = 0.5, 2

func (p *part) friction(s *formula.Step) (low, typical, high float64) {
	switch {
	case s == nil:
		return 0, 0, 0
	case !p.isDough():
		return 0, pasteFriction, pasteFrictionHigh
	}
	mixer := s.Way.Mixer()
	if house := p.sheet.Kitchen.Friction; house.Set && mixer != bakersmath.ByHand {
		return house.Lo, house.Mid(), house.Hi
	}
	low, typical, high, _ = bakersmath.FrictionRiseC(mixer)
	return low, typical, high
}

// heatOf gives an ingredient as the heat balance takes it; at picks the end of its temperature: -1, 0, 1.
func (p *part) heatOf(in *formula.Ingredient, at int) (bakersmath.Ingredient, bool) {
	t := p.ingredientTemp(in)
	g := p.sheet.amount(in)
	if !g.IsPoint() {
		return bakersmath.Ingredient{}, false // a range of weights would need every mix of their ends
	}
	temp := t.Mid
	switch at {
	case -1:
		temp = t.Lo
	case 1:
		temp = t.Hi
	}
	out := bakersmath.Ingredient{MassKg: g.Mid() / 1000, TempC: temp}
	if in.Of != nil {
		out.SpecificHeatKJ = 2.7 // dough, 2.15 to 3.19 measured
		if m := p.sheet.part(in.Of).material(); m.Known {
			out.SpecificHeatKJ = m.SpecificHeat / 1000
		}
		return out, out.MassKg > 0
	}
	item := in.Item
	out.SpecificHeatKJ = (4.18*item.Water + 2.0*item.Fat + 1.6*(100-item.Water-item.Fat)) / 100
	switch item.Class {
	case larder.ClassFlour:
		out.SpecificHeatKJ = bakersmath.HeatFlourKJ
	case larder.ClassSalt:
		out.SpecificHeatKJ = bakersmath.HeatSaltKJ
	case larder.ClassEgg:
		if item.Water > 40 {
			out.SpecificHeatKJ = bakersmath.HeatEggKJ
		}
	case larder.ClassFat:
		out.Butter = item.Is(larder.MilkFat)
		out.SpecificHeatKJ = bakersmath.HeatOilKJ
		if out.Butter {
			out.SpecificHeatKJ = bakersmath.HeatButterKJ
		}
	case larder.ClassSugar:
		if item.Water < 3 {
			out.SpecificHeatKJ = bakersmath.HeatSugarKJ
			out.Dissolves = item.Sucrose > 50 && p.grams(water).Mid() > p.grams(sucrose).Mid()/2 // 67 % is all that water holds
		}
	}
	return out, out.MassKg > 0
}

// balance mixes all ingredients, with the friction of a mix or none.
func (p *part) balance(s *formula.Step) Value {
	low, typical, high := p.friction(s)
	var ends [3]float64
	for i, rise := range [...]float64{low, typical, high} {
		var list []bakersmath.Ingredient
		for _, in := range p.Ingredients {
			one, ok := p.heatOf(in, i-1)
			if !ok {
				return absent("all amounts of \""+p.Name+"\", each as one figure", p.Place)
			}
			list = append(list, one)
		}
		t, ok := bakersmath.HeatBalanceDoughC(list, rise)
		if !ok {
			return absent("the temperatures of what goes into \""+p.Name+"\"", p.Place)
		}
		ends[i] = t
	}
	return Value{Lo: ends[0], Mid: ends[1], Hi: ends[2], Origin: Model}
}

// liquid is what the baker can warm or cool: the pourable ingredients together; ok is false while one of them has no single
// weight.
func (p *part) liquid() (kg, cp float64, others func(at int) ([]bakersmath.Ingredient, bool), ok bool) {
	for _, in := range p.Ingredients {
		if in.Of == nil && in.Item.Is(larder.Pourable) {
			one, ok := p.heatOf(in, 0)
			if !ok {
				return 0, 0, nil, false
			}
			cp = (cp*kg + one.SpecificHeatKJ*one.MassKg) / (kg + one.MassKg)
			kg += one.MassKg
		}
	}
	return kg, cp, func(at int) ([]bakersmath.Ingredient, bool) {
		var list []bakersmath.Ingredient
		for _, in := range p.Ingredients {
			if in.Of == nil && in.Item.Is(larder.Pourable) {
				continue
			}
			one, ok := p.heatOf(in, at)
			if !ok {
				return nil, false
			}
			list = append(list, one)
		}
		return list, true
	}, true
}

// noSingleWeights is a figure that is asked for and cannot be reckoned yet: open, not absent, so that no rule takes it for one
// that the formula does without.
func (p *part) noSingleWeights() Value {
	v := absent("all amounts of \""+p.Name+"\", each as one figure", p.Place)
	v.Absent = false
	return v
}

// liquidNeeded is how warm the liquid must be for the mix to end at its aim.
func liquidNeeded(sh *Sheet, s *formula.Step) Value {
	p := sh.part(s.Part)
	if !s.To.Set {
		return absent("to = \"25 C\" in this mix", s.Place)
	}
	if !firstMix(s) {
		return absent("the liquid of this mix: the first mix takes it", s.Place)
	}
	kg, cp, others, ok := p.liquid()
	if !ok {
		return p.noSingleWeights()
	}
	if kg == 0 {
		return absent("a pourable liquid in \""+p.Name+"\"", s.Place)
	}
	low, typical, high := p.friction(s)
	var out [3]float64
	aims := [...]float64{s.To.Lo, s.To.Mid(), s.To.Hi}
	for i, rise := range [...]float64{high, typical, low} { // much friction, warm goods and a cool aim want the coldest liquid
		list, ok := others(1 - i)
		if !ok {
			return p.noSingleWeights()
		}
		t, ok := bakersmath.HeatBalanceLiquidC(aims[i], rise, kg, cp, list)
		if !ok {
			return absent("the temperatures of what goes into \""+p.Name+"\"", p.Place)
		}
		out[i] = t
	}
	return Value{Lo: out[0], Mid: out[1], Hi: out[2], Origin: Model}
}

// iceNeeded is how much of the liquid must be ice when it would have to be colder than liquid can be.
func iceNeeded(sh *Sheet, s *formula.Step) Value {
	need := liquidNeeded(sh, s)
	if need.Need != nil {
		return need
	}
	p := sh.part(s.Part)
	kg, cp, others, _ := p.liquid()
	low, typical, high := p.friction(s)
	ice := func(aim, rise float64, at int) float64 {
		list, ok := others(at)
		if !ok {
			return 0
		}
		g, ok := bakersmath.IceForLiquidG(aim, rise, kg, cp, bakersmath.ColdestLiquidC, list)
		if !ok {
			return 1000 * kg // more ice than there is liquid
		}
		return g
	}
	v := Value{Lo: ice(s.To.Hi, low, -1), Mid: ice(s.To.Mid(), typical, 0), Hi: ice(s.To.Lo, high, 1), Origin: Model}
	v.Lo, v.Hi = min(v.Lo, v.Mid), max(v.Hi, v.Mid)
	return v
}

// liquidByFactor is the trade's factor method, for comparison: k times the aim less flour, room and preferment, less k times the rise.
func liquidByFactor(sh *Sheet, s *formula.Step) Value {
	if !s.To.Set {
		return absent("to = \"25 C\" in this mix", s.Place)
	}
	room := sh.Kitchen.Room.Mid()
	others := []float64{room, room}
	for _, in := range s.Part.Ingredients {
		if in.Of != nil && in.Of.Kind == formula.Preferment {
			others = append(others, room)
			break
		}
	}
	k := float64(len(others) + 1)
	low, typical, high := sh.part(s.Part).friction(s)
	at := func(aim, rise float64) float64 { return bakersmath.WaterTemperature(k, aim, k*rise, others...) }
	return Value{Lo: at(s.To.Lo, high), Mid: at(s.To.Mid(), typical), Hi: at(s.To.Hi, low), Origin: Model}
}

// stage gives what the history says of a step.
func (s *Sheet) stage(step *formula.Step) (*history.Stage, Value) {
	life := s.part(step.Part).follow()
	if step.Index >= len(life.Stages) {
		return nil, absent("the history of \""+step.Part.Name+"\"", step.Place)
	}
	st := &life.Stages[step.Index]
	if !st.Known {
		return nil, lacking(st)
	}
	return st, Value{}
}

// lacking is the value of what a stage without temperatures cannot give: it says what would have to be written, and where.
func lacking(st *history.Stage) Value {
	missing, at := st.Missing, st.Step
	if missing == "" {
		missing = "the temperatures before this " + at.Verb.Name
	}
	if st.MissingAt != nil {
		at = st.MissingAt
	}
	return absent(missing, at.Place)
}

// coreEnd is the core as a step ends. That of a bake, when it was probed, needs nothing of what came before.
func coreEnd(s *Sheet, step *formula.Step) Value {
	if r := step.Reading; step.Verb.Bakes() && r != nil && r.Temp.Set {
		return Value{Lo: r.Temp.Lo, Mid: r.Temp.Mid(), Hi: r.Temp.Hi, Origin: Measured}
	}
	return ofStage(func(st *history.Stage) figure.Estimate { return st.Core })(s, step)
}

// ofStage makes a step fact from a band of its stage.
func ofStage(pick func(*history.Stage) figure.Estimate) func(*Sheet, *formula.Step) Value {
	return func(s *Sheet, step *formula.Step) Value {
		st, missing := s.stage(step)
		if st == nil {
			return missing
		}
		return bandValue(pick(st), st.Measured)
	}
}

// startCore is the core as a step begins; a reading in the step is of later.
func startCore(s *Sheet, step *formula.Step) Value {
	st, missing := s.stage(step)
	if st == nil {
		return missing
	}
	return bandValue(st.StartCore, false)
}

// hoursTo is the time until the core is at a temperature, as if the step lasted as long as it takes; a step whose surroundings
// are not cold enough never comes there.
func hoursTo(targetC float64) func(*Sheet, *formula.Step) Value {
	return func(s *Sheet, step *formula.Step) Value {
		st, missing := s.stage(step)
		if st == nil {
			return missing
		}
		p := s.part(step.Part)
		if v, ok := fallen(st, targetC); ok {
			return v
		}
		b, ok := s.follower.TimeTo(p.setup(), step, targetC)
		if !ok {
			return absent("the surroundings of this "+step.Verb.Name, step.Place)
		}
		v := Value{Lo: min(b.Low, b.Mid, b.High), Hi: max(b.Low, b.Mid, b.High), Mid: b.Mid, Origin: Model}
		if math.IsInf(v.Mid, 1) {
			v.Mid = math.NaN() // the quickest run alone comes there
		}
		if math.IsInf(v.Lo, 1) {
			return absent("surroundings cold enough to come to "+quantity.Format(targetC, "C")+" in this "+step.Verb.Name, step.Place)
		}
		if math.IsInf(v.Mid, 1) { // the coldest run comes there, the middle one never
			v.Mid = math.NaN()
		}
		return v
	}
}

// fallen reads the time to a temperature off the courses of a cooling, where they were drawn and every run comes there within the step.
func fallen(st *history.Stage, targetC float64) (Value, bool) {
	var out [3]float64
	ambient := [...]float64{st.Ambient.Lo, st.Ambient.Mid(), st.Ambient.Hi}
	for r, trace := range st.Trace {
		if trace == nil || trace[0].Core <= ambient[r] {
			return Value{}, false
		}
		h, met := downTo(trace, ambient[r], targetC)
		if !met {
			return Value{}, false
		}
		out[r] = h
	}
	return Value{Lo: min(out[0], out[1], out[2]), Hi: max(out[0], out[1], out[2]), Mid: out[1], Origin: Model}, true
}

// What settles a model's figure.
const (
	settleProbe = "a probe settles it: write measured = \"... C\" in this step"
	settleUsed  = "a probe settles it: write measured = \"... C\" in the last step of what is put on"
	settleStep  = "probe readings in its steps settle it"
	settleMix   = "write temp = \"... C\" at what is cold or wet, or measured = \"... C\" in this mix"
	settleRise  = "a measured rise settles it: write measured = \"2 x after 90 min\" in a rest or proof"
	settleCore  = "a probe settles it: write measured = \"92 C core\" in this bake"
	settleSheet = "roll one out and measure it"
	settleYeast = "the model of yeast under sugar is no better: bake a small batch and time it"
	settleMeter = "a meter settles it: write water_activity = 0.95 in the part"
)
