package times

import "testing"

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
	} {
		for text, want := range test.want {
			if got := test.read(text); got != want {
				t.Errorf("%s of %q: %q, want %q", test.name, text, got, want)
			}
		}
	}
}
