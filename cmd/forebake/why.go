package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
	"forebake/engine/report"
	"forebake/engine/source"
)

func whyCommand() *cobra.Command {
	var as *string
	cmd := &cobra.Command{
		Use: "why RULE",
		Example: `  forebake why salt-high
  forebake why --house formulas/house.hcl salt-low`,
		Short: "What a rule says, where its numbers come from, and how a house changes it",

		ValidArgsFunction: completeRules,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) != 1 {
				return errors.New("why takes the name of one rule: forebake why salt-low; the " +
					"packs verb lists them")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			l, problems := engine.New().Load(housePath(cmd))
			if len(problems) > 0 {
				return complain(cmd, problems)
			}
			card, err := engine.Card(l, args[0])
			if err != nil {
				return err
			}
			if *as == asJSON {
				return page.WhyJSON(cmd.OutOrStdout(), card)
			}
			return page.Why(cmd.OutOrStdout(), card, looks(cmd, cmd.OutOrStdout()))
		},
	}
	as = formFlag(cmd, "a rule is printed as", asText, asJSON)
	addHouse(cmd)
	return cmd
}

// The forms of what is no report of a run.
const (
	asText     = "text"
	asJSON     = "json"
	asMarkdown = "markdown"
	asCSV      = "csv"
)

var (
	figureForms    = []string{asText, asJSON, asCSV}
	factsForms     = []string{asText, asJSON, asCSV, asMarkdown}
	catalogueForms = []string{asText, asJSON, asMarkdown}
)

func packsCommand() *cobra.Command {
	var writeTo string
	var as *string
	cmd := &cobra.Command{
		Use: "packs",
		Example: `  forebake packs
  forebake packs --as json --house formulas/house.hcl`,
		Short: "The rules in force: each with its pack, level and limits, and who set them",
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 0 {
				return fmt.Errorf("packs takes no name, and %q was given; it lists the rules of "+
					"this folder's house, or of that which --house names", args[0])
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, _ []string) error {
			if cmd.Flags().Changed("write") {
				return writePacks(cmd, writeTo)
			}
			l, problems := engine.New().Load(housePath(cmd))
			if len(problems) > 0 {
				return complain(cmd, problems)
			}
			switch *as {
			case asMarkdown:
				return page.RulebookMarkdown(cmd.OutOrStdout(), engine.Rulebook(l))
			case asJSON:
				return page.RulebookJSON(cmd.OutOrStdout(), engine.Rulebook(l))
			}
			return page.RulebookText(cmd.OutOrStdout(), engine.Rulebook(l),
				looks(cmd, cmd.OutOrStdout()))
		},
	}
	as = formFlag(cmd, "packs are printed as", asText, asJSON, asMarkdown)
	addHouse(cmd)
	cmd.Flags().StringVar(&writeTo, "write", "",
		"`folder` to write the shipped packs into, to be edited there")
	return cmd
}

// writePacks writes the shipped packs and says how a house names them.
func writePacks(cmd *cobra.Command, dir string) error {
	if dir == "" {
		return errors.New("--write needs a folder: forebake packs --write house-rules")
	}
	paths, err := engine.WritePacks(dir)
	if err != nil {
		return err
	}
	var b strings.Builder
	for _, p := range paths {
		fmt.Fprintf(&b, "%s\n", source.Safe(p))
	}
	fmt.Fprintf(&b,
		"\n%s written. Keep those that you edit, take the others away, and name them all in "+
			"house.hcl, for this folder so:\n\n  packs = [\n", report.Count(len(paths), "pack"))
	for _, name := range engine.PackNames(paths) {
		fmt.Fprintf(&b, "    %q,\n", source.Safe(name))
	}
	b.WriteString("  ]\n\nforebake trial runs the trials in them. The cautions are no pack: they " +
		"stay as they are.\n")
	_, err = cmd.OutOrStdout().Write([]byte(b.String()))
	return err
}
