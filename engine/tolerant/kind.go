package tolerant

import (
	"path/filepath"

	"forebake/engine/spelling"
)

// FileKind is what a file of the project holds.
type FileKind uint8

// The kinds of files.
const (
	FormulaFile FileKind = iota
	HouseFile
	RuleFile
)

// Blocks by which the kind of a text is known.
var (
	ofHouse   = spelling.Pattern(`(?m)^\s*house\s+"`)
	ofFormula = spelling.Pattern(`(?m)^\s*formula\s+"`)
	ofRules   = spelling.Pattern(`(?m)^\s*(rule|trial|figure|caution)\s+"|^\s*about\s*=`)
)

// KindOf tells what a file holds, by its name and its blocks, however
// broken they are.
func KindOf(path string, text []byte) FileKind {
	if filepath.Base(path) == "house.hcl" {
		return HouseFile
	}
	before := text // the first formula block
	if at := ofFormula.FindIndex(text); at != nil {
		before = text[:at[0]]
	}
	switch {
	case ofHouse.Match(before):
		return HouseFile
	case ofRules.Match(before):
		return RuleFile
	}
	return FormulaFile
}
