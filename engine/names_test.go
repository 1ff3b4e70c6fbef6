package engine_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"forebake/engine/formula"
)

// rowsOf says in which file a closed list's rows are. A name of the
// list is in quotes only there: all other code asks the rows.
var rowsOf = []struct {
	file  string
	names []string
	other []string // where the same word means something else, as "file word"
}{
	{"engine/formula/verbs.go", formula.VerbNames(nil), []string{
		"engine/formula/kinds.go wash",          // a kind of part
		"engine/larder/bounds.go wash",          // the same
		"engine/formula/values/stands.go shape", // how a part stands: a slab, a ball
		"engine/formula/ways.go pan",            // a way to cook
		"engine/said/other.go pan",              // a tin
		"engine/said/said.go cool",              // how warm a thing is
	}},
	{"engine/formula/ways.go", wayNames(), []string{
		"engine/formula/verbs.go pan", // a verb
		// a key for the fat that a dough is fried in
		"engine/formula/kinds.go frying", "engine/formula/read/blocks.go frying",
		"engine/said/other.go pan",      // a tin
		"engine/formula/verbs.go whisk", // a word for a verb
		"engine/plan/solve.go mixer",    // a tool that the kitchen has once
	}},
}

func wayNames() []string {
	names := make([]string, len(formula.Ways))
	for i, w := range formula.Ways {
		names[i] = w.Name
	}
	return names
}

// No verb and no way is known by its name outside its row.
func TestNamesStandInTheirRows(t *testing.T) {
	eachFile(t, func(path string, set *token.FileSet, file *ast.File) {
		ast.Inspect(file, func(n ast.Node) bool {
			switch x := n.(type) {
			case *ast.ImportSpec:
				return false
			case *ast.BasicLit:
				if x.Kind == token.STRING {
					checkWord(t, path, set.Position(x.Pos()).Line, x.Value)
				}
			case *ast.BinaryExpr:
				if x.Op == token.EQL || x.Op == token.NEQ {
					if isVerbName(x.X) || isVerbName(x.Y) {
						t.Errorf("%s: a verb is compared by its name; ask its row",
							set.Position(x.Pos()))
					}
				}
			case *ast.SwitchStmt:
				if isVerbName(x.Tag) {
					t.Errorf("%s: a verb is told apart by its name; ask its row",
						set.Position(x.Pos()))
				}
			}
			return true
		})
	})
}

func checkWord(t *testing.T, path string, line int, literal string) {
	word, err := strconv.Unquote(literal)
	if err != nil {
		t.Fatal(err)
	}
	if strings.HasPrefix(path, "engine/science/") {
		return // science knows no step: its words are those of a model
	}
	if path == "engine/recipe/draft/words.go" || path == "engine/said/languages.go" {
		return // words that a test of their own holds against the rows
	}
	if path == "engine/larder/table.go" {
		return // generated: its words are those of foods' names
	}
	for _, rows := range rowsOf {
		if path == rows.file || !contains(rows.names, word) || contains(rows.other, path+" "+word) {
			continue
		}
		t.Errorf("%s:%d: %q stands outside its row in %s", path, line, word, rows.file)
	}
}

// isVerbName reports whether an expression is the name of a step's
// verb: s.Verb.Name.
func isVerbName(e ast.Expr) bool {
	name, ok := e.(*ast.SelectorExpr)
	if !ok || name.Sel.Name != "Name" {
		return false
	}
	verb, ok := name.X.(*ast.SelectorExpr)
	return ok && verb.Sel.Name == "Verb"
}

// eachFile visits every Go file of the program except tests
// and generators.
func eachFile(t *testing.T, visit func(path string, set *token.FileSet, file *ast.File)) {
	t.Helper()
	files := 0
	for _, root := range []string{"../cmd", "../engine", "../rules"} {
		err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") ||
				strings.HasSuffix(path, "_test.go") {
				return err
			}
			set := token.NewFileSet()
			file, err := parser.ParseFile(set, path, nil, 0)
			if err != nil {
				return err
			}
			files++
			visit(strings.TrimPrefix(filepath.ToSlash(path), "../"), set, file)
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if files < 100 {
		t.Fatalf("%d files were looked at; there are more", files)
	}
}
