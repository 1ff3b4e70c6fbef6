package engine_test

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"sort"
	"strings"
	"testing"
)

// mayKnow says which packages of the project each package may import.
// Any other arrow is forbidden: the reason stands beside the packages
// that must not look up or sideways.
var mayKnow = map[string][]string{
	// Leaves: numbers, words and texts, for anybody's use. They must
	// not change when a rule or a formula does.
	"engine/figure": {
		"engine/source",
	}, // the place at which a missing figure is to be written
	// compiles a pattern when it is first used
	"engine/quantity": {"engine/spelling"},
	"engine/source":   nil,
	// reads and writes bytes; what a text says is not its business
	"engine/files":                 nil,
	"engine/spelling":              nil,
	"engine/family":                nil, // published ranges; what a dough is belongs to formula
	"engine/larder/internal/memo":  nil,
	"engine/larder/internal/names": nil,
	"engine/larder": {
		"engine/larder/internal/memo",
		"engine/larder/internal/names",
		"engine/spelling",
	}, // what ingredients are made of, never how much of them is in a dough
	"engine/larder/page": {
		"engine/larder",
		"engine/quantity",
		"engine/source",
	}, // prints ingredients; no formula
	// bodies, radiation and roots of conduction
	"engine/science/bake": {"engine/science/heat"},
	// curves by temperature, and states
	"engine/science/collocation": {"engine/science/heat"},
	// science: numbers in, numbers out, checkable against a book
	"engine/science/bakersmath": nil,
	"engine/science/ferment":    nil,
	"engine/science/geometry":   nil,
	"engine/science/heat":       nil,
	// curves by temperature, for its solver
	"engine/science/melt":    {"engine/science/heat"},
	"engine/science/microbe": nil,
	"engine/science/mould":   nil,
	// chooses among the solvers, and hands them their curves
	"engine/science/solve": {
		"engine/science/bake",
		"engine/science/collocation",
		"engine/science/ferment",
		"engine/science/heat",
		"engine/science/melt",
	},
	"engine/science/wateractivity": nil,
	"rules":                        nil, // data
	"engine/seed":                  nil, // for tests alone
	"engine/jsontext/schema":       nil, // for tests alone

	"engine/science/internal/published": nil, // for tests alone

	// corrected lines of a text that does not parse; it knows no words
	"engine/slips": {"engine/source", "engine/spelling"},
	"engine/reading": {
		"engine/quantity",
		"engine/source",
		"engine/spelling",
	}, // HCL expressions to values; it must not know what they mean
	"engine/kitchen": {
		"engine/quantity",
		"engine/reading",
		"engine/science/microbe",
		"engine/source",
	}, // the law that a kitchen works by is part of it; its figures are published ones
	"engine/finding": {
		"engine/source",
	}, // what an answer is, never how it was found
	"engine/said": {
		"engine/larder",
		"engine/quantity",
		"engine/said/unread",
		"engine/spelling",
	}, // words that mean a figure; it reads no file and no formula
	"engine/said/unread": {
		"engine/larder",
		"engine/spelling",
	}, // which words may be told as not read; it knows no formula
	"engine/said/oven": {
		"engine/quantity",
		"engine/spelling",
	}, // an oven's heat on several scales; it knows no formula
	"engine/said/tins": {
		"engine/figure", "engine/quantity", "engine/said", "engine/spelling",
	}, // the names of tins; it knows no formula
	"engine/said/times": {
		"engine/quantity", "engine/said", "engine/spelling",
	}, // two times in one text; it knows no formula
	"engine/said/work": {
		"engine/said", "engine/spelling",
	}, // the work of a step; it knows no formula
	"engine/said/counts": {
		"engine/quantity", "engine/said", "engine/said/unread", "engine/spelling",
	}, // how many pieces; it knows no formula
	// units that sizes leave out
	"engine/said/sheets": {"engine/said", "engine/spelling"},
	// The figures that stand plainly in a text, asked last: they know quantities and ovens.
	"engine/said/plainly": {"engine/quantity", "engine/said/oven", "engine/spelling"},
	// words for folds of a dough; it knows no formula
	"engine/said/turns": {"engine/spelling"},
	// what is around a part; it knows no formula
	"engine/said/around": {"engine/spelling"},
	"engine/said/puton": {
		"engine/figure",
		"engine/larder",
		"engine/quantity",
		"engine/said",
		"engine/said/unread",
		"engine/spelling",
	}, // words for what a step puts on; it knows no formula
	"engine/said/beside": {
		"engine/larder",
		"engine/quantity",
		"engine/said/unread",
		"engine/spelling",
	}, // words beside an amount; it knows no formula
	"engine/said/behind": {
		"engine/larder",
		"engine/quantity",
		"engine/said",
		"engine/said/beside",
		"engine/said/unread",
		"engine/spelling",
	}, // clauses behind an amount; it knows no formula
	"engine/said/sponge": {"engine/spelling"}, // a sponge in words; it knows no formula
	"engine/formula/values": {
		"engine/figure",
		"engine/quantity",
		"engine/reading",
		"engine/said",
		"engine/said/around",
		"engine/said/beside",
		"engine/said/counts",
		"engine/said/turns",
		"engine/source",
	}, // values that hang on nothing else in a formula
	"engine/formula/culture": {
		"engine/figure",
		"engine/larder",
		"engine/science/bakersmath",
	}, // how wet a sourdough is; it knows no formula
	"engine/formula/refusal": {
		"engine/family",
		"engine/larder",
		"engine/quantity",
		"engine/reading",
		"engine/source",
		"engine/spelling",
	}, // what is said of an ingredient that is not read
	"engine/formula": {
		"engine/formula/culture",
		"engine/formula/values",
		"engine/family",
		"engine/larder",
		"engine/quantity",
		"engine/reading",
		"engine/said/tins",
		"engine/said",
		"engine/said/around",
		"engine/said/puton",
		"engine/said/unread",
		"engine/source",
		"engine/spelling",
		"engine/science/bake",
		"engine/science/bakersmath",
		"engine/science/heat",
	}, // the model, and a row for each verb, option and way; it reads no file
	"engine/formula/ingredients": {
		"engine/formula",
		"engine/formula/values",
		"engine/larder",
		"engine/quantity",
		"engine/reading",
		"engine/said",
		"engine/said/behind",
		"engine/said/beside",
		"engine/said/unread",
		"engine/source",
		"engine/spelling",
	}, // one line of the ingredients; it knows no step
	"engine/formula/listed": {
		"engine/formula",
		"engine/quantity",
		"engine/reading",
		"engine/said",
		"engine/source",
		"engine/spelling",
	}, // steps as they are written; it keeps no value
	"engine/formula/known": {
		"engine/formula",
		"engine/reading",
		"engine/said",
		"engine/spelling",
	}, // places and ways by their words; it reads no step
	"engine/formula/usual": {
		"engine/figure",
		"engine/formula",
		"engine/said/work",
		"engine/spelling",
	}, // usual times of steps; it reads no step
	// what no other reader knows: the figures that stand plainly among words
	"engine/formula/plain": {
		"engine/formula",
		"engine/formula/known",
		"engine/quantity",
		"engine/said",
		"engine/said/plainly",
		"engine/said/unread",
		"engine/source",
	},
	"engine/formula/steps": {
		"engine/formula",
		"engine/formula/ingredients",
		"engine/formula/known",
		"engine/formula/plain",
		"engine/formula/listed",
		"engine/formula/usual",
		"engine/formula/values",
		"engine/larder",
		"engine/quantity",
		"engine/reading",
		"engine/said/times",
		"engine/said/tins",
		"engine/said",
		"engine/said/around",
		"engine/said/beside",
		"engine/said/counts",
		"engine/said/oven",
		"engine/said/puton",
		"engine/said/sheets",
		"engine/said/sponge",
		"engine/said/turns",
		"engine/said/unread",
		"engine/said/work",
		"engine/source",
		"engine/spelling",
	}, // the steps of one part; what they name is looked up later
	"engine/formula/read": {
		"engine/family",
		"engine/formula",
		"engine/formula/ingredients",
		"engine/formula/refusal",
		"engine/formula/steps",
		"engine/formula/values",
		"engine/larder",
		"engine/quantity",
		"engine/reading",
		"engine/said",
		"engine/said/puton",
		"engine/said/turns",
		"engine/said/unread",
		"engine/said/work",
		"engine/source",
		"engine/spelling",
	}, // a whole formula: parts, what they name, weights
	"engine/formula/assumed": {"engine/formula"}, // what is taken where nothing is written
	// edits of a formula's file
	"engine/formula/edit": {"engine/formula", "engine/quantity", "engine/reading", "engine/source"},
	"engine/recipe/list": {
		"engine/larder",
		"engine/quantity",
		"engine/said/tins",
		"engine/said",
		"engine/spelling",
	}, // one line of a list of ingredients; it knows no formula
	"engine/recipe/phrase": {
		"engine/larder",
		"engine/quantity",
		"engine/recipe/list",
		"engine/said/oven",
		"engine/spelling",
	}, // what a phrase of a method says in figures; it knows no formula
	"engine/recipe/draft": {
		"engine/larder",
		"engine/reading",
		"engine/recipe/list",
		"engine/recipe/phrase",
		"engine/source",
		"engine/spelling",
	}, // a formula in the making, and its text; it reads no recipe
	"engine/recipe": {
		"engine/recipe/draft",
		"engine/formula",
		"engine/formula/read",
		"engine/larder",
		"engine/quantity",
		"engine/reading",
		"engine/recipe/list",
		"engine/recipe/phrase",
		"engine/source",
		"engine/spelling",
	}, // plain text to a formula file; it judges nothing
	"engine/history/ambient": {"engine/formula", "engine/kitchen"}, // where a step stands
	"engine/history": {
		"engine/formula",
		"engine/history/ambient",
		"engine/kitchen",
		"engine/quantity",
		"engine/science/bake",
		"engine/science/ferment",
		"engine/science/geometry",
		"engine/science/heat",
		"engine/science/melt",
		"engine/science/solve",
	}, // a part's steps in figures; what it is made of is handed in
	"engine/makeup": {
		"engine/family",
		"engine/formula",
		"engine/kitchen",
		"engine/larder",
		"engine/quantity",
		"engine/source",
		"engine/science/bakersmath",
		"engine/science/ferment",
		"engine/science/heat",
		"engine/science/melt",
		"engine/science/wateractivity",
	}, // what a part is made of; it follows no temperature
	"engine/process": {
		"engine/family",
		"engine/formula",
		"engine/history",
		"engine/history/ambient",
		"engine/kitchen",
		"engine/larder",
		"engine/makeup",
		"engine/quantity",
		"engine/science/bake",
		"engine/science/bakersmath",
		"engine/science/ferment",
		"engine/science/geometry",
		"engine/science/heat",
	}, // what a part goes through; what is safe in it is handed down
	"engine/safety/clock": {
		"engine/history",
		"engine/science/microbe",
	}, // courses and published times; what a part is made of is not its business
	"engine/safety": {
		"engine/formula",
		"engine/history",
		"engine/kitchen",
		"engine/larder",
		"engine/makeup",
		"engine/process",
		"engine/quantity",
		"engine/safety/clock",
		"engine/science/heat",
		"engine/science/microbe",
		"engine/science/mould",
	}, // tables and laws on top of both; it judges no rule
	"engine/cooling": {
		"engine/formula",
		"engine/history",
		"engine/history/ambient",
		"engine/quantity",
		"engine/safety",
	}, // the clock of the code; it judges no rule
	"engine/hazard": {
		"engine/formula",
		"engine/larder",
		"engine/makeup",
		"engine/safety",
		"engine/spelling",
	}, // what hurts in an ingredient by itself; it judges no rule
	"engine/facts": {
		"engine/cooling",
		"engine/hazard",
		"engine/family",
		"engine/formula",
		"engine/history",
		"engine/kitchen",
		"engine/larder",
		"engine/makeup",
		"engine/process",
		"engine/quantity",
		"engine/reading",
		"engine/safety",
		"engine/said/work",
		"engine/science/bake",
		"engine/science/ferment",
		"engine/science/geometry",
		"engine/science/heat",
		"engine/science/microbe",
		"engine/science/mould",
		"engine/science/wateractivity",
	}, // figures, never judgements: no rule, no finding
	"engine/backlog": {
		"engine/finding",
		"engine/reading",
		"engine/source",
	}, // lists of findings; what makes one is not its business
	"engine/house": {
		"engine/finding",
		"engine/formula",
		"engine/kitchen",
		"engine/larder",
		"engine/quantity",
		"engine/reading",
		"engine/source",
	},
	// the second judge: the condition's text and the facts' types,
	// never the judge's own tree
	"engine/machine": {
		"engine/expr",
		"engine/facts",
	},
	"engine/rule": {
		"engine/expr/subject",
		"engine/rule/show",
		"engine/expr",
		"engine/facts",
		"engine/finding",
		"engine/formula",
		"engine/house",
		"engine/kitchen",
		"engine/larder",
		"engine/machine",
		"engine/mend/levers",
		"engine/quantity",
		"engine/reading",
		"engine/source",
		"engine/spelling",
		"engine/trial",
	},
	// the search; no house and no report: only the judge proves
	// a change
	"engine/mend": {
		"engine/facts",
		"engine/finding",
		"engine/formula",
		"engine/formula/read",
		"engine/formula/edit",
		"engine/kitchen",
		"engine/mend/asked",
		"engine/mend/levers",
		"engine/reading",
		"engine/rule",
		"engine/source",
	},
	"engine/mend/asked": {
		"engine/facts",
		"engine/finding",
		"engine/formula",
		"engine/mend/levers",
		"engine/rule",
	}, // names one rule on one subject in every version of a text; it judges nothing
	"engine/layout":   nil, // lines, columns and markup; no formula
	"engine/linehash": nil, // a text and a published method
	"engine/sariflog": nil, // a published format
	"engine/jsontext": {
		"engine/source",
	}, // JSON with long lists, whatever they hold
	"engine/scale": {
		"engine/facts",
		"engine/finding",
		"engine/formula",
		"engine/formula/edit",
		"engine/larder",
		"engine/makeup",
		"engine/mend/levers",
		"engine/quantity",
		"engine/source",
		"engine/spelling",
	}, // a text of another size; package engine judges it
	"engine/mixing": {
		"engine/facts",
		"engine/finding",
		"engine/formula",
		"engine/kitchen",
		"engine/larder",
		"engine/process",
		"engine/quantity",
		"engine/reading",
		"engine/science/bakersmath",
	}, // the figures of a mix with what a baker reads; it reckons none of its own
	"engine/begin": {
		"engine/family",
		"engine/kitchen",
		"engine/larder",
		"engine/quantity",
	}, // texts to start from; what they come to is judged like any other
	"engine/cost": {
		"engine/facts",
		"engine/finding",
		"engine/formula",
		"engine/larder",
		"engine/makeup",
		"engine/quantity",
	}, // sums of the larder's prices, and its allergens in the order of a law
	"engine/batch": {
		"engine/formula",
		"engine/quantity",
		"engine/reading",
		"engine/source",
	}, // what was read at the bench; what it means for an answer is not its business
	"engine/plan": {
		"engine/formula",
		"engine/quantity",
		"engine/science/bakersmath",
		"engine/source",
	}, // clocks of steps; it follows no temperature and judges nothing
	"engine/report": {
		"engine/finding",
		"engine/jsontext",
		"engine/layout",
		"engine/linehash",
		"engine/sariflog",
		"engine/source",
		"engine/spelling",
	}, // prints findings; a format must not be able to change an answer
	"engine/sheet": {
		"engine/rule/show",
		"engine/facts",
		"engine/finding",
		"engine/formula",
		"engine/history",
		"engine/jsontext",
		"engine/plan",
		"engine/quantity",
		"engine/report",
		"engine/rule",
		"engine/science/ferment",
		"engine/source",
	}, // the sheet for the bench; its figures are those of the run, and it reads no file
	"engine/page": {
		"engine/finding",
		"engine/layout",
		"engine/jsontext",
		"engine/report",
		"engine/source",
	}, // the pages of the other verbs, laid out as the formats are
	"engine/trial": {
		"engine/formula",
		"engine/formula/read",
		"engine/kitchen",
		"engine/reading",
		"engine/source",
		"engine/spelling",
	}, // worked formulas and the answers expected of them; what answers is not its business
	"engine/tolerant": {
		"engine/source",
		"engine/spelling",
	}, // half-typed texts; what they mean is for the reader that is handed in
	"engine/editor/protocol": nil, // a published protocol; it knows no formula
	"engine/editor": {
		"engine/rule/show",
		"engine",
		"engine/editor/protocol",
		"engine/expr",
		"engine/facts",
		"engine/family",
		"engine/files",
		"engine/finding",
		"engine/formula",
		"engine/kitchen",
		"engine/larder",
		"engine/mend/levers",
		"engine/quantity",
		"engine/reading",
		"engine/report",
		"engine/rule",
		"engine/source",
		"engine/spelling",
		"engine/tolerant",
		"engine/trial",
	}, // a protocol in front of the front door: it judges nothing
	"engine": {
		"engine/rule/show",
		"engine/backlog",
		"engine/begin",
		"engine/cost",
		"engine/batch",
		"engine/facts",
		"engine/family",
		"engine/files",
		"engine/finding",
		"engine/formula",
		"engine/formula/edit",
		"engine/house",
		"engine/kitchen",
		"engine/mend",
		"engine/mend/levers",
		"engine/mixing",
		"engine/plan",
		"engine/quantity",
		"engine/reading",
		"engine/rule",
		"engine/run",
		"engine/scale",
		"engine/sheet",
		"engine/source",
		"engine/tolerant",
		"rules",
	},
	"engine/run": {
		"engine/backlog",
		"engine/batch",
		"engine/facts",
		"engine/files",
		"engine/finding",
		"engine/formula",
		"engine/formula/read",
		"engine/formula/assumed",
		"engine/house",
		"engine/quantity",
		"engine/reading",
		"engine/rule",
		"engine/slips",
		"engine/source",
		"engine/spelling",
	}, // the one way from files to answers; the shipped rules are handed in, and it prints nothing
	"cmd/forebake": {
		"engine",
		"engine/editor",
		"engine/files",
		"engine/finding",
		"engine/layout",
		"engine/larder/page",
		"engine/page",
		"engine/reading",
		"engine/recipe",
		"engine/report",
		"engine/sheet",
		"engine/source",
		"engine/spelling",
	}, // flags and exit statuses only

	// What a mend can change, and how. It knows no rule, so that a rule
	// can name a lever.
	"engine/mend/levers": {
		"engine/facts",
		"engine/family",
		"engine/formula",
		"engine/formula/edit",
		"engine/kitchen",
		"engine/larder",
		"engine/quantity",
		"engine/source",
	},
	"engine/expr/subject": {
		"engine/facts",
		"engine/formula",
		"engine/reading",
		"engine/source",
	}, // the word on = "..."; it knows no condition
	"engine/rule/show": {
		"engine/facts",
		"engine/finding",
		"engine/quantity",
	}, // figures as text; it knows no rule
	"engine/expr": {
		"engine/expr/subject",
		"engine/facts",
		"engine/quantity",
		"engine/reading",
		"engine/source",
		"engine/spelling",
	}, // conditions over the facts; it must not know what a rule makes of an answer, nor any house
}

// anybody may know what a figure is.
const anybody = "engine/figure"

func TestArrows(t *testing.T) {
	seen := map[string]bool{}
	for _, root := range []string{"../cmd", "../engine", "../rules"} {
		err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
			if err != nil {
				return err
			}
			if d.IsDir() &&
				// tablegen writes larder/table.go and is not linked
				(d.Name() == "testdata" || d.Name() == "tablegen") {
				return filepath.SkipDir
			}
			if d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
				return nil
			}
			pkg := filepath.ToSlash(
				strings.TrimPrefix(filepath.Dir(path), ".."+string(filepath.Separator)),
			)
			file, err := parser.ParseFile(
				token.NewFileSet(),
				path,
				nil,
				parser.ImportsOnly|parser.ParseComments,
			)
			if err != nil {
				return err
			}
			for _, c := range file.Comments {
				if strings.HasPrefix(c.Text(), "go:build ignore") ||
					strings.Contains(c.List[0].Text, "//go:build ignore") {
					return nil // a generator, not part of the program
				}
			}
			allowed, known := mayKnow[pkg]
			if !known {
				t.Errorf(
					"%s: package %s has no place among the arrows; add it to mayKnow",
					path,
					pkg,
				)
				return nil
			}
			seen[pkg] = true
			for _, spec := range file.Imports {
				to, own := strings.CutPrefix(strings.Trim(spec.Path.Value, `"`), "forebake/")
				if own && to != anybody && !contains(allowed, to) {
					t.Errorf("%s: %s must not know %s", path, pkg, to)
				}
			}
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	var gone []string
	for pkg := range mayKnow {
		if !seen[pkg] {
			gone = append(gone, pkg)
		}
	}
	sort.Strings(gone)
	if len(gone) > 0 {
		t.Errorf("packages that are no more: %s", strings.Join(gone, ", "))
	}
}

// TestFilesOfFactsPointOneWay holds that no two files of the catalogue need each other, directly or
// through others.
func TestFilesOfFactsPointOneWay(t *testing.T) {
	paths, err := filepath.Glob("facts/*.go")
	if err != nil {
		t.Fatal(err)
	}
	declared := map[string]string{} // top-level name to file
	wanted := map[string][]string{} // file to the names that it takes from elsewhere
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		for name := range file.Scope.Objects {
			declared[name] = path
		}
		for _, id := range file.Unresolved {
			wanted[path] = append(wanted[path], id.Name)
		}
	}
	if len(wanted) < 5 {
		t.Fatalf("%d files", len(wanted))
	}
	state := map[string]int{} // 1 on the way, 2 done
	var visit func(path string, way []string)
	visit = func(path string, way []string) {
		switch way = append(way, path); state[path] {
		case 1:
			t.Errorf("a circle of files: %s", strings.Join(way, " needs "))
			return
		case 2:
			return
		}
		state[path] = 1
		for _, name := range wanted[path] {
			if to, ok := declared[name]; ok && to != path {
				visit(to, way)
			}
		}
		state[path] = 2
	}
	for path := range wanted {
		visit(path, nil)
	}
}

// A property that draws anew each time fails for one user in twenty.
func TestPropertiesHaveAFixedSeed(t *testing.T) {
	draws, fixed := map[string]bool{}, map[string]bool{}
	for _, root := range []string{"../cmd", "../engine", "../rules"} {
		err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(path, "_test.go") {
				return err
			}
			file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
			if err != nil {
				return err
			}
			for _, spec := range file.Imports {
				switch strings.Trim(spec.Path.Value, `"`) {
				case "pgregory.net/rapid":
					draws[filepath.Dir(path)] = true
				case "forebake/engine/seed":
					fixed[filepath.Dir(path)] = true
				}
			}
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	for dir := range draws {
		if !fixed[dir] {
			t.Errorf(
				"%s draws without a fixed seed: add a file with import _ \"forebake/engine/seed\"",
				dir,
			)
		}
	}
	if len(draws) == 0 {
		t.Error("no package draws anything")
	}
}

func contains(list []string, word string) bool {
	for _, w := range list {
		if w == word {
			return true
		}
	}
	return false
}
