package rules

import "roomwright/geom"

// The survey, where the room file does not say: how far the tape is trusted.
const (
	TapeReadsToInches      = geom.Inch / 16 // accuracy of a plain reading
	TapeReadsToMillimetres = geom.Millimetre

	AboutMeansInches      = geom.Inch // accuracy of a reading written with about
	AboutMeansMillimetres = 25 * geom.Millimetre

	ClosesWithinInches      = geom.Inch / 2 // greatest misfit accepted
	ClosesWithinMillimetres = 12 * geom.Millimetre
)

// Stud walls, where the room file does not say.
const (
	BottomPlates = 1
	TopPlates    = 2

	TopPlatesNew       = 1 // of a new wall that carries nothing but itself
	TopPlatesNewSource = "IRC R602.5: a single top plate is allowed in an interior wall that carries nothing but itself"

	FirstCentreSource = "US Navy builder training manual 14044: near edge of the first stud at 15-1/4 for 16 in, so that its centre stands at the spacing"
)

// Openings, where the room file does not say.
const (
	JacksASide       = 1
	JacksASideSource = OneJackSource

	SillMembers = 1

	LetInInches      = geom.Inch / 8 // clearance to get a header in
	LetInMillimetres = 3 * geom.Millimetre

	LinerInches      = 3 * geom.Inch / 4 // thickness of the boards lining an opening
	LinerMillimetres = 18 * geom.Millimetre

	ShimsInches      = geom.Inch / 4 // gap each side of the liner
	ShimsMillimetres = 6 * geom.Millimetre
	ShimsSource      = "home-improvement framing guide: 1/2 in over the jamb box each way, 1/4 in a side; 6 mm is common practice, no source"

	CasingInches      = 9 * geom.Inch / 4 // width of the casing
	CasingMillimetres = 57 * geom.Millimetre

	RevealInches      = 3 * geom.Inch / 16 // casing back from the edge of the liner
	RevealMillimetres = 5 * geom.Millimetre
	RevealSource      = "home-improvement guides to trim: a reveal of 3/16 to 1/4 in, 3/16 in is usual; 5 mm is common practice, no source"

	StopsInches      = 3 * geom.Inch / 4 // width of the stops
	StopsMillimetres = 18 * geom.Millimetre
)

// Boards, where the room file does not say; in inches BoardGap.
const BoardGapMillimetres = 2 * geom.Millimetre
