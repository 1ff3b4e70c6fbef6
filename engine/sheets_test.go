package engine_test

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"golang.org/x/net/html"

	"forebake/engine"
	"forebake/engine/finding"
	"forebake/engine/sheet"
)

// sheetsOf makes the sheets of some files as HTML, parsed.
func sheetsOf(t *testing.T, paths ...string) []*html.Node {
	t.Helper()
	e := engine.New()
	e.Today = time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)
	pages, res, err := e.Sheets(engine.Inputs(paths), engine.PlanAsk{})
	if err != nil || len(res.Problems) > 0 {
		t.Fatal(err, res.Problems)
	}
	format, _ := sheet.FormatNamed("html")
	var out []*html.Node
	for i := range pages {
		var text bytes.Buffer
		if err := format.Write(&text, &pages[i]); err != nil {
			t.Fatal(err)
		}
		if !format.Is(text.Bytes()) {
			t.Error("a sheet is not told to be one")
		}
		root, err := html.Parse(&text)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, root)
	}
	return out
}

// find lists the elements of a tree for which want is true, in order.
func find(n *html.Node, want func(*html.Node) bool) (out []*html.Node) {
	for d := range n.Descendants() {
		if d.Type == html.ElementNode && want(d) {
			out = append(out, d)
		}
	}
	return out
}

func element(name, class string) func(*html.Node) bool {
	return func(n *html.Node) bool {
		return n.Data == name && (class == "" || attr(n, "class") == class)
	}
}

func attr(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

func textOf(n *html.Node) string {
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			b.WriteString(d.Data)
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// axis reads a scale off the ticks of a picture: value = from +
// px * slope.
func axis(t *testing.T, ticks []*html.Node, at string,
	value func(string) float64) func(float64) float64 {
	t.Helper()
	if len(ticks) < 2 {
		t.Fatalf("%d ticks", len(ticks))
	}
	a, b := ticks[0], ticks[len(ticks)-1]
	pa, pb := number(t, attr(a, at)), number(t, attr(b, at))
	va, vb := value(textOf(a)), value(textOf(b))
	return func(px float64) float64 { return va + (px-pa)/(pb-pa)*(vb-va) }
}

// hours reads a clock: "5:30", "05:30 +1d", "22:00 -1d".
func hours(t *testing.T, text string) float64 {
	t.Helper()
	clock, day, _ := strings.Cut(text, " ")
	h, m, _ := strings.Cut(clock, ":")
	out := number(t, h) + number(t, m)/60
	if day != "" {
		out += 24 * number(t, strings.TrimSuffix(day, "d"))
	}
	return out
}

var firstNumber = regexp.MustCompile(`-?\d+(\.\d+)?`)

// Each picture's dots, read back off its own ticks, are the figures of
// facts --history: each known step of a part has its dot, at its clock
// and its core. The table beside the picture has the same words.
func TestPicturesAreTheHistory(t *testing.T) {
	paths, err := filepath.Glob("../formulas/*.hcl")
	if err != nil {
		t.Fatal(err)
	}
	checked := 0
	for _, path := range paths {
		if filepath.Base(path) == "house.hcl" {
			continue
		}
		rows, res := engine.New().History(engine.Inputs([]string{path}))
		if len(res.Problems) > 0 {
			t.Fatal(res.Problems)
		}
		byPart := map[string][]finding.HistoryRow{}
		for _, r := range rows {
			if r.Core != "-" {
				byPart[r.Part] = append(byPart[r.Part], r)
			}
		}
		root := sheetsOf(t, path)[0]
		for _, section := range find(root, element("section", "")) {
			figures := find(section, element("figure", ""))
			heads := find(section, element("h3", ""))
			if len(figures) == 0 || len(heads) != 1 {
				continue
			}
			kind, name, _ := strings.Cut(textOf(heads[0]), ": ")
			checked += comparePicture(t, path+" "+name, figures[0],
				byPart[fmt.Sprintf("%s %q", kind, name)])
		}
	}
	if checked < 40 {
		t.Errorf("%d steps were compared", checked)
	}
}

func comparePicture(t *testing.T, name string, figure *html.Node,
	history []finding.HistoryRow) int {
	t.Helper()
	svg := find(figure, element("svg", ""))[0]
	if !strings.HasPrefix(textOf(find(svg, element("title", ""))[0]), "Temperature") {
		return 0
	}
	toHours := axis(t, find(svg, element("text", "x")), "x", func(s string) float64 {
		return hours(t, s)
	})
	toC := axis(t, find(svg, element("text", "y")), "y", func(s string) float64 {
		return number(t, s)
	})
	lines := find(svg, element("polyline", "line"))
	if len(lines) != 1 {
		t.Fatalf("%s: %d core lines", name, len(lines))
	}
	var points [][2]float64
	for _, pair := range strings.Fields(attr(lines[0], "points")) {
		x, y, _ := strings.Cut(pair, ",")
		points = append(points, [2]float64{toHours(number(t, x)), toC(number(t, y))})
	}
	cells := find(find(figure, element("tbody", ""))[0], element("tr", ""))
	if len(cells) != len(history) {
		t.Fatalf("%s: %d rows beside the picture, %d in the history", name, len(cells),
			len(history))
	}
	for i, tr := range cells {
		td := find(tr, element("td", ""))
		td = append(find(tr, element("td", "nowrap")), td...)
		if got := textOf(find(tr, element("th", ""))[0]); got != history[i].Step {
			t.Errorf("%s: step %q, in the history %q", name, got, history[i].Step)
		}
		if got := textOf(td[2]); got != history[i].Core {
			t.Errorf("%s: core %q, in the history %q", name, got, history[i].Core)
		}
		at, core := hours(t, textOf(td[0])), number(t, firstNumber.FindString(history[i].Core))
		near := false
		for _, p := range points {
			near = near || math.Abs(p[0]-at) < 0.05 && math.Abs(p[1]-core) < 1.01
		}
		if !near {
			t.Errorf("%s: no point of the line at %.2f h and %v C: %v", name, at, core, points)
		}
	}
	// Relative to the part's first step the clocks are the history's.
	for i := 1; i < len(cells); i++ {
		begins := history[i].Clock - history[0].Clock
		ends := hours(t, textOf(find(cells[i-1], element("td", "nowrap"))[0])) -
			hours(t, textOf(find(cells[0], element("td", "nowrap"))[0])) +
			history[1].Clock - history[0].Clock
		if math.Abs(begins-ends) > 0.02 {
			t.Errorf("%s: step %d ends %.3f h after the first began; the next begins at %.3f h",
				name,
				i, ends, begins)
		}
	}
	return len(cells)
}

// What a name holds stays text: it makes no element, attribute
// or script.
func TestNamesStayTextOnASheet(t *testing.T) {
	names := []string{`<script>alert(1)</script> "q" & 'p' 🥐`, `</h3><img src=x onerror=alert(2)>`,
		`"><svg onload=alert(3)>`, `--> ]]> </style> {{.Version}} ${x}`}
	quote := func(s string) string {
		return `"` + strings.NewReplacer(`"`, `\"`, `${`, `$${`).Replace(s) + `"`
	}
	text := "formula " + quote(names[0]) + " {\n dough " + quote(names[1]) + ` {
  ingredients = { "bread flour" = { amount = "1 kg", note = ` + quote(names[2]) +
		` }, "water" = "600 g" }
  steps = [ { mix = "10 min", to = "25 C", note = ` + quote(names[3]) +
		` }, { rest = "1 h", at = "26 C", as = "bowl" },
    { shape = ` + quote(names[2]) + ` }, { bake = "30 min", at = "200 C", core = "94 C" } ]
 }
}
`
	path := filepath.Join(t.TempDir(), "names.hcl")
	if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
	root := sheetsOf(t, path)[0]
	all := textOf(root)
	for _, name := range names {
		if !strings.Contains(all, strings.Join(strings.Fields(name), " ")) {
			t.Errorf("%q does not stand in the text of the page", name)
		}
	}
	known := map[string]bool{}
	for _, n := range find(sheetsOf(t, "../formulas/first-draft.hcl")[0], func(*html.Node) bool {
		return true
	}) {
		known[n.Data] = true
	}
	for _, of := range find(sheetsOf(t, "../formulas/cinnamon-buns.hcl")[0], func(*html.Node) bool {
		return true
	}) {
		known[of.Data] = true
	}
	for _, n := range find(root, func(*html.Node) bool { return true }) {
		if !known[n.Data] || n.Data == "script" || n.Data == "img" {
			t.Errorf("an element <%s> comes of a name", n.Data)
		}
		for _, a := range n.Attr {
			if strings.HasPrefix(a.Key, "on") || strings.Contains(a.Val, "alert") &&
				a.Key != "aria-label" {
				t.Errorf("an attribute %s=%q comes of a name", a.Key, a.Val)
			}
		}
	}
	if n := len(find(root, element("svg", ""))); n == 0 || n > 2 {
		t.Errorf("%d pictures", n)
	}
}

// The cautions come first, in the words of every report, each whole
// with its source. Every step has its four boxes, every picture its
// name and its words.
func TestSheetIsWhole(t *testing.T) {
	e := engine.New()
	res := e.Check(engine.Inputs([]string{"../formulas/cinnamon-buns.hcl"}))
	root := sheetsOf(t, "../formulas/cinnamon-buns.hcl")[0]
	body := find(root, element("body", ""))[0]
	first := find(body, func(*html.Node) bool { return true })[0]
	if attr(first, "class") != "cautions" {
		t.Errorf("<%s class=%q> stands first", first.Data, attr(first, "class"))
	}
	whole := textOf(find(root, element("section", "whole"))[0])
	for _, c := range res.Cautions {
		if !strings.Contains(whole, strings.Join(strings.Fields(c.Text), " ")) ||
			!strings.Contains(whole, c.Source) {
			t.Errorf("%q does not stand whole", c.Text)
		}
	}
	steps := find(find(root, element("main", ""))[0], element("ul", "boxes"))
	for _, box := range steps {
		if n := len(find(box, element("li", ""))); n != 4 {
			t.Errorf("%d boxes at %q", n, attr(box, "aria-label"))
		}
	}
	if len(steps) != 12 {
		t.Errorf("%d of 12 steps have boxes", len(steps))
	}
	for _, svg := range find(root, element("svg", "")) {
		for _, id := range strings.Fields(attr(svg, "aria-labelledby")) {
			if n := find(svg, func(n *html.Node) bool {
				return attr(n, "id") == id
			}); len(n) != 1 || textOf(n[0]) == "" {
				t.Errorf("a picture lacks %s", id)
			}
		}
	}
	for _, n := range find(root, func(*html.Node) bool { return true }) {
		for _, a := range n.Attr {
			if a.Key == "src" || a.Key == "href" || n.Data == "link" {
				t.Errorf("<%s %s=%q> asks for something outside", n.Data, a.Key, a.Val)
			}
		}
	}
}

// Each format is recognised by its own first bytes and by no other's.
func TestSheetFormats(t *testing.T) {
	pages, res, err := engine.New().Sheets(engine.Inputs([]string{"../formulas/first-draft.hcl"}),
		engine.PlanAsk{Ready: "07:00"})
	if err != nil || len(res.Problems) > 0 {
		t.Fatal(err, res.Problems)
	}
	for _, f := range sheet.Formats {
		var text bytes.Buffer
		if err := f.Write(&text, &pages[0]); err != nil {
			t.Fatal(err)
		}
		for _, other := range sheet.Formats {
			if is := other.Is(text.Bytes()); is != (other.Name == f.Name) {
				t.Errorf("a sheet in %s is one in %s: %v", f.Name, other.Name, is)
			}
		}
		wants := []string{"Cautions and allergens", "Raw dough", "bread flour", "Open findings",
			"raw-flour-eaten"}
		if f.Name == "json" { // which has keys, not headings
			wants[0], wants[3] = `"prelude": {`, `"open": [`
		}
		for _, want := range wants {
			if !strings.Contains(strings.Join(strings.Fields(text.String()), " "), want) {
				t.Errorf("%s: no %q", f.Name, want)
			}
		}
	}
}

var noNumber = regexp.MustCompile(`NaN|[+-]Inf\b`)

// Every published formula has its sheet, and a plan or the reason
// for none.
func TestSheetsAndPlansOfPublishedFormulas(t *testing.T) {
	paths, err := filepath.Glob("../testdata/published/formulas/*.hcl")
	if err != nil || len(paths) < 20 {
		t.Fatal(len(paths), err)
	}
	planned := 0
	for i, path := range paths {
		if testing.Short() && i%10 > 0 {
			continue
		}
		e := engine.New()
		pages, res, err := e.Sheets(engine.Inputs([]string{path}), engine.PlanAsk{})
		if len(res.Problems) > 0 {
			continue // what it is made of is in no larder
		}
		if err != nil || len(pages[0].Formulas) == 0 {
			t.Fatal(path, err)
		}
		for _, f := range sheet.Formats {
			var text bytes.Buffer
			if err := f.Write(&text, &pages[0]); err != nil || noNumber.MatchString(text.String()) {
				t.Errorf("%s, %s: %v, %q", path, f.Name, err, noNumber.FindString(text.String()))
			}
		}
		plan, res, err := e.Plan(engine.Inputs([]string{path}), engine.PlanAsk{Ready: "07:00"})
		switch {
		case err != nil:
			t.Errorf("%s: %v", path, err)
		case len(res.Problems) == 0:
			planned++
			if len(plan.Formulas) != len(pages[0].Formulas) {
				t.Errorf("%s: %d formulas are planned", path, len(plan.Formulas))
			}
		}
	}
	if planned == 0 {
		t.Error("nothing was planned")
	}
}
