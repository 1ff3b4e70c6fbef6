package editor

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"path/filepath"
	"strings"

	"forebake/engine"
	"forebake/engine/editor/protocol"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/rule/show"
	"forebake/engine/source"
	"forebake/engine/tolerant"
)

// thing is what stands at a place of a formula file.
type thing struct {
	formula    *formula.Formula
	part       *formula.Part
	ingredient *formula.Ingredient
	step       *formula.Step
	at         source.Place
}

// thingAt finds the ingredient or step on an offset's line, or the part
// whose name is there.
func (a *answer) thingAt(offset int) (thing, bool) {
	from := bytes.LastIndexByte(a.doc.text[:offset], '\n') + 1
	to := len(a.doc.text)
	if n := bytes.IndexByte(a.doc.text[offset:], '\n'); n >= 0 {
		to = offset + n
	}
	on := func(p source.Place) bool {
		start, _, ok := a.place(p)
		return ok && from <= start && start <= to
	}
	for _, f := range a.models() {
		for _, p := range f.Parts {
			if on(p.Place) {
				return thing{f, p, nil, nil, p.Place}, true
			}
			for _, in := range p.Ingredients {
				if on(in.Place) {
					return thing{f, p, in, nil, in.Place}, true
				}
			}
			for _, st := range p.Steps {
				if on(st.Place) {
					return thing{f, p, nil, st, st.Place}, true
				}
			}
		}
	}
	return thing{}, false
}

// hover tells the figures of what the pointer is at.
func (s *Server) hover(ctx context.Context, p *protocol.AtPosition) (any, error) {
	a, err := s.judgeRequest(ctx, p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	defer s.judging.Unlock()
	offset := s.encoding.Offset(a.doc.text, p.Position)
	if a.kind != tolerant.FormulaFile {
		return s.hoverWord(a, offset), nil
	}
	x, ok := a.thingAt(offset)
	if !ok {
		return nil, nil
	}
	var text string
	switch {
	case x.ingredient != nil:
		text = a.ingredientText(x)
	case x.step != nil:
		text = a.stepText(x)
	default:
		text = a.partText(x)
	}
	start, end, _ := a.place(x.at)
	at := s.encoding.Range(a.doc.text, start, end)
	return plainHover(text, at), nil
}

// A hover's figures of a part: what a baker asks of a dough first.
var hoverFigures = []string{"mass_g", "flour_g", "hydration_pct", "sugar_pct", "fat_pct",
	"salt_pct", "yeast_pct", "egg_pct", "water_activity"}

// partText tells the make-up of a part.
func (a *answer) partText(x thing) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s %q\n", x.part.Kind, x.part.Name)
	sheet := a.sheet(x.formula)
	for _, name := range hoverFigures {
		f, ok := facts.Find(facts.OnPart, name)
		subject := facts.Subject{On: facts.OnPart, Part: x.part}
		if !ok || !f.Of(subject) {
			continue
		}
		g := show.Figure(name, f, sheet.Value(f, subject))
		if !math.IsNaN(g.Value) || g.Low > 0 || !math.IsInf(g.High, 1) {
			fmt.Fprintln(&b, figureLine(g))
		}
	}
	return strings.TrimSpace(b.String())
}

func figureLine(g finding.Figure) string {
	line := g.Label + ": " + g.Shown
	if g.Error != "" {
		line += " (" + g.Error + ")"
	}
	return line
}

// ingredientText tells what an ingredient is made of, and its share.
func (a *answer) ingredientText(x thing) string {
	in := x.ingredient
	var b strings.Builder
	fmt.Fprintln(&b, in.Name)
	sheet := a.sheet(x.formula)
	for _, name := range []string{"amount_g", "pct"} {
		f, ok := facts.Find(facts.OnIngredient, name)
		if !ok {
			continue
		}
		subject := facts.Subject{On: facts.OnIngredient, Part: x.part, Ingredient: in}
		if v := sheet.Value(f, subject); !v.Absent {
			g := show.Figure(name, f, v)
			if name == "pct" {
				g.Label = "of the flour"
			}
			fmt.Fprintln(&b, figureLine(g))
		}
	}
	if in.Of != nil {
		fmt.Fprintf(&b, "the %s of line %d\n", in.Of.Kind, in.Of.Place.Line())
		return strings.TrimSpace(b.String())
	}
	it := in.Item
	if it == nil {
		return strings.TrimSpace(b.String())
	}
	if !strings.EqualFold(it.Name, in.Name) {
		fmt.Fprintf(&b, "read as %s\n", it.Name)
	}
	fmt.Fprintf(&b, "of 100 g: water %.3g, fat %.3g, sugars %.3g, protein %.3g, salt %.3g g\n",
		it.Water, it.Fat, it.Sugars, it.Protein, it.Salt)
	if it.Undeclared {
		fmt.Fprintln(&b, "allergens not declared: read the label")
	} else if len(it.EU) > 0 {
		names := make([]string, len(it.EU))
		for i, code := range it.EU {
			names[i] = larder.AllergenName("EU", code)
		}
		fmt.Fprintf(&b, "allergens: %s\n", strings.Join(names, ", "))
	}
	fmt.Fprintf(&b, "source: %s (%s)", it.Source, it.Basis)
	return b.String()
}

// stepText tells when a step begins, how warm the part is at its ends,
// and its rise.
func (a *answer) stepText(x thing) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s in %s %q\n", x.step.Text(), x.part.Kind, x.part.Name)
	for _, line := range a.sheet(x.formula).Timeline() {
		if line.Step != x.step {
			continue
		}
		row := engine.HistoryRow(&line)
		start := math.NaN()
		if x.formula.Start.Set {
			start = x.formula.Start.Lo
		}
		if clock := clockOf(row.Clock, start); clock != "" {
			fmt.Fprintf(&b, "begins at %s\n", clock)
		}
		for _, one := range []struct{ label, text string }{
			{"around it", row.Ambient}, {"middle at its start", a.middleAtStart(x)},
			{"middle at its end", row.Core}, {"mean at its end", row.Mean},
			{"yeast work so far, at 26 C", row.Rise}, {"", row.Notes},
		} {
			switch {
			case one.text == "-" || one.text == "":
			case one.label == "":
				fmt.Fprintln(&b, one.text)
			default:
				fmt.Fprintf(&b, "%s: %s\n", one.label, one.text)
			}
		}
	}
	return strings.TrimSpace(b.String())
}

// middleAtStart is the middle's temperature as a step begins, ""
// for unknown.
func (a *answer) middleAtStart(x thing) string {
	subject := facts.Subject{On: facts.OnStep, Part: x.part, Step: x.step}
	return shownFigure(a.sheet(x.formula), facts.OnStep, "start_c", subject)
}

// clockOf writes a clock: of the day where the formula has a start,
// else since its start.
func clockOf(h, startMin float64) string {
	if math.IsNaN(h) || math.IsInf(h, 0) {
		return ""
	}
	min := int(math.Round(h * 60))
	if math.IsNaN(startMin) {
		return fmt.Sprintf("%d:%02d after the start", min/60, min%60)
	}
	min += int(startMin)
	return fmt.Sprintf("%02d:%02d", min/60%24, min%60)
}

// plainHover shows a text at its place.
func plainHover(text string, at protocol.Range) protocol.Hover {
	return protocol.Hover{Range: &at,
		Contents: protocol.Markup{Kind: "plaintext", Value: safe(text)}}
}

// hoverWord tells, in a rule or house file, what a figure, a limit or a
// rule is.
func (s *Server) hoverWord(a *answer, offset int) any {
	start, end := wordAt(a.doc.text, offset)
	word := string(a.doc.text[start:end])
	if word == "" || a.house == nil {
		return nil
	}
	at := s.encoding.Range(a.doc.text, start, end)
	if text := a.wordText(word, offset); text != "" {
		return plainHover(text, at)
	}
	return nil
}

// wordAt is the word of a condition or the name of a rule at a place.
func wordAt(text []byte, offset int) (start, end int) {
	in := func(c byte) bool {
		return c == '_' || c == '.' || c == '-' || '0' <= c && c <= '9' || 'a' <= c && c <= 'z' ||
			'A' <= c && c <= 'Z'
	}
	start, end = offset, offset
	for start > 0 && in(text[start-1]) {
		start--
	}
	for end < len(text) && in(text[end]) {
		end++
	}
	return start, end
}

// wordText explains a fact (dough.sugar_pct), a limit (limit.sugar_pct)
// or a rule (salt-low).
func (a *answer) wordText(word string, offset int) string {
	owner, name, isFact := strings.Cut(word, ".")
	if !isFact {
		card, err := engine.Card(a.house, word)
		if err != nil {
			return keyText(tolerant.Where(a.doc.text, offset), word)
		}
		text := fmt.Sprintf("%s (%s, on %s)\n%s", card.ID, card.Level, card.On, card.Say)
		for _, l := range card.Limits {
			text += "\n" + limitLine(card, l)
		}
		return text
	}
	if owner == "limit" {
		id := ruleAround(a.doc.text, offset)
		card, err := engine.Card(a.house, id)
		if err != nil {
			return ""
		}
		for _, l := range card.Limits {
			if l.Name == name {
				return limitLine(card, l)
			}
		}
		return ""
	}
	for on := range facts.OnNames {
		if !meansSubject(owner, facts.On(on)) {
			continue
		}
		for _, f := range a.house.Rules.Figures.All(facts.On(on)) {
			if f.Name == name {
				text := fmt.Sprintf("%s\n%s: %s", word, facts.TypeNames[f.Type], f.Means)
				if f.Unit != "" {
					text = fmt.Sprintf("%s, %s\n%s", word, f.Unit, f.Means)
				}
				if f.Error != "" {
					text += "\nerror: " + f.Error
				}
				return text + "\nsource: " + f.Source
			}
		}
	}
	return ""
}

// keyText tells what a key of a house file is for.
func keyText(spot tolerant.Spot, word string) string {
	n := len(spot.Around)
	if n == 0 {
		return ""
	}
	for _, k := range keysIn(spot.Around[n-1].Block) {
		switch {
		case k.Name != word:
		case k.Default == "":
			return word + ": " + k.Means
		default:
			return word + ": " + k.Means + "\nwithout it: " + k.Default
		}
	}
	return ""
}

// limitLine tells a limit and who set it.
func limitLine(card finding.Card, l finding.CardLimit) string {
	line := "limit " + l.Name + " = " + l.Shown
	if l.From != "" {
		line += ", the kitchen's " + l.From
	}
	if l.By != "" {
		return line + ", set at " + filepath.Base(l.By)
	}
	if strings.HasPrefix(card.Pack, ".") {
		return line + ", by the rule of " + card.Pack
	}
	return line + ", as shipped"
}

// meansSubject reports whether a word of a condition names a subject:
// dough.x is of a part.
func meansSubject(word string, on facts.On) bool {
	if word == facts.OnNames[on] {
		return true
	}
	if on != facts.OnPart {
		return false
	}
	for _, kind := range formula.KindNames {
		if kind == word {
			return true
		}
	}
	return false
}
