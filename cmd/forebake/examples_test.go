package main

import (
	"bytes"
	"regexp"
	"strings"
	"testing"
)

var exampleLine = regexp.MustCompile(`(?m)^  (forebake|source|nvim) `)

// TestEveryVerbHasExamples holds that each verb's help shows two uses
// within 80 columns: a folded line leaves a word or two on the next.
func TestEveryVerbHasExamples(t *testing.T) {
	t.Setenv("COLUMNS", "200")
	var out, errs bytes.Buffer
	run([]string{"--help"}, strings.NewReader(""), &out, &errs)
	_, list, _ := strings.Cut(out.String(), "Available Commands:\n")
	list, _, _ = strings.Cut(list, "\n\n")
	verbs := regexp.MustCompile(`(?m)^  ([a-z]+) `).FindAllStringSubmatch(list, -1)
	if len(verbs) < 15 {
		t.Fatalf("%d verbs in %s", len(verbs), list)
	}
	for _, v := range verbs {
		if v[1] == "help" {
			continue
		}
		var help bytes.Buffer
		run([]string{v[1], "--help"}, strings.NewReader(""), &help, &errs)
		about, _, _ := strings.Cut(help.String(), "\n\nUsage:")
		for _, row := range strings.Split(about, "\n") {
			if len([]rune(row)) > 80 && row[0] != ' ' { // a table folds within its column
				t.Errorf("%s --help: %q is longer than 80 columns", v[1], row)
			}
		}
		_, examples, _ := strings.Cut(help.String(), "Examples:\n")
		examples, _, _ = strings.Cut(examples, "\n\n")
		if n := len(exampleLine.FindAllString(examples, -1)); n < 2 {
			t.Errorf("%s --help has %d examples", v[1], n)
		}
	}
}
