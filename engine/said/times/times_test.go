package times

import (
	"strings"
	"testing"
)

// TestTwoTimes holds what two times in one text give, and which texts are left: "" is none.
func TestTwoTimes(t *testing.T) {
	for _, test := range []struct {
		name string
		read func(string) string
		want map[string]string
	}{
		{"both sides", func(s string) string {
			out, _, _ := BothSides(s)
			return out
		}, map[string]string{
			"3 min each side": "6 min", "2 1/2 to 3 min each side, 3 or 4 at a time": "5 to 6 min",
			"60 to 75 seconds per side": "2 to 2.5 min", "2 Minuten pro Seite": "",
			"3 min per side, then 2 min": "", "3 min": "",
		}},
		{"either time", func(s string) string {
			out, _, _ := EitherTime(s)
			return out
		}, map[string]string{
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
		{"with a speed", func(s string) string {
			out, _, _ := In(s)
			return out
		}, map[string]string{
			"4 min on speed 1": "4 min", "6 min on speed 3 with the butter going in": "6 min",
			"4 min on speed 1, then 2": "", "4 min": "",
		}},
		{"during", func(s string) string {
			out, _, _ := During(s, func(words string) bool { return words == "fridge" })
			return out
		}, map[string]string{
			"2 h, fold after 1 h": "2 h", "10 min, butter added after 3": "10 min",
			"2 h, fridge after 1 h": "", "1 h, fold after 2 h": "", "2 h": "",
		}},
		{"in turn", func(s string) string {
			out, _ := InTurn(s, "cool", func(words string) bool {
				return strings.Contains(words, "fridge")
			})
			return out
		}, map[string]string{
			"5 min in the tin, then 1 h on a rack":           "65 min",
			"15 min in the pan, then at least 1 h on a rack": "75 min",
			"3 min lid on, turn, 2 min 30 s lid off":         "5.5 min",
			"5 to 10 min in the tin, then 1 h on a rack":     "65 to 70 min",
			"1 h, then 2 h in the fridge":                    "",
			"10 min, then 20 min at a lower heat":            "",
			"30 min, shape, 1 h":                             "",
			"1 h or 2 h":                                     "",
			"10 min, 3 at a time, then 5 min":                "",
			"2 h, fold after 1 h":                            "",
			"45 min, first 15 min with a lid":                "",
			"20 min, 5 min of them bare":                     "",
			"1 h, turned 30 min in":                          "",
			"1 h, turned once, 30 min in":                    "",
			"1 h total, 30 min bare":                         "",
			"20 min":                                         "",
		}},
		{"left out", func(s string) string {
			_, what, _ := LeftOut(s)
			return what
		}, map[string]string{
			"6 min on medium, no butter yet": "butter", "6 min, without the salt": "salt",
			"6 min on medium": "", "6 min, butter in": "",
		}},
	} {
		for text, want := range test.want {
			if got := test.read(text); got != want {
				t.Errorf("%s of %q: %q, want %q", test.name, text, got, want)
			}
		}
	}
}
