// Package microbe holds the published figures that keep food from
// making people ill, and the plain arithmetic on them: whether a food
// needs time and temperature control, how much of its time a warm
// history has used, what the codes ask of cooling and holding, how far
// heat kills.
//
// Packages history and facts call it. It knows no formulas, parts or
// rules. It never says that a food is safe, and never rounds towards
// safety: unreadable figures need control, use up every hour, kill
// nothing. Where sources differ, the careful one is taken and the
// other named.
//
// Each figure carries its basis: read (seen in the source or a copy),
// memory (recalled, not seen), derived or computed (worked out from
// such figures).
package microbe

// readable reports whether tC can be a temperature of food or air, C.
func readable(tC float64) bool { return tC >= -273.15 && tC <= 1000 }
