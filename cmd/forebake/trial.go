package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/report"
	"forebake/engine/source"
)

func trialCommand() *cobra.Command {
	cmd := &cobra.Command{
		Use:   "trial [pack ...]",
		Short: "Runs the trials inside the rule files, and counts what no trial tries",

		ValidArgsFunction: completePacks,
		RunE: func(cmd *cobra.Command, args []string) error {
			rep, problems := engine.New().Trials(housePath(cmd), args)
			if len(problems) > 0 {
				return complain(cmd, problems)
			}
			out := cmd.OutOrStdout()
			failed := len(rep.Unknown)
			for _, t := range rep.Unknown {
				fmt.Fprintf(out, "%s: trial %q is of a rule or caution that these packs do not "+
					"hold: %s\n", t.Place, t.Name, source.Safe(t.Rule+t.Caution))
			}
			for _, v := range rep.Verdicts {
				if !v.Passed {
					failed++
					fmt.Fprintf(out, "%s: trial %q expects %s, and %s%s answers %s\n",
						v.Trial.Place, v.Trial.Name, v.Trial.Expect, v.Trial.Rule, v.Trial.Caution, v.Got)
				}
			}
			for _, r := range rep.NoFlagged {
				fmt.Fprintf(out, "%s: no trial shows %s flagged\n", r.Place, r.ID)
			}
			for _, r := range rep.NoClear {
				fmt.Fprintf(out, "%s: no trial shows %s clear\n", r.Place, r.ID)
			}
			for _, limit := range rep.Untouched {
				fmt.Fprintf(out, "no trial turns at the limit: %s\n", limit)
			}
			fmt.Fprintf(out, "%s of %s with %s: %d failed; untouched: %s, %s.\n",
				report.Count(len(rep.Verdicts), "trial"), report.Count(rep.Rules, "rule"),
				report.Count(rep.Limits, "limit"), failed, report.Count(max(len(rep.NoFlagged),
					len(rep.NoClear)), "rule"), report.Count(len(rep.Untouched), "limit"))
			if failed > 0 || len(rep.NoFlagged)+len(rep.NoClear)+len(rep.Untouched) > 0 {
				return exit(exitFound)
			}
			return nil
		},
	}
	addHouse(cmd)
	return cmd
}
