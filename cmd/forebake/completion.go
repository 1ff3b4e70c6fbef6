package main

import (
	"bytes"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

var shells = []string{"bash", "zsh", "fish", "powershell"}

func completionCommand() *cobra.Command {
	cmd := &cobra.Command{
		Use: "completion SHELL",
		Example: `  source <(forebake completion bash)
  forebake completion fish > ~/.config/fish/completions/forebake.fish`,
		Short: "Prints what a shell needs to complete verbs, rules, packs, figures and flags",
		Long: `Prints a script for the shell: bash, zsh, fish or powershell. With it the Tab
key completes verbs, files, rule names (why), pack names (trial), figures
(facts), formats and levels.

  bash        source <(forebake completion bash)      in ~/.bashrc
  zsh         source <(forebake completion zsh)       in ~/.zshrc, below compinit
  fish        forebake completion fish | source       in ~/.config/fish/config.fish
  powershell  forebake completion powershell | Out-String | Invoke-Expression`,
		ValidArgs: shells,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) != 1 {
				return fmt.Errorf("completion takes one shell: %s", strings.Join(shells, ", "))
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			root, out := cmd.Root(), cmd.OutOrStdout()
			switch args[0] {
			case "bash":
				var script bytes.Buffer
				if err := root.GenBashCompletionV2(&script, true); err != nil {
					return err
				}
				_, err := io.WriteString(out, bashWords+
					strings.Replace(script.String(), wordsOfPackage, "__forebake_words", 1))
				return err
			case "zsh":
				return root.GenZshCompletion(out)
			case "fish":
				return root.GenFishCompletion(out, true)
			case "powershell":
				return root.GenPowerShellCompletionWithDesc(out)
			}
			return fmt.Errorf("completion: no shell %q; it is one of %s", args[0],
				strings.Join(shells, ", "))
		},
	}
	return cmd
}

// The library's script calls a function of the package bash-completion.
// This one replaces it where it is missing: it joins the words that
// bash splits at = and :.
const (
	wordsOfPackage = `_get_comp_words_by_ref "$@" cur prev words cword`
	bashWords      = `__forebake_words()
{
    local rest=$COMP_LINE word last i
    words=() cword=0
    for ((i = 0; i < ${#COMP_WORDS[@]}; i++)); do
        word=${COMP_WORDS[i]}
        last=$((${#words[@]} - 1))
        if ((last > 0)) && [[ $rest != [[:space:]]* ]] &&
            [[ $word == [=:]* || ${words[last]} == *[=:] ]]; then
            words[last]+=$word
        else
            words+=("$word")
        fi
        ((i == COMP_CWORD)) && cword=$((${#words[@]} - 1))
        rest=${rest#"${rest%%[![:space:]]*}"}
        rest=${rest#"$word"}
    done
    cur=${words[cword]}
    prev=
    ((cword == 0)) || prev=${words[cword - 1]}
}

`
)

// completes completes the arguments of a verb.
type completes = func(cmd *cobra.Command, args []string, word string) ([]cobra.Completion,
	cobra.ShellCompDirective)

// beginning keeps the words that begin with the typed one, each with a
// line about it.
func beginning(word string, names, about []string) []cobra.Completion {
	var out []cobra.Completion
	for i, name := range names {
		if strings.HasPrefix(name, word) {
			if about == nil {
				out = append(out, name)
				continue
			}
			out = append(out, cobra.CompletionWithDesc(name, source.Safe(about[i])))
		}
	}
	return out
}

// completeWords completes one of a list of words.
func completeWords(names []string) completes {
	return func(_ *cobra.Command, _ []string, word string) ([]cobra.Completion,
		cobra.ShellCompDirective) {
		return beginning(word, names, nil), cobra.ShellCompDirectiveNoFileComp
	}
}

// completeFormulas completes the names of files that end in .hcl,
// and folders.
func completeFormulas(_ *cobra.Command, _ []string, _ string) (
	[]cobra.Completion, cobra.ShellCompDirective) {
	return []cobra.Completion{"hcl"}, cobra.ShellCompDirectiveFilterFileExt
}

// completeRules completes the rules in force in the house; none where
// the house cannot be read, since the verb itself says what is wrong.
func completeRules(cmd *cobra.Command, args []string, word string) (
	[]cobra.Completion, cobra.ShellCompDirective) {
	l, problems := engine.New().Load(housePath(cmd))
	if len(problems) > 0 || len(args) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	var about []string
	for _, name := range l.Rules.Names() {
		r, _ := l.Rules.Find(name)
		about = append(about,
			fmt.Sprintf("%s, %s, on %s", r.Level, r.Pack, strings.Join(r.On, ", ")))
	}
	return beginning(word, l.Rules.Names(), about), cobra.ShellCompDirectiveNoFileComp
}

// completePacks completes the packs in force that are not named yet.
func completePacks(cmd *cobra.Command, args []string, word string) (
	[]cobra.Completion, cobra.ShellCompDirective) {
	l, problems := engine.New().Load(housePath(cmd))
	if len(problems) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	var names, about []string
	for _, p := range l.Rules.Packs {
		if !given(args, p.Name) {
			names = append(names, p.Name)
			about = append(about, strings.Join(strings.Fields(source.Safe(p.About)), " "))
		}
	}
	return beginning(word, names, about), cobra.ShellCompDirectiveNoFileComp
}

// completeFacts completes a formula file first, then names of figures.
func completeFacts(cmd *cobra.Command, args []string, word string) (
	[]cobra.Completion, cobra.ShellCompDirective) {
	if len(args) == 0 {
		return completeFormulas(cmd, args, word)
	}
	l, problems := engine.New().Load(".")
	if len(problems) > 0 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	names, means := engine.FactNames(l)
	var left, about []string
	for i, name := range names {
		if !given(args[1:], name) {
			left, about = append(left, name), append(about, means[i])
		}
	}
	return beginning(word, left, about), cobra.ShellCompDirectiveNoFileComp
}

func given(args []string, name string) bool {
	for _, a := range args {
		if a == name {
			return true
		}
	}
	return false
}

// wordFlag declares a flag whose value is one of a list of words,
// completed from the list.
func wordFlag(cmd *cobra.Command, value *string, name, otherwise, usage string, words []string) {
	cmd.Flags().StringVar(value, name, otherwise, usage+": "+strings.Join(words, ", "))
	completeFlag(cmd, name, completeWords(words))
}

// formFlag declares a verb's --as with its forms, the first by default.
// says begins the message about another: "mends are printed as". The
// value is checked before the verb runs.
func formFlag(cmd *cobra.Command, says string, forms ...string) *string {
	as := new(string)
	wordFlag(cmd, as, "as", forms[0], "output `format`", forms)
	cmd.PreRunE = func(*cobra.Command, []string) error { return oneOf("--as: "+says, *as, forms) }
	return as
}

// oneOf gives the error for a value that is not listed; says begins it:
// "--color is".
func oneOf(says, value string, words []string) error {
	if slices.Contains(words, value) {
		return nil
	}
	last := len(words) - 1
	return fmt.Errorf("%s %s or %s, not %q%s", says,
		strings.Join(words[:last], ", "), words[last], value, nearest(value, words))
}

// noFormat gives the error for a format that is not listed.
func noFormat(name string, names []string) error {
	return fmt.Errorf("--as: no format %q%s; the formats are %s", name, nearest(name, names),
		strings.Join(names, ", "))
}

// nearest names the word of a list nearest to another; "" for none.
func nearest(word string, words []string) string {
	if list := spelling.Nearest(word, words, 1); len(list) > 0 {
		return "; nearest is " + list[0]
	}
	return ""
}

// completeFlag registers a flag's completion. A flag that the verb
// lacks is an error in the program.
func completeFlag(cmd *cobra.Command, name string, by completes) {
	if err := cmd.RegisterFlagCompletionFunc(name, by); err != nil {
		panic(err)
	}
}
