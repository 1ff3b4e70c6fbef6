package recipe

import (
	"slices"
	"strings"
	"unicode"

	"forebake/engine/recipe/list"
	"forebake/engine/recipe/phrase"
)

func kindOf(name string) string {
	for _, k := range kinds {
		if k.words().MatchString(name) {
			return k.kind
		}
	}
	return ""
}

// heading reports whether a line names a part: "For the filling:", "Dough", "## Streusel topping".
func (d *draft) heading(bare, line string) (kind, name string, ok bool) {
	plainName := strings.TrimSpace(parenthesis().ReplaceAllString(bare, " "))
	marked := strings.HasSuffix(plainName, ":") || strings.HasSuffix(bare, ":") || strings.HasPrefix(line, "#") ||
		strings.HasPrefix(line, "**") || forThe().MatchString(bare) || upper(bare)
	name = strings.Trim(plainName, " :.")
	words := strings.Fields(name)
	if len(words) == 0 || len(words) > 5 || !marked && len(words) > 3 ||
		strings.IndexFunc(name, unicode.IsDigit) >= 0 || strings.ContainsAny(name, ".,;:") {
		return "", "", false
	}
	name = strings.ToLower(name)
	if _, known := d.list.Named(name); known && !marked && !d.block && !partItself().MatchString(name) {
		return "", "", false // "pearl sugar", "raspberry jam" are ingredients
	}
	kind = kindOf(name)
	for _, lead := range headLeads {
		name = strings.TrimPrefix(name, lead)
	}
	if kind == "" && (d.block || strings.HasSuffix(strings.TrimSpace(bare), ":")) && !d.method.on && len(cuesOf(bare)) == 0 {
		kind = "filling"
		if !slices.ContainsFunc(d.parts, func(p *part) bool { return p.kind == "dough" && len(p.lines) > 0 }) {
			kind = "dough"
		}
		d.say("what kind of part is " + quote(name) + "? read as a " + kind)
	}
	name = orElse(englishHeads[name], name)
	return kind, name, kind != "" && name != ""
}

// upper reports whether a line is all in capitals, as headings are.
func upper(text string) bool { return text == strings.ToUpper(text) && len(text) > 4 }

func (d *draft) inline(bare string) (p *part, rest string, ok bool) {
	m := inlineHead().FindStringSubmatch(bare)
	if m == nil || d.block {
		return nil, "", false
	}
	kind, name, ok := d.heading(m[1], m[1]+":")
	if !ok || kind == "" {
		return nil, "", false
	}
	if _, _, is := d.list.Lines(m[2]); !is || d.method.on {
		if d.method.on && len(cuesOf(m[2])) > 0 {
			return d.partOf(kind, name), m[2], true
		}
		return nil, "", false
	}
	return d.partOf(kind, name), m[2], true
}

// dough is the part that the others belong to: the first dough.
func (d *draft) dough() *part {
	for _, p := range d.parts {
		if p.kind == "dough" {
			return p
		}
	}
	p := &part{kind: "dough", name: "dough", made: true}
	d.parts = append(d.parts, p)
	return p
}

// partOf finds or makes the part of a heading.
func (d *draft) partOf(kind, name string) *part {
	for _, p := range d.parts {
		if p.kind == kind && (strings.EqualFold(p.name, name) || kind == "dough" && p.made) {
			if p.made {
				p.name, p.made = name, false
			}
			return p
		}
	}
	for _, p := range d.parts {
		if strings.EqualFold(p.name, name) {
			return p
		}
	}
	p := &part{kind: kind, name: name}
	d.parts = append(d.parts, p)
	return p
}

// onlyPart is the only part of a kind with ingredients; nil for none or several.
func (d *draft) onlyPart(kind string) *part {
	var found *part
	for _, p := range d.parts {
		if p.kind == kind && len(p.lines) > 0 {
			if found != nil {
				return nil
			}
			found = p
		}
	}
	return found
}

// meant is the part of a purpose: "for egg wash", "for the filling", "for rolling".
func (d *draft) meant(l list.Line) *part {
	is := func(words ...string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(l.For, w) })
	}
	lower := strings.ToLower(l.Name)
	kind, name := "topping", l.For
	switch {
	case is(doWash) || is("glaz", doBrush) && (strings.Contains(lower, "egg") ||
		strings.Contains(lower, "yolk") || strings.HasSuffix(lower, "milk") || strings.HasSuffix(lower, "cream")):
		kind, name = doWash, "egg wash"
	case is(doBrush):
		name = strings.ToLower(l.Name)
	case is(doFill, "stuff"):
		kind, name = "filling", "filling"
	case is("laminat", "roll-in"):
		kind, name = "filling", "butter block"
	case is("frost"):
		name = "frosting"
	case is("icing", "ice"):
		name = "icing"
	case is("glaz"):
		name = "glaze"
	case is(doRoll, "coat", "toss", "dredg"):
		name = "coating"
	case is(doDust):
		name = l.Name + " for dusting"
	case is("sprinkl", "top", "decorat", "finish", "scatter"):
		name = "topping"
	default:
		kind = orElse(kindOf(l.For), "topping")
	}
	if p := d.onlyPart(kind); p != nil && (kind == doWash || kind == "filling" && name == "filling") {
		return p
	}
	return d.partOf(kind, name)
}

// add puts what a line of a list gives into its part.
func (d *draft) add(p *part, lines []list.Line, left []list.Left) {
	for _, l := range lines {
		to := p
		if l.For != "" {
			to = d.meant(l)
			if to != p {
				l.Says = append(l.Says, "for "+l.For+": read as no part of the "+p.name)
			}
			d.bounded(&l, to)
		} else if p.kind == "dough" && rollIn().MatchString(l.Name) {
			to = d.partOf("filling", "butter block")
			l.Says = append(l.Says, "read as folded in, no part of the "+p.name)
		}
		to.lines = append(to.lines, d.newLine(l))
	}
	for _, l := range left {
		p.remarks = append(p.remarks, remark{d.at, "left out: " + string(l)})
	}
}

func (d *draft) newLine(l list.Line) *line {
	return &line{from: d.at, Line: l, off: l.Unknown != "", larder: d.opts.Larder}
}

func (l *line) namedIn(text string) bool { return phrase.Names(l.larder, l.Name, text) }

// holdsOf counts the ingredients of a part that a text names.
func (p *part) holdsOf(text string) int {
	n := 0
	for _, l := range p.lines {
		if !l.off && l.namedIn(text) {
			n++
		}
	}
	return n
}

// named counts the ingredients of a part that a text names; its own name counts for more.
func (p *part) named(text string) int {
	n := p.holdsOf(text)
	if p.kind != "dough" && p.spoken(text) {
		n += 10
	}
	return n
}

func (p *part) spoken(text string) bool { return phrase.Speaks(p.name, text) }

// likeliest is the part of some kinds that a text names most of; else the only one, or the only one
// that is not put on yet. nil where that does not tell.
func (d *draft) likeliest(text string, kinds ...string) *part {
	var free []*part
	var best *part
	most, twice := 0, false
	for _, p := range d.parts {
		if len(p.lines) == 0 || p.kind == "dough" || p.kind == "preferment" || !slices.Contains(kinds, p.kind) {
			continue
		}
		if !d.puts(p.name) {
			free = append(free, p)
		}
		switch n := p.named(text); {
		case n > most:
			best, most, twice = p, n, false
		case n == most && n > 0:
			twice = true
		}
	}
	switch {
	case most > 0 && !twice:
		return best
	case len(free) == 1 && (twice || len(phrase.Substances(text)) == 0):
		return free[0]
	}
	return nil
}
