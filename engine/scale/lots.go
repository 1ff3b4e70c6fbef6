package scale

import (
	"fmt"
	"math"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/quantity"
)

// bowls is in how many mixes a part is made: one where it is not mixed
// or its weight is open.
func bowls(s *facts.Sheet, p *formula.Part) int {
	mass := s.Part(p).Grams(makeup.Mass)
	mixed := s.Part(p).HasStep((*formula.Verb).Mixes) && s.Part(p).IsDough()
	if !mixed || !mass.IsFinite() || s.Kitchen.Bowl.Lo <= 0 {
		return 1
	}
	return lotsOf(mass.Hi, s.Kitchen.Bowl.Lo)
}

// lotsOf is how many times a room for most holds x.
func lotsOf(x, most float64) int { return max(1, int(math.Ceil(x/most-1e-9))) }

// Lots says in how many lots a formula is made where the bowl, the
// bench or the oven does not take it at once.
func Lots(s *facts.Sheet) []string {
	var out []string
	say := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	lots, _ := facts.Find(facts.OnStep, "lots")
	baked := false
	for _, p := range s.Formula.Parts {
		if n := bowls(s, p); n > 1 {
			mass := s.Part(p).Grams(makeup.Mass).Hi
			say("Bowl: %s %q weighs %s and the bowl takes %s: mix it %d times, %s each.", p.Kind,
				p.Name, quantity.Format(mass, "g"), quantity.Format(s.Kitchen.Bowl.Lo, "g"), n,
				quantity.Format(mass/float64(n), "g"))
		}
		for _, step := range p.Steps {
			x := facts.Subject{On: facts.OnStep, Part: p, Step: step}
			if lots.Of(x) {
				if v := s.Value(lots, x); !v.Absent && v.Lo > 1 {
					say("Bench: the sheet of %s in %q is rolled out in %s lots.",
						step.Measure.Text, p.Name,
						quantity.FormatInterval(figure.Between(math.Ceil(v.Lo-1e-9),
							math.Ceil(v.Hi-1e-9)), ""))
				}
			}
			if step.Verb.Bakes() {
				baked = true
				out = append(out, ovenLots(s, step)...)
			}
		}
	}
	if baked && !s.Kitchen.Oven.Set {
		say("Oven: this house does not say what its oven takes; add oven = \"4 trays of " +
			"60 x 40 cm\" to its kitchen block.")
	}
	return out
}

// tinGapMM is the air left between two tins, mm (judgement).
const tinGapMM = 20

// ovenLots says how many times the oven is filled for a bake of tins
// or trays.
func ovenLots(s *facts.Sheet, step *formula.Step) []string {
	oven := s.Kitchen.Oven
	if !oven.Set {
		return nil
	}
	if step.Count == nil {
		return []string{fmt.Sprintf("Oven: the bake of %q does not say how many tins or trays it "+
			"is; add count = 4 to it.", step.Part.Name)}
	}
	most, what := oven.Trays, "trays"
	if tin, ok := s.Kitchen.TinNamed(step.Tin); ok {
		what = "tins"
		fit := func(long, wide float64) float64 {
			return math.Floor((oven.LengthMM+tinGapMM)/(long+tinGapMM)) *
				math.Floor((oven.WidthMM+tinGapMM)/(wide+tinGapMM))
		}
		most *= max(fit(tin.Inside[0], tin.Inside[1]), fit(tin.Inside[1], tin.Inside[0]))
		if most < 1 {
			return []string{fmt.Sprintf("Oven: the tin %q is larger than a tray of the oven.",
				tin.Name)}
		}
	}
	n := lotsOf(step.Count.Hi, most)
	if n == 1 {
		return nil
	}
	return []string{fmt.Sprintf("Oven: it takes %s %s at once: bake %q %d times, and let the rest "+
		"wait in the cold.", quantity.Plain(most), what, step.Part.Name, n)}
}

// tellFrom is the share of an amount from which an error of the scale
// is told.
const tellFrom = 0.01

// Weights lists what to weigh of each part of a scaled formula. exact
// are the weights before they were rounded, g, by the serial of the
// ingredient; NaN for one that is not known.
func Weights(s *facts.Sheet, exact []float64) []finding.ScaledPart {
	step := niceStep(s.Kitchen.Scale.Hi)
	var out []finding.ScaledPart
	for _, p := range s.Formula.Parts {
		part := finding.ScaledPart{Part: fmt.Sprintf("%s %q", p.Kind, p.Name), Lots: bowls(s, p)}
		flour := s.Part(p).TotalFlour()
		for _, in := range p.Ingredients {
			g := s.Amount(in)
			row := finding.ScaledRow{Name: in.Name, Weigh: "?"}
			if flour.Hi > 0 {
				row.Share = quantity.FormatInterval(g.Div(flour).Scale(100), "%")
				if in.Amount.Set && in.Amount.Kind == quantity.Percent {
					row.Share = quantity.FormatInterval(in.Amount.Interval, "%")
				}
			}
			if g.IsFinite() && g.Hi > 0 {
				weigh(&row, in, g, exact[in.Serial], step, part.Lots)
			}
			part.Rows = append(part.Rows, row)
		}
		out = append(out, part)
	}
	return out
}

// weigh fills in what the scale shows of an ingredient, in all and for
// one lot.
func weigh(row *finding.ScaledRow, in *formula.Ingredient, g figure.Interval, exact, step float64,
	lots int) {
	shown := figure.Between(onScale(g.Lo, step), onScale(g.Hi, step))
	row.Weigh = quantity.Plain(shown.Lo) + " g"
	if shown.Lo != shown.Hi {
		row.Weigh = quantity.Plain(shown.Lo) + " to " + quantity.Plain(shown.Hi) + " g"
	}
	if in.Item == nil {
		return
	}
	one := figure.Between(onScale(g.Lo/float64(lots), step), onScale(g.Hi/float64(lots), step))
	if lots > 1 {
		row.Lot = quantity.Plain(one.Lo) + " g"
		if one.Lo != one.Hi {
			row.Lot = quantity.Plain(one.Lo) + " to " + quantity.Plain(one.Hi) + " g"
		}
	}
	if in.Item.Class == larder.ClassEgg && in.Item.Piece > 0 {
		row.Note = countText(g.Lo / in.Item.Piece)
		if !g.IsPoint() {
			row.Note = quantity.FormatInterval(g.Scale(1/in.Item.Piece), "pieces")
		}
	}
	if !isCritical(in.Item) || !g.IsPoint() || math.IsNaN(exact) || exact <= 0 {
		return
	}
	each := exact / float64(lots)
	off := one.Lo/each - 1
	switch {
	case each < step:
		row.Note = fmt.Sprintf("%s is under the scale's step of %s: weigh a larger lot, or thin "+
			"it in a weighed part of the liquid", quantity.Format(each, "g"),
			quantity.Format(step, "g"))
	case math.Abs(off) >= tellFrom:
		word := "more"
		if off < 0 {
			word = "less"
		}
		row.Note = fmt.Sprintf("the scale makes %s of %s: %s %s", quantity.Format(one.Lo, "g"),
			quantity.Format(each, "g"), quantity.Format(100*math.Abs(off), "%"), word)
	}
}

// countText counts eggs: "6 pieces", "6 pieces and 0.4 of one".
func countText(n float64) string {
	whole := math.Floor(n + nearlyWhole)
	rest := n - whole
	switch {
	case math.Abs(rest) <= nearlyWhole && whole == 1:
		return "1 piece"
	case math.Abs(rest) <= nearlyWhole:
		return quantity.Plain(whole) + " pieces"
	case whole == 0:
		return quantity.Format(n, "") + " of a piece, beaten and weighed"
	}
	return quantity.Plain(whole) + " pieces and " + quantity.Plain(toCents(rest)) +
		" of one, beaten and weighed"
}

// Exact gives the weights of a formula as written, times a factor,
// g, by serial of the ingredient. It is NaN for one that is a range
// or open.
func Exact(s *facts.Sheet, factor float64) []float64 {
	out := make([]float64, s.Formula.Ingredients)
	for _, p := range s.Formula.Parts {
		for _, in := range p.Ingredients {
			out[in.Serial] = math.NaN()
			if g := s.Amount(in); g.IsPoint() {
				out[in.Serial] = g.Lo * factor
			}
		}
	}
	return out
}
