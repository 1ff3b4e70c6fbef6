package main

import (
	"errors"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
)

func planCommand() *cobra.Command {
	var ask engine.PlanAsk
	var as *string
	cmd := &cobra.Command{
		Use:   "plan FILE ... (--ready 07:00 | --start 05:00)",
		Short: "The clock of every step, worked back from when all is to be ready",
		Long: `Gives every step of every part of the formulas its clock, so that all are ready
at one time. A part is ready, at its longest, when another takes it in; the oven
and the mixer have one thing at a time. Ranges stay ranges: after a proof of 90
min to 2 h it says from when on, and by when at the latest, the oven must be
free. Then what can be made a day before, where two pairs of hands are wanted,
and who is wanted by night, with the chill that would avoid it.

--ready holds the end, --start the first begin; both together are tried for
room. A clock of a later day is "07:00 +1d". With neither, the start that a
single formula gives holds. A step without a time cannot be planned; hand work
without one counts as none, and is named.`,
		Example: `  forebake plan formulas/cinnamon-buns.hcl formulas/braided-holiday-loaf.hcl ` +
			`--ready 07:00
  forebake plan formulas/overnight-brioche.hcl --start 15:00 --night "21:00 to 06:00"`,
		ValidArgsFunction: completeFormulas,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) == 0 {
				return errors.New("plan needs a formula file: forebake plan buns.hcl --ready 07:00")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			inputs, err := readInputs(cmd, args, "standard-input.hcl")
			if err != nil {
				return err
			}
			e, err := newEngine()
			if err != nil {
				return err
			}
			p, res, err := e.Plan(inputs, ask)
			switch {
			case err != nil:
				return err
			case len(res.Problems) > 0:
				return complain(cmd, res.Problems)
			}
			out := cmd.OutOrStdout()
			if *as == asJSON {
				return page.PlanJSON(out, &res.Run, p)
			}
			return page.Plan(out, &res.Run, p, looks(cmd, out))
		},
	}
	as = formFlag(cmd, "a plan is printed as", asText, asJSON)
	cmd.Flags().StringVar(&ask.Ready, "ready", "", "`clock` at which all is ready: 07:00")
	cmd.Flags().StringVar(&ask.Start, "start", "", "`clock` at which work begins: 05:00")
	cmd.Flags().StringVar(&ask.Night, "night", "",
		"the `hours` in which nobody is to be wanted (default \"22:00 to 05:00\")")
	return cmd
}
