// Package seed fixes what property tests draw, so that a test run has
// the same result for everyone. Test files import it for its effect
// alone; the program never does.
//
// -rapid.seed=0 draws anew: .ci/fuzz does that.
package seed

import (
	"flag"

	_ "pgregory.net/rapid" // declares the flags that are set here
)

func init() {
	for name, value := range map[string]string{
		"rapid.seed": "20260901", // any number but 0
		// only one machine would replay a draw that was kept
		"rapid.nofailfile": "true",
	} {
		if err := flag.Set(name, value); err != nil {
			panic(err)
		}
	}
}
