package engine_test

import (
	"bytes"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// mostLines bounds a package's lines, without its tests and tables.
const mostLines = 2500

// tables are the files that declare rows, each with its reason. A
// longer list is no harder to read, so its lines do not count.
var tables = map[string]string{
	"cmd/forebake/*.go":            "one file a verb: its words, its flags, its call of the engine",
	"engine/larder/table.go":       "generated from larder.csv",
	"engine/larder/preparation.go": "words of preparation, and which items they leave as is",
	"engine/formula/verbs.go":      "one row a step verb",
	"engine/formula/open.go":       "one entry an option: what may stand for ?",
	"engine/formula/ways.go":       "one row a way",
	"engine/formula/kinds.go":      "one row a word for a kind of part",
	"engine/formula/places.go":     "one row a place",
	"engine/formula/stands.go":     "one row a way in which a large piece stands",
	"engine/said/measures.go":      "one row a kitchen measure that hangs on the ingredient",
	"engine/said/languages.go":     "one row a step: other languages' words for it",
	"engine/recipe/cues.go":        "one row a kind of step or part: the words for it",
	"engine/recipe/usual.go":       "one row a usual time, way or amount",
	"engine/recipe/draft/words.go": "one row a step or way that a draft is written in",
	"engine/facts/partfacts.go":    "one entry a figure of a part",
	"engine/facts/stepfacts.go":    "one entry a figure of a step",
	"engine/facts/hazards.go":      "one entry a figure of a hazard",
	"engine/facts/otherfacts.go":   "one entry a figure of the other subjects",
	"engine/family/practice.go":    "one row a published range",
	"engine/mend/levers/*.go":      "one file a lever",
}

// rowOf is the text that makes a file of a pattern a row of the table,
// where others are none.
var rowOf = map[string]string{
	"cmd/forebake/*.go":       "cmd := &cobra.Command{",
	"engine/mend/levers/*.go": "{ register(",
}

// isTable reports whether a file is one of the tables.
func isTable(path string, text []byte) bool {
	for pattern := range tables {
		if is, _ := filepath.Match(pattern, path); is {
			return bytes.Contains(text, []byte(rowOf[pattern]))
		}
	}
	return false
}

// eachText gives every file of the program except tests, with its path
// from the root.
func eachText(t *testing.T, visit func(path string, text []byte)) {
	t.Helper()
	for _, root := range []string{"../cmd", "../engine", "../rules"} {
		err := filepath.WalkDir(root, func(path string, _ fs.DirEntry, err error) error {
			if err != nil || !strings.HasSuffix(path, ".go") ||
				strings.HasSuffix(path, "_test.go") {
				return err
			}
			text, err := os.ReadFile(path)
			if err == nil {
				visit(strings.TrimPrefix(filepath.ToSlash(path), "../"), text)
			}
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
}

// TestLinesOfPackages bounds each package. With -v it prints each one's
// lines, its tables apart.
func TestLinesOfPackages(t *testing.T) {
	code, rows := map[string]int{}, map[string]int{}
	used := map[string]bool{}
	eachText(t, func(path string, text []byte) {
		pkg, n := filepath.ToSlash(filepath.Dir(path)), bytes.Count(text, []byte("\n"))
		for pattern := range tables {
			if is, _ := filepath.Match(pattern, path); is {
				used[pattern] = true
			}
		}
		if isTable(path, text) {
			rows[pkg] += n
			n = 0
		}
		code[pkg] += n
	})
	var names []string
	for pkg := range code {
		names = append(names, pkg)
	}
	slices.Sort(names)
	var list strings.Builder
	for _, pkg := range names {
		fmt.Fprintf(&list, "\n%-30s %5d", pkg, code[pkg])
		if rows[pkg] > 0 {
			fmt.Fprintf(&list, " and %d of tables", rows[pkg])
		}
		if code[pkg] > mostLines {
			t.Errorf("%s has %d lines; %d is the most; split it along its dependencies",
				pkg, code[pkg], mostLines)
		}
	}
	t.Log(list.String())
	for pattern := range tables {
		if !used[pattern] {
			t.Errorf("no file is named %s", pattern)
		}
	}
}

// mostOfFunction bounds the lines of a function. Tables in a function's
// body count.
const mostOfFunction = 80

// long are the functions over the bound.
var long = []string{
	"engine/larder/internal/tablegen/tablegen.go item", // one line a column
}

// TestLinesOfFunctions bounds each function. With -v it prints the
// longest five.
func TestLinesOfFunctions(t *testing.T) {
	type function struct {
		name  string
		lines int
	}
	var all []function
	eachText(t, func(path string, text []byte) {
		set := token.NewFileSet()
		file, err := parser.ParseFile(set, path, text, 0)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range file.Decls {
			if f, ok := d.(*ast.FuncDecl); ok {
				lines := set.Position(f.End()).Line - set.Position(f.Pos()).Line + 1
				all = append(all, function{path + " " + f.Name.Name, lines})
			}
		}
	})
	slices.SortStableFunc(all, func(a, b function) int { return b.lines - a.lines })
	for _, f := range all[:5] {
		t.Logf("%3d %s", f.lines, f.name)
	}
	for _, f := range all {
		if f.lines > mostOfFunction && !slices.Contains(long, f.name) {
			t.Errorf("%s has %d lines; %d is the most", f.name, f.lines, mostOfFunction)
		}
	}
}
