package ceilingplan

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/piece"
	"roomwright/layouts/marks"
	"roomwright/layouts/planwalls"
)

// labels puts the letters of walls, the names of what is above and the marks
// of pieces where they are clear of each other: first what has the fewest
// places to go.
func (v *view) labels() {
	v.pl = marks.NewPlacer(v.s)
	v.pl.BlockElements(v.over)
	v.pl.BlockElements(v.outside)
	for _, r := range slices.Concat(v.keep, v.mains) {
		v.pl.Block(r)
	}
	v.lightLabels()
	room := v.c.Outline.Bounds().Inset(v.mm(0.6))
	for _, k := range v.mainLabels() {
		if !v.tieIn(room, k.mark, true, k.targets, bands()[1], v.offCutCells) {
			v.mark(k.mark, true, k.targets)
		}
	}
	v.sections()
	v.letters()
	v.cutPanels()
	v.overheadWords()
	v.crossLabels()
	v.wholePanel()
	v.tinyPanels()
	v.angleLabels()
}

// lightLabels lays the mark of each light on it, or ties it on when the light
// is too small.
func (v *view) lightLabels() {
	for _, l := range v.c.Lights {
		mark := string(l.Mark)
		places := v.within(mark, true, l.Box.Inset(v.c.TeeFace/2))
		at := slices.IndexFunc(places, func(p geom.Point) bool {
			box := v.boxAt(mark, true, p)
			return !clash(v.labelled, box) && !clash(v.keep, box)
		})
		if at >= 0 {
			v.put(marks.Label(mark, true, places[at], v.s))
			continue
		}
		v.mark(mark, true, []geom.Point{l.Box.Mid()})
	}
}

// tied is a mark that needs a string, and where the string may end.
type tied struct {
	mark    string
	targets []geom.Point
}

// mainLabels lays the mark of each stick of main tee on it, between hangers and
// cross tees, or over cross tees. It returns the marks of those that have no
// room.
func (v *view) mainLabels() []tied {
	var out []tied
	for _, m := range v.c.Mains {
		for _, k := range m.Sticks {
			if targets, ok := v.stickLabel(m, k); !ok {
				out = append(out, tied{string(k.Mark), targets})
			}
		}
	}
	return out
}

// stickLabel lays its mark on one stick of main tee, or returns where a string
// may end on it.
func (v *view) stickLabel(m ceiling.Main, k ceiling.Stick) ([]geom.Point, bool) {
	mark := string(k.Mark)
	w, h := v.size(mark, true)
	half, way := w/2, geom.Pt(1, 0)
	if !v.c.MainsAlongX {
		half, way = h/2, geom.Pt(0, -1)
	}
	on := func(along geom.Length) geom.Point { return m.From.Add(geom.Pt(way.X*along, way.Y*along)) }
	mid, step := geom.Span{From: k.From, To: k.To}.Mid(), v.mm(1)
	var places, targets []geom.Point
	for d := geom.Length(0); d < k.Length/2-v.mm(1.5); d += step {
		for _, at := range []geom.Length{mid + d, mid - d} {
			if d <= k.Length/2-half-v.mm(1.5) {
				places = append(places, on(at))
			}
			p := on(at)
			if !clash(v.keep, geom.Rect{Min: p, Max: p}.Inset(-v.mm(0.6))) {
				targets = append(targets, p)
			}
		}
	}
	if len(targets) == 0 { // hangers all along it: between two of them
		for d := geom.Length(0); d < k.Length/2-v.mm(1); d += step / 2 {
			targets = append(targets, on(mid+d), on(mid-d))
		}
	}
	crossed := func(box geom.Rect) bool {
		lines, s := v.c.XLines, box.X()
		if !v.c.MainsAlongX {
			lines, s = v.c.YLines, box.Y()
		}
		return slices.ContainsFunc(lines, func(l ceiling.TeeLine) bool { return s.Holds(l.At) })
	}
	for _, over := range []bool{false, true} {
		for _, at := range places {
			if box := v.boxAt(mark, true, at); v.overMains(box) && (over || !crossed(box)) {
				v.put(marks.Label(mark, true, at, v.s))
				return nil, true
			}
		}
	}
	return thin(targets, 40), false
}

// thin returns at most n of a list, spread over it.
func thin(list []geom.Point, n int) []geom.Point {
	if len(list) <= n {
		return list
	}
	var out []geom.Point
	for i := range n {
		out = append(out, list[i*len(list)/n])
	}
	return out
}

// crossLabels marks one cross tee of each mark: the label lies on the tee where
// the tee shows at both sides of it, else it is tied on.
func (v *view) crossLabels() {
	for _, list := range v.crossesByMark() {
		mark := string(list[0].Mark)
		if !v.onTee(mark, list) {
			var targets []geom.Point
			for _, t := range list {
				targets = append(targets, quarter(t, 2))
			}
			ends := slices.Clone(targets)
			for _, t := range list {
				ends = append(ends, quarter(t, 1), quarter(t, 3))
			}
			if !v.tie(mark, true, thin(targets, 12), bands()[1]) {
				v.mark(mark, true, thin(ends, 40))
			}
		}
	}
}

// crossesByMark returns the cross tees, those of one mark together, nearest to
// the middle of the room first.
func (v *view) crossesByMark() [][]ceiling.Cross {
	byMark := map[piece.Mark]int{}
	var out [][]ceiling.Cross
	for _, t := range v.c.Crosses {
		k, ok := byMark[t.Mark]
		if !ok {
			k = len(out)
			byMark[t.Mark] = k
			out = append(out, nil)
		}
		out[k] = append(out[k], t)
	}
	mid := v.c.Outline.Bounds().Mid()
	far := func(t ceiling.Cross) geom.Length {
		p := quarter(t, 2).Sub(mid)
		return p.X.Abs() + p.Y.Abs()
	}
	for _, list := range out {
		slices.SortStableFunc(list, func(a, b ceiling.Cross) int { return cmp.Compare(far(a), far(b)) })
	}
	return out
}

// quarter returns the point so many quarters along a cross tee.
func quarter(t ceiling.Cross, n geom.Length) geom.Point {
	return t.From.Add(geom.Pt((t.To.X-t.From.X)*n/4, (t.To.Y-t.From.Y)*n/4))
}

// onTee lays a mark on one of the cross tees that bear it.
func (v *view) onTee(mark string, list []ceiling.Cross) bool {
	w, h := v.size(mark, true)
	for _, t := range list {
		up := (t.To.Y - t.From.Y).Abs() > (t.To.X - t.From.X).Abs()
		long := w
		if up {
			long = h
		}
		for _, n := range []geom.Length{2, 1, 3} {
			at := quarter(t, n)
			box := v.boxAt(mark, true, at)
			shows := box.Inset(-v.mm(1.4))
			if length := t.Length.Abs(); length < long+v.mm(4) || !v.overTees(box) || !v.pl.Free(box) {
				continue
			}
			// No tee that crosses this one may be hidden.
			lines, s := v.c.YLines, shows.Y()
			if !up {
				lines, s = v.c.XLines, shows.X()
			}
			if slices.ContainsFunc(lines, func(l ceiling.TeeLine) bool { return s.Holds(l.At) }) {
				continue
			}
			v.put(marks.Label(mark, true, at, v.s))
			return true
		}
	}
	return false
}

// angleLabels ties its mark to the wall angle of each wall; where that takes a
// long string, the label lies on the wall itself when there is room.
func (v *view) angleLabels() {
	for i, a := range v.c.Angles {
		d, mark := v.sides[i], string(a.Mark)
		var targets []geom.Point
		for n := geom.Length(1); n < 24; n++ {
			p := d.At(d.Length*n/24, -d.Finished-v.leg()/2)
			if box := (geom.Rect{Min: p, Max: p}).Inset(-v.mm(0.7)); v.apart(box) {
				targets = append(targets, p)
			}
		}
		targets = thin(targets, 12)
		if !v.tie(mark, true, targets, 18) && !v.onWall(d, mark) {
			v.mark(mark, true, targets)
		}
	}
}

// onWall lays a mark on the thickness of a wall, over its finished face.
func (v *view) onWall(d planwalls.Side, mark string) bool {
	w, h := v.size(mark, true)
	wide, deep := across(d, geom.RectOf(0, 0, w, h))
	out := d.Outer + v.mm(0.8) - deep/2
	for _, c := range v.cellsAt(d) {
		mid, _ := d.Foot(c.Shape.Bounds().Mid())
		for _, off := range []float64{0, 3, -3, 6, -6} {
			x := mid + v.mm(off)
			at := d.At(x, min(out, d.Outer/2))
			if box := v.boxAt(mark, true, at); v.apart(box) && x > wide/2 && x < d.Length-wide/2 {
				v.put(marks.Label(mark, true, at, v.s))
				return true
			}
		}
	}
	return false
}
