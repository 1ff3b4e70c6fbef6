package recipe

// The words of a formula file that this package writes. They are its language, as an author writes
// it: a test holds that each is a step or a way that the formula reader knows.

// Steps. doWash is the kind of a part too.
const (
	doSoak   = "soak"
	doMix    = "mix"
	doFold   = "fold"
	doRest   = "rest"
	doChill  = "chill"
	doTemper = "temper"
	doFreeze = "freeze"
	doThaw   = "thaw"
	doCook   = "cook"
	doMelt   = "melt"
	doSheet  = "sheet"
	doFill   = "fill"
	doRoll   = "roll"
	doDivide = "divide"
	doShape  = "shape"
	doPan    = "pan"
	doWash   = "wash"
	doDust   = "dust"
	doScore  = "score"
	doHandle = "handle"
	doProof  = "proof"
	doBake   = "bake"
	doBrush  = "brush"
	doCool   = "cool"
	doStore  = "store"
)

// Ways.
const (
	byHand          = "hand"
	byMixer         = "mixer"
	bySpiral        = "spiral"
	byPlanetary     = "planetary"
	byDoughHook     = "dough hook"
	byPaddle        = "paddle"
	byStandMixer    = "stand mixer"
	byFoodProcessor = "food processor"
	byFrying        = "frying"
	byBoiling       = "boiling"
	bySimmering     = "simmering"
	byFanOven       = "fan oven"
)

var (
	stepWords = []string{doSoak, doMix, doFold, doRest, doChill, doTemper, doFreeze, doThaw, doCook, doMelt, doSheet, doFill, doRoll, doDivide, doShape, doPan, doWash, doDust, doScore, doHandle, doProof, doBake, doBrush, doCool, doStore}
	wayWords  = []string{byHand, byMixer, bySpiral, byPlanetary, byDoughHook, byPaddle, byStandMixer, byFoodProcessor, byFrying, byBoiling, bySimmering, byFanOven}
)
