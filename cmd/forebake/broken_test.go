package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// made are broken inputs too large for the project, or that an editor
// or a version control system would mend.
func made() map[string][]byte {
	const head = "formula \"Milk buns\" {\n  makes = "
	return map[string][]byte{
		"nested-brackets": []byte(
			head + strings.Repeat("[", 100_000) + strings.Repeat("]", 100_000) + "\n}\n",
		),
		"nested-brackets-few": []byte(
			head + strings.Repeat("[", 200) + strings.Repeat("]", 200) + "\n}\n",
		),
		"nested-brackets-unclosed": []byte(head + strings.Repeat("{", 100_000)),
		"nested-brackets-in-text":  []byte(head + "\"" + strings.Repeat("${[", 5_000) + "\"\n}\n"),
		"too-large": append(
			[]byte(head+"\"24 pieces\"\n}\n"),
			bytes.Repeat([]byte("# a remark\n"), 40_000)...),
		"not-utf8":  []byte("formula \"Milk buns\" {\n  about = \"cr\xe8me\"\n}\n"),
		"utf16":     []byte("\xff\xfef\x00o\x00r\x00m\x00u\x00l\x00a\x00"),
		"zero-byte": []byte("formula \"Milk buns\" {\n  about = \"a\x00b\"\n}\n"),
		"no-bytes":  {},
		"mark-only": []byte("\xef\xbb\xbf"),
	}
}

const brokenDir = "../../testdata/broken"

// TestBrokenFiles checks every file of testdata/broken, and those of
// made. NAME.txt next to NAME.hcl holds exactly what goes to standard
// error; -update writes it. Each must end with status 2 and leave
// standard output empty, however the file is saved.
func TestBrokenFiles(t *testing.T) {
	inputs := made()
	paths, err := filepath.Glob(filepath.Join(brokenDir, "*.hcl"))
	if err != nil || len(paths) == 0 {
		t.Fatal("no broken files", err)
	}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		name := strings.TrimSuffix(filepath.Base(path), ".hcl")
		if inputs[name] != nil {
			t.Errorf("%s is made by the test as well", path)
		}
		inputs[name] = text
	}
	texts, err := filepath.Glob(filepath.Join(brokenDir, "*.txt"))
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range texts {
		if _, has := inputs[strings.TrimSuffix(filepath.Base(path), ".txt")]; !has {
			t.Errorf("%s is of no broken file", path)
		}
	}
	for name, text := range inputs {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			got := complaints(t, name, text)
			golden(t, filepath.Join(brokenDir, name+".txt"), got)
			sorted(t, name, got)
			if len(text) > 64<<10 || bytes.ContainsAny(text, "\x00\r") ||
				bytes.HasPrefix(text, []byte("\xef\xbb\xbf")) ||
				bytes.HasPrefix(text, []byte("\xff\xfe")) {
				return
			}
			same := func(how, got, want string) {
				t.Helper()
				if got != want {
					t.Errorf("%s: got\n%s\nwant\n%s", how, got, want)
				}
			}
			crlf := bytes.ReplaceAll(text, []byte("\n"), []byte("\r\n"))
			same("with CR LF", complaints(t, name, crlf), got)
			same(
				"with a byte-order mark",
				complaints(t, name, append([]byte("\xef\xbb\xbf"), text...)),
				got,
			)
			same("with both", complaints(t, name, append([]byte("\xef\xbb\xbf"), crlf...)), got)
			same(
				"without the last line feed",
				complaints(t, name, bytes.TrimSuffix(text, []byte("\n"))),
				got,
			)
			tabbed, shifts := withTabs(string(text))
			same("with tabs", complaints(t, name, []byte(tabbed)), shifted(name, got, shifts))
		})
	}
}

// complaints gives what a check prints on standard error, and holds
// what is true of every broken file.
func complaints(t *testing.T, name string, text []byte) string {
	t.Helper()
	dir := t.TempDir()
	if err := noHouseAbove(filepath.Join(dir, "x")); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, name+".hcl"), text, 0o666); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command("forebake", "check", name+".hcl")
	cmd.Dir = dir
	var out, errs bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &errs
	err := cmd.Run()
	var exited *exec.ExitError
	if !errors.As(err, &exited) || exited.ExitCode() != exitUnused {
		t.Errorf("ends with %v, not with exit status %d", err, exitUnused)
	}
	if out.Len() > 0 {
		t.Errorf("standard output is not empty: %.200s", out.String())
	}
	if got := errs.String(); strings.Contains(got, "goroutine ") ||
		strings.Contains(got, "panic:") ||
		strings.Contains(got, "fatal error") {
		t.Fatalf("a stack trace: %.400s", got)
	}
	if errs.Len() == 0 {
		t.Error("no complaint on standard error")
	}
	if bad := unclean(errs.String()); bad != "" {
		t.Errorf("standard error: %s", bad)
	}
	return errs.String()
}

// complaint is the beginning of a complaint with a place; what is ready
// to paste is indented below it.
var complaint = regexp.MustCompile(`^([^ :]+\.hcl):(\d+):(\d+): `)

// sorted holds that complaints are in order of line and column, and
// that every line is one or is to be pasted.
func sorted(t *testing.T, name, text string) {
	t.Helper()
	lastLine, lastColumn := 0, 0
	for _, line := range strings.Split(strings.TrimSuffix(text, "\n"), "\n") {
		match := complaint.FindStringSubmatch(line)
		if match == nil {
			if !strings.HasPrefix(line, "    ") && !strings.HasPrefix(line, name+".hcl: ") {
				t.Errorf("neither a complaint with its place nor something to paste: %s", line)
			}
			continue
		}
		at, _ := strconv.Atoi(match[2])
		column, _ := strconv.Atoi(match[3])
		if at < lastLine || at == lastLine && column < lastColumn {
			t.Errorf("out of order: %s", line)
		}
		lastLine, lastColumn = at, column
		if rest := line[len(match[0]):]; strings.HasSuffix(rest, ".") &&
			!strings.HasSuffix(rest, "...") {
			t.Errorf("ends with a full stop: %s", line)
		}
	}
}

// withTabs indents a text by a tab for every two blanks, and gives the
// number of blanks by line.
func withTabs(text string) (string, []int) {
	lines := strings.Split(text, "\n")
	shifts := make([]int, len(lines)+1)
	for i, line := range lines {
		rest := strings.TrimLeft(line, " ")
		pairs := (len(line) - len(rest)) / 2
		lines[i] = strings.Repeat("\t", pairs) + line[2*pairs:]
		shifts[i+1] = 2 * pairs
	}
	return strings.Join(lines, "\n"), shifts
}

// shifted gives the complaints about a file whose blanks became tabs:
// each two blanks are now eight columns.
func shifted(name, text string, shifts []int) string {
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		match := complaint.FindStringSubmatch(line)
		if match == nil {
			continue
		}
		at, _ := strconv.Atoi(match[2])
		column, _ := strconv.Atoi(match[3])
		if blanks := shifts[at]; column > blanks {
			column += 3 * blanks
		} else {
			column = 4*(column-1) + 1
		}
		lines[i] = fmt.Sprintf("%s:%d:%d: %s", match[1], at, column, line[len(match[0]):])
	}
	return strings.Join(lines, "\n")
}

// golden compares what was printed with a file, or renews the file.
func golden(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Fatalf("got\n%s\nwant\n%s", got, want)
	}
}
