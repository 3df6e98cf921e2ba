package lining

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
)

// Backing is a member of a wall that a screw can go into.
type Backing struct {
	X      geom.Span
	Y      geom.Span // heights at which it is there; the zero Span is every height
	Level  bool      // a plate, a sill or a header: it bears no upright edge by itself
	StudNo int       // number of the stud from the left, 0 for a strip or a new member
}

// Wall is what a wall offers to boards.
type Wall struct {
	Index    int
	Length   geom.Length // corner to corner as taped
	Finished geom.Span   // between the finished faces of its neighbours
	Solid    bool        // masonry: fixed anywhere with anchors
	Backing  []Backing   // left to right
	Keep     []geom.Rect // doors, openings, boxes: where no board may go
	Names    []string    // what each of Keep is: "door entry", "opening NAME", "window NAME", else a box
	Services []geom.Rect // cables and pipes that a screw could hit
	Ceiling  geom.Length // finished ceiling or structure, the highest a board can reach; zero when not known
}

// Row is one row of boards on a wall.
type Row struct {
	Name   string
	Index  int // in room.Boards
	Wall   int
	Box    geom.Rect // of the whole row
	Sheets []Sheet   // left to right; none when the row could not be placed
	Seams  []Seam    // both outer edges included
	Fixing []FixRow  // upright lines of screws, left to right
	Gap    geom.Length
	Bearer string // "studs", "masonry", or "unknown"
	At     finding.Place
}

// Sheet is one board as hung.
type Sheet struct {
	piece.Piece
	CutW, CutH bool // narrower or shorter than as bought
}

// Seam is an upright edge: between two sheets, or an end of the row.
type Seam struct {
	X       geom.Length // middle of the gap, or the edge at an end
	End     bool        // an end of the row, not a seam
	StudNo  int         // stud it falls on, 0 when none is numbered
	Borne   bool        // enough bearing on every side that has a sheet
	OnLeft  geom.Length // bearing of the sheet left of it
	OnRight geom.Length // bearing of the sheet right of it
}

// FixRow is one upright line of fixings.
type FixRow struct {
	X     geom.Length
	Edge  bool        // along a sheet edge, else in the field
	Sheet int         // index in Sheets
	Count int         // fixings in it
	Pitch geom.Length // greatest distance between two of them
}
