package engine_test

import _ "forebake/engine/seed" // the properties of this package draw alike everywhere
