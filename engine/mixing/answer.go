package mixing

import (
	"fmt"
	"math"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/process"
	"forebake/engine/quantity"
	"forebake/engine/science/bakersmath"
)

// answer words what to do with the liquid.
func answer(out *finding.Mix, liquid, ice *facts.Value, liquidG figure.Interval, milky bool,
	n *Now) {
	coldest, hottest := float64(bakersmath.ColdestLiquidC), float64(bakersmath.HottestLiquidC)
	if milky && n.Tap.Set {
		out.Notes = append(out.Notes, "The liquid is not water alone, so the tap's temperature "+
			"is left out.")
		own := *n
		own.Tap.Set = false
		n = &own
	}
	clamp := func(x float64) float64 { return min(hottest, max(coldest, x)) }
	out.Error = quantity.FormatInterval(figure.Between(clamp(liquid.Lo), clamp(liquid.Hi)), "C")
	switch {
	case liquid.Mid > hottest:
		out.Silent, out.Error = bakersmath.TooCold, ""
		return
	case known(ice) && ice.Mid >= liquidG.Mid() && ice.Mid > 0:
		out.Silent, out.Error = bakersmath.TooWarm, ""
		return
	case known(ice) && ice.Mid > 0:
		iced(out, ice, liquidG, n)
	default:
		out.Answer = fmt.Sprintf("Pour it at %s.", both(liquid.Mid))
		if n.Tap.Set {
			tapped(out, liquid.Mid, liquidG, n)
		}
		if liquid.Lo < coldest && known(ice) && ice.Hi > 0 {
			out.Notes = append(out.Notes, fmt.Sprintf("At the warm end of the error it wants up "+
				"to %s of ice.", grams(min(ice.Hi, liquidG.Hi))))
		}
	}
	if milky && out.IceG != nil {
		out.Notes = append(out.Notes, "Melted ice is water: in place of milk it thins the dough. "+
			"Chill the flour or the milk instead where you can.")
	}
	if liquid.Hi > hottest {
		out.Notes = append(out.Notes, fmt.Sprintf("No liquid over %s meets yeast: there it dies.",
			both(hottest)))
	}
}

// iced words a liquid at its coldest, with ice in it.
func iced(out *finding.Mix, ice *facts.Value, liquidG figure.Interval, n *Now) {
	coldest := float64(bakersmath.ColdestLiquidC)
	from := "at " + both(coldest)
	var share figure.Estimate
	if n.Tap.Set {
		// The rest comes from the tap, and takes ice of its own down to
		// the coldest.
		share, _ = shares(n, coldest)
		from = "from the tap at " + tapText(n)
	}
	with := func(g, liquidG, share float64) float64 {
		g = min(g, liquidG)
		return g + (liquidG-g)*share
	}
	e := finding.Ends{
		Low:  with(ice.Lo, liquidG.Lo, share.Low),
		Mid:  with(ice.Mid, liquidG.Mid(), share.Mid),
		High: with(ice.Hi, liquidG.Hi, share.High),
	}
	out.IceG = &e
	out.Answer = fmt.Sprintf("Pour %s %s with %s of ice in it.",
		grams(liquidG.Mid()-e.Mid), from, grams(e.Mid))
	out.Error = quantity.FormatInterval(figure.Between(math.Round(e.Low), math.Round(e.High)),
		"g") + " of ice"
}

// tapped words how the tap's water comes to a temperature: by ice where
// it is too warm.
func tapped(out *finding.Mix, needC float64, liquidG figure.Interval, n *Now) {
	share, ok := shares(n, needC)
	if !ok || share.High == 0 {
		return
	}
	g := finding.Ends{Low: liquidG.Lo * share.Low, Mid: liquidG.Mid() * share.Mid,
		High: liquidG.Hi * share.High}
	out.IceG = &g
	out.Answer = fmt.Sprintf("Pour it at %s: %s from the tap at %s with %s of ice in it.",
		both(needC), grams(liquidG.Mid()-g.Mid), tapText(n), grams(g.Mid))
}

// shares are the shares of ice that bring the tap's water to a
// temperature: of its coldest, its middle and its warmest. ok is false
// where the warmest cannot be brought there.
func shares(n *Now, needC float64) (share figure.Estimate, ok bool) {
	share.Low, _ = bakersmath.IceForTap(n.Tap.Lo, needC)
	share.Mid, _ = bakersmath.IceForTap(n.Tap.Mid(), needC)
	share.High, ok = bakersmath.IceForTap(n.Tap.Hi, needC)
	return share, ok
}

// tapText writes how warm the tap runs.
func tapText(n *Now) string {
	if n.Tap.IsPoint() {
		return both(n.Tap.Lo)
	}
	return quantity.FormatInterval(n.Tap.Interval, "C")
}

// good tells at what temperature an ingredient goes in, and how that
// is known.
func good(s *facts.Sheet, in *formula.Ingredient, n *Now) finding.MixGood {
	t := s.Part(in.Part).IngredientTemp(in)
	from := "taken as the room's"
	switch {
	case n.said(in):
		from = "as you say"
	case in.Temp.Set:
		from = "as written"
	case in.Of != nil:
		from = "as its own steps leave it"
	case t.Lo < t.Hi:
		from = "not written: anything from fridge to room"
	}
	return finding.MixGood{Name: in.Name, Weigh: quantity.FormatInterval(s.Amount(in), "g"),
		Temp: quantity.FormatInterval(t.Interval(), "C"), From: from}
}

// value is a figure of a step.
func value(s *facts.Sheet, name string, step *formula.Step) *facts.Value {
	f, ok := facts.Find(facts.OnStep, name)
	if !ok {
		return &facts.Value{Absent: true}
	}
	return s.Value(f, facts.Subject{On: facts.OnStep, Part: step.Part, Step: step})
}

// known reports whether a figure has a middle.
func known(v *facts.Value) bool {
	return !v.Absent && !math.IsInf(v.Mid, 0) && !math.IsNaN(v.Mid) &&
		!v.Interval().IsUnknown()
}

func ends(v *facts.Value) *finding.Ends { return &finding.Ends{Low: v.Lo, Mid: v.Mid, High: v.Hi} }

// both writes a temperature in C and F.
func both(c float64) string {
	return quantity.Format(c, "C") + " (" + quantity.Format(math.Round(32+1.8*c), "F") + ")"
}

// grams writes a weight of liquid or ice to the gram.
func grams(x float64) string { return quantity.Format(math.Round(x), "g") }

// mixes lists the mixes that a plan is for.
func mixes(p *formula.Part) []*formula.Step {
	var out []*formula.Step
	for _, s := range p.Steps {
		if process.FirstMix(s) {
			out = append(out, s)
		}
	}
	return out
}
