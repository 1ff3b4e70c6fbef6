package source

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
)

// Edit replaces the bytes from Start to End of a text by New. With
// Start and End equal it inserts. Old is the text that must be there:
// an edit for another version is refused.
type Edit struct {
	Start, End int
	Old, New   string
}

// Replace returns the edit that replaces a range of the file by a text.
func (f *File) Replace(s Span, text string) Edit {
	return Edit{Start: s.Start, End: s.End, Old: string(f.Text[s.Start:s.End]), New: text}
}

// Apply applies edits to a text and returns the new text. All bytes
// outside the edits stay: byte-order mark, line endings, tabs. Edits
// may come in any order, and touch, but not overlap. Insertions at one
// place keep their order. If one edit is refused, nothing changes.
//
// It does not use the HCL library's writer, which changes the whole
// file's spacing and drops a byte-order mark.
func Apply(text []byte, edits []Edit) ([]byte, error) {
	if len(edits) == 0 {
		return text, nil
	}
	sorted := slices.Clone(edits)
	slices.SortStableFunc(sorted, func(a, b Edit) int {
		if a.Start != b.Start {
			return a.Start - b.Start
		}
		return a.End - b.End // an insertion precedes a replacement at the same place
	})
	out := make([]byte, 0, len(text)+64)
	at := 0
	for _, e := range sorted {
		switch {
		case e.Start < 0 || e.End < e.Start || e.End > len(text):
			return nil, fmt.Errorf("an edit of bytes %d to %d does not fit a text of %d bytes",
				e.Start, e.End, len(text))
		case e.Start < at:
			return nil, fmt.Errorf("two edits overlap at byte %d", e.Start)
		case !bytes.Equal(text[e.Start:e.End], []byte(e.Old)):
			return nil, fmt.Errorf("at byte %d is %q, not %q: the text has changed",
				e.Start, text[e.Start:e.End], e.Old)
		}
		out = append(out, text[at:e.Start]...)
		out = append(out, e.New...)
		at = e.End
	}
	return append(out, text[at:]...), nil
}

// Edits returns the edits from one text to another, whole lines at
// a time.
func Edits(before, after []byte) []Edit {
	var out []Edit
	old, fresh := lineStarts(before), lineStarts(after)
	for _, c := range Compare(before, after) {
		from, to := c.OldLine-1, c.OldLine-1+len(c.Old)
		newFrom, newTo := c.NewLine-1, c.NewLine-1+len(c.New)
		out = append(out, Edit{Start: old[from], End: old[to],
			Old: string(before[old[from]:old[to]]),
			New: string(after[fresh[newFrom]:fresh[newTo]])})
	}
	return out
}

// lineStarts lists where each line begins, and the end of the text.
func lineStarts(text []byte) []int {
	out := []int{0}
	for i, c := range text {
		if c == '\n' {
			out = append(out, i+1)
		}
	}
	if out[len(out)-1] < len(text) {
		out = append(out, len(text))
	}
	return out
}

// LineEnding returns the line ending near a place: of the line before
// it, else of its own line, else "\n".
func (f *File) LineEnding(at int) string {
	i := bytes.LastIndexByte(f.Text[:at], '\n')
	if i < 0 {
		i = bytes.IndexByte(f.Text, '\n')
	}
	if i > 0 && f.Text[i-1] == '\r' {
		return "\r\n"
	}
	return "\n"
}

// Changed is a run of lines that differ between two texts.
type Changed struct {
	OldLine, NewLine int // of the first, from 1
	Old, New         []string
}

// Compare returns the lines that differ between two texts, in order,
// without line endings. It suits texts that mostly agree, such as a
// file before and after edits. It matches lines from both ends, then by
// the longest common subsequence.
func Compare(before, after []byte) []Changed {
	a, b := lines(before), lines(after)
	head := 0
	for head < len(a) && head < len(b) && a[head] == b[head] {
		head++
	}
	tail := 0
	for tail < len(a)-head && tail < len(b)-head && a[len(a)-1-tail] == b[len(b)-1-tail] {
		tail++
	}
	x, y := a[head:len(a)-tail], b[head:len(b)-tail]
	// common[i][j] is the length of the longest common subsequence of
	// x[i:] and y[j:].
	common := make([][]int, len(x)+1)
	for i := range common {
		common[i] = make([]int, len(y)+1)
	}
	for i := len(x) - 1; i >= 0; i-- {
		for j := len(y) - 1; j >= 0; j-- {
			if x[i] == y[j] {
				common[i][j] = common[i+1][j+1] + 1
			} else {
				common[i][j] = max(common[i+1][j], common[i][j+1])
			}
		}
	}
	var out []Changed
	var run *Changed
	open := func(i, j int) *Changed {
		if run == nil {
			run = &Changed{OldLine: head + i + 1, NewLine: head + j + 1}
		}
		return run
	}
	closeRun := func() {
		if run != nil {
			out = append(out, *run)
			run = nil
		}
	}
	i, j := 0, 0
	for i < len(x) || j < len(y) {
		switch {
		case i < len(x) && j < len(y) && x[i] == y[j]:
			closeRun()
			i++
			j++
		case j == len(y) || i < len(x) && common[i+1][j] >= common[i][j+1]:
			c := open(i, j)
			c.Old = append(c.Old, x[i])
			i++
		default:
			c := open(i, j)
			c.New = append(c.New, y[j])
			j++
		}
	}
	closeRun()
	return out
}

func lines(text []byte) []string {
	list := strings.Split(string(text), "\n")
	for i := range list {
		list[i] = strings.TrimSuffix(list[i], "\r")
	}
	return list
}
