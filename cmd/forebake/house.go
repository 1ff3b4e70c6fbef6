package main

import (
	"errors"

	"github.com/spf13/cobra"

	"forebake/engine"
)

// addHouse adds the flag --house to a verb.
func addHouse(cmd *cobra.Command) {
	cmd.Flags().String("house", ".",
		"`path` of the house file, or of a folder: then the nearest house file upward")
}

// houseFile finds the house file that --house names; "" where the folder has none.
func houseFile(cmd *cobra.Command) (string, error) {
	path, err := cmd.Flags().GetString("house")
	if err != nil {
		return "", err
	}
	if path == "" {
		return "", errors.New("--house needs a path: a house file, or a folder")
	}
	return engine.HouseAt(path)
}

// loadHouse gives the house that --house names, with its rules.
func loadHouse(cmd *cobra.Command) (*engine.Loaded, error) {
	file, err := houseFile(cmd)
	if err != nil {
		return nil, err
	}
	l, problems := engine.New().LoadHouse(file)
	if len(problems) > 0 {
		return nil, complain(cmd, problems)
	}
	return l, nil
}
