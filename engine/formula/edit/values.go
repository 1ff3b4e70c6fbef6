package edit

import (
	"slices"
	"strconv"

	"forebake/engine/formula"
	"forebake/engine/quantity"
)

// Values lists everything that a formula says, by a name for each that does not depend on places in
// the file. Two readings that differ in one value differ in one entry: that proves an edit.
func Values(f *formula.Formula) map[string]string {
	v := values{}
	if f.Family != nil {
		v.put("family", f.Family.Name)
	}
	if f.Makes.Pieces > 0 {
		v.put("makes", quantity.Plain(f.Makes.Pieces)+f.Makes.Number.Text)
	}
	v.put("makes each", formula.Proven(f.Makes.Each))
	v.put("makes in all", formula.Proven(f.Makes.Total))
	v.put("start", formula.Proven(f.Start))
	v.put("keep", formula.Proven(f.Keep))
	for _, open := range f.OpenKeys() {
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

func (v values) putPart(p *formula.Part) {
	part := p.Kind.String() + " " + strconv.Quote(p.Name)
	v.put(part+" ph", formula.Proven(p.PH))
	v.put(part+" water activity", formula.Proven(p.WaterActivity))
	for _, in := range p.Ingredients {
		name := part + ": " + in.Name
		for _, o := range formula.IngredientOptions {
			if o.Own() {
				v.put(name, o.Value(in))
			} else if slices.Contains(in.Open, o) {
				v.put(name+" "+o.Name, "?")
			} else {
				v.put(name+" "+o.Name, o.Value(in))
			}
		}
	}
	for _, s := range p.Steps {
		name := part + ": step " + strconv.Itoa(s.Index+1) + " " + s.Verb.Name
		v.put(name, s.Verb.Name)
		v.put(name+" measure", formula.Proven(s.Measure))
		v.put(name+" words", s.Words)
		// the time stands among them, whichever way it is written
		for _, o := range formula.StepOptions {
			v.put(name+" "+o.Name, o.Value(s))
		}
	}
}

// Differ lists the names of the values in which two readings differ.
func Differ(a, b *formula.Formula) []string {
	var out []string
	x, y := Values(a), Values(b)
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
