package spelling

import (
	"regexp"
	"sync"
	"sync/atomic"
)

// Words is a pattern of words. It is compiled for the first text that may match: a quick test
// of the letters that every match holds says no to most. All methods are those of
// regexp.Regexp, and answer alike.
type Words struct {
	text  string
	quick atomic.Pointer[filter]
	once  sync.Once
	re    *regexp.Regexp
}

// Pattern gives the words of an expression. It does nothing yet, so that the compiler can lay
// out a variable that holds it.
func Pattern(text string) *Words { return &Words{text: text} }

// May reports whether the words may stand in a text: where it says no, nothing matches.
func (w *Words) May(text string) bool { return w.filter().in(text) }

// String is the expression.
func (w *Words) String() string { return w.text }

func (w *Words) filter() *filter {
	f := w.quick.Load()
	if f == nil {
		f = filterOf(w.text)
		w.quick.Store(f)
	}
	return f
}

// at is the compiled pattern.
func (w *Words) at() *regexp.Regexp {
	w.once.Do(func() { w.re = regexp.MustCompile(w.text) })
	return w.re
}

// MatchString reports whether a text matches.
func (w *Words) MatchString(text string) bool { return w.May(text) && w.at().MatchString(text) }

// Match reports whether a text matches.
func (w *Words) Match(text []byte) bool { return w.filter().inBytes(text) && w.at().Match(text) }

// FindString is the first match.
func (w *Words) FindString(text string) string {
	if !w.May(text) {
		return ""
	}
	return w.at().FindString(text)
}

// FindStringIndex is the place of the first match.
func (w *Words) FindStringIndex(text string) []int {
	if !w.May(text) {
		return nil
	}
	return w.at().FindStringIndex(text)
}

// FindStringSubmatch is the first match with its groups.
func (w *Words) FindStringSubmatch(text string) []string {
	if !w.May(text) {
		return nil
	}
	return w.at().FindStringSubmatch(text)
}

// FindStringSubmatchIndex is the place of the first match and its groups.
func (w *Words) FindStringSubmatchIndex(text string) []int {
	if !w.May(text) {
		return nil
	}
	return w.at().FindStringSubmatchIndex(text)
}

// FindAllString lists the first n matches.
func (w *Words) FindAllString(text string, n int) []string {
	if !w.May(text) {
		return nil
	}
	return w.at().FindAllString(text, n)
}

// FindAllStringIndex lists the places of the first n matches.
func (w *Words) FindAllStringIndex(text string, n int) [][]int {
	if !w.May(text) {
		return nil
	}
	return w.at().FindAllStringIndex(text, n)
}

// FindAllStringSubmatch lists the first n matches with their groups.
func (w *Words) FindAllStringSubmatch(text string, n int) [][]string {
	if !w.May(text) {
		return nil
	}
	return w.at().FindAllStringSubmatch(text, n)
}

// FindAllStringSubmatchIndex lists the places of the first n matches and their groups.
func (w *Words) FindAllStringSubmatchIndex(text string, n int) [][]int {
	if !w.May(text) {
		return nil
	}
	return w.at().FindAllStringSubmatchIndex(text, n)
}

// FindIndex is the place of the first match.
func (w *Words) FindIndex(text []byte) []int {
	if !w.filter().inBytes(text) {
		return nil
	}
	return w.at().FindIndex(text)
}

// FindSubmatchIndex is the place of the first match and its groups.
func (w *Words) FindSubmatchIndex(text []byte) []int {
	if !w.filter().inBytes(text) {
		return nil
	}
	return w.at().FindSubmatchIndex(text)
}

// FindAllSubmatchIndex lists the places of the first n matches and their groups.
func (w *Words) FindAllSubmatchIndex(text []byte, n int) [][]int {
	if !w.filter().inBytes(text) {
		return nil
	}
	return w.at().FindAllSubmatchIndex(text, n)
}

// ReplaceAllString puts a replacement in place of every match.
func (w *Words) ReplaceAllString(text, by string) string {
	if !w.May(text) {
		return text
	}
	return w.at().ReplaceAllString(text, by)
}

// ReplaceAllStringFunc puts what a function makes of it in place of every match.
func (w *Words) ReplaceAllStringFunc(text string, by func(string) string) string {
	if !w.May(text) {
		return text
	}
	return w.at().ReplaceAllStringFunc(text, by)
}

// Split cuts a text at its matches into n pieces at most.
func (w *Words) Split(text string, n int) []string {
	if n != 0 && !w.May(text) {
		return []string{text}
	}
	return w.at().Split(text, n)
}
