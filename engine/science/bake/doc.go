// Package bake models the bake of a dough: its core's time to a
// temperature in an oven, and its temperature at a time. It is fitted
// to published bakes (bake-times.csv).
//
//	oven := bake.Oven{TempC: 190}
//	one, why := oven.Bake(bake.Piece{...}) // why is the reason for silence
//	e, why := one.MinutesTo(92)            // Low, Mid, High
//
// Bodies, radiation and the root search are those of package heat.
package bake
