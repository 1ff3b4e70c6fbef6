package tolerant

import "strings"

// Spot is where a place of a text stands, from the file inwards,
// however broken the text is.
type Spot struct {
	Around []Around // the blocks and brackets around it, outermost first
	Keys   []string // the settings written so far in the innermost bracket or block
	Key    string   // the setting whose value the place is in; "" where a setting is to be named
	Title  string   // the type of the block whose title the place is in; "" elsewhere
	InText bool     // inside quotes
	Word   string   // what stands between the start of the word, or of the text, and the place
	Start  int      // where Word starts, as an offset of the text
}

// Around is a block or a bracket that is open at a place.
type Around struct {
	Block string // the type of a block; "" for a bracket
	Label string // the first title of a block
	Key   string // the setting whose value a bracket is
	List  bool   // in square brackets
}

// Where looks from the start of a text to a place. Brackets that are
// not closed are read as Repair reads them.
func Where(text []byte, offset int) Spot {
	offset = max(0, min(offset, len(text)))
	p := scan(text[:offset])
	open, key := p.openBrackets()
	return p.endSpot(open, key)
}

// within is an open bracket with the settings in it.
type within struct {
	Around
	frame
	keys []string
}

// openBrackets goes along the brackets to the end of the page. It gives
// those that are open there, and the setting whose value is at hand.
func (p *page) openBrackets() (_ []within, key string) {
	open := []within{{frame: frame{line: -1, indent: -1, block: true}}}
	for i := range p.lines {
		l := &p.lines[i]
		if !l.full() {
			key = ""
			continue
		}
		first := l.tokens[0]
		for n := len(open); n > 1 && l.indent <= open[n-1].indent; n = len(open) {
			if first.kind == closer && l.indent == open[n-1].indent {
				break
			}
			open = open[:n-1]
		}
		key = ""
		for k, t := range l.tokens {
			word := l.typed[t.from:t.to]
			top := &open[len(open)-1]
			switch t.kind {
			case opener:
				w := within{frame: frame{line: i, indent: l.indent, block: word == "{" &&
					key == "" && beginsBlock(l.tokens[:k])},
					Around: Around{Key: key, List: word == "["}}
				if w.block {
					w.Block = l.typed[first.from:first.to]
					if k > 1 {
						w.Label = strings.Trim(l.typed[l.tokens[1].from:l.tokens[1].to], `"`)
					}
				}
				open, key = append(open, w), ""
			case closer:
				if len(open) > 1 {
					key = open[len(open)-1].Key
					open = open[:len(open)-1]
				}
			case equals:
				if k > 0 {
					key = strings.Trim(l.typed[l.tokens[k-1].from:l.tokens[k-1].to], `"`)
					top.keys = append(top.keys, key)
				}
			case comma:
				key = ""
			}
		}
	}
	return open, key
}

// endSpot describes the end of the page.
func (p *page) endSpot(open []within, key string) Spot {
	l := &p.lines[len(p.lines)-1]
	s := Spot{Key: key, Start: l.End, Keys: open[len(open)-1].keys}
	for _, w := range open[1:] {
		s.Around = append(s.Around, w.Around)
	}
	if n := len(l.tokens); n > 1 && key == "" && open[len(open)-1].block && beginsBlock(l.tokens) &&
		l.tokens[n-1].kind == quoted {
		s.Title = l.typed[l.tokens[0].from:l.tokens[0].to]
	}
	if n := len(l.tokens); n > 0 {
		switch t := l.tokens[n-1]; {
		case t.kind == quoted && l.open:
			s.InText, s.Word, s.Start = true, l.typed[t.from+1:t.to], l.Start+t.from+1
		case t.kind == word && t.to == len(l.typed):
			s.Word, s.Start = l.typed[t.from:t.to], l.Start+t.from
		}
	}
	return s
}
