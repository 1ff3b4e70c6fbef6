package main

import (
	"bytes"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/house"
)

// TestReadmeSessions runs every "$ forebake ..." line in the console blocks of README.md, from the
// top of the project. The output must equal the lines below it. A line "[...]" stands for any
// lines, and a last line "exit status N" for a status other than 0.
func TestReadmeSessions(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir("../..")
	t.Setenv("NO_COLOR", "1")
	sessions := 0
	for i, block := range strings.Split(string(readme), "```console\n")[1:] {
		block, _, _ = strings.Cut(block, "```")
		for _, session := range strings.Split("\n"+block, "\n$ ")[1:] {
			command, want, _ := strings.Cut(session, "\n")
			line, ok := strings.CutPrefix(command, "go run ./cmd/forebake")
			if !ok {
				line, ok = strings.CutPrefix(command, "forebake")
			}
			if !ok {
				continue // the go command itself
			}
			sessions++
			var out bytes.Buffer
			status := run(strings.Fields(line), strings.NewReader(""), &out, &out)
			if status != 0 {
				out.WriteString("exit status " + string(rune('0'+status)) + "\n")
			}
			if at, ok := matches(out.String(), want); !ok {
				t.Errorf("block %d, %q: README.md is not what the program prints; first difference at %q\nprogram:\n%s", i+1, command, at, out.String())
			}
		}
	}
	if sessions < 5 {
		t.Errorf("%d sessions in README.md; there should be at least 5", sessions)
	}
}

// matches compares output with the lines wanted; "[...]" skips to the next line that follows it.
// It returns the first line that differs.
func matches(got, want string) (string, bool) {
	g, w := strings.Split(strings.TrimSpace(got), "\n"), strings.Split(strings.TrimSpace(want), "\n")
	i := 0
	for k := 0; k < len(w); k++ {
		if w[k] == "[...]" {
			if k+1 == len(w) {
				return "", true
			}
			for i < len(g) && g[i] != w[k+1] {
				i++
			}
			continue
		}
		if i >= len(g) || strings.TrimRight(g[i], " ") != strings.TrimRight(w[k], " ") {
			return w[k], false
		}
		i++
	}
	if i < len(g) {
		return g[i], false
	}
	return "", true
}

// TestReadmeSamples runs the sample formula, house and rule file of README.md together. The house
// must leave no food safety out, and the rule's trials must pass and try each of its limits.
func TestReadmeSamples(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	names := map[string]string{
		"formula ": "knots.hcl",
		"house ":   house.FileName,
		"about ":   "house-rules/own.hcl", // the opening of a rule file
	}
	t.Chdir(t.TempDir())
	for _, block := range strings.Split(string(readme), "```hcl\n")[1:] {
		block, _, _ = strings.Cut(block, "```")
		for opening, name := range names {
			if strings.HasPrefix(block, opening) {
				writeFile(t, name, block)
				delete(names, opening)
			}
		}
	}
	if len(names) > 0 {
		t.Fatalf("README.md shows no sample that opens with %v", slices.Collect(maps.Keys(names)))
	}

	var out bytes.Buffer
	status := run([]string{"check", "."}, nil, &out, &out)
	if status > exitFound || !strings.Contains(out.String(), "Cardamom almond knots  (knots.hcl)") {
		t.Errorf("the sample formula cannot be read: exit status %d\n%s", status, out.String())
	}
	if strings.Contains(out.String(), "Food safety is not checked") {
		t.Errorf("the sample house leaves food safety out\n%s", out.String())
	}
	text, err := os.ReadFile(house.FileName)
	if err != nil {
		t.Fatal(err)
	}
	for _, pack := range engine.ShippedPacks() {
		if !strings.Contains(string(text), `"`+pack+`"`) {
			t.Errorf("the sample house leaves out the shipped pack %q", pack)
		}
	}

	out.Reset()
	status = run([]string{"trial"}, nil, &out, &out)
	if status != 0 || !strings.Contains(out.String(), " 0 failed; untouched: 0 rules, 0 limits.") {
		t.Errorf("the sample rule's trials: exit status %d\n%s", status, out.String())
	}
}

func writeFile(t *testing.T, path, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
}
