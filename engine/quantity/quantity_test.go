package quantity

import (
	"encoding/csv"
	"math"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"forebake/engine/figure"

	"pgregory.net/rapid"
)

var all = Of(Mass, Volume, Count, Percent, Temperature, Time, Length)

func TestRead(t *testing.T) {
	tests := []struct {
		text   string
		kind   Kind
		lo, hi float64
		unit   string
	}{
		{"200 g", Mass, 200, 200, "g"},
		{"1.5kg", Mass, 1500, 1500, "kg"},
		{" .5 kg ", Mass, 500, 500, "kg"},
		{"250 mg", Mass, 0.25, 0.25, "mg"},
		{"2 lb 3 oz", Mass, 992.23330937, 992.23330938, "lb"},
		{"8 ounces", Mass, 226.796185, 226.796185, "oz"},
		{"200 Grams", Mass, 200, 200, "g"},
		{"200 grammes", Mass, 200, 200, "g"},
		{"1 h 30 min", Time, 90, 90, "h"},
		{"1h30min", Time, 90, 90, "h"},
		{"1 day 2 h 30 min", Time, 1590, 1590, "day"},
		{"90 s", Time, 1.5, 1.5, "s"},
		{"90 minutes", Time, 90, 90, "min"},
		{"2 hrs.", Time, 120, 120, "h"},
		{"90 min to 2 h", Time, 90, 120, "h"},
		{"8 to 10 h", Time, 480, 600, "h"},
		{"8 h to 10 h", Time, 480, 600, "h"},
		{"2-3 h", Time, 120, 180, "h"},
		{"2–3 h", Time, 120, 180, "h"},
		{"2 — 3 h", Time, 120, 180, "h"},
		{"2h-3h", Time, 120, 180, "h"},
		{"1 h 30 min to 2 h", Time, 90, 120, "h"},
		{"1 h to 1 h 30 min", Time, 60, 90, "h"},
		{"3 to 3 h", Time, 180, 180, "h"},
		{"1/2 tsp", Volume, 2.464460796875, 2.464460796875, "tsp"},
		{"1 1/2 cup", Volume, 354.88235475, 354.88235475, "cup"},
		{"1 1/2-2 cups", Volume, 354.88235475, 473.176473, "cup"},
		{"½ tsp", Volume, 2.464460796875, 2.464460796875, "tsp"},
		{"1½ tsp", Volume, 7.393382390625, 7.393382390625, "tsp"},
		{"1 ½ tsp", Volume, 7.393382390625, 7.393382390625, "tsp"},
		{"1⁄2 tsp", Volume, 2.464460796875, 2.464460796875, "tsp"},
		{"2 fl oz", Volume, 59.147059125, 59.147059125, "floz"},
		{"2 fl. oz.", Volume, 59.147059125, 59.147059125, "floz"},
		{"2 fluid ounces", Volume, 59.147059125, 59.147059125, "floz"},
		{"2 Tablespoons", Volume, 29.5735295625, 29.5735295625, "tbsp"},
		{"250 mL", Volume, 250, 250, "ml"},
		{"2 litres", Volume, 2000, 2000, "l"},
		{"1 L", Volume, 1000, 1000, "l"},
		{"2 pieces", Count, 2, 2, "pieces"},
		{"1 piece", Count, 1, 1, "pieces"},
		{"1.5 pcs", Count, 1.5, 1.5, "pieces"},
		{"12 each", Count, 12, 12, "pieces"},
		{"2ea", Count, 2, 2, "pieces"},
		{"1.1 %", Percent, 1.1, 1.1, "%"},
		{"1.1%", Percent, 1.1, 1.1, "%"},
		{"5 per cent", Percent, 5, 5, "%"},
		{"55 to 62 %", Percent, 55, 62, "%"},
		{"24 C", Temperature, 24, 24, "C"},
		{"24 c", Temperature, 24, 24, "C"},
		{"22 °C", Temperature, 22, 22, "C"},
		{"22° C", Temperature, 22, 22, "C"},
		{"22 ℃", Temperature, 22, 22, "C"},
		{"22 degrees C", Temperature, 22, 22, "C"},
		{"75.2 F", Temperature, 24, 24, "F"},
		{"212 f", Temperature, 100, 100, "F"},
		{"-18 C", Temperature, -18, -18, "C"},
		{"−18 C", Temperature, -18, -18, "C"},
		{"-18 to -10 C", Temperature, -18, -10, "C"},
		{"-18--10 C", Temperature, -18, -10, "C"},
		{"0 C", Temperature, 0, 0, "C"},
		{"-0 C", Temperature, 0, 0, "C"},
		{"-459.67 F", Temperature, -273.15, -273.15, "F"},
		{"40 mm", Length, 40, 40, "mm"},
		{"4 cm", Length, 40, 40, "cm"},
		{"1 in", Length, 25.4, 25.4, "in"},
		{"2 inches", Length, 50.8, 50.8, "in"},
		{"0 to 5 min", Time, 0, 5, "min"},
		{"200\u00a0g", Mass, 200, 200, "g"},
		{"0.8 kg", Mass, 800, 800, "kg"},
		{"2,5 kg", Mass, 2500, 2500, "kg"},
		{"0,500 kg", Mass, 500, 500, "kg"},
		{"1250,5 g", Mass, 1250.5, 1250.5, "g"},
		{"1,25 to 1,5 l", Volume, 1250, 1500, "l"},
		{"1.250 kg", Mass, 1250, 1250, "kg"},
		{"0.500 g", Mass, 0.5, 0.5, "g"},
		{"25 cl", Volume, 250, 250, "cl"},
		{"2 dL", Volume, 200, 200, "dl"},
		{"1 cup 2 tbsp", Volume, 266.16176606250, 266.16176606250, "cup"},
		{"2 tbsp 1 tsp", Volume, 34.50245115625, 34.50245115625, "tbsp"},
		{"1 l 2 dl", Volume, 1200, 1200, "l"},
		{"2 1/4 tsp", Volume, 11.0900735859375, 11.0900735859375, "tsp"},
		{"½ cup", Volume, 118.29411825, 118.29411825, "cup"},
		{"1 US pint", Volume, 473.176473, 473.176473, "US pint"},
		{"2 UK fl oz", Volume, 56.826125, 56.826125, "UK floz"},
		{"1 cup plus 2 tbsp", Volume, 266.16176606250, 266.16176606250, "cup"},
		{"1 lb and 2 oz", Mass, 510.291416250, 510.291416250, "lb"},
		{"about 200 g", Mass, 200, 200, "g"},
		{"ca. 200 g", Mass, 200, 200, "g"},
		{"~200 g", Mass, 200, 200, "g"},
		{"3 weeks", Time, 30240, 30240, "week"},
		{"an hour", Time, 60, 60, "h"},
		{"half an hour", Time, 30, 30, "h"},
		{"half a cup", Volume, 118.29411825, 118.29411825, "cup"},
		{"overnight", Time, 480, 840, "h"},
		{"100 gr", Mass, 100, 100, "g"},
		{"1 Tbs", Volume, 14.78676478125, 14.78676478125, "tbsp"},
		{"2 imperial pints", Volume, 1136.5225, 1136.5225, "UK pint"},
		{"1 UK gallon", Volume, 4546.09, 4546.09, "UK gallon"},
	}
	for _, test := range tests {
		q, fault := Read(test.text, all)
		if fault != nil {
			t.Errorf("%q: %s", test.text, fault.Text)
			continue
		}
		close := func(a, b float64) bool { return math.Abs(a-b) <= 1e-10*max(1, math.Abs(b)) }
		if q.Kind != test.kind || q.Unit != test.unit || q.Text != test.text ||
			!close(q.Lo, test.lo) || !close(q.Hi, test.hi) {
			t.Errorf("%q: %+v, want %v %v..%v %s", test.text, q, test.kind, test.lo, test.hi,
				test.unit)
		}
	}
}

// A plain text has no word whose meaning depends on a kitchen or
// a country.
func TestIsPlain(t *testing.T) {
	for text, want := range map[string]bool{
		"200 g": true, "1.6 %": true, "2 pieces": true, "90 min": true, "-18 C": false,
		"25 C":   true,
		"2 floz": false, "2 fl oz": false, "2 pints": false, "2 US pint": true, "1 pinch": false,
		"2 large": false, "180 C fan": false, "30 x 45 cm": false, "?": false, "": false,
		"3": false,
	} {
		if got := IsPlain(text); got != want {
			t.Errorf("IsPlain(%q) is %v", text, got)
		}
		if want && (OfCountry(text, "uk") != text || OfCountry(text, "us") != text) {
			t.Errorf("a country changes the plain %q", text)
		}
	}
}

func TestFaults(t *testing.T) {
	oven, timer, scale := Of(Temperature), Of(Time), Of(Mass)
	tests := []struct {
		text    string
		allowed Kinds
		marked  string
		want    string
	}{
		{"", Amounts, "", `this is empty; write for example "200 g"`},
		{"  ", timer, "  ", `this is empty; write for example "90 min"`},
		{"180", Amounts, "180",
			`"180" has no unit; write "180 g", or "180 pieces" if it is counted`},
		{"180 to 190", Amounts, "190", `"190" has no unit; write "180 to 190 g"`},
		{"25", Amounts, "25", `"25" has no unit; write "25 g", or "25 pieces" if it is counted`},
		{"350", oven, "350", `"350" has no unit; write "350 C", or "350 F" if it is Fahrenheit`},
		{"1 stick", Amounts, "stick",
			`"stick" is 4 oz of butter in the US, and no unit; write "4 oz"`},
		{"1 1/2 sticks", Amounts, "sticks",
			`"sticks" is 4 oz of butter in the US, and no unit; write "6 oz"`},
		{"1.000 g", scale, "1.000",
			`"1.000" can be a thousand or a decimal number; write "1000 g", or "1 g"`},
		{"2.500", scale, "2.500",
			`"2.500" can be a thousand or a decimal number; write "2500", or "2.5"`},
		{"1 pinch", Amounts, "pinch",
			`"pinch" is no fixed measure: weigh it; write "0.1 to 1 g"`},
		{"2 dashes", Amounts, "dashes",
			`"dashes" is no fixed measure: weigh it; write "0.6 to 3 ml"`},
		{"2 sachets", Amounts, "sachets", `"sachets" is a pack: read the label for its weight; ` +
			`write "?" until you have`},
		{"1 pint", Amounts, "pint", `"pint" differs by a fifth between the US and the UK; ` +
			`write "1 US pint", or "1 UK pint"`},
		{"2 large", Amounts, "large", `"large" is a size: of an egg name it, "large egg" ` +
			`or "size L egg"; weigh others; write "2 pieces"`},
		{"180", oven, "180", `"180" has no unit; write "180 C", or "180 F" if it is Fahrenheit`},
		{"12", Of(Percent), "12", `"12" has no unit; write "12 %"`},
		{"1½", scale, "1½", `"1½" has no unit; write "1½ g"`},
		{"8 to 10", timer, "10", `"10" has no unit; write "8 to 10 min"`},
		{"8 h to 10", timer, "10", `"10" has no unit; write "8 h to 10 h"`},
		{"1 h 30", timer, "30", `"30" has no unit; write "1 h 30 min"`},
		{"1 h 30 to 45 min", timer, "30", `"30" has no unit; write "1 h 30 min to 45 min"`},
		{"200 G", Amounts, "G", `"G" is not a unit; write "200 g"`},
		{"200 grmas", Amounts, "grmas", `"grmas" is not a unit; write "200 g"`},
		{"20 mintes to 2 h", timer, "mintes", `"mintes" is not a unit; write "20 min to 2 h"`},
		{"200 blobs", Amounts, "blobs", `"blobs" is not a unit; the units here are g, ` +
			`kg, mg, dag, oz, lb, %, ml, l, dl, cl, tsp, tbsp, cup, floz, UK floz, US pint, ` +
			`UK pint, US quart, UK quart, US gallon, UK gallon, pieces`},
		{"2 x", timer, "x", `"x" is not a unit; the units here are s, min, h, day, week`},
		{"200 g", oven, "200 g", `"200 g" is a mass; write a temperature, such as "24 C"`},
		{"24 C", Amounts, "24 C", `"24 C" is a temperature; ` +
			`write a mass, a percentage, a volume or a count, such as "200 g"`},
		{"90 m", timer, "90 m", `"m" is metres; for minutes write "90 min"`},
		{"1,000 g", scale, "1,000",
			`"1,000" has a comma; write "1000 g", or "1 g" if the comma is a decimal point`},
		{"1,000,000 g", scale, "1,000,000", `"1,000,000" has commas; write "1000000 g"`},
		{"1.000,5 g", scale, "1.000,5", `"1.000,5" is not a number; write it without commas`},
		{"1 000 g", scale, "1 000", `"1 000" has a blank inside the number; write "1000 g"`},
		{"1_000 g", scale, "1_", `"_" does not belong in a number; write the digits alone`},
		{"1.2.3 g", scale, "1.2.3", `"1.2.3" is not a number; write for example "200 g"`},
		{"-5 g", scale, "-5 g", `"-5 g" is below zero; write more than zero`},
		{"-5 to 5 g", scale, "-5", `"-5" is below zero; write more than zero`},
		{"1 h -5 min", timer, "1 h -5 min", `"1 h -5 min" runs backwards; write "5 min to 1 h"`},
		{"-300 C", oven, "-300 C", `"-300 C" is below absolute zero (-273.15 C); mend the figure`},
		{"-500 F", oven, "-500 F", `"-500 F" is below absolute zero (-273.15 C); mend the figure`},
		{"0 g", scale, "0 g", `"0 g" is zero; write more than zero or leave the line out`},
		{"0 to 0 min", timer, "0 to 0 min",
			`"0 to 0 min" is zero; write more than zero or leave the line out`},
		{"3 to 2 h", timer, "3 to 2 h", `"3 to 2 h" runs backwards; write "2 to 3 h"`},
		{"2 h to 90 min", timer, "2 h to 90 min",
			`"2 h to 90 min" runs backwards; write "90 min to 2 h"`},
		{"200 g to 2 h", all, "200 g to 2 h", `"200 g to 2 h" mixes a mass and a time`},
		{"2 g 3 h", all, "3 h", `"2 g 3 h" does not add up to one quantity; write it in one unit`},
		{"30 min 1 h", timer, "1 h",
			`"30 min 1 h" does not add up to one quantity; write it in one unit`},
		{"2000000 kg", scale, "2000000 kg",
			`"2000000 kg" is implausibly large; check the number and its unit`},
		{"0.0000000001 g", scale, "0.0000000001 g",
			`"0.0000000001 g" is implausibly small; check the number and its unit`},
		{"1e3 g", scale, "1e3", `"1e3" is not a plain number; write "1000 g"`},
		{"1.5E-2 g", scale, "1.5E-2", `"1.5E-2" is not a plain number; write "0.015 g"`},
		{"1e400 g", scale, "1e400", `"1e400" is implausibly large; check the number and its unit`},
		{"1e-400 g", scale, "1e-400",
			`"1e-400" is implausibly small; check the number and its unit`},
		{"0x10 g", scale, "0x10", `"0x10" is not a plain number; write it in the digits 0 to 9`},
		{"Inf g", scale, "Inf g", `"Inf g" is not a mass; "?" stands for what is to be decided, ` +
			`and words go into a note; write for example ` +
			`"200 g", or "190 to 210 g"`},
		{"NaN", oven, "NaN", `"NaN" is not a temperature; "?" stands for what is to be decided, ` +
			`and words go into a note; write for example ` +
			`"24 C", or "24 to 26 C"`},
		{"about so", scale, "about so", `"about so" is not a mass; "?" stands for what is to be ` +
			`decided, and words go into a note; write for example ` +
			`"200 g", or "190 to 210 g"`},
		{"on a rack", timer, "on a rack", `"on a rack" is not a time; "?" stands for what is to ` +
			`be decided, and words go into a note; write for example ` +
			`"90 min", or "90 min to 2 h", or "overnight"`},
		{"2 T", Amounts, "T", `"T" is a tablespoon as T and a teaspoon as t: say which; ` +
			`write "2 tbsp", or "2 tsp"`},
		{"3 x 7 g", Amounts, "x", `"x" is no unit; write the whole: "21 g"`},
		{"5 kgg", Amounts, "kgg", `"kgg" is not a unit; write "5 kg"`},
		{"1 c", Amounts, "c", `"c" is a cup here; write "1 cup"`},
		{"2 heaped tsp", Amounts, "heaped", `a heaped measure is 1.25 to 2 of a level one: ` +
			`weigh it; write "2.5 to 4 tsp"`},
		{"1 knob", Amounts, "knob",
			`"knob" is no fixed measure: weigh it; write "?" until you have`},
		{"2 leaves", Amounts, "leaves", `"leaves" of gelatin is 1.7 to 5 g by its grade: ` +
			`weigh it; write "3.4 to 10 g"`},
		{"?", scale, "?", `"?" is not a number; write for example "200 g"`},
		{"1/0 tsp", Amounts, "1/0", `"1/0" divides by zero; write the amount as a number`},
		{"1 3/2 tsp", Amounts, "1 3/2", `"1 3/2" is not a mixed number: "3/2" is not below 1`},
		{"200 g of flour", scale, "of flour",
			`"of flour" is not part of the quantity; write "200 g"`},
		{"8 to h", timer, "h", `"h" is not a number; write for example "90 min"`},
		{"8 h to", timer, "",
			`the upper end of the range is missing; write for example "90 min to 2 h"`},
		{"2 to 3 to 4 h", timer, "to",
			`"to" is not a unit; the units here are s, min, h, day, week`},
		{strings.Repeat("9", 201), scale, strings.Repeat("9", 201),
			"this is too long to be a quantity"},
		{strings.Repeat("9", 199) + "g", scale, strings.Repeat("9", 199) + "g",
			`"` + strings.Repeat("9", 40) +
				`..." is implausibly large; check the number and its unit`},
		{"\xff g", scale, "\xff", `"\xff" is not a number; write for example "200 g"`},
	}
	for _, test := range tests {
		q, fault := Read(test.text, test.allowed)
		if fault == nil {
			t.Errorf("%q: read as %+v", test.text, q)
			continue
		}
		if fault.Text != test.want {
			t.Errorf("%q:\n got %s\nwant %s", test.text, fault.Text, test.want)
		}
		if got := test.text[fault.Start:fault.End]; got != test.marked {
			t.Errorf("%q marks %q, want %q", test.text, got, test.marked)
		}
		if q != (Quantity{}) {
			t.Errorf("%q: a fault and %+v", test.text, q)
		}
	}
}

// TestFaultsSuggestWhatReads checks that the text that a fault suggests
// can be read, if it is one quoted text for the whole.
func TestFaultsSuggestWhatReads(t *testing.T) {
	for _, text := range []string{"180", "8 to 10", "8 h to 10", "200 G", "200 grmas",
		"20 mintes to 2 h", "1,000,000 mg", "1.000 g", "1 pint", "3 cubes", "1 stick",
		"2 pinches", "1 000 g", "3 to 2 h",
		"2 h to 90 min", "1e3 g", "", "about", "1 h 30", "200 g of flour", "8 h to"} {
		_, fault := Read(text, all)
		if fault == nil {
			t.Fatalf("%q is read", text)
		}
		_, after, found := strings.Cut(fault.Text, "write ")
		if !found {
			t.Errorf("%q: nothing to write in %s", text, fault.Text)
			continue
		}
		after = strings.TrimPrefix(after, "for example ")
		for _, choice := range strings.Split(after, ", or ") {
			choice = strings.TrimSuffix(choice, " if it is counted")
			suggestion, err := strconv.Unquote(strings.TrimSuffix(choice, " if it is Fahrenheit"))
			if err != nil {
				t.Errorf("%q: nothing to write in %s", text, choice)
				continue
			}
			if _, fault := Read(suggestion, all); fault != nil {
				t.Errorf("%q: told to write %q, but %s", text, suggestion, fault.Text)
			}
		}
	}
}

func TestAllowZero(t *testing.T) {
	if q, fault := Read("0 %", Of(Percent)|AllowZero); fault != nil || q.Lo != 0 || q.Hi != 0 {
		t.Errorf("%+v %v", q, fault)
	}
	if AllowZero.Has(None) || !Amounts.Has(Mass) || Amounts.Has(Time) || !Of(Time).Has(Time) {
		t.Error("sets of kinds are mixed up")
	}
}

// TestUnitsTable compares the units with the published table, both
// ways, and every spelling with its unit.
func TestUnitsTable(t *testing.T) {
	rows := readUnits(t)
	if len(rows) != len(units) {
		t.Errorf("%d units in the table, %d in the program", len(rows), len(units))
	}
	names := map[Kind]string{Mass: "mass", Volume: "volume", Count: "count", Percent: "percent",
		Temperature: "temperature", Time: "time", Length: "length"}
	for _, row := range rows {
		u := unitNamed(row["unit"])
		if u == nil || u.name != row["unit"] {
			t.Errorf("no unit %q", row["unit"])
			continue
		}
		factor, err := strconv.ParseFloat(row["factor"], 64)
		if err != nil || math.Abs(u.factor-factor) > 1e-15*factor {
			t.Errorf("%s: factor %v, the table has %s", u.name, u.factor, row["factor"])
		}
		if names[u.kind] != row["kind"] || u.kind.Base() != row["base"] {
			t.Errorf("%s: %v in %s, the table has %s in %s", u.name, u.kind, u.kind.Base(),
				row["kind"], row["base"])
		}
		if row["source"] == "" || row["basis"] == "" {
			t.Errorf("%s: the table has no source", u.name)
		}
		for _, s := range append([]string{u.name}, u.also...) {
			q, fault := Read("2 "+s, all)
			if fault != nil || q.Unit != u.name {
				t.Errorf("2 %s: %+v %v", s, q, fault)
			}
		}
		x, kind, ok := ToBase(2.5, u.name)
		back, okBack := FromBase(x, u.name)
		if !ok || !okBack || kind != u.kind || math.Abs(back-2.5) > 1e-12 {
			t.Errorf("%s: there and back is %v", u.name, back)
		}
		want := 2.5 * factor
		if u.name == "F" {
			want = (2.5 - 32) * factor
		}
		if math.Abs(x-want) > 1e-12*math.Abs(want) {
			t.Errorf("%s: 2.5 is %v, want %v", u.name, x, want)
		}
	}
	if _, _, ok := ToBase(1, "blob"); ok {
		t.Error("a blob is a unit")
	}
	if _, ok := FromBase(1, "blob"); ok {
		t.Error("a blob is a unit")
	}
}

func readUnits(t *testing.T) []map[string]string {
	t.Helper()
	file, err := os.Open("../../testdata/tables/units.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment = '#'
	records, err := r.ReadAll()
	if err != nil || len(records) < 2 {
		t.Fatal(len(records), err)
	}
	var rows []map[string]string
	for _, record := range records[1:] {
		row := map[string]string{}
		for i, cell := range record {
			row[records[0][i]] = cell
		}
		rows = append(rows, row)
	}
	return rows
}

// TestAgainstGNUUnits compares every unit that GNU units knows.
func TestAgainstGNUUnits(t *testing.T) {
	program, err := exec.LookPath("units")
	if err != nil {
		t.Skip("GNU units is not installed")
	}
	compared := 0
	for _, row := range readUnits(t) {
		if row["gnu"] == "" {
			continue
		}
		u := unitNamed(row["unit"])
		have, want := "7 "+row["gnu"], unitGNU(t, row["base"])
		if u.kind == Temperature {
			have = row["gnu"] + "(7)"
		}
		out, err := exec.Command(program, "--terse", "--output-format", "%.15g", "--", have,
			want).Output()
		if err != nil {
			t.Errorf("units %s %s: %v", have, want, err)
			continue
		}
		theirs, err := strconv.ParseFloat(strings.TrimSpace(string(out)), 64)
		ours := u.toBase(7)
		if err != nil || math.Abs(ours-theirs) > 1e-12*math.Abs(theirs) {
			t.Errorf("7 %s: %v, GNU units has %s", u.name, ours, out)
		}
		compared++
	}
	if compared < 20 {
		t.Errorf("only %d units compared", compared)
	}
}

func unitGNU(t *testing.T, name string) string {
	t.Helper()
	for _, row := range readUnits(t) {
		if row["unit"] == name {
			return row["gnu"]
		}
	}
	t.Fatalf("no unit %q", name)
	return ""
}

func TestFormat(t *testing.T) {
	tests := []struct {
		x    float64
		unit string
		want string
	}{
		{200, "g", "200 g"}, {12.345, "g", "12.3 g"}, {1.1, "g", "1.1 g"}, {0.25, "g",
			"0.25 g"}, {123.6, "g", "124 g"}, {0.0034, "g", "0.0034 g"}, {0.0468, "g", "0.047 g"},
		{1.5, "kg", "1.5 kg"}, {0.005, "kg",
			"0.005 kg"}, {55.04, "%", "55 %"}, {55.06, "%", "55.1 %"}, {0.456, "%", "0.46 %"},
		{24, "C", "24 C"}, {24.26, "C", "24.3 C"}, {-18, "C",
			"-18 C"}, {-0.04, "C", "0 C"}, {0, "C", "0 C"}, {math.Copysign(0, -1), "C", "0 C"},
		{1.5, "h", "1.5 h"}, {1.254, "h", "1.25 h"}, {14, "h", "14 h"}, {90.4, "min",
			"90 min"}, {2.5, "min", "2.5 min"},
		{0.8571, "ratio", "0.8571"}, {1.2345, "ratio", "1.234"}, {2.345, "osmol/kg",
			"2.35 osmol/kg"}, {1.032, "g/mL", "1.032 g/mL"},
		{3200, "J/(kg K)", "3200 J/(kg K)"}, {9.2, "money", "9.20"}, {-0.001, "money",
			"0.00"}, {12, "", "12"}, {2, "pieces", "2 pieces"},
		{1, "pieces", "1 piece"}, {1, "turns", "1 turn"}, {1, "times", "1 times"},
		{40, "mm", "40 mm"}, {math.NaN(), "g", "unknown"}, {math.Inf(1), "g",
			"unknown"}, {1e300, "g", "1e+300 g"}, {1e-12, "g", "0 g"}, {-1e-12, "g", "0 g"},
		{100, "g", "100 g"}, {10, "min", "10 min"}, {1000, "", "1000"}, {9.999, "g", "10 g"},
	}
	for _, test := range tests {
		if got := Format(test.x, test.unit); got != test.want {
			t.Errorf("Format(%v, %q) = %q, want %q", test.x, test.unit, got, test.want)
		}
	}
}

func TestFormatInterval(t *testing.T) {
	tests := []struct {
		iv   figure.Interval
		unit string
		want string
	}{
		{figure.Interval{Lo: 55, Hi: 62}, "%", "55 to 62 %"},
		{figure.Point(55), "%", "55 %"},
		{figure.Interval{Lo: 55.01, Hi: 55.02}, "%", "55 %"},
		{figure.Interval{Lo: 3, Hi: math.Inf(1)}, "g", "over 3 g"},
		{figure.Interval{Lo: -math.Inf(1), Hi: 3}, "g", "up to 3 g"},
		{figure.Unknown(), "g", "unknown"},
		{figure.Positive(), "g", "over 0 g"},
		{figure.Interval{Lo: -18, Hi: -10}, "C", "-18 to -10 C"},
		{figure.Interval{Lo: 0.8, Hi: 0.85}, "ratio", "0.8 to 0.85"},
		{figure.Interval{Lo: 9.2, Hi: 10}, "money", "9.20 to 10.00"},
		{figure.Interval{Lo: math.Inf(1), Hi: math.Inf(1)}, "g", "unknown"},
	}
	for _, test := range tests {
		if got := FormatInterval(test.iv, test.unit); got != test.want {
			t.Errorf("FormatInterval(%v, %q) = %q, want %q", test.iv, test.unit, got, test.want)
		}
	}
}

// TestPrintedReadsBack checks that printed quantities read back as
// nearly the same, for every unit.
func TestPrintedReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := units[rapid.IntRange(0, len(units)-1).Draw(t, "unit")]
		draw := rapid.Float64Range(0.001, 9000)
		iv := figure.Between(draw.Draw(t, "a"), draw.Draw(t, "b"))
		if rapid.Bool().Draw(t, "point") {
			iv = figure.Point(iv.Lo)
		}
		text := FormatInterval(iv, u.name)
		q, fault := Read(text, all)
		if fault != nil {
			t.Fatalf("%q: %s", text, fault.Text)
		}
		lo, _ := FromBase(q.Lo, u.name)
		hi, _ := FromBase(q.Hi, u.name)
		for _, pair := range [][2]float64{{lo, iv.Lo}, {hi, iv.Hi}} {
			slack := 0.05 * pair[1] // at least two digits
			if u.kind == Temperature {
				slack = 0.05 // one decimal
			}
			if math.Abs(pair[0]-pair[1]) > slack+1e-9 {
				t.Fatalf("%v prints as %q and reads as %v to %v", iv, text, lo, hi)
			}
		}
		exact, fault := Read(q.String(), all)
		if fault != nil || !same(exact, q) {
			t.Fatalf("%q reads as %+v, %q as %+v (%v)", text, q, q.String(), exact, fault)
		}
	})
}

func same(a, b Quantity) bool {
	close := func(x, y float64) bool { return math.Abs(x-y) <= 1e-9*max(1e-3, math.Abs(y)) }
	return a.Kind == b.Kind && a.Unit == b.Unit && close(a.Lo, b.Lo) && close(a.Hi, b.Hi)
}

// TestFormatNeverOdd checks that any number can be printed, and that no
// zero has a minus sign.
func TestFormatNeverOdd(t *testing.T) {
	names := []string{"", "ratio", "money", "osmol/kg", "W/(m K)"}
	for _, u := range units {
		names = append(names, u.name)
	}
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.OneOf(rapid.Float64Range(-1e300, 1e300),
			rapid.SampledFrom([]float64{math.Inf(1), -math.Inf(1), math.NaN(), math.MaxInt64}),
			rapid.Float64Range(-1e4, 1e4), rapid.Float64Range(-1e-8, 1e-8)).Draw(t, "x")
		unit := rapid.SampledFrom(names).Draw(t, "unit")
		n := number(x, unit)
		if n == unknown {
			if !math.IsNaN(x) && !math.IsInf(x, 0) {
				t.Fatalf("%v is unknown", x)
			}
			return
		}
		y, err := strconv.ParseFloat(n, 64)
		if err != nil || len(n) > 24 || math.Signbit(y) && y == 0 {
			t.Fatalf("%v %s prints as %q", x, unit, n)
		}
	})
}

func FuzzRead(f *testing.F) {
	for _, s := range []string{
		"200 g", "1 h 30 min", "90 min to 2 h", "2–3 h", "1 1/2 cup", "½ tsp", "-18 to -10 C",
		"22 °C", "2,5 kg", "1,000 g", "1 000 g", "1e400 g", "0x10",
		"Inf", "2 lb 3 oz", "1.1 %", "2 fl. oz.", "3 to 2 h", "1/0", "\xff", "1½-2¾ cups", "75 F",
		"-459.67 F", "1 day 1 h 1 min 1 s", "999999999 g", "0 C", "٣ g",
	} {
		f.Add(s, uint16(all))
	}
	f.Add("180", uint16(Of(Temperature)))
	f.Fuzz(func(t *testing.T, text string, allowed uint16) {
		kinds := Kinds(allowed)
		q, fault := Read(text, kinds)
		if fault != nil {
			if q != (Quantity{}) || fault.Text == "" || fault.Start < 0 ||
				fault.End < fault.Start || fault.End > len(text) {
				t.Fatalf("%q: %+v %+v", text, q, fault)
			}
			whole := boundary(text, fault.Start) && boundary(text, fault.End)
			if utf8.ValidString(text) && (!whole || !utf8.ValidString(fault.Text)) {
				t.Fatalf("%q: fault %+v splits a character", text, fault)
			}
			return
		}
		if !kinds.Has(q.Kind) || !q.IsFinite() || q.Lo > q.Hi || q.Text != text {
			t.Fatalf("%q: %+v", text, q)
		}
		if q.Kind != Temperature && (q.Lo < 0 || q.Hi == 0 && kinds&AllowZero == 0) ||
			q.Kind == Temperature && q.Lo < absoluteZero-1e-6 {
			t.Fatalf("%q: %+v is out of bounds", text, q)
		}
		if again, fault := Read(q.String(), kinds); fault != nil || !same(again, q) {
			t.Fatalf("%q is %+v; %q is %+v (%v)", text, q, q.String(), again, fault)
		}
		if s := FormatInterval(q.Interval, q.Kind.Base()); !utf8.ValidString(s) || s == "" {
			t.Fatalf("%q prints as %q", text, s)
		}
	})
}

func boundary(s string, at int) bool { return at == len(s) || utf8.RuneStart(s[at]) }

func BenchmarkRead(b *testing.B) {
	for b.Loop() {
		Read("200 g", Amounts)
	}
}
