package framing

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/geom/room"
)

// Role is what a member does in the wall.
type Role int

// The roles, in the order in which they are marked.
const (
	BottomPlate Role = iota
	TopPlate
	Stud
	King
	Jack      // from the plate to the header
	LowerJack // split: from the plate to the rough sill
	UpperJack // split: from the rough sill to the header
	Sill
	HeaderPly
	HeaderFiller
	CrippleBelow
	CrippleAbove
	Cutout  // the middle of a stud between the two saw cuts, taken out
	Packing // fills a gap between a king and a stud beside it
	DoorHeader
)

// Member is one stick of the wall.
type Member struct {
	piece.Piece
	Role    Role
	Opening int // index of the opening it belongs to, -1 when none
	Depth   int // which of several that share a box, plies and fillers counted from the room side; 0 is nearest
	StudNo  int // number of the existing stud it is, or was cut from, counted from the left; 0 when none
}

// Wall is one wall set out.
type Wall struct {
	Name      string
	Index     int           // in room.Walls
	Make      room.Make     //
	Length    geom.Length   // corner to corner as taped
	Structure geom.Length   // finished floor to the structure
	PlateTop  geom.Length   // top of the bottom plates
	PlateLow  geom.Length   // underside of the lowest top plate
	Top       geom.Length   // top of the top plates
	Depth     geom.Length   // stud depth, the wall's core
	Members   []Member      // every stick; empty for a wall that is not framed
	Studs     []StudAt      // every upright as it meets the bottom plate, left to right
	Openings  []Opening     //
	Doors     []Hole        // existing doors and windows
	Services  []ServiceAt   // what is in the wall or on it
	Bearing   room.Answer   //
	At        finding.Place // of the wall
}

// StudAt is one upright where it stands on the bottom plate.
type StudAt struct {
	Left    geom.Length // left edge
	Thick   geom.Length
	State   piece.State // New for a new king or jack, Existing otherwise
	Role    Role        // Stud, King, Jack, LowerJack, CrippleBelow
	Cut     bool        // an existing stud that an opening cuts
	StudNo  int         // number among the studs as found, from the left; 0 for new ones
	Opening int         // the opening it serves, -1 when none
}

// Opening is one opening framed into the wall.
type Opening struct {
	Name      string
	Index     int         // in room.Openings
	Rough     geom.Rect   // the hole in the framing
	Clear     geom.Rect   // inside the liners; equal to Rough when there is no liner
	Sight     geom.Rect   // inside the stops; equal to Clear when there are none
	Header    geom.Rect   // the header as it sits
	Sill      geom.Rect   // the rough sill, all members; empty for a doorway
	Kings     geom.Span   // between the inner faces of the kings
	LeftKing  int         // index in Members
	RightKing int         // likewise; two openings side by side may share one
	UpperCut  geom.Length // height of the upper saw cut, zero when no stud is cut
	LowerCut  geom.Length // height of the lower saw cut
	LetIn     geom.Length // clearance to get the header in
	Cuts      []Cut
	Packs     []Pack
	Nails     []Joint
	FlatOK    bool // a flat member would be allowed over it
	At        finding.Place
}

// Cut is one stroke of the saw through an existing stud.
type Cut struct {
	StudNo int
	X      geom.Span
	Height geom.Length
	Upper  bool
}

// Pack is a gap between a king and the stud beside it that is to be packed.
type Pack struct {
	X      geom.Span
	StudNo int // 0 when it is the king of another opening
}

// Joint is one line of the nailing schedule.
type Joint struct {
	Where  string
	Nails  string
	Source string
}

// Hole is an existing door or window in the wall. Where its place is not known
// both rectangles are empty.
type Hole struct {
	Name   string
	Window bool
	Clear  geom.Rect // what one walks or looks through
	Rough  geom.Rect // its hole in the framing; equal to Clear when not known
	Thing  room.Existing
}

// ServiceAt is something in the wall or on it, where it was found.
type ServiceAt struct {
	What    string
	Box     geom.Rect // a line thing has no width; all the wall when its place is unknown
	Unknown bool
	OnFace  bool
	Note    string
}
