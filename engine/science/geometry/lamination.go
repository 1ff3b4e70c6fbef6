package geometry

// Layers gives the number of fat layers after folding: fatLayers at the start
// (1 for one slab of butter shut in dough) times each fold (3 for a three-fold
// or single turn, 4 for a four-fold or double). Three three-folds make 27, 3^n
// (patent EP 0445850, read). Dough layers are one more. ok is false
// below 1 layer, for a fold under 2, and over a million.
func Layers(fatLayers int, folds ...int) (layers int, ok bool) {
	if fatLayers < 1 || fatLayers > mostCount {
		return 0, false
	}
	layers = fatLayers
	for _, fold := range folds {
		if fold < 2 || fold > mostCount/layers {
			return 0, false
		}
		layers *= fold
	}
	return layers, true
}

// FatLayerMM gives the mean thickness in mm of one fat layer in a laminated sheet
// of sheetMM: the fat's share of the volume, over the layers. Layers are
// taken as whole and even; thin ones break, soonest where the fat is cold.
func FatLayerMM(sheetMM, fatG, fatDensity, doughG, doughDensity float64, layers int) (thicknessMM float64, ok bool) {
	if !positive(sheetMM, fatG, fatDensity, doughG, doughDensity) || layers < 1 {
		return 0, false
	}
	fat, dough := fatG/fatDensity, doughG/doughDensity
	return size(sheetMM * fat / (fat + dough) / float64(layers))
}
