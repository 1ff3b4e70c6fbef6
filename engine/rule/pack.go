// Package rule reads rule packs, judges formulas by them, explains the
// answers and runs trials. It applies a house's settings and waivers.
//
// Package engine loads the packs and hands it formulas. Package expr
// checks the expressions, so a pack that reads without a problem cannot
// fail while judging. Nothing here writes or prints.
package rule

import (
	"fmt"
	"strings"

	"forebake/engine/expr/subject"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/mend/levers"
	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/engine/trial"
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
	Figures  []*expr.Figure
	Rules    []*Rule
	Cautions []*Caution
	Trials   []*trial.Trial

	figures                             *expr.Figures // of all packs of the house
	ruleNames, cautionNames, trialNames reading.Names // in all of its files
}

// Rule is one rule block.
type Rule struct {
	// What each formula asks of a rule stands together.
	names  expr.Names
	When   *Condition
	Limits []expr.Limit
	Once   bool // told once a formula, with the other subjects named

	ID     string
	Pack   string
	Place  source.Place
	On     []string // as written
	Level  finding.Level
	Say    *Message
	Why    string
	Source string
	Note   *Condition // where it holds for certain, a finding is a note; nil for none
	Risk   *Condition // where it holds for certain, a stop is a risk; nil for none
	// Careful lowers a stop to a risk where only the model's careful
	// end reaches it and all inputs of its figures are written.
	Careful bool
	Doubt   bool // unsure counts as flagged
	// Middle takes the model's middle for an answer within its error:
	// clear where that is in the usual range, unsure where only an
	// end is.
	Middle   bool
	middleAt source.Place // of the word
	// of a food-safety pack: reports show what a house loosens
	// or waives
	Safety bool
	Was    []string // old names that keep working
	Adjust []Adjust

	LevelBy *source.Place // the house line that set the level; nil when it is the rule's own
	Because string        // why the house changed it; often none
}

// Adjust is a lever that mends a finding.
type Adjust struct {
	Lever  string
	To     *Condition // a number or a word; nil: the smallest change is searched for
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
	When   *Condition
	Say    *Message
	Detail *Message // what differs from formula to formula; nil when there is nothing
	// a line: the thing, a colon, its danger, what to do; nil for none
	Short  *Message
	With   string // another caution whose short line says this one too, where both are shown
	Source string

	names expr.Names
}

// Keys of the blocks, for messages and the reference page.
var (
	RuleKeys = []string{"on", "level", "limits", "when", "say", "why", "source", "doubt",
		"note", "careful", "risk", "once", "was"}
	CautionKeys = []string{"on", "when", "say", "detail", "short", "with", "source"}
)

// Options say how a pack is read.
type Options struct {
	Trials  bool            // read the trials too; a check does not need them
	Formula formula.Options // what the trials' formulas are read against
	Version string          // of the program, for needs
	Shipped bool            // the tests have read the files: parse only what is asked for
}

// later reports whether to read only what every check needs.
func (o Options) later() bool { return o.Shipped && !o.Trials }

// Blocks are the types of block that a rule file holds.
var Blocks = []string{"figure", "rule", "caution", "trial"}

// Draft is a pack that is parsed but not read: its rules may read
// figures of other packs.
type Draft struct {
	pack  *Pack
	files []draftFile
	o     Options
}

type draftFile struct {
	r    *reading.Reader
	body *hclsyntax.Body // nil for a file that does not parse
}

// Open parses the files of a pack.
func Open(name string, files []*source.File, o Options) *Draft {
	d := &Draft{pack: &Pack{Name: source.Safe(name)}, o: o} // every report prints the name
	for _, f := range files {
		body, problems := parse(f, o)
		if len(problems) > 0 {
			body = nil
		}
		d.files = append(d.files, draftFile{&reading.Reader{File: f, Problems: problems}, body})
	}
	return d
}

// Figures checks the figures that packs declare. Read of each pack
// tells their problems. A pack that failed to open is nil.
func Figures(drafts []*Draft) *expr.Figures {
	figures := &expr.Figures{}
	for _, d := range drafts {
		if d == nil {
			continue
		}
		for _, f := range d.files {
			if f.body == nil {
				continue
			}
			for _, b := range f.body.Blocks {
				if b.Type == "figure" {
					figures.Read(f.r, b, d.pack.Name)
				}
			}
		}
	}
	figures.Check()
	return figures
}

// Read reads a parsed pack. figures are those of all the house's packs.
func (d *Draft) Read(figures *expr.Figures) (*Pack, source.Problems) {
	p := d.pack
	p.figures = figures
	for _, f := range figures.List() {
		if f.Pack == p.Name {
			p.Figures = append(p.Figures, f)
		}
	}
	var all source.Problems
	for _, f := range d.files {
		if f.body != nil {
			p.readBody(f.r, f.body, figures, d.o)
		}
		all = append(all, f.r.Problems...)
	}
	for _, r := range p.Rules { // after the last file, which may hold food_safety = true
		r.Safety = p.Safety
		if p.Safety && (r.Note != nil || r.Once) {
			all = append(all, source.Problem{Place: r.Place, Text: fmt.Sprintf(
				"rule %q is of food safety, which note and once would soften; take them out",
				r.ID)})
		}
		if r.Safety && r.Middle {
			all = append(all, source.Problem{Place: r.middleAt, Text: "doubt = \"middle\" is for " +
				"practice; a food-safety rule takes a model's unfavourable end"})
		}
	}
	if len(p.Rules) > MaxRules {
		all = append(all, source.Problem{Place: p.Rules[0].Place, Text: fmt.Sprintf(
			"pack %q holds %d rules; %d is the most; split it in two",
			p.Name, len(p.Rules), MaxRules)})
	}
	return p, all.Sort()
}

func (p *Pack) readBody(r *reading.Reader, body *hclsyntax.Body, figures *expr.Figures, o Options) {
	r.Known(body, "a rule file", []string{"needs", "about", "food_safety"}, Blocks)
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
			r.Fault(at, "this pack needs forebake %s, and this is %s;"+
				" take a later forebake, or an older pack", source.Safe(needs), o.Version)
		}
	}
	for _, b := range body.Blocks {
		switch b.Type {
		case "rule":
			p.readRule(r, b, figures, o)
		case "caution":
			p.readCaution(r, b, figures, o)
		case "trial":
			if o.Trials {
				p.Trials = append(p.Trials, trial.Read(r, b, &p.trialNames, o.Formula)...)
			}
		}
	}
}

// parse parses a file of a pack. A check needs no trials, which are
// most of a shipped pack: they are found and left unparsed.
func parse(f *source.File, o Options) (*hclsyntax.Body, source.Problems) {
	f.Limit = MaxPackBytes
	if o.later() {
		if body, ok := source.ParseOwn(f, "trial"); ok {
			return body, nil
		}
	}
	return source.Parse(f)
}

// newer reports whether version a is later than b: numbers with dots.
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

// readRule reads a rule block.
func (p *Pack) readRule(r *reading.Reader, b *hclsyntax.Block, figures *expr.Figures, o Options) {
	before := len(r.Problems)
	rule := &Rule{Pack: p.Name}
	rule.ID, rule.Place = r.Label(b)
	p.checkName(r, rule)
	r.Known(b.Body, "a rule", RuleKeys, []string{"adjust"})
	attr := b.Body.Attributes
	for _, key := range []string{"on", "level", "when", "say", "why", "source"} {
		if attr[key] == nil {
			r.Fault(rule.Place, "rule %q has no %s; %s", source.Safe(rule.ID), key, missing[key])
		}
	}
	rule.readPlain(r, attr)
	subject := subject.Read(r, attr["on"], b.Type)
	if subject == nil {
		return
	}
	rule.On = subject.Words
	rule.names = expr.Names{Subject: subject, Limits: rule.Limits, Figures: figures}
	rule.When = condition(r, attr, &rule.names, "when", o)
	rule.Note = condition(r, attr, &rule.names, "note", o)
	if a := attr["note"]; a != nil && rule.Level != finding.Risk {
		r.Fault(r.Place(a.NameRange), "note tells where a risk is no more than a note;"+
			" write level = \"risk\", or leave note out")
	}
	rule.Risk = condition(r, attr, &rule.names, "risk", o)
	if a := attr["risk"]; a != nil && rule.Level != finding.Stop {
		r.Fault(r.Place(a.NameRange), "risk tells where a stop is no more than a risk;"+
			" write level = \"stop\", or leave risk out")
	}
	rule.Say = message(r, attr, &rule.names, "say", o)
	for _, block := range b.Body.Blocks {
		if block.Type == "adjust" {
			rule.readAdjust(r, block, o)
		}
	}
	if len(r.Problems) == before && rule.When != nil && rule.Say != nil { // nil of a faulty figure
		p.Rules = append(p.Rules, rule)
	}
}

// checkName records a name that a rule cannot have.
func (p *Pack) checkName(r *reading.Reader, rule *Rule) {
	if strings.TrimSpace(rule.ID) != "" &&
		(!expr.IsName(rule.ID, '-') || len(rule.ID) > maxNameLength) {
		r.Fault(rule.Place, "a rule's name is small letters, figures and single hyphens,"+
			" such as \"filling-too-warm\"; not %q", source.Safe(rule.ID))
	}
	if says, own := OwnFinding(rule.ID); own {
		r.Fault(rule.Place, "rule %q needs another name:"+
			" the program has findings of this name, on %s", rule.ID, says)
	}
	if first, twice := p.ruleNames.Twice(rule.ID, rule.Place); twice {
		r.Fault(rule.Place, "rule %q stands twice in this pack, first at %s;"+
			" take one out, or rename it", rule.ID, first)
	}
}

// readPlain reads a rule's settings without conditions and figures.
func (rule *Rule) readPlain(r *reading.Reader, attr hclsyntax.Attributes) {
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
			r.Fault(r.Place(a.NameRange), "%d limits in one rule; %d is the most; split the rule",
				len(rule.Limits), MaxLimits)
		}
	}
	rule.Why, rule.Source = shortText(r, attr["why"]), shortText(r, attr["source"])
	if a := attr["doubt"]; a != nil {
		word, at, ok := r.Text(a.Expr, "doubt")
		switch {
		case !ok || word == "flag":
			rule.Doubt = true
		case word == "middle":
			rule.Middle, rule.middleAt = true, at
		default:
			r.Fault(at, "doubt is \"flag\" or \"middle\", or left out; not %q", source.Safe(word))
		}
	}
	if a := attr["careful"]; a != nil {
		word, at, ok := r.Text(a.Expr, "careful")
		rule.Careful = true
		switch {
		case ok && word != "risk":
			r.Fault(at, "careful is \"risk\", or left out; not %q", source.Safe(word))
		case rule.Level != finding.Stop || !rule.Doubt:
			r.Fault(r.Place(a.NameRange), "careful tells where a stop in doubt is a risk;"+
				" write level = \"stop\" and doubt = \"flag\", or leave careful out")
		}
	}
	if a := attr["once"]; a != nil {
		rule.Once, _ = r.Bool(a.Expr, "once")
	}
	if a := attr["was"]; a != nil {
		var places []source.Place
		rule.Was, places, _ = r.Texts(a.Expr, "was")
		for i, was := range rule.Was {
			if !expr.IsName(was, '-') || len(was) > maxNameLength {
				r.Fault(places[i], "was holds old names of rules, such as \"filling-too-warm\";"+
					" not %q", source.Safe(was))
			}
		}
	}
}

// shortText reads a text that every finding of the rule carries; ""
// for none.
func shortText(r *reading.Reader, a *hclsyntax.Attribute) string {
	if a == nil {
		return ""
	}
	text, at, ok := r.Text(a.Expr, a.Name)
	if fault := textFault(a.Name, text); ok && fault != "" {
		r.Fault(at, "%s", fault)
	}
	return text
}

// textFault says what is wrong with a printed text; "" for nothing.
func textFault(what, text string) string {
	switch needed := missing[what]; {
	case needed != "" && strings.TrimSpace(text) == "":
		return fmt.Sprintf("%s is empty; %s", what, strings.Replace(needed, "add", "write", 1))
	case len(text) > MaxTextBytes:
		return fmt.Sprintf("%s is %d bytes long; %d is the most, since every finding prints it",
			what, len(text), MaxTextBytes)
	}
	return ""
}

// missing says what to write for a key that a rule needs.
var missing = map[string]string{
	"on":     subject.HowOn,
	"level":  "add level = \"stop\", \"risk\" or \"note\"",
	"when":   "add when = \"dough.salt_pct < 1\"",
	"say":    "add say = \"what is wrong, with {dough.salt_pct}, and what to do\"",
	"why":    "add why = \"the reason, in a sentence\"",
	"source": "add source = \"a book or page\", or \"common practice\"",
}

func (rule *Rule) readAdjust(r *reading.Reader, b *hclsyntax.Block, o Options) {
	a := Adjust{}
	a.Lever, a.Place = r.Label(b)
	r.Known(b.Body, "an adjust block", []string{"to", "within"}, nil)
	if !levers.Known(a.Lever) {
		r.Unknown(a.Place, "lever", a.Lever, "", levers.Names())
	}
	if to := b.Body.Attributes["to"]; to != nil {
		a.To = rule.aim(r, to, a.Lever, o)
	}
	if within := b.Body.Attributes["within"]; within != nil {
		items, _ := r.Items(within.Expr, "within")
		for _, item := range items {
			if x, _, ok := r.Number(item, -house.MaxLimit, house.MaxLimit, "within"); ok {
				a.Within = append(a.Within, x)
			}
		}
		if len(a.Within) != 2 || a.Within[0] >= a.Within[1] {
			r.Fault(r.Place(within.Expr.Range()),
				"within is the lowest and the highest value: within = [0.3, 4.0]")
		}
	}
	rule.Adjust = append(rule.Adjust, a)
}

// aim reads what a lever is set to.
func (rule *Rule) aim(r *reading.Reader, to *hclsyntax.Attribute, lever string,
	o Options) *Condition {
	return newCondition(to.Expr, o, func() *expr.Expr {
		x := expr.Parse(r, to.Expr, &rule.names, "to")
		if x != nil && x.Type() != facts.Number && x.Type() != facts.Text {
			r.Fault(r.Place(to.Expr.Range()), "to must be a number or a word that lever %q can be"+
				" set to, such as %s.mass_g; this is a %s", source.Safe(lever), rule.On[0],
				facts.TypeNames[x.Type()])
		}
		return x
	})
}

func (p *Pack) readCaution(r *reading.Reader, b *hclsyntax.Block, figures *expr.Figures,
	o Options) {
	before := len(r.Problems)
	c := &Caution{Rank: len(p.Cautions), Pack: p.Name, Own: !o.Shipped}
	c.Kind, c.Place = r.Label(b)
	if strings.TrimSpace(c.Kind) != "" &&
		(!expr.IsName(c.Kind, '-') || len(c.Kind) > maxNameLength) {
		r.Fault(c.Place, "a caution's name is small letters, figures and single hyphens,"+
			" such as \"hot-stone\"; not %q", source.Safe(c.Kind))
	}
	if first, twice := p.cautionNames.Twice(c.Kind, c.Place); twice {
		r.Fault(c.Place, "caution %q stands twice, first at %s; take one out",
			source.Safe(c.Kind), first)
	}
	r.Known(b.Body, "a caution", CautionKeys, nil)
	attr := b.Body.Attributes
	for _, key := range CautionKeys {
		if attr[key] == nil && missing[key] != "" {
			r.Fault(c.Place, "caution %q has no %s; %s", source.Safe(c.Kind), key, missing[key])
		}
	}
	c.Source = shortText(r, attr["source"])
	subject := subject.Read(r, attr["on"], b.Type)
	if subject == nil {
		return
	}
	c.On, c.names = subject.Words, expr.Names{Subject: subject, Figures: figures}
	c.When = condition(r, attr, &c.names, "when", o)
	c.Say = message(r, attr, &c.names, "say", o)
	c.Detail = message(r, attr, &c.names, "detail", o)
	c.Short = message(r, attr, &c.names, "short", o)
	c.With = shortText(r, attr["with"])
	if len(r.Problems) == before && c.When != nil && c.Say != nil {
		p.Cautions = append(p.Cautions, c)
	}
}
