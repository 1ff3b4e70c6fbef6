package spelling

import (
	"go/ast"
	"go/constant"
	goparser "go/parser"
	"go/token"
	"go/types"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// module reads the program's own packages as far as constants go.
type module struct {
	fset     *token.FileSet
	known    map[string]*types.Package
	patterns map[string]bool
	open     int // calls of Pattern whose expression is no constant
}

// Import gives one of the program's packages, and an empty one for any other.
func (m *module) Import(path string) (*types.Package, error) {
	if p := m.known[path]; p != nil {
		return p, nil
	}
	folder, own := strings.CutPrefix(path, "forebake/")
	if !own {
		m.known[path] = types.NewPackage(path, filepath.Base(path))
		m.known[path].MarkComplete()
		return m.known[path], nil
	}
	names, err := filepath.Glob(filepath.Join("..", "..", folder, "*.go"))
	if err != nil {
		return nil, err
	}
	var files []*ast.File
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		f, err := goparser.ParseFile(m.fset, name, nil, 0)
		if err != nil {
			return nil, err
		}
		files = append(files, f)
	}
	info := &types.Info{Types: map[ast.Expr]types.TypeAndValue{}}
	// The packages from outside are empty: what is missing of them is no constant.
	config := types.Config{Importer: m, Error: func(error) {}}
	m.known[path], _ = config.Check(path, m.fset, files, info)
	for _, f := range files {
		ast.Inspect(f, func(n ast.Node) bool {
			if call, ok := n.(*ast.CallExpr); ok && isPattern(call.Fun) {
				if v := info.Types[call.Args[0]].Value; v != nil {
					m.patterns[constant.StringVal(v)] = true
				} else {
					m.open++
				}
			}
			return true
		})
	}
	return m.known[path], nil
}

// isPattern reports whether a call is one of spelling.Pattern.
func isPattern(called ast.Expr) bool {
	fn, ok := called.(*ast.SelectorExpr)
	if !ok {
		return false
	}
	of, ok := fn.X.(*ast.Ident)
	return ok && of.Name == "spelling" && fn.Sel.Name == "Pattern"
}

// No pattern of the program has a quick test that rules out what it matches, and few have none.
func TestPatternsOfTheProgram(t *testing.T) {
	m := &module{fset: token.NewFileSet(), known: map[string]*types.Package{},
		patterns: map[string]bool{}}
	err := filepath.WalkDir(filepath.Join("..", "..", "engine"),
		func(path string, d os.DirEntry, err error) error {
			if err == nil && d.IsDir() {
				inside, _ := filepath.Rel(filepath.Join("..", ".."), path)
				_, err = m.Import("forebake/" + filepath.ToSlash(inside))
			}
			return err
		})
	if err != nil {
		t.Fatal(err)
	}
	var patterns []string
	idle := 0
	for text := range m.patterns {
		patterns = append(patterns, text)
		if Pattern(text).filter().any {
			idle++
		}
	}
	slices.Sort(patterns)
	misses(t, patterns)
	t.Logf("%d patterns, %d without a quick test, %d are made as they are needed", len(patterns),
		idle, m.open)
	if len(patterns) < 500 || idle > len(patterns)/10 || m.open > 25 {
		t.Errorf("%d patterns, %d without a quick test, %d made", len(patterns), idle, m.open)
	}
}
