package formula

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"forebake/engine/quantity"
)

// Written gives the text of another size of a geometry, as the baker wrote it: "slab 40 mm" becomes
// "slab 28 mm".
func (g *Geometry) Written(mm float64) string {
	word, rest, _ := strings.Cut(placedText(g.Place), " ")
	q, fault := quantity.Read(strings.TrimSpace(rest), forLength)
	if fault != nil {
		return fmt.Sprintf("%s %s mm", g.Shape, quantity.Plain(mm))
	}
	return word + " " + q.Written(mm, mm)
}

// Values lists everything that a formula says, by a name for each that does not depend on places in
// the file. Two readings that differ in one value differ in one entry: that proves an edit.
func (f *Formula) Values() map[string]string {
	v := values{}
	if f.Family != nil {
		v.put("family", f.Family.Name)
	}
	if f.Makes.Pieces > 0 {
		v.put("makes", quantity.Plain(f.Makes.Pieces)+f.Makes.Number.Text)
	}
	v.put("makes each", provenText(f.Makes.Each))
	v.put("makes in all", provenText(f.Makes.Total))
	v.put("start", provenText(f.Start))
	v.put("keep", provenText(f.Keep))
	for _, open := range f.open {
		v.put(open.What, "?")
	}
	for _, p := range f.Parts {
		v.putPart(p)
	}
	return v
}

// values holds what a formula says, by name.
type values map[string]string

func (v values) put(name, text string) {
	if text != "" {
		v[name] = text
	}
}

func (v values) putPart(p *Part) {
	part := p.Kind.String() + " " + strconv.Quote(p.Name)
	v.put(part+" ph", provenText(p.PH))
	v.put(part+" water activity", provenText(p.WaterActivity))
	for _, in := range p.Ingredients {
		name := part + ": " + in.Name
		for _, o := range IngredientOptions {
			if o.own {
				v.put(name, o.value(in))
			} else if slices.Contains(in.Open, o) {
				v.put(name+" "+o.Name, "?")
			} else {
				v.put(name+" "+o.Name, o.value(in))
			}
		}
	}
	for _, s := range p.Steps {
		name := part + ": step " + strconv.Itoa(s.Index+1) + " " + s.Verb.Name
		v.put(name, s.Verb.Name)
		v.put(name+" measure", provenText(s.Measure))
		v.put(name+" words", s.Words)
		for _, o := range StepOptions { // the time stands among them, whichever way it is written
			v.put(name+" "+o.Name, o.value(s))
		}
	}
}

// Differ lists the names of the values in which two readings differ.
func Differ(a, b *Formula) []string {
	var out []string
	x, y := a.Values(), b.Values()
	for name, text := range x {
		if y[name] != text {
			out = append(out, name)
		}
	}
	for name := range y {
		if _, has := x[name]; !has {
			out = append(out, name)
		}
	}
	return out
}

// MeasuredIn reports whether the verb's own value can be of a kind, such as a time or a length.
func (v *Verb) MeasuredIn(k quantity.Kind) bool { return v.own.kinds.Has(k) }
