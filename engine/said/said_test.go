package said

import (
	"strings"
	"testing"

	"forebake/engine/larder"
	"forebake/engine/quantity"
)

// Every text that a word is taken for, or that is to be written, is
// a quantity.
func TestWhatIsTakenReads(t *testing.T) {
	warm := quantity.Of(quantity.Temperature)
	for _, mark := range strings.Split("123456789", "") {
		got, ok := GasMark("gas mark " + mark)
		if _, fault := quantity.Read(got.Text, warm); !ok || fault != nil {
			t.Errorf("mark %s: %+v", mark, got)
		}
	}
	for words := range warmths {
		write, _, ok := Warmth(words)
		if _, fault := quantity.Read(write, warm); !ok || fault != nil {
			t.Errorf("%s: %q", words, write)
		}
	}
	for words, write := range goingIn {
		if _, fault := quantity.Read(write, warm); fault != nil {
			t.Errorf("%s: %s", words, fault.Text)
		}
	}
}

func TestAmount(t *testing.T) {
	l := larder.New()
	for _, c := range []struct{ name, text, units, want string }{
		{"salt", "a pinch", "", "0.1 to 1 g"}, {"salt", "2 good pinches", "", ""},
		{"nutmeg", "2 pinches of nutmeg", "", "0.2 to 2 g"},
		{"whole milk", "3 dashes", "", "0.9 to 4.5 ml"}, {"instant yeast", "2 packets", "", "14 g"},
		{"fresh yeast", "1 packet", "", ""}, {"vanilla sugar", "1 sachet", "", "7.5 to 10 g"},
		{"unsalted butter", "1/2 stick", "", "2 oz"}, {"unsalted butter", "1 stick", "uk", ""},
		{"sugar", "1 stick", "us", ""}, {"sugar", "200 g", "", ""},
		{"olive oil", "1 stick", "", ""},
	} {
		it, ok := l.Find(c.name)
		if !ok {
			t.Fatal(c.name)
		}
		got, taken := Amount(it, c.text, c.units)
		if c.want == "" {
			if taken && c.text != "2 good pinches" {
				t.Errorf("%s of %s is taken as %s", c.text, c.name, got.Text)
			}
			continue
		}
		if !taken || got.Text != c.want || got.Says == "" {
			t.Errorf("%s of %s: %+v, want %s", c.text, c.name, got, c.want)
		}
	}
}

func TestShapesOfValues(t *testing.T) {
	if long, short, ok := Area("30 x 45 cm"); !ok || long.Hi != 450 || short.Hi != 300 {
		t.Errorf("area: %v %v %v", long, short, ok)
	}
	for text, want := range map[string]bool{"until doubled": true, "till golden": true,
		"1 h":                false,
		"until doubled, 1 h": false, "overnight": false} {
		if Sign(text) != want {
			t.Errorf("%s is a sign: %v", text, !want)
		}
	}
	for text, want := range map[string]string{"3 1/2 cups (440 g)": "440 g",
		"440 g (3 cups)":  "440 g",
		"2 tbsp (heaped)": "2 tbsp (heaped)", "200 g": "200 g"} {
		if got := Bracketed(text); got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
	got := WithTime(`{ cook = "5 min", at = "100 C" }`, "2 min")
	if !strings.Contains(got, `"2 min"`) {
		t.Error(got)
	}
	for _, c := range [][4]string{
		{"1 pint", "", `"20 F"`, "1  us pint"}, {"1 pint", "", "gas mark 4", "1  uk pint"},
		{"1 pint", "", "", "1 pint"}, {"1 pint", "uk", "", "1  uk pint"},
	} {
		if got, _ := Country(c[0], c[1], []byte(c[2])); got != c[3] {
			t.Errorf("%v: %s", c, got)
		}
	}
	if EggName("large egg", "uk") != "size L egg" || EggName("large egg", "us") != "large egg" {
		t.Error("eggs by country")
	}
}

// Each word of another language stands once, and is not a word that it
// stands for.
func TestStepWordsStandOnce(t *testing.T) {
	seen := map[string]string{}
	StepWords(func(word, english string) {
		if other, twice := seen[word]; twice || word == english || word != Key(word) || word == "" {
			t.Errorf("%q is read as %s and %s", word, other, english)
		}
		seen[word] = english
	})
	if len(seen) < 200 {
		t.Error(len(seen))
	}
}
