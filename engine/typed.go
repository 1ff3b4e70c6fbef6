package engine

import (
	"path/filepath"
	"slices"

	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/run"
	"forebake/engine/source"
	"forebake/engine/tolerant"
)

// Typed is a formula file as it is being typed.
type Typed struct {
	Repair *tolerant.Repaired
	House  *Loaded // nil where the house cannot be used
	// Result is the run over the repaired text; nil where nothing could
	// be judged.
	Result *Result
	// HouseProblems keep the house from being used.
	HouseProblems source.Problems
}

// Typed judges a formula file as far as it is typed. A broken line is
// opened or left out, and told; see package tolerant.
func (e *Engine) Typed(path string, text []byte) *Typed {
	t := &Typed{}
	dir := filepath.Dir(path)
	t.House, t.HouseProblems = e.ready().Load(dir)
	if len(t.HouseProblems) > 0 {
		return t
	}
	file := source.New(filepath.ToSlash(path), text)
	judge := func(text []byte) bool {
		res := e.do([]Input{{Name: file.Name, Text: text, Dir: dir}}, run.Options{Keep: true})
		if len(res.Problems) > 0 {
			return false
		}
		t.Result = res
		return true
	}
	if judge(text) { // most often, and then it costs what a check costs
		t.Repair = tolerant.Whole(file)
		return t
	}
	t.Repair = tolerant.Repair(file, run.ReadingWords(), func(f *source.File) source.Problems {
		return run.Reading(f, t.House.House)
	})
	if t.Repair.File != nil {
		judge(t.Repair.File.Text)
	}
	return t
}

// TypedHouse gives the problems of a house file, with those of
// its packs.
func (e *Engine) TypedHouse(path string) (*Loaded, source.Problems) {
	return e.ready().LoadFile(path)
}

// TypedRules reads a rule file's pack and, with trials, runs them.
func (e *Engine) TypedRules(path string, trials bool) (
	*rule.Pack, *Loaded, rule.TrialReport, source.Problems,
) {
	pack, l, problems := e.ready().LoadRules(path)
	if len(problems) > 0 || pack == nil {
		return pack, l, rule.TrialReport{}, problems
	}
	report := rule.TrialReport{}
	if trials {
		report = rule.RunTrials([]*rule.Pack{pack})
	}
	return pack, l, report, unknownRules(pack)
}

// unknownRules gives a problem for each trial of a rule that its
// pack lacks.
func unknownRules(pack *rule.Pack) (problems source.Problems) {
	var names []string
	for _, r := range pack.Rules {
		names = append(append(names, r.ID), r.Was...)
	}
	for _, t := range pack.Trials {
		if t.Rule != "" && !slices.Contains(names, t.Rule) {
			problems = append(problems, source.Problem{Place: t.Place,
				Text: reading.UnknownText("rule", t.Rule, "this pack", names)})
		}
	}
	return problems
}

// Stamp changes when a house or rule file that was read changes on
// disk. held are the paths of texts from elsewhere.
func (e *Engine) Stamp(held map[string][]byte) string { return e.ready().Stamp(held) }
