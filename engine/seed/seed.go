// Package seed fixes what property tests draw, so that a test run
// passes or fails for everyone alike. Test files import it for its
// effect alone; the program never does.
//
// A run with -rapid.seed=0 draws anew: .ci/fuzz does that.
package seed

import (
	"flag"

	_ "pgregory.net/rapid" // declares the flags that are set here
)

func init() {
	for name, value := range map[string]string{
		"rapid.seed": "20260901", // any number but 0
		// a draw that was kept would be replayed by one machine alone
		"rapid.nofailfile": "true",
	} {
		if err := flag.Set(name, value); err != nil {
			panic(err)
		}
	}
}
