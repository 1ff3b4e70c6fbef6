package rule

import (
	"strings"
	"testing"

	"forebake/engine/source"
)

const middlePack = `
about = "a"
%s
rule "short" {
  on     = "dough"
  level  = "risk"
  limits = { e = 0.9 }
  when   = "dough.ferment_e < limit.e"
  doubt  = "middle"
  say    = "{dough.ferment_e}"
  why    = "w"
  source = "s"
}
`

// middleOf reads the pack with a line at its head.
func middleOf(head string) (*Pack, source.Problems) {
	text := strings.Replace(middlePack, "%s", head, 1)
	return readPack("p", []*source.File{source.New("p.hcl", []byte(text))}, testOptions(true))
}

// A food-safety rule may not go by the middle of a model.
func TestSafetyNeverGoesByTheMiddle(t *testing.T) {
	_, problems := middleOf("food_safety = true")
	if len(problems) != 1 || !strings.Contains(problems[0].Text, "unfavourable end") {
		t.Fatal(problems)
	}
	p, problems := middleOf("")
	if len(problems) > 0 || !p.Rules[0].Middle || p.Rules[0].Doubt {
		t.Fatal(problems)
	}
}
