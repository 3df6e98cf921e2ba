package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"

	"github.com/spf13/cobra"

	"roomwright/geom/measure"
	"roomwright/geom/roomfile"
)

// newCommand returns the verb that writes a room file to begin with.
func newCommand(s streams) *cobra.Command {
	var units string
	c := &cobra.Command{
		Use:                   "new [file|-] [flags]",
		DisableFlagsInUseLine: true,
		Short:                 "Write a room file to begin with",
		Long: "new writes a room file to begin with, room.yaml when no name is given, and never over a file\n" +
			"that is there. With - it goes to standard output.",
		Args: atMostOne,
		RunE: func(_ *cobra.Command, args []string) error {
			name := "room.yaml"
			if len(args) == 1 {
				name = args[0]
			}
			system, err := unitsOf(units)
			if err != nil {
				return err
			}
			return begin(name, system, s)
		},
	}
	c.Flags().StringVar(&units, "units", measure.Inches.String(), "the `system` of bare numbers, inches or millimetres")
	return c
}

// unitsOf returns the system that a word names.
func unitsOf(word string) (measure.System, error) {
	for _, m := range []measure.System{measure.Inches, measure.Millimetres} {
		if word == m.String() {
			return m, nil
		}
	}
	hint := "--units inches, or --units millimetres"
	if near := nearest(word, []string{"inches", "millimetres"}); near != "" {
		hint = "did you mean --units " + near + "?"
	}
	return 0, wrong(hint, "no units %q", word)
}

// begin writes the first room file.
func begin(name string, units measure.System, s streams) error {
	text := roomfile.Starter(units)
	if name == "-" {
		_, err := s.out.Write(text)
		return err
	}
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	switch {
	case errors.Is(err, fs.ErrExist):
		return wrong("give another name", "%s is there already, and is not written over", name)
	case err != nil:
		return wrong("", "%s: %s", name, reason(err))
	}
	_, err = f.Write(text)
	if err2 := f.Sync(); err == nil {
		err = err2
	}
	if err2 := f.Close(); err == nil {
		err = err2
	}
	if err != nil {
		os.Remove(name)
		return wrong("", "%s: %s", name, reason(err))
	}
	if s.terminal {
		fmt.Fprintf(s.out, "%s written; roomwright check %s says what it still wants\n", visible(name), visible(name))
	}
	return nil
}
