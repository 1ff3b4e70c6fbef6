package finding

// Card is what a rule says about itself.
type Card struct {
	ID, Pack, Level, On, File string
	Line                      int
	LevelBy                   string // the house line that set the level
	When, Say, Why, Source    string
	Doubt                     bool
	Was                       []string
	Limits                    []CardLimit
	Reads                     []CardFact
	Levers                    []string
}

// CardLimit is a limit of a rule.
type CardLimit struct {
	Name, Shown string
	Value       float64
	By          string // the house line that set it
}

// CardFact is a fact that a rule reads.
type CardFact struct{ Name, Unit, Means, Source, Error string }
