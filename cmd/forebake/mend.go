package main

import (
	"errors"
	"os"
	"os/signal"
	"syscall"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/report"
)

func mendCommand() *cobra.Command {
	var write, taste bool
	var name, colour string
	var workers int
	cmd := &cobra.Command{
		Use:   "mend [path ...]",
		Short: "The smallest changes that clear the findings, proven by a second check",
		Long: `Shows, for each formula, the lines to change, what each change clears, and what is left
and why. Each change says how far to trust it: exact (computed by the rule), searched
(found and proven), or taste (yours to choose; made with --taste only).
--write changes the files in place: only the changed values, all files or none.

Exit status: 0 nothing at the failing level is left, 1 something is,
2 the input or the command could not be used, and nothing was written.`,
		RunE: func(cmd *cobra.Command, args []string) error {
			useColour, err := wantsColour(colour, cmd.OutOrStdout())
			if err != nil {
				return err
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
			e := engine.New()
			e.Workers = workers
			if e.Today, err = today(); err != nil {
				return err
			}
			res := e.Mend(inputs, taste)
			if len(res.Problems) > 0 {
				if write {
					defer cmd.PrintErrln("forebake: nothing was written")
				}
				return complain(cmd, res.Problems)
			}
			if write {
				// Writing takes a few milliseconds, and leaves no temporary file when it is not ended.
				signal.Ignore(os.Interrupt, syscall.SIGTERM)
				if err := res.Write(); err != nil {
					return err
				}
			}
			if err := report.Mend(cmd.OutOrStdout(), &res.Run().Run, res.Mendings,
				report.Options{Colour: useColour, Width: width(cmd.OutOrStdout())}); err != nil {
				return err
			}
			if res.Failed() {
				return exit(exitFound)
			}
			return nil
		},
	}
	flags := cmd.Flags()
	flags.BoolVar(&write, "write", false, "change the files in place")
	flags.BoolVar(&taste, "taste", false, "make the changes that are a matter of taste too")
	flags.StringVar(&name, "name", "standard-input.hcl", "`name` of the file that - reads")
	flags.StringVar(&colour, "color", "auto", "colour: auto, always, never")
	flags.IntVar(&workers, "workers", 0, "files mended at once (default: one a processor)")
	return cmd
}
