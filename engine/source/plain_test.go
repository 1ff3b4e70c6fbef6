package source

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
)

// differ returns the path of the first difference between two syntax
// trees, or "". It compares all fields but columns.
func differ(path string, a, b reflect.Value) string {
	if a.IsValid() != b.IsValid() || a.IsValid() && a.Type() != b.Type() {
		return fmt.Sprintf("%s: %v and %v", path, a, b)
	}
	if !a.IsValid() {
		return ""
	}
	if a.CanInterface() {
		switch x := a.Interface().(type) {
		case hcl.Pos:
			if y := b.Interface().(hcl.Pos); x.Byte != y.Byte || x.Line != y.Line {
				return fmt.Sprintf("%s: byte %d line %d and byte %d line %d", path, x.Byte, x.Line,
					y.Byte, y.Line)
			}
			return ""
		case cty.Value:
			y := b.Interface().(cty.Value)
			if !x.RawEquals(y) {
				return fmt.Sprintf("%s: %#v and %#v", path, x, y)
			}
			if x.Type() == cty.Number {
				if x, y := x.AsBigFloat(), y.AsBigFloat(); x.Prec() != y.Prec() ||
					x.Mode() != y.Mode() {
					return fmt.Sprintf("%s: numbers of %d and %d bits", path, x.Prec(), y.Prec())
				}
			}
			return ""
		}
	}
	switch a.Kind() {
	case reflect.Pointer, reflect.Interface:
		if a.Kind() == reflect.Pointer && a.Pointer() == b.Pointer() {
			return "" // such as an operator of hclsyntax
		}
		return differ(path, a.Elem(), b.Elem())
	case reflect.Struct:
		for i := range a.NumField() {
			if d := differ(path+"."+a.Type().Field(i).Name, a.Field(i), b.Field(i)); d != "" {
				return d
			}
		}
	case reflect.Slice:
		if a.Len() != b.Len() || a.IsNil() != b.IsNil() {
			return fmt.Sprintf("%s: %d and %d elements, nil %v and %v", path, a.Len(), b.Len(),
				a.IsNil(), b.IsNil())
		}
		for i := range a.Len() {
			if d := differ(fmt.Sprintf("%s[%d]", path, i), a.Index(i), b.Index(i)); d != "" {
				return d
			}
		}
	case reflect.Map:
		if a.Len() != b.Len() || a.IsNil() != b.IsNil() {
			return fmt.Sprintf("%s: %d and %d entries", path, a.Len(), b.Len())
		}
		for _, key := range a.MapKeys() {
			if d := differ(path+"."+key.String(), a.MapIndex(key), b.MapIndex(key)); d != "" {
				return d
			}
		}
	default:
		if !a.Equal(b) {
			return fmt.Sprintf("%s: %v and %v", path, a, b)
		}
	}
	return ""
}

// agrees parses a text with both parsers. What the plain parser
// accepts, hclsyntax must accept with the same tree.
func agrees(t *testing.T, text []byte) (accepted bool) {
	t.Helper()
	f := New("f", text)
	got, ok := parsePlain(f, "")
	if !ok {
		return false
	}
	file, diags := hclsyntax.ParseConfig(f.Text, f.Name, hcl.InitialPos)
	if len(diags) > 0 {
		t.Fatalf("%q is accepted; hclsyntax says %v", f.Text, diags)
	}
	if d := differ("body", reflect.ValueOf(got), reflect.ValueOf(file.Body)); d != "" {
		t.Fatalf("%q differs (plain and hclsyntax): %s", f.Text, d)
	}
	return true
}

// guardedAgrees is agrees, and also false if the guard refuses
// the text.
func guardedAgrees(t *testing.T, f *File) (accepted bool) {
	t.Helper()
	return len(f.guard().problems) == 0 && agrees(t, f.Text)
}

// shipped returns the texts of all rule packs and demo formulas.
func shipped(t testing.TB) map[string][]byte {
	t.Helper()
	texts := map[string][]byte{}
	for _, pattern := range []string{"../../rules/*.hcl", "../../formulas/*.hcl"} {
		names, err := filepath.Glob(pattern)
		if err != nil || len(names) == 0 {
			t.Fatalf("%s: %d files, %v", pattern, len(names), err)
		}
		for _, name := range names {
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			texts[name] = text
		}
	}
	return texts
}

// TestPlainReadsShippedFiles checks that the plain parser reads every
// shipped file, with either line ending, and each block alone.
func TestPlainReadsShippedFiles(t *testing.T) {
	for name, text := range shipped(t) {
		crlf := bytes.ReplaceAll(text, []byte("\n"), []byte("\r\n"))
		for kind, text := range map[string][]byte{
			"":                        text,
			" with CRLF":              crlf,
			" with a mark":            append([]byte(byteOrderMark), text...),
			" with a mark and CRLF":   append([]byte(byteOrderMark), crlf...),
			" with tabs":              bytes.ReplaceAll(text, []byte("  "), []byte("\t")),
			" without a last newline": bytes.TrimRight(text, "\n"),
		} {
			f := New(name+kind, text)
			f.Limit = MaxLimitBytes
			if !guardedAgrees(t, f) {
				t.Errorf("%s is left to hclsyntax", f.Name)
			}
			blocks, ok := Blocks(f)
			if !ok || len(blocks) == 0 {
				t.Errorf("%s: %d blocks, %v", f.Name, len(blocks), ok)
			}
			from := 0
			for _, b := range blocks {
				if !agrees(t, f.Text[b.Start:b.End]) || !agrees(t, f.Text[from:b.Start]) {
					t.Errorf(
						"%s: the block at line %d, or what stands before it, is left to hclsyntax",
						f.Name, f.Position(b.Start).Line)
				}
				from = b.End
			}
		}
	}
}

// TestParseOwnLeavesTrialsOut checks that the packs are read without
// their trials as with them, which also shows that the guard passes
// what ParseOwn reads without it.
func TestParseOwnLeavesTrialsOut(t *testing.T) {
	names, err := filepath.Glob("../../rules/*.hcl")
	if err != nil || len(names) == 0 {
		t.Fatal(names, err)
	}
	for _, name := range names {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		f := New(name, text)
		f.Limit = MaxLimitBytes
		want, problems := Parse(f)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		got, ok := ParseOwn(f, "trial")
		if !ok {
			t.Errorf("%s is left to Parse", name)
			continue
		}
		all := len(want.Blocks)
		want.Blocks = slices.DeleteFunc(want.Blocks,
			func(b *hclsyntax.Block) bool { return b.Type == "trial" })
		if d := differ("body", reflect.ValueOf(got), reflect.ValueOf(want)); d != "" {
			t.Errorf("%s differs without its %d trials: %s", name, all-len(want.Blocks), d)
		}
	}
	for _, text := range []string{"trial \"a\" {", "trial = 1\n", "trial \"a\" {\n  }\n"} {
		if _, ok := ParseOwn(New("f", []byte(text)), "trial"); ok {
			t.Errorf("%q has no end of a block and is read", text)
		}
	}
}

// plainTexts are texts that the plain parser reads.
var plainTexts = []string{
	"", "\n", "\r\n", "\ufeff", "\ufeff\n", "# only this", "// only this", "/* only this */",
	"/* a\nb */ # c\n", "  # x\n", " /* x */ a = 1", "\ufeff/* x */\n",
	"a = -1", "a = -0.5 # x", "a = [-1, 2, -30]", "a = { b = -1, c = -2 }",
	"a=1", "a = 1 # x", "a = 1 // x\n", "a = 1 /* x\ny */\nb = 2\n",
	"a /* x */ = /* y */ 1 /* z */", "_a-b_2 = true\n", "true = false\nfor = 1\nnull = 2\n",
	"a = 0\nb = 007\nc = 1.50\nd = 0.1\ne = 123456789012345678901234567890.123456789\nf = 1.0\n",
	"a = \"\"\nb = \" \"\nc = \"x\ty\"\n", `a = "5 %"`, `a = "% $ % x%) $5 %-$~"`,
	`a = "x \"y\" \\ \n \r \t"`, `a = "\\"`, `a = "# // /* x"`,
	"a = \"é e\u0301 粉 👩‍🍳 \u212b\"", "# é 粉\na = 1 /* 👩‍🍳 */ # ½", "b \"e\u0301\" {}\n",
	"a = \"\u0301\"", "a = \"x\x01\x7f\u0085\u2028\"",
	"a = []", "a = [ ]", "a = [1]", "a = [1,]", "a = [1, 2]", "a = [\n1\n,\n2\n]",
	"a = [ # x\n1 # y\n, /* z */ 2, // z\n]\n", "a = [[], [[]], {}, [{}]]", "a = [\r\n1,\r\n]\r\n",
	"a = {}", "a = { }", "a = {\n}", "a = { # x\n}", "a = {b=1}", "a = {b=1,}", "a = {b:1, c : 2}",
	"a = {b=1,\n\n c=2\n\n}", "a = {\nb=1 # x\nc=2 // y\n/* z */ d=3 }", "a = {\"b\"=1}",
	"a = {\"\"=1}", "a = {\"b\" = \"\"}",
	"a = {b={c={}}, d=[{e=1}]}", "a = {b=1, b=2}", "a = {b=1, for=2}", "a = {\"for\"=1}",
	"a = {b=[\n1\n]\n}", "a = {b-c=1,_d=2,trueish=3}", "a = [{b=1\n}, {c=2\n\n}]",
	"b {}", "b {\n}", "b { }", "b { # x\n}", "b { /* x */ }", "b {\n\n}\n", "b{a=1}", "b { a = 1 }",
	"b { a = [\n1\n] }", "b { a = {\nc = 1\n} }", "b \"c\" d \"e\" {}", "b\"c\"{}", "b \"\" {}",
	"b \"5 % \\\"\" {}", "b c{}\n",
	"b {\nc {\nd {}\n}\ne = 1\n}\nb {\n}", "b {\n} # x", "b {\r\n  a = 1\r\n}\r\n",
	"b /* x */ c /* y */ {} /* z */", "a {}\na = 1\n", "b {\na = 1\n/* x */ }", "b {} // x",
	"a = " + strings.Repeat("[", MaxDepth) + strings.Repeat("]", MaxDepth),
}

// leftTexts are texts left to hclsyntax: wrong ones, and rare ones.
var leftTexts = []string{
	// Wrong:
	"a", "a =", "a = ", "a = \n1", "a = 1 b = 2", "a = 1,", "a = 1,\nb = 2", "a = 1\na = 2", "= 1",
	"1 = 1", "\"a\" = 1", "a = b = 1", "a == 1", "a => 1", "a : 1", "a = 1 }", "}", "a = 'x'",
	"a = 1;", "a = 2,5", "a = 5 g", "a = 5g",
	"a = 1.", "a = .5", "a = 1.2.3", "a = 1_000", "a = 0x10", "a = 1e", "a = \"x", "a = \"x\n\"",
	"a = \"x\\", "a = \"\\q\"", "a = \"\\\n\"", "a = \"x\" \"y\"", "a = \"$", "a = \r1", "a = 1\r",
	"a = 1\rb = 2", "# x\ry", "# x\r\r\n", "#\r", "a = 1 /* x", "a = 1 /", "a\n= 1",
	"a = [", "a = [,]", "a = [1 2]", "a = [1,,2]", "a = [1\n2]", "a = [1;2]", "a = [}", "a = {",
	"a = {,}", "a = {b}", "a = {b=}", "a = {b=\n1}", "a = {b\n=1}", "a = {b=1 c=2}",
	"a = {b=1,,c=2}", "a = {b=1\n,c=2}", "a = {b==1}", "a = {b=>1}", "a = {b::1}", "a = {b c=1}",
	"a = {]", "a = {b=1]",
	"b", "b c", "b {", "b {\n", "b \"c\"", "b\n{\n}", "b \"c\"\n{}", "b { a = 1", "b { a = 1\n}",
	"b { a = 1, c = 2 }", "b { a = 1 c = 2 }", "b { c {} }", "b {\na = 1 }", "b {\na = 1\nc {} }",
	"b {} c {}", "b {}}", "b { a }", "b { # x", "b 1 {}", "b = {} {}", "b \"${c}\" {}",
	"b {\na = 1\na = 2\n}",
	"a = 1\n\ufeffb = 2", "a = “x”", "a = 1 \u00a0\nb = 2", "a = {for=1}", "a = {\n# x\nfor = 1}",
	"a = [for]",
	"a = " + strings.Repeat("[", MaxDepth+1) + strings.Repeat("]", MaxDepth+1), strings.Repeat(
		"a {\n", MaxDepth+1) + strings.Repeat("}\n", MaxDepth+1),
	// Right, but left to hclsyntax:
	"a = - 1", "a = --1", "a = -b",
	"a = -1 - 1", "a = -1e5", "a = 1e5", "a = 1E+5", "a = null",
	"a = b", "a = b.c", "a = b()", "a = (1)",
	"a = 1 + 1", "a = !true", "a = true ? 1 : 2", "a = [1][0]", "a = {b=1}.b", "a = [1]\n[0]",
	"a = [1\n+ 1]", "a = [for x in []: x]", "a = {for k, v in {}: k => v}",
	"a = {\n/* x */ for k, v in {}: k => v}",
	"a = {true=1}", "a = {null=1}", "a = {1=1}", "a = {(b)=1}", "a = {b.c=1}", "a = {b()=1}",
	"a = {\"b\"\n ? 1 : 2 = 1}", "a = <<E\nx\nE\n", "a = <<-E\nx\nE\n", "a = \"${b}\"",
	"a = \"$${b}\"", "a = \"%{if b}c%{endif}\"", "a = \"%%\"", "a = \"$$\"", "a = \"$%\"",
	"a = \"5 %\\\"\"", "a = \"$é\"", "a = \"\\u00e9\"",
	"é = 1", "aé = 1", "é {}", "a é {}", "a = {é=1}", "a = {bé=1}", "a = trueé",
}

func TestPlain(t *testing.T) {
	for _, text := range plainTexts {
		if !guardedAgrees(t, New("f", []byte(text))) {
			t.Errorf("%q is left to hclsyntax", text)
		}
	}
	for _, text := range leftTexts {
		if agrees(t, []byte(text)) {
			t.Errorf("%q is not left to hclsyntax", text)
		}
	}
}

// TestPlainSlicesAreFull checks that an append by a caller does not
// overwrite another node.
func TestPlainSlicesAreFull(t *testing.T) {
	f := New("f", []byte("a = [1, 2]\nb = { c = 1, \"d\" = 2 }\nc \"x\" {\n}\n"))
	body, ok := parsePlain(f, "")
	if !ok {
		t.Fatal("left to hclsyntax")
	}
	list := body.Attributes["a"].Expr.(*hclsyntax.TupleConsExpr)
	object := body.Attributes["b"].Expr.(*hclsyntax.ObjectConsExpr)
	block := body.Blocks[0]
	if cap(list.Exprs) != 2 || cap(object.Items) != 2 || cap(block.Labels) != 1 ||
		cap(block.LabelRanges) != 1 {
		t.Errorf("room for %d values, %d items, %d labels", cap(list.Exprs), cap(object.Items),
			cap(block.Labels))
	}
	for _, item := range object.Items {
		if key, _ := item.KeyExpr.Value(nil); key.AsString() != "c" && key.AsString() != "d" {
			t.Errorf("key %#v", key)
		}
	}
	if got := hcl.ExprAsKeyword(object.Items[0].KeyExpr); got != "c" {
		t.Errorf("keyword %q, want c", got)
	}
}

// shippedBlocks returns the shorter shipped blocks, in a fixed order.
func shippedBlocks(t testing.TB) (texts [][]byte) {
	t.Helper()
	for _, text := range shipped(t) {
		blocks, _ := Blocks(New("f", text))
		for _, b := range blocks {
			if b.End-b.Start < 1500 {
				texts = append(texts, text[b.Start:b.End])
			}
		}
	}
	slices.SortFunc(texts, bytes.Compare)
	return texts
}

// mutate changes a text in one to three places, by pieces of
// HCL syntax.
func mutate(r *rand.Rand, text []byte, pieces []string) []byte {
	text = bytes.Clone(text)
	for range 1 + r.IntN(3) {
		at := r.IntN(len(text) + 1)
		to := min(len(text), at+[]int{0, 0, 1, 1, 2, 5, 20}[r.IntN(7)])
		var piece []byte
		switch r.IntN(4) {
		case 0, 1:
			piece = []byte(pieces[r.IntN(len(pieces))])
		case 2:
			from := r.IntN(len(text) + 1)
			piece = bytes.Clone(text[from:min(len(text), from+r.IntN(40))])
		}
		text = append(text[:at], append(piece, text[to:]...)...)
	}
	return text
}

var hclPieces = strings.Split(""+
	"\n|\n\n|\r\n|\r| |\t|  |,|,\n|=| = |:|::|==|=>|{|}|{}|[|]|[]|(|)|{\n|\n}|\"|"+
	"\"\"|\"x\"|\"x\" = |\\|\\\"|\\n|\\u00e9|#|# x\n|//|/*|*/|/* x */|/* x\n */|a|"+
	"a = |a = 1|\na = 1\n|b {}|b {\n}|b \"c\" {\n|for|for |true|false|null|0|1|1.5|"+
	"1e3|.|-|+|!|?|%|%%|${|%{|$${|$|~|<<E\nx\nE\n|<<|;|'|é|e\u0301|\u0301|粉|👩‍🍳|½|"+
	"\u00a0|\ufeff|\x01|_|a-b", "|")

// TestPlainAgreesOnMutants checks that the plain parser agrees with
// hclsyntax on 60,000 mutated copies of shipped blocks and other texts.
func TestPlainAgreesOnMutants(t *testing.T) {
	seeds := shippedBlocks(t)
	for _, text := range plainTexts {
		seeds = append(seeds, []byte(text), []byte(text+"\n"))
	}
	n := 60_000
	if testing.Short() {
		n = 6_000
	}
	r := rand.New(rand.NewPCG(1, 2))
	accepted := 0
	for range n {
		if guardedAgrees(t, New("f", mutate(r, seeds[r.IntN(len(seeds))], hclPieces))) {
			accepted++
		}
	}
	if accepted < n/8 || accepted > n*7/8 {
		t.Errorf("%d of %d accepted: the test no longer tries both sides", accepted, n)
	}
	t.Logf("%d of %d accepted", accepted, n)
}

func FuzzPlain(f *testing.F) {
	for i, text := range shippedBlocks(f) {
		f.Add(text)
		if i%10 == 0 {
			f.Add(append([]byte(byteOrderMark),
				bytes.ReplaceAll(text, []byte("\n"), []byte("\r\n"))...))
			f.Add(bytes.ReplaceAll(text, []byte("  "), []byte("\t")))
		}
	}
	for _, text := range append(append([]string{}, plainTexts...), leftTexts...) {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		if len(text) > 8<<10 {
			t.Skip("long texts are slow in hclsyntax")
		}
		file := New("f", text)
		if len(file.guard().problems) > 0 {
			return
		}
		agrees(t, file.Text)
		if blocks, ok := Blocks(file); ok {
			from := 0
			for _, b := range blocks[:min(len(blocks), 8)] {
				agrees(t, file.Text[from:b.Start])
				agrees(t, file.Text[b.Start:b.End])
				from = b.End
			}
		}
	})
}

func benchmarkText(b *testing.B) *File {
	text, err := os.ReadFile("../../formulas/cinnamon-buns.hcl")
	if err != nil {
		b.Fatal(err)
	}
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	return New("f", text)
}

// BenchmarkPlain and BenchmarkHCL parse the same formula.
// BenchmarkGuard is the guard, which precedes either.
func BenchmarkPlain(b *testing.B) {
	f := benchmarkText(b)
	for b.Loop() {
		if _, ok := parsePlain(f, ""); !ok {
			b.Fatal("left to hclsyntax")
		}
	}
}

func BenchmarkHCL(b *testing.B) {
	f := benchmarkText(b)
	for b.Loop() {
		if _, diags := hclsyntax.ParseConfig(f.Text, f.Name, hcl.InitialPos); len(diags) > 0 {
			b.Fatal(diags)
		}
	}
}

// BenchmarkParseFormula is the full cost of Parse: a new File, the
// guard and the parse.
func BenchmarkParseFormula(b *testing.B) {
	f := benchmarkText(b)
	for b.Loop() {
		if _, ps := Parse(New(f.Name, f.Text)); len(ps) > 0 {
			b.Fatal(ps)
		}
	}
}
