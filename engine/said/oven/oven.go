// Package oven reads an oven's heat where it is written on several scales or for two sides at once.
// The formula reader calls it. It knows no formula.
package oven

import (
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

var (
	// asides are the same heat of a fan, or on the scale of a gas oven, beside one in degrees.
	asides = spelling.Pattern(`(?i)[,;/( ]*(?:\b(?:fan|umluft|convection|varmluft)(?: oven)?:? ?\d{2,3}` +
		` ?°? ?[CF]?\b|\b(?:gas(?: mark)?|th\.?|thermostat) ?\d{1,2}(?:[./]\d)?\b)[ )]*`)
	// lands write degrees that are Celsius there.
	lands = spelling.Pattern(`(?i)^(\d{2,3}(?: ?(?:-|–|bis|à) ?\d{2,3})?) ?(?:grad|degr[ée]s|stopni|` +
		`grader|gradi|grados|graus|astetta|stupň\pL+)\b.*$`)
	sides = spelling.Pattern(`(?i)^(?:top:?(?: heat)? ?)?(\d{2,3}) ?°?C?(?: top(?: heat)?)?[,/ ]+` +
		`(?:and )?(?:bottom:?(?: heat)? ?)?(\d{2,3}) ?°? ?C(?: bottom(?: heat)?)?$`)
)

// Heat is a heat written with words or scales beside it, as one text that the quantity reader
// reads; ok is false where it is none of these. The heats of top and bottom are a range.
func Heat(text string) (heat string, ok bool) {
	text = strings.TrimSpace(text)
	if m := sides().FindStringSubmatch(text); m != nil {
		lo, hi := min(m[1], m[2]), max(m[1], m[2])
		if len(lo) == len(hi) {
			return lo + " to " + hi + " C", true
		}
	}
	if m := lands().FindStringSubmatch(text); m != nil {
		heat = strings.NewReplacer("bis", "to", "à", "to").Replace(m[1]) + " C"
	} else if asides().MatchString(text) {
		heat = strings.Trim(asides().ReplaceAllString(text, " "), " ,;/()")
	}
	_, fault := quantity.Read(heat, quantity.Of(quantity.Temperature))
	return heat, heat != "" && fault == nil
}
