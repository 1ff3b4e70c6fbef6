package layout

import _ "forebake/engine/seed"
