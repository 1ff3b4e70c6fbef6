package plan

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestReadClock(t *testing.T) {
	for text, want := range map[string]string{
		"07:00": "07:00", "00:00": "00:00", "23:59": "23:59", " 07:00 ": "07:00",
		"04:00 +1d": "04:00",
		"7:00":      "07:00",
	} {
		c, err := ReadClock(text)
		if err != nil || c.String() != want {
			t.Errorf("%q is read as %v, %v", text, c, err)
		}
	}
	if c, _ := ReadClock("04:00 +2d"); c.Day() != 2 {
		t.Errorf("day %d", c.Day())
	}
	for _, text := range []string{"25:00", "07:60", "7", "", "07:00 +d", "07:00 +100d",
		"07:00 +-1d",
		"07:00 tomorrow", "-1:00", "07:00:00"} {
		c, err := ReadClock(text)
		if err == nil || !strings.Contains(err.Error(), "no clock time; write") {
			t.Errorf("%q is read as %v, %v", text, c, err)
		}
	}
	if Clock(-1).Day() != -1 || Clock(-day).Day() != -1 || Clock(-day-1).Day() != -2 {
		t.Error("days before the first are counted wrong")
	}
}

func TestReadNight(t *testing.T) {
	if n, err := ReadNight("21:30 to 06:00"); err != nil || n.String() != "21:30 to 06:00" {
		t.Error(n, err)
	}
	for _, text := range []string{"22:00", "22:00 to 25:00", "x to 05:00", ""} {
		if n, err := ReadNight(text); err == nil {
			t.Errorf("%q is read as %v", text, n)
		}
	}
}

// A span touches the night where one of its minutes does.
func TestNightCuts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		clock := func(label string) int { return rapid.IntRange(0, 1439).Draw(t, label) }
		n := Night{Clock(60 * clock("from")), Clock(60 * clock("to"))}
		lo := 60 * rapid.IntRange(-3000, 3000).Draw(t, "lo")
		s := Span{lo, lo + 60*rapid.IntRange(0, 1500).Draw(t, "length")}
		want := false
		for at := s.Lo; at <= s.Hi; at += 60 {
			of := Clock((at%day + day) % day)
			if n.From < n.To {
				want = want || of >= n.From && of < n.To
			} else if n.From > n.To {
				want = want || of >= n.From || of < n.To
			}
		}
		if got := n.Cuts(s); got != want {
			t.Fatalf("%v cuts %v: %v", n, s, got)
		}
	})
}
