package steps

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/formula/ingredients"
	"forebake/engine/formula/known"
	"forebake/engine/formula/plain"
	"forebake/engine/formula/usual"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/said/oven"
	"forebake/engine/said/sheets"
	"forebake/engine/said/sponge"
	"forebake/engine/said/times"
	"forebake/engine/said/unread"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// settleSign sets the usual time of a wait for a sign, and tells so. Other times stay open.
// A written time is kept.
func (rd *Reader) settleSign(s *formula.Step, w formula.Sign) {
	if s.Note == "" {
		s.Note = w.Text
	}
	if s.Time.Set || slices.Contains(s.Open, formula.OptTime) {
		return
	}
	if span, source, ok := usual.Time(s, w.Text); ok {
		q := quantity.Quantity{Kind: quantity.Time, Interval: span, Unit: "h", Text: w.Text}
		s.Time = formula.Given{Quantity: q, Place: w.At, Set: true}
		rd.Assumed(w.At, fmt.Sprintf("%q says no time: taken as %s (%s); write your own",
			w.Text, quantity.Duration(span.Lo)+" to "+quantity.Duration(span.Hi), source))
		return
	}
	s.OpenOwn = true
	rd.Assumed(w.At, fmt.Sprintf("%q says no time: taken as \"?\"; write the time", w.Text))
}

// heatOfWay sets the temperature of a filling by its way of cooking, if none is written: a custard
// that boils. The core of a whole piece in water, such as a dough, stays cooler.
func (rd *Reader) heatOfWay(s *formula.Step) {
	if w := s.Sign; w != nil && s.Way == nil && s.Verb.Cooks() {
		s.Way = formula.WayIn(w.Text)
	}
	if s.To.Set || s.Core.Set || s.Way == nil || s.Way.Food == (figure.Interval{}) ||
		s.Part.IsWhole() ||
		slices.Contains(s.Open, formula.OptTo) || slices.Contains(s.Open, formula.OptCore) {
		return
	}
	text := quantity.FormatInterval(s.Way.Food, "C")
	q := quantity.Quantity{Kind: quantity.Temperature, Interval: s.Way.Food, Unit: "C", Text: text}
	s.To = formula.Given{Quantity: q, Place: s.Place, Set: true}
	rd.Assumed(s.Place,
		fmt.Sprintf("what is cooked by %s gets to %s; write to where you measured it",
			s.Way.Name, text))
}

// saidTime reads words where a time belongs: a sign of the end, or a time with other words. It
// reports whether it could.
func (rd *Reader) saidTime(s *formula.Step, e hclsyntax.Expression) bool {
	text, at, ok := rd.Literal(e)
	if !ok || said.PlainTime(text) {
		return false
	}
	if text, ok = rd.coreBeside(s, text, at); ok {
		return true
	}
	if sponge.Of(text).Named && rd.readSponge(s, text, at) || rd.turnedTime(s, text, at) ||
		rd.chooses(s, text, at) {
		return true
	}
	if hours, ok := times.Night(text); ok { // its hours stand beside it
		s.Note = strings.TrimSpace(s.Note + " " + text)
		text = hours
	}
	plain := rd.leftOut(s, text, at)
	sum, ok := said.Sum(plain)
	if !ok || !s.Verb.Mixes() {
		sum, ok = rd.inTurn(s, text)
	}
	if ok {
		s.Time, _ = rd.QuantityText(sum, at, formula.ForTime, s.Verb.Name)
		s.Time.Text, s.Note = sum, text
		rd.leavesIn(s, text, at)
		rd.Assumed(at, fmt.Sprintf("%q is read as %s in all", text, sum))
		return true
	}
	if one, ok := said.OneTime(text); ok {
		s.Time, _ = rd.QuantityText(one, at, formula.ForTime, s.Verb.Name)
		s.Time.Text, s.Note = one, text
		rd.Assumed(at, fmt.Sprintf("%q is read as %s", text, one))
		return true
	}
	if clear := said.Time(text); clear != text {
		if q, fault := quantity.Read(clear, formula.ForTime); fault == nil {
			s.Time = formula.Given{Quantity: q, Place: at, Set: true}
			s.Time.Text = text
			return true
		}
		text, plain = clear, said.Time(plain)
	}
	if rd.saidHeats(s, text, at) || rd.thenWaits(s, text, at) {
		return true
	}
	if time, note, ok := said.TimeAside(text); ok {
		s.Time, _ = rd.QuantityText(time, at, formula.ForTime, s.Verb.Name)
		s.Time.Text, s.Manner = time, note
		rd.leavesIn(s, note, at)
		s.Note = strings.TrimSpace(s.Note + " " + text)
		rd.Assumed(at, fmt.Sprintf("%q is read as %s", text, time))
		return true
	}
	time, rest, ok := times.In(plain)
	if !ok {
		time, rest, ok = times.During(text, rd.asks(s))
	}
	if !ok {
		return rd.toldBeside(s, text, at) || rd.saidNoTime(s, text, at)
	}
	if _, fault := quantity.Read(text, formula.ForTime); fault == nil {
		return false
	}
	s.Manner = rest
	goesIn := strings.TrimRight(untilTail.ReplaceAllString(rest, ""), " ,;")
	if _, why := said.Which(goesIn, rd.Names(s)); why == "" && goesIn != "" && s.Verb.Joins() &&
		len(s.With) == 0 && !said.IsSpeed(goesIn) { // "in the butter, 5 min"
		rd.Withs = append(rd.Withs, Use{Step: s, Name: goesIn, Place: at})
		rd.Assumed(at, fmt.Sprintf("%q is read as with = %q", text, goesIn))
	} else if len(s.With) == 0 && !rd.namesClass(s, strings.TrimPrefix(rest, "in "), at) {
		rd.leavesIn(s, rest, at)
	}
	s.Time, _ = rd.QuantityText(time, at, formula.ForTime, s.Verb.Name)
	s.Time.Text = text
	s.Sign = &formula.Sign{Text: rest, At: at}
	rd.Assumed(at, fmt.Sprintf("%q is read as %s", text, time))
	return true
}

// coreBeside reads the core in the words of a bake, "25 min at 190 C, core 96 C", and gives the
// others. done reports whether they are no more than a time, which it reads.
func (rd *Reader) coreBeside(
	s *formula.Step, text string, at source.Place,
) (rest string, done bool) {
	rest, core, ok := oven.CoreIn(text)
	g, fault := quantity.Read(core, formula.ForTemperature)
	if !ok || !s.Verb.Bakes() || s.Core.Set || fault != nil || g.Hi > hottestCore {
		return text, false
	}
	s.Core, _ = rd.QuantityText(core, at, formula.ForTemperature, s.Verb.Name)
	rd.Assumed(at, fmt.Sprintf("%q is read as core = %q", text, core))
	if _, fault := quantity.Read(rest, formula.ForTime); fault != nil {
		return rest, false
	}
	s.Time, _ = rd.QuantityText(rest, at, formula.ForTime, s.Verb.Name)
	s.Time.Text = rest
	return rest, true
}

// saidNoTime reads words where a time belongs that hold none: ingredients, a final temperature, a
// sign of the end. It reports whether it could.
func (rd *Reader) saidNoTime(s *formula.Step, text string, at source.Place) bool {
	before := s.Sign
	if rd.namesOwn(s, text, at) || rd.namesClass(s, text, at) {
		return true
	}
	if block := rd.blockIn(text); block != "" && s.Verb.Mixes() { // "the soaked fruit, gently"
		rd.Withs = append(rd.Withs, Use{Step: s, Name: block, Place: at})
		s.Sign = &formula.Sign{Text: text, At: at}
		return true
	}
	// "over a low heat until thick, 65 C"
	if t, ok := said.TempIn(times.NoFlame(text)); ok && s.Verb.Takes(formula.OptTo) {
		s.To, _ = rd.QuantityText(t, at, formula.ForTemperature, s.Verb.Name)
		rd.Assumed(at, fmt.Sprintf("%q is read as to = %q", text, t))
		text = strings.Trim(strings.Replace(text, t, "", 1), " ,;()")
		s.Sign, s.Manner = &formula.Sign{Text: text, At: at}, text
	} else if to := known.CoolsTo(s, text); to != "" && s.Verb.Takes(formula.OptTo) {
		s.To, _ = rd.QuantityText(to, at, formula.ForTemperature, s.Verb.Name)
		s.To.Text = text
		rd.Assumed(at, fmt.Sprintf("%q is read as to = %q", text, to))
		s.Sign, s.Manner = &formula.Sign{Text: text, At: at}, text
	}
	if s.Sign == nil && (said.Sign(text) || said.Manner(text)) {
		s.Sign, s.Manner = &formula.Sign{Text: text, At: at}, text
	}
	return s.Sign != before || rd.besideOwn(s, text, at)
}

// saidHeats reads a time with a temperature, or two times with two oven temperatures. It reports
// whether it could.
func (rd *Reader) saidHeats(s *formula.Step, text string, at source.Place) bool {
	if first, then, ok := said.TwoHeats(text); ok && s.Verb.Bakes() {
		s.Time, _ = rd.QuantityText(first.Time, at, formula.ForTime, s.Verb.Name)
		s.At, _ = rd.QuantityText(first.Temp, at, formula.ForTemperature, s.Verb.Name)
		time, _ := rd.QuantityText(then.Time, at, formula.ForTime, s.Verb.Name)
		temp, _ := rd.QuantityText(then.Temp, at, formula.ForTemperature, s.Verb.Name)
		s.Time.Text, s.At.Text, time.Text, temp.Text = first.Time, first.Temp, then.Time, then.Temp
		rd.after = append(rd.after, func() *formula.Step { return s.GoesOn(time, temp) })
		rd.Assumed(at, fmt.Sprintf("%q is read as two steps, { %s = %q, at = %q }, { %s = %q, "+
			"at = %q }", text,
			s.Word, first.Time, first.Temp, s.Word, then.Time, then.Temp))
		return true
	}
	if time, heat, rest, ok := times.AtBare(text); ok && !s.At.Set &&
		(s.Verb.Bakes() || s.InHotFat()) {
		s.Time, _ = rd.QuantityText(said.Time(time), at, formula.ForTime, s.Verb.Name)
		s.Time.Text, s.Manner = time, rest
		if !rd.saidAt(s, heat, at, s.Verb.Name+": at") {
			s.At, _ = rd.QuantityText(heat, at, formula.ForTemperature, s.Verb.Name+": at")
		}
		rd.Assumed(at, fmt.Sprintf("%q is read as %s, at = %q", text, time, heat))
		return true
	}
	if time, to, ok := said.TimeTo(text); ok && !s.InHotFat() && rd.goesTo(s, time, to, text, at) {
		return true
	}
	if t, ok := said.TimeAt(text); ok && !s.At.Set && s.Verb.Takes(formula.OptAt) {
		if _, fault := quantity.Read(said.Time(t.Time), formula.ForTime); fault == nil {
			s.Time, _ = rd.QuantityText(said.Time(t.Time), at, formula.ForTime, s.Verb.Name)
			s.At, _ = rd.QuantityText(t.Temp, at, formula.ForTemperature, s.Verb.Name)
			s.Time.Text, s.At.Text, s.Manner = t.Time, t.Temp, t.Rest
			if t.Humidity != "" && s.Verb.Takes(formula.OptHumidity) {
				air, _ := rd.QuantityText(t.Humidity, at, formula.ForPercent, s.Verb.Name)
				formula.OptHumidity.Put(s, air)
			}
			rd.Assumed(at, fmt.Sprintf("%q is read as %s, at = %q", text, t.Time, t.Temp))
			return true
		}
	}
	return false
}

// readSponge reads a sponge in the words of a step, { mix = "Dampfl: yeast and milk, 15 min" }, as
// a soak before the mix. It reports whether the part lists its foods, yeast among them.
func (rd *Reader) readSponge(s *formula.Step, text string, at source.Place) bool {
	told := sponge.Of(text)
	names := rd.ownNames(s, told.Foods)
	yeast := slices.ContainsFunc(names, func(name string) bool {
		it := ingredients.Named(s.Part, name).Item
		return it != nil && it.Yeast > 0
	})
	if !s.Verb.Soaks() && !(s.Verb.Mixes() && told.Named) || !yeast || len(s.With) > 0 {
		return false
	}
	s.Verb = formula.StepNamed("bloom").Verb
	for _, name := range names {
		rd.Withs = append(rd.Withs, Use{Step: s, Name: name, Place: at})
	}
	if told.Time != "" {
		s.Time, _ = rd.QuantityText(said.Time(told.Time), at, formula.ForTime, s.Verb.Name)
	}
	s.Sign = &formula.Sign{Text: text, At: at}
	rd.Assumed(at, fmt.Sprintf("%q is read as a sponge of %s, left to stand before the mix: "+
		"how much of each goes in is not read", text, strings.Join(names, " and ")))
	return true
}

// goesTo reads a time with its final temperature, "3 min to 65 C". It reports whether the step
// takes a temperature.
func (rd *Reader) goesTo(s *formula.Step, time, to, text string, at source.Place) bool {
	field, o := &s.To, formula.OptTo
	if !s.Verb.Takes(formula.OptTo) {
		field, o = &s.Core, formula.OptCore
	}
	g, fault := quantity.Read(to, formula.ForTemperature)
	if fault != nil || field.Set || !s.Verb.Takes(o) || s.Verb.Bakes() && g.Hi > hottestCore {
		return false
	}
	*field, _ = rd.QuantityText(to, at, formula.ForTemperature, s.Verb.Name)
	s.Time, _ = rd.QuantityText(said.Time(time), at, formula.ForTime, s.Verb.Name)
	rd.Assumed(at, fmt.Sprintf("%q is read as %s, %s = %q", text, time, o.Name, to))
	return true
}

// hottestCore is the highest core temperature of a bake, C: the core keeps its water.
const hottestCore = 105

// besideOwn reads words where a time belongs: the ingredients that go in, or words that leave the
// time open. It reports whether it could.
func (rd *Reader) besideOwn(s *formula.Step, text string, at source.Place) bool {
	if rd.readSponge(s, text, at) {
		return true
	}
	if head, rest := said.Gradually(text); head != "" && rd.namesOwn(s, head, at) {
		rd.NotRead(at, rest)
		return true
	}
	if head, rest, ok := strings.Cut(text, ","); ok && !unread.Asked(rd.Opts.Larder, rest) &&
		rd.namesOwn(s, strings.TrimSpace(head), at) {
		rd.NotRead(at, rest)
		return true
	}
	food := unread.Food(rd.Opts.Larder, text)
	if _, why := said.Which(food, rd.Names(s)); food != "" && why == "" {
		return false // it is in the list: a second line of it would double it
	}
	last := food[strings.LastIndex(food, " ")+1:] // "the hot milk"
	if _, why := said.Which(last, rd.Names(s)); why == "" && said.NoFigure(text) {
		food = ""
	}
	if food != "" && s.Verb.Mixes() {
		rd.Problems = append(rd.Problems, source.Problem{Place: at,
			Text: fmt.Sprintf("%s: %q stands in no list "+
				"here; add it to the ingredients of %q, with its amount", s.Verb.Name, food,
				s.Part.Name), Paste: fmt.Sprintf("%q = \"?\"", food)})
		return true
	}
	plain := said.NoSizes(text)
	if !said.NoFigure(plain) || unread.Asked(rd.Opts.Larder, plain) && !s.Verb.Stores() {
		return false // how long it is kept stays open: { store = "eat the same day" }
	}
	s.Sign = &formula.Sign{Text: text, At: at}
	return true
}

// namesOwn reads ingredients where a time belongs: { dissolve = "the yeast" }.
func (rd *Reader) namesOwn(s *formula.Step, text string, at source.Place) bool {
	if !s.Verb.Joins() && !s.Verb.Heats() || s.Verb.Bakes() {
		return false
	}
	names := []string{text}
	if _, why := said.Which(text, rd.Names(s)); why != "" {
		names = rd.ownNames(s, text)
	}
	for _, name := range names {
		rd.Withs = append(rd.Withs, Use{Step: s, Name: name, Place: at})
	}
	if len(names) == 0 {
		return false
	}
	if usual.Has(s, text) {
		s.Sign = &formula.Sign{Text: text, At: at} // its time is the usual one
		return true
	}
	s.OpenOwn = true
	rd.Assumed(at, fmt.Sprintf("%q says what goes in and no time: taken as \"?\"", text))
	return true
}

// untilTail is what is waited for behind what goes in: "the yeast in the milk, until creamy".
var untilTail = spelling.Pattern(`(?i)\b(?:un)?till? .*$`)

// sideways are words for how wide or long a sheet is, and not how thick.
var sideways = spelling.Pattern(`(?i)(?:^|[\pL ] )\d[\d./½¼¾ ]*[- ]?(?:inch(?:es)?|in|cm|mm|") ` +
	`(?:wide|long|across|square|circle|diameter|on a side)\b`)

// SaidArea reads a sheet given as length by width, or refuses a side given so. It reports whether
// it did either.
func (rd *Reader) SaidArea(s *formula.Step, e hclsyntax.Expression, own bool, what string) bool {
	text, at, ok := rd.Literal(e)
	if !ok || quantity.IsPlain(text) {
		return false
	}
	if own {
		isUS := func() bool { return said.IsUS(rd.File.Text) } // it looks at all of the file
		if whole, added, ok := sheets.Sized(text); ok {
			rd.Assumed(at, fmt.Sprintf("%q leaves out a unit: it is read as %s", text, added))
			text = whole
		} else if whole, added, ok := sheets.Unwritten(text, isUS); ok {
			rd.Assumed(at, fmt.Sprintf("%q has no unit: it is read as %s", text, added))
			text = whole
		}
	}
	long, short, isArea := said.Area(text)
	if one, ok := said.LengthIn(text); ok && !isArea && !(own && sideways.MatchString(text)) {
		g, ok := rd.QuantityText(one, at, formula.ForLength, what)
		if g.Text = one; ok && own {
			s.Manner = text
			if !rd.tooThick(s, g) {
				s.Measure = g
			}
		} else if ok {
			s.Wide = &g
		}
		return ok
	}
	switch {
	case !isArea && own && (said.NoFigure(text) || sideways.MatchString(text)):
		// { flatten = "by hand" }, { roll = "10 inches wide, up to 12" }
		s.OpenOwn, s.Note = true, text
		rd.Assumed(at, fmt.Sprintf("%q says no thickness: taken as \"?\"", text))
		return true
	case !isArea:
		return false
	case !own:
		rd.Fault(at, "%s: one side, the one that is rolled up: write %q, or %q", what, long.Text,
			short.Text)
		return true
	}
	if thick := said.ThickIn(text); thick != "" {
		s.Measure, _ = rd.QuantityText(thick, at, formula.ForLength, what)
	}
	for i, side := range [...]quantity.Quantity{long, short} {
		s.Sides[i] = formula.Given{Quantity: side, Place: at, Set: true}
	}
	s.Words = text
	says := "the thickness comes from the dough's weight"
	if s.Measure.Set {
		says = fmt.Sprintf("it is read as %s = %q", what, s.Measure.Text)
	}
	rd.Assumed(at, fmt.Sprintf("%q is length by width: %s; it is rolled up from its longer side, "+
		"unless the roll says \"from the short side\"", text, says))
	return true
}

// plain reads a step's own value or an option where nothing else could: what stands plainly among
// its words.
func (rd *Reader) plain(s *formula.Step) plain.Step {
	return plain.Step{Reader: rd.Reader.Reader, Step: s,
		Heat: func(text string, at source.Place) bool {
			return rd.saidAt(s, text, at, s.Verb.Name+": at")
		},
		Waits: leftToStand.MatchString,
	}
}

// fill reads an option, in figures or in words.
func (rd *Reader) fill(s *formula.Step, o *formula.Option, e hclsyntax.Expression) {
	before := len(rd.Problems)
	rd.FillStep(s, o, e)
	if text, at, ok := rd.Literal(e); ok {
		rd.plain(s).Option(before, o, text, at)
	}
}
