package microbe

import (
	"math"
	"strings"
	"testing"
)

// moreRows are the rows of a further table by id.
func moreRows(t testing.TB, name string) map[string]map[string]string {
	rows := map[string]map[string]string{}
	for _, r := range table(t, name) {
		rows[r["id"]] = r
	}
	return rows
}

func TestBotulinumByTheTable(t *testing.T) {
	rows := moreRows(t, "limits-more")
	for _, l := range []Limit{OilDays, AcidPH, JarAw, WrapAw, WrapDays} {
		r := rows[l.ID]
		if r == nil || l.Basis != "judgement" && l.Basis != r["basis"] {
			t.Errorf("%s: basis %s, row %v", l.ID, l.Basis, r)
		}
	}
	for id, want := range map[string]string{"oil-mo": "2-3", "oil-acid": "4.6",
		"gmin-c-botulinum-a-and-b-proteolytic": "10; 4.7; 0.93", "bot-crumpet": "4-6"} {
		if rows[id]["value"] != want {
			t.Errorf("%s: %q", id, rows[id]["value"])
		}
	}
	if !strings.Contains(rows["bot-bagel"]["what"], "aw 0.944: no toxin") ||
		rows["bot-bagel"]["value"] != "42" {
		t.Error("bagel")
	}
	unknown := Interval{Lo: math.NaN(), Hi: math.NaN()}
	for _, c := range []struct {
		what            string
		s               Sealed
		tC, days        float64
		aw, ph          Interval
		phKnown         bool
		want            Level
		decided         string
		evidenceOrWhose string
	}{
		{"garlic in oil, the room", OilInfusion, 21, 0.1, unknown, unknown, false, Stop, "oil-acid",
			"oil-mo: never at room temperature"},
		{"garlic in oil, fridge, 3 days", OilInfusion, 4, 3, unknown, unknown, false, Clear,
			"oil-mo", "2 to 3 days"},
		{"garlic in oil, fridge, 4 days", OilInfusion, 4, 4, unknown, unknown, false, Risk,
			"oil-mo", "2 to 3 days"},
		{"garlic in oil, warm fridge", OilInfusion, 7, 1, unknown, unknown, false, Stop, "oil-acid",
			"over the cold holding"},
		{"garlic in oil at pH 4.6", OilInfusion, 21, 30, unknown, point(4.6), true, Clear,
			"oil-acid", "CSIRO"},
		{"garlic in oil at pH 4.5 to 4.7", OilInfusion, 21, 30, unknown, Interval{4.5, 4.7}, true,
			Stop, "oil-acid", "CSIRO"},
		{"no temperature", OilInfusion, math.NaN(), 1, unknown, unknown, false, Stop,
			"oil-acid", ""},
		{"no days", OilInfusion, 4, math.NaN(), unknown, unknown, false, Risk, "oil-mo", ""},
		{"pumpkin jar", LowAcidJar, 4, 1, point(0.98), point(5.5), true, Stop, "oil-acid",
			"safety class table"},
		{"pumpkin jar, nothing measured", LowAcidJar, 21, 1, unknown, unknown, false, Stop,
			"oil-acid", ""},
		{"jam", LowAcidJar, 21, 300, point(0.85), unknown, false, Clear,
			"gmin-c-botulinum-a-and-b-proteolytic", "0.93"},
		{"crumpet in a bag, 4 days", MoistWrapped, 25, 4, point(0.99), unknown, false, Risk,
			"bot-crumpet", "Daifas 1999"},
		{"crumpet in a bag, 3 days", MoistWrapped, 25, 3, point(0.99), unknown, false, Clear,
			"bot-crumpet", "Daifas 1999"},
		{"bagel in a bag", MoistWrapped, 25, 42, point(0.944), unknown, false, Clear, "bot-bagel",
			"Daifas 1999"},
		{"bread in a bag, aw unknown", MoistWrapped, 25, 5, unknown, unknown, false, Risk,
			"bot-crumpet", ""},
		{"bread in a bag, fridge", MoistWrapped, 4, 9, unknown, unknown, false, Clear,
			"bot-crumpet", ""},
	} {
		got, why := Botulinum(c.s, c.tC, 5, c.days, c.aw, c.ph, c.phKnown)
		if got != c.want || why.ID != c.decided {
			t.Errorf("%s: %v by %s, want %v by %s (%s)", c.what, got, why.ID, c.want, c.decided,
				c.evidenceOrWhose)
		}
	}
}

// No line is faster than a printed D of its own food, nor much slower.
func TestMoreLinesByTheTable(t *testing.T) {
	rows := moreRows(t, "kill-more")
	for prefix, l := range map[string]Line{"salm-eggbatter-": EggBatterLine,
		"salm-donut-": DoughnutLine,
		"stec-pizza-": PizzaLineSTEC, "stec-bagel-": BagelLineSTEC, "salm-em-": muffinDoughLine} {
		points := 0
		for id, r := range rows {
			if !strings.HasPrefix(id, prefix) || r["row_type"] != "D" {
				continue
			}
			points++
			at, d := num(t, r["temp_c"]), num(t, r["d_min"])
			got := 1 / NewKill(l).Log(at, at, 1)
			if got < d*0.9995 || got > d*1.3 {
				t.Errorf("%s: D %.3f min, printed %v", id, got, d)
			}
			if num(t, r["z_c"]) > l.ZC || at < l.LowC || at > l.HighC {
				t.Errorf("%s: %+v", id, l)
			}
			if aw := num(t, r["aw"]); aw == aw && aw != l.Aw {
				t.Errorf("%s: aw %v, printed %v", id, l.Aw, aw)
			}
		}
		if points == 0 || prefix == "salm-eggbatter-" && points != 3 {
			t.Errorf("%s: %d points", prefix, points)
		}
	}
}

// The computed rows: 5 log at 66.6 C and straight on, against the same
// lines as printed.
func TestComputedHoldsByTheTable(t *testing.T) {
	rows := moreRows(t, "kill-more")
	for id, l := range map[string]Line{"c-bun-dough": bunLine, "c-muffin-batter": batterLine,
		"c-sweet-egg-batter": EggBatterLine, "c-pizza-dough-STEC": PizzaLineSTEC,
		"c-bagel-dough-STEC": BagelLineSTEC, "c-doughnut-dough": DoughnutLine} {
		r := rows[id]
		at, minutes := num(t, r["core_c"]), num(t, r["time_min"])
		if got := NewKill(l).Log(at, at, minutes); got > 5.1 || got < 3.7 {
			t.Errorf("%s: %.2f log in %v min at %v C", id, got, minutes, at)
		}
	}
}

func TestReheatsByTheTable(t *testing.T) {
	rows := moreRows(t, "limits-more")
	if r := rows["fc-reheat-2h"]; num(t, r["value"]) != ReheatForHolding.TempC ||
		!strings.Contains(r["conditions"], "15 s") || !strings.Contains(r["conditions"], "2 h") {
		t.Errorf("%v", r)
	}
	if r := rows["sco-reheat"]; num(t, r["value"]) != ScotlandReheat.Value || r["basis"] != "read" {
		t.Errorf("%v", r)
	}
	if r := rows["uk-8c"]; num(t, r["value"]) != mustCode(t, "uk").ColdC.Value ||
		r["basis"] != "read" {
		t.Errorf("%v", r)
	}
	text := rows["uk-cook-equiv"]["value"]
	for i, want := range strings.Split(text, "; ") {
		c := UKCooks[i]
		f := strings.Fields(want) // 60 C 45 min
		seconds := num(t, f[2])
		if f[3] == "min" {
			seconds *= 60
		}
		if num(t, f[0]) != c.TempC || seconds != c.Seconds ||
			rows["uk-cook-equiv"]["basis"] != c.Basis {
			t.Errorf("%q: %+v", want, c)
		}
	}
	if !EggCooked(70, 120) { // an egg custard held at 70 C for 2 min meets the code
		t.Error("egg custard at 70 C for 2 min")
	}
}

func mustCode(t testing.TB, code string) Limits {
	l, ok := ForCode(code)
	if !ok {
		t.Fatal(code)
	}
	return l
}
