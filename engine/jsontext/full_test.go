package jsontext

import (
	"errors"
	"testing"
)

// TestRefusedText holds that a text beyond its most ends the list, and
// that its size is counted to the end where it is not refused.
func TestRefusedText(t *testing.T) {
	const most, all = 1 << 16, 100_000
	for _, stop := range []bool{true, false} {
		taken := 0
		c := Capped{Most: most, Stop: stop}
		err := WriteInto(&c, map[string][]int{"list": {}}, List{"  ", "list",
			func(yield func(any) bool) {
				for i := range all {
					if !yield(i) {
						return
					}
					taken++
				}
			}})
		switch {
		case c.Size <= most || c.Len() > most:
			t.Errorf("stop %v: %d bytes, of which %d are kept", stop, c.Size, c.Len())
		case stop && (!errors.Is(err, ErrFull) || taken > all/2):
			t.Errorf("%d items are taken of a refused text: %v", taken, err)
		case !stop && (err != nil || taken != all):
			t.Errorf("%d items are taken of a text that is measured: %v", taken, err)
		}
	}
}
