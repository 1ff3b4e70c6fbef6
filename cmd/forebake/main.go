// Forebake checks enriched-dough formulas on paper, before the
// test bake.
package main

import (
	"errors"
	"fmt"
	"io"
	"math"
	"os"
	"runtime"
	"runtime/debug"
	"runtime/metrics"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine/layout"
	"forebake/engine/source"
)

// Exit statuses.
const (
	exitClear  = 0 // nothing at the failing level
	exitFound  = 1 // findings at or above it, or a failed trial
	exitUnused = 2 // the input or the command could not be used
)

// exit ends a verb with a status after its output.
type exit int

func (e exit) Error() string { return fmt.Sprintf("exit status %d", int(e)) }

func main() {
	tuneMemory()
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// firstCollection is the heap's growth before the first garbage
// collection, laterOnes before each later one where the live heap
// leaves room, bytes. leastGrowth is the least growth between two
// collections, %.
const firstCollection, laterOnes, leastGrowth = 208 << 20, 176 << 20, 40

// whileSmall is the most memory of the program while less than laterOnes
// is live, bytes.
const whileSmall = 240 << 20

// tuneMemory delays garbage collection. A run is short, and most of its
// memory is syntax trees (measured: half the time of the default). A
// large heap grows by a share of what is live, so that it does not
// collect all the time. The user's own settings win.
func tuneMemory() {
	if os.Getenv("GOGC") != "" || os.Getenv("GOMEMLIMIT") != "" {
		return
	}
	debug.SetGCPercent(-1)
	debug.SetMemoryLimit(firstCollection)
	afterCollection()
}

// afterCollection sets, after each collection, where the next begins.
func afterCollection() {
	// The next collection collects this, which shows that it
	// took place.
	runtime.AddCleanup(new([64]byte), func(struct{}) {
		live := []metrics.Sample{{Name: "/gc/heap/live:bytes"}}
		metrics.Read(live)
		room := laterOnes - float64(live[0].Value.Uint64())
		growth := 100 * room / max(1, float64(live[0].Value.Uint64()))
		debug.SetGCPercent(int(max(leastGrowth, min(growth, 1000))))
		// A growth that was set for a smaller heap holds until this runs,
		// which a busy machine puts off: a limit bounds it meanwhile.
		limit := int64(math.MaxInt64)
		if room > 0 {
			limit = whileSmall
		}
		debug.SetMemoryLimit(limit)
		afterCollection()
	}, struct{}{})
}

func run(args []string, in io.Reader, out, errs io.Writer) int {
	root := &cobra.Command{
		Use: "forebake",
		Short: "Finds the faults of an enriched-dough formula on paper, " +
			"before the test bake",
		SilenceUsage:  true,
		SilenceErrors: true,
		Args:          cobra.ArbitraryArgs,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) > 0 {
				return fmt.Errorf("%s", unknownVerb(cmd, args[0]))
			}
			return cmd.Help()
		},
	}
	root.SetFlagErrorFunc(func(cmd *cobra.Command, err error) error {
		text, _, _ := strings.Cut(err.Error(), ": strconv.") // the rest is about the parser
		return errors.New(text + nearestFlag(cmd, text))
	})
	sayVersion(root)
	help := root.HelpFunc()
	root.SetHelpFunc(func(cmd *cobra.Command, args []string) {
		var text strings.Builder
		cmd.SetOut(&text)
		help(cmd, args)
		cmd.SetOut(nil) // the root's, as before
		if cmd == root {
			cmd.SetOut(out)
		}
		// A write error shows in the exit of the next write; help has
		// no other.
		_, _ = io.WriteString(out, layout.Fold(text.String(), widthOf(out).Columns()))
	})
	root.SetHelpCommand(helpCommand())
	colourFlag(root)
	root.SetArgs(args)
	root.SetIn(in)
	root.SetOut(out)
	root.SetErr(errs)
	check, mend, compare := checkCommand(), mendCommand(), compareCommand()
	facts, why, packs, trial := factsCommand(), whyCommand(), packsCommand(), trialCommand()
	mend.ValidArgsFunction, compare.ValidArgsFunction = completeFormulas, completeSides
	root.AddCommand(
		check,
		cautionsCommand(),
		facts,
		why,
		packs,
		trial,
		mend,
		compare,
		larderCommand(),
		readCommand(),
		beginCommand(),
		costCommand(),
		scaleCommand(),
		mixCommand(),
		editorCommand(),
		manCommand(),
		completionCommand(),
		planCommand(),
		sheetCommand(),
		logCommand(),
	)
	err := root.Execute()
	var status exit
	switch {
	case err == nil:
		return exitClear
	case errors.As(err, &status):
		return int(status)
	}
	fmt.Fprintf(errs, "forebake: %s\n", source.Safe(err.Error()))
	return exitUnused
}

// complain prints problems, one a line, each with its lines to paste.
// It gives the status for unusable input.
func complain(cmd *cobra.Command, problems source.Problems) error {
	for _, p := range problems {
		fmt.Fprintln(cmd.ErrOrStderr(), p)
		for _, line := range strings.Split(p.Paste, "\n") {
			if line != "" {
				fmt.Fprintln(cmd.ErrOrStderr(), "    "+line)
			}
		}
	}
	return exit(exitUnused)
}
