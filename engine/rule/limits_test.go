package rule

import (
	"fmt"
	"strings"
	"testing"

	"forebake/engine/expr"
	"forebake/engine/source"
	"forebake/engine/trial"
)

// Every limit of a pack is tried at, under and over.
func TestLimits(t *testing.T) {
	one := func(id, limits, when, say, why string) string {
		return fmt.Sprintf(
			"rule %q {\n  on     = \"dough\"\n  level  = \"note\"\n  limits = { %s }\n"+
				"  when   = %q\n  say    = %q\n  why    = %q\n  source = \"s\"\n}\n",
			id,
			limits,
			when,
			say,
			why,
		)
	}
	rules := func(n int) string {
		var b strings.Builder
		for i := range n {
			b.WriteString(one(fmt.Sprintf("r%d", i), "", "dough.mass_g > 0", "s", "w"))
		}
		return b.String()
	}
	limits := func(n int) string {
		var names []string
		for i := range n {
			names = append(names, fmt.Sprintf("l%d = 1", i))
		}
		return one("r", strings.Join(names, ", "), "dough.mass_g > 0", "s", "w")
	}
	when := func(text string) string { return one("r", "", text, "s", "w") }
	for _, test := range []struct {
		what string
		most int
		text func(n int) string
		says string
	}{
		{"rules", MaxRules, rules, "501 rules; 500 is the most"},
		{"limits", MaxLimits, limits, "17 limits in one rule; 16 is the most"},
		{"bytes of a condition", expr.MaxBytes, func(n int) string {
			return when("dough.mass_g > 0" + strings.Repeat(" ", n-16))
		}, "longer than 4096"},
		{"brackets", expr.MaxDepth, func(n int) string {
			return when(strings.Repeat("(", n) + "dough.mass_g > 0" + strings.Repeat(")", n))
		}, "more than 64 deep"},
		{"items of a list", expr.MaxListItems, func(n int) string {
			return when("dough.mass_g in [" + strings.Repeat("1, ", n-1) + "1]")
		}, "1 to 64 items"},
		{"bytes of say", MaxTextBytes, func(n int) string {
			return one("r", "", "dough.mass_g > 0", strings.Repeat("s", n), "w")
		}, "say is 4097 bytes long; 4096 is the most"},
		{"bytes of why", MaxTextBytes, func(n int) string {
			return one("r", "", "dough.mass_g > 0", "s", strings.Repeat("w", n))
		}, "why is 4097 bytes long; 4096 is the most"},
		{"figures", MaxFigures, func(n int) string {
			return one("r", "", "dough.mass_g > 0", strings.Repeat("{dough.mass_g}", n), "w")
		}, "say holds more than 32 figures"},
		{"figures of a pack", expr.MaxDeclared, func(n int) string {
			var b strings.Builder
			for i := range n {
				b.WriteString(block(fmt.Sprintf("fig%d", i), "dough", "dough.mass_g", ""))
			}
			return b.String()
		}, "more than 100 figures are declared"},
		{"bytes of means", expr.MaxMeansBytes, func(n int) string {
			return strings.Replace(block("fig", "dough", "dough.mass_g", ""), `"m"`,
				`"`+strings.Repeat("m", n)+`"`, 1)
		}, "means is 257 bytes long; 256 is the most"},
		{"cases", trial.MaxCases, func(n int) string {
			var cases []string
			for i := range n {
				cases = append(cases, fmt.Sprintf("\"%d g\" = \"clear\"", i+1))
			}
			return "trial \"t\" {\n  rule = \"r\"\n  cases = { " + strings.Join(cases, ", ") +
				" }\n  formula \"t\" {\n" +
				"    dough \"d\" { ingredients = { \"salt\" = \"$case\" } }\n  }\n}\n"
		}, "65 cases in one trial; 64 is the most"},
		{"bytes of a pack", MaxPackBytes, func(n int) string {
			text := rules(1)
			return text + "#" + strings.Repeat("x", n-len(text)-2) + "\n"
		}, "at most 1024 KB are read"},
	} {
		for _, n := range []int{test.most - 1, test.most, test.most + 1} {
			_, problems := readPack(
				"p",
				[]*source.File{source.New("p.hcl", []byte(test.text(n)))},
				testOptions(true),
			)
			over := false
			for _, p := range problems {
				over = over || strings.Contains(p.Text, test.says)
			}
			if over != (n > test.most) || n <= test.most && len(problems) > 0 {
				t.Errorf("%d %s: %.300v", n, test.what, problems)
			}
		}
	}
	// The nodes of a condition are the parser's to count: one more node
	// than the last length that reads is refused.
	read := func(terms int) source.Problems {
		_, problems := readPack(
			"p",
			[]*source.File{
				source.New("p.hcl", []byte(when("dough.mass_g > 0"+strings.Repeat(" + 1", terms)))),
			},
			testOptions(false),
		)
		return problems
	}
	fits := 0
	for len(read(fits+1)) == 0 {
		fits++
	}
	if says := read(fits + 1); fits < expr.MaxNodes/2-5 || fits > expr.MaxNodes/2 ||
		!strings.Contains(says[0].Text, "more than 256 parts") {
		t.Errorf("%d terms read, and then %v", fits, says)
	}
}
