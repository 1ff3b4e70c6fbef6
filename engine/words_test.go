package engine_test

import (
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/finding"
)

// mostWords and mostSentences bound a message: it is read at the bench.
const mostWords, mostSentences = 30, 2

// fahrenheit is the figure in F beside one in C: the same figure, no
// word more.
var fahrenheit = regexp.MustCompile(` \([0-9][^()]* F\)`)

// sentenceEnd is a sentence's end before another: a small letter or a
// figure continues it, as in S. aureus.
var sentenceEnd = regexp.MustCompile(`[.?!] +\p{Lu}`)

// notSaid are words that no message holds: an unknown figure is left
// out, and one that a baker cannot see is told as one that a baker can.
var notSaid = regexp.MustCompile(
	`unknown|some (temperature|time|days|weight|share|amount)|%-hours|NaN|Inf|\bby ` +
		`over\b|[\[\]|{}]`)

// unitFault is a doubled unit, or a share without one.
var unitFault = regexp.MustCompile(
	`[0-9] (?:(?:min|h|C|g|mm|%|days) ){2}|[0-9] (?:min|h|C|g|mm|%|days) (?:min|h|C|g|mm|%|` +
		`days)[.,;:]|[0-9]+\.[0-9]+ of `)

// faultOf tells what is wrong with the words of a message; ""
// for nothing.
func faultOf(text string) string {
	switch words := len(strings.Fields(fahrenheit.ReplaceAllString(text, ""))); {
	case words > mostWords:
		return fmt.Sprintf("%d words", words)
	case len(sentenceEnd.FindAllString(text, -1)) >= mostSentences:
		return "more than two sentences"
	case notSaid.MatchString(text):
		return fmt.Sprintf("%q", notSaid.FindString(text))
	case unitFault.MatchString(text):
		return fmt.Sprintf("%q", unitFault.FindString(text))
	case !strings.ContainsAny(text[len(text)-1:], ".?!"):
		return "no end of a sentence"
	}
	return ""
}

func TestFaultOf(t *testing.T) {
	long := strings.Repeat("word ", mostWords)
	for text, want := range map[string]string{
		"The oven is at 240 C. Bake cooler.":                 "",
		"S. aureus can grow. Chill it.":                      "",
		"Did you mean 8 g?":                                  "",
		long + "more.":                                       "31 words",
		long + "at 40 C (104 F).":                            "33 words",
		long[25:] + "at 40 to 43 C (104 to 109 F).":          "",
		"One. Two. Three.":                                   "more than two sentences",
		"The middle needs unknown.":                          `"unknown"`,
		"The dough comes to 0.62 %-hours.":                   `"%-hours"`,
		"The oven is at some temperature. Write it.":         `"some temperature"`,
		"Weigh in 2 % of the flour[, about {dough.salt_g}].": `"["`,
		"Free water is 87.69 of this filling.":               `"87.69 of "`,
		"It may end at 4 min min.":                           `"4 min min."`,
		"It may end at 4 min min or so.":                     `"4 min min "`,
		"Fat is 8.5 % of the flour, in 3 of 4 parts.":        "",
		"Bake it": "no end of a sentence",
	} {
		if got := faultOf(text); got != want {
			t.Errorf("%q: %q, not %q", text, got, want)
		}
	}
}

// TestMessagesAreShort reads every message as the trials and all
// formulas of the project fill it in: at most two sentences and 30
// words, and no unknown figure.
func TestMessagesAreShort(t *testing.T) {
	said := map[string]string{} // a message, and its rule
	report, problems := engine.New().Trials(".", nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	ids := map[string]bool{}
	for _, v := range report.Verdicts {
		for _, text := range v.Says {
			said[text], ids[v.Trial.Rule] = v.Trial.Rule, true
		}
	}
	if len(ids) < report.Rules {
		t.Errorf("the trials fill in the messages of %d of %d rules", len(ids), report.Rules)
	}
	var inputs []engine.Input
	for _, pattern := range []string{"../formulas/*.hcl", "../formulas/school/*.hcl",
		"../testdata/published/*.hcl", "../testdata/published/formulas/*.hcl",
		"../testdata/scenarios/*.hcl"} {
		paths, err := filepath.Glob(pattern)
		if err != nil {
			t.Fatal(err)
		}
		for _, path := range paths {
			if filepath.Base(path) != "house.hcl" {
				inputs = append(inputs, engine.Input{
					Name: path,
					Path: path,
					Dir:  filepath.Dir(path),
				})
			}
		}
	}
	result := engine.New().Check(inputs)
	if len(result.Formulas) < 150 {
		t.Errorf("%d formulas are checked", len(result.Formulas))
	}
	for _, f := range result.Findings {
		if f.Answer != finding.Unsure && f.Answer != finding.Assumed {
			// the others of a rule that tells once
			text, _, _ := strings.Cut(f.Text, " The same of ")
			said[text] = f.Rule
		}
	}
	var faults []string
	for text, rule := range said {
		if fault := faultOf(text); fault != "" {
			faults = append(faults, fmt.Sprintf("%s: %s: %s", rule, fault, text))
		}
	}
	slices.Sort(faults)
	for _, f := range faults {
		t.Error(f)
	}
	if testing.Verbose() { // to be read aloud
		lines := make([]string, 0, len(said))
		for text, rule := range said {
			lines = append(lines, rule+": "+text)
		}
		slices.Sort(lines)
		t.Log("\n" + strings.Join(lines, "\n"))
	}
}
