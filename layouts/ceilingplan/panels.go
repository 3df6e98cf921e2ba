package ceilingplan

import (
	"slices"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/piece"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
)

// cutPanels writes the mark of its panel in each cut cell that has room for it,
// and keeps the cells that have none.
func (v *view) cutPanels() {
	for _, c := range v.c.Cells {
		if c.Mark == "" || c.Kind == ceiling.Whole {
			continue
		}
		if at, ok := v.spot(string(c.Mark), c.Shape.Bounds()); ok {
			v.put(marks.Label(string(c.Mark), false, at, v.s))
			continue
		}
		if at, ok := v.overWall(c); ok && c.Kind == ceiling.Corner {
			v.put(marks.Label(string(c.Mark), false, at, v.s))
			continue
		}
		v.tiny = append(v.tiny, c)
	}
}

// overWall returns the place of a label in a cell that is a little too small for
// it, where the label reaches over the face of the wall but over no tee.
func (v *view) overWall(c ceiling.Cell) (geom.Point, bool) {
	b, frame := c.Shape.Bounds(), v.frame().Inset(-v.mm(0.8))
	rows, cols := v.gridNames()
	if c.Col == 0 {
		b.Min.X = max(frame.Min.X, b.Min.X-v.mm(3))
	}
	if c.Col == len(cols)-1 {
		b.Max.X = min(frame.Max.X, b.Max.X+v.mm(3))
	}
	if c.Row == 0 {
		b.Max.Y = min(frame.Max.Y, b.Max.Y+v.mm(3))
	}
	if c.Row == len(rows)-1 {
		b.Min.Y = max(frame.Min.Y, b.Min.Y-v.mm(3))
	}
	// As much of the label as can be lies in the cell itself.
	for _, at := range nearest(v.within(string(c.Mark), false, b), c.Shape.Bounds().Mid()) {
		if v.overTees(v.boxAt(string(c.Mark), false, at)) {
			return at, true
		}
	}
	return geom.Point{}, false
}

// wholePanel writes the mark of whole panels in one of them.
func (v *view) wholePanel() {
	var mark piece.Mark
	var middles []geom.Point
	for _, c := range v.c.Cells {
		if c.Kind != ceiling.Whole || c.Light >= 0 {
			continue
		}
		mark = c.Mark
		b := c.Shape.Bounds()
		middles = append(middles, b.Mid())
		if at, ok := v.spot(string(mark), b); ok {
			v.put(marks.Label(string(mark), false, at, v.s))
			return
		}
	}
	if mark != "" {
		v.mark(string(mark), false, thin(middles, 40))
	}
}

// tinyPanels ties one label to each run of cells that are too small for their
// own: cells of one mark, side by side. A thread with a dot in each cell joins
// them.
func (v *view) tinyPanels() {
	left := v.tiny
	for len(left) > 0 {
		run := v.longest(left)
		left = slices.DeleteFunc(slices.Clone(left), func(c ceiling.Cell) bool {
			return slices.ContainsFunc(run, func(r ceiling.Cell) bool { return r.Name == c.Name })
		})
		v.thread(run)
	}
}

// longest returns the longest run among cells, the first of those alike.
func (v *view) longest(cells []ceiling.Cell) []ceiling.Cell {
	at := map[[2]int]ceiling.Cell{}
	for _, c := range cells {
		at[[2]int{c.Row, c.Col}] = c
	}
	var best []ceiling.Cell
	for _, c := range cells {
		for _, way := range [][2]int{{0, 1}, {1, 0}} {
			run := []ceiling.Cell{c}
			for {
				last := run[len(run)-1]
				next, ok := at[[2]int{last.Row + way[0], last.Col + way[1]}]
				if !ok || next.Mark != c.Mark || !v.open(last, next) {
					break
				}
				run = append(run, next)
			}
			if len(run) > len(best) {
				best = run
			}
		}
	}
	return best
}

// open reports whether a thread may run between the middles of two cells.
func (v *view) open(a, b ceiling.Cell) bool {
	box := geom.Polygon{dot(a), dot(b)}.Bounds().Inset(-v.mm(0.7))
	return !clash(v.labelled, box) && !clash(v.pennants, box)
}

// dot returns where the thread is fixed in a cell.
func dot(c ceiling.Cell) geom.Point { return c.Shape.Bounds().Mid() }

// thread draws a run of cells and its label.
func (v *view) thread(run []ceiling.Cell) {
	var dots []geom.Point
	for _, c := range run {
		if box := (geom.Rect{Min: dot(c), Max: dot(c)}).Inset(-v.mm(0.7)); !clash(v.labelled, box) && !clash(v.pennants, box) {
			dots = append(dots, dot(c))
		}
	}
	if len(dots) == 0 {
		dots = []geom.Point{dot(run[0])}
	}
	mark := string(run[0].Mark)
	first, last := dots[0], dots[len(dots)-1]
	// The label keeps off the thread, which is drawn after it.
	free := len(v.keep)
	v.keep = append(v.keep, geom.Polygon{first, last}.Bounds().Inset(-v.mm(0.5)))
	if !v.mark(mark, false, thin(dots, 12)) || len(dots) < 2 {
		v.keep = v.keep[:free]
		return
	}
	v.used["thread"] = true
	g := drawing.Group{ID: "thread-" + mark, Title: "cells of panel " + mark, Elements: thread(first, last, dots, v)}
	v.add(g)
	v.pl.BlockElements(g.Elements)
}

// thread returns the line through cells of one mark, with its dots.
func thread(first, last geom.Point, dots []geom.Point, v *view) []drawing.Element {
	out := []drawing.Element{drawing.Line{Style: drawing.Style{Layer: drawing.Symbols, Pen: drawing.P18}, A: first, B: last}}
	for _, p := range dots {
		out = append(out, dimension.Dot(p, drawing.Symbols, v.s))
	}
	return out
}
