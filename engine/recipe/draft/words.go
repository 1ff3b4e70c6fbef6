package draft

// The words of a formula file that this package writes. They are its language, as an author writes
// it: a test holds that each is a step or a way that the formula reader knows.

// Steps. Wash is the kind of a part too.
const (
	Soak   = "soak"
	Mix    = "mix"
	Fold   = "fold"
	Rest   = "rest"
	Chill  = "chill"
	Temper = "temper"
	Freeze = "freeze"
	Thaw   = "thaw"
	Cook   = "cook"
	Melt   = "melt"
	Sheet  = "sheet"
	Fill   = "fill"
	Roll   = "roll"
	Divide = "divide"
	Shape  = "shape"
	Pan    = "pan"
	Wash   = "wash"
	Dust   = "dust"
	Score  = "score"
	Handle = "handle"
	Proof  = "proof"
	Bake   = "bake"
	Brush  = "brush"
	Cool   = "cool"
	Store  = "store"
)

// Ways.
const (
	ByHand          = "hand"
	ByMixer         = "mixer"
	BySpiral        = "spiral"
	ByPlanetary     = "planetary"
	ByDoughHook     = "dough hook"
	ByPaddle        = "paddle"
	ByStandMixer    = "stand mixer"
	ByFoodProcessor = "food processor"
	ByFrying        = "frying"
	ByBoiling       = "boiling"
	BySimmering     = "simmering"
	ByFanOven       = "fan oven"
)

var (
	stepWords = []string{Soak, Mix, Fold, Rest, Chill, Temper, Freeze, Thaw, Cook, Melt, Sheet,
		Fill, Roll, Divide, Shape, Pan, Wash, Dust, Score, Handle, Proof, Bake, Brush, Cool, Store}
	wayWords = []string{ByHand, ByMixer, BySpiral, ByPlanetary, ByDoughHook, ByPaddle, ByStandMixer,
		ByFoodProcessor, ByFrying, ByBoiling, BySimmering, ByFanOven}
)
