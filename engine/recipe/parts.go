package recipe

import (
	"slices"
	"strings"
	"unicode"

	"forebake/engine/recipe/draft"
	"forebake/engine/recipe/list"
	"forebake/engine/recipe/phrase"
)

func kindOf(name string) string {
	for _, k := range kinds {
		if k.words.MatchString(name) {
			return k.kind
		}
	}
	return ""
}

// heading reports whether a line names a part: "For the filling:", "Dough", "## Streusel topping".
func (d *reader) heading(bare, line string) (kind, name string, ok bool) {
	plainName := strings.TrimSpace(parenthesis.ReplaceAllString(bare, " "))
	marked := strings.HasSuffix(plainName, ":") || strings.HasSuffix(bare, ":") ||
		strings.HasPrefix(line, "#") ||
		strings.HasPrefix(line, "**") || forThe.MatchString(bare) || upper(bare)
	name = strings.Trim(plainName, " :.")
	words := strings.Fields(name)
	if len(words) == 0 || len(words) > 5 || !marked && len(words) > 3 ||
		strings.IndexFunc(name, unicode.IsDigit) >= 0 || strings.ContainsAny(name, ".,;:") {
		return "", "", false
	}
	name = strings.ToLower(name)
	_, known := d.list.Named(name)
	if known && !marked && !d.block && !partItself.MatchString(name) {
		return "", "", false // "pearl sugar", "raspberry jam" are ingredients
	}
	kind = kindOf(name)
	for _, lead := range headLeads {
		name = strings.TrimPrefix(name, lead)
	}
	above := d.block || strings.HasSuffix(strings.TrimSpace(bare), ":")
	if kind == "" && above && !d.method.on && len(cuesOf(bare)) == 0 {
		kind = "filling"
		listed := func(p *draft.Part) bool { return p.Kind == "dough" && len(p.Lines) > 0 }
		if !slices.ContainsFunc(d.Parts, listed) {
			kind = "dough"
		}
		d.say("what kind of part is " + draft.Quote(name) + "? read as a " + kind)
	}
	name = draft.OrElse(englishHeads[name], name)
	return kind, name, kind != "" && name != ""
}

// upper reports whether a line is all in capitals, as headings are.
func upper(text string) bool { return text == strings.ToUpper(text) && len(text) > 4 }

func (d *reader) inline(bare string) (p *draft.Part, rest string, ok bool) {
	m := inlineHead.FindStringSubmatch(bare)
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
func (d *reader) dough() *draft.Part {
	for _, p := range d.Parts {
		if p.Kind == "dough" {
			return p
		}
	}
	p := &draft.Part{Kind: "dough", Name: "dough", Made: true}
	d.Parts = append(d.Parts, p)
	return p
}

// partOf finds or makes the part of a heading.
func (d *reader) partOf(kind, name string) *draft.Part {
	for _, p := range d.Parts {
		if p.Kind == kind && (strings.EqualFold(p.Name, name) || kind == "dough" && p.Made) {
			if p.Made {
				p.Name, p.Made = name, false
			}
			return p
		}
	}
	for _, p := range d.Parts {
		if strings.EqualFold(p.Name, name) {
			return p
		}
	}
	p := &draft.Part{Kind: kind, Name: name}
	d.Parts = append(d.Parts, p)
	return p
}

// onlyPart is the only part of a kind with ingredients; nil for none or several.
func (d *reader) onlyPart(kind string) *draft.Part {
	var found *draft.Part
	for _, p := range d.Parts {
		if p.Kind == kind && len(p.Lines) > 0 {
			if found != nil {
				return nil
			}
			found = p
		}
	}
	return found
}

// meant is the part of a purpose: "for egg wash", "for the filling", "for rolling".
func (d *reader) meant(l list.Line) *draft.Part {
	is := func(words ...string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(l.For, w) })
	}
	lower := strings.ToLower(l.Name)
	kind, name := "topping", l.For
	switch {
	case is(draft.Wash) || is("glaz", draft.Brush) && (strings.Contains(lower, "egg") ||
		strings.Contains(lower, "yolk") || strings.HasSuffix(lower, "milk") ||
		strings.HasSuffix(lower, "cream")):
		kind, name = draft.Wash, "egg wash"
	case is(draft.Brush):
		name = strings.ToLower(l.Name)
	case is(draft.Fill, "stuff"):
		kind, name = "filling", "filling"
	case is("laminat", "roll-in"):
		kind, name = "filling", "butter block"
	case is("frost"):
		name = "frosting"
	case is("icing", "ice"):
		name = "icing"
	case is("glaz"):
		name = "glaze"
	case is(draft.Roll, "coat", "toss", "dredg"):
		name = "coating"
	case is(draft.Dust):
		name = l.Name + " for dusting"
	case is("sprinkl", "top", "decorat", "finish", "scatter"):
		name = "topping"
	default:
		kind = draft.OrElse(kindOf(l.For), "topping")
	}
	isOnly := kind == draft.Wash || kind == "filling" && name == "filling"
	if p := d.onlyPart(kind); p != nil && isOnly {
		return p
	}
	return d.partOf(kind, name)
}

// add puts what a line of a list gives into its part.
func (d *reader) add(p *draft.Part, lines []list.Line, left []list.Left) {
	for _, l := range lines {
		to := p
		if l.For != "" {
			to = d.meant(l)
			if to != p {
				l.Says = append(l.Says, "for "+l.For+": read as no part of the "+p.Name)
			}
			d.bounded(&l, to)
		} else if p.Kind == "dough" && rollIn.MatchString(l.Name) {
			to = d.partOf("filling", "butter block")
			l.Says = append(l.Says, "read as folded in, no part of the "+p.Name)
		}
		to.Lines = append(to.Lines, d.newLine(l))
	}
	for _, l := range left {
		p.Remarks = append(p.Remarks, draft.Remark{From: d.at, Text: "left out: " + string(l)})
	}
}

func (d *reader) newLine(l list.Line) *draft.Line {
	return &draft.Line{From: d.at, Line: l, Off: l.Unknown != "", Larder: d.opts.Larder}
}

// likeliest is the part of some kinds that a text names most of; else the only one, or the only one
// that is not put on yet. nil where that does not tell.
func (d *reader) likeliest(text string, kinds ...string) *draft.Part {
	var free []*draft.Part
	var best *draft.Part
	most, twice := 0, false
	for _, p := range d.Parts {
		if len(p.Lines) == 0 || p.IsDough() || !slices.Contains(kinds, p.Kind) {
			continue
		}
		if !d.puts(p.Name) {
			free = append(free, p)
		}
		switch n := p.Named(text); {
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
