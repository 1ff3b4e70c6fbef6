package report

import (
	"forebake/engine/finding"
	"forebake/engine/source"
)

// SetBy names the line that set a level or a limit; "" for none.
func SetBy(place string) string {
	if place == "" {
		return ""
	}
	return " (set at " + source.Safe(place) + ")"
}

// LimitSource names the figure of the kitchen that a limit is equal to, with
// its source.
func LimitSource(l finding.CardLimit) string {
	if l.From == "" {
		return ""
	}
	return " (" + source.Safe(l.From) + ": " + source.Safe(l.Source) + ")"
}
