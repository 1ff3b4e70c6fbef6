// Package heat holds the heat behaviour of foods: thermal properties
// from composition, surface coefficients of places and covers, and a
// body's temperature on its way through places.
//
// The package that follows a part's temperature calls it. It reads no
// ingredient table and no formula, does not judge a temperature, and
// imports figures only. SI units throughout, temperatures in C.
//
// The usual order of calls:
//
//		p, ok := heat.PropertiesAt(composition, 15, 0.10)      // k, alpha, rho, cp
//		c, ok := heat.SurfaceCoefficient(heat.Fridge)          // Low, Typical, High
//		h := heat.InSeries(c.Typical, 0.18)                    // in a lidded box
//		var w heat.Walk                                        // keep it: it reuses its memory
//		ok = w.Start(heat.SlabOf(0.040), p.ConductivityWmK, p.DiffusivityM2s, 26)
//		ok = w.Stage(4, h)                                     // surroundings from now on
//		s := w.At(3600)                                        // core, mean, surface in an hour
//		t := w.TimeTo(heat.Core, 8, math.Inf(1))               // seconds, +Inf for never
//		f, ok := w.ScaleFor(heat.Core, 11, 6*3600)             // a probe read 11 C after 6 h
//		ok = w.SetScale(f)
//		s = w.Advance(14 * 3600)                               // now is 14 h later
//		ok = w.Restart(heat.SlabOf(0.006))                     // sheeted: even at the mean
//		ok = w.Stage(22, 9)                                    // and so on
//
//	  - Walk: chains of stages in slab, cylinder, ball, finite cylinder, brick; exact
//	  - Volumes: one direction, but two unlike faces, own heat, and what package melt adds
//	  - Bath, Chilling: a tray, bowl or pot in ice and water
//	  - OnsetC, Ice: freezing and thawing, as curves for Volumes
//	  - OwnHeat, OwnExcess: heat of yeast, and the excess that it keeps up
//	  - SolidFat, ChocolateHeats: heat of melting of milk fat and chocolate
//	  - TimeError: relative error of a cooling time, 15-30 %
//	  - Models: source, error and valid range of each model with an error of its own
//	  - SlabOf, TrayOf, BallOf, LogOf, BowlOf, BrickOf, EllipsoidOf: bodies
package heat
