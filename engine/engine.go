// Package engine is the library's front door. The command line and an
// editor's protocol call it.
//
// Every answer about a formula comes from one run (package run); each
// verb here adds its own to it. It prints nothing, and writes only
// mended files and packs, when asked to.
package engine

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"forebake/engine/backlog"
	"forebake/engine/files"
	"forebake/engine/finding"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/run"
	"forebake/engine/source"
	"forebake/rules"
)

// Version is the version of the program; a pack may ask for at
// least one.
const Version = "0.1.0"

// Engine answers about formulas. It caches the houses and packs it has
// loaded, and serves one call at a time.
type Engine struct {
	// Workers is how many files are read at once; 0 means as many as
	// there are processors.
	Workers int

	// Today is the day that waivers are judged by; zero means the
	// clock's, read once a run.
	Today time.Time

	// Timed asks Check for the time that each rule takes.
	Timed bool

	// Backlog is a list of findings that do not count in Check; nil
	// for none.
	Backlog *backlog.List

	// Progress is told, after each file of Mend, how many were searched
	// of how many; nil for none. Calls do not overlap.
	Progress func(done, of int)

	// Ended is asked throughout Suggest, which stops once it reports
	// true; nil for never.
	Ended func() bool

	// Texts is where files' texts come from: the disk, unless set
	// before the first call.
	Texts files.Texts

	houses *run.Houses
}

// The types of a run, which callers see through the front door.
type (
	Input  = run.Input
	Result = run.Result
	Loaded = run.Loaded
)

// New makes an engine that reads from the disk.
func New() *Engine {
	return &Engine{Texts: files.Disk{},
		houses: &run.Houses{Shipped: rules.Files, Version: Version}}
}

// Inputs turns the paths of a command into inputs.
func Inputs(paths []string) []Input { return run.Inputs(paths) }

// ShippedPacks lists the packs in the program, in order of name. The
// cautions are no pack.
func ShippedPacks() []string { return run.PackNames(rules.Files) }

// do runs over the inputs.
func (e *Engine) do(inputs []Input, o run.Options) *Result {
	e.ready()
	o.Workers, o.Today = e.Workers, e.Today
	res := run.Do(e.houses, inputs, o)
	res.Version = Version
	return res
}

// ready hands the source of texts to the houses.
func (e *Engine) ready() *run.Houses {
	if e.houses.Texts == nil {
		e.houses.Texts = e.Texts
	}
	return e.houses
}

// Check judges every formula of the inputs. The answers are the same
// bytes for any number of workers.
func (e *Engine) Check(inputs []Input) *Result {
	return e.do(inputs, run.Options{Timed: e.Timed, Backlog: e.Backlog})
}

// Opened lists the paths of the files that this engine has read,
// backlogs apart.
func (e *Engine) Opened() []string { return e.ready().Opened() }

// IsBacklog reports whether a file is a backlog, readable or not.
func IsBacklog(path string) bool {
	text, err := files.Disk{}.Read(path, files.Kind{Name: "a backlog", Limit: backlog.MaxBytes})
	return err == nil && backlog.Is(source.New(path, text))
}

// ReadBacklog reads a list of findings for Backlog: those that stood
// when the rules were taken on.
func (e *Engine) ReadBacklog(path string) (*backlog.List, source.Problems) {
	return run.ReadBacklog(path, e.Texts)
}

// NearestPath names the formula file or folder nearest to a path that
// does not exist, else what to do otherwise.
func NearestPath(path, otherwise string) string { return run.NearestPath(path, otherwise) }

// HouseAt finds the house file of a path: a house file itself, or the
// nearest one upward from a folder, "" for none.
func HouseAt(path string) (string, error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return "", fmt.Errorf("%s: no such file or folder; %s", path,
			NearestPath(path, "name a house file, or a folder of its formulas"))
	case info.IsDir():
		return run.Nearest(path), nil
	}
	return filepath.Clean(path), nil
}

// Load gives a path's house, as HouseAt finds it, with its packs.
// Loading it again costs nothing.
func (e *Engine) Load(path string) (*Loaded, source.Problems) {
	file, err := HouseAt(path)
	if err != nil {
		return nil, source.Problems{{Text: err.Error()}}
	}
	return e.ready().LoadFile(file)
}

// TrialReport is the result of some packs' trials.
type TrialReport = rule.TrialReport

// Trials runs the trials of a path's house, of all packs or of
// those named.
func (e *Engine) Trials(path string, names []string) (rule.TrialReport, source.Problems) {
	file, err := HouseAt(path)
	if err != nil {
		return rule.TrialReport{}, source.Problems{{Text: err.Error()}}
	}
	l, problems := e.ready().LoadTrials(file)
	if len(problems) > 0 {
		return rule.TrialReport{}, problems
	}
	packs := l.Rules.Packs
	if len(names) > 0 {
		var known []string
		for _, p := range packs {
			known = append(known, p.Name)
		}
		packs = nil
		for _, name := range names {
			i := slices.Index(known, name)
			if i < 0 {
				problems = append(problems,
					source.Problem{Text: reading.UnknownText("pack", name, "this house", known)})
				continue
			}
			packs = append(packs, l.Rules.Packs[i])
		}
	}
	if len(problems) > 0 {
		return rule.TrialReport{}, problems
	}
	return rule.RunTrials(packs), nil
}

// Card gives the card of a rule in a house, by its name or a former
// one, in any letter case. The error suggests names.
func Card(l *Loaded, name string) (finding.Card, error) {
	lower := strings.ToLower(name)
	if says, own := rule.OwnFinding(lower); own {
		return finding.Card{}, fmt.Errorf("%s is no rule: it is said of %s; packs lists the rules",
			lower, says)
	}
	r, ok := l.Rules.Find(name)
	if !ok {
		r, ok = l.Rules.Find(lower)
	}
	if !ok {
		return finding.Card{}, errors.New(reading.UnknownText("rule", name, "the packs in force",
			l.Rules.Names()) + "; a rule of another house is found with --house")
	}
	return l.Rules.Card(r), nil
}

// OfCommit turns a commit's changed files into inputs: formula files
// are kept. A house file, a rule file or a backlog among them checks
// all formulas below this folder, since it can change each answer.
// Files that are not HCL are left out.
func (e *Engine) OfCommit(changed []string) []Input {
	held := files.Held{Texts: map[string][]byte{}, Below: e.Texts}
	e.Texts = held
	var paths []string
	for _, path := range changed {
		if !strings.HasSuffix(path, ".hcl") {
			continue
		}
		text, err := held.Below.Read(path,
			files.Kind{Name: "a file of HCL", Limit: source.MaxLimitBytes})
		if err == nil {
			held.Texts[filepath.Clean(path)] = text
			if file := source.New(filepath.ToSlash(path), text); run.Judges(file) {
				return Inputs([]string{"."})
			}
		}
		paths = append(paths, path)
	}
	inputs := Inputs(paths)
	for i := range inputs {
		inputs[i].Found = true // not named by a person: a file of another tool is passed over
	}
	return inputs
}
