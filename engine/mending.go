package engine

import (
	"errors"
	"fmt"
	"runtime"
	"sort"
	"sync"
	"sync/atomic"

	"forebake/engine/finding"
	"forebake/engine/mend"
	"forebake/engine/source"
)

// MendResult is what mending some files found.
type MendResult struct {
	Mendings []finding.Mending // one a formula, in order of file and line
	Left     []*finding.Finding
	Problems source.Problems
	FailAt   map[string]finding.Level

	rewrites []source.Rewrite
}

// Failed tells whether a finding that is left stands at or above the failing level of its house.
func (r *MendResult) Failed() bool {
	for _, f := range r.Left {
		if f.At(r.FailAt[f.Place.File.Name]) {
			return true
		}
	}
	return false
}

// Mend looks for the changes that clear the findings of every formula of the inputs. It writes nothing.
func (e *Engine) Mend(inputs []Input, taste bool) *MendResult {
	res := &MendResult{FailAt: map[string]finding.Level{}}
	out := make([]MendResult, len(inputs))
	loaded, problems := e.loadAll(inputs)
	res.Problems = problems
	for i, l := range loaded {
		if l != nil {
			res.FailAt[inputs[i].Name] = l.House.FailAt
		}
	}
	each(len(inputs), crewSize(e.Workers, len(inputs)), func(_, i int) {
		if loaded[i] != nil {
			out[i] = e.mendFile(inputs[i], loaded[i], taste)
		}
	})
	for _, one := range out {
		res.Mendings = append(res.Mendings, one.Mendings...)
		res.Left = append(res.Left, one.Left...)
		res.Problems = append(res.Problems, one.Problems...)
		res.rewrites = append(res.rewrites, one.rewrites...)
	}
	res.Problems = res.Problems.Sort()
	return res
}

// crewSize is how many workers n jobs are given: those asked for, else one a processor.
func crewSize(workers, n int) int {
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	return min(workers, n)
}

// each runs a job for every number below n, on so many workers at once; the job is told which of them it is on.
func each(n, workers int, job func(worker, i int)) {
	var next atomic.Int64
	var wait sync.WaitGroup
	for k := range workers {
		wait.Go(func() {
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				job(k, i)
			}
		})
	}
	wait.Wait()
}

func (e *Engine) newMender(l *Loaded) *mend.Mender {
	return &mend.Mender{Kitchen: l.House.Kitchen, Rules: l.Rules.Rules, Options: l.House.FormulaOptions(),
		Waived: func(rule, formula string) bool { return l.Rules.Waives(rule, formula, e.Today) }}
}

// mendFile mends the formulas of one file one after the other, and proves the whole by one more check of the new text.
func (e *Engine) mendFile(in Input, l *Loaded, taste bool) (out MendResult) {
	fail := func(err error) MendResult {
		var problems source.Problems
		if errors.As(err, &problems) {
			return MendResult{Problems: problems}
		}
		return MendResult{Problems: source.Problems{{Text: fmt.Sprintf("%s: %s", in.Name, err)}}}
	}
	before := in.Text
	if in.Path != "" {
		var err error
		if before, err = readFormula(in.Path); err != nil {
			return fail(err)
		}
	}
	list, problems := ReadFormulas(source.New(in.Name, before), l.House)
	if len(problems) > 0 {
		return MendResult{Problems: problems}
	}
	text := before
	m := e.newMender(l)
	m.Taste = taste
	for i := range list {
		one, err := m.Mend(in.Name, text, i)
		if err != nil {
			return fail(err)
		}
		text = one.Text
		out.Mendings = append(out.Mendings, one.Mending)
		out.Left = append(out.Left, one.After...)
	}
	if string(text) == string(before) {
		return out
	}
	check := newWorker().check(Input{Name: in.Name, Text: text}, l)
	if len(check.problems) > 0 {
		return fail(fmt.Errorf("the mended text does not read: %w", check.problems))
	}
	// What the search says is left must be all that the check finds.
	left := map[string]int{}
	name := func(f *finding.Finding) string { return f.Formula + "\x00" + f.Rule + "\x00" + f.Subject }
	for _, f := range out.Left {
		left[name(f)]++
	}
	for _, f := range check.findings {
		if f.Answer != finding.Flagged || l.Rules.Waives(f.Rule, f.Formula, e.Today) {
			continue
		}
		if left[name(f)]--; left[name(f)] < 0 {
			return fail(fmt.Errorf("line %d of the mended text has %s, which the search did not see; nothing is changed", f.Place.Line(), f.Rule))
		}
	}
	if in.Path != "" {
		out.rewrites = []source.Rewrite{{Path: in.Path, Before: before, After: text}}
	}
	return out
}

// Write writes the mended files, all or none, and notes it in the mendings.
func (r *MendResult) Write() error {
	if err := source.WriteAll(r.rewrites); err != nil {
		return err
	}
	for i := range r.Mendings {
		r.Mendings[i].Wrote = len(r.Mendings[i].Changes) > 0
	}
	return nil
}

// mostSuggested is how many formulas with findings a run may have for each finding to get its mends: a search takes some
// hundred times as long as the check of its formula.
const mostSuggested = 12

// mostSuggestedBytes is how long a formula may be in the file for that: a search tries every ingredient and step, each with a check of
// the whole, so it grows with the square of the length and more (measured: 25 ms at 3 KB, half a second at 10 KB, 6 s at 30 KB).
const mostSuggestedBytes = 24 << 10

// Suggest gives the flagged findings of a check their mends, each for itself. Where more than a dozen formulas have some
// it does nothing, and a notice says which command tells them.
func (e *Engine) Suggest(inputs []Input, res *Result) {
	type job struct {
		input Input
		l     *Loaded
		file  string
	}
	flagged := map[string][]*finding.Finding{} // by file
	formulas := map[string]bool{}
	for _, f := range res.Findings {
		if f.Answer == finding.Flagged && f.Place.File != nil {
			flagged[f.Place.File.Name] = append(flagged[f.Place.File.Name], f)
			formulas[f.Place.File.Name+"\x00"+f.Formula] = true
		}
	}
	if len(formulas) > mostSuggested {
		res.Notices = append(res.Notices, fmt.Sprintf("Mends are not worked out for %d formulas at once; forebake mend FILE tells those of one file.", len(formulas)))
		return
	}
	var jobs []job
	for _, in := range inputs {
		if len(flagged[in.Name]) == 0 {
			continue
		}
		if l := e.houses[HouseFor(in.Dir)]; l != nil {
			jobs = append(jobs, job{in, l, in.Name})
		}
	}
	tooLong := make([][]string, len(jobs))
	each(len(jobs), crewSize(e.Workers, len(jobs)), func(_, i int) {
		j := jobs[i]
		list := flagged[j.file]
		text := list[0].Place.File.Text
		all := checkedIn(res, j.file)
		for n, c := range all {
			end := len(text)
			if n+1 < len(all) {
				end = all[n+1].Place.Start
			}
			if end-c.Place.Start > mostSuggestedBytes {
				tooLong[i] = append(tooLong[i], fmt.Sprintf("Mends are not worked out for %q at %s: it is longer than %d KB; forebake mend FILE does so, and may take minutes.", c.Name, c.Place, mostSuggestedBytes>>10))
				continue
			}
			suggestions, err := e.newMender(j.l).Suggest(j.file, text, n)
			if err != nil {
				continue // the check itself reads the same text, so this cannot be; a finding then goes without
			}
			for _, s := range suggestions {
				for _, f := range list {
					if f.Formula == c.Name && f.Rule == s.Rule && f.Place.Start == s.Place.Start {
						f.Mends = s.Mends
					}
				}
			}
		}
	})
	for _, notices := range tooLong {
		res.Notices = append(res.Notices, notices...)
	}
}

// checkedIn lists the formulas of one file in order.
func checkedIn(res *Result, file string) []Checked {
	var out []Checked
	for _, c := range res.Formulas {
		if c.Place.File.Name == file {
			out = append(out, c)
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Place.Start < out[j].Place.Start })
	return out
}
