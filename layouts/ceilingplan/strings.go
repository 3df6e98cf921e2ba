package ceilingplan

import (
	"fmt"
	"math"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/layouts/drawing"
)

// stringNote says on which walls the string marks of the plan go.
func (v *view) stringNote() string {
	s := v.r.Plan.Sides
	if !v.skewed() {
		return fmt.Sprintf("Strings: the figures at the top go on wall %s from corner %s and on wall %s from corner %s; those at the left on wall %s from corner %s and on wall %s from corner %s.",
			s[0].Wall, s[0].Start, s[2].Wall, s[2].End, s[3].Wall, s[3].End, s[1].Wall, s[1].Start)
	}
	return fmt.Sprintf("Strings: the room is out of square. The figures at the top are for wall %s alone, those at the left for wall %s; walls %s and %s have their own in the table of strings. The chains of borders hold at walls %s and %s.",
		s[0].Wall, s[3].Wall, s[2].Wall, s[1].Wall, s[2].Wall, s[1].Wall)
}

// skewed reports whether any string has a mark on the facing wall that prints
// another figure.
func (v *view) skewed() bool {
	for _, list := range [][]mark{v.across(), v.up()} {
		for _, m := range list {
			if v.show.Round(m.near) != v.show.Round(m.far) {
				return true
			}
		}
	}
	return false
}

// mark is where one tee line meets the two walls that face each other, each
// from its corner at the side of the first corner.
type mark struct {
	name      string
	near, far geom.Length
}

// across returns the marks of the lines that run up the page, on the walls at
// the top and at the bottom.
func (v *view) across() []mark {
	o := v.c.Outline
	return v.marks(v.c.XLines, "columns", func(at geom.Length) (geom.Length, geom.Length) {
		return along(o[0], o[1], at, true), along(o[3], o[2], at, true)
	})
}

// up returns the marks of the lines that run across the page, on the walls at
// the left and at the right.
func (v *view) up() []mark {
	o := v.c.Outline
	return v.marks(v.c.YLines, "rows", func(at geom.Length) (geom.Length, geom.Length) {
		return along(o[0], o[3], at, false), along(o[1], o[2], at, false)
	})
}

func (v *view) marks(lines []ceiling.TeeLine, what string, meet func(geom.Length) (geom.Length, geom.Length)) []mark {
	names := map[int]string{}
	for _, c := range v.c.Cells {
		letter, number := split(c.Name)
		if what == "rows" {
			names[c.Row] = letter
		} else {
			names[c.Col] = number
		}
	}
	var out []mark
	for i, l := range lines {
		m := mark{name: fmt.Sprintf("%s %s, %s", what, names[i], names[i+1])}
		m.near, m.far = meet(l.At)
		out = append(out, m)
	}
	return out
}

// along returns how far from a, along the wall from a to b, the tee line at a
// place across or up the page meets it.
func along(a, b geom.Point, at geom.Length, upright bool) geom.Length {
	whole := math.Hypot(float64(b.X-a.X), float64(b.Y-a.Y))
	part := float64(at-a.Y) / float64(b.Y-a.Y)
	if upright {
		part = float64(at-a.X) / float64(b.X-a.X)
	}
	return geom.Length(math.Round(float64(whole * part)))
}

// facing lists, in a room out of square, the string marks of the walls that
// have none on the plan.
func (v *view) facing() []drawing.Table {
	if !v.skewed() {
		return nil
	}
	s := v.r.Plan.Sides
	t := drawing.Table{
		Heading: "Strings",
		Columns: []drawing.Column{
			{Heading: "tee line between"}, {Heading: "on wall"}, {Heading: "from corner"}, {Heading: "mark", Right: true, Bold: true},
		},
	}
	for _, m := range v.across() {
		t.Rows = append(t.Rows, []string{m.name, s[2].Wall, s[2].End, v.show.Figure(m.far)})
	}
	for _, m := range v.up() {
		t.Rows = append(t.Rows, []string{m.name, s[1].Wall, s[1].Start, v.show.Figure(m.far)})
	}
	return []drawing.Table{t}
}
