package elevation

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/marks"
)

// draw puts the view together, back to front.
func (v *view) draw() drawing.Drawing {
	var e []drawing.Element
	e = append(e, v.Surround())
	heights := v.heights()
	rows, names := v.rows()
	stick := v.stick()
	m := v.Margin(heights, stick, names...)
	dims := v.dimensions(rows, stick, m, heights)

	p := face.NewPlaces(v.Scale)
	v.occupy(p, dims)
	v.placeWords(p)
	inside := v.inside(p)
	v.placeLabels(p)
	v.failed = p.Failed

	e = append(e, group("saw-lines", "Saw lines", face.BrokenAll(v.sawLines(), p.Holes))...)
	e = append(e, group("existing", "Existing framing, kept", v.keptFraming(p.Holes))...)
	e = append(e, v.Holes(), v.Services())
	e = append(e, group("ceiling-face", "Face of the finished ceiling", v.ceiling())...)
	e = append(e, group("boards", "Boards on the wall", v.boardOutlines())...)
	e = append(e, group("removed", "Pieces taken out", v.taken(p.Holes))...)
	e = append(e, group("new", "New framing", v.newFraming())...)
	e = append(e, group("saw-cuts", "Saw cuts on the studs to be cut", v.strokes())...)
	e = append(e, group("dimensions", "Dimensions", append(dims, inside...))...)
	e = append(e, group("marks", "Names and piece marks", p.Elements)...)
	return drawing.Drawing{Elements: e}
}

func (v *view) keptFraming(holes []geom.Rect) []drawing.Element {
	var e []drawing.Element
	for _, m := range v.kept {
		e = append(e, face.Kept(m.Box, drawing.FrameKept, holes...)...)
	}
	return e
}

// taken returns the pieces that are taken out, broken where words stand.
func (v *view) taken(holes []geom.Rect) []drawing.Element {
	var e []drawing.Element
	for _, m := range v.out {
		e = append(e, face.Out(m.Box, upright(m), v.Scale, holes...)...)
	}
	return e
}

// newFraming returns the new pieces; neighbours are hatched the other way.
func (v *view) newFraming() []drawing.Element {
	list := slices.Clone(v.fresh)
	slices.SortStableFunc(list, func(a, b framing.Member) int {
		return cmp.Or(cmp.Compare(a.Box.Min.X, b.Box.Min.X), cmp.Compare(a.Box.Min.Y, b.Box.Min.Y))
	})
	slopes := make([]drawing.Slope, len(list))
	var e []drawing.Element
	for i, m := range list {
		slopes[i] = slope(m.Role)
		for j := range i {
			if slopes[j] == slopes[i] && touch(list[j].Box, m.Box) && upright(list[j]) == upright(m) {
				slopes[i] = other(slopes[i])
				break
			}
		}
		e = append(e, face.New(m.Box, slopes[i], v.Scale)...)
	}
	return e
}

func slope(r framing.Role) drawing.Slope {
	switch r {
	case framing.Jack, framing.LowerJack, framing.UpperJack, framing.Stud, framing.CrippleAbove, framing.CrippleBelow:
		return drawing.Rising45
	}
	return drawing.Falling45
}

func other(s drawing.Slope) drawing.Slope {
	if s == drawing.Rising45 {
		return drawing.Falling45
	}
	return drawing.Rising45
}

// touch reports whether two boxes share a stretch of an edge.
func touch(a, b geom.Rect) bool {
	x, y := a.X().Overlap(b.X()), a.Y().Overlap(b.Y())
	return x.From == x.To && y.Len() > 0 || y.From == y.To && x.Len() > 0
}

// sawLines returns the lines along which studs are cut, from the left corner.
func (v *view) sawLines() []drawing.Element {
	var e []drawing.Element
	seen := map[geom.Length]geom.Length{}
	var order []geom.Length
	for _, o := range v.Wall.Openings {
		for _, c := range o.Cuts {
			if _, ok := seen[c.Height]; !ok {
				order = append(order, c.Height)
			}
			seen[c.Height] = max(seen[c.Height], c.X.To+v.MM(3))
		}
	}
	for _, y := range order {
		e = append(e, marks.SawLine(geom.Span{From: 0, To: seen[y]}, y, v.Scale))
	}
	return e
}

func (v *view) strokes() []drawing.Element {
	var e []drawing.Element
	for _, o := range v.Wall.Openings {
		for _, c := range o.Cuts {
			e = append(e, marks.SawStroke(c.X, c.Height, v.Scale)...)
		}
	}
	return e
}

// boardOutlines returns the boards on the wall as thin outlines.
func (v *view) boardOutlines() []drawing.Element {
	var e []drawing.Element
	for _, row := range v.Result.Boards {
		if row.Wall != v.Index {
			continue
		}
		for _, sh := range row.Sheets {
			e = append(e, face.Outline(sh.Box, drawing.Style{Layer: drawing.Board, Pen: drawing.P25}))
		}
	}
	return e
}

// ceiling returns the line of the finished ceiling on a wall without framing;
// on framing the height in the ladder is enough.
func (v *view) ceiling() []drawing.Element {
	if v.framed() {
		return nil
	}
	return v.CeilingLine()
}
