package plan

import _ "forebake/engine/seed"
