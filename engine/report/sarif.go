package report

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/jsontext"
	"forebake/engine/layout"
	"forebake/engine/linehash"
	"forebake/engine/sariflog"
	"forebake/engine/source"
)

const sarifSchema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/" +
	"sarif-schema-2.1.0.json"

// The names of results that no rule makes. Each has a slash, which no
// rule name may have, so no setting reaches them.
const (
	sarifCaution   = "caution/all"
	sarifUnchecked = "food-safety/unchecked"
	sarifLoosened  = "food-safety/loosened"
	sarifSetAside  = "food-safety/set-aside"
)

var sarifLevels = map[string]string{"stop": "error", "risk": "warning", "note": "note"}

// sarif prints a run as a SARIF log. The cautions stand first, twice:
// in the properties of the run and as results, since a site shows
// results only. A finding that a house sets aside of food safety is a
// result of its own beside the suppressed one, which sites do not show.
type sarif struct {
	out       io.Writer
	head      Head
	cautions  *Cautions
	unread    source.Problems
	setAside  []*finding.Finding
	unchecked []finding.Unchecked
	loosened  []finding.Loosened
	found     *Found
	notices   []string
	assumed   string
	totals    finding.Totals

	address func(name string) string  // of a file
	hashes  map[*source.File][]string // of its lines

	rules []sariflog.Rule
	index map[string]int // of a rule, by its id
	seen  map[string]int // results, by the key of their fingerprint

	formulas []oneFormula       // that have cautions
	most     int                // findings that fit
	merging  bool               // the cautions of all formulas stand as one
	joined   []*finding.Caution // as one, once they are
}

func init() { register(Format{"sarif", ".sarif", true, allMends, newSARIF, isSARIF}) }

func newSARIF(out io.Writer, o Options) Writer {
	s := &sarif{out: out, address: o.Address, hashes: map[*source.File][]string{},
		rules: []sariflog.Rule{}, index: map[string]int{}}
	if s.address == nil {
		s.address = func(name string) string { return name }
	}
	return s
}

func (s *sarif) Begin(h Head)                       { s.head = h }
func (s *sarif) Cautions(c *Cautions)               { s.cautions = c }
func (s *sarif) Unread(list source.Problems)        { s.unread = list }
func (s *sarif) SetAside(list []*finding.Finding)   { s.setAside = list }
func (s *sarif) Unchecked(list []finding.Unchecked) { s.unchecked = list }
func (s *sarif) Loosened(list []finding.Loosened)   { s.loosened = list }
func (s *sarif) Findings(f *Found)                  { s.found = f }
func (s *sarif) Assumed(list []finding.Assumptions) { s.assumed = finding.AssumedLine(list) }
func (s *sarif) Notices(list []string)              { s.notices = finding.OneLine(list) }
func (s *sarif) Totals(t finding.Totals)            { s.totals = t }

// maxResults and maxLog are how many results and bytes code-review
// sites take of a log: 25,000 and 10 MB. They cut off the rest, or
// refuse the log.
const (
	maxResults = 24_900
	maxLog     = 9_900_000
)

// End writes the log, folded only until it fits. First the cautions of
// all formulas are joined, then the least serious findings go.
func (s *sarif) End() error {
	s.describe()
	s.formulas = s.cautions.byFormula()
	s.merging = len(s.formulas) > maxCautionResults
	s.most = max(0, maxResults-s.fixed())
	for {
		text, taken := jsontext.Capped{Most: maxLog}, 0
		err := s.write(&text, &taken)
		if err == nil {
			_, err = s.out.Write(text.Bytes())
			return err
		}
		if !errors.Is(err, jsontext.ErrFull) {
			return err
		}
		found := min(s.most, len(s.found.All()))
		switch {
		case !s.merging && len(s.formulas) > 1:
			s.merging = true
		case found > 0: // as many as fitted if all were of one size, and a few less
			fitted := max(0, taken-s.fixed())
			s.most = min(found-1, int(float64(fitted)*0.97))
		default: // nothing is left to be folded
			return s.write(s.out, nil)
		}
	}
}

// write writes the log as it is folded, and counts the results that
// were taken. Its descriptors of rules stand before its results.
func (s *sarif) write(out io.Writer, taken *int) error {
	s.seen = map[string]int{}
	run := sariflog.Run{
		Properties: sariflog.RunProperties{Cautions: []JSONCaution{}, Totals: totalsJSON(s.totals)},
		// No informationUri: the program has no page of its own.
		Tool: sariflog.Tool{Driver: sariflog.Driver{Name: "forebake", Version: s.head.Version,
			SemanticVersion: s.head.Version, Rules: s.rules}},
		Invocations: []sariflog.Invocation{{ExecutionSuccessful: len(s.unread) == 0,
			ToolExecutionNotifications: s.notifications()}},
		ColumnKind: "utf16CodeUnits",
		Results:    []sariflog.Result{},
	}
	// The long lists are written item by item: as one text those of a
	// large collection would take ten times the memory of the check.
	// Each item takes one line, so that more of them fit.
	const indent = "      "
	return jsontext.WriteInto(out, sariflog.Log{Schema: sarifSchema, Version: "2.1.0",
		Runs: []sariflog.Run{run}},
		jsontext.List{Indent: indent + "  ", Key: "cautions", Flat: true,
			Items: func(yield func(any) bool) {
				for _, c := range s.shownCautions() {
					yield(JSONCaution{source.Safe(c.Whole()), source.Safe(c.Source),
						source.Safe(c.Formula)})
				}
			}},
		jsontext.List{Indent: indent, Key: "results", Flat: true, Taken: taken,
			Items: s.results})
}

// shownCautions lists the cautions for the properties of the run.
func (s *sarif) shownCautions() []*finding.Caution {
	if !s.merging {
		return s.cautions.List
	}
	if s.joined == nil {
		for _, m := range s.cautions.merged() {
			one := *m.Caution
			one.Formula, one.Detail = "", s.cautions.briefly(m)
			s.joined = append(s.joined, &one)
		}
	}
	return s.joined
}

// notifications gives the files that could not be read, which are in no
// result, and the notices.
func (s *sarif) notifications() []sariflog.Notification {
	out := []sariflog.Notification{}
	say := func(level, text string) {
		out = append(out, sariflog.Notification{Level: level,
			Message: sariflog.Text{Text: plainText(text)}})
	}
	for _, p := range s.unread {
		say("error", p.Text)
		if !p.Place.IsZero() {
			out[len(out)-1].Locations = s.locations(p.Place, "", "")
		}
	}
	if _, left := finding.Fold(s.found.All(), s.most); len(left) > 0 {
		say("warning", fmt.Sprintf("left out of the results, since sites take %d and 10 MB: %s. "+
			"forebake check --as json holds them.", maxResults, folded(left)))
	}
	if s.merging {
		say("warning", fmt.Sprintf("the cautions of %s stand as one, since sites take %d results "+
			"and 10 MB; forebake cautions prints each.", Count(len(s.formulas), "formula"),
			maxResults))
	}
	if s.assumed != "" {
		say("note", s.assumed)
	}
	for _, n := range s.notices {
		say("note", n)
	}
	return out
}

func (s *sarif) add(r sariflog.Rule) {
	if _, has := s.index[r.ID]; has {
		return
	}
	s.index[r.ID] = len(s.rules)
	s.rules = append(s.rules, r)
}

// describe lists the descriptors: cautions, what the house takes
// from food safety, every rule in force, and the findings that no
// rule makes.
func (s *sarif) describe() {
	if len(s.cautions.List) > 0 {
		s.add(plainRule(sarifCaution, "note", "The cautions of a formula.",
			"They are always shown, and no setting reaches them. The properties of the run hold "+
				"each with its source.", "caution", "food-safety"))
	}
	if len(s.unchecked) > 0 {
		s.add(plainRule(sarifUnchecked, "warning", "A house leaves out a pack of food safety.",
			"What its rules would find is not looked for.", "food-safety"))
	}
	if len(s.loosened) > 0 {
		s.add(plainRule(sarifLoosened, "warning",
			"A house makes a rule of food safety less strict.", "Every report says so, with the "+
				"reason.", "food-safety"))
	}
	if len(s.setAside) > 0 {
		s.add(plainRule(sarifSetAside, "warning", "A house sets a finding of food safety aside.",
			"The finding itself is in this log too, marked as suppressed.", "food-safety"))
	}
	if s.head.Cards != nil {
		for _, c := range s.head.Cards() {
			s.add(cardRule(c))
		}
	}
	for _, f := range s.found.All() {
		if _, has := s.index[f.Rule]; has {
			continue
		}
		r := plainRule(f.Rule, sarifLevels[f.Level.String()], f.Why, "Source: "+f.Source+".",
			source.Safe(f.Pack))
		r.Properties.Pack = source.Safe(f.Pack)
		s.add(r)
	}
}

func plainRule(id, level, short, more string, tags ...string) sariflog.Rule {
	all := plainText(short + " " + more)
	return sariflog.Rule{
		ID:                   id,
		ShortDescription:     sariflog.Text{Text: plainText(short)},
		FullDescription:      sariflog.Text{Text: all},
		Help:                 sariflog.Text{Text: all, Markdown: helpMarkdown(short + " " + more)},
		DefaultConfiguration: sariflog.Configuration{Level: level},
		Properties:           sariflog.RuleProperties{Tags: tags},
	}
}

// cardRule describes a rule from its card.
func cardRule(c finding.Card) sariflog.Rule {
	r := sariflog.Rule{
		ID:               c.ID,
		ShortDescription: sariflog.Text{Text: plainText(firstSentence(c.Why))},
		FullDescription: sariflog.Text{
			Text: plainText("Flags when: " + c.When + ". " + c.Why)},
		DefaultConfiguration: sariflog.Configuration{Level: sarifLevels[c.Level]},
		Properties: sariflog.RuleProperties{Tags: []string{"forebake", source.Safe(c.Pack)},
			Pack: source.Safe(c.Pack), On: c.On, At: source.Safe(fmt.Sprintf("%s:%d", c.File,
				c.Line))},
	}
	if c.Safety {
		r.Properties.Tags = append(r.Properties.Tags, "food-safety")
	}
	var limits []string
	for _, l := range c.Limits {
		limits = append(limits, l.Name+" "+l.Shown+LimitSource(l)+SetBy(l.By))
	}
	// Sites print help with its doubled braces, so figures in a message
	// stand in round brackets here.
	say := strings.NewReplacer("{", "(", "}", ")").Replace(c.Say)
	lines := [][2]string{{"Says", say}, {"Why", c.Why}, {"Level", c.Level + SetBy(c.LevelBy)},
		{"The house says", Reason(c.Because)}, {"Flags when", c.When}, {"Limits",
			strings.Join(limits, ", ")}, {"Source", c.Source},
		{"A house changes it",
			fmt.Sprintf("a block set %q in house.hcl; forebake why %s shows how", c.ID, c.ID)}}
	var text, md []string
	for _, l := range lines {
		if l[1] != "" {
			text = append(text, l[0]+": "+plainText(l[1]))
			md = append(md, "**"+l[0]+":** "+helpMarkdown(l[1]))
		}
	}
	r.Help = sariflog.Text{Text: strings.Join(text, "\n"), Markdown: strings.Join(md, "\n\n")}
	return r
}

// helpMarkdown is markdown for a log, whose messages may hold no HTML
// and so no comments (section 3.11.4.2).
func helpMarkdown(s string) string {
	return braces(strings.ReplaceAll(Markdown(s), layout.Separator, ""))
}

func firstSentence(s string) string {
	if i := strings.Index(s, ". "); i > 0 {
		return s[:i+1]
	}
	return s
}

// results gives the cautions, what a house takes from food safety, and
// the findings, one after the other.
func (s *sarif) results(yield func(any) bool) {
	s.cautionResults(yield)
	for _, u := range s.unchecked {
		yield(s.ownResult(sarifUnchecked, "warning", UpperFirst(u.Text())+".", u.Pack, "", u.Place))
	}
	for _, l := range s.loosened {
		text := fmt.Sprintf(
			"Food safety, made less strict by the house: %s: %s is %s, and was %s, "+
				"because %s.",
			l.Rule,
			l.What,
			l.To,
			l.From,
			Reason(l.Because),
		)
		yield(s.ownResult(sarifLoosened, "warning", text, l.Rule+" "+l.What, "", l.Place))
	}
	for _, f := range s.setAside {
		text := fmt.Sprintf("Food safety, set aside by the house: %s: %s Set aside at %s%s, "+
			"because %s.", f.Rule, f.Text, FileLine(f.By), untilText(f), Reason(f.Because))
		yield(s.ownResult(sarifSetAside, "warning", text, f.Rule+" on "+f.Subject,
			f.Formula, f.Place))
	}
	kept, _ := finding.Fold(s.found.All(), s.most)
	for _, f := range kept {
		if !yield(s.result(f)) {
			return
		}
	}
}

// maxCautionResults is how many formulas have a result of cautions
// each. Of more formulas one result holds the cautions of all.
const maxCautionResults = 10_000

// fixed counts the results that are no findings.
func (s *sarif) fixed() int {
	return len(s.cautionGroups()) + len(s.unchecked) + len(s.loosened) + len(s.setAside)
}

// cautionGroups gives the cautions that one result holds each: those of
// a formula, or of all.
func (s *sarif) cautionGroups() []oneFormula {
	if !s.merging {
		return s.formulas
	}
	return []oneFormula{{place: s.formulas[0].place, list: s.shownCautions()}}
}

// cautionResults gives the results of the cautions, whole.
func (s *sarif) cautionResults(yield func(any) bool) {
	plain := map[string]string{} // formulas have most of their cautions in common
	var text strings.Builder
	var sources []string
	for _, one := range s.cautionGroups() {
		text.Reset()
		sources = sources[:0]
		if one.name == "" && len(s.formulas) > 1 {
			fmt.Fprintf(&text, "Cautions of %d formulas; the properties of the run hold them by "+
				"formula:", len(s.formulas))
		} else {
			text.WriteString("Cautions:")
		}
		for _, c := range one.list {
			whole := c.Whole()
			if plain[whole] == "" {
				plain[whole] = plainText(whole)
			}
			text.WriteString(" " + plain[whole])
			if !slices.Contains(sources, c.Source) {
				sources = append(sources, c.Source)
			}
		}
		r := s.ownResult(sarifCaution, "note", "", "", one.name, one.place)
		r.Message.Text = text.String()
		r.Properties.Answer = "caution"
		r.Properties.Source = source.Safe(strings.Join(sources, "; "))
		yield(r)
	}
}

// folded says what finding.Fold has left out; "" for nothing.
func folded(left map[string]int) string {
	var parts []string
	for _, w := range finding.Words {
		if left[w] > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", left[w], w))
		}
	}
	return strings.Join(parts, ", ")
}

// ownResult makes a result that no rule makes.
func (s *sarif) ownResult(id, level, text, subject, formula string,
	p source.Place) sariflog.Result {
	return sariflog.Result{
		RuleID:              id,
		RuleIndex:           s.index[id],
		Kind:                "fail",
		Level:               level,
		Message:             sariflog.Text{Text: plainText(text)},
		Locations:           s.locations(p, formula, subject),
		PartialFingerprints: s.fingerprint(formula, subject, id, p),
		Suppressions:        []sariflog.Suppression{},
		Properties: sariflog.ResultProperties{
			Answer: "foodSafety", Formula: source.Safe(formula), Subject: source.Safe(subject),
			FoodSafety: true,
		},
	}
}

// result makes the result of a finding.
func (s *sarif) result(f *finding.Finding) sariflog.Result {
	r := sariflog.Result{
		RuleID:              f.Rule,
		RuleIndex:           s.index[f.Rule],
		Kind:                "fail",
		Level:               sarifLevels[f.Level.String()],
		Locations:           s.locations(f.Place, f.Formula, f.Subject),
		PartialFingerprints: s.fingerprint(f.Formula, f.Subject, f.Rule, f.Place),
		Suppressions:        []sariflog.Suppression{},
		Properties: sariflog.ResultProperties{
			Answer: f.Answer.String(), Formula: source.Safe(f.Formula),
			Subject: source.Safe(f.Subject), FoodSafety: f.Safety, Doubt: f.Doubt,
			Figures: figures(f), Source: source.Safe(f.Source),
		},
	}
	for _, n := range f.Needs {
		r.Properties.Needs = append(r.Properties.Needs, source.Safe(n))
	}
	text := f.Text
	if f.Doubt {
		text += " " + doubt(f)
	}
	setAsideOpen := f.Answer == finding.Waived && f.Reason != "" && !f.Doubt
	if f.Answer == finding.Unsure || f.Answer == finding.Assumed || setAsideOpen {
		// Sections 3.27.9 and 3.27.10: an answer that lacks a figure is
		// open, and has no level.
		r.Kind, r.Level = "open", "none"
		text += "."
	}
	if f.Answer == finding.Waived {
		at := sariflog.Location{PhysicalLocation: s.physical(f.By)}
		why := source.Safe(Reason(f.Because) + untilText(f) + ", " + FileLine(f.By))
		r.Suppressions = append(r.Suppressions, sariflog.Suppression{
			Kind: "external", Status: "accepted", Justification: why, Location: &at})
	}
	text += " Why: " + f.Why
	for _, m := range f.Mends { // not as fixes of SARIF, which a site would offer as edits
		text += " Mend: " + m.Text + " (" + m.Trust + ")."
		r.Properties.Mends = append(r.Properties.Mends,
			sariflog.Mend{Text: source.Safe(m.Text), Trust: m.Trust})
	}
	r.Message = sariflog.Text{Text: plainText(text)}
	related := map[string]bool{}
	for _, g := range f.Figures {
		// A limit may stand in a pack inside the program, where no
		// link leads.
		if g.Place.IsZero() || related[g.Name] || g.Kind == "limit" {
			continue
		}
		related[g.Name] = true
		r.RelatedLocations = append(r.RelatedLocations,
			sariflog.Location{PhysicalLocation: s.physical(g.Place),
				Message: &sariflog.Text{Text: plainText(g.Label + " " + g.Shown)}})
	}
	return r
}

// fingerprint identifies a result by its formula, subject and rule, not
// by its place: lines may move above it, and files be renamed. Equal
// ones are numbered in their order. Beside it stands the one that sites
// make themselves where a log has none, of the text of the line.
func (s *sarif) fingerprint(formula, subject, rule string, p source.Place) map[string]string {
	key := formula + "\x00" + subject + "\x00" + rule
	s.seen[key]++
	sum := sha256.Sum256([]byte(key))
	out := map[string]string{"forebake/v1": fmt.Sprintf("%s:%d", hex.EncodeToString(sum[:16]),
		s.seen[key])}
	if p.IsZero() {
		return out
	}
	lines := s.hashes[p.File]
	if lines == nil {
		lines = linehash.Of(p.File.Text)
		s.hashes[p.File] = lines
	}
	if at := p.Line(); at <= len(lines) {
		out["primaryLocationLineHash"] = lines[at-1]
	}
	return out
}

func (s *sarif) locations(p source.Place, formula, subject string) []sariflog.Location {
	l := sariflog.Location{PhysicalLocation: s.physical(p)}
	var name []string
	for _, part := range []string{formula, subject} {
		if part != "" {
			name = append(name, source.Safe(part))
		}
	}
	if len(name) > 0 {
		l.LogicalLocations = []sariflog.Logical{{FullyQualifiedName: strings.Join(name, ": ")}}
	}
	return []sariflog.Location{l}
}

func (s *sarif) physical(p source.Place) *sariflog.Physical {
	if p.IsZero() {
		return nil
	}
	end := max(p.End, p.Start)
	return &sariflog.Physical{
		ArtifactLocation: sariflog.Artifact{URI: jsontext.Reference(s.address(p.File.Name))},
		Region: sariflog.Region{StartLine: p.Line(), StartColumn: p.File.UTF16Column(p.Start),
			EndLine: p.File.Position(end).Line, EndColumn: p.File.UTF16Column(end)},
	}
}

// plainText makes a plain-text message of SARIF: one line, safe for a
// terminal, with braces doubled (section 3.11.5). A space breaks what
// would be read as a link (section 3.11.6).
func plainText(s string) string {
	s = strings.Join(strings.Fields(source.Safe(s)), " ")
	return braces(strings.ReplaceAll(s, "](", "] ("))
}

var doubled = strings.NewReplacer("{", "{{", "}", "}}")

func braces(s string) string { return doubled.Replace(s) }

func isSARIF(first, _ []byte) bool {
	return bytes.HasPrefix(first, []byte("{\n  \"$schema\": ")) &&
		bytes.Contains(first, cautionsKey)
}
