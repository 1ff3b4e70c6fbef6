package facts

import (
	"math"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/process"
	"forebake/engine/quantity"
)

// Facts about what is missing, doubled or slipped.

const srcUsualShare = "shares of the family range table; spice, egg and liquid: common practice"

// slipFactor is how far beyond the usual share an amount may be a slip
// of the point.
const slipFactor = 2.5

// usualShare is an ingredient's usual share by class: on the flour
// of a dough, on the weight of another part. ok is false where none
// is known.
func usualShare(s *parts, in *formula.Ingredient) (usual Interval, of makeup.Component, ok bool) {
	p := s.Part(in.Part)
	if in.Item == nil || in.Of != nil || strings.HasSuffix(in.Item.Name, "seeds") {
		// Seeds are a spice in one formula, the whole filling in
		// the next.
		return Interval{}, makeup.Mass, false
	}
	if !p.IsDough() || p.Kind != formula.Dough {
		switch in.Item.Class {
		case larder.ClassSpice:
			return figure.Between(0.02, 6), makeup.Mass, p.Grams(makeup.Mass).Hi > 0
		case larder.ClassStarch:
			return figure.Between(2, 12), makeup.Mass, p.Grams(makeup.Mass).Hi > 0
		}
		return Interval{}, makeup.Mass, false
	}
	f := p.Family()
	switch in.Item.Class {
	case larder.ClassSalt:
		usual = figure.Between(0.6, 2.5)
	case larder.ClassYeast:
		usual = figure.Between(0.3, 3.8).Scale(1 / max(in.Item.Yeast, 0.1))
	case larder.ClassSugar:
		usual = figure.Between(f.Sugar.Lo/2, f.Sugar.Hi)
	case larder.ClassFat:
		usual = figure.Between(f.Fat.Lo/2, f.Fat.Hi)
	case larder.ClassEgg:
		usual = figure.Between(4, max(f.Egg.Hi, 20))
	case larder.ClassDairy, larder.ClassLiquid:
		usual = figure.Between(10, 80)
	case larder.ClassSpice:
		usual = figure.Between(0.02, 1.5)
		if b, bounded := larder.BoundOf(in.Item, larder.InDough); bounded && b.MostPct < 1 {
			usual = figure.Between(0.002, 2*b.MostPct) // on flour, about half of a dough
		}
	case larder.ClassLeaven:
		usual = figure.Between(0.2, 2.5)
	default:
		return Interval{}, makeup.Flour, false
	}
	return usual, makeup.Flour, p.TotalFlour().Hi > 0
}

// slip gives the factor by which an amount is off: 10, 0.1 or 1
// for none. It is sure where the whole interval of the share is on
// one side.
func slip(s *parts, in *formula.Ingredient) (factor float64, sure bool) {
	usual, of, ok := usualShare(s, in)
	if !ok {
		return 1, true
	}
	p, m := s.Part(in.Part), s.Mass(in)
	var share Interval
	if of == makeup.Flour {
		share = m.OverFlour(p.TotalFlour()).Scale(100)
	} else {
		share = m.Grams(p.TotalFlour()).Div(p.Grams(of)).Scale(100)
	}
	// Small doses of sugar, fat, milk or egg are common beside others
	// of their class; much milk or water is for the dough's hydration
	// to judge.
	up := in.Item.Class != larder.ClassDairy && in.Item.Class != larder.ClassLiquid
	down := in.Item.Class == larder.ClassSalt && of == makeup.Flour ||
		in.Item.Class == larder.ClassYeast ||
		in.Item.Class == larder.ClassStarch
	within := func(x Interval) bool { return x.Lo >= usual.Lo && x.Hi <= usual.Hi }
	switch {
	case up && share.Lo > slipFactor*usual.Hi && within(share.Scale(0.1)):
		return 10, true
	case down && share.Hi > 0 && share.Hi < usual.Lo/slipFactor && within(share.Scale(10)):
		return 0.1, true
	case share.IsPoint(), (!up || share.Hi <= slipFactor*usual.Hi) &&
		(!down || share.Lo >= usual.Lo/slipFactor):
		return 1, true
	}
	return 1, false
}

func tenfoldSlip(s *parts, in *formula.Ingredient) Value {
	if s.TakenAsUsual(in) {
		return figure.YesNo(false)
	}
	factor, sure := slip(s, in)
	if !sure {
		return figure.Maybe("the amount of \""+in.Name+"\"", in.Place)
	}
	return figure.YesNo(factor != 1)
}

// turnsWarm counts a part's folds since a wait in the cold.
func turnsWarm(step *formula.Step) Value {
	sum := figure.Interval{}
	for _, other := range step.Part.Steps[:step.Index+1] {
		switch {
		case other.Verb.Waits() && other.Verb.Cools():
			sum = figure.Interval{}
		case !other.Verb.Turns(), locksIn(other):
		case other.Measure.Set && other.Measure.Kind == quantity.Count:
			sum = sum.Add(other.Measure.Interval)
		default:
			sum = sum.Add(figure.Point(1))
		}
	}
	return figure.ValueOf(sum)
}

// locksIn reports whether a fold's note says that it encloses
// the butter.
func locksIn(fold *formula.Step) bool {
	words := strings.ToLower(fold.Note)
	return slices.ContainsFunc([]string{"lock", "enclos", "envelop"}, func(w string) bool {
		return strings.Contains(words, w)
	})
}

// cutPct is the weight of the pieces that a step cuts, % of the dough.
func cutPct(s *parts, step *formula.Step) Value {
	if step.Pieces == nil || !step.Measure.Set || step.Measure.Kind != quantity.Mass {
		return figure.Absent("the number and the weight of the pieces", step.Place)
	}
	dough := s.Part(step.Part).Grams(makeup.Mass)
	return figure.ValueOf(step.Measure.Interval.Mul(step.Pieces.Interval).Div(dough).Scale(100))
}

func meant(s *parts, in *formula.Ingredient) Value {
	factor, sure := slip(s, in)
	if !sure {
		return figure.ValueOf(s.Amount(in).Scale(0.1).Hull(s.Amount(in).Scale(10)))
	}
	return figure.ValueOf(s.Amount(in).Scale(1 / factor))
}

func hasSteps(s *parts) Value {
	for _, p := range s.Formula.Parts {
		if len(p.Steps) > 0 {
			return figure.YesNo(true)
		}
	}
	return figure.YesNo(false)
}

func familyEggMin(p *part) Value {
	if p.Family().EggIsYolk {
		return figure.ValueOf(Interval{})
	}
	return makeup.LowEnd(p.Usual().Egg)
}

func mixMinutes(p *part) Value {
	sum := Interval{}
	for _, s := range p.Steps {
		switch {
		case !s.Verb.Mixes():
		case s.Time.Set:
			sum = sum.Add(s.Time.Interval)
		default:
			sum.Hi = math.Inf(1)
		}
	}
	return figure.ValueOf(sum)
}

func mixes(p *part) Value {
	n := 0.0
	for _, s := range p.Steps {
		if s.Verb.Mixes() {
			n++
		}
	}
	return figure.ValueOf(figure.Point(n))
}

// standing adds up the minutes of the waits among steps.
func standing(steps []*formula.Step) Value {
	sum := Interval{}
	for _, s := range steps {
		switch {
		case !s.Verb.Waits():
		case s.Time.Set:
			sum = sum.Add(s.Time.Interval)
		default:
			sum.Hi = math.Inf(1)
		}
	}
	return figure.ValueOf(sum)
}

// proofMinutes is absent where nothing shapes the part: it may have
// risen as it is baked.
func proofMinutes(p *part) Value {
	from := -1
	for i, s := range p.Steps {
		if s.Verb.Finishes() || s.Verb.Coils() {
			from = i
		}
		if s.Verb.HeatsThrough() {
			if from < 0 {
				break
			}
			return standing(p.Steps[from:i])
		}
	}
	return figure.Absent("a step that shapes \""+p.Name+"\", and its bake", p.Place)
}

// isRepeat is open while a point inside a range could make two
// steps differ.
func isRepeat(_ *parts, s *formula.Step) Value { return repeats(s) }

// Repeats reports whether a step says the same as the one before it.
func Repeats(s *formula.Step) bool { return repeats(s).Hi == 1 }

func repeats(s *formula.Step) Value {
	if s.Index == 0 {
		return figure.YesNo(false)
	}
	q := s.Part.Steps[s.Index-1]
	if q.Verb != s.Verb || q.Uses != s.Uses || q.Where != s.Where || q.Way != s.Way ||
		!slices.Equal(q.With, s.With) {
		return figure.YesNo(false)
	}
	sure := true
	for _, pair := range [...][2]formula.Given{{q.Time, s.Time}, {q.At, s.At}, {q.To, s.To}} {
		a, b := pair[0], pair[1]
		if a.Set != b.Set || a.Set && (a.Lo > b.Hi || b.Lo > a.Hi) {
			return figure.YesNo(false)
		}
		sure = sure && (!a.Set || a.IsPoint() && b.IsPoint())
	}
	if !sure {
		return figure.Maybe("one figure for each range of this "+s.Verb.Name, s.Place)
	}
	return figure.YesNo(true)
}

func isAfterProof(_ *parts, s *formula.Step) Value {
	for _, q := range s.Part.Steps[:s.Index] {
		if q.Verb.Proofs() {
			return figure.YesNo(true)
		}
	}
	return figure.YesNo(false)
}

// riseHours are the hours that a dough stands out of the cold before
// its heat, proof included.
func riseHours(p *part) Value {
	var waits []*formula.Step
	for _, s := range p.Steps {
		if s.HeatsAll() {
			v := standing(waits)
			v.Lo, v.Mid, v.Hi = v.Lo/60, v.Mid/60, v.Hi/60
			return v
		}
		if !s.Verb.Chills() {
			waits = append(waits, s)
		}
	}
	return figure.Absent("the steps of \""+p.Name+"\" up to its bake", p.Place)
}

// labelledProtein reports whether all flour's protein is known: by a
// label or the kind of flour.
func labelledProtein(p *part) Value {
	return figure.YesNo(!p.Holds(func(in *formula.Ingredient) bool {
		return in.Item.Class == larder.ClassFlour && in.Protein == nil &&
			!in.Item.Is(larder.SoftFlour) && in.Item.Basis != "house"
	}))
}

// isWound reports whether a filling is spread on a sheet, then rolled
// up or folded in before the dough is sheeted again. Fat alone may lie
// on a film.
func isWound(sheet *formula.Step) bool {
	filled := false
	for _, s := range sheet.Part.Steps[sheet.Index+1:] {
		switch {
		case s.Verb.Sheets() || s.HeatsAll():
			return false
		case makeup.IsClosedIn(s):
			filled = true
		case filled && (s.Verb.Coils() || s.Verb.Turns()):
			return true
		}
	}
	return false
}

// thinFried is the thickest sheet that puffs in hot fat without a
// proof, mm: beignets are rolled to 1/4 inch, doughnuts to 10 mm and
// more (published formulas, read).
const thinFried = 8

// isThinFried reports whether a dough is rolled thin and fried as cut.
func isThinFried(p *part) Value {
	thin := false
	for _, s := range p.Steps {
		switch {
		case s.Verb.Sheets():
			thin = s.Measure.Set && s.Measure.Hi <= thinFried
		case s.Verb.Coils():
			thin = false
		case s.InHotFat():
			return figure.YesNo(thin)
		}
	}
	return figure.YesNo(false)
}

// ropesMost is the most ropes that are plaited to one piece (common
// practice, no source): more lumps are piled, and pulled apart.
const ropesMost = 8

// isPulledApart reports whether more lumps than ropes of a piece are
// piled in a tin.
func isPulledApart(p *part) Value {
	made := p.Formula.Makes.Pieces
	for _, s := range p.Steps {
		n := s.Pieces
		if n == nil && s.Measure.Kind == quantity.Count {
			n = &s.Measure
		}
		inTin := func(later *formula.Step) bool { return later.Tin != "" }
		switch {
		case made == 0 || !s.Verb.Divides() || n == nil ||
			!slices.ContainsFunc(p.Steps[s.Index:], inTin):
		case n.Lo > ropesMost*made:
			return figure.YesNo(true)
		case n.Hi > ropesMost*made:
			return figure.Maybe("the number of pieces in this "+s.Verb.Name, s.Place)
		}
	}
	return figure.YesNo(false)
}

// firstHeat gives the step that first heats all of a part, nil
// for none.
func firstHeat(p *part) *formula.Step {
	if i := slices.IndexFunc(p.Steps, (*formula.Step).HeatsAll); i >= 0 {
		return p.Steps[i]
	}
	return nil
}

// cookedBy names the way of the cook that first heats all of a part.
func cookedBy(p *part) Value {
	if s := firstHeat(p); s != nil && s.Verb.Cooks() {
		return figure.Text(s.Way.String())
	}
	return figure.Text("")
}

// isDropped reports whether a part goes to the hot fat or the griddle
// like a batter: none of its steps needs a dough.
func isDropped(p *part) Value {
	s := firstHeat(p)
	if s == nil || !s.InHotFat() && s.Way != formula.Griddle {
		return figure.YesNo(false)
	}
	for _, before := range p.Steps[:s.Index] {
		v := before.Verb
		if v.Divides() || v.Sheets() || v.Coils() || v.Turns() {
			return figure.YesNo(false)
		}
	}
	return figure.YesNo(true)
}

// liesOpen reports whether a filling bakes open wherever it goes.
func liesOpen(p *part) Value { return onlyPutOn(p, makeup.LiesOpen) }

// goesInBaked reports whether each step that puts a part in or on
// another follows the other's bake.
func goesInBaked(p *part) Value { return onlyPutOn(p, (*formula.Step).IsAfterHeat) }

// isMixedIn reports whether a part is an ingredient of others and goes into them no other way.
func isMixedIn(p *part) Value {
	for _, q := range p.Formula.Parts {
		for _, s := range q.Steps {
			if s.Uses == p.Part {
				return figure.YesNo(false)
			}
		}
	}
	return figure.YesNo(len(p.TakenBy()) > 0)
}

// cookedMinutes is how long the cooks of a whole part take.
func cookedMinutes(p *part) Value {
	sum := Interval{}
	for _, s := range p.Steps {
		switch {
		case !s.Verb.Cooks() || !s.HeatsAll():
		case !s.Time.Set:
			return figure.Absent("the time of this "+s.Verb.Name, s.Place)
		default:
			sum = sum.Add(s.Time.Interval)
		}
	}
	return figure.ValueOf(sum)
}

// toppedNext reports whether the next work on the part puts something on it, before any cut.
func toppedNext(step *formula.Step) bool {
	for _, s := range step.Part.Steps[step.Index+1:] {
		switch {
		case s.Verb.Divides():
			return false
		case s.Verb.Tops() || s.Verb.Washes():
			return true
		}
	}
	return false
}

// onlyPutOn reports whether a part goes only into or onto others, by
// one kind of step.
func onlyPutOn(p *part, is func(*formula.Step) bool) Value {
	found := false
	for _, q := range p.Formula.Parts {
		for _, s := range q.Steps {
			if s.Uses != p.Part {
				continue
			}
			if found = true; !is(s) {
				return figure.YesNo(false)
			}
		}
	}
	return figure.YesNo(found && len(p.TakenBy()) == 0)
}

// isFatMelted reports whether all fat of a part's own list is melted.
func isFatMelted(p *part) Value {
	found := false
	for _, in := range p.Ingredients {
		if in.Item == nil || in.Item.Class != larder.ClassFat {
			continue
		}
		if found = true; !makeup.IsMelted(in) && !in.Item.Is(larder.Pourable) {
			return figure.YesNo(false)
		}
	}
	return figure.YesNo(found)
}

// makesCounted says what the wish for pieces is held against: of what may be meant, the nearest.
func makesCounted(s *parts) Value {
	meant := s.Meant()
	gaps, missing := s.Gaps(meant)
	if gaps == nil {
		return missing
	}
	far := func(i int) float64 { return max(-gaps[i].Lo, gaps[i].Hi) }
	nearest := 0
	for i := range gaps {
		if far(i) < far(nearest) {
			nearest = i
		}
	}
	g := s.KindMass(formula.Dough).Add(meant[nearest])
	text := quantity.FormatInterval(g, "g") + " of dough"
	if meant[nearest].Hi > 0 {
		text += " and what goes on before the bake"
	}
	return figure.Text(text)
}

// isEatenWarm reports whether a baked part is eaten warm: by words of its last steps, or
// for the meat or fish that is closed in it.
func isEatenWarm(p *part) Value {
	return figure.YesNo(slices.ContainsFunc(p.Steps, func(s *formula.Step) bool {
		if s.IsAfterHeat() {
			return s.ServesWarm()
		}
		return s.Uses != nil && makeup.IsClosedIn(s) &&
			p.Sheet().Part(s.Uses).Controls(larder.ControlMeat, larder.ControlFish)
	}))
}

// spreadAt is how warm a filling is as it is spread, C. The baker cools it until it is at what is
// aimed at, however long that takes; food safety counts the hours.
func spreadAt(sh *parts, s *formula.Step) Value {
	v := sh.UsedTemp(s)
	if cool := process.CoolStep(s.Uses); cool != nil && cool.CoolsTo().Set {
		aim := cool.CoolsTo().Hi
		if v.Absent {
			return makeup.Given(cool.CoolsTo(), "", cool.Place)
		}
		v.Lo, v.Mid, v.Hi = min(v.Lo, aim), min(v.Mid, aim), min(v.Hi, aim)
	}
	return v
}

// isChocolateSpread reports whether a filling is chocolate in fat, a seventh of it
// or more, with no more than a tenth water (judgement): it sets under 26 C.
func isChocolateSpread(p *part) bool {
	mass, chocolate := p.Grams(makeup.Mass), 0.0
	for in := range p.Foods() {
		if in.Item.Class == larder.ClassChocolate {
			chocolate += p.Sheet().Amount(in).Lo
		}
	}
	return chocolate >= mass.Hi/7 && p.Grams(makeup.AllWater).Hi <= mass.Lo/10 &&
		p.Grams(makeup.Fat).Lo >= mass.Hi/5
}

// hasSugarTurns reports whether sugar is folded in beside the roll-in
// fat: such a dough proofs little, or the sugar weeps out.
func hasSugarTurns(p *part) Value {
	fat, sugar := false, false
	for i, s := range p.Steps {
		if !makeup.GoesOnBeforeHeat(s) || i+1 == len(p.Steps) || !p.Steps[i+1].Verb.Turns() {
			continue
		}
		fat = fat || makeup.OnlyFat(s.Uses)
		sugar = sugar || onlySugar(s.Uses)
	}
	return figure.YesNo(fat && sugar)
}

func onlySugar(p *formula.Part) bool {
	for _, in := range p.Ingredients {
		if in.Item == nil || in.Item.Class != larder.ClassSugar &&
			in.Item.Class != larder.ClassSpice {
			return false
		}
	}
	return len(p.Ingredients) > 0
}

// nutShare is the share of nuts and seeds from which a filling is a nut
// paste (judgement).
const nutShare = 1.0 / 3

// closesInNuts reports whether the enclosed filling is mostly nut or
// seed paste.
func closesInNuts(s *parts) Value {
	nuts, all := Interval{}, Interval{}
	for _, q := range s.Formula.Parts {
		for _, step := range q.Steps {
			if !makeup.IsClosedIn(step) {
				continue
			}
			for _, in := range step.Uses.Ingredients {
				g := s.Amount(in).Mul(step.Share())
				all = all.Add(g)
				if in.Item != nil && (in.Item.Is(larder.Nut) ||
					strings.Contains(in.Item.Name, "seed")) {
					nuts = nuts.Add(g)
				}
			}
		}
	}
	switch share := nuts.Div(all); {
	case all.Hi == 0 || share.Hi < nutShare:
		return figure.YesNo(false)
	case share.Lo >= nutShare:
		return figure.YesNo(true)
	}
	return figure.Maybe("the amounts of the filling", s.Formula.Place)
}

// wetsYeastC is the least that a liquid wets active dry yeast at without a soak of its own, C:
// packets and recipes mix it in at 38 to 54 C (common practice, no source).
const wetsYeastC = 35

// activeDryWet reports whether the active dry yeast of a part starts in something warm.
func activeDryWet(p *part) Value {
	if p.ActiveDrySoaked() {
		return figure.YesNo(true)
	}
	wets := figure.YesNo(false)
	for _, s := range p.Steps {
		switch v := p.Sheet().LiquidTemp(s); {
		case !s.Verb.Mixes():
		case !v.Absent && v.Lo >= wetsYeastC:
			return figure.YesNo(true)
		case !v.Absent && v.Hi >= wetsYeastC:
			wets = figure.Maybe("the temperature of the liquid in this mix", s.Place)
		}
	}
	return wets
}

// dryClasses are the classes of ingredients that bind nothing by themselves.
var dryClasses = []larder.Class{larder.ClassSugar, larder.ClassFlour, larder.ClassStarch,
	larder.ClassNut, larder.ClassSpice, larder.ClassSalt}

// binderShare is what of a part that lists a fat is neither dry sugar, flour, nuts nor spice, by
// mass; all of a part that lists none.
func binderShare(p *part) Value {
	binds, isFat := Interval{}, false
	for _, in := range p.Ingredients {
		if in.Item == nil || in.Item.Water >= little ||
			!slices.Contains(dryClasses, in.Item.Class) {
			binds = binds.Add(p.Sheet().Amount(in))
		}
		isFat = isFat || in.Item != nil && in.Item.Class == larder.ClassFat
	}
	mass := p.Grams(makeup.Mass)
	if !isFat || mass.Hi == 0 {
		return figure.ValueOf(figure.Point(100))
	}
	return figure.ValueOf(binds.Div(mass).Scale(100))
}

// little is the water up to which an ingredient counts as dry, g per 100 g.
const little = 15
