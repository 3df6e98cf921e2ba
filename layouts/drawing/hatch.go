package drawing

import (
	"math"
	"slices"

	"roomwright/geom"
	"roomwright/layouts/paper"
)

// Slope is the direction of a hatch.
type Slope int

// The slopes.
const (
	Rising45  Slope = iota // up to the right
	Falling45              // down to the right
	Rising60
	Falling60
	Upright
	Level
)

// direction returns the unit vector of the slope.
func (s Slope) direction() (x, y float64) {
	const half, root3 = 0.5, 0.8660254037844386
	const r2 = 0.7071067811865476
	switch s {
	case Rising45:
		return r2, r2
	case Falling45:
		return r2, -r2
	case Rising60:
		return half, root3
	case Falling60:
		return half, -root3
	case Upright:
		return 0, 1
	}
	return 1, 0
}

// HatchLines fills an outline with parallel lines apart by the printed
// distance, leaving out the boxes given (words with their white margin).
// Lines pass through a common grid, so that neighbouring areas line up.
func HatchLines(outline []geom.Point, style Style, slope Slope, apart paper.Length, s paper.Scale, holes ...geom.Rect) Hatch {
	h := Hatch{Style: style}
	step := float64(s.Real(apart))
	if len(outline) < 3 || step <= 0 {
		return h
	}
	dx, dy := slope.direction()
	nx, ny := -dy, dx // across the lines
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, p := range outline {
		d := float64(float64(p.X)*nx) + float64(float64(p.Y)*ny)
		lo, hi = math.Min(lo, d), math.Max(hi, d)
	}
	shapes := [][]geom.Point{outline}
	for _, r := range holes {
		if !r.Empty() {
			shapes = append(shapes, r.Polygon())
		}
	}
	for k := math.Ceil(lo / step); k*step <= hi; k++ {
		c := float64(k * step)
		inside := crossings(shapes[0], nx, ny, dx, dy, c)
		spans := pairs(inside)
		for _, hole := range shapes[1:] {
			spans = without(spans, pairs(crossings(hole, nx, ny, dx, dy, c)))
		}
		for _, sp := range spans {
			if sp[1]-sp[0] < 1 {
				continue
			}
			h.Lines = append(h.Lines, [2]geom.Point{
				at(c, sp[0], nx, ny, dx, dy), at(c, sp[1], nx, ny, dx, dy),
			})
		}
	}
	return h
}

// crossings returns where the line at distance c cuts the outline, along it.
func crossings(outline []geom.Point, nx, ny, dx, dy, c float64) []float64 {
	var out []float64
	for i, p := range outline {
		q := outline[(i+1)%len(outline)]
		a := float64(float64(p.X)*nx) + float64(float64(p.Y)*ny) - c
		b := float64(float64(q.X)*nx) + float64(float64(q.Y)*ny) - c
		if (a < 0) == (b < 0) {
			continue
		}
		t := a / (a - b)
		x := float64(p.X) + float64(t*float64(q.X-p.X))
		y := float64(p.Y) + float64(t*float64(q.Y-p.Y))
		out = append(out, float64(x*dx)+float64(y*dy))
	}
	slices.Sort(out)
	return out
}

func pairs(cuts []float64) [][2]float64 {
	var out [][2]float64
	for i := 0; i+1 < len(cuts); i += 2 {
		out = append(out, [2]float64{cuts[i], cuts[i+1]})
	}
	return out
}

// without takes the spans of b out of those of a.
func without(a, b [][2]float64) [][2]float64 {
	for _, hole := range b {
		var next [][2]float64
		for _, s := range a {
			if hole[1] <= s[0] || hole[0] >= s[1] {
				next = append(next, s)
				continue
			}
			if hole[0] > s[0] {
				next = append(next, [2]float64{s[0], hole[0]})
			}
			if hole[1] < s[1] {
				next = append(next, [2]float64{hole[1], s[1]})
			}
		}
		a = next
	}
	return a
}

func at(c, along, nx, ny, dx, dy float64) geom.Point {
	return geom.Pt(
		geom.Length(math.Round(float64(c*nx)+float64(along*dx))),
		geom.Length(math.Round(float64(c*ny)+float64(along*dy))),
	)
}
