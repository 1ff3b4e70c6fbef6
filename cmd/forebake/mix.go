package main

import (
	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
)

func mixCommand() *cobra.Command {
	var name, formula string
	cmd := &cobra.Command{
		Use:   "mix FILE",
		Short: "How warm to pour the water or milk, and how much of it as ice",
		Long: `Says for each mix how warm its liquid is poured, so that the dough ends at the
temperature that the formula wants, and how much ice goes in where no liquid is
cold enough. What you read in the kitchen now is given by flags; the rest is as
the formula and the house file say it. The answer is a heat balance of all that
goes in, with the warming by the mixer; the trade's factor method stands below
it as a check.

With --tap, ice is counted for water as warm as your tap gives it.`,
		Example: `  forebake mix brioche.hcl --room 27C --flour 24C
  forebake mix buns.hcl --tap 22C --to 25C --as json`,
		ValidArgsFunction: completeFormulas,
		Args:              oneFormula("--room 27C"),
	}
	texts := make([]string, len(engine.KitchenReadings))
	for i, r := range engine.KitchenReadings {
		cmd.Flags().StringVar(&texts[i], r.Name, "", "`temperature`: "+r.Means)
	}
	as := formFlag(cmd, "a mix is printed as", asText, asJSON)
	cmd.Flags().StringVar(&formula, "formula", "", "`name` of one formula of the file")
	cmd.Flags().StringVar(&name, "name", "standard-input.hcl", "`name` of the file that - reads")
	cmd.RunE = func(cmd *cobra.Command, args []string) error {
		var now engine.KitchenNow
		for i := range engine.KitchenReadings {
			if r := &engine.KitchenReadings[i]; cmd.Flags().Changed(r.Name) {
				if err := r.Read(&now, texts[i]); err != nil {
					return err
				}
			}
		}
		in, err := oneInput(cmd, args[0], name)
		if err != nil {
			return err
		}
		e, err := newEngine()
		if err != nil {
			return err
		}
		list, res := e.Mix(in, formula, now)
		out := cmd.OutOrStdout()
		switch {
		case len(res.Problems) > 0:
			return complain(cmd, res.Problems)
		case *as == asJSON:
			return page.MixJSON(out, &res.Run, list)
		}
		return page.Mix(out, &res.Run, list, looks(cmd, out))
	}
	return cmd
}
