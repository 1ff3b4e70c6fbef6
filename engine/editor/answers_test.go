package editor_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

var update = flag.Bool("update", false,
	"write what the server answers into testdata/editor/answers.txt")

// asks are the asked places of testdata/editor: a file, a request,
// the text around the place with a bar at it, and what is typed
// there first.
var asks = []struct{ file, method, mark, typed string }{
	{"rolls.hcl", "hover", `"whole m|ilk"`, ""},
	{"rolls.hcl", "hover", `"farm b|utter"`, ""},
	{"rolls.hcl", "hover", `dough "roll d|ough"`, ""},
	{"rolls.hcl", "hover", `filling "j|am"`, ""},
	{"rolls.hcl", "hover", `{ mix|   =`, ""},
	{"rolls.hcl", "hover", `{ rest|  =`, ""},
	{"rolls.hcl", "hover", `{ bake|  =`, ""},
	{"rules/mine.hcl", "hover", `"dough.sugar|_pct > limit`, ""},
	{"rules/mine.hcl", "hover", `> limit.sug|ar_pct`, ""},
	{"rules/mine.hcl", "hover", `only {dough.fat|_pct}`, ""},
	{"rules/mine.hcl", "hover", `rule   = "sweet-and|-lean"`, ""},
	{"house.hcl", "hover", `set "salt-l|ow"`, ""},
	{"house.hcl", "hover", `frid|ge =`, ""},
	{"rolls.hcl", "completion", `| "bread flour"`, `"unsalted b`},
	{"rolls.hcl", "completion", `| "bread flour"`, `"the `},
	{"rolls.hcl", "completion", `= "90 g|"`, ""},
	{"rolls.hcl", "completion", `amount = "600 g", |temp`, ""},
	{"rolls.hcl", "completion", `family = "|sweet`, ""},
	{"rolls.hcl", "completion", `{ |shape = `, ""},
	{"rolls.hcl", "completion", `rest  = "1 h", |at`, ""},
	{"rolls.hcl", "completion", `at = "|room"`, ""},
	{"rolls.hcl", "completion", `by = "|spiral"`, ""},
	{"rolls.hcl", "completion", `tin = "|long tin"`, ""},
	{"rolls.hcl", "completion", `fill  = "|jam"`, ""},
	{"rolls.hcl", "completion", `  |start`, ""},
	{"rules/mine.hcl", "completion", `when   = "|dough`, "dough.su"},
	{"rules/mine.hcl", "completion", `> limit.|sugar_pct`, ""},
	{"rules/mine.hcl", "completion", `say    = "|Sugar`, "{dough.fa"},
	{"rules/mine.hcl", "completion", `  |source`, ""},
	{"rules/mine.hcl", "completion", `level  = "|note"`, ""},
	{"rules/mine.hcl", "completion", `  |why`, `adjust "`},
	{"rules/mine.hcl", "completion", `rule   = "|sweet`, ""},
	{"rules/mine.hcl", "completion", `expect = "|flagged`, ""},
	{"rules/mine.hcl", "completion", `"sugar|"       = "90`, ""},
	{"house.hcl", "completion", `set "|salt-low"`, ""},
	{"house.hcl", "completion", `limits  = { |salt_pct`, ""},
	{"house.hcl", "completion", `  |tin "long`, ""},
	{"house.hcl", "completion", `room   = "21 |C"`, ""},
	{"house.hcl", "completion", `  |fridge`, ""},
	{"house.hcl", "completion", `like = "|unsalted`, ""},
	{"house.hcl", "completion", `packs = ["|draft"`, ""},
	{"house.hcl", "completion", `  |tin "long`, `waive "`},
	{"rolls.hcl", "definition", `fill  = "j|am"`, ""},
	{"rolls.hcl", "definition", `tin = "long| tin"`, ""},
	{"rolls.hcl", "definition", `"farm b|utter"`, ""},
	{"rolls.hcl", "definition", `at = "ro|om"`, ""},
	{"rules/mine.hcl", "definition", `rule   = "sweet-and|-lean"`, ""},
	{"rules/mine.hcl", "definition", `> limit.sug|ar_pct`, ""},
	{"house.hcl", "definition", `like = "unsalted| butter"`, ""},
	{"rolls.hcl", "codeAction", `dough "roll d|ough"`, ""},
	{"rolls.hcl", "codeAction", `{ bake|  =`, ""},
	{"rolls.hcl", "codeAction", `"su|gar"`, "x"},
	{"rolls.hcl", "codeAction", `"instant yeast" = "1 %"|`, "\n      \"corn flour\" = \"10 g\""},
	{"rolls.hcl", "codeAction", `family = "sweet| dough"`, "x"},
	{"rolls.hcl", "codeAction", `tin = "long t|in"`, "i"},
	{"rolls.hcl", "codeAction", `fill  = "ja|m"`, "a"},
	{"rolls.hcl", "codeAction", `by = "spi|ral"`, "i"},
	{"rolls.hcl", "codeAction", `cover|ed = true`, "r"},
	{"rolls.hcl", "codeAction", `"roll dough" {|`, "\n    ingredents = {}"},
	{"rolls.hcl", "codeAction", `"instant yeast" = "1 %"|`, "\n      \"dulse flour\" = \"10 g\""},
	{"rolls.hcl", "codeAction", `{ bake|  =`, "e"},
	{"rules/mine.hcl", "codeAction", `dough.sugar|_pct >`, "x"},
	{"rules/mine.hcl", "codeAction", `level  = "note|"`, "e"},
	{"house.hcl", "codeAction", `set "salt-low|"`, "w"},
	{"house.hcl", "codeAction", `like = "unsalted but|ter"`, "r"},
	{"house.hcl", "codeAction", `fridg|e =`, "g"},
	{"house.hcl", "codeAction", `"300 x 100 x 100 mm" }|`, "\n\n  waive \"salt-low\" {}"},
	{"house.hcl", "codeAction", `packs = ["draf|t"`, "r"},
	{"rules/mine.hcl", "codeAction", `limit.fat|_pct"`, "t"},
	{"rules/mine.hcl", "codeAction", `sour|ce =`, "r"},
	{"rules/mine.hcl", "codeAction", `expect = "flag|ged`, "x"},
	{"rules/mine.hcl", "codeAction", `rule   = "sweet-|and`, "x"},
	{"rules/mine.hcl", "codeAction", `only {dough.fat|_pct}`, "t"},
	{"rolls.hcl", "prepareRename", `fill  = "j|am"`, ""},
	{"rolls.hcl", "rename", `fill  = "j|am"`, ""},
	{"rolls.hcl", "inlayHint", `formula| "Jam`, ""},
	{"rolls.hcl", "formatting", `"sugar"   |      =`, "   "},
	{"rules/mine.hcl", "formatting", `on   |  = "dough"`, "  "},
	{"house.hcl", "formatting", `room   |=`, "    "},
}

// shipped finds the limits of shipped rules: their figures are no matter of this test.
var shipped = regexp.MustCompile(`= [^,\n]+, as shipped`)

// TestAnswers asks of each kind of place for each thing that the server tells. What it answers
// stands as text in testdata/editor/answers.txt.
func TestAnswers(t *testing.T) {
	c := start(t, object{"textDocument": object{
		"publishDiagnostics": object{"relatedInformation": true}}})
	dir, err := filepath.Abs("../../testdata/editor")
	if err != nil {
		t.Fatal(err)
	}
	texts := map[string]string{}
	versions := map[string]int{}
	var out strings.Builder
	out.WriteString("What the editor's server answers about the files beside this one. The bar " +
		"is the place; what is\ntyped there first stands behind +.\n")
	for _, name := range []string{"house.hcl", "rules/mine.hcl", "rolls.hcl"} {
		text, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		texts[name], versions[name] = string(text), 1
		fmt.Fprintf(&out, "\n== open %s\n", name)
		for _, d := range c.open(filepath.Join(dir, name), texts[name]) {
			fmt.Fprintln(&out, shownDiagnostic(d))
		}
	}
	for _, a := range asks {
		path, text := filepath.Join(dir, a.file), texts[a.file]
		before, after, _ := strings.Cut(a.mark, "|")
		i := strings.Index(text, strings.TrimLeft(before, " ")+after)
		if i < 0 {
			t.Fatalf("%s has no %s", a.file, a.mark)
		}
		i += len(strings.TrimLeft(before, " "))
		fmt.Fprintf(&out, "\n== %s %s %s", a.method, a.file, a.mark)
		if a.typed != "" {
			fmt.Fprintf(&out, " + %s", a.typed)
			text = text[:i] + a.typed + text[i:]
			i += len(a.typed)
			versions[a.file]++
			for _, d := range c.change(path, versions[a.file], object{"text": text}) {
				if d.Code == "" {
					fmt.Fprint(&out, "\n", shownDiagnostic(d))
				}
			}
		}
		out.WriteString("\n")
		_, p := at(text, text[:i]+"|"+text[i:])
		said := c.said(a.method, path, text, p)
		said = shipped.ReplaceAllString(said, "= (a figure), as shipped")
		out.WriteString(strings.ReplaceAll(said, uri(dir)+"/", ""))
		if a.typed != "" {
			versions[a.file]++
			c.change(path, versions[a.file], object{"text": texts[a.file]})
		}
	}
	golden := filepath.Join(dir, "answers.txt")
	if *update {
		if err := os.WriteFile(golden, []byte(out.String()), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if got := out.String(); got != string(want) {
		a, b := strings.Split(got, "\n"), strings.Split(string(want), "\n")
		for i := range min(len(a), len(b)) {
			if a[i] != b[i] {
				t.Fatalf("line %d of answers.txt: the server says\n%s\nand not\n%s", i+1,
					a[i], b[i])
			}
		}
		t.Fatalf("%d lines, and not %d", len(a), len(b))
	}
}

func shownDiagnostic(d diagnostic) string {
	message, _, more := strings.Cut(d.Message, "\n")
	if more {
		message += " ..."
	}
	out := fmt.Sprintf("%d:%d-%d:%d severity %d %s: %s", d.Range.Start.Line+1,
		d.Range.Start.Character,
		d.Range.End.Line+1, d.Range.End.Character, d.Severity, d.Code, message)
	for _, r := range d.RelatedInformation {
		out += fmt.Sprintf("\n  %d:%d %s", r.Location.Range.Start.Line+1,
			r.Location.Range.Start.Character,
			r.Message)
	}
	return out
}

type edit struct {
	Range   rng
	NewText string
}

func shownEdits(list []edit) string {
	var out strings.Builder
	for _, e := range list {
		fmt.Fprintf(&out, "  %d:%d-%d:%d %q\n", e.Range.Start.Line+1, e.Range.Start.Character,
			e.Range.End.Line+1, e.Range.End.Character, e.NewText)
	}
	return out.String()
}

// shownChanges lists the edits of each file.
func shownChanges(changes map[string][]edit) string {
	var out strings.Builder
	for _, of := range slices.Sorted(func(yield func(string) bool) {
		for k := range changes {
			if !yield(k) {
				return
			}
		}
	}) {
		out.WriteString(of + "\n" + shownEdits(changes[of]))
	}
	return out.String()
}

// mostShown is how many words of a completion are shown.
const mostShown = 6

// said asks and gives the answer as lines.
func (c *client) said(method, path, text string, p object) string {
	c.t.Helper()
	params := object{"textDocument": object{"uri": uri(path)}, "position": p}
	var out strings.Builder
	name := "textDocument/" + method
	switch method {
	case "hover":
		var got *struct{ Contents struct{ Value string } }
		c.call(name, params, &got)
		if got == nil {
			return "nothing\n"
		}
		return got.Contents.Value + "\n"
	case "completion":
		var got struct {
			Items []struct {
				Label, Detail string
				TextEdit      edit
			}
		}
		c.call(name, params, &got)
		line := strings.Split(text, "\n")[p["line"].(int)]
		for _, i := range got.Items {
			start := min(i.TextEdit.Range.Start.Character, len(line))
			typed := line[start:min(p["character"].(int), len(line))]
			if !strings.HasPrefix(strings.Trim(i.TextEdit.NewText, `"`), strings.Trim(typed, `"`)) {
				continue // as a client filters
			}
			if n := strings.Count(out.String(), "\n"); n == mostShown {
				out.WriteString("...\n")
				break
			}
			fmt.Fprintf(&out, "%s (%s) writes %s\n", i.Label, i.Detail, i.TextEdit.NewText)
		}
		if out.Len() == 0 {
			return "nothing\n"
		}
	case "definition":
		var got *struct {
			URI   string
			Range rng
		}
		c.call(name, params, &got)
		if got == nil {
			return "nothing\n"
		}
		fmt.Fprintf(&out, "%s:%d:%d\n", got.URI, got.Range.Start.Line+1, got.Range.Start.Character)
	case "codeAction":
		delete(params, "position")
		params["range"] = object{"start": p, "end": p}
		params["context"] = object{"diagnostics": list{}}
		var got []struct {
			Title string
			Edit  struct{ Changes map[string][]edit }
		}
		c.call(name, params, &got)
		if len(got) == 0 {
			return "nothing\n"
		}
		for _, a := range got {
			out.WriteString(a.Title + "\n" + shownChanges(a.Edit.Changes))
		}
	case "prepareRename":
		var got struct {
			Range       rng
			Placeholder string
		}
		c.call(name, params, &got)
		fmt.Fprintf(&out, "%d:%d %s\n", got.Range.Start.Line+1, got.Range.Start.Character,
			got.Placeholder)
	case "rename":
		params["newName"] = "jelly"
		var got struct{ Changes map[string][]edit }
		c.call(name, params, &got)
		out.WriteString(shownChanges(got.Changes))
	case "inlayHint":
		params["range"] = object{"start": object{"line": 0, "character": 0},
			"end": object{"line": 99, "character": 0}}
		var got []struct {
			Position pos
			Label    string
		}
		c.call(name, params, &got)
		for _, h := range got {
			fmt.Fprintf(&out, "%s  [%s]\n",
				strings.TrimSpace(strings.Split(text, "\n")[h.Position.Line]),
				h.Label)
		}
	case "formatting":
		params["options"] = object{"tabSize": 2, "insertSpaces": true}
		var got []edit
		c.call(name, params, &got)
		out.WriteString(shownEdits(got))
	}
	return out.String()
}
