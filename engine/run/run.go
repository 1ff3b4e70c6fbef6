// Package run takes formula files through one run. It reads each file
// once, judges its formulas by the house's rules, applies waivers and
// backlog, and counts the rest.
//
// Every verb that judges a formula calls Do, so all answer alike:
// check, compare, facts, and the first and last check of mend. Besides,
// only mend's search calls the judge.
package run

import (
	"cmp"
	"fmt"
	"runtime"
	"slices"
	"sort"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"forebake/engine/backlog"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// Options are what a run is asked for.
type Options struct {
	Workers int           // files at once; 0 for as many as there are processors
	Today   time.Time     // the day that waivers are held against
	Timed   bool          // measure the time of each rule
	Keep    bool          // keep the texts and the formulas that were read
	Backlog *backlog.List // findings that do not count; nil for none
}

// Result is what a run found.
type Result struct {
	finding.Run
	Files []File             // in the order of the inputs
	Times []finding.RuleTime // the longest first; nil unless asked for

	failAt  map[string]finding.Level // by formula file and house file
	houses  []*Loaded                // in order of the files
	backlog *backlog.List
	cleared []backlog.Entry // from the backlog
}

// Do runs over the inputs. The result is the same for any number of
// workers and any order of inputs.
func Do(h *Houses, inputs []Input, o Options) *Result {
	order := make([]int, len(inputs))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return strings.Compare(inputs[a].Name, inputs[b].Name)
	})

	res := &Result{Files: make([]File, len(inputs)), failAt: map[string]finding.Level{},
		backlog: o.Backlog}
	crew := make([]*worker, Crew(o.Workers, len(inputs)))
	for k := range crew {
		crew[k] = &worker{houses: h, keep: o.Keep, judge: rule.NewJudge()}
		if o.Timed {
			crew[k].clock = &clock{times: map[string]*finding.RuleTime{}}
		}
	}
	Each(len(inputs), len(crew), func(k, i int) {
		res.Files[order[i]] = crew[k].file(inputs[order[i]])
	})
	res.Times = timesOf(crew)
	for _, i := range order {
		res.add(&res.Files[i])
	}
	if n := foreignNotice(res.Files, order); n != "" {
		res.Notices = append(res.Notices, n)
	}
	res.Notices = append(res.Notices, saidNotices(res.Files, order)...)
	for _, folder := range emptyFolders(res.Files) {
		res.Totals.Unread++
		res.Problems = append(res.Problems, source.Problem{Text: folder + noFormulas})
	}
	res.Problems = res.Problems.Sort()
	res.waive(order, o.Today)
	res.Cards = res.cards
	finding.Sort(res.Findings)
	if o.Backlog != nil {
		res.cover(o.Backlog)
	}
	for _, f := range res.Findings {
		res.Totals.Count(f)
	}
	return res
}

// mostAssumed is how many files have their assumptions told; of more,
// only the number is told.
const mostAssumed = 3

// readings are how words of a file were read, a line each: what stays open first, for answers hang
// on it, then by line. What is said of several lines stands at the first.
func readings(all []formula.Said) []string {
	rank := func(text string) int {
		if strings.Contains(text, `taken as "?"`) {
			return 0
		}
		return 1
	}
	list := slices.Clone(all)
	slices.SortStableFunc(list, func(a, b formula.Said) int {
		return cmp.Or(rank(a.Text)-rank(b.Text), a.Place.Line()-b.Place.Line())
	})
	lines, texts := map[string][]string{}, []string{}
	first := map[string]string{}
	for _, a := range list {
		key := a.Text
		_, told, ok := strings.Cut(key, `" is read as `)
		if ok && strings.Contains(told, "; name it") { // the same word with others beside it
			key = told
		}
		if lines[key] == nil {
			texts, first[key] = append(texts, key), a.Text
		}
		if n := strconv.Itoa(a.Place.Line()); !slices.Contains(lines[key], n) {
			lines[key] = append(lines[key], n)
		}
	}
	for i, key := range texts {
		at := "line "
		if len(lines[key]) > 1 {
			at = "lines "
		}
		texts[i] = source.Safe(at + strings.Join(lines[key], ", ") + ", " + first[key])
	}
	return texts
}

// saidNotices tells how ambiguous words were read, a line a file.
func saidNotices(files []File, order []int) []string {
	var out []string
	words := 0
	for _, i := range order {
		said := readings(files[i].said)
		if words += len(files[i].said); len(said) > 0 {
			out = append(out, "Assumed in "+source.Safe(files[i].Input.Name)+":\n"+
				strings.Join(said, ";\n")+".")
		}
	}
	if len(out) > mostAssumed {
		return []string{fmt.Sprintf("Assumed in %d files: %d words that have several meanings are "+
			"read as the commonest; a check of one file tells them.", len(out), words)}
	}
	return out
}

// mostForeign is how many files of other tools a notice names.
const mostForeign = 3

// foreignNotice names the files that were passed over without a block
// of this program, "" for none. A badly misspelt formula block is
// among them.
func foreignNotice(files []File, order []int) string {
	var names []string
	for _, i := range order {
		if files[i].foreign {
			names = append(names, files[i].Input.Name)
		}
	}
	if len(names) == 0 {
		return ""
	}
	more := ""
	if n := len(names) - mostForeign; n > 0 {
		names, more = names[:mostForeign], fmt.Sprintf(" and %d more", n)
	}
	return "Passed over, for they hold no formula, rule or house: " + strings.Join(
		names,
		", ",
	) + more +
		"."
}

// add adds what one file gave.
func (r *Result) add(f *File) {
	r.Problems = append(r.Problems, f.problems...)
	if f.skipped {
		return
	}
	if !f.judged() {
		r.Totals.Unread++
	}
	r.Findings = append(r.Findings, f.Findings...)
	r.Cautions = append(r.Cautions, f.cautions...)
	r.Formulas = append(r.Formulas, f.Formulas...)
	r.Assumed = append(r.Assumed, f.assumed...)
	r.Notices = append(r.Notices, f.notices...)
	r.Totals.Formulas = len(r.Formulas)
	if f.House == nil {
		r.Problems = append(r.Problems, f.house...)
		return
	}
	r.failAt[f.Input.Name] = f.House.House.FailAt
	r.Totals.Rules = max(r.Totals.Rules, len(f.House.Rules.Rules))
	if !slices.Contains(r.houses, f.House) {
		r.houses = append(r.houses, f.House)
		r.Assumed = append(r.Assumed, kitchenAssumed(f.House))
		r.Notices = append(r.Notices, f.House.Rules.Notices...)
		sort.Strings(r.Notices)
	}
}

// waive adds what the houses set aside, what is wrong with that, and
// what they make less strict. It comes after the workers, so that the
// result does not depend on their number.
func (r *Result) waive(order []int, today time.Time) {
	if today.IsZero() {
		today = time.Now()
	}
	var houses []*Loaded
	for _, l := range r.houses {
		if l.House.File != nil {
			houses = append(houses, l)
		}
	}
	slices.SortFunc(houses, func(a, b *Loaded) int {
		return strings.Compare(a.House.File.Name, b.House.File.Name)
	})
	for _, l := range houses {
		r.Loosened = append(r.Loosened, l.Rules.Loosened...)
		r.Unchecked = append(r.Unchecked, l.Unchecked...)
		r.failAt[l.House.File.Name] = l.House.FailAt
		if len(l.Rules.Waivers) == 0 {
			continue
		}
		seen := rule.Seen{Today: today}
		var list []*finding.Finding
		for _, i := range order {
			f := &r.Files[i]
			if f.House != l {
				continue
			}
			seen.Folder = seen.Folder || len(f.Input.Folders) > 0
			seen.Broken = seen.Broken || !f.judged()
			list = append(list, f.Findings...)
			for _, one := range f.Formulas {
				seen.Formulas = append(seen.Formulas, one.Name)
			}
		}
		r.Findings = append(r.Findings, l.Rules.Waive(list, seen)...)
	}
	for _, l := range houses { // a waiver may stand in a file that the house includes
		for _, f := range l.House.Like {
			if _, has := r.failAt[f.Name]; !has {
				r.failAt[f.Name] = l.House.FailAt
			}
		}
	}
}

// cards gives the cards of the rules in force in a run's houses, by
// name. Where two houses have one rule, the card is that of the first
// house's file.
func (r *Result) cards() []finding.Card {
	var out []finding.Card
	seen := map[string]bool{}
	for _, l := range r.houses {
		for _, one := range l.Rules.Rules {
			if !seen[one.ID] {
				seen[one.ID] = true
				out = append(out, l.Rules.Card(one))
			}
		}
	}
	finding.SortCards(out)
	return out
}

// HouseFiles lists a run's house files, in order of its files.
func (r *Result) HouseFiles() []string {
	var out []string
	for _, l := range r.houses {
		if l.House.File != nil {
			out = append(out, l.House.File.Name)
		}
	}
	return out
}

// Failed reports whether a flagged finding is at or above the failing
// level: its house's, or override when it is not nil.
func (r *Result) Failed(override *finding.Level) bool {
	for _, f := range r.Findings {
		if r.Fails(f, override) {
			return true
		}
	}
	return false
}

// Fails reports whether a finding fails the run.
func (r *Result) Fails(f *finding.Finding, override *finding.Level) bool {
	level := finding.Stop
	if override != nil {
		level = *override
	} else if f.Place.File != nil {
		level = r.failAt[f.Place.File.Name]
	}
	return f.At(level)
}

// Crew is the number of workers for n jobs: as asked for, else one
// a processor.
func Crew(workers, n int) int {
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	return min(workers, n)
}

// Each runs a job for every number below n on so many workers. The job
// gets its worker's number.
func Each(n, workers int, job func(worker, i int)) {
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
