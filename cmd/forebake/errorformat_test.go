package main

import (
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
)

// Vim jumps by the lines of a check: its default errorformat reads
// file, line, column and text. What it read must match the JSON of the
// run, which counts lines and columns alike.
func TestVimReadsTheLines(t *testing.T) {
	vim, err := exec.LookPath("vim")
	if err != nil {
		t.Skip("vim is not installed: on Debian apt-get install vim; .ci/run does")
	}
	if version, err := exec.Command(vim, "--version").Output(); err != nil ||
		!strings.Contains(string(version), "+quickfix") ||
		!strings.Contains(string(version), "+eval") {
		t.Skip(
			"this vim is built without +quickfix or +eval: on Debian apt-get install vim; " +
				".ci/run does",
		)
	}
	dir := folder(
		t,
		map[string]string{
			"a b.hcl": cautious,
			"c.hcl": strings.Replace(
				cautious,
				`"bread flour"     =`,
				"/* \u00e9 e\u0301 \U0001F950 */\t\"bread flour\" =",
				1,
			),
		},
	)
	printed := answered(t, "check", "--as", "lines", ".")
	type place struct {
		File         string
		Line, Column int
		Text         string
	}
	var want []place
	var js struct {
		Findings []struct {
			File         string
			Line, Column int
			Rule         string
		}
	}
	if err := json.Unmarshal([]byte(answered(t, "check", "--as", "json", ".")), &js); err != nil {
		t.Fatal(err)
	}
	for _, f := range js.Findings {
		want = append(want, place{f.File, f.Line, f.Column, f.Rule})
	}
	if err := os.WriteFile(filepath.Join(dir, "lines.txt"), []byte(printed), 0o666); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(
		vim,
		"-N",
		"-u",
		"NONE",
		"-i",
		"NONE",
		"-n",
		"-es",
		"-c",
		"set encoding=utf-8",
		"-c",
		"cgetfile lines.txt",
		"-c",
		`call writefile([json_encode(map(getqflist(), {_, q -> {'file': q.bufnr > 0 ? `+
			`bufname(q.bufnr) : '', 'line': q.lnum, 'column': q.col, 'text': q.text, 'valid': `+
			`q.valid}}))], 'read.json')`,
		"-c",
		"qa!",
	)
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	text, err := os.ReadFile(filepath.Join(dir, "read.json"))
	if err != nil {
		t.Fatal(err)
	}
	var read []struct {
		File         string
		Line, Column int
		Text         string
		Valid        int
	}
	if err := json.Unmarshal(text, &read); err != nil {
		t.Fatal(err)
	}
	var got []place
	cautions := 0
	for _, r := range read {
		switch {
		// the totals, which are at no place
		case strings.HasPrefix(r.Text, "forebake: ") && r.Valid == 0:
		case r.Valid != 1:
			t.Errorf("vim cannot jump by %+v", r)
		case strings.HasPrefix(strings.TrimSpace(r.Text), "caution: "):
			cautions++
		default:
			rule := r.Text[strings.LastIndex(r.Text, "[")+1:]
			got = append(got, place{r.File, r.Line, r.Column, strings.TrimSuffix(rule, "]")})
		}
	}
	if !reflect.DeepEqual(got, want) || len(got) < 10 || cautions != 2 {
		t.Errorf(
			"vim read %d cautions and\n%s\nthe JSON has\n%s",
			cautions,
			fmt.Sprint(got),
			fmt.Sprint(want),
		)
	}
}
