package said

import "testing"

// TestWordsOfNewcomers holds what the readers of plain prose give, and what they leave: "" is none.
func TestWordsOfNewcomers(t *testing.T) {
	for _, test := range []struct {
		name string
		read func(string) string
		want map[string]string
	}{
		{"thick", Thickness, map[string]string{
			"a disc 15 mm thick": "15 mm", "1/2 inch thick rounds": "1/2 inch",
			"not 5 mm thick":  "",
			"14-inch strands": "", "fingers about 13 cm long": "",
		}},
		{"humid", HumidityIn, map[string]string{
			"prover at 80 % humidity": "80 %", "75% rh": "75%", "80 % full": "", "warm": "",
		}},
		{"rounds", func(s string) string { return yes(InRounds(s)) }, map[string]string{
			"into balls": "yes", "ropes of 40 cm": "yes", "into a log": "", "up tightly": "",
			"a large ball of dough": "",
		}},
		{"speed", func(s string) string { return yes(IsSpeed(s)) }, map[string]string{
			"low": "yes", "on medium-low": "yes", "low protein flour": "",
			"low, then the butter": "",
		}},
		{"rest", func(s string) string { return yes(TheRest(s)) }, map[string]string{
			"the rest": "yes", "the remaining filling": "yes", "half": "", "rest 10 min": "",
		}},
		{"whole", func(s string) string { return yes(IsWhole(s)) }, map[string]string{
			"mandorle intere": "yes", "whole almonds": "yes", "almonds": "", "wholemeal": "",
		}},
		{"at most", func(s string) string { out, _ := TempIn(s); return out }, map[string]string{
			"24 C max": "24 C", "25 C, no warmer or the butter runs": "25 C", "max 24 C": "24 C",
			"under 25 C": "", "25 C or less": "", "175 °C Umluft": "",
		}},
		{"vanilla", func(s string) string {
			_, name := Vanilla("vainilla", s)
			return name
		}, map[string]string{
			"1 vaina": "vanilla bean", "2 tsp": "vanilla extract", "2 g": "",
		}},
	} {
		for text, want := range test.want {
			if got := test.read(text); got != want {
				t.Errorf("%s of %q: %q, want %q", test.name, text, got, want)
			}
		}
	}
	c, _ := Which("all but a quarter of the water", []string{"flour", "water"})
	if c.Of != "water" || c.Share != 0.25 || len(c.Names) != 2 {
		t.Error(c)
	}
	if !Names("in the coating sugar, warm", "coating sugar") || Names("sugary", "sugar") {
		t.Error("a name among words")
	}
}

func yes(is bool) string {
	if is {
		return "yes"
	}
	return ""
}
