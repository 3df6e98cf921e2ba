package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// help prints what a verb does and its flags.
func help(c *cobra.Command, _ []string) {
	w := c.OutOrStdout()
	about := c.Long
	if about == "" {
		about = c.Short
	}
	fmt.Fprintf(w, "%s\n\nusage: %s\n", about, c.UseLine())
	if c.HasAvailableSubCommands() {
		fmt.Fprint(w, "\nverbs:\n")
		for _, sub := range c.Commands() {
			if sub.IsAvailableCommand() && sub.Name() != "help" {
				fmt.Fprintf(w, "  %-8s %s\n", sub.Name(), sub.Short)
			}
		}
		fmt.Fprintf(w, "\n%s VERB --help says more about a verb\n", c.Name())
	}
	var lines [][2]string
	c.Flags().VisitAll(func(f *pflag.Flag) {
		if f.Hidden || f.Name == "help" {
			return
		}
		name := "--" + f.Name
		if f.Shorthand != "" {
			name = "-" + f.Shorthand + ", " + name
		}
		kind, text := pflag.UnquoteUsage(f)
		if f.Value.Type() != "bool" {
			name += " " + kind
			text += " (" + f.DefValue + ")"
		}
		lines = append(lines, [2]string{name, text})
	})
	if len(lines) == 0 {
		return
	}
	fmt.Fprint(w, "\nflags:\n")
	wide := 0
	for _, l := range lines {
		wide = max(wide, len(l[0]))
	}
	for _, l := range lines {
		fmt.Fprintf(w, "  %s%s  %s\n", l[0], strings.Repeat(" ", wide-len(l[0])), l[1])
	}
}
