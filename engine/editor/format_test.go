package editor_test

import (
	"path/filepath"
	"strings"
	"testing"
)

// TestFormat leaves the demo formulas as they are, and changes spaces
// alone in others.
func TestFormat(t *testing.T) {
	c := start(t, object{})
	paths, _ := filepath.Glob("../../formulas/*.hcl")
	format := func(path string) list {
		var edits list
		c.call("textDocument/formatting", object{"textDocument": object{"uri": uri(path)}}, &edits)
		return edits
	}
	for _, p := range paths {
		if filepath.Base(p) == "house.hcl" {
			continue
		}
		path, text := demo(t, filepath.Base(p))
		c.open(path, text)
		if edits := format(path); len(edits) > 0 {
			t.Errorf("%s is not aligned: %v", path, edits)
		}
	}
	path, text := demo(t, "plain-milk-loaf.hcl")
	c.change(path, 2, object{"text": strings.ReplaceAll(text, " = ", "=")})
	edits := format(path)
	if len(edits) == 0 {
		t.Error("a text without blanks is aligned")
	}
	for _, e := range edits {
		if strings.ContainsAny(e.(object)["newText"].(string), "\t") {
			t.Errorf("a tab: %v", e)
		}
	}
}
