package page

import (
	"fmt"
	"io"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/jsontext"
	"forebake/engine/report"
	"forebake/engine/source"
)

// Cost prints the tally of the cautions, and for each formula what it
// costs and what its label lists.
func Cost(w io.Writer, run *finding.Run, list []finding.Costing, o report.Options) error {
	t := newText(w, o)
	t.figuresHead(run)
	for i := range list {
		t.costing(&list[i])
	}
	return t.End()
}

func (t *text) costing(c *finding.Costing) {
	t.WriteString(t.Bold(source.Safe(c.Formula)) + "\n\n")
	rows := [][]string{{"", "weight", "price", "cost", ""}}
	for _, r := range c.Rows {
		price, cost := r.Price, r.Cost
		if price == "" {
			price, cost = "no price", "-"
		}
		rows = append(rows, []string{source.Safe(r.Name), r.Weight, price, cost, ""})
	}
	t.table(rows)
	t.WriteString("\n")
	t.Paragraph(sumText(c), "  ", "    ")
	if len(c.Unpriced) > 0 {
		var names []string
		for _, name := range c.Unpriced {
			names = append(names, source.Safe(name))
		}
		t.Paragraph("No price is named for "+strings.Join(names, ", ")+". Name them in "+
			"house.hcl: prices = { "+fmt.Sprintf("%q", names[0])+" = \"... per kg\" }",
			"  ", "    ")
	}
	for _, note := range c.Notes {
		t.Paragraph(source.Safe(note), "  ", "    ")
	}
	t.WriteString("\n")
	for _, l := range c.Labels {
		t.Paragraph("Label, "+l.Law+": "+source.Safe(l.List), "  ", "    ")
		if l.Contains != "" {
			t.Paragraph(source.Safe(l.Contains), "    ", "    ")
		}
		if len(l.Assumed) > 0 {
			t.Paragraph("Assumed: "+source.Safe(strings.Join(l.Assumed, "; "))+".", "    ", "    ")
		}
		t.Paragraph("Source: "+source.Safe(l.Source)+".", "    ", "    ")
		t.WriteString("\n")
	}
	t.Paragraph("A draft for your label, and no label: names, sub-lists, quantities and traces "+
		"are for you to settle.", "  ", "    ")
	t.WriteString("\n")
}

// sumText words the sum, and what it leaves out.
func sumText(c *finding.Costing) string {
	if c.Sum == nil {
		return "Cost: not known; no ingredient has a price."
	}
	money := func(e *finding.Ends) string {
		switch f := e.Finite(); {
		case f == nil:
			return fmt.Sprintf("over %.2f", e.Low)
		case fmt.Sprintf("%.2f", f.Low) != fmt.Sprintf("%.2f", f.High):
			return fmt.Sprintf("%.2f to %.2f", f.Low, f.High)
		}
		return fmt.Sprintf("%.2f", e.Mid)
	}
	text := "Cost of the batch: "
	if !c.Whole {
		text = "Cost of what has a price: "
	}
	text += money(c.Sum)
	if c.PerPiece != nil {
		text += fmt.Sprintf(", for %s %s each", c.Pieces, money(c.PerPiece))
	}
	if !c.Whole {
		text += "; the rest comes on top"
	}
	return text + "."
}

type jsonCosts struct {
	head
	Costs []jsonCost `json:"costs"`
}

type jsonCost struct {
	Formula  string        `json:"formula"`
	Line     int           `json:"line"`
	Sum      *finding.Ends `json:"cost"`
	PerPiece *finding.Ends `json:"cost_per_piece"`
	Whole    bool          `json:"all_priced"`
	Unpriced []string      `json:"no_price"`
	Items    []jsonItem    `json:"ingredients"`
	Labels   []jsonLabel   `json:"labels"`
	Notes    []string      `json:"notes"`
}

type jsonItem struct {
	Name  string        `json:"name"`
	Grams *finding.Ends `json:"grams"`
	Price string        `json:"price"`
}

type jsonLabel struct {
	Law      string   `json:"law"`
	List     string   `json:"ingredients"`
	Contains string   `json:"contains"`
	Assumed  []string `json:"assumed"`
	Source   string   `json:"source"`
}

// CostJSON prints the same as one object, with the cautions first.
// Figures that are not known are null.
func CostJSON(w io.Writer, run *finding.Run, list []finding.Costing) error {
	out := jsonCosts{headOf(costFormat, run), []jsonCost{}}
	for i := range list {
		c := &list[i]
		one := jsonCost{c.Formula, c.Line, c.Sum.Finite(), c.PerPiece.Finite(), c.Whole,
			append([]string{}, c.Unpriced...), []jsonItem{}, []jsonLabel{},
			append([]string{}, c.Notes...)}
		for _, r := range c.Rows {
			one.Items = append(one.Items, jsonItem{r.Name, r.Grams.Finite(), r.Price})
		}
		for _, l := range c.Labels {
			one.Labels = append(one.Labels, jsonLabel(l))
		}
		out.Costs = append(out.Costs, one)
	}
	return jsontext.Write(w, jsontext.Filled(out))
}
