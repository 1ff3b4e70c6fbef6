package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/files"
	"forebake/engine/page"
	"forebake/engine/recipe"
	"forebake/engine/report"
	"forebake/engine/source"
)

func readCommand() *cobra.Command {
	var to string
	var as *string
	cmd := &cobra.Command{
		Use: "read RECIPE",
		Example: `  forebake read recipe.txt
  forebake read recipe.txt -o buns.hcl && forebake check buns.hcl`,
		Short: "Makes a formula file of a plain-text recipe, with comments where it is not sure",
		Long: `Reads a list of ingredients and a method in plain English, one a line, and
prints a formula file that a check accepts. Each sentence of the method stands
above its steps. What was not read stands as a comment at its place, and the
first line counts it. Where the text does not say, "?" or a usual value stands,
and a comment asks. A single - reads standard input. Read the comments before
you check the formula.`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) != 1 {
				return errors.New("read takes one plain-text file: forebake read recipe.txt; a " +
					"single - reads standard input")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			text, err := recipeText(cmd, args[0])
			if err != nil {
				return err
			}
			l, problems := engine.New().Load(housePath(cmd))
			if len(problems) > 0 {
				return complain(cmd, problems)
			}
			draft, err := recipe.Convert(text, l.House.FormulaOptions())
			if err != nil {
				return fmt.Errorf("%s: %w", source.Safe(args[0]), err)
			}
			out := cmd.OutOrStdout()
			if to != "" {
				err = writeNew(to, draft.Text)
			} else if *as == asText {
				_, err = io.WriteString(out, draft.Text)
			}
			if err != nil {
				return err
			}
			if *as == asJSON {
				var doubts []string
				for _, d := range draft.Doubts {
					doubts = append(doubts, d.Text)
				}
				return page.ReadJSON(out, draft.Text, doubts)
			}
			if n := len(draft.Doubts); n > 0 {
				fmt.Fprintf(cmd.ErrOrStderr(), "forebake: %s in the comments of the formula, %d "+
					"of what was not read: read them, and mend the lines\n",
					report.Count(n, "remark"),
					draft.NotRead)
			}
			return nil
		},
	}
	as = formFlag(cmd, "a recipe is printed as", asText, asJSON)
	cmd.Flags().StringVarP(&to, "output", "o", "",
		"new `file` to write the formula to, instead of standard output; never over a file")
	addHouse(cmd)
	return cmd
}

// recipeText reads the recipe that a path names, or standard input.
func recipeText(cmd *cobra.Command, path string) ([]byte, error) {
	kind := files.Kind{Name: "a plain-text recipe", Limit: recipe.MaxBytes}
	if path == "-" {
		text, err := io.ReadAll(io.LimitReader(cmd.InOrStdin(), recipe.MaxBytes+1))
		return text, err
	}
	text, err := files.Disk{}.Read(path, kind)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", source.Safe(path), err)
	}
	return text, nil
}

// writeNew writes a file that does not exist yet.
func writeNew(path, text string) error {
	if !strings.HasSuffix(path, ".hcl") {
		return fmt.Errorf("-o %s: a formula file ends in .hcl; write %s.hcl", path, path)
	}
	err := files.WriteNew(path, []byte(text))
	if errors.Is(err, os.ErrExist) {
		return fmt.Errorf("-o %s: this file is there already, and is not written over; name a new "+
			"one", path)
	}
	return err
}
