package finding

// Card is the description of a rule: its condition, texts, limits
// and settings.
type Card struct {
	ID       string       `json:"id"`
	Pack     string       `json:"pack"`
	Level    string       `json:"level"`
	On       string       `json:"on"`
	File     string       `json:"file"`
	Line     int          `json:"line"`
	LevelBy  string       `json:"level_by"` // the house line that set the level
	When     string       `json:"when"`
	Say      string       `json:"say"`
	Why      string       `json:"why"`
	Source   string       `json:"source"`
	NoteWhen string       `json:"note_when"` // where a finding is no more than a note; often none
	RiskWhen string       `json:"risk_when"` // where a stop is no more than a risk; often none
	Careful  bool         `json:"careful"`   // a stop by a model's careful end alone is a risk
	Doubt    bool         `json:"doubt"`
	Middle   bool         `json:"middle"`
	Safety   bool         `json:"food_safety"`
	Because  string       `json:"because"` // of the house's set block; often none
	Waivers  []CardWaiver `json:"waivers"` // of the house
	Was      []string     `json:"was"`
	Limits   []CardLimit  `json:"limits"`
	Reads    []CardFact   `json:"reads"`
	Levers   []string     `json:"levers"`
}

// CardLimit is a limit of a rule.
type CardLimit struct {
	Name   string  `json:"name"`
	Shown  string  `json:"shown"`
	Value  float64 `json:"value"`
	By     string  `json:"by"`   // the house line that set it
	From   string  `json:"from"` // the figure of the kitchen that it is equal to; "" for a number
	Source string  `json:"source"`
}

// CardWaiver is a waiver of a rule, as the house wrote it.
type CardWaiver struct {
	Formula string `json:"formula"`
	Until   string `json:"until"`
	Because string `json:"because"`
	By      string `json:"by"`
}

// CardFact is a fact that a rule reads.
type CardFact struct {
	Name   string `json:"name"`
	Unit   string `json:"unit"`
	Means  string `json:"means"`
	Source string `json:"source"`
	Error  string `json:"error"`
	Misses string `json:"misses"`
}
