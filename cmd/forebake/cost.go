package main

import (
	"github.com/spf13/cobra"

	"forebake/engine/page"
)

func costCommand() *cobra.Command {
	var name, formula string
	var as *string
	cmd := &cobra.Command{
		Use:   "cost FILE",
		Short: "Cost per piece from the house's prices, and the ingredients for a label",
		Long: `Adds up what the ingredients cost by the prices of the house file, for the batch
and for a piece, and names what has no price. Prices stand in house.hcl:
prices = { "sugar" = "1.10 per kg", "egg" = "0.30 per piece" }, or price = ...
in an ingredient block.

Below it stand the ingredients for a label in descending order of weight, the
allergens marked, for the law that the house names by code, else for each. What
is assumed of the water that the bake loses is said.`,
		Example: `  forebake cost knots.hcl
  forebake cost knots.hcl --as json`,
		ValidArgsFunction: completeFormulas,
		Args:              oneFormula("--as json"),
		RunE: func(cmd *cobra.Command, args []string) error {
			in, err := oneInput(cmd, args[0], name)
			if err != nil {
				return err
			}
			e, err := newEngine()
			if err != nil {
				return err
			}
			list, res := e.Cost(in, formula)
			out := cmd.OutOrStdout()
			switch {
			case len(res.Problems) > 0:
				return complain(cmd, res.Problems)
			case *as == asJSON:
				return page.CostJSON(out, &res.Run, list)
			}
			return page.Cost(out, &res.Run, list, looks(cmd, out))
		},
	}
	as = formFlag(cmd, "a cost is printed as", asText, asJSON)
	cmd.Flags().StringVar(&formula, "formula", "", "`name` of one formula of the file")
	cmd.Flags().StringVar(&name, "name", "standard-input.hcl", "`name` of the file that - reads")
	return cmd
}
