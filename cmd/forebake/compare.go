package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/report"
	"forebake/engine/source"
)

func compareCommand() *cobra.Command {
	var colour string
	cmd := &cobra.Command{
		Use:   "compare A B",
		Short: "Two formulas side by side in percentages, with the findings gained and lost",
		Long: `Sets the formulas of two files side by side, part by part: ingredients in baker's
percentages (of a filling, in percent of its weight), the figures that tell them apart, the
steps that differ, and the findings that B gains or loses. A and B are files, or git revisions
as HEAD~1:formulas/knots.hcl, held against the house file that stands there now. Where files
hold several formulas, those of one name are compared.

Exit status: 0 B gains nothing at the failing level, 1 it does,
2 the input or the command could not be used.`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) != 2 {
				return errors.New("compare takes two formula files: forebake compare HEAD~1:knots.hcl knots.hcl")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			useColour, err := wantsColour(colour, cmd.OutOrStdout())
			if err != nil {
				return err
			}
			var inputs [2]engine.Input
			for i, arg := range args {
				if inputs[i], err = comparable(arg); err != nil {
					return err
				}
			}
			e := engine.New()
			if e.Today, err = today(); err != nil {
				return err
			}
			list, onlyA, onlyB, failAt, problems := e.Compare(inputs[0], inputs[1])
			if len(problems) > 0 {
				return complain(cmd, problems)
			}
			if len(list) == 0 {
				return fmt.Errorf("%s and %s hold no formula of one name", inputs[0].Name, inputs[1].Name)
			}
			if err := cautionsFirst(cmd, e, inputs[:], useColour); err != nil {
				return err
			}
			if err := report.Compare(cmd.OutOrStdout(), list, inputs[0].Name, inputs[1].Name, onlyA, onlyB, report.Options{Colour: useColour}); err != nil {
				return err
			}
			for _, c := range list {
				for _, f := range c.Gained {
					if f.At(failAt) {
						return exit(exitFound)
					}
				}
			}
			return nil
		},
	}
	cmd.Flags().StringVar(&colour, "color", "auto", "colour: auto, always, never")
	return cmd
}

// comparable finds one side: a file, or else REVISION:path of git.
func comparable(arg string) (engine.Input, error) {
	if info, err := os.Stat(arg); err == nil {
		if info.IsDir() {
			return engine.Input{}, fmt.Errorf("%s is a folder; compare takes two formula files", arg)
		}
		path := filepath.Clean(arg)
		return engine.Input{Name: filepath.ToSlash(path), Path: path, Dir: filepath.Dir(path)}, nil
	}
	revision, path, ok := strings.Cut(arg, ":")
	if !ok || revision == "" || path == "" {
		return engine.Input{}, fmt.Errorf("%s: no such file; name a formula file, or a git revision such as HEAD~1:knots.hcl", arg)
	}
	top, err := git("rev-parse", "--show-toplevel")
	if err != nil {
		return engine.Input{}, fmt.Errorf("%s: %w", arg, err)
	}
	text, err := git("show", "--no-textconv", "--end-of-options", arg)
	if err != nil {
		return engine.Input{}, fmt.Errorf("%s: %w; the path is counted from the top of the repository, or from here as %s:./knots.hcl", arg, err, revision)
	}
	if len(text) > source.MaxFileBytes {
		return engine.Input{}, fmt.Errorf("%s: %d KB is too large for a formula file; %d KB is the most", arg, len(text)>>10, source.MaxFileBytes>>10)
	}
	dir := filepath.Join(strings.TrimRight(string(top), "\r\n"), filepath.FromSlash(filepath.Dir(path)))
	if strings.HasPrefix(path, "./") || strings.HasPrefix(path, "../") {
		dir = filepath.Dir(filepath.FromSlash(path))
	}
	return engine.Input{Name: arg, Text: text, Dir: dir}, nil
}

// git runs git and gives what it printed, or its own complaint.
func git(args ...string) ([]byte, error) {
	cmd := exec.Command("git", args...)
	var said, complaint bytes.Buffer
	cmd.Stdout, cmd.Stderr = &said, &complaint
	err := cmd.Run()
	if errors.Is(err, exec.ErrNotFound) {
		return nil, errors.New("git is not installed, and a revision cannot be read without it")
	}
	if err != nil {
		line, _, _ := strings.Cut(strings.TrimPrefix(strings.TrimSpace(complaint.String()), "fatal: "), "\n")
		if line == "" {
			line = err.Error()
		}
		return nil, fmt.Errorf("git says: %s", strings.TrimSuffix(line, "."))
	}
	return said.Bytes(), nil
}
