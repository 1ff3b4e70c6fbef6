package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"forebake/engine"
)

// manDate stands on every page: a page is the same on whatever day the
// program is built.
const manDate = "Nov 2026"

// roff writes a page for man. It is written here, since the library's
// writer reads its own Markdown back, and builds tables for that
// whenever any verb starts.
type roff struct{ strings.Builder }

// manPage is the page of a verb, or of the program.
func manPage(cmd *cobra.Command) string {
	cmd.InitDefaultHelpFlag()
	p := &roff{}
	fmt.Fprintf(p, ".nh\n.TH \"%s\" \"1\" \"%s\" \"forebake %s\" \"\"\n",
		strings.ToUpper(cmd.Name()), manDate, engine.Version)
	p.section("NAME")
	p.line(pageName(cmd) + " - " + cmd.Short)
	p.section("SYNOPSIS")
	p.WriteString(bold(cmd.UseLine()) + "\n")
	p.section("DESCRIPTION")
	description := cmd.Long
	if description == "" {
		description = cmd.Short
	}
	for i, paragraph := range strings.Split(description, "\n\n") {
		if i > 0 {
			p.WriteString("\n.PP\n")
		}
		for line := range strings.SplitSeq(paragraph, "\n") {
			p.line(line)
		}
	}
	p.options("OPTIONS", cmd.NonInheritedFlags())
	p.options("OPTIONS INHERITED FROM PARENT COMMANDS", cmd.InheritedFlags())
	if cmd.Example != "" {
		p.section("EXAMPLE")
		p.WriteString(".EX\n")
		for line := range strings.SplitSeq(cmd.Example, "\n") {
			p.line(line)
		}
		p.WriteString(".EE\n")
	}
	p.section("SEE ALSO")
	var pages []string
	if cmd.HasParent() {
		pages = append(pages, bold(pageName(cmd.Parent())+"(1)"))
	}
	for _, c := range cmd.Commands() {
		if c.IsAvailableCommand() {
			pages = append(pages, bold(pageName(c)+"(1)"))
		}
	}
	p.WriteString(strings.Join(pages, ", ") + "\n")
	return p.String()
}

// pageName is the name of a verb's page: forebake-check.
func pageName(cmd *cobra.Command) string {
	return strings.ReplaceAll(cmd.CommandPath(), " ", "-")
}

// section begins a section.
func (p *roff) section(name string) {
	if name != "NAME" {
		p.WriteByte('\n')
	}
	p.WriteString("\n.SH " + name + "\n")
}

// line writes a line of text, which is no request of roff.
func (p *roff) line(text string) {
	if strings.HasPrefix(text, ".") || strings.HasPrefix(text, "'") {
		p.WriteString(`\&`)
	}
	p.WriteString(plainRoff(text) + "\n")
}

// options lists flags, if there are some.
func (p *roff) options(title string, flags *pflag.FlagSet) {
	if !flags.HasAvailableFlags() {
		return
	}
	p.section(title)
	first := true
	flags.VisitAll(func(f *pflag.Flag) {
		if f.Hidden || f.Deprecated != "" {
			return
		}
		if !first {
			p.WriteString("\n.PP\n")
		}
		first = false
		if f.Shorthand != "" {
			p.WriteString(bold("-"+f.Shorthand) + ", ")
		}
		value := "=" + f.DefValue
		if f.Value.Type() == "string" {
			value = fmt.Sprintf("=%q", f.DefValue)
		}
		if f.NoOptDefVal != "" {
			value = "[" + value + "]"
		}
		p.WriteString(bold("--"+f.Name) + plainRoff(value) + "\n\t")
		before, word, after := inQuotes(f.Usage)
		p.WriteString(plainRoff(before))
		if word != "" {
			p.WriteString(`\fB` + plainRoff(word) + `\fR`)
		}
		p.WriteString(plainRoff(after) + "\n")
	})
}

// inQuotes parts a flag's usage at the word in backquotes, which names
// its value.
func inQuotes(usage string) (before, word, after string) {
	before, rest, _ := strings.Cut(usage, "`")
	word, after, _ = strings.Cut(rest, "`")
	return before, word, after
}

func bold(text string) string { return `\fB` + plainRoff(text) + `\fP` }

// plainRoff escapes the sign that begins an escape of roff.
func plainRoff(text string) string { return strings.ReplaceAll(text, `\`, `\\`) }
