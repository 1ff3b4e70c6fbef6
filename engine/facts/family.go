package facts

import (
	"strings"

	"forebake/engine/makeup"
)

// LimitsNothing reports whether a value is the end of a range that its
// family lacks: it stands in conditions, and is never printed.
func LimitsNothing(f *Fact, v *Value) bool {
	if f.On != OnPart || !strings.HasPrefix(f.Name, "family_") || f.Unit != "%" {
		return false
	}
	return v.Lo == makeup.NoHighEnd
}
