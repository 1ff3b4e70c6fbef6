package main

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// guideBlock is the guide's first block in a language that holds
// a text.
func guideBlock(t *testing.T, language, with string) string {
	t.Helper()
	text, err := os.ReadFile(guideFile)
	if err != nil {
		t.Fatal(err)
	}
	for _, block := range strings.Split(string(text), "```"+language+"\n")[1:] {
		block, _, _ = strings.Cut(block, "```")
		if strings.Contains(block, with) {
			return block
		}
	}
	t.Fatalf("the guide has no %s block with %q", language, with)
	return ""
}

// linesOfAllKinds checks a kitchen that has lines of every word, and
// gives them.
func linesOfAllKinds(t *testing.T) (dir, printed string, words []string) {
	t.Helper()
	unsalted := strings.Replace(soundBuns, `"18 g"`, `"50 g"`, 1)
	dir = folder(t, map[string]string{
		"house.hcl": "house \"h\" {\n  packs = [\"draft\", \"balance\", \"hygiene\", " +
			"\"./own.hcl\"]\n  set \"core-unsafe\" {\n    level  = \"risk\"\n" +
			"    because = \"tried\"\n  }\n  waive \"salt-high\" {\n" +
			"    because = \"sold as savoury\"\n    formula = \"Old*\"\n  }\n}\n",
		"salty.hcl": unsalted,
		"old.hcl":   strings.Replace(unsalted, "Milk buns", "Old buns", 1),
		"open.hcl":  strings.Replace(soundBuns, `"80 g"`, `"?"`, 1),
		"cold.hcl": strings.Replace(soundBuns, `"20 min", at = "200 C", core = "93 C"`,
			`"2 min", at = "120 C"`, 1),
		"own.hcl": "about = \"own\"\n\nrule \"salted\" {\n  on = \"dough\"\n  level = \"note\"\n" +
			"  when = \"dough.salt_pct > 0\"\n  say = \"It is salted.\"\n  why = \"So.\"\n" +
			"  source = \"common practice\"\n}\n",
		"other/house.hcl": "house \"other\" {\n  packs = [\"draft\"]\n}\n",
		"other/buns.hcl":  soundBuns,
		"broken.hcl":      "formula \"x\" {\n  dough \"d\" {\n",
	})
	var out, errs bytes.Buffer
	run([]string{"check", "--as", "lines", "."}, strings.NewReader(""), &out, &errs)
	printed = out.String()
	word := regexp.MustCompile(`^[^:]+:\d+:\d+: ([a-z ]+): `)
	for _, l := range strings.Split(strings.TrimSpace(printed), "\n") {
		m := word.FindStringSubmatch(l)
		if m == nil {
			m = []string{"", ""} // the program's own lines, which are at no place
		}
		words = append(words, m[1])
	}
	for _, want := range []string{"caution", "risk", "note", "unsure", "unread", "unchecked",
		"loosened", "waived"} {
		if !slices.Contains(words, want) {
			t.Errorf("no line says %s:\n%s", want, printed)
		}
	}
	return dir, printed, words
}

// TestGuideMatchers holds the guide's problem matchers: one of them
// takes each line at a place, with its level's severity.
func TestGuideMatchers(t *testing.T) {
	var matchers []struct {
		Severity string
		Pattern  struct {
			Regexp                      string
			File, Line, Column, Message int
		}
	}
	if err := json.Unmarshal([]byte(guideBlock(t, "json", "fileLocation")), &matchers); err != nil {
		t.Fatal(err)
	}
	_, printed, words := linesOfAllKinds(t)
	severities := map[string]string{"stop": "error", "unread": "error", "risk": "warning",
		"unchecked": "warning", "loosened": "warning", "waived stop": "warning",
		"waived risk": "warning",
		"note":        "info", "unsure": "info", "caution": "info", "waived": "info",
		"waived note": "info"}
	for i, l := range strings.Split(strings.TrimSpace(printed), "\n") {
		var got []string
		for _, m := range matchers {
			if found := regexp.MustCompile(m.Pattern.Regexp).FindStringSubmatch(l); found != nil {
				got = append(got, m.Severity)
				if !strings.HasSuffix(found[m.Pattern.File], ".hcl") ||
					found[m.Pattern.Line] == "" ||
					!strings.HasPrefix(found[m.Pattern.Message], words[i]+": ") {
					t.Errorf("%q gives %q", l, found)
				}
			}
		}
		want := severities[words[i]]
		if words[i] == "" && len(got) == 0 {
			continue
		}
		if len(got) != 1 || got[0] != want {
			t.Errorf("%q has the severities %q, and not %q", l, got, want)
		}
	}
}

// TestGuideErrorformat holds the guide's errorformat by Vim itself: it
// gives the level.
func TestGuideErrorformat(t *testing.T) {
	vim, err := exec.LookPath("vim")
	if err != nil {
		t.Skip("vim is not installed: on Debian apt-get install vim; .ci/run does")
	}
	format := strings.TrimSpace(guideBlock(t, "vim", "errorformat"))
	dir, printed, words := linesOfAllKinds(t)
	if err := os.WriteFile(filepath.Join(dir, "lines.txt"), []byte(printed), 0o666); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(vim, "-N", "-u", "NONE", "-i", "NONE", "-n", "-es",
		"-c", format, "-c", "cgetfile lines.txt",
		"-c", `call writefile([json_encode(map(getqflist(), {_, q -> {'line': q.lnum, 'level': `+
			`q.type, 'valid': q.valid}}))], 'read.json')`,
		"-c", "qa!")
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Skipf("this vim is built without what the test needs: %v\n%s", err, out)
	}
	text, err := os.ReadFile(filepath.Join(dir, "read.json"))
	if err != nil {
		t.Fatal(err)
	}
	var read []struct {
		Line, Valid int
		Level       string
	}
	if err := json.Unmarshal(text, &read); err != nil {
		t.Fatal(err)
	}
	var want []string
	for _, w := range words {
		if w != "" {
			want = append(want, w[:1])
		}
	}
	var got []string
	for _, r := range read {
		if r.Valid == 1 && r.Line > 0 {
			got = append(got, r.Level)
		}
	}
	if !slices.Equal(got, want) {
		t.Errorf("vim reads the levels\n%q\nand not\n%q", got, want)
	}
}
