package engine_test

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine"
)

// generated makes a formula file of about 3 KB, the same for the same number: a sponge, a dough, a filling, a syrup, with
// the spread of amounts that real ones have, and now and then a fault.
func generated(n int) []byte {
	r := rand.New(rand.NewPCG(uint64(n), 7))
	g := func(lo, hi int) int { return lo + r.IntN(hi-lo+1) }
	pick := func(words ...string) string { return words[r.IntN(len(words))] }
	var b strings.Builder
	fmt.Fprintf(&b, "# Formula %d of a generated collection: deterministic, for measuring.\n", n)
	fmt.Fprintf(&b, "formula \"generated %d\" {\n  family = %q\n  makes  = \"%d pieces\"\n\n", n, pick("sweet dough", "milk bread", "challah", "brioche moderate"), g(12, 40))
	fmt.Fprintf(&b, "  preferment \"sponge\" {\n    ingredients = {\n      \"bread flour\"   = \"%d g\"\n      \"whole milk\"    = { amount = \"%d g\", temp = \"20 C\" }\n      \"instant yeast\" = \"%d g\"\n    }\n", g(150, 300), g(150, 300), g(1, 3))
	fmt.Fprintf(&b, "    steps = [\n      { mix  = \"3 min\", by = \"hand\", to = \"24 C\" },\n      { rest = \"%d h to %d h\", at = \"room\", covered = true },\n    ]\n  }\n\n", g(6, 8), g(9, 12))
	fmt.Fprintf(&b, "  dough \"main dough\" {\n    ingredients = {\n      \"the sponge\"       = \"all\"\n      \"bread flour\"      = { amount = \"%d g\", protein = \"12.%d %%\" }\n      \"whole milk\"       = { amount = \"%d g\", temp = \"6 C\" }\n", g(700, 1200), g(0, 8), g(200, 400))
	fmt.Fprintf(&b, "      \"instant yeast\"    = { amount = \"%d.%d %%\", strain = %q }\n      \"sugar\"            = \"%d g\"\n      \"salt\"             = \"1.%d %%\"   # percent is on the total flour\n      \"egg\"              = \"%d pieces\"\n      \"unsalted butter\"  = { amount = \"%d g\", temp = \"18 C\" }\n",
		g(0, 2), g(3, 9), pick("standard", "osmotolerant"), g(80, 260), g(0, 9), g(1, 4), g(90, 320))
	for _, spice := range []string{"ground cardamom", "lemon zest", "vanilla extract", "dry skim milk", "raisins", "candied peel"} {
		fmt.Fprintf(&b, "      %-18q = \"%d g\"\n", spice, g(8, 60))
	}
	fmt.Fprintf(&b, "    }\n    # Mixed cold and to the full window; the butter goes in last. The slab is flat so that the middle cools with the rest,\n    # and the sheet is rolled only when a probe says that it is cold right through. Knots are tied loosely, seam down.\n    steps = [\n      { mix   = \"%d min\", by = \"spiral\", to = \"%d C\" },\n      { rest  = \"1 h\", at = \"room\", covered = true },\n      { fold  = 1 },\n      { chill = \"%d h\", at = \"fridge\", as = \"slab 40 mm\", covered = true },\n", g(8, 14), g(22, 27), g(2, 16))
	fmt.Fprintf(&b, "      { sheet = \"%d mm\" },\n      { fill  = \"nut filling\" },\n      { roll  = \"coil\", slice = \"40 mm\" },\n      { shape = \"knots\", pieces = 24 },\n      { pan   = \"lined tray\" },\n      { proof = \"90 min to 2 h\", at = \"27 C\", covered = true },\n", g(4, 8))
	fmt.Fprintf(&b, "      { bake  = \"%d min\", at = \"190 C\", core = \"92 C\" },\n      { brush = \"citrus syrup\" },\n      { cool  = \"45 min\", at = \"room\" },\n    ]\n  }\n\n", g(14, 30))
	fmt.Fprintf(&b, "  # Toasted first, then ground with the sugar so that the paste stays short; spread when it has cooled to the room.\n  filling \"nut filling\" {\n    ingredients = {\n      \"ground hazelnuts\" = \"%d g\"\n      \"brown sugar\"      = \"%d g\"\n      \"unsalted butter\"  = \"%d g\"\n      \"whole milk\"       = \"%d g\"\n      \"cinnamon\"         = \"%d g\"\n      \"corn starch\"      = \"%d g\"\n    }\n    steps = [\n      { cook = \"5 min\", to = \"85 C\", by = \"stirring\" },\n      { cool = \"1 h\", at = \"room\", as = \"tray 15 mm\" },\n    ]\n  }\n\n", g(150, 300), g(80, 160), g(40, 90), g(60, 150), g(6, 20), g(5, 20))
	fmt.Fprintf(&b, "  # Brought to the boil and left to cool with the zest in it; brushed on while the knots are warm, so that they shine.\n  syrup \"citrus syrup\" {\n    ingredients = {\n      \"sugar\"       = \"%d g\"\n      \"water\"       = \"%d g\"\n      \"lemon juice\" = \"%d g\"\n    }\n    steps = [\n      { cook = \"4 min\", to = \"104 C\" },\n      { cool = \"2 h\", at = \"room\" },\n    ]\n  }\n}\n", g(100, 200), g(60, 120), g(10, 40))
	return []byte(b.String())
}

func collection(n int) (inputs []engine.Input, bytes int64) {
	for i := range n {
		text := generated(i)
		bytes += int64(len(text))
		inputs = append(inputs, engine.Input{Name: fmt.Sprintf("formula-%05d.hcl", i), Text: text, Dir: "."})
	}
	return inputs, bytes
}

const benchFiles = 2000

// BenchmarkParse is the floor: the bare syntax tree of 2,000 files, on as many workers as BenchmarkCheck. The promise is
// that a check of the same files costs at most 1.5 times this; compare the two in one run.
func BenchmarkParse(b *testing.B) {
	inputs, bytes := collection(benchFiles)
	b.SetBytes(bytes)
	b.ReportAllocs()
	for b.Loop() {
		var next atomic.Int64
		var wait sync.WaitGroup
		for range runtime.GOMAXPROCS(0) {
			wait.Go(func() {
				for i := next.Add(1) - 1; i < benchFiles; i = next.Add(1) - 1 {
					if _, diags := hclsyntax.ParseConfig(inputs[i].Text, inputs[i].Name, hcl.InitialPos); diags.HasErrors() {
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

// BenchmarkCheckNoRules checks the same files with a pack that holds no rule: reading formulas, and the cautions, which
// nothing turns off.
func BenchmarkCheckNoRules(b *testing.B) {
	dir := b.TempDir()
	for name, text := range map[string]string{"house.hcl": "house \"bare\" {\n  packs = [\"./none.hcl\"]\n}\n", "none.hcl": "about = \"no rules\"\n"} {
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

// TestGeneratedSize holds the generator to what the benchmarks say of it.
func TestGeneratedSize(t *testing.T) {
	for i := range 20 {
		if n := len(generated(i)); n < 2300 || n > 3500 {
			t.Errorf("generated formula %d has %d bytes; about 3 KB is said", i, n)
		}
	}
}
