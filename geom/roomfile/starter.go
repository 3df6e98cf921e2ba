package roomfile

import (
	_ "embed" // the starter files
	"slices"

	"roomwright/geom/measure"
)

//go:embed starter_inches.yaml
var starterInches []byte

//go:embed starter_millimetres.yaml
var starterMillimetres []byte

// Starter gives a room file to begin with, in the units asked for: a small
// invented room that is read without errors, with comments that say how to
// tape and what each answer means.
func Starter(units measure.System) []byte {
	if units == measure.Millimetres {
		return slices.Clone(starterMillimetres)
	}
	return slices.Clone(starterInches)
}
