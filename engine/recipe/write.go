package recipe

import (
	"fmt"
	"strings"

	"forebake/engine/source"
)

// write prints the formula file, and collects what it says in comments.
func (d *draft) write() string {
	w := &writer{d: d, line: 1}
	d.rows, d.told = map[int]row{}, nil
	for _, r := range d.remarks {
		w.comment("", r)
	}
	w.print(`formula %s {`, quote(orElse(d.title, "Recipe")))
	if d.makes != "" {
		d.rows[w.line] = row{head: true}
		w.print(`  makes = %s`, quote(d.makes))
	}
	for _, p := range d.parts {
		w.print("")
		w.print(`  %s %s {`, p.kind, quote(p.name))
		for _, r := range p.remarks {
			w.comment("    ", r)
		}
		w.print("    ingredients = {")
		width := 0
		for _, l := range p.lines {
			width = max(width, len([]rune(quote(l.name))))
		}
		for _, l := range p.lines {
			w.ingredient(l, min(width, 40))
		}
		w.print("    }")
		if len(p.steps) > 0 {
			w.print("    steps = [")
			for _, s := range p.steps {
				w.step(s)
			}
			w.print("    ]")
		}
		w.print("  }")
	}
	w.print("}")
	return w.out.String()
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

func (w *writer) ingredient(l *line, width int) {
	w.d.rows[w.line] = row{line: l}
	name := quote(l.name)
	value := quote(l.amount)
	if len(l.options) > 0 {
		value = "{ amount = " + value
		for _, o := range l.options {
			value += ", " + o.key + " = " + o.value
		}
		value += " }"
	}
	text := name + strings.Repeat(" ", max(0, width-len([]rune(name)))) + " = " + value
	w.entry("      ", text, l.off, l.from, l.says)
}

func (w *writer) step(s *step) {
	w.d.rows[w.line] = row{step: s}
	w.entry("      ", stepText(s)+",", s.off, s.from, s.says)
}

func stepText(s *step) string {
	var b strings.Builder
	for i, o := range s.set {
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(o.key + " = " + o.value)
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
func quote(text string) string {
	var b strings.Builder
	b.WriteByte('"')
	runes := []rune(plain(text))
	for i, c := range runes {
		switch {
		case c == '"' || c == '\\':
			b.WriteRune('\\')
		case (c == '$' || c == '%') && i+1 < len(runes) && runes[i+1] == '{':
			b.WriteRune(c)
		}
		b.WriteRune(c)
	}
	b.WriteByte('"')
	return b.String()
}

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
