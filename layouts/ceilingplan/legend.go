package ceilingplan

import (
	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
	"roomwright/layouts/planwalls"
)

// legend explains what is in the plan.
func (v *view) legend() []drawing.Sample {
	full := paper.Full()
	mm := func(x float64) geom.Length { return geom.Length(paper.MM(x)) }
	line := func(pen drawing.Style, y float64) drawing.Line {
		return drawing.Line{Style: pen, A: geom.Pt(0, mm(y)), B: geom.Pt(mm(13), mm(y))}
	}
	half := func(pen drawing.Style, a, b float64) drawing.Line {
		return drawing.Line{Style: pen, A: geom.Pt(mm(a), 0), B: geom.Pt(mm(b), 0)}
	}
	out := []drawing.Sample{
		{Words: "main tee; cross tee", Swatch: []drawing.Element{half(mainPen(), 0, 6), half(crossPen(), 8, 13)}},
		{Words: "wall face and wall angle", Swatch: []drawing.Element{line(drawing.Style{Layer: drawing.WallFull, Pen: drawing.P50}, 0.6), line(anglePen(), -0.6)}},
	}
	if v.used["hanger"] {
		words, swatch := "hanger wire", marks.Hanger(geom.Pt(mm(4), 0), full)
		if v.used["splice"] {
			words, swatch = words+"; splice of a main", append(swatch, marks.Splice(geom.Pt(mm(10), 0), true, full)...)
		}
		out = append(out, drawing.Sample{Words: words, Swatch: swatch})
	} else if v.used["splice"] {
		out = append(out, drawing.Sample{Words: "splice of a main", Swatch: marks.Splice(geom.Pt(mm(6.5), 0), true, full)})
	}
	if v.used["light"] {
		out = append(out, drawing.Sample{Words: "light panel", Swatch: marks.LightPanel(geom.RectOf(mm(4.3), mm(-2.2), mm(8.7), mm(2.2)), full)})
	}
	if v.used["joist"] {
		out = append(out, drawing.Sample{Words: "joist center, above", Swatch: []drawing.Element{line(joistPen(), 0)}})
	}
	if v.used["over"] {
		out = append(out, drawing.Sample{Words: "edge of a thing above", Swatch: []drawing.Element{line(overPen(), 0)}})
	}
	if v.used["section"] {
		out = append(out, drawing.Sample{Words: "section, looking the way it points", Swatch: []drawing.Element{marks.Pennant("X", geom.Pt(mm(6), 0), marks.RightWay, full)}})
	}
	out = append(out, planwalls.Samples(v.used)...)
	out = append(out, drawing.Sample{Words: "piece mark, as on the list", Swatch: []drawing.Element{marks.Label("M1", true, geom.Pt(mm(6.5), 0), full)}})
	if v.used["thread"] {
		dots := []drawing.Element{drawing.Line{Style: drawing.Style{Layer: drawing.Symbols, Pen: drawing.P18}, A: geom.Pt(mm(1), 0), B: geom.Pt(mm(12), 0)}}
		for _, x := range []float64{1, 6.5, 12} {
			dots = append(dots, dimension.Dot(geom.Pt(mm(x), 0), drawing.Symbols, full))
		}
		out = append(out, drawing.Sample{Words: "cells with one mark", Swatch: dots})
	}
	return out
}
