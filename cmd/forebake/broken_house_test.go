package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestBrokenHousesAndPacks checks a sound formula under every house of
// testdata/broken/houses and every pack of testdata/broken/rules.
// NAME.txt beside NAME.hcl holds exactly what goes to standard error;
// -update writes it.
func TestBrokenHousesAndPacks(t *testing.T) {
	top, err := filepath.Abs(brokenDir)
	if err != nil {
		t.Fatal(err)
	}
	for _, kind := range []string{"houses", "rules"} {
		paths, err := filepath.Glob(filepath.Join(top, kind, "*.hcl"))
		if err != nil || len(paths) == 0 {
			t.Fatal("no broken files", err)
		}
		for _, path := range paths {
			t.Run(kind+"/"+filepath.Base(path), func(t *testing.T) {
				text, err := os.ReadFile(path)
				if err != nil {
					t.Fatal(err)
				}
				name := filepath.Base(path)
				files := map[string]string{
					"a.hcl":     cautious,
					name:        string(text),
					"house.hcl": "house \"h\" {\n  packs = [\"./" + name + "\"]\n}\n",
				}
				if kind == "houses" {
					delete(files, name)
					files["house.hcl"], name = string(text), "house.hcl"
				}
				folder(t, files)
				var out, errs bytes.Buffer
				status := run([]string{"check", "a.hcl"}, strings.NewReader(""), &out, &errs)
				if status != exitUnused ||
					out.Len() > 0 {
					t.Errorf("ends with %d, and prints %.200s", status, out.String())
				}
				got := errs.String()
				golden(t, strings.TrimSuffix(path, ".hcl")+".txt", got)
				if bad := unclean(got); bad != "" {
					t.Error(bad)
				}
				sorted(t, strings.TrimSuffix(name, ".hcl"), got)
			})
		}
	}
}
