package rules

import "roomwright/geom"

// Suspended ceilings: the parts as they are sold. Each figure is given for
// rooms in inches and for rooms in millimetres.
const (
	TeeFaceInches      = 15 * geom.Inch / 16
	TeeFaceMillimetres = 24 * geom.Millimetre
	TeeFaceSource      = "contractor's grid specification guide: 15/16 in or 24 mm is the standard face"

	TeeHeightInches      = 3 * geom.Inch / 2
	TeeHeightMillimetres = 38 * geom.Millimetre
	TeeHeightSource      = "from memory: main tees are 1-1/2 to 1-11/16 in, 32 to 43 mm high"

	MainStockInches      = 144 * geom.Inch
	MainStockMillimetres = 3600 * geom.Millimetre
	MainStockSource      = "US Navy builder training manual 14044, p. 5-16: main tees come in 12 ft lengths; 3600 mm is from memory"

	MainSlotInches       = 3 * geom.Inch // first slot from the factory end
	MainSlotMillimetres  = 50 * geom.Millimetre
	MainPitchInches      = 6 * geom.Inch // then every
	MainPitchMillimetres = 100 * geom.Millimetre
	MainSlotSource       = "from memory: slots every 6 in or 100 mm, the first at half of that"

	WallAngleLegInches      = 7 * geom.Inch / 8
	WallAngleLegMillimetres = 24 * geom.Millimetre
	WallAngleLegSource      = "home-improvement guides: legs of 7/8 to 15/16 in; 24 mm is from memory"

	WallAngleStockInches      = 120 * geom.Inch
	WallAngleStockMillimetres = 3000 * geom.Millimetre
	WallAngleStockSource      = "home-improvement guides: 10 ft lengths; US Navy builder training manual 14044: 12 ft; 3000 mm is from memory"

	PanelLessInches      = geom.Inch / 4 // a lay-in panel is this much less than its module
	PanelLessMillimetres = 5 * geom.Millimetre
	PanelLessSource      = "from memory: panels of 23-3/4 in and 595 mm for modules of 24 in and 600 mm; the same off a cut panel is common practice, no source"

	PanelBearingInches      = geom.Inch / 8 // of a panel pushed to one side
	PanelBearingMillimetres = 3 * geom.Millimetre
	BearingSource           = "contractor's grid specification guide: not every panel fits a narrow tee; half the face less the play is worked out for this project, the least is common practice, no source"

	CutAlikeInches      = geom.Inch / 8 // border pieces that differ by no more are cut to the least of them
	CutAlikeMillimetres = 2 * geom.Millimetre
	CutAlikeSource      = "common practice, no source: so much short still lies well on the wall angle"

	EdgeGapInches      = geom.Inch / 8 // tee end to wall face
	EdgeGapMillimetres = 3 * geom.Millimetre
	EdgeGapSource      = "common practice, no source"
)

// Suspended ceilings: where mains and hangers go.
const (
	MainSpacingInches      = 48 * geom.Inch
	MainSpacingMillimetres = 1200 * geom.Millimetre
	MainSpacingSource      = "home-improvement guides (48 in); European supplier's instructions under EN 13964:2004 Annex A (1200 mm)"

	MainsAcrossSource = "US Navy builder training manual 14044, pp. 5-16 to 5-19: main tees run square to the joists"

	HangerSpacingInches      = 48 * geom.Inch
	HangerSpacingMillimetres = 1200 * geom.Millimetre
	HangerSpacingSource      = "Daly City brochure on 1998 CBC Standard 25-2: hangers at most 48 in apart along a main tee"

	HangerFirstInches      = 48 * geom.Inch // first hanger from the wall, at most
	HangerFirstMillimetres = 1200 * geom.Millimetre
	HangerWarnInches       = 24 * geom.Inch // warned above this
	HangerWarnMillimetres  = 600 * geom.Millimetre
	HangerFirstSource      = "common practice, no source: the wall angle carries the end of the main tee"

	HangerEndInches      = 6 * geom.Inch // not nearer the end of a run than this, where there is a choice
	HangerEndMillimetres = 150 * geom.Millimetre
	HangerEndSource      = "US project specification, acoustical ceilings (compiled school specification)"

	HangerSpliceSource = "US Navy builder training manual 14044, p. 5-17: a hanger at each side of a splice"

	HangerTiesInches      = 12 * geom.Inch // added to the drop for both ties
	HangerTiesMillimetres = 300 * geom.Millimetre
	HangerTiesSource      = "common practice, no source"

	HangerPlumb       = 6 // a wire is out of plumb by at most one in this many
	HangerPlumbSource = "Daly City brochure on 1998 CBC Standard 25-2; Everett (WA) permit sheet on suspended ceilings: wires not more than 1 in 6 out of plumb"

	HangerClearInches      = geom.Inch // of a wire from a duct or a pipe
	HangerClearMillimetres = 25 * geom.Millimetre
	HangerTouchSource      = "Daly City brochure on 1998 CBC Standard 25-2: wires are never bent round or touched by ducts and pipes, a trapeze bridges them; the 1 in is common practice, no source"

	SpliceStaggerSource = "common practice, no source"
	MainReuseSource     = "home-improvement guides: no more than two runs from one main tee; the slot of a start piece is worked out for this project"
	MainStartSource     = "home-improvement guides: cut the first end so that a slot meets the first line of cross tees"
	SlotsLineSource     = "common practice, no source: the slots of all main tees line up, or cross tees run skew"
	CrossEndSource      = "US Navy builder training manual 14044, p. 5-19: no more than two border pieces from one cross tee"
)

// Suspended ceilings: set-out and the space above.
const (
	BorderSource      = "home-improvement guides and a US project specification: opposite borders equal, none under half a panel; US Navy builder training manual 14044, p. 5-19: equal, and as large as possible"
	BorderParity      = "worked out for this project from the border arithmetic b = (r + m)/2"
	OutOfSquareSource = "common practice, no source: the grid stays square to one wall; the narrowest and the widest place of each border are judged"

	ClearAboveInches      = 3 * geom.Inch // above the top of the tees
	ClearAboveMillimetres = 75 * geom.Millimetre
	ClearAboveSource      = "home-improvement guides: 3 in to tilt panels in; taken here above the top of the tees"

	TiltSource = "worked out for this project: a rigid panel turned and tilted through the opening between four tees"

	LowestSource = "home-improvement guides: the ceiling hangs below the lowest duct, beam or pipe, or the thing is boxed in"
)

// Lay-in light panels.
const (
	LightCellsSource  = "common practice, no source: a light takes whole modules, never a border or a cut cell"
	LightAcrossSource = "worked out for this project from ladder grids (European supplier's instructions under EN 13964:2004 Annex A; home-improvement guides): a long light fills one bay between two main tees"
	LightArrange      = "common practice, no source"

	LightOneWireGrams  = 4536  // 10 lb: up to here one wire
	LightTwoWiresBelow = 25401 // 56 lb: from here on the structure carries the light
	LightWireSource    = "Everett (WA) permit sheet on suspended ceilings and a California project note sheet (2016 CBC, ASCE 7-10): one wire up to 10 lb, two at opposite corners up to 56 lb, above that the structure carries the light"
	LightFastenSource  = "NEC 410.36(B): a light carried by the grid is fastened to it, and the grid to the structure; local electrical codes decide"
)

// SeismicAsk is what a seismic design category asks of a suspended ceiling: a
// list to take to the building department, never a design. The categories are
// none, A to F and unknown.
func SeismicAsk(category string) (ask, source string) {
	switch category {
	case "A", "B":
		return "category " + category + ": ASTM C636 for the installation; ask your building department whether anything more is wanted",
			"trade table of IBC categories, excerpt; ASTM C636 (abstract)"
	case "C":
		return "category C: ASTM C636 and E580 for category C; intermediate or heavy duty tees, wall angle leg 7/8 in at least, no side fixed to the wall angle, 3/8 in gap at all sides, tee ends tied against spreading; ask your building department",
			"trade table of IBC category C rules, excerpt; ASTM E580/E580M (scope)"
	case "D", "E", "F":
		return "category " + category + ": ASTM C636 and E580 for categories D to F; heavy duty tees, wall angle leg 2 in at least, two adjacent sides fixed and 3/4 in gap at the others, a wire within 8 in of every tee end, tee ends tied, splay wires above 1000 ft2; ask your building department",
			"trade table of IBC category D, E and F rules, excerpt; Anchorage handout A.04 citing ASCE 7-05 13.5.6.2.2; ASTM E580/E580M-09a (scope)"
	case "none":
		return "", ""
	}
	return "seismic design category not known: ask your building department for it, and what it asks of a suspended ceiling and its lights",
		"ASTM E580/E580M (scope); local codes decide"
}
