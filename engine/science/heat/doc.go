// Package heat holds the heat behaviour of foods: thermal properties from
// composition, surface coefficients of places and covers, and the temperature of a
// body that goes from place to place.
//
// It is called by whoever follows a part's temperature. It never reads an
// ingredient table or a formula, never asks what a temperature means for a dough
// or for safety, and never judges. SI units throughout, temperatures in C.
//
// The usual road:
//
//		p, ok := heat.PropertiesAt(composition, 15, 0.10)      // k, alpha, rho, cp
//		c, ok := heat.SurfaceCoefficient(heat.Fridge)          // Low, Typical, High
//		h := heat.InSeries(c.Typical, 0.18)                    // in a lidded box
//		var w heat.Walk                                        // keep it: it reuses its memory
//		ok = w.Start(heat.SlabOf(0.040), p.ConductivityWmK, p.DiffusivityM2s, 26)
//		ok = w.Stage(4, h)                                     // what holds from now on
//		s := w.At(3600)                                        // core, mean, surface an hour from now
//		t := w.TimeTo(heat.Core, 8, math.Inf(1))               // seconds, +Inf for never
//		f, ok := w.ScaleFor(heat.Core, 11, 6*3600)             // a probe read 11 C after 6 h
//		ok = w.SetScale(f)
//		s = w.Advance(14 * 3600)                               // now is 14 h later
//		ok = w.Restart(heat.SlabOf(0.006))                     // sheeted: even at the mean
//		ok = w.Stage(22, 9)                                    // and so on
//
//	  - Walk: chains of stages in slab, cylinder, ball, finite cylinder, brick; exact
//	  - Volumes: one direction, but two unlike faces, heat of fermentation, melting fat, a cap
//	  - Mixed: a stirred mass
//	  - Bake: core time and core temperature in an oven
//	  - PlankTime: a bound on freezing
//	  - SolidFat, LatentFactor: milk fat and cocoa butter
//	  - TimeError, TemperatureError: what to state; the model is 15-30 % off in time
//	  - SlabOf, TrayOf, BallOf, LogOf, BowlOf, BrickOf: bodies
package heat
