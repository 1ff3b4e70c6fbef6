package report

import (
	"strings"
	"testing"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// TestColumnsOfSummary prints formulas of short and long names: names
// and findings each begin in one column, on any screen width.
func TestColumnsOfSummary(t *testing.T) {
	group := func(file, name string, levels ...finding.Level) finding.Group {
		g := finding.Group{Name: name, File: file,
			Place: source.Place{File: source.New(file, []byte("formula")), End: 7}}
		for _, l := range levels {
			g.List = append(g.List, &finding.Finding{Level: l, Answer: finding.Flagged})
		}
		return g
	}
	list := []finding.Group{
		group("kitchen/second-draft.hcl", "Plait of the house, second draft", finding.Stop),
		group("kitchen/first.hcl", "Plait", finding.Stop, finding.Risk, finding.Risk, finding.Note),
		group("kitchen/kouign.hcl", "Gâteau à la crème, très très long", finding.Note),
	}
	for _, c := range []struct {
		width int
		more  []finding.Group
	}{{60, nil}, {80, nil}, {120, nil},
		{80, []finding.Group{group(strings.Repeat("deep/", 20)+"a.hcl", "Deep", finding.Risk)}}} {
		page := textOf(nil, Options{Width: c.width})
		page.columns(append(list[:len(list):len(list)], c.more...))
		rows := strings.Split(page.String(), "\n")
		for i, names := range []string{"Plait", "Plait", "Gât"} {
			at := func(row, text string) int {
				before, _, _ := strings.Cut(row, text)
				return len([]rune(before))
			}
			row, first := rows[i], rows[0]
			if at(row, names) != at(first, "Plait") || at(row, "  1 ") != at(first, "  1 ") ||
				len([]rune(row)) > c.width {
				t.Errorf("within %d columns:\n%s", c.width, page)
				break
			}
		}
	}
}
