package main

import (
	"fmt"

	"github.com/spf13/cobra"
)

// checkCommand returns the verb that says what is found in a room file.
func checkCommand(s streams) *cobra.Command {
	var strict, asJSON bool
	c := &cobra.Command{
		Use:                   "check room file|- [flags]",
		DisableFlagsInUseLine: true,
		Short:                 "Say what is found in a room file, and what is built",
		Long:                  "check reads a room file, sets the room out and says everything it found: errors, warnings,\ncautions, and each value it assumed; then what is built, with its sizes. It writes no file.",
		Args: func(c *cobra.Command, args []string) error {
			if len(args) == 0 {
				return wrong("roomwright check room.yaml", "check needs a room file")
			}
			return atMostOne(c, args)
		},
		RunE: func(_ *cobra.Command, args []string) error {
			in, err := read(args[0], s.in)
			if err != nil {
				return err
			}
			return check(in, strict, asJSON, s)
		},
	}
	c.Flags().BoolVar(&strict, "strict", false, "exit with status 1 on warnings too")
	c.Flags().BoolVar(&asJSON, "json", false, "print the findings to standard output as JSON")
	return c
}

// check reports on a room file.
func check(in input, strict, asJSON bool, s streams) error {
	res := work(in)
	n := count(res.Findings)
	var built []string
	if n.Errors == 0 {
		built = summary(res)
	}
	if asJSON {
		r := newReport(in.name, res.Findings)
		r.Built = built
		if err := r.print(s.out); err != nil {
			return err
		}
	} else {
		printFindings(s.err, res.Findings, in.name, n.Errors == 0) // errors are not to drown among notes
		for _, line := range built {
			fmt.Fprintln(s.out, visible(line))
		}
		fmt.Fprintf(s.out, "%s: %s\n", visible(in.name), n)
	}
	if n.Errors > 0 || strict && n.Warnings > 0 {
		return verdict{status: roomError}
	}
	return nil
}
