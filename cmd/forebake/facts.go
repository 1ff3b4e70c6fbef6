package main

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
	"forebake/engine/report"
)

func factsCommand() *cobra.Command {
	var as, name string
	var all, history, list bool
	cmd := &cobra.Command{
		Use:   "facts FILE [name ...]",
		Short: "The computed figures of each part, with unit, error and source",
		Long: `Prints the figures of every formula of a file and of its parts. Names choose some:
forebake facts knots.hcl hydration_pct water_activity. --all adds those of steps,
ingredients and the kitchen. A single - reads standard input. --list needs no file: it
prints every figure, step, option, way, place, unit and house key that there is, with the
figures that the rule files of this folder's house declare.`,
		ValidArgsFunction: completeFacts,
		Args: func(_ *cobra.Command, args []string) error {
			switch {
			case list && len(args) > 0:
				return fmt.Errorf("--list takes no file, and %q was given; it lists what a "+
					"formula, a rule and a house can speak of", args[0])
			case list && (all || history):
				return errors.New(
					"--list prints the whole catalogue: leave out --all and --history",
				)
			}
			if len(args) == 0 && !list {
				return errors.New("facts needs a formula file: forebake facts knots.hcl; names " +
					"of figures may follow it")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			if list {
				return printCatalogue(cmd, as)
			}
			if as != "text" && as != "json" {
				return fmt.Errorf("--as: facts are printed as text or json, not %q", as)
			}
			if history && (as != "text" || all || len(args) > 1) {
				return errors.New("--history prints the whole timeline as text: leave out --as, " +
					"--all and the names of figures")
			}
			inputs, err := readInputs(cmd, args[:1], name)
			if err != nil {
				return err
			}
			e, out := engine.New(), cmd.OutOrStdout()
			if history {
				rows, res := e.History(inputs)
				if len(res.Problems) > 0 {
					return complain(cmd, res.Problems)
				}
				return page.History(out, &res.Run, rows)
			}
			rows, res := e.Facts(inputs, args[1:], all)
			switch {
			case len(res.Problems) > 0:
				return complain(cmd, res.Problems)
			case as == "json":
				return page.FactsJSON(out, &res.Run, rows)
			}
			return page.FactsText(out, &res.Run, rows, all || len(args) > 1,
				report.Options{Width: width(out)})
		},
	}
	cmd.Flags().StringVar(&as, "as", "text", "output `format`: text, json; of --list also markdown")
	cmd.Flags().BoolVar(&list, "list", false,
		"every figure, step, option, way, place, unit and house key there is, instead")
	cmd.Flags().BoolVar(&all, "all", false,
		"also the figures of steps, ingredients and the kitchen")
	cmd.Flags().BoolVar(&history, "history", false,
		"the timeline instead: step, clock, surroundings, core and mean temperature, rise")
	cmd.Flags().StringVar(&name, "name", "standard-input.hcl", "`name` of the file that - reads")
	return cmd
}

func printCatalogue(cmd *cobra.Command, as string) error {
	l, problems := engine.New().Load(".")
	if len(problems) > 0 {
		return complain(cmd, problems)
	}
	out, c := cmd.OutOrStdout(), engine.Catalogue(l)
	switch as {
	case "text":
		return page.CatalogueText(out, c)
	case "json":
		return page.CatalogueJSON(out, c)
	case "markdown":
		return page.CatalogueMarkdown(out, c)
	}
	return fmt.Errorf("--as: the list is printed as text, json or markdown, not %q", as)
}
