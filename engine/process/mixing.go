package process

import (
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/science/bakersmath"
)

// MixTemp is the dough's temperature at the end of a mix: as measured; else by the heat balance
// when the temperatures of all cold and wet ingredients are written; else as the baker aims at it;
// else by the heat balance between fridge and room.
func (p *Part) MixTemp(s *formula.Step) Value {
	if r := s.Reading; r != nil && r.Temp.Set {
		v := figure.ValueOf(r.Temp.Interval)
		v.Origin = figure.Measured
		return v
	}
	if s.To.Set && (!p.tempsWritten() || !p.IsDough() || !firstMix(s)) {
		return makeup.Given(s.To, "", s.Place)
	}
	if !firstMix(s) {
		return figure.Absent("to = \"25 C\" or measured = \"25 C\" in this mix", s.Place)
	}
	v := p.balance(s)
	if v.Absent && s.To.Set { // the balance is silent: the aim is all there is
		return makeup.Given(s.To, "", s.Place)
	}
	return v
}

// firstMix reports whether no mix stands before it: the first takes the ingredients, later ones
// only work them on.
func firstMix(s *formula.Step) bool {
	for _, other := range s.Part.Steps[:s.Index] {
		if other.Verb.Mixes() {
			return false
		}
	}
	return true
}

// LastMix reports whether no later step of the part mixes it.
func LastMix(s *formula.Step) bool {
	for _, other := range s.Part.Steps[s.Index+1:] {
		if other.Verb.Mixes() {
			return false
		}
	}
	return true
}

// tempsWritten reports whether every ingredient that is usually cold or wet has its temperature
// written, so that the balance can be trusted over the baker's aim.
func (p *Part) tempsWritten() bool {
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

// ingredientTemp is as written; another part's as its steps leave it; else dry goods are at the
// room, and what is usually cold lies between fridge and room.
func (p *Part) ingredientTemp(in *formula.Ingredient) Value {
	k := p.sheet.Kitchen
	switch {
	case in.Temp.Set:
		return figure.ValueOf(in.Temp.Interval)
	case in.Of != nil:
		if t := p.sheet.Part(in.Of).EndTemp(); !t.Absent {
			return t
		}
		v := figure.ValueOf(k.Fridge.Interval.Hull(k.Room.Interval))
		ends := p.sheet.Part(in.Of).anyTemp()
		v.Lo, v.Hi = ends.Lo, ends.Hi
		return v
	case usuallyCold(in):
		return figure.ValueOf(k.Fridge.Interval.Hull(k.Room.Interval))
	}
	return figure.ValueOf(k.Room.Interval)
}

// anyTemp is what a part can be at when its steps cannot be followed: anything between the fridge,
// the room and every temperature that its steps and ingredients name; no hotter than boiling. It is
// worked out once, since parts within parts have too many paths through them.
func (p *Part) anyTemp() Interval {
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
			out = out.Hull(p.sheet.Part(in.Of).anyTemp())
		}
	}
	p.named = &Interval{Lo: out.Lo, Hi: max(out.Lo, min(out.Hi, 100))}
	return *p.named
}

// Friction of what holds no flour: there is nothing to develop, C (judgement).
const pasteFriction, pasteFrictionHigh = 0.5, 2

// friction is what a mix does to the temperature that its goods meet at: by minutes, mixer and
// mass, or by a rise, K, where the house has measured one or there is nothing to develop.
type friction struct {
	mix   [figure.Runs]bakersmath.Mixing
	rise  figure.Estimate
	plain bool // rise stands in place of mix
}

// endC is where a dough ends that its goods meet in at meetC, C.
func (f *friction) endC(meetC float64, run figure.Run) float64 {
	if f.plain {
		return meetC + f.rise.At(run)
	}
	return f.mix[run].EndC(meetC, run)
}

// startC is where the goods must meet for the dough to end at endC, C.
func (f *friction) startC(endC float64, run figure.Run) float64 {
	if f.plain {
		return endC - f.rise.At(run)
	}
	return f.mix[run].StartC(endC, run)
}

// friction reads a mix; why is the reason for silence.
func (p *Part) friction(s *formula.Step) (f friction, why string) {
	f.plain = true
	switch {
	case s == nil:
		return f, ""
	case !p.IsDough():
		f.rise = figure.Estimate{Mid: pasteFriction, High: pasteFrictionHigh}
		return f, ""
	}
	mixer := s.Way.Mixer()
	if house := p.sheet.Kitchen.Friction; house.Set && mixer != bakersmath.ByHand {
		f.rise = figure.Estimate{Low: house.Lo, Mid: house.Mid(), High: house.Hi}
		return f, ""
	}
	if !s.Time.Set {
		return f, "the time of this " + s.Verb.Name + " is not written"
	}
	f.plain = false
	minutes := figure.Estimate{Low: s.Time.Lo, Mid: s.Time.Mid(), High: s.Time.Hi}
	for run := range f.mix {
		slow, fast := bakersmath.SplitMinutes(mixer, minutes.At(figure.Run(run)))
		f.mix[run] = bakersmath.Mixing{
			By:      mixer,
			SlowMin: slow,
			FastMin: fast,
			MassKg:  p.Grams(makeup.Mass).Mid() / 1000,
			RoomC:   p.sheet.Kitchen.Room.Mid(),
		}
		why = figure.FirstReason(why, f.mix[run].Refuses())
	}
	return f, why
}

// heatOf gives an ingredient as the heat balance takes it; run picks the end of its temperature.
func (p *Part) heatOf(in *formula.Ingredient, run figure.Run) (bakersmath.Ingredient, bool) {
	t := p.ingredientTemp(in)
	g := p.sheet.Amount(in)
	if !g.IsPoint() {
		return bakersmath.Ingredient{}, false // a range of weights would need every mix of their ends
	}
	temp := t.Mid
	switch run {
	case figure.Low:
		temp = t.Lo
	case figure.High:
		temp = t.Hi
	}
	out := bakersmath.Ingredient{MassKg: g.Mid() / 1000, TempC: temp}
	if in.Of != nil {
		out.SpecificHeatKJ = 2.7 // dough, 2.15 to 3.19 measured
		if m := p.sheet.Part(in.Of).Material(); m.Known {
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
			out.Dissolves = item.Sucrose > 50 &&
				p.Grams(makeup.Water).
					Mid() >
					p.Grams(makeup.Sucrose).
						Mid()/
						2 // 67 % is all that water holds
		}
	}
	return out, out.MassKg > 0
}

// goesIn lists what goes into a mix, of no mix all of the part. Butter that a later mix works in
// cools no dough before.
func (p *Part) goesIn(s *formula.Step) []*formula.Ingredient {
	if s != nil {
		return GoesIn(s)
	}
	return p.Ingredients
}

// balance mixes what goes in, with the friction of a mix or none.
func (p *Part) balance(s *formula.Step) Value {
	warms, why := p.friction(s)
	if why != "" {
		return figure.Absent("measured = \"25 C\" in this mix: "+why, s.Place)
	}
	var ends [figure.Runs]float64
	for run := range ends {
		var list []bakersmath.Ingredient
		for _, in := range p.goesIn(s) {
			one, ok := p.heatOf(in, figure.Run(run))
			if !ok {
				return figure.Absent("all amounts of \""+p.Name+"\", each as one figure", p.Place)
			}
			list = append(list, one)
		}
		t, ok := bakersmath.HeatBalanceDoughC(list, 0)
		if !ok {
			return figure.Absent("the temperatures of what goes into \""+p.Name+"\"", p.Place)
		}
		ends[run] = warms.endC(t, figure.Run(run))
	}
	return figure.Ordered(ends).Value()
}

// liquid is what the baker can warm or cool: the pourable ingredients together; ok is false while
// one of them has no single weight.
func (p *Part) liquid(s *formula.Step) (kg, cp float64, others func(run figure.Run) ([]bakersmath.Ingredient, bool), ok bool) {
	for _, in := range p.goesIn(s) {
		if in.Of == nil && in.Item.Is(larder.Pourable) {
			one, ok := p.heatOf(in, figure.Middle)
			if !ok {
				return 0, 0, nil, false
			}
			cp = (cp*kg + one.SpecificHeatKJ*one.MassKg) / (kg + one.MassKg)
			kg += one.MassKg
		}
	}
	return kg, cp, func(run figure.Run) ([]bakersmath.Ingredient, bool) {
		var list []bakersmath.Ingredient
		for _, in := range p.goesIn(s) {
			if in.Of == nil && in.Item.Is(larder.Pourable) {
				continue
			}
			one, ok := p.heatOf(in, run)
			if !ok {
				return nil, false
			}
			list = append(list, one)
		}
		return list, true
	}, true
}

// noSingleWeights is a figure that is asked for and cannot be reckoned yet: open, not absent, so
// that no rule takes it for one that the formula does without.
func (p *Part) noSingleWeights() Value {
	v := figure.Absent("all amounts of \""+p.Name+"\", each as one figure", p.Place)
	v.Absent = false
	return v
}

// LiquidNeeded is how warm the liquid must be for the mix to end at its aim.
func (sh *Sheet) LiquidNeeded(s *formula.Step) Value {
	p := sh.Part(s.Part)
	if !s.To.Set {
		return figure.Absent("to = \"25 C\" in this mix", s.Place)
	}
	if !firstMix(s) {
		return figure.Absent("the liquid of this mix: the first mix takes it", s.Place)
	}
	kg, cp, others, ok := p.liquid(s)
	if !ok {
		return p.noSingleWeights()
	}
	if kg == 0 {
		return figure.Absent("a pourable liquid in \""+p.Name+"\"", s.Place)
	}
	warms, why := p.friction(s)
	if why != "" {
		return figure.Absent("measured = \"25 C\" in this mix: "+why, s.Place)
	}
	var out [figure.Runs]float64
	aims := [figure.Runs]float64{s.To.Lo, s.To.Mid(), s.To.Hi}
	for i := range out { // much friction, warm goods and a cool aim want the coldest liquid
		most := figure.High - figure.Run(i)
		list, ok := others(most)
		if !ok {
			return p.noSingleWeights()
		}
		t, ok := bakersmath.HeatBalanceLiquidC(warms.startC(aims[i], most), 0, kg, cp, list)
		if !ok {
			return figure.Absent("the temperatures of what goes into \""+p.Name+"\"", p.Place)
		}
		out[i] = t
	}
	return figure.Ordered(out).Value()
}

// IceNeeded is how much of the liquid must be ice when it would have to be colder than liquid can
// be.
func (sh *Sheet) IceNeeded(s *formula.Step) Value {
	need := sh.LiquidNeeded(s)
	if need.Need != nil {
		return need
	}
	p := sh.Part(s.Part)
	kg, cp, others, _ := p.liquid(s)
	warms, _ := p.friction(s) // the liquid is known, and so is this
	ice := func(aim float64, run figure.Run) float64 {
		list, ok := others(run)
		if !ok {
			return 0
		}
		g, ok := bakersmath.IceForLiquidG(
			warms.startC(aim, run),
			0,
			kg,
			cp,
			bakersmath.ColdestLiquidC,
			list,
		)
		if !ok {
			return 1000 * kg // more ice than there is liquid
		}
		return g
	}
	v := Value{
		Lo:     ice(s.To.Hi, figure.Low),
		Mid:    ice(s.To.Mid(), figure.Middle),
		Hi:     ice(s.To.Lo, figure.High),
		Origin: figure.ByModel,
	}
	v.Lo, v.Hi = min(v.Lo, v.Mid), max(v.Hi, v.Mid)
	return v
}

// LiquidByFactor is the trade's factor method, as a check: k times the aim less flour, room and
// preferment, each at its own temperature, less k times the rise.
func (sh *Sheet) LiquidByFactor(s *formula.Step) Value {
	if !s.To.Set {
		return figure.Absent("to = \"25 C\" in this mix", s.Place)
	}
	p := sh.Part(s.Part)
	warms, why := p.friction(s)
	if why != "" {
		return figure.Absent("measured = \"25 C\" in this mix: "+why, s.Place)
	}
	room := figure.ValueOf(sh.Kitchen.Room.Interval)
	others := []Value{
		p.meanTemp(
			room,
			func(in *formula.Ingredient) bool { return in.Item != nil && in.Item.Class == larder.ClassFlour },
		),
		room,
	}
	preferment := func(in *formula.Ingredient) bool { return in.Of != nil && in.Of.Kind == formula.Preferment }
	if slices.ContainsFunc(s.Part.Ingredients, preferment) {
		others = append(others, p.meanTemp(room, preferment))
	}
	k := float64(len(others) + 1)
	aims := [figure.Runs]float64{s.To.Lo, s.To.Mid(), s.To.Hi}
	var out [figure.Runs]float64
	for i := range out {
		most := figure.High - figure.Run(i)
		var temps []float64
		for _, v := range others {
			temps = append(temps, [figure.Runs]float64{v.Lo, v.Mid, v.Hi}[most])
		}
		out[i] = bakersmath.WaterTemperature(
			k,
			aims[i],
			k*(aims[i]-warms.startC(aims[i], most)),
			temps...)
	}
	v := figure.Ordered(out).Value()
	if !(v.Mid >= 0 && v.Mid <= bakersmath.HottestLiquidC) {
		return figure.Absent(
			"flour and room nearer to the dough: the factor method comes to no liquid that can be used",
			s.Place,
		)
	}
	v.Lo, v.Hi = max(
		v.Lo,
		0,
	), min(
		v.Hi,
		bakersmath.HottestLiquidC,
	) // an end that cannot be stops at what can
	return v
}

// meanTemp is the temperature of some of the ingredients by weight, in place of none of them
// otherwise.
func (p *Part) meanTemp(otherwise Value, which func(*formula.Ingredient) bool) Value {
	var sum Value
	grams := 0.0
	for _, in := range p.Ingredients {
		g := p.sheet.Amount(in).Mid()
		if !which(in) || !(g > 0) {
			continue
		}
		t := p.ingredientTemp(in)
		sum.Lo, sum.Mid, sum.Hi = sum.Lo+g*t.Lo, sum.Mid+g*t.Mid, sum.Hi+g*t.Hi
		grams += g
	}
	if grams == 0 {
		return otherwise
	}
	return Value{Lo: sum.Lo / grams, Mid: sum.Mid / grams, Hi: sum.Hi / grams}
}

// FatTemp is the written temperature of the solid fat that a mix works in.
func (*Sheet) FatTemp(step *formula.Step) Value {
	list := step.With
	if len(list) == 0 {
		list = step.Part.Ingredients
	}
	v := figure.Absent("a solid fat in this mix", step.Place)
	for _, in := range list {
		if in.Item == nil || in.Item.Class != larder.ClassFat || !in.Item.Is(larder.MilkFat) ||
			in.Form == "melted" {
			continue
		}
		one := makeup.Given(in.Temp, "temp of \""+in.Name+"\"", in.Place)
		if one.Absent {
			return one
		}
		if !v.Absent { // two fats: from the colder to the warmer
			one = figure.ValueOf(v.Interval().Hull(one.Interval()))
			one.Origin = figure.AsGiven
		}
		v = one
	}
	return v
}
