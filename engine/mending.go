package engine

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"slices"
	"time"

	"forebake/engine/finding"
	"forebake/engine/mend"
	"forebake/engine/run"
	"forebake/engine/source"
)

// MendResult is what mending some files found.
type MendResult struct {
	Mendings []finding.Mending // one a formula, in order of file and line
	Left     []*finding.Finding
	Problems source.Problems

	before, after *Result // the runs over the texts as they were read and as they are mended
	rewrites      []source.Rewrite
}

// Run is the run over the files as they stand, or as they will stand when they are written.
func (r *MendResult) Run(write bool) *Result {
	if write {
		return r.after
	}
	return r.before
}

// Failed reports whether a finding that is left stands at or above the failing level of its house.
func (r *MendResult) Failed() bool {
	for _, f := range r.Left {
		if r.before.Fails(f, nil) {
			return true
		}
	}
	return false
}

// Mend looks for the changes that clear the findings of every formula of the inputs, and proves
// them by a second run over the mended texts. It writes nothing.
func (e *Engine) Mend(inputs []Input, taste bool) *MendResult {
	res := &MendResult{before: e.do(inputs, run.Options{Keep: true})}
	files := res.before.Files
	mended := make([]mendedFile, len(files))
	run.Each(len(files), run.Crew(e.Workers, len(files)), func(_, i int) {
		if files[i].Text != nil {
			mended[i] = e.mendFile(&files[i], taste)
		}
	})
	res.after = e.do(held(files, mended), run.Options{})
	res.Problems = slices.Clone(res.before.Problems)
	for i := range mended {
		m, f := &mended[i], &files[i]
		if m.text != nil && len(m.problems) == 0 {
			m.problems = unproven(m, &res.after.Files[i])
		}
		res.Problems = append(res.Problems, m.problems...)
		res.Mendings = append(res.Mendings, m.mendings...)
		res.Left = append(res.Left, m.left...)
		if m.text != nil && f.Input.Path != "" {
			res.rewrites = append(res.rewrites,
				source.Rewrite{Path: f.Input.Path, Before: f.Text.Text, After: m.text})
		}
	}
	res.Problems = res.Problems.Sort()
	return res
}

// held gives the inputs of a run again, each with its text as mended. Those without a text are left
// as they are.
func held(files []run.File, mended []mendedFile) []Input {
	inputs := make([]Input, len(files))
	for i := range files {
		inputs[i] = files[i].Input
		if files[i].Text == nil {
			continue
		}
		inputs[i].Path, inputs[i].Text = "", files[i].Text.Text
		if mended[i].text != nil {
			inputs[i].Text = mended[i].text
		}
	}
	return inputs
}

func (e *Engine) newMender(l *Loaded) *mend.Mender {
	today := e.Today
	if today.IsZero() {
		today = time.Now()
	}
	return &mend.Mender{Kitchen: l.House.Kitchen, Rules: l.Rules.Rules,
		Options: l.House.FormulaOptions(),
		Waived:  func(rule, formula string) bool { return l.Rules.Waives(rule, formula, today) }}
}

// mendedFile is what mending one file found.
type mendedFile struct {
	text     []byte // nil where nothing changes
	mendings []finding.Mending
	left     []*finding.Finding
	problems source.Problems
}

// mendFile mends the formulas of one file one after the other.
func (e *Engine) mendFile(f *run.File, taste bool) (out mendedFile) {
	m := e.newMender(f.House)
	m.Taste, m.Budget = taste, mendBudget
	text := f.Text.Text
	for i := range f.Models {
		one, err := m.Mend(f.Input.Name, text, i)
		if err != nil {
			var problems source.Problems
			if !errors.As(err, &problems) {
				problems = source.Problems{{Text: fmt.Sprintf("%s: %s", f.Input.Name, err)}}
			}
			return mendedFile{problems: problems}
		}
		one.Mending.Spent = m.Spent()
		text = one.Text
		out.mendings = append(out.mendings, one.Mending)
		out.left = append(out.left, one.After...)
	}
	if !bytes.Equal(text, f.Text.Text) {
		out.text = text
	}
	return out
}

// unproven gives the problems of a mended file that the run over its new text does not bear out:
// what the search says is left must be all that the run finds.
func unproven(m *mendedFile, after *run.File) source.Problems {
	if problems := after.Problems(); len(problems) > 0 {
		return problems
	}
	type key struct{ formula, rule, subject string }
	name := func(f *finding.Finding) key { return key{f.Formula, f.Rule, f.Subject} }
	left := map[key]int{}
	for _, f := range m.left {
		left[name(f)]++
	}
	for _, f := range after.Findings {
		if f.Answer != finding.Flagged {
			continue
		}
		if left[name(f)]--; left[name(f)] < 0 {
			return source.Problems{{Text: fmt.Sprintf("%s: line %d of the mended text has %s, "+
				"which the search did not see; nothing is changed", after.Input.Name, f.Place.Line(), f.Rule)}}
		}
	}
	return nil
}

// Write writes the mended files, all or none, and gives their paths.
func (r *MendResult) Write() (paths []string, err error) {
	if len(r.rewrites) == 0 {
		return nil, nil
	}
	if err := source.WriteAll(r.rewrites); err != nil {
		return nil, err
	}
	for _, one := range r.rewrites {
		paths = append(paths, one.Path)
	}
	return paths, nil
}

// mostSuggested is the most formulas with findings for which a check looks for mends: a search
// takes some hundred times as long as the check of its formula.
const mostSuggested = 12

// mostSuggestedBytes is the longest formula for which a check looks for mends. A search tries every
// ingredient and step, each with a check of the whole formula, so its time grows with the square of
// the length or faster (measured: 25 ms at 3 KB, half a second at 10 KB, 6 s at 30 KB).
const mostSuggestedBytes = 24 << 10

// Budgets of the searches, in bytes of text read and judged (measured: 10 MB a second; a demo draft
// takes 2 MB at most). The formulas of a check share one, but each has its least.
const (
	checkBudget = 16 << 20
	leastBudget = 3 << 20
	mendBudget  = 96 << 20 // of one formula
)

// Suggest gives the flagged findings of a check their mends, each by itself. Where more than a
// dozen formulas have findings it does nothing, and a notice says which command tells them.
func (e *Engine) Suggest(res *Result) {
	var files []*run.File
	formulas := 0
	for i := range res.Files {
		f := &res.Files[i]
		if n := flaggedFormulas(f); n > 0 {
			formulas += n
			files = append(files, f)
		}
	}
	if formulas > mostSuggested {
		res.Notices = append(res.Notices,
			fmt.Sprintf("Mends are not worked out for %d formulas at once; forebake mend FILE "+
				"tells those of one file.", formulas))
		return
	}
	slices.SortStableFunc(files, func(a, b *run.File) int {
		return cmp.Compare(a.Input.Name, b.Input.Name)
	})
	notices := make([][]string, len(files))
	run.Each(len(files), run.Crew(e.Workers, len(files)), func(_, i int) {
		notices[i] = e.suggestIn(files[i], max(checkBudget/formulas, leastBudget))
	})
	for _, some := range notices {
		res.Notices = append(res.Notices, some...)
	}
}

// flaggedFormulas counts the formulas of a file that have a flagged finding.
func flaggedFormulas(f *run.File) int {
	names := map[string]bool{}
	for _, one := range f.Findings {
		if one.Answer == finding.Flagged {
			names[one.Formula] = true
		}
	}
	return len(names)
}

// suggestIn gives the flagged findings of one file their mends. The notices name the formulas that
// are too long for that, and those on which the budget was spent.
func (e *Engine) suggestIn(file *run.File, budget int) (notices []string) {
	for n, c := range file.Formulas {
		text := c.Place.File.Text
		end := len(text)
		if n+1 < len(file.Formulas) {
			end = file.Formulas[n+1].Place.Start
		}
		if end-c.Place.Start > mostSuggestedBytes {
			notices = append(notices,
				fmt.Sprintf("Mends are not worked out for %q at %s: it is longer than %d KB; "+
					"forebake mend FILE does so, and may take minutes.", c.Name, c.Place, mostSuggestedBytes>>10))
			continue
		}
		m := e.newMender(file.House)
		m.Budget = budget
		suggestions, err := m.Suggest(file.Input.Name, text, n)
		if err != nil {
			continue // impossible: the check has read the same text
		}
		if m.Spent() {
			notices = append(notices, fmt.Sprintf("Mends of %q at %s are told in part: the search "+
				"came to the end of its budget; forebake mend FILE looks further.", c.Name, c.Place))
		}
		for _, s := range suggestions {
			for _, f := range file.Findings {
				if f.Answer == finding.Flagged && f.Formula == c.Name && f.Rule == s.Rule &&
					f.Place.Start == s.Place.Start {
					f.Mends = s.Mends
				}
			}
		}
	}
	return notices
}
