package engine_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"forebake/engine"
	"forebake/engine/files"
)

// counting counts how often each file is opened.
type counting struct {
	files.Texts
	mutex  sync.Mutex
	opened map[string]int
}

func (c *counting) Read(path string, kind files.Kind) ([]byte, error) {
	c.mutex.Lock()
	c.opened[filepath.ToSlash(filepath.Clean(path))]++
	c.mutex.Unlock()
	return c.Texts.Read(path, kind)
}

// benchLog is a log of the formula "b".
const benchLog = "batch \"1\" {\n  formula = \"b\"\n  date = \"2026-11-25\"\n}\n"

// kitchens writes a folder with two houses, one including the other,
// their own packs, a backlog and formulas, and goes there.
func kitchens(t *testing.T) {
	t.Helper()
	t.Chdir(t.TempDir())
	rule := func(name string) string {
		return "rule \"" + name + "\" {\n  on = \"dough\"\n  level = \"risk\"\n" +
			"  when = \"dough.salt_pct < 1\"\n  say = \"s\"\n  why = \"w\"\n" +
			"  source = \"common practice\"\n}\n"
	}
	for name, text := range map[string]string{
		"house.hcl":         "house \"h\" {\n  packs = [\"balance\", \"./house-rules\"]\n}\n",
		"house-rules/a.hcl": rule("rule-a"), "house-rules/b.hcl": rule("rule-b"),
		"school/house.hcl": "house \"s\" {\n  like = \"../house.hcl\"\n" +
			"  packs = [\"../house-rules\"]\n}\n",
		"school/c.hcl": saltless("c"), "a.hcl": saltless("a"),
		"b.hcl":      saltless("b") + saltless("b2"),
		"broken.hcl": "formula {\n", "b.log.hcl": benchLog, "notes.txt": "", ".hidden.hcl": "",
		"backlog.hcl": "backlog \"2026-01-01\" {\n}\n",
	} {
		if err := os.MkdirAll(filepath.Dir(filepath.FromSlash(name)), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.FromSlash(name), []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
}

// Every verb opens each file once, whatever the number of workers: a
// folder's formulas, the house files, one of which two folders share,
// and the packs that both houses name. Other files are not opened.
func TestEachFileIsOpenedOnce(t *testing.T) {
	kitchens(t)
	houses := []string{"house.hcl", "house-rules/a.hcl", "house-rules/b.hcl"}
	all := append(
		[]string{"a.hcl", "b.hcl", "b.log.hcl", "school/c.hcl", "school/house.hcl", "broken.hcl",
			"backlog.hcl"},
		houses...)
	sound := []string{"a.hcl", "b.hcl", "school"}
	soundFiles := append([]string{"a.hcl", "b.hcl", "b.log.hcl", "school/c.hcl",
		"school/house.hcl"}, houses...)
	for _, c := range []struct {
		name string
		do   func(e *engine.Engine)
		want []string
	}{
		{"check a folder", func(e *engine.Engine) { e.Check(engine.Inputs([]string{"."})) }, all},
		{"check a folder twice named", func(e *engine.Engine) {
			e.Check(engine.Inputs([]string{".", "a.hcl", "./school"}))
		}, all},
		{"check with mends", func(e *engine.Engine) {
			res := e.Check(engine.Inputs(sound))
			e.Suggest(res, res.Places())
		}, soundFiles},
		{"check with the times", func(e *engine.Engine) {
			e.Timed = true
			e.Check(engine.Inputs(sound))
		}, soundFiles},
		{"check with a backlog", func(e *engine.Engine) {
			e.Backlog, _ = e.ReadBacklog("backlog.hcl")
			e.Check(engine.Inputs(sound))
		}, append([]string{"backlog.hcl"}, soundFiles...)},
		{"check a commit", func(e *engine.Engine) {
			e.Check(e.OfCommit([]string{"a.hcl", "broken.hcl", "notes.txt"}))
		}, append([]string{"a.hcl", "broken.hcl"}, houses...)},
		{"check a commit of a house", func(e *engine.Engine) {
			e.Check(e.OfCommit([]string{"a.hcl", "./school/house.hcl", "b.hcl"}))
		}, all},
		{"compare", func(e *engine.Engine) {
			c := e.Compare(engine.Inputs([]string{"a.hcl"})[0],
				engine.Inputs([]string{"school/c.hcl"})[0])
			if len(c.List) != 1 {
				t.Error(c.Problems)
			}
		}, append([]string{"a.hcl", "school/c.hcl", "school/house.hcl"}, houses...)},
		{"mend", func(e *engine.Engine) {
			if res := e.Mend(engine.Inputs(sound), false); changedFiles(res) != 2 {
				t.Error(res.Problems, changedFiles(res))
			}
		}, soundFiles},
		{"facts", func(e *engine.Engine) { e.Facts(engine.Inputs(sound), nil, true) }, soundFiles},
		{"plan", func(e *engine.Engine) {
			e.Plan(engine.Inputs(sound), engine.PlanAsk{Ready: "07:00"})
		}, soundFiles},
		{"sheets", func(e *engine.Engine) {
			e.Sheets(engine.Inputs(sound), engine.PlanAsk{})
		}, soundFiles},
		{"log", func(e *engine.Engine) {
			_, _, err := e.Log(engine.Inputs([]string{"b.hcl"})[0],
				engine.Bench{Formula: "b", Note: "soft", Date: "2026-11-25"})
			if err != nil {
				t.Error(err)
			}
		}, append([]string{"b.hcl", "b.log.hcl"}, houses...)},
		{"history", func(e *engine.Engine) { e.History(engine.Inputs(sound)) }, soundFiles},
		{"why", func(e *engine.Engine) {
			e.Load("school/house.hcl")
		}, append([]string{"school/house.hcl"}, houses...)},
		{"trial", func(e *engine.Engine) {
			e.Trials("school/house.hcl", nil)
		}, append([]string{"school/house.hcl"}, houses...)},
	} {
		for _, workers := range []int{1, 4} {
			texts := &counting{Texts: files.Disk{}, opened: map[string]int{}}
			e := engine.New()
			e.Texts, e.Workers, e.Today = texts, workers, time.Date(
				2026,
				11,
				25,
				0,
				0,
				0,
				0,
				time.UTC,
			)
			c.do(e)
			for path, n := range texts.opened {
				if n != 1 || !slices.Contains(c.want, path) {
					t.Errorf("%s, %d workers: %s is opened %d times", c.name, workers, path, n)
				}
			}
			for _, path := range c.want {
				if texts.opened[path] == 0 {
					t.Errorf("%s, %d workers: %s is not opened", c.name, workers, path)
				}
			}
		}
	}
}

// An editor's unsaved texts replace those on disk: of a formula, of a
// house and of a rule file.
func TestUnsavedTexts(t *testing.T) {
	kitchens(t)
	check := func(texts files.Texts) string {
		e := engine.New()
		e.Texts = texts
		res := e.Check(engine.Inputs([]string{"a.hcl", "b.hcl", "school"}))
		said := []string{fmt.Sprint(res.Problems)}
		for _, f := range res.Findings {
			said = append(said, f.Place.File.Name+" "+f.Rule)
		}
		return strings.Join(said, "\n")
	}
	saved := check(files.Disk{})
	if !strings.Contains(saved, "a.hcl rule-a") || !strings.Contains(saved, "school/c.hcl rule-b") {
		t.Fatal(saved)
	}
	for _, c := range []struct{ path, text, gone string }{
		{"a.hcl", strings.Replace(saltless("a"), `"5 g"`, `"18 g"`, 1), "a.hcl rule-a"},
		{"house.hcl", "house \"h\" {\n  packs = [\"balance\"]\n}\n", "b.hcl rule-b"},
		{"house-rules/b.hcl", "about = \"none\"\n", "school/c.hcl rule-b"},
	} {
		unsaved := check(
			files.Held{
				Texts: map[string][]byte{filepath.FromSlash(c.path): []byte(c.text)},
				Below: files.Disk{},
			},
		)
		if !strings.Contains(saved, c.gone) || strings.Contains(unsaved, c.gone) {
			t.Errorf("%s unsaved: %s\nsaved: %s", c.path, unsaved, saved)
		}
	}
	if again := check(files.Disk{}); again != saved {
		t.Errorf("%s\nand before\n%s", again, saved)
	}
}

// Files are opened in one place, and rules judged in one place and in
// the search of mend: no verb can read a file without its limit, or
// answer without waivers.
func TestOneOpeningAndOneJudge(t *testing.T) {
	only := map[string][]string{
		"os.Open": {
			"engine/files",
		}, "os.OpenFile": {"engine/files"}, "os.ReadFile": {}, "os.DirFS": {},
		"rule.NewJudge": {"engine/run", "engine/mend"},
	}
	seen := map[string]bool{}
	for _, root := range []string{"../cmd", "../engine"} {
		err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") ||
				strings.HasSuffix(path, "_test.go") ||
				strings.Contains(path, "tablegen") || strings.Contains(path, "jsontext/schema") {
				return err
			}
			file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ParseComments)
			if err != nil {
				return err
			}
			for _, c := range file.Comments {
				if strings.Contains(c.List[0].Text, "//go:build ignore") {
					return nil // a generator, not part of the program
				}
			}
			pkg := filepath.ToSlash(
				strings.TrimPrefix(filepath.Dir(path), ".."+string(filepath.Separator)),
			)
			ast.Inspect(file, func(n ast.Node) bool {
				s, ok := n.(*ast.SelectorExpr)
				if !ok {
					return true
				}
				x, ok := s.X.(*ast.Ident)
				if !ok {
					return true
				}
				name := x.Name + "." + s.Sel.Name
				if places, held := only[name]; held {
					seen[name+" "+pkg] = true
					if !slices.Contains(places, pkg) {
						t.Errorf(
							"%s calls %s; only %s may",
							path,
							name,
							strings.Join(places, " and "),
						)
					}
				}
				return true
			})
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	for name, places := range only {
		for _, pkg := range places {
			if !seen[name+" "+pkg] {
				t.Errorf("%s does not call %s any more", pkg, name)
			}
		}
	}
}
