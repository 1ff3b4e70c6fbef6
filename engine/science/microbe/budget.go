package microbe

// Organism is one of the bacteria that a history is judged by.
type Organism uint8

// The organisms.
const (
	Salmonella Organism = iota
	SAureus
	BCereus
	LMonocytogenes
	CPerfringens
	organismCount
)

// OrganismCount is how many organisms there are.
const OrganismCount = int(organismCount)

// Band is a span of temperature with its longest published time, all
// exposures added up.
type Band struct {
	FromC, ToC, Hours float64
	Basis             string
}

// LimitSource is the source of the bands and of the temperature ends of
// growth. Table A-2 itself was not seen: two bands of S. aureus were
// read in its chapter 15, two of B. cereus are quoted in a processor's
// question, the other 15 are from memory.
const LimitSource = "FDA Fish and Fishery Products Hazards and Controls Guidance, 4th ed. (2011, " +
	"rev. to 2022), App. 4 tables A-1, A-2"

// organism is what is known of one. Bands lie end to end, coldest
// first: each starts where the cooler one ends, which closes the
// printed table's gaps. The top of the last is the growth limit of
// table A-1.
type organism struct {
	name                string
	minAw, minPh, maxPh float64
	bands               []Band
}

// Growth limits are the widest over all sources: LimitSource (B. cereus
// read, the others memory), ICMSF 1996 (read), FDA Bad Bug Book 1992
// (read). Others are narrower: S. aureus aw 0.86, Salmonella aw 0.95
// and pH 3.8 or 4.5, B. cereus aw 0.929 or 0.95.
var organisms = [organismCount]organism{
	Salmonella: {"Salmonella", 0.94, 3.7, 9.5, []Band{
		{5.2, 10, 48, "memory"}, {10, 21.1, 5, "memory"}, {21.1, 46.2, 2, "memory"}}},
	SAureus: {
		"Staphylococcus aureus",
		0.83,
		4.0,
		10,
		[]Band{ // seen to grow in custard from 6.7 C (read); at 336 h that is nothing
			{7, 10, 336, "memory"}, {10, 21.1, 12, "read"}, {21.1, 50, 3, "read"}},
	},
	BCereus: {"Bacillus cereus", 0.92, 4.3, 9.3, []Band{
		{
			4,
			6.1,
			120,
			"memory",
		}, {6.1, 15, 24, "quoted"}, {15, 21.1, 6, "quoted"}, {21.1, 55, 3, "memory"}}},
	LMonocytogenes: {"Listeria monocytogenes", 0.92, 4.4, 9.4, []Band{
		{
			-0.4,
			5,
			168,
			"memory",
		}, {5, 10, 24, "memory"}, {10, 21.1, 7, "memory"}, {21.1, 30, 3, "memory"},
		{30, 45, 1, "memory"}}},
	CPerfringens: {
		"Clostridium perfringens",
		0.93,
		5.0,
		9.0,
		[]Band{ // ICMSF as tabulated prints 4 C as its coldest; others 10 to 12 C
			{
				10,
				12.2,
				504,
				"memory",
			}, {12.2, 13.9, 24, "memory"}, {13.9, 21.1, 6, "memory"}, {21.1, 52, 2, "memory"}},
	},
}

// Organisms lists them all.
func Organisms() []Organism {
	return []Organism{Salmonella, SAureus, BCereus, LMonocytogenes, CPerfringens}
}

// String is the full Latin name.
func (o Organism) String() string {
	if o >= organismCount {
		return "unknown organism"
	}
	return organisms[o].name
}

// LeavesToxin reports whether it can leave a toxin that no bake
// destroys (S. aureus, B. cereus: EFSA and ICMSF, quoted by reviews): a
// kill step does not mend a budget over 1 before it.
func (o Organism) LeavesToxin() bool { return o == SAureus || o == BCereus }

// SporeFormer reports whether it survives a kill step as spores, so
// that its budget runs on after the bake.
func (o Organism) SporeFormer() bool { return o == BCereus || o == CPerfringens }

// Bands are the organism's published limits (LimitSource), coldest
// first and without gaps; none for an unknown organism.
func (o Organism) Bands() []Band {
	if o >= organismCount {
		return nil
	}
	return append([]Band(nil), organisms[o].bands...)
}

// Grows reports whether any water activity and pH within the intervals
// let it grow at some temperature. Limits are the widest of any source,
// ends included. Without a pH, or with unreadable figures, it grows.
func Grows(o Organism, aw, ph Interval, phKnown bool) bool {
	if o >= organismCount {
		return true
	}
	g := &organisms[o]
	if aw.Lo <= aw.Hi && aw.Hi >= 0 && aw.Hi < g.minAw {
		return false
	}
	return !(phKnown && ph.Lo >= 0 && ph.Lo <= ph.Hi && ph.Hi <= 14 &&
		(ph.Hi < g.minPh || ph.Lo > g.maxPh))
}
