package quantity

// gasMarks are UK oven marks, C. Marks 4, 6 and 7 were read in pages
// that pair them; the others are common practice.
var gasMarks = map[string]string{"1": "140 C", "2": "150 C", "3": "170 C", "4": "180 C",
	"5": "190 C", "6": "200 C", "7": "220 C", "8": "230 C", "9": "240 C"}

// GasMark is the temperature of a mark of a UK oven, "4" to "180 C"; ""
// for no mark.
func GasMark(mark string) string { return gasMarks[mark] }
