package finding

// Card is the description of a rule: its condition, texts, limits and settings.
type Card struct {
	ID, Pack, Level, On, File string
	Line                      int
	LevelBy                   string // the house line that set the level
	When, Say, Why, Source    string
	NoteWhen                  string // where a finding is no more than a note; often none
	RiskWhen                  string // where a stop is no more than a risk; often none
	Careful                   bool   // a stop that only a model's careful end reaches is a risk
	Doubt, Middle, Safety     bool
	Because                   string       // of the house's set block; often none
	Waivers                   []CardWaiver // of the house
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
	From        string // the figure of the kitchen that it is equal to; "" for a number
	Source      string
}

// CardWaiver is a waiver of a rule, as the house wrote it.
type CardWaiver struct{ Formula, Until, Because, By string }

// CardFact is a fact that a rule reads.
type CardFact struct{ Name, Unit, Means, Source, Error, Misses string }
