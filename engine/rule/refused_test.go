package rule

import (
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"forebake/engine/source"
)

// readWhen reads a pack of one rule on doughs with the given condition:
// a quoted text or a heredoc.
func readWhen(when string) (*source.File, source.Problems) {
	return readText(
		"rule \"r\" {\n  on = \"dough\"\n  level = \"note\"\n" +
			"  limits = { sugar_pct = 20, salt_pct = 2 }\n  when = " + when +
			"\n  say = \"s\"\n  why = \"w\"\n  source = \"s\"\n}\n",
	)
}

func readText(text string) (*source.File, source.Problems) {
	f := source.New("p.hcl", []byte(text))
	_, problems := readPack("p", []*source.File{f}, testOptions(true))
	return f, problems
}

func marked(p source.Problem) string { return string(p.Place.File.Text[p.Place.Start:p.Place.End]) }

// checkPlaces fails on a problem that stands outside the file or splits
// a character.
func checkPlaces(t fataler, f *source.File, problems source.Problems) {
	t.Helper()
	for _, p := range problems {
		if p.Text == "" {
			t.Fatalf("a problem without text at %d", p.Place.Start)
		}
		if p.Place.File != f || p.Place.Start < 0 || p.Place.Start > p.Place.End ||
			p.Place.End > len(f.Text) {
			t.Fatalf("%q stands at %d to %d of %d", p.Text, p.Place.Start, p.Place.End, len(f.Text))
		}
		if !utf8.Valid(f.Text) {
			continue // the guard refuses such a file at its first bad byte
		}
		for _, at := range []int{p.Place.Start, p.Place.End} {
			if at < len(f.Text) && !utf8.RuneStart(f.Text[at]) {
				t.Fatalf("%q splits a character at %d", p.Text, at)
			}
		}
	}
}

// Everything that the language leaves out is refused, each at its
// own place.
func TestRefused(t *testing.T) {
	for _, test := range []struct{ when, marked, says string }{
		{`reduce([1, 2], #acc + #) > 1`, `reduce`, "reduce"},
		{`dough.sugar_pct in 1..5`, `..`, `".."`},
		{`dough.sugar_pct % 2 == 0`, `%`, `"%"`},
		{`dough.family matches 'a|b'`, `matches`, `"matches"`},
		{`dough.family contains 'a'`, `contains`, `"contains"`},
		{`dough.family startsWith 'a'`, `startsWith`, `"startsWith"`},
		{`dough.family endsWith 'a'`, `endsWith`, `"endsWith"`},
		{`dough.family + 'x' == 'ax'`, `+`, `"+"`},
		{`dough.allergens[0] == 'milk'`, `[`, "subject.fact"},
		{`[1, 2][0] == 1`, `[`, "subject.fact"},
		{`dough.allergens[0:1] == 'milk'`, `[`, "slices"},
		{`dough.sugar_pct | abs() > 1`, `|`, `"|"`},
		{`dough.sugar_pct | round() > 1`, `|`, `"|"`},
		{`let x = 1; dough.sugar_pct > x`, `x`, "let"},
		{`$env.x > 1`, `$env`, "$"},
		{`$env['x'] > 1`, `[`, "subject.fact"},
		{`len(dough.allergens) > 1`, `len`, `"len"`},
		{`floor(dough.sugar_pct) > 1`, `floor`, `"floor"`},
		{`sum([1, 2]) > 1`, `sum`, `"sum"`},
		{`now() > 1`, `now`, `"now"`},
		{`all(dough.allergens, # == 'x')`, `all`, ""},
		{`any(dough.allergens, {# == 'x'})`, `any`, ""},
		{`dough.sugar_pct == nil`, `nil`, "nil"},
		{`{'a': 1} == 1`, `{`, "{ }"},
		{`dough?.sugar_pct > 1`, `sugar_pct`, `"?."`},
		{`(dough.sugar_pct ?? 1) > 1`, `??`, `"??"`},
		{`dough.sugar_pct ** 2 > 1`, `**`, `"**"`},
		{`dough.sugar_pct ^ 2 > 1`, `^`, ""},
		{`if dough.sugar_pct > 1 { true } else { false }`, `if`, "no if"},
		{`dough.sugar_pct > 1; true`, `true`, `";"`},
		{`dough.sugar_pct = 1`, `=`, "=="},
		{`dough['sugar_pct'] > 1`, ``, "subject.fact"},
		{`dough.sugar_pct.x > 1`, ``, "subject.fact"},
		{`dough.sugar_pct() > 1`, ``, "called"},
		{`dough > 1`, `dough`, "alone"},
		{`limit > 1`, `limit`, "alone"},
		{`sugar > 1`, `sugar`, "single quotes"},
		{`dough.sugar_pct > 'x'`, `>`, "number"},
		{`dough.sugar_pct == 'x'`, `==`, "number"},
		{`dough.family < 'x'`, `<`, "number"},
		{`dough.family == dough.family and dough.sugar_pct`, `and`, "yes-or-no"},
		{`not dough.sugar_pct`, `not`, "yes or no"},
		{`-dough.family == 1`, `-`, "number"},
		{`dough.sugar_pct ? true : false`, ``, "?"},
		{`(dough.sugar_pct > 1 ? 1 : 'x') == 1`, ``, "one kind"},
		{`dough.sugar_pct in ['a']`, `in`, "in"},
		{`dough.sugar_pct in [1, 'a']`, `'a'`, "list"},
		{`dough.sugar_pct in []`, `[`, "list"},
		{`dough.sugar_pct in [dough.salt_pct]`, `salt_pct`, "list"},
		{`dough.allergens == dough.allergens`, `==`, "of a kind"},
		{`1 in dough.allergens`, `in`, "in"},
		{`dough.sugar_pct / 0 > 1`, `/`, "zero"},
		{`dough.sugar_pct > 1e400`, `0`, "1000000000"},
		{`dough.sugar_pct > 1e12`, `1e12`, "1000000000"},
		{`dough.sugar_pct > 0.0000000000001`, `0.0000000000001`, "0.000000001"},
		{`dough.sugar_pct > 99999999999999999999`, `9`, "1000000000"},
		{`known(1)`, `1`, "known"},
		{`known(limit.sugar_pct)`, `sugar_pct`, "known"},
		{`known(dough.sugar_pct > 1)`, `>`, "known"},
		{`known()`, `known`, "takes"},
		{`abs('x') > 1`, `'x'`, "numbers"},
		{`abs(1, 2) > 1`, `abs`, "takes"},
		{`min(1) > 1`, `min`, "takes"},
		{`max(1, dough.has_egg) > 1`, `has_egg`, "numbers"},
		{`dough.sugar_pct`, `"dough.sugar_pct"`, "comparison"},
		{`'a'`, `"'a'"`, "comparison"},
		{``, ``, "empty"},
		{` `, ` `, "empty"},
		{`dough.sugar_pct >`, ``, ""},
		{`(dough.sugar_pct > 1`, ``, ""},
		{`dough.sugar_pct > 1)`, `)`, ""},
		{`dough.sugar_pct > 1 "x"`, ``, ""},
		{`# dough.sugar_pct > 1`, ``, ""},
		{`dough.sugar_pct > 'x`, ``, ""},
		{"dough.sugar_pct > `x`", "", ""},
		{`dough.sugar_pct > 0x10 and dough.sugar_pct < dough.sugr`, `sugr`, "no fact"},
		{`bake.minutes > 1`, `bake`, "subject"},
		{`dough.minutes > 1`, `minutes`, "no fact"},
		{`kitchen.sugar_pct > 1`, `sugar_pct`, "no fact"},
		{`formula.sugar_pct > 1`, `sugar_pct`, "no fact"},
		{strings.Repeat("(", 65) + "1" + strings.Repeat(")", 65) + " > 1", `(`, "deep"},
		{"1" + strings.Repeat(" + 1", 200) + " > 1", "", "parts"},
		{strings.Repeat("dough.flour_g * ", 30) + "1 > 1", "*", "too many figures"},
	} {
		quoted := `"` + strings.NewReplacer(`\`, `\\`, `"`, `\"`, `%{`, `%%{`, `${`, `$${`).
			Replace(test.when) +
			`"`
		f, problems := readWhen(quoted)
		checkPlaces(t, f, problems)
		if len(problems) != 1 {
			t.Errorf("%s: %d problems %v", test.when, len(problems), problems)
			continue
		}
		got := marked(problems[0])
		if !strings.Contains(quoted, got) || test.marked != "" && got != test.marked ||
			!strings.Contains(problems[0].Text, test.says) {
			t.Errorf("%s\n  marks %q, not %q: %s", test.when, got, test.marked, problems[0].Text)
		}
	}
}

// Programs that never end, or kill the process, under the expression
// library's own limits. All are refused when read, at a place inside
// the condition.
func TestHostileConditions(t *testing.T) {
	doubled := "let a0 = [1, 1]"
	for i := range 28 {
		doubled += fmt.Sprintf("; let a%d = [a%d, a%d]", i+1, i, i)
	}
	adding := "let a0 = 'x'"
	for i := range 32 {
		adding += fmt.Sprintf("; let a%d = a%d + a%d", i+1, i, i)
	}
	for _, when := range []string{
		`let a = 1..900000; all(a, all(a, true))`,
		`let a = 1..10000; all(a, all(a, all(a, all(a, true))))`,
		`len(repeat(repeat('x', 900000), 900000)) > 1`,
		`len(reduce(1..40, #acc + #acc, 'x')) > 1`,
		adding + `; len(a32) > 1`,
		`len(replace(repeat('x', 900000), 'x', repeat('y', 90000))) > 1`,
		`len(uniq(1..60000)) > 1`,
		`let a = 1..900000; all(a, # in a)`,
		`repeat('a', 900000) matches '(a?){500}(a?){500}$'`,
		doubled + `; len(toJSON(a28)) > 1`,
		doubled + `; len(string(a28)) > 1`,
		doubled + `; len(flatten(a28)) > 1`,
		`1..1000000000 == 1`, `9 ** 9 ** 9 > 1`,
		`map(1..1000, map(1..1000, #)) == 1`,
		strings.Repeat("(", 490<<10), strings.Repeat("[", 370<<10), strings.Repeat("!", 610<<10),
		strings.Repeat("len(", 200<<10),
		strings.Repeat("(", 4000), strings.Repeat("[", 4000), strings.Repeat("!", 4000),
		strings.Repeat("-", 4000), strings.Repeat("not ", 1000) + "true",
		strings.Repeat("len(", 1000), strings.Repeat("{", 4000), strings.Repeat("a.", 2000) + "a",
		strings.Repeat("true ? ", 600), strings.Repeat("a?.", 1000), strings.Repeat("a|", 2000),
		"true" + strings.Repeat(" || true", 500), strings.Repeat("true ? true : ", 280) + "true",
		strings.Repeat("'", 4000), strings.Repeat("# ", 2000), strings.Repeat("/*", 2000),
		strings.Repeat("if true {", 400), strings.Repeat("let a = ", 500),
		strings.Repeat("abs(", 63) + "1" + strings.Repeat(")", 63) + " > 1" +
			strings.Repeat(" or true", 200),
		"dough.sugar_pct in [" + strings.Repeat("1, ", 65) + "1]",
	} {
		f, problems := readWhen(`"` + when + `"`)
		checkPlaces(t, f, problems)
		start := strings.Index(string(f.Text), "when = ") + len("when = ")
		end := start + len(when) + 2
		if len(problems) == 0 {
			t.Errorf("%.60s is accepted", when)
			continue
		}
		for _, p := range problems {
			if p.Place.Start < start || p.Place.End > end {
				t.Errorf(
					"%.60s: %q stands at %d to %d, outside %d to %d",
					when,
					p.Text,
					p.Place.Start,
					p.Place.End,
					start,
					end,
				)
			}
		}
	}
}

// A misspelt name is marked exactly, behind any escapes, marks and line
// ends, in every way of writing a text.
func TestMisspeltNamesAreMarkedExactly(t *testing.T) {
	misspelt := []struct{ clause, marked, says string }{
		{"dough.sugr_pct > 1", "sugr_pct", "dough.sugar_pct"},
		{"duogh.sugar_pct > 1", "duogh", "dough"},
		{"dough.sugar_pct > limit.sugar_pt", "sugar_pt", "sugar_pct"},
		{"knwon(dough.sugar_pct)", "knwon", "known"},
		{"part.hydraton_pct > 1", "hydraton_pct", "part.hydration_pct"},
		{"kitchen.romm_c > 1", "romm_c", "kitchen.room_c"},
		{"formula.peices > 1", "peices", "formula.pieces"},
	}
	before := []struct{ quoted, plain string }{
		{``, ``},
		{`dough.family == 'a\"b' or `, `dough.family == 'a"b' or `},
		{`dough.family == '\u00e9\t' or `, "dough.family == 'é' or "},
		{`dough.family == 'é' or `, `dough.family == 'é' or `},
		{"dough.family == 'e\u0301o\u0308🥐' or ", "dough.family == 'e\u0301o\u0308🥐' or "},
		{`dough.family == '$${x} %%{y} 5 %' or `, `dough.family == '$${x} %%{y} 5 %' or `},
		{`dough.family == '\\\\' or\n `, "dough.family == 'a' or\n\n   "},
		{`dough.family == '\U0001F950' or\r\n`, "dough.family == 'a' or\n\u3000\t"},
	}
	for _, m := range misspelt {
		for _, b := range before {
			for _, e := range []string{"\n", "\r\n"} {
				for name, when := range map[string]string{
					"quoted":  `"` + b.quoted + m.clause + `"`,
					"heredoc": "<<EOT\n" + b.plain + m.clause + "\nEOT",
					"heredoc, after": "<<EOT\n  dough.salt_pct > 1 and\n" + b.plain + m.clause +
						"\n  and dough.salt_pct > 2\nEOT",
					"flush": "<<-EOT\n    dough.salt_pct > 1 and\n      " + b.plain +
						m.clause + "\n\n    and dough.salt_pct > 2\n  EOT",
					"flush, tabs": "<<-EOT\n\t\t" + b.plain + m.clause + "\n\tEOT",
				} {
					when = strings.ReplaceAll(when, "\n", e)
					f, problems := readWhen(when)
					if len(problems) != 1 {
						t.Errorf("%s %q: %v", name, when, problems)
						continue
					}
					checkPlaces(t, f, problems)
					if got := marked(problems[0]); got != m.marked ||
						!strings.Contains(problems[0].Text, m.says) {
						t.Errorf("%s %q: marks %q: %s", name, when, got, problems[0].Text)
					}
				}
			}
		}
	}
	// In a message, and in the aim of a lever.
	for _, m := range misspelt {
		for _, b := range before {
			for _, text := range []string{
				"rule \"r\" {\n  on = \"dough\"\n  level = \"note\"\n" +
					"  limits = { sugar_pct = 20 }\n  when = \"true\"\n" +
					"  say = \"it \\\" is é {dough.sugar_pct}: {" + b.quoted + m.clause +
					"}, so\"\n  why = \"w\"\n  source = \"s\"\n}\n",
				"rule \"r\" {\n  on = \"dough\"\n  level = \"note\"\n" +
					"  limits = { sugar_pct = 20 }\n  when = \"true\"\n  say = \"s\"\n" +
					"  why = \"w\"\n  source = \"s\"\n  adjust \"sugar\" { to = \"" + b.quoted +
					m.clause + " ? 1 : 2\" }\n}\n",
			} {
				if strings.Contains(b.quoted, "{x}") &&
					strings.Contains(text, "{dough.sugar_pct}: {") {
					continue // a brace inside a figure ends it
				}
				f, problems := readText(text)
				checkPlaces(t, f, problems)
				if len(problems) != 1 || marked(problems[0]) != m.marked {
					t.Errorf("%s: %v", text, problems)
				}
			}
		}
	}
}

// Each fault of a rule block, with the bytes that it marks.
func TestRuleFaults(t *testing.T) {
	block := func(change, to string) string {
		return strings.Replace(
			"rule \"a-rule\" {\n  on = \"dough\"\n  level = \"note\"\n"+
				"  limits = { salt_pct = 2 }\n  when = \"dough.salt_pct > limit.salt_pct\"\n"+
				"  say = \"it is {dough.salt_pct}\"\n  why = \"w\"\n  source = \"s\"\n}\n",
			change,
			to,
			1,
		)
	}
	if _, problems := readText(block("", "")); len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, test := range []struct{ change, to, marked, says string }{
		{`"a-rule"`, `"A rule"`, `"A rule"`, "small letters"},
		{`"a-rule"`, `"a--rule"`, `"a--rule"`, "small letters"},
		{`"a-rule"`, `"` + strings.Repeat("a", 65) + `"`, `"` + strings.Repeat("a", 65) + `"`,
			"small letters"},
		{`"a-rule"`, ``, `rule`, "name"},
		{`"a-rule"`, `" "`, `" "`, "name"},
		{`"dough"`, `"doug"`, `doug`, "dough"},
		{`"dough"`, `["dough", "bake"]`, `bake`, "one sort"},
		{`"dough"`, `[]`, `[]`, "empty"},
		{`"dough"`, `dough`, `dough`, "quotes"},
		{`"note"`, `"notes"`, `notes`, "note"},
		{`salt_pct = 2`, `salt_pct = "two"`, `two`, "number"},
		{`salt_pct = 2`, `salt_pct = 2, salt_pct = 3`, `salt_pct`, "twice"},
		{`salt_pct = 2`, `salt_pct = 1e99`, `1e99`, "number"},
		{`salt_pct = 2`, `salt_pct = 5000000000`, `5000000000`, "between"},
		{`{dough.salt_pct}`, `{dough.salt_pct`, `{`, "never closed"},
		{`{dough.salt_pct}`, `dough.salt_pct}`, `}`, "closes nothing"},
		{`{dough.salt_pct}`, `{}`, ``, "empty"},
		{`{dough.salt_pct}`, `{{dough.salt_pct}}`, `{`, "never closed"},
		{`{dough.salt_pct}`, `${dough.salt_pct}`, `"it is ${dough.salt_pct}"`, "plain text"},
		{`source = "s"`, `source = "s"` + "\n  doubt = \"maybe\"", `maybe`, "flag"},
		{`source = "s"`, `source = "s"` + "\n  levle = \"note\"", `levle`, "level"},
		{`source = "s"`, `source = "s"` + "\n  adjust \"suger\" { to = \"1\" }",
			`"suger"`, "sugar"},
		{`source = "s"`, `source = "s"` + "\n  adjust \"sugar\" { within = [3, 1] }", `[3, 1]`,
			"lowest"},
		{`source = "s"`, `source = "s"` + "\n  adjust \"sugar\" { within = [1] }", `[1]`, "lowest"},
		{`source = "s"`, ``, `"a-rule"`, "no source"},
		{`why = "w"`, ``, `"a-rule"`, "no why"},
		{`say = "it is {dough.salt_pct}"`, ``, `"a-rule"`, "no say"},
		{`when = "dough.salt_pct > limit.salt_pct"`, ``, `"a-rule"`, "no when"},
		{`on = "dough"`, ``, `"a-rule"`, "no on"},
	} {
		f, problems := readText(block(test.change, test.to))
		checkPlaces(t, f, problems)
		if len(problems) < 1 || len(problems) > 2 || marked(problems[0]) != test.marked ||
			!strings.Contains(problems[0].Text, test.says) {
			got := ""
			if len(problems) > 0 {
				got = marked(problems[0])
			}
			t.Errorf("%s for %s: marks %q: %v", test.to, test.change, got, problems)
		}
	}
	f, problems := readText(block("", "") + block("", ""))
	checkPlaces(t, f, problems)
	if len(problems) != 1 || !strings.Contains(problems[0].Text, "twice") {
		t.Errorf("one rule twice: %v", problems)
	}
}
