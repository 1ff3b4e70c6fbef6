package draft

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/reading"
	"forebake/engine/recipe/phrase"
	"forebake/engine/source"
)

// Write prints the formula file, and collects what it says in comments.
func (d *Formula) Write() string {
	w := &writer{d: d, line: 2} // the first line, the count, is put before the others
	d.Rows, d.Told = map[int]row{}, nil
	for _, r := range d.Remarks {
		w.comment("", r)
	}
	w.print(`formula %s {`, Quote(OrElse(d.Title, "Recipe")))
	if d.Makes != "" {
		w.print(`  makes = %s`, Quote(d.Makes))
	}
	for _, p := range d.Parts {
		w.print("")
		w.part(p)
	}
	w.print("}")
	d.NotReads = 0
	for _, t := range d.Told {
		if strings.HasPrefix(t.Text, "not read") {
			d.NotReads++
		}
	}
	things := phrase.Counted(d.NotReads, "thing")
	guesses := phrase.Counted(len(d.Told)-d.NotReads, "question or guess")
	return fmt.Sprintf("# From a plain text: %s not read, %s besides. Each stands in a comment at "+
		"its place.\n", things, guesses) + w.out.String()
}

func (w *writer) part(p *Part) {
	w.d.Rows[w.line] = row{Part: p}
	mark := ""
	if p.Off {
		mark = "# "
	}
	w.print(`  %s%s %s {`, mark, p.Kind, Quote(p.Name))
	for _, r := range p.Remarks {
		w.comment("    ", r)
	}
	if !p.Off {
		w.print("    ingredients = {")
	}
	width := 0
	for _, l := range p.Lines {
		width = max(width, len([]rune(Quote(l.Name))))
	}
	for _, l := range p.Lines {
		w.ingredient(l, min(width, 40), p.Off)
	}
	if !p.Off {
		w.print("    }")
	}
	steps := !p.Off && slices.ContainsFunc(p.Steps, func(s *Step) bool {
		return len(s.Set) > 0 && !s.Off
	})
	if steps {
		w.print("    steps = [")
	}
	for _, s := range p.Steps {
		w.step(s, p.Off || !steps)
	}
	if steps {
		w.print("    ]")
	}
	w.print("  %s}", mark)
}

type writer struct {
	d    *Formula
	out  strings.Builder
	line int // the next one, from 1
}

func (w *writer) print(format string, args ...any) {
	fmt.Fprintf(&w.out, format+"\n", args...)
	w.line++
}

// comment prints a remark in a line of its own.
func (w *writer) comment(indent string, r Remark) {
	w.d.Told = append(w.d.Told, Doubt{r.From, r.Text})
	w.print("%s# %s", indent, Plain(r.Text))
}

func (w *writer) ingredient(l *Line, width int, off bool) {
	w.d.Rows[w.line] = row{Line: l}
	name := Quote(l.Name)
	value := Quote(l.Amount)
	if len(l.Options) > 0 {
		value = "{ amount = " + value
		for _, o := range l.Options {
			value += ", " + o.Key + " = " + Quote(o.Value)
		}
		value += " }"
	}
	says := l.Says
	if l.Off && l.Unknown != "" {
		says = append([]string{"not read: " + l.Unknown}, says...)
	}
	text := name + strings.Repeat(" ", max(0, width-len([]rune(name)))) + " = " + value
	w.entry("      ", text, l.Off || off, l.From, says)
}

func (w *writer) step(s *Step, off bool) {
	w.d.Rows[w.line] = row{Step: s}
	if len(s.Set) == 0 {
		if strings.HasPrefix(s.Text, "not read") {
			w.d.Told = append(w.d.Told, Doubt{s.From, s.Text})
		}
		w.print("      # %s", Plain(s.Text))
		return
	}
	lost := len(s.With) > 0 && !slices.ContainsFunc(s.With, func(l *Line) bool { return !l.Off })
	w.entry("      ", StepText(s)+",", s.Off || off || lost, s.From, s.Says)
}

// StepText is the step as a formula file has it.
func StepText(s *Step) string {
	var b strings.Builder
	for i, o := range s.Set {
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(o.key + " = " + o.Value)
	}
	var names []string
	for _, l := range s.With {
		if !l.Off {
			names = append(names, Quote(l.Name))
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
		w.d.Told = append(w.d.Told, Doubt{from, s})
	}
	if off {
		text = "# " + strings.TrimSuffix(text, ",")
	}
	if len(says) > 0 {
		text += "   # " + Plain(strings.Join(says, "; "))
	}
	w.print("%s%s", indent, text)
}

// Quote makes a text an HCL string without interpolation.
func Quote(text string) string { return reading.Quoted(Plain(text)) }

// Plain is a text in one line, with signs for what a screen would not show.
func Plain(text string) string {
	return source.Safe(strings.Join(strings.Fields(text), " "))
}

// OrElse is the text, or another where it is blank.
func OrElse(text, other string) string {
	if strings.TrimSpace(text) == "" {
		return other
	}
	return text
}
