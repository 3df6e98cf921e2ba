package marks

import (
	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// Hanger returns the sign of a hanger wire on a main tee: a ring with a dot.
func Hanger(at geom.Point, s paper.Scale) []drawing.Element {
	layer := drawing.HangerWire
	return []drawing.Element{
		dimension.Disc(at, paper.MM(1.25), drawing.White, layer, s),
		drawing.Arc{Style: drawing.Style{Layer: layer, Pen: drawing.P25}, Center: at, Radius: on(s, 1.25), From: 0, To: 360},
		dimension.Disc(at, paper.MM(0.45), drawing.Black, layer, s),
	}
}

// Splice returns the sign of a splice in a main tee that runs across or up:
// two short bars in a gap.
func Splice(at geom.Point, horizontal bool, s paper.Scale) []drawing.Element {
	half, gap, wide := on(s, 1.5), on(s, 0.5), on(s, 0.8)
	layer := drawing.MainTee
	turn := func(along, across geom.Length) geom.Point {
		if horizontal {
			return at.Add(geom.Pt(along, across))
		}
		return at.Add(geom.Pt(across, along))
	}
	bar := func(along geom.Length) drawing.Element {
		return drawing.Line{Style: drawing.Style{Layer: layer, Pen: drawing.P35}, A: turn(along, -half), B: turn(along, half)}
	}
	return []drawing.Element{
		drawing.Area{Layer: layer, Fill: drawing.White, Outline: []geom.Point{
			turn(-gap, wide), turn(gap, wide), turn(gap, -wide), turn(-gap, -wide),
		}},
		bar(-gap), bar(gap),
	}
}

// LightPanel returns a light panel seen from below: its outline, an inner one
// and mitred corners. In a box too small for the inner outline it stands at a
// quarter of the box.
func LightPanel(box geom.Rect, s paper.Scale) []drawing.Element {
	if box.Empty() {
		return nil
	}
	inner := box.Inset(min(on(s, 2.2), box.W()/4, box.H()/4))
	style := func(pen drawing.Pen) drawing.Style { return drawing.Style{Layer: drawing.LightPanel, Pen: pen} }
	a, b := box.Polygon(), inner.Polygon()
	out := []drawing.Element{
		drawing.Area{Layer: drawing.LightPanel, Outline: a, Fill: drawing.White},
		drawing.Polyline{Style: style(drawing.P50), Points: a, Closed: true},
		drawing.Polyline{Style: style(drawing.P18), Points: b, Closed: true},
	}
	for i := range a {
		out = append(out, drawing.Line{Style: style(drawing.P18), A: a[i], B: b[i]})
	}
	return out
}
