package rules

import "roomwright/geom"

// Boards: what a sheet's edge must bear on.
const (
	// BoardBearing is the least bearing of a sheet's edge on a stud: a fixing
	// stands at least this far from the edge.
	BoardBearing       = 3 * geom.Inch / 8
	BoardBearingSource = "city residential construction guide, drywall page: fixings at least 3/8 in from edges and ends"

	// BoardDriftSource is where the fall of the bearing from seam to seam comes from.
	BoardDriftSource = "worked example computed for this project, seams of sheets with a gap, from stud layout at 16 in (US Navy builder training manual 14044)"
)

// Boards: how they are fixed.
const (
	BoardEdgePitch   = 6 * geom.Inch  // fixings along the upright edges of a sheet
	BoardFieldPitch  = 12 * geom.Inch // fixings along the uprights between
	BoardPitchSource = "Ontario code note on hardboard cladding (exterior hardboard); interior use is common practice, no source"

	BoardAnchorEdge   = geom.Inch      // anchors in masonry from the edge of a sheet
	BoardAnchorPitch  = 16 * geom.Inch // greatest distance between upright lines of anchors
	BoardAnchorSource = "common practice, no source"
)

// Boards: gaps and least sizes.
const (
	BoardGap       = geom.Inch / 16 // between two sheets
	BoardGapSource = "from memory: 1/16 in between thin sheets indoors"

	BoardHeadGap       = geom.Inch / 4 // over a sheet that runs the full height
	BoardHeadGapSource = "home-improvement guide to wall panels; US Navy builder training manual 14044: about 1/4 in clear at the top and at the bottom"

	BoardLeastStrip       = 4 * geom.Inch // narrowest strip of a sheet that is hung
	BoardLeastStripSource = "common practice, no source"

	BoardThin       = 3 * geom.Inch / 8 // from this thickness on a sheet may go straight on studs
	BoardThinSource = "US Navy builder training manual 14044: 1/4 in panels want a backing, 3/8 in may go straight on studs"
)

// Boards: heights at which they hang.
const (
	BoardCentreLow    = 54 * geom.Inch // centres at which institutions hang writing boards
	BoardCentreHigh   = 60 * geom.Inch
	BoardCentreSource = "writing-board supplier's note on mounting heights"

	ReachLow    = 15 * geom.Inch // reach over clear floor, operable parts only
	ReachHigh   = 48 * geom.Inch
	ReachSource = "2010 ADA Standards 308.2, reprint"
)

// Boards: handling.
const (
	BoardTwoPersonArea   = 1200 * geom.Millimetre * 2400 * geom.Millimetre // a sheet of 4 x 8 ft or of 1200 x 2400 mm is a two-person lift
	BoardTwoPersonSource = "common practice, no source"
)
