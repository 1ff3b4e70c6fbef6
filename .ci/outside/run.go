package outside

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"time"
)

// Finding is one entry of the findings that a check prints as JSON.
type Finding struct {
	Rule    string `json:"rule"`
	Level   string `json:"level"`
	Answer  string `json:"answer"`
	Formula string `json:"formula"`
	Subject string `json:"subject"`
	File    string `json:"file"`
	Line    int    `json:"line"`
	Column  int    `json:"column"`
	Text    string `json:"text"`
	Doubt   bool   `json:"doubt"`
	Safety  bool   `json:"food_safety"`
}

// Flagged reports whether the program found the fault. A waived finding
// was found as well.
func (f *Finding) Flagged() bool { return f.Answer == "flagged" || f.Answer == "waived" }

// Definite reports whether the finding holds over the whole range of
// what is known.
func (f *Finding) Definite() bool { return f.Flagged() && !f.Doubt }

// Severity orders the levels: 3 for stop, 2 for risk, 1 for note, 0 for
// another word.
func Severity(level string) int {
	switch level {
	case "stop":
		return 3
	case "risk":
		return 2
	case "note":
		return 1
	}
	return 0
}

// Answer is all that one check said of one file.
type Answer struct {
	Findings []Finding
	Assumed  []string // what the report says was assumed, one a setting
	Refused  string   // the program's complaint about the file; "" where it was judged
	Crashed  string   // how the program ended; "" where it ended as it should
}

// Program is the built program with the time that one run may take.
type Program struct {
	Path    string
	Timeout time.Duration
}

// NewProgram finds the program.
func NewProgram(path string) (*Program, error) {
	full, err := filepath.Abs(path)
	if err != nil {
		return nil, err
	}
	if _, err := os.Stat(full); err != nil {
		return nil, fmt.Errorf("the program to be measured: %w", err)
	}
	return &Program{Path: full, Timeout: 2 * time.Minute}, nil
}

// report is what is read of the JSON of a check.
type report struct {
	Findings []Finding
	Totals   struct{ Formulas int }
	Assumed  []struct {
		File    string
		Assumed []string
	}
}

var complaint = regexp.MustCompile(`(?m)^([^\s:]+\.hcl):\d+`)

// Check judges files, given by name below dir, in one run. Where the
// run crashes, or where the number of formulas judged does not agree
// with the answers, the files are run in two halves. formulas says how
// many formulas each file holds.
func (p *Program) Check(dir string, files []string, formulas map[string]int) map[string]*Answer {
	out := map[string]*Answer{}
	if len(files) == 0 {
		return out
	}
	ctx, cancel := context.WithTimeout(context.Background(), p.Timeout)
	defer cancel()
	cmd := exec.CommandContext(ctx, p.Path, append([]string{"check", "--as", "json"}, files...)...)
	cmd.Dir = dir
	var stdout, stderr bytes.Buffer
	cmd.Stdout, cmd.Stderr = &stdout, &stderr
	err := cmd.Run()

	var report report
	var exit *exec.ExitError
	crashed := ""
	switch {
	case ctx.Err() != nil:
		crashed = fmt.Sprintf("not done after %v", p.Timeout)
	case errors.As(err, &exit) && exit.ExitCode() != 1 && exit.ExitCode() != 2:
		crashed = fmt.Sprintf("ended with %v", err)
	case err != nil && !errors.As(err, &exit):
		crashed = err.Error()
	case strings.Contains(stderr.String(), "goroutine ") &&
		strings.Contains(stderr.String(), "panic"):
		crashed = "panic"
	case stdout.Len() > 0 && json.Unmarshal(stdout.Bytes(), &report) != nil:
		crashed = "printed JSON that cannot be read"
	}
	halves := func() map[string]*Answer {
		half := len(files) / 2
		for _, part := range [][]string{files[:half], files[half:]} {
			for name, a := range p.Check(dir, part, formulas) {
				out[name] = a
			}
		}
		return out
	}
	if crashed != "" {
		if len(files) > 1 {
			return halves()
		}
		first, _, _ := strings.Cut(strings.TrimSpace(stderr.String()), "\n")
		out[files[0]] = &Answer{Crashed: strings.TrimSpace(crashed + ": " + first)}
		return out
	}
	for _, name := range files {
		out[name] = &Answer{}
	}
	for _, line := range strings.Split(stderr.String(), "\n") {
		if m := complaint.FindStringSubmatch(line); m != nil {
			name := filepath.ToSlash(filepath.Clean(m[1]))
			for _, a := range about(name, out) {
				if a.Refused == "" {
					a.Refused = line
				}
			}
		}
	}
	judged := 0
	for name, a := range out {
		if a.Refused == "" {
			judged += formulas[name]
		}
	}
	if judged != report.Totals.Formulas {
		if len(files) > 1 {
			return halves()
		}
		if a := out[files[0]]; a.Refused == "" {
			a.Refused = strings.TrimSpace("not judged: " + stderr.String())
		}
		return out
	}
	for _, f := range report.Findings {
		if a := out[f.File]; a != nil {
			a.Findings = append(a.Findings, f)
		}
	}
	report.takeAssumed(out)
	return out
}

// about gives the answers that a complaint about a file affects. Those
// of a house file are all beside and below it.
func about(name string, out map[string]*Answer) []*Answer {
	if a := out[name]; a != nil {
		return []*Answer{a}
	}
	dir, isHouse := strings.CutSuffix(name, "house.hcl")
	if !isHouse {
		return nil
	}
	var all []*Answer
	for file, a := range out {
		if strings.HasPrefix(file, dir) {
			all = append(all, a)
		}
	}
	return all
}

// takeAssumed reads a report's assumptions: those of a formula for its
// file, those of a kitchen for all files under its house.
func (r *report) takeAssumed(out map[string]*Answer) {
	for _, a := range r.Assumed {
		for _, answer := range about(filepath.ToSlash(filepath.Clean(a.File)), out) {
			answer.Assumed = append(answer.Assumed, a.Assumed...)
		}
	}
}
