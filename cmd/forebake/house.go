package main

import "github.com/spf13/cobra"

// addHouse adds the flag --house to a verb.
func addHouse(cmd *cobra.Command) {
	cmd.Flags().String("house", ".",
		"`path` of the house file, or of a folder: then the nearest house file upward")
	completeFlag(cmd, "house", completeFormulas)
}

// housePath is the path that --house names.
func housePath(cmd *cobra.Command) string {
	path, err := cmd.Flags().GetString("house")
	if err != nil || path == "" {
		return "."
	}
	return path
}
