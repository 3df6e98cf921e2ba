package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"roomwright/geom/roomfile"
)

// explainCommand returns the verb that says which keys a part of the room file has.
func explainCommand(s streams) *cobra.Command {
	return &cobra.Command{
		Use:                   "explain [part]",
		DisableFlagsInUseLine: true,
		Short:                 "Say which keys a part of the room file has",
		Long: "explain lists the keys of a part of the room file, such as wall, opening or ceiling, with what may\n" +
			"follow each. Without a part it lists the parts.",
		Args: atMostOne,
		RunE: func(_ *cobra.Command, args []string) error {
			var words []string
			for _, part := range roomfile.Sections() {
				words = append(words, part.Word)
				if len(args) == 1 && args[0] == part.Word {
					fmt.Fprint(s.out, explained(part))
					return nil
				}
			}
			if len(args) == 0 {
				fmt.Fprintf(s.out, "parts of the room file: %s\n", strings.Join(words, ", "))
				return nil
			}
			hint := "the parts are " + strings.Join(words, ", ")
			if near := nearest(args[0], words); near != "" {
				hint = "did you mean " + near + "?"
			}
			return wrong(hint, "no part %q of the room file", args[0])
		},
	}
}

// explained is the keys of a part as text; those that this edition does not
// read are left out.
func explained(part roomfile.Section) string {
	var b strings.Builder
	fmt.Fprintf(&b, "keys of %s:\n", part.Name)
	for _, k := range part.Keys {
		if !k.Read {
			continue
		}
		fmt.Fprintf(&b, "  %s: %s", k.Name, k.Form)
		if k.Need != "" {
			fmt.Fprintf(&b, " (%s)", k.Need)
		}
		b.WriteByte('\n')
		if k.Means != "" {
			fmt.Fprintf(&b, "      %s\n", k.Means)
		}
	}
	return b.String()
}
