package quantity

// Unit is one unit, as the reference page lists it.
type Unit struct {
	Name   string
	Kind   Kind
	Factor float64  // to the base unit of its kind; a temperature in F has an offset too
	Also   []string // other spellings
}

// Units lists every unit that Read knows, by kind.
func Units() []Unit {
	out := make([]Unit, len(units))
	for i, u := range units {
		out[i] = Unit{u.name, u.kind, u.factor, u.also}
	}
	return out
}
