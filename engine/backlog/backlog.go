// Package backlog lists the findings that stood when a team took on the
// rules. Listed findings do not count, so an old collection can be
// checked without failing every run.
//
// Package run takes listed findings out of its result, and makes new
// lists. A list names a finding by formula, rule and subject, never by
// line, so edits do not invalidate it. Of findings equal in all three
// it covers as many as it says. It never covers food safety, nor
// findings that the house waives. Nothing here reads or writes files.
package backlog

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/finding"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Entry is one line of a list: a rule's findings on one subject of a
// formula, counted.
type Entry struct {
	Formula, Rule, Subject string
	Times                  int
	Place                  source.Place // of its line; none for an entry not read from a file
}

// key names a finding on a list.
type key struct{ formula, rule, subject string }

func (e Entry) key() key { return key{e.Formula, e.Rule, e.Subject} }

// List is a backlog.
type List struct {
	Made    string // the day: "2026-11-25"
	Entries []Entry
}

// Limits of a list, far above any real one. Each line has a bracket, so
// source.MaxBrackets is reached first; Fits checks that a list can be
// read again before it is written.
const (
	MaxEntries = 20_000
	MaxBytes   = source.MaxLimitBytes
)

// Read reads a list. It is usable only when there are no problems.
func Read(f *source.File) (*List, source.Problems) {
	f.Limit = MaxBytes
	l := &List{}
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return l, problems
	}
	r := &reader{Reader: &reading.Reader{File: f}, list: l, seen: map[key]source.Place{}}
	r.Known(body, "a backlog file", nil, []string{"backlog"})
	for i, b := range body.Blocks {
		switch {
		case b.Type != "backlog":
		case i > 0:
			r.Fault(r.Place(b.TypeRange), "a second backlog block; one file is one list")
		default:
			r.backlog(b)
		}
	}
	if len(body.Blocks) == 0 && len(r.Problems) == 0 {
		r.Fault(source.Place{File: f}, "no backlog block: forebake check --write-backlog makes one")
	}
	if len(l.Entries) > MaxEntries {
		r.Fault(source.Place{File: f}, "%d lines in one backlog; %d is the most", len(l.Entries),
			MaxEntries)
	}
	return l, r.Problems.Sort()
}

// reader reads the blocks of a list.
type reader struct {
	*reading.Reader
	list *List
	seen map[key]source.Place // the line of each entry
}

func (r *reader) backlog(b *hclsyntax.Block) {
	r.list.Made, _ = r.Label(b)
	r.Known(b.Body, "a backlog", nil, []string{"formula"})
	for _, fb := range b.Body.Blocks {
		if fb.Type == "formula" {
			r.formula(fb)
		}
	}
}

func (r *reader) formula(b *hclsyntax.Block) {
	name, _ := r.Label(b)
	r.Known(b.Body, "a formula of a backlog", []string{"known"}, nil)
	a := b.Body.Attributes["known"]
	if a == nil {
		r.Fault(r.Place(b.TypeRange),
			"formula %q has no known: write known = [{ rule = \"salt-low\", on = \"dough \\\"bun "+
				"dough\\\"\" }], or take the block out", source.Safe(name))
		return
	}
	items, _ := r.Items(a.Expr, "known")
	for _, item := range items {
		e := Entry{Formula: name, Times: 1, Place: r.Place(item.Range())}
		if !r.entry(item, &e) {
			continue
		}
		if first, twice := r.seen[e.key()]; twice {
			r.Fault(
				e.Place,
				"%s on %s stands twice, first at line %d; write it once, with times = 2",
				e.Rule,
				source.Safe(e.Subject),
				first.Line(),
			)
		}
		r.seen[e.key()] = e.Place
		r.list.Entries = append(r.list.Entries, e)
	}
}

// entryKeys are the keys of a line.
var entryKeys = []string{"rule", "on", "times"}

// entry reads one line, and reports whether it is usable.
func (r *reader) entry(item hclsyntax.Expression, e *Entry) bool {
	before := len(r.Problems)
	pairs, _ := r.Pairs(item, "a line of a backlog", nil)
	for _, p := range pairs {
		switch p.Key {
		case "rule":
			e.Rule, _, _ = r.Text(p.Value, "rule")
		case "on":
			e.Subject, _, _ = r.Text(p.Value, "on")
		case "times":
			if x, at, ok := r.Number(p.Value, 1, MaxEntries, "times"); ok {
				if e.Times = int(x); float64(e.Times) != x {
					r.Fault(at, "times is a whole number, such as 2")
				}
			}
		default:
			r.Unknown(p.Place, "key", p.Key, "a line of a backlog", entryKeys)
		}
	}
	if len(r.Problems) == before && (e.Rule == "" || e.Subject == "") {
		r.Fault(e.Place,
			"a line of a backlog names a rule and what it is on: { rule = \"salt-low\", on = "+
				"\"dough \\\"bun dough\\\"\" }")
	}
	return len(r.Problems) == before
}

// covers reports whether a list may hold a finding.
func covers(f *finding.Finding) bool {
	return f.Formula != "" && !f.Safety && f.Answer != finding.Waived
}

func keyOf(f *finding.Finding) key { return key{f.Formula, f.Rule, f.Subject} }

// Of lists the findings of a run, and counts the food-safety findings
// that it leaves out.
func Of(findings []*finding.Finding, made string) (l *List, safety int) {
	counts := map[key]int{}
	for _, f := range findings {
		switch {
		case covers(f):
			counts[keyOf(f)]++
		case f.Safety && f.Answer != finding.Waived:
			safety++
		}
	}
	l = &List{Made: made}
	for k, n := range counts {
		l.Entries = append(l.Entries,
			Entry{Formula: k.formula, Rule: k.rule, Subject: k.subject, Times: n})
	}
	l.sort()
	return l, safety
}

func (l *List) sort() {
	sort.Slice(l.Entries, func(i, j int) bool {
		a, b := l.Entries[i], l.Entries[j]
		if a.Formula != b.Formula {
			return a.Formula < b.Formula
		}
		if a.Rule != b.Rule {
			return a.Rule < b.Rule
		}
		return a.Subject < b.Subject
	})
}

// Cover splits a run's findings into those that count and those that
// the list covers. cleared are the entries without a finding in a
// formula that the run checked. A finding clears no entry, covered
// or not.
func (l *List) Cover(findings []*finding.Finding, checked []string) (
	left, covered []*finding.Finding, cleared []Entry) {
	room := make(map[key]int, len(l.Entries))
	for _, e := range l.Entries {
		room[e.key()] = e.Times
	}
	for _, f := range findings {
		if k := keyOf(f); covers(f) && room[k] > 0 {
			room[k]--
			covered = append(covered, f)
		} else {
			left = append(left, f)
			delete(room, k)
		}
	}
	ran := make(map[string]bool, len(checked))
	for _, name := range checked {
		ran[name] = true
	}
	for _, e := range l.Entries {
		if n := room[e.key()]; n > 0 && ran[e.Formula] {
			e.Times = n
			cleared = append(cleared, e)
		}
	}
	return left, covered, cleared
}

// Less gives the list without the entries that were cleared.
func (l *List) Less(cleared []Entry) *List {
	gone := make(map[key]int, len(cleared))
	for _, e := range cleared {
		gone[e.key()] = e.Times
	}
	out := &List{Made: l.Made}
	for _, e := range l.Entries {
		if e.Times -= gone[e.key()]; e.Times > 0 {
			out.Entries = append(out.Entries, e)
		}
	}
	out.sort()
	return out
}

// Is reports whether a file is a backlog, readable or not: its blocks
// show it.
func Is(f *source.File) bool {
	f.Limit = MaxBytes
	blocks, sure := source.Blocks(f)
	other := func(b source.Block) bool { return b.Type != "backlog" }
	return sure && len(blocks) > 0 && !slices.ContainsFunc(blocks, other)
}

// Fits gives an error, with what to do, for a list that could not be
// read again.
func Fits(text []byte) error {
	if _, problems := Read(source.New("the list", text)); len(problems) > 0 {
		return fmt.Errorf("the list would be too long to be read again (%s); write one for each "+
			"folder: forebake check --write-backlog FOLDER/backlog.hcl FOLDER", problems[0].Text)
	}
	return nil
}

// Text writes the list as its file.
func (l *List) Text() []byte {
	var b strings.Builder
	b.WriteString("# Findings that stood when this list was made. They do not count against a " +
		"check; food safety is never on it.\n")
	b.WriteString("# forebake check --backlog tells what has been cleared since, and " +
		"--write-backlog beside it takes that out.\n\n")
	fmt.Fprintf(&b, "backlog %s {\n", reading.Quoted(l.Made))
	for i, e := range l.Entries {
		if i == 0 || l.Entries[i-1].Formula != e.Formula {
			if i > 0 {
				b.WriteString("    ]\n  }\n\n")
			}
			fmt.Fprintf(&b, "  formula %s {\n    known = [\n", reading.Quoted(e.Formula))
		}
		times := ""
		if e.Times > 1 {
			times = fmt.Sprintf(", times = %d", e.Times)
		}
		fmt.Fprintf(&b, "      { rule = %s, on = %s%s },\n", reading.Quoted(e.Rule),
			reading.Quoted(e.Subject),
			times)
	}
	if len(l.Entries) > 0 {
		b.WriteString("    ]\n  }\n")
	}
	b.WriteString("}\n")
	return []byte(b.String())
}
