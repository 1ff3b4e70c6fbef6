package editor_test

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"forebake/engine"
	"forebake/engine/editor"
	"forebake/engine/files"
	"forebake/engine/finding"
)

// counted counts what is read from the disk.
type counted struct {
	files.Texts
	mutex sync.Mutex
	read  []string
}

func (c *counted) Read(path string, k files.Kind) ([]byte, error) {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	c.read = append(c.read, path)
	return c.Texts.Read(path, k)
}

// kitchen copies the files of testdata/editor into a folder of
// the test.
func kitchen(t *testing.T) (dir string, texts map[string]string) {
	t.Helper()
	dir, texts = t.TempDir(), map[string]string{}
	for _, name := range []string{"house.hcl", "rules/mine.hcl", "rolls.hcl"} {
		text, err := os.ReadFile(filepath.Join("../../testdata/editor", name))
		if err != nil {
			t.Fatal(err)
		}
		path := filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, text, 0o666); err != nil {
			t.Fatal(err)
		}
		texts[name] = string(text)
	}
	return dir, texts
}

func codes(list []diagnostic) []string {
	var out []string
	for _, d := range list {
		out = append(out, d.Code)
	}
	slices.Sort(out)
	return out
}

// TestUnsavedTexts types into a house and a rule file: an open
// formula's findings follow, saved or not, and go back when the text
// is closed.
func TestUnsavedTexts(t *testing.T) {
	c := start(t, object{})
	dir, texts := kitchen(t)
	path := func(name string) string { return filepath.Join(dir, name) }
	rolls := path("rolls.hcl")
	first := c.open(rolls, texts["rolls.hcl"])
	has := func(list []diagnostic, code string) bool { return slices.Contains(codes(list), code) }
	if !has(first, "salt-high") || has(first, "sweet-and-lean") {
		t.Fatalf("before: %v", codes(first))
	}
	more := strings.Replace(texts["house.hcl"], "set \"salt-low\"",
		"set \"salt-high\" {\n    limits = { salt_pct = 4 }\n  }\n\n  set \"salt-low\"", 1)
	c.open(path("house.hcl"), texts["house.hcl"])
	c.next(rolls, 1)
	c.change(path("house.hcl"), 2, object{"text": more})
	if got := c.next(rolls, 1); has(got, "salt-high") {
		t.Errorf("the unsaved house does not count: %v", codes(got))
	}
	stricter := strings.NewReplacer("sugar_pct = 15", "sugar_pct = 5", "fat_pct = 10 }",
		"fat_pct = 20 }")
	c.notify("textDocument/didOpen",
		object{"textDocument": object{"uri": uri(path("rules/mine.hcl")),
			"languageId": "hcl", "version": 1, "text": stricter.Replace(texts["rules/mine.hcl"])}})
	if got := c.next(rolls, 1); !has(got, "sweet-and-lean") {
		t.Errorf("the unsaved rule does not count: %v", codes(got))
	}
	for _, name := range []string{"house.hcl", "rules/mine.hcl"} {
		c.notify("textDocument/didClose", object{"textDocument": object{"uri": uri(path(name))}})
		first = c.next(rolls, 1)
	}
	if !has(first, "salt-high") || has(first, "sweet-and-lean") {
		t.Errorf("after closing: %v", codes(first))
	}
	// Another program writes the house.
	if err := os.WriteFile(path("house.hcl"), []byte(more), 0o666); err != nil {
		t.Fatal(err)
	}
	c.notify("workspace/didChangeWatchedFiles", object{"changes": list{}})
	if got := c.next(rolls, 1); has(got, "salt-high") {
		t.Errorf("the house on the disk does not count: %v", codes(got))
	}
	// A broken house is told, and nothing passes for clear.
	c.open(path("house.hcl"), strings.Replace(more, "kitchen {", "kitchn {", 1))
	got := c.next(rolls, 1)
	if len(got) == 0 || got[0].Code != "" || !strings.Contains(got[0].Message, "kitchn") {
		t.Errorf("the broken house is not told: %+v", got)
	}
}

// TestTrialsOnSave runs the trials of a rule file when it is saved.
func TestTrialsOnSave(t *testing.T) {
	c := start(t, object{})
	dir, texts := kitchen(t)
	path := filepath.Join(dir, "rules/mine.hcl")
	wrong := strings.Replace(texts["rules/mine.hcl"], `expect = "flagged"`, `expect = "clear"`, 1)
	if got := c.open(path, wrong); len(got) > 0 {
		t.Errorf("before saving: %+v", got)
	}
	c.notify("textDocument/didSave", object{"textDocument": object{"uri": uri(path)}})
	got := c.next(path, 1)
	if len(got) != 1 || got[0].Code != "trial" || got[0].Range.Start.Line != 12 ||
		!strings.Contains(got[0].Message, "expects clear") {
		t.Errorf("after saving: %+v", got)
	}
}

// TestRuleFileOfNoHouse opens a rule file that its house does not name:
// what the house sets of other rules is no problem.
func TestRuleFileOfNoHouse(t *testing.T) {
	c := start(t, object{})
	dir, texts := kitchen(t)
	own := strings.ReplaceAll(texts["rules/mine.hcl"], "sweet-and-lean", "sweet-and-plain")
	if got := c.open(filepath.Join(dir, "draft-rules.hcl"), own); len(got) > 0 {
		t.Errorf("%+v", got)
	}
}

// TestReadsOnce types into a formula: no house and no pack is
// read again.
func TestReadsOnce(t *testing.T) {
	c := start(t, object{})
	disk := &counted{Texts: files.Disk{}}
	editor.ReadFrom(c.s, disk)
	dir, texts := kitchen(t)
	path := filepath.Join(dir, "rolls.hcl")
	c.open(path, texts["rolls.hcl"])
	if len(disk.read) < 2 {
		t.Fatalf("read at first: %q", disk.read)
	}
	before := len(disk.read)
	for i := range 20 {
		c.change(path, i+2, object{"text": "# " + strings.Repeat("x", i) + "\n" +
			texts["rolls.hcl"]})
	}
	for _, name := range disk.read[before:] {
		if strings.HasSuffix(name, ".hcl") && !strings.Contains(name, "log") {
			t.Errorf("read again: %s", name)
		}
	}
}

// TestSeveralDocuments opens all demo formulas, types into them by
// turns and closes them: each keeps its own answer, and a closed
// one none.
func TestSeveralDocuments(t *testing.T) {
	c := start(t, object{})
	want, texts := map[string]string{}, map[string]string{}
	var paths []string
	for _, name := range []string{"first-draft.hcl", "second-draft.hcl", "custard-buns.hcl",
		"plain-milk-loaf.hcl"} {
		path, text := demo(t, name)
		paths, texts[path] = append(paths, path), text
		want[path] = fmt.Sprint(codes(c.open(path, text)))
	}
	for version := 2; version < 6; version++ {
		for _, path := range paths {
			got := c.change(path, version,
				object{"text": strings.Repeat("\n", version) + texts[path]})
			if now := fmt.Sprint(codes(got)); now != want[path] {
				t.Errorf("%s, version %d: %s, and at first %s", path, version, now, want[path])
			}
		}
	}
	for _, path := range paths[1:] {
		c.notify("textDocument/didClose", object{"textDocument": object{"uri": uri(path)}})
	}
	c.change(paths[0], 99, object{"text": texts[paths[0]]})
	if n := editor.Kept(c.s); n != 1 {
		t.Errorf("%d answers are kept of one open text", n)
	}
}

// TestTypedOver asks about a text and types on at once: the request
// ends as the protocol says, and the next is answered for the new text.
func TestTypedOver(t *testing.T) {
	c := start(t, object{})
	path, text := demo(t, "first-draft.hcl")
	c.open(path, text)
	var wait sync.WaitGroup
	for i := range 12 {
		wait.Add(1)
		go func() {
			defer wait.Done()
			err := c.try("textDocument/codeAction", object{"textDocument": object{"uri": uri(path)},
				"range": object{
					"start": object{"line": 9 + i, "character": 0},
					"end":   object{"line": 9 + i, "character": 0},
				},
				"context": object{"diagnostics": list{}}}, nil)
			if err != nil && !strings.Contains(err.Error(), "-32801") {
				t.Errorf("request %d: %v", i, err)
			}
		}()
		c.change(path, i+2, object{"text": strings.Repeat("\n", i) + text})
	}
	wait.Wait()
	var got []object
	c.call("textDocument/codeAction", object{"textDocument": object{"uri": uri(path)},
		"range": object{
			"start": object{"line": 0, "character": 0},
			"end":   object{"line": 99, "character": 0},
		},
		"context": object{"diagnostics": list{}}}, &got)
	if len(got) < 3 {
		t.Errorf("%d actions", len(got))
	}
}

// TestNeverFalselyClear types a draft letter by letter, and takes
// single bytes out of it. Where check takes the text, the editor has
// check's findings; else it says what is wrong. So no state passes
// for clear.
func TestNeverFalselyClear(t *testing.T) {
	c := start(t, object{})
	path, text := demo(t, "first-draft.hcl")
	dir := filepath.Dir(path)
	path = filepath.Join(dir, "typed.hcl")
	c.open(path, "")
	e := engine.New()
	version, states, judged, clean := 1, 0, 0, 0
	try := func(what, text string) {
		states++
		version++
		got := c.change(path, version, object{"text": text})
		wrong := 0
		found := map[string]int{}
		for _, d := range got {
			switch d.Code {
			case "":
				wrong++
			case "cautions":
			default:
				found[fmt.Sprintf("%d %s", d.Range.Start.Line+1, d.Code)]++
			}
		}
		if len(got) > wrong {
			judged++
		}
		res := e.Check([]engine.Input{{Name: filepath.ToSlash(path), Text: []byte(text), Dir: dir}})
		if len(res.Problems) > 0 {
			if wrong == 0 {
				t.Errorf("%s: check says %v, and the editor has no problem", what, res.Problems[0])
			}
			return
		}
		clean++
		want := map[string]int{}
		for _, f := range res.Findings {
			if f.Answer != finding.Waived {
				want[fmt.Sprintf("%d %s", f.Place.Line(), f.Rule)]++
			}
		}
		if wrong > 0 || fmt.Sprint(found) != fmt.Sprint(want) {
			t.Errorf("%s: %d problems, %v, and check has %v", what, wrong, found, want)
		}
	}
	for at := 1; at <= len(text); at += 5 {
		try(fmt.Sprintf("the first %d bytes", at), text[:at])
	}
	for at := 0; at < len(text); at += 11 {
		try(fmt.Sprintf("without byte %d", at), text[:at]+text[at+1:])
	}
	t.Logf("%d states, %d with an answer, %d that check takes", states, judged, clean)
	if judged*100 < 80*states || clean == 0 {
		t.Errorf("of %d states %d have an answer, and check takes %d", states, judged, clean)
	}
}

// TestMemoryStaysLevel types for long: what the server keeps does not
// grow with the edits.
func TestMemoryStaysLevel(t *testing.T) {
	c := start(t, object{})
	path, text := demo(t, "plain-milk-loaf.hcl")
	path = strings.TrimSuffix(path, "plain-milk-loaf.hcl") + "typed.hcl"
	c.open(path, text)
	version := 1
	heap := func(edits int) uint64 {
		for range edits {
			version++
			c.change(path, version, object{"text": fmt.Sprintf("# %d\n%s", version, text)})
		}
		least := uint64(math.MaxUint64)
		for range 5 { // the server may be at work still
			var m runtime.MemStats
			runtime.GC()
			runtime.ReadMemStats(&m)
			least = min(least, m.HeapAlloc)
		}
		return least
	}
	before := heap(40)
	after := heap(200)
	if after > before+before/4+(2<<20) {
		t.Errorf("%d KB after 40 edits, %d KB after 240", before>>10, after>>10)
	}
}
