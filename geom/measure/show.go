package measure

import "roomwright/geom"

// System is what a bare number in a room file means.
type System int

// The two systems.
const (
	Inches System = iota
	Millimetres
)

// Form is the way in which lengths are printed.
type Form int

// The forms, as `show` in the room file names them.
const (
	FeetAndInches Form = iota
	InchesOnly
	MillimetresOnly
)

// Show is how lengths are printed: the form, and the step they are rounded to.
type Show struct {
	Form Form
	To   geom.Length
}
