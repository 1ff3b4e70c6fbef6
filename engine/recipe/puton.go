package recipe

import (
	"slices"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/recipe/list"
	"forebake/engine/recipe/phrase"
)

// puton reads what is put on the outside of the dough: a wash before the bake, a topping after it.
func (d *draft) puton(subject *part, verb, word, text string) bool {
	p := d.dough()
	if strings.HasPrefix(word, "pour") && !p.did(doShape, doDivide, doBake, doCook) && !ontoDough().MatchString(text) {
		return d.mixed(subject, word, text) // "pour over the liquid"
	}
	put, kinds := doWash, []string{doWash, "topping", "syrup"}
	if p.did(doBake, doCook) {
		put, kinds = doBrush, []string{"syrup", "topping", doWash}
	}
	if s := p.last(); s != nil && verb == doDust {
		// "spread with the butter and sprinkle with the sugar": both are the filling
		if of := d.partOfStep(s); of != nil && of.named(text) > 0 {
			d.used = append(d.used, text)
			d.splitOff(of, s, text)
			return true
		}
	} else if s != nil && s.from == d.at && s.verb() == doWash {
		if of := d.partOfStep(s); of != nil && d.splitOff(of, s, text) {
			return true // "dip in the butter and roll in the sugar"
		}
	}
	if subject.kind != "dough" && len(subject.lines) > 0 && p.mixes() == 0 {
		return true // said beforehand, at the head of the method
	}
	of := subject // "warm the jam and brush over the buns"
	if of.kind == "dough" || len(of.lines) == 0 || !onto().MatchString(text) {
		of = d.likeliest(text, kinds...)
	}
	if of == nil || of.named(text) == 0 {
		was := of
		of = d.likeliest(text, "filling") // "top with the apricots"
		if of == nil {
			of = was
		} else if of.named(text) == 0 || d.puts(of.name) {
			of = was
		} else {
			put = doFill
		}
	}
	if of != nil && of.kind == "filling" && put == doWash {
		if put = doFill; d.puts(of.name) {
			return true // it is on already: its sugar after its butter
		}
	}
	if verb == doDust && of != nil && of != subject && of.named(text) == 0 {
		of = nil
	}
	if s := p.last(); of == nil && s != nil && s.verb() == doSheet && put == doWash {
		// "brush with the melted butter" of a sheet is its filling
		if fill := d.likeliest(text, "filling"); fill != nil && fill.holdsOf(text) > 0 {
			of, put = fill, doFill
		}
	}
	if of == nil {
		of = d.claim(text, put, verb)
	}
	if of != nil && put == doBrush && d.puts(of.name) && !of.spoken(text) {
		// "pour the cream over the hot cake": the rest went on before the bake
		if late := d.takeOut(of, "", func(l *line) bool { return l.namedIn(text) }); late != nil {
			of = late
		}
	}
	s := &step{from: d.at}
	switch {
	case of != nil:
		if of.kind == "topping" && p.mixes() > 0 && !slices.ContainsFunc(p.lines, func(l *line) bool { return l.common() && l.namedIn(text) }) {
			d.move(of, text) // what the dough's list holds for the top
		}
		s.put(put, quote(of.name))
	case verb == doDust:
		s.put(doDust, quote(strings.TrimSuffix(phrase.Short(text), " and")))
	default:
		s.off = true
		s.put(put, quote("?"))
		s.says = append(s.says, "not read: which part is it? write a "+kinds[0]+" part: "+phrase.Short(text))
	}
	p.steps = append(p.steps, s)
	return true
}

// splitOff makes a part of its own of what is scattered over a wash that one heading lists with it:
// "brush with egg and scatter with pearl sugar".
func (d *draft) splitOff(of *part, s *step, text string) bool {
	wet := func(l *line) bool {
		it, known := d.list.Item(l.Name)
		return known && (it.Water >= wetFrom || it.Class == larder.ClassFat)
	}
	dry := func(l *line) bool { return l.namedIn(text) && !wet(l) }
	if of.kind == "filling" || s.verb() == doFill || !slices.ContainsFunc(of.lines, wet) {
		return false
	}
	name := ""
	if words := phrase.Substances(text); len(words) > 0 {
		name = words[0]
	}
	top := d.takeOut(of, name, dry)
	if top != nil {
		on := &step{from: d.at}
		on.put(s.verb(), quote(top.name))
		d.dough().steps = append(d.dough().steps, on)
	}
	return top != nil
}

// takeOut makes a part of its own of some lines of another; nil where it would take none or all.
func (d *draft) takeOut(of *part, name string, out func(*line) bool) *part {
	top := &part{kind: of.kind}
	for _, l := range of.lines {
		if out(l) {
			top.lines = append(top.lines, l)
		}
	}
	if len(top.lines) == 0 || len(top.lines) == len(of.lines) {
		return nil
	}
	top.name = d.freeName(strings.ToLower(orElse(name, top.lines[0].Name)))
	of.lines = slices.DeleteFunc(of.lines, out)
	d.parts = append(d.parts, top)
	return top
}

// washes makes a wash of a heading with nothing below it but what is brushed on with egg.
func (d *draft) washes(p *part) {
	egg := false
	for _, l := range p.lines {
		it, known := d.list.Item(l.Name)
		if !known || !slices.Contains([]larder.Class{larder.ClassEgg, larder.ClassDairy, larder.ClassLiquid}, it.Class) {
			return
		}
		egg = egg || it.Class == larder.ClassEgg
	}
	if egg && p.kind == "topping" {
		p.kind = doWash
	}
}

// wetFrom is the least water of what is brushed on, %.
const wetFrom = 40

// partOfStep is the part that a step puts on; nil for none.
func (d *draft) partOfStep(s *step) *part {
	if len(s.set) == 0 || s.off {
		return nil
	}
	for _, p := range d.parts {
		if p.kind != "dough" && s.set[0].value == quote(p.name) {
			return p
		}
	}
	return nil
}

// filled reads a filling that is spread, a block of butter that is locked in, or what is spread on
// once it is baked.
func (d *draft) filled(p *part, verb, word, text, sentence string) bool {
	main := d.dough()
	baked := main.did(doBake, doCook)
	if p != main && len(p.lines) > 0 && p.kind != "preferment" && main.mixes() == 0 {
		return true // said beforehand, at the head of the method
	}
	var of *part
	switch {
	case p != main && !baked && p.kind != "preferment" && len(p.lines) > 0 && onto().MatchString(text):
		of = p
	case baked && (word == "spread" || word == "spoon" || word == "pipe"):
		if p != main && len(p.lines) > 0 {
			of = p
		} else if d.method.last != nil && d.method.last.kind == "topping" {
			of = d.method.last
		} else {
			of = d.likeliest(text, "topping", "syrup")
		}
		if of == nil {
			of = d.likeliest(text, "filling")
		}
		if of != nil && of.kind != "filling" {
			s := &step{from: d.at}
			s.put(doBrush, quote(of.name))
			main.steps = append(main.steps, s)
			return true
		}
	case verb == lockIn:
		of = d.likeliest(text, "filling")
		if of == nil {
			of = d.onlyPart("filling")
		}
	default:
		if of = d.likeliest(text, "filling"); of == nil {
			of = d.likeliest(sentence, "filling")
		}
		if of == nil || of.named(text) == 0 && d.puts(of.name) {
			if top := d.likeliest(text, "topping"); of == nil && top != nil && top.named(text) > 0 {
				of = top
			}
		}
	}
	if of == nil {
		of = d.claim(text, doFill, verb)
	}
	s := &step{from: d.at}
	if of != nil && of.kind == "topping" {
		s.put(doWash, quote(of.name))
	} else {
		s.put(doFill, quote("?"))
	}
	if of != nil && of != main {
		s.set[0].value = quote(of.name)
	} else {
		s.off = true
		s.says = append(s.says, "not read: which part is it? "+phrase.Short(text))
	}
	main.steps = append(main.steps, s)
	return true
}

// claim makes a part of what a text says is put on: ingredients of the dough's list that went into no
// mix, else what it names, in a usual amount. nil where it names nothing that the larder knows.
func (d *draft) claim(text, put, verb string) *part {
	main := d.dough()
	kind := "topping"
	switch put {
	case doFill:
		kind = "filling"
	case doWash:
		kind = doWash
	}
	if of := (&part{kind: kind}); main.mixes() > 0 && d.move(of, text) {
		name := of.lines[0].Name
		if len(of.lines) > 1 {
			name = kind
		}
		of.name = d.freeName(name)
		d.parts = append(d.parts, of)
		return of
	}
	for _, words := range phrase.Substances(text) {
		l, ok := d.list.Named(words)
		if !ok || len(strings.Fields(words)) > 4 {
			l, ok = d.list.Named(phrase.LastWords(words, 2))
		}
		if strings.Contains(strings.ToLower(words), doWash) {
			l, ok = list.Line{Name: "egg", Amount: "?"}, true
		}
		if !ok || l.Unknown != "" {
			continue
		}
		if it, known := d.list.Item(l.Name); verb == doDust && known && len(it.US) == 0 {
			continue // flour and sugar on the outside are words of a dust step
		} else if verb == doDust && known && it.Flour > 0 {
			continue
		}
		name := strings.ToLower(l.Name)
		if strings.Contains(strings.ToLower(words), doWash) {
			name = "egg wash"
		}
		of := &part{kind: kind, name: d.freeName(name)}
		d.bounded(&l, of)
		l.Says = append(l.Says, "in no list: from the method")
		of.lines = []*line{d.newLine(l)}
		d.parts = append(d.parts, of)
		return of
	}
	return nil
}

// move puts ingredients of the dough's list that a text names, and that went into no mix, into another
// part. It reports whether there are any.
func (d *draft) move(to *part, text string) bool {
	main := d.dough()
	var moved []*line
	for _, l := range main.lines {
		if !l.mixed && !l.off && l.namedIn(text) && !l.flour(d) && !d.used2(l) && !(d.all && l.common()) {
			moved = append(moved, l)
		}
	}
	if len(moved) == 0 || len(moved) == len(main.lines) {
		return false
	}
	for _, l := range moved {
		l.Says = append(l.Says, "read as the "+to.kind+", by the method: not in the dough")
		to.lines = append(to.lines, l)
	}
	main.lines = slices.DeleteFunc(main.lines, func(l *line) bool { return slices.Contains(moved, l) })
	d.dropWith(moved)
	return true
}

// common reports whether every dough may hold the thing, so that a mix of all takes it in.
func (l *line) common() bool { return commonOnes().MatchString(l.Name) }

// used2 reports whether a step names the line as what goes in.
func (d *draft) used2(l *line) bool {
	for _, p := range d.parts {
		for _, s := range p.steps {
			if slices.Contains(s.with, l) {
				return true
			}
		}
	}
	return false
}

func (d *draft) dropWith(gone []*line) {
	for _, p := range d.parts {
		for _, s := range p.steps {
			s.with = slices.DeleteFunc(s.with, func(l *line) bool { return slices.Contains(gone, l) })
		}
	}
}

// freeName is a name that no part has yet.
func (d *draft) freeName(name string) string {
	for slices.ContainsFunc(d.parts, func(p *part) bool { return strings.EqualFold(p.name, name) }) {
		name += " on top"
	}
	return name
}

// bounded gives an ingredient without an amount the usual one, of what is put on alone.
func (d *draft) bounded(l *list.Line, p *part) {
	if l.Amount != "?" || p.kind != "topping" && p.kind != doWash {
		return
	}
	n := 12.0
	if q, fault := quantity.Read(d.count+" pieces", quantity.Of(quantity.Count)); fault == nil {
		n = q.Hi
	}
	l.Amount = quantity.Plain(n*usualOnLo) + " g to " + quantity.Plain(n*usualOnHi) + " g"
	l.Says = append(l.Says, "how much? 1 to 3 g a piece: common practice")
}
