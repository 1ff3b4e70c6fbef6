package reading

import (
	"forebake/engine/source"
	"forebake/engine/spelling"
	"slices"
)

// Names holds the names that were read so far, each with its first
// place. The zero Names is empty.
type Names struct {
	few   []namePlace // the first names; most lists have no more
	first map[string]source.Place
}

type namePlace struct {
	name string
	at   source.Place
}

// mostFew is how many names are compared one by one.
const mostFew = 4

// Twice keeps a name, and reports whether it was kept before, with the
// place where it stood first. A file may hold as many equal names as
// fit in, so each is told against the first alone. An empty name is
// another fault, and is told as that.
func (n *Names) Twice(name string, at source.Place) (first source.Place, twice bool) {
	if name == "" {
		return first, false
	}
	for i := range n.few {
		if n.few[i].name == name {
			return n.few[i].at, true
		}
	}
	if len(n.few) < mostFew {
		if n.few == nil {
			n.few = make([]namePlace, 0, mostFew)
		}
		n.few = append(n.few, namePlace{name, at})
		return first, false
	}
	if first, twice = n.first[name]; twice {
		return first, true
	}
	if n.first == nil {
		n.first = map[string]source.Place{}
	}
	n.first[name] = at
	return first, false
}

// IsNear reports whether a name is near to a known one, or is one.
func IsNear(name string, known []string) bool {
	return slices.Contains(known, name) || len(spelling.Nearest(name, known, 1)) > 0
}
