// Package figure holds the kinds of figure: an interval, an estimate
// with its error, a truth that may be open, a fact's value, and the
// unit in a name's ending.
//
// It is a leaf: every package that computes or prints figures uses it.
// It knows only the places of package source, so that a missing figure
// says where to write it.
package figure
