package main

import (
	"fmt"
	"os"

	"github.com/spf13/cobra"

	"forebake/engine/editor"
)

func editorCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "editor",
		Short: "Answers a text editor while a formula is being typed",
		Long: `Serves the Language Server Protocol 3.17 over standard input and output:
findings, cautions, figures under the pointer, completion, and mends as edits. A
text editor starts it by itself; forebake editor typed in a terminal waits for
one.

It writes no file. It ends with 0 after the requests shutdown and exit, else
with 1.`,
		Example: `  forebake editor
  nvim --cmd 'lua vim.lsp.config.forebake = { cmd = { "forebake", "editor" } }' rolls.hcl`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) > 0 {
				return fmt.Errorf("editor takes no name, and %q was given; the text editor sends "+
					"the files", args[0])
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, _ []string) error {
			day, err := today()
			if err != nil {
				return err
			}
			s := editor.New()
			s.Today = day
			if !s.Serve(cmd.Context(), os.Stdin, os.Stdout) {
				return exit(exitFound)
			}
			return nil
		},
	}
}
