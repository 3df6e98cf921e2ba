package rules

import "roomwright/geom"

// Bounds beyond which a figure is a slip of the pen (common practice, no source).
const (
	// TimberWidest is wider than any stick of the tables: 16 in nominal is 15-1/4.
	TimberWidest = 24 * geom.Inch
	// ClosestCentres is closer than any joists or studs are set: 8 in at the least.
	ClosestCentres = 4 * geom.Inch
)
