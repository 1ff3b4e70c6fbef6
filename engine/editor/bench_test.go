package editor_test

import (
	"slices"
	"testing"
	"time"
)

// BenchmarkKeystroke types a comment above a demo formula, a letter at a time, and waits for the diagnostics of
// each. It gives the median and the 99th percentile.
func BenchmarkKeystroke(b *testing.B) {
	c := start(b, object{})
	path, text := demo(b, "cinnamon-buns.hcl")
	c.open(path, text)
	var took []time.Duration
	version := 2
	c.change(path, version, object{"text": "#\n" + text})
	for b.Loop() {
		version++
		from := time.Now()
		c.change(path, version, object{"text": "x", "range": object{
			"start": object{"line": 0, "character": 1},
			"end":   object{"line": 0, "character": 1 + version%2}}})
		took = append(took, time.Since(from))
	}
	slices.Sort(took)
	b.ReportMetric(float64(took[len(took)/2].Microseconds())/1000, "ms-median")
	b.ReportMetric(float64(took[len(took)*99/100].Microseconds())/1000, "ms-99th")
}
