package formula

import (
	"forebake/engine/figure"
	"forebake/engine/formula/culture"
)

// Starter is a culture's water over its flour, g/g, as written, else by its name.
// ok is false for other ingredients.
func (in *Ingredient) Starter() (hydration figure.Estimate, ok bool) {
	if in.Hydration == nil {
		return culture.Hydration(in.Item, in.Name, nil)
	}
	return culture.Hydration(in.Item, in.Name, &in.Hydration.Interval)
}

// FlourShare is the flour in a gram of an ingredient of the larder, g.
func (in *Ingredient) FlourShare() Interval {
	if h, ok := in.Starter(); ok {
		flour, _ := culture.Shares(in.Item, h)
		return flour
	}
	if span := in.Item.FlourSpan; span != (Interval{}) {
		return span
	}
	return figure.Point(in.Item.Flour)
}

// StarterWater is the water in a gram of a culture, g, without the flour's own moisture.
func (in *Ingredient) StarterWater() (Interval, bool) {
	h, ok := in.Starter()
	if !ok {
		return Interval{}, false
	}
	_, water := culture.Shares(in.Item, h)
	return water, true
}
