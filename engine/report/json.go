package report

import (
	"bytes"
	"io"
	"math"

	"forebake/engine/finding"
	"forebake/engine/jsontext"
	"forebake/engine/source"
)

// JSONFormat is the version of the JSON outputs. It changes when a key
// goes or changes meaning, not for a new key.
const JSONFormat = 1

// The JSON of a check. Unknown figures are null, never 0 or NaN.
type (
	jsonRun struct {
		Format    int             `json:"format"` // JSONFormat
		Version   string          `json:"version"`
		Cautions  []JSONCaution   `json:"cautions"`
		Unread    []jsonUnread    `json:"unread"`
		Unchecked []jsonUnchecked `json:"unchecked"`
		Loosened  []jsonLoosened  `json:"loosened"`
		Findings  []JSONFinding   `json:"findings"`
		Assumed   []jsonAssumed   `json:"assumed"`
		Notices   []string        `json:"notices"`
		Totals    jsonTotals      `json:"totals"`
	}
	jsonAssumed struct {
		File    string   `json:"file"`
		Formula string   `json:"formula"`
		Line    int      `json:"line"`
		Assumed []string `json:"assumed"`
	}
	// JSONCaution is a caution as every JSON output holds it.
	JSONCaution struct {
		Text    string `json:"text"`
		Source  string `json:"source"`
		Formula string `json:"formula"`
	}
	jsonUnread struct {
		File   string `json:"file"`
		Line   int    `json:"line"`
		Column int    `json:"column"`
		Text   string `json:"text"`
	}
	jsonUnchecked struct {
		Pack string `json:"pack"`
		Text string `json:"text"`
		By   string `json:"by"`
	}
	jsonLoosened struct {
		Rule    string `json:"rule"`
		Pack    string `json:"pack"`
		What    string `json:"what"`
		From    string `json:"from"`
		To      string `json:"to"`
		Because string `json:"because"`
		By      string `json:"by"`
	}
	jsonWaived struct {
		Because string  `json:"because"`
		Until   *string `json:"until"`
		By      string  `json:"by"`
	}
	// JSONFinding is a finding as every JSON output holds it.
	JSONFinding struct {
		Rule    string       `json:"rule"`
		Pack    string       `json:"pack"`
		Level   string       `json:"level"`
		Answer  string       `json:"answer"`
		Formula string       `json:"formula"`
		Subject string       `json:"subject"`
		File    string       `json:"file"`
		Line    int          `json:"line"`
		Column  int          `json:"column"`
		Text    string       `json:"text"`
		Why     string       `json:"why"`
		Source  string       `json:"source"`
		Facts   []jsonFigure `json:"facts"`
		Needs   []string     `json:"needs"`
		Mends   []jsonMend   `json:"mends"`
		Doubt   bool         `json:"doubt"`
		Safety  bool         `json:"food_safety"`
		Waived  *jsonWaived  `json:"waived"`
	}
	jsonFigure struct {
		Name  string   `json:"name"`
		Value any      `json:"value"`
		Low   *float64 `json:"low"`
		High  *float64 `json:"high"`
		Unit  string   `json:"unit"`
	}
	jsonMend struct {
		Text  string     `json:"text"`
		Trust string     `json:"trust"`
		Edits []JSONEdit `json:"edits"` // none for advice
	}
	// JSONEdit replaces Old by New, the bytes from Start to End of
	// the file.
	JSONEdit struct {
		Start int    `json:"start"`
		End   int    `json:"end"`
		Old   string `json:"old"`
		New   string `json:"new"`
	}
	jsonTotals struct {
		Formulas int `json:"formulas"`
		Rules    int `json:"rules"`
		Stop     int `json:"stop"`
		Risk     int `json:"risk"`
		Note     int `json:"note"`
		Unsure   int `json:"unsure"`
		Waived   int `json:"waived"`
		Backlog  int `json:"backlog"`
		Unread   int `json:"unread"`
	}
)

// jsonObject prints a run as one object. Its long lists are written
// item by item: as one text, those of a large collection would take
// several times the memory of the check.
type jsonObject struct {
	out      io.Writer
	run      jsonRun
	cautions *Cautions
	found    *Found
	assumed  []finding.Assumptions
}

func init() { register(Format{"json", ".json", true, allMends, newJSON, isJSON}) }

func newJSON(out io.Writer, _ Options) Writer {
	return &jsonObject{out: out, run: jsonRun{Format: JSONFormat, Cautions: []JSONCaution{},
		Unread:    []jsonUnread{},
		Unchecked: []jsonUnchecked{}, Loosened: []jsonLoosened{}, Findings: []JSONFinding{},
		Assumed: []jsonAssumed{}, Notices: []string{}}}
}

func (j *jsonObject) Begin(h Head) { j.run.Version = h.Version }

func (j *jsonObject) Cautions(c *Cautions) { j.cautions = c }

func (j *jsonObject) Unread(list source.Problems) {
	for _, p := range list {
		one := jsonUnread{Text: p.Text}
		one.File, one.Line, one.Column = position(p.Place)
		j.run.Unread = append(j.run.Unread, one)
	}
}

// SetAside adds nothing: these findings are among the others, with who
// waived them and why.
func (j *jsonObject) SetAside([]*finding.Finding) {}

func (j *jsonObject) Unchecked(list []finding.Unchecked) {
	for _, u := range list {
		j.run.Unchecked = append(j.run.Unchecked,
			jsonUnchecked{u.Pack, u.Text(), FileLine(u.Place)})
	}
}

func (j *jsonObject) Loosened(list []finding.Loosened) {
	for _, l := range list {
		j.run.Loosened = append(j.run.Loosened,
			jsonLoosened{l.Rule, l.Pack, l.What, l.From, l.To, l.Because, FileLine(l.Place)})
	}
}

func (j *jsonObject) Findings(f *Found) { j.found = f }

func (j *jsonObject) Assumed(list []finding.Assumptions) { j.assumed = list }

func (j *jsonObject) Notices(list []string) {
	j.run.Notices = append(j.run.Notices, finding.OneLine(list)...)
}

func (j *jsonObject) Totals(t finding.Totals) { j.run.Totals = totalsJSON(t) }

func (j *jsonObject) End() error {
	return jsontext.WriteInto(j.out, j.run,
		jsontext.List{Indent: "  ", Key: "cautions", Items: func(yield func(any) bool) {
			for _, c := range j.cautions.List {
				yield(cautionJSON(c))
			}
		}},
		jsontext.List{Indent: "  ", Key: "findings", Items: func(yield func(any) bool) {
			for _, f := range j.found.All() {
				yield(findingJSON(f))
			}
		}},
		jsontext.List{Indent: "  ", Key: "assumed", Items: func(yield func(any) bool) {
			for i := range j.assumed {
				if a := &j.assumed[i]; len(a.List) > 0 {
					yield(jsonAssumed{a.File, a.Formula, a.Line, a.Words()})
				}
			}
		}})
}

func cautionJSON(c *finding.Caution) JSONCaution {
	return JSONCaution{c.Whole(), c.Source, c.Formula}
}

// JSONPrelude comes first in the JSON of every verb about formulas, as
// in every report.
type JSONPrelude struct {
	Cautions  []JSONCaution   `json:"cautions"`
	Unchecked []jsonUnchecked `json:"unchecked"`
	Loosened  []jsonLoosened  `json:"loosened"`
	SetAside  []JSONFinding   `json:"set_aside"` // of food safety
}

// PreludeJSON gives the prelude of a run.
func PreludeJSON(run *finding.Run) JSONPrelude {
	var j jsonObject
	prelude(&j, run)
	out := JSONPrelude{[]JSONCaution{}, j.run.Unchecked, j.run.Loosened,
		FindingsJSON(run.SetAside())}
	for _, c := range j.cautions.List {
		out.Cautions = append(out.Cautions, cautionJSON(c))
	}
	return out
}

// FindingsJSON gives findings as every report holds them.
func FindingsJSON(list []*finding.Finding) []JSONFinding {
	out := []JSONFinding{}
	for _, f := range list {
		out = append(out, findingJSON(f))
	}
	return out
}

func totalsJSON(t finding.Totals) jsonTotals {
	return jsonTotals{t.Formulas, t.Rules, t.Stop, t.Risk, t.Note, t.Unsure, t.Waived, t.Backlog,
		t.Unread}
}

// position gives a place's file, line and column; nothing for no place.
func position(p source.Place) (file string, line, column int) {
	if p.IsZero() {
		return "", 0, 0
	}
	at := p.File.Position(p.Start)
	return p.File.Name, at.Line, at.Column
}

func findingJSON(f *finding.Finding) JSONFinding {
	j := JSONFinding{
		Rule: f.Rule, Pack: f.Pack, Level: f.Level.String(), Answer: f.Answer.String(),
		Formula: f.Formula, Subject: f.Subject,
		Text: f.Text, Why: f.Why, Source: f.Source, Facts: []jsonFigure{}, Needs: append([]string{},
			f.Needs...), Mends: []jsonMend{},
		Doubt: f.Doubt, Safety: f.Safety,
	}
	if f.Answer == finding.Waived {
		j.Waived = &jsonWaived{Because: f.Because, By: FileLine(f.By)}
		if f.Until != "" {
			j.Waived.Until = &f.Until
		}
	}
	j.File, j.Line, j.Column = position(f.Place)
	for _, m := range f.Mends {
		j.Mends = append(j.Mends, jsonMend{m.Text, m.Trust, EditsJSON(m.Edits)})
	}
	for _, g := range f.Figures {
		j.Facts = append(j.Facts, figureJSON(g))
	}
	return j
}

// EditsJSON gives edits as every JSON output holds them.
func EditsJSON(list []source.Edit) []JSONEdit {
	out := []JSONEdit{}
	for _, e := range list {
		out = append(out, JSONEdit(e))
	}
	return out
}

func figureJSON(g *finding.Figure) jsonFigure {
	return jsonFigure{Name: g.Name, Value: FigureValue(g), Low: Finite(g.Low, g.Numeric),
		High: Finite(g.High, g.Numeric), Unit: g.Unit}
}

// FigureValue gives a figure for JSON: a number, true or false, a text,
// a list, or null for unknown.
func FigureValue(g *finding.Figure) any {
	switch {
	case g.Numeric:
		if p := Finite(g.Value, true); p != nil {
			return *p
		}
		return nil
	case g.List != nil:
		return g.List
	case g.Text == "yes":
		return true
	case g.Text == "no":
		return false
	case g.Text == "unknown":
		return nil
	}
	return g.Text
}

// Finite gives a number for JSON, null where there is none.
func Finite(x float64, numeric bool) *float64 {
	if !numeric || math.IsInf(x, 0) || math.IsNaN(x) {
		return nil
	}
	return &x
}

func isJSON(first, last []byte) bool {
	return bytes.HasPrefix(first, []byte("{\n  \"format\": ")) &&
		bytes.Contains(first, cautionsKey) &&
		bytes.Contains(last, []byte("\n  \"totals\": {\n"))
}
