package main

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"forebake/engine/spelling"
)

func manCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "man [VERB]",
		Short: "Prints a man page, of the program or of one verb",
		Long: `Prints a page for man: of the program, which names all verbs, or of one verb.
man -l - reads it, and a folder of man pages keeps it.`,
		Example: `  forebake man check | man -l -
  forebake man > ~/.local/share/man/man1/forebake.1`,
		RunE: func(cmd *cobra.Command, args []string) error {
			of := cmd.Root()
			if len(args) > 0 {
				var err error
				if of, err = verbNamed(cmd.Root(), args); err != nil {
					return err
				}
			}
			_, err := io.WriteString(cmd.OutOrStdout(), manPage(of))
			return err
		},
	}
}

// verbNamed finds a verb by its words.
func verbNamed(root *cobra.Command, words []string) (*cobra.Command, error) {
	found, rest, err := root.Find(words)
	if err != nil || len(rest) > 0 || found == root {
		return nil, errors.New(unknownVerb(root, words[0]))
	}
	return found, nil
}

// helpCommand is the library's, but an unknown verb is an error.
func helpCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "help [VERB]",
		Short: "Help about a verb",
		RunE: func(cmd *cobra.Command, args []string) error {
			of := cmd.Root()
			if len(args) > 0 {
				var err error
				if of, err = verbNamed(cmd.Root(), args); err != nil {
					return err
				}
			}
			return of.Help()
		},
	}
}

// unknownVerb says that there is no such verb, and names the nearest.
func unknownVerb(cmd *cobra.Command, word string) string {
	var names []string
	for _, c := range cmd.Commands() {
		if c.IsAvailableCommand() {
			names = append(names, c.Name())
		}
	}
	near := ""
	if list := spelling.Nearest(word, names, 1); len(list) > 0 {
		near = fmt.Sprintf("nearest is %s; ", list[0])
	}
	return fmt.Sprintf("no command %q; %sthe commands are %s", word, near,
		strings.Join(names, ", "))
}

// nearestFlag names the flag nearest to an unknown one, or says where
// to find all. It is "" for another error.
func nearestFlag(cmd *cobra.Command, text string) string {
	word, is := strings.CutPrefix(text, "unknown flag: --")
	if !is {
		return ""
	}
	var names []string
	add := func(f *pflag.Flag) { names = append(names, f.Name) }
	cmd.Flags().VisitAll(add)
	cmd.InheritedFlags().VisitAll(add)
	if list := spelling.Nearest(word, names, 1); len(list) > 0 {
		return "; nearest is --" + list[0]
	}
	return "; " + cmd.CommandPath() + " --help lists them"
}
