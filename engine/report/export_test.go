package report

// For the tests of pages, which build on this package.
var (
	Marked = marked
	Parts  = parts
	Read   = read
)
