package ceiling

import (
	"math"

	"roomwright/geom"
)

// distance returns how far p is from q, to the nearest unit.
func distance(p, q geom.Point) geom.Length {
	x, y := int64(q.X-p.X), int64(q.Y-p.Y)
	return geom.Length(root(x*x + y*y))
}

// root returns the square root of n, to the nearest whole number.
func root(n int64) int64 {
	r := int64(math.Sqrt(float64(n)))
	for r*r > n {
		r--
	}
	for (r+1)*(r+1) <= n {
		r++
	}
	if n-r*r > r {
		r++
	}
	return r
}

// tilt returns the free height above the flange that a rigid panel needs to go
// up through its opening: width by length by thick, through an opening of
// module a by module c between tee centre lines, face wide and tee high above
// the flange.
//
// A square panel is turned by 45 degrees in plan, an oblong one by a quarter,
// over the cells beside it, and slid up one edge first. With G the clear way
// for the panel's slope, the tilt p solves
//
//	thick + tee cos p = G sin p
//
// and the height is length sin p + thick cos p. Webs have no thickness, and
// nothing hangs between. It is enough, not the least: a changing tilt needs
// somewhat less. Zero means that the panel does not pass this way.
//
// Source: worked out for this project.
func tilt(width, length, thick, a, c, face, tee geom.Length) geom.Length {
	half := float64(face) / 2
	way := float64(a) - half
	if width == length {
		way = float64(math.Sqrt2*(float64(a)-half)) - float64(width)
	} else if float64(width) > float64(c)-half {
		return 0
	}
	if way <= 0 {
		return 0
	}
	t, h := float64(thick), float64(tee)
	sum := float64(way*way) + float64(h*h)
	if sum < float64(t*t) {
		return 0
	}
	// G sin p - H cos p = t, solved for the sine without angles, so that every
	// processor finds the same figure.
	sine := (float64(way*t) + float64(h*math.Sqrt(sum-float64(t*t)))) / sum
	if sine > 1 {
		return 0
	}
	cosine := math.Sqrt(1 - float64(sine*sine))
	return geom.Length(math.Ceil(float64(float64(length)*sine) + float64(t*cosine)))
}

// tiltOver returns what a rigid panel or light of the given cells and
// thickness needs above the top of the tees, rounded up to the printed step.
func (b *builder) tiltOver(width, length, thick geom.Length) geom.Length {
	short, long := b.short, b.long
	if length > 3*width/2 && long == short {
		long = 2 * short // a long light in a square grid takes two modules
	}
	h := tilt(width, length, thick, short, long, b.teeFace, b.tee)
	if h == 0 {
		return 0
	}
	return max(0, h-b.tee).RoundUp(b.step)
}
