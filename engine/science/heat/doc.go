// Package heat holds the heat behaviour of foods: for now their thermal
// properties from composition.
//
// It is called by whoever follows a part's temperature. It never reads an
// ingredient table, never melts or freezes anything (sensible heat above 0 C only),
// and knows nothing of alcohol, which lies outside the published table.
package heat
