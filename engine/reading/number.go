package reading

import (
	"math"
	"strconv"
)

// plainNumber reads a plain decimal number. It refuses exponents,
// hexadecimal numbers and infinities, which are more likely
// typing errors.
func plainNumber(text string) (float64, bool) {
	for i, c := range text {
		if !(c >= '0' && c <= '9' || c == '.' || c == '-' && i == 0) {
			return 0, false
		}
	}
	x, err := strconv.ParseFloat(text, 64)
	return x, err == nil && !math.IsInf(x, 0) && !math.IsNaN(x)
}
