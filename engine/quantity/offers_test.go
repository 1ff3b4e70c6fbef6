package quantity

import (
	"regexp"
	"strings"
	"testing"
)

var (
	offersPart = regexp.MustCompile(`write (.*)$`)
	quotedText = regexp.MustCompile(`"((?:[^"\\]|\\.)*)"`)
)

// offers are the texts that a refusal offers.
func offers(text string) []string {
	var out []string
	for _, m := range quotedText.FindAllStringSubmatch(offersPart.FindString(text), -1) {
		out = append(out, m[1])
	}
	return out
}

// TestOffersKeepTheAmount misspells every unit by one letter and holds
// that what is offered reads, and includes the amount that was meant.
func TestOffersKeepTheAmount(t *testing.T) {
	tried, offered := 0, 0
	for i := range units {
		u := &units[i]
		for _, spelling := range append([]string{u.name}, u.also...) {
			if len(spelling) < 3 || strings.Contains(spelling, " ") {
				continue
			}
			for _, wrong := range slipsOf(spelling) {
				text := "3 " + wrong
				allowed := Of(u.kind) | Amounts
				q, fault := Read(text, allowed)
				if fault == nil {
					if q.Lo != 3*u.toBase(1) && u.kind != Temperature {
						if other := unitNamed(wrong); other == nil {
							t.Errorf("%q is read as %v, a slip of %s", text, q, u.name)
						}
					}
					continue
				}
				tried++
				if strings.Contains(fault.Text, "such as") {
					continue // a unit of another kind: an example, no offer
				}
				list := offers(fault.Text)
				meant, _ := Read("3 "+u.name, allowed)
				kept := len(list) == 0
				for _, o := range list {
					got, fault := Read(o, allowed)
					if fault != nil {
						t.Errorf("%q: told to write %q: %s", text, o, fault.Text)
						continue
					}
					kept = kept || got.Interval == meant.Interval
				}
				if len(list) > 0 {
					offered++
				}
				_, word := kitchenWords[strings.TrimSuffix(strings.ToLower(wrong), "s")]
				if !kept && !word {
					t.Errorf("%q, meant as %s: %s", text, u.name, fault.Text)
				}
			}
		}
	}
	if tried < 500 || offered < 400 {
		t.Errorf("%d tried, %d with an offer", tried, offered)
	}
}

// slipsOf are the words one letter away from a word.
func slipsOf(word string) []string {
	var out []string
	for i := range word {
		out = append(out, word[:i]+word[i+1:], word[:i]+"q"+word[i:], word[:i]+"q"+word[i+1:])
		if i > 0 {
			out = append(out, word[:i-1]+word[i:i+1]+word[i-1:i]+word[i+1:])
		}
	}
	return out
}

// TestOffersOfNumbers holds that a number in another notation is
// offered with its value, or with each possible value.
func TestOffersOfNumbers(t *testing.T) {
	for text, want := range map[string][]float64{
		"1.000 g": {1000, 1}, "1,500 g": {1500, 1.5}, "1,500,000 mg": {1500}, "1 000 g": {1000},
		"1e3 g": {1000}, "1.500 g": {1500, 1.5}, "2": {2}, "350": {350},
	} {
		_, fault := Read(text, Amounts)
		if fault == nil {
			t.Errorf("%s is read", text)
			continue
		}
		for _, o := range offers(fault.Text) {
			got, bad := Read(o, Amounts)
			if bad != nil {
				t.Errorf("%s: told to write %q: %s", text, o, bad.Text)
				continue
			}
			found := false
			for _, x := range want {
				found = found || got.Lo == x
			}
			if !found {
				t.Errorf("%s: told to write %q, which changes the amount", text, o)
			}
		}
	}
}

func TestOfCountry(t *testing.T) {
	for _, c := range [][3]string{
		{"1 pint", "uk", "1  uk pint"}, {"1 pint", "us", "1  us pint"}, {"1 pint", "", "1 pint"},
		{"1 UK pint", "us", "1 UK pint"}, {"2 fl oz", "us", "2 fl oz"},
		{"2 fl oz", "uk", "2  uk fl oz"},
		{"1/2pint", "uk", "1/2 uk pint"}, {"200 g", "uk", "200 g"},
	} {
		got := OfCountry(c[0], c[1])
		if got != c[2] {
			t.Errorf("%q in %q: %q, want %q", c[0], c[1], got, c[2])
		}
		if _, fault := Read(got, Amounts); fault != nil && c[1] != "" {
			t.Errorf("%q: %s", got, fault.Text)
		}
	}
}
