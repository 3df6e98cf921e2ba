package face

import (
	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// Sizes round a wall, in millimetres on paper.
const (
	neighbourWide = 5.0 // strip of a neighbour wall that is drawn
	structureHigh = 3.0 // strip of the structure that is drawn
	floorLeft     = 7.4 // how far the floor line runs past the left corner
	floorRight    = 8.0 // and past the right one
)

// Above returns the height above which dimensions may begin.
func (f Face) Above() geom.Length {
	if f.Capped {
		return f.Top + f.MM(structureHigh)
	}
	return f.Top
}

// RightEdge returns the right edge of what is drawn round the wall.
func (f Face) RightEdge() geom.Length { return f.Length + f.MM(floorRight) }

// Surround returns the structure above and the neighbours, cut, and the
// finished floor.
func (f Face) Surround() drawing.Element {
	wide, high := f.MM(neighbourWide), f.MM(structureHigh)
	heavy := drawing.Style{Layer: drawing.Outline, Pen: drawing.P50}
	hatch := drawing.Style{Layer: drawing.WallPattern, Pen: drawing.P18}
	var e []drawing.Element
	for _, strip := range []geom.Rect{
		geom.RectOf(-wide, 0, 0, f.Top),
		geom.RectOf(f.Length, 0, f.Length+wide, f.Top),
	} {
		e = append(e, drawing.HatchLines(strip.Polygon(), hatch, drawing.Rising45, paper.MM(1.8), f.Scale))
	}
	if f.Capped {
		strip := geom.RectOf(-wide, f.Top, f.Length+wide, f.Top+high)
		e = append(e, drawing.HatchLines(strip.Polygon(), hatch, drawing.Falling45, paper.MM(1.8), f.Scale),
			drawing.Line{Style: heavy, A: geom.Pt(-wide, f.Top), B: geom.Pt(f.Length+wide, f.Top)})
	}
	e = append(e,
		drawing.Line{Style: heavy, A: geom.Pt(0, 0), B: geom.Pt(0, f.Top)},
		drawing.Line{Style: heavy, A: geom.Pt(f.Length, 0), B: geom.Pt(f.Length, f.Top)},
		f.floor(),
	)
	return drawing.Group{ID: "surround", Title: "Structure above, walls at both ends and finished floor", Elements: e}
}

// floor returns the line of the finished floor.
func (f Face) floor() drawing.Element {
	return drawing.Line{
		Style: drawing.Style{Layer: drawing.Outline, Pen: drawing.P70},
		A:     geom.Pt(-f.MM(floorLeft), 0), B: geom.Pt(f.Length+f.MM(floorRight), 0),
	}
}

// letters returns the names of the neighbours in boxes above both ends, clear
// of a ladder that covers the given boxes.
func (f Face) letters(ladder []geom.Rect) drawing.Element {
	left, right := f.Neighbours()
	gap := f.MM(3.2)
	mark := func(name string, at geom.Point) drawing.Element {
		return marks.WallLetter(name, at, dimension.Below, f.Scale)
	}
	bounds := func(e drawing.Element) geom.Rect { return drawing.Bounds([]drawing.Element{e}, f.Scale) }
	y := f.Above()
	var e []drawing.Element
	if left != "" {
		b := bounds(mark(left, geom.Point{}))
		at := geom.Pt(-gap-b.Max.X, y-b.Min.Y)
		box := b.Move(at).Inset(-f.MM(0.8))
		for _, r := range ladder {
			if r.X().Overlaps(box.X()) && r.Max.Y > y {
				y = r.Max.Y + f.MM(0.8)
			}
		}
		e = append(e, mark(left, geom.Pt(at.X, y-b.Min.Y)))
	}
	if right != "" {
		b := bounds(mark(right, geom.Point{}))
		e = append(e, mark(right, geom.Pt(f.Length+gap-b.Min.X, f.Above()-b.Min.Y)))
	}
	return drawing.Group{ID: "neighbours", Title: "Names of the walls at both ends", Elements: e}
}

// CeilingLine returns the face of the finished ceiling; nil when there is none.
func (f Face) CeilingLine() []drawing.Element {
	c := f.Result.Ceiling
	if c == nil || c.Face <= 0 || c.Face >= f.Top {
		return nil
	}
	return []drawing.Element{drawing.Line{
		Style: drawing.Style{Layer: drawing.CeilPanel, Pen: drawing.P35, Dash: drawing.Overhead},
		A:     geom.Pt(0, c.Face), B: geom.Pt(f.Length, c.Face),
	}}
}
