package survey

import (
	"roomwright/geom"
	"roomwright/geom/finding"
)

// Plan is the room as the tape found it, with two outlines.
type Plan struct {
	Taped    geom.Polygon // corners between the faces the tape touched; corner i is the left end of wall i
	Rough    geom.Polygon // stud and masonry faces, where framing and anchors go
	Finished geom.Polygon // lining faces, from which ceilings and boards run
	Sides    []Side       // wall by wall, in the order of the room file
	Misfits  []Misfit     // each reading against what all of them together want
}

// Side is one wall of the plan.
type Side struct {
	Wall      string
	Start     string      // name of the corner at its left end, such as "D/A"
	End       string      // name of the corner at its right end
	Taped     geom.Length // corner to corner as taped and agreed by the survey
	Finished  geom.Length // corner to corner between finished faces
	LeftOff   geom.Length // from the corner as taped to the finished corner at the left end, more than zero inwards
	RightOff  geom.Length // likewise at the right end
	Structure geom.Length // finished floor to the structure overhead; zero when not known
}

// Misfit is one reading, and what all the readings together want it to be.
type Misfit struct {
	Reading string // "A", "A/B to C/D"
	Read    geom.Length
	Wanted  geom.Length
	At      finding.Place
}
