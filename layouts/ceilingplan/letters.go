package ceilingplan

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/planwalls"
)

// letters puts the letter of each wall in a cell that has room for the mark of
// its panel too, else on the wall itself, else over tees.
func (v *view) letters() {
	for _, d := range v.sides {
		for _, find := range []func(planwalls.Side) (drawing.Group, bool){v.letterInCell, v.letterOnWall, v.letterOverTees, v.letterAcross} {
			if g, ok := find(d); ok {
				v.put(g)
				break
			}
		}
	}
}

// cellsAt returns the cells along a wall, those at its middle first.
func (v *view) cellsAt(d planwalls.Side) []ceiling.Cell {
	row, col := 0, 0
	for _, c := range v.c.Cells {
		row, col = max(row, c.Row), max(col, c.Col)
	}
	var out []ceiling.Cell
	for _, c := range v.c.Cells {
		switch d.Page {
		case dimension.Above:
			row = 0
		case dimension.LeftOf:
			col = 0
		}
		if across := d.Page == dimension.Above || d.Page == dimension.Below; across && c.Row == row || !across && c.Col == col {
			out = append(out, c)
		}
	}
	middle := d.At(d.Length/2, 0)
	far := func(c ceiling.Cell) geom.Length {
		p := c.Shape.Bounds().Mid()
		return (p.X - middle.X).Abs() + (p.Y - middle.Y).Abs()
	}
	slices.SortStableFunc(out, func(a, b ceiling.Cell) int { return cmp.Compare(far(a), far(b)) })
	return out
}

// letterAt returns the letter of a wall, x along the wall, its near side so far
// inside the finished face.
func (v *view) letterAt(d planwalls.Side, x, in geom.Length) (drawing.Group, geom.Rect) {
	_, deep := across(d, labelBox(marks.WallLetter(d.Wall.Name, geom.Point{}, d.Page, v.s)))
	g := marks.WallLetter(d.Wall.Name, d.At(x, -d.Finished-in-deep/2), d.Page, v.s)
	return g, labelBox(g).Inset(-v.mm(air))
}

// letterInCell finds a cell at the wall where the letter and the mark of the
// panel have room beside each other.
func (v *view) letterInCell(d planwalls.Side) (drawing.Group, bool) {
	for _, c := range v.cellsAt(d) {
		b := c.Shape.Bounds()
		mid, _ := d.Foot(b.Mid())
		half, _ := across(d, b)
		half /= 2
		for _, k := range []geom.Length{0, 1, -1, 2, -2, 3, -3, 4, -4} {
			g, box := v.letterAt(d, mid+k*half/5, v.mm(1.1))
			if b.Union(box) != b || !v.overTees(box) {
				continue
			}
			if c.Mark != "" && c.Kind != ceiling.Whole {
				if _, ok := v.spot(string(c.Mark), b, box); !ok {
					continue
				}
			}
			return g, true
		}
	}
	return drawing.Group{}, false
}

// letterOnWall finds a place in the thickness of the wall, between tees, where
// the mark of the panel before it has room still.
func (v *view) letterOnWall(d planwalls.Side) (drawing.Group, bool) {
	return v.onBand(d, v.apart)
}

// letterAcross finds a place in the thickness of the wall, where a long name may
// hide the ends of tees.
func (v *view) letterAcross(d planwalls.Side) (drawing.Group, bool) {
	return v.onBand(d, func(box geom.Rect) bool { return !clash(v.keep, box) && !clash(v.labelled, box) })
}

// onBand finds a place for a letter in the thickness of the wall.
func (v *view) onBand(d planwalls.Side, free func(geom.Rect) bool) (drawing.Group, bool) {
	var second drawing.Group
	for _, c := range v.cellsAt(d) {
		x, _ := d.Foot(c.Shape.Bounds().Mid())
		_, box := v.letterAt(d, x, 0)
		wide, deep := across(d, box)
		deep -= v.mm(2 * air)
		// In the middle of the wall, at most a little out of its far face.
		in := min((d.Outer+d.Finished+deep)/2, d.Outer+d.Finished+v.mm(1))
		g, box := v.letterAt(d, x, -in)
		if !free(box) || x < wide/2 || x > d.Length-wide/2 {
			continue
		}
		if _, ok := v.spot(string(c.Mark), c.Shape.Bounds(), box); ok || c.Mark == "" {
			return g, true
		}
		if second.ID == "" {
			second = g
		}
	}
	return second, second.ID != ""
}

// across returns the size of a box along a wall and square to it.
func across(d planwalls.Side, box geom.Rect) (along, deep geom.Length) {
	if d.Page == dimension.LeftOf || d.Page == dimension.RightOf {
		return box.H(), box.W()
	}
	return box.W(), box.H()
}

// letterOverTees finds the clear place nearest to the middle of the wall, where
// the letter may hide a piece of a cross tee.
func (v *view) letterOverTees(d planwalls.Side) (drawing.Group, bool) {
	step := v.mm(2)
	_, box := v.letterAt(d, 0, 0)
	wide, _ := across(d, box)
	for k := geom.Length(0); k*step <= d.Length/2-wide/2; k++ {
		for _, x := range []geom.Length{d.Length/2 + k*step, d.Length/2 - k*step} {
			if g, box := v.letterAt(d, x, v.mm(1.1)); v.overTees(box) {
				return g, true
			}
		}
	}
	return drawing.Group{}, false
}
