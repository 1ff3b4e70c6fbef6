package engine

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"forebake/engine/rule"
	"forebake/engine/source"
)

// OfCommit turns the changed files of a commit into the paths to check: formulas are kept, and as soon as a house file, a rule file
// or a backlog is among them it is this whole folder, since such a change can turn the answer on every formula. Files that are not
// HCL are left out. With nothing changed there is nothing to check.
func OfCommit(changed []string) []string {
	var out []string
	for _, path := range changed {
		if !strings.HasSuffix(path, ".hcl") {
			continue
		}
		if decides(path) {
			return []string{"."}
		}
		out = append(out, path)
	}
	return out
}

// decides tells whether a file holds what formulas are judged by. One that is gone or broken is checked as a formula, so that its
// fault is shown.
func decides(path string) bool {
	text, err := os.ReadFile(path)
	if err != nil {
		return false
	}
	blocks, sure := source.Blocks(source.New(filepath.ToSlash(path), text))
	if !sure {
		return false
	}
	for _, b := range blocks {
		if b.Type == "house" || b.Type == "backlog" || slices.Contains(rule.Blocks, b.Type) {
			return true
		}
	}
	return false
}
