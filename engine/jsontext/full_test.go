package jsontext

import (
	"errors"
	"testing"
)

// TestRefusedText holds that a text beyond its most ends the list, and
// that what was taken of the list is counted.
func TestRefusedText(t *testing.T) {
	const most, all = 1 << 16, 100_000
	asked, taken := 0, 0
	c := Capped{Most: most}
	err := WriteInto(&c, map[string][]int{"list": {}}, List{Indent: "  ", Key: "list",
		Taken: &taken, Items: func(yield func(any) bool) {
			for i := range all {
				if !yield(i) {
					return
				}
				asked++
			}
		}})
	if !errors.Is(err, ErrFull) || asked > all/2 || c.Len() > most {
		t.Errorf("%d items are asked for, %d bytes kept: %v", asked, c.Len(), err)
	}
	// An item takes nine or ten bytes, and some are held back before
	// they are written.
	if taken < most/10 || taken > 2*most/9 {
		t.Errorf("%d items are counted as taken of a text of %d bytes", taken, most)
	}
}
