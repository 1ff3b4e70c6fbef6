package rule

import (
	"forebake/engine/expr"
	"forebake/engine/figure"
)

// looser reports whether a change of a limit may make the rule less
// strict, and whether that is certain. It is not certain for a limit
// only in the message: a false figure there misleads.
func (rule *Rule) looser(limit int, from figure.Interval, to float64) (loose, sure bool) {
	if from.Lo == to && from.Hi == to {
		return false, true
	}
	switch rule.When.Direction(limit) {
	case expr.Up:
		return to < from.Hi, true
	case expr.Down:
		return to > from.Lo, true
	}
	return true, false
}
