package engine_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/backlog"
	"forebake/engine/batch"
	"forebake/engine/expr"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/reading"
	"forebake/engine/recipe"
	"forebake/engine/rule"
	"forebake/engine/run"
	"forebake/engine/source"
	"forebake/engine/trial"
)

// limits are all bounds of the program, by package and name.
var limits = map[string]int{
	"source.MaxFileBytes": source.MaxFileBytes, "source.MaxLimitBytes": source.MaxLimitBytes,
	"source.MaxBrackets": source.MaxBrackets, "source.MaxSigns": source.MaxSigns,
	"source.MaxDepth": source.MaxDepth, "source.MaxSignRun": source.MaxSignRun,
	"source.MaxChoices": source.MaxChoices, "source.MaxSplats": source.MaxSplats,
	"source.MaxTemplateSigns": source.MaxTemplateSigns,
	"source.MaxDirectives":    source.MaxDirectives,
	"source.MaxHeredocLines":  source.MaxHeredocLines, "source.MaxProblems": source.MaxProblems,
	"recipe.MaxBytes":      recipe.MaxBytes,
	"reading.MaxNameBytes": reading.MaxNameBytes, "formula.MaxParts": formula.MaxParts,
	"formula.MaxIngredients": formula.MaxIngredients, "formula.MaxSteps": formula.MaxSteps,
	"formula.MaxMinutes": formula.MaxMinutes,
	"house.MaxLimit":     house.MaxLimit, "run.MaxJoined": run.MaxJoined,
	"batch.MaxBytes": batch.MaxBytes, "backlog.MaxEntries": backlog.MaxEntries,
	"backlog.MaxBytes": backlog.MaxBytes,
	"rule.MaxRules":    rule.MaxRules, "rule.MaxLimits": rule.MaxLimits,
	"rule.MaxPackBytes": rule.MaxPackBytes, "rule.MaxTextBytes": rule.MaxTextBytes,
	"rule.MaxFigures": rule.MaxFigures,
	"expr.MaxBytes":   expr.MaxBytes, "expr.MaxDepth": expr.MaxDepth,
	"expr.MaxNodes": expr.MaxNodes, "expr.MaxListItems": expr.MaxListItems,
	"expr.MaxDeclared": expr.MaxDeclared, "expr.MaxMeansBytes": expr.MaxMeansBytes,
	"rule.MaxFindings": rule.MaxFindings, "trial.MaxCases": trial.MaxCases,
	"rule.MaxWeighing": rule.MaxWeighing,
}

// The table of limits in DEVELOPERS.md names exactly the program's
// constants Max... with their values.
func TestLimitsAreDocumented(t *testing.T) {
	text, err := os.ReadFile("../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	told := map[string]string{}
	for _, row := range regexp.MustCompile("(?m)^\\| `(\\w+\\.Max\\w+)` \\| ([\\d,]+) \\|").
		FindAllStringSubmatch(string(text), -1) {
		told[row[1]] = strings.ReplaceAll(row[2], ",", "")
	}
	for name, value := range limits {
		if told[name] != fmt.Sprint(value) {
			t.Errorf("DEVELOPERS.md says %q of %s, which is %d", told[name], name, value)
		}
	}
	for name := range told {
		if _, has := limits[name]; !has {
			t.Errorf("DEVELOPERS.md tells of %s, which is no limit", name)
		}
	}
	err = filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") ||
			strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		if err != nil {
			return err
		}
		for _, decl := range file.Decls {
			group, ok := decl.(*ast.GenDecl)
			if !ok || group.Tok != token.CONST {
				continue
			}
			for _, spec := range group.Specs {
				for _, id := range spec.(*ast.ValueSpec).Names {
					name := file.Name.Name + "." + id.Name
					if _, has := limits[name]; !has && strings.HasPrefix(id.Name, "Max") {
						t.Errorf("%s: %s is not in the table of limits", path, name)
					}
				}
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

// Houses may include each other up to the limit.
func TestMaxJoined(t *testing.T) {
	for _, test := range []struct {
		houses int
		fits   bool
	}{{run.MaxJoined - 1, true}, {run.MaxJoined, true}, {run.MaxJoined + 1, false}} {
		dir := t.TempDir()
		for i := range test.houses {
			text := fmt.Sprintf("house \"h%d\" {\n  like = \"../%d/house.hcl\"\n}\n", i, i+1)
			if i == test.houses-1 {
				text = "house \"last\" {\n}\n"
			}
			if err := os.MkdirAll(filepath.Join(dir, fmt.Sprint(i)), 0o777); err != nil {
				t.Fatal(err)
			}
			err := os.WriteFile(filepath.Join(dir, fmt.Sprint(i), "house.hcl"), []byte(text), 0o666)
			if err != nil {
				t.Fatal(err)
			}
		}
		_, problems := engine.New().Load(filepath.Join(dir, "0"))
		if (len(problems) == 0) != test.fits ||
			!test.fits && !strings.Contains(problems[0].Text, "include each other") {
			t.Errorf("%d houses: %v", test.houses, problems)
		}
	}
}
