package page

import (
	"fmt"
	"io"
	"strings"
	"time"

	"forebake/engine/finding"
	"forebake/engine/layout"
	"forebake/engine/report"
)

// timesShown is the number of rules that Times names; the others are
// one row.
const timesShown = 12

// Times prints the time of each rule of a run, the longest first.
func Times(w io.Writer, list []finding.RuleTime, o report.Options) error {
	var all time.Duration
	for _, t := range list {
		all += t.Spent
	}
	var b strings.Builder
	b.WriteString("Time by rule, over all workers. A figure is charged to the first rule that " +
		"asks for it.\n\n        ms   share  subjects  rule\n")
	line := func(t finding.RuleTime) {
		share := 0.0
		if all > 0 {
			share = 100 * float64(t.Spent) / float64(all)
		}
		fmt.Fprintf(&b, "  %8.3f  %4.1f %%  %8d  %s\n", float64(t.Spent)/float64(time.Millisecond),
			share, t.Subjects, t.Rule)
	}
	shown := min(timesShown, len(list))
	for _, t := range list[:shown] {
		line(t)
	}
	if rest := list[shown:]; len(rest) > 0 {
		sum := finding.RuleTime{Rule: "(" + report.Count(len(rest), "other") + ")"}
		for _, t := range rest {
			sum.Spent += t.Spent
			sum.Subjects += t.Subjects
		}
		line(sum)
	}
	fmt.Fprintf(&b, "  %8.3f         in all, without reading the files\n",
		float64(all)/float64(time.Millisecond))
	_, err := io.WriteString(w, layout.Fold(b.String(), o.Columns()))
	return err
}
