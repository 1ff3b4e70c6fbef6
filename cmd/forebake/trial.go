package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/layout"
	"forebake/engine/page"
	"forebake/engine/report"
	"forebake/engine/source"
)

func trialCommand() *cobra.Command {
	var as *string
	cmd := &cobra.Command{
		Use: "trial [pack ...]",
		Example: `  forebake trial
  forebake trial --house formulas/house.hcl ./house-rules`,
		Short: "Runs the trials inside the rule files, and counts what no trial tries",
		Long: `Runs the trials inside the rule files, and counts what no trial tries. Every
trial is judged twice: on intervals, as a check does, and at points within them
by the program that the expression library compiles. Where the two differ, the
trial fails.`,

		ValidArgsFunction: completePacks,
		RunE: func(cmd *cobra.Command, args []string) error {
			rep, problems := engine.New().Trials(housePath(cmd), args)
			if len(problems) > 0 {
				return complain(cmd, problems)
			}
			failed := len(rep.Unknown)
			for _, v := range rep.Verdicts {
				if !v.Passed {
					failed++
				}
			}
			if *as == asJSON {
				if err := page.TrialsJSON(cmd.OutOrStdout(), trialsOf(rep, failed)); err != nil {
					return err
				}
			} else {
				printTrials(cmd, rep, failed)
			}
			if failed > 0 || len(rep.NoFlagged)+len(rep.NoClear)+len(rep.Untouched) > 0 {
				return exit(exitFound)
			}
			return nil
		},
	}
	as = formFlag(cmd, "trials are printed as", asText, asJSON)
	addHouse(cmd)
	return cmd
}

// printTrials prints the trials that failed, and what no trial tries.
func printTrials(cmd *cobra.Command, rep engine.TrialReport, failed int) {
	out := cmd.OutOrStdout()
	for _, t := range rep.Unknown {
		fmt.Fprintf(
			out,
			"%s: %s is of a rule or caution that these packs do not hold: %s\n",
			t.Place,
			t.Title(),
			source.Safe(t.Rule+t.Caution),
		)
	}
	for _, v := range rep.Verdicts {
		if v.Got != v.Trial.Expect {
			fmt.Fprintf(
				out,
				"%s: %s expects %s, and %s%s answers %s\n",
				v.Trial.Place,
				v.Trial.Title(),
				v.Trial.Expect,
				v.Trial.Rule,
				v.Trial.Caution,
				v.Got,
			)
		}
		if v.Differ != "" {
			fmt.Fprintf(
				out,
				"%s: %s fails %s\n",
				v.Trial.Place,
				v.Trial.Title(),
				source.Safe(v.Differ),
			)
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
	sum := fmt.Sprintf("%s of %s with %s: %d failed; untouched: %s, %s.\n",
		report.Count(len(rep.Verdicts), "trial"), report.Count(rep.Rules, "rule"),
		report.Count(rep.Limits, "limit"), failed, report.Count(max(len(rep.NoFlagged),
			len(rep.NoClear)), "rule"), report.Count(len(rep.Untouched), "limit"))
	fmt.Fprint(out, layout.Fold(sum, looks(cmd, out).Columns()))
}

// trialsOf gives the trials for JSON.
func trialsOf(rep engine.TrialReport, failed int) page.Trials {
	out := page.Trials{Untouched: rep.Untouched, Rules: rep.Rules, Limits: rep.Limits,
		Failed: failed}
	for _, t := range rep.Unknown {
		out.Trials = append(out.Trials, page.Trial{Trial: t.Name, At: t.Place.String(),
			Of: t.Rule + t.Caution, Expect: t.Expect})
	}
	for _, v := range rep.Verdicts {
		t := v.Trial
		out.Trials = append(out.Trials, page.Trial{Trial: t.Title(), At: t.Place.String(),
			Of: t.Rule + t.Caution, Expect: t.Expect, Got: v.Got, Differ: v.Differ,
			Passed: v.Passed})
	}
	for _, r := range rep.NoFlagged {
		out.NoFlagged = append(out.NoFlagged, r.ID)
	}
	for _, r := range rep.NoClear {
		out.NoClear = append(out.NoClear, r.ID)
	}
	return out
}
