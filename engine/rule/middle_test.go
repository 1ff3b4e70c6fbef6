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

// A food-safety rule may not go by the middle of a model.
func TestSafetyNeverGoesByTheMiddle(t *testing.T) {
	read := func(safety string) (*Pack, source.Problems) {
		text := strings.Replace(middlePack, "%s", safety, 1)
		return readPack("p", []*source.File{source.New("p.hcl", []byte(text))}, testOptions(false))
	}
	_, problems := read("food_safety = true")
	if len(problems) != 1 || !strings.Contains(problems[0].Text, "unfavourable end") {
		t.Fatal(problems)
	}
	p, problems := read("")
	if len(problems) > 0 || !p.Rules[0].Middle || p.Rules[0].Doubt {
		t.Fatal(problems)
	}
}
