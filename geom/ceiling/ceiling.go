package ceiling

import (
	"roomwright/geom"
	"roomwright/geom/piece"
)

// Ceiling is the suspended ceiling set out.
type Ceiling struct {
	Face        geom.Length // finished face above the finished floor
	Structure   geom.Length // lowest underside of the structure
	TeeFace     geom.Length
	TeeHeight   geom.Length
	ModuleX     geom.Length  // module across the page
	ModuleY     geom.Length  // module up the page
	Outline     geom.Polygon // finished faces, where the wall angle goes
	MainsAlongX bool         // main tees run across the page
	MainStock   geom.Length  // length of a main tee as bought
	MainSticks  int          // how many of them the runs take
	XLines      []TeeLine    // tee lines that run up the page, by x, left to right
	YLines      []TeeLine    // tee lines that run across the page, by y, top of the page first
	Mains       []Main
	Crosses     []Cross
	Angles      []Angle
	Cells       []Cell // row by row from the top, left to right
	Lights      []Light
	Hangers     []Hanger // of all mains, then extra wires of lights
	Joists      []Joist
	Obstacles   []Obstacle
	Strategy    []Choice // the set-out chosen, then the runner-up
	Panels      Count    // whole, cut and under lights
	PanelThick  geom.Length
	Clear       geom.Length   // least free height above the tees anywhere in the room
	TiltFlat    geom.Length   // free height above the tees that a rigid lay-in panel needs to be tilted in
	Pieces      []piece.Piece // every tee, angle and panel
}

// TeeLine is a line of tee centres.
type TeeLine struct {
	At       geom.Length // x of an XLine, y of a YLine
	FromWall geom.Length // distance from the datum wall: from the left wall for x, from the first wall for y
	Main     bool
}

// Main is one run of main tee, wall to wall.
type Main struct {
	Mark     piece.Mark
	From, To geom.Point // centre line, wall face to wall face
	Sticks   []Stick
	Splices  []geom.Point
	StartCut geom.Length // cut off the factory end at From, so that a slot meets the first cross line; what an offcut lacks already is counted in
}

// Stick is one length of main tee in a run.
type Stick struct {
	Mark     piece.Mark
	From, To geom.Length // along the run from its start, less the gap at the walls
	Length   geom.Length
	Stock    int // the stock length it is cut from, numbered from 1 over all runs
}

// Cross is one cross tee.
type Cross struct {
	Mark     piece.Mark
	From, To geom.Point
	Length   geom.Length // as cut; the stock length when whole
	Stock    geom.Length // what it is cut from
	Whole    bool
	Cuts     int // ends cut at a wall: 0, 1 or 2
}

// Angle is the wall angle along one wall.
type Angle struct {
	Mark     piece.Mark
	Wall     string
	From, To geom.Point
	Length   geom.Length
}

// CellKind tells the cells of the grid apart.
type CellKind int

// The kinds.
const (
	Whole  CellKind = iota // a full module
	Border                 // cut on one side
	Corner                 // cut on two sides
)

// Cell is one cell of the grid.
type Cell struct {
	Name     string       // "Q2": row, then column
	Row, Col int          // counted from 0
	Shape    geom.Polygon // between tee centres and wall faces, clockwise from the top left
	Kind     CellKind
	CutW     geom.Length // panel to cut, across the page, at its widest; the panel's own size when whole
	CutH     geom.Length // panel to cut, up the page, at its longest
	Skew     bool        // not a rectangle: its opposite sides differ by more than the printed step
	Light    int         // index in Lights, -1 when none
	Mark     piece.Mark  // of the panel in it, empty under a light
}

// Light is one light panel in its cells.
type Light struct {
	Mark  piece.Mark
	Name  string
	Index int      // in room.Lights
	Cells []string // names of the cells it fills
	Box   geom.Rect
	Depth geom.Length // panel face to its highest part
	Above geom.Length // free height over its highest part
	Under string      // what is lowest over it: "joists", "duct"
	Grams int64       // zero when not known
	Wires int         // extra wires to the structure
}

// Hanger is one wire.
type Hanger struct {
	At     geom.Point
	Main   piece.Mark // empty for the wire of a light
	Light  piece.Mark
	Joist  int // index in Joists, -1 when it hangs from none
	Drop   geom.Length
	Wire   geom.Length // length to cut, ties included
	Splice bool        // put in for a splice
}

// Joist is one joist overhead.
type Joist struct {
	From, To geom.Point // centre line, wall face to wall face
	Thick    geom.Length
	Deep     geom.Length
}

// Obstacle is a thing below the structure.
type Obstacle struct {
	What      string
	Box       geom.Rect
	Underside geom.Length // from the finished floor
	Access    bool
	Clear     geom.Length // from the top of the tees to its underside
	Note      string
}

// Choice is one set-out of the grid with the figures of its aims.
type Choice struct {
	LeftBorder, RightBorder geom.Length
	TopBorder, BottomBorder geom.Length
	LeastBorder             geom.Length
	CutPanels               int
	Why                     string
}

// Count is how many panels of each kind there are.
type Count struct {
	Whole, Cut, Lit int
}
