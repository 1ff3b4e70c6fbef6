package page

import (
	"fmt"
	"io"
	"math"

	"forebake/engine/finding"
	"forebake/engine/jsontext"
	"forebake/engine/report"
	"forebake/engine/source"
)

// The versions of the JSON outputs, each its own. One changes when a
// key of that output goes, or means something else; a new key does not
// change it. formulas/schemas holds a schema of each.
const (
	batchesFormat   = 1
	beginFormat     = 1
	catalogueFormat = 1
	cautionsFormat  = 1
	compareFormat   = 1
	costFormat      = 1
	factsFormat     = 1
	historyFormat   = 1
	loggedFormat    = 1
	mendFormat      = 1
	mixFormat       = 1
	packsFormat     = 1
	planFormat      = 1
	readFormat      = 1
	scaleFormat     = 1
	trialFormat     = 1
	whyFormat       = 1
)

// head begins the JSON of every verb about formulas.
type head struct {
	Format int `json:"format"`
	report.JSONPrelude
}

func headOf(format int, run *finding.Run) head { return head{format, report.PreludeJSON(run)} }

type (
	jsonMends struct {
		head
		Mendings []finding.Mending `json:"mendings"`
		Files    []jsonEdited      `json:"files"` // the changes as edits; none of a choice
	}
	jsonEdited struct {
		File  string            `json:"file"`
		Edits []report.JSONEdit `json:"edits"`
	}
	jsonComparisons struct {
		head
		A           string           `json:"a"`
		B           string           `json:"b"`
		Comparisons []jsonComparison `json:"comparisons"`
		OnlyA       []string         `json:"only_a"`
		OnlyB       []string         `json:"only_b"`
	}
	jsonComparison struct {
		A      string                 `json:"a"`
		B      string                 `json:"b"`
		Parts  []finding.ComparedPart `json:"parts"`
		Gained []report.JSONFinding   `json:"gained"`
		Lost   []report.JSONFinding   `json:"lost"`
	}
	jsonPlan struct {
		head
		Plan finding.Plan `json:"plan"`
	}
	jsonScaling struct {
		head
		Formula string               `json:"formula"`
		File    string               `json:"file"`
		From    string               `json:"from"`
		To      string               `json:"to"`
		Asked   string               `json:"asked"`
		Factor  float64              `json:"factor"`
		New     []report.JSONFinding `json:"new"`
		Gone    []report.JSONFinding `json:"gone"`
		Lots    []string             `json:"lots"`
		Parts   []finding.ScaledPart `json:"parts"`
		Told    []string             `json:"told"`
		Doubted []finding.Doubted    `json:"doubted"`
		Text    string               `json:"text"` // of the whole file
		Wrote   bool                 `json:"wrote"`
	}
	jsonBatches struct {
		head
		Batches []finding.Batches `json:"batches"`
		Notices []string          `json:"notices"`
	}
	jsonCautions struct {
		head
		Unread []string `json:"unread"`
	}
	jsonHistory struct {
		head
		Steps []jsonStage `json:"steps"`
	}
	jsonStage struct {
		Formula string   `json:"formula"`
		Part    string   `json:"part"`
		Step    string   `json:"step"`
		ClockH  *float64 `json:"clock_h"` // since the first step
		Around  string   `json:"around"`
		Core    string   `json:"core_after"`
		Mean    string   `json:"mean_after"`
		Rise    string   `json:"rise"`
		Notes   string   `json:"notes"`
	}
	jsonWhy struct {
		Format int          `json:"format"`
		Rule   finding.Card `json:"rule"`
	}
	jsonTrials struct {
		Format int `json:"format"`
		Trials
	}
	jsonBegin struct {
		Format   int      `json:"format"`
		Families []string `json:"families"` // where none was named
		Text     string   `json:"text"`     // of the file
	}
	jsonRead struct {
		Format int      `json:"format"`
		Text   string   `json:"text"` // of the formula file
		Doubts []string `json:"doubts"`
	}
	jsonLogged struct {
		Format int    `json:"format"`
		File   string `json:"file"`
		Says   string `json:"says"`
	}
)

// MendJSON prints what Mend prints as one object, with the edits of
// each file.
func MendJSON(w io.Writer, run *finding.Run, list []finding.Mending,
	files []finding.FileEdits) error {
	out := jsonMends{headOf(mendFormat, run), list, nil}
	for _, f := range files {
		out.Files = append(out.Files, jsonEdited{f.File, report.EditsJSON(f.Edits)})
	}
	return jsontext.Write(w, jsontext.Filled(out))
}

// CompareJSON prints what Compare prints as one object.
func CompareJSON(w io.Writer, run *finding.Run, list []finding.Comparison, s Sides) error {
	out := jsonComparisons{headOf(compareFormat, run), s.A, s.B, nil, s.OnlyA, s.OnlyB}
	for _, c := range list {
		out.Comparisons = append(out.Comparisons, jsonComparison{c.A, c.B, c.Parts,
			report.FindingsJSON(c.Gained), report.FindingsJSON(c.Lost)})
	}
	return jsontext.Write(w, jsontext.Filled(out))
}

// PlanJSON prints what Plan prints as one object.
func PlanJSON(w io.Writer, run *finding.Run, p *finding.Plan) error {
	return jsontext.Write(w, jsontext.Filled(jsonPlan{headOf(planFormat, run), *p}))
}

// ScaleJSON prints what Scale prints as one object, with the new text
// of the file.
func ScaleJSON(w io.Writer, run *finding.Run, s *finding.Scaling, text []byte) error {
	return jsontext.Write(w, jsontext.Filled(jsonScaling{headOf(scaleFormat, run), s.Formula,
		s.File, s.From, s.To, s.Asked, s.Factor, report.FindingsJSON(s.New),
		report.FindingsJSON(s.Gone), s.Lots, s.Parts, s.Told, s.Doubted, string(text), s.Wrote}))
}

// BatchesJSON prints what Batches prints as one object.
func BatchesJSON(w io.Writer, run *finding.Run, list []finding.Batches) error {
	return jsontext.Write(w, jsontext.Filled(jsonBatches{headOf(batchesFormat, run), list,
		finding.OneLine(run.Notices)}))
}

// CautionsJSON prints the cautions of a run as one object.
func CautionsJSON(w io.Writer, run *finding.Run) error {
	out := jsonCautions{head: headOf(cautionsFormat, run)}
	for _, p := range run.Problems {
		out.Unread = append(out.Unread, p.String())
	}
	return jsontext.Write(w, jsontext.Filled(out))
}

// HistoryJSON prints what History prints as one object.
func HistoryJSON(w io.Writer, run *finding.Run, rows []finding.HistoryRow) error {
	out := jsonHistory{head: headOf(historyFormat, run)}
	for _, r := range rows {
		out.Steps = append(out.Steps, jsonStage{r.Formula, r.Part, r.Step,
			report.Finite(r.Clock, !math.IsNaN(r.Clock)), r.Ambient, r.Core, r.Mean, r.Rise,
			r.Notes})
	}
	return jsontext.Write(w, jsontext.Filled(out))
}

// WhyJSON prints the card of a rule as one object.
func WhyJSON(w io.Writer, c finding.Card) error {
	return jsontext.Write(w, jsontext.Filled(jsonWhy{whyFormat, c}))
}

// Trials is how the trials of some packs came out. A trial that the
// packs hold no rule or caution of has failed, and answers nothing.
type Trials struct {
	Trials    []Trial  `json:"trials"`
	NoFlagged []string `json:"no_trial_flags"`
	NoClear   []string `json:"no_trial_clears"`
	Untouched []string `json:"untouched_limits"` // "rule limit"
	Rules     int      `json:"rules"`
	Limits    int      `json:"limits"`
	Failed    int      `json:"failed"`
}

// Trial is one of them.
type Trial struct {
	Trial  string `json:"trial"`
	At     string `json:"at"`
	Of     string `json:"of"` // the rule or caution
	Expect string `json:"expects"`
	Got    string `json:"answers"`
	Differ string `json:"judges_differ"`
	Passed bool   `json:"passed"`
}

// TrialsJSON prints trials as one object.
func TrialsJSON(w io.Writer, t Trials) error {
	return jsontext.Write(w, jsontext.Filled(jsonTrials{trialFormat, t}))
}

// BeginJSON prints a starting text, or the names of the families, as
// one object.
func BeginJSON(w io.Writer, families []string, text string) error {
	return jsontext.Write(w, jsontext.Filled(jsonBegin{beginFormat, families, text}))
}

// ReadJSON prints the formula file of a recipe, with its remarks, as
// one object.
func ReadJSON(w io.Writer, text string, doubts []string) error {
	return jsontext.Write(w, jsontext.Filled(jsonRead{readFormat, text, doubts}))
}

// Logged says what was added to a log.
func Logged(w io.Writer, file, says string) error {
	_, err := fmt.Fprintf(w, "%s: %s\n", source.Safe(file), source.Safe(says))
	return err
}

// LoggedJSON says the same as one object.
func LoggedJSON(w io.Writer, file, says string) error {
	return jsontext.Write(w, jsonLogged{loggedFormat, file, says})
}
