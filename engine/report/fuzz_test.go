package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"
	"unicode"
	"unicode/utf16"
	"unicode/utf8"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"forebake/engine/finding"
	"forebake/engine/layout"
	"forebake/engine/sariflog"
	"forebake/engine/source"
)

// fuzzRun makes a run in which the fuzzer chooses every text from a
// file: a formula with a caution, findings of all answers, a mend,
// figures, what a house loosens and leaves out, a problem and a notice.
// The places are two offsets into the file's text, also the fuzzer's.
func fuzzRun(text []byte, from, to int, name, word, prose string) *finding.Run {
	file := source.New(name, text)
	from, to = max(0, min(from, len(text))), max(0, min(to, len(text)))
	for from > 0 && from < len(text) && !utf8.RuneStart(text[from]) {
		from--
	}
	for to > 0 && to < len(text) && !utf8.RuneStart(text[to]) {
		to--
	}
	at := source.Place{File: file, Start: min(from, to), End: max(from, to)}
	run := &finding.Run{
		Version: "0.1.0",
		Cautions: []*finding.Caution{
			{
				Kind:    "raw",
				Text:    "Raw. " + prose,
				Detail:  word,
				Source:  "common practice",
				Formula: word,
				Place:   at,
			},
			{
				Kind:    "heat",
				Rank:    1,
				Text:    "Hot.",
				Source:  "common practice",
				Formula: word,
				Place:   at,
			},
		},
		Formulas: []finding.Formula{{Name: word, Place: at}, {Name: prose, Place: at}},
		Loosened: []finding.Loosened{
			{
				Rule:    "r",
				Pack:    name,
				What:    "limit " + word,
				From:    "1 h",
				To:      "2 h",
				Because: prose,
				Place:   at,
			},
		},
		Unchecked: []finding.Unchecked{{Pack: word, Place: at}},
		Notices:   []string{prose},
		Problems:  source.Problems{{Place: at, Text: prose, Paste: word}, {Text: word}},
		Cards: func() []finding.Card {
			return []finding.Card{
				{
					ID:      "r",
					Pack:    name,
					Level:   "stop",
					On:      "dough",
					When:    prose,
					Say:     prose,
					Why:     prose,
					Source:  word,
					Because: prose,
					File:    name,
					Line:    3,
					Safety:  true,
					Limits:  []finding.CardLimit{{Name: "a", Shown: "1 h", From: word, By: word}},
				},
			}
		},
	}
	run.Totals.Formulas, run.Totals.Rules = len(run.Formulas), 1
	figures := []*finding.Figure{
		{
			Name:    "dough.x",
			Label:   "x",
			Shown:   "1 g",
			Value:   1,
			Low:     1,
			High:    1,
			Numeric: true,
			Place:   at,
		},
		{
			Name:  "dough.name",
			Label: "name",
			Shown: word,
			Text:  word,
			Place: at,
		}, {Name: "dough.allergens", Label: "allergens", Shown: prose, List: []string{prose, word}},
	}
	for i, f := range []finding.Finding{{Answer: finding.Flagged},
		{Answer: finding.Unsure, Level: finding.Risk, Reason: prose},
		{Answer: finding.Waived, Because: prose, Until: word, By: at},
		{Answer: finding.Waived, Level: finding.Note, Because: prose, By: at, Safety: true},
		{Answer: finding.Flagged, Level: finding.Note, Doubt: true, Reason: prose, Safety: true}} {
		f.Rule, f.Pack, f.Formula, f.Subject, f.Place, f.Text, f.Why, f.Source = fmt.Sprintf(
			"r%d",
			i%3,
		), name, word, "dough \""+word+"\"", at, prose, prose, word
		f.Figures, f.Needs, f.Mends = figures, []string{
			word,
		}, []finding.Mend{
			{Text: prose, Trust: "exact"},
		}
		run.Findings = append(run.Findings, &f)
		run.Totals.Count(&f)
	}
	return run
}

// Longest texts of a target, together.
const fuzzTextBytes = 600

// fuzzRuns gives a target runs with hostile seeds.
func fuzzRuns(f *testing.F, look func(t *testing.T, run *finding.Run)) {
	f.Add(
		[]byte("formula \"Buns\" {\n\tdough \"é🥐\" {}\r\n}\n"),
		10,
		24,
		"buns.hcl",
		"Buns",
		"Salt is {x}.",
	)
	f.Add(
		[]byte("\xef\xbb\xbfa\u0301\n\n"),
		0,
		3,
		"a b/ü:%.hcl",
		"\u202eturned\x1b[31m",
		"[here](http://x.example) <b>|</b>\n\n# head\n```\n<script>",
	)
	f.Add(
		[]byte(""),
		0,
		0,
		"/top/-.hcl",
		"a\r\nb: caution: c",
		"</details>\u2028--> @team #12 | `x` \\",
	)
	f.Add([]byte("\xff\xfe"), 1, 2, "\xff", "\xed\xa0\x80", "{0} {{ }}")
	f.Fuzz(func(t *testing.T, text []byte, from, to int, name, word, prose string) {
		if len(text)+len(name)+len(word)+len(prose) > fuzzTextBytes {
			return
		}
		look(t, fuzzRun(text, from, to, name, word, prose))
	})
}

func printed(t *testing.T, format string, run *finding.Run) []byte {
	var out bytes.Buffer
	f, ok := FormatNamed(format)
	if !ok {
		t.Fatal("no format", format)
	}
	if err := Write(&out, f, run, Options{}); err != nil {
		t.Fatal(err)
	}
	harmless(t, out.String())
	return out.Bytes()
}

// harmless holds that a screen obeys nothing in a text.
func harmless(t *testing.T, text string) {
	for i, r := range text {
		if r >= ' ' && r < 0x7f || r == '\n' {
			continue
		}
		_, size := utf8.DecodeRuneInString(text[i:])
		if unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp) ||
			r == utf8.RuneError && size == 1 {
			t.Fatalf("%U stands raw after %q", r, text[max(0, i-40):i])
		}
	}
}

// FuzzJSON: the output is one JSON object, whatever its texts; the
// totals are those of its findings, and all cautions come before
// the findings.
func FuzzJSON(f *testing.F) {
	fuzzRuns(f, func(t *testing.T, run *finding.Run) {
		text := printed(t, "json", run)
		var got struct {
			Cautions []struct{ Text string }
			Findings []struct{ Level, Answer, Text string }
			Totals   struct{ Formulas, Rules, Stop, Risk, Note, Unsure, Waived, Backlog int }
		}
		if err := json.Unmarshal(text, &got); err != nil {
			t.Fatal(err)
		}
		counts := map[string]int{}
		for i, one := range got.Findings {
			word := one.Level
			if one.Answer != "flagged" {
				word = one.Answer
			}
			counts[word]++
			want := strings.ToValidUTF8(run.Findings[i].Text, "\ufffd")
			if strings.ToValidUTF8(one.Text, "\ufffd") != want &&
				utf8.ValidString(run.Findings[i].Text) {
				t.Fatalf("%q becomes %q", want, one.Text)
			}
		}
		n := got.Totals
		if n.Stop != counts["stop"] || n.Risk != counts["risk"] || n.Note != counts["note"] ||
			n.Unsure != counts["unsure"] ||
			n.Waived != counts["waived"] ||
			n.Formulas != len(run.Formulas) {
			t.Fatalf("totals %+v, and findings %v", n, counts)
		}
		if len(got.Cautions) != len(run.Cautions) ||
			bytes.Index(
				text,
				[]byte("\n  \"cautions\": ["),
			) > bytes.Index(
				text,
				[]byte("\n  \"findings\": ["),
			) {
			t.Fatalf("%d cautions, or not before the findings", len(got.Cautions))
		}
	})
}

// FuzzSARIF: the log fits the published schema; every region lies in
// its file, columns in UTF-16 units; no message holds HTML, a link or a
// placeholder, and a screen obeys nothing in it, decoded.
func FuzzSARIF(f *testing.F) {
	schema := sarifPublished(f)
	fuzzRuns(f, func(t *testing.T, run *finding.Run) {
		text := printed(t, "sarif", run)
		doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(doc); err != nil {
			t.Fatalf("not valid by the schema: %v", err)
		}
		holdDecoded(t, "", doc)
		var log struct {
			Runs []struct {
				Properties struct{ Cautions []any }
				Results    []struct {
					RuleID    string
					Message   struct{ Text string }
					Locations []struct {
						PhysicalLocation struct{ Region sariflog.Region }
					}
				}
			}
		}
		if err := json.Unmarshal(text, &log); err != nil {
			t.Fatal(err)
		}
		lines := strings.Split(
			strings.TrimPrefix(string(run.Formulas[0].Place.File.Text), "\ufeff"),
			"\n",
		)
		for i, one := range log.Runs[0].Results {
			if i < len(cautionsOf(run).byFormula()) != strings.HasPrefix(one.RuleID, "caution/") {
				t.Fatalf("result %d is %s", i, one.RuleID)
			}
			if s := one.Message.Text; strings.Contains(s, "](") ||
				strings.Contains(strings.ReplaceAll(s, "{{", ""), "{") {
				t.Fatalf("a link or a placeholder in %q", s)
			}
			r := one.Locations[0].PhysicalLocation.Region
			for _, at := range [][2]int{{r.StartLine, r.StartColumn}, {r.EndLine, r.EndColumn}} {
				if at[0] < 1 || at[0] > len(lines) {
					t.Fatalf("line %d of %d", at[0], len(lines))
				}
				if width := len(utf16.Encode([]rune(lines[at[0]-1]))); at[1] < 1 ||
					at[1] > width+1 {
					t.Fatalf("column %d of line %d, which has %d", at[1], at[0], width)
				}
			}
			if r.EndLine < r.StartLine || r.EndLine == r.StartLine && r.EndColumn < r.StartColumn {
				t.Fatalf("region %+v", r)
			}
		}
	})
}

// holdDecoded holds every decoded text of a log harmless, and its
// help's markdown free of HTML.
func holdDecoded(t *testing.T, key string, v any) {
	switch x := v.(type) {
	case map[string]any:
		for k, y := range x {
			holdDecoded(t, k, y)
		}
	case []any:
		for _, y := range x {
			holdDecoded(t, key, y)
		}
	case string:
		harmless(t, x)
		if key == "markdown" && strings.ContainsAny(x, "<>") {
			t.Fatalf("HTML in %q", x)
		}
	}
}

func sarifPublished(f *testing.F) *jsonschema.Schema {
	file, err := os.Open("../../testdata/sarif/sarif-schema-2.1.0.json")
	if err != nil {
		f.Fatal(err)
	}
	defer file.Close()
	doc, err := jsonschema.UnmarshalJSON(file)
	if err != nil {
		f.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	c.AssertFormat()
	if err := c.AddResource("sarif.json", doc); err != nil {
		f.Fatal(err)
	}
	return c.MustCompile("sarif.json")
}

// ownTags are the tags of the page itself.
var ownTags = strings.NewReplacer(
	"<details><summary>",
	"",
	"</summary>",
	"",
	"</details>",
	"",
	layout.Separator,
	"",
)

// unescapedBar is a sign that would end a table's cell.
var unescapedBar = regexp.MustCompile(`(^|[^\\])(\\\\)*\|`)

// FuzzMarkdown: no HTML but the page's own, no unescaped end of a
// table's cell, headings and cautions in their places, and one layout
// for any run.
func FuzzMarkdown(f *testing.F) {
	fuzzRuns(f, func(t *testing.T, run *finding.Run) {
		text := string(printed(t, "markdown", run))
		if bare := ownTags.Replace(text); strings.ContainsAny(bare, "<>") {
			t.Fatalf("HTML in %q", bare)
		}
		if at := unescapedBar.FindString(text); at != "" {
			t.Fatalf("a table's bar in %q", text)
		}
		if !strings.HasPrefix(text, "## Cautions\n\n- **") ||
			!strings.HasSuffix(text, totals(run.Totals)+".\n") {
			t.Fatalf("the cautions are not first, or the totals not last:\n%s", text)
		}
		tags, _ := laidOut(t, text)
		for _, one := range tags {
			if !ownLayout[strings.Trim(one, "</> ")] {
				t.Fatalf("the layout has %s in\n%s", one, text)
			}
		}
	})
}

// ownLayout are the tags of the page's own layout.
var ownLayout = map[string]bool{
	"h2":      true,
	"ul":      true,
	"li":      true,
	"p":       true,
	"strong":  true,
	"code":    true,
	"br":      true,
	"details": true,
	"summary": true,
}
