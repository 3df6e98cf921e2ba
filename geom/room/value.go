package room

import (
	"roomwright/geom"
	"roomwright/geom/finding"
)

// Reading is a length that was taped: something that is there.
type Reading struct {
	Value   geom.Length   // the mean when it was taped more than once
	All     []geom.Length // each reading as written
	Within  geom.Length   // "+/- T" when written, else zero
	About   bool          // written with "about"
	Unknown bool          // answered "unknown"
	At      finding.Place
}

// Given reports whether the reading was written at all, "unknown" included.
func (r Reading) Given() bool { return r.At != finding.Place{} }

// Known reports whether there is a value to work with.
func (r Reading) Known() bool { return len(r.All) > 0 }

// Want is a length that is wanted: a must, or a wish when IfFits is set.
type Want struct {
	Value  geom.Length
	IfFits bool
	At     finding.Place
}

// Given reports whether the value was written or filled in from a default.
func (w Want) Given() bool { return w.At != finding.Place{} || w.Value != 0 }

// Size is a width and a height (on a wall: across, then up).
type Size struct {
	W, H geom.Length
	At   finding.Place
}

// Given reports whether the size was written.
func (s Size) Given() bool { return s.At != finding.Place{} }

// Answer is yes, no, unknown, or not said.
type Answer int

// The answers.
const (
	NotSaid Answer = iota
	Yes
	No
	Unknown
)

// End is an end of a wall as seen from inside the room.
type End int

// The ends.
const (
	Left End = iota
	Right
)

// Edge is the edge of a thing that a tape reads, or its centre.
type Edge int

// The edges.
const (
	LeftEdge Edge = iota
	RightEdge
	Centre
	Bottom
	Top
)

// StudRef names a stud of a wall: by number from the left (the end stud is 1),
// or by the mark at which it was written.
type StudRef struct {
	Number int // 0 when named by mark
	Mark   geom.Length
	At     finding.Place
}

// Given reports whether a stud was named.
func (s StudRef) Given() bool { return s.At != finding.Place{} }

// AcrossKind is the way in which a place across a wall is given.
type AcrossKind int

// The ways.
const (
	Nowhere        AcrossKind = iota // not given
	EdgeFromEnd                      // "left edge from right: X"
	SpanFromEnd                      // "from left: X to Y"
	CentredOnWall                    // "centred on: wall"
	CentredOnStud                    // "centred on: stud 5"
	CentredOnThing                   // "centred on: opening NAME" or "door NAME"
	CentredBetween                   // "centred between: stud 4 and stud 7"
	KingLeft                         // "left king: stud 4"
	KingRight                        // "right king: stud 7"
	UnknownPlace                     // "position: unknown"
)

// Across is a place across a wall.
type Across struct {
	Kind  AcrossKind
	Edge  Edge
	From  End
	Value geom.Length // EdgeFromEnd; the near end of SpanFromEnd
	To    geom.Length // the far end of SpanFromEnd
	About bool        // on something that is there
	Wish  bool        // "if it fits", on something wanted
	Stud  StudRef
	Stud2 StudRef // CentredBetween
	Thing string  // CentredOnThing: the name
	At    finding.Place
}

// UpKind is the way in which a height is given.
type UpKind int

// The ways.
const (
	NoHeight        UpKind = iota // not given
	BottomFromFloor               // "bottom from floor"
	TopFromFloor                  // "top from floor"
	CentreFromFloor               // "centre from floor"
	TopFromCeiling                // "top from ceiling"
	SpanFromFloor                 // "from floor: X to Y"
	UnknownHeight                 // "position: unknown"
)

// Up is a height on a wall.
type Up struct {
	Kind  UpKind
	Value geom.Length
	To    geom.Length
	About bool
	Wish  bool
	At    finding.Place
}

// Timber is the section of a stick: a name of the table of dressed sizes, or a true size.
type Timber struct {
	Name  string      // "2x4", or the true size as printed in the file's units
	Thick geom.Length // the lesser dimension as written first
	Wide  geom.Length
	At    finding.Place
}

// Given reports whether a section was written.
func (t Timber) Given() bool { return t.Wide != 0 }

// Material is a sheet or layer: a thickness and what it is.
type Material struct {
	Thick   geom.Length
	What    string // "gypsum", "acrylic", "hardboard"
	None    bool   // answered "none"
	Unknown bool   // answered "unknown"
	At      finding.Place
}

// Given reports whether the material was written, "none" and "unknown" included.
func (m Material) Given() bool { return m.At != finding.Place{} }

// Mass is a weight, in grams.
type Mass struct {
	Grams int64
	Text  string // as written: "7 lb"
	At    finding.Place
}

// Given reports whether the weight was written.
func (m Mass) Given() bool { return m.At != finding.Place{} }
