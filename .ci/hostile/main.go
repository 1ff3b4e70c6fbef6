// Hostile runs a built program over a table of hostile inputs. Each has
// the limits of GNU timeout and ulimit; it prints the time and the
// memory used.
//
//	go run ./.ci/hostile PROGRAM
//
// It knows the format of the files and nothing of the program. It ends
// with 1 where a row takes more than its limits, does not end by
// itself, or prints a goroutine's stack.
package main

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"time"
)

// Limits of a row. The aim is met by the processor's time, which other
// programs on the machine do not change.
const (
	mostSeconds = 2.0
	mostMB      = 300
	wait        = "60"      // seconds of the clock until timeout ends a run
	address     = "4000000" // KB of address space: most is reserved and never used
)

// row is one hostile input: what it makes in an empty folder, and the
// arguments of the program.
type row struct {
	name string
	make func() error
	args []string
	more float64 // seconds above the usual limit, for a row of much work that is wanted
}

func main() {
	flag.Parse()
	if flag.NArg() != 1 {
		fmt.Fprintln(os.Stderr, "hostile: name the program: go run ./.ci/hostile PROGRAM")
		os.Exit(2)
	}
	program, err := filepath.Abs(flag.Arg(0))
	if err != nil {
		fmt.Fprintln(os.Stderr, "hostile:", err)
		os.Exit(2)
	}
	good := true
	fmt.Printf("%-38s %9s %9s %7s %s\n", "input", "seconds", "MB", "status", "said last")
	for _, r := range rows() {
		ok, err := try(program, r)
		if err != nil {
			fmt.Fprintf(os.Stderr, "hostile: %s: %v\n", r.name, err)
			os.Exit(2)
		}
		good = good && ok
	}
	if !good {
		os.Exit(1)
	}
}

// try runs the program over one row, and reports whether it kept within
// the limits.
func try(program string, r row) (bool, error) {
	dir, err := os.MkdirTemp("", "hostile")
	if err != nil {
		return false, err
	}
	defer os.RemoveAll(dir)
	if err := os.Chdir(dir); err != nil {
		return false, err
	}
	if err := r.make(); err != nil {
		return false, err
	}
	line := fmt.Sprintf("ulimit -v %s; exec timeout %s \"$0\" \"$@\"", address, wait)
	cmd := exec.Command("bash", append([]string{"-c", line, program}, r.args...)...)
	// Into a file: the memory of this program would count as that of
	// the one it starts.
	out, err := os.Create(filepath.Join(os.TempDir(), fmt.Sprint("hostile-said-", os.Getpid())))
	if err != nil {
		return false, err
	}
	defer os.Remove(out.Name())
	defer out.Close()
	cmd.Stdout, cmd.Stderr = out, out
	start := time.Now()
	_ = cmd.Run()
	clock := time.Since(start)
	state := cmd.ProcessState
	usage := state.SysUsage().(*syscall.Rusage)
	seconds := (state.UserTime() + state.SystemTime()).Seconds()
	mb := float64(usage.Maxrss) / 1024
	status := state.ExitCode()
	first, tail := make([]byte, 64<<10), make([]byte, 4<<10)
	n, _ := out.ReadAt(first, 0)
	first = first[:n]
	if info, err := out.Stat(); err == nil {
		n, _ = out.ReadAt(tail, max(0, info.Size()-int64(len(tail))))
		tail = tail[:n]
	}
	lines := strings.Split(strings.TrimSpace(string(tail)), "\n")
	last := lines[len(lines)-1]
	verdict := ""
	if status < 0 || status > 2 || bytes.Contains(first, []byte("goroutine ")) ||
		seconds > mostSeconds+r.more || mb > mostMB {
		verdict = "TOO MUCH "
	}
	fmt.Printf("%-38s %9.2f %9.0f %7d %s%.60s\n", r.name, seconds, mb, status, verdict, last)
	if clock > 10*time.Second {
		fmt.Printf("%-38s %9.0f seconds of the clock\n", "", clock.Seconds())
	}
	return verdict == "", nil
}

// write makes a file, and its folder.
func write(name, text string) error {
	if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
		return err
	}
	return os.WriteFile(name, []byte(text), 0o666)
}

// repeated gives a text so many times, its %d the number.
func repeated(n int, text string) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(strings.ReplaceAll(text, "%d", fmt.Sprint(i)))
	}
	return b.String()
}

// file is a row of one file t.hcl.
func file(name, text string) row {
	return row{name, func() error { return write("t.hcl", text) }, []string{"check", "t.hcl"}, 0}
}

// recipe is a row of a recipe whose method is one line, a text so
// many times.
func recipe(name string, n int, text string) row {
	return row{name, func() error {
		return write("r.txt", "Buns\n\n500 g flour\n300 g milk\n10 g yeast\n\nMethod\n"+
			strings.Repeat(text, n))
	}, []string{"read", "r.txt"}, 0}
}

// house is a row of a house file, beside a small formula and a pack.
func house(name, text, pack string) row {
	return row{name, func() error {
		if err := write("house.hcl", text); err != nil {
			return err
		}
		if err := write("own/pack.hcl", pack); err != nil {
			return err
		}
		return write("t.hcl", loaf)
	}, []string{"check", "t.hcl"}, 0}
}

const loaf = `formula "Loaf %d" {
  dough "dough" {
    ingredients = {
      "bread flour" = "1000 g", "whole milk" = "600 g", "instant yeast" = "12 g", "egg" = "100 g"
    }
    steps = [
      { mix = "10 min", to = "26 C" }, { rest = "1 h", at = "room" },
      { bake = "30 min", at = "190 C" },
    ]
  }
}
`

// heavy is a legal formula of some 20 KB with more to mend than can be
// looked for.
func heavy(name string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "formula %q {\n", name)
	for d := range 8 {
		fmt.Fprintf(
			&b,
			"dough \"d%d\" {\ningredients = { \"bread flour\" = \"500 g\", \"water\" = \"300 g\", "+
				"\"egg\" = \"100 g\", \"instant yeast\" = \"9 g\", \"sugar\" = \"80 g\", "+
				"\"salt\" = \"2 g\"",
			d,
		)
		if d > 0 {
			fmt.Fprintf(&b, ", \"the d%d\" = \"300 g\"", d-1)
		}
		b.WriteString(" }\nsteps = [\n{ mix = \"8 min\", to = \"26 C\" },\n")
		for i := range 40 {
			fmt.Fprintf(
				&b,
				"{ chill = \"%d h\", at = \"fridge\", as = \"bowl\", covered = true },\n",
				1+i%3,
			)
		}
		b.WriteString("]\n}\n")
	}
	return b.String() + "}\n"
}

// unknownFoods is a formula of foods that no larder has.
func unknownFoods() string {
	var b strings.Builder
	b.WriteString("formula \"x\" {\n")
	for part := range 20 {
		fmt.Fprintf(&b, "filling \"f%d\" { ingredients = {\n", part)
		for n := range 60 {
			fmt.Fprintf(&b, "\"z%co%crk bl%cam\" = \"1 cup, for the kr%cum\"\n", 'a'+part, 'a'+n%26,
				'a'+n/26, 'a'+n%26)
		}
		b.WriteString("} }\n")
	}
	return b.String() + "}\n"
}

func rows() []row {
	many := func(n int, text func(i int) string) func() error {
		return func() error {
			for i := range n {
				if err := write(fmt.Sprintf("f%05d.hcl", i), text(i)); err != nil {
					return err
				}
			}
			return nil
		}
	}
	loaves := func(i int) string { return strings.ReplaceAll(loaf, "%d", fmt.Sprint(i)) }
	list := []row{
		{
			"a pipe",
			func() error { return syscall.Mkfifo("t.hcl", 0o666) },
			[]string{"check", "t.hcl"},
			0,
		},
		{
			"a pipe in a folder",
			func() error { return syscall.Mkfifo("t.hcl", 0o666) },
			[]string{"check", "."},
			0,
		},
		{"a pipe as the house", func() error {
			if err := syscall.Mkfifo("house.hcl", 0o666); err != nil {
				return err
			}
			return write("t.hcl", loaf)
		}, []string{"check", "t.hcl"}, 0},
		{"a pipe as the backlog", func() error {
			if err := syscall.Mkfifo("b.hcl", 0o666); err != nil {
				return err
			}
			return write("t.hcl", loaf)
		}, []string{"check", "--backlog", "b.hcl", "t.hcl"}, 0},
		{
			"a link to /dev/zero",
			func() error { return os.Symlink("/dev/zero", "t.hcl") },
			[]string{"check", "t.hcl"},
			0,
		},
		{"a file of holes, 20 GB", func() error {
			if err := write("t.hcl", ""); err != nil {
				return err
			}
			return os.Truncate("t.hcl", 20<<30)
		}, []string{"check", "."}, 0},
		{
			"a link in a circle",
			func() error { return os.Symlink("t.hcl", "t.hcl") },
			[]string{"check", "t.hcl"},
			0,
		},
		{"a pack of 900 KB in the folder", func() error {
			if err := write("own/pack.hcl", "about = \"own\"\n"+repeated(6000, rule)); err != nil {
				return err
			}
			return write("t.hcl", loaf)
		}, []string{"check", "."}, 0},
		{
			"standard input without an end",
			func() error { return os.Symlink("/dev/zero", "z") },
			[]string{"check", "-"},
			0,
		},
		file("8,000 formulas of one name", repeated(8000, "formula \"x\" {}\n")),
		file("14,000 formulas without a part", repeated(13000, "formula \"f%d\" {}\n")),
		file(
			"3,600 formulas of one line",
			repeated(
				3600,
				"formula \"f%d\" {\n dough \"d\" { ingredients = { \"water\" = \"1 g\" } }\n}\n",
			),
		),
		file("20,000 unknown keys", "formula \"x\" {\n"+repeated(20000, "  a%d = 1\n")+"}\n"),
		file("12,000 parts", "formula \"x\" {\n"+repeated(12000, "  dough \"d%d\" {}\n")+"}\n"),
		file(
			"12,000 unknown ingredients",
			"formula \"x\" {\n dough \"d\" {\n ingredients = {\n"+repeated(
				12000,
				"\"zz%d\" = \"1 g\"\n",
			)+"}\n}\n}\n",
		),
		file(
			"18,000 steps without a verb",
			"formula \"x\" {\n dough \"d\" {\n ingredients = { \"water\" = \"1 g\" }\n"+
				" steps = [\n"+repeated(
				18000,
				"  {mixx=\"1\"},\n",
			)+"]\n}\n}\n",
		),
		file(
			"brackets, 60,000 deep",
			"formula \"x\" {\n a = "+strings.Repeat("[", 60000)+strings.Repeat("]", 60000)+"\n}\n",
		),
		file(
			"templates, 5,000 deep",
			"a = \""+strings.Repeat("${\"", 5000)+strings.Repeat("\"}", 5000)+"\"\n",
		),
		file("60,000 signs in a row", "a = "+strings.Repeat("!", 60000)+"true\n"),
		file("a name of 200 KB", "formula \""+strings.Repeat("x", 200000)+"\" {\n}\n"),
		file(
			"an ingredient's name of 200 KB",
			"formula \"x\" {\n dough \"d\" {\n ingredients = { \""+strings.Repeat(
				"x",
				200000,
			)+"\" = \"1 g\" }\n}\n}\n",
		),
		file(
			"a number of 200,000 digits",
			"formula \"x\" {\n dough \"d\" {\n ingredients = { \"water\" = \""+strings.Repeat(
				"9",
				200000,
			)+" g\" }\n}\n}\n",
		),
		file(
			"a text of accents, 200 KB",
			"formula \"x\" {\n about = \"e"+strings.Repeat("\u0301", 100000)+"\"\n}\n",
		),
		house(
			"a house: 6,000 of one setting",
			"house \"h\" {\n"+repeated(
				6000,
				" set \"a\" {}\n waive \"b\" {}\n tin \"x\" {}\n",
			)+"}\n",
			"",
		),
		house(
			"a house: 9,000 ingredients",
			"house \"h\" {\n"+repeated(9000, " ingredient \"ba%d\" {}\n")+"}\n",
			"",
		),
		house(
			"a house: 5,000 tins",
			"house \"h\" {\n"+repeated(5000, " tin \"t%d\" { inside = \"9 x 9 x 9 mm\" }\n")+"}\n",
			"",
		),
		house(
			"a pack: 80,000 empty rules",
			"house \"h\" {\n packs = [\"./own\"]\n}\n",
			repeated(80000, "rule \"r\" {}\n"),
		),
		house(
			"a pack: 6,000 rules",
			"house \"h\" {\n packs = [\"./own\"]\n}\n",
			repeated(6000, rule),
		),
		{
			"12 heavy files with their mends",
			many(12, func(i int) string { return heavy(fmt.Sprint("heavy ", i)) }),
			[]string{"check", "."},
			0,
		}, // 3 MB of search each
		{
			"12 heavy files of ranges",
			many(12, func(i int) string {
				return strings.ReplaceAll(heavy(fmt.Sprint("heavy ", i)), `at = "fridge"`,
					`at = "2 to 5 C"`)
			}),
			[]string{"check", "."},
			0,
		},
		{
			"1 heavy file with its mends",
			many(1, func(i int) string { return heavy("heavy") }),
			[]string{"check", "."},
			0,
		},
	}
	put := func(name, text string) func() error {
		return func() error { return write(name, text) }
	}
	list = append(list,
		row{"a recipe of 32 KB on one line", put("r.txt", strings.Repeat("1 cup flour and ", 2000)),
			[]string{"read", "r.txt"}, 0},
		recipe("a recipe: itself over and over, on one line", 350,
			"Buns: 500 g flour, 300 g milk. Mix 10 min. Let rise 1 h. Bake 20 min at 200 C. "),
		recipe("a recipe: one amount plus the next", 1400, "1 cup plus 1 tbsp plus "),
		recipe("a recipe: brackets that stay open", 1800, "rest (1 hr. or so "),
		recipe("a recipe: stops that end nothing", 1800, "rest 1 min. then "),
		recipe("a recipe: 4,500 short sentences", 4500, "Knead. "),
		recipe("a recipe: 5,000 sentences not read", 5000, "Stir! "),
		recipe("a recipe: one sentence", 150, "bake 10 min at 200 C and "),
		row{"a recipe of 1,500 ingredients",
			put("r.txt", "Buns\n\n"+strings.Repeat("2 cups flour x\n", 1500)),
			[]string{"read", "r.txt"}, 0},
		row{"a word of 100 KB", put("t.hcl", strings.ReplaceAll(loaf, "%d", "")),
			[]string{"larder", strings.Repeat("x", 100_000)}, 0},
		row{"1,200 foods that nobody knows", put("t.hcl", unknownFoods()),
			[]string{"check", "t.hcl"}, 0},
		row{"every setting of a heavy file open",
			put("t.hcl", strings.ReplaceAll(heavy("open"), `at = "fridge"`, `at = "?"`)),
			[]string{"check", "t.hcl"}, 0},
		row{"a folder that holds itself", func() error { return os.Symlink(".", "again") },
			[]string{"check", "."}, 0},
	)
	for _, format := range []string{"text", "lines", "markdown", "json", "sarif"} {
		list = append(
			list,
			row{
				"5,000 files, " + format,
				many(5000, loaves),
				[]string{"check", "--as", format, "."},
				0,
			},
		)
	}
	return append(
		list,
		row{
			"5,000 broken files",
			many(5000, func(int) string { return "formula \"x\" {\n}}\n" }),
			[]string{"check", "."},
			0,
		},
	)
}

const rule = "rule \"r%d\" {\n on = \"dough\"\n level = \"stop\"\n when = \"part.mass_g > 1\"\n" +
	" say = \"s\"\n why = \"w\"\n source = \"s\"\n}\n"
