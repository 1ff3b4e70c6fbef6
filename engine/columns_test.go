package engine_test

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"
)

// mostColumns bounds a line of code or comment; a tab counts four.
const mostColumns = 100

// isGenerated is the mark of a file that a program wrote.
var isGenerated = regexp.MustCompile(`(?m)^// Code generated .* DO NOT EDIT\.$`)

// eachSource gives every Go file of the tree that a person writes,
// tests too, with its path from the root.
func eachSource(t *testing.T, visit func(path, text string)) {
	t.Helper()
	for _, root := range []string{"../.ci", "../cmd", "../engine", "../rules"} {
		err := filepath.WalkDir(root, func(path string, _ fs.DirEntry, err error) error {
			if err != nil || !strings.HasSuffix(path, ".go") {
				return err
			}
			text, err := os.ReadFile(path)
			if err == nil && !isGenerated.Match(text) {
				visit(strings.TrimPrefix(filepath.ToSlash(path), "../"), string(text))
			}
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
}

// TestColumns bounds every line.
func TestColumns(t *testing.T) {
	eachSource(t, func(path, text string) {
		for n, line := range strings.Split(text, "\n") {
			columns := utf8.RuneCountInString(line) + 3*strings.Count(line, "\t")
			if columns > mostColumns {
				t.Errorf("%s:%d: %d columns, where %d is the most; break the line at an operator "+
					"or a list, or name a part of it", path, n+1, columns, mostColumns)
			}
		}
	})
}
