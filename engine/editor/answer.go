package editor

import (
	"context"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"forebake/engine"
	"forebake/engine/editor/protocol"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/report"
	"forebake/engine/rule"
	"forebake/engine/source"
	"forebake/engine/tolerant"
)

// answer is what is known of a document now.
type answer struct {
	doc      *document
	kind     tolerant.FileKind
	house    *engine.Loaded // nil where it cannot be used
	fallback *engine.Loaded // the house without a file, for words where house is nil
	typed    *engine.Typed  // of a formula file
	pack     *rule.Pack     // of a rule file
	trials   rule.TrialReport
	problems source.Problems
	sheets   map[*formula.Formula]*facts.Sheet
	mended   bool // mends were looked for
}

// judge gives a document's answer, cached where neither it nor its
// house has changed. judging is held.
func (s *Server) judge(d *document, trials bool) *answer {
	e := s.kitchen()
	a := s.judged[d.uri]
	if a != nil && a.doc == d && !(trials && a.kind == tolerant.RuleFile) {
		return a
	}
	a = &answer{doc: d, kind: d.kind,
		sheets: map[*formula.Formula]*facts.Sheet{}}
	switch a.kind {
	case tolerant.HouseFile:
		a.house, a.problems = e.TypedHouse(d.path)
	case tolerant.RuleFile:
		a.pack, a.house, a.trials, a.problems = e.TypedRules(d.path, trials)
	default:
		a.typed = e.Typed(d.path, d.text)
		a.house, a.problems = a.typed.House, a.typed.HouseProblems
		if a.typed.Repair != nil {
			a.problems = slices.Concat(a.problems, a.typed.Repair.Problems)
		}
	}
	if a.house == nil {
		a.fallback, _ = e.TypedHouse("")
	}
	s.judged[d.uri] = a
	s.mutex.Lock()
	held, _ := s.texts()
	s.mutex.Unlock()
	s.stamp = e.Stamp(held)
	return a
}

// judgeRequest judges a request's document, unless it was cancelled or typed
// over meanwhile. The caller ends judging where there is no error.
func (s *Server) judgeRequest(ctx context.Context, uri string) (*answer, error) {
	s.judging.Lock()
	d, err := s.current(ctx, uri)
	if err != nil {
		s.judging.Unlock()
		return nil, err
	}
	return s.judge(d, false), nil
}

// models are a formula file's readable formulas.
func (a *answer) models() []*formula.Formula {
	if a.typed == nil || a.typed.Result == nil {
		return nil
	}
	return a.typed.Result.Files[0].Models
}

// sheet gives the figures of a formula.
func (a *answer) sheet(f *formula.Formula) *facts.Sheet {
	if a.sheets[f] == nil {
		a.sheets[f] = facts.NewSheet(f, a.house.House.Kitchen)
	}
	return a.sheets[f]
}

// place turns a place of the judged text into offsets of the typed
// text. ok is false for a place in another file.
func (a *answer) place(p source.Place) (start, end int, ok bool) {
	if p.File == nil || filepath.FromSlash(p.File.Name) != a.doc.path {
		return 0, 0, false
	}
	if a.typed == nil || a.typed.Repair.File == nil || len(p.File.Text) == len(a.doc.text) &&
		string(p.File.Text) == string(a.doc.text) {
		return p.Start, p.End, true
	}
	return a.typed.Repair.Offset(p.Start), a.typed.Repair.Offset(p.End), true
}

// publishAll asks for the findings of every open document.
func (s *Server) publishAll(trials bool) {
	s.mutex.Lock()
	var list []waiting
	for uri := range s.open {
		list = append(list, waiting{uri, trials})
	}
	s.mutex.Unlock()
	slices.SortFunc(list, func(a, b waiting) int { return strings.Compare(a.uri, b.uri) })
	s.ask(list...)
}

// ask has the findings of texts sent. A waiting text is judged once, as
// it then is: what was typed over is never judged.
func (s *Server) ask(list ...waiting) {
	s.mutex.Lock()
	for _, w := range list {
		i := slices.IndexFunc(s.waiting, func(o waiting) bool { return o.uri == w.uri })
		if i < 0 {
			s.waiting = append(s.waiting, w)
		} else {
			s.waiting[i].trials = s.waiting[i].trials || w.trials
		}
	}
	s.mutex.Unlock()
	select {
	case s.wake <- struct{}{}:
	default: // it is awake
	}
}

// publishing sends the findings of waiting texts, one by one, until
// the end.
func (s *Server) publishing(ctx context.Context) {
	for {
		select {
		case <-ctx.Done():
			return
		case <-s.wake:
		}
		for {
			s.mutex.Lock()
			if len(s.waiting) == 0 {
				s.mutex.Unlock()
				break
			}
			next := s.waiting[0]
			s.waiting = slices.Delete(s.waiting, 0, 1)
			d := s.open[next.uri]
			s.mutex.Unlock()
			if d != nil {
				s.publish(ctx, d, next.trials)
			}
		}
	}
}

func (s *Server) publish(ctx context.Context, d *document, trials bool) {
	s.judging.Lock()
	a := s.judge(d, trials)
	list := s.diagnostics(a)
	s.judging.Unlock()
	s.sending.Lock()
	defer s.sending.Unlock()
	if now, err := s.find(d.uri); err != nil || now != d { // typed on, or closed meanwhile
		return
	}
	_ = s.conn.Notify(ctx, "textDocument/publishDiagnostics",
		protocol.PublishDiagnostics{URI: d.uri, Version: d.version, Diagnostics: list})
}

// diagnostics lists what is found, the text's problems first.
func (s *Server) diagnostics(a *answer) []protocol.Diagnostic {
	out := []protocol.Diagnostic{}
	for _, p := range a.problems {
		start, end, ok := a.place(p.Place)
		text := problemText(p)
		if !ok && !p.Place.IsZero() { // in the house, or in a pack
			text = p.Place.String() + ": " + text
		}
		out = append(out, s.mark(a, start, end, protocol.SeverityError, "", text))
	}
	for _, v := range a.trials.Verdicts {
		if v.Passed {
			continue
		}
		start, end, ok := a.place(v.Trial.Place)
		if ok {
			out = append(out, s.mark(a, start, end, protocol.SeverityError, "trial",
				fmt.Sprintf("expects %s, and %s answers %s. %s", v.Trial.Expect,
					v.Trial.Rule, v.Got,
					v.Differ)))
		}
	}
	if a.typed == nil || a.typed.Result == nil {
		return out
	}
	run := &a.typed.Result.Run
	for _, f := range run.Formulas {
		if d, ok := s.cautions(a, f.Place); ok {
			out = append(out, d)
		}
	}
	for _, f := range run.Findings {
		start, end, ok := a.place(f.Place)
		if !ok || f.Answer == finding.Waived {
			continue
		}
		d := s.mark(a, start, end, severityOf(f), f.Rule, messageOf(f))
		if s.related {
			d.RelatedInformation = s.relatedOf(a, f)
		}
		out = append(out, d)
	}
	return out
}

// problemText is a problem with its lines to paste.
func problemText(p source.Problem) string {
	if p.Paste == "" {
		return p.Text
	}
	return p.Text + "\n" + p.Paste
}

// mark makes a diagnostic of a range of the text.
func (s *Server) mark(a *answer, start, end, severity int, code, text string) protocol.Diagnostic {
	return protocol.Diagnostic{Range: s.encoding.Range(a.doc.text, start, end), Severity: severity,
		Code: code, Source: "forebake", Message: safe(text)}
}

// safe keeps line ends, and makes the rest of a file's text fit to
// be shown.
func safe(text string) string {
	lines := strings.Split(text, "\n")
	for i, l := range lines {
		lines[i] = source.Safe(l)
	}
	return strings.Join(lines, "\n")
}

// severityOf grades a finding as an editor does.
func severityOf(f *finding.Finding) int {
	switch {
	case f.Answer == finding.Unsure:
		return protocol.SeverityHint
	case f.Level == finding.Stop:
		return protocol.SeverityError
	case f.Level == finding.Risk:
		return protocol.SeverityWarning
	}
	return protocol.SeverityInformation
}

// messageOf words a finding. Its level comes first, since an editor's
// own words differ.
func messageOf(f *finding.Finding) string {
	word := f.Level.String()
	if f.Answer == finding.Unsure {
		word = f.Answer.String()
	}
	text := word + ": " + f.Text
	if f.Doubt && f.Reason != "" {
		text += " Not ruled out: " + f.Reason + "."
	}
	return text
}

// mostRelated is how many places are told with a finding.
const mostRelated = 5

// relatedOf lists the lines that a finding's figures came from.
func (s *Server) relatedOf(a *answer, f *finding.Finding) []protocol.Related {
	var out []protocol.Related
	add := func(p source.Place, text string) {
		start, end, ok := a.place(p)
		if !ok || len(out) == mostRelated {
			return
		}
		at := protocol.Location{URI: a.doc.uri,
			Range: s.encoding.Range(a.doc.text, start, end)}
		if own, _, _ := a.place(f.Place); own == start {
			return // it stands there itself
		}
		if !slices.ContainsFunc(out, func(r protocol.Related) bool { return r.Location == at }) {
			out = append(out, protocol.Related{Location: at, Message: source.Safe(text)})
		}
	}
	for _, g := range f.Figures {
		add(g.Place, g.Label+" "+g.Shown)
	}
	for _, c := range f.Causes {
		add(c.Place, c.Text)
	}
	return out
}

// cautions gives a formula's cautions as one entry at its name.
func (s *Server) cautions(a *answer, at source.Place) (protocol.Diagnostic, bool) {
	lines := report.ShortLines(&a.typed.Result.Run, at)
	start, end, ok := a.place(at)
	if len(lines) == 0 || !ok {
		return protocol.Diagnostic{}, false
	}
	return s.mark(a, start, end, protocol.SeverityInformation, "cautions",
		strings.Join(lines, "\n")), true
}
