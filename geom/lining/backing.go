package lining

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/rules"
)

// bar is a stretch across a wall that holds screws over a whole row's height.
type bar struct {
	x    geom.Span
	stud int
}

// bars is what a row can be fixed to: each upright, and the uprights that
// touch joined into runs. Both go left to right.
type bars struct {
	parts []bar
	runs  []geom.Span
}

// barsAt returns what of backing holds screws from the bottom to the top of y:
// no stretch of the height may be without wood for longer than the distance
// between two fixings along an edge.
func barsAt(backing []Backing, y geom.Span) bars {
	var out bars
	uprights := make([]Backing, 0, len(backing))
	for _, b := range backing {
		if !b.Level && b.X.Len() > 0 {
			uprights = append(uprights, b)
		}
	}
	slices.SortStableFunc(uprights, func(a, b Backing) int {
		return cmp.Or(cmp.Compare(a.X.From, b.X.From), cmp.Compare(a.X.To, b.X.To))
	})
	for i := 0; i < len(uprights); {
		x, stud := uprights[i].X, 0
		var heights []geom.Span
		for ; i < len(uprights) && uprights[i].X == x; i++ {
			heights = append(heights, uprights[i].Y)
			stud = max(stud, uprights[i].StudNo)
		}
		for _, b := range backing {
			if b.Level && b.X.From <= x.From && x.To <= b.X.To {
				heights = append(heights, b.Y)
			}
		}
		if covers(heights, y) {
			out.parts = append(out.parts, bar{x, stud})
		}
	}
	for _, p := range out.parts {
		if n := len(out.runs); n > 0 && p.x.From <= out.runs[n-1].To {
			out.runs[n-1].To = max(out.runs[n-1].To, p.x.To)
			continue
		}
		out.runs = append(out.runs, p.x)
	}
	return out
}

// covers reports whether heights leave no stretch of y bare for longer than
// the pitch of the fixings along an edge.
func covers(heights []geom.Span, y geom.Span) bool {
	slices.SortFunc(heights, func(a, b geom.Span) int { return cmp.Compare(a.From, b.From) })
	reached := y.From
	for _, h := range heights {
		if h == (geom.Span{}) {
			return true
		}
		if h.From-reached > rules.BoardEdgePitch {
			break
		}
		reached = max(reached, h.To)
	}
	return y.To-reached <= rules.BoardEdgePitch
}

// leftOf returns the bearing of a sheet whose right edge is at x.
func (b bars) leftOf(x geom.Length) geom.Length {
	i, _ := slices.BinarySearchFunc(b.runs, x, func(s geom.Span, x geom.Length) int { return cmp.Compare(s.To, x) })
	if i < len(b.runs) && b.runs[i].From < x {
		return x - b.runs[i].From
	}
	return 0
}

// rightOf returns the bearing of a sheet whose left edge is at x.
func (b bars) rightOf(x geom.Length) geom.Length {
	i, found := slices.BinarySearchFunc(b.runs, x, func(s geom.Span, x geom.Length) int { return cmp.Compare(s.To, x) })
	if found {
		i++
	}
	if i < len(b.runs) && b.runs[i].From <= x {
		return b.runs[i].To - x
	}
	return 0
}

// at returns the upright at x, numbered studs first.
func (b bars) at(x geom.Length) (bar, bool) {
	var got bar
	ok := false
	for _, p := range b.parts {
		if p.x.Holds(x) && (!ok || got.stud == 0) {
			got, ok = p, true
		}
	}
	return got, ok
}

// nearest returns the upright whose middle is nearest to x.
func (b bars) nearest(x geom.Length) (bar, bool) {
	var got bar
	ok := false
	for _, p := range b.parts {
		if !ok || (p.x.Mid()-x).Abs() < (got.x.Mid()-x).Abs() {
			got, ok = p, true
		}
	}
	return got, ok
}
