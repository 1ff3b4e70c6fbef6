package reading

import (
	"math"
	"strconv"
)

// plainNumber reads an ordinary decimal number; exponents, hexadecimals, infinities and the like are refused, because
// no baker writes them and a typing slip does.
func plainNumber(text string) (float64, bool) {
	for i, c := range text {
		if !(c >= '0' && c <= '9' || c == '.' || c == '-' && i == 0) {
			return 0, false
		}
	}
	x, err := strconv.ParseFloat(text, 64)
	return x, err == nil && !math.IsInf(x, 0) && !math.IsNaN(x)
}
