package engine

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"sync"
	"time"

	"github.com/rogpeppe/go-internal/diff"

	"forebake/engine/files"
	"forebake/engine/finding"
	"forebake/engine/mend"
	"forebake/engine/run"
	"forebake/engine/source"
)

// MendResult is the result of mending some files.
type MendResult struct {
	Mendings []finding.Mending // one a formula, in order of file and line
	Left     []*finding.Finding
	Problems source.Problems
	Edits    []finding.FileEdits

	before, after *Result // the runs over the texts as they were read and as they are mended
	rewrites      []files.Rewrite
}

// Run is the run over the texts as read, or as mended.
func (r *MendResult) Run(mended bool) *Result {
	if mended {
		return r.after
	}
	return r.before
}

// Failed reports whether a finding that is left is at or above its
// house's failing level.
func (r *MendResult) Failed() bool {
	for _, f := range r.Left {
		if r.before.Fails(f, nil) {
			return true
		}
	}
	return false
}

// Mend looks for changes that clear the findings of the inputs'
// formulas, and proves them by a second run over the mended texts. It
// writes nothing.
func (e *Engine) Mend(inputs []Input, taste bool) *MendResult {
	res := &MendResult{before: e.do(inputs, run.Options{Keep: true})}
	read := res.before.Files
	mended := make([]mendedFile, len(read))
	var progress sync.Mutex
	done := 0
	run.Each(len(read), run.Crew(e.Workers, len(read)), func(_, i int) {
		if read[i].Text != nil {
			mended[i] = e.mendFile(&read[i], taste)
		}
		if e.Progress != nil {
			progress.Lock()
			defer progress.Unlock()
			done++
			e.Progress(done, len(read))
		}
	})
	res.after = e.do(held(read, mended), run.Options{})
	res.Problems = slices.Clone(res.before.Problems)
	for i := range mended {
		m, f := &mended[i], &read[i]
		if m.text != nil && len(m.problems) == 0 {
			m.problems = unproven(m, &res.after.Files[i])
		}
		res.Problems = append(res.Problems, m.problems...)
		res.Mendings = append(res.Mendings, m.mendings...)
		res.Left = append(res.Left, m.left...)
		if m.text != nil {
			res.Edits = append(res.Edits,
				finding.FileEdits{File: f.Input.Name, Edits: source.Edits(f.Text.Text, m.text)})
		}
		if m.text != nil && f.Input.Path != "" {
			res.rewrites = append(res.rewrites,
				files.Rewrite{Path: f.Input.Path, Before: f.Text.Text, After: m.text})
		}
	}
	res.Problems = res.Problems.Sort()
	return res
}

// held gives a run's inputs again, each with its mended text. Those
// without a text stay as they are.
func held(files []run.File, mended []mendedFile) []Input {
	inputs := make([]Input, len(files))
	for i := range files {
		inputs[i] = files[i].Input
		if files[i].Text == nil {
			continue
		}
		inputs[i].Path, inputs[i].Text = "", files[i].Text.Text
		inputs[i].Beside = files[i].Input.Path
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

// mendedFile is the result of mending one file.
type mendedFile struct {
	text     []byte // nil where nothing changes
	mendings []finding.Mending
	left     []*finding.Finding
	problems source.Problems
}

// mendFile mends a file's formulas one after the other.
func (e *Engine) mendFile(f *run.File, taste bool) (out mendedFile) {
	m := e.newMender(f.House)
	m.Taste, m.Budget, m.Believe = taste, mendBudget, f.Believe
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
		text = one.Text
		out.mendings = append(out.mendings, one.Mending)
		out.left = append(out.left, one.After...)
	}
	if !bytes.Equal(text, f.Text.Text) {
		out.text = text
	}
	return out
}

// unproven gives the problems of a mended file whose run contradicts
// the search: the run must find only what the search leaves.
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
				"which the search did not see; nothing is changed", after.Input.Name,
				f.Place.Line(), f.Rule)}}
		}
	}
	return nil
}

// Patch gives the files' changes as a unified diff, with paths as
// named: git apply takes it in the run's folder. Paths out of that
// folder, which git refuses, begin at the root of the repository.
func (r *MendResult) Patch() []byte {
	var out []byte
	address := files.InRepository()
	for _, w := range r.rewrites {
		name := filepath.ToSlash(w.Path)
		if !filepath.IsLocal(w.Path) {
			name = address(name)
		}
		one := diff.Diff("a/"+name, w.Before, "b/"+name, w.After)
		_, hunks, _ := bytes.Cut(one, []byte("\n")) // its first line is for readers alone
		out = append(out, hunks...)
	}
	return out
}

// Write writes the mended files, all or none, and notes it in
// the mendings.
func (r *MendResult) Write() error {
	if err := files.WriteAll(r.rewrites); err != nil {
		return err
	}
	for i := range r.Mendings {
		r.Mendings[i].Wrote = len(r.Mendings[i].Changes) > 0
	}
	return nil
}

// Budgets of the search, in answers and entries read
// (mend.Mender.Budget). A check of a demo draft needs some 300.
const (
	mendBudget  = 400_000 // of mend, for one formula
	checkBudget = 54_000  // of the mends of a check, for all formulas
	mostForOne  = 14_000  // of them for one formula
	leastForOne = 2_000   // with less, a search finds too little to be told
)

// Suggest gives the flagged findings of a check's formulas at those
// places their mends, each by itself, until the budget or Ended ends
// it. Notices say where it ended, and which command tells the rest.
func (e *Engine) Suggest(res *Result, of []source.Place) {
	if len(of) == 0 {
		return
	}
	var files []*run.File
	formulas := 0
	for i := range res.Files {
		f := &res.Files[i]
		if n := flaggedFormulas(f); n > 0 {
			formulas += n
			files = append(files, f)
		}
	}
	budget := min(mostForOne, checkBudget/max(1, formulas))
	if budget < leastForOne {
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
		notices[i] = e.suggestIn(files[i], of, budget)
	})
	for _, some := range notices {
		res.Notices = append(res.Notices, some...)
	}
}

// flaggedFormulas counts a file's formulas with a flagged finding.
func flaggedFormulas(f *run.File) int {
	names := map[string]bool{}
	for _, one := range f.Findings {
		if one.Answer == finding.Flagged {
			names[one.Formula] = true
		}
	}
	return len(names)
}

// suggestIn gives one file's flagged findings their mends. The notices
// name the formulas whose search ended at its budget.
func (e *Engine) suggestIn(file *run.File, of []source.Place, budget int) (notices []string) {
	for n, c := range file.Formulas {
		if !slices.Contains(of, c.Place) {
			continue
		}
		m := e.newMender(file.House)
		m.Budget, m.Believe, m.Ended = budget, file.Believe, e.Ended
		suggestions, complete, err := m.Suggest(file.Input.Name, c.Place.File.Text, n)
		if err != nil {
			continue // impossible: the check has read the same text
		}
		if !complete {
			notices = append(
				notices,
				fmt.Sprintf("The search for mends of %q at %s ended at its budget; "+
					"forebake mend FILE searches further.", c.Name, c.Place),
			)
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
