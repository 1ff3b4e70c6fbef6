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
	cmd := &cobra.Command{
		Use:   "why RULE",
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
			return page.Why(cmd.OutOrStdout(), card)
		},
	}
	addHouse(cmd)
	return cmd
}

func packsCommand() *cobra.Command {
	var writeTo, as string
	cmd := &cobra.Command{
		Use: "packs",
		Short: "The rules in force: from which pack, at which level, with which limits, and who " +
			"set them",
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 0 {
				return fmt.Errorf("packs takes no name, and %q was given; it lists the rules of "+
					"this folder's house, or of that which --house names", args[0])
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, _ []string) error {
			if as != "text" && as != "markdown" {
				return fmt.Errorf("--as: packs are printed as text or markdown, not %q", as)
			}
			if cmd.Flags().Changed("write") {
				return writePacks(cmd, writeTo)
			}
			l, problems := engine.New().Load(housePath(cmd))
			if len(problems) > 0 {
				return complain(cmd, problems)
			}
			if as == "markdown" {
				return page.RulebookMarkdown(cmd.OutOrStdout(), engine.Rulebook(l))
			}
			return page.RulebookText(cmd.OutOrStdout(), engine.Rulebook(l))
		},
	}
	cmd.Flags().StringVar(&as, "as", "text",
		"output `format`: text, or markdown with what every rule says and why")
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
