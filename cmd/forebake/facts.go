package main

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
)

func factsCommand() *cobra.Command {
	var as, name string
	var all, history, list bool
	cmd := &cobra.Command{
		Use: "facts FILE [name ...]",
		Example: `  forebake facts formulas/cinnamon-buns.hcl hydration_pct water_activity
  forebake facts formulas/overnight-brioche.hcl --history`,
		Short: "The computed figures of each part, with unit, error and source",
		Long: `Prints the main figures of every formula of a file and of its parts, a screen
each. Names choose others, with their error and source: forebake facts knots.hcl
hydration_pct water_activity. --all prints all, those of steps, ingredients and
the kitchen too. A single - reads standard input. --list needs no file: it
prints every figure, step, option, way, place, lever, unit and house key that
there is, with the figures that the rule files of this folder's house declare.`,
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
			if err := oneOf("--as: facts are printed as", as, figureForms); err != nil {
				return err
			}
			if history && (as == asCSV || all || len(args) > 1) {
				return errors.New("--history prints the whole timeline, as text or json: leave " +
					"out --all and the names of figures")
			}
			inputs, err := readInputs(cmd, args[:1], name)
			if err != nil {
				return err
			}
			if history {
				return printHistory(cmd, inputs, as)
			}
			e, out := engine.New(), cmd.OutOrStdout()
			rows, res := e.Facts(inputs, args[1:], all)
			switch {
			case len(res.Problems) > 0:
				return complain(cmd, res.Problems)
			case as == asJSON:
				return page.FactsJSON(out, &res.Run, rows)
			case as == asCSV:
				return page.FactsCSV(out, rows)
			}
			o := looks(cmd, out)
			if !all && len(args) == 1 {
				return page.FactsBrief(out, &res.Run, rows, o)
			}
			return page.FactsText(out, &res.Run, rows, all || len(args) > 1, o)
		},
	}
	wordFlag(cmd, &as, "as", asText, "output `format`, markdown with --list, csv without",
		factsForms)
	cmd.Flags().BoolVar(&list, "list", false,
		"every figure, step, option, way, place, lever, unit and house key there is, instead")
	cmd.Flags().BoolVar(&all, "all", false,
		"all figures with their sources, those of steps, ingredients and the kitchen too")
	cmd.Flags().BoolVar(&history, "history", false,
		"the timeline instead: step, clock, surroundings, core and mean temperature, rise")
	cmd.Flags().StringVar(&name, "name", "standard-input.hcl", "`name` of the file that - reads")
	return cmd
}

// printHistory prints the timeline of each formula.
func printHistory(cmd *cobra.Command, inputs []engine.Input, as string) error {
	out := cmd.OutOrStdout()
	rows, res := engine.New().History(inputs)
	switch {
	case len(res.Problems) > 0:
		return complain(cmd, res.Problems)
	case as == asJSON:
		return page.HistoryJSON(out, &res.Run, rows)
	}
	return page.History(out, &res.Run, rows, looks(cmd, out))
}

func printCatalogue(cmd *cobra.Command, as string) error {
	l, problems := engine.New().Load(".")
	if len(problems) > 0 {
		return complain(cmd, problems)
	}
	out, c := cmd.OutOrStdout(), engine.Catalogue(l)
	switch as {
	case asText:
		return page.CatalogueText(out, c, looks(cmd, out))
	case asJSON:
		return page.CatalogueJSON(out, c)
	case asMarkdown:
		return page.CatalogueMarkdown(out, c)
	}
	return oneOf("--as: the list is printed as", as, catalogueForms)
}
