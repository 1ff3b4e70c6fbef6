package heat

import "forebake/engine/figure"

// Models are all models with figures of their own error.
var Models = []*figure.Model{&BathModel, &OwnHeatModel}
