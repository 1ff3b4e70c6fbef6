package report

import (
	"fmt"
	"io"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// FactsText prints figures by subject: name, value with unit, how it was got, and what it means; sources stand below, by
// number. Figures that are not known are counted only, unless all are asked for.
func FactsText(w io.Writer, rows []finding.FactRow, all bool) error {
	var b strings.Builder
	unknown := 0
	endSubject := func() {
		if unknown > 0 {
			fmt.Fprintf(&b, "  (%s not given, or without meaning here: name them, or --all)\n", Count(unknown, "figure"))
		}
		unknown = 0
	}
	numbers := map[string]int{}
	var sources []string
	formula, subject := "", ""
	for _, r := range rows {
		if r.Formula != formula || r.Subject != subject {
			endSubject()
			if b.Len() > 0 {
				b.WriteString("\n")
			}
			if r.Formula != formula {
				fmt.Fprintf(&b, "%s\n\n", source.Safe(r.Formula))
			}
			formula, subject = r.Formula, r.Subject
			fmt.Fprintf(&b, "%s\n", source.Safe(subject))
		}
		if r.Figure.Shown == "unknown" && !all {
			unknown++
			continue
		}
		n := numbers[r.Source]
		if n == 0 {
			sources = append(sources, r.Source)
			n = len(sources)
			numbers[r.Source] = n
		}
		kind := r.Figure.Kind
		if r.Figure.Shown == "unknown" {
			kind = "-"
		}
		fmt.Fprintf(&b, "  %-24s %-22s %-11s %s [%d]\n", r.Figure.Name, source.Safe(r.Figure.Shown), kind, source.Safe(r.Means), n)
		if r.Figure.Error != "" {
			fmt.Fprintf(&b, "  %-24s %s; error: %s\n", "", r.Figure.Error, source.Safe(r.Error))
		}
	}
	endSubject()
	if len(sources) > 0 {
		b.WriteString("\nSources\n")
		for i, s := range sources {
			fmt.Fprintf(&b, "  [%d] %s\n", i+1, source.Safe(s))
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
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

// FactsJSON prints figures as one object. Unknown figures are null, never 0 or NaN.
func FactsJSON(w io.Writer, rows []finding.FactRow) error {
	out := struct {
		Facts []jsonFact `json:"facts"`
	}{Facts: []jsonFact{}}
	for _, r := range rows {
		g := r.Figure
		out.Facts = append(out.Facts, jsonFact{r.Formula, r.Subject, g.Name, FigureValue(&g), Finite(g.Low, g.Numeric), Finite(g.High, g.Numeric), g.Unit, g.Kind, r.Source})
	}
	return WriteJSON(w, out)
}
