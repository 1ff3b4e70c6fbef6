package main

import (
	"fmt"
	"runtime"
	"runtime/debug"
	"strings"

	"github.com/spf13/cobra"

	"forebake/engine"
)

// versionText is the text of --version: the version that packs ask for,
// and the build as the Go tool recorded it in the binary.
func versionText() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		info = &debug.BuildInfo{}
	}
	return fmt.Sprintf("forebake %s%s, %s, %s/%s", engine.Version, builtFrom(info.Settings),
		runtime.Version(), runtime.GOOS, runtime.GOARCH)
}

// builtFrom names a build's commit, shortened, its day, and
// uncommitted changes. A build outside a repository, or with
// -buildvcs=false, has none.
func builtFrom(settings []debug.BuildSetting) string {
	of := map[string]string{}
	for _, s := range settings {
		of[s.Key] = s.Value
	}
	revision := of["vcs.revision"]
	if revision == "" {
		return ""
	}
	text := ", commit " + revision[:min(12, len(revision))]
	if day, _, ok := strings.Cut(of["vcs.time"], "T"); ok {
		text += " of " + day
	}
	if of["vcs.modified"] == "true" {
		text += " and changes not committed"
	}
	return text
}

// sayVersion makes --version print versionText, which is made
// only then.
func sayVersion(root *cobra.Command) {
	root.Version = engine.Version
	cobra.AddTemplateFunc("versionText", versionText)
	root.SetVersionTemplate("{{versionText}}\n")
}
