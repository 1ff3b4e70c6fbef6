package recipe

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/recipe/draft"
	"forebake/engine/recipe/list"
	"forebake/engine/recipe/phrase"
	"forebake/engine/spelling"
)

// sentences reads a line of the method.
func (d *reader) sentences(text string) {
	d.method.last = nil
	text = numbered.ReplaceAllString(strings.TrimSpace(bulletAt.ReplaceAllString(text, "")), "")
	for _, s := range phrase.Sentences(text) {
		if len(s) > phrase.Longest {
			d.notRead(s)
		} else if !d.tooLong() {
			d.sentence(s)
		}
	}
}

// remark adds a comment to the steps of a part.
func (d *reader) remark(p *draft.Part, text string) *draft.Step {
	s := &draft.Step{From: d.at, Text: text}
	p.Steps = append(p.Steps, s)
	return s
}

// sentence reads one sentence. Each cue, with the words up to the next cue, is a step.
// The sentence itself is a comment above its steps.
func (d *reader) sentence(whole string) {
	text, other := phrase.Figures(whole), ""
	if m := stepTitle.FindStringSubmatch(text); m != nil && len(cuesOf(m[1])) > 0 &&
		d.dough().HoldsOf(strings.TrimSuffix(text, m[1])) == 0 {
		text = m[1] // "Knead the dough: turn it out and ..."
	}
	if at := washAlone.FindStringIndex(text); at != nil {
		text = "Brush with egg wash" + text[at[1]:]
	}
	if m := otherwise.FindStringIndex(text); m != nil {
		if _, timed := phrase.TimeOf(text[:m[0]]); timed {
			other, text = strings.Trim(text[m[0]:m[1]], " ,"), text[:m[0]]+text[m[1]:]
		}
	}
	p := d.subject(whole)
	if p != d.dough() && len(p.Lines) == 0 && d.dough().Mixes() > 0 {
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
	n := p.Named(text)
	if n > 2 && putWord.MatchString(text) || n > 0 && gathers.MatchString(text) {
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
			word := strings.Trim(strings.ToLower(text[m.start:m.end]), " ,.;")
			if d.stepOf(p, m.verb, word, piece, text) {
				read = true
			}
		}
	}
	d.joinRepeats(p, head)
	if main := d.dough(); p != main {
		if s := main.Last(); s != nil && before[s] == "" {
			d.method.last = nil // it went on with the dough
		}
	}
	covered := d.covers(text, before)
	raw := p.Kind == "dough" && !p.Did(draft.Shape, draft.Bake) && p.Mixes() > 0
	if m := partOf.FindString(text); m != "" && raw {
		d.remark(p, "not read in it: "+m+" alone; say what goes in later, with reserve")
	}
	if d.Makes == "" && d.readMakes(whole) {
		read = true
	}
	if !read && !covered && !ofTheDay.MatchString(strings.Trim(text, " .")) {
		head.Text = "not read: " + whole
		return
	}
	d.tellLeft(p, whole, text, other, before)
}

// tellLeft reports amounts and words of a sentence that no step holds.
// other is an alternative that the sentence offers.
func (d *reader) tellLeft(p *draft.Part, whole, text, other string, before map[any]string) {
	for _, m := range spooned.FindAllStringSubmatch(text, -1) {
		if _, known := d.list.Named(m[1]); known && !d.lists(m[1]) {
			d.remark(p, "not read: "+m[0]+", in no list")
		}
	}
	if other != "" {
		d.remark(p, "not read: "+other+"; the first is taken")
		d.used = append(d.used, other)
	}
	left := phrase.Unused(whole, d.madeSince(before)+d.amountsIn(whole))
	if len(left) > 0 && !ofTheDay.MatchString(whole) {
		d.remark(p, "not read in it: "+strings.Join(left, ", "))
	}
}

// lists reports whether a word names an ingredient.
func (d *reader) lists(word string) bool {
	for _, p := range d.Parts {
		if p.HoldsOf(word) > 0 {
			return true
		}
	}
	return false
}

// joinRepeats removes duplicate steps of a sentence: "drizzle with the glaze".
func (d *reader) joinRepeats(p *draft.Part, head *draft.Step) {
	from := slices.Index(p.Steps, head)
	for i := len(p.Steps) - 1; i > from && from >= 0; i-- {
		if len(p.Steps[i].Set) > 0 && draft.StepText(p.Steps[i]) == draft.StepText(p.Steps[i-1]) &&
			p.Steps[i].Verb() != draft.Fold {
			p.Steps = slices.Delete(p.Steps, i, i+1)
		}
	}
}

// snapshot is the text of every step and line, without comments.
// A later one shows what a sentence changed.
func (d *reader) snapshot() map[any]string {
	out := map[any]string{}
	for _, p := range d.Parts {
		for _, s := range p.Steps {
			if len(s.Set) > 0 {
				out[s] = draft.StepText(s) + strings.Join(s.Says, " ")
			}
		}
		for _, l := range p.Lines {
			out[l] = l.Text()
		}
	}
	return out
}

// madeSince is the text added or changed since a snapshot, and the words used.
func (d *reader) madeSince(before map[any]string) string {
	var b strings.Builder
	for _, p := range d.Parts {
		for _, s := range p.Steps {
			now := draft.StepText(s) + strings.Join(s.Says, " ")
			if s.Text == "" && before[s] != now {
				b.WriteString(now + " ")
			}
		}
		for _, l := range p.Lines {
			if now := l.Text(); before[l] != now {
				b.WriteString(now + " ")
			}
		}
	}
	return b.String() + strings.Join(d.used, " ")
}

// amountsIn are the amounts of the ingredients that a text names.
func (d *reader) amountsIn(text string) string {
	out := ""
	for _, p := range d.Parts {
		for _, l := range p.Lines {
			if l.NamedIn(text) {
				out += " " + l.Amount
			}
		}
	}
	return out
}

// covers sets covered on the waits of a sentence. A sentence without a wait covers the
// next wait of its paragraph.
func (d *reader) covers(text string, before map[any]string) bool {
	says, open := coverWord.MatchString(text), uncoverWord.MatchString(text)
	if coverBake.MatchString(text) || !says && !open && !d.method.cover {
		return false
	}
	done := false
	for _, p := range d.Parts {
		for _, s := range p.Steps {
			now := draft.StepText(s) + strings.Join(s.Says, " ")
			if slices.Contains(waiting, s.Verb()) && before[s] != now {
				s.Put("covered", strconv.FormatBool(!open))
				done = true
			}
		}
	}
	d.method.cover = !done && (says || d.method.cover)
	return says || open
}

var waiting = []string{draft.Rest, draft.Proof, draft.Chill, draft.Freeze, draft.Thaw,
	draft.Temper, draft.Cool}

// loose reads a sentence that only gives a time or temperature of the step before.
func (d *reader) loose(p *draft.Part, text string) bool {
	if t, ok := phrase.TimeOf(text); ok && d.late(p, t) {
		return true
	}
	t, ok := d.list.Temperature(text)
	return ok && d.cameTo(p, t) // "the dough should be at 24 C"
}

// late adds a time from a separate sentence to the step before, if it has none.
func (d *reader) late(p *draft.Part, t string) bool {
	s := p.Last()
	q, fault := quantity.Read(t, quantity.Of(quantity.Time))
	if s != nil && s.IsOpen() && (s.Verb() != draft.Mix || fault == nil && q.Hi <= mostMixing) {
		s.Set[0].Value = draft.Quote(t)
		return true
	}
	return false
}

// cameTo adds a temperature from a separate sentence to the mix before.
func (d *reader) cameTo(p *draft.Part, t string) bool {
	if s := p.Last(); s != nil && s.Verb() == draft.Mix && !s.Has("to") {
		s.Put("to", draft.Quote(t))
		return true
	}
	return false
}

// byTime splits a text with two times of one verb: "bake 10 minutes at 220 C, then 20 at
// 180 C". Times of a mix are summed instead.
func byTime(verb, text string) []string {
	if !slices.Contains([]string{rise, draft.Bake, draft.Chill, draft.Cook, draft.Freeze}, verb) {
		return []string{text}
	}
	return phrase.ByTime(text)
}

// merged joins the cues of one step: "let rise until doubled", "leave overnight in the
// fridge". Two cues with a time each stay two steps.
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
		case m.verb == last.verb && isOneOf(m.verb, rise, draft.Soak, draft.Chill):
		case m.verb == draft.Soak && last.verb == rise, m.verb == rise && last.verb == draft.Soak:
			last.verb = draft.Soak
		case m.verb == draft.Chill && last.verb == rise &&
			inFridge.MatchString(text[m.start:m.end]):
			last.verb = draft.Chill
		case last.verb == rise && isOneOf(m.verb, draft.Cool, draft.Temper) &&
			m.start-last.end < 20:
			last.verb = m.verb // "leave to cool"
			last.end = m.end
		default:
			out = append(out, m)
		}
	}
	return out
}

// handling are verbs of the dough alone.
var handling = []string{draft.Divide, draft.Shape, draft.Sheet, draft.Roll, draft.Pan, draft.Bake,
	draft.Fill, draft.Fold, rise, lockIn, turns}

// handled reports whether a sentence is about the dough, whatever heading is above it: its
// verb is one of handling, and it names no ingredient of the part.
func (d *reader) handled(p *draft.Part, marks []mark, text string) bool {
	if p.IsDough() || d.dough().Mixes() == 0 && !phrase.HasWord(text, "dough") {
		return false
	}
	return slices.ContainsFunc(marks, func(m mark) bool {
		clause := phrase.Clause(text[m.start:])
		return slices.Contains(handling, m.verb) &&
			(m.verb != rise || risesWord.MatchString(text[m.start:m.end])) &&
			p.HoldsOf(clause) == 0 && !p.Spoken(clause)
	})
}

// subject is the part that a sentence is about: that of the heading above, a part that it
// names, or the dough.
func (d *reader) subject(text string) *draft.Part {
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
		main.Named(text) <= last.Named(text) && !phrase.JoinsTo(text, last.Name) &&
		!slices.ContainsFunc(marks, func(m mark) bool {
			return slices.Contains(handling, m.verb) &&
				!(m.verb == rise && last.Kind == "preferment")
		}):
		p = last // the next sentence of a paragraph on a filling
	case p == nil:
		p = main
		if len(marks) > 0 && marks[0].verb == draft.Sheet &&
			!strings.Contains(strings.ToLower(text), "dough") {
			clause := phrase.Clause(text[marks[0].start:])
			if of := d.onlyPart("filling"); of != nil && of.HoldsOf(clause) > 0 {
				return of // "beat the butter into a square"
			}
		}
		if len(marks) > 0 &&
			isOneOf(marks[0].verb, draft.Cook, draft.Melt, draft.Soak, draft.Mix) {
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

// cooked is the part that has all ingredients that a sentence cooks: a syrup.
func (d *reader) cooked(text string) *draft.Part {
	var found *draft.Part
	most := 0
	for _, p := range d.Parts {
		if p.Kind == "dough" || len(p.Lines) == 0 {
			continue
		}
		if n := p.HoldsOf(text); n > most {
			found, most = p, n
		}
	}
	if found == nil || most <= d.dough().HoldsOf(text) {
		return nil
	}
	return found
}

// partNamed is the part that a sentence says it makes; nil for none.
func (d *reader) partNamed(text string) *draft.Part {
	lower := strings.ToLower(text)
	for _, p := range d.Parts {
		if p.Kind == "dough" && p == d.dough() || !phrase.HasWord(text, p.Name) {
			continue
		}
		at := spelling.Pattern(`\b(?:for|make|prepare|mix|cook|whisk|combine|melt|stir|simmer|` +
			`soak|beat|heat|boil|warm|rub) ` +
			`(?:together )?(?:all )?(?:(?:the )?ingredients (?:of|for) )?the ` +
			regexp.QuoteMeta(strings.ToLower(p.Name)) + `\b( with| into| to| and the)?`)
		if m := at.FindStringSubmatch(lower); m != nil && m[1] == "" {
			return p
		}
	}
	m := partWord.FindStringSubmatch(text)
	if m == nil || m[2] != "" || strings.Contains(lower, "dough") {
		return nil
	}
	return d.onlyPart(kindOf(m[1]))
}

// unbaked are verbs that no longer mean the dough after its bake: a glaze is melted then.
var unbaked = []string{draft.Divide, draft.Shape, draft.Melt, draft.Cook}

// stepOf reads one step. It reports whether the text was used.
func (d *reader) stepOf(p *draft.Part, verb, word, text, sentence string) bool {
	switch verb {
	case preheat:
		return d.heated(p, text)
	case fatTo:
		return d.fatHeated(text)
	case spread, draft.Dust:
		return d.puton(p, verb, word, text)
	case draft.Fill, lockIn:
		return d.filled(p, verb, word, text, sentence)
	case repeat:
		return d.repeated(p, text)
	case draft.Mix:
		return d.mixed(p, word, text)
	case turns:
		return d.turned(p, word, sentence)
	case draft.Melt, draft.Cook:
		if d.warmed(p, verb, text) {
			return true
		}
	case draft.Cool:
		if p.Kind == "dough" &&
			!p.Did(draft.Rest, draft.Shape, draft.Divide, draft.Bake, draft.Cook) {
			return d.warmed(p, verb, text)
		}
	case draft.Temper:
		if !p.Did(draft.Mix, draft.Chill) && p.Kind == "dough" {
			return d.warmed(p, verb, text) // "bring the butter to room temperature"
		}
	case rise, draft.Soak:
		var read bool
		if verb, read = d.waitOf(p, verb, word, text); read || verb == "" {
			return read
		}
	}
	if verb == draft.Soak && d.soakNotMix(p) {
		text += " yeast"
	}
	if d.goesOn(p, verb, text) {
		return true
	}
	if verb == draft.Cool && p.Kind != "dough" && len(p.Lines) == 0 ||
		// how long the dough may wait
		verb == draft.Store && p.Kind == "dough" && !p.Did(draft.Bake, draft.Cook) ||
		p.Did(draft.Bake) && slices.Contains(unbaked, verb) && p.Kind == "dough" {
		return false
	}
	d.newStep(p, verb, word, text)
	return true
}

// newStep adds a step of a verb with the figures of its text.
func (d *reader) newStep(p *draft.Part, verb, word, text string) {
	s := &draft.Step{From: d.at}
	switch verb {
	case draft.Sheet:
		if told := d.sheeted(s, text); !told && strings.HasPrefix(word, "flatten") {
			s.Set, s.Says = nil, nil // by hand: no sheet
			s.Put(draft.Handle, draft.Quote(phrase.Short(text)))
		}
	case draft.Divide:
		s.Put(verb, d.divided(p, s, text))
		if each := phrase.Grams(text); each != "" && !strings.Contains(s.Set[0].Value, "g") {
			s.Put("note", draft.Quote("of "+each))
		}
	case draft.Shape:
		d.shaped(p, s, word, text)
	case draft.Roll:
		s.Put(verb, draft.Quote("coil"))
	case draft.Pan:
		d.panned(s, word, text)
	case draft.Fold:
		d.folded(p, word, text)
		return
	case draft.Score, draft.Handle:
		s.Put(verb, draft.Quote(strings.TrimSuffix(phrase.Short(text), " and")))
	default:
		s.Put(verb, draft.Quote("?"))
		d.timed(s, text)
		d.around(p, s, verb, text)
		if verb == draft.Soak || verb == draft.Cook || verb == draft.Melt {
			p.Some(s, text)
		}
	}
	p.Steps = append(p.Steps, s)
}

// waitOf is the verb of a wait: a soak of yeast before the flour, a rest after it, a proof of
// pieces, a cooling after the bake. read is true if the step before took the words.
func (d *reader) waitOf(p *draft.Part, verb, word, text string) (of string, read bool) {
	if verb == draft.Soak {
		if !d.floured(p) || !waitWord.MatchString(text) {
			return draft.Soak, false
		}
	} else if leaves.MatchString(word) && !d.waits(text) {
		return "", false
	}
	if d.doubled(p, word, text) {
		return draft.Rest, true
	}
	switch {
	case p.Kind == "dough" && p.Did(draft.Bake):
		return draft.Cool, false
	case p.Kind == "dough" && p.Did(draft.Shape, draft.Pan, draft.Roll):
		return draft.Proof, false
	}
	return draft.Rest, false
}

// floured reports whether flour was mixed into a part. A wait is then no soak of yeast.
func (d *reader) floured(p *draft.Part) bool {
	flourMixed := func(l *draft.Line) bool { return l.Mixed && d.isFlour(l) }
	return p.Mixes() > 0 && (d.all || slices.ContainsFunc(p.Lines, flourMixed)) ||
		p.Did(draft.Shape, draft.Pan, draft.Divide, draft.Chill)
}

// soakNotMix removes a mix that only stirred yeast in: "let sit until foamy" is a soak.
func (d *reader) soakNotMix(p *draft.Part) bool {
	s := p.Last()
	if s == nil || s.Verb() != draft.Mix || !s.IsOpen() || p.Mixes() != 1 || !d.yeastOnly(p) {
		return false
	}
	s.Set, s.Says, s.Text = nil, nil, "the yeast is soaked:"
	return true
}

// yeastOnly reports whether yeast was mixed and no flour.
func (d *reader) yeastOnly(p *draft.Part) bool {
	yeast := false
	for _, l := range p.Lines {
		it, known := d.list.Item(l.Name)
		if !l.Mixed || !known {
			continue
		}
		yeast = yeast || it.Yeast > 0
		if it.Flour > 0 {
			return false
		}
	}
	return yeast
}

// waits reports whether a text gives the time, place or end of a wait.
func (d *reader) waits(text string) bool {
	_, timed := phrase.TimeOf(text)
	_, warm := d.list.Temperature(text)
	return timed || warm || untilSign.MatchString(text) || warmPlace.MatchString(text) ||
		strings.Contains(text, "cover")
}

// doubled adds "until doubled, about an hour" to the rise before.
func (d *reader) doubled(p *draft.Part, word, text string) bool {
	s := p.Last()
	if !strings.HasPrefix(word, "double") || s == nil ||
		!slices.Contains([]string{draft.Rest, draft.Proof, draft.Chill}, s.Verb()) {
		return false
	}
	s.Put("note", draft.Quote("until "+strings.TrimSpace(word)))
	d.timed(s, text)
	d.around(p, s, s.Verb(), text)
	return true
}

// goesOn adds a second cue of a wait to its step: "cover, let rise".
func (d *reader) goesOn(p *draft.Part, verb, text string) bool {
	s := p.Last()
	soaks := s != nil && s.Verb() == draft.Soak && s.IsOpen()
	if soaks && verb == draft.Rest {
		verb = draft.Soak // "dissolve the yeast in the water; let stand 10 min"
	}
	if s == nil || s.Verb() != verb || s.From != d.at && !soaks || !s.IsOpen() ||
		!isOneOf(verb, draft.Rest, draft.Proof, draft.Soak, draft.Chill, draft.Cool) {
		return false
	}
	d.timed(s, text)
	d.around(p, s, verb, text)
	return true
}

// heated reads the preheating of an oven, or its change during a bake.
func (d *reader) heated(p *draft.Part, text string) bool {
	t, says, fan := phrase.Oven(d.list, text)
	d.used = append(d.used, phrase.OvenWords(text)...)
	if t == "" {
		return strings.Contains(strings.ToLower(text), "oven")
	}
	d.used = append(d.used, text)
	if length, timed := phrase.TimeOf(text); timed && p.Did(draft.Bake) {
		s := &draft.Step{From: d.at}
		s.Put(draft.Bake, draft.Quote(length))
		s.Put("at", draft.Quote(t))
		p.Steps = append(p.Steps, s)
		return true
	}
	d.method.oven, d.method.ovenAt, d.method.fan = t, d.at, fan
	if says != "" {
		d.say(says)
	}
	return true
}

// fatHeated keeps the temperature of the frying fat for the step that fries.
func (d *reader) fatHeated(text string) bool {
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

// warming reads a sentence about melting and warming before the mix: "melt the butter, add
// the milk and warm to 37 C".
func (d *reader) warming(p *draft.Part, marks []mark, text string) bool {
	heats := []string{draft.Melt, draft.Cook}
	if len(marks) < 2 || !slices.Contains(heats, marks[0].verb) || !warmsOnly.MatchString(text) ||
		slices.ContainsFunc(marks, func(m mark) bool {
			return !slices.Contains([]string{draft.Melt, draft.Cook, draft.Mix, draft.Cool}, m.verb)
		}) {
		return false
	}
	return d.warmed(p, draft.Melt, text)
}

// warmed reads an ingredient that is melted, warmed or cooled before the mix. This sets the
// ingredient's temperature and adds no step.
func (d *reader) warmed(p *draft.Part, verb, text string) bool {
	lower := strings.ToLower(text)
	_, timed := phrase.TimeOf(text)
	if p.Kind != "dough" || p.Did(draft.Shape, draft.Bake) || timed ||
		strings.Contains(lower, "fry") ||
		strings.Contains(lower, "simmer") || strings.Contains(lower, "thick") {
		return false
	}
	var of []*draft.Line
	for _, l := range p.Lines {
		if l.NamedIn(text) {
			of = append(of, l)
		}
	}
	if len(of) == 0 {
		of = d.warm
	} else if verb != draft.Cool {
		d.warm = append(d.warm, of...)
	}
	t, ok := d.list.Temperature(text)
	if !ok && (strings.Contains(lower, "lukewarm") || strings.Contains(lower, "tepid") ||
		strings.Contains(lower, "blood") || strings.Contains(lower, draft.ByHand)) {
		t, ok = "35 to 40 C", true
	}
	if len(of) == 0 || len(of) == len(p.Lines) && !ok ||
		slices.ContainsFunc(of, func(l *draft.Line) bool {
			return d.isFlour(l) || l.Mixed && !slices.Contains(d.warm, l)
		}) {
		return false
	}
	for _, l := range of {
		l.Mixed = true
		it, known := d.list.Item(l.Name)
		fat := known && it.Fat > fatFrom && strings.Contains(lower, draft.Melt)
		if fat && !l.Has("as") {
			l.Set("as", "melted")
		}
		switch {
		case ok:
			l.Set("temp", t)
		case fat:
		case !l.Has("temp"):
			l.Says = append(l.Says,
				phrase.Short(text)+": how warm does it go in? add temp = \"40 C\"")
		}
	}
	return true
}

// fatFrom is the least fat of an ingredient that melts, %.
const fatFrom = 60

func (d *reader) isFlour(l *draft.Line) bool {
	it, ok := d.list.Item(l.Name)
	return ok && it.Flour > 0
}

// turned reads turns of a laminated dough: "two letter folds, chilling 30 minutes between".
func (d *reader) turned(p *draft.Part, word, sentence string) bool {
	n := 1
	if m := turnCount.FindStringSubmatch(word); m != nil {
		if x, err := strconv.Atoi(phrase.Number(strings.ToLower(m[1]))); err == nil && x <= 8 {
			n = x
		}
	}
	between := phrase.Interval(sentence)
	if between == "" && betweenForm.MatchString(sentence) {
		between, _ = phrase.TimeOf(sentence)
	}
	for i := range n {
		s := &draft.Step{From: d.at}
		s.Put(draft.Fold, "1")
		s.Put("note", draft.Quote(word))
		p.Steps = append(p.Steps, s)
		if between != "" && i+1 < n && !p.Did(draft.Sheet, draft.Fill) {
			p.Steps = append(p.Steps, d.restBetween(between)) // of a dough in the bowl
		} else if between != "" && i+1 < n {
			c := &draft.Step{From: d.at}
			c.Put(draft.Chill, draft.Quote(between))
			c.Put("at", draft.Quote("fridge"))
			p.Steps = append(p.Steps, c)
		}
	}
	return true
}

// folded reads folds of a dough in the bowl, and the rests between them.
func (d *reader) folded(p *draft.Part, word, text string) {
	n, between := phrase.Repeats(text), phrase.Interval(text)
	if all, ok := phrase.TimeOf(text); ok && between != "" && n == 0 {
		n = phrase.Within(all, between) // "every 30 minutes for 2 hours"
	}
	for i := range max(1, n) {
		if i > 0 && between != "" {
			p.Steps = append(p.Steps, d.restBetween(between))
		}
		s := &draft.Step{From: d.at}
		s.Put(draft.Fold, "1")
		s.Put("note", draft.Quote(word))
		p.Steps = append(p.Steps, s)
	}
}

func (d *reader) restBetween(time string) *draft.Step {
	s := &draft.Step{From: d.at}
	s.Put(draft.Rest, draft.Quote(time))
	s.Put("at", draft.Quote("room"))
	s.Says = []string{"between the folds; not said where: read as the room"}
	return s
}

// repeated copies the last turns and the steps after them: "repeat twice". Without steps after
// them it copies the wait before them, or the wait of the text.
func (d *reader) repeated(p *draft.Part, text string) bool {
	n := max(1, phrase.Repeats(text))
	between := phrase.Interval(text)
	from := -1
	for i, s := range p.Steps {
		if s.Verb() == draft.Fold && !s.Off {
			from = i
		}
	}
	if from < 0 {
		return false
	}
	again := slices.Clone(p.Steps[from:])
	if p.Steps[from] == p.Last() {
		before := (&draft.Part{Steps: p.Steps[:from]}).Last()
		if between != "" {
			again = slices.Insert(again, 0, d.restBetween(between))
		} else if before != nil && isOneOf(before.Verb(), draft.Rest, draft.Chill) {
			again = slices.Insert(again, 0, before)
		}
	}
	for range n {
		for _, s := range again {
			if len(s.Set) > 0 && !s.Off {
				p.Steps = append(p.Steps, &draft.Step{From: d.at, Set: slices.Clone(s.Set),
					Says: append([]string{"again"}, s.Says...)})
			}
		}
	}
	return true
}

// shaped reads a shape and a number of pieces: "shape into 16 balls".
func (d *reader) shaped(p *draft.Part, s *draft.Step, word, text string) {
	shape := phrase.Shape(word, text)
	if isOneOf(shape, "log", "loaf") && strings.HasPrefix(word, draft.Roll) &&
		p.Did(draft.Fill) && !p.Did(draft.Roll) {
		s.Put(draft.Roll, draft.Quote("coil"))
		return
	}
	s.Put(draft.Shape, draft.Quote(shape))
	if phrase.HasFigures(text) {
		s.Put("note", draft.Quote(phrase.Short(text)))
	}
	if each := phrase.Grams(text); each != "" && !p.Did(draft.Divide) {
		cut := &draft.Step{From: d.at}
		cut.Put(draft.Divide, draft.Quote(each))
		p.Steps = append(p.Steps, cut)
	}
	if n := phrase.Count(text); n != "" && !phrase.IsOne(n) {
		s.Put("pieces", d.eachOf(p, s, text, n))
	}
}

// divided reads the number of pieces of a cut. "Cut each into 20" multiplies the pieces.
func (d *reader) divided(p *draft.Part, s *draft.Step, text string) string {
	n := phrase.Pieces(text)
	if _, fault := quantity.Read(n, quantity.Of(quantity.Mass)); fault == nil {
		return draft.Quote(n)
	}
	if n == "" {
		if d.count != "" && phrase.IsNumber(d.count) {
			s.Says = append(s.Says, "into how many? as many as it makes: "+phrase.Short(text))
			return d.count
		}
		s.Says = append(s.Says, "into how many? "+phrase.Short(text))
		return draft.Quote("?")
	}
	if phrase.About(text, n) {
		s.Says = append(s.Says, "about "+n)
	}
	return d.eachOf(p, s, text, n)
}

// panned reads the tin or tray of a dough, with its size if written.
func (d *reader) panned(s *draft.Step, word, text string) {
	if strings.Contains(word, ":") {
		word = phrase.Short(text)
	}
	s.Put(draft.Pan, draft.Quote(strings.Trim(strings.ToLower(word), " .")))
	tin, count := list.Tin(text)
	if tin == "" {
		tin, count = d.tin, d.tins
	}
	if tin != "" {
		s.Put("tin", draft.Quote(tin))
	}
	if count != "" {
		s.Put("count", count)
	}
}

// eachOf multiplies a number by the pieces before: "cut each roll into 20 slices".
func (d *reader) eachOf(p *draft.Part, s *draft.Step, text, n string) string {
	if strings.Contains(strings.ToLower(text), "each") {
		for _, other := range slices.Backward(p.Steps) {
			if other.Verb() != draft.Divide || other.Off {
				continue
			}
			each, err1 := strconv.Atoi(n)
			before, err2 := strconv.Atoi(other.Set[0].Value)
			if err1 == nil && err2 == nil && each*before <= 10_000 {
				s.Says = append(s.Says, fmt.Sprintf("%d of each of the %d", each, before))
				return strconv.Itoa(each * before)
			}
			break
		}
	}
	return n
}

// timed sets a step's time, and the sign of its end as a note.
func (d *reader) timed(s *draft.Step, text string) {
	if t, ok := phrase.TimeOf(text); ok && s.IsOpen() {
		if m := eachSide.FindString(text); m != "" && s.Verb() == draft.Cook {
			s.Says = append(s.Says, t+" "+m+": read as both sides")
			t = draft.OrElse(phrase.Multiply(t, 2), t)
		}
		s.Set[0].Value = draft.Quote(t)
		if m := atLeast.FindString(text); m != "" {
			s.Says = append(s.Says, m+": how long at most?")
		}
		if t == phrase.Overnight && phrase.AtNight(text) {
			s.Says = append(s.Says, "overnight: read as "+phrase.Overnight)
		}
	}
	if until := untilSign.FindString(text); until != "" && phrase.Core(text) == "" {
		s.Put("note", draft.Quote(phrase.Short(until)))
	} else if s.Verb() == draft.Rest && phrase.HasWord(text, "double") {
		s.Put("note", draft.Quote("until doubled"))
	}
}

// settle sets the usual time of a step without a time.
func (d *reader) settle(p *draft.Part, s *draft.Step) {
	if !s.IsOpen() || s.Off {
		return
	}
	if s.Verb() == draft.Mix {
		s.Set[0].Value = draft.Quote(mixTime(s.Value("note")))
		s.Says = append(without(s.Says, howLong),
			"how long? "+strings.Trim(s.Set[0].Value, `"`)+": common practice")
		return
	}
	names := ""
	for _, l := range s.With {
		names += " " + l.Name
	}
	for _, u := range usual {
		if u.verb != s.Verb() || !u.sign.MatchString(s.Value("note")+names) ||
			u.dough && s.Verb() == draft.Cool && !p.IsDough() {
			continue
		}
		s.Set[0].Value = draft.Quote(u.time)
		s.Says = append(without(s.Says, howLong), "how long? "+u.time+": common practice")
		if s.Verb() == draft.Rest || s.Verb() == draft.Proof {
			if !s.Has("at") {
				s.Put("at", draft.Quote("room"))
				s.Says = append(s.Says, "not said where: read as the room")
			}
		}
		return
	}
}

// around reads the place or ambient temperature of a step, and its way.
func (d *reader) around(p *draft.Part, s *draft.Step, verb, text string) {
	lower := strings.ToLower(text)
	switch verb {
	case draft.Bake:
		d.baked(s, text)
	case draft.Cook:
		d.cookedAt(p, s, text)
	case draft.Rest, draft.Proof, draft.Soak:
		if air := phrase.Humidity(text); air != "" && verb != draft.Soak {
			s.Put("humidity", draft.Quote(air))
		}
		t, ok := d.list.Temperature(text)
		switch {
		case ok:
			s.Put("at", draft.Quote(t))
		case strings.Contains(lower, "fridge") || strings.Contains(lower, "refrigerator"):
			s.Put("at", draft.Quote("fridge"))
		case coolPlace.MatchString(text):
			s.Put("at", draft.Quote("10 C to 20 C"))
			s.Says = append(s.Says, "a cool place: read as 10 to 20 C")
		case warmPlace.MatchString(text):
			if !s.Has("at") {
				s.Says = append(s.Says, "a warm place: read as 25 to 30 C")
			}
			s.Put("at", draft.Quote("25 C to 30 C"))
		case strings.Contains(lower, "room"), strings.Contains(lower, "counter"):
			s.Put("at", draft.Quote("room"))
		case !s.IsOpen() && !s.Has("at"):
			s.Put("at", draft.Quote("room"))
			s.Says = append(s.Says, "not said where: read as the room")
		}
	case draft.Chill:
		if t, ok := d.list.Temperature(text); ok {
			s.Put("at", draft.Quote(t))
		}
		s.Put("at", draft.Quote("fridge"))
	case draft.Store:
		if strings.Contains(lower, "fridge") || strings.Contains(lower, "refrigerat") {
			s.Put("at", draft.Quote("fridge"))
		} else if strings.Contains(lower, "room") {
			s.Put("at", draft.Quote("room"))
		}
	case draft.Cool, draft.Temper:
		s.Put("at", draft.Quote("room"))
	case draft.Melt:
		if t, ok := d.list.Temperature(text); ok {
			s.Put("to", draft.Quote(t))
		}
	}
	core := phrase.Core(text)
	if core != "" && isOneOf(verb, draft.Bake, draft.Cook, draft.Cool) {
		if t, ok := d.list.Temperature(core); ok {
			s.Put("core", draft.Quote(t))
		}
	}
	s.Says = without(s.Says, howLong)
	if s.IsOpen() {
		s.Says = append(s.Says, howLong)
	}
}

const howLong = "how long?"

func (d *reader) baked(s *draft.Step, text string) {
	t, says, fan := phrase.Oven(d.list, text)
	d.used = append(d.used, phrase.OvenWords(text)...)
	switch {
	case t != "":
		s.Put("at", draft.Quote(t))
		if says != "" {
			s.Says = append(s.Says, says)
		}
	case d.method.oven != "":
		s.Put("at", draft.Quote(d.method.oven))
		fan = d.method.fan
	default:
		s.Put("at", draft.Quote("?"))
		s.Says = append(s.Says, "how hot is the oven?")
	}
	if fan {
		s.Put("by", draft.Quote(draft.ByFanOven))
	}
	d.method.oven, d.method.fan = "", false
}

func (d *reader) cookedAt(p *draft.Part, s *draft.Step, text string) {
	lower := strings.ToLower(text)
	fries := strings.Contains(lower, "fry")
	if m := toForm.FindStringSubmatch(text); m != nil && !fries {
		if t, ok := d.list.Temperature(m[1]); ok {
			s.Put("to", draft.Quote(t))
		}
	} else if t, ok := d.list.Temperature(text); ok {
		s.Put("at", draft.Quote(t))
	}
	switch {
	case fries:
		s.Put("by", draft.Quote(draft.ByFrying))
		if d.method.fat != "" {
			s.Put("at", draft.Quote(d.method.fat))
		}
		if !s.Has("at") {
			s.Put("at", draft.Quote(usualFat))
			s.Says = append(s.Says, "how hot is the fat? "+usualFat+": common practice")
		}
		if s.IsOpen() {
			s.Set[0].Value = draft.Quote("2 to 5 min")
			s.Says = append(s.Says, "how long? 2 to 5 min: common practice")
		}
	case strings.Contains(lower, "simmer"):
		s.Put("by", draft.Quote(draft.BySimmering))
	case strings.Contains(lower, "boil") && !strings.Contains(lower, "not ") &&
		!strings.Contains(lower, "before"):
		s.Put("by", draft.Quote(draft.ByBoiling))
	}
}

// mostMixing is the longest plausible mix, min.
const mostMixing = 60

// mixed reads a mix. A mix without a time belongs to the mix before or after it. Times of one
// kneading are summed.
func (d *reader) mixed(p *draft.Part, word, text string) bool {
	d.mention(p, text)
	d.all = d.all || everything.MatchString(text) ||
		p.Kind == "dough" && p.HoldsOf(text) == 0 && // "mix until smooth" names none: it takes all
			!slices.ContainsFunc(p.Lines, func(l *draft.Line) bool { return l.Mixed })
	if p.Kind == "dough" && p.Did(draft.Bake, draft.Cook) {
		return false
	}
	times := phrase.Times(text)
	s := p.Last()
	if len(times) == 0 && !p.IsDough() {
		return true // no time counts in it; the sentence stands as a comment
	}
	if len(times) == 0 && p.Did(draft.Sheet, draft.Divide, draft.Shape, draft.Fill) {
		return false // no mix of the dough any more
	}
	if s == nil || s.Verb() != draft.Mix || !s.IsOpen() {
		s = &draft.Step{From: d.at}
		s.Put(draft.Mix, draft.Quote("?"))
		s.Says = []string{howLong}
		p.Steps = append(p.Steps, s)
	}
	if p.Mixes() > 1 && goesIn.MatchString(word) {
		d.kneadedIn(p, text)
		p.Into(s, text)
	}
	if len(times) > 0 && s.IsOpen() {
		t := times[0].Text
		if len(times) > 1 && !phrase.Either(text[times[0].End:times[1].Start]) {
			t = phrase.Sum(times)
			s.Says = append(s.Says, t+" in all: "+phrase.Short(text[times[0].Start:]))
		}
		s.Says = without(s.Says, howLong)
		q, fault := quantity.Read(t, quantity.Of(quantity.Time))
		if fault == nil && q.Hi > mostMixing {
			s.Says = append(s.Says, "is it mixed for "+t+"? "+phrase.Short(text))
		} else {
			s.Set[0].Value = draft.Quote(t)
		}
	}
	lower := strings.ToLower(text)
	for _, w := range mixWays {
		if strings.Contains(lower, w.words) {
			s.Put("by", draft.Quote(w.way))
			break
		}
	}
	if t, ok := d.list.Temperature(text); ok && p.Kind == "dough" && toForm.MatchString(text) {
		s.Put("to", draft.Quote(t))
	}
	word = strings.TrimSpace(word)
	if was := strings.Trim(s.Value("note"), `"`); was == "" {
		s.Put("note", draft.Quote(word))
	} else if !strings.Contains(was, word) && len(was) < 80 {
		s.Change("note", draft.Quote(was+", "+word))
	}
	return true
}

// kneadedIn moves a filling that a mix works in to the dough: "knead in the fruit".
func (d *reader) kneadedIn(p *draft.Part, text string) {
	for _, of := range d.Parts {
		if p.Kind != "dough" || of.Kind != "filling" || len(of.Lines) == 0 || d.puts(of.Name) ||
			!of.Spoken(text) || p.Holds("the "+of.Name) {
			continue
		}
		p.Lines = append(p.Lines, d.newLine(list.Line{Name: "the " + of.Name, Amount: "all",
			Says: []string{"worked into the dough, by the method"}}))
	}
}

// mention marks ingredients as mixed; of two of one kind the first.
func (d *reader) mention(p *draft.Part, text string) {
	text = phrase.Except(text)
	seen := map[string]bool{}
	for _, l := range p.Lines {
		words := strings.Fields(l.Name)
		last := strings.ToLower(words[len(words)-1])
		if !l.Mixed && !seen[last] && l.NamedIn(text) {
			l.Mixed, seen[last] = true, true
		}
	}
}

// sheeted reads the thickness and sides of a sheet. It reports whether a thickness is written.
func (d *reader) sheeted(s *draft.Step, text string) bool {
	s.Put(draft.Sheet, draft.Quote("?"))
	thick, wide, area := phrase.Sheet(text)
	if wide != "" {
		s.Put("wide", draft.Quote(wide))
		s.Says = append(s.Says, area+": the longer side is read as the one rolled up")
	}
	if thick == "" {
		s.Set[0].Value = draft.Quote(usualSheet)
		s.Says = append(s.Says, "how thick? "+usualSheet+": common practice")
		return false
	}
	s.Set[0].Value = draft.Quote(thick)
	return true
}
