package main

import (
	"runtime/debug"
	"testing"
)

func TestBuiltFrom(t *testing.T) {
	commit := debug.BuildSetting{
		Key:   "vcs.revision",
		Value: "0123456789abcdef0123456789abcdef01234567",
	}
	day := debug.BuildSetting{Key: "vcs.time", Value: "2026-11-25T10:50:00Z"}
	for _, c := range []struct {
		settings []debug.BuildSetting
		want     string
	}{
		{nil, ""},
		{[]debug.BuildSetting{day}, ""},
		{[]debug.BuildSetting{commit}, ", commit 0123456789ab"},
		{[]debug.BuildSetting{{Key: "vcs.revision", Value: "77"}}, ", commit 77"},
		{[]debug.BuildSetting{commit, day, {Key: "vcs.modified", Value: "false"}},
			", commit 0123456789ab of 2026-11-25"},
		{[]debug.BuildSetting{commit, day, {Key: "vcs.modified", Value: "true"}},
			", commit 0123456789ab of 2026-11-25 and changes not committed"},
	} {
		if got := builtFrom(c.settings); got != c.want {
			t.Errorf("%v: %q, want %q", c.settings, got, c.want)
		}
	}
}
