// Package ambient gives the temperature around a step in a kitchen.
package ambient

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
)

// Around is the temperature around a step, C: of its way, of its place, as
// written, or its verb's usual one. ok is false where none is known.
func Around(k *kitchen.Kitchen, step *formula.Step) (around figure.Interval, ok bool) {
	if around, ok = step.OwnAir(); ok {
		return around, true
	}
	if place := step.Stands(); place != nil {
		g, known := k.At(place.Name)
		return g.Interval, known
	}
	if usual, ok := step.Usual(k.Room.Interval); ok {
		return usual, true
	}
	return step.At.Interval, step.At.Set
}
