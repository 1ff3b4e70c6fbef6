package report

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"iter"
	"math"
	"strings"
	"unicode/utf16"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// The JSON of a check. Unknown figures are null, never 0 or NaN.
type (
	jsonRun struct {
		Version   string          `json:"version"`
		Cautions  []jsonCaution   `json:"cautions"`
		Unread    []jsonUnread    `json:"unread"`
		Unchecked []jsonUnchecked `json:"unchecked"`
		Loosened  []jsonLoosened  `json:"loosened"`
		Findings  []jsonFinding   `json:"findings"`
		Notices   []string        `json:"notices"`
		Totals    jsonTotals      `json:"totals"`
	}
	jsonCaution struct {
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
	jsonFinding struct {
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
		Text  string `json:"text"`
		Trust string `json:"trust"`
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

// jsonObject prints a run as one object. Its long lists are written item by item: as one text those
// of a large collection would take several times the memory of the whole check.
type jsonObject struct {
	out      io.Writer
	run      jsonRun
	cautions *Cautions
	found    *Found
}

func newJSON(out io.Writer, _ Options) Writer {
	return &jsonObject{out: out, run: jsonRun{Cautions: []jsonCaution{}, Unread: []jsonUnread{},
		Unchecked: []jsonUnchecked{}, Loosened: []jsonLoosened{}, Findings: []jsonFinding{}, Notices: []string{}}}
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

// SetAside adds nothing: these findings stand among the others, with who set them aside and why.
func (j *jsonObject) SetAside([]*finding.Finding) {}

func (j *jsonObject) Unchecked(list []finding.Unchecked) {
	for _, u := range list {
		j.run.Unchecked = append(j.run.Unchecked,
			jsonUnchecked{u.Pack, u.Text(), fileLine(u.Place)})
	}
}

func (j *jsonObject) Loosened(list []finding.Loosened) {
	for _, l := range list {
		j.run.Loosened = append(j.run.Loosened,
			jsonLoosened{l.Rule, l.Pack, l.What, l.From, l.To, l.Because, fileLine(l.Place)})
	}
}

func (j *jsonObject) Findings(f *Found) { j.found = f }

func (j *jsonObject) Notices(list []string) { j.run.Notices = append(j.run.Notices, list...) }

func (j *jsonObject) Totals(t finding.Totals) { j.run.Totals = totalsJSON(t) }

func (j *jsonObject) End() error {
	return writeInto(j.out, j.run,
		jsonList{"  ", "cautions", func(yield func(any) bool) {
			for _, c := range j.cautions.List {
				yield(cautionJSON(c))
			}
		}},
		jsonList{"  ", "findings", func(yield func(any) bool) {
			for _, f := range j.found.All() {
				yield(findingJSON(f))
			}
		}})
}

func cautionJSON(c *finding.Caution) jsonCaution {
	return jsonCaution{c.Whole(), c.Source, c.Formula}
}

// CautionsJSON gives the cautions of a run as every report holds them.
func CautionsJSON(run *finding.Run) any {
	list := []jsonCaution{}
	for _, c := range cautionsOf(run).List {
		list = append(list, cautionJSON(c))
	}
	return list
}

func totalsJSON(t finding.Totals) jsonTotals {
	return jsonTotals{t.Formulas, t.Rules, t.Stop, t.Risk, t.Note, t.Unsure, t.Waived, t.Backlog,
		t.Unread}
}

// position gives the file, line and column of a place; nothing for no place.
func position(p source.Place) (file string, line, column int) {
	if p.IsZero() {
		return "", 0, 0
	}
	at := p.File.Position(p.Start)
	return p.File.Name, at.Line, at.Column
}

func findingJSON(f *finding.Finding) jsonFinding {
	j := jsonFinding{
		Rule: f.Rule, Pack: f.Pack, Level: f.Level.String(), Answer: f.Answer.String(),
		Formula: f.Formula, Subject: f.Subject,
		Text: f.Text, Why: f.Why, Source: f.Source, Facts: []jsonFigure{}, Needs: append([]string{},
			f.Needs...), Mends: []jsonMend{},
		Doubt: f.Doubt, Safety: f.Safety,
	}
	if f.Answer == finding.Waived {
		j.Waived = &jsonWaived{Because: f.Because, By: fileLine(f.By)}
		if f.Until != "" {
			j.Waived.Until = &f.Until
		}
	}
	j.File, j.Line, j.Column = position(f.Place)
	for _, m := range f.Mends {
		j.Mends = append(j.Mends, jsonMend{m.Text, m.Trust})
	}
	for _, g := range f.Figures {
		j.Facts = append(j.Facts, figureJSON(g))
	}
	return j
}

// jsonList is a list of a JSON object that is written item by item. The writer takes every item.
type jsonList struct {
	indent string // of its key
	key    string
	items  iter.Seq[any]
}

// writeInto writes an object as WriteJSON does, and fills in the items of its lists. The lists are
// empty in the object, and named in their order.
func writeInto(w io.Writer, object any, lists ...jsonList) error {
	out := bufio.NewWriterSize(w, 1<<16)
	rest, err := indented(object, "")
	if err != nil {
		return err
	}
	for _, l := range lists {
		// No text of a file can hold a line end as it is, so this is the object's own.
		mark := "\n" + l.indent + "\"" + l.key + "\": ["
		before, after, ok := strings.Cut(rest, mark+"]")
		if !ok {
			return fmt.Errorf("no empty list %q in the object to write", l.key)
		}
		out.WriteString(before + mark)
		between, end := "", ""
		l.items(func(item any) bool {
			text, fault := indented(item, l.indent+"  ")
			if fault != nil {
				err = fault
			}
			out.WriteString(between + "\n" + l.indent + "  " + strings.TrimSuffix(text, "\n"))
			between, end = ",", "\n"+l.indent
			return true
		})
		if err != nil {
			return err
		}
		out.WriteString(end + "]")
		rest = after
	}
	out.WriteString(rest)
	return out.Flush()
}

// WriteJSON writes indented JSON. Characters that control a terminal are written as JSON escapes;
// all others stay readable.
func WriteJSON(w io.Writer, v any) error { return writeInto(w, v) }

func indented(v any, prefix string) (string, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent(prefix, "  ")
	if err := e.Encode(v); err != nil {
		return "", err
	}
	return escaped(b.String()), nil
}

// escaped replaces every character that source.Safe refuses by its JSON escape.
func escaped(s string) string {
	var b strings.Builder
	for _, line := range strings.SplitAfter(s, "\n") {
		text := strings.TrimSuffix(line, "\n")
		if source.Safe(text) == text {
			b.WriteString(line)
			continue
		}
		for _, r := range text {
			if one := string(r); source.Safe(one) == one {
				b.WriteString(one)
				continue
			}
			for _, unit := range utf16.Encode([]rune{r}) {
				fmt.Fprintf(&b, "\\u%04x", unit)
			}
		}
		b.WriteString(line[len(text):])
	}
	return b.String()
}

func figureJSON(g *finding.Figure) jsonFigure {
	return jsonFigure{Name: g.Name, Value: FigureValue(g), Low: Finite(g.Low, g.Numeric),
		High: Finite(g.High, g.Numeric), Unit: g.Unit}
}

// FigureValue gives a figure's value for JSON: a number, true or false, a text, a list, or null
// when it is not known.
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
