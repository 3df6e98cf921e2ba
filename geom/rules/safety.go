package rules

import "roomwright/geom"

// Habit marks a trade fact that no source was found for.
const Habit = "common practice, no source"

// Cables and pipes in a wall.
const (
	CableSetBack       = 5 * geom.Inch / 4 // a hole stands at least this far back from the edge of a stud
	CableSetBackSource = "NEC 300.4(A)(1), quoted in trade articles"
	BoxSetBack         = geom.Inch / 4 // of a box behind a finished face that does not burn
	BoxTaken           = geom.Inch     // kept clear each way of the middle of a box whose size is not given; common practice, no source
	BoxSetBackSource   = "NEC 314.20 (2008 wording), quoted in a trade forum"
)

// Walls that may carry load or have other duties.
const (
	BearingSignsSource   = "three general guides to load-bearing walls"
	BearingShoringSource = "home-addition guide on window openings; that a wall is presumed to carry load is common practice, no source"
)

// Old buildings.
const (
	LeadYear       = 1978 // built before: lead paint is presumed
	LeadSquareFeet = 6    // disturbed in a room before the rule binds paid work
	LeadSource     = "US EPA renovation rule, 40 CFR 745.83, as answered by the US EPA"

	AsbestosYear   = 1986 // sprayed textures were restricted in 1978 and used up into the middle of the 1980s
	AsbestosSource = "general articles on asbestos ceilings; the list of materials is from memory"
)

// Safety glazing of windows, IRC R308.4.3: hazardous only when all four hold.
const (
	GlazingSquareFeet    = 9              // more exposed area than this in one pane
	GlazingBottomBelow   = 18 * geom.Inch // bottom edge less than this above the floor
	GlazingTopAbove      = 36 * geom.Inch // top edge more than this above the floor
	GlazingWalkingWithin = 36 * geom.Inch // walking surface nearer than this, level
	GlazingSource        = "IRC R308.4.3 (2015), reprint; IBC 2406.4.3"
)

// Safety glazing beside doors, IRC R308.4.2.
const (
	GlazingDoorWithin = 24 * geom.Inch // of the door, in the plane of the closed door
	GlazingDoorBelow  = 60 * geom.Inch // bottom edge less than this above the floor
	GlazingDoorSource = "IRC R308.4.2 (2015), reprint"
)

// Standards that safety glazing is marked to.
const (
	GlazingMarkSource = "summaries of CPSC 16 CFR 1201 and ANSI Z97.1"
)

// Ladders and work overhead.
const (
	LadderOutPerUp = 4             // one out for so many up
	LadderPast     = 3 * geom.Foot // past a landing
	LadderSource   = "OSHA training outline on 29 CFR 1926.1053; the top step is from memory"

	OverheadSource = "from memory: a 4 x 8 ft sheet of 1/2 in gypsum weighs about 51 to 64 lb"
)

// Headroom.
const (
	HeadroomRoom   = 7 * geom.Foot             // of a habitable room
	HeadroomOther  = 6*geom.Foot + 8*geom.Inch // of baths, laundries, basements nobody lives in
	HeadroomSource = "secondary pages on IRC R305.1; local code rules"
)
