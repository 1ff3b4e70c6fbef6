package heat

import "fmt"

// Limit is the span of one input that a model answers for. Outside it the model gives no figure but
// the reason, which a caller hands on as it stands.
type Limit struct {
	Quantity, Unit string
	Low, High      float64
	Why            string // where the span comes from
}

// Refuses is the reason why the model is silent at x, "" inside the span. It reads on after a
// subject: "the oven is at 380 C; bakes are published from 110 to 350 C".
func (l Limit) Refuses(x float64) string {
	if x >= l.Low && x <= l.High {
		return ""
	}
	return fmt.Sprintf("%s is %.4g %s; %s from %g to %g %s", l.Quantity, x, l.Unit, l.Why, l.Low, l.High, l.Unit)
}

// Model names a model, its unit, source, error and valid range.
type Model struct {
	Name, Gives, Unit string
	Source, Error     string
	Limits            []Limit
}

// Models are all that give figures with an error of their own.
var Models = []*Model{&BakeModel, &BathModel, &FreezeModel, &OwnHeatModel}

// refusal is the first reason of several.
func refusal(reasons ...string) string {
	for _, r := range reasons {
		if r != "" {
			return r
		}
	}
	return ""
}
