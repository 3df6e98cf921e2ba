package rules

import "roomwright/geom"

// Framing: headers where the wall carries nothing but itself.
const (
	FlatHeaderWidest = 96 * geom.Inch // widest opening that may have a single flat member over it
	FlatHeaderRise   = 24 * geom.Inch // greatest height from its top to the lowest top plate
	FlatHeaderSource = "IRC R602.7.4 in public transcriptions (R602.7.2 in the 2000 and 2003 editions); the 24 in are taken from the top of the flat member to the underside of the lowest top plate, a reading of the text"
)

// Framing: jacks and what a header bears on.
const (
	OneJackWidest = 72 * geom.Inch // widest rough opening with one jack at each side
	OneJackSource = "older state residential code 602.6.3 as quoted in a county code-defect sheet; recent editions of the IRC read the number of jacks from Tables R602.7(1) and (2)"

	HeaderBearing       = 3 * geom.Inch / 2 // at each end
	HeaderBearingSource = "IRC R602.7 as summarised on an inspection site"
)

// Framing: built-up headers.
const (
	HeaderMisfit       = geom.Inch / 16 // between a header's thickness and the depth of its studs
	HeaderMisfitSource = "worked example computed for this project, from the APA PS 1 thickness table (15/32 and 1/2 plywood) and dressed sizes of DOC PS 20"
)

// Framing: openings cut into walls that stand.
const (
	PackFrom   = geom.Inch / 8     // narrower gaps close when the sticks are nailed together
	PackUpTo   = 7 * geom.Inch / 2 // wider gaps are a bay
	PackSource = "home-improvement framing guide on cutting existing studs: pack a gap with one 2x or with plywood; up to what gap is common practice, no source"

	StubsSource = "home-improvement framing guide on cutting existing studs: two saw lines, the stubs stay as cripples"
	AsFound     = "common practice, no source: record each stud where it stands, do not take it at a spacing"
)

// Framing: how much is let be.
const (
	PlateGap = geom.Inch / 2 // between the top plates and the structure
	DoubleUp = geom.Inch / 8 // overlap of two studs as taped that is a slip of the tape

	PaneGapInches      = geom.Inch / 8 // all the clearance of a sheet that is owned, when lengths are in inches
	PaneGapMillimetres = 3 * geom.Millimetre
)
