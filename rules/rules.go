// Package rules holds the rule packs that the program is shipped with,
// as HCL files that anyone can read and edit.
//
// The engine reads the packs from here, and the packs verb writes them
// out for a house to change. Nothing is computed here: a rule, a
// figure, a limit or a trial never needs a line of Go.
package rules

import "embed"

// Files holds the shipped packs at its root, one file each and named
// after it ("yeast.hcl"). They are read in order of name. cautions.hcl,
// whose order is the order of print, and figures.hcl are no packs: they
// are in force in every house.
//
//go:embed *.hcl
var Files embed.FS
