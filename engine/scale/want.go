// Package scale gives a formula at another size: the edits of its text,
// the weights on a kitchen's scale, and its lots.
//
// Percentages, temperatures, times and thicknesses stay. Package engine
// calls it and checks what comes out: this package judges nothing.
package scale

import (
	"fmt"
	"math"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/makeup"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// Want is the size that is asked for. One of Pieces, Tins, FlourG and
// TotalG is set, or Loss alone.
type Want struct {
	Pieces, Tins   float64
	FlourG, TotalG float64
	// Loss is the share of the dough that is lost in the bowl and on
	// the bench, 0 to under 1, where HasLoss says so. The batch is made
	// larger by it. Without it the surplus stays as written.
	Loss    float64
	HasLoss bool
}

// Limits of a size that can be asked for.
const (
	mostPieces = 100_000
	mostTins   = 10_000
	mostGrams  = 100_000_000 // 100 t
	mostLoss   = 0.5         // a batch that loses half is a mistake
)

// ReadPieces reads a number of pieces.
func ReadPieces(flag, text string) (float64, error) { return readCount(flag, text, mostPieces) }

// ReadTins reads a number of tins.
func ReadTins(flag, text string) (float64, error) { return readCount(flag, text, mostTins) }

func readCount(flag, text string, most float64) (float64, error) {
	q, fault := quantity.Read(text+" pieces", quantity.Of(quantity.Count))
	switch {
	case fault != nil || !q.IsPoint() || q.Lo != math.Round(q.Lo) || q.Lo < 1:
		return 0, fmt.Errorf("%s takes a whole number from 1 on, not %q", flag, text)
	case q.Lo > most:
		return 0, fmt.Errorf("%s takes at most %s, not %q", flag, quantity.Plain(most), text)
	}
	return q.Lo, nil
}

// ReadMass reads a weight, in g.
func ReadMass(flag, text string) (float64, error) {
	q, fault := quantity.Read(text, quantity.Of(quantity.Mass))
	switch {
	case fault != nil:
		return 0, fmt.Errorf("%s: %s", flag, fault.Text)
	case !q.IsPoint():
		return 0, fmt.Errorf("%s takes one weight, such as \"10 kg\", not %q", flag, text)
	case q.Lo > mostGrams:
		return 0, fmt.Errorf("%s takes at most 100 t, not %q", flag, text)
	}
	return q.Lo, nil
}

// ReadLoss reads a share, 0 to mostLoss.
func ReadLoss(flag, text string) (float64, error) {
	q, fault := quantity.Read(text, quantity.Of(quantity.Percent)|quantity.AllowZero)
	switch {
	case fault != nil:
		return 0, fmt.Errorf("%s: %s", flag, fault.Text)
	case !q.IsPoint() || q.Lo > 100*mostLoss:
		return 0, fmt.Errorf("%s takes one share from \"0 %%\" to \"50 %%\", not %q", flag, text)
	}
	return q.Lo / 100, nil
}

// factors are what amounts and counts are multiplied by.
type factors struct {
	mass, count float64
	asked       string // how they follow, in words
}

// factorsOf reckons the factors of a wanted size.
func factorsOf(s *facts.Sheet, w Want) (factors, error) {
	f := s.Formula
	batch := s.KindMass(formula.Dough).Add(s.Spread())
	if (w.TotalG > 0 || w.HasLoss) && !isWeighable(batch) {
		return factors{}, openAmountError(f, batch)
	}
	grams := func(x float64) string { return quantity.Format(x, "g") }
	switch {
	case w.FlourG > 0:
		flour := figure.Interval{}
		for _, p := range f.Parts {
			if q := s.Part(p); p.Kind == formula.Dough && len(q.TakenBy()) == 0 {
				flour = flour.Add(q.Grams(makeup.Flour))
			}
		}
		if !isWeighable(flour) {
			return factors{}, openAmountError(f, flour)
		}
		k := w.FlourG / flour.Mid()
		return factors{k, k, grams(flour.Mid()) + " of flour to " + grams(w.FlourG)}, nil
	case w.TotalG > 0:
		k := w.TotalG / (1 - w.Loss) / batch.Mid()
		return factors{k, k, grams(batch.Mid()) + " of dough with its filling to " +
			grams(w.TotalG) + lossText(w)}, nil
	}
	pieces := s.Pieces()
	count, asked := 1.0, ""
	switch {
	case w.Tins > 0:
		tins, err := tinsOf(f)
		if err != nil {
			return factors{}, err
		}
		count = w.Tins / tins
		asked = fmt.Sprintf("%s tins to %s", quantity.Plain(tins), quantity.Plain(w.Tins))
	case pieces.Absent || pieces.Lo != pieces.Hi || pieces.Lo <= 0:
		return factors{}, source.Problems{{Place: f.Place, Text: fmt.Sprintf("formula %q does not "+
			"say how many pieces it makes: add makes = \"24 pieces of 75 g\", or scale it by "+
			"--flour or --total", source.Safe(f.Name))}}
	case w.Pieces > 0:
		count = w.Pieces / pieces.Lo
		asked = fmt.Sprintf("%s pieces to %s", quantity.Plain(pieces.Lo), quantity.Plain(w.Pieces))
	default:
		asked = quantity.Plain(pieces.Lo) + " pieces as written"
	}
	if !w.HasLoss {
		return factors{count, count, asked}, nil
	}
	each := s.PieceGrams()
	if each.Absent || each.Lo != each.Hi || pieces.Absent || pieces.Lo != pieces.Hi {
		return factors{},
			source.Problems{{Place: f.Place, Text: fmt.Sprintf("--loss needs the weight "+
				"of a piece: formula %q does not give it; add makes = \"24 pieces of 75 g\"",
				source.Safe(f.Name))}}
	}
	need := count * pieces.Lo * each.Lo
	shaped := s.KindMass(formula.Dough).Add(s.Put(makeup.GoesOnBeforeHeat)) // as PieceGrams has it
	return factors{need / (1 - w.Loss) / shaped.Mid(), count,
		fmt.Sprintf("%s of %s each%s", asked, grams(each.Lo), lossText(w))}, nil
}

// isWeighable reports whether a weight is known well enough to scale by: a
// pinch that is not weighed does not keep a batch from it.
func isWeighable(g figure.Interval) bool {
	return g.IsFinite() && g.Lo > 0 && g.Width() <= 0.02*g.Mid()
}

func lossText(w Want) string {
	if !w.HasLoss {
		return ""
	}
	return ", and " + quantity.Format(100*w.Loss, "%") + " lost on the way"
}

// openAmountError says which amount keeps the batch from being weighed.
func openAmountError(f *formula.Formula, batch figure.Interval) error {
	for _, p := range f.Parts {
		for _, in := range p.Ingredients {
			if in.Amount.Open || in.Amount.Set && !in.Amount.IsPoint() {
				return source.Problems{{Place: in.Place,
					Text: fmt.Sprintf("%s has no single weight, "+
						"so the batch has none: weigh it, or scale by --pieces",
						source.Safe(in.Name))}}
			}
		}
	}
	if batch.Hi == 0 {
		return source.Problems{{Place: f.Place, Text: fmt.Sprintf("formula %q has no dough with "+
			"flour to scale", source.Safe(f.Name))}}
	}
	return source.Problems{{Place: f.Place, Text: fmt.Sprintf("the weight of the batch of %q is "+
		"not known: scale by --pieces", source.Safe(f.Name))}}
}

// tinsOf is how many tins a formula fills.
func tinsOf(f *formula.Formula) (float64, error) {
	most := 0.0
	for _, p := range f.Parts {
		for _, s := range p.Steps {
			if s.Tin != "" && s.Count != nil && s.Count.IsPoint() {
				most = max(most, s.Count.Lo)
			}
		}
	}
	if most == 0 {
		return 0,
			source.Problems{{Place: f.Place, Text: fmt.Sprintf("formula %q fills no tins: write "+
				"tin = \"long tin\", count = 4 in its pan, or scale it by --pieces",
				source.Safe(f.Name))}}
	}
	return most, nil
}
