package quantity

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// differences are words before a number that is a difference, or a line to paste.
var differences = []string{"by ", "within ", "closer to that than ", "friction ", "rise of ", `"`}

// WithFahrenheit adds Fahrenheit to each temperature of a message: "74
// C (165 F)". A second scale is printed only here.
func WithFahrenheit(text string) string {
	const unit = " C"
	var out strings.Builder
	done, last := 0, 0 // what is written, and where the last temperature ended
	for at := 0; ; {
		next := strings.Index(text[at:], unit)
		if next < 0 {
			break
		}
		at += next
		number := at - numberLen(text[last:at])
		end := at + len(unit)
		if number == at || end < len(text) && isWord(text[end]) {
			at = end
			continue
		}
		from, added := number, fahrenheit(text[number:at])
		if low, ok := strings.CutSuffix(text[last:number], " to "); ok && numberLen(low) > 0 {
			from = last + len(low) - numberLen(low)
			added = fahrenheit(low[len(low)-numberLen(low):]) + " to " + added
		}
		plain := !slices.ContainsFunc(differences, func(word string) bool {
			return strings.HasSuffix(text[last:from], word)
		})
		at, last = end, end
		if end < len(text) && text[end] == '"' {
			last++
			plain = false
		}
		if plain {
			out.WriteString(text[done:end])
			out.WriteString(" (" + added + " F)")
			done = end
		}
	}
	if done == 0 {
		return text
	}
	return out.String() + text[done:]
}

// numberLen is how many bytes at the end of a text are a number.
func numberLen(text string) int {
	digits := func(to int) (from int) {
		for from = to; from > 0 && text[from-1] >= '0' && text[from-1] <= '9'; from-- {
		}
		return from
	}
	from := digits(len(text))
	if from == len(text) {
		return 0
	}
	if from > 0 && text[from-1] == '.' {
		if whole := digits(from - 1); whole < from-1 {
			from = whole
		}
	}
	if from > 0 && text[from-1] == '-' {
		from--
	}
	return len(text) - from
}

func isWord(c byte) bool {
	return c == '_' || c >= '0' && c <= '9' || c|0x20 >= 'a' && c|0x20 <= 'z'
}

// fahrenheit converts a written number of degrees Celsius, to a
// whole degree.
func fahrenheit(number string) string {
	c, err := strconv.ParseFloat(number, 64)
	if err != nil {
		return number
	}
	return strconv.FormatFloat(math.Round(c*9/5+32)+0, 'f', 0, 64)
}
