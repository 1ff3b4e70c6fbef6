package plainly

import "testing"

func TestTimes(t *testing.T) {
	for text, want := range map[string]string{
		"45 min on a floured towel, then 10 min uncovered so they get a skin": "55 min",
		"2 hrs-ish till 3/4 up the tin":                                       "120 min",
		"1 hr to 1 hr 30 min somewhere warm (75-80F)":                         "60 to 90 min",
		"at 350 for 25 min":                                                   "25 min",
		"30-35 min at 180 C (160 fan)":                                        "30 to 35 min",
		"5 min on 1, 6 min on 2":                                              "11 min",
		"35 min, cover with foil after 20 min":                                "35 min",
		"2 h with a fold every 30 min":                                        "120 min",
		"10 min here 20 min there":                                            "20 to 30 min",
		"at least 30 min":                                                     "",
		"30 min, or 2 h if it is cold":                                        "",
		"not more than 20 min":                                                "",
		"bake 3 at a time, 5 min":                                             "",
		"until golden":                                                        "",
	} {
		if got, _, _ := Times(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func TestHeat(t *testing.T) {
	for text, want := range map[string]string{
		"175 C oil":                      "175 C",
		"prover 26C, 75% humidity":       "26C",
		"gas mark 5, 190°C or 170°C fan": "190°C",
		"180 C (160 fan)":                "180 C",
		"in a warm spot, 80F":            "80F",
		"at 350 until golden":            "350",
		"220 C, then 180 C":              "",
		"below 5 C or not":               "",
		"warm":                           "",
	} {
		if got, _, _ := Heat(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func FuzzTimes(f *testing.F) {
	f.Add("45 min on a towel, then 10 min uncovered at 26 C")
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > 200 {
			return
		}
		Times(text)
		Heat(text)
	})
}
