package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
	"forebake/engine/source"
)

// sizeFlags are the flags that name a size.
type sizeFlags struct{ pieces, tins, flour, total, loss string }

func scaleCommand() *cobra.Command {
	var size sizeFlags
	var write bool
	var name, formula string
	var as *string
	cmd := &cobra.Command{
		Use:   "scale FILE",
		Short: "The formula at another size, checked at that size",
		Long: `Writes the formula at another size to standard output: amounts, makes, and the
numbers of pieces, tins and trays change; percentages, times and thicknesses,
comments and order stay. Weights are rounded to the step of the kitchen's scale.
The report goes to standard error: first what is new at that size, then the lots
by bowl, bench and oven, then what to weigh. A reading of the whole batch, such
as "11 C after 6 h" in its tub, is kept as a note: it was taken of another
batch, and is not believed for this one.

--loss is what is lost in the bowl and on the bench: the batch is made larger by
it. Without it, the formula's own surplus stays. --write changes the file in
place, and prints the report to standard output. --as json prints one object,
the report and the text of the file.

Exit status: 0 nothing new at the failing level, 1 the size brings something,
2 the input or the command could not be used, and nothing was written.`,
		Example: `  forebake scale knots.hcl --pieces 60 > knots-60.hcl
  forebake scale brioche.hcl --total "25 kg" --loss "3 %" --write`,
		ValidArgsFunction: completeFormulas,
		Args:              oneFormula("--pieces 60"),
		RunE: func(cmd *cobra.Command, args []string) error {
			want, err := size.read(cmd)
			if err != nil {
				return err
			}
			to := cmd.ErrOrStderr()
			if write {
				to = cmd.OutOrStdout()
			}
			in, err := oneInput(cmd, args[0], name)
			if err != nil {
				return err
			}
			if write && in.Path == "" {
				return errors.New("--write cannot write to standard input; name the file")
			}
			e, err := newEngine()
			if err != nil {
				return err
			}
			return giveScaled(cmd, in, e.Scale(in, formula, want), to, *as, write)
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&size.pieces, "pieces", "", "`number` of pieces")
	flags.StringVar(&size.tins, "tins", "", "`number` of tins")
	flags.StringVar(&size.flour, "flour", "", "`weight` of the flour: \"10 kg\"")
	flags.StringVar(&size.total, "total", "",
		"`weight` of the dough with its filling: \"25 kg\"")
	flags.StringVar(&size.loss, "loss", "",
		"`share` of the dough that is lost on the way: \"3 %\"")
	flags.BoolVar(&write, "write", false, "change the file in place")
	flags.StringVar(&formula, "formula", "", "`name` of the formula, where a file holds several")
	flags.StringVar(&name, "name", "standard-input.hcl", "`name` of the file that - reads")
	as = formFlag(cmd, "a size is printed as", asText, asJSON)
	return cmd
}

// giveScaled prints a scaled formula's report, then writes the formula
// to its file or standard output. Nothing is written if the report
// cannot be printed.
func giveScaled(cmd *cobra.Command, in engine.Input, res *engine.ScaleResult, to io.Writer,
	as string, write bool) error {
	if len(res.Problems) > 0 {
		if write {
			defer cmd.PrintErrln("forebake: nothing was written")
		}
		return complain(cmd, res.Problems)
	}
	if as == asJSON {
		if write {
			if err := writeFiles(res); err != nil {
				return err
			}
		}
		if err := page.ScaleJSON(cmd.OutOrStdout(), &res.Run().Run, &res.Scaling,
			res.Text); err != nil {
			return err
		}
		return status(res)
	}
	if err := page.Scale(to, &res.Run().Run, &res.Scaling, looks(cmd, to)); err != nil {
		return err
	}
	if write {
		if err := writeFiles(res); err != nil {
			return err
		}
		_ = page.Rewritten(to, in.Name) // the file is written all the same
	} else if _, err := cmd.OutOrStdout().
		Write(forOutput(cmd.OutOrStdout(), res.Text)); err != nil {
		return err
	}
	return status(res)
}

// forOutput is a text as it is for a file or a pipe; for a terminal,
// without what a terminal obeys.
func forOutput(out io.Writer, text []byte) []byte {
	if !isTerminal(out) {
		return text
	}
	lines := strings.Split(string(text), "\n")
	for i, line := range lines {
		lines[i] = source.Safe(strings.ReplaceAll(line, "\t", "    "))
	}
	return []byte(strings.Join(lines, "\n"))
}

// read reads the size from the flags: one of them, with or without
// a loss.
func (s *sizeFlags) read(cmd *cobra.Command) (want engine.Size, err error) {
	given := 0
	for _, flag := range []string{"pieces", "tins", "flour", "total"} {
		if cmd.Flags().Changed(flag) {
			given++
		}
	}
	flag := cmd.Flags().Changed
	switch {
	case given > 1:
		return want, errors.New("name one size: --pieces, --tins, --flour or --total")
	case given == 0 && !flag("loss"):
		return want, errors.New("scale needs a size: --pieces 60, --tins 4, --flour \"10 kg\", " +
			"--total \"25 kg\", or --loss \"3 %\"")
	case flag("flour") && flag("loss"):
		return want, errors.New("--flour names the batch itself: leave out --loss, or ask by " +
			"--pieces or --total")
	}
	for _, one := range []struct {
		flag string
		read func() error
	}{
		{"pieces", func() (err error) {
			want.Pieces, err = engine.ReadPieces("--pieces", s.pieces)
			return err
		}},
		{"tins", func() (err error) {
			want.Tins, err = engine.ReadTins("--tins", s.tins)
			return err
		}},
		{"flour", func() (err error) {
			want.FlourG, err = engine.ReadMass("--flour", s.flour)
			return err
		}},
		{"total", func() (err error) {
			want.TotalG, err = engine.ReadMass("--total", s.total)
			return err
		}},
		{"loss", func() (err error) {
			want.Loss, err = engine.ReadLoss("--loss", s.loss)
			want.HasLoss = true
			return err
		}},
	} {
		if flag(one.flag) {
			if err := one.read(); err != nil {
				return want, err
			}
		}
	}
	return want, nil
}

// oneFormula takes one formula file and nothing else.
func oneFormula(example string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		if len(args) != 1 {
			return fmt.Errorf("%s takes one formula file: forebake %s knots.hcl %s", cmd.Name(),
				cmd.Name(), example)
		}
		return nil
	}
}

// oneInput reads the one file of a verb; "-" reads standard input.
func oneInput(cmd *cobra.Command, path, name string) (engine.Input, error) {
	if info, err := os.Stat(path); path != "-" && err == nil && info.IsDir() {
		return engine.Input{}, fmt.Errorf("%s is a folder; name one formula file", path)
	}
	inputs, err := readInputs(cmd, []string{path}, name)
	if err != nil {
		return engine.Input{}, err
	}
	return inputs[0], nil
}
