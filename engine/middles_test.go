package engine_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"
)

// Reasons why code may take the middle of an interval. Any other range
// is followed as one: a middle in its place would hide an answer that a
// point inside turns.
const (
	// The middle run of three takes the middle of every figure: a
	// "middle" rule and a model's best single figure come from it. The
	// cold and the warm run hold the ends.
	middleRun = "the middle run"
	// A range or "?" is settled before: the sheet computes the figure
	// once for each end (formula.Spans, kitchen.Spans), and the figure
	// spans the results.
	settled = "settled: each end is reckoned on a sheet of its own"
	begins  = "where a search or a trial begins; what it finds is proven by a check"
	printed = "printed"
	// An order, a place in a list or a name has one answer; the file
	// says that it may turn.
	oneOrder = "one order has to be chosen, and where the ends turn it the answer says so"
	drawn    = "a curve is drawn through the middle run, with a band for the ends"
	pinch    = "a weight that is open by a pinch moves no temperature"
	scaled   = "a range within 1 % of its middle: any wider one is refused"
	offered  = "which name an error offers; no answer comes of it"
)

// middles says how often a file takes a middle, and why.
var middles = map[string]struct {
	times int
	why   string
}{
	"engine/cooling/cooling.go":         {4, middleRun},
	"engine/cost/cost.go":               {3, oneOrder + "; " + printed},
	"engine/cost/label.go":              {2, oneOrder},
	"engine/expr/derive.go":             {1, middleRun},
	"engine/facts/sheet.go":             {1, begins},
	"engine/formula/families.go":        {3, offered},
	"engine/formula/culture/culture.go": {1, middleRun},
	"engine/history/bake.go":            {7, settled},
	"engine/history/bath.go":            {1, middleRun},
	"engine/history/history.go":         {2, middleRun},
	"engine/history/shape.go":           {6, settled},
	"engine/formula/values/stands.go":   {1, settled},
	"engine/history/steps.go":           {1, settled},
	"engine/history/evidence.go":        {2, settled},
	"engine/history/wait.go":            {6, middleRun},
	"engine/makeup/activity.go":         {1, middleRun},
	"engine/makeup/thermal.go":          {7, middleRun + "; " + settled + "; " + pinch},
	"engine/mend/levers/addition.go":    {2, begins},
	"engine/mend/levers/amount.go":      {4, begins},
	"engine/mend/levers/classes.go":     {5, begins},
	"engine/mend/levers/restated.go":    {6, begins},
	"engine/mixing/answer.go":           {6, middleRun},
	"engine/mixing/mixing.go":           {1, middleRun},
	"engine/process/ferment.go":         {2, middleRun},
	"engine/process/mixing.go":          {10, middleRun + "; " + pinch},
	"engine/process/oven.go":            {1, settled},
	"engine/process/part.go":            {6, middleRun},
	"engine/process/shaping.go":         {14, middleRun},
	"engine/process/stage.go":           {2, middleRun},
	"engine/process/timeline.go":        {3, printed},
	"engine/rule/levers.go":             {1, begins},
	"engine/safety/clock/clock.go":      {1, middleRun},

	"engine/safety/exposure.go": {1, settled},
	"engine/safety/keeping.go":  {1, settled},
	"engine/safety/kill.go":     {3, middleRun},
	"engine/scale/want.go":      {6, scaled},
	"engine/sheet/curve.go":     {5, drawn},
}

// No code takes the middle of a range without a reason above.
func TestMiddlesHaveReasons(t *testing.T) {
	got := map[string]int{}
	err := filepath.WalkDir("..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(path) != ".go" ||
			strings.HasSuffix(path, "_test.go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if call, ok := n.(*ast.CallExpr); ok && len(call.Args) == 0 {
				if s, ok := call.Fun.(*ast.SelectorExpr); ok && s.Sel.Name == "Mid" {
					got[filepath.ToSlash(strings.TrimPrefix(path, "../"))]++
				}
			}
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for file, n := range got {
		if m := middles[file]; m.times != n {
			t.Errorf("%s takes a middle %d times, and %d have a reason (%s)", file, n,
				m.times, m.why)
		}
	}
	for file, m := range middles {
		if got[file] == 0 {
			t.Errorf("%s takes no middle any more: take its row out", file)
		}
		if m.why == "" {
			t.Errorf("%s has no reason", file)
		}
	}
}
