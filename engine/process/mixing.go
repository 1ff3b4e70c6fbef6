package process

import (
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/history/ambient"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/science/bakersmath"
)

// MixTemp is the dough's temperature at the end of a mix. The first that is
// known counts: a reading; the heat balance, where all cold and wet
// ingredients have written temperatures; the baker's aim; the heat balance
// between fridge and room. Where the balance needs a weight or a time, it
// spans all that they could be, so that knowing less never makes the aim
// come true.
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
		if before := s.Part.Steps[s.Index-1]; before.Verb.Mixes() && mixesIn(s) {
			return p.MixTemp(before)
		}
		return figure.Absent("its temperature here, to = \"25 C\" or measured = \"25 C\"", s.Place)
	}
	v := p.balance(s)
	if v.Absent && s.To.Set {
		if ends, ok := p.openBalance(s); ok {
			ends.Need = v.Need
			return ends
		}
		return makeup.Given(s.To, "", s.Place) // the balance is silent: the aim is all there is
	}
	return v
}

// mixesInMin is the longest mix that only brings something in,
// min (judgement).
const mixesInMin = 3

// mixesIn reports whether a mix only brings in what is dry or firm, such as
// fruit and nuts: the dough keeps its temperature.
func mixesIn(s *formula.Step) bool {
	return len(s.With) > 0 && !slices.ContainsFunc(s.With, usuallyCold) &&
		s.Time.Set && s.Time.Hi <= mixesInMin
}

// firstMix reports whether no mix stands before it. The first takes the
// ingredients, later ones work them on.
func firstMix(s *formula.Step) bool {
	return !slices.ContainsFunc(s.Part.Steps[:s.Index], mixes)
}

// LastMix reports whether no later step of the part mixes it.
func LastMix(s *formula.Step) bool {
	return !slices.ContainsFunc(s.Part.Steps[s.Index+1:], mixes)
}

func mixes(s *formula.Step) bool { return s.Verb.Mixes() }

// tempsWritten reports whether every usually cold or wet ingredient has a
// written temperature: the balance then beats the baker's aim.
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

// ingredientTemp is as written. Another part has the temperature its steps
// leave, dry goods the room's, and usually cold goods lie between fridge
// and room.
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

// anyTemp spans every temperature of a part whose steps cannot be followed:
// fridge, room, and all that its steps and ingredients name, up to boiling.
// It is computed once, since nested parts have too many paths through them.
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
		if s.Verb.Heats() && !s.To.Set && !s.Core.Set {
			out.Hi = max(out.Hi, history.BoilingC)
		}
		if around, ok := ambient.Around(k, s); ok {
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
	p.named = &Interval{Lo: out.Lo, Hi: max(out.Lo, min(out.Hi, history.BoilingC))}
	return *p.named
}

// Friction of what holds no flour: there is nothing to develop,
// C (judgement).
const pasteFriction, pasteFrictionHigh = 0.5, 2

// mixings are the warming of a mix in the three runs, by the temperature at
// which its goods meet. It goes by minutes, mixer and mass, or by a rise
// where the house has measured one or there is nothing to develop. why is the
// reason for silence.
func (p *Part) mixings(s *formula.Step) (mix [figure.Runs]bakersmath.Mixing, why string) {
	byRise := func(rise figure.Estimate) [figure.Runs]bakersmath.Mixing {
		for run := range mix {
			mix[run] = bakersmath.Mixing{HouseK: rise.At(figure.Run(run)), Measured: true}
		}
		return mix
	}
	switch {
	case s == nil:
		return byRise(figure.Estimate{}), ""
	case !p.IsDough():
		return byRise(figure.Estimate{Mid: pasteFriction, High: pasteFrictionHigh}), ""
	}
	mixer := s.Way.Mixer()
	if house := p.sheet.Kitchen.Friction; house.Set && mixer != bakersmath.ByHand {
		return byRise(figure.Estimate{Low: house.Lo, Mid: house.Mid(), High: house.Hi}), ""
	}
	if !s.Time.Set {
		return mix, "the time of this " + s.Verb.Name + " is not written"
	}
	minutes := figure.Estimate{Low: s.Time.Lo, Mid: s.Time.Mid(), High: s.Time.Hi}
	for run := range mix {
		mix[run] = inMixer(mixer, minutes.At(figure.Run(run)), p.Grams(makeup.Mass).Mid()/1000,
			p.sheet.Kitchen.Room.Mid())
		why = figure.FirstReason(why, mix[run].Refuses())
	}
	return mix, why
}

// inMixer is a mix of so many minutes and kg in a room.
func inMixer(by bakersmath.Mixer, minutes, kg, roomC float64) bakersmath.Mixing {
	slow, fast := bakersmath.SplitMinutes(by, minutes)
	return bakersmath.Mixing{By: by, SlowMin: slow, FastMin: fast, MassKg: kg, RoomC: roomC}
}

// heatOf gives an ingredient as the heat balance takes it; run picks the end
// of its temperature.
func (p *Part) heatOf(in *formula.Ingredient, run figure.Run) (bakersmath.Ingredient, bool) {
	g := p.sheet.Amount(in)
	if !p.IsSettled(g) {
		// a range of weights would need every mix of their ends
		return bakersmath.Ingredient{}, false
	}
	return p.heatOfGrams(in, g.Mid(), run)
}

// heatOfGrams is heatOf at some weight, g.
func (p *Part) heatOfGrams(in *formula.Ingredient, grams float64, run figure.Run) (
	bakersmath.Ingredient, bool,
) {
	t := p.ingredientTemp(in)
	out := bakersmath.Ingredient{MassKg: grams / 1000, TempC: t.At(run)}
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
		if item.Water < crystalWater {
			out.SpecificHeatKJ = bakersmath.HeatSugarKJ
			out.Dissolves = isCrystals(item) && // 67 % is all that water holds
				p.Grams(makeup.Water).Mid() > p.Grams(makeup.Sucrose).Mid()/2
		}
	}
	return out, out.MassKg > 0
}

// goesIn lists what goes into a mix, or all of the part without one. Butter
// that a later mix works in cools no dough before it.
func (p *Part) goesIn(s *formula.Step) []*formula.Ingredient {
	if s != nil {
		return GoesIn(s)
	}
	return p.Mixed()
}

// balance mixes what goes in, with the friction of a mix or none.
func (p *Part) balance(s *formula.Step) Value {
	mix, why := p.mixings(s)
	if why != "" {
		return figure.Absent("measured = \"25 C\" in this mix: "+why, s.Place)
	}
	goods := p.goesIn(s)
	var bowls [figure.Runs]bakersmath.Bowl
	for run := range bowls {
		bowls[run].Mixing = mix[run]
		bowls[run].Goods = make([]bakersmath.Ingredient, 0, len(goods))
	}
	for _, in := range goods {
		one, ok := p.heatOf(in, figure.Low)
		if !ok {
			return p.Unweighed()
		}
		t := p.ingredientTemp(in)
		for run := range bowls {
			one.TempC = t.At(figure.Run(run))
			bowls[run].Goods = append(bowls[run].Goods, one)
		}
	}
	dough, why := bakersmath.DoughC(bowls)
	if why != "" {
		return figure.Absent("the temperatures of what goes into \""+p.Name+"\": "+why, p.Place)
	}
	return dough.Value()
}

// pourable reports whether the baker can warm or cool an ingredient for
// the mix.
func pourable(in *formula.Ingredient) bool { return in.Of == nil && in.Item.Is(larder.Pourable) }

// Poured is the liquid poured into a mix, on flour, %; what parts bring does
// not count.
func (sh *Sheet) Poured(s *formula.Step) Value {
	p := sh.Part(s.Part)
	flour := p.TotalFlour()
	if flour.Hi == 0 {
		return p.NoFlour()
	}
	var sum formula.Mass
	for _, in := range p.goesIn(s) {
		if pourable(in) {
			sum = sum.Add(sh.Mass(in))
		}
	}
	return figure.ValueOf(sum.OverFlour(flour).Scale(100))
}

// pourableMix is one run of a mix whose pourable ingredients, taken together, may be
// warmed or cooled. ok is false while an ingredient has no single weight.
func (p *Part) pourableMix(s *formula.Step, aimC float64, mix bakersmath.Mixing, run figure.Run) (
	bakersmath.Bowl, bool,
) {
	goods := p.goesIn(s)
	b := bakersmath.Bowl{AimC: aimC, Mixing: mix,
		Goods: make([]bakersmath.Ingredient, 0, len(goods))}
	for _, in := range goods {
		one, ok := p.heatOf(in, run)
		if !ok {
			return b, false
		}
		if !pourable(in) {
			b.Goods = append(b.Goods, one)
			continue
		}
		b.LiquidHeatKJ = (b.LiquidHeatKJ*b.LiquidKg + one.SpecificHeatKJ*one.MassKg) /
			(b.LiquidKg + one.MassKg)
		b.LiquidKg += one.MassKg
	}
	return b, true
}

// water is how the liquid of a mix is prepared, so that the dough ends at its
// aim. Where the plan is silent, open says why; where it cannot be asked for,
// missing does.
func (p *Part) water(s *formula.Step) (plan bakersmath.Plan, open, missing *Value) {
	lacks := func(v Value) (bakersmath.Plan, *Value, *Value) { return plan, nil, &v }
	if !s.To.Set {
		return lacks(figure.Absent("its temperature here, to = \"25 C\"", s.Place))
	}
	if !firstMix(s) {
		return lacks(figure.Absent("the liquid of this mix: the first mix takes it", s.Place))
	}
	mix, why := p.mixings(s)
	aims := [figure.Runs]float64{s.To.Lo, s.To.Mid(), s.To.Hi}
	var bowls [figure.Runs]bakersmath.Bowl
	// much friction, warm goods and a cool aim want the coldest liquid
	for run := range figure.Runs {
		most := figure.High - run
		b, ok := p.pourableMix(s, aims[run], mix[most], most)
		if !ok {
			// The plan cannot be computed yet. It is open, not absent, so
			// that no rule takes it for a figure the formula does without.
			v := p.Unweighed()
			v.Absent = false
			return lacks(v)
		}
		bowls[run] = b
	}
	switch {
	case bowls[figure.Middle].LiquidKg == 0:
		return lacks(figure.Absent("a pourable liquid in \""+p.Name+"\"", s.Place))
	case why != "":
		return lacks(figure.Absent("measured = \"25 C\" in this mix: "+why, s.Place))
	}
	plan, why = bakersmath.Water(bowls)
	switch why {
	case "":
		return plan, nil, nil
	case bakersmath.TooWarm, bakersmath.TooCold:
		v := figure.Absent("an aim that the liquid can bring about: "+why, s.Place)
		v.Absent = false
		return plan, &v, nil
	}
	return lacks(figure.Absent("the temperatures of what goes into \""+p.Name+"\": "+why, p.Place))
}

// planned is one figure of a plan.
func planned(e figure.Estimate, open *Value) Value {
	if open == nil {
		return e.Value()
	}
	return Value{Lo: e.Low, Mid: e.Mid, Hi: e.High, Origin: figure.ByModel, Need: open.Need}
}

// LiquidNeeded is the liquid's temperature at which the mix ends at its aim.
func (sh *Sheet) LiquidNeeded(s *formula.Step) Value {
	plan, open, missing := sh.Part(s.Part).water(s)
	if missing != nil {
		return *missing
	}
	return planned(plan.LiquidC, open)
}

// IceNeeded is the share of the liquid that goes in as ice, where cold liquid
// is not enough.
func (sh *Sheet) IceNeeded(s *formula.Step) Value {
	plan, open, missing := sh.Part(s.Part).water(s)
	if missing != nil {
		return *missing
	}
	return planned(plan.IceG, open)
}

// factorRange is the range of the factor method's published examples. The
// method ignores amounts, and 8 K off the dough it is 13 K off the balance.
var factorRange = figure.Limit{
	Quantity: "flour, room or preferment", Unit: "C", Low: 15, High: 30,
	Why: "the factor method is used",
}

// LiquidByFactor is the trade's factor method, as a check. It is k
// times the aim, less flour, room and preferment at their temperatures,
// less k times the rise.
func (sh *Sheet) LiquidByFactor(s *formula.Step) Value {
	if !s.To.Set {
		return figure.Absent("its temperature here, to = \"25 C\"", s.Place)
	}
	p := sh.Part(s.Part)
	mix, why := p.mixings(s)
	if why != "" {
		return figure.Absent("measured = \"25 C\" in this mix: "+why, s.Place)
	}
	room := figure.ValueOf(sh.Kitchen.Room.Interval)
	others := []Value{
		p.meanTemp(
			room,
			func(in *formula.Ingredient) bool {
				return in.Item != nil && in.Item.Class == larder.ClassFlour
			},
		),
		room,
	}
	preferment := func(in *formula.Ingredient) bool {
		return in.Of != nil && in.Of.Kind == formula.Preferment
	}
	if slices.ContainsFunc(s.Part.Ingredients, preferment) {
		others = append(others, p.meanTemp(room, preferment))
	}
	for _, v := range others {
		reason := figure.FirstReason(factorRange.Refuses(v.Lo), factorRange.Refuses(v.Hi))
		if reason != "" {
			return figure.Absent("flour and room nearer to the dough: "+reason, s.Place)
		}
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
			k*(aims[i]-mix[most].StartC(aims[i], most)),
			temps...)
	}
	v := figure.Ordered(out).Value()
	if !(v.Mid >= 0 && v.Mid <= bakersmath.HottestLiquidC) {
		return figure.Absent(
			"flour and room nearer to the dough: "+
				"the factor method comes to no liquid that can be used",
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

// meanTemp is the weighted mean temperature of some ingredients; otherwise
// stands where there are none.
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
	v := figure.Absent("a solid fat in this mix", step.Place)
	if len(step.With) == 0 && !FirstMix(step) { // it was worked in before
		return v
	}
	for _, in := range GoesIn(step) {
		if in.Item == nil || in.Item.Class != larder.ClassFat || !in.Item.Is(larder.MilkFat) ||
			makeup.IsMelted(in) {
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
