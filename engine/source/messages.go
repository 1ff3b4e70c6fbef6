package source

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
)

// The messages of this package.

const (
	hasNUL               = "a zero byte is not text; save the file as plain UTF-8 text"
	tooDeep              = "brackets are nested more than 64 deep here"
	commentUnclosed      = `this comment is never closed; end it with "*/"`
	quoteUnclosed        = "this quoted text is not closed on its line; add the closing quote"
	tooManyHeredocLines  = "more than 4096 lines of << text in one file"
	tooManyTemplateSigns = `more than 1024 "$" and "%" in one text`
	tooManyDirectives    = `more than 64 "%{" in one file`
	tooManyChoices       = `more than 64 "?" in one setting`
	tooManySplats        = `more than 64 "*" indexes in one setting`
	tooManyBrackets      = "more than 20000 brackets in one file; split it into several files"
	tooManySigns         = `more than 100000 "!" and "-" in one file`
)

func tooLarge(size, limit int) string {
	return fmt.Sprintf("the file has %d KB; at most %d KB are read", (size+1023)/1024, limit/1024)
}

func notUTF8(rest []byte) string {
	return fmt.Sprintf("the byte 0x%02x is not UTF-8 text; save the file as UTF-8", rest[0])
}

func tooLongSignRun(c byte) string { return fmt.Sprintf("more than 64 %q in a row", string(c)) }

func bracketUnclosed(open string) string {
	closing := map[byte]string{'(': ")", '[': "]"}[open[len(open)-1]]
	if closing == "" {
		closing = "}"
	}
	return fmt.Sprintf("this %q is never closed; add the closing %q", open, closing)
}

func closesNothing(c byte) string {
	return fmt.Sprintf("this %q closes nothing; remove it", string(c))
}

func closesWrong(c, open, want byte, line int) string {
	return fmt.Sprintf("found %q where %q should close the %q of line %d",
		string(c), string(want), string(open), line)
}

func heredocUnclosed(marker string) string {
	return fmt.Sprintf("this text is never closed; put %s on a line of its own below it", marker)
}

func andMore(at Place, n int) Problem {
	return Problem{Place: at, Text: fmt.Sprintf("... and %d more", n), rest: true}
}

// wording rewords the HCL parser's common diagnostics for a baker.
// Others keep the parser's words, in one line.
func wording(f *File, d *hcl.Diagnostic, at Place) string {
	here := shown(string(f.Text[at.Start:at.End]))
	switch d.Summary {
	case "Missing newline after argument", "Missing attribute separator":
		if value, ok := unquoted(f, at.Start); ok {
			return fmt.Sprintf("this value needs quotes: write %q", value)
		}
		if d.Summary == "Missing attribute separator" {
			return fmt.Sprintf("a comma or a new line is missing before %s", here)
		}
		return fmt.Sprintf("a new line is missing before %s; write one setting a line", here)
	case "Unexpected comma after argument":
		if fraction := at.End; fraction < len(f.Text) && f.Text[fraction] >= '0' &&
			f.Text[fraction] <= '9' {
			return "a number takes a decimal point and, with its unit, quotes, as in \"2.5 kg\""
		}
		return "no comma belongs here; write each setting of a block on its own line"
	case "Missing item separator", "Missing argument separator":
		if value, ok := unquoted(f, at.Start); ok {
			return fmt.Sprintf("this value needs quotes: write %q", value)
		}
		if line := f.Position(at.Start).Line; opensLine(f, at.Start) {
			return fmt.Sprintf("a comma is missing before %s, at the end of line %d", here, line-1)
		}
		return fmt.Sprintf("a comma is missing before %s", here)
	case "Missing attribute value", "Missing key/value separator":
		return `"=" and a value are missing here; a name with spaces needs quotes`
	case "Missing newline after block definition":
		return `a new line is missing after the "}" before this`
	case "Invalid argument name":
		return "the name of a setting takes no quotes here"
	case "Invalid block definition":
		switch {
		case strings.HasPrefix(d.Detail, "The equals sign"):
			return `a block takes no "=": write name "title" {`
		case strings.HasPrefix(d.Detail, "A block definition must"):
			return `"{" is missing at the end of this line`
		}
		return `a quoted title or "{" is missing here`
	case "Invalid single-argument block definition", "Argument definition required":
		return `a block on one line holds one setting; put each setting and the "}" on its own line`
	case "Argument or block definition required":
		if name := f.Text[at.Start:at.End]; isName(name) {
			return fmt.Sprintf(`"=" is missing after %s`, here)
		}
		if rest := strings.TrimSpace(here); rest == "" || rest == `""` {
			return "a setting (name = value) or a block is missing here"
		}
		return here + " cannot start a line; write a setting (name = value) or a block"
	case "Attribute redefined":
		if line := lineIn(d.Detail, f.Name); line != "" {
			return fmt.Sprintf("%s is already set at line %s; keep one", here, line)
		}
		return fmt.Sprintf("%s is set twice; keep one", here)
	case "Invalid expression", "Missing expression":
		if strings.TrimSpace(string(f.Text[at.Start:at.End])) == "" {
			return "a value is missing here"
		}
		return fmt.Sprintf("a value is expected here, not %s", here)
	case "Invalid number literal":
		return fmt.Sprintf("%s is not a number", here)
	case "Invalid character":
		return badCharacter(string(f.Text[at.Start:at.End]), here)
	case "Unsupported operator":
		return fmt.Sprintf("the sign %s is not read here; remove it", here)
	case "Invalid escape sequence":
		return fmt.Sprintf(`%s is not an escape; for a backslash write \\`, here)
	case "Invalid multi-line string", "Unterminated string literal", "Unterminated template string":
		return quoteUnclosed
	case "Invalid string literal":
		return `a title takes plain quoted text; for "${" write "$${"`
	case "Unclosed template interpolation sequence",
		"Extra characters after interpolation expression":
		return `"${" starts a computed text, which is not read; for the signs write "$${"`
	case "Invalid template directive", "Invalid template control keyword":
		return `"%{" starts a computed text, which is not read; for the signs write "%%{"`
	}
	return oneLine(d)
}

// oneLine joins the parser's summary and detail in one lower-case line.
func oneLine(d *hcl.Diagnostic) string {
	text := d.Summary
	if d.Detail != "" {
		detail, _, _ := strings.Cut(d.Detail, "\n")
		text += ": " + lowerFirst(detail)
	}
	return strings.TrimRight(lowerFirst(text), ". ")
}

func lowerFirst(s string) string {
	r, size := utf8.DecodeRuneInString(s)
	next, _ := utf8.DecodeRuneInString(s[size:])
	if unicode.IsUpper(next) { // an abbreviation
		return s
	}
	return string(unicode.ToLower(r)) + s[size:]
}

func badCharacter(c, here string) string {
	switch c {
	case "'", "\u2018", "\u2019", "`":
		return here + ` is not a quote here; write straight double quotes: "like this"`
	case "\u201c", "\u201d", "\u201e", "\u00ab", "\u00bb":
		return here + ` is a curly quote; write straight double quotes: "like this"`
	case ";":
		return `";" does not belong here; write one setting a line`
	}
	return fmt.Sprintf("%s does not belong here", here)
}

// shown quotes an excerpt of the user's text, shortened.
func shown(s string) string {
	if strings.TrimSpace(s) == "" {
		return "the end of the line"
	}
	const most = 32
	if len(s) > most {
		cut := most
		for cut > 0 && !utf8.RuneStart(s[cut]) {
			cut--
		}
		s = s[:cut] + "..."
	}
	if strings.Contains(s, `"`) {
		return Safe(s)
	}
	return `"` + Safe(s) + `"`
}

// unquoted returns the unquoted amount around at, where at follows its
// number, as in makes = 24 pieces.
func unquoted(f *File, at int) (string, bool) {
	start := lineStartBefore(f.Text, at)
	head := strings.TrimRight(string(f.Text[start:at]), " \t")
	cut := strings.LastIndexAny(head, "=:[,")
	number := strings.TrimSpace(head[cut+1:])
	if cut < 0 || number == "" {
		return "", false
	}
	for i := range len(number) {
		if c := number[i]; (c < '0' || c > '9') && c != '.' && c != '-' {
			return "", false
		}
	}
	rest, _, _ := strings.Cut(string(f.Text[at:min(len(f.Text), at+64)]), "\n")
	if end := strings.IndexAny(rest, ",}]#\"\r"); end >= 0 {
		rest = rest[:end]
	}
	rest = strings.TrimSpace(strings.ToValidUTF8(rest, ""))
	if r, _ := utf8.DecodeRuneInString(rest); !unicode.IsLetter(r) && r != '%' && r != '°' {
		return "", false
	}
	return number + " " + rest, true
}

// opensLine reports whether at is the first non-blank of a line other
// than the first.
func opensLine(f *File, at int) bool {
	start := lineStartBefore(f.Text, at)
	return start > 0 && f.Text[start-1] == '\n' && strings.TrimSpace(string(f.Text[start:at])) == ""
}

// lineStartBefore returns the start of the line around at, at most 256
// bytes before it.
func lineStartBefore(text []byte, at int) int {
	for i := at; i > 0 && at-i < 256; i-- {
		if text[i-1] == '\n' {
			return i
		}
	}
	return max(0, at-256)
}

// lineIn returns the line number from a parser's detail that ends in a
// place: "... already set at name:3,1-6."
func lineIn(detail, name string) string {
	_, after, found := strings.Cut(detail, name+":")
	if !found {
		return ""
	}
	end := strings.IndexFunc(after, func(r rune) bool { return r < '0' || r > '9' })
	if end <= 0 {
		return ""
	}
	return after[:end]
}
