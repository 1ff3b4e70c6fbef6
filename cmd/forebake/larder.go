package main

import (
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/larder/page"
)

func larderCommand() *cobra.Command {
	var as *string
	cmd := &cobra.Command{
		Use: "larder [WORD]",
		Example: `  forebake larder butter
  forebake larder flour --as json`,
		Short: "What is known of an ingredient: make-up per 100 g, traits, allergens, source",
		Long: `Prints what the larder knows of an ingredient, with the ingredients of this
folder's house. A class lists its ingredients: forebake larder flour. Without a
word it lists the classes.`,
		ValidArgsFunction: completeIngredients,
		RunE: func(cmd *cobra.Command, args []string) error {
			l, problems := engine.New().Load(housePath(cmd))
			if len(problems) > 0 {
				return complain(cmd, problems)
			}
			answer, err := page.Of(l.House.Larder, strings.Join(args, " "))
			switch {
			case err != nil:
				return err
			case *as == asJSON:
				return page.JSON(cmd.OutOrStdout(), answer)
			}
			return page.Text(cmd.OutOrStdout(), answer)
		},
	}
	as = formFlag(cmd, "the larder is printed as", asText, asJSON)
	addHouse(cmd)
	return cmd
}

// completeIngredients completes the names of this folder's larder.
func completeIngredients(cmd *cobra.Command, args []string, word string) ([]cobra.Completion,
	cobra.ShellCompDirective) {
	l, problems := engine.New().Load(housePath(cmd))
	if len(problems) > 0 || len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	var names []string
	for _, it := range l.House.Larder.Items() {
		names = append(names, it.Name)
	}
	return beginning(word, names, nil), cobra.ShellCompDirectiveNoFileComp
}
