package heat

import "forebake/engine/figure"

// Models are all that give figures with an error of their own.
var Models = []*figure.Model{&BathModel, &OwnHeatModel}
