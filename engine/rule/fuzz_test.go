package rule

import (
	"os"
	"path/filepath"
	"testing"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/house"
	"forebake/engine/kitchen"
	"forebake/engine/machine"
	"forebake/engine/rule/show"
	"forebake/engine/source"
)

// Longest text that a target looks at: what is longer only makes the
// fuzzing slow, and hostile length has tests of its own.
const fuzzBytes = 6 << 10

func seeds(f *testing.F, pattern string) {
	f.Helper()
	paths, err := filepath.Glob(filepath.FromSlash(pattern))
	if err != nil || len(paths) == 0 {
		f.Fatalf("no seeds at %s", pattern)
	}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			f.Fatal(err)
		}
		if len(text) <= fuzzBytes {
			f.Add(text)
		}
	}
}

// FuzzFormula reads any bytes as a formula file. Either there are
// problems, each at a place of the file, or every fact is an interval
// and every shipped rule answers.
func FuzzFormula(f *testing.F) {
	seeds(f, "../../formulas/*.hcl")
	for _, s := range fixedFormulas() {
		f.Add(s.Formula.Place.File.Text)
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		if len(text) > fuzzBytes {
			return
		}
		list, file, problems := readFormulas("f.hcl", text)
		checkPlaces(t, file, problems)
		if len(problems) > 0 {
			return
		}
		for _, one := range list {
			sheet := facts.NewSheet(one, kitchen.Default())
			figuresOf(t, sheet)
			for _, p := range shippedPacks() {
				judgeAll(t, p, sheet)
			}
		}
	})
}

// FuzzRules reads any bytes as a rule file with trials. Either there
// are problems, each at a place of the file, or the pack judges every
// fixed formula, describes itself and runs its trials.
func FuzzRules(f *testing.F) {
	for _, p := range shippedPacks() {
		file := anyPlace(p).File
		blocks, _ := source.Blocks(file)
		for i, b := range blocks {
			if i%7 == 0 && i+2 < len(blocks) {
				f.Add(file.Text[b.Start:blocks[i+2].End])
			}
		}
	}
	f.Add(
		[]byte(
			"rule \"r\" {\n  on = [\"bake\", \"cook\"]\n  level = \"stop\"\n  doubt = \"flag\"\n" +
				"  was = [\"old\"]\n  limits = { a_c = 1, b_pct = -2.5 }\n  when = <<-EOT\n" +
				"    step.minutes > limit.a_c\n      or round(part.sugar_pct / limit.b_pct) in " +
				"[1, 2]\n  EOT\n  say = \"{step.verb} {step.minutes} {limit.a_c} " +
				"{part.allergens} {step.is_covered} {min(step.minutes, 3) * 2}\"\n  why = \"w\"\n" +
				"  source = \"s\"\n  adjust \"step.time\" {\n    to = \"step.minutes * 2\"\n" +
				"    within = [1, 20]\n  }\n}\ncaution \"c\" {\n  on = \"part\"\n" +
				"  when = \"'milk' in part.allergens\"\n  say = \"s\"\n" +
				"  detail = \"{part.allergens}\"\n  source = \"s\"\n}\n",
		),
	)
	f.Add(
		[]byte(
			"food_safety = true\nrule \"r\" {\n  on = \"filling\"\n  level = \"stop\"\n" +
				"  doubt = \"flag\"\n  limits = { first_h = \"kitchen.cool_first_h\", " +
				"cold = \"kitchen.cold_hold_c\", room_c = \"kitchen.room_c\" }\n" +
				"  when = \"filling.mass_g > limit.first_h or limit.cold > limit.room_c\"\n" +
				"  say = \"{limit.first_h} {limit.cold} {kitchen.code_note}\"\n  why = \"w\"\n" +
				"  source = \"s\"\n}\ntrial \"t\" {\n  rule = \"r\"\n  expect = \"clear\"\n" +
				"  kitchen {\n    code = \"uk\"\n    room = \"20 C to 24 C\"\n  }\n" +
				"  formula \"t\" {\n" +
				"    filling \"f\" { ingredients = { \"sugar\" = \"1 g\" } }\n  }\n}\n",
		),
	)
	f.Fuzz(func(t *testing.T, text []byte) {
		if len(text) > fuzzBytes {
			return
		}
		file := source.New("p.hcl", text)
		pack, problems := readPack("p", []*source.File{file}, testOptions(true))
		checkPlaces(t, file, problems)
		if len(problems) > 0 {
			return
		}
		for _, sheet := range fixedFormulas() {
			judgeAll(t, pack, sheet)
			for _, fig := range pack.Figures {
				fig.Subject.Each(
					sheet.Formula,
					func(x facts.Subject) { saneFigure(t, fig, sheet.Value(fig.Fact, x)) },
				)
			}
		}
		report := RunTrials([]*Pack{pack})
		for _, v := range report.Verdicts {
			if v.Differ != "" {
				t.Fatalf("%s %s", v.Trial.Title(), v.Differ)
			}
		}
		if len(report.Verdicts)+len(report.Unknown) != len(pack.Trials) ||
			report.Rules != len(pack.Rules) {
			t.Fatalf(
				"%d trials and %d rules, and a report of %d, %d and %d",
				len(pack.Trials),
				len(pack.Rules),
				len(report.Verdicts),
				len(report.Unknown),
				report.Rules,
			)
		}
		if _, problems := Join([]*Pack{pack}, house.Default(), func(string) string {
			return ""
		}); len(problems) > 0 {
			t.Fatalf("a pack that reads does not join: %v", problems)
		}
	})
}

func anyPlace(p *Pack) source.Place {
	if len(p.Rules) > 0 {
		return p.Rules[0].Place
	}
	return p.Cautions[0].Place
}

// FuzzCondition reads any text as a rule's condition on any subject.
// Either there are problems inside the text, or the condition is judged
// on every fixed formula, and the two judges agree where its figures
// are points.
func FuzzCondition(f *testing.F) {
	subjects := []string{
		"dough",
		"part",
		"formula",
		"ingredient",
		"step",
		"bake",
		"filling",
		"soak",
	}
	limits := []expr.Limit{{Name: "sugar_pct", Value: 20}, {Name: "zero", Value: 0}}
	for i, s := range []string{
		benchCondition, "known(part.ph) and part.ph < 4.6 or not part.has_egg",
		"formula.hours > 3 ? formula.pieces in [12, 24] : 'milk' in formula.allergens",
		"abs(ingredient.pct - 3) <= max(1, limit.zero, round(part.salt_pct))",
		"step.minutes / limit.zero > 1 && step.is_covered == false",
		"bake.core_target_c >= 90 || 'é' != part.name",
		"filling.water_activity > 0.85", "let a = 1; a > 0", "reduce(1..40, #acc + #acc, 'x') == 1",
		"soak.liquid_c**2 ?? 1", "$env['x'] | len() > 1",
	} {
		f.Add(uint8(i), s)
	}
	f.Fuzz(func(t *testing.T, which uint8, text string) {
		if len(text) > expr.MaxBytes+10 {
			return
		}
		on := subjects[int(which)%len(subjects)]
		x, n, problems := parseCondition(on, text, limits)
		file := source.New("when", []byte(text))
		for i := range problems {
			if problems[i].Place.File == nil {
				t.Fatalf("%q has no place", problems[i].Text)
			}
			problems[i].Place.File = file
		}
		checkPlaces(t, file, problems)
		if x == nil {
			return
		}
		if len(problems) > 0 {
			t.Fatalf("accepted with problems: %v", problems)
		}
		second := machine.Judge{}
		for _, sheet := range fixedFormulas() {
			j := NewJudge()
			j.Open(sheet)
			for _, subject := range subjectsFor(sheet.Formula, on) {
				r := j.judge.Result(x, subject, limits).Interval()
				if !(r.Lo <= r.Hi) || r.Lo < 0 || r.Hi > 1 {
					t.Fatalf("%q comes to %v to %v", text, r.Lo, r.Hi)
				}
				if err := second.Check(&j.judge, x, n, subject, limits); err != nil {
					t.Fatalf("%q on %s: %v", text, show.Subject(subject), err)
				}
			}
		}
	})
}
