package main

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"
)

// screen is the lines of a terminal window as it opens.
const screen = 24

// TestFactsFitAScreen holds that the main figures of each demo part fit
// on a screen.
func TestFactsFitAScreen(t *testing.T) {
	files, err := filepath.Glob("../../formulas/*.hcl")
	if err != nil {
		t.Fatal(err)
	}
	parts := 0
	for _, file := range files {
		if filepath.Base(file) == "house.hcl" {
			continue
		}
		var out, errs bytes.Buffer
		if status := run([]string{"facts", file}, strings.NewReader(""), &out, &errs); status != 0 {
			t.Fatalf("%s: status %d: %s", file, status, errs.String())
		}
		for _, block := range strings.Split(out.String(), "\n\n") {
			lines := strings.Split(strings.Trim(block, "\n"), "\n")
			if strings.Contains(lines[0], " \"") {
				parts++
			}
			if len(lines) > screen {
				t.Errorf("%s: %s has %d lines", file, lines[0], len(lines))
			}
			for _, line := range lines {
				if len([]rune(line)) > 80 {
					t.Errorf("%s: %q is longer than 80 columns", file, line)
				}
			}
		}
	}
	if parts < 20 {
		t.Errorf("%d parts", parts)
	}
}
