// Package rule reads rule packs, checks their expressions, judges formulas by them and runs their trials.
//
// Package engine loads the packs and hands it formulas. A pack that reads without a problem cannot fail while judging,
// whatever the formula: the reader walks every expression and lets through only what the judge can always answer.
// Nothing here writes or prints.
package rule

import (
	"fmt"
	"regexp"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/mend/levers"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Limits of packs, far above any real one.
const (
	MaxRules      = 500     // in one pack
	MaxLimits     = 16      // of one rule
	MaxPackBytes  = 1 << 20 // of one file of a pack
	MaxTextBytes  = 4096    // of one text of a rule: say, why, source
	MaxFigures    = 32      // in one message
	maxNameLength = 64
)

// Pack is one pack of rules, from one file or a folder of files.
type Pack struct {
	Name     string
	About    string
	Safety   bool // food_safety = true stands in one of its files: all its rules are of food safety
	Rules    []*Rule
	Cautions []*Caution
	Trials   []*Trial
}

// Rule is one rule block.
type Rule struct {
	ID       string
	Pack     string
	Place    source.Place
	On       []string // as written
	Level    finding.Level
	Limits   []Limit
	When     *Expr
	WhenText string // as written
	Say      *Message
	Why      string
	Source   string
	Doubt    bool     // unsure counts as flagged
	Safety   bool     // of a food-safety pack: a house may tighten it, and loosens or waives it in plain sight only
	Was      []string // old names that keep working
	Adjust   []Adjust

	LevelBy *source.Place // the house line that set the level; nil when it is the rule's own
	Because string        // why the house changed it; often none
	names   names
	kinds   []formula.Kind // part rules: which kinds; none for any
	any     bool
}

// Limit is a named figure of a rule that a house can set: a number, or a figure of the kitchen that the rule is judged in.
type Limit struct {
	Name   string
	Value  float64
	Half   float64 // half its width, where the kitchen's figure is a range; 0 for a number
	From   string  // the kitchen's figure that it is, as written: "kitchen.cool_first_h"; "" for a number
	Source string  // where the value of that figure comes from
	Place  source.Place
	By     *source.Place // the house line that set it; nil when it is the rule's own

	fact *facts.Fact // of the kitchen; nil for a number
	unit string      // of a number that a house set in the place of such a figure
}

// Unit gives the unit of a limit by the ending of its name, else that of the figure it is or was.
func (l Limit) Unit() string {
	if unit := figure.UnitOf(l.Name); unit != "" {
		return unit
	}
	if l.fact != nil {
		return l.fact.Unit
	}
	return l.unit
}

// Interval is the limit's value as the judge takes it.
func (l Limit) Interval() Interval { return Interval{Lo: l.Value - l.Half, Hi: l.Value + l.Half} }

// Shown is the limit's value with its unit.
func (l Limit) Shown() string {
	if l.Half == 0 {
		return quantity.Format(l.Value, l.Unit())
	}
	return quantity.FormatInterval(l.Interval(), l.Unit())
}

// Adjust is a lever that mends what a rule flags.
type Adjust struct {
	Lever  string
	To     *Expr // nil: the smallest change is searched for
	ToText string
	Within []float64
	Place  source.Place
}

// Caution is a food-safety line. No setting can reach it.
type Caution struct {
	Kind   string
	Pack   string
	Own    bool // of a pack that is not shipped: it never passes for a shipped one
	Place  source.Place
	Rank   int
	On     []string
	When   *Expr
	Say    *Message
	Detail *Message // what differs from formula to formula; nil when there is nothing
	Short  *Message // one line: the thing, a colon, its danger and the one thing to do; nil for none
	With   string   // another caution whose short line says this one too, where both are shown
	Source string

	names names
	kinds []formula.Kind
	any   bool
}

// Keys of the blocks, for messages and the reference page.
var (
	RuleKeys    = []string{"on", "level", "limits", "when", "say", "why", "source", "doubt", "was"}
	CautionKeys = []string{"on", "when", "say", "detail", "short", "with", "source"}
	TrialKeys   = []string{"rule", "caution", "expect"}
)

// Options say how a pack is read.
type Options struct {
	Trials  bool            // read the trials too; a check does not need them
	Formula formula.Options // what the trials' formulas are read against
	Version string          // of the program, for needs
	Shipped bool            // the files have been read before, by the tests, and need no reading of what is not asked for
}

// Read reads a pack from its files.
func Read(name string, files []*source.File, o Options) (*Pack, source.Problems) {
	p := &Pack{Name: source.Safe(name)} // a path may hold anything, and every report prints it
	var all source.Problems
	for _, f := range files {
		r := &reading.Reader{File: f}
		p.readFile(r, o)
		all = append(all, r.Problems...)
	}
	for _, r := range p.Rules { // once all files are read: the word may stand in the last of them
		r.Safety = p.Safety
	}
	if len(p.Rules) > MaxRules {
		all = append(all, source.Problem{Place: p.Rules[0].Place, Text: fmt.Sprintf("pack %q holds %d rules; %d is the most", name, len(p.Rules), MaxRules)})
	}
	return p, all.Sort()
}

func (p *Pack) readFile(r *reading.Reader, o Options) {
	bodies, problems := parse(r.File, o)
	r.Problems = append(r.Problems, problems...)
	if len(problems) > 0 {
		return
	}
	for _, body := range bodies {
		r.Known(body, "a rule file", []string{"needs", "about", "food_safety"}, []string{"rule", "caution", "trial"})
		if a := body.Attributes["about"]; a != nil {
			p.About, _, _ = r.Text(a.Expr, "about")
		}
		if a := body.Attributes["food_safety"]; a != nil {
			if yes, ok := r.Bool(a.Expr, "food_safety"); ok && yes {
				p.Safety = true
			}
		}
		if a := body.Attributes["needs"]; a != nil {
			if needs, at, ok := r.Text(a.Expr, "needs"); ok && newer(needs, o.Version) {
				r.Fault(at, "this pack needs forebake %s, and this is %s; take a later forebake, or an older pack", source.Safe(needs), o.Version)
			}
		}
		for _, b := range body.Blocks {
			switch b.Type {
			case "rule":
				p.readRule(r, b)
			case "caution":
				p.readCaution(r, b, o.Shipped)
			case "trial":
				if o.Trials {
					p.readTrial(r, b, o)
				}
			}
		}
	}
}

// parse parses a pack. Trials are most of a shipped pack's text, and a check has no use for them, so their stretches are
// left unparsed there: finding where they lie costs far less than parsing them.
func parse(f *source.File, o Options) ([]*hclsyntax.Body, source.Problems) {
	f.Limit = MaxPackBytes
	blocks, sure := []source.Block(nil), false
	if o.Shipped && !o.Trials {
		blocks, sure = source.Blocks(f)
	}
	if !sure {
		body, problems := source.Parse(f)
		return []*hclsyntax.Body{body}, problems
	}
	var bodies []*hclsyntax.Body
	var all source.Problems
	from := 0
	take := func(to int) {
		if strings.TrimSpace(string(f.Text[from:to])) == "" {
			return
		}
		body, problems := source.ParseSpan(f, from, to)
		bodies, all = append(bodies, body), append(all, problems...)
	}
	for _, b := range blocks {
		if b.Type == "trial" {
			take(b.Start)
			from = b.End
		}
	}
	take(len(f.Text))
	return bodies, all
}

// newer tells whether version a is later than b; versions are numbers with dots.
func newer(a, b string) bool {
	as, bs := strings.Split(a, "."), strings.Split(b, ".")
	for i := 0; i < max(len(as), len(bs)); i++ {
		var x, y int
		if i < len(as) {
			fmt.Sscanf(as[i], "%d", &x)
		}
		if i < len(bs) {
			fmt.Sscanf(bs[i], "%d", &y)
		}
		if x != y {
			return x > y
		}
	}
	return false
}

var idForm = regexp.MustCompile(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`)

func (p *Pack) readRule(r *reading.Reader, b *hclsyntax.Block) {
	before := len(r.Problems)
	rule := &Rule{Pack: p.Name}
	rule.ID, rule.Place = r.Label(b)
	if strings.TrimSpace(rule.ID) != "" && (!idForm.MatchString(rule.ID) || len(rule.ID) > maxNameLength) {
		r.Fault(rule.Place, "a rule's name is small letters, figures and single hyphens, such as \"filling-too-warm\"; not %q", source.Safe(rule.ID))
	}
	if says, own := OwnFinding(rule.ID); own {
		r.Fault(rule.Place, "rule %q needs another name: the program has findings of this name, on %s", rule.ID, says)
	}
	for _, other := range p.Rules {
		if other.ID == rule.ID {
			r.Fault(rule.Place, "rule %q stands twice in this pack, first at %s", rule.ID, other.Place)
		}
	}
	r.Known(b.Body, "a rule", RuleKeys, []string{"adjust"})
	attr := b.Body.Attributes
	for _, key := range []string{"on", "level", "when", "say", "why", "source"} {
		if attr[key] == nil {
			r.Fault(rule.Place, "rule %q has no %s; %s", source.Safe(rule.ID), key, missing[key])
		}
	}
	if a := attr["level"]; a != nil {
		if word, at, ok := r.Text(a.Expr, "level"); ok {
			if rule.Level, ok = finding.LevelNamed(word); !ok {
				r.Unknown(at, "level", word, "", finding.LevelNames)
			}
		}
	}
	if a := attr["limits"]; a != nil {
		rule.Limits = readLimits(r, a.Expr)
		if len(rule.Limits) > MaxLimits {
			r.Fault(r.Place(a.NameRange), "%d limits in one rule; %d is the most", len(rule.Limits), MaxLimits)
		}
	}
	if a := attr["why"]; a != nil {
		rule.Why = shortText(r, a.Expr, "why")
	}
	if a := attr["source"]; a != nil {
		rule.Source = shortText(r, a.Expr, "source")
	}
	if a := attr["doubt"]; a != nil {
		if word, at, ok := r.Text(a.Expr, "doubt"); ok && word != "flag" {
			r.Fault(at, "doubt is \"flag\", or left out; not %q", source.Safe(word))
		}
		rule.Doubt = true
	}
	if a := attr["was"]; a != nil {
		var places []source.Place
		rule.Was, places, _ = r.Texts(a.Expr, "was")
		for i, was := range rule.Was {
			if !idForm.MatchString(was) || len(was) > maxNameLength {
				r.Fault(places[i], "was holds old names of rules, such as \"filling-too-warm\"; not %q", source.Safe(was))
			}
		}
	}
	subject := readOn(r, attr["on"])
	if subject == nil {
		return
	}
	rule.On, rule.names, rule.kinds, rule.any = subject.words, subject.names, subject.kinds, subject.any
	rule.names.limits = rule.Limits
	if a := attr["when"]; a != nil {
		rule.When = condition(r, a.Expr, &rule.names, "when")
		rule.WhenText, _, _ = source.StringLiteral(a.Expr)
	}
	if a := attr["say"]; a != nil {
		rule.Say = message(r, a.Expr, &rule.names, "say")
	}
	for _, block := range b.Body.Blocks {
		if block.Type == "adjust" {
			rule.readAdjust(r, block)
		}
	}
	if len(r.Problems) == before {
		p.Rules = append(p.Rules, rule)
	}
}

// shortText reads a text that every finding of the rule carries.
func shortText(r *reading.Reader, e hclsyntax.Expression, what string) string {
	text, at, ok := r.Text(e, what)
	if fault := textFault(what, text); ok && fault != "" {
		r.Fault(at, "%s", fault)
	}
	return text
}

// textFault says what is wrong with a text that is printed; "" for nothing.
func textFault(what, text string) string {
	switch needed := missing[what]; {
	case needed != "" && strings.TrimSpace(text) == "":
		return fmt.Sprintf("%s is empty; %s", what, strings.Replace(needed, "add", "write", 1))
	case len(text) > MaxTextBytes:
		return fmt.Sprintf("%s is %d bytes long; %d is the most, since every finding prints it", what, len(text), MaxTextBytes)
	}
	return ""
}

// missing says what to write for a key that a rule needs.
var missing = map[string]string{
	"on":     "add on = \"dough\", or another part kind, step verb, \"ingredient\" or \"formula\"",
	"level":  "add level = \"stop\", \"risk\" or \"note\"",
	"when":   "add when = \"dough.salt_pct < 1\"",
	"say":    "add say = \"what is wrong, with {dough.salt_pct}, and what to do\"",
	"why":    "add why = \"the reason, in a sentence\"",
	"source": "add source = \"a book or page\", or \"common practice\"",
}

func (rule *Rule) readAdjust(r *reading.Reader, b *hclsyntax.Block) {
	a := Adjust{}
	a.Lever, a.Place = r.Label(b)
	r.Known(b.Body, "an adjust block", []string{"to", "within"}, nil)
	if !levers.Known(a.Lever) {
		r.Unknown(a.Place, "lever", a.Lever, "", levers.Names())
	}
	if to := b.Body.Attributes["to"]; to != nil {
		a.To = expression(r, to.Expr, &rule.names, "to")
		a.ToText, _, _ = source.StringLiteral(to.Expr)
		if a.To != nil && a.To.root.typ != facts.Number && a.To.root.typ != facts.Text {
			r.Fault(r.Place(to.Expr.Range()), "to must be a number or a word that lever %q can be set to, such as %s.mass_g; this is a %s", source.Safe(a.Lever), rule.names.self[0], typeName(a.To.root.typ))
		}
	}
	if within := b.Body.Attributes["within"]; within != nil {
		items, _ := r.Items(within.Expr, "within")
		for _, item := range items {
			if x, _, ok := r.Number(item, -house.MaxLimit, house.MaxLimit, "within"); ok {
				a.Within = append(a.Within, x)
			}
		}
		if len(a.Within) != 2 || a.Within[0] >= a.Within[1] {
			r.Fault(r.Place(within.Expr.Range()), "within is the lowest and the highest value: within = [0.3, 4.0]")
		}
	}
	rule.Adjust = append(rule.Adjust, a)
}

func (p *Pack) readCaution(r *reading.Reader, b *hclsyntax.Block, shipped bool) {
	before := len(r.Problems)
	c := &Caution{Rank: len(p.Cautions), Pack: p.Name, Own: !shipped}
	c.Kind, c.Place = r.Label(b)
	if strings.TrimSpace(c.Kind) != "" && (!idForm.MatchString(c.Kind) || len(c.Kind) > maxNameLength) {
		r.Fault(c.Place, "a caution's name is small letters, figures and single hyphens, such as \"hot-stone\"; not %q", source.Safe(c.Kind))
	}
	for _, other := range p.Cautions {
		if other.Kind == c.Kind {
			r.Fault(c.Place, "caution %q stands twice, first at %s", source.Safe(c.Kind), other.Place)
		}
	}
	r.Known(b.Body, "a caution", CautionKeys, nil)
	attr := b.Body.Attributes
	for _, key := range CautionKeys {
		if attr[key] == nil && missing[key] != "" {
			r.Fault(c.Place, "caution %q has no %s; %s", source.Safe(c.Kind), key, missing[key])
		}
	}
	if a := attr["source"]; a != nil {
		c.Source = shortText(r, a.Expr, "source")
	}
	subject := readOn(r, attr["on"])
	if subject == nil {
		return
	}
	c.On, c.names, c.kinds, c.any = subject.words, subject.names, subject.kinds, subject.any
	if a := attr["when"]; a != nil {
		c.When = condition(r, a.Expr, &c.names, "when")
	}
	if a := attr["say"]; a != nil {
		c.Say = message(r, a.Expr, &c.names, "say")
	}
	if a := attr["detail"]; a != nil {
		c.Detail = message(r, a.Expr, &c.names, "detail")
	}
	if a := attr["short"]; a != nil {
		c.Short = message(r, a.Expr, &c.names, "short")
	}
	if a := attr["with"]; a != nil {
		c.With = shortText(r, a.Expr, "with")
	}
	if len(r.Problems) == before {
		p.Cautions = append(p.Cautions, c)
	}
}

// subjects is what on = ... says.
type subjects struct {
	words []string
	names names
	kinds []formula.Kind
	any   bool // every part, or every step
}

// readOn reads on = "dough", or a list of part kinds or of step verbs and their groups.
func readOn(r *reading.Reader, a *hclsyntax.Attribute) *subjects {
	if a == nil {
		return nil
	}
	var words []string
	var places []source.Place
	if _, isList := a.Expr.(*hclsyntax.TupleConsExpr); isList {
		var ok bool
		if words, places, ok = r.Texts(a.Expr, "on"); !ok {
			return nil
		}
	} else {
		word, at, ok := r.Text(a.Expr, "on")
		if !ok {
			return nil
		}
		words, places = []string{word}, []source.Place{at}
	}
	if len(words) == 0 {
		r.Fault(r.Place(a.Expr.Range()), "on is empty; %s", missing["on"])
		return nil
	}
	s := &subjects{words: words}
	for i, word := range words {
		on, ok := s.add(word)
		if !ok {
			known := append(append([]string{"formula", "part", "step", "ingredient"}, formula.KindNames...), formula.VerbNames(nil)...)
			for _, g := range formula.Groups {
				known = append(known, g.Name)
			}
			r.Unknown(places[i], "subject", word, "", known)
			return nil
		}
		if i > 0 && on != s.names.on {
			r.Fault(places[i], "one rule looks at one sort of subject: %q and %q are not of one sort; make two rules of it", words[0], source.Safe(word))
			return nil
		}
		s.names.on = on
	}
	switch {
	case len(words) == 1 && s.names.on == facts.OnPart && words[0] != "part":
		s.names.self = []string{words[0], "part"}
	case len(words) == 1 && s.names.on == facts.OnStep && words[0] != "step":
		s.names.self = []string{words[0], "step"}
	default:
		s.names.self = []string{facts.OnNames[s.names.on]}
	}
	return s
}

func (s *subjects) add(word string) (facts.On, bool) {
	switch word {
	case "formula":
		return facts.OnFormula, true
	case "ingredient":
		return facts.OnIngredient, true
	case "part":
		s.any = true
		return facts.OnPart, true
	case "step":
		s.any = true
		return facts.OnStep, true
	}
	for k, name := range formula.KindNames {
		if name == word {
			s.kinds = append(s.kinds, formula.Kind(k))
			return facts.OnPart, true
		}
	}
	if v, ok := formula.FindVerb(word); ok {
		s.names.verbs = append(s.names.verbs, v.Name)
		return facts.OnStep, true
	}
	if g, ok := formula.FindGroup(word); ok {
		s.names.verbs = append(s.names.verbs, formula.VerbNames(g.Has)...)
		return facts.OnStep, true
	}
	return 0, false
}

// each visits every subject of the formula that a rule or caution looks at.
func each(f *formula.Formula, n *names, kinds []formula.Kind, any bool, visit func(facts.Subject)) {
	switch n.on {
	case facts.OnFormula:
		visit(facts.Subject{On: facts.OnFormula})
	case facts.OnPart:
		for _, p := range f.Parts {
			if any || hasKind(kinds, p.Kind) {
				visit(facts.Subject{On: facts.OnPart, Part: p})
			}
		}
	case facts.OnStep:
		for _, p := range f.Parts {
			for _, s := range p.Steps {
				if any || hasWord(n.verbs, s.Verb.Name) {
					visit(facts.Subject{On: facts.OnStep, Part: p, Step: s})
				}
			}
		}
	case facts.OnIngredient:
		for _, p := range f.Parts {
			for _, in := range p.Ingredients {
				visit(facts.Subject{On: facts.OnIngredient, Part: p, Ingredient: in})
			}
		}
	}
}

func hasKind(kinds []formula.Kind, k formula.Kind) bool {
	for _, x := range kinds {
		if x == k {
			return true
		}
	}
	return false
}

func hasWord(list []string, word string) bool {
	for _, x := range list {
		if x == word {
			return true
		}
	}
	return false
}
