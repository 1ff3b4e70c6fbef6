package rule

import (
	"fmt"
	"strings"
	"sync"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/kitchen"
	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// readLimits reads a rule's limits: numbers, and names of the kitchen's
// figures. Names have the default kitchen's values until the rule is
// judged in a house or a trial.
func readLimits(r *reading.Reader, e hclsyntax.Expression) []expr.Limit {
	var limits []expr.Limit
	named := false
	for _, l := range house.ReadLimits(r, e, house.NumbersOrFigures) {
		limit := expr.Limit{Name: l.Name, Value: l.Value, Place: l.Place}
		if l.From != "" {
			f, fault := kitchenFact(l.Name, l.From)
			if fault != "" {
				r.Fault(l.Place, "%s", fault)
			}
			limit.From, limit.Fact, named = l.From, f, named || f != nil
		}
		limits = append(limits, limit)
	}
	if named {
		return limitsIn(limits, usualKitchen())
	}
	return limits
}

// kitchenFact finds the kitchen's figure that a limit names, or says
// what is wrong with the name.
func kitchenFact(limit, written string) (*facts.Fact, string) {
	owner, name, _ := strings.Cut(written, ".")
	f, ok := facts.Find(facts.OnKitchen, name)
	if owner != "kitchen" || !ok {
		var known []string
		for _, f := range facts.All(facts.OnKitchen) {
			if f.Type == facts.Number {
				known = append(known, "kitchen."+f.Name)
			}
		}
		text := fmt.Sprintf("limit %q is a number or a figure of the kitchen, and %q is neither",
			source.Safe(limit), source.Safe(written))
		if near := spelling.Nearest(written, known, 3); len(near) > 0 {
			return nil, text + "; nearest is " + strings.Join(near, ", ")
		}
		return nil, text + "; write 4, or \"kitchen.fridge_c\""
	}
	if f.Type != facts.Number {
		return nil, fmt.Sprintf("limit %q must be a number, and %s is a %s", source.Safe(limit),
			written, facts.TypeNames[f.Type])
	}
	if unit := figure.UnitOf(limit); unit != "" && unit != f.Unit {
		return nil, fmt.Sprintf("limit %q is in %s by its name, and %s is in %s; give one of "+
			"them another name", source.Safe(limit), unit, written, f.Unit)
	}
	return f, ""
}

// kitchenFigures are a kitchen's figures, each computed once: most
// rules that name one name the same few.
type kitchenFigures struct {
	mutex sync.Mutex
	sheet *facts.Sheet
	known map[*facts.Fact]kitchenFigure
}

type kitchenFigure struct {
	value, half float64
	source      string
}

func figuresIn(k *kitchen.Kitchen) *kitchenFigures {
	return &kitchenFigures{sheet: facts.NewSheet(&formula.Formula{}, k),
		known: map[*facts.Fact]kitchenFigure{}}
}

// usualKitchen has the figures of a kitchen that nobody wrote down.
var usualKitchen = sync.OnceValue(func() *kitchenFigures { return figuresIn(kitchen.Default()) })

func (k *kitchenFigures) of(f *facts.Fact) kitchenFigure {
	k.mutex.Lock()
	defer k.mutex.Unlock()
	one, ok := k.known[f]
	if !ok {
		v := k.sheet.Value(f, facts.Subject{On: facts.OnKitchen})
		one.value, one.half = v.Mid, (v.Hi-v.Lo)/2
		if one.source = k.sheet.Kitchen.FigureSource(f.Name); one.source == "" {
			one.source = f.Source
		}
		k.known[f] = one
	}
	return one
}

// limitsIn gives limits that are kitchen figures their values in a
// kitchen: once a house or a trial, so that judging reads numbers.
func limitsIn(limits []expr.Limit, k *kitchenFigures) []expr.Limit {
	out, copied := limits, false
	for i, l := range limits {
		if l.Fact == nil {
			continue
		}
		if !copied {
			out, copied = append([]expr.Limit{}, limits...), true
		}
		one := k.of(l.Fact)
		out[i].Value, out[i].Half, out[i].Source = one.value, one.half, one.source
	}
	return out
}

// looser reports whether a change of a limit may make the rule less
// strict, and whether that is certain. It is not certain for a limit
// only in the message: a false figure there misleads.
func (rule *Rule) looser(limit int, from figure.Interval, to float64) (loose, sure bool) {
	if from.Lo == to && from.Hi == to {
		return false, true
	}
	switch rule.When.Expr().Direction(limit) {
	case expr.Up:
		return to < from.Hi, true
	case expr.Down:
		return to > from.Lo, true
	}
	return true, false
}
