package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/kitchen"
	"forebake/engine/rule"
	"forebake/engine/trial"
)

// declared is a block with one value a key, so that any can
// be replaced.
type declared struct {
	kind, label string // label "" for a block without one
	attrs       [][2]string
	inner       []*declared
}

func (b *declared) set(key, value string) *declared {
	out := *b
	out.attrs = nil
	had := false
	for _, a := range b.attrs {
		if a[0] == key {
			a[1], had = value, true
		}
		out.attrs = append(out.attrs, a)
	}
	if !had {
		out.attrs = append(out.attrs, [2]string{key, value})
	}
	return &out
}

func (b *declared) write(w *strings.Builder) {
	if b.kind != "" {
		w.WriteString(b.kind + " " + b.label + " {\n")
	}
	for _, a := range b.attrs {
		w.WriteString(a[0] + " = " + a[1] + "\n")
	}
	for _, in := range b.inner {
		in.write(w)
	}
	if b.kind != "" {
		w.WriteString("}\n")
	}
}

func (b *declared) String() string {
	var w strings.Builder
	b.write(&w)
	return w.String()
}

// each calls f for the block and every block in it, with the whole
// after the block is replaced.
func (b *declared) each(f func(one *declared, with func(*declared) *declared)) {
	var walk func(one *declared, with func(*declared) *declared)
	walk = func(one *declared, with func(*declared) *declared) {
		f(one, with)
		for i, in := range one.inner {
			walk(in, func(changed *declared) *declared {
				out := *one
				out.inner = append(
					append(append([]*declared{}, one.inner[:i]...), changed),
					one.inner[i+1:]...)
				return with(&out)
			})
		}
	}
	walk(b, func(changed *declared) *declared { return changed })
}

// keysDeclared lists a block's possible keys, from its reader's tables.
func keysDeclared(kind string) []string {
	var keys []string
	switch kind {
	case "formula":
		return formula.FormulaKeys
	case "dough", "filling":
		return formula.PartKeys
	case "kitchen":
		for _, k := range kitchen.Keys {
			keys = append(keys, k.Name)
		}
	case "rule":
		return rule.RuleKeys
	case "caution":
		return rule.CautionKeys
	case "trial":
		return trial.Keys
	case "adjust":
		return []string{"to", "within"}
	case "": // the head of a rule file
		return []string{"needs", "about"}
	}
	for _, k := range house.Keys {
		if k.Block == kind {
			keys = append(keys, k.Name)
		}
	}
	return keys
}

// TestEveryNameIsPrintable puts a hostile text in place of each name
// and value that a formula, a house and a rule file can hold, one at a
// time, by the readers' declarations. Accepted or refused, no verb
// prints it raw.
func TestEveryNameIsPrintable(t *testing.T) {
	if testing.Short() {
		t.Skip("it runs the program some thousand times")
	}
	h := hcl(hostileText)
	braceless := hcl(strings.ReplaceAll(hostileText, "{0}", ""))
	attr := func(list ...string) (out [][2]string) {
		for i := 0; i < len(list); i += 2 {
			out = append(out, [2]string{list[i], list[i+1]})
		}
		return out
	}
	buns := &declared{
		kind:  "formula",
		label: `"Buns"`,
		attrs: attr("makes", `"24 pieces"`),
		inner: []*declared{
			{
				kind:  "dough",
				label: `"bun dough"`,
				attrs: attr(
					"ingredients",
					`{ "bread flour" = "?", "water" = "300 g", "egg" = "50 g", `+
						`"mill flour" = "9 g" }`,
					"steps",
					`[{ mix = "5 min" }, { rest = "1 h", at = "room" }, { fill = "cream" }, `+
						`{ bake = "20 min", at = "200 C", tin = "loaf" }]`,
				),
			},
			{
				kind:  "filling",
				label: `"cream"`,
				attrs: attr(
					"ingredients",
					`{ "whole milk" = "100 g" }`,
					"steps",
					`[{ cool = "9 h", at = "room" }]`,
				),
			}},
	}
	kitchenHouse := &declared{
		kind:  "house",
		label: `"h"`,
		attrs: attr("packs", `["./own.hcl"]`),
		inner: []*declared{
			{kind: "kitchen"},
			{kind: "tin", label: `"loaf"`, attrs: attr("inside", `"300 x 100 x 100 mm"`)},
			{
				kind:  "ingredient",
				label: `"mill flour"`,
				attrs: attr("like", `"bread flour"`, "allergens", `[]`, "because", `"tested"`),
			},
			{
				kind:  "set",
				label: `"own-two"`,
				attrs: attr("limits", `{ a_h = 3 }`, "because", `"ours"`),
			},
			{kind: "waive", label: `"own-one"`, attrs: attr("because", `"ours"`)}},
	}
	texts := attr(
		"say",
		`"Wrong: {part.mass_g}."`,
		"why",
		`"It spoils."`,
		"source",
		`"common practice"`,
	)
	pack := &declared{attrs: attr("food_safety", "true"), inner: []*declared{
		{
			kind:  "rule",
			label: `"own-one"`,
			attrs: append(
				attr("on", `"part"`, "level", `"stop"`, "when", `"part.mass_g >= 0"`),
				texts...),
		},
		{
			kind:  "rule",
			label: `"own-two"`,
			attrs: append(
				attr(
					"on",
					`"part"`,
					"level",
					`"stop"`,
					"limits",
					`{ a_h = 2 }`,
					"when",
					`"part.mass_g > limit.a_h"`,
				),
				texts...),
			inner: []*declared{{kind: "adjust", label: `"water"`}},
		},
		{
			kind:  "caution",
			label: `"own-caution"`,
			attrs: attr(
				"on",
				`"formula"`,
				"when",
				`"true"`,
				"say",
				`"Mind it."`,
				"source",
				`"ours"`,
			),
		},
		{
			kind:  "trial",
			label: `"a trial"`,
			attrs: attr("rule", `"own-one"`, "expect", `"clear"`),
			inner: []*declared{{kind: "formula", label: `"t"`,
				inner: []*declared{
					{
						kind:  "dough",
						label: `"d"`,
						attrs: attr("ingredients", `{ "water" = "9 g" }`),
					},
				}}},
		}}}

	folder(t, nil)
	write := func(name, text string) {
		if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	base := map[string]*declared{"a.hcl": buns, "house.hcl": kitchenHouse, "own.hcl": pack}
	for name, b := range base {
		write(name, b.String())
	}
	write("b.hcl", strings.Replace(buns.String(), "300 g", "400 g", 1))
	verbs := strings.Split(
		"check a.hcl|check --as lines a.hcl|check --as json a.hcl|check --as sarif a.hcl|check "+
			"--as markdown a.hcl|mend a.hcl|facts --all a.hcl|facts --history a.hcl|facts --as "+
			"json a.hcl|compare a.hcl b.hcl|why own-two|packs|packs --as "+
			"markdown|trial|__complete why |__complete trial ",
		"|",
	)
	tried, judged := 0, 0
	try := func(what string) {
		t.Helper()
		t.Run(what, func(t *testing.T) {
			for i, v := range verbs {
				status := heldClean(t, strings.Split(v, " "), nil)
				if i == 0 && status != exitUnused {
					judged++
				}
			}
		})
		tried++
	}
	try("nothing")
	if judged != 1 {
		t.Fatal("the files without a hostile text are not judged")
	}
	for name, whole := range base {
		whole.each(func(one *declared, with func(*declared) *declared) {
			put := func(what string, changed *declared) {
				write(name, with(changed).String())
				try(name + " " + one.kind + " " + one.label + " " + what)
			}
			if one.label != "" {
				changed := *one
				changed.label = h
				put("label", &changed)
			}
			for _, key := range keysDeclared(one.kind) {
				value := h
				if key == "say" || key == "detail" ||
					key == "short" { // a brace would begin a figure
					value = braceless
				}
				put(key, one.set(key, value))
				switch key {
				case "limits", "ingredients":
					put(key+" name", one.set(key, "{ "+h+" = 3 }"))
					put(key+" value", one.set(key, "{ \"water\" = "+h+" }"))
				case "packs", "aliases", "allergens", "on", "was":
					put(key+" list", one.set(key, "["+h+"]"))
				case "steps":
					put("step of no verb", one.set(key, "[{ "+h+" = \"5 min\" }]"))
					for _, o := range formula.StepOptions {
						put(
							"step "+o.Name,
							one.set(
								key,
								`[{ mix = "5 min" }, { bake = "20 min", `+o.Name+" = "+h+" }]",
							),
						)
					}
				}
			}
		})
		write(name, whole.String())
	}
	for _, o := range formula.IngredientOptions {
		dough := buns.inner[0].set(
			"ingredients",
			`{ "water" = { amount = "300 g", `+o.Name+" = "+h+" } }",
		)
		write(
			"a.hcl",
			(&declared{kind: "formula", label: `"Buns"`, inner: []*declared{dough}}).String(),
		)
		try("ingredient " + o.Name)
	}
	write("a.hcl", buns.String())
	path := strings.NewReplacer("/", "", "\x00", "").Replace(hostileText) + ".hcl"
	write(path, pack.String())
	write("house.hcl", kitchenHouse.set("packs", "["+hcl("./"+path)+"]").String())
	try("the path of a pack")
	write("house.hcl", kitchenHouse.String())
	if err := os.Remove(path); err != nil {
		t.Fatal(err)
	}
	write(filepath.Join(".", path), kitchenHouse.String())
	write("house.hcl", `house "h" {`+"\nlike = "+hcl("./"+path)+"\n}\n")
	try("the path of an included house")
	if tried < 100 || judged < 30 {
		t.Errorf("only %d places were tried, and %d of them judged", tried, judged)
	}
	t.Logf("%d places, %d of them judged", tried, judged)
}
