package main

import (
	"errors"
	"fmt"
	"os"
	"os/signal"
	"syscall"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
)

// fewFiles are searched before a person wonders whether
// anything happens.
const fewFiles = 4

// asPatch prints mends as a patch.
const asPatch = "patch"

func mendCommand() *cobra.Command {
	var write, taste bool
	var name string
	var as *string
	var workers int
	cmd := &cobra.Command{
		Use: "mend [path ...]",
		Example: `  forebake mend formulas/second-draft.hcl
  forebake mend --as patch formulas/second-draft.hcl | git apply`,
		Short: "The smallest changes that clear the findings, proven by a second check",
		Long: `Shows, for each formula, the lines to change, what each change clears, and what
is left and why. Each change says how far to trust it: exact (computed by the
rule), searched (found and proven), or taste (yours to choose; made with --taste
only). What you want to reach is never changed: makes, keep, to, core, measured.

--write changes the files in place, all files or none: the changed values, and
what a change puts in. That may be an ingredient (salt that is missing), a key
(core = "90 C"), or with --taste a step (a filling that is cooled). Comments
stay as they are; where one stands on a changed line, the report says so. --as
patch prints a unified diff for git apply (with -R the undo), --as json the
changes as edits of bytes.

Exit status: 0 nothing at the failing level is left, 1 something is,
2 the input or the command could not be used, and nothing was written.`,
		RunE: func(cmd *cobra.Command, args []string) error {
			if *as == asPatch && write {
				return errors.New("--write changes the files itself; a patch changes none: leave " +
					"one of the two out")
			}
			inputs, err := readInputs(cmd, args, name)
			if err != nil {
				return err
			}
			for _, in := range inputs {
				if write && in.Path == "" && in.Fault == "" {
					return errors.New("--write cannot write to standard input; name the file")
				}
			}
			e, err := newEngine()
			if err != nil {
				return err
			}
			e.Workers = workers
			if isTerminal(cmd.ErrOrStderr()) && len(inputs) > fewFiles {
				e.Progress = func(done, of int) { printProgress(cmd, done, of) }
			}
			return giveMended(cmd, e.Mend(inputs, taste), *as, write)
		},
	}
	flags := cmd.Flags()
	flags.BoolVar(&write, "write", false, "change the files in place")
	flags.BoolVar(&taste, "taste", false, "make the changes that are a matter of taste too")
	as = formFlag(cmd, "mends are printed as", asText, asJSON, asPatch)
	flags.StringVar(&name, "name", "standard-input.hcl", "`name` of the file that - reads")
	flags.IntVar(&workers, "workers", 0, "files mended at once (default: one a processor)")
	return cmd
}

// giveMended prints the mends, and writes them if asked to. Nothing is
// written that cannot be printed.
func giveMended(cmd *cobra.Command, res *engine.MendResult, as string, write bool) error {
	out := cmd.OutOrStdout()
	if len(res.Problems) > 0 {
		if write {
			defer cmd.PrintErrln("forebake: nothing was written")
		}
		return complain(cmd, res.Problems)
	}
	if as == asPatch {
		if _, err := out.Write(res.Patch()); err != nil {
			return err
		}
		return status(res)
	}
	if as == asJSON { // it says what was written, so it is printed behind the writing
		if write {
			if err := writeFiles(res); err != nil {
				return err
			}
		}
		if err := page.MendJSON(out, &res.Run(write).Run, res.Mendings, res.Edits); err != nil {
			return err
		}
		return status(res)
	}
	if err := page.Mend(out, &res.Run(write).Run, res.Mendings, looks(cmd, out)); err != nil {
		return err
	}
	if write {
		if err := writeFiles(res); err != nil {
			return err
		}
		_ = page.Written(out, res.Mendings) // the files are written all the same
	}
	return status(res)
}

// printProgress prints how many files were searched, in a line
// that disappears.
func printProgress(cmd *cobra.Command, done, of int) {
	end := ""
	if done == of {
		end = "\r\x1b[K"
	}
	fmt.Fprintf(cmd.ErrOrStderr(), "\r%d of %d files searched%s", done, of, end)
}

// writeFiles writes what a verb changes.
func writeFiles(res interface{ Write() error }) error {
	// Writing takes milliseconds, and finished it leaves no
	// temporary file.
	signal.Ignore(os.Interrupt, syscall.SIGTERM)
	return res.Write()
}

// status is the exit status for what a change leaves or brings.
func status(res interface{ Failed() bool }) error {
	if res.Failed() {
		return exit(exitFound)
	}
	return nil
}
