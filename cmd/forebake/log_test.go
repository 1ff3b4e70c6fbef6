package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"sync"
	"testing"
)

// Several processes that log at once lose nothing: each entry reported
// as added is in the log, and the others were refused.
func TestSeveralLogAtOnce(t *testing.T) {
	folder(t, map[string]string{"buns.hcl": `formula "Buns" {
  dough "d" {
    ingredients = { "bread flour" = "1 kg" }
    steps = [{ mix = "10 min" }]
  }
}
`})
	program, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	const many = 8
	var wait sync.WaitGroup
	said := make([]string, many)
	for i := range many {
		wait.Go(func() {
			var out bytes.Buffer
			cmd := exec.Command(program, "-test.run", "^TestLogsForAnother$")
			cmd.Env = append(os.Environ(), fmt.Sprintf("FOREBAKE_LOGS=note %d of many", i))
			cmd.Stdout, cmd.Stderr = &out, &out
			_ = cmd.Run()
			said[i] = out.String()
		})
	}
	wait.Wait()
	text, err := os.ReadFile("buns.log.hcl")
	if err != nil {
		t.Fatal(err)
	}
	added := 0
	for i, s := range said {
		note := fmt.Sprintf("note %d of many", i)
		is := strings.Contains(string(text), note)
		if was := strings.Contains(s, "added: "+note); was != is {
			t.Errorf("%q said %q, and the log holds it: %v", note, s, is)
		}
		if is {
			added++
		}
	}
	if added == 0 {
		t.Error("nothing was added")
	}
	var out, errs bytes.Buffer
	if status := run([]string{"log", "buns.hcl"}, nil, &out, &errs); status != exitClear {
		t.Errorf("the log cannot be read: %s", &errs)
	}
}

// TestLogsForAnother logs in a process of its own.
func TestLogsForAnother(t *testing.T) {
	note := os.Getenv("FOREBAKE_LOGS")
	if note == "" {
		t.Skip("for TestSeveralLogAtOnce")
	}
	run([]string{"log", "buns.hcl", "--note", note}, nil, os.Stdout, os.Stderr)
}
