package main

import (
	"bytes"
	"errors"
	"os"
	"strings"
	"testing"
)

// fullWriter is a standard output that takes nothing, like a full disk.
type fullWriter struct{}

func (fullWriter) Write([]byte) (int, error) { return 0, errors.New("no space left on device") }

// Where the report cannot be printed, mend writes nothing and ends with
// 2, as its help says.
func TestMendWritesNothingWithoutAWriter(t *testing.T) {
	draft := []byte(
		"formula \"t\" {\n  dough \"d\" {\n    ingredients = {\n" +
			"      \"bread flour\" = \"1000 g\"\n      \"water\" = \"600 g\"\n" +
			"      \"instant yeast\" = \"10 g\"\n      \"salt\" = \"5 g\"\n    }\n  }\n}\n",
	)
	t.Chdir(t.TempDir())
	if err := os.WriteFile("a.hcl", draft, 0o644); err != nil {
		t.Fatal(err)
	}
	var errs bytes.Buffer
	status := run([]string{"mend", "--write", "a.hcl"}, strings.NewReader(""), fullWriter{}, &errs)
	after, err := os.ReadFile("a.hcl")
	if err != nil || status != exitUnused || !bytes.Equal(after, draft) {
		t.Errorf("status %d, %v: %s", status, err, errs.String())
	}
	if status := run([]string{"mend", "--write", "--taste", "a.hcl"}, strings.NewReader(""),
		&bytes.Buffer{}, &errs); status == exitUnused {
		t.Errorf("status %d: %s", status, errs.String())
	}
	if after, _ = os.ReadFile("a.hcl"); bytes.Equal(after, draft) {
		t.Error("nothing was written where the report could be printed")
	}
}
