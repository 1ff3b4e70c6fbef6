package hazard

import _ "forebake/engine/seed" // every run draws the same
