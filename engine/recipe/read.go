package recipe

import (
	"strings"

	"forebake/engine/formula"
	"forebake/engine/recipe/draft"
	"forebake/engine/recipe/list"
	"forebake/engine/recipe/phrase"
)

// methodState is how far the method was read.
type methodState struct {
	on     bool
	part   *draft.Part // of the heading
	last   *draft.Part // that the sentence before, in this line, speaks of
	oven   string      // what the oven was heated to
	ovenAt int
	fan    bool   // it is a fan oven
	fat    string // what the frying fat was heated to
	cover  bool   // said before the step that it is of
}

// read reads the whole text, line by line.
func (d *reader) read(text string) {
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n", "\u00a0", " ", "\u2009", " ",
		"\u202f", " ",
		"\t", " ", "\ufeff", "", " w/ ", " with ").Replace(text)
	d.list = list.Reader{Larder: d.opts.Larder, Kitchen: list.KitchenOf(text),
		Scale: list.ScaleOf(text)}
	var current *draft.Part
	skip := false
	lines := strings.Split(text, "\n")
	for i, raw := range lines {
		d.at = i + 1
		if d.tooLong() {
			return
		}
		line := strings.TrimSpace(raw)
		bare := strings.TrimSpace(markup.ReplaceAllString(line, ""))
		head := strings.Trim(bare, " :")
		switch {
		case bare == "":
			continue
		case methodHead.MatchString(head):
			d.method.on, d.method.part, skip = true, nil, false
			continue
		case listHead.MatchString(head):
			d.method.on, skip = false, false
			continue
		case asideHead.MatchString(head) && d.Title != "":
			skip = true
			d.notRead(bare)
			continue
		case skip || timesLine.MatchString(bare):
			d.notRead(bare)
			continue
		case d.readMakes(bare):
			continue
		}
		if d.Title == "" && len(d.Parts) == 0 && d.readTitle(bare) {
			continue
		}
		d.block = d.Title != "" && d.aboveBlock(lines, i)
		if kind, name, ok := d.heading(bare, line); ok {
			current = d.partOf(kind, name)
			if d.method.on {
				d.method.part = current
			}
			continue
		}
		if current == nil {
			current = d.dough()
		}
		d.lineOf(current, bare)
	}
	if d.method.cover {
		d.say("not read: cover, of no step that waits")
	}
	if d.Title == "" {
		d.say("the text has no title: name the formula")
	}
	if d.method.oven != "" {
		d.Remarks = append(d.Remarks, draft.Remark{From: d.method.ovenAt,
			Text: "not read: the oven is heated to " + d.method.oven +
				", and no bake was found to write it in"})
	}
}

// aboveBlock reports whether a line of a word or two is between a blank line and an ingredient, as
// headings do.
func (d *reader) aboveBlock(lines []string, i int) bool {
	if d.method.on || i == 0 || i+1 >= len(lines) || strings.TrimSpace(lines[i-1]) != "" ||
		strings.TrimSpace(lines[i+1]) == "" ||
		strings.Contains(strings.TrimRight(lines[i], ": "), ":") {
		return false
	}
	if _, _, ok := d.list.Lines(lines[i]); ok {
		return false
	}
	_, _, ok := d.list.Lines(lines[i+1])
	return ok
}

// lineOf reads a line that is no heading: an ingredient, a block, or a line of the method.
func (d *reader) lineOf(current *draft.Part, bare string) {
	inMethod := d.method.on || numbered.MatchString(bare) && len(strings.Fields(bare)) > 3
	if p, rest, ok := d.inline(numbered.ReplaceAllString(bare, "")); ok {
		if d.method.on {
			was := d.method.part
			d.method.part = p
			d.sentences(rest)
			d.method.part = was
			return
		}
		lines, left, _ := d.list.Lines(rest)
		d.add(p, lines, left)
		return
	}
	plain := strings.TrimSpace(bare)
	// "For frying: 1 l oil"
	if m := purposeHead.FindStringSubmatch(plain); m != nil && !inMethod {
		plain = m[2] + ", " + m[1]
	}
	if !inMethod {
		if lines, left, ok := d.list.Lines(plain); ok && !tooWordy(plain, lines) {
			d.add(current, lines, left)
			return
		}
		if l, ok := d.list.Named(plain); ok {
			if d.bounded(&l, current); l.Amount == "?" {
				l.Says = append(l.Says, "how much? weigh it")
			}
			d.add(current, []list.Line{l}, nil)
			return
		}
	}
	if m := doughTemp.FindStringSubmatch(bare); m != nil && d.loose(d.dough(), m[1]) {
		d.remark(d.dough(), bare)
		return
	}
	isSentence := len(strings.Fields(bare)) > 3 || strings.HasSuffix(bare, ".")
	if inMethod || cardLine.MatchString(bare) || len(cuesOf(bare)) > 0 && isSentence {
		d.sentences(bare)
		return
	}
	d.notRead(bare)
}

// tooWordy reports whether a line that begins with an amount is a sentence all the same.
func tooWordy(text string, lines []list.Line) bool {
	return len(lines) == 1 && lines[0].Unknown != "" && len(strings.Fields(text)) > 9 &&
		len(cuesOf(text)) > 0
}

// readTitle takes the first line for the title, and how many it makes out of it.
func (d *reader) readTitle(bare string) bool {
	if _, _, ok := d.list.Lines(bare); ok || len(bare) > 120 || numbered.MatchString(bare) {
		return false
	}
	if kind, _, ok := d.heading(bare, bare); ok && strings.HasSuffix(bare, ":") && kind != "" {
		return false
	}
	title := bare
	if m := inTitle.FindStringSubmatch(bare); m != nil {
		if says := strings.TrimSpace(m[2]); d.readMakes(says) {
			title = m[1]
		} else if timesLine.MatchString(says) {
			title = m[1]
			d.notRead(says)
		}
	}
	d.Title = strings.Trim(title, " .:")
	return true
}

// notRead says of a line that nothing was made of it.
func (d *reader) notRead(text string) {
	if made, rest := phrase.MadeAside(text); made != "" && d.Makes == "" && d.readMakes(made) {
		if text = rest; text == "" {
			return
		}
	}
	d.Remarks = append(d.Remarks, draft.Remark{From: d.at, Text: "not read: " + text})
}

// say puts a comment at the top of the formula.
func (d *reader) say(text string) {
	d.Remarks = append(d.Remarks, draft.Remark{From: d.at, Text: text})
}

// tooLong reports whether the text has more ingredients or steps than a formula may have.
func (d *reader) tooLong() bool {
	for _, p := range d.Parts {
		n := 0
		for _, s := range p.Steps {
			if len(s.Set) > 0 {
				n++
			}
		}
		if len(p.Lines) > formula.MaxIngredients || n > formula.MaxSteps {
			return true
		}
	}
	return len(d.Parts) > formula.MaxParts
}

// readMakes reads "Makes 12 rolls", "Makes 2 dozen". A number of servings says no number of pieces.
func (d *reader) readMakes(text string) bool {
	m, ok := phrase.Makes(text)
	if !ok {
		return false
	}
	if m.Servings {
		d.notRead(text)
		return true
	}
	d.Makes, d.count = m.Text, m.Count
	d.used = append(d.used, text)
	if left := phrase.Unused(text, m.Text+" "+m.Read); len(left) > 0 {
		d.say("not read: " + strings.Join(left, ", ") + " of " + text)
	}
	if m.About {
		d.say("makes " + m.Count + ": the text says about")
	}
	return true
}
