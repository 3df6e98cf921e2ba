package ceiling

import (
	"roomwright/geom"
)

// axis is a direction on the page: across, x to the right, or down, d = -y.
type axis int

const (
	across axis = iota
	down
)

// other returns the direction square to a.
func (a axis) other() axis { return 1 - a }

// name returns the words for a.
func (a axis) name() string { return [...]string{"across the page", "down the page"}[a] }

// reach is how far the room goes in one direction: the outermost and the
// innermost place of the wall at its low end (left, top) and at its high end.
type reach struct{ lowOut, lowIn, highIn, highOut geom.Length }

// narrow returns the least distance between the two walls.
func (r reach) narrow() geom.Length { return r.highIn - r.lowIn }

// wide returns the greatest distance between the two walls.
func (r reach) wide() geom.Length { return r.highOut - r.lowOut }

// slant returns how much the two walls are out of square together.
func (r reach) slant() geom.Length { return r.lowIn - r.lowOut + r.highOut - r.highIn }

// ground is the finished outline of a four-sided room. Its corners have x to
// the right and d, kept in Y, down the page.
type ground struct {
	corner [4]geom.Point // top left, top right, bottom right, bottom left
	reach  [2]reach
}

// flip turns a place on the page into x and d, and back.
func flip(p geom.Point) geom.Point { return geom.Pt(p.X, -p.Y) }

// at makes a point of its place along a and its place square to a.
func (a axis) at(along, square geom.Length) geom.Point {
	if a == across {
		return geom.Pt(along, square)
	}
	return geom.Pt(square, along)
}

// of returns the place of p along a.
func (a axis) of(p geom.Point) geom.Length {
	if a == across {
		return p.X
	}
	return p.Y
}

// survey makes the ground of outline; ok is false when it is not four-sided,
// clockwise and near enough upright.
func groundOf(outline geom.Polygon) (g ground, ok bool) {
	if len(outline) != 4 {
		return g, false
	}
	for i, p := range outline {
		g.corner[i] = flip(p)
	}
	for _, a := range []axis{across, down} {
		low, high := g.side(a.low()), g.side(a.high())
		g.reach[a] = reach{
			lowOut:  min(a.of(low[0]), a.of(low[1])),
			lowIn:   max(a.of(low[0]), a.of(low[1])),
			highIn:  min(a.of(high[0]), a.of(high[1])),
			highOut: max(a.of(high[0]), a.of(high[1])),
		}
		if g.reach[a].narrow() <= 0 {
			return g, false
		}
	}
	c := g.corner
	upright := c[0].X < c[1].X && c[3].X < c[2].X && c[0].Y < c[3].Y && c[1].Y < c[2].Y
	return g, upright
}

// low returns the wall at the low end of a: the left one, the top one.
func (a axis) low() int { return [...]int{3, 0}[a] }

// high returns the wall at the high end of a: the right one, the bottom one.
func (a axis) high() int { return [...]int{1, 2}[a] }

// axisOf returns the direction in which distances off wall run.
func axisOf(wall int) axis { return axis((wall + 1) % 2) }

// side returns the two corners of a wall.
func (g *ground) side(wall int) [2]geom.Point {
	return [2]geom.Point{g.corner[wall], g.corner[(wall+1)%4]}
}

// face returns where a wall stands in the direction square to it, at the
// place c along it.
func (g *ground) face(wall int, c geom.Length) geom.Length {
	a := axisOf(wall)
	p, q := g.side(wall)[0], g.side(wall)[1]
	b := a.other()
	run := b.of(q) - b.of(p)
	if run == 0 {
		return a.of(p)
	}
	rise := int64(a.of(q) - a.of(p))
	return a.of(p) + geom.Length(nearest(rise*int64(c-b.of(p)), int64(run)))
}

// off returns the place v off a wall, at its innermost place.
func (g *ground) off(wall int, v geom.Length) geom.Length {
	a := axisOf(wall)
	if wall == a.low() {
		return g.reach[a].lowIn + v
	}
	return g.reach[a].highIn - v
}

// nearest returns n/d rounded to the nearest whole number, halves away from zero.
func nearest(n, d int64) int64 {
	if d < 0 {
		n, d = -n, -d
	}
	if n < 0 {
		return -((-n + d/2) / d)
	}
	return (n + d/2) / d
}
