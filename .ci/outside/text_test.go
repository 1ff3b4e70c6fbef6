package outside

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func formulas(t *testing.T) []string {
	t.Helper()
	var out []string
	for _, pattern := range []string{"formulas/*.hcl", "formulas/school/*.hcl",
		"testdata/published/*.hcl", "testdata/published/formulas/*.hcl",
		"testdata/scenarios/*.hcl"} {
		paths, err := filepath.Glob(filepath.Join("../..", pattern))
		if err != nil || len(paths) == 0 {
			t.Fatal(pattern, err)
		}
		out = append(out, paths...)
	}
	return out
}

// Every setting of every file stands where Parse says that it stands,
// and can be taken out without moving a line.
func TestPlaces(t *testing.T) {
	settings := 0
	for _, path := range formulas(t) {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		text := string(data)
		root, err := Parse(text)
		if err != nil {
			t.Fatalf("%s: %v", path, err)
		}
		var value func(v *Value)
		pair := func(p *Pair) {
			settings++
			at := text[p.Start:p.End]
			if !strings.HasPrefix(strings.TrimPrefix(at, `"`), p.Key) ||
				!strings.HasSuffix(at, text[p.Value.Start:p.Value.End]) {
				t.Errorf("%s: %q is not at %q", path, p.Key, at)
			}
			without := Remove(text, p.Start, p.End)
			if strings.Count(without, "\n") != strings.Count(text, "\n") {
				t.Errorf("%s: without %q the lines move", path, at)
			}
			if _, err := Parse(without); err != nil {
				t.Errorf("%s: without %q: %v", path, at, err)
			}
			value(p.Value)
		}
		value = func(v *Value) {
			if v.Kind == Quoted && text[v.Start+1:v.End-1] != v.Text ||
				v.Kind == Bare && text[v.Start:v.End] != v.Text {
				t.Errorf("%s: %q is not at %q", path, v.Text, text[v.Start:v.End])
			}
			for _, item := range v.Items {
				value(item)
			}
			for _, p := range v.Pairs {
				pair(p)
			}
		}
		var block func(b *Block)
		block = func(b *Block) {
			for _, p := range b.Pairs {
				pair(p)
			}
			for _, inner := range b.Blocks {
				if !strings.HasPrefix(text[inner.Start:inner.End], inner.Type) ||
					text[inner.End-1] != '}' {
					t.Errorf(
						"%s: block %q is not at %q",
						path,
						inner.Type,
						text[inner.Start:inner.End],
					)
				}
				block(inner)
			}
		}
		block(root)
	}
	if settings < 2000 {
		t.Errorf("%d settings seen", settings)
	}
}

func TestRemove(t *testing.T) {
	for _, c := range []struct{ text, what, want string }{
		{`{ mix = "1 min", to = "20 C", by = "hand" }`, `to = "20 C"`,
			`{ mix = "1 min", by = "hand" }`},
		{`{ mix = "1 min", to = "20 C" }`, `to = "20 C"`, `{ mix = "1 min" }`},
		{"{\n  \"a\" = 1\n  \"b\" = { x = 2,\n y = 3 }\n}", "\"b\" = { x = 2,\n y = 3 }",
			"{\n  \"a\" = 1\n  \n\n}"},
	} {
		at := strings.Index(c.text, c.what)
		if got := Remove(c.text, at, at+len(c.what)); got != c.want {
			t.Errorf("%q without %q is %q, not %q", c.text, c.what, got, c.want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	for _, text := range []string{`a {`, `a = "x`, `a = [1, `, `a = { b 1 }`, `a = `} {
		if _, err := Parse(text); err == nil {
			t.Errorf("%q is read", text)
		}
	}
}
