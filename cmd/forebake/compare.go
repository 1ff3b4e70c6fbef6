package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
	"forebake/engine/source"
)

func compareCommand() *cobra.Command {
	var as *string
	var batches []int
	cmd := &cobra.Command{
		Use: "compare A B | compare FILE [--batches 1,2]",
		Example: `  forebake compare formulas/first-draft.hcl formulas/second-draft.hcl
  forebake compare HEAD~1:formulas/cinnamon-buns.hcl formulas/cinnamon-buns.hcl`,
		Short: "Two formulas side by side in percentages, with the findings gained and lost",
		Long: `Sets the formulas of two files side by side, part by part: ingredients in
baker's percentages (of a filling, in percent of its weight), the figures that
tell them apart, the steps that differ, and the findings that B gains or loses.
A and B are files, or git revisions as HEAD~1:formulas/knots.hcl, held against
the house file that stands there now. Where files hold several formulas, those
of one name are compared.

Of one FILE it sets two batches of its log side by side, the newest or those of
--batches.

Exit status: 0 B gains nothing at the failing level, 1 it does,
2 the input or the command could not be used.`,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) == 1 {
				return nil
			}
			if len(batches) > 0 {
				return errors.New("--batches are of one file: forebake compare buns.hcl " +
					"--batches 1,2")
			}
			if len(args) != 2 {
				return errors.New("compare takes two formula files: forebake compare " +
					"HEAD~1:knots.hcl knots.hcl")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 1 {
				return compareBatches(cmd, args[0], batches, *as)
			}
			var inputs [2]engine.Input
			var err error
			for i, arg := range args {
				if inputs[i], err = comparable(arg); err != nil {
					return err
				}
			}
			e, err := newEngine()
			if err != nil {
				return err
			}
			res := e.Compare(inputs[0], inputs[1])
			if len(res.Problems) > 0 {
				return complain(cmd, res.Problems)
			}
			if len(res.List) == 0 {
				return fmt.Errorf("%s and %s hold no formula of one name", inputs[0].Name,
					inputs[1].Name)
			}
			sides := page.Sides{A: inputs[0].Name, B: inputs[1].Name, OnlyA: res.OnlyA,
				OnlyB: res.OnlyB}
			out := cmd.OutOrStdout()
			if *as == asJSON {
				err = page.CompareJSON(out, &res.Run, res.List, sides)
			} else {
				err = page.Compare(out, &res.Run, res.List, sides, looks(cmd, out))
			}
			if err != nil {
				return err
			}
			if res.Gains() {
				return exit(exitFound)
			}
			return nil
		},
	}
	as = formFlag(cmd, "a comparison is printed as", asText, asJSON)
	cmd.Flags().IntSliceVar(&batches, "batches", nil, "`numbers` of two batches of a log: 1,2")
	return cmd
}

// compareBatches sets two batches of a file's log side by side.
func compareBatches(cmd *cobra.Command, path string, batches []int, as string) error {
	if len(batches) != 0 && len(batches) != 2 {
		return errors.New("--batches takes two numbers: --batches 1,2")
	}
	in, err := logInput(path)
	if err != nil {
		return err
	}
	if _, err := os.Stat(in.LogPath()); err != nil {
		return fmt.Errorf("compare takes two formula files: forebake compare HEAD~1:knots.hcl "+
			"knots.hcl; or one with a log, and %s has none: forebake log %s --new begins one",
			in.Name,
			in.Name)
	}
	e, err := newEngine()
	if err != nil {
		return err
	}
	return printBatches(cmd, e, in, batches, as)
}

// comparable finds one side: a file, else a path of a git revision,
// as REVISION:path.
func comparable(arg string) (engine.Input, error) {
	if info, err := os.Stat(arg); err == nil {
		if info.IsDir() {
			return engine.Input{}, fmt.Errorf("%s is a folder; compare takes two formula files",
				arg)
		}
		path := filepath.Clean(arg)
		return engine.Input{Name: filepath.ToSlash(path), Path: path, Dir: filepath.Dir(path)}, nil
	}
	revision, path, ok := strings.Cut(arg, ":")
	if !ok || revision == "" || path == "" {
		return engine.Input{}, fmt.Errorf("%s: no such file; %s", arg, engine.NearestPath(arg,
			"name a formula file, or a git revision such as HEAD~1:knots.hcl"))
	}
	top, err := git(maxPathBytes, "rev-parse", "--show-toplevel")
	if err != nil {
		return engine.Input{}, fmt.Errorf("%s: %w", arg, err)
	}
	text, err := git(source.MaxFileBytes, "show", "--no-textconv", "--end-of-options", arg)
	var large *tooLong
	switch {
	case errors.As(err, &large):
		return engine.Input{}, fmt.Errorf("%s: more than %d KB is too large for a formula file",
			arg, source.MaxFileBytes>>10)
	case err != nil:
		return engine.Input{}, fmt.Errorf("%s: %w; the path is counted from the top of the "+
			"repository, or from here as %s:./knots.hcl", arg, err, revision)
	}
	dir := filepath.Dir(filepath.FromSlash(path))
	if !strings.HasPrefix(path, "./") && !strings.HasPrefix(path, "../") {
		dir = fromHere(filepath.Join(strings.TrimRight(string(top), "\r\n"), dir))
	}
	return engine.Input{Name: arg, Text: text, Dir: dir}, nil
}

// fromHere writes a folder as a path from this one, so that both sides
// of a comparison find one house, which is read once.
func fromHere(dir string) string {
	here, err := os.Getwd()
	if err == nil {
		here, err = filepath.EvalSymlinks(here) // git has resolved its own
	}
	if err != nil {
		return dir
	}
	if rel, err := filepath.Rel(here, dir); err == nil {
		return rel
	}
	return dir
}

// maxPathBytes is more than any system's longest path.
const maxPathBytes = 64 << 10

// tooLong is the error for a command that prints too much.
type tooLong struct{ most int }

func (e *tooLong) Error() string { return fmt.Sprintf("it prints more than %d bytes", e.most) }

// git runs git and gives its output, or its own complaint. A git that
// prints more than most bytes is ended.
func git(most int, args ...string) ([]byte, error) {
	cmd := exec.Command("git", args...)
	var complaint bytes.Buffer
	cmd.Stderr = &complaint
	out, err := cmd.StdoutPipe()
	if err != nil {
		return nil, err
	}
	if err := cmd.Start(); errors.Is(err, exec.ErrNotFound) {
		return nil, errors.New("git is not installed, and a revision cannot be read without it")
	} else if err != nil {
		return nil, err
	}
	said, err := io.ReadAll(io.LimitReader(out, int64(most)+1))
	if len(said) > most {
		_ = cmd.Process.Kill()
		_ = cmd.Wait()
		return nil, &tooLong{most}
	}
	if ended := cmd.Wait(); err == nil {
		err = ended
	}
	if err != nil {
		line, _, _ := strings.Cut(strings.TrimPrefix(strings.TrimSpace(complaint.String()),
			"fatal: "), "\n")
		if line == "" {
			line = err.Error()
		}
		return nil, fmt.Errorf("git says: %s", strings.TrimSuffix(line, "."))
	}
	return said, nil
}

// completeSides completes formula files, and git revisions with
// their files.
func completeSides(_ *cobra.Command, _ []string, word string) (
	[]cobra.Completion, cobra.ShellCompDirective) {
	revision, path, inside := strings.Cut(word, ":")
	if inside {
		return filesIn(revision, path), cobra.ShellCompDirectiveNoSpace |
			cobra.ShellCompDirectiveNoFileComp
	}
	list := filesHere(word)
	refs, err := git(maxPathBytes, "for-each-ref", "--format=%(refname:short)", "refs/heads",
		"refs/tags")
	if err == nil {
		for _, ref := range append([]string{"HEAD", "HEAD~1"}, strings.Fields(string(refs))...) {
			if strings.HasPrefix(ref, word) {
				list = append(list, ref+":")
			}
		}
	}
	return list, cobra.ShellCompDirectiveNoSpace | cobra.ShellCompDirectiveNoFileComp
}

// filesHere lists the formula files and folders on disk that begin with
// a word.
func filesHere(word string) (out []cobra.Completion) {
	dir, _ := filepath.Split(word)
	entries, _ := os.ReadDir(filepath.Clean(dir))
	for _, e := range entries {
		out = appendFile(out, dir+e.Name(), word, e.IsDir())
	}
	return out
}

// filesIn lists a revision's formula files and folders that begin with
// a path. One beginning with ./ is relative to this folder, any other
// to the top of the repository.
func filesIn(revision, path string) (out []cobra.Completion) {
	dir := path[:strings.LastIndexByte(path, '/')+1]
	said, err := git(1<<20, "ls-tree", "-z", "--end-of-options", revision+":"+dir)
	if err != nil {
		return nil
	}
	for _, line := range strings.Split(string(said), "\x00") {
		about, name, ok := strings.Cut(line, "\t")
		if ok {
			out = appendFile(out, revision+":"+dir+name, revision+":"+path,
				strings.Contains(about, " tree "))
		}
	}
	return out
}

// appendFile adds a formula file or folder that begins with a word and
// is not hidden.
func appendFile(list []cobra.Completion, name, word string, folder bool) []cobra.Completion {
	switch base := name[strings.LastIndexAny(name, "/:")+1:]; {
	case !strings.HasPrefix(name, word) || strings.HasPrefix(base, "."):
	case folder:
		return append(list, name+"/")
	case strings.EqualFold(filepath.Ext(name), ".hcl"):
		return append(list, name)
	}
	return list
}
