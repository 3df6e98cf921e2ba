package marks

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// SawLine returns the chain line at the height of a saw cut; it belongs behind
// all kept pieces.
func SawLine(x geom.Span, y geom.Length, s paper.Scale) drawing.Element {
	return drawing.Line{
		Style: drawing.Style{Layer: drawing.SawLine, Pen: drawing.P18, Dash: drawing.Chain, Accent: true},
		A:     geom.Pt(x.From, y), B: geom.Pt(x.To, y),
	}
}

// SawStroke returns the cut of one piece: a heavy stroke across it and a solid
// nib on each side with its tip on the piece.
func SawStroke(x geom.Span, y geom.Length, s paper.Scale) []drawing.Element {
	const long, half = 1.75, 0.95
	nib := func(tip, out geom.Length) drawing.Element {
		return drawing.Area{Layer: drawing.SawLine, Fill: drawing.Accent, Outline: []geom.Point{
			{X: tip, Y: y}, {X: out, Y: y + on(s, half)}, {X: out, Y: y - on(s, half)},
		}}
	}
	return []drawing.Element{
		drawing.Line{
			Style: drawing.Style{Layer: drawing.SawLine, Pen: drawing.P70, Accent: true},
			A:     geom.Pt(x.From, y), B: geom.Pt(x.To, y),
		},
		nib(x.From, x.From-on(s, long)),
		nib(x.To, x.To+on(s, long)),
	}
}

// Crosses returns a piece that is taken out: its long sides dashed and a small
// × every 8 mm, a little wider than the piece.
func Crosses(box geom.Rect, upright bool, s paper.Scale) []drawing.Element {
	if box.Empty() {
		return nil
	}
	side := drawing.Style{Layer: drawing.FrameOut, Pen: drawing.P25, Dash: drawing.Taken}
	thin := drawing.Style{Layer: drawing.FrameOut, Pen: drawing.P18}
	line := func(style drawing.Style, x1, y1, x2, y2 geom.Length) drawing.Element {
		return drawing.Line{Style: style, A: geom.Pt(x1, y1), B: geom.Pt(x2, y2)}
	}
	l, b, r, t := box.Min.X, box.Min.Y, box.Max.X, box.Max.Y
	out := []drawing.Element{line(side, l, b, l, t), line(side, r, b, r, t)}
	length, thick := box.H(), box.W()
	if !upright {
		out = []drawing.Element{line(side, l, b, r, b), line(side, l, t, r, t)}
		length, thick = box.W(), box.H()
	}
	n := max(1, int64((length+on(s, 4))/on(s, 8)))
	half := thick/2 + on(s, 0.35)
	for i := range n {
		at := length * geom.Length(2*i+1) / geom.Length(2*n)
		c := geom.Pt(box.Mid().X, t-at)
		if !upright {
			c = geom.Pt(l+at, box.Mid().Y)
		}
		out = append(out,
			line(thin, c.X-half, c.Y-half, c.X+half, c.Y+half),
			line(thin, c.X-half, c.Y+half, c.X+half, c.Y-half))
	}
	return out
}
