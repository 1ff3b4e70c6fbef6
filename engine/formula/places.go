package formula

import (
	"forebake/engine/science/heat"
)

// Place is a named place of the kitchen, for at = "...". Each is one row of Places; the kitchen
// says how warm it is there, under the same name.
type Place struct {
	Name  string
	Means string // one line for the reference page
	air   heat.Place
	cold  coldness
	Also  []string // other words that bakers write for it
}

// coldness says whether the place keeps food. An undeclared place is warm.
type coldness uint8

const (
	warm coldness = iota
	cold
)

// place makes a row. It takes every trait, so that a row without one does not compile.
func place(name, means string, air heat.Place, cold coldness, also ...string) *Place {
	return &Place{name, means, air, cold, also}
}

var (
	room = place("room", "the room, in still air", heat.Room, warm,
		"room temperature", "room temp", "rt", "kitchen temperature", "room warmth", "ambient",
		"bench", "counter", "worktop", "kitchen", "draft free place", "draft free spot",
		"draft free area",
		"draft free corner", "draught free place", "draught free spot",
		"draught free corner", "place free of drafts",
		"zimmertemperatur", "raumtemperatur", "température ambiante", "temperature ambiante",
		"temperatura ambiente",
		"rumstemperatur", "stuetemperatur", "romtemperatur", "huoneenlämpö",
		"wire rack", "cooling rack", "rack")
	fridge = place("fridge", "the fridge, in still air", heat.Fridge, cold,
		"refrigerator", "chiller", "coolroom", "cool room", "cold room",
		"walk-in fridge", "reach-in fridge", "kühlschrank", "kuehlschrank",
		"froid", "au froid", "frigo", "réfrigérateur",
		"frigorifero", "kylskåp", "kyl", "køleskab", "kjøleskap", "jääkaappi")
	freezer = place("freezer", "the freezer, in still air", heat.Freezer, cold,
		"deep freeze", "deep freezer")
)

// Places are the named places of a kitchen.
var Places = []*Place{room, fridge, freezer}

// Air is the kind of surroundings that a part meets there.
func (p *Place) Air() heat.Place { return p.air }

// Cold reports whether food is kept there. What stands nowhere is not in the cold.
func (p *Place) Cold() bool { return p != nil && p.cold == cold }

// String gives the name; "" of no place.
func (p *Place) String() string {
	if p == nil {
		return ""
	}
	return p.Name
}

// PlaceNames lists the names of the places.
func PlaceNames() []string {
	names := make([]string, len(Places))
	for i, p := range Places {
		names[i] = p.Name
	}
	return names
}
