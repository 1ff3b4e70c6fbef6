package main

import (
	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
	"forebake/engine/report"
)

func cautionsCommand() *cobra.Command {
	var name string
	var as *string
	cmd := &cobra.Command{
		Use: "cautions [path ...]",
		Example: `  forebake cautions formulas/custard-buns.hcl
  forebake cautions formulas`,
		Short: "What can hurt someone in a formula, whole and with sources",
		Long: `Prints every caution of formula files, or of all formulas of a folder (this one
when none is named), with its whole text, the formulas that it is for and its
source. check prints them in one line each. A single - reads a formula from
standard input.`,
		ValidArgsFunction: completeFormulas,
		RunE: func(cmd *cobra.Command, args []string) error {
			inputs, err := readInputs(cmd, args, name)
			if err != nil {
				return err
			}
			res := engine.New().Check(inputs)
			out := cmd.OutOrStdout()
			switch {
			case *as == asJSON:
				err = page.CautionsJSON(out, &res.Run)
			case len(res.Formulas) > 0:
				err = report.WholeCautions(out, &res.Run, looks(cmd, out))
			}
			if err != nil {
				return err
			}
			if len(res.Problems) > 0 {
				return complain(cmd, res.Problems)
			}
			return nil
		},
	}
	as = formFlag(cmd, "cautions are printed as", asText, asJSON)
	cmd.Flags().StringVar(&name, "name", "standard-input.hcl", "`name` of the file that - reads")
	return cmd
}
