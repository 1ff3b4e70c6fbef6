// Package rules holds the rule packs that the program is shipped with, as HCL files that anyone can read and edit.
//
// The engine reads the packs from here, and the packs verb writes them out for a house to change. Nothing is computed
// here: adding a rule, a limit or a trial never needs a line of Go.
package rules

import "embed"

// Files holds the shipped packs at its root, one file each and named after it ("yeast.hcl"). Their order by file name is
// the order of reading; within cautions.hcl the order of the file is the order of print.
//
//go:embed *.hcl
var Files embed.FS
