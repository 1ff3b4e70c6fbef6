package levers

func init() { register(ofCore) }

// ofCore is the core temperature that a step ends at.
var ofCore = stepTarget{option: "core", means: "the core that a step is to reach", core: true}
