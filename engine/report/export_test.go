package report

// For the tests of the pages, which stand on this package.
var (
	Marked = marked
	Parts  = parts
	Read   = read
)
