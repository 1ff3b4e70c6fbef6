package rule

import (
	"fmt"
	"math"
	"sync"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/checker"
	"github.com/expr-lang/expr/compiler"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/optimizer"
	"github.com/expr-lang/expr/parser"
	"github.com/expr-lang/expr/vm"

	"forebake/engine/facts"
)

// slots is the environment of a compiled clause: its figures by number. A struct passed by value is several times
// faster for the machine than maps or pointers (measured: 66 ns against 178 and 292).
type slots struct {
	N0, N1, N2, N3, N4, N5, N6, N7 float64
	B0, B1, B2, B3                 bool
	T0, T1                         string
	L0                             []string
}

// How many figures of a sort fit. A clause that reads more is judged over the tree.
const (
	numberSlots = 8
	yesNoSlots  = 4
	textSlots   = 2
	listSlots   = 1
)

// compiled is the program of a clause, made when the clause is first judged on points: a single check of one formula
// comes to few of them.
type compiled struct {
	once    sync.Once
	program *vm.Program // nil when the clause cannot be compiled
	slot    []slot      // by clause.reads
}

type slot struct {
	sort  facts.Type
	index int
	known bool // the read is only asked whether it is known
}

// compiled judges a clause by its program; ok is false when a figure is not a known point.
func (j *Judge) compiled(c *clause) (truth, bool) {
	p := &c.program
	p.once.Do(func() { p.compile(j.expr, c) })
	if p.program == nil {
		return isFalse, false
	}
	for i, r := range c.reads {
		s := p.slot[i]
		read := &j.expr.reads[r]
		if read.fact == nil {
			j.slots.setNumber(s.index, j.limits[read.limit].Value)
			continue
		}
		v := j.value(r)
		if v.Absent {
			return isFalse, false
		}
		switch s.sort {
		case facts.Number:
			if v.Lo != v.Hi || math.Abs(v.Lo) > 1e12 {
				return isFalse, false
			}
			j.slots.setNumber(s.index, v.Lo)
		case facts.YesNo:
			if v.Lo != v.Hi {
				return isFalse, false
			}
			j.slots.setYesNo(s.index, v.Lo == 1)
		case facts.Text:
			if s.index == 0 {
				j.slots.T0 = v.Words[0]
			} else {
				j.slots.T1 = v.Words[0]
			}
		case facts.List:
			j.slots.L0 = v.Words
		}
	}
	out, err := j.machine.Run(p.program, j.slots)
	if err != nil {
		return isFalse, false // cannot be: the language lets nothing through that fails; the tree is the definition anyway
	}
	if yes, _ := out.(bool); yes {
		return isTrue, true
	}
	return isFalse, true
}

func (s *slots) setNumber(i int, x float64) {
	switch i {
	case 0:
		s.N0 = x
	case 1:
		s.N1 = x
	case 2:
		s.N2 = x
	case 3:
		s.N3 = x
	case 4:
		s.N4 = x
	case 5:
		s.N5 = x
	case 6:
		s.N6 = x
	case 7:
		s.N7 = x
	}
}

func (s *slots) setYesNo(i int, x bool) {
	switch i {
	case 0:
		s.B0 = x
	case 1:
		s.B1 = x
	case 2:
		s.B2 = x
	case 3:
		s.B3 = x
	}
}

// compile gives each read a slot, puts the slots' names into the tree and compiles it.
func (p *compiled) compile(x *Expr, c *clause) {
	var used [4]int
	limit := [...]int{facts.Number: numberSlots, facts.YesNo: yesNoSlots, facts.Text: textSlots, facts.List: listSlots}
	byName := map[string]string{}
	for _, r := range c.reads {
		sort := x.reads[r].typ()
		if used[sort] == limit[sort] {
			return
		}
		s := slot{sort: sort, index: used[sort]}
		used[sort]++
		p.slot = append(p.slot, s)
		byName[x.reads[r].key()] = fmt.Sprintf("%c%d", "NBTL"[sort], s.index)
	}
	root := c.tree
	config := conf.New(slots{})
	patch := &slotNames{x: x, byName: byName}
	ast.Walk(&root, patch)
	if patch.missed {
		return
	}
	tree := &parser.Tree{Node: root}
	if _, err := checker.Check(tree, config); err != nil {
		return
	}
	if err := optimizer.Optimize(&tree.Node, config); err != nil {
		return
	}
	program, err := compiler.Compile(tree, config)
	if err != nil {
		return
	}
	p.program = program
}

// key tells reads apart by what they look at, since one fact can be written by several names ("dough.", "part.").
func (r *read) key() string {
	if r.fact == nil {
		return fmt.Sprintf("limit %d", r.limit)
	}
	return fmt.Sprintf("%d %s", r.scope, r.fact.Name)
}

// slotNames replaces references by slot names, known() by true, since a clause is run on known figures only, and whole
// numbers by decimal ones, so that no arithmetic of integers takes part.
type slotNames struct {
	x      *Expr
	byName map[string]string
	missed bool
}

func (p *slotNames) Visit(n *ast.Node) {
	switch x := (*n).(type) {
	case *ast.IntegerNode:
		ast.Patch(n, &ast.FloatNode{Value: float64(x.Value)})
	case *ast.CallNode:
		callee, _ := x.Callee.(*ast.IdentifierNode)
		if callee != nil && callee.Value == "known" {
			ast.Patch(n, &ast.BoolNode{Value: true})
			return
		}
		if callee != nil {
			ast.Patch(n, &ast.BuiltinNode{Name: callee.Value, Arguments: x.Arguments})
		}
	case *ast.MemberNode:
		owner, _ := x.Node.(*ast.IdentifierNode)
		name, _ := x.Property.(*ast.StringNode)
		if owner == nil || name == nil {
			p.missed = true
			return
		}
		for i := range p.x.reads {
			r := &p.x.reads[i]
			if r.written(owner.Value, name.Value) {
				if slot, ok := p.byName[r.key()]; ok {
					ast.Patch(n, &ast.IdentifierNode{Value: slot})
					return
				}
			}
		}
		p.missed = true
	}
}

// written tells whether a reference in the text means this read.
func (r *read) written(owner, name string) bool {
	switch owner {
	case "limit":
		return r.fact == nil && r.name == "limit."+name
	case "formula":
		return r.fact != nil && (r.scope == inFormula || r.fact.On == facts.OnFormula) && r.fact.Name == name
	case "kitchen":
		return r.scope == inKitchen && r.fact.Name == name
	case "part":
		return r.fact != nil && r.fact.On == facts.OnPart && r.fact.Name == name
	}
	return r.fact != nil && r.scope == inSelf && r.fact.Name == name
}
