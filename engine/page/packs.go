package page

import (
	"io"

	"forebake/engine/finding"
	"forebake/engine/jsontext"
)

type jsonPacks struct {
	Format    int            `json:"format"`
	Packs     []jsonPack     `json:"packs"`
	Cautions  []jsonSaid     `json:"cautions"`
	Unchecked []jsonLeftPack `json:"unchecked"`
}

type jsonPack struct {
	Name    string       `json:"name"`
	About   string       `json:"about"`
	Safety  bool         `json:"food_safety"`
	Figures []jsonFigure `json:"figures"`
	Rules   []jsonRule   `json:"rules"`
}

type jsonFigure struct {
	Name  string `json:"name"`
	On    string `json:"on"`
	Is    string `json:"is"`
	Unit  string `json:"unit"`
	Means string `json:"means"`
}

type jsonRule struct {
	Name    string      `json:"name"`
	Level   string      `json:"level"`
	LevelBy string      `json:"level_by"` // the house line that set it; "" for the pack's own
	On      string      `json:"on"`
	When    string      `json:"when"`
	Say     string      `json:"say"`
	Why     string      `json:"why"`
	Source  string      `json:"source"`
	Limits  []jsonLimit `json:"limits"`
}

type jsonLimit struct {
	Name   string  `json:"name"`
	Shown  string  `json:"shown"`
	Value  float64 `json:"value"`
	By     string  `json:"by"` // the house line that set it; "" for the pack's own
	Source string  `json:"source"`
}

type jsonSaid struct {
	On     string `json:"on"`
	Say    string `json:"say"`
	Source string `json:"source"`
}

type jsonLeftPack struct {
	Pack string `json:"pack"`
	Text string `json:"text"`
}

// RulebookJSON prints the packs and cautions in force as one object.
func RulebookJSON(w io.Writer, b finding.Rulebook) error {
	out := jsonPacks{Format: packsFormat, Packs: []jsonPack{}, Cautions: []jsonSaid{},
		Unchecked: []jsonLeftPack{}}
	for _, p := range b.Packs {
		one := jsonPack{p.Name, p.About, p.Safety, []jsonFigure{}, []jsonRule{}}
		for _, f := range p.Figures {
			one.Figures = append(one.Figures, jsonFigure{f.Name, f.On, f.Is, f.Unit, f.Means})
		}
		for _, r := range p.Rules {
			rule := jsonRule{r.ID, r.Level, r.LevelBy, r.On, r.When, r.Say, r.Why, r.Source,
				[]jsonLimit{}}
			for _, l := range r.Limits {
				rule.Limits = append(rule.Limits,
					jsonLimit{l.Name, l.Shown, l.Value, l.By, l.Source})
			}
			one.Rules = append(one.Rules, rule)
		}
		out.Packs = append(out.Packs, one)
	}
	for _, c := range b.Cautions {
		out.Cautions = append(out.Cautions, jsonSaid{c.On, c.Say, c.Source})
	}
	for _, u := range b.Unchecked {
		out.Unchecked = append(out.Unchecked, jsonLeftPack{u.Pack, u.Text()})
	}
	return jsontext.Write(w, out)
}
