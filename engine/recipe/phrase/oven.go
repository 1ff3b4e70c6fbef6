package phrase

import (
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/recipe/list"
	"forebake/engine/said/oven"
	"forebake/engine/spelling"
)

var (
	coreForm = spelling.Pattern(`(?i)(?:internal|core|cent(?:re|er)s?|middle|inside|thermometer|` +
		`registers?|reads?|reach(?:es)?)[^.]{0,40}?(\d{2,3} ?(?:°|º|˚|deg(?:rees)?)? ?[CF])\b`)
	gasMark = spelling.Pattern(`(?i)\bgas(?: mark)? ?(\d)\b`)
	// fanForm is "160 C fan", "160 C (fan)" or "fan 160 C"; "180 C (fan 160 C)" has one of them.
	fanForm = spelling.Pattern(`(?i)(\d{2,3}) ?[°º˚]? ?([CF])? ?(?:(?:` + oven.FanWords + `)\b|` +
		`\((?:` + oven.FanWords + `)\))|` +
		`\b(?:` + oven.FanWords + `)(?: oven)?:?(?: at| to)? ?(\d{2,3}) ?[°º˚]? ?([CF]\b)?`)
	bareOven = spelling.Pattern(`(?i)(?:\bat|@|\bbake|\bto|\boven) (\d{3})\b`)
)

// ovenWords are words for an oven, the particular before the general.
// Common practice, no source.
var ovenWords = []struct{ words, t string }{
	{"very hot oven", "220 C to 240 C"}, {"hot oven", "200 C to 220 C"},
	{"moderate oven", "170 C to 190 C"}, {"medium oven", "170 C to 190 C"},
	{"slow oven", "140 C to 160 C"},
}

// Oven reads the oven's temperature: the one without a fan where both stand
// there. fan says that it is of a fan oven.
func Oven(r list.Reader, text string) (t, says string, fan bool) {
	rest := fanForm.ReplaceAllString(ovenPlace.ReplaceAllString(text, "oven"), "")
	if coreAt := coreForm.FindStringIndex(rest); coreAt != nil {
		rest = rest[:coreAt[0]] + rest[coreAt[1]:]
	}
	if t, ok := r.Temperature(rest); ok {
		if l, is := list.Letterless(rest); is {
			says = l + " has no letter: read as " + t
		}
		return t, says, false
	}
	if l, is := list.Letterless(rest); is {
		return "?", l + ": C or F?", false
	}
	if m := bareOven.FindStringSubmatch(rest); m != nil { // "bake 350 for 30 min"
		if t, ok := r.Temperature(m[1] + "°"); ok {
			return t, m[1] + ": read as " + t, false
		}
		return "?", m[1] + ": C or F?", false
	}
	for _, w := range ovenWords {
		if strings.Contains(strings.ToLower(rest), w.words) {
			return w.t, w.words + ": read as " + w.t + ", common practice", false
		}
	}
	if m := gasMark.FindStringSubmatch(rest); m != nil {
		if t := quantity.GasMark(m[1]); t != "" {
			return t, "gas mark " + m[1] + ": read as " + t, false
		}
	}
	if m := fanForm.FindStringSubmatch(text); m != nil {
		return m[1] + m[3] + " " + strings.ToUpper(firstOf(m[2]+m[4], r.Scale, "C")), "", true
	}
	return "", "", false
}

// OvenWords are the words of an oven's other scales that a text holds: of a
// fan oven, of a gas mark.
func OvenWords(text string) []string {
	return []string{fanForm.FindString(text), gasMark.FindString(text)}
}

// Core is the temperature of the middle that a text asks for, in its words;
// "" for none.
func Core(text string) string {
	if m := coreForm.FindStringSubmatch(ovenPlace.ReplaceAllString(text, "oven")); m != nil {
		return m[1]
	}
	return ""
}

// ovenPlace are words for a place in the oven, which is no middle of
// a loaf.
var ovenPlace = spelling.Pattern(`(?i)(?:middle|cent(?:re|er)) ` +
	`(?:of (?:the |an? )?(?:\w+ )?oven|shelf|rack)`)

func firstOf(texts ...string) string {
	for _, t := range texts {
		if t != "" {
			return t
		}
	}
	return ""
}
