package levers

// Traits says what a search may do with a kind of lever. A literal that
// lacks a trait does not compile: literals have no field names.
type Traits struct {
	Extent   Extent
	Basis    Basis
	Setter   Setter
	Role     Role
	Presence Presence
	Resort   Resort
}

// Extent says how many values of the formula an edit changes.
type Extent uint8

// The extents. An edit that changes more than it may is refused.
const (
	_ Extent = iota
	OneValue
	SeveralValues
	NoValue // the formula stays as it is
)

// Basis says what the lever's number is.
type Basis uint8

// The bases.
const (
	_         Basis = iota
	Absolute        // the value itself, or a word
	OfWritten       // percent of the values that are written
)

// Setter says how the value is found.
type Setter uint8

// The setters.
const (
	_        Setter = iota
	Searched        // among the values of the grid, unless the rule computes it
	ByRule          // by the rule alone
)

// Role says what the value is to the baker.
type Role uint8

// The roles.
const (
	_         Role = iota
	Practice       // what the baker does: amounts, times, temperatures around the dough
	Wish           // what the baker wants to reach: a target, a yield
	Equipment      // what the kitchen owns
)

// Presence says whether the value stands in the formula already.
type Presence uint8

// The presences.
const (
	_       Presence = iota
	Written          // an entry is changed, or an option added to it
	Added            // an ingredient or a step is added
)

// Resort says when a search takes the kind up.
type Resort uint8

// The resorts.
const (
	_     Resort = iota
	First        // with the others of its name
	Last         // only where no other lever of the name will do
)

// Sort names a sort of value that stands in a formula's text. A lever
// that writes one of its own declares it in its file.
type Sort string

// The sorts of value that levers write.
const (
	Amount  Sort = "amount"
	Name    Sort = "name" // of an ingredient
	Temp    Sort = "temp" // of an ingredient
	Strain  Sort = "strain"
	Time    Sort = "time"
	Ambient Sort = "at"
	Target  Sort = "to"
	Core    Sort = "core"
	Form    Sort = "as"
	Measure Sort = "measure"
	Count   Sort = "count" // of tins and pieces
	Yield   Sort = "makes" // what the formula makes
	NewStep Sort = "step"
)

// anywhere stands for every part of a formula, or for every entry of
// a part.
const anywhere = -1

// Field is a value of the formula, or all of its sort.
type Field struct {
	Of    Sort
	Part  int // serial of the part, or anywhere
	Index int // of the ingredient or step, or anywhere
}

// overlaps reports whether two fields have a value in common.
func (a Field) overlaps(b Field) bool {
	meet := func(i, j int) bool { return i == j || i == anywhere || j == anywhere }
	return a.Of == b.Of && meet(a.Part, b.Part) && meet(a.Index, b.Index)
}
