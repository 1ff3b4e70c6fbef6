// Package microbe holds the published figures of food safety and plain
// arithmetic on them. It answers whether a food needs time and
// temperature control, and how much of its time a history has used. It
// gives the codes' limits on cooling and holding, and the kill by heat.
//
// Packages history and facts call it. It knows no formulas, parts or
// rules. It never says that a food is safe, and never rounds towards
// safety. Unreadable figures need control, use up every hour, and kill
// nothing. Where sources differ, the careful one is taken and the
// other named.
//
// Each figure carries its basis: read (seen in the source or a copy),
// memory (recalled, not seen), derived or computed (worked out from
// such figures).
package microbe

// readable reports whether tC can be a temperature of food or air, C.
func readable(tC float64) bool { return tC >= -273.15 && tC <= 1000 }
