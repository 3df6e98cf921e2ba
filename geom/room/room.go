package room

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
)

// Room is one room: what is there, and what is wanted in it.
type Room struct {
	Title     string
	Place     string // where it is: "ground floor"
	DrawnBy   string
	CheckedBy string
	Number    string
	Revision  string
	Date      string // as written, 2026-03-14
	Built     int    // year of the building, 0 when not known
	PaidWork  Answer
	Units     measure.System
	Show      measure.Show
	Survey    Survey
	Walls     []Wall
	Above     Above
	Openings  []Opening
	Boards    []Board
	Ceiling   *Ceiling
	Lights    []Light
	Drawing   Drawing
	Notes     []string // the `note` of the file itself
}

// Wall returns the index of the wall called name, or -1.
func (r *Room) Wall(name string) int {
	for i := range r.Walls {
		if r.Walls[i].Name == name {
			return i
		}
	}
	return -1
}

// CornerName returns the name of the corner at the left end of wall i, such as "D/A".
func (r *Room) CornerName(i int) string {
	n := len(r.Walls)
	return r.Walls[(i+n-1)%n].Name + "/" + r.Walls[i].Name
}

// Survey is what was taped besides the walls, and how far the tape is trusted.
type Survey struct {
	Readings     []Diagonal
	Square       bool        // "corners: square"
	TapeReadsTo  geom.Length // accuracy of a plain reading
	AboutMeans   geom.Length // accuracy of an "about" reading
	ClosesWithin geom.Length // the greatest misfit that is accepted
	At           finding.Place
}

// Diagonal is a reading from corner to corner. A corner is the index of the
// wall whose left end it is.
type Diagonal struct {
	From, To int
	Reading  Reading
	At       finding.Place // of the key
}

// Face is a face of a wall that a tape can touch.
type Face int

// The faces.
const (
	FaceNotSaid Face = iota
	FaceStuds
	FaceLining
	FaceMasonry
	FaceUnknown // answered unknown: taken as the face there now
)

// Make is what a wall is made of.
type Make string

// The makes.
const (
	MakeNotSaid Make = ""
	Studs       Make = "studs"
	NewStuds    Make = "new studs"
	Block       Make = "block"
	Brick       Make = "brick"
	Stone       Make = "stone"
	Concrete    Make = "concrete"
	Masonry     Make = "masonry"
	MakeUnknown Make = "unknown"
)

// Framed reports whether the make is studs, there now or to be built.
func (m Make) Framed() bool { return m == Studs || m == NewStuds }

// Solid reports whether the make is some masonry.
func (m Make) Solid() bool { return m != MakeNotSaid && m != MakeUnknown && !m.Framed() }

// Wall is one wall; walls are listed clockwise as seen from above.
type Wall struct {
	Name      string
	Length    Reading // corner to corner between the faces touched
	TapeOn    Face
	MadeOf    Make
	Structure Reading // floor up to the underside of what is overhead
	Inside    Material
	Outside   Material
	Services  []Service
	Doors     []Existing
	Windows   []Existing
	Frame     Frame
	Note      string
	At        finding.Place
}

// Service is something in a wall or on it.
type Service struct {
	What   string // cable, box, switch, outlet, pipe, gas, duct, blocking, heater, post, other
	OnFace bool   // listed under `on wall`
	Across Across
	Up     Up
	Size   Size
	Note   string
	At     finding.Place
}

// Existing is a door or window that is there.
type Existing struct {
	Name   string
	Window bool
	Kind   SizeKind // Rough, Clear or Leaf
	Size   Size
	Across Across
	Bottom Reading // zero for doors unless written
	Hinge  End
	Hinged bool // hinge side was given
	OpensIn,
	OpensOut bool
	Casing geom.Length
	Note   string
	At     finding.Place
}

// SizeKind says which size of an opening was given.
type SizeKind int

// The sizes.
const (
	Rough      SizeKind = iota // the hole in the framing
	Clear                      // inside the liners
	Sight                      // inside the stops
	PaneInHand                 // a sheet that is owned and not to be cut
	Leaf                       // a door leaf
)

// Frame is how a stud wall is framed.
type Frame struct {
	Stud         Timber
	Bearing      Answer
	BearingBy    string
	BearingAt    finding.Place
	OtherDuty    []string // "none" alone, or any of braced, fire-rated, party, exterior; nil when not said
	BottomPlates int
	TopPlates    int
	StudLength   Reading // between plates
	Studs        StudPlan
	At           finding.Place
}

// StudPlan is where the studs of a wall are: at a spacing, or each as found.
type StudPlan struct {
	Given   bool
	Unknown bool
	Spacing geom.Length   // more than zero: at a spacing
	From    End           // the end from which the spacing or the marks run
	First   geom.Length   // first centre, when at a spacing
	Edge    Edge          // which edge the marks are: LeftEdge, RightEdge or Centre
	Marks   []geom.Length // each stud as found, running from From
	At      finding.Place
}

// Above is the structure overhead and what hangs below it.
type Above struct {
	Joists   *Joists
	InTheWay []Obstacle
}

// Joists are the joists overhead.
type Joists struct {
	Size    Timber
	RunFrom int         // joists run square to this wall,
	RunTo   int         // towards this one
	Spacing geom.Length // on centre; zero when each centre is given
	From    int         // the wall that the centres are measured off
	First   geom.Length // first centre off it
	Centres []geom.Length
	Unknown bool // places answered unknown
	At      finding.Place
}

// Obstacle is a thing that hangs below the structure.
type Obstacle struct {
	What   string // beam, duct, pipe, valve, box, other
	Spans  []PlanSpan
	Below  Reading // lowest point below the structure, or
	FromUp Reading // its underside from the floor
	Access bool
	Note   string
	At     finding.Place
}

// PlanSpan is both edges of a thing, square off the face of a wall.
type PlanSpan struct {
	Wall     int
	From, To geom.Length
	About    bool
	At       finding.Place
}

// Opening is an opening wanted in a stud wall.
type Opening struct {
	Name     string
	Wall     int
	Kind     SizeKind
	Size     Size
	Across   Across
	Up       Up
	Header   Header
	Jacks    int  // a side
	Split    bool // jacks split at the sill: the sill runs king to king
	Sill     int  // rough sill members
	Liner    Want // thickness of the boards lining it
	LinerRun string
	Shims    Want
	Casing   Casing
	Stops    Want
	Glazing  Glazing
	Note     string
	At       finding.Place
}

// Header is the built-up header of an opening.
type Header struct {
	Plies  int
	Timber Timber
	Flat   bool // a flat member laid over the jacks
	Filler geom.Length
	LetIn  Want
	At     finding.Place
}

// Casing is the trim round an opening.
type Casing struct {
	Width           Want
	Reveal          Want
	Inside, Outside bool
}

// Glazing is the sheet in an opening.
type Glazing struct {
	Sheet Material
	Given bool
}

// Board is a row of full or cut sheets fixed on a wall.
type Board struct {
	Name   string
	Wall   int
	Count  int
	Size   Size // each as bought, width x height as hung
	Sheet  Material
	Across Across
	Up     Up
	CutTo  Want
	Gap    Want
	Note   string
	At     finding.Place
}

// Ceiling is the suspended ceiling wanted.
type Ceiling struct {
	FaceFromFloor      Want
	FaceBelowStructure Want
	Clear              Want   // least free height above the tees
	Seismic            string // none, A to F, unknown
	Grid               Grid
	Mains              Mains
	HangerSpacing      Want
	HangerFirst        Want
	EdgeGap            Want
	Angle              Want
	Panel              Panel
	Note               string
	At                 finding.Place
}

// Grid is the module of the ceiling and how it is set out.
type Grid struct {
	Module    Size
	Follow    int // wall the grid is parallel to, -1: the longest
	Lines     []GridLine
	Least     Want // least border, wall face to tee centre; zero value: half a module if it fits
	TeeFace   Want
	TeeHeight Want
	At        finding.Place
}

// GridLine is a tee's centre line asked for, off a wall.
type GridLine struct {
	Wall  int
	Value Want
}

// Mains are the main tees.
type Mains struct {
	Along   int // wall they run along, -1: across the joists
	Line    []GridLine
	Spacing Want
	Stock   Want
	Slot    Want // first slot from the factory end
	Pitch   Want // then every
	Duty    string
	At      finding.Place
}

// Panel is the lay-in panel.
type Panel struct {
	Thick   Want
	Unknown bool
	Size    Size // true size
	Weight  AreaMass
}

// AreaMass is a weight per area, in grams per square metre.
type AreaMass struct {
	GramsPerM2 int64
	Text       string
	At         finding.Place
}

// Light is a kind of light panel and where it is wanted.
type Light struct {
	Name    string
	Size    Size // module size
	Count   int
	Cells   []CellName
	Centre  []GridLine // a centre off one wall or two
	Arrange string     // "evenly", "symmetrical"
	Depth   Reading    // panel face to its highest part
	Thick   Reading
	Weight  Mass
	Note    string
	At      finding.Place
}

// CellName is a cell of the grid as written: row letters and column number.
type CellName struct {
	Name string
	At   finding.Place
}

// Drawing is what the sheets are to be.
type Drawing struct {
	Paper    string // letter, tabloid, A4, A3
	Portrait bool
	Scale    int64 // 24 for 1:24; zero: the largest that fits
	LeaveOut []string
}
