package recipe

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

// cue is a word of a method that begins a step. The first of the table that fits a place is taken.
type cue struct {
	verb  string // of the formula file; "" for what is no step
	words func() *regexp.Regexp
}

func cueOf(verb, words string) cue {
	return cue{verb, spelling.Pattern(`(?i)\b(?:` + words + `)\b`)}
}

// Verbs of a cue that are not verbs of the formula file.
const (
	preheat = "preheat"
	rise    = "rise"  // a rest, or a proof after the shaping
	spread  = doBrush // a wash, or a brush after the bake
	aside   = ""      // words that hold a verb and mean no step
)

// cues are the words of plain English for the steps. More than one word goes before one.
var cues = []cue{
	cueOf(aside, `mixing bowl|baking (?:sheet|tray|tin|dish|pan|paper|parchment|powder|soda)|stand mixer|the rest\b|paper (?:mould|case)s?|(?:a|the) (?:\w+ )?mould|`+
		`rolling pin|cooling rack|cool place|cool (?:water|milk)|resting place|the rest of|chilled butter|melted butter|`+
		`(?:the )?(?:filling|glaze|dough) mixture|mixture|softened|room temperature|before baking|after baking|`+
		`(?:dust|flour|oil|grease|line)s? (?:a|the|your|two|2)? ?(?:lightly )?(?:work|bench|bowl|tin|pan|tray|baking|large)[\w ]*|`+
		`lightly (?:floured|oiled|greased)[\w ]*|roll-in|(?:the|with|a) (?:\w+ )?(?:glaze|fill|score|wash|mix)\b|`+
		`bread rolls?|dough rolls?`),
	cueOf(preheat, `preheat|pre-heat|heat (?:the |your |an )?oven|turn (?:the |your )?oven|oven to`),
	cueOf(doSoak, `until (?:foamy|frothy|bubbly)|bloom|activate|soak|proof the yeast|dissolve the yeast|sprinkle the yeast`),
	cueOf(doFold, `punch(?: it| the dough)? down|knock(?: it| the dough)? back|deflate|degas|`+
		`stretch(?:es)? and folds?|fold the dough`),
	cueOf(doChill, `refrigerat\w*|chill|in the fridge|to the fridge|retard|cold[- ]proof|in the refrigerator`),
	cueOf(doFreeze, doFreeze),
	cueOf(doThaw, `thaw|defrost`),
	cueOf(doTemper, `come to room temperature|bring to room temperature|take (?:it |them )?out of the fridge`),
	cueOf(doRoll, `roll (?:it |them |the \w+ )?up|roll (?:it |the \w+ )?into a (?:log|coil|cylinder)`),
	cueOf(doSheet, `roll(?: \w+){0,3} out|roll out|roll (?:it |the dough |each (?:piece|half) )?to|pat out|`+
		`roll (?:it |the dough )?into a (?:\d+|large)? ?[\w ]*rectangle|flatten`),
	cueOf(doFill, `spread|fill`),
	cueOf(doDivide, `divide|scale|cut into|portion|slice into|cut (?:it |the \w+ )?into`),
	cueOf(doShape, `shape|form|roll (?:it |them |each (?:piece )?|the pieces )?into|plait|braid|twist|mould`),
	cueOf(doPan, `(?:place|put|arrange|transfer|set|tuck|lay|drop)(?: \w+){0,4} (?:in|on|into|onto|to) `+
		`(?:[\w-]+ ){0,6}?(?:tins?|pans?|trays?|sheets?|dish|moulds?|cases)`),
	cueOf(doBake, `bake|baked for`),
	cueOf(doCook, `deep[- ]fry|fry|simmer|boil|bring to (?:a|the) (?:boil|simmer)|cook|scald|heat|toast`),
	cueOf(doMelt, doMelt),
	cueOf(spread, `brush|glaze|drizzle|coat|dip|ice the|pour (?:the|over)`),
	cueOf(doDust, `dust|sprinkle|scatter`),
	cueOf(doScore, `score|slash|snip`),
	cueOf(doCool, doCool),
	cueOf(doStore, `store|keep for|keeps for`),
	cueOf(rise, `rise|prove|proof|ferment|double(?:d|s)?(?: in (?:size|volume|bulk))?|let (?:it |them |the \w+ )?(?:rest|stand|sit)|rest|leave (?:it |them |the \w+ )?(?:to stand|in a warm)|set aside|stand|leave`),
	cueOf(doMix, `mix|combine|stir|whisk|beat|knead|blend|cream|whip|work in|incorporate|add|toss|rub in|rub|whizz|pulse|process`),
}

// mark is a cue at its place in a sentence.
type mark struct {
	cue
	start, end int
}

// cuesOf finds the cues of a sentence, in order, none within another.
func cuesOf(text string) []mark {
	taken := make([]bool, len(text)+1)
	var out []mark
	for _, c := range cues {
		for _, at := range c.words().FindAllStringIndex(text, -1) {
			if slices.Contains(taken[at[0]:at[1]], true) {
				continue
			}
			for i := at[0]; i < at[1]; i++ {
				taken[i] = true
			}
			out = append(out, mark{c, at[0], at[1]})
		}
	}
	slices.SortFunc(out, func(a, b mark) int { return a.start - b.start })
	return slices.DeleteFunc(out, func(m mark) bool { return m.verb == aside })
}

var sentenceEnd = spelling.Pattern(`([a-z)\]°CF0-9])[.!?;](?:\s+|$)`)

// sentences reads a line of the method.
func (d *draft) sentences(text string) {
	d.method.last = nil
	text = numbered().ReplaceAllString(bullet().ReplaceAllString(text, ""), "")
	text = sentenceEnd().ReplaceAllString(text, "$1\n")
	for _, s := range strings.Split(text, "\n") {
		if s = strings.TrimSpace(s); s != "" {
			d.sentence(s)
		}
	}
}

var partWord = spelling.Pattern(`(?i)\b(?:for|make|prepare|meanwhile|assemble|start|mix|combine|stir|cook|whisk|beat|melt|toss)\b[^.]{0,25}\bthe ([\w ]*?(?:sponge|poolish|biga|starter|tangzhong|filling|custard|topping|streusel|crumb|glaze|icing|frosting|syrup|egg wash|wash))\b`)

// sentence reads one sentence: each cue with the words up to the next one is a step.
func (d *draft) sentence(text string) {
	p := d.subject(text)
	marks := cuesOf(text)
	if len(marks) == 0 {
		if t, ok := timeOf(text); ok && d.late(p, t) {
			return
		}
		if t, ok := temperature(text); ok && d.cameTo(p, t) { // "the dough should be at 24 C"
			return
		}
		d.remarks = append(d.remarks, remark{d.at, "not read: " + text})
		return
	}
	read := false
	before := len(p.steps)
	marks = merged(text, marks)
	for i, m := range marks {
		end := len(text)
		if i+1 < len(marks) {
			end = marks[i+1].start
		}
		start := m.start
		if i == 0 {
			start = 0
		}
		if d.stepOf(p, m.verb, strings.ToLower(text[m.start:m.end]), text[start:end], text) {
			read = true
		}
	}
	for i := len(p.steps) - 1; i > before; i-- { // "drizzle with the glaze" is one step
		if stepText(p.steps[i]) == stepText(p.steps[i-1]) {
			p.steps = slices.Delete(p.steps, i, i+1)
		}
	}
	if !read {
		d.remarks = append(d.remarks, remark{d.at, "not read: " + text})
	}
}

// late puts a time that stands in a sentence of its own into the step before it, where that has
// none.
func (d *draft) late(p *part, t string) bool {
	if n := len(p.steps); n > 0 {
		if s := p.steps[n-1]; s.set[0].value == quote("?") {
			s.set[0].value = quote(t)
			return true
		}
	}
	return false
}

// cameTo puts a temperature that stands in a sentence of its own into the mix before it.
func (d *draft) cameTo(p *part, t string) bool {
	if n := len(p.steps); n > 0 && p.steps[n-1].verb() == doMix && !p.steps[n-1].has("to") {
		p.steps[n-1].put("to", quote(t))
		return true
	}
	return false
}

// inFridge are the words for the cold place where something is left.
var inFridge = spelling.Pattern(`(?i)^(?:in|to) the (?:fridge|refrigerator)$`)

// merged joins cues that speak of one step: "let rise until doubled", "stand until foamy", "leave
// overnight in the fridge". Two with a time each stay two.
func merged(text string, marks []mark) []mark {
	var out []mark
	for i, m := range marks {
		if len(out) == 0 {
			out = append(out, m)
			continue
		}
		last := &out[len(out)-1]
		_, timed := timeOf(text[last.start:m.start])
		end := len(text)
		if i+1 < len(marks) {
			end = marks[i+1].start
		}
		_, again := timeOf(text[m.start:end])
		switch {
		case timed && again:
			out = append(out, m)
		case m.verb == last.verb && (m.verb == rise || m.verb == doSoak || m.verb == doChill):
		case m.verb == doSoak && last.verb == rise, m.verb == rise && last.verb == doSoak:
			last.verb = doSoak
		case m.verb == doChill && last.verb == rise && inFridge().MatchString(text[m.start:m.end]):
			last.verb = doChill
		default:
			out = append(out, m)
		}
	}
	return out
}

// handling are the verbs that the dough alone goes through.
var handling = []string{doDivide, doShape, doSheet, doRoll, doPan, doBake, doFill, rise}

// subject is the part that a sentence speaks of: the one of the heading above it, one that it
// names, or the dough.
func (d *draft) subject(text string) *part {
	main := d.dough()
	if d.method.part != nil && d.method.part != main {
		return d.method.part
	}
	p := d.partNamed(text)
	switch {
	case p == nil && d.method.last != nil && !strings.Contains(strings.ToLower(text), "dough") &&
		!slices.ContainsFunc(cuesOf(text), func(m mark) bool { return slices.Contains(handling, m.verb) }):
		p = d.method.last // the next sentence of a paragraph on a filling
	case p == nil:
		p = main
	}
	d.method.last = nil
	if p != main {
		d.method.last = p
	}
	return p
}

// partNamed is the part that a sentence names as the thing that is made in it; nil for none.
func (d *draft) partNamed(text string) *part {
	lower := strings.ToLower(text)
	for _, p := range d.parts {
		if p.kind == "dough" {
			continue
		}
		at := regexp.MustCompile(`\b(?:for|make|prepare|mix|cook|whisk|combine|melt|stir|simmer|soak|beat|heat) ` +
			`(?:together )?the ` + regexp.QuoteMeta(p.name) + `\b`)
		if at.MatchString(lower) {
			return p
		}
	}
	m := partWord().FindStringSubmatch(text)
	if m == nil || strings.Contains(lower, "dough") {
		return nil
	}
	of := d.parts[:0:0]
	for _, k := range kinds {
		if !k.words().MatchString(m[1]) {
			continue
		}
		for _, p := range d.parts {
			if p.kind == k.kind && p.kind != "dough" {
				of = append(of, p)
			}
		}
		break
	}
	if len(of) == 1 {
		return of[0]
	}
	return nil
}

var (
	warmPlace = spelling.Pattern(`(?i)\bwarm (?:\w+ )?(?:place|spot|room|kitchen|oven)|\bin the warm\b`)
	untilSign = spelling.Pattern(`(?i)\buntil [^,.;(]+`)
	coreForm  = spelling.Pattern(`(?i)(?:internal|core|cent(?:re|er)|middle|inside|thermometer|registers?|reads?)[^.]{0,40}?(\d{2,3} ?(?:°|º|deg(?:rees)?)? ?[CF])\b`)
	gasMark   = spelling.Pattern(`(?i)\bgas(?: mark)? ?(\d)\b`)
	fanForm   = spelling.Pattern(`(?i)(\d{2,3}) ?°? ?([CF])? ?(?:\(?fan\)?|\(?convection\)?)`)
	pieceForm = spelling.Pattern(`(?i)\b(\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|twelve|sixteen|twenty-four)\b(?: equal| even)?(?: -?sized)?(?: \d+ ?g)?\s+(?:equal |even |small |large )?(pieces?|parts?|portions?|balls?|rolls?|buns?|slices?|strands?|ropes?|knots|strips|squares|rounds|loaves|halves)`)
	thickForm = spelling.Pattern(`(?i)(` + numberForm + `)\s*-?\s*(mm|cm|in(?:ch(?:es)?)?|")\.?(?:\s*-?\s*|\s+(?:in\s+)?)(?:thick|thickness)`)
	areaForm  = spelling.Pattern(`(?i)(` + numberForm + `)\s*-?(mm|cm|in(?:ch(?:es)?)?|")?\s*(?:x|×|by)\s*(` + numberForm + `)\s*-?\s*(mm|cm|in(?:ch(?:es)?)?|")`)
	timeForm  = spelling.Pattern(`(?i)(?:(at least|up to|another|about|around|approximately) )?(` + numberForm + `|an?|half an|a further|one|two|three|four|five|six|seven|eight|ten|twelve|fifteen|twenty|thirty|forty)(?:\s*(?:-|–|—|to|or)\s*(` + numberForm + `|two|three))?\s*-?\s*(seconds?|secs?|minutes?|mins?|hours?|hrs?|h|days?)\b(?: (?:and )?(` + numberForm + `|a half)\s*(minutes?|mins?)?)?`)
	toForm    = spelling.Pattern(`(?i)\b(?:to|reaches|until it is)(?: about)? (\d{2,3} ?(?:°|º|deg(?:rees)?)? ?[CF])\b`)
	overnight = spelling.Pattern(`(?i)\bovernight\b`)
	eachGram  = spelling.Pattern(`(?i)\b(\d{2,4}) ?g(?:rams?)?\b`)
)

// gasMarks are the oven marks of the UK, C. 4, 6 and 7 were read in pages that pair them; the
// others are common practice.
var gasMarks = map[string]string{"1": "140 C", "2": "150 C", "3": "170 C", "4": "180 C",
	"5": "190 C", "6": "200 C", "7": "220 C", "8": "230 C", "9": "240 C"}

var smallNumbers = map[string]string{"two": "2", "three": "3", "four": "4", "five": "5", "six": "6",
	"fifteen": "15", "twenty": "20", "thirty": "30", "forty": "40", "seven": "7", "eight": "8", "nine": "9", "ten": "10", "twelve": "12", "sixteen": "16",
	"twenty-four": "24", "one": "1", "a": "1", "an": "1", "half an": "1/2", "a further": "1"}

// overnightHours is how long a night is read as. Trade usage, a judgement.
const overnightHours = "8 h to 14 h"

// timeOf reads the first time of a text: "" and true where a night is meant and not said how long.
func timeOf(text string) (string, bool) {
	m := timeForm().FindStringSubmatch(text)
	if m == nil {
		if overnight().MatchString(text) {
			return overnightHours, true
		}
		return "", false
	}
	number := func(s string) string {
		if n := smallNumbers[strings.ToLower(s)]; n != "" {
			return n
		}
		return s
	}
	unit := strings.ToLower(m[4])
	switch {
	case strings.HasPrefix(unit, "h"):
		unit = "h"
	case strings.HasPrefix(unit, "m"):
		unit = "min"
	case strings.HasPrefix(unit, "s"):
		unit = "s"
	case strings.HasPrefix(unit, "d"):
		unit = "day"
	}
	out := number(m[2])
	if m[3] != "" {
		out += " to " + number(m[3])
	}
	out += " " + unit
	switch {
	case m[5] != "" && m[6] != "" && m[3] == "":
		out += " " + m[5] + " min"
	case strings.EqualFold(m[5], "a half") && unit == "h":
		out += " 30 min"
	}
	if _, fault := quantity.Read(out, quantity.Of(quantity.Time)); fault != nil {
		return "", false
	}
	return out, true
}

// stepOf reads one step, and reports whether anything was made of it.
func (d *draft) stepOf(p *part, verb, word, text, sentence string) bool {
	switch verb {
	case preheat:
		if t, says := ovenOf(text); t != "" {
			d.method.oven, d.method.ovenAt = t, d.at
			if says != "" {
				d.remarks = append(d.remarks, remark{d.at, says})
			}
			return true
		}
		return strings.Contains(strings.ToLower(text), "oven")
	case rise:
		verb = doRest
		if p.kind == "dough" && p.did(doShape, doPan, doRoll) && !p.did(doBake) {
			verb = doProof
		}
		if strings.HasPrefix(word, "double") && len(p.steps) > 0 {
			last := p.steps[len(p.steps)-1]
			if v := last.verb(); v == doRest || v == doProof || v == doChill {
				last.put("note", quote("until "+strings.TrimSpace(word)))
				d.timed(last, text)
				d.around(last, v, text)
				return true
			}
		}
	case spread:
		return d.brushed(sentence)
	case doFill:
		return d.filled(p, text, sentence)
	case doMix:
		return d.mixed(p, word, text)
	}
	if (verb == doRest || verb == doProof || verb == doSoak) && len(p.steps) > 0 {
		last := p.steps[len(p.steps)-1]
		if last.verb() == verb && last.from == d.at && last.set[0].value == quote("?") {
			d.timed(last, text) // "cover and let rise until doubled, about 1 hour"
			d.around(last, verb, text)
			return true
		}
	}
	if verb == doChill && len(p.steps) > 0 && p.steps[len(p.steps)-1].verb() == doChill && p.steps[len(p.steps)-1].from == d.at {
		d.timed(p.steps[len(p.steps)-1], text)
		return true
	}
	if verb == doCool && p.kind != "dough" && len(p.lines) == 0 {
		return false
	}
	s := &step{from: d.at}
	switch verb {
	case doSheet:
		s.put(verb, quote("?"))
		d.sheeted(s, text)
	case doDivide:
		s.put(verb, d.pieces(s, text))
	case doShape:
		s.put(verb, quote(shapeWords(word, text)))
	case doRoll:
		s.put(verb, quote("coil"))
	case doPan:
		s.put(verb, quote(strings.Trim(strings.ToLower(word), " .")))
	case doFold:
		s.put(verb, "1")
		s.put("note", quote(word))
	case doDust, doScore:
		s.put(verb, quote(strings.TrimSuffix(short(text), " and")))
	default:
		s.put(verb, quote("?"))
		d.timed(s, text)
		d.around(s, verb, text)
		if verb == doSoak || verb == doCook || verb == doMelt {
			p.some(s, text)
		}
	}
	p.steps = append(p.steps, s)
	return true
}

// some says which ingredients are soaked, cooked or melted. In a dough it is never all of it, unless
// the dough is fried; where the text does not say, the step is left to the baker.
func (p *part) some(s *step, text string) {
	if s.has("by") {
		return
	}
	if s.verb() == doSoak && strings.Contains(s.value("note"), "foamy") {
		text += " yeast"
	}
	p.into(s, text)
	switch whole := p.kind != "dough" && (s.verb() != doSoak); {
	case s.has("with") || whole:
	default:
		s.off = true
		s.says = append(s.says, "what goes into it? add with = [\"...\"]: "+short(text))
	}
}

// did reports whether a part has a step of one of the verbs.
func (p *part) did(verbs ...string) bool {
	return slices.ContainsFunc(p.steps, func(s *step) bool { return slices.Contains(verbs, s.verb()) })
}

// timed puts the time of a text into a step, and what the text says it is to look like.
func (d *draft) timed(s *step, text string) {
	if t, ok := timeOf(text); ok && s.set[0].value == quote("?") {
		s.set[0].value = quote(t)
		if t == overnightHours && overnight().MatchString(text) {
			s.says = append(s.says, "overnight: read as "+overnightHours)
		}
	}
	if until := untilSign().FindString(text); until != "" && !coreForm().MatchString(text) {
		s.put("note", quote(short(until)))
	}
}

// around reads what is around the part, and how it is done.
func (d *draft) around(s *step, verb, text string) {
	lower := strings.ToLower(text)
	switch verb {
	case doBake:
		if t, says := ovenOf(text); t != "" {
			s.put("at", quote(t))
			if says != "" {
				s.says = append(s.says, says)
			}
		} else if d.method.oven != "" {
			s.put("at", quote(d.method.oven))
		} else {
			s.put("at", quote("?"))
			s.says = append(s.says, "how hot is the oven?")
		}
		d.method.oven = ""
	case doCook:
		if m := toForm().FindStringSubmatch(text); m != nil && !strings.Contains(lower, "fry") {
			if t, ok := temperature(m[1]); ok {
				s.put("to", quote(t))
			}
		} else if t, ok := temperature(text); ok {
			s.put("at", quote(t))
		}
		if strings.Contains(lower, "fry") {
			s.put("by", quote(byFrying))
			if !s.has("at") {
				s.put("at", quote("?"))
				s.says = append(s.says, "how hot is the fat?")
			}
		}
	case doRest, doProof, doSoak:
		t, ok := temperature(text)
		switch {
		case ok:
			s.put("at", quote(t))
		case strings.Contains(lower, "fridge") || strings.Contains(lower, "refrigerator"):
			s.put("at", quote("fridge"))
		case warmPlace().MatchString(text):
			if !s.has("at") {
				s.says = append(s.says, "a warm place: read as 25 to 30 C")
			}
			s.put("at", quote("25 C to 30 C"))
		case strings.Contains(lower, "room"), strings.Contains(lower, "counter"):
			s.put("at", quote("room"))
		case s.set[0].value != quote("?") && !s.has("at"):
			s.put("at", quote("room"))
			s.says = append(s.says, "not said where: read as the room")
		}
	case doChill:
		s.put("at", quote("fridge"))
	case doCool:
		s.put("at", quote("room"))
	}
	if strings.Contains(lower, "cover") && verb != doCook && verb != doSoak || verb == doSoak && strings.Contains(lower, "cover ") {
		s.put("covered", "true")
	}
	if m := coreForm().FindStringSubmatch(text); m != nil && (verb == doBake || verb == doCook || verb == doCool) {
		if t, ok := temperature(m[1]); ok {
			s.put("core", quote(t))
		}
	}
	if s.set[0].value == quote("?") {
		s.says = append(slices.DeleteFunc(s.says, func(t string) bool { return t == howLong }), howLong)
	} else {
		s.says = slices.DeleteFunc(s.says, func(t string) bool { return t == howLong })
	}
}

const howLong = "how long?"

// ovenOf reads the oven's temperature: the one without a fan where both stand there.
func ovenOf(text string) (t, says string) {
	rest := fanForm().ReplaceAllString(text, "")
	if coreAt := coreForm().FindStringIndex(rest); coreAt != nil {
		rest = rest[:coreAt[0]] + rest[coreAt[1]:]
	}
	if t, ok := temperature(rest); ok {
		return t, ""
	}
	if m := gasMark().FindStringSubmatch(rest); m != nil && gasMarks[m[1]] != "" {
		return gasMarks[m[1]], "gas mark " + m[1] + ": read as " + gasMarks[m[1]]
	}
	if m := fanForm().FindStringSubmatch(text); m != nil {
		return m[1] + " " + strings.ToUpper(orElse(m[2], "C")), "a fan oven: write by = \"fan oven\" beside the bake"
	}
	return "", ""
}

var mixWays = []struct{ words, way string }{
	{byDoughHook, byDoughHook}, {byPaddle, byPaddle}, {byStandMixer, byStandMixer},
	{bySpiral, bySpiral}, {byPlanetary, byPlanetary}, {"electric mixer", byMixer}, {byFoodProcessor, byFoodProcessor}, {"by hand", byHand},
	{"wooden spoon", byHand}, {"floured surface", byHand}, {"work surface", byHand},
	{byMixer, byMixer},
}

// mostMixing is the longest mix that is believed, min.
const mostMixing = 60

// goesIn are the words of a mix for what goes into a dough that is mixed already.
var goesIn = spelling.Pattern(`(?i)^(?:add|stir|work in|incorporate|beat|mix|knead)$`)

// mixes counts the mixes of a part.
func (p *part) mixes() int {
	n := 0
	for _, s := range p.steps {
		if s.verb() == doMix {
			n++
		}
	}
	return n
}

// into names the ingredients that a text speaks of as those that go in with a later mix.
func (p *part) into(s *step, text string) {
	var names []string
	for _, l := range p.lines {
		words := strings.Fields(l.name)
		last := strings.TrimSuffix(words[len(words)-1], "s")
		if regexp.MustCompile(`(?i)\b` + regexp.QuoteMeta(last) + `s?\b`).MatchString(text) {
			names = append(names, quote(l.name))
		}
	}
	if len(names) > 0 && len(names) < len(p.lines) {
		s.put("with", "["+strings.Join(names, ", ")+"]")
	}
}

// mixed reads a mix. One without a time is part of the mix that follows or goes before it.
func (d *draft) mixed(p *part, word, text string) bool {
	t, timed := timeOf(text)
	var last *step
	if n := len(p.steps); n > 0 && p.steps[n-1].verb() == doMix {
		last = p.steps[n-1]
	}
	if !timed && p.kind != "dough" && p.kind != "preferment" {
		p.remarks = append(p.remarks, remark{d.at, "said: " + short(text)}) // no time counts in it
		return true
	}
	s := last
	if s == nil || s.set[0].value != quote("?") {
		s = &step{from: d.at}
		s.put(doMix, quote("?"))
		s.says = []string{howLong}
		p.steps = append(p.steps, s)
	}
	if p.mixes() > 1 && goesIn().MatchString(word) {
		p.into(s, text)
	}
	if timed && s.set[0].value == quote("?") {
		s.says = slices.DeleteFunc(s.says, func(t string) bool { return t == howLong })
		if q, fault := quantity.Read(t, quantity.Of(quantity.Time)); fault == nil && q.Hi > mostMixing {
			s.says = append(s.says, "is it mixed for "+t+"? "+short(text))
		} else {
			s.set[0].value = quote(t)
		}
	}
	lower := strings.ToLower(text)
	for _, w := range mixWays {
		if strings.Contains(lower, w.words) {
			s.put("by", quote(w.way))
			break
		}
	}
	for i, o := range s.set {
		if o.key == "note" {
			if was := strings.Trim(o.value, `"`); !strings.Contains(was, word) && len(was) < 80 {
				s.set[i].value = quote(was + ", " + word)
			}
			return true
		}
	}
	s.put("note", quote(word))
	return true
}

// brushed reads what is put on the outside of the dough: a wash before the bake, a topping after it.
func (d *draft) brushed(text string) bool {
	p := d.dough()
	verb, kind, kindsOf := doWash, doWash, []string{doWash}
	if p.did(doBake) || p.did(doCook) {
		verb, kind, kindsOf = doBrush, "topping", []string{"syrup", "topping", doWash}
	}
	var of, spoken []*part
	for _, other := range d.parts {
		if other == p || len(other.lines) == 0 || other.kind == "preferment" {
			continue
		}
		if other.spokenOf(text) {
			spoken = append(spoken, other)
		}
		if slices.Contains(kindsOf, other.kind) {
			of = append(of, other)
		}
	}
	s := &step{from: d.at}
	p.steps = append(p.steps, s)
	switch {
	case len(spoken) == 1:
		s.put(verb, quote(spoken[0].name))
	case len(of) == 1:
		s.put(verb, quote(of[0].name))
	default:
		s.off = true
		s.put(verb, quote("?"))
		s.says = append(s.says, "which part is it? write a "+kind+" part: "+short(text))
	}
	return true
}

// spokenOf reports whether a text names the part or one of its ingredients.
func (p *part) spokenOf(text string) bool {
	names := []string{p.name}
	for _, l := range p.lines {
		words := strings.Fields(l.name)
		names = append(names, words[len(words)-1])
	}
	for _, n := range names {
		if regexp.MustCompile(`(?i)\b` + regexp.QuoteMeta(n) + `\b`).MatchString(text) {
			return true
		}
	}
	return false
}

// filled reads a filling that is spread: the only part of that kind.
func (d *draft) filled(p *part, text, sentence string) bool {
	var of []*part
	lower := strings.ToLower(sentence)
	for _, other := range d.parts {
		if other != p && len(other.lines) > 0 && (other.kind == "filling" || other.kind == "topping") &&
			(other.kind == "filling" || strings.Contains(lower, other.name)) {
			of = append(of, other)
		}
	}
	s := &step{from: d.at}
	s.put(doFill, quote("?"))
	if len(of) == 1 {
		s.set[0].value = quote(of[0].name)
	} else {
		s.off = true
		s.says = append(s.says, "which part is it? "+short(text))
	}
	p.steps = append(p.steps, s)
	return true
}

// sheeted reads a thickness, and the sides of a rectangle.
func (d *draft) sheeted(s *step, text string) {
	unit := func(u string) string {
		if u == `"` || strings.HasPrefix(strings.ToLower(u), "in") {
			return "in"
		}
		return strings.ToLower(u)
	}
	rest := text
	if m := areaForm().FindStringSubmatch(text); m != nil {
		u := unit(orElse(m[4], m[2]))
		long, a := quantity.Read(m[1]+" "+u, quantity.Of(quantity.Length))
		other, b := quantity.Read(m[3]+" "+u, quantity.Of(quantity.Length))
		if a == nil && b == nil {
			if other.Hi > long.Hi {
				long = other
			}
			s.put("wide", quote(long.Text))
			s.says = append(s.says, fmt.Sprintf("%s: the longer side is read as the one rolled up", m[0]))
		}
		rest = strings.Replace(text, m[0], "", 1)
	}
	if m := thickForm().FindStringSubmatch(rest); m != nil {
		s.set[0].value = quote(m[1] + " " + unit(m[2]))
		return
	}
	s.says = append(s.says, "how thick?")
}

// pieces reads into how many a dough is cut, or what each weighs.
func (d *draft) pieces(s *step, text string) string {
	if m := pieceForm().FindStringSubmatch(text); m != nil {
		n := strings.ToLower(m[1])
		if small := smallNumbers[n]; small != "" {
			n = small
		}
		return n
	}
	if strings.Contains(strings.ToLower(text), "half") {
		return "2"
	}
	if m := eachGram().FindStringSubmatch(text); m != nil {
		return quote(m[1] + " g")
	}
	if n := regexp.MustCompile(`\b(\d{1,3})\b`).FindString(text); n != "" {
		return n
	}
	s.says = append(s.says, "into how many?")
	return quote("?")
}

// shapeWords is what a piece is shaped to.
func shapeWords(word, text string) string {
	lower := strings.ToLower(text)
	for _, w := range []string{"balls", "ball", "knots", "knot", "logs", "log", "loaf", "loaves", "rounds",
		"round", "rings", "ring", "buns", "rolls", "crescents", "spirals", "ropes", "plait", "braid", "twist"} {
		if regexp.MustCompile(`\b` + w + `\b`).MatchString(lower) {
			return w
		}
	}
	return strings.TrimSpace(word)
}

// short is a text of one line, cut at a word.
func short(text string) string {
	words := strings.Fields(text)
	out := ""
	for _, w := range words {
		if len(out)+len(w) > 70 {
			return out + " ..."
		}
		if out != "" {
			out += " "
		}
		out += w
	}
	return strings.TrimRight(out, " ,.;:")
}
