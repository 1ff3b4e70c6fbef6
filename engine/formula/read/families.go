package read

import (
	"fmt"

	"forebake/engine/family"
	"forebake/engine/formula/refusal"
	"forebake/engine/source"
)

// saidFamily gives the family of a trade bread's dough, and tells so.
func (rd *reader) saidFamily(name string, at source.Place) (*family.Family, bool) {
	if f, ok := family.OfDough(name); ok { // "croissant dough"
		rd.Assumed(at, fmt.Sprintf("family %q is read as %s", name, f.Name))
		return f, true
	}
	f, ok := family.Said(name)
	if ok {
		rd.Assumed(at, fmt.Sprintf("family %q has no ranges of its own: it is "+
			"held against %s, the nearest by make-up", name, f.Name))
	}
	return f, ok
}

// unknownFamily refuses a misspelt family, and takes another unknown one for none:
// it tells so, with the family nearest to the dough's make-up.
func (rd *reader) unknownFamily(name string, at source.Place) {
	text, misspelt := refusal.Family(name, rd.Formula.MakeUp())
	if misspelt {
		rd.Fault(at, "%s", text)
		return
	}
	rd.Assumed(at, text+"; none is taken")
}
