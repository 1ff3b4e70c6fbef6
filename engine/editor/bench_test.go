package editor_test

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"forebake/engine"
)

// BenchmarkKeystroke types a comment above a formula of 3 KB, letter by
// letter, and waits for the findings of each. It gives the median and
// the 99th percentile, and the median over that of a check of the same
// text in the same run, by an engine that has read its house and packs.
func BenchmarkKeystroke(b *testing.B) {
	c := start(b, object{})
	path, text := demo(b, "cinnamon-buns.hcl")
	text = "#\n" + text + strings.Repeat("# a line of notes about this formula\n",
		max(0, 3000-len(text))/37)
	c.open(path, text)
	e := engine.New()
	e.Workers = 1
	in := []engine.Input{{Name: filepath.ToSlash(path), Text: []byte(text),
		Dir: filepath.Dir(path)}}
	e.Check(in)
	var keys, checks []time.Duration
	version := 2
	for b.Loop() {
		version++
		from := time.Now()
		c.change(path, version, object{"text": "x", "range": object{
			"start": object{"line": 0, "character": 1},
			"end":   object{"line": 0, "character": 1 + version%2}}})
		keys = append(keys, time.Since(from))
		from = time.Now()
		e.Check(in)
		checks = append(checks, time.Since(from))
	}
	slices.Sort(keys)
	slices.Sort(checks)
	b.ReportMetric(float64(keys[len(keys)/2].Microseconds())/1000, "ms-median")
	b.ReportMetric(float64(keys[len(keys)*99/100].Microseconds())/1000, "ms-99th")
	b.ReportMetric(float64(keys[len(keys)/2])/float64(checks[len(checks)/2]), "checks-median")
}
