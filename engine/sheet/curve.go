package sheet

import (
	"fmt"
	"math"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/science/ferment"
)

// Curve is a picture of one figure along the clock.
type Curve struct {
	Title, Unit string
	Says        string // the picture in words
	Lines       []Line
	Error       []Band // the span of the first line that the model's error leaves, at its points
	Bands       []Band
	Limits      []Limit
	Rows        []Row // the same figures as text
	Clock       func(hours float64) string
}

// Line is a line through points; Dashed tells it apart without colour.
type Line struct {
	Name   string
	Dashed bool
	Points []Point
}

// Point is a value at an hour of the clock.
type Point struct {
	Hours, Value float64
	Marked       bool // the end of a step
}

// Band is a span of values over a span of hours.
type Band struct {
	From, To float64 // hours
	Lo, Hi   float64
	Name     string
}

// Limit is a value that a line is held against, over all hours.
type Limit struct {
	Value float64
	Name  string
}

// Row is the figures of one step.
type Row struct{ Clock, Step, First, Second string }

// curveClock writes an hour of the clock of curves.
func (b *builder) curveClock(hours float64) string {
	minutes := int(math.Round(60 * hours))
	if b.Anchor == nil || b.Schedule == nil {
		return fmt.Sprintf("%d:%02d", minutes/60, minutes%60)
	}
	return b.clock(60*minutes - int(b.zero()))
}

// temperature draws core and surface of a part along the clock; nil
// where fewer than two steps are known.
func (b *builder) temperature(p *formula.Part) *Curve {
	base := b.base(p)
	core, surface := Line{Name: "core"}, Line{Name: "surface", Dashed: true}
	c := &Curve{Title: "Temperature", Unit: "C", Clock: b.curveClock}
	known := 0
	record := b.Facts.Part(p).Record()
	for i := range record.Stages {
		st := &record.Stages[i]
		if !st.Known {
			continue
		}
		known++
		from, to := base+st.StartH.Mid(), base+st.EndH.Mid()
		core.add(from, st.StartCore.Mid)
		for _, s := range st.Trace[figure.Middle] {
			if at := from + s.Hours; at > from && at < to {
				core.add(at, s.Core)
				surface.add(at, s.Surface)
			}
		}
		core.mark(to, st.Core.Mid)
		surface.mark(to, st.Surface.Mid)
		c.Error = append(c.Error, Band{From: from, To: to, Lo: st.Core.Low, Hi: st.Core.High})
		out := b.step(p, st.Step)
		c.Rows = append(c.Rows, Row{b.curveClock(to), out.Does, out.Core, out.Surface})
	}
	if known < 2 || core.width() == 0 {
		return nil
	}
	c.Lines = []Line{core, surface}
	if law := b.Facts.Kitchen.Law(); b.needsCold(p) && law.ColdC.Known() && law.HotHoldC.Known() {
		lo, hi := law.ColdC.Value, law.HotHoldC.Value
		c.Bands = append(c.Bands, Band{From: math.Inf(-1), To: math.Inf(1), Lo: lo, Hi: hi,
			Name: fmt.Sprintf("warm, %s to %s: hours here add up", quantity.Plain(lo),
				quantity.Format(hi, "C"))})
	}
	for _, s := range p.Steps {
		if !s.Verb.Bakes() {
			continue
		}
		if v, ok := b.limit("core-unsafe", "core_c"); ok {
			c.Limits = append(c.Limits, Limit{v, quantity.Format(v, "C") +
				": under this raw flour and egg are not cooked"})
		}
		if s.Core.Set {
			c.Limits = append(c.Limits, Limit{s.Core.Mid(), s.Core.Text + ": core that is wanted"})
		}
		break
	}
	c.Says = fmt.Sprintf("Core (whole line) and surface (dashed) of %s along the clock, from %s "+
		"to %s; the table below gives the figures at the end of each step.", partName(p),
		b.curveClock(core.Points[0].Hours), b.curveClock(core.Points[len(core.Points)-1].Hours))
	return c
}

func partName(p *formula.Part) string { return fmt.Sprintf("%s %s", p.Kind, p.Name) }

// add adds a point, unless it repeats the last one.
func (l *Line) add(hours, value float64) {
	if math.IsNaN(value) || math.IsInf(value, 0) {
		return
	}
	if n := len(l.Points); n > 0 && l.Points[n-1].Hours == hours && l.Points[n-1].Value == value {
		return
	}
	l.Points = append(l.Points, Point{Hours: hours, Value: value})
}

// mark adds a point with a dot.
func (l *Line) mark(hours, value float64) {
	l.add(hours, value)
	if n := len(l.Points); n > 0 && l.Points[n-1].Hours == hours && l.Points[n-1].Value == value {
		l.Points[n-1].Marked = true
	}
}

func (l *Line) width() float64 {
	if len(l.Points) == 0 {
		return 0
	}
	return l.Points[len(l.Points)-1].Hours - l.Points[0].Hours
}

// timesItsSize turns yeast work, in percent-hours at 26 C, into times
// the size.
func timesItsSize(work float64) float64 { return math.Exp2(work / ferment.DoublingE) }

// rise draws a dough's size against its start, from the mix and again
// from the shaping. It is nil where the dough does not ferment or the
// size is not known. It fills in the steps' figures.
func (b *builder) rise(p *formula.Part, steps []Step) *Curve {
	if p.Kind != formula.Dough && p.Kind != formula.Preferment {
		return nil
	}
	gained, ok := facts.Find(facts.OnStep, "e_gained")
	if !ok {
		return nil
	}
	base := b.base(p)
	line := Line{Name: "size"}
	c := &Curve{Title: "Rise", Unit: "x", Clock: b.curveClock}
	var sum [figure.Runs]float64
	proof, mixed := false, false
	bulkFrom, proofFrom := math.NaN(), math.NaN()
	record := b.Facts.Part(p).Record()
	for i := range record.Stages {
		st := &record.Stages[i]
		s := st.Step
		if s.Verb.HeatsThrough() {
			break
		}
		mixed = mixed || s.Verb.Mixes()
		from, to := base+st.StartH.Mid(), base+st.EndH.Mid()
		if mixed && s.Verb.EndsBulk() && !proof {
			proof, sum, proofFrom = true, [figure.Runs]float64{}, from
		}
		if !mixed || to == from {
			continue
		}
		v := b.Facts.Value(gained, facts.Subject{On: facts.OnStep, Part: p, Step: s})
		if v.Absent || math.IsNaN(v.Mid) || math.IsInf(v.Hi, 0) {
			return nil
		}
		if math.IsNaN(bulkFrom) {
			bulkFrom = from
		}
		line.add(from, timesItsSize(sum[figure.Middle]))
		sum[figure.Low], sum[figure.Middle] = sum[figure.Low]+v.Lo, sum[figure.Middle]+v.Mid
		sum[figure.High] += v.Hi
		lo, mid, hi := timesItsSize(sum[figure.Low]), timesItsSize(sum[figure.Middle]),
			timesItsSize(sum[figure.High])
		line.mark(to, mid)
		c.Error = append(c.Error, Band{From: from, To: to, Lo: lo, Hi: hi})
		text := fmt.Sprintf("about %.1f x (%.1f to %.1f)", mid, lo, hi)
		c.Rows = append(c.Rows, Row{
			Clock: b.curveClock(to),
			Step:  steps[s.Index].Does,
			First: text,
		})
		steps[s.Index].Rises, steps[s.Index].RiseText = s.Verb.Waits(), text
		if s.Verb.Waits() {
			steps[s.Index].Look = joined(steps[s.Index].Look, "risen to "+text)
		}
	}
	if len(line.Points) < 2 || line.width() == 0 {
		return nil
	}
	c.Lines = []Line{line}
	end := line.Points[len(line.Points)-1].Hours
	bulkEnd := end
	if !math.IsNaN(proofFrom) {
		bulkEnd = proofFrom
	}
	c.wanted(b, "bulk-short", "bulk-long", "bulk_e", bulkFrom, bulkEnd, "wanted at the bench", p)
	if end > bulkEnd {
		c.wanted(b, "proof-short", "proof-long", "proof_e", bulkEnd, end, "wanted at the oven", p)
	}
	c.Says = fmt.Sprintf("Size of %s in times what it was, added up from the mix and again from "+
		"the shaping, as if nothing pressed the gas out; straight lines join the ends of the "+
		"steps. The table below gives the figures.", partName(p))
	return c
}

// wanted adds the band that the rules of a rise leave free. Laminated
// doughs, doughnuts, and doughs with a culture have limits of their
// own: no band is drawn for them.
func (c *Curve) wanted(b *builder, short, long, limit string, from, to float64, name string,
	p *formula.Part) {
	threeQuarters := p.Formula.Family != nil && p.Formula.Family.Name == "doughnut"
	if p.Kind != formula.Dough || threeQuarters && limit == "proof_e" {
		return
	}
	for _, no := range []string{"is_laminated", "has_culture", "is_retarded"} {
		fact, ok := facts.Find(facts.OnPart, no)
		if no == "is_retarded" && limit == "proof_e" {
			continue
		}
		if ok && b.Facts.Value(fact, facts.Subject{On: facts.OnPart, Part: p}).Hi != 0 {
			return
		}
	}
	lo, ok := b.limit(short, limit)
	hi, ok2 := b.limit(long, limit)
	if !ok || !ok2 {
		return
	}
	lo, hi = timesItsSize(lo), timesItsSize(hi)
	c.Bands = append(c.Bands, Band{From: from, To: to, Lo: lo, Hi: hi,
		Name: fmt.Sprintf("%s: %.1f to %.1f x", name, lo, hi)})
}
