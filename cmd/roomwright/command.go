package main

import (
	"errors"
	"fmt"
	"os"
	"slices"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// The exit statuses.
const (
	done      = 0
	roomError = 1 // errors in the room file
	wrongUse  = 2
)

// verdict is how a run ended when it did not end well; its text, when it has
// one, has yet to be printed.
type verdict struct {
	status int
	text   string
	hint   string
}

func (v verdict) Error() string { return v.text }

// wrong returns a verdict of wrong use.
func wrong(hint, format string, a ...any) error {
	return verdict{status: wrongUse, text: fmt.Sprintf(format, a...), hint: hint}
}

// run carries out one command line and returns its exit status.
func run(args []string, s streams) int {
	root := command(s)
	root.SetArgs(args)
	err := root.Execute()
	if err == nil {
		return done
	}
	var v verdict
	if !errors.As(err, &v) {
		v = verdict{status: wrongUse, text: err.Error()}
	}
	if v.text != "" {
		fmt.Fprintf(s.err, "roomwright: %s\n", visible(v.text))
	}
	if v.hint != "" {
		fmt.Fprintf(s.err, "  hint: %s\n", visible(v.hint))
	}
	return v.status
}

// command returns the command with all its verbs.
func command(s streams) *cobra.Command {
	root := &cobra.Command{
		Use:   "roomwright VERB",
		Short: "Draws what is to be built in a room, from one room file",
		Long: "roomwright works out stud walls with openings, suspended ceilings with light panels\n" +
			"and boards for one room, checks them, and draws the sheets to build from.",
		Args:                  cobra.ArbitraryArgs,
		SilenceUsage:          true,
		SilenceErrors:         true,
		DisableFlagsInUseLine: true,
		RunE: func(c *cobra.Command, args []string) error {
			if len(args) == 0 {
				return c.Help()
			}
			return noSuchVerb(c, args[0])
		},
	}
	root.CompletionOptions.HiddenDefaultCmd = true
	root.SetIn(s.in)
	root.SetOut(s.out)
	root.SetErr(s.err)
	root.SetFlagErrorFunc(noSuchFlag)
	root.SetHelpFunc(help)
	root.AddCommand(drawCommand(s), checkCommand(s), explainCommand(s), newCommand(s))
	return root
}

// noSuchVerb answers a word that is no verb.
func noSuchVerb(root *cobra.Command, word string) error {
	var verbs []string
	for _, c := range root.Commands() {
		if !c.Hidden {
			verbs = append(verbs, c.Name())
		}
	}
	hint := "the verbs are " + strings.Join(verbs, ", ")
	if near := nearest(word, verbs); near != "" {
		hint = "did you mean " + near + "?"
	} else if _, err := os.Stat(word); err == nil {
		hint = "did you mean draw " + word + "?"
	}
	return wrong(hint, "no verb %q", word)
}

// noSuchFlag answers a flag that does not exist or lacks its value.
func noSuchFlag(c *cobra.Command, err error) error {
	var none *pflag.NotExistError
	if !errors.As(err, &none) {
		return wrong("roomwright "+c.Name()+" --help", "%s", err)
	}
	name := none.GetSpecifiedName()
	var flags []string
	c.Flags().VisitAll(func(f *pflag.Flag) { flags = append(flags, f.Name) })
	slices.Sort(flags)
	hint := "the flags of " + c.Name() + " are --" + strings.Join(flags, ", --")
	if near := nearest(name, flags); near != "" {
		hint = "did you mean --" + near + "?"
	}
	dashes := "--"
	if none.GetSpecifiedShortnames() != "" {
		dashes = "-"
	}
	return wrong(hint, "no flag %s%s", dashes, name)
}

// atMostOne refuses a second argument.
func atMostOne(c *cobra.Command, args []string) error {
	if len(args) > 1 {
		return wrong("one room file at a time; put a name with blanks in quotes", "%s takes one file, not %d", c.Name(), len(args))
	}
	return nil
}
