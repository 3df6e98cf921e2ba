package sheet

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// Draw makes a view for a scale.
type Draw func(paper.Scale) drawing.Plate

// Spec is what is to come on one sheet.
type Spec struct {
	ID   string // short and unique in a set: "wall-a"
	Size paper.Size

	Main   Draw
	Scales []paper.Scale // candidates for the main view, largest first
	Fixed  *paper.Scale  // the scale asked for, nil when the largest that fits will do

	Sections      []Draw
	SectionScales []paper.Scale // candidates for all sections, largest first

	Cautions []string
	Warnings []string
	Remarks  []string // other findings
	Assumed  []string // values taken that the room file does not give
	Lists    []List   // anything else to read, where there is no main view

	Key    Key
	Band   Band
	Metric bool // the scale bar in metres
}

// List is a numbered list under a heading.
type List struct {
	Heading string
	Items   []string
}

// Key is the small plan inside the key square.
type Key struct {
	Room  []geom.Point // corners of the room in plan
	Walls []KeyWall
	This  int // index of the wall that the sheet shows, -1 for the whole room
}

// KeyWall is one wall of the key, with the room to the right of From to To.
type KeyWall struct {
	Name     string
	From, To geom.Point
}

// Band is what the title band says. An empty field is printed as "open".
type Band struct {
	Big       string // what the sheet is about: "Wall A"
	Title     string // the kind of view: "Framing elevation"
	Subtitle  string // may be empty
	Project   string
	Room      string // may be empty
	Units     string // "inches and fractions"
	DatumWord string // "heights from"
	Datum     string // "finished floor = 0"

	MeasuredTo, Kind                 string
	DrawnBy, Approved, Owner, Status string
	Date, Revision, Number, File     string
}

// Sheet is one sheet of paper.
type Sheet struct {
	ID         string
	Number, Of int
	Title      string // "Wall A, framing elevation"
	Desc       string // what is on it, for people who cannot see it
	Size       paper.Size
	Scale      paper.Scale // of the main view; 1:1 where there is none
	Sections   paper.Scale // of its sections; zero where there are none
	Elements   []drawing.Element
	Assumed    []string // values assumed that found no room on the sheets of their spec

	late late
}

// late is what can only be printed when all sheets are counted.
type late struct {
	corner   geom.Rect // for the sheet number and "of 7"
	numberAt geom.Point
	numberW  geom.Length
	number   string // of the document, without the sheet
}
