package history

import "math"

// DownTo gives the time at which a course falls to a temperature, h. Between two
// samples the excess over the surroundings decays exponentially.
func DownTo(trace []Sample, ambientC, targetC float64) (hours float64, met bool) {
	for i, b := range trace {
		switch {
		case b.Core > targetC:
		case i == 0:
			return 0, true
		default:
			a := trace[i-1]
			share := (a.Core - targetC) / (a.Core - b.Core)
			if above := b.Core - ambientC; above > 0 {
				share = math.Log(
					(a.Core-ambientC)/(targetC-ambientC),
				) / math.Log(
					(a.Core-ambientC)/above,
				)
			}
			return a.Hours + share*(b.Hours-a.Hours), true
		}
	}
	return 0, false
}
