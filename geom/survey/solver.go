package survey

import (
	"math"

	"roomwright/geom"
)

// shape is what the corners are free to be.
type shape int

const (
	free      shape = iota // any four corners: five unknowns
	rectangle              // square corners: width and depth
)

// solver finds the corners that suit readings best, by weighted least squares:
// the sum of (misfit/tolerance)² is least (the method of least squares for
// observed distances, as in any text on surveying adjustments).
type solver struct {
	readings []reading
	shape    shape
}

// unknowns are those of the shape. free: the x of corner 1 and the x and y of
// corners 2 and 3, corner 0 being the origin and wall 0 the x axis; rectangle:
// width and depth. All are in sixteenths of a micrometre.
type unknowns [5]float64

// solution is the corners that were found.
type solution struct {
	shape shape
	at    unknowns
}

// count returns the number of unknowns of s.
func (s shape) count() int {
	if s == rectangle {
		return 2
	}
	return 5
}

// fixed reports whether readings, but the one numbered but, fix a shape.
func (s solver) fixed(but int) bool {
	var has [6]bool
	for i, r := range s.readings {
		if i != but {
			has[r.pair()] = true
		}
	}
	if s.shape == rectangle {
		return count(has[0] || has[2], has[1] || has[3], has[4] || has[5]) >= 2
	}
	return count(has[:]...) >= 5
}

// count returns how many of list are true.
func count(list ...bool) int {
	n := 0
	for _, b := range list {
		if b {
			n++
		}
	}
	return n
}

// solve returns the corners that suit all readings but the one numbered but
// (-1: all of them); ok is false when they do not fix the corners.
func (s solver) solve(but int) (got solution, ok bool) {
	if !s.fixed(but) {
		return solution{}, false
	}
	first, ok := s.first(but)
	if !ok {
		return solution{}, false
	}
	return s.refine(solution{s.shape, first}, but)
}

// refine improves u by Gauss and Newton's steps, halved where they overshoot.
func (s solver) refine(u solution, but int) (solution, bool) {
	const steps, halvings = 100, 40
	cost := s.cost(u, but)
	for range steps {
		normal, right := s.normal(u, but)
		step, ok := normal.solve(right, s.shape.count())
		if !ok {
			return solution{}, false
		}
		better := false
		for range halvings {
			next := u
			for i := range step {
				next.at[i] += step[i]
			}
			if c := s.cost(next, but); c < cost {
				u, cost, better = next, c, true
				break
			}
			for i := range step {
				step[i] /= 2
			}
		}
		if !better {
			break
		}
	}
	return u, true
}

// cost returns the sum of the weighted squares of what is left over.
func (s solver) cost(u solution, but int) float64 {
	sum := 0.0
	for i, r := range s.readings {
		if i == but {
			continue
		}
		d, _ := u.distance(r.from, r.to)
		left := float64(r.value) - d
		sum += float64(r.weight() * float64(left*left))
	}
	return sum
}

// normal returns the normal equations at u.
func (s solver) normal(u solution, but int) (matrix, unknowns) {
	var m matrix
	var right unknowns
	for i, r := range s.readings {
		if i == but {
			continue
		}
		d, g := u.distance(r.from, r.to)
		left := float64(r.value) - d
		w := r.weight()
		for a := range g {
			right[a] += float64(float64(w*g[a]) * left)
			for b := range g {
				m[a][b] += float64(float64(w*g[a]) * g[b])
			}
		}
	}
	return m, right
}

// distance returns the distance between two corners, and how it changes with
// each unknown.
func (u solution) distance(a, b int) (float64, unknowns) {
	if u.shape == rectangle {
		switch pairOf(a, b) {
		case 0, 2:
			return u.at[0], unknowns{1}
		case 1, 3:
			return u.at[1], unknowns{0, 1}
		}
		d := length(u.at[0], u.at[1])
		return d, unknowns{u.at[0] / d, u.at[1] / d}
	}
	c := u.corners()
	dx, dy := c[b].x-c[a].x, c[b].y-c[a].y
	d := length(dx, dy)
	if d == 0 {
		return 0, unknowns{}
	}
	var g unknowns
	for _, end := range [2]struct {
		corner int
		sign   float64
	}{{a, -1}, {b, 1}} {
		switch end.corner {
		case 1:
			g[0] += end.sign * dx / d
		case 2:
			g[1] += end.sign * dx / d
			g[2] += end.sign * dy / d
		case 3:
			g[3] += end.sign * dx / d
			g[4] += end.sign * dy / d
		}
	}
	return d, g
}

// place is a point that is not exact.
type place struct{ x, y float64 }

// corners returns the four corners.
func (u solution) corners() [4]place {
	if u.shape == rectangle {
		w, h := u.at[0], u.at[1]
		return [4]place{{0, 0}, {w, 0}, {w, -h}, {0, -h}}
	}
	return [4]place{{0, 0}, {u.at[0], 0}, {u.at[1], u.at[2]}, {u.at[3], u.at[4]}}
}

// polygon returns the corners to the nearest sixteenth of a micrometre.
func (u solution) polygon() geom.Polygon {
	p := make(geom.Polygon, 0, 4)
	for _, c := range u.corners() {
		p = append(p, geom.Pt(nearest(c.x), nearest(c.y)))
	}
	return p
}

// outOfSquare returns the greatest cosine of a corner: nothing when all are square.
func (u solution) outOfSquare() float64 {
	c := u.corners()
	most := 0.0
	for i := range c {
		p, q, r := c[(i+3)%4], c[i], c[(i+1)%4]
		ax, ay, bx, by := p.x-q.x, p.y-q.y, r.x-q.x, r.y-q.y
		dot := float64(ax*bx) + float64(ay*by)
		if d := length(ax, ay) * length(bx, by); d > 0 {
			most = max(most, math.Abs(dot)/d)
		}
	}
	return most
}

// length returns the length of a way x across and y up. The square root is
// exact to the last bit on every processor, unlike the ready-made hypotenuse.
func length(x, y float64) float64 { return math.Sqrt(float64(x*x) + float64(y*y)) }

// nearest rounds to the nearest sixteenth of a micrometre.
func nearest(x float64) geom.Length { return geom.Length(math.Round(x)) }
