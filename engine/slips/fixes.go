package slips

import (
	"strings"

	"forebake/engine/spelling"
)

// fix puts one kind of slip of a line right. It gives a line without
// the slip back as it is.
type fix struct {
	where place
	do    func(string) string
}

// fixes are asked in this order, each alone and then all in turn.
var fixes = []fix{
	{anywhere, quotes},
	{anywhere, replaced(`\s*(?:=>|:=|==)\s*`, " = ")},
	{anywhere, replaced(`^(\s*)[-*•]\s+`, "$1")},
	{anywhere, replaced(`;\s*$`, "")},
	{inSteps, replaced(`;\s*$`, ",")},
	{inBlock, replaced(`^(\s*\w+)\s*:\s*`, "$1 = ")},
	{inBlock, replaced(`^(\s*\w+)\s*=\s*("[^"]*"\s*\{)`, "$1 $2")},
	{inBlock, replaced(`^(\s*\w+\s+"[^"]*")\s*=\s*\{`, "$1 {")},
	{inBlock, replaced(`^(\s*)(\w+) (\w+) ("[^"]*")\s*\{`, "$1${2}_$3 $4 {")},
	{inBlock, replaced(`^(\s*)("egg ?wash"|"wash"|"glaze eggs?")\s*\{`, "${1}wash $2 {")},
	{inBlock, replaced(`^(\s*)("[^"]*(?:syrup)[^"]*")\s*\{`, "${1}syrup $2 {")},
	{inBlock, replaced(`^(\s*)("[^"]*(?:filling|cream|custard|jam)[^"]*")\s*\{`,
		"${1}filling $2 {")},
	{inBlock, replaced(`^(\s*)("[^"]*(?:icing|glaze|topping|frosting|streusel|crumble)[^"]*")\s*\{`,
		"${1}topping $2 {")},
	{inBlock, replaced(`^(\s*)("[^"]*(?:dough)[^"]*")\s*\{`, "${1}dough $2 {")},
	{inIngredients, ingredient},
	{inIngredients, replaced(`("[^"]*)"\s*\(([^()"]*)\)(\s*,?\s*)$`, `$1, $2"$3`)},
	{inIngredients, replaced(`^(\s*)"?([\d./½¼¾⅓⅔]+(?: [\d/]+)? ?(?:kg|g|oz|lbs?|ml|dl|l|tsp|`+
		`tbsp|cups?|sachets?|packets?|pinch(?:es)?)?) ([^"=\d][^"=]*?)"?(,?)\s*$`,
		`$1"$3" = "$2"$4`)},
	{inSteps, replaced(`([{,]\s*\w+)\s+("[^"]*")`, "$1 = $2")},
	{inSteps, replaced(`("|true|false|\d)\s+(\w+\s*=)`, "$1, $2")},
	{inSteps, replaced(`^(\s*)(\w+\s*=[^{}]*?)(,?)\s*$`, "$1{ $2 },")},
	{inSteps, replaced(`^(\s*)"(\w+)[ :]+([^"]+)"(,?)\s*$`, `$1{ $2 = "$3" },`)},
	{inSteps, replaced(`^(\s*)(\w+):\s*([^"{}\[\]]+?)(,?)\s*$`, `$1{ $2 = "$3" },`)},
	{inSteps, replaced(`(\w+)\s*:\s*("[^"]*")`, "$1 = $2")},
	{anywhere, values},
	{inSteps, replaced(`\}\s*$`, "},")},
	{anywhere, closeQuote},
}

func replaced(pattern, with string) func(string) string {
	re := spelling.Pattern(pattern)
	return func(line string) string { return re.ReplaceAllString(line, with) }
}

var (
	curly = strings.NewReplacer("“", `"`, "”", `"`, "„", `"`, "«", `"`, "»", `"`, "‟", `"`,
		"″", `"`)
	single = strings.NewReplacer("'", `"`, "‘", `"`, "’", `"`, "`", `"`, "‚", `"`)
)

// quotes makes quotes of another kind straight. An apostrophe within
// straight quotes stays.
func quotes(line string) string {
	line = curly.Replace(line)
	if !strings.Contains(line, `"`) {
		line = single.Replace(line)
	}
	return line
}

var (
	bareName = spelling.Pattern(`^(\s*)((?:\pL|\d)[^"={}:\[\]]*?)\s*[=:]\s*(.+)$`)
	plainKey = spelling.Pattern(`^[A-Za-z_][\w-]*$`)
)

// ingredient puts the name of an ingredient in quotes, before a sign
// = or a colon.
func ingredient(line string) string {
	m := bareName.FindStringSubmatch(line)
	if m == nil || plainKey.MatchString(m[2]) && strings.Contains(line, "=") {
		return line
	}
	return m[1] + `"` + strings.TrimSpace(m[2]) + `" = ` + m[3]
}

var (
	bareValue = spelling.Pattern(`(=\s*)([^\s"{}\[\],#=][^"{}\[\],#=]*?)(\s*)([,}\]#]|$)`)
	asIs      = spelling.Pattern(`^(?:true|false|\d+(?:\.\d+)?)$`)
)

// values puts values in quotes that stand bare.
func values(line string) string {
	for range 8 { // one value a time, since each needs the sign behind the one before
		at := bareValue.FindStringSubmatchIndex(line)
		from := 0
		for at != nil && asIs.MatchString(line[from+at[4]:from+at[5]]) {
			from += at[5]
			if at = bareValue.FindStringSubmatchIndex(line[from:]); at == nil {
				return line
			}
		}
		if at == nil || strings.Count(line[:from+at[4]], `"`)%2 == 1 {
			return line
		}
		line = line[:from+at[4]] + `"` + line[from+at[4]:from+at[5]] + `"` + line[from+at[5]:]
	}
	return line
}

var lineEnd = spelling.Pattern(`\s*(\}?,?)\s*$`)

// closeQuote closes a text that is open at the end of its line.
func closeQuote(line string) string {
	if strings.Count(line, `"`)%2 == 0 {
		return line
	}
	at := lineEnd.FindStringSubmatchIndex(line)
	end := line[at[2]:at[3]]
	if strings.HasPrefix(end, "}") {
		end = " " + end
	}
	return line[:at[0]] + `"` + end
}
