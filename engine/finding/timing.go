package finding

import "time"

// RuleTime is the time that one rule took over a whole run, summed over
// the workers.
type RuleTime struct {
	Rule     string // "cautions" for all of them
	Subjects int    // that it looked at
	Spent    time.Duration
}
