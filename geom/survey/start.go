package survey

import (
	"math"

	"roomwright/geom/room"
)

// shapeOf chooses the shape: a rectangle where the room says that its corners
// are square, or where fewer than five different distances are known.
func shapeOf(r *room.Room, readings []reading) shape {
	if r.Survey.Square || !(solver{readings: readings, shape: free}).fixed(-1) {
		return rectangle
	}
	return free
}

// first returns corners near the answer, from which refine starts.
func (s solver) first(but int) (unknowns, bool) {
	var known [6]float64
	var weight [6]float64
	for i, r := range s.readings {
		if i == but {
			continue
		}
		if p := r.pair(); r.weight() > weight[p] {
			known[p], weight[p] = float64(r.value), r.weight()
		}
	}
	if s.shape == rectangle {
		return firstRectangle(known)
	}
	best, least := unknowns{}, math.Inf(1)
	for out := range known {
		u, ok := trilaterate(known, out)
		if !ok {
			continue
		}
		if c := s.cost(solution{free, u}, but); c < least {
			best, least = u, c
		}
	}
	if !math.IsInf(least, 1) {
		return best, true
	}
	u, ok := firstRectangle(known)
	return unknowns{u[0], u[0], -u[1], 0, -u[1]}, ok
}

// firstRectangle returns a width and a depth from the walls and, where they do
// not give both, from a diagonal.
func firstRectangle(known [6]float64) (unknowns, bool) {
	some := func(a, b int) float64 {
		if known[a] != 0 {
			return known[a]
		}
		return known[b]
	}
	w, h, d := some(0, 2), some(1, 3), some(4, 5)
	other := func(side float64) float64 {
		if side <= 0 || d <= side {
			return 0
		}
		return math.Sqrt(float64((d - side) * (d + side)))
	}
	if w == 0 {
		w = other(h)
	}
	if h == 0 {
		h = other(w)
	}
	return unknowns{w, h}, w > 0 && h > 0
}

// trilaterate places four corners, clockwise, by all distances but the one
// numbered out; ok is false where one is missing or the triangles do not close.
func trilaterate(known [6]float64, out int) (unknowns, bool) {
	for p, d := range known {
		if p != out && d <= 0 {
			return unknowns{}, false
		}
	}
	// The way left out joins i and j; k and l are joined to all others.
	i, j := ends(out)
	k := 0
	for k == i || k == j {
		k++
	}
	l := 6 - i - j - k
	base := known[pairOf(k, l)]
	var c [4]place
	c[k], c[l] = place{0, 0}, place{base, 0}
	for _, v := range [2]int{i, j} {
		a, b := known[pairOf(k, v)], known[pairOf(l, v)]
		x := (float64((a-b)*(a+b))/base + base) / 2
		yy := float64((a - x) * (a + x))
		if yy <= 0 {
			return unknowns{}, false
		}
		y := math.Sqrt(yy)
		if clockwise(k, l, v) {
			y = -y
		}
		c[v] = place{x, y}
	}
	return onWall0(c), true
}

// ends returns the two corners of the distance numbered p.
func ends(p int) (int, int) {
	switch p {
	case 4:
		return 0, 2
	case 5:
		return 1, 3
	}
	return p, (p + 1) % 4
}

// clockwise reports whether corners a, b, c come in this order round the room.
func clockwise(a, b, c int) bool { return (b-a+4)%4 < (c-a+4)%4 }

// onWall0 moves and turns c so that corner 0 is the origin and wall 0 runs
// along +x.
func onWall0(c [4]place) unknowns {
	ux, uy := c[1].x-c[0].x, c[1].y-c[0].y
	d := length(ux, uy)
	if d == 0 {
		return unknowns{}
	}
	ux, uy = ux/d, uy/d
	turn := func(p place) (float64, float64) {
		x, y := p.x-c[0].x, p.y-c[0].y
		return float64(x*ux) + float64(y*uy), float64(y*ux) - float64(x*uy)
	}
	x2, y2 := turn(c[2])
	x3, y3 := turn(c[3])
	return unknowns{d, x2, y2, x3, y3}
}
