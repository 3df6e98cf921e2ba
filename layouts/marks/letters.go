package marks

import (
	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// letterCap is the cap height of wall letters.
const letterCap = 3.5

// WallLetter returns the letter of a wall in a square of 5.4 centred at a
// point; side says where its wall lies, and that side of the square is heavy.
func WallLetter(letter string, at geom.Point, side dimension.Side, s paper.Scale) drawing.Group {
	h := on(s, 5.4)
	w := max(h, s.Real(lettering.Width(letter, paper.MM(letterCap), true))+on(s, 2.2))
	box := boxAt(at, w, h)
	corners := box.Polygon()
	over := on(s, 0.09) // half of the thin line, so that the corners are closed
	a, b := geom.Pt(box.Min.X-over, box.Max.Y), geom.Pt(box.Max.X+over, box.Max.Y)
	switch side {
	case dimension.Below:
		a.Y, b.Y = box.Min.Y, box.Min.Y
	case dimension.LeftOf:
		a, b = geom.Pt(box.Min.X, box.Min.Y-over), geom.Pt(box.Min.X, box.Max.Y+over)
	case dimension.RightOf:
		a, b = geom.Pt(box.Max.X, box.Min.Y-over), geom.Pt(box.Max.X, box.Max.Y+over)
	}
	return drawing.Group{ID: "wall-letter-" + slug(letter), Title: "wall " + letter, Elements: []drawing.Element{
		drawing.Area{Layer: drawing.Symbols, Outline: corners, Fill: drawing.White},
		drawing.Polyline{Style: ink(drawing.P18), Points: corners, Closed: true},
		drawing.Line{Style: ink(drawing.P100), A: a, B: b},
		drawing.Text{
			Layer: drawing.Symbols, At: geom.Pt(at.X, at.Y-on(s, letterCap)/2), String: letter,
			Cap: paper.MM(letterCap), Bold: true, Anchor: drawing.Middle,
		},
	}}
}

// Way is the direction in which a section looks.
type Way int

// The ways.
const (
	Up Way = iota
	Down
	LeftWay
	RightWay
)

// Pennant returns the sign at one end of a section: a bar with its middle at
// the point, a solid triangle in the direction of sight and the letter.
func Pennant(letter string, at geom.Point, look Way, s paper.Scale) drawing.Group {
	const barHalf, base, tall, air, letterSize = 1.9, 1.5, 3.0, 1.2, 2.8
	turn := func(along, ahead float64) geom.Point { // along the bar, ahead in sight
		x, y := on(s, along), on(s, ahead)
		switch look {
		case Up:
			return at.Add(geom.Pt(x, y))
		case Down:
			return at.Add(geom.Pt(x, -y))
		case LeftWay:
			return at.Add(geom.Pt(-y, x))
		}
		return at.Add(geom.Pt(y, x))
	}
	text := drawing.Text{
		Layer: drawing.Symbols, At: geom.Pt(at.X-on(s, air), at.Y-on(s, letterSize)/2), String: letter,
		Cap: paper.MM(letterSize), Bold: true, Anchor: drawing.End,
	}
	switch look {
	case Up, Down:
		text.At.X -= on(s, barHalf)
	case LeftWay:
		text.At.X, text.Anchor = at.X+on(s, air), drawing.Start
	}
	return drawing.Group{ID: "section-" + slug(letter), Title: "section " + letter, Elements: []drawing.Element{
		drawing.Line{Style: ink(drawing.P70), A: turn(-barHalf, 0), B: turn(barHalf, 0)},
		drawing.Area{
			Layer: drawing.Symbols, Outline: []geom.Point{turn(-base, 0), turn(0, tall), turn(base, 0)}, Fill: drawing.Black,
		},
		text,
	}}
}
