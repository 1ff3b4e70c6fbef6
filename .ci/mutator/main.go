// Mutator makes what a formula or a house file says less known or
// better known, and compares the program's answers. Knowing less must
// never turn flagged to clear. A point inside a range must never get
// the range's opposite answer.
//
//	go build -o /tmp/forebake ./cmd/forebake
//	go run ./.ci/mutator -count 5000 -seed 1 /tmp/forebake
//
// It knows the file format and the JSON of a check, and nothing of the
// engine. It ends with status 1 where an answer broke the promise or
// the program crashed.
package main

import (
	"flag"
	"fmt"
	"io"
	"maps"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"time"

	"forebake/.ci/outside"
)

func main() {
	seed := flag.Uint64("seed", 1, "of the draws")
	count := flag.Int("count", 5000, "mutations")
	project := flag.String("project", ".", "the project's folder")
	stress := flag.Float64("stress", 0.6, "share of the mutations on texts with slips put in first")
	list := flag.Int("list", 0, "violations listed of each kind; 0 lists all")
	excused := flag.Bool("excused", false, "list the excused answers too")
	only := flag.String("only", "", "one row of the table: \"step option, removed\"")
	keep := flag.String("keep", "", "folder to write the files of each violation to")
	flag.Parse()
	if flag.NArg() != 1 {
		fmt.Fprintln(os.Stderr, "usage: go run ./.ci/mutator [flags] PROGRAM")
		flag.PrintDefaults()
		os.Exit(2)
	}
	program, err := outside.NewProgram(flag.Arg(0))
	if err == nil {
		var bad int
		bad, err = measure(os.Stdout, program, *project, *only, *seed, *count, *stress, *list,
			*excused, *keep)
		if err == nil && bad > 0 {
			os.Exit(1)
		}
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "mutator:", err)
		os.Exit(2)
	}
}

// base is a text whose answers others are compared with.
type base struct {
	file  string // of the project
	home  string // the folder whose house it is judged by
	slips []slip
	text  string
	root  *outside.Block
	sites []site
	house bool
	name  string // where it stands in the work folder, once it is written
}

// housed reports whether a house file stands in a folder or above
// it, inside the project.
func housed(project, dir string) bool {
	for ; dir != "."; dir = filepath.Dir(dir) {
		if _, err := os.Stat(filepath.Join(project, dir, "house.hcl")); err == nil {
			return true
		}
	}
	return false
}

// slip is a wrong figure that was put into a text.
type slip struct{ key, of, put string }

func (s slip) String() string { return fmt.Sprintf("%s of %s: %s", s.key, s.of, s.put) }

// at reports whether the slip was made at that setting.
func (s slip) at(x site) bool { return s.key == x.key && s.of == x.of }

func newBase(file, home, text string, house bool, slips []slip) (*base, error) {
	root, err := outside.Parse(text)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", file, err)
	}
	b := &base{file: file, home: home, text: text, root: root, house: house, slips: slips}
	if house {
		b.sites = houseSites(root)
	} else {
		b.sites = formulaSites(root)
	}
	return b, nil
}

// mutation is one change, and the text that it is compared with.
type mutation struct {
	from   *base
	to     *base
	change string
	site   site
	wide   *stretch // the range, where a narrowing can follow
}

// row is one line of the table.
type row struct {
	tried, refused, clear, gone, opposite, fell, unsaid, crashed, excused, model int
}

var changes = []string{"opened", "widened", "removed", "narrowed"}

func measure(
	w io.Writer,
	program *outside.Program,
	project string,
	only string,
	seed uint64,
	count int,
	stress float64,
	list int,
	excused bool,
	keep string,
) (int, error) {
	began := time.Now()
	r := rand.New(rand.NewPCG(seed, 0x666f7265))
	work, err := os.MkdirTemp("", "mutator")
	if err != nil {
		return 0, err
	}
	defer os.RemoveAll(work)

	bench := &bench{
		program: program,
		work:    work,
		project: project,
		of:      map[string]*outside.Answer{},
	}
	bases, houses, err := load(project)
	if err != nil {
		return 0, err
	}

	// Slips first: a sound formula has nothing that could
	// turn clear.
	formulas := slices.Clone(bases)
	each := min(60, max(4, 2*count/len(bases)))
	for _, b := range bases {
		for range each {
			if s := slipped(b, r); s != nil {
				formulas = append(formulas, s)
			}
		}
	}
	kitchens := slices.Clone(houses)
	for _, b := range houses {
		for range each / 2 {
			if s := slipped(b, r); s != nil {
				kitchens = append(kitchens, s)
			}
		}
	}
	if err := bench.judge(append(slices.Clone(formulas), kitchens...)); err != nil {
		return 0, err
	}
	sound := func(b *base) bool { a := bench.answer(b); return a.Refused == "" && a.Crashed == "" }
	for _, b := range bases {
		if !sound(b) {
			fmt.Fprintf(
				w,
				"not judged, so not mutated: %s: %s%s\n",
				b.file,
				bench.answer(b).Refused,
				bench.answer(b).Crashed,
			)
		}
	}
	formulas = slices.DeleteFunc(formulas, func(b *base) bool { return !sound(b) })
	kitchens = slices.DeleteFunc(kitchens, func(b *base) bool { return !sound(b) })

	// One house file stands for ten formulas, so fewer of its
	// mutations are drawn.
	first := draw(r, formulas, kitchens, only, count*3/4, stress)
	targets := make([]*base, len(first))
	for i, m := range first {
		targets[i] = m.to
	}
	if err := bench.judge(targets); err != nil {
		return 0, err
	}
	second := narrow(r, first, sound, count-len(first))
	targets = targets[:0]
	for _, m := range second {
		targets = append(targets, m.to)
	}
	if err := bench.judge(targets); err != nil {
		return 0, err
	}

	table := map[string]*row{}
	var order []string
	listed := map[string]int{}
	reasons := map[string]int{}
	bad := 0
	for i, m := range append(first, second...) {
		name := m.site.group + ", " + m.change
		t := table[name]
		if t == nil {
			t = &row{}
			table[name] = t
			order = append(order, name)
		}
		t.tried++
		a := bench.answer(m.to)
		if a.Crashed != "" {
			t.crashed++
			bad++
			fmt.Fprintf(w, "CRASH %s: %s\n%s", name, a.Crashed, m)
			save(keep, i, m)
			continue
		}
		if a.Refused != "" {
			t.refused++
			continue
		}
		v := bench.compare(m)
		t.clear += min(1, len(v.clear))
		t.gone += min(1, len(v.gone))
		t.opposite += min(1, len(v.opposite))
		t.fell += min(1, len(v.fell))
		t.unsaid += min(1, len(v.unsaid))
		t.excused += v.excused
		t.model += v.model
		for _, e := range v.excuses {
			reasons[e.why]++
			if excused {
				fmt.Fprintf(w, "%s\n%s    %s: %s\n", name, m, e.told, e.why)
				save(keep, i, m)
			}
		}
		if !v.violated() {
			continue
		}
		bad++
		save(keep, i, m)
		listed[name]++
		if list > 0 && listed[name] > list {
			continue
		}
		fmt.Fprintf(w, "%s\n%s", name, m)
		for _, told := range slices.Concat(v.clear, v.gone, v.opposite, v.fell, v.unsaid) {
			fmt.Fprintf(w, "    %s\n", told)
		}
	}

	slices.Sort(order)
	fmt.Fprintf(
		w,
		"\n%-30s %6s %8s %8s %7s %9s %6s %7s %8s | %8s %6s\n",
		"kind of mutation",
		"tried",
		"refused",
		"to clear",
		"to gone",
		"opposite",
		"fell",
		"unsaid",
		"crashed",
		"excused",
		"model",
	)
	var all row
	print := func(name string, t *row) {
		fmt.Fprintf(
			w,
			"%-30s %6d %8d %8d %7d %9d %6d %7d %8d | %8d %6d\n",
			name,
			t.tried,
			t.refused,
			t.clear,
			t.gone,
			t.opposite,
			t.fell,
			t.unsaid,
			t.crashed,
			t.excused,
			t.model,
		)
	}
	for _, name := range order {
		t := table[name]
		print(name, t)
		all = row{
			all.tried + t.tried,
			all.refused + t.refused,
			all.clear + t.clear,
			all.gone + t.gone,
			all.opposite + t.opposite,
			all.fell + t.fell,
			all.unsaid + t.unsaid,
			all.crashed + t.crashed,
			all.excused + t.excused,
			all.model + t.model,
		}
	}
	print("all", &all)
	for _, why := range slices.Sorted(maps.Keys(reasons)) {
		fmt.Fprintf(w, "excused %4d: %s\n", reasons[why], why)
	}
	fmt.Fprintf(
		w,
		"seed %d, %d texts judged in %s\n",
		seed,
		bench.judged,
		time.Since(began).Round(time.Second),
	)
	return bad, nil
}

// String tells a mutation: file, line before, line after.
func (m mutation) String() string {
	var b strings.Builder
	line := outside.Line(m.from.text, m.site.pair.Start)
	fmt.Fprintf(&b, "  %s:%d, %s of %s\n", m.from.file, line, m.site.key, m.site.of)
	for _, s := range m.from.slips {
		fmt.Fprintf(&b, "    slip   %s\n", s)
	}
	fmt.Fprintf(
		&b,
		"    before %s\n    after  %s\n",
		outside.LineText(m.from.text, line),
		outside.LineText(m.to.text, line),
	)
	return b.String()
}

func save(dir string, i int, m mutation) {
	if dir == "" {
		return
	}
	_ = os.MkdirAll(dir, 0o777)
	for what, text := range map[string]string{"before": m.from.text, "after": m.to.text} {
		_ = os.WriteFile(
			filepath.Join(dir, fmt.Sprintf("%04d-%s.hcl", i, what)),
			[]byte(text),
			0o666,
		)
	}
}

// load reads the demo formulas with their houses, and the
// published formulas.
func load(project string) (formulas, houses []*base, err error) {
	for _, glob := range []string{"formulas/*.hcl", "formulas/school/*.hcl",
		"testdata/published/*.hcl", "testdata/published/formulas/*.hcl",
		"testdata/scenarios/*.hcl", "testdata/scenarios/*/*.hcl"} {
		paths, err := filepath.Glob(filepath.Join(project, glob))
		if err != nil {
			return nil, nil, err
		}
		for _, path := range paths {
			text, err := os.ReadFile(path)
			if err != nil {
				return nil, nil, err
			}
			file, _ := filepath.Rel(project, path)
			home := filepath.Dir(file)
			if !housed(project, home) {
				home = ""
			}
			house := filepath.Base(file) == "house.hcl"
			if house && home != "formulas" {
				continue
			}
			b, err := newBase(file, home, string(text), house, nil)
			if err != nil {
				return nil, nil, err
			}
			if house {
				houses = append(houses, b)
			} else {
				formulas = append(formulas, b)
			}
		}
	}
	if len(formulas) == 0 || len(houses) == 0 {
		return nil, nil, fmt.Errorf("no formulas or no house below %s", project)
	}
	return formulas, houses, nil
}

// otherWord are slips where a word stands.
var otherWord = map[string][]string{
	"fridge":       {"15 C", "9 C", "room"},
	"room":         {"33 C", "38 C"},
	"freezer":      {"fridge", "10 C"},
	"bowl":         {"slab 90 mm", "ball"},
	"osmotolerant": {"standard"},
	"spiral":       {"hand"},
	"ice bath":     {"fan"},
}

// slipped gives a text with one to three slips of the pen in it;
// nil where none can be made.
func slipped(b *base, r *rand.Rand) *base {
	now := b
	var slips []slip
	for range 1 + r.IntN(3) {
		s := now.sites[r.IntN(len(now.sites))]
		text, put := now.text, ""
		if words := otherWord[s.value.Text]; len(words) > 0 {
			put = words[r.IntN(len(words))]
			text = outside.Replace(text, s.value.Start+1, s.value.End-1, put)
		} else if all := stretches(s); len(all) > 0 {
			q := all[r.IntN(len(all))].stressed(r)
			put = q.written()
			text = q.put(text)
		} else {
			continue
		}
		slips = append(slips, slip{s.key, s.of, put})
		next, err := newBase(b.file, b.home, text, b.house, slips)
		if err != nil {
			return nil
		}
		now = next
	}
	if b.house && r.IntN(2) == 0 && !strings.Contains(now.text, "code ") {
		code := []string{"us-food-code", "uk", "eu-852-2004"}[r.IntN(3)]
		slips = append(slips, slip{"code", "kitchen", code})
		text := strings.Replace(
			now.text,
			"kitchen {",
			fmt.Sprintf("kitchen { # the code of the place\n    code = %q", code),
			1,
		)
		next, err := newBase(b.file, b.home, text, true, slips)
		if err != nil {
			return nil
		}
		now = next
	}
	if len(slips) == 0 {
		return nil
	}
	return now
}

// draw makes mutations, the kinds in turn so that each is tried
// about as often. With only, those of one row of the table alone.
func draw(r *rand.Rand, formulas, kitchens []*base, only string, count int,
	stress float64) []mutation {
	type slot struct {
		b *base
		s site
	}
	groups := map[string][3][]slot{} // as written; in texts with slips; at the slip itself
	for _, b := range append(slices.Clone(formulas), kitchens...) {
		for _, s := range b.sites {
			g := groups[s.group]
			i := 0
			if len(b.slips) > 0 {
				i = 1
			}
			if slices.ContainsFunc(b.slips, func(x slip) bool { return x.at(s) }) {
				i = 2
			}
			g[i] = append(g[i], slot{b, s})
			groups[s.group] = g
		}
	}
	var names []string
	for name := range groups {
		names = append(names, name)
	}
	slices.Sort(names)
	// Amounts, measures and options are most of what a formula
	// says; a house file costs ten formulas.
	weight := map[string]int{
		"amount":            5,
		"step measure":      5,
		"step option":       6,
		"ingredient option": 4,
		"reading":           4,
	}
	var turns []string
	for _, name := range names {
		for range max(1, weight[name]) {
			turns = append(turns, name)
		}
	}
	var out []mutation
	for try := 0; len(out) < count && try < 40*count; try++ {
		name := turns[try%len(turns)]
		g := groups[name]
		i := 0
		if r.Float64() < stress {
			i = 1 + r.IntN(2)
		}
		if len(g[i]) == 0 {
			continue
		}
		pick := g[i][r.IntN(len(g[i]))]
		change := changes[r.IntN(3)]
		if name == "amount" && change == "removed" {
			change = "line removed"
		}
		if only != "" && only != name+", "+change {
			continue
		}
		if m, ok := mutate(pick.b, pick.s, change, r); ok {
			out = append(out, m)
		}
	}
	return out
}

// mutate makes one change; false where the setting does not
// take it.
func mutate(b *base, s site, change string, r *rand.Rand) (mutation, bool) {
	m := mutation{from: b, change: change, site: s}
	text := ""
	switch change {
	case "opened":
		if s.value.Text == "?" || s.value.Kind == outside.List || s.value.Kind == outside.Object {
			return m, false
		}
		text = outside.Replace(b.text, s.value.Start, s.value.End, `"?"`)
	case "widened":
		all := stretches(s)
		if len(all) == 0 {
			return m, false
		}
		q := all[r.IntN(len(all))]
		wide, ok := q.widened(r)
		if !ok {
			return m, false
		}
		text = wide.put(b.text)
		wide.end = wide.start + len(wide.written())
		m.wide = &wide
	case "removed":
		if !s.whole {
			return m, false
		}
		text = outside.Remove(b.text, s.pair.Start, s.pair.End)
	case "line removed":
		// The line of an ingredient makes another food. Its row
		// looks for crashes, and counts.
		if s.pair.Key == "amount" {
			return m, false
		}
		text = outside.Remove(b.text, s.pair.Start, s.pair.End)
	}
	to, err := newBase(b.file, b.home, text, b.house, b.slips)
	if err != nil {
		return m, false
	}
	m.to = to
	return m, true
}

// narrow draws points inside of the ranges: of those that a
// widening made, and of those that the files hold.
func narrow(r *rand.Rand, wide []mutation, sound func(*base) bool, count int) []mutation {
	var able []mutation
	for _, m := range wide {
		if m.wide != nil && sound(m.to) {
			able = append(able, m)
		}
	}
	var out []mutation
	for len(able) > 0 && len(out) < count {
		m := able[r.IntN(len(able))]
		q := *m.wide
		q.bare = false
		n := q.narrowed(r)
		text := outside.Replace(m.to.text, q.start, q.end, n.written())
		if m.wide.bare { // the range put quotes around a bare number
			text = outside.Replace(m.to.text, q.start, q.end, number(n.lo))
		}
		to, err := newBase(m.to.file, m.to.home, text, m.to.house, m.to.slips)
		if err != nil {
			continue
		}
		out = append(out, mutation{from: m.to, to: to, change: "narrowed", site: m.site})
	}
	return out
}

// bench runs the program over texts and keeps the answers.
type bench struct {
	program *outside.Program
	work    string
	project string
	mu      sync.Mutex
	of      map[string]*outside.Answer
	next    int
	judged  int
}

func (bn *bench) answer(b *base) *outside.Answer {
	if a := bn.of[b.name]; a != nil {
		return a
	}
	return &outside.Answer{Crashed: "the program gave no answer"}
}

// batch is how many files one run takes. With more than a dozen
// formulas that have findings the program works out no mends, which
// are not measured here.
const batch = 120

// job is one run: files below the work folder.
type job struct {
	dir   string
	files []string
	bases []*base
	done  func(map[string]*outside.Answer)
	count map[string]int
}

// judge writes the texts down and lets the program answer.
func (bn *bench) judge(bases []*base) error {
	byHome := map[string][]*base{}
	var jobs []job
	for _, b := range bases {
		if b.name != "" {
			continue
		}
		bn.next++
		b.name = fmt.Sprintf("t%06d.hcl", bn.next)
		bn.judged++
		if b.house {
			byHome["\x00house"] = append(byHome["\x00house"], b)
		} else {
			byHome[b.home] = append(byHome[b.home], b)
		}
	}
	for home, list := range byHome {
		if home == "\x00house" {
			more, err := bn.houseJobs(list)
			if err != nil {
				return err
			}
			jobs = append(jobs, more...)
			continue
		}
		for chunk := range slices.Chunk(list, batch) {
			dir, err := bn.folder(home)
			if err != nil {
				return err
			}
			j := job{dir: dir, bases: chunk, count: map[string]int{}}
			for _, b := range chunk {
				err := os.WriteFile(filepath.Join(dir, b.name), []byte(b.text), 0o666)
				if err != nil {
					return err
				}
				j.files = append(j.files, b.name)
				j.count[b.name] = formulasIn(b.root)
			}
			j.done = func(got map[string]*outside.Answer) {
				for name, a := range got {
					bn.of[name] = a
				}
			}
			jobs = append(jobs, j)
		}
	}
	queue := make(chan job)
	var wait sync.WaitGroup
	for range runtime.NumCPU() {
		wait.Add(1)
		go func() {
			defer wait.Done()
			for j := range queue {
				got := bn.program.Check(j.dir, j.files, j.count)
				bn.mu.Lock()
				j.done(got)
				bn.mu.Unlock()
			}
		}()
	}
	for _, j := range jobs {
		queue <- j
	}
	close(queue)
	wait.Wait()
	return nil
}

func formulasIn(root *outside.Block) int {
	n := 0
	for _, b := range root.Blocks {
		if b.Type == "formula" {
			n++
		}
	}
	return n
}

// folder makes a folder for texts that are judged by the house
// of home.
func (bn *bench) folder(home string) (string, error) {
	bn.next++
	dir := filepath.Join(bn.work, fmt.Sprintf("d%06d", bn.next))
	if home == "" {
		return dir, os.MkdirAll(dir, 0o777)
	}
	if err := bn.copyKitchen(dir, home, ""); err != nil {
		return "", err
	}
	return filepath.Join(dir, home), os.MkdirAll(filepath.Join(dir, home), 0o777)
}

// copyKitchen copies the house files and rules that stand where
// home is; house takes the place of the demo kitchen's where it
// is given.
func (bn *bench) copyKitchen(dir, home, house string) error {
	from := filepath.Join(bn.project, home)
	if strings.HasPrefix(home, "formulas") { // the school's house names the one above it
		from = filepath.Join(bn.project, "formulas")
	}
	return filepath.WalkDir(from, func(path string, e os.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		rel, _ := filepath.Rel(bn.project, path)
		if filepath.Ext(path) != ".hcl" ||
			filepath.Base(path) != "house.hcl" && !strings.Contains(rel, "house-rules") {
			return nil
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		if house != "" && rel == filepath.Join("formulas", "house.hcl") {
			text = []byte(house)
		}
		to := filepath.Join(dir, rel)
		if err := os.MkdirAll(filepath.Dir(to), 0o777); err != nil {
			return err
		}
		return os.WriteFile(to, text, 0o666)
	})
}

// houseJobs lets each house judge all demo formulas; their answers
// are put together.
func (bn *bench) houseJobs(list []*base) ([]job, error) {
	demos, err := filepath.Glob(filepath.Join(bn.project, "formulas", "*.hcl"))
	if err != nil {
		return nil, err
	}
	var jobs []job
	for chunk := range slices.Chunk(list, 12) {
		bn.next++
		root := filepath.Join(bn.work, fmt.Sprintf("d%06d", bn.next))
		j := job{dir: root, bases: chunk, count: map[string]int{}}
		for _, b := range chunk {
			dir := filepath.Join(root, b.name)
			if err := bn.copyKitchen(dir, "formulas", b.text); err != nil {
				return nil, err
			}
			for _, path := range demos {
				if filepath.Base(path) == "house.hcl" {
					continue
				}
				text, err := os.ReadFile(path)
				if err != nil {
					return nil, err
				}
				name := filepath.ToSlash(filepath.Join(b.name, "formulas", filepath.Base(path)))
				if err := os.WriteFile(filepath.Join(root, name), text, 0o666); err != nil {
					return nil, err
				}
				j.files = append(j.files, name)
				j.count[name] = strings.Count(
					string(text),
					"\nformula \"",
				) + strings.Count(
					string(text[:min(9, len(text))]),
					"formula \"",
				)
			}
		}
		j.done = func(got map[string]*outside.Answer) {
			for name, a := range got {
				top, _, _ := strings.Cut(name, "/")
				sum := bn.of[top]
				if sum == nil {
					sum = &outside.Answer{}
					bn.of[top] = sum
				}
				for _, f := range a.Findings {
					f.Formula = filepath.Base(name) + ": " + f.Formula
					sum.Findings = append(sum.Findings, f)
				}
				sum.Assumed = append(sum.Assumed, a.Assumed...)
				if sum.Crashed == "" {
					sum.Crashed = a.Crashed
				}
				if sum.Refused == "" {
					sum.Refused = a.Refused
				}
			}
		}
		jobs = append(jobs, j)
	}
	return jobs, nil
}

// statedOf are options of which the guide says it for a few verbs alone.
var statedOf = []string{"cook by", "bake core", "sheet wide", "mix to", "cook to", "melt to",
	"soak with", "cook with", "melt with", "mix with", "store covered", "store in"}

// stated are the settings for which the guide says what is taken where
// they are not written.
func stated(s site) bool {
	switch s.group {
	case "kitchen figure":
		return s.key != "code" // the strictest code stands for none: nothing may turn clear by it
	case "step option":
		_, key, _ := strings.Cut(s.key, " ")
		return slices.Contains([]string{"at", "as", "pieces", "count"}, key) ||
			slices.Contains(statedOf, s.key)
	case "ingredient option":
		return s.key == "temp" || s.key == "strain" || s.key == "protein" || s.key == "hydration"
	case "formula figure":
		return s.key == "keep" || s.key == "makes" || s.key == "family"
	}
	return false
}

func (bn *bench) compare(m mutation) verdict {
	here := func(s slip) bool { return s.at(m.site) }
	k := known{group: m.site.group, change: m.change, of: m.site.of,
		key:    m.site.key[strings.LastIndex(m.site.key, " ")+1:],
		hasOwn: stated(m.site), house: m.from.house, thing: m.site.thing(),
		ownSlip: slices.ContainsFunc(m.from.slips, here) ||
			strings.HasPrefix(m.from.file, "testdata/scenarios/"),
		from: place(m.from.text, m.site.pair.Start), to: place(m.from.text, m.site.pair.End)}
	if !k.house {
		k.remaining = subjects(m.to.root)
	}
	return compare(bn.answer(m.from), bn.answer(m.to), k)
}
