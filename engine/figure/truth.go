package figure

// Truth is a yes or no that the formula may leave open. The zero Truth
// is Open, so an answer that was never computed is unknown.
type Truth uint8

// The three truths.
const (
	Open Truth = iota
	No
	Yes
)

// TruthOf is Yes or No.
func TruthOf(b bool) Truth {
	if b {
		return Yes
	}
	return No
}

// Not swaps Yes and No and leaves Open.
func (t Truth) Not() Truth {
	switch t {
	case Yes:
		return No
	case No:
		return Yes
	}
	return Open
}

// Possible reports whether the answer can be yes.
func (t Truth) Possible() bool { return t != No }

// And is Kleene's conjunction: No where either is No, Yes where both
// are Yes, else Open.
func (t Truth) And(o Truth) Truth {
	switch {
	case t == No || o == No:
		return No
	case t == Yes && o == Yes:
		return Yes
	}
	return Open
}

// Or is Kleene's disjunction.
func (t Truth) Or(o Truth) Truth { return t.Not().And(o.Not()).Not() }
