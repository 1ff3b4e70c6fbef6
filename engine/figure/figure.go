// Package figure holds what a figure is: an interval, an estimate with
// its error, a truth that may be open, a fact's value, and the unit
// that a name's ending stands for.
//
// It is a leaf: every package that computes or prints figures uses it.
// It knows only the places of package source, so that a missing figure
// says where to write it.
package figure
