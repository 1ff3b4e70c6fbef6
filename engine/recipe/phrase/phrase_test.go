package phrase

import (
	"slices"
	"testing"
)

func TestTimes(t *testing.T) {
	for text, want := range map[string][]string{
		"on low for 4 minutes, then medium for 6 minutes":   {"4 min", "6 min"},
		"about 1 hour 30 minutes":                           {"1 h 30 min"},
		"45 minutes to 1 hour":                              {"45 min to 1 h"},
		"1 to 1½ hours":                                     {"1 to 1½ h"},
		"an hour and a half":                                {"1 h 30 min"},
		"another half hour":                                 {"1/2 h"},
		"a few minutes":                                     {"2 to 5 min"},
		"overnight":                                         {Overnight},
		"turn every 5 minutes":                              nil,
		"cover with foil after 20 minutes":                  nil,
		"bake 10 min at 220 C and 20 min at 180 C":          {"10 min", "20 min"},
		"24-28 minutes, until the centers reach 190 F":      {"24 to 28 min"},
		"three quarters of an hour":                         {"3/4 h"},
		"roll it to 9 x 28 cm":                              nil,
		"for 10 min. in the tin, then 5 seconds in the air": {"10 min", "5 s"},
	} {
		var got []string
		for _, x := range Times(text) {
			got = append(got, x.Text)
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

func TestFigures(t *testing.T) {
	for text, want := range map[string]string{
		"about one to one and a half hours": "1 to 1 1/2 h",
		"an hour and a half":                "1 1/2 h",
		"two and a half hours":              "2 1/2 h",
		"half an hour":                      "1/2 h",
	} {
		if got, _ := TimeOf(Figures(text)); got != want {
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

func TestSentences(t *testing.T) {
	for text, want := range map[string][]string{
		"Turn out; roll 1/2 in. thick. Cut.":     {"Turn out", "roll 1/2 in. thick", "Cut"},
		"Knead 10 min. Let rise.":                {"Knead 10 min", "Let rise"},
		"Roll into approx. 75 g balls.":          {"Roll into approx. 75 g balls"},
		"Bake 30 min. @ 350.":                    {"Bake 30 min. @ 350"},
		"Let rise (1 hr. or so). Bake.":          {"Let rise (1 hr. or so)", "Bake"},
		"":                                       nil,
		"Use 1.5 kg of it! Then no more of it. ": {"Use 1.5 kg of it", "Then no more of it"},
	} {
		if got := Sentences(text); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

func TestPieces(t *testing.T) {
	for text, want := range map[string]string{
		"Divide into 12 equal pieces":       "12",
		"cut each roll into 20 slices":      "20",
		"Cut in 2\" squares":                "",
		"cut into triangles 9 x 28 cm":      "",
		"Cut with a 2 1/2-inch cutter":      "",
		"divide in half":                    "2",
		"Divide into pieces of 1 kg":        "1 kg",
		"scale at 95 g each":                "95 g",
		"cut out rounds with a 7 cm glass":  "",
		"pull off small pieces (about 40)":  "40",
		"roll into balls (you will get 24)": "24",
	} {
		if got := Pieces(text); got != want {
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

func TestSheet(t *testing.T) {
	for text, want := range map[string][2]string{
		"roll 1/2 in. thick":                             {"1/2 in", ""},
		"Roll to 3.5 mm":                                 {"3.5 mm", ""},
		"Roll the dough to 20 x 40 cm":                   {"", "40 cm"},
		"roll to a 10-by-12-inch rectangle":              {"", "12 in"},
		"a 12 x 18 inch rectangle, 1/4 inch thick":       {"1/4 in", "18 in"},
		"Beat the butter into a 20 cm square":            {"", ""},
		"Roll out to about 1 cm, a 40 cm long rectangle": {"", ""},
	} {
		if thick, wide, _ := Sheet(text); thick != want[0] || wide != want[1] {
			t.Errorf("%s: %q, %q, want %q", text, thick, wide, want)
		}
	}
}

func TestRepeats(t *testing.T) {
	for text, want := range map[string]struct {
		times   int
		between string
	}{
		"repeat twice more at half-hour intervals":   {2, "1/2 h"},
		"stretch and fold 3 times, 20 minutes apart": {3, "20 min"},
		"fold every 30 minutes for 2 hours":          {0, "30 min"},
		"three sets of folds with 40 min between":    {3, "40 min"},
		"fold once":                       {1, ""},
		"repeat with the remaining dough": {0, ""},
		"fold every half hour":            {0, "1/2 h"},
		"rest for 30 minutes":             {0, ""},
		"cut each into 3":                 {0, ""},
	} {
		if n, between := Repeats(text), Interval(text); n != want.times || between != want.between {
			t.Errorf("%s: %d, %q", text, n, between)
		}
	}
	if n := Within("2 h", "30 min"); n != 4 {
		t.Errorf("%d folds in 2 h", n)
	}
}

func TestExcept(t *testing.T) {
	for text, want := range map[string]string{
		"mix everything except the jam for 10 minutes": "mix everything  for 10 minutes",
		"add all but the salt, then knead":             "add , then knead",
		"knead for 8 minutes":                          "knead for 8 minutes",
	} {
		if got := Except(text); got != want {
			t.Errorf("%s: %q", text, got)
		}
	}
}
