package recipe

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/reading"
	"forebake/engine/recipe/phrase"
	"forebake/engine/source"
)

// write prints the formula file, and collects what it says in comments.
func (d *draft) write() string {
	w := &writer{d: d, line: 2} // the first line, the count, is put before the others
	d.rows, d.told = map[int]row{}, nil
	for _, r := range d.remarks {
		w.comment("", r)
	}
	w.print(`formula %s {`, quote(orElse(d.title, "Recipe")))
	if d.makes != "" {
		w.print(`  makes = %s`, quote(d.makes))
	}
	for _, p := range d.parts {
		w.print("")
		w.part(p)
	}
	w.print("}")
	d.notReads = 0
	for _, t := range d.told {
		if strings.HasPrefix(t.Text, "not read") {
			d.notReads++
		}
	}
	return fmt.Sprintf("# From a plain text: %s not read, %s besides. Each stands in a comment at its "+
		"place.\n", phrase.Counted(d.notReads, "thing"), phrase.Counted(len(d.told)-d.notReads, "question or guess")) + w.out.String()
}

func (w *writer) part(p *part) {
	w.d.rows[w.line] = row{part: p}
	mark := ""
	if p.off {
		mark = "# "
	}
	w.print(`  %s%s %s {`, mark, p.kind, quote(p.name))
	for _, r := range p.remarks {
		w.comment("    ", r)
	}
	if !p.off {
		w.print("    ingredients = {")
	}
	width := 0
	for _, l := range p.lines {
		width = max(width, len([]rune(quote(l.Name))))
	}
	for _, l := range p.lines {
		w.ingredient(l, min(width, 40), p.off)
	}
	if !p.off {
		w.print("    }")
	}
	steps := !p.off && slices.ContainsFunc(p.steps, func(s *step) bool { return len(s.set) > 0 && !s.off })
	if steps {
		w.print("    steps = [")
	}
	for _, s := range p.steps {
		w.step(s, p.off || !steps)
	}
	if steps {
		w.print("    ]")
	}
	w.print("  %s}", mark)
}

type writer struct {
	d    *draft
	out  strings.Builder
	line int // the next one, from 1
}

func (w *writer) print(format string, args ...any) {
	fmt.Fprintf(&w.out, format+"\n", args...)
	w.line++
}

// comment prints a remark in a line of its own.
func (w *writer) comment(indent string, r remark) {
	w.d.told = append(w.d.told, Doubt{r.from, r.text})
	w.print("%s# %s", indent, plain(r.text))
}

func (w *writer) ingredient(l *line, width int, off bool) {
	w.d.rows[w.line] = row{line: l}
	name := quote(l.Name)
	value := quote(l.Amount)
	if len(l.Options) > 0 {
		value = "{ amount = " + value
		for _, o := range l.Options {
			value += ", " + o.Key + " = " + quote(o.Value)
		}
		value += " }"
	}
	says := l.Says
	if l.off && l.Unknown != "" {
		says = append([]string{"not read: " + l.Unknown}, says...)
	}
	text := name + strings.Repeat(" ", max(0, width-len([]rune(name)))) + " = " + value
	w.entry("      ", text, l.off || off, l.from, says)
}

func (w *writer) step(s *step, off bool) {
	w.d.rows[w.line] = row{step: s}
	if len(s.set) == 0 {
		if strings.HasPrefix(s.text, "not read") {
			w.d.told = append(w.d.told, Doubt{s.from, s.text})
		}
		w.print("      # %s", plain(s.text))
		return
	}
	lost := len(s.with) > 0 && !slices.ContainsFunc(s.with, func(l *line) bool { return !l.off })
	w.entry("      ", stepText(s)+",", s.off || off || lost, s.from, s.says)
}

func stepText(s *step) string {
	var b strings.Builder
	for i, o := range s.set {
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(o.key + " = " + o.value)
	}
	var names []string
	for _, l := range s.with {
		if !l.off {
			names = append(names, quote(l.Name))
		}
	}
	if len(names) > 0 {
		b.WriteString(", with = [" + strings.Join(names, ", ") + "]")
	}
	return "{ " + b.String() + " }"
}

// entry prints a line with what is said of it, or the whole as a comment.
func (w *writer) entry(indent, text string, off bool, from int, says []string) {
	for _, s := range says {
		w.d.told = append(w.d.told, Doubt{from, s})
	}
	if off {
		text = "# " + strings.TrimSuffix(text, ",")
	}
	if len(says) > 0 {
		text += "   # " + plain(strings.Join(says, "; "))
	}
	w.print("%s%s", indent, text)
}

// quote makes a text an HCL string without interpolation.
func quote(text string) string { return reading.Quoted(plain(text)) }

// plain is a text in one line, with signs for what a screen would not show.
func plain(text string) string {
	return source.Safe(strings.Join(strings.Fields(text), " "))
}

func orElse(text, other string) string {
	if strings.TrimSpace(text) == "" {
		return other
	}
	return text
}
