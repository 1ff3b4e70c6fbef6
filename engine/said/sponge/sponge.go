// Package sponge reads a sponge that is told in the words of a step:
// "Dampfl: yeast, a little sugar, 100 ml milk, 15 min rest". It knows no
// formula.
package sponge

import (
	"strings"

	"forebake/engine/spelling"
)

var (
	label = spelling.Pattern(`(?i)^(?:(?:make |set |a |the |yeast |small )*(?:sponge|starter|` +
		`pre-?ferment|dampfl|vorteig|hefeansatz|rozczyn|opara|lievitino|fördeg))(?: of|:| from|` +
		` with| mit| aus|,| -)? +`)
	lasts = spelling.Pattern(`(?i)(?:[ ,;:(–-]+(?:for |about |rest |leave |stand )*)` +
		`([\d½][\d./½¼¾ ]*(?:(?:-|–|to )[\d./ ]+)?(?:minutes?|minuten|mins?|` +
		`hours?|hrs?|hr|h|stunden?))\b([^\d½¼¾]*)$`)
	weights = spelling.Pattern(`(?i)(?:\b\d[\d./]*|[½¼¾⅓⅔]) ?(?:(?:kg|g|ml|l|dl|cl|cups?|` +
		`tsps?|tbsps?|teaspoons?|tablespoons?|spoons?|spoonfuls?|EL|TL|rkl|oz)\b\.?)?(?: of\b)? ?`)
)

// Told is a sponge as it is told: the foods, with no amounts; how long it
// stands, "" where that is not said; and the words behind.
type Told struct {
	Foods, Time, Rest string
	Named             bool // the words call it a sponge
}

// Of reads a sponge. The caller looks whether the foods are in its list.
func Of(text string) Told {
	text = strings.TrimSpace(text)
	head := label.ReplaceAllString(text, "")
	out := Told{Named: head != text}
	if m := lasts.FindStringSubmatch(head); m != nil {
		out.Time, out.Rest = strings.TrimSpace(m[1]), strings.Trim(m[2], " ,;()")
		head = head[:len(head)-len(m[0])]
	}
	out.Foods = strings.Trim(weights.ReplaceAllString(head, ""), " ,;()-")
	return out
}
