package heat

import "math"

// LumpedBiot is the largest h (V/A)/k at which a body may be taken as even
// inside; the centre is then off by under 5 % of the step (Incropera ch. 5, memory).
const LumpedBiot = 0.1

// Mixed is a mass that is stirred or so thin that it has one temperature.
type Mixed struct {
	MassKg       float64 // above 0
	SpecificHeat float64 // J/(kg K), above 0
	AreaM2       float64 // cooled surface, 0 or more
	U            float64 // W/(m2 K), 0 or more: InSeries of inner coefficient, wall and outer coefficient
}

// rate is U A/(m cp) in 1/s, NaN for a bad Mixed.
func (m Mixed) rate() float64 {
	if !positive(m.MassKg) || !positive(m.SpecificHeat) || !(m.AreaM2 >= 0) || !(m.U >= 0) {
		return math.NaN()
	}
	return m.U * m.AreaM2 / (m.MassKg * m.SpecificHeat)
}

// After is the temperature, C, the given seconds after startC in surroundings at
// ambientC: exponential approach. The error is that of U (TimeError with Bi 0).
// NaN for a bad Mixed; times below 0 count as 0.
func (m Mixed) After(startC, ambientC, seconds float64) float64 {
	rate := m.rate()
	if !(seconds > 0) || rate == 0 {
		return startC + 0*rate
	}
	return ambientC + (startC-ambientC)*math.Exp(-rate*seconds)
}

// TimeTo is when it reaches targetC, s; +Inf when it never does, NaN for a bad Mixed.
func (m Mixed) TimeTo(startC, ambientC, targetC float64) float64 {
	rate := m.rate()
	ratio := (startC - ambientC) / (targetC - ambientC)
	switch {
	case math.IsNaN(rate):
		return rate
	case startC == targetC:
		return 0
	case !(ratio >= 1) || rate == 0:
		return math.Inf(1)
	}
	return math.Log(ratio) / rate
}
