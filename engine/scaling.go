package engine

import (
	"errors"
	"fmt"

	"forebake/engine/facts"
	"forebake/engine/files"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/run"
	"forebake/engine/scale"
	"forebake/engine/source"
)

// Size is the size that Scale is asked for.
type Size = scale.Want

// ScaleResult is a formula at another size, checked.
type ScaleResult struct {
	Text     []byte // of the whole file
	Scaling  finding.Scaling
	Problems source.Problems

	before, after *Result
}

// Run is the run over the scaled text.
func (r *ScaleResult) Run() *Result { return r.after }

// Failed reports whether an answer that the size brings is at or above
// the failing level.
func (r *ScaleResult) Failed() bool {
	for _, f := range r.Scaling.New {
		if r.before.Fails(f, nil) {
			return true
		}
	}
	return false
}

// Write replaces the text that was read by the scaled one.
func (r *ScaleResult) Write() error {
	f := &r.before.Files[0]
	r.Scaling.Wrote = true
	return files.WriteAll([]files.Rewrite{
		{Path: f.Input.Path, Before: f.Text.Text, After: r.Text}})
}

// Scale brings one formula of a file to another size, and checks it
// there. name picks it where the file holds several. It writes nothing.
func (e *Engine) Scale(in Input, name string, want Size) *ScaleResult {
	out := &ScaleResult{before: e.do([]Input{in}, run.Options{Keep: true})}
	if out.Problems = out.before.Problems; len(out.Problems) > 0 {
		return out
	}
	file := &out.before.Files[0]
	model, problems := theFormula(file, name)
	if out.Problems = problems; len(problems) > 0 {
		return out
	}
	sheet := facts.NewSheet(model, file.House.House.Kitchen)
	scaled, err := scale.Formula(sheet, file.Text, want)
	if err != nil {
		out.Problems = problemsOf(err, file)
		return out
	}
	exact := scale.Exact(sheet, scaled.Factor)
	text, err := source.Apply(file.Text.Text, scaled.Edits)
	if err != nil {
		out.Problems = problemsOf(err, file)
		return out
	}
	again := in
	again.Path, again.Text = "", text
	out.after = e.do([]Input{again}, run.Options{Keep: true})
	if out.Problems = out.after.Problems; len(out.Problems) > 0 {
		return out // the edits made a text that cannot be read: it is not handed out
	}
	next := named(out.after.Files[0].Models, model.Name)
	if next == nil {
		out.Problems = source.Problems{{Place: model.Place, Text: "the scaled text has lost this " +
			"formula; nothing is changed"}}
		return out
	}
	out.Text = text
	out.Scaling = out.scaling(file, model, next, scaled, exact)
	return out
}

// scaling composes the report of a scaled formula.
func (r *ScaleResult) scaling(file *run.File, was, is *formula.Formula, scaled *scale.Scaled,
	exact []float64) finding.Scaling {
	after := &r.after.Files[0]
	sheet := facts.NewSheet(is, after.House.House.Kitchen)
	out := finding.Scaling{Formula: was.Name, File: file.Input.Name, Line: was.Place.Line(),
		From: sizeText(was), To: sizeText(is), Asked: scaled.Asked, Factor: scaled.Factor,
		Lots: scale.Lots(sheet), Parts: scale.Weights(sheet, exact), Told: scaled.Told}
	out.New, out.Gone = turnover(findingsOf(file, was), findingsOf(after, is), nil)
	for _, d := range source.Compare(file.Text.Text, r.Text) {
		out.Lines = append(out.Lines, finding.ChangedLines(d))
	}
	end := is.Place.File.Lines()
	for _, f := range after.Models {
		if at := f.Place.Line(); at > is.Place.Line() {
			end = min(end, at-1)
		}
	}
	out.Doubted = scale.Comments(r.Text, is.Place.Line(), end)
	return out
}

// sizeText says what a formula makes, with its flour's weight.
func sizeText(f *formula.Formula) string {
	text := "the batch"
	if at := f.Makes.Place; at.File != nil {
		text = string(at.File.Text[at.Start:at.End])
	}
	flour := flourText(f)
	if flour == "" {
		return text
	}
	return text + ", " + flour + " of flour"
}

// flourText is the flour of the doughs that no other part takes in.
func flourText(f *formula.Formula) string {
	sum := formula.Interval{}
	for _, p := range f.Parts {
		if p.Kind == formula.Dough && len(p.Taken) == 0 {
			sum = sum.Add(p.FlourG)
		}
	}
	if !sum.IsFinite() || sum.Hi == 0 {
		return ""
	}
	return quantity.FormatInterval(sum, "g")
}

// theFormula finds the formula of that name, or the only one of
// its file.
func theFormula(file *run.File, name string) (*formula.Formula, source.Problems) {
	if name == "" && len(file.Models) == 1 {
		return file.Models[0], nil
	}
	var names []string
	for _, f := range file.Models {
		names = append(names, fmt.Sprintf("%q", source.Safe(f.Name)))
	}
	if f := named(file.Models, name); name != "" && f != nil {
		return f, nil
	}
	says := fmt.Sprintf("%d formulas stand here", len(names))
	if name != "" {
		says = fmt.Sprintf("no formula here is named %q", source.Safe(name))
	}
	return nil, source.Problems{{Place: file.Models[0].Place, Text: fmt.Sprintf("%s; name one of "+
		"them with --formula: %s", says, joined(names))}}
}

// joined lists names; of many the first ones.
func joined(names []string) string {
	const most = 6
	text := ""
	for i, name := range names {
		switch {
		case i == most:
			return text + fmt.Sprintf(" and %d more", len(names)-most)
		case i > 0:
			text += ", "
		}
		text += name
	}
	return text
}

// problemsOf gives an error's problems, else one with its text.
func problemsOf(err error, file *run.File) source.Problems {
	var problems source.Problems
	if errors.As(err, &problems) {
		return problems
	}
	return source.Problems{{Text: fmt.Sprintf("%s: %s", file.Input.Name, err)}}
}

// ReadPieces reads a number of pieces that a flag gives.
func ReadPieces(flag, text string) (float64, error) { return scale.ReadPieces(flag, text) }

// ReadTins reads a number of tins that a flag gives.
func ReadTins(flag, text string) (float64, error) { return scale.ReadTins(flag, text) }

// ReadMass reads a weight that a flag gives, g.
func ReadMass(flag, text string) (float64, error) { return scale.ReadMass(flag, text) }

// ReadLoss reads a share that a flag gives, 0 to under 1.
func ReadLoss(flag, text string) (float64, error) { return scale.ReadLoss(flag, text) }
