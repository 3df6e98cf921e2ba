package ceilingplan

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
)

// air is the white kept round labels and letters, in millimetres of paper.
const air = 0.3

// clash reports whether a box meets any of a list.
func clash(list []geom.Rect, box geom.Rect) bool {
	return slices.ContainsFunc(list, box.Overlaps)
}

// clearOfTees reports whether no tee runs through a box.
func (v *view) clearOfTees(box geom.Rect) bool {
	on := func(s geom.Span) func(ceiling.TeeLine) bool {
		return func(l ceiling.TeeLine) bool { return s.Holds(l.At) }
	}
	return !slices.ContainsFunc(v.c.XLines, on(box.X())) && !slices.ContainsFunc(v.c.YLines, on(box.Y()))
}

// apart reports whether a box is clear of tees, hangers, labels and lights.
func (v *view) apart(box geom.Rect) bool { return v.overTees(box) && v.clearOfTees(box) }

// overTees reports whether a box is clear of all that a white ground may not
// hide: main tees, hangers, labels and lights.
func (v *view) overTees(box geom.Rect) bool { return v.overMains(box) && !clash(v.mains, box) }

// overMains is overTees for what may lie on a main tee.
func (v *view) overMains(box geom.Rect) bool {
	return !clash(v.keep, box) && !clash(v.labelled, box) &&
		!slices.ContainsFunc(v.c.Lights, func(l ceiling.Light) bool { return l.Box.Overlaps(box) })
}

// put adds a label or letter and keeps others off it.
func (v *view) put(g drawing.Group) {
	v.add(g)
	v.pl.BlockElements([]drawing.Element{g})
	v.used[g.ID] = true
	v.labelled = append(v.labelled, labelBox(g))
}

// labelBox returns the box of a label or letter, without its string.
func labelBox(g drawing.Group) geom.Rect {
	for _, e := range g.Elements {
		if a, ok := e.(drawing.Area); ok && a.Fill == drawing.White {
			return geom.Polygon(a.Outline).Bounds()
		}
	}
	return geom.Rect{}
}

// size returns what a label covers, in true size.
func (v *view) size(mark string, isNew bool) (w, h geom.Length) {
	a, b := marks.LabelSize(mark, isNew)
	return v.s.Real(a), v.s.Real(b)
}

// boxAt returns the box of a label centred at a point, with its air.
func (v *view) boxAt(mark string, isNew bool, at geom.Point) geom.Rect {
	w, h := v.size(mark, isNew)
	return geom.RectOf(at.X-w/2, at.Y-h/2, at.X+w/2, at.Y+h/2).Inset(-v.mm(air))
}

// within returns places of a label in a box, closely set, that nearest to the middle first; none when it is too large for the box.
func (v *view) within(mark string, isNew bool, box geom.Rect) []geom.Point {
	w, h := v.size(mark, isNew)
	rx, ry := (box.W()-w)/2-v.mm(air), (box.H()-h)/2-v.mm(air)
	if rx < 0 || ry < 0 {
		return nil
	}
	mid, sx, sy := box.Mid(), max(v.mm(0.5), rx/10), max(v.mm(0.5), ry/10)
	var out []geom.Point
	for i := -(rx / sx); i <= rx/sx; i++ {
		for k := -(ry / sy); k <= ry/sy; k++ {
			out = append(out, mid.Add(geom.Pt(i*sx, k*sy)))
		}
	}
	return nearest(out, mid)
}

// nearest orders places by how far they are from a point.
func nearest(places []geom.Point, from geom.Point) []geom.Point {
	far := func(p geom.Point) geom.Length {
		dx, dy := (p.X-from.X)/1024, (p.Y-from.Y)/1024
		return dx*dx + dy*dy
	}
	slices.SortStableFunc(places, func(a, b geom.Point) int { return cmp.Compare(far(a), far(b)) })
	return places
}

// spot returns the place of a label in a cell that is nearest to its middle and
// clear of all else; over the edge of a duct rather than nowhere.
func (v *view) spot(mark string, cell geom.Rect, avoid ...geom.Rect) (geom.Point, bool) {
	places := v.within(mark, false, cell)
	for _, free := range []func(geom.Rect) bool{v.pl.Free, func(geom.Rect) bool { return true }} {
		for _, at := range places {
			if box := v.boxAt(mark, false, at); v.overTees(box) && !clash(avoid, box) && free(box) {
				return at, true
			}
		}
	}
	return geom.Point{}, false
}

// offCutCells reports whether a box is apart from all else, and in no cell that
// has room for the mark of a cut panel.
func (v *view) offCutCells(box geom.Rect) bool {
	return v.apart(box) && !slices.ContainsFunc(v.c.Cells, func(c ceiling.Cell) bool {
		b := c.Shape.Bounds()
		return c.Mark != "" && c.Kind != ceiling.Whole && b.Overlaps(box) && len(v.within(string(c.Mark), false, b)) > 0
	})
}

// bands are how long strings may be, in millimetres of paper, tried in turn.
func bands() []float64 { return []float64{12, 24, 48} }

// tie puts a label with a string to one of its targets, the shortest string
// that is free and not longer than so many millimetres of paper; in a cell, or
// over cross tees when no cell has room. It reports false when there is no place.
func (v *view) tie(mark string, isNew bool, targets []geom.Point, reach float64) bool {
	room := v.c.Outline.Bounds().Inset(v.mm(0.6))
	return v.tieIn(room, mark, isNew, targets, reach, v.apart, v.overTees)
}

// tieIn is tie in an area, under each of some conditions in turn.
func (v *view) tieIn(area geom.Rect, mark string, isNew bool, targets []geom.Point, reach float64, conditions ...func(geom.Rect) bool) bool {
	for _, free := range conditions {
		from := 1.2 // so that the string shows
		for _, to := range bands() {
			if to = min(to, reach); to <= from {
				break
			}
			for _, p := range v.ways(area, mark, isNew, targets, from, to, free) {
				if g, ok := v.pl.Label(mark, isNew, p.target, p.at); ok {
					v.put(g)
					return true
				}
			}
			from = to
		}
	}
	return false
}

// way is a place for a label, and where its string ends.
type way struct {
	at, target geom.Point
	far        geom.Length
}

// ways returns the free places for a label whose string is longer than from and
// not longer than to, in millimetres of paper, shortest first.
func (v *view) ways(area geom.Rect, mark string, isNew bool, targets []geom.Point, from, to float64, free func(geom.Rect) bool) []way {
	w, h := v.size(mark, isNew)
	least, most, step := v.mm(from), v.mm(to), v.mm(to/12)
	nx, ny := (most+w/2)/step, (most+h/2)/step
	var out []way
	for _, t := range targets {
		if dot := (geom.Rect{Min: t, Max: t}).Inset(-v.mm(0.7)); clash(v.labelled, dot) || clash(v.pennants, dot) {
			continue
		}
		for i := -nx; i <= nx; i++ {
			for k := -ny; k <= ny; k++ {
				at := t.Add(geom.Pt(i*step, k*step))
				box := geom.RectOf(at.X-w/2, at.Y-h/2, at.X+w/2, at.Y+h/2)
				// The string shows from the label's edge to the target.
				far := max(0, box.Min.X-t.X, t.X-box.Max.X) + max(0, box.Min.Y-t.Y, t.Y-box.Max.Y)
				if far > least && far <= most && area.Union(box) == area && v.clearOfText(box, t) && free(box.Inset(-v.mm(air))) {
					out = append(out, way{at, t, far})
				}
			}
		}
	}
	slices.SortStableFunc(out, func(a, b way) int { return cmp.Compare(a.far, b.far) })
	return out
}

// clearOfText reports whether the string from the eye of a label to a target
// runs clear of the label's own text.
func (v *view) clearOfText(box geom.Rect, target geom.Point) bool {
	mid := box.Mid()
	eye, text := geom.Pt(box.Min.X+v.mm(1.15), mid.Y), geom.RectOf(box.Min.X+v.mm(2), mid.Y-v.mm(2.1), box.Max.X, mid.Y+v.mm(1.6))
	if target.X > mid.X {
		eye.X, text.Min.X, text.Max.X = box.Max.X-v.mm(1.15), box.Min.X, box.Max.X-v.mm(1.8)
	}
	for i := geom.Length(1); i <= 16; i++ { // the first few millimetres are enough
		p := eye.Add(geom.Pt((target.X-eye.X)*i/16, (target.Y-eye.Y)*i/16))
		if text.X().Holds(p.X) && text.Y().Holds(p.Y) {
			return false
		}
	}
	return true
}

// beside is how far from the walls a label may lie that has no room within
// them, in millimetres of paper.
const beside = 22

// mark puts a label with a string, or notes that the plan has no room for it.
// When several had none, others are given short strings or none.
func (v *view) mark(mark string, isNew bool, targets []geom.Point) bool {
	reach := bands()[2]
	if len(v.missing) > 4 {
		reach = bands()[0]
	}
	if v.tie(mark, isNew, targets, reach) {
		return true
	}
	// Beside the walls, between the lines of the dimensions, or over a main tee,
	// rather than nowhere.
	if v.tieIn(v.frame().Inset(-v.mm(beside)), mark, isNew, targets, bands()[2], v.overTees, v.overMains) {
		return true
	}
	v.missing = append(v.missing, mark)
	return false
}
