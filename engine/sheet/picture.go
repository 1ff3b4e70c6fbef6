package sheet

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"forebake/engine/quantity"
)

// picture is a curve in pixels, for the template.
type picture struct {
	*Curve
	ID            string
	Width, Height int
	Left, Right   float64
	Top, Bottom   float64
	X, Y          []tick
	Shades        []shade
	Rules         []limitLine
	Paths         []path
	Bars          []bar
	Dots          []dot
}

type tick struct {
	At   string
	Text string
}

type shade struct{ X, Y, W, H, TextX, TextY, Anchor, Name string }

type limitLine struct{ Y, TextY, Name string }

type path struct{ Class, Points string }

type bar struct{ X, Y1, Y2 string }

type dot struct{ X, Y string }

// The sides of a picture, px.
const (
	pictureWidth, pictureHeight = 760, 300
	plotLeft, plotRight         = 52.0, 748.0
	plotTop, plotBottom         = 14.0, 262.0
)

// letterWidth is about the width of a letter of the words in a picture
// at their largest, px.
const letterWidth = 11.5

// px writes a length in px, to a hundredth.
func px(x float64) string { return strconv.FormatFloat(math.Round(x*100)/100+0, 'f', -1, 64) }

// draw turns a curve into a picture.
func draw(c *Curve, id string) *picture {
	p := &picture{Curve: c, ID: id, Width: pictureWidth, Height: pictureHeight,
		Left: plotLeft, Right: plotRight, Top: plotTop, Bottom: plotBottom}
	x, y := c.scales()
	for _, h := range x.ticks(8, []float64{0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 96, 240}) {
		p.X = append(p.X, tick{px(x.at(h)), c.Clock(h)})
	}
	for _, v := range y.ticks(8, []float64{0.25, 0.5, 1, 2, 5, 10, 20, 50, 100}) {
		p.Y = append(p.Y, tick{px(y.at(v)), quantity.Plain(v)})
	}
	for _, b := range c.Bands {
		x1, x2 := x.at(max(b.From, x.lo)), x.at(min(b.To, x.hi))
		y1, y2 := y.at(min(b.Hi, y.hi)), y.at(max(b.Lo, y.lo))
		textX, anchor := x1+6, "start"
		if textX+letterWidth*float64(len(b.Name)) > plotRight {
			textX, anchor = plotRight-6, "end"
		}
		p.Shades = append(p.Shades, shade{px(x1), px(y1), px(x2 - x1), px(y2 - y1), px(textX),
			px(y1 + 14), anchor, b.Name})
	}
	for _, l := range c.Limits {
		p.Rules = append(p.Rules, limitLine{px(y.at(l.Value)), px(y.at(l.Value) - 4), l.Name})
	}
	for _, l := range c.Lines {
		class := "line"
		if l.Dashed {
			class = "line dashed"
		}
		var points []string
		for _, pt := range l.Points {
			points = append(points, px(x.at(pt.Hours))+","+px(y.at(pt.Value)))
		}
		p.Paths = append(p.Paths, path{class, strings.Join(points, " ")})
	}
	for _, e := range c.Error {
		if e.Hi > e.Lo {
			p.Bars = append(p.Bars, bar{px(x.at(e.To)), px(y.at(min(e.Hi, y.hi))),
				px(y.at(max(e.Lo, y.lo)))})
		}
	}
	for _, pt := range c.Lines[0].Points {
		if pt.Marked {
			p.Dots = append(p.Dots, dot{px(x.at(pt.Hours)), px(y.at(pt.Value))})
		}
	}
	return p
}

// scale turns values into px.
type scale struct{ lo, hi, from, to float64 }

func (s scale) at(v float64) float64 { return s.from + (v-s.lo)/(s.hi-s.lo)*(s.to-s.from) }

// ticks gives the multiples of the smallest step of which there are at
// most so many.
func (s scale) ticks(most int, steps []float64) []float64 {
	step := steps[len(steps)-1]
	for _, one := range steps {
		if (s.hi-s.lo)/one <= float64(most) {
			step = one
			break
		}
	}
	var out []float64
	for k := math.Ceil(s.lo/step - 1e-9); k*step <= s.hi+1e-9 && len(out) < 200; k++ {
		out = append(out, k*step)
	}
	return out
}

// scales gives the scales that hold all points, limits and bands of
// a curve.
func (c *Curve) scales() (x, y scale) {
	x = scale{math.Inf(1), math.Inf(-1), plotLeft, plotRight}
	y = scale{math.Inf(1), math.Inf(-1), plotBottom, plotTop}
	include := func(v float64) { y.lo, y.hi = min(y.lo, v), max(y.hi, v) }
	for _, l := range c.Lines {
		for _, pt := range l.Points {
			x.lo, x.hi = min(x.lo, pt.Hours), max(x.hi, pt.Hours)
			include(pt.Value)
		}
	}
	for _, l := range c.Limits {
		include(l.Value)
	}
	for _, b := range c.Bands {
		include(b.Lo)
		include(b.Hi)
	}
	step := 20.0
	if y.hi-y.lo < 15 {
		step = 0.5
	}
	y.lo, y.hi = step*math.Floor(y.lo/step), step*math.Ceil(y.hi/step+0.2)
	return x, y
}

// legend says in words how the lines are told apart.
func (c *Curve) legend() string {
	var out []string
	for _, l := range c.Lines {
		how := "whole line"
		if l.Dashed {
			how = "dashed line"
		}
		out = append(out, fmt.Sprintf("%s: %s", l.Name, how))
	}
	return strings.Join(append(out, "upright bars: the model's error at the end of a step"), "; ")
}

// Legend is that of the picture.
func (p *picture) Legend() string { return p.legend() }
