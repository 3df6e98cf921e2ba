package survey

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// outlines fills in the rough and finished outlines and the sides of plan from
// its taped corners: each wall's line is moved square off itself, and
// neighbours are cut with each other.
func outlines(r *room.Room, plan *Plan) []finding.Finding {
	var inwards, outwards [4]geom.Length
	for i := range r.Walls {
		w := &r.Walls[i]
		switch w.TapeOn {
		case room.FaceStuds, room.FaceMasonry:
			inwards[i] = lined(w)
		default:
			outwards[i] = -lined(w)
		}
	}
	plan.Rough = moved(plan.Taped, outwards)
	plan.Finished = moved(plan.Taped, inwards)
	plan.Sides = make([]Side, len(r.Walls))
	for i := range r.Walls {
		s := sideOf(r, plan, i)
		if s.Finished <= 0 {
			return []finding.Finding{noRoomLeft(r, i, s)}
		}
		plan.Sides[i] = s
	}
	return nil
}

// lined returns the thickness of the lining on the inside of w, zero when it
// has none or it is not known.
func lined(w *room.Wall) geom.Length {
	if w.Inside.None || w.Inside.Unknown {
		return 0
	}
	return max(0, w.Inside.Thick)
}

// sideOf returns wall i of the plan.
func sideOf(r *room.Room, plan *Plan, i int) Side {
	j := (i + 1) % len(plan.Taped)
	way := plan.Taped[j].Sub(plan.Taped[i])
	s := Side{
		Wall:     r.Walls[i].Name,
		Start:    r.CornerName(i),
		End:      r.CornerName(j),
		Taped:    long(way),
		LeftOff:  along(plan.Finished[i].Sub(plan.Taped[i]), way),
		RightOff: along(plan.Taped[j].Sub(plan.Finished[j]), way),
	}
	s.Finished = s.Taped - s.LeftOff - s.RightOff
	if h := r.Walls[i].Structure; h.Known() {
		s.Structure = h.Value
	}
	return s
}

// moved returns p with wall i moved inwards by by[i], outwards where it is
// less than zero. An upright rectangle stays exact.
func moved(p geom.Polygon, by [4]geom.Length) geom.Polygon {
	out := make(geom.Polygon, len(p))
	for i := range p {
		before := (i + len(p) - 1) % len(p)
		out[i] = p[i].Add(shift(inward(p, before), inward(p, i), by[before], by[i]))
	}
	return out
}

// inward returns the direction square off wall i of p into the room.
func inward(p geom.Polygon, i int) place {
	way := p[(i+1)%len(p)].Sub(p[i])
	x, y := float64(way.X), float64(way.Y)
	d := length(x, y)
	return place{y / d, -x / d}
}

// shift returns how far the corner moves between a wall with inward direction
// m, moved by a, and the next one with direction n, moved by b.
func shift(m, n place, a, b geom.Length) geom.Point {
	if a == 0 && b == 0 {
		return geom.Point{}
	}
	fa, fb := float64(a), float64(b)
	det := float64(m.x*n.y) - float64(m.y*n.x)
	return geom.Pt(
		nearest((float64(fa*n.y)-float64(m.y*fb))/det),
		nearest((float64(m.x*fb)-float64(fa*n.x))/det),
	)
}

// long returns the length of a way, to the nearest sixteenth of a micrometre.
func long(way geom.Point) geom.Length {
	switch {
	case way.X == 0:
		return way.Y.Abs()
	case way.Y == 0:
		return way.X.Abs()
	}
	return nearest(length(float64(way.X), float64(way.Y)))
}

// along returns how far by goes in the direction of way.
func along(by, way geom.Point) geom.Length {
	x, y := float64(way.X), float64(way.Y)
	d := length(x, y)
	return nearest(float64(float64(by.X)*(x/d)) + float64(float64(by.Y)*(y/d)))
}

// turnsLeft returns the first corner of p at which the outline does not turn
// right, or -1.
func turnsLeft(p geom.Polygon) int {
	for i := range p {
		a := p[i].Sub(p[(i+len(p)-1)%len(p)])
		b := p[(i+1)%len(p)].Sub(p[i])
		if a.X*b.Y-a.Y*b.X >= 0 {
			return i
		}
	}
	return -1
}
