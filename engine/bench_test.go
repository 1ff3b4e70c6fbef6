package engine_test

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine"
	"forebake/rules"
)

// generated makes a formula file of about 3 KB, the same for the same
// number: a sponge, a dough, a filling, a syrup. Four in five are of a
// kitchen that writes down its readings; the fifth is a draft, with
// amounts and steps all over the place.
func generated(n int) []byte {
	r := rand.New(rand.NewPCG(uint64(n), 7))
	draft := r.IntN(5) == 0
	g := func(lo, hi int) int { return lo + r.IntN(hi-lo+1) }
	// span draws from the narrow range of a settled formula, or the
	// wide one of a draft.
	span := func(lo, hi, wideLo, wideHi int) int {
		if draft {
			return g(wideLo, wideHi)
		}
		return g(lo, hi)
	}
	pick := func(words ...string) string { return words[r.IntN(len(words))] }
	read := func(text string) string { // a reading, which a draft has not
		if draft {
			return ""
		}
		return ", measured = " + strconv.Quote(text)
	}
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	line("# Formula %d of a generated collection: deterministic, for measuring.", n)
	line("formula \"generated %d\" {", n)
	line("  family = %q", pick("sweet dough", "milk bread", "challah"))
	line("  makes  = \"%d pieces\"\n", g(36, 60))
	line("  preferment \"sponge\" {\n    ingredients = {")
	line("      \"bread flour\"   = \"%d g\"", span(400, 500, 150, 300))
	line(
		"      %-15q = { amount = \"%d g\", temp = \"20 C\" }",
		map[bool]string{true: "whole milk", false: "water"}[draft],
		span(260, 320, 150, 300),
	)
	line("      \"instant yeast\" = \"%d g\"\n    }", span(10, 12, 1, 3))
	line("    steps = [\n      { mix  = \"3 min\", by = \"hand\", to = \"24 C\" },")
	line(
		"      { rest = %q, at = \"room\", as = \"bowl\", covered = true },\n    ]\n  }\n",
		map[bool]string{true: "6 h to 9 h", false: "90 min"}[draft],
	)
	line("  dough \"main dough\" {\n    ingredients = {\n      \"the sponge\"       = \"all\"")
	flour := span(1200, 1600, 700, 1200)
	line(
		"      \"bread flour\"      = { amount = \"%d g\", protein = \"12.%d %%\" }",
		flour,
		g(0, 8),
	)
	line(
		"      \"whole milk\"       = { amount = \"%d g\", temp = \"%d C\" }",
		flour*span(38, 42, 24, 40)/100,
		span(18, 22, 4, 8),
	)
	line(
		"      \"instant yeast\"    = { amount = \"%s %%\", strain = %q }",
		map[bool]string{
			true:  fmt.Sprintf("0.%d", g(3, 9)),
			false: fmt.Sprintf("1.%d", g(5, 9)),
		}[draft],
		map[bool]string{true: "standard", false: "osmotolerant"}[draft],
	)
	line("      \"sugar\"            = \"%d g\"", flour*span(9, 13, 6, 30)/100)
	line(
		"      \"salt\"             = \"1.%d %%\"   # percent is on the total flour",
		span(6, 8, 0, 9),
	)
	line(
		"      \"egg\"              = { amount = \"%d pieces\", temp = \"10 C\" }",
		span(3, 4, 1, 4),
	)
	line(
		"      \"unsalted butter\"  = { amount = \"%d g\", temp = \"18 C\" }",
		flour*span(8, 12, 8, 40)/100,
	)
	for _, spice := range []string{"ground cardamom", "lemon zest", "vanilla extract",
		"dry skim milk", "raisins", "candied peel"} {
		line("      %-18q = \"%d g\"", spice, span(12, 40, 8, 60))
	}
	line(
		"    }\n    # Mixed cold and to the full window; the butter goes in last. The slab is " +
			"flat so that the middle cools with the rest,\n" +
			"    # and the sheet is rolled only when a probe says that it is cold right through. " +
			"Knots are tied loosely, seam down.",
	)
	line(
		"    steps = [\n      { mix   = \"%d min\", by = \"spiral\", to = \"25 C\"%s },",
		g(8, 14),
		read("25 C"),
	)
	line(
		"      { rest  = \"%d min\", at = \"room\", as = \"bowl\", covered = true },\n"+
			"      { fold  = 1 },",
		span(30, 40, 30, 90),
	)
	line(
		"      { chill = \"%d min\", at = \"fridge\", as = \"slab %d mm\", covered = true%s },",
		span(60, 80, 90, 900),
		span(15, 20, 20, 60),
		read("9 C after 60 min"),
	)
	line(
		"      { sheet = \"%d mm\" },\n      { fill  = \"nut filling\" },\n"+
			"      { roll  = \"coil\", slice = \"40 mm\" },\n"+
			"      { shape = \"knots\", pieces = 48 },",
		g(4, 8),
	)
	line(
		"      { proof = \"%d min\", at = \"29 C\", covered = true%s },",
		span(60, 70, 40, 150),
		read("2 x after 60 min"),
	)
	line(
		"      { bake  = \"%d min\", at = \"190 C\", core = \"92 C\"%s },",
		span(15, 18, 12, 30),
		read("94 C core"),
	)
	line(
		"      { cool  = \"20 min\", at = \"room\" },\n      { brush = \"citrus syrup\" },\n"+
			"      { cool  = \"45 min\", at = \"room\"%s },\n    ]\n  }\n",
		read("26 C"),
	)
	line(
		"  # Toasted first, then ground with the sugar so that the paste stays short; spread " +
			"when it has cooled to the room.\n  filling \"nut filling\" {\n    ingredients = {",
	)
	line(
		"      \"ground hazelnuts\" = \"%d g\"\n      \"brown sugar\"      = \"%d g\"\n"+
			"      \"unsalted butter\"  = \"%d g\"",
		g(250, 400),
		g(180, 260),
		g(40, 90),
	)
	if draft {
		line("      \"whole milk\"       = \"%d g\"", g(60, 150))
	}
	line(
		"      \"cinnamon\"         = \"%d g\"\n      \"corn starch\"      = \"%d g\"\n    }",
		g(12, 20),
		g(12, 20),
	)
	line(
		"    steps = [\n      { cook = \"5 min\", to = \"85 C\", by = \"stirring\" },\n"+
			"      { cool = \"1 h\", at = \"room\", as = \"tray 15 mm\"%s },\n    ]\n  }\n",
		read("22 C"),
	)
	line(
		"  # Brought to the boil and left to cool with the zest in it; brushed on while the " +
			"knots are warm, so that they shine.\n  syrup \"citrus syrup\" {\n" +
			"    ph          = 3.2\n    ingredients = {",
	)
	line(
		"      \"sugar\"       = \"%d g\"\n      \"water\"       = \"%d g\"\n"+
			"      \"lemon juice\" = \"%d g\"\n    }",
		g(160, 200),
		g(90, 110),
		g(12, 30),
	)
	line(
		"    steps = [\n      { cook = \"4 min\", to = \"104 C\" },\n"+
			"      { cool = \"2 h\", at = \"room\"%s },\n    ]\n  }\n}",
		read("30 C"),
	)
	return []byte(b.String())
}

func collection(n int) (inputs []engine.Input, bytes int64) {
	for i := range n {
		text := generated(i)
		bytes += int64(len(text))
		inputs = append(
			inputs,
			engine.Input{Name: fmt.Sprintf("formula-%05d.hcl", i), Text: text, Dir: "."},
		)
	}
	return inputs, bytes
}

// benchFiles is how large the benchmarks' collection is; the whole is
// some 30 MB.
var benchFiles = 10_000

// BenchmarkParse is the floor: the HCL library's bare syntax trees of
// the collection, on as many workers as BenchmarkCheck. The aim is a
// check of the same files in at most 1.3 times this; compare the two in
// one run, on one processor and on two (-cpu 1,2).
func BenchmarkParse(b *testing.B) {
	inputs, bytes := collection(benchFiles)
	b.SetBytes(bytes)
	b.ReportAllocs()
	for b.Loop() {
		var next atomic.Int64
		var wait sync.WaitGroup
		for range runtime.GOMAXPROCS(0) {
			wait.Go(func() {
				for i := next.Add(1) - 1; i < int64(benchFiles); i = next.Add(1) - 1 {
					_, diags := hclsyntax.ParseConfig(inputs[i].Text, inputs[i].Name,
						hcl.InitialPos)
					if diags.HasErrors() {
						b.Error(diags)
					}
				}
			})
		}
		wait.Wait()
	}
}

// BenchmarkCheck checks the same files with every shipped rule.
func BenchmarkCheck(b *testing.B) {
	inputs, bytes := collection(benchFiles)
	e := engine.New()
	e.Check(inputs[:1])
	b.SetBytes(bytes)
	b.ReportAllocs()
	for b.Loop() {
		res := e.Check(inputs)
		if len(res.Problems) > 0 || len(res.Formulas) != benchFiles {
			b.Fatal(res.Problems)
		}
	}
}

// BenchmarkCheckNoRules checks the same files with a pack of no rule:
// reading formulas, and the cautions, which nothing turns off.
func BenchmarkCheckNoRules(b *testing.B) {
	dir := b.TempDir()
	for name, text := range map[string]string{"house.hcl": "house \"bare\" {\n" +
		"  packs = [\"./none.hcl\"]\n}\n", "none.hcl": "about = \"no rules\"\n"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			b.Fatal(err)
		}
	}
	inputs, bytes := collection(benchFiles)
	for i := range inputs {
		inputs[i].Dir = dir
	}
	e := engine.New()
	e.Check(inputs[:1])
	b.SetBytes(bytes)
	b.ReportAllocs()
	for b.Loop() {
		if res := e.Check(inputs); len(res.Problems) > 0 || res.Totals.Rules != 0 {
			b.Fatal(res.Problems, res.Totals)
		}
	}
}

// BenchmarkStart is what a process with one file spends before it
// prints: all packs read and checked, then one formula. Without the
// formula it is the cost of the rules.
func BenchmarkStart(b *testing.B) {
	for _, c := range []struct {
		name  string
		files int
	}{{"packs", 0}, {"packs and one file", 1}} {
		inputs, _ := collection(c.files)
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				e := engine.New()
				if _, problems := e.Load("."); len(problems) > 0 {
					b.Fatal(problems)
				}
				e.Check(inputs)
			}
		})
	}
}

var ruleHead = regexp.MustCompile(`(?m)^rule "`)

// BenchmarkRules shows how a check grows with house rules: the shipped
// packs alone, and with 1, 4 and 16 renamed copies of their rules.
// Figures are computed once a formula however many rules read them, so
// only judging and finding grow.
func BenchmarkRules(b *testing.B) {
	inputs, _ := collection(200)
	for _, times := range []int{1, 4, 16} {
		dir := b.TempDir()
		var packs []string
		for _, name := range engine.ShippedPacks() {
			packs = append(packs, strconv.Quote(name))
			text, err := rules.Files.ReadFile(name + ".hcl")
			if err != nil {
				b.Fatal(err)
			}
			for k := range times {
				file := fmt.Sprintf("%s-%d.hcl", name, k)
				err := os.WriteFile(filepath.Join(dir, file),
					ruleHead.ReplaceAll(text, fmt.Appendf(nil, `rule "h%d-`, k)), 0o644)
				if err != nil {
					b.Fatal(err)
				}
				packs = append(packs, strconv.Quote("./"+file))
			}
		}
		if err := os.WriteFile(filepath.Join(dir, "house.hcl"),
			[]byte("house \"many rules\" {\n  packs = ["+strings.Join(packs, ", ")+"]\n}\n"),
			0o644); err != nil {
			b.Fatal(err)
		}
		for i := range inputs {
			inputs[i].Dir = dir
		}
		b.Run(fmt.Sprintf("x%d", times), func(b *testing.B) {
			e := engine.New()
			if res := e.Check(inputs[:1]); len(res.Problems) > 0 {
				b.Fatal(res.Problems)
			}
			var res *engine.Result
			for b.Loop() {
				res = e.Check(inputs)
			}
			each := float64(b.Elapsed().Microseconds()) / float64(b.N) / float64(len(inputs))
			b.ReportMetric(each, "us/formula")
			b.ReportMetric(float64(res.Totals.Rules), "rules")
			b.ReportMetric(1000*each/float64(res.Totals.Rules), "ns/rule")
		})
	}
}

// grown is a formula of so many doughs, each with so many steps and
// ingredients, of unrelated sizes.
func grown(parts, steps, ingredients int) []byte {
	var b strings.Builder
	b.WriteString("formula \"grown\" {\n")
	for p := range parts {
		fmt.Fprintf(
			&b,
			"  dough \"dough %d\" {\n    ingredients = {\n      \"bread flour\" = \"1000 g\"\n"+
				"      \"whole milk\" = \"450 g\"\n      \"instant yeast\" = \"12 g\"\n"+
				"      \"salt\" = \"17 g\"\n",
			p,
		)
		for i := range ingredients {
			fmt.Fprintf(&b, "      \"nut meal %d\" = \"%d g\"\n", i, 1+i%3)
		}
		b.WriteString(
			"    }\n    steps = [\n      { mix = \"9 min\", by = \"spiral\", to = \"24 C\" },\n",
		)
		for i := range steps {
			fmt.Fprintf(
				&b,
				"      { rest = \"%d min\", at = \"room\", as = \"bowl\", covered = true },\n",
				1+i%3,
			)
		}
		b.WriteString(
			"      { shape = \"knots\", pieces = 24 },\n" +
				"      { proof = \"50 min\", at = \"28 C\", covered = true },\n" +
				"      { bake = \"16 min\", at = \"190 C\", core = \"93 C\" },\n    ]\n  }\n",
		)
	}
	b.WriteString("}\n")
	return []byte(b.String())
}

// BenchmarkGrowth shows how a check grows with a formula's parts,
// and with a part's steps and ingredients: the time by the piece
// must not grow.
func BenchmarkGrowth(b *testing.B) {
	dir := b.TempDir()
	house := "house \"growth\" {\n"
	for i := range 256 {
		house += fmt.Sprintf(
			"  ingredient \"nut meal %d\" {\n    like = \"ground hazelnuts\"\n  }\n",
			i,
		)
	}
	err := os.WriteFile(filepath.Join(dir, "house.hcl"), []byte(house+"}\n"), 0o644)
	if err != nil {
		b.Fatal(err)
	}
	e := engine.New()
	run := func(name string, n int, text []byte) {
		inputs := []engine.Input{{Name: "grown.hcl", Text: text, Dir: dir}}
		b.Run(fmt.Sprintf("%s=%d", name, n), func(b *testing.B) {
			for b.Loop() {
				if res := e.Check(inputs); len(res.Problems) > 0 {
					b.Fatal(res.Problems)
				}
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N)/float64(n), "us/"+name)
		})
	}
	for _, n := range []int{4, 16, 64} {
		run("part", n, grown(n, 2, 4))
	}
	for _, n := range []int{4, 16, 64} {
		run("step", n, grown(1, n, 4))
	}
	for _, n := range []int{15, 60, 240} {
		run("ingredient", n, grown(1, 2, n))
	}
}

// TestGeneratedSize holds the generator to what the benchmarks say
// of it.
func TestGeneratedSize(t *testing.T) {
	for i := range 20 {
		if n := len(generated(i)); n < 2300 || n > 3500 {
			t.Errorf("generated formula %d has %d bytes; about 3 KB is said", i, n)
		}
	}
}
