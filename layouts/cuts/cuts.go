// Package cuts says where the sections of a set are cut and what letter each
// has, so that plans, elevations and the sections themselves agree.
//
// In and out: a result in; cuts with letters from X on out: the headers of
// openings in the order of the walls, then the ceiling at its tightest place.
//
// Units and axes: plan axes of package geom. Errors: none.
package cuts

import (
	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/setout"
	"roomwright/layouts/marks"
)

// Kind is what a section shows.
type Kind int

// The kinds.
const (
	Header  Kind = iota // through the header of an opening
	Ceiling             // through the ceiling at its tightest place
)

// Cut is one section.
type Cut struct {
	Letter   string
	Kind     Kind
	Wall     int        // Header: index of the wall,
	Opening  int        // and of the opening in it
	From, To geom.Point // Ceiling: the line of the cut in plan
	AlongX   bool       // the line runs across the page
	Look     marks.Way  // the way one looks
}

// Of returns the sections of a room.
func Of(r setout.Result) []Cut {
	var out []Cut
	for i, w := range r.Walls {
		for k := range w.Openings {
			out = append(out, Cut{Letter: letter(len(out)), Kind: Header, Wall: i, Opening: k, Look: marks.LeftWay})
		}
	}
	if c, ok := tightest(r.Ceiling); ok {
		c.Letter = letter(len(out))
		out = append(out, c)
	}
	return out
}

// letter returns X, Y, Z, then XX, YY, ZZ and so on.
func letter(n int) string {
	s := ""
	for i := 0; i <= n/3; i++ {
		s += string(rune('X' + n%3))
	}
	return s
}

// tightest returns the cut through the light or obstacle with the least free
// height over or under it.
func tightest(c *ceiling.Ceiling) (Cut, bool) {
	if c == nil {
		return Cut{}, false
	}
	across := joistsUp(c) // a cut across the page meets joists that run up it
	type place struct {
		free   geom.Length
		box    geom.Rect
		alongX bool
	}
	var best *place
	try := func(p place) {
		if best == nil || p.free < best.free {
			best = &p
		}
	}
	for _, l := range c.Lights {
		p := place{free: l.Above, box: l.Box, alongX: across}
		for _, o := range c.Obstacles {
			if over := o.Underside - c.Face - l.Depth; o.Box.Overlaps(l.Box) && over <= p.free {
				p.alongX = o.Box.H() >= o.Box.W()
			}
		}
		try(p)
	}
	for _, o := range c.Obstacles {
		if o.Underside > 0 && o.Box.Overlaps(c.Outline.Bounds()) {
			try(place{free: o.Clear, box: o.Box, alongX: o.Box.H() >= o.Box.W()})
		}
	}
	if best == nil {
		try(place{free: c.Clear, box: middle(c.Outline.Bounds()), alongX: across})
	}
	return line(c, best.box, best.alongX), true
}

// joistsUp reports whether the joists run up the page.
func joistsUp(c *ceiling.Ceiling) bool {
	if len(c.Joists) == 0 {
		return true
	}
	j := c.Joists[0]
	return (j.To.Y - j.From.Y).Abs() > (j.To.X - j.From.X).Abs()
}

// middle returns a small box in the middle of a room.
func middle(room geom.Rect) geom.Rect {
	m := room.Mid()
	return geom.Rect{Min: m, Max: m}.Inset(-geom.Foot)
}

// line returns the cut through the middle of a box, reaching two and a half
// feet past it or to the wall.
func line(c *ceiling.Ceiling, box geom.Rect, alongX bool) Cut {
	room := c.Outline.Bounds()
	reach := 30 * geom.Inch
	stretch := func(s, whole geom.Span) geom.Span {
		s = geom.Span{From: s.From - reach, To: s.To + reach}.Overlap(whole)
		if s.From-whole.From < reach/2 {
			s.From = whole.From
		}
		if whole.To-s.To < reach/2 {
			s.To = whole.To
		}
		return s
	}
	if alongX {
		x, y := stretch(box.X(), room.X()), offLine(box.Y().Mid(), c.YLines, c.TeeFace)
		return Cut{Kind: Ceiling, From: geom.Pt(x.From, y), To: geom.Pt(x.To, y), AlongX: true, Look: marks.Up}
	}
	y, x := stretch(box.Y(), room.Y()), offLine(box.X().Mid(), c.XLines, c.TeeFace)
	return Cut{Kind: Ceiling, From: geom.Pt(x, y.From), To: geom.Pt(x, y.To), Look: marks.LeftWay}
}

// offLine moves a place off a tee line, so that the cut goes through panels.
func offLine(at geom.Length, lines []ceiling.TeeLine, face geom.Length) geom.Length {
	for _, l := range lines {
		if (at - l.At).Abs() < 2*face {
			return l.At - 4*face
		}
	}
	return at
}

// Inside returns the ends of a cut moved at least so far in from the edges of
// the room, for its marks.
func Inside(c Cut, room geom.Rect, by geom.Length) (from, to geom.Point) {
	in := room.Inset(by)
	clamp := func(p geom.Point) geom.Point {
		return geom.Pt(min(max(p.X, in.Min.X), in.Max.X), min(max(p.Y, in.Min.Y), in.Max.Y))
	}
	return clamp(c.From), clamp(c.To)
}
