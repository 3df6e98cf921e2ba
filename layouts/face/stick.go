package face

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// Kept returns a piece that is there and stays: a thin outline, white inside,
// interrupted at holes.
func Kept(box geom.Rect, layer drawing.Layer, holes ...geom.Rect) []drawing.Element {
	style := drawing.Style{Layer: layer, Pen: drawing.P25}
	area := drawing.Area{Layer: layer, Outline: box.Polygon(), Fill: drawing.White}
	for _, h := range holes {
		if !h.Overlaps(box) {
			continue
		}
		e := []drawing.Element{area}
		c := box.Polygon()
		for i, p := range c {
			e = append(e, Broken(p, c[(i+1)%len(c)], style, holes)...)
		}
		return e
	}
	return []drawing.Element{area, Outline(box, style)}
}

// Broken returns a level or upright line, left out where it meets holes.
func Broken(a, b geom.Point, style drawing.Style, holes []geom.Rect) []drawing.Element {
	level := a.Y == b.Y
	spans := []geom.Span{{From: min(a.Y, b.Y), To: max(a.Y, b.Y)}}
	if level {
		spans[0] = geom.Span{From: min(a.X, b.X), To: max(a.X, b.X)}
	}
	for _, h := range holes {
		switch {
		case level && h.Y().Holds(a.Y):
			spans = without(spans, h.X())
		case !level && h.X().Holds(a.X):
			spans = without(spans, h.Y())
		}
	}
	var e []drawing.Element
	for _, s := range spans {
		p, q := geom.Pt(a.X, s.From), geom.Pt(a.X, s.To)
		if level {
			p, q = geom.Pt(s.From, a.Y), geom.Pt(s.To, a.Y)
		}
		if p != q {
			e = append(e, drawing.Line{Style: style, A: p, B: q})
		}
	}
	return e
}

// Outline returns the four sides of a box.
func Outline(box geom.Rect, style drawing.Style) drawing.Element {
	return drawing.Polyline{Style: style, Points: box.Polygon(), Closed: true}
}

// BrokenAll leaves level and upright lines out where they meet holes.
func BrokenAll(lines []drawing.Element, holes []geom.Rect) []drawing.Element {
	var e []drawing.Element
	for _, x := range lines {
		if l, ok := x.(drawing.Line); ok {
			e = append(e, Broken(l.A, l.B, l.Style, holes)...)
			continue
		}
		e = append(e, x)
	}
	return e
}

// New returns a new piece: a strong outline, hatched. Holes are left white.
func New(box geom.Rect, slope drawing.Slope, s paper.Scale, holes ...geom.Rect) []drawing.Element {
	apart := paper.MM(1.0)
	if s.OnPaper(min(box.W(), box.H())) > paper.MM(4) {
		apart = paper.MM(1.6)
	}
	return []drawing.Element{
		drawing.Area{Layer: drawing.FrameNew, Outline: box.Polygon(), Fill: drawing.White},
		drawing.HatchLines(box.Polygon(), drawing.Style{Layer: drawing.FramePattern, Pen: drawing.P18}, slope, apart, s, holes...),
		Outline(box, drawing.Style{Layer: drawing.FrameNew, Pen: drawing.P50}),
	}
}

// Out returns a piece that is taken out, interrupted at holes.
func Out(box geom.Rect, upright bool, s paper.Scale, holes ...geom.Rect) []drawing.Element {
	spans := []geom.Span{box.X()}
	if upright {
		spans = []geom.Span{box.Y()}
	}
	for _, h := range holes {
		if !h.Overlaps(box.Inset(-s.Real(paper.MM(0.6)))) {
			continue
		}
		hole := h.X()
		if upright {
			hole = h.Y()
		}
		spans = without(spans, hole)
	}
	var out []drawing.Element
	for _, sp := range spans {
		part := geom.RectOf(sp.From, box.Min.Y, sp.To, box.Max.Y)
		if upright {
			part = geom.RectOf(box.Min.X, sp.From, box.Max.X, sp.To)
		}
		if min(part.W(), part.H()) < 1 || max(sp.Len(), 1) < min(box.W(), box.H())+s.Real(paper.MM(1.2)) {
			continue // too short for its sign
		}
		out = append(out, marks.Crosses(part, upright, s)...)
	}
	return out
}

// without takes hole out of spans.
func without(spans []geom.Span, hole geom.Span) []geom.Span {
	var out []geom.Span
	for _, s := range spans {
		if !s.Overlaps(hole) {
			out = append(out, s)
			continue
		}
		if s.From < hole.From {
			out = append(out, geom.Span{From: s.From, To: hole.From})
		}
		if hole.To < s.To {
			out = append(out, geom.Span{From: hole.To, To: s.To})
		}
	}
	return out
}

// Hidden returns the outline of a box that lies behind or in the wall.
func Hidden(box geom.Rect, layer drawing.Layer) []drawing.Element {
	style := drawing.Style{Layer: layer, Pen: drawing.P35, Dash: drawing.Hidden}
	c := box.Polygon()
	var out []drawing.Element
	for i, p := range c {
		q := c[(i+1)%len(c)]
		if p != q {
			out = append(out, drawing.Line{Style: style, A: p, B: q})
		}
	}
	return out
}
