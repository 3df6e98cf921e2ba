// Package piece holds what every builder gives and every drawing and list
// takes: one piece of material with its mark, profile, true length and state.
//
// Units and axes: Length is along the piece. Box is where it lies, in the axes
// of the wall it belongs to (x from the wall's left end, y up from the
// finished floor) or in plan axes for the ceiling.
//
// Errors: none. Limits: a piece is a straight stick or a flat sheet.
package piece

import (
	"roomwright/geom"
	"roomwright/geom/finding"
)

// State tells existing, new and removed pieces apart.
type State int

// The states of a piece.
const (
	Existing State = iota // there now and kept
	New                   // to be cut and fixed
	Removed               // there now and taken out
)

// String returns the word that is printed for s.
func (s State) String() string { return [...]string{"existing", "new", "removed"}[s] }

// Mark is the name that a piece bears on drawings and lists alike, such as
// "A3" or "R1". Equal pieces share a mark.
type Mark string

// Profile is the section of a stick or the make of a sheet.
type Profile struct {
	Name  string      // as a person would ask for it: "2x4", "15/32 plywood"
	Thick geom.Length // the lesser true dimension of the section, or the sheet's thickness
	Wide  geom.Length // the greater true dimension of the section, or the sheet's width
}

// Piece is one piece. Two pieces with one mark are alike in profile, length and ends.
type Piece struct {
	Mark    Mark
	Name    string // its trade name: "king stud", "jack stud, lower", "cross tee"
	Trade   string // "framing", "ceiling", "boards"
	Profile Profile
	Length  geom.Length
	State   State
	On      string // where it belongs: "wall A", "ceiling"
	Box     geom.Rect
	Ends    string        // how its ends are cut: "square", "square, one factory end"
	From    finding.Place // what in the room file asked for it
}
