package process

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/makeup"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
)

// Record is the part's history, computed once.
func (p *Part) Record() *history.Record {
	if p.record == nil {
		// parts cannot form a circle; this keeps a mistake from hanging
		if p.following {
			return &history.Record{}
		}
		p.following = true
		setup := p.Setup()
		p.record = p.sheet.Simulator.Follow(setup)
	}
	return p.record
}

// Setup is the input of the part's simulation, computed once.
func (p *Part) Setup() history.Setup {
	if p.prepared == nil {
		s := p.prepare()
		p.prepared = &s
	}
	return *p.prepared
}

func (p *Part) prepare() history.Setup {
	s := history.Setup{
		Part:     p.Part,
		Kitchen:  p.sheet.Kitchen,
		MassG:    p.Grams(makeup.Mass),
		Material: p.Material(),
	}
	start := p.startTemp()
	switch {
	case !s.Material.Known:
		s.Missing = p.Thermal().Density.Need.What
	case start.Absent:
		s.Missing = start.Need.What
	default:
		s.Start, s.Started = figure.Estimate{Low: start.Lo, Mid: start.Mid, High: start.Hi}, true
	}
	if f, ok := p.PaceSpan(); ok && p.Strain() != "none" {
		if y, ok := p.OfFlour(makeup.Yeast); ok && y.IsFinite() && f.IsFinite() {
			s.Gas = 100 * y.Mid() * f.Mid() / ferment.CardsOwnHeat
			s.OwnHeat, s.HeatSilent = ownHeat(y.Scale(100), f)
		}
	}
	// The fillings come before this part: the simulator holds one part at
	// a time.
	fillings := map[*formula.Part]*history.Filling{}
	for _, step := range p.Steps {
		if step.Uses != nil && step.Verb.Fills() {
			fillings[step.Uses] = p.sheet.Part(step.Uses).asFilling()
		}
	}
	if p.sheet.Traced != nil {
		s.Trace, s.TraceBaked = p.sheet.Traced(p.Part)
	}
	s.Filling = func(q *formula.Part) *history.Filling { return fillings[q] }
	return s
}

// ownHeat is a dough's heat at 26 C by the spans of its yeast, % of the
// flour, and its pace. why is the reason for silence.
func ownHeat(yeast, pace Interval) (q figure.Estimate, why string) {
	low, why1 := heat.OwnHeat(yeast.Lo, pace.Lo)
	mid, why2 := heat.OwnHeat(yeast.Mid(), pace.Mid())
	high, why3 := heat.OwnHeat(yeast.Hi, pace.Hi)
	if why := figure.FirstReason(why1, why2, why3); why != "" {
		return figure.Estimate{}, why
	}
	return figure.Estimate{Low: low.Low, Mid: mid.Mid, High: high.High}, ""
}

// asFilling gives the part when spread. Its own steps set its
// temperature; where they cannot be followed it is as warm as it
// can be.
func (p *Part) asFilling() *history.Filling {
	t := p.EndTemp()
	if t.Absent {
		t = figure.ValueOf(p.anyTemp())
	}
	return &history.Filling{
		Temp:     figure.Estimate{Low: t.Lo, Mid: t.Mid, High: t.Hi},
		MassG:    p.Grams(makeup.Mass),
		Material: p.Material(),
	}
}

// EndTemp is the part's mean temperature after its own steps.
func (p *Part) EndTemp() Value {
	record := p.Record()
	if len(record.Stages) == 0 {
		return p.startTemp()
	}
	last := &record.Stages[len(record.Stages)-1]
	if !last.Known {
		return Lacking(last)
	}
	return measuredValue(last.Mean, last.Measured)
}

// measuredValue is an estimate that originates from the baker's reading,
// if any.
func measuredValue(e figure.Estimate, measured bool) Value {
	v := e.Value()
	if measured {
		v.Origin = figure.Measured
	}
	return v
}

// Material is the part's thermal properties at its middle figures,
// computed once.
func (p *Part) Material() history.Material {
	if p.material == nil {
		m := p.makeMaterial()
		p.material = &m
	}
	return *p.material
}

func (p *Part) makeMaterial() history.Material {
	t := p.Thermal()
	if t.Density.Absent {
		return history.Material{}
	}
	m := history.Material{
		Known:        true,
		Conductivity: t.Conductivity.Mid,
		Density:      t.Density.Mid * 1000,
		SpecificHeat: t.SpecificHeat.Mid,
	}
	m.Diffusivity = m.Conductivity / (m.Density * m.SpecificHeat)
	m.Open = p.OpenShare()
	if total := p.Grams(makeup.Mass).Mid(); total > 0 {
		m.Butterfat = p.Grams(makeup.Butterfat).Mid() / total
	}
	m.Chocolate = p.Chocolate()
	m.Ice, m.OnsetC, m.FreezeSilent = p.Freezing()
	return m
}

// startTemp is the part's temperature as its steps begin: after the first
// mix, else that of its ingredients.
func (p *Part) startTemp() Value {
	for _, s := range p.Steps {
		if s.Verb.Mixes() {
			return p.MixTemp(s)
		}
	}
	return p.balance(nil)
}
