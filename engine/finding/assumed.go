package finding

import (
	"fmt"
	"slices"
	"strings"
)

// mostAssumed is how many names each assumption lists before the rest
// is counted.
const mostAssumed = 4

// AssumedLine lists in one line what is assumed for unwritten settings;
// "" for nothing. Equal assumptions are told once, with a few names and
// the number of the rest.
func AssumedLine(list []Assumptions) string {
	var order []string
	names := map[string][]string{}
	seen := map[Assumption]bool{}
	for _, a := range list {
		for _, one := range a.List {
			one.Line = 0
			if seen[one] {
				continue
			}
			seen[one] = true
			if names[one.What] == nil {
				order = append(order, one.What)
			}
			names[one.What] = append(names[one.What], one.Of)
		}
	}
	if len(order) == 0 {
		return ""
	}
	slices.Sort(order)
	for i, what := range order {
		of, more := names[what], ""
		if n := len(of) - mostAssumed; n > 1 && what != kitchenFigures {
			of, more = of[:mostAssumed], fmt.Sprintf(" and %d more", n)
		}
		order[i] = what + ": " + strings.Join(of, ", ") + more
	}
	first := ""
	if i := slices.IndexFunc(order, func(told string) bool {
		return strings.HasPrefix(told, weightsAlone)
	}); i >= 0 {
		first, order = "O"+order[i][1:]+". ", slices.Delete(order, i, i+1)
	}
	if len(order) == 0 {
		return strings.TrimSpace(first)
	}
	return first + "Assumed where nothing is written: " + strings.Join(order, "; ") + "."
}

// weightsAlone precedes the doughs without steps. It comes first, in a sentence of its own.
const weightsAlone = "only the weights are judged, for no step is written"

// kitchenFigures precedes the defaults of a kitchen.
const kitchenFigures = "kitchen"

// Words gives the assumptions on one formula or kitchen in words,
// one each.
func (a *Assumptions) Words() []string {
	out := make([]string, len(a.List))
	for i, one := range a.List {
		out[i] = one.Of + ": " + one.What
		if one.Line > 0 {
			out[i] = fmt.Sprintf("%s (line %d): %s", one.Of, one.Line, one.What)
		}
	}
	return out
}
