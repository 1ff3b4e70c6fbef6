package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"strings"
	"testing"

	"forebake/engine/report"
)

// hostileText is what somebody could put into any text of a file:
// terminal escapes, bidirectional text, HTML, a link, a mention, a
// table's bar, a fence, a placeholder, a fake caution, a build
// server's command.
const hostileText = "\x1b[31mred\x1b]0;t\a\u202eturned\u2066 <script>alert(1)</script> " +
	"[l](http://x.example) @team #12 | a `b` {0} </details> --> \u2028 ::error::x \r\n" +
	"z.hcl:1:1: caution: none"

// hcl writes a text as a quoted text of a file.
func hcl(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r == '"' || r == '\\':
			b.WriteString("\\" + string(r))
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\r':
			b.WriteString(`\r`)
		case r < ' ':
			fmt.Fprintf(&b, "\\u%04x", r)
		default:
			b.WriteRune(r)
		}
	}
	return "\"" + b.String() + "\""
}

// hostileFolder writes formulas, a house and a pack in which every free
// text is hostile.
func hostileFolder(t *testing.T) {
	t.Helper()
	h := hcl(hostileText)
	braceless := hcl(
		strings.NewReplacer("{0}", "").Replace(hostileText),
	) // figures of a message stand in braces
	formula := "formula " + h + " {\n  about = " + h + "\n  makes = \"24 pieces\"\n  dough " + h +
		" {\n    ingredients = {\n      \"bread flour\" = \"?\"\n" +
		"      \"water\" = { amount = \"300 g\", note = " + h + ", as = " + h +
		" }\n      " + h + " = \"10 g to 90 g\"\n      \"egg\" = \"50 g\"\n    }\n" +
		"    steps = [{ mix = \"5 min\" }, { rest = \"1 h\", at = \"room\" }, { fill = " + hcl(
		"x"+hostileText,
	) + " }, { bake = \"20 min\", at = \"200 C\", note = " + h + ", tin = " + h +
		" }]\n  }\n  filling " +
		hcl(
			"x"+hostileText,
		) + " {\n    ingredients = { \"whole milk\" = \"100 g\" }\n" +
		"    steps = [{ cool = \"9 h\", at = \"room\" }]\n  }\n}\n"
	rule := func(id, when, more string) string {
		return "rule \"" + id + "\" {\n  on = \"part\"\n  level = \"stop\"\n  when = \"" + when +
			"\"\n  say = " + braceless + "\n  why = " + h + "\n  source = " + h + "\n" +
			more + "}\n"
	}
	// What a figure is has texts in single quotes; what it means is
	// one line.
	oneLine := strings.NewReplacer("\r", "", "\n", " ").Replace(hostileText)
	figure := func(name, is string) string {
		return "figure \"" + name + "\" {\n  on = \"part\"\n  is = " + hcl(
			is,
		) + "\n  means = " + hcl(
			oneLine,
		) + "\n}\n"
	}
	folder(t, map[string]string{
		"a.hcl":                        formula,
		"b.hcl":                        strings.Replace(formula, "300 g", "400 g", 1),
		"c/\u202ed |<b>`@x [l](y).hcl": strings.Replace(formula, "300 g", "500 g", 1),
		"broken/\u202e\x1b[31m.hcl": "formula " + h + " {\n  dough " + h +
			" {\n    ingredients = { " + h + " = " + hcl(
			"7 "+hostileText,
		) + " }\n  " + "}\n  familyx = " + h + "\n}\n",
		"house.hcl": "house " + h + " {\n  packs = [\"./own.hcl\", \"draft\", \"balance\"]\n" +
			"  ingredient " + h + " {\n    like = \"sugar\"\n  }\n  tin " + h +
			" {\n    inside = \"300 x 100 x 100 mm\"\n  }\n  set \"own-two\" {\n" +
			"    limits = { a_h = 3 }\n    because = " +
			h + "\n  }\n  waive \"own-one\" {\n    because = " + h +
			"\n  }\n  waive \"salt-low\" {\n    because = " + h + "\n    formula = " + h +
			"\n    until = " + h + "\n  }\n}\n",
		"own.hcl": "about = " + h + "\nfood_safety = true\n" + rule(
			"own-one",
			"part.mass_g >= 0",
			"",
		) + rule(
			"own-two",
			"part.mass_g > limit.a_h and part.own_word != 'x'",
			"  limits = { a_h = 2 }\n",
		) +
			figure(
				"own_word",
				"part.name == '"+oneLine+"' ? 'a' : '"+oneLine+"'",
			) + figure(
			"own_share",
			"part.fat_g / part.mass_g",
		) +
			"trial " + hcl(
			"x"+hostileText,
		) + " {\n  rule = \"own-one\"\n  cases = { " + h + " = \"clear\" }\n  formula " + h +
			" {\n    dough \"$case\" { ingredients = { \"water\" = \"9 g\" } }\n  }\n}\n" +
			"trial " + h + " {\n  rule = \"own-one\"\n  expect = \"clear\"\n  formula " + h +
			" {\n    dough " + h + " { ingredients = { \"water\" = \"9 g\" } }\n  }\n}\n",
	})
}

// bareLink is a link that Markdown would lay out, its
// bracket unescaped.
var bareLink = regexp.MustCompile(`[^\\]\]\(`)

// codeSpan is text in backticks, in which Markdown reads no markup.
var codeSpan = regexp.MustCompile("`[^`\n]*`")

// TestInjection runs every verb in every format over hostile texts:
// nothing that a screen obeys gets out, no line of theirs passes for
// the program's, and Markdown holds none of their HTML.
func TestInjection(t *testing.T) {
	hostileFolder(t)
	if err := os.WriteFile("backlog.txt",
		[]byte("backlog "+hcl(hostileText)+" {\n  formula "+hcl(hostileText)+
			" {\n    known = [{ rule = \"gone\", on = "+hcl(hostileText)+" }]\n  }\n}\n"),
		0o666); err != nil {
		t.Fatal(err)
	}
	_ = exec.Command("git", "init", "-q").Run() // without it compare has a complaint of its own
	stdin, err := os.ReadFile("a.hcl")
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile("scaled.hcl", stdin, 0o666); err != nil {
		t.Fatal(err)
	}
	good := []string{"a.hcl", "b.hcl", "c"}
	broken, hostileName := "broken", "\x1b[31m\u202e|<b>.hcl"
	runs := [][]string{
		{
			"mend",
			"a.hcl",
		}, {"mend", "--taste", "--name", hostileName, "-"}, {"compare", "a.hcl", "b.hcl"},
		{"compare", "HEAD" + hostileText + ":a.hcl", "a.hcl"}, {"compare", hostileText, "a.hcl"},
		{
			"facts",
			"a.hcl",
		}, {"facts", "--all", "a.hcl"}, {"facts", "--history", "a.hcl"},
		{"facts", "--as", "json", "a.hcl"}, {"facts", hostileText}, {"facts", "--list"},
		{
			"facts",
			"a.hcl",
			"own_word",
			"own_share",
		}, {"facts", "--list", "--as", "markdown"}, {"facts", "--list", "--as", "json"},
		{"__complete", "facts", "a.hcl", ""}, {"__complete", "trial", ""},
		{
			"why",
			"own-one",
		}, {"why", "own-two"}, {"why", hostileText}, {"packs"}, {"packs", "--as", "markdown"},
		{"packs", "--write", hostileText + "/x"}, {"trial"}, {"trial", hostileText},
		{
			"check",
			"--as",
			hostileText,
			"a.hcl",
		}, {"check", "--fail-at", hostileText, "a.hcl"}, {"check", "--color", hostileText},
		{"check", "--write-backlog", "none" + hostileText + "/x", "a.hcl"},
		{
			"check",
			"--backlog",
			hostileText,
			"a.hcl",
		}, {"check", hostileText}, {hostileText}, {"check", "--" + hostileText},
		{"check", "--timing", "a.hcl"}, {"completion", hostileText}, {"__complete", "why", ""},
		{"__complete", "check", ""},
		{
			"mend",
			broken,
		}, {"facts", broken}, {"check", "--as", "json:none" + hostileText + "/x", "a.hcl"},
		{"plan", "b.hcl", "c", "--ready", "07:00"}, {"plan", "a.hcl", "--ready", hostileText},
		{"sheet", "a.hcl"}, {"sheet", "a.hcl", "--as", "markdown"},
		{"sheet", "a.hcl", "--as", "text"},
		{"sheet", broken}, {"sheet", "a.hcl", "--as", hostileText},
		{"log", "a.hcl", "--new", "--size", hostileText}, {"log", "a.hcl", "--note", hostileText},
		{"log", "a.hcl", "--step", "1", "--read", "24 C", "--note", hostileText},
		{"log", "a.hcl", "--step", "2", "--read", hostileText},
		{"log", "a.hcl", "--mark", hostileText},
		{"log", "a.hcl", "--formula", hostileText, "--mark", hostileText + "=4"},
		{"compare", "a.hcl"},
	}
	runs = append(runs,
		[]string{"scale", "scaled.hcl", "--pieces", "48", "--write"},
		[]string{"scale", "a.hcl", "--pieces", hostileText},
		[]string{"scale", "a.hcl", "--pieces", "4", "--formula", "no" + hostileText},
		[]string{"scale", broken, "--pieces", "4"},
		[]string{"mix", "a.hcl"}, []string{"mix", "a.hcl", "--as", "json"},
		[]string{"mix", "a.hcl", "--room", hostileText},
		[]string{"cost", "a.hcl"}, []string{"cost", "a.hcl", "--as", "json"},
		[]string{"cost", "a.hcl", "--formula", hostileText},
		[]string{"begin", hostileText},
	)
	for _, format := range report.FormatNames() {
		runs = append(
			runs,
			append([]string{"check", "--as", format}, good...),
			[]string{"check", "--as", format, "--backlog", "backlog.txt", "a.hcl"},
			[]string{
				"check",
				"--as",
				format,
				"--name",
				hostileName,
				"-",
			},
			[]string{"check", "--as", format, broken, "a.hcl"},
		)
	}
	for _, args := range runs {
		status := heldClean(t, args, stdin)
		if plain := strings.Join(args, " "); status == exitUnused &&
			!strings.Contains(plain, hostileText) &&
			!strings.Contains(plain, broken) {
			t.Errorf("%q is not judged", args)
		}
	}
}

// heldClean runs a verb and holds that its print obeys nothing in its
// files. It gives the exit status.
func heldClean(t *testing.T, args []string, stdin []byte) int {
	t.Helper()
	var out, errs bytes.Buffer
	status := run(args, bytes.NewReader(stdin), &out, &errs)
	if out.Len()+errs.Len() == 0 {
		t.Errorf("%q says nothing", args)
	}
	for where, text := range map[string]string{
		"standard output": out.String(),
		"standard error":  errs.String(),
	} {
		if args[0] == "__complete" {
			text = strings.ReplaceAll(
				text,
				"\t",
				" ",
			) // between a word and its meaning, as the shells' scripts want it
		}
		if bad := unclean(text); bad != "" {
			t.Errorf("%.80q: %s: %s", args, where, bad)
		}
		for _, line := range strings.Split(text, "\n") {
			if strings.HasPrefix(line, "z.hcl:") || strings.HasPrefix(line, "::error") {
				t.Errorf(
					"%.80q: %s: a line of the file's stands as one of the program's: %q",
					args,
					where,
					line,
				)
			}
		}
		text = codeSpan.ReplaceAllString(text, "")
		if strings.Contains(strings.Join(args, " "), "markdown") &&
			(strings.Contains(text, "<script") || strings.Contains(text, "<b>") ||
				bareLink.MatchString(text)) &&
			where == "standard output" {
			t.Errorf("%.80q: markup of the file's in %s", args, text)
		}
	}
	if len(args) > 2 && args[2] == "sarif" && out.Len() > 0 {
		readSARIF(t, out.String())
	}
	return status
}
