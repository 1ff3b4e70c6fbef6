package page

import (
	"fmt"
	"io"

	"forebake/engine/finding"
	"forebake/engine/jsontext"
	"forebake/engine/report"
	"forebake/engine/source"
)

// Mix prints the tally of the cautions, and for each mix the one
// answer, its error, and how it was reckoned.
func Mix(w io.Writer, run *finding.Run, list []finding.Mix, o report.Options) error {
	t := newText(w, o)
	t.figuresHead(run)
	formula := ""
	for i := range list {
		m := &list[i]
		if m.Formula != formula {
			formula = m.Formula
			fmt.Fprintf(t, "%s\n\n", t.Bold(source.Safe(formula)))
		}
		t.mix(m)
	}
	return t.End()
}

func (t *text) mix(m *finding.Mix) {
	head := fmt.Sprintf("%s, mix at line %d", source.Safe(m.Part), m.Line)
	if m.Aim != "" {
		head += ", to end at " + m.Aim
	}
	t.WriteString(head + "\n")
	if m.Liquid != "" {
		t.Paragraph("Liquid: "+source.Safe(m.Liquid)+".", "  ", "    ")
	}
	if m.Silent != "" {
		t.Paragraph("No answer: "+source.Safe(m.Silent)+".", "  ", "    ")
	} else {
		t.Paragraph(t.Bold(source.Safe(m.Answer)), "  ", "    ")
		t.Paragraph("Within the error: "+m.Error+".", "  ", "    ")
	}
	for _, note := range m.Notes {
		t.Paragraph(source.Safe(note), "  ", "    ")
	}
	if m.Silent == "" || len(m.Goods) > 0 && m.Aim != "" {
		t.WriteString("  Reckoned by a heat balance of\n")
		rows := [][]string{}
		for _, g := range m.Goods {
			rows = append(rows, []string{"  " + source.Safe(g.Name), g.Weigh, g.Temp, g.From})
		}
		if m.Warming != "" {
			rows = append(rows, []string{"  the mixing adds", "", m.Warming, ""})
		}
		t.table(rows)
	}
	if m.Check != "" {
		t.Paragraph("Check: "+source.Safe(m.Check)+". It counts the room and leaves out cold "+
			"eggs, milk and fat.", "  ", "    ")
	}
	t.WriteString("\n")
}

type jsonMixes struct {
	head
	Mixes []jsonMix `json:"mixes"`
}

type jsonMix struct {
	Formula  string        `json:"formula"`
	Part     string        `json:"part"`
	Line     int           `json:"line"`
	Answer   *string       `json:"answer"`
	Silent   *string       `json:"silent"`
	LiquidC  *finding.Ends `json:"liquid_c"`
	IceG     *finding.Ends `json:"ice_g"`
	FactorC  *finding.Ends `json:"liquid_by_factor_c"`
	Warnings []string      `json:"notes"`
}

// MixJSON prints the same as one object, with the cautions first.
// Figures that are not known are null.
func MixJSON(w io.Writer, run *finding.Run, list []finding.Mix) error {
	out := jsonMixes{headOf(mixFormat, run), []jsonMix{}}
	for i := range list {
		m := &list[i]
		one := jsonMix{m.Formula, m.Part, m.Line, nil, nil, m.LiquidC.Finite(), m.IceG.Finite(),
			m.FactorC.Finite(), append([]string{}, m.Notes...)}
		if m.Silent != "" {
			one.Silent = &m.Silent
		} else {
			one.Answer = &m.Answer
		}
		out.Mixes = append(out.Mixes, one)
	}
	return jsontext.Write(w, jsontext.Filled(out))
}
