package engine

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/formula/edit"
	"forebake/engine/plan"
	"forebake/engine/quantity"
	"forebake/engine/run"
	"forebake/engine/source"
)

// PlanAsk is what a plan must meet: clocks such as "07:00". Without
// Ready and Start the one formula's own start holds.
type PlanAsk struct{ Ready, Start, Night string }

// Plan plans every formula of some files so that all are ready at one
// time. A result with problems has no plan.
func (e *Engine) Plan(inputs []Input, ask PlanAsk) (*finding.Plan, *Result, error) {
	night := plan.UsualNight
	if ask.Night != "" {
		var err error
		if night, err = plan.ReadNight(ask.Night); err != nil {
			return nil, nil, fmt.Errorf("--night: %w", err)
		}
	}
	ready, start, err := ask.clocks()
	if err != nil {
		return nil, nil, err
	}
	p := &planning{engine: e, night: night}
	p.res = e.do(inputs, run.Options{Keep: true})
	if len(p.res.Problems) > 0 {
		return nil, p.res, nil
	}
	for i := range p.res.Files {
		for range p.res.Files[i].Models {
			p.files = append(p.files, &p.res.Files[i])
		}
		p.formulas = append(p.formulas, p.res.Files[i].Models...)
	}
	p.job, p.res.Problems = plan.Of(p.formulas)
	if len(p.res.Problems) > 0 {
		return nil, p.res, nil
	}
	p.schedule = plan.Solve(p.job.Chains)
	if p.anchor, err = p.hold(ready, start); err != nil {
		return nil, p.res, err
	}
	return p.plan(), p.res, nil
}

// clocks reads the clocks; nil for none.
func (a PlanAsk) clocks() (ready, start *plan.Clock, err error) {
	read := func(flag, text string) *plan.Clock {
		if text == "" || err != nil {
			return nil
		}
		c, fault := plan.ReadClock(text)
		if fault != nil {
			err = fmt.Errorf("%s: %w", flag, fault)
		}
		return &c
	}
	ready, start = read("--ready", a.Ready), read("--start", a.Start)
	if err == nil && ready != nil && start != nil && *ready <= *start {
		err = fmt.Errorf("the plan ends before it begins: --ready %s is not after --start %s; for "+
			"the next day write --ready \"%s +1d\"", a.Ready, a.Start, *ready)
	}
	return ready, start, err
}

// planning is one plan in progress.
type planning struct {
	engine   *Engine
	res      *Result
	night    plan.Night
	anchor   plan.Anchor
	formulas []*formula.Formula
	files    []*run.File // by formula
	job      *plan.Job
	schedule *plan.Schedule
}

// hold gives the clock that anchors the plan.
func (p *planning) hold(ready, start *plan.Clock) (plan.Anchor, error) {
	switch {
	case ready == nil && start == nil:
		if len(p.formulas) == 1 && p.formulas[0].Start.Set {
			return plan.Anchor{At: plan.Clock(60 * p.formulas[0].Start.Lo)}, nil
		}
		return plan.Anchor{}, errors.New("a plan needs a clock: --ready 07:00, when all is to be " +
			"ready, or --start 05:00, when work begins")
	case ready == nil:
		return plan.Anchor{At: *start}, nil
	}
	a := plan.Anchor{Ready: true, At: *ready}
	if start != nil {
		if first := a.At + plan.Clock(p.schedule.First()); first < *start {
			takes := int(*start-first) / 60
			return a, fmt.Errorf("there is not time enough: to be ready at %s the work begins %s "+
				"before --start %s; begin sooner, or be ready later", *ready,
				quantity.Duration(float64(takes)), *start)
		}
	}
	return a, nil
}

func (p *planning) plan() *finding.Plan {
	out := &finding.Plan{Night: p.night.String()}
	zero := p.anchor.Zero(p.schedule)
	if p.anchor.Ready {
		out.Head = "Ready by " + zero.String()
	} else {
		out.Head = fmt.Sprintf("Begun at %s, ready by %s", p.anchor.At, p.dated(0))
	}
	for g := range p.formulas {
		out.Formulas = append(out.Formulas, p.sum(g))
	}
	out.Days = p.days()
	out.Hands = p.hands()
	seen := map[string]bool{}
	for _, s := range p.job.Untimed {
		line := fmt.Sprintf("%s (%s:%d)", s.Text(), s.Place.File.Name, s.Place.Line())
		if !seen[line] {
			out.Untimed = append(out.Untimed, line)
		}
		seen[line] = true
	}
	for g := range p.formulas {
		if n := p.nightOf(g); n != nil {
			out.Nights = append(out.Nights, *n)
		}
		out.Early = append(out.Early, p.early(g)...)
	}
	return out
}

// at is the clock of a time of the schedule.
func (p *planning) at(s int) plan.Clock { return p.anchor.Zero(p.schedule) + plan.Clock(s) }

// dated writes a time of the schedule, with the day where it is not
// the anchor's.
func (p *planning) dated(s int) string { return p.anchor.Dated(p.at(s)) }

// span writes a span of clocks.
func (p *planning) span(s plan.Span) string { return s.Clocks(p.at(0)) }

// sum adds up one formula.
func (p *planning) sum(group int) finding.PlannedFormula {
	out := finding.PlannedFormula{Name: p.formulas[group].Name}
	var hands, waits plan.Span
	var done plan.Span
	first, any := 0, false
	for i := range p.job.Chains {
		c := &p.job.Chains[i]
		if c.Group != group || len(c.Tasks) == 0 {
			continue
		}
		for k, t := range c.Tasks[:c.Made] {
			sum := &waits
			if p.job.Parts[i].Steps[k].Verb.Attended() {
				sum = &hands
			}
			sum.Lo, sum.Hi = sum.Lo+t.Lo, sum.Hi+t.Hi
		}
		if begin := p.schedule.Begin[i]; !any || begin < first {
			first = begin
		}
		if d := p.schedule.Done(i); !any || d.Hi > done.Hi {
			done = d
		}
		any = true
	}
	out.Begins, out.Ready = p.dated(first), p.span(done)
	out.HandsOn, out.Waiting = hands.Text(), waits.Text()
	if done.Hi < 0 {
		out.Sooner = quantity.Duration(float64(-done.Hi) / 60)
	}
	return out
}

// days gives every step by clock, day by day.
func (p *planning) days() (out []finding.PlanDay) {
	for _, s := range p.schedule.Tasks() {
		name := p.anchor.DayName(p.at(s.Begin.Lo).Day())
		if len(out) == 0 || out[len(out)-1].Name != name {
			out = append(out, finding.PlanDay{Name: name})
		}
		last := &out[len(out)-1]
		last.Steps = append(last.Steps, p.step(s))
	}
	return out
}

func (p *planning) step(s plan.Planned) finding.PlanStep {
	part := p.job.Parts[s.Chain]
	step, t := part.Steps[s.Task], p.job.Chains[s.Chain].Tasks[s.Task]
	out := finding.PlanStep{
		Clock: p.span(s.Begin), Number: step.Serial + 1, Step: step.Text(), Part: part.Name,
		Formula: p.formulas[p.job.Chains[s.Chain].Group].Name, HandsOn: step.Verb.Attended(),
	}
	for tool, needs := range t.Needs {
		if needs {
			out.Tool = plan.ToolNames[tool]
		}
	}
	last := s.Task+1 == len(part.Steps)
	switch {
	case t.Lo < t.Hi && !last:
		out.Notes = append(out.Notes, fmt.Sprintf("be ready to %s from %s, at %s at the latest",
			part.Steps[s.Task+1].Verb.Name, p.at(s.End.Lo), p.at(s.End.Hi)))
	case s.Task+1 == p.job.Chains[s.Chain].Made:
		out.Notes = append(out.Notes, "ready at "+p.span(s.End))
	}
	if wait, taken := p.schedule.Waits(s.Chain); last && taken && wait.Hi >= 60 {
		out.Notes = append(out.Notes, "waits "+wait.Text()+" to be taken in")
	}
	return out
}

// mostTold is how many lines of one kind a plan tells.
const mostTold = 8

// hands says where hand work of two chains may fall together.
func (p *planning) hands() (out []string) {
	var list []plan.Planned
	for _, s := range p.schedule.Tasks() {
		if t := p.job.Chains[s.Chain].Tasks[s.Task]; t.Hi > 0 &&
			p.job.Parts[s.Chain].Steps[s.Task].Verb.Attended() {
			list = append(list, s)
		}
	}
	name := func(s plan.Planned) string {
		part := p.job.Parts[s.Chain]
		return fmt.Sprintf("%s of %s", part.Steps[s.Task].Verb.Name, part.Name)
	}
	for i, a := range list {
		for _, b := range list[i+1:] {
			from, to := max(a.Begin.Lo, b.Begin.Lo), min(a.End.Hi, b.End.Hi)
			if a.Chain == b.Chain || from >= to {
				continue
			}
			out = append(out, fmt.Sprintf("%s: %s, and %s", p.span(plan.Span{Lo: from, Hi: to}),
				name(a), name(b)))
		}
	}
	if more := len(out) - mostTold; more > 0 {
		out = append(out[:mostTold], fmt.Sprintf("and %d more", more))
	}
	return out
}

// nightOf tells of a formula that needs somebody by night, and looks
// for the chill that avoids it.
func (p *planning) nightOf(group int) *finding.PlanNight {
	at, found := p.job.NightOf(p.schedule, group, p.anchor.Zero(p.schedule), p.night)
	if !found {
		return nil
	}
	out := &finding.PlanNight{Formula: p.formulas[group].Name, At: p.span(at)}
	for _, s := range p.schedule.Tasks() {
		if p.job.Chains[s.Chain].Group == group && s.Begin.Lo == at.Lo {
			part := p.job.Parts[s.Chain]
			out.Step = fmt.Sprintf("%s of %s", part.Steps[s.Task].Verb.Name, part.Name)
			break
		}
	}
	if out.Step == "" {
		out.Step = "taking it out as it is ready"
	}
	best, cost := -1, [3]int{}
	chills := p.job.Chills(p.schedule, group, p.anchor, p.night)
	said := make([]string, len(chills))
	for i, c := range chills {
		gained, ok := p.withChill(group, c)
		if !ok || slices.ContainsFunc(gained, hurts) {
			continue
		}
		said[i] = foundAnew(gained)
		one := [3]int{0, 0, i} // risks, answers that open, the place
		for _, f := range gained {
			switch {
			case f.At(finding.Risk):
				one[0]++
			case f.Answer == finding.Unsure:
				one[1]++
			}
		}
		if best < 0 || slices.Compare(one[:], cost[:]) < 0 {
			best, cost = i, one
		}
	}
	if best >= 0 {
		c := chills[best]
		saved := p.schedule
		p.schedule = c.Plan
		out.Offer = p.offer(c)
		p.schedule = saved
		out.Write, out.New = c.Line(), said[best]
	}
	if p.anchor.Ready {
		for later := 15 * 60; later <= 12*3600; later += 15 * 60 {
			zero := p.anchor.At + plan.Clock(later)
			if _, still := p.job.NightOf(p.schedule, group, zero, p.night); !still {
				out.Later = zero.String()
				break
			}
		}
	}
	return out
}

// hurts reports whether a finding keeps a chill from being offered: a
// stop, or a food-safety risk.
func hurts(f *finding.Finding) bool {
	return f.At(finding.Stop) || f.Safety && f.At(finding.Risk)
}

// offer says where the chill goes, and when somebody must be there.
func (p *planning) offer(c plan.Chill) string {
	k := c.Step.Index
	if !c.Longer {
		k++
	}
	from, to := c.Plan.Task(c.Chain, k)
	where := c.Where(p.job.Parts[c.Chain])
	return fmt.Sprintf("%s: mixed from %s, into the cold by %s, and on from %s", where,
		p.dated(c.Plan.Begin[c.Chain]), p.at(from.Hi), p.dated(to.Lo))
}

// withChill writes the chill into the text and checks it for
// new findings.
func (p *planning) withChill(group int, c plan.Chill) ([]*finding.Finding, bool) {
	return p.checked(group, func(ch *edit.Changer) (source.Edit, error) {
		if c.Longer {
			return ch.Time(c.Step, c.Length())
		}
		return ch.AddStep(c.Step, c.Line())
	})
}

// checked edits a formula's text and checks it. It gives the new
// findings; ok is false where the text cannot be changed or read.
func (p *planning) checked(group int, change func(*edit.Changer) (source.Edit, error)) (
	gained []*finding.Finding, ok bool) {
	file, f := p.files[group], p.formulas[group]
	c, err := edit.New(file.Text)
	if err != nil {
		return nil, false
	}
	edit, err := change(c)
	if err != nil {
		return nil, false
	}
	text, err := source.Apply(file.Text.Text, []source.Edit{edit})
	if err != nil {
		return nil, false
	}
	in := file.Input
	in.Path, in.Text, in.Beside = "", text, file.Input.Path
	after := p.engine.do([]Input{in}, run.Options{Keep: true})
	if len(after.Problems) > 0 {
		return nil, false
	}
	one := named(after.Files[0].Models, f.Name)
	if one == nil {
		return nil, false
	}
	gained, _ = turnover(findingsOf(file, f), findingsOf(&after.Files[0], one), nil)
	return gained, true
}

// foundAnew says what a change brings: rules that flag it, then those
// that can no longer tell.
func foundAnew(gained []*finding.Finding) string {
	var flagged, unsure []string
	for _, f := range gained {
		switch f.Answer {
		case finding.Flagged:
			flagged = append(flagged, fmt.Sprintf("%s %s", f.Level, f.Rule))
		case finding.Unsure:
			unsure = append(unsure, f.Rule)
		}
	}
	var out []string
	if len(flagged) > 0 {
		out = append(out, "A check finds with it, new: "+strings.Join(flagged, ", ")+
			"; forebake mend "+
			"looks for less yeast or a cooler way.")
	}
	if len(unsure) > 0 {
		out = append(out, "With it "+strings.Join(unsure, ", ")+" cannot be told any more; "+
			"forebake check says what would settle that.")
	}
	if len(out) == 0 {
		return "A check finds nothing new with it."
	}
	return strings.Join(out, " ")
}

// keptOvernight is how long a part that is made a day before is kept in
// the cold.
const keptOvernight = "20 h"

// early lists the work that can be done a day before: what the plan
// puts there, and each filling, topping, syrup or wash that a cold
// night gives no new finding. One that is taken in hot is left out.
func (p *planning) early(group int) (out []string) {
	for i, part := range p.job.Parts {
		if p.job.Chains[i].Group != group || len(part.Steps) == 0 || part.FlourG.Hi > 0 ||
			part.Kind == formula.Dough || part.Kind == formula.Preferment {
			continue
		}
		last := part.Steps[len(part.Steps)-1]
		if last.Verb.Heats() || last.Verb.Chills() && last.Verb.Retards() &&
			last.Time.Set && last.Time.Hi >= 8*60 {
			continue
		}
		gained, ok := p.checked(group, func(c *edit.Changer) (source.Edit, error) {
			return c.AddStep(last, fmt.Sprintf("{ %s = %q, at = \"fridge\", covered = true }",
				formula.Chill.Name, keptOvernight))
		})
		worse := slices.ContainsFunc(gained, func(f *finding.Finding) bool {
			return f.Answer == finding.Unsure || f.Answer == finding.Flagged &&
				f.Level != finding.Note
		})
		if ok && !worse {
			out = append(out, fmt.Sprintf("%s, of %s: behind its %s, covered in the fridge for "+
				"up to %s", partLabel(part), p.formulas[group].Name, last.Verb.Name, keptOvernight))
		}
	}
	return out
}

func partLabel(p *formula.Part) string { return fmt.Sprintf("%s %q", p.Kind, p.Name) }
