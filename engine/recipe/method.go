package recipe

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/recipe/list"
	"forebake/engine/recipe/phrase"
)

// sentences reads a line of the method.
func (d *draft) sentences(text string) {
	d.method.last = nil
	text = numbered().ReplaceAllString(strings.TrimSpace(bulletAt().ReplaceAllString(text, "")), "")
	for _, s := range phrase.Sentences(text) {
		if len(s) > phrase.Longest {
			d.notRead(s)
		} else if !d.tooLong() {
			d.sentence(s)
		}
	}
}

// remark puts a comment among the steps of a part, at its place.
func (d *draft) remark(p *part, text string) *step {
	s := &step{from: d.at, text: text}
	p.steps = append(p.steps, s)
	return s
}

// sentence reads one sentence: each cue with the words up to the next one is a step. The sentence
// stands as a comment above its steps, so that a reader sees what was made of it.
func (d *draft) sentence(whole string) {
	text, other := phrase.Figures(whole), ""
	if m := stepTitle().FindStringSubmatch(text); m != nil && len(cuesOf(m[1])) > 0 &&
		d.dough().holdsOf(strings.TrimSuffix(text, m[1])) == 0 {
		text = m[1] // "Knead the dough: turn it out and ..."
	}
	if at := washAlone().FindStringIndex(text); at != nil {
		text = "Brush with egg wash" + text[at[1]:]
	}
	if m := otherwise().FindStringIndex(text); m != nil {
		if _, timed := phrase.TimeOf(text[:m[0]]); timed {
			other, text = strings.Trim(text[m[0]:m[1]], " ,"), text[:m[0]]+text[m[1]:]
		}
	}
	p := d.subject(whole)
	if p != d.dough() && len(p.lines) == 0 && d.dough().mixes() > 0 {
		d.move(p, text) // "for the filling, mix the sugar and cinnamon", in no list of its own
	}
	before := d.snapshot()
	d.used = nil
	if tin, n := list.Tin(text); tin != "" {
		d.tin, d.tins = tin, n
	}
	head := d.remark(p, whole)
	marks := merged(text, cuesOf(text))
	read := len(marks) == 0 && d.loose(p, text)
	if d.warming(p, marks, text) {
		marks, read = nil, true
	}
	if n := p.named(text); n > 2 && putWord().MatchString(text) || n > 0 && gathers().MatchString(text) {
		d.mention(p, text) // "put the flour, yeast and salt in a bowl"
		read = true
	}
	for i, m := range marks {
		start, end := m.start, len(text)
		if i+1 < len(marks) {
			end = marks[i+1].start
		}
		if i == 0 {
			start = 0
		}
		for _, piece := range byTime(m.verb, text[start:end]) {
			if d.stepOf(p, m.verb, strings.Trim(strings.ToLower(text[m.start:m.end]), " ,.;"), piece, text) {
				read = true
			}
		}
	}
	d.joinRepeats(p, head)
	if main := d.dough(); p != main {
		if s := main.last(); s != nil && before[s] == "" {
			d.method.last = nil // it went on with the dough
		}
	}
	covered := d.covers(text, before)
	if m := partOf().FindString(text); m != "" && p.kind == "dough" && !p.did(doShape, doBake) && p.mixes() > 0 {
		d.remark(p, "not read in it: "+m+" alone; say what goes in later, with reserve")
	}
	if d.makes == "" && d.readMakes(whole) {
		read = true
	}
	if !read && !covered && !ofTheDay().MatchString(strings.Trim(text, " .")) {
		head.text = "not read: " + whole
		return
	}
	for _, m := range spooned().FindAllStringSubmatch(text, -1) {
		if _, known := d.list.Named(m[1]); known && !d.lists(m[1]) {
			d.remark(p, "not read: "+m[0]+", in no list")
		}
	}
	if other != "" {
		d.remark(p, "not read: "+other+"; the first is taken")
		d.used = append(d.used, other)
	}
	if left := phrase.Unused(whole, d.madeSince(before)+d.amountsIn(whole)); len(left) > 0 && !ofTheDay().MatchString(whole) {
		d.remark(p, "not read in it: "+strings.Join(left, ", "))
	}
}

// lists reports whether an ingredient of any part is named by a word.
func (d *draft) lists(word string) bool {
	for _, p := range d.parts {
		if p.holdsOf(word) > 0 {
			return true
		}
	}
	return false
}

// joinRepeats leaves one step of those that a sentence says twice: "drizzle with the glaze".
func (d *draft) joinRepeats(p *part, head *step) {
	from := slices.Index(p.steps, head)
	for i := len(p.steps) - 1; i > from && from >= 0; i-- {
		if len(p.steps[i].set) > 0 && stepText(p.steps[i]) == stepText(p.steps[i-1]) &&
			p.steps[i].verb() != doFold {
			p.steps = slices.Delete(p.steps, i, i+1)
		}
	}
}

// snapshot holds the text of every step and line, to tell what a sentence made. Comments are made
// by none.
func (d *draft) snapshot() map[any]string {
	out := map[any]string{}
	for _, p := range d.parts {
		for _, s := range p.steps {
			if len(s.set) > 0 {
				out[s] = stepText(s) + strings.Join(s.says, " ")
			}
		}
		for _, l := range p.lines {
			out[l] = l.Text()
		}
	}
	return out
}

// madeSince is the text of what was made or changed since a snapshot, and of what was taken in.
func (d *draft) madeSince(before map[any]string) string {
	var b strings.Builder
	for _, p := range d.parts {
		for _, s := range p.steps {
			if now := stepText(s) + strings.Join(s.says, " "); s.text == "" && before[s] != now {
				b.WriteString(now + " ")
			}
		}
		for _, l := range p.lines {
			if now := l.Text(); before[l] != now {
				b.WriteString(now + " ")
			}
		}
	}
	return b.String() + strings.Join(d.used, " ")
}

// amountsIn are the whole amounts of the ingredients that a text names: said again, not lost.
func (d *draft) amountsIn(text string) string {
	out := ""
	for _, p := range d.parts {
		for _, l := range p.lines {
			if l.namedIn(text) {
				out += " " + l.Amount
			}
		}
	}
	return out
}

// covers says of the waits that a sentence made that they are covered, and keeps the word for the
// next wait of the paragraph where it made none.
func (d *draft) covers(text string, before map[any]string) bool {
	says, open := coverWord().MatchString(text), uncoverWord().MatchString(text)
	if coverBake().MatchString(text) || !says && !open && !d.method.cover {
		return false
	}
	done := false
	for _, p := range d.parts {
		for _, s := range p.steps {
			if slices.Contains(waiting, s.verb()) && before[s] != stepText(s)+strings.Join(s.says, " ") {
				s.put("covered", strconv.FormatBool(!open))
				done = true
			}
		}
	}
	d.method.cover = !done && (says || d.method.cover)
	return says || open
}

var waiting = []string{doRest, doProof, doChill, doFreeze, doThaw, doTemper, doCool}

// loose reads a sentence without a step: a time or a temperature of the step before it.
func (d *draft) loose(p *part, text string) bool {
	if t, ok := phrase.TimeOf(text); ok && d.late(p, t) {
		return true
	}
	t, ok := d.list.Temperature(text)
	return ok && d.cameTo(p, t) // "the dough should be at 24 C"
}

// late puts a time that stands in a sentence of its own into the step before it, where that has
// none.
func (d *draft) late(p *part, t string) bool {
	s := p.last()
	q, fault := quantity.Read(t, quantity.Of(quantity.Time))
	if s != nil && s.open() && (s.verb() != doMix || fault == nil && q.Hi <= mostMixing) {
		s.set[0].value = quote(t)
		return true
	}
	return false
}

// cameTo puts a temperature that stands in a sentence of its own into the mix before it.
func (d *draft) cameTo(p *part, t string) bool {
	if s := p.last(); s != nil && s.verb() == doMix && !s.has("to") {
		s.put("to", quote(t))
		return true
	}
	return false
}

// byTime cuts what a cue speaks of where it says two times of one kind of step: "bake 10 minutes at
// 220 C, then 20 at 180 C". Times of a mix are added up instead.
func byTime(verb, text string) []string {
	if !slices.Contains([]string{rise, doBake, doChill, doCook, doFreeze}, verb) {
		return []string{text}
	}
	return phrase.ByTime(text)
}

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
		_, timed := phrase.TimeOf(text[last.start:m.start])
		end := len(text)
		if i+1 < len(marks) {
			end = marks[i+1].start
		}
		_, again := phrase.TimeOf(text[m.start:end])
		switch {
		case timed && again:
			out = append(out, m)
		case m.verb == last.verb && (m.verb == rise || m.verb == doSoak || m.verb == doChill):
		case m.verb == doSoak && last.verb == rise, m.verb == rise && last.verb == doSoak:
			last.verb = doSoak
		case m.verb == doChill && last.verb == rise && inFridge().MatchString(text[m.start:m.end]):
			last.verb = doChill
		case last.verb == rise && (m.verb == doCool || m.verb == doTemper) && m.start-last.end < 20:
			last.verb = m.verb // "leave to cool"
			last.end = m.end
		default:
			out = append(out, m)
		}
	}
	return out
}

// handling are the verbs that the dough alone goes through.
var handling = []string{doDivide, doShape, doSheet, doRoll, doPan, doBake, doFill, doFold, rise, lockIn, turns}

// handled reports whether a sentence works on the dough, whatever heading or sentence stands above
// it: a step of the dough alone, and no ingredient of the part beside its verb.
func (d *draft) handled(p *part, marks []mark, text string) bool {
	if p.kind == "dough" || p.kind == "preferment" || d.dough().mixes() == 0 && !phrase.HasWord(text, "dough") {
		return false
	}
	return slices.ContainsFunc(marks, func(m mark) bool {
		return slices.Contains(handling, m.verb) && (m.verb != rise || risesWord().MatchString(text[m.start:m.end])) &&
			p.holdsOf(phrase.Clause(text[m.start:])) == 0 && !p.spoken(phrase.Clause(text[m.start:]))
	})
}

// subject is the part that a sentence speaks of: the one of the heading above it, one that it
// names, or the dough.
func (d *draft) subject(text string) *part {
	main := d.dough()
	marks := merged(text, cuesOf(text))
	if of := d.method.part; of != nil && of != main {
		if !d.handled(of, marks, text) {
			return of
		}
		d.method.part = nil // the heading's part is done
	}
	last := d.method.last
	p := d.partNamed(text)
	switch {
	case p == nil && last != nil && !strings.Contains(strings.ToLower(text), "dough") &&
		main.named(text) <= last.named(text) && !phrase.JoinsTo(text, last.name) &&
		!slices.ContainsFunc(marks, func(m mark) bool {
			return slices.Contains(handling, m.verb) && !(m.verb == rise && last.kind == "preferment")
		}):
		p = last // the next sentence of a paragraph on a filling
	case p == nil:
		p = main
		if len(marks) > 0 && marks[0].verb == doSheet && !strings.Contains(strings.ToLower(text), "dough") {
			if of := d.onlyPart("filling"); of != nil && of.holdsOf(phrase.Clause(text[marks[0].start:])) > 0 {
				return of // "beat the butter into a square"
			}
		}
		if len(marks) > 0 && slices.Contains([]string{doCook, doMelt, doSoak, doMix}, marks[0].verb) {
			if of := d.cooked(text); of != nil {
				p = of
			}
		}
	}
	d.method.last = nil
	if p != main {
		d.method.last = p
	}
	return p
}

// cooked is the part that holds all of what a sentence cooks, where the dough does not: a syrup.
func (d *draft) cooked(text string) *part {
	var found *part
	most := 0
	for _, p := range d.parts {
		if p.kind == "dough" || len(p.lines) == 0 {
			continue
		}
		if n := p.holdsOf(text); n > most {
			found, most = p, n
		}
	}
	if found == nil || most <= d.dough().holdsOf(text) {
		return nil
	}
	return found
}

// partNamed is the part that a sentence names as the thing that is made in it; nil for none.
func (d *draft) partNamed(text string) *part {
	lower := strings.ToLower(text)
	for _, p := range d.parts {
		if p.kind == "dough" && p == d.dough() || !phrase.HasWord(text, p.name) {
			continue
		}
		at := regexp.MustCompile(`\b(?:for|make|prepare|mix|cook|whisk|combine|melt|stir|simmer|soak|beat|heat|boil|warm|rub) ` +
			`(?:together )?(?:all )?(?:(?:the )?ingredients (?:of|for) )?the ` +
			regexp.QuoteMeta(strings.ToLower(p.name)) + `\b( with| into| to| and the)?`)
		if m := at.FindStringSubmatch(lower); m != nil && m[1] == "" {
			return p
		}
	}
	m := partWord().FindStringSubmatch(text)
	if m == nil || m[2] != "" || strings.Contains(lower, "dough") {
		return nil
	}
	return d.onlyPart(kindOf(m[1]))
}

// unbaked are verbs that mean the dough no more once it is baked: a glaze is melted then.
var unbaked = []string{doDivide, doShape, doMelt, doCook}

// stepOf reads one step, and reports whether anything was made of it.
func (d *draft) stepOf(p *part, verb, word, text, sentence string) bool {
	switch verb {
	case preheat:
		return d.heated(p, text)
	case fatTo:
		return d.fatHeated(text)
	case spread, doDust:
		return d.puton(p, verb, word, text)
	case doFill, lockIn:
		return d.filled(p, verb, word, text, sentence)
	case repeat:
		return d.repeated(p, text)
	case doMix:
		return d.mixed(p, word, text)
	case turns:
		return d.turned(p, word, sentence)
	case doMelt, doCook:
		if d.warmed(p, verb, text) {
			return true
		}
	case doCool:
		if p.kind == "dough" && !p.did(doRest, doShape, doDivide, doBake, doCook) {
			return d.warmed(p, verb, text)
		}
	case doTemper:
		if !p.did(doMix, doChill) && p.kind == "dough" {
			return d.warmed(p, verb, text) // "bring the butter to room temperature"
		}
	case rise, doSoak:
		var read bool
		if verb, read = d.waitOf(p, verb, word, text); read || verb == "" {
			return read
		}
	}
	if verb == doSoak && d.soakNotMix(p) {
		text += " yeast"
	}
	if d.goesOn(p, verb, text) {
		return true
	}
	if verb == doCool && p.kind != "dough" && len(p.lines) == 0 ||
		verb == doStore && p.kind == "dough" && !p.did(doBake, doCook) || // how long the dough may wait
		p.did(doBake) && slices.Contains(unbaked, verb) && p.kind == "dough" {
		return false
	}
	s := &step{from: d.at}
	switch verb {
	case doSheet:
		if told := d.sheeted(s, text); !told && strings.HasPrefix(word, "flatten") {
			s.set, s.says = nil, nil // by hand: no sheet
			s.put(doHandle, quote(phrase.Short(text)))
		}
	case doDivide:
		s.put(verb, d.divided(p, s, text))
		if each := phrase.Grams(text); each != "" && !strings.Contains(s.set[0].value, "g") {
			s.put("note", quote("of "+each))
		}
	case doShape:
		d.shaped(p, s, word, text)
	case doRoll:
		s.put(verb, quote("coil"))
	case doPan:
		d.panned(s, word, text)
	case doFold:
		d.folded(p, word, text)
		return true
	case doScore, doHandle:
		s.put(verb, quote(strings.TrimSuffix(phrase.Short(text), " and")))
	default:
		s.put(verb, quote("?"))
		d.timed(s, text)
		d.around(p, s, verb, text)
		if verb == doSoak || verb == doCook || verb == doMelt {
			p.some(s, text)
		}
	}
	p.steps = append(p.steps, s)
	return true
}

// waitOf is the verb of a wait: a soak of yeast before the flour, a rest of what holds flour, a proof
// of pieces, the cooling of what is baked. read is true where the step before it takes the words in.
func (d *draft) waitOf(p *part, verb, word, text string) (of string, read bool) {
	if verb == doSoak {
		if !d.floured(p) || !waitWord().MatchString(text) {
			return doSoak, false
		}
	} else if leaves().MatchString(word) && !d.waits(text) {
		return "", false
	}
	if d.doubled(p, word, text) {
		return doRest, true
	}
	switch {
	case p.kind == "dough" && p.did(doBake):
		return doCool, false
	case p.kind == "dough" && p.did(doShape, doPan, doRoll):
		return doProof, false
	}
	return doRest, false
}

// floured reports whether flour was mixed into a part: what waits then is no yeast in its water.
func (d *draft) floured(p *part) bool {
	return p.mixes() > 0 && (d.all || slices.ContainsFunc(p.lines, func(l *line) bool { return l.mixed && l.flour(d) })) ||
		p.did(doShape, doPan, doDivide, doChill)
}

// soakNotMix takes back a mix that only stirred the yeast in: "let sit until foamy" is a soak.
func (d *draft) soakNotMix(p *part) bool {
	s := p.last()
	if s == nil || s.verb() != doMix || !s.open() || p.mixes() != 1 || !p.yeastOnly(d) {
		return false
	}
	s.set, s.says, s.text = nil, nil, "the yeast is soaked:"
	return true
}

// yeastOnly reports whether yeast was mixed and no flour.
func (p *part) yeastOnly(d *draft) bool {
	yeast := false
	for _, l := range p.lines {
		it, known := d.list.Item(l.Name)
		if !l.mixed || !known {
			continue
		}
		yeast = yeast || it.Yeast > 0
		if it.Flour > 0 {
			return false
		}
	}
	return yeast
}

// waits reports whether a text says how long, where or until when something is left.
func (d *draft) waits(text string) bool {
	_, timed := phrase.TimeOf(text)
	_, warm := d.list.Temperature(text)
	return timed || warm || untilSign().MatchString(text) || warmPlace().MatchString(text) ||
		strings.Contains(text, "cover")
}

// doubled puts "until doubled, about an hour" into the rise that it speaks of.
func (d *draft) doubled(p *part, word, text string) bool {
	s := p.last()
	if !strings.HasPrefix(word, "double") || s == nil ||
		!slices.Contains([]string{doRest, doProof, doChill}, s.verb()) {
		return false
	}
	s.put("note", quote("until "+strings.TrimSpace(word)))
	d.timed(s, text)
	d.around(p, s, s.verb(), text)
	return true
}

// goesOn puts a second cue for the same wait of a line into its step: "cover, let rise until doubled".
func (d *draft) goesOn(p *part, verb, text string) bool {
	s := p.last()
	soaks := s != nil && s.verb() == doSoak && s.open()
	if soaks && verb == doRest {
		verb = doSoak // "dissolve the yeast in the water; let stand 10 min"
	}
	if s == nil || s.verb() != verb || s.from != d.at && !soaks || !s.open() ||
		!slices.Contains([]string{doRest, doProof, doSoak, doChill, doCool}, verb) {
		return false
	}
	d.timed(s, text)
	d.around(p, s, verb, text)
	return true
}

// heated reads an oven that is heated, or that is turned down in the middle of a bake.
func (d *draft) heated(p *part, text string) bool {
	t, says, fan := phrase.Oven(d.list, text)
	d.used = append(d.used, phrase.OvenWords(text)...)
	if t == "" {
		return strings.Contains(strings.ToLower(text), "oven")
	}
	d.used = append(d.used, text)
	if length, timed := phrase.TimeOf(text); timed && p.did(doBake) {
		s := &step{from: d.at}
		s.put(doBake, quote(length))
		s.put("at", quote(t))
		p.steps = append(p.steps, s)
		return true
	}
	d.method.oven, d.method.ovenAt, d.method.fan = t, d.at, fan
	if says != "" {
		d.say(says)
	}
	return true
}

// fatHeated keeps how hot the frying fat is for the step that fries.
func (d *draft) fatHeated(text string) bool {
	t, ok := d.list.Temperature(text)
	if !ok {
		return true
	}
	d.method.fat = t
	d.used = append(d.used, text)
	if l, is := list.Letterless(text); is {
		d.say(l + " has no letter: read as " + t)
	}
	return true
}

// warming reads a whole sentence of what is melted and warmed before the mix: "melt the butter, add
// the milk and warm to 37 C".
func (d *draft) warming(p *part, marks []mark, text string) bool {
	heats := []string{doMelt, doCook}
	if len(marks) < 2 || !slices.Contains(heats, marks[0].verb) || !warmsOnly().MatchString(text) ||
		slices.ContainsFunc(marks, func(m mark) bool { return !slices.Contains([]string{doMelt, doCook, doMix, doCool}, m.verb) }) {
		return false
	}
	return d.warmed(p, doMelt, text)
}

// warmed reads an ingredient that is melted, warmed or cooled before the mix: that is how it goes in,
// and no step of the dough.
func (d *draft) warmed(p *part, verb, text string) bool {
	lower := strings.ToLower(text)
	_, timed := phrase.TimeOf(text)
	if p.kind != "dough" || p.did(doShape, doBake) || timed || strings.Contains(lower, "fry") ||
		strings.Contains(lower, "simmer") || strings.Contains(lower, "thick") {
		return false
	}
	var of []*line
	for _, l := range p.lines {
		if l.namedIn(text) {
			of = append(of, l)
		}
	}
	if len(of) == 0 {
		of = d.warm
	} else if verb != doCool {
		d.warm = append(d.warm, of...)
	}
	t, ok := d.list.Temperature(text)
	if !ok && (strings.Contains(lower, "lukewarm") || strings.Contains(lower, "tepid") ||
		strings.Contains(lower, "blood") || strings.Contains(lower, byHand)) {
		t, ok = "35 to 40 C", true
	}
	if len(of) == 0 || len(of) == len(p.lines) && !ok ||
		slices.ContainsFunc(of, func(l *line) bool { return l.flour(d) || l.mixed && !slices.Contains(d.warm, l) }) {
		return false
	}
	for _, l := range of {
		l.mixed = true
		it, known := d.list.Item(l.Name)
		fat := known && it.Fat > fatFrom && strings.Contains(lower, doMelt)
		if fat && !l.has("as") {
			l.set("as", "melted")
		}
		switch {
		case ok:
			l.set("temp", t)
		case fat:
		case !l.has("temp"):
			l.Says = append(l.Says, phrase.Short(text)+": how warm does it go in? add temp = \"40 C\"")
		}
	}
	return true
}

// fatFrom is the least fat of what melts, %.
const fatFrom = 60

func (l *line) has(key string) bool {
	return slices.ContainsFunc(l.Options, func(o list.Option) bool { return o.Key == key })
}

// set sets an option over what stood there.
func (l *line) set(key, value string) {
	if key == "temp" {
		l.Says = slices.DeleteFunc(l.Says, func(s string) bool { return strings.Contains(s, ": how warm") })
	}
	for i, o := range l.Options {
		if o.Key == key {
			l.Options[i].Value = value
			return
		}
	}
	l.Options = append(l.Options, list.Option{Key: key, Value: value})
}

func (l *line) flour(d *draft) bool {
	it, ok := d.list.Item(l.Name)
	return ok && it.Flour > 0
}

// turned reads the turns of a laminated dough: "two letter folds, chilling 30 minutes between".
func (d *draft) turned(p *part, word, sentence string) bool {
	n := 1
	if m := turnCount().FindStringSubmatch(word); m != nil {
		if x, err := strconv.Atoi(phrase.Number(strings.ToLower(m[1]))); err == nil && x <= 8 {
			n = x
		}
	}
	between := phrase.Interval(sentence)
	if between == "" && betweenForm().MatchString(sentence) {
		between, _ = phrase.TimeOf(sentence)
	}
	for i := range n {
		s := &step{from: d.at}
		s.put(doFold, "1")
		s.put("note", quote(word))
		p.steps = append(p.steps, s)
		if between != "" && i+1 < n && !p.did(doSheet, doFill) {
			p.steps = append(p.steps, d.restBetween(between)) // of a dough in the bowl
		} else if between != "" && i+1 < n {
			c := &step{from: d.at}
			c.put(doChill, quote(between))
			c.put("at", quote("fridge"))
			p.steps = append(p.steps, c)
		}
	}
	return true
}

// folded reads folds of a dough in the bowl, and the rests that lie between them.
func (d *draft) folded(p *part, word, text string) {
	n, between := phrase.Repeats(text), phrase.Interval(text)
	if all, ok := phrase.TimeOf(text); ok && between != "" && n == 0 {
		n = phrase.Within(all, between) // "every 30 minutes for 2 hours"
	}
	for i := range max(1, n) {
		if i > 0 && between != "" {
			p.steps = append(p.steps, d.restBetween(between))
		}
		s := &step{from: d.at}
		s.put(doFold, "1")
		s.put("note", quote(word))
		p.steps = append(p.steps, s)
	}
}

func (d *draft) restBetween(time string) *step {
	s := &step{from: d.at}
	s.put(doRest, quote(time))
	s.put("at", quote("room"))
	s.says = []string{"between the folds; not said where: read as the room"}
	return s
}

// repeated does the last turns, and what stands behind them, again: "repeat twice". Where nothing
// stands behind, the wait before them is done again, or that which the text gives.
func (d *draft) repeated(p *part, text string) bool {
	n := max(1, phrase.Repeats(text))
	between := phrase.Interval(text)
	from := -1
	for i, s := range p.steps {
		if s.verb() == doFold && !s.off {
			from = i
		}
	}
	if from < 0 {
		return false
	}
	again := slices.Clone(p.steps[from:])
	if p.steps[from] == p.last() {
		before := (&part{steps: p.steps[:from]}).last()
		if between != "" {
			again = slices.Insert(again, 0, d.restBetween(between))
		} else if before != nil && slices.Contains([]string{doRest, doChill}, before.verb()) {
			again = slices.Insert(again, 0, before)
		}
	}
	for range n {
		for _, s := range again {
			if len(s.set) > 0 && !s.off {
				p.steps = append(p.steps, &step{from: d.at, set: slices.Clone(s.set), says: append([]string{"again"}, s.says...)})
			}
		}
	}
	return true
}

// shaped reads a shape, and into how many pieces: "shape into 16 balls".
func (d *draft) shaped(p *part, s *step, word, text string) {
	shape := phrase.Shape(word, text)
	if (shape == "log" || shape == "loaf") && strings.HasPrefix(word, doRoll) && p.did(doFill) && !p.did(doRoll) {
		s.put(doRoll, quote("coil"))
		return
	}
	s.put(doShape, quote(shape))
	if phrase.HasFigures(text) {
		s.put("note", quote(phrase.Short(text)))
	}
	if each := phrase.Grams(text); each != "" && !p.did(doDivide) {
		cut := &step{from: d.at}
		cut.put(doDivide, quote(each))
		p.steps = append(p.steps, cut)
	}
	if n := phrase.Count(text); n != "" && !phrase.IsOne(n) {
		s.put("pieces", d.eachOf(p, s, text, n))
	}
}

// divided reads into how many a dough is cut; "cut each into 20 slices" is so many times more.
func (d *draft) divided(p *part, s *step, text string) string {
	n := phrase.Pieces(text)
	if _, fault := quantity.Read(n, quantity.Of(quantity.Mass)); fault == nil {
		return quote(n)
	}
	if n == "" {
		if d.count != "" && phrase.IsNumber(d.count) {
			s.says = append(s.says, "into how many? as many as it makes: "+phrase.Short(text))
			return d.count
		}
		s.says = append(s.says, "into how many? "+phrase.Short(text))
		return quote("?")
	}
	if phrase.About(text, n) {
		s.says = append(s.says, "about "+n)
	}
	return d.eachOf(p, s, text, n)
}

// panned reads what a dough is put into, with the tin where a text gives its size.
func (d *draft) panned(s *step, word, text string) {
	if strings.Contains(word, ":") {
		word = phrase.Short(text)
	}
	s.put(doPan, quote(strings.Trim(strings.ToLower(word), " .")))
	tin, count := list.Tin(text)
	if tin == "" {
		tin, count = d.tin, d.tins
	}
	if tin != "" {
		s.put("tin", quote(tin))
	}
	if count != "" {
		s.put("count", count)
	}
}

// eachOf is a number of pieces of each of those there are: "cut each roll into 20 slices".
func (d *draft) eachOf(p *part, s *step, text, n string) string {
	if strings.Contains(strings.ToLower(text), "each") {
		for _, other := range slices.Backward(p.steps) {
			if other.verb() != doDivide || other.off {
				continue
			}
			each, err1 := strconv.Atoi(n)
			before, err2 := strconv.Atoi(other.set[0].value)
			if err1 == nil && err2 == nil && each*before <= 10_000 {
				s.says = append(s.says, fmt.Sprintf("%d of each of the %d", each, before))
				return strconv.Itoa(each * before)
			}
			break
		}
	}
	return n
}

// some says which ingredients are soaked, cooked or melted. In a dough it is never all of it, unless
// the dough is fried; where the text does not say, the step is left to the baker.
func (p *part) some(s *step, text string) {
	if s.has("by") && s.value("by") == quote(byFrying) || p.kind == "dough" && p.did(doShape, doDivide) && s.verb() == doCook {
		return
	}
	if s.verb() == doSoak && strings.Contains(s.value("note"), "foamy") {
		text += " yeast"
	}
	p.into(s, text)
	switch whole := p.kind != "dough"; {
	case len(s.with) > 0 || whole:
	default:
		s.off = true
		s.says = append(s.says, "not read: what goes into it? add with = [\"...\"]: "+phrase.Short(text))
	}
}

// timed puts the time of a text into a step, and what the text says it is to look like.
func (d *draft) timed(s *step, text string) {
	if t, ok := phrase.TimeOf(text); ok && s.open() {
		if m := eachSide().FindString(text); m != "" && s.verb() == doCook {
			s.says = append(s.says, t+" "+m+": read as both sides")
			t = orElse(phrase.Multiply(t, 2), t)
		}
		s.set[0].value = quote(t)
		if m := atLeast().FindString(text); m != "" {
			s.says = append(s.says, m+": how long at most?")
		}
		if t == phrase.Overnight && phrase.AtNight(text) {
			s.says = append(s.says, "overnight: read as "+phrase.Overnight)
		}
	}
	if until := untilSign().FindString(text); until != "" && phrase.Core(text) == "" {
		s.put("note", quote(phrase.Short(until)))
	} else if s.verb() == doRest && phrase.HasWord(text, "double") {
		s.put("note", quote("until doubled"))
	}
}

// settle takes the usual time of a step that no line of the text gave one.
func (d *draft) settle(p *part, s *step) {
	if !s.open() || s.off {
		return
	}
	if s.verb() == doMix {
		s.set[0].value = quote(mixTime(s.value("note")))
		s.says = append(without(s.says, howLong), "how long? "+strings.Trim(s.set[0].value, `"`)+": common practice")
		return
	}
	names := ""
	for _, l := range s.with {
		names += " " + l.Name
	}
	for _, u := range usual {
		if u.verb != s.verb() || !u.sign().MatchString(s.value("note")+names) || u.dough && s.verb() == doCool && p.kind != "dough" && p.kind != "preferment" {
			continue
		}
		s.set[0].value = quote(u.time)
		s.says = append(without(s.says, howLong), "how long? "+u.time+": common practice")
		if s.verb() == doRest || s.verb() == doProof {
			if !s.has("at") {
				s.put("at", quote("room"))
				s.says = append(s.says, "not said where: read as the room")
			}
		}
		return
	}
}

// around reads what is around the part, and how it is done.
func (d *draft) around(p *part, s *step, verb, text string) {
	lower := strings.ToLower(text)
	switch verb {
	case doBake:
		d.baked(s, text)
	case doCook:
		d.cookedAt(p, s, text)
	case doRest, doProof, doSoak:
		if air := phrase.Humidity(text); air != "" && verb != doSoak {
			s.put("humidity", quote(air))
		}
		t, ok := d.list.Temperature(text)
		switch {
		case ok:
			s.put("at", quote(t))
		case strings.Contains(lower, "fridge") || strings.Contains(lower, "refrigerator"):
			s.put("at", quote("fridge"))
		case coolPlace().MatchString(text):
			s.put("at", quote("10 C to 20 C"))
			s.says = append(s.says, "a cool place: read as 10 to 20 C")
		case warmPlace().MatchString(text):
			if !s.has("at") {
				s.says = append(s.says, "a warm place: read as 25 to 30 C")
			}
			s.put("at", quote("25 C to 30 C"))
		case strings.Contains(lower, "room"), strings.Contains(lower, "counter"):
			s.put("at", quote("room"))
		case !s.open() && !s.has("at"):
			s.put("at", quote("room"))
			s.says = append(s.says, "not said where: read as the room")
		}
	case doChill:
		if t, ok := d.list.Temperature(text); ok {
			s.put("at", quote(t))
		}
		s.put("at", quote("fridge"))
	case doStore:
		if strings.Contains(lower, "fridge") || strings.Contains(lower, "refrigerat") {
			s.put("at", quote("fridge"))
		} else if strings.Contains(lower, "room") {
			s.put("at", quote("room"))
		}
	case doCool, doTemper:
		s.put("at", quote("room"))
	case doMelt:
		if t, ok := d.list.Temperature(text); ok {
			s.put("to", quote(t))
		}
	}
	if core := phrase.Core(text); core != "" && (verb == doBake || verb == doCook || verb == doCool) {
		if t, ok := d.list.Temperature(core); ok {
			s.put("core", quote(t))
		}
	}
	s.says = without(s.says, howLong)
	if s.open() {
		s.says = append(s.says, howLong)
	}
}

const howLong = "how long?"

func (d *draft) baked(s *step, text string) {
	t, says, fan := phrase.Oven(d.list, text)
	d.used = append(d.used, phrase.OvenWords(text)...)
	switch {
	case t != "":
		s.put("at", quote(t))
		if says != "" {
			s.says = append(s.says, says)
		}
	case d.method.oven != "":
		s.put("at", quote(d.method.oven))
		fan = d.method.fan
	default:
		s.put("at", quote("?"))
		s.says = append(s.says, "how hot is the oven?")
	}
	if fan {
		s.put("by", quote(byFanOven))
	}
	d.method.oven, d.method.fan = "", false
}

func (d *draft) cookedAt(p *part, s *step, text string) {
	lower := strings.ToLower(text)
	fries := strings.Contains(lower, "fry")
	if m := toForm().FindStringSubmatch(text); m != nil && !fries {
		if t, ok := d.list.Temperature(m[1]); ok {
			s.put("to", quote(t))
		}
	} else if t, ok := d.list.Temperature(text); ok {
		s.put("at", quote(t))
	}
	switch {
	case fries:
		s.put("by", quote(byFrying))
		if d.method.fat != "" {
			s.put("at", quote(d.method.fat))
		}
		if !s.has("at") {
			s.put("at", quote(usualFat))
			s.says = append(s.says, "how hot is the fat? "+usualFat+": common practice")
		}
		if s.open() {
			s.set[0].value = quote("2 to 5 min")
			s.says = append(s.says, "how long? 2 to 5 min: common practice")
		}
	case strings.Contains(lower, "simmer"):
		s.put("by", quote(bySimmering))
	case strings.Contains(lower, "boil") && !strings.Contains(lower, "not ") && !strings.Contains(lower, "before"):
		s.put("by", quote(byBoiling))
	}
}

// mostMixing is the longest mix that is believed, min.
const mostMixing = 60

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
	var names []*line
	for _, l := range p.lines {
		if !l.off && (l.namedIn(text) || phrase.NamesClass(l.larder, l.Name, text) || slices.Contains(s.with, l)) {
			names = append(names, l)
		}
	}
	all := slices.Clone(names)
	names = slices.DeleteFunc(names, func(l *line) bool { // "warm water" is not the cold water too
		return !slices.Contains(s.with, l) && slices.ContainsFunc(all, func(o *line) bool { return phrase.NotThis(l.Name, o.Name, text) })
	})
	if len(names) > 0 && len(names) < len(p.lines) {
		s.with = names
	}
}

// mixed reads a mix. One without a time is part of the mix that follows or goes before it. Several
// times of one kneading are added up.
func (d *draft) mixed(p *part, word, text string) bool {
	d.mention(p, text)
	d.all = d.all || everything().MatchString(text) ||
		p.kind == "dough" && p.holdsOf(text) == 0 && // "mix until smooth" names none: it takes all
			!slices.ContainsFunc(p.lines, func(l *line) bool { return l.mixed })
	if p.kind == "dough" && p.did(doBake, doCook) {
		return false
	}
	times := phrase.Times(text)
	s := p.last()
	if len(times) == 0 && p.kind != "dough" && p.kind != "preferment" {
		return true // no time counts in it; the sentence stands as a comment
	}
	if len(times) == 0 && p.did(doSheet, doDivide, doShape, doFill) {
		return false // no mix of the dough any more
	}
	if s == nil || s.verb() != doMix || !s.open() {
		s = &step{from: d.at}
		s.put(doMix, quote("?"))
		s.says = []string{howLong}
		p.steps = append(p.steps, s)
	}
	if p.mixes() > 1 && goesIn().MatchString(word) {
		d.kneadedIn(p, text)
		p.into(s, text)
	}
	if len(times) > 0 && s.open() {
		t := times[0].Text
		if len(times) > 1 && !phrase.Either(text[times[0].End:times[1].Start]) {
			t = phrase.Sum(times)
			s.says = append(s.says, t+" in all: "+phrase.Short(text[times[0].Start:]))
		}
		s.says = without(s.says, howLong)
		if q, fault := quantity.Read(t, quantity.Of(quantity.Time)); fault == nil && q.Hi > mostMixing {
			s.says = append(s.says, "is it mixed for "+t+"? "+phrase.Short(text))
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
	if t, ok := d.list.Temperature(text); ok && p.kind == "dough" && toForm().MatchString(text) {
		s.put("to", quote(t))
	}
	word = strings.TrimSpace(word)
	if was := strings.Trim(s.value("note"), `"`); was == "" {
		s.put("note", quote(word))
	} else if !strings.Contains(was, word) && len(was) < 80 {
		s.change("note", quote(was+", "+word))
	}
	return true
}

// kneadedIn puts a filling into the dough that a mix works in: "knead in the fruit".
func (d *draft) kneadedIn(p *part, text string) {
	for _, of := range d.parts {
		if p.kind != "dough" || of.kind != "filling" || len(of.lines) == 0 || d.puts(of.name) ||
			!of.spoken(text) || p.holds("the "+of.name) {
			continue
		}
		p.lines = append(p.lines, d.newLine(list.Line{Name: "the " + of.name, Amount: "all",
			Says: []string{"worked into the dough, by the method"}}))
	}
}

// mention notes which ingredients went into a mix; of two of one kind the first.
func (d *draft) mention(p *part, text string) {
	text = phrase.Except(text)
	seen := map[string]bool{}
	for _, l := range p.lines {
		words := strings.Fields(l.Name)
		last := strings.ToLower(words[len(words)-1])
		if !l.mixed && !seen[last] && l.namedIn(text) {
			l.mixed, seen[last] = true, true
		}
	}
}

// sheeted reads a thickness, and the sides of a rectangle.
// It reports whether the text says how thick.
func (d *draft) sheeted(s *step, text string) bool {
	s.put(doSheet, quote("?"))
	thick, wide, area := phrase.Sheet(text)
	if wide != "" {
		s.put("wide", quote(wide))
		s.says = append(s.says, area+": the longer side is read as the one rolled up")
	}
	if thick == "" {
		s.set[0].value = quote(usualSheet)
		s.says = append(s.says, "how thick? "+usualSheet+": common practice")
		return false
	}
	s.set[0].value = quote(thick)
	return true
}
