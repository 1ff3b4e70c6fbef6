package tolerant

import (
	"path/filepath"
	"regexp"
)

// FileKind is what a file of the project holds.
type FileKind uint8

// The kinds of files.
const (
	FormulaFile FileKind = iota
	HouseFile
	RuleFile
)

// The first blocks of a text by which its kind is known. ofRules may not stand in a formula file.
var (
	ofHouse   = regexp.MustCompile(`(?m)^\s*house\s+"`)
	ofFormula = regexp.MustCompile(`(?m)^\s*formula\s+"`)
	ofRules   = regexp.MustCompile(`(?m)^\s*(rule|trial|figure|caution)\s+"|^\s*about\s*=`)
)

// KindOf tells what a file holds, by its name and its blocks, however broken they are.
func KindOf(path string, text []byte) FileKind {
	if filepath.Base(path) == "house.hcl" || ofHouse.Match(text) {
		return HouseFile
	}
	beforeFormula := text
	if at := ofFormula.FindIndex(text); at != nil {
		beforeFormula = text[:at[0]]
	}
	if ofRules.Match(beforeFormula) {
		return RuleFile
	}
	return FormulaFile
}
