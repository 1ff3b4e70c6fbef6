package page

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/jsontext"
	"forebake/engine/report"
	"forebake/engine/source"
)

// tally says how many cautions the formulas of a run have. Pages of
// figures begin with it.
func (t *text) tally(run *finding.Run) {
	n := report.CautionCount(run)
	if n == 0 {
		return
	}
	which := "this formula"
	if len(run.Formulas) > 1 {
		which = "these formulas"
	}
	t.Paragraph(report.Count(n, "caution")+" for "+which+"; forebake check prints them.", "", "  ")
	t.WriteString("\n")
}

// figuresHead begins a page of figures: the number of cautions, and
// what the house keeps from being checked.
func (t *text) figuresHead(run *finding.Run) {
	t.tally(run)
	t.SetAside(run.SetAside())
	t.Unchecked(run.Unchecked)
	t.Loosened(run.Loosened)
}

// FactsText prints figures by subject: name, value with unit, origin,
// meaning. Sources stand below, by number. Unknown figures are counted
// only, unless all are asked for.
func FactsText(w io.Writer, run *finding.Run, rows []finding.FactRow, all bool,
	o report.Options) error {
	t := newText(w, o)
	t.figuresHead(run)
	list := factList{text: t, all: all, numbers: map[string]int{}}
	for i := range rows {
		list.row(&rows[i], i == 0)
	}
	list.endSubject()
	if len(list.sources) > 0 {
		t.WriteString("\nSources\n")
		for i, s := range list.sources {
			t.Paragraph(source.Safe(s), fmt.Sprintf("  [%d] ", i+1), "      ")
		}
	}
	return t.End()
}

// factList prints figures one after the other.
type factList struct {
	*text
	all              bool
	formula, subject string
	unknown          int            // figures of the subject that are not printed
	numbers          map[string]int // of sources
	sources          []string
}

func (l *factList) endSubject() {
	if l.unknown > 0 {
		fmt.Fprintf(l, "  (%s not given, or without meaning here: name them, or --all)\n",
			report.Count(l.unknown, "figure"))
	}
	l.unknown = 0
}

func (l *factList) row(r *finding.FactRow, first bool) {
	if r.Formula != l.formula || r.Subject != l.subject {
		l.endSubject()
		if !first {
			l.WriteString("\n")
		}
		if r.Formula != l.formula {
			fmt.Fprintf(l, "%s\n\n", source.Safe(r.Formula))
		}
		l.formula, l.subject = r.Formula, r.Subject
		fmt.Fprintf(l, "%s\n", source.Safe(l.subject))
	}
	kind := r.Figure.Kind
	if r.Figure.Shown == "unknown" {
		if !l.all {
			l.unknown++
			return
		}
		kind = "-"
	}
	n := l.numbers[r.Source]
	if n == 0 {
		l.sources = append(l.sources, r.Source)
		n = len(l.sources)
		l.numbers[r.Source] = n
	}
	head := fmt.Sprintf("  %-24s %-22s %-11s ", r.Figure.Name, source.Safe(r.Figure.Shown), kind)
	means := fmt.Sprintf("%s [%d]", source.Safe(r.Means), n)
	if !l.Fits(head + means) {
		l.WriteString(strings.TrimRight(head, " ") + "\n")
		head = "      "
	}
	l.Paragraph(means, head, "      ")
	if r.Figure.Error != "" {
		l.Paragraph(
			fmt.Sprintf("%s; error: %s", r.Figure.Error, source.Safe(r.Error)),
			"      ",
			"      ",
		)
	}
}

// FactsCSV prints figures as comma-separated values (RFC 4180), a
// heading first. A figure that is not known is an empty cell; the ends
// of a figure that is a point are it. The cautions are not in it: they
// stand on standard error.
func FactsCSV(w io.Writer, rows []finding.FactRow) error {
	out := csv.NewWriter(w)
	_ = out.Write([]string{"formula", "subject", "name", "value", "low", "high", "unit", "kind",
		"source"})
	number := func(x *float64) string {
		if x == nil {
			return ""
		}
		return strconv.FormatFloat(*x, 'g', -1, 64)
	}
	for _, r := range rows {
		g := r.Figure
		value := number(report.Finite(g.Value, g.Numeric))
		if !g.Numeric {
			value = g.Text
			if len(g.List) > 0 {
				value = strings.Join(g.List, "; ")
			}
		}
		_ = out.Write([]string{cell(r.Formula), cell(r.Subject), g.Name, cell(value),
			number(report.Finite(g.Low, g.Numeric)),
			number(report.Finite(g.High, g.Numeric)), g.Unit,
			g.Kind, cell(r.Source)})
	}
	out.Flush()
	return out.Error()
}

// cell makes a text safe for a cell: a spreadsheet reads one that
// begins with a sign as a formula.
func cell(s string) string {
	s = source.Safe(s)
	if s != "" && strings.ContainsRune("=+-@", rune(s[0])) {
		return "'" + s
	}
	return s
}

type jsonFacts struct {
	head
	Facts []jsonFact `json:"facts"`
}

type jsonFact struct {
	Formula string   `json:"formula"`
	Subject string   `json:"subject"`
	Name    string   `json:"name"`
	Value   any      `json:"value"`
	Low     *float64 `json:"low"`
	High    *float64 `json:"high"`
	Unit    string   `json:"unit"`
	Kind    string   `json:"kind"`
	Source  string   `json:"source"`
}

// FactsJSON prints figures as one object, with the cautions first.
// Unknown figures are null, never 0 or NaN.
func FactsJSON(w io.Writer, run *finding.Run, rows []finding.FactRow) error {
	out := jsonFacts{headOf(factsFormat, run), []jsonFact{}}
	for _, r := range rows {
		g := r.Figure
		out.Facts = append(out.Facts, jsonFact{r.Formula, r.Subject, g.Name, report.FigureValue(&g),
			report.Finite(g.Low, g.Numeric), report.Finite(g.High, g.Numeric), g.Unit, g.Kind,
			r.Source})
	}
	return jsontext.Write(w, jsontext.Filled(out))
}
