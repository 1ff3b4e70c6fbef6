package expr_test

import (
	"regexp"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/expr"
)

func TestNamesAsByPattern(t *testing.T) {
	form := regexp.MustCompile(`^[a-z][a-z0-9]*(_[a-z0-9]+)*$`)
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.StringMatching(`[a-z0-9_A-]{0,6}|([a-z_0]|é)*`).Draw(t, "name")
		if got := expr.IsName(name, '_'); got != form.MatchString(name) {
			t.Fatalf("%q: %v", name, got)
		}
	})
}
