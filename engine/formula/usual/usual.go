// Package usual tells how long a step usually takes that names a sign and no time.
package usual

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/said/work"
	"forebake/engine/spelling"
)

// signTime is how long a wait for a sign usually is, min.
type signTime struct {
	waits  func(*formula.Step) bool
	sign   *spelling.Words
	usual  figure.Interval
	source string
}

var (
	needed  = spelling.Pattern(`(?i)until (?:it is |they are )?(?:needed|used?|wanted|required)`)
	relaxed = spelling.Pattern(`(?i)relax|slack|rested`)
	anySign = spelling.Pattern(``)
	rising  = spelling.Pattern(`(?i)doubl|bulk|risen|volume|puff|ready|light|jiggl`)
	tripled = spelling.Pattern(`(?i)tripl|three times`)
	working = spelling.Pattern(`(?i)bubbl|foam|froth|activ|spong|dom(?:ed|es)|peak`)
)

const usage = "trade usage, a judgement"

// warmestRoomC is above any room temperature, C.
const warmestRoomC = 30

// signTimes are tried in order. A sign without a row leaves the time open.
var signTimes = []signTime{
	{(*formula.Step).IsCold, needed, hours(0.5, 24), "used the same day: a judgement"},
	{(*formula.Step).IsCold, rising, hours(8, 18),
		"a dough over night in the cold, 8 to 18 h: memory"},
	{func(s *formula.Step) bool { return s.Verb.Soaks() }, anySign, hours(5.0/60, 20.0/60), usage},
	{func(s *formula.Step) bool { return s.Verb.Proofs() }, anySign, hours(0.75, 2.5), usage},
	{isRise, tripled, hours(3, 12),
		"first dough of a panettone 10 to 12 h: course notes (read); the rest a judgement"},
	{isRise, rising, hours(1, 3), "bulk of sweet doughs 1 to 3 h: trade pages (read)"},
	{isRise, working, hours(0.5, 12), usage},
	{isRise, relaxed, hours(10.0/60, 40.0/60), usage},
	{func(s *formula.Step) bool { return s.Verb.Mixes() }, anySign, hours(3.0/60, 15.0/60), usage},
	{func(s *formula.Step) bool { return s.Verb.Melts() }, anySign, hours(2.0/60, 10.0/60), usage},
	{func(s *formula.Step) bool { return s.Verb.Cooks() && s.Part.Kind != formula.Dough }, anySign,
		hours(1.0/60, 1), usage},
	{func(s *formula.Step) bool { return !s.Verb.Waits() && !s.Verb.Heats() }, anySign,
		hours(1.0/60, 15.0/60), usage},
	{func(s *formula.Step) bool {
		return s.Verb.Cools() && s.Stands() == nil && s.To.Set && s.To.Lo >= warmestRoomC
	}, anySign, hours(10.0/60, 1), "to lukewarm and no further: " + usage},
	{func(s *formula.Step) bool {
		return s.Verb.Cools() && s.Stands() == nil && s.Part.Kind.IsDough()
	}, anySign, hours(0.5, 2), usage},
	{func(s *formula.Step) bool {
		return s.Verb.Cools() && s.Stands() == nil
	}, anySign, hours(1, 4), usage},
}

// isRise reports whether the step is a warm rise before the proof.
func isRise(s *formula.Step) bool {
	return s.Verb.Usual == formula.InRoom && s.Verb.Heat == formula.NoHeat && !s.IsCold()
}

func hours(lo, hi float64) figure.Interval { return figure.Interval{Lo: 60 * lo, Hi: 60 * hi} }

// Time is how long a step usually takes whose words name a sign, min, and where that is from. ok is
// false for a sign that has no usual time.
func Time(s *formula.Step, words string) (span figure.Interval, source string, ok bool) {
	for _, t := range signTimes {
		if t.waits(s) && t.sign.MatchString(words) {
			return t.usual, t.source, true
		}
	}
	return figure.Interval{}, "", false
}

// Has reports whether work in words alone has its usual time. No dough is in hot fat.
func Has(s *formula.Step, text string) bool {
	return s.Verb.Mixes() || !work.Long(text) && (s.Verb.Melts() ||
		s.Verb.Cooks() && s.Part.Kind != formula.Dough)
}
