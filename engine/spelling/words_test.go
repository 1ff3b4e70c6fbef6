package spelling

import (
	"math/rand/v2"
	"regexp"
	"regexp/syntax"
	"slices"
	"strings"
	"testing"
	"unicode"

	"pgregory.net/rapid"
)

// quick are patterns of every kind that a filter takes apart.
var quick = []string{
	`(?i)foxgloves?|yew|(?:calla|arum) lil(?:y|ies)`, `(?i)so[yi]a?[- ]?free`, `(?:glücks)?münzen?`,
	`\b(?:[4-9]|1[01]) ?\+ ?(?:months?|mois)`, `(?:very )*(?:ho|hot)+`, `x{2,3}y`, `a?b?c`,
	`(?i)kg|ſet`, `[^.]old`, `(?:for|à) (?:\pL+ )?tea`, `^(?:an? )?(?:few|couple of) drops$`,
	`(?i)(?:^|[^\pL])(not )?(?:ei|nüsse)(?:$|[^\pL])`, `(?m)^rule\s+"x"`, `(?i)[ſ,.;:!]at`,
	`\bä\b|\W5\b`, `(?i)straße|ŒUF`, `(?:a|b+|)(?:c|[x-z]{2,}|)d{0}e`, `(\d+)°|[\d ]{2}[^\w]c`,
	`(?i)\bKÅÀ`, `\b(?:a+|b\w*)\b`, `\b(?:(?:ab)+|c\w*d)+\b`,
	`(?:^|[^\pL])(?:x\w*|yz|\w+mo){1,2}(?:$|[^\pL])`, `\b(?:(?:ab|[^x]c)[^x]|ef)\b`, `\Bin\b ?of`,
	`x(?:^|[^\pL])y|\$$`,
}

// matchOf is a text that an expression may match: drawn gives a number below n. Edges are taken as
// they come, so that some texts do not match.
func matchOf(re *syntax.Regexp, drawn func(n int) int) string {
	var out strings.Builder
	put(&out, re, drawn)
	return out.String()
}

func put(out *strings.Builder, re *syntax.Regexp, drawn func(n int) int) {
	switch re.Op {
	case syntax.OpLiteral:
		for _, r := range re.Rune {
			for n := drawn(3); n > 0 && re.Flags&syntax.FoldCase != 0; n-- {
				r = unicode.SimpleFold(r)
			}
			out.WriteRune(r)
		}
	case syntax.OpCharClass:
		if len(re.Rune) > 0 {
			i := drawn(min(len(re.Rune)/2, 60)) * 2
			out.WriteRune(re.Rune[i] + rune(drawn(int(re.Rune[i+1]-re.Rune[i])+1)))
		}
	case syntax.OpAnyChar, syntax.OpAnyCharNotNL:
		out.WriteRune([]rune("a Zé5,ß")[drawn(7)])
	case syntax.OpCapture, syntax.OpConcat:
		for _, sub := range re.Sub {
			put(out, sub, drawn)
		}
	case syntax.OpAlternate:
		put(out, re.Sub[drawn(len(re.Sub))], drawn)
	case syntax.OpStar, syntax.OpPlus, syntax.OpQuest, syntax.OpRepeat:
		least, most := re.Min, re.Max
		switch {
		case re.Op == syntax.OpQuest:
			least, most = 0, 1
		case re.Op == syntax.OpPlus:
			least, most = 1, 3
		case re.Op == syntax.OpStar || most < 0 || most > least+3:
			most = least + 3
		}
		for n := least + drawn(most-least+1); n > 0 && out.Len() < 1000; n-- {
			put(out, re.Sub[0], drawn)
		}
	}
}

// around is what stands beside a match: nothing, blanks, letters that make another word of it.
var around = []string{"", " ", "x", "é", "-", "5 ", "The ", ". ", "\n", "\xC3", "ſ", "5"}

// holds fails where the quick test rules out a text that matches, and reports whether it does.
func holds(t *rapid.T, re *regexp.Regexp, tree *syntax.Regexp, words *Words, seed uint64) bool {
	drawn := rand.New(rand.NewPCG(seed, 0)).IntN
	noise := func() string { return around[max(0, drawn(2*len(around))-len(around))] }
	text := noise() + matchOf(tree, drawn) + noise()
	if !re.MatchString(text) {
		return false
	}
	if !words.May(text) || !words.filter().inBytes([]byte(text)) {
		t.Errorf("%q matches %s", text, words)
	}
	return true
}

// What a pattern matches is never ruled out by the quick test, whatever stands around it.
func TestQuickTestMissesNothing(t *testing.T) {
	misses(t, quick)
}

// misses draws texts that patterns match, and fails where a quick test rules one out.
func misses(t *testing.T, patterns []string) {
	t.Helper()
	compiled, trees := map[string]*regexp.Regexp{}, map[string]*syntax.Regexp{}
	words, matched := map[string]*Words{}, map[string]bool{}
	for _, text := range patterns {
		compiled[text] = regexp.MustCompile(text)
		trees[text], _ = syntax.Parse(text, syntax.Perl)
		words[text] = Pattern(text)
	}
	rapid.Check(t, func(t *rapid.T) {
		seed := rapid.Uint64().Draw(t, "seed")
		for i, text := range patterns {
			if holds(t, compiled[text], trees[text], words[text], seed+uint64(i)) {
				matched[text] = true
			}
		}
	})
	for _, text := range patterns {
		if !matched[text] {
			t.Errorf("no text is drawn that matches %s", text)
		}
	}
}

// It is of use: ordinary words of a bakery hold none of the patterns.
func TestQuickTestRulesOut(t *testing.T) {
	for _, text := range []string{
		"", "milk buns", "bun dough", "Plaited ring 12", "gluten", "brötchen", "for 8",
	} {
		for _, pattern := range quick[:4] {
			if Pattern(pattern).May(text) {
				t.Errorf("%q is not ruled out of %s", text, pattern)
			}
		}
	}
}

// The filter folds letters as the compiled patterns do, or says that they may match.
func TestLettersFoldAlike(t *testing.T) {
	for r := range rune(unicode.MaxRune) {
		for other := unicode.SimpleFold(r); other != r; other = unicode.SimpleFold(other) {
			pattern, text := "(?i)x"+regexp.QuoteMeta(string(r)), "X"+string(other)
			if r < 0x300 && !Pattern(pattern).May(text) {
				t.Errorf("%s does not find %q", pattern, text)
			}
			if isPlain(r) && lowered(string(r)) != lowered(string(other)) &&
				!isStrange(string(other)) {
				t.Errorf("%q is %q", r, other)
			}
		}
	}
}

// Texts are answered as the compiled pattern does, whether it is asked or not.
func TestWordsAnswerAlike(t *testing.T) {
	const pattern = `fox(glove)`
	re := regexp.MustCompile(pattern)
	for _, text := range []string{"", "milk", "a foxglove b"} {
		for n := -1; n < 3; n++ {
			w := Pattern(pattern) // anew: what has been compiled is asked the same
			got, want := w.Split(text, n), re.Split(text, n)
			if !slices.Equal(got, want) || (got == nil) != (want == nil) {
				t.Errorf("%q in %d is %q, want %q", text, n, got, want)
			}
			if !slices.Equal(w.FindAllString(text, n), re.FindAllString(text, n)) ||
				w.ReplaceAllString(text, "x$1") != re.ReplaceAllString(text, "x$1") ||
				w.MatchString(text) != re.MatchString(text) ||
				w.Match([]byte(text)) != re.MatchString(text) ||
				w.FindString(text) != re.FindString(text) ||
				!slices.Equal(w.FindStringIndex(text), re.FindStringIndex(text)) ||
				!slices.Equal(w.FindIndex([]byte(text)), re.FindStringIndex(text)) ||
				!slices.Equal(w.FindStringSubmatch(text), re.FindStringSubmatch(text)) {
				t.Errorf("%q is answered otherwise", text)
			}
		}
	}
}

func FuzzWords(f *testing.F) {
	for _, pattern := range quick {
		f.Add(pattern, "", "Foxglove in ½ tea, Nüsse. 5 ſet°", []byte{})
		f.Add(pattern, "x", "", []byte{1, 2, 3, 4, 5, 6})
	}
	f.Fuzz(func(t *testing.T, pattern, before, after string, draws []byte) {
		if len(pattern) > 100 {
			return
		}
		tree, err := syntax.Parse(pattern, syntax.Perl)
		if err != nil {
			filterOf(pattern) // it may say anything, but ends
			return
		}
		text := before + matchOf(tree, func(n int) int {
			if len(draws) == 0 {
				return 0
			}
			c := int(draws[0])
			draws = draws[1:]
			return c % n
		}) + after
		if regexp.MustCompile(pattern).MatchString(text) && !Pattern(pattern).May(text) {
			t.Errorf("%q matches %q", text, pattern)
		}
	})
}
