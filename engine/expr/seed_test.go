package expr_test

import _ "forebake/engine/seed" // every run draws the same
