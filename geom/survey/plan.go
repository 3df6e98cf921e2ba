package survey

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// Plan is the room as the tape found it, with two outlines.
type Plan struct {
	Taped    geom.Polygon // corners between the faces the tape touched; corner i is the left end of wall i
	Rough    geom.Polygon // stud and masonry faces, where framing and anchors go
	Finished geom.Polygon // lining faces, from which ceilings and boards run
	Sides    []Side       // wall by wall, in the order of the room file
	Misfits  []Misfit     // each reading against what the others want
	Square   bool         // the corners are square, as stated or taken so for want of readings
}

// Side is one wall of the plan. LeftOff, Finished and RightOff add up to Taped
// exactly.
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

// Misfit is one reading, and what all the other readings together want it to
// be.
type Misfit struct {
	Reading   string // "A", "A/B to C/D"
	Read      geom.Length
	Wanted    geom.Length
	Unchecked bool // the others do not give it: Wanted is Read itself
	At        finding.Place
}

// By returns how far the reading is from what the others want, more than zero
// when it is too long.
func (m Misfit) By() geom.Length { return m.Read - m.Wanted }

// Longest is the longest reading that is taken, 100 m.
const Longest = 100 * geom.Metre

// Solve works out the corners of r from its readings, and its two outlines.
// The Plan is empty when there are errors among the findings.
func Solve(r *room.Room) (Plan, []finding.Finding) {
	if len(r.Walls) != 4 {
		return Plan{}, []finding.Finding{notFour(r)}
	}
	readings, found := gather(r)
	if finding.Errors(found) > 0 {
		return Plan{}, found
	}
	if bad := impossible(r, readings); len(bad) > 0 {
		return Plan{}, append(found, bad...)
	}
	s := solver{readings: readings, shape: shapeOf(r, readings)}
	got, ok := s.solve(-1)
	if !ok {
		return Plan{}, append(found, notFixed(r, readings))
	}
	checks := s.check()
	found = append(found, spreads(r, readings)...)
	found = append(found, doesNotClose(r, s, checks)...)
	if finding.Errors(found) > 0 {
		return Plan{}, found
	}
	plan := Plan{Taped: got.polygon(), Square: s.shape == rectangle, Misfits: misfits(checks)}
	if i := turnsLeft(plan.Taped); i >= 0 {
		return Plan{}, append(found, wrongTurn(r, i))
	}
	if bad := outlines(r, &plan); len(bad) > 0 {
		return Plan{}, append(found, bad...)
	}
	return plan, append(found, notes(r, s, checks, plan)...)
}
