package rule

import (
	"strings"
	"testing"
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
	_, problems := readPack(t, strings.Replace(middlePack, "%s", "food_safety = true", 1))
	if len(problems) != 1 || !strings.Contains(problems[0].Text, "unfavourable end") {
		t.Fatal(problems)
	}
	p, problems := readPack(t, strings.Replace(middlePack, "%s", "", 1))
	if len(problems) > 0 || !p.Rules[0].Middle || p.Rules[0].Doubt {
		t.Fatal(problems)
	}
}
