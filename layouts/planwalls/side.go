package planwalls

import (
	"math"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/geom/setout"
	"roomwright/layouts/dimension"
	"roomwright/layouts/paper"
)

// Side is one wall as it lies in plan.
type Side struct {
	Wall     framing.Wall
	Outer    geom.Length    // how far the far face lies outside the taped line
	Core     geom.Span      // the studs, measured outwards from the taped line
	Length   geom.Length    // corner to corner as taped
	Page     dimension.Side // side of the page the wall is on
	Solid    bool           // drawn as a band of one width on paper: its thickness is not known
	Bare     bool           // a stud wall whose studs are not known: a band without hatch
	Finished geom.Length    // how far the finished face lies inside the taped line
	Linings  []geom.Span    // layers of lining, outwards from the taped line
	from     geom.Point     // left corner as taped
	ux, uy   float64        // unit vector along the wall
}

// bandMM is the printed width of a wall whose thickness is not known.
const bandMM = 4.2

// Sides returns the walls of the room in plan.
func Sides(r setout.Result, s paper.Scale) []Side {
	out := make([]Side, len(r.Walls))
	n := len(r.Plan.Taped)
	for i, w := range r.Walls {
		a, b := r.Plan.Taped[i], r.Plan.Taped[(i+1)%n]
		dx, dy := float64(b.X-a.X), float64(b.Y-a.Y)
		l := math.Hypot(dx, dy)
		d := Side{Wall: w, from: a, ux: dx / l, uy: dy / l, Length: w.Length}
		d.Finished = away(r.Plan.Taped[i], r.Plan.Finished[i], d)
		rough := -away(r.Plan.Taped[i], r.Plan.Rough[i], d)
		switch {
		case w.Make.Framed() && w.Depth > 0:
			d.Core = geom.Span{From: rough, To: rough + w.Depth}
			d.Outer = d.Core.To + r.Room.Walls[i].Outside.Thick
		default:
			d.Solid, d.Bare = true, w.Make.Framed()
			d.Outer = s.Real(paper.MM(bandMM))
		}
		if !d.Solid && d.Core.From > -d.Finished {
			d.Linings = append(d.Linings, geom.Span{From: -d.Finished, To: d.Core.From})
		}
		if !d.Solid && d.Outer > d.Core.To {
			d.Linings = append(d.Linings, geom.Span{From: d.Core.To, To: d.Outer})
		}
		switch {
		case math.Abs(dx) >= math.Abs(dy) && dx > 0:
			d.Page = dimension.Above
		case math.Abs(dx) >= math.Abs(dy):
			d.Page = dimension.Below
		case dy < 0:
			d.Page = dimension.RightOf
		default:
			d.Page = dimension.LeftOf
		}
		out[i] = d
	}
	return out
}

// away returns how far q lies on the room's side of the line of d through p.
func away(p, q geom.Point, d Side) geom.Length {
	x, y := float64(q.X-p.X), float64(q.Y-p.Y)
	// The room is on the right hand as one walks along the wall.
	return geom.Length(math.Round(float64(x*d.uy) - float64(y*d.ux)))
}

// At returns the point x along the wall and out from its taped line.
func (d Side) At(x, out geom.Length) geom.Point {
	return geom.Pt(
		d.from.X+geom.Length(math.Round(float64(float64(x)*d.ux)-float64(float64(out)*d.uy))),
		d.from.Y+geom.Length(math.Round(float64(float64(x)*d.uy)+float64(float64(out)*d.ux))),
	)
}

// Box returns the four corners of a part of the wall.
func (d Side) Box(x geom.Span, out geom.Span) []geom.Point {
	return []geom.Point{d.At(x.From, out.To), d.At(x.To, out.To), d.At(x.To, out.From), d.At(x.From, out.From)}
}

// Along returns x as a position along the page: the left corner's place, then
// true lengths along the wall.
func (d Side) Along(x geom.Length) geom.Length {
	switch d.Page {
	case dimension.Above:
		return d.from.X + x
	case dimension.Below:
		return d.from.X - x
	case dimension.RightOf:
		return d.from.Y - x
	}
	return d.from.Y + x
}

// Edge returns the outermost coordinate of the wall across the page.
func (d Side) Edge() geom.Length {
	a, b := d.At(0, d.Outer), d.At(d.Length, d.Outer)
	switch d.Page {
	case dimension.Above:
		return max(a.Y, b.Y)
	case dimension.Below:
		return min(a.Y, b.Y)
	case dimension.RightOf:
		return max(a.X, b.X)
	}
	return min(a.X, b.X)
}

// Foot returns how far along the wall a point lies, and how far inside its
// finished face.
func (d Side) Foot(p geom.Point) (along, in geom.Length) {
	x, y := float64(p.X-d.from.X), float64(p.Y-d.from.Y)
	along = geom.Length(math.Round(float64(x*d.ux) + float64(y*d.uy)))
	return along, away(d.from, p, d) - d.Finished
}
