package scale

import (
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/finding"
	"forebake/engine/spelling"
)

// sized finds a figure that grows with a batch: a weight, a volume, a
// number of pieces, the sides of a sheet. Percentages, temperatures and
// times stay true at any size.
var sized = spelling.Pattern(`(?i)\d\s*(kg|g|mg|ml|l|oz|lb|pieces?|loaves|buns|tins?|trays?|` +
	`eggs?)\b|\d\s*x\s*\d`)

// Comments lists the comments of some lines of a text that give a
// figure of its old size. The program cannot read them, and leaves them
// as they are.
func Comments(text []byte, from, to int) []finding.Doubted {
	var out []finding.Doubted
	tokens, _ := hclsyntax.LexConfig(text, "", hcl.InitialPos)
	for _, t := range tokens {
		line := t.Range.Start.Line
		is := t.Type == hclsyntax.TokenComment && line >= from && line <= to
		if is && sized.Match(t.Bytes) {
			out = append(out, finding.Doubted{Line: line, Text: strings.TrimSpace(string(t.Bytes))})
		}
	}
	return out
}
