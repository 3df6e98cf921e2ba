package dimension

import (
	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// Inside returns a dimension on the edges themselves, without extension lines,
// for a clear bay inside a view. Both ends are rounded from the origin of the
// view. It runs through from, up or across; a figure that does not fit stands
// beyond the far end.
func Inside(from, to geom.Point, vertical bool, s paper.Scale, show measure.Show) drawing.Dimension {
	f := frame{Above, from.Y, s}
	a, b := from.X, to.X
	if vertical {
		f = frame{LeftOf, from.X, s}
		a, b = from.Y, to.Y
	}
	if a > b {
		a, b = b, a
	}
	value := show.Round(b) - show.Round(a)
	figure := show.Figure(value)
	w := width(figure, figureCap, false, s)
	span := geom.Span{From: a, To: b}
	text := geom.Span{From: span.Mid() - w/2, To: span.Mid() - w/2 + w}
	drawn := span
	if w+on(s, fitRoom) > span.Len() {
		text = geom.Span{From: b + on(s, outsideOff), To: b + on(s, outsideOff) + w}
		drawn.To = text.To
	}
	off := on(s, textOff)
	return drawing.Dimension{
		Layer: drawing.Dims, From: from, To: to, Line: f.pt(span.Mid(), 0), Vertical: vertical, Figure: figure,
		TextAt: f.pt(text.From+w/2, off+on(s, figureCap)/2),
		Picture: []drawing.Element{
			f.stroke(drawn.From, 0, drawn.To, 0), f.tick(a, 0), f.tick(b, 0),
			drawing.Text{
				Layer: drawing.Dims, At: f.pt(text.From, off), String: figure,
				Cap: paper.MM(figureCap), Turned: vertical,
			},
		},
	}
}
