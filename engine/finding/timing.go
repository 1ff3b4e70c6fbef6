package finding

import "time"

// RuleTime is one rule's time over a whole run, summed over workers.
type RuleTime struct {
	Rule     string // "cautions" for all of them
	Subjects int    // that it looked at
	Spent    time.Duration
}
