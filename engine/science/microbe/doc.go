// Package microbe holds the published figures by which food is kept
// from making people ill, and the plain arithmetic on them: whether a
// food needs time and temperature control, how much of its time a warm
// history has used up, what the codes ask of cooling and holding, how
// far heat kills.
//
// Packages history and facts call it. It knows nothing of formulas,
// parts or rules, it never says that a food is safe, and it never
// rounds towards safety: figures that cannot be read need control, use
// up every hour, kill nothing. Where sources part, the careful one is
// taken and the other named. Each figure carries its basis: read (seen
// in the source or a copy), memory (recalled, not seen), derived or
// computed (worked out from such figures).
package microbe

// readable tells whether tC can be a temperature of food or air, C.
func readable(tC float64) bool { return tC >= -273.15 && tC <= 1000 }
