package mend_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"forebake/engine"
)

func TestDbg(t *testing.T) {
	text, _ := os.ReadFile("../../formulas/second-draft.hcl")
	e := engine.New()
	for _, r := range [][2]string{
		{`cool = "30 min", at = "room", as = "tray 50 mm"`, `cool = "4 h", at = "room", as = "tray 15 mm"`},
		{`cool = "30 min", at = "room", as = "tray 50 mm"`, `cool = "2 h", at = "room", as = "tray 10 mm"`},
		{`cool = "30 min", at = "room", as = "tray 50 mm"`, `cool = "4 h", at = "room", as = "tray 10 mm"`},
		{`bake   = "28 min"`, `bake   = "45 min"`},
	} {
		s := strings.Replace(string(text), r[0], r[1], 1)
		res := e.Check([]engine.Input{{Name: "x.hcl", Text: []byte(s), Dir: "../../formulas"}})
		fmt.Println(r[1])
		for _, f := range res.Findings {
			fmt.Println("   ", f.Rule, f.Answer, f.Level, f.Reason)
			if f.Rule == "cool-not-done" {
				fmt.Println("        ", f.Text)
			}
		}
	}
}
