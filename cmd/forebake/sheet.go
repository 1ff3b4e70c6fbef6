package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/files"
	"forebake/engine/sheet"
)

func sheetCommand() *cobra.Command {
	var as, out string
	var ask engine.PlanAsk
	cmd := &cobra.Command{
		Use:   "sheet FILE ... [-o FILE.html]",
		Short: "A page for the bench: cautions, weights, steps with boxes, curves",
		Long: `Makes one page for a formula file that needs no network and no script: the
cautions first, then the open findings, then each part with its weights, its
steps on the clock, what to probe and which reading is right, boxes to write
what happened, and curves of temperature and rise.

--as html (to print, A4 or Letter), json, markdown or text. It goes to standard
output, or with -o to a file; of several files or a folder -o names the folder
that takes a sheet of each. Only a sheet is written over. --ready and --start
hold the clock as in plan.`,
		Example: `  forebake sheet formulas/cinnamon-buns.hcl --ready 07:00 -o buns.html
  forebake sheet formulas --as markdown -o sheets`,
		ValidArgsFunction: completeFormulas,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) == 0 {
				return errors.New(
					"sheet needs a formula file: forebake sheet buns.hcl -o buns.html")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			format, err := sheetFormat(as)
			if err != nil {
				return err
			}
			inputs, err := readInputs(cmd, args, "standard-input.hcl")
			if err != nil {
				return err
			}
			return printSheets(cmd, inputs, format, ask, out)
		},
	}
	flags := cmd.Flags()
	wordFlag(cmd, &as, "as", "html", "output `format`", sheet.FormatNames())
	flags.StringVarP(&out, "output", "o", "", "`file` that takes the sheet; of several, a folder")
	flags.StringVar(&ask.Ready, "ready", "", "`clock` at which all is ready: 07:00")
	flags.StringVar(&ask.Start, "start", "", "`clock` at which work begins: 05:00")
	return cmd
}

func sheetFormat(name string) (sheet.Format, error) {
	format, ok := sheet.FormatNamed(name)
	if ok {
		return format, nil
	}
	return format, noFormat(name, sheet.FormatNames())
}

// printSheets makes the sheets, and prints a single one or writes each
// to its file.
func printSheets(cmd *cobra.Command, inputs []engine.Input, format sheet.Format,
	ask engine.PlanAsk, out string) error {
	if out != "" {
		if err := files.Writable(out); err != nil { // before the run, not after it
			return err
		}
	}
	e, err := newEngine()
	if err != nil {
		return err
	}
	if isTerminal(cmd.ErrOrStderr()) && len(inputs) > fewFiles {
		e.Progress = func(done, of int) {
			end := ""
			if done == of {
				end = "\r\x1b[K" // the line goes away
			}
			fmt.Fprintf(cmd.ErrOrStderr(), "\r%d of %d sheets made%s", done, of, end)
		}
	}
	pages, res, err := e.Sheets(inputs, ask)
	switch {
	case err != nil:
		return err
	case len(res.Problems) > 0:
		return complain(cmd, res.Problems)
	case len(pages) > 1 && out == "":
		return fmt.Errorf("%d files make %d sheets; name the folder that takes them: -o sheets",
			len(pages), len(pages))
	case out == "":
		return format.Write(cmd.OutOrStdout(), &pages[0])
	}
	paths, err := sheetPaths(pages, format, out)
	if err != nil {
		return err
	}
	var ts targets
	for _, path := range paths {
		ts = append(ts, target{"-o", path, "a sheet in " + format.Name, isSheet(format), false})
	}
	if err := ts.check(e.Opened()); err != nil {
		return err
	}
	for i := range pages {
		var text bytes.Buffer
		if err := format.Write(&text, &pages[i]); err != nil {
			return err
		}
		if err := writeOutput(paths[i], text.Bytes()); err != nil {
			return err
		}
	}
	return nil
}

// sheetPaths gives each sheet's file: the one named, or in the folder
// named one by each formula file's name.
func sheetPaths(pages []sheet.Page, format sheet.Format, out string) ([]string, error) {
	info, err := os.Stat(out)
	folder := err == nil && info.IsDir()
	if len(pages) == 1 && !folder {
		if strings.EqualFold(filepath.Ext(out), ".hcl") {
			return nil, fmt.Errorf("-o %s would write over a formula or rule file; name it %s", out,
				out[:len(out)-len(".hcl")]+format.Suffix)
		}
		return []string{out}, nil
	}
	if !folder {
		if err == nil {
			return nil, fmt.Errorf("-o %s is a file, and %d sheets need a folder", out, len(pages))
		}
		if err := os.MkdirAll(out, 0o777); err != nil {
			return nil, fmt.Errorf("-o %s: the folder cannot be made: %w", out, err)
		}
	}
	paths := make([]string, len(pages))
	for i := range pages {
		base := filepath.Base(filepath.FromSlash(pages[i].File))
		paths[i] = filepath.Join(out, strings.TrimSuffix(base, ".hcl")+format.Suffix)
	}
	return paths, nil
}

// isSheet reports whether a file is a sheet in a format.
func isSheet(format sheet.Format) func(path string) bool {
	return func(path string) bool {
		first, _, err := files.Ends(path, 128)
		return err == nil && format.Is(first)
	}
}
