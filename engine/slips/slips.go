// Package slips finds the corrected lines of a file that does not
// parse: a missing quote, a colon for an equals sign, a bracket of the
// wrong kind. It changes signs alone, never a word or a figure, and
// offers only what lets the parser get further. The run calls it for a
// refused file.
package slips

import (
	"fmt"
	"strings"

	"forebake/engine/source"
	"forebake/engine/spelling"
)

// rounds bounds the lines that are corrected, and so the work: each
// tries some dozen texts.
const rounds = 12

// longest is the largest text that is looked at, bytes: each round
// parses it some dozen times.
const longest = 32 << 10

// Mend gives the problems of a file that does not parse, each with
// the corrected line to paste where one is found. Lines below that
// the same slip spoils stand beside the first problem, each with
// its number.
func Mend(f *source.File, problems source.Problems) source.Problems {
	if len(problems) == 0 || len(f.Text) > longest {
		return problems
	}
	text := strings.TrimPrefix(string(f.Text), "\ufeff") // a byte-order mark
	typed := strings.Split(strings.ReplaceAll(text, "\r\n", "\n"), "\n")
	lines := append([]string(nil), typed...)
	for range rounds {
		at, ok := first(f.Name, lines)
		if ok {
			break
		}
		next, found := better(f.Name, lines, at)
		if !found {
			break
		}
		lines = next
	}
	out := append(source.Problems(nil), problems...)
	told := map[int]bool{} // lines
	for i := range out {
		at := out[i].Place.Line() - 1
		if out[i].Place.IsZero() || out[i].Paste != "" || at < 0 || at >= len(typed) {
			continue
		}
		var paste []string
		for k, line := range lines {
			changed := k >= len(typed) || line != typed[k]
			switch {
			case !changed || told[k]:
				continue
			case k == at:
				paste = append(paste, strings.TrimSpace(line))
			case i == 0 && k < len(typed):
				paste = append(paste, fmt.Sprintf("%s   # line %d", strings.TrimSpace(line), k+1))
			case i == 0:
				paste = append(paste, strings.TrimSpace(line)+"   # at the end of the file")
			default:
				continue
			}
			told[k] = true
		}
		out[i].Paste = strings.Join(paste, "\n")
	}
	return out
}

// first gives the line of the first problem of a text, from 0; ok
// where it has none.
func first(name string, lines []string) (at int, ok bool) {
	f := source.New(name, []byte(strings.Join(lines, "\n")))
	_, problems := source.Parse(f)
	if len(problems) == 0 {
		return 0, true
	}
	at = len(lines)
	for _, p := range problems {
		at = min(at, p.Place.Line()-1)
	}
	return max(at, 0), false
}

// better gives the lines with a slip put right at a line or the one
// before, where the parser then comes further.
func better(name string, lines []string, at int) ([]string, bool) {
	for _, try := range candidates(lines, at) {
		next, ok := first(name, try)
		if ok || next > at && next < len(try) {
			return try, true
		}
	}
	return nil, false
}

// candidates are the texts that a slip at a line may stand for, the
// likeliest first.
func candidates(lines []string, at int) (out [][]string) {
	with := func(k int, line string) []string {
		copied := append([]string(nil), lines...)
		copied[k] = line
		return copied
	}
	if at >= len(lines) {
		at = len(lines) - 1
	}
	for k := at; k >= max(0, at-1); k-- {
		where := inside(lines, k)
		all := lines[k]
		for _, fix := range fixes {
			if fix.where != anywhere && fix.where != where {
				continue
			}
			if one := fix.do(lines[k]); one != lines[k] {
				out = append(out, with(k, one))
			}
			all = fix.do(all)
		}
		out = append(out, with(k, all))
		if text, closing, ok := brackets(lines, k); ok {
			try := with(k, text)
			if closing >= 0 {
				try[closing] = swapped(try[closing], text)
			}
			out = append(out, try)
		}
	}
	for n := 1; n <= 3; n++ { // brackets that are missing at the end
		out = append(out, append(append([]string(nil), lines...), strings.Repeat("}", n)))
	}
	return out
}

// place is what a line stands in.
type place uint8

const (
	anywhere place = iota
	inBlock
	inIngredients
	inSteps
)

var opens = spelling.Pattern(`^\s*(ingredients|steps)\b`)

// inside tells what a line stands in, by the nearest line above that
// opens a list and stands less deep.
func inside(lines []string, at int) place {
	depth := indent(lines[at])
	for k := at - 1; k >= 0 && at-k < 200; k-- {
		if strings.TrimSpace(lines[k]) == "" || indent(lines[k]) >= depth {
			continue
		}
		switch m := opens.FindStringSubmatch(lines[k]); {
		case m == nil:
			return inBlock
		case m[1] == "ingredients":
			return inIngredients
		}
		return inSteps
	}
	return inBlock
}

func indent(line string) int { return len(line) - len(strings.TrimLeft(line, " \t")) }

var (
	listHead = spelling.Pattern(`^(\s*)(ingredients|steps)\s*[=:]?\s*([\[{(])\s*$`)
	closers  = spelling.Pattern(`^\s*[\]})]`)
)

// brackets gives the line that opens ingredients or steps with its sign
// and bracket, and the line that closes it; -1 where both are right.
func brackets(lines []string, at int) (text string, closing int, ok bool) {
	m := listHead.FindStringSubmatch(lines[at])
	if m == nil {
		return "", -1, false
	}
	open := "{"
	if m[2] == "steps" {
		open = "["
	}
	text, closing = m[1]+m[2]+" = "+open, -1
	for k := at + 1; k < len(lines); k++ {
		if indent(lines[k]) == indent(lines[at]) && closers.MatchString(lines[k]) {
			closing = k
			break
		}
	}
	return text, closing, true
}

// swapped is a closing line with the bracket that fits the one
// that opens.
func swapped(line, open string) string {
	end := "}"
	if strings.HasSuffix(open, "[") {
		end = "]"
	}
	return closers.ReplaceAllString(line, line[:indent(line)]+end)
}
