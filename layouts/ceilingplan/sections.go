package ceilingplan

import (
	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/layouts/cuts"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
)

// sections marks the section through the tightest place, on a white ground and
// clear of main tees, hangers and lights.
func (v *view) sections() {
	for _, c := range cuts.Of(v.r) {
		if c.Kind != cuts.Ceiling {
			continue
		}
		v.used["section"] = true
		from, to := cuts.Inside(c, v.c.Outline.Bounds(), v.mm(6))
		for _, at := range []geom.Point{from, to} {
			g, ok := v.pennant(c, at, geom.Pt((from.X+to.X)/2, (from.Y+to.Y)/2))
			if !ok {
				continue
			}
			b := drawing.Bounds([]drawing.Element{g}, v.s).Inset(-v.mm(0.7))
			v.keep, v.pennants = append(v.keep, b), append(v.pennants, b)
			e := []drawing.Element{drawing.Area{Layer: drawing.Symbols, Outline: b.Polygon()}, g}
			v.add(e...)
			v.pl.BlockElements(e)
		}
	}
}

// pennant returns a section mark at the clear place on the line of the cut that
// is nearest to its end: in a cell that has room for the mark of its panel too,
// else in any, else over a cross tee.
func (v *view) pennant(c cuts.Cut, end, middle geom.Point) (drawing.Group, bool) {
	step, room := v.mm(1.5), v.c.Outline.Bounds().Inset(v.mm(1.2))
	way := geom.Pt(0, step)
	if c.AlongX {
		way = geom.Pt(step, 0)
	}
	if end.X > middle.X || end.Y > middle.Y {
		way = geom.Pt(-way.X, -way.Y)
	}
	half := ((middle.X - end.X).Abs() + (middle.Y - end.Y).Abs()) / step
	roomy := func(box geom.Rect) bool { return v.apart(box) && v.roomBeside(box) }
	for _, pass := range []struct {
		clear func(geom.Rect) bool
		far   geom.Length // in steps
	}{{roomy, 16}, {v.apart, 40}, {v.overTees, 40}} {
		for n := range min(pass.far, half) {
			for _, k := range []geom.Length{n, -n} {
				g := marks.Pennant(c.Letter, end.Add(geom.Pt(way.X*k, way.Y*k)), c.Look, v.s)
				box := drawing.Bounds([]drawing.Element{g}, v.s).Inset(-v.mm(0.7))
				if room.Union(box) == room && pass.clear(box) {
					return g, true
				}
			}
		}
	}
	return drawing.Group{}, false
}

// roomBeside reports whether the cut cells that a box lies in keep room for the
// marks of their panels.
func (v *view) roomBeside(box geom.Rect) bool {
	for _, c := range v.c.Cells {
		b := c.Shape.Bounds()
		if c.Mark == "" || c.Kind == ceiling.Whole || !b.Overlaps(box) {
			continue
		}
		if _, ok := v.spot(string(c.Mark), b, box); !ok {
			return false
		}
	}
	return true
}
