package said

import "testing"

// TestWordsOfNewcomers holds what the readers of plain prose give, and what they leave: "" is none.
func TestWordsOfNewcomers(t *testing.T) {
	for _, test := range []struct {
		name string
		read func(string) string
		want map[string]string
	}{
		{"both sides", func(s string) string { out, _, _ := BothSides(s); return out }, map[string]string{
			"3 min each side": "6 min", "2 1/2 to 3 min each side, 3 or 4 at a time": "5 to 6 min",
			"60 to 75 seconds per side": "2 to 2.5 min", "2 Minuten pro Seite": "",
			"3 min per side, then 2 min": "", "3 min": "",
		}},
		{"either time", func(s string) string { out, _, _ := EitherTime(s); return out }, map[string]string{
			"8 min by hand or 5 min in the mixer": "5 to 8 min", "8 min or 10 min": "",
			"1 h or until doubled": "",
		}},
		{"then", func(s string) string {
			first, then, _ := ThenTime(s)
			return first.Time + "|" + then.Time
		}, map[string]string{
			"30 min, then overnight in the fridge": "30 min|overnight",
			"1 h at room, then 12 h in the fridge": "1 h|12 h", "then bake": "|", "30 min": "|",
		}},
		{"thick", Thickness, map[string]string{
			"a disc 15 mm thick": "15 mm", "1/2 inch thick rounds": "1/2 inch", "not 5 mm thick": "",
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
			"low": "yes", "on medium-low": "yes", "low protein flour": "", "low, then the butter": "",
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
		{"vanilla", func(s string) string { _, name := Vanilla("vainilla", s); return name }, map[string]string{
			"1 vaina": "vanilla bean", "2 tsp": "vanilla extract", "2 g": "",
		}},
	} {
		for text, want := range test.want {
			if got := test.read(text); got != want {
				t.Errorf("%s of %q: %q, want %q", test.name, text, got, want)
			}
		}
	}
	if c, _ := Which("all but a quarter of the water", []string{"flour", "water"}); c.Of != "water" ||
		c.Share != 0.25 || len(c.Names) != 2 {
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
