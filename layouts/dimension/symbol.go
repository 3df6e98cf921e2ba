package dimension

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// corners are the corners of a regular polygon with 24 corners in the unit
// circle, times one million: cosines of 0, 15 .. 90 degrees.
func corners() [7]int64 {
	return [7]int64{1000000, 965926, 866025, 707107, 500000, 258819, 0}
}

// Disc returns a filled disc; it is an outline of 24 corners.
func Disc(center geom.Point, radius paper.Length, fill drawing.Fill, layer drawing.Layer, s paper.Scale) drawing.Area {
	r := s.Real(radius)
	c := corners()
	size := func(n int64) geom.Length { return (r * geom.Length(n)).Round(1000000) / 1000000 }
	outline := make([]geom.Point, 0, 24)
	for q := range 4 {
		for i := range 6 {
			x, y := size(c[i]), size(c[6-i])
			for range q {
				x, y = -y, x
			}
			outline = append(outline, center.Add(geom.Pt(x, y)))
		}
	}
	return drawing.Area{Layer: layer, Outline: outline, Fill: fill}
}

// Dot returns the dot in which strings, knees and callouts end.
func Dot(at geom.Point, layer drawing.Layer, s paper.Scale) drawing.Area {
	return Disc(at, paper.MM(dotRadius), drawing.Black, layer, s)
}

// Ring returns the open ring that stands for 0 in running figures.
func Ring(at geom.Point, layer drawing.Layer, s paper.Scale) drawing.Arc {
	return drawing.Arc{
		Style:  drawing.Style{Layer: layer, Pen: drawing.P35},
		Center: at, Radius: on(s, ringRadius), From: 0, To: 360,
	}
}
