// Mutate moves each fitted constant by a fifth, up and down, and
// reports the changes that no test of its package notices, or of the
// package on its line. It works on a copy of the project and takes
// minutes: it is no part of go test.
//
//	go run ./.ci/mutate                            every line of .ci/mutations.txt
//	go run ./.ci/mutate -only science/heat         the lines that hold this text
//	go run ./.ci/mutate -sample 5                  five lines, spread over the list
//
// A line of the list is a file and a constant:
// "engine/science/heat/oven.go crumbK". A constant inside a table is
// named by its way in: "ovenConvection.DeckOven",
// "coefficients.Room.1". A third word is the package whose tests hold
// it, where that is another one.
package main

import (
	"bufio"
	"flag"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
)

// factors are what each constant is multiplied by.
var factors = []string{"1.2", "0.8"}

func main() {
	list := flag.String("list", ".ci/mutations.txt", "file of the constants")
	only := flag.String("only", "", "take only the lines that hold this text")
	sample := flag.Int("sample", 0, "take this many lines, spread over the list; 0 for all")
	flag.Parse()
	survivors, err := run(*list, *only, *sample, os.Stdout)
	if err != nil {
		fmt.Fprintln(os.Stderr, "mutate:", err)
		os.Exit(2)
	}
	if survivors > 0 {
		os.Exit(1)
	}
}

// run tries every constant of the list and counts the mutants
// that live.
func run(list, only string, sample int, out io.Writer) (survivors int, err error) {
	lines, err := read(list, only, sample)
	if err != nil {
		return 0, err
	}
	dir, err := os.MkdirTemp("", "mutate")
	if err != nil {
		return 0, err
	}
	defer os.RemoveAll(dir)
	if err := copyTree(".", dir); err != nil {
		return 0, err
	}
	if err := known(list, lines, "."); err != nil {
		return 0, err
	}
	sound := map[string]bool{} // packages whose tests pass unchanged
	for _, l := range lines {
		pkg := "./" + l.heldBy
		if !sound[pkg] { // several times, because a test of drawn inputs may fail now and then
			if said, ok := tests(dir, pkg, 5); !ok {
				return survivors, fmt.Errorf("%s fails before anything is changed:\n%s", pkg, said)
			}
			sound[pkg] = true
		}
		path := filepath.Join(dir, l.file)
		was, err := os.ReadFile(path)
		if err != nil {
			return survivors, err
		}
		from, to, err := find(l.file, was, l.name)
		if err != nil {
			return survivors, fmt.Errorf("%s:%d: %w", list, l.number, err)
		}
		for _, factor := range factors {
			changed := string(
				was[:from],
			) + "((" + string(
				was[from:to],
			) + ") * " + factor + ")" + string(
				was[to:],
			)
			if err := os.WriteFile(path, []byte(changed), 0o644); err != nil {
				return survivors, err
			}
			said, passed := tests(dir, pkg, 1)
			switch {
			case passed:
				survivors++
				fmt.Fprintf(out, "LIVES   %s %s * %s\n", l.file, l.name, factor)
			case strings.Contains(said, "[build failed]") ||
				strings.Contains(said, "[setup failed]"):
				return survivors, fmt.Errorf(
					"%s %s * %s does not compile:\n%s",
					l.file,
					l.name,
					factor,
					said,
				)
			default:
				fmt.Fprintf(out, "killed  %s %s * %s\n", l.file, l.name, factor)
			}
		}
		if err := os.WriteFile(path, was, 0o644); err != nil {
			return survivors, err
		}
	}
	fmt.Fprintf(
		out,
		"%d constants, %d mutants, %d live\n",
		len(lines),
		len(lines)*len(factors),
		survivors,
	)
	return survivors, nil
}

// known checks that each constant of the list stands in its file.
func known(list string, lines []line, root string) error {
	for _, l := range lines {
		text, err := os.ReadFile(filepath.Join(root, l.file))
		if err == nil {
			_, _, err = find(l.file, text, l.name)
		}
		if err != nil {
			return fmt.Errorf("%s:%d: %w", list, l.number, err)
		}
	}
	return nil
}

// line is one constant of the list.
type line struct {
	file, name, heldBy string
	number             int
}

func read(list, only string, sample int) (lines []line, err error) {
	f, err := os.Open(list)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	in := bufio.NewScanner(f)
	for number := 1; in.Scan(); number++ {
		text, _, _ := strings.Cut(in.Text(), "#")
		fields := strings.Fields(text)
		if len(fields) == 0 || !strings.Contains(text, only) {
			continue
		}
		if len(fields) != 2 && len(fields) != 3 {
			return nil, fmt.Errorf("%s:%d: want a file and a constant, have %q", list, number, text)
		}
		heldBy := filepath.ToSlash(filepath.Dir(fields[0]))
		if len(fields) == 3 {
			heldBy = fields[2]
		}
		lines = append(lines, line{fields[0], fields[1], heldBy, number})
	}
	if sample > 0 && sample < len(lines) {
		var some []line
		for i := range sample {
			some = append(some, lines[i*len(lines)/sample])
		}
		lines = some
	}
	if len(lines) == 0 && in.Err() == nil {
		return nil, fmt.Errorf("%s: no line to try", list)
	}
	return lines, in.Err()
}

// find gives the bytes of a constant's value, from and to.
func find(file string, text []byte, name string) (from, to int, err error) {
	set := token.NewFileSet()
	tree, err := parser.ParseFile(set, file, text, 0)
	if err != nil {
		return 0, 0, err
	}
	way := strings.Split(name, ".")
	var value ast.Expr
	ast.Inspect(tree, func(n ast.Node) bool {
		spec, ok := n.(*ast.ValueSpec)
		if !ok {
			return true
		}
		for i, id := range spec.Names {
			if id.Name == way[0] && i < len(spec.Values) {
				value = spec.Values[i]
			}
		}
		return true
	})
	if value == nil {
		return 0, 0, fmt.Errorf("no value of %s in %s", way[0], file)
	}
	for _, key := range way[1:] {
		value, err = within(value, key)
		if err != nil {
			return 0, 0, fmt.Errorf("%s: %w", name, err)
		}
	}
	return set.Position(value.Pos()).Offset, set.Position(value.End()).Offset, nil
}

// within goes one step into a table: by field or key, or by number
// from 0.
func within(value ast.Expr, key string) (ast.Expr, error) {
	table, ok := value.(*ast.CompositeLit)
	if !ok {
		return nil, fmt.Errorf("%q leads into no table", key)
	}
	for i, element := range table.Elts {
		pair, keyed := element.(*ast.KeyValueExpr)
		if id, ok := keyOf(pair, keyed); ok && id == key {
			return pair.Value, nil
		}
		if at, err := strconv.Atoi(key); err == nil && at == i && !keyed {
			return element, nil
		}
	}
	return nil, fmt.Errorf("no element %q", key)
}

func keyOf(pair *ast.KeyValueExpr, keyed bool) (string, bool) {
	if !keyed {
		return "", false
	}
	switch k := pair.Key.(type) {
	case *ast.Ident:
		return k.Name, true
	case *ast.BasicLit:
		return k.Value, true
	}
	return "", false
}

// tests runs a package's tests so many times; passed reports whether
// they hold. A test that fails now and then would kill every mutant.
func tests(dir, pkg string, times int) (said string, passed bool) {
	c := exec.Command("go", "test", "-count="+strconv.Itoa(times), "-failfast", pkg)
	c.Dir = dir
	out, err := c.CombinedOutput()
	return string(out), err == nil
}

// copyTree copies the project without its history.
func copyTree(from, to string) error {
	return filepath.WalkDir(from, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && d.Name() == ".git" {
			return filepath.SkipDir
		}
		rel, err := filepath.Rel(from, path)
		if err != nil {
			return err
		}
		target := filepath.Join(to, rel)
		switch {
		case d.IsDir():
			return os.MkdirAll(target, 0o755)
		case !d.Type().IsRegular() || d.Name() == ".git":
			return nil
		}
		data, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		return os.WriteFile(target, data, 0o644)
	})
}
