package ceilingplan

import (
	"math"
	"slices"

	"roomwright/geom"
	"roomwright/layouts/dimension"
)

// stringMarks is what is pencilled along one wall: how far each tee line is from the
// corner where the tape is hooked, along the finished face.
type stringMarks struct {
	corner string // where the tape is hooked
	wall   string
	datum  geom.Length   // that corner's place along the page
	length geom.Length   // of the wall
	tees   []geom.Length // from the corner, ascending
}

// stringAt returns the marks along a wall: 0 the one at the top of the page, then
// clockwise. Tapes are hooked at the left of the page and at its top.
func (v *view) stringAt(wall int) stringMarks {
	side := v.r.Plan.Sides[wall]
	from, to := v.c.Outline[wall], v.c.Outline[(wall+1)%4]
	corner := side.Start
	if wall >= 2 { // these run to the left and up
		from, to, corner = to, from, side.End
	}
	s := stringMarks{corner: corner, wall: side.Wall, length: side.Finished, datum: from.X}
	lines, at, way := v.c.XLines, from.X, to.X-from.X
	if wall%2 == 1 {
		lines, at, way, s.datum = v.c.YLines, from.Y, to.Y-from.Y, from.Y
	}
	for _, l := range lines {
		// Along a wall out of square the tape runs a little farther.
		part := float64(l.At-at) / float64(way)
		s.tees = append(s.tees, geom.Length(math.Round(float64(part*float64(s.length)))))
	}
	if way.Abs() == s.length { // square: the figures are exact
		for i, l := range lines {
			s.tees[i] = (l.At - at).Abs()
		}
	}
	slices.Sort(s.tees)
	return s
}

// marks returns what is marked on the strip: the corners, and every tee in bold;
// way is 1 where the strip runs to the right and -1 where it runs down.
func (s stringMarks) marks(way geom.Length) []dimension.StickMark {
	out := []dimension.StickMark{{At: s.datum, Plain: true}}
	for _, t := range s.tees {
		out = append(out, dimension.StickMark{At: s.datum + way*t, Bold: true, Plain: true})
	}
	return append(out, dimension.StickMark{At: s.datum + way*s.length, Plain: true})
}

// stops returns the corners and the tees along the page, ascending.
func (s stringMarks) stops(way geom.Length) []geom.Length {
	out := []geom.Length{s.datum, s.datum + way*s.length}
	for _, t := range s.tees {
		out = append(out, s.datum+way*t)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// figures returns the figures of the tees as they are printed.
func (v *view) figures(s stringMarks) []string {
	var out []string
	for _, t := range s.tees {
		out = append(out, v.show.Figure(t))
	}
	return out
}
