package main

import (
	"bytes"
	"os"
	"testing"
)

// Scripts never have a terminal on standard output, so the terminal's
// side of the choice is tested here.
func TestColourOnATerminal(t *testing.T) {
	terminal, err := os.OpenFile("/dev/ptmx", os.O_RDWR, 0)
	if err != nil {
		t.Skip("no terminal to open:", err)
	}
	defer terminal.Close()
	for _, c := range []struct {
		word, noColour, term string
		want                 bool
	}{
		{"auto", "", "xterm", true},
		{"auto", "1", "xterm", false},
		{"auto", "", "dumb", false},
		{"never", "", "xterm", false},
		{"always", "1", "dumb", true},
	} {
		t.Setenv("NO_COLOR", c.noColour)
		t.Setenv("TERM", c.term)
		if got, err := wantsColour(c.word, terminal); err != nil || got != c.want {
			t.Errorf(
				"--color=%s, NO_COLOR=%q, TERM=%s: %v (%v), not %v",
				c.word,
				c.noColour,
				c.term,
				got,
				err,
				c.want,
			)
		}
	}
	t.Setenv("NO_COLOR", "")
	t.Setenv("TERM", "xterm")
	if got, _ := wantsColour("auto", &bytes.Buffer{}); got {
		t.Error("colour for what is no terminal")
	}
}
