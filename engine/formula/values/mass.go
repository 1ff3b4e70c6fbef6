package values

import "forebake/engine/figure"

// Mass is a mass that may depend on the part's total flour: grams, and grams for
// each gram of flour. Kept apart they keep a percentage exact when the flour is
// a range.
type Mass struct {
	FixedG   figure.Interval // g
	PerFlour figure.Interval // g per g of total flour
}

// Grams gives the mass for a total flour, g.
func (m Mass) Grams(flourG figure.Interval) figure.Interval {
	if m.PerFlour == (figure.Interval{}) {
		return m.FixedG
	}
	return m.FixedG.Add(m.PerFlour.Mul(flourG))
}

// OverFlour gives the mass for a gram of total flour. It divides before it adds, so
// that an amount in percent stays exact.
func (m Mass) OverFlour(flourG figure.Interval) figure.Interval {
	return m.FixedG.Div(flourG).Add(m.PerFlour)
}

// Add gives the sum of two masses.
func (m Mass) Add(n Mass) Mass {
	return Mass{m.FixedG.Add(n.FixedG), m.PerFlour.Add(n.PerFlour)}
}

// Times gives a share of a mass, where the share is a range.
func (m Mass) Times(share figure.Interval) Mass {
	return Mass{m.FixedG.Mul(share), m.PerFlour.Mul(share)}
}
