package recipe

import (
	"slices"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/recipe/draft"
	"forebake/engine/recipe/list"
	"forebake/engine/recipe/phrase"
)

// puton reads a wash before the bake, or a topping after it.
func (d *reader) puton(subject *draft.Part, verb, word, text string) bool {
	p := d.dough()
	worked := p.Did(draft.Shape, draft.Divide, draft.Bake, draft.Cook)
	if strings.HasPrefix(word, "pour") && !worked && !ontoDough.MatchString(text) {
		return d.mixed(subject, word, text) // "pour over the liquid"
	}
	put, kinds := draft.Wash, []string{draft.Wash, "topping", "syrup"}
	if p.Did(draft.Bake, draft.Cook) {
		put, kinds = draft.Brush, []string{"syrup", "topping", draft.Wash}
	}
	if s := p.Last(); s != nil && verb == draft.Dust {
		// "spread with the butter and sprinkle with the sugar": both are the filling
		if of := d.partOfStep(s); of != nil && of.Named(text) > 0 {
			d.used = append(d.used, text)
			d.splitOff(of, s, text)
			return true
		}
	} else if s != nil && s.From == d.at && s.Verb() == draft.Wash {
		if of := d.partOfStep(s); of != nil && d.splitOff(of, s, text) {
			return true // "dip in the butter and roll in the sugar"
		}
	}
	if subject.Kind != "dough" && len(subject.Lines) > 0 && p.Mixes() == 0 {
		return true // said beforehand, at the head of the method
	}
	of := subject // "warm the jam and brush over the buns"
	if of.Kind == "dough" || len(of.Lines) == 0 || !onto.MatchString(text) {
		of = d.likeliest(text, kinds...)
	}
	if of == nil || of.Named(text) == 0 {
		was := of
		of = d.likeliest(text, "filling") // "top with the apricots"
		if of == nil {
			of = was
		} else if of.Named(text) == 0 || d.puts(of.Name) {
			of = was
		} else {
			put = draft.Fill
		}
	}
	if of != nil && of.Kind == "filling" && put == draft.Wash {
		if put = draft.Fill; d.puts(of.Name) {
			return true // it is on already: its sugar after its butter
		}
	}
	if verb == draft.Dust && of != nil && of != subject && of.Named(text) == 0 {
		of = nil
	}
	if s := p.Last(); of == nil && s != nil && s.Verb() == draft.Sheet && put == draft.Wash {
		// "brush with the melted butter" of a sheet is its filling
		if fill := d.likeliest(text, "filling"); fill != nil && fill.HoldsOf(text) > 0 {
			of, put = fill, draft.Fill
		}
	}
	if of == nil {
		of = d.claim(text, put, verb)
	}
	if of != nil && put == draft.Brush && d.puts(of.Name) && !of.Spoken(text) {
		// "pour the cream over the hot cake": the rest went on before the bake
		named := func(l *draft.Line) bool { return l.NamedIn(text) }
		if late := d.takeOut(of, "", named); late != nil {
			of = late
		}
	}
	d.putStep(of, put, verb, kinds[0], text)
	return true
}

// putStep adds the step that puts a part on the dough. of is nil if no part is named; kind is
// then the kind to write.
func (d *reader) putStep(of *draft.Part, put, verb, kind, text string) {
	p := d.dough()
	s := &draft.Step{From: d.at}
	switch {
	case of != nil:
		inDough := func(l *draft.Line) bool { return l.Common() && l.NamedIn(text) }
		if of.Kind == "topping" && p.Mixes() > 0 && !slices.ContainsFunc(p.Lines, inDough) {
			d.move(of, text) // what the dough's list holds for the top
		}
		s.Put(put, draft.Quote(of.Name))
	case verb == draft.Dust:
		s.Put(draft.Dust, draft.Quote(strings.TrimSuffix(phrase.Short(text), " and")))
	default:
		s.Off = true
		s.Put(put, draft.Quote("?"))
		s.Says = append(s.Says,
			"not read: which part is it? write a "+kind+" part: "+phrase.Short(text))
	}
	p.Steps = append(p.Steps, s)
}

// splitOff makes a separate part of a topping that is listed with its wash: "brush with egg and
// scatter with pearl sugar".
func (d *reader) splitOff(of *draft.Part, s *draft.Step, text string) bool {
	wet := func(l *draft.Line) bool {
		it, known := d.list.Item(l.Name)
		return known && (it.Water >= wetFrom || it.Class == larder.ClassFat)
	}
	dry := func(l *draft.Line) bool { return l.NamedIn(text) && !wet(l) }
	if of.Kind == "filling" || s.Verb() == draft.Fill || !slices.ContainsFunc(of.Lines, wet) {
		return false
	}
	name := ""
	if words := phrase.Substances(text); len(words) > 0 {
		name = words[0]
	}
	top := d.takeOut(of, name, dry)
	if top != nil {
		on := &draft.Step{From: d.at}
		on.Put(s.Verb(), draft.Quote(top.Name))
		d.dough().Steps = append(d.dough().Steps, on)
	}
	return top != nil
}

// takeOut moves some lines of a part to a new part; nil if it would take none or all.
func (d *reader) takeOut(of *draft.Part, name string, out func(*draft.Line) bool) *draft.Part {
	top := &draft.Part{Kind: of.Kind}
	for _, l := range of.Lines {
		if out(l) {
			top.Lines = append(top.Lines, l)
		}
	}
	if len(top.Lines) == 0 || len(top.Lines) == len(of.Lines) {
		return nil
	}
	top.Name = d.freeName(strings.ToLower(draft.OrElse(name, top.Lines[0].Name)))
	of.Lines = slices.DeleteFunc(of.Lines, out)
	d.Parts = append(d.Parts, top)
	return top
}

// washes makes a part a wash if its heading lists only egg and liquids.
func (d *reader) washes(p *draft.Part) {
	egg := false
	for _, l := range p.Lines {
		it, known := d.list.Item(l.Name)
		wet := []larder.Class{larder.ClassEgg, larder.ClassDairy, larder.ClassLiquid}
		if !known || !slices.Contains(wet, it.Class) {
			return
		}
		egg = egg || it.Class == larder.ClassEgg
	}
	if egg && p.Kind == "topping" {
		p.Kind = draft.Wash
	}
}

// wetFrom is the least water of a wash's ingredient, %.
const wetFrom = 40

// partOfStep is the part that a step puts on; nil for none.
func (d *reader) partOfStep(s *draft.Step) *draft.Part {
	if len(s.Set) == 0 || s.Off {
		return nil
	}
	for _, p := range d.Parts {
		if p.Kind != "dough" && s.Set[0].Value == draft.Quote(p.Name) {
			return p
		}
	}
	return nil
}

// filled reads a filling that is spread, a block of butter that is locked in, or a spread after
// the bake.
func (d *reader) filled(p *draft.Part, verb, word, text, sentence string) bool {
	main := d.dough()
	baked := main.Did(draft.Bake, draft.Cook)
	if p != main && len(p.Lines) > 0 && p.Kind != "preferment" && main.Mixes() == 0 {
		return true // said beforehand, at the head of the method
	}
	var of *draft.Part
	switch {
	case p != main && !baked && p.Kind != "preferment" && len(p.Lines) > 0 &&
		onto.MatchString(text):
		of = p
	case baked && (word == "spread" || word == "spoon" || word == "pipe"):
		if p != main && len(p.Lines) > 0 {
			of = p
		} else if d.method.last != nil && d.method.last.Kind == "topping" {
			of = d.method.last
		} else {
			of = d.likeliest(text, "topping", "syrup")
		}
		if of == nil {
			of = d.likeliest(text, "filling")
		}
		if of != nil && of.Kind != "filling" {
			s := &draft.Step{From: d.at}
			s.Put(draft.Brush, draft.Quote(of.Name))
			main.Steps = append(main.Steps, s)
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
		if of == nil || of.Named(text) == 0 && d.puts(of.Name) {
			if top := d.likeliest(text, "topping"); of == nil && top != nil && top.Named(text) > 0 {
				of = top
			}
		}
	}
	if of == nil {
		of = d.claim(text, draft.Fill, verb)
	}
	s := &draft.Step{From: d.at}
	if of != nil && of.Kind == "topping" {
		s.Put(draft.Wash, draft.Quote(of.Name))
	} else {
		s.Put(draft.Fill, draft.Quote("?"))
	}
	if of != nil && of != main {
		s.Set[0].Value = draft.Quote(of.Name)
	} else {
		s.Off = true
		s.Says = append(s.Says, "not read: which part is it? "+phrase.Short(text))
	}
	main.Steps = append(main.Steps, s)
	return true
}

// claim makes a part of the things that a text puts on: unmixed ingredients of the dough, else
// usual amounts of the things named. It is nil if the larder knows none of them.
func (d *reader) claim(text, put, verb string) *draft.Part {
	main := d.dough()
	kind := "topping"
	switch put {
	case draft.Fill:
		kind = "filling"
	case draft.Wash:
		kind = draft.Wash
	}
	if of := (&draft.Part{Kind: kind}); main.Mixes() > 0 && d.move(of, text) {
		name := of.Lines[0].Name
		if len(of.Lines) > 1 {
			name = kind
		}
		of.Name = d.freeName(name)
		d.Parts = append(d.Parts, of)
		return of
	}
	for _, words := range phrase.Substances(text) {
		l, ok := d.list.Named(words)
		if !ok || len(strings.Fields(words)) > 4 {
			l, ok = d.list.Named(phrase.LastWords(words, 2))
		}
		if strings.Contains(strings.ToLower(words), draft.Wash) {
			l, ok = list.Line{Name: "egg", Amount: "?"}, true
		}
		if !ok || l.Unknown != "" {
			continue
		}
		if it, known := d.list.Item(l.Name); verb == draft.Dust && known && len(it.US) == 0 {
			continue // flour and sugar on the outside are words of a dust step
		} else if verb == draft.Dust && known && it.Flour > 0 {
			continue
		}
		name := strings.ToLower(l.Name)
		if strings.Contains(strings.ToLower(words), draft.Wash) {
			name = "egg wash"
		}
		of := &draft.Part{Kind: kind, Name: d.freeName(name)}
		d.bounded(&l, of)
		l.Says = append(l.Says, "in no list: from the method")
		of.Lines = []*draft.Line{d.newLine(l)}
		d.Parts = append(d.Parts, of)
		return of
	}
	return nil
}

// move moves the dough's unmixed ingredients that a text names to another part. It reports
// whether there are any.
func (d *reader) move(to *draft.Part, text string) bool {
	main := d.dough()
	var moved []*draft.Line
	for _, l := range main.Lines {
		if !l.Mixed && !l.Off && l.NamedIn(text) && !d.isFlour(l) && !d.used2(l) &&
			!(d.all && l.Common()) {
			moved = append(moved, l)
		}
	}
	if len(moved) == 0 || len(moved) == len(main.Lines) {
		return false
	}
	for _, l := range moved {
		l.Says = append(l.Says, "read as the "+to.Kind+", by the method: not in the dough")
		to.Lines = append(to.Lines, l)
	}
	main.Lines = without(main.Lines, moved...)
	d.dropWith(moved)
	return true
}

// used2 reports whether a step takes the line with its option with.
func (d *reader) used2(l *draft.Line) bool {
	for _, p := range d.Parts {
		for _, s := range p.Steps {
			if slices.Contains(s.With, l) {
				return true
			}
		}
	}
	return false
}

func (d *reader) dropWith(gone []*draft.Line) {
	for _, p := range d.Parts {
		for _, s := range p.Steps {
			s.With = without(s.With, gone...)
		}
	}
}

// freeName is a name that no part has.
func (d *reader) freeName(name string) string {
	isNamed := func(p *draft.Part) bool { return strings.EqualFold(p.Name, name) }
	for slices.ContainsFunc(d.Parts, isNamed) {
		name += " on top"
	}
	return name
}

// bounded sets the usual amount of an ingredient that is put on without one.
func (d *reader) bounded(l *list.Line, p *draft.Part) {
	if l.Amount != "?" || p.Kind != "topping" && p.Kind != draft.Wash {
		return
	}
	n := 12.0
	if q, fault := quantity.Read(d.count+" pieces", quantity.Of(quantity.Count)); fault == nil {
		n = q.Hi
	}
	l.Amount = quantity.Plain(n*usualOnLo) + " g to " + quantity.Plain(n*usualOnHi) + " g"
	l.Says = append(l.Says, "how much? 1 to 3 g a piece: common practice")
}
