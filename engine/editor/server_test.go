package editor_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/finding"
)

// TestSameAsCheck opens each demo formula: the findings are those of
// check, at the same lines.
func TestSameAsCheck(t *testing.T) {
	c := start(t, object{})
	for _, name := range []string{"first-draft.hcl", "second-draft.hcl", "cinnamon-buns.hcl"} {
		path, text := demo(t, name)
		got := map[string]int{}
		for _, d := range c.open(path, text) {
			if d.Code != "cautions" {
				got[fmt.Sprintf("%d %s", d.Range.Start.Line+1, d.Code)]++
			}
		}
		want := map[string]int{}
		for _, f := range engine.New().Check(engine.Inputs([]string{path})).Findings {
			if f.Answer != finding.Waived {
				want[fmt.Sprintf("%d %s", f.Place.Line(), f.Rule)]++
			}
		}
		if fmt.Sprint(got) != fmt.Sprint(want) || len(want) == 0 && name != "cinnamon-buns.hcl" {
			t.Errorf("%s: the editor has %v, check %v", name, got, want)
		}
	}
}

// TestCautionsOnce has one entry a formula, as information.
func TestCautionsOnce(t *testing.T) {
	c := start(t, object{})
	path, text := demo(t, "custard-buns.hcl")
	n := 0
	for _, d := range c.open(path, text) {
		if d.Code == "cautions" {
			n++
			if d.Severity != 3 || !strings.Contains(d.Message, "Raw egg") {
				t.Errorf("severity %d: %s", d.Severity, d.Message)
			}
		}
	}
	if n != 1 {
		t.Errorf("%d entries of cautions", n)
	}
}

// TestRelated tells the lines that an answer waits for, to a client
// that shows them.
func TestRelated(t *testing.T) {
	path, text := demo(t, "first-draft.hcl")
	for _, shows := range []bool{true, false} {
		related := object{"relatedInformation": shows}
		c := start(t, object{"textDocument": object{"publishDiagnostics": related}})
		told := 0
		for _, d := range c.open(path, text) {
			for _, r := range d.RelatedInformation {
				told++
				if r.Location.Range.Start == d.Range.Start {
					t.Errorf("%s points to itself", d.Code)
				}
				if d.Code == "bulk-long" && (r.Location.Range.Start.Line != 18 ||
					!strings.Contains(r.Message, "hazelnuts")) {
					t.Errorf("bulk-long waits for %+v", r)
				}
			}
		}
		if (told > 5) != shows {
			t.Errorf("%d places told, and the client shows them: %v", told, shows)
		}
	}
}

// TestLifecycle holds the order of initialize, shutdown and exit, with
// the exit status.
func TestLifecycle(t *testing.T) {
	c := start(t, nil)
	if err := c.try("textDocument/hover", object{}, nil); err == nil ||
		!strings.Contains(err.Error(), "-32002") {
		t.Errorf("before initialize: %v", err)
	}
	var got struct {
		Capabilities struct{ PositionEncoding string }
	}
	c.call("initialize", object{"capabilities": object{"general": object{
		"positionEncodings": list{"utf-32", "utf-8", "utf-16"}}}}, &got)
	if got.Capabilities.PositionEncoding != "utf-8" {
		t.Errorf("counts in %q", got.Capabilities.PositionEncoding)
	}
	if err := c.try("no/such", object{}, nil); err == nil ||
		!strings.Contains(err.Error(), "-32601") {
		t.Errorf("an unknown method: %v", err)
	}
	c.call("shutdown", nil, nil)
	if err := c.try("textDocument/hover", object{}, nil); err == nil ||
		!strings.Contains(err.Error(), "-32600") {
		t.Errorf("after shutdown: %v", err)
	}
	c.notify("exit", nil)
	if clean := <-c.ended; !clean {
		t.Error("shutdown and exit are not a clean end")
	}

	c = start(t, object{})
	c.notify("exit", nil)
	if clean := <-c.ended; clean {
		t.Error("exit without shutdown passes for a clean end")
	}
}

const rolls = `formula "Rolls" {
  dough "plain é😀 dough" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "600 g"
      "instant yeast" = "1 %"
      "salt"          = "3 %"
      "cinamon"       = "10 g"
    }
    steps = [
      { mix  = "8 min", by = "spiral" },
      { fill = "jam" },
    ]
  }
  filling "jam" { ingredients = { "apricot jam" = "200 g" } }
}
`

// at is the position of a text's first place, behind its bar.
func at(text, mark string) (string, object) {
	before, after := strings.Split(mark, "|")[0], strings.Split(mark, "|")[1]
	i := strings.Index(text, before+after)
	if i < 0 {
		panic(mark)
	}
	i += len(before)
	line := strings.Count(text[:i], "\n")
	start := strings.LastIndex(text[:i], "\n") + 1
	units := 0
	for _, r := range text[start:i] {
		units++
		if r > 0xFFFF {
			units++
		}
	}
	return text, object{"line": line, "character": units}
}

func TestFeatures(t *testing.T) {
	c := start(t, object{})
	path, _ := demo(t, "cinnamon-buns.hcl")
	path = strings.TrimSuffix(path, "cinnamon-buns.hcl") + "typed.hcl"
	diags := c.open(path, rolls)
	found := map[string]string{}
	for _, d := range diags {
		found[d.Code] = d.Message
	}
	if !strings.Contains(found[""], "cinamon") || found["salt-high"] == "" {
		t.Errorf("a problem does not stand beside the findings: %v", found)
	}
	ask := func(method, mark string, more object) object {
		_, p := at(rolls, mark)
		params := object{"textDocument": object{"uri": uri(path)}, "position": p}
		for k, v := range more {
			params[k] = v
		}
		var got object
		c.call("textDocument/"+method, params, &got)
		return got
	}
	text := func(mark string) string {
		got := ask("hover", mark, nil)
		if got == nil {
			return ""
		}
		return fmt.Sprint(got["contents"].(object)["value"])
	}
	for mark, want := range map[string][]string{
		`"wa|ter"`:     {"60 %", "water 99.9"},
		`"plain |é`:    {"hydration: 60 %", "salt: 3 %"},
		`{ mix  |=`:    {"mix 8 min", "begins at", "middle at its end"},
		`fill = "j|am`: {"fill jam"},
	} {
		got := text(mark)
		for _, w := range want {
			if !strings.Contains(got, w) {
				t.Errorf("hover at %s lacks %q: %s", mark, w, got)
			}
		}
	}
	def := ask("definition", `fill = "j|am`, nil)
	if line := def["range"].(object)["start"].(object)["line"]; line != float64(14) {
		t.Errorf("jam is defined at line %v", line)
	}
	changes := ask("rename", `filling "j|am"`, object{"newName": "jelly"})["changes"]
	edits := changes.(object)[uri(path)]
	if n := len(edits.(list)); n != 2 {
		t.Errorf("%d places renamed: %v", n, edits)
	}
	if err := c.try("textDocument/rename", object{"textDocument": object{"uri": uri(path)},
		"position": object{"line": 14, "character": 12}, "newName": "a\"b"}, nil); err == nil {
		t.Error("a quote is taken into a name")
	}
}

func TestCompletion(t *testing.T) {
	c := start(t, object{})
	path, _ := demo(t, "cinnamon-buns.hcl")
	path = strings.TrimSuffix(path, "cinnamon-buns.hcl") + "typed.hcl"
	c.open(path, "")
	version := 1
	const (
		jam     = "formula \"R\" {\n  filling \"jam\" { ingredients = { \"sugar\" = \"1 g\" } }\n"
		dough   = "  dough \"d\" {\n"
		inDough = "formula \"R\" {\n" + dough
		list    = "    ingredients = {\n      "
		steps   = "    ingredients = { \"water\" = \"1 l\" }\n    steps = [\n      { "
	)
	for mark, want := range map[string]string{
		"for|":                               "formula",
		"formula \"R\" {\n  do|":             "dough",
		"formula \"R\" {\n  family = \"bri|": "brioche rich",
		inDough + "    ing|":                 "ingredients",
		inDough + list + "\"bread flour\" = \"1 kg\"\n      \"unsal|": "unsalted butter",
		inDough + list + "\"milk\" = { amount = \"1 l\", te|":         "temp",
		inDough + list + "\"whole milk\" = \"80 |":                    "80 g",
		inDough + steps + "ba|":                                       "bake",
		inDough + steps + "rest = \"1 h\", at = \"fr|":                "fridge",
		inDough + steps + "mix = \"1 min\", by = \"|":                 "spiral",
		jam + dough + steps + "fill = \"|":                            "jam",
		jam + dough + list + "\"the |":                                "the jam",
		"rule \"x\" {\n  on = \"dough\"\n  when = \"dough.su|":        "dough.sugar_pct",
		"rule \"x\" {\n  on = \"dough\"\n  limits = { most = 3 }\n" +
			"  when = \"dough.sugar_pct > limit.|": "limit.most",
		"rule \"x\" {\n  say = \"Sugar is {dough.sug|": "dough.sugar_pct",
		"house \"k\" {\n  set \"salt-|":                "salt-high",
		"house \"k\" {\n  waive \"|":                   "salt-high",
	} {
		text := strings.TrimSuffix(mark, "|")
		version++
		c.change(path, version, object{"text": text})
		_, p := at(text+" ", text+"| ")
		var got struct{ Items []struct{ Label string } }
		c.call("textDocument/completion",
			object{"textDocument": object{"uri": uri(path)}, "position": p}, &got)
		labels := map[string]bool{}
		for _, i := range got.Items {
			labels[i.Label] = true
		}
		if !labels[want] {
			t.Errorf("%q offers %d words and not %q", text, len(got.Items), want)
		}
	}
}

// TestActions makes a mend as an edit: the finding goes, and nothing else of the text changes.
func TestActions(t *testing.T) {
	c := start(t, object{})
	path, text := demo(t, "second-draft.hcl")
	var at diagnostic
	for _, d := range c.open(path, text) {
		if d.Code == "core-unsafe" {
			at = d
		}
	}
	if at.Code == "" {
		t.Fatal("no core-unsafe in the second draft")
	}
	var got []struct {
		Title string
		Edit  struct {
			Changes map[string][]struct {
				Range   rng
				NewText string
			}
		}
	}
	c.call("textDocument/codeAction", object{"textDocument": object{"uri": uri(path)},
		"range": at.Range, "context": object{"diagnostics": list{}}}, &got)
	if len(got) == 0 {
		t.Fatal("no action")
	}
	edits := got[0].Edit.Changes[uri(path)]
	if len(edits) == 0 {
		t.Fatalf("no edit: %+v", got[0])
	}
	var changes list
	for i := len(edits) - 1; i >= 0; i-- { // from the end, so that places stay true
		changes = append(changes, object{"range": edits[i].Range, "text": edits[i].NewText})
	}
	for _, d := range c.change(path, 2, changes...) {
		if d.Code == "core-unsafe" || d.Code == "" {
			t.Errorf("after %q: %s", got[0].Title, d.Message)
		}
	}
}

// TestTyping types a formula letter by letter.
func TestTyping(t *testing.T) {
	c := start(t, object{})
	path, text := demo(t, "plain-milk-loaf.hcl")
	path = strings.TrimSuffix(path, "plain-milk-loaf.hcl") + "typed.hcl"
	c.open(path, "")
	judged, states := 0, 0
	begun, silent := strings.Index(text, `"1`), 0 // the first ingredient's amount
	line, character := 0, 0
	for i, r := range text {
		states++
		diags := c.change(path, i+2, object{"text": string(r), "range": object{
			"start": object{"line": line, "character": character},
			"end":   object{"line": line, "character": character}}})
		character++
		if r == '\n' {
			line, character = line+1, 0
		}
		if slices.ContainsFunc(diags, func(d diagnostic) bool { return d.Code != "" }) {
			judged++
		} else if i > begun {
			silent++
		}
	}
	t.Logf("%d states, %d with an answer: %d %%; from the first amount on %d of %d without",
		states, judged, 100*judged/states, silent, states-begun)
	if judged*100 < 80*states {
		t.Errorf("of %d states %d have an answer", states, judged)
	}
}
