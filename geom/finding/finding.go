// Package finding holds what the tool has to say about a room: errors,
// warnings, cautions and notes, each with its place in the room file.
//
// In and out: builders, checks and the reader make findings; sheets and the
// command print them. Sort puts them in the order in which they are shown.
//
// Errors: none. Units: lines and columns count from 1, columns in characters;
// a zero Place means that the finding belongs to no one line.
package finding

import (
	"cmp"
	"slices"
)

// Kind says how grave a finding is.
type Kind int

// The kinds, gravest first.
const (
	Error   Kind = iota // the room cannot be set out; nothing is written
	Warning             // drawn, and printed on the sheet and in the report
	Caution             // people's safety; printed on the sheets concerned
	Note                // a value that was assumed
)

// String returns the word that is printed for k.
func (k Kind) String() string {
	switch k {
	case Error:
		return "error"
	case Warning:
		return "warning"
	case Caution:
		return "caution"
	}
	return "note"
}

// Place is where a value stands in the room file.
type Place struct{ Line, Column int }

// Finding is one thing found.
type Finding struct {
	Place   Place
	Kind    Kind
	Rule    string // short name of the rule, such as "opening wider than wall"
	What    string // one sentence without a full stop
	Found   string // the figures found, with units
	Allowed string // what is allowed
	Hint    string // what to do, often the nearest value that works
	Source  string // the published source, or "common practice, no source"
	On      string // the sheet concerned: "wall A", "ceiling", "board NAME"; empty is all
}

// Sort orders findings by place, kind and rule, and drops doubles. Cautions of
// one place stay in the order in which they were made: the gravest first.
func Sort(list []Finding) []Finding {
	out := slices.Clone(list)
	slices.SortStableFunc(out, func(a, b Finding) int {
		c := cmp.Or(
			cmp.Compare(a.Place.Line, b.Place.Line),
			cmp.Compare(a.Place.Column, b.Place.Column),
			cmp.Compare(a.Kind, b.Kind),
		)
		if c != 0 || a.Kind == Caution {
			return c
		}
		return cmp.Or(cmp.Compare(a.Rule, b.Rule), cmp.Compare(a.What, b.What), cmp.Compare(a.On, b.On))
	})
	seen := map[Finding]bool{}
	return slices.DeleteFunc(out, func(f Finding) bool {
		double := seen[f]
		seen[f] = true
		return double
	})
}

// Errors reports how many findings are errors.
func Errors(list []Finding) int {
	n := 0
	for _, f := range list {
		if f.Kind == Error {
			n++
		}
	}
	return n
}
