package machine

import (
	"math"
	"strings"
	"testing"

	"forebake/engine/expr"
	"forebake/engine/expr/subject"
	"forebake/engine/figure"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Names and types that the library's checker must refuse, were the
// type-checker of package expr to let them through.
func TestLibraryChecksNamesAndTypes(t *testing.T) {
	const text = "dough.sugar_pct > 1"
	subject, _, fault := subject.New([]string{"dough"}, "rule")
	if fault != "" {
		t.Fatal(fault)
	}
	n := &expr.Names{Subject: subject}
	r := &reading.Reader{File: source.New("when", []byte(text))}
	var offsets []int
	for i := range len(text) + 1 {
		offsets = append(offsets, i)
	}
	x := expr.ParseText(r, text, offsets, n, "when")
	if x == nil {
		t.Fatal(r.Problems)
	}
	if _, err := compile(x, n); err != nil {
		t.Error(err)
	}
	for text, says := range map[string]string{
		"dough.sugr_pct > 1": "unknown field sugr_pct", "dough.family > 1": "invalid operation",
		"dough.sugar_pct": "expected bool", "bun.sugar_pct > 1": "unknown name bun",
		"limit.sugar_pct > 1": "unknown field sugar_pct", "known(dough.sugr_pct)": "unknown field",
		"len(dough.allergens) > 1":         "unknown name len",
		"dough.sugar_pct + dough.name > 1": "invalid operation",
	} {
		if _, err := compileText(text, x, n); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v", text, err)
		}
	}
}

// An interval with an open end is never sampled at one point alone,
// however far its other end lies.
func TestOpenIntervalHasSeveralPoints(t *testing.T) {
	inf := math.Inf(1)
	for _, iv := range []figure.Interval{
		{Lo: 1e9, Hi: inf}, {Lo: -inf, Hi: -1e9}, {Lo: 0, Hi: inf}, {Lo: -inf, Hi: inf},
	} {
		list := numbers(iv, math.NaN(), true)
		if len(list) < 2 {
			t.Errorf("%v: sampled at %v", iv, list)
		}
		for _, c := range list {
			if !iv.Contains(c.value.(float64)) {
				t.Errorf("%v: sampled at %v, outside", iv, c.value)
			}
		}
	}
}
