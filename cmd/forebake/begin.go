package main

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
)

// beginHouse is the word with which begin writes a house file.
const beginHouse = "house"

func beginCommand() *cobra.Command {
	var flour string
	var as *string
	cmd := &cobra.Command{
		Use:   "begin [FAMILY | house]",
		Short: "A starting formula of a family, or a starting house file",
		Long: `Writes a starting formula to standard output: its percentages stand in the
middle of what is published of the family, with the range and its source in
comments, and its steps are common practice. The formula checks clean as it
stands. Without a family the names are listed.

begin house writes a house file that asks for what must be measured in your
kitchen.`,
		Example: `  forebake begin "brioche moderate" --flour "2 kg" > brioche.hcl
  forebake begin house > house.hcl`,
		ValidArgsFunction: completeFamilies,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 1 {
				return fmt.Errorf("begin takes one family, in quotes where it is several words: "+
					"forebake begin %q", strings.Join(args, " "))
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			out := cmd.OutOrStdout()
			switch {
			case len(args) == 0 && flour != "":
				return errors.New("--flour is of a formula: forebake begin \"sweet dough\" " +
					"--flour \"2 kg\"")
			case len(args) == 0:
				if *as == asJSON {
					return page.BeginJSON(out, engine.Families(), "")
				}
				_, err := fmt.Fprintf(out, "The families: %s.\nforebake begin FAMILY writes a "+
					"formula, forebake begin house a house file.\n",
					strings.Join(engine.Families(), ", "))
				return err
			case args[0] == beginHouse && flour != "":
				return errors.New("--flour is of a formula, and a house file has none")
			case args[0] == beginHouse:
				return begun(out, engine.BeginHouse(), *as)
			}
			text, err := engine.Begin(args[0], flour)
			if err != nil {
				return err
			}
			return begun(out, text, *as)
		},
	}
	as = formFlag(cmd, "a beginning is printed as", asText, asJSON)
	cmd.Flags().StringVar(&flour, "flour", "", "`weight` of the flour (default 1 kg)")
	return cmd
}

// begun prints a starting text.
func begun(out io.Writer, text, as string) error {
	if as == asJSON {
		return page.BeginJSON(out, nil, text)
	}
	_, err := io.WriteString(out, text)
	return err
}

// completeFamilies completes the families and the word house.
func completeFamilies(_ *cobra.Command, args []string, word string) (
	[]cobra.Completion, cobra.ShellCompDirective) {
	if len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	return beginning(word, append(engine.Families(), beginHouse), nil),
		cobra.ShellCompDirectiveNoFileComp
}
