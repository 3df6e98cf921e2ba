package setout

import (
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/framing"
	"roomwright/geom/lining"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// Result is everything that was computed for one room. Drawings, lists and
// checks read this one value.
type Result struct {
	Room     *room.Room
	Plan     survey.Plan
	Walls    []framing.Wall // one for each wall of the room, in its order
	Boards   []lining.Row
	Ceiling  *ceiling.Ceiling // nil when none is wanted
	Findings []finding.Finding
	Pieces   []piece.Piece // of all trades
}
