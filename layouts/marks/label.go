package marks

import (
	"strings"

	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// Sizes of a tie-on label on paper, in millimetres.
const (
	labelHigh    = 4.6
	labelAround  = 4.0 // wider than its text
	labelFlat    = 1.9 // from the flat end to the text
	labelChamfer = 1.3
	eyeIn        = 1.15 // from the pointed end to the eye
	eyeRadius    = 0.42
	labelCap     = 2.4
)

// on returns the real length that prints as so many millimetres.
func on(s paper.Scale, mm float64) geom.Length { return s.Real(paper.MM(mm)) }

// ink returns a style on the layer of signs.
func ink(pen drawing.Pen) drawing.Style {
	return drawing.Style{Layer: drawing.Symbols, Pen: pen}
}

// LabelSize returns the printed size of a label.
func LabelSize(mark string, isNew bool) (w, h paper.Length) {
	return lettering.Width(mark, paper.MM(labelCap), isNew) + paper.MM(labelAround), paper.MM(labelHigh)
}

// labelBox returns the box of a label centred at a point.
func labelBox(mark string, isNew bool, at geom.Point, s paper.Scale) geom.Rect {
	w, h := LabelSize(mark, isNew)
	return boxAt(at, s.Real(w), s.Real(h))
}

// boxAt returns a box of a size centred at a point.
func boxAt(at geom.Point, w, h geom.Length) geom.Rect {
	return geom.RectOf(at.X-w/2, at.Y-h/2, at.X-w/2+w, at.Y-h/2+h)
}

// eyeOf returns where the eye of a label lies; it is on the right when the
// string goes there.
func eyeOf(box geom.Rect, right bool, s paper.Scale) geom.Point {
	if right {
		return geom.Pt(box.Max.X-on(s, eyeIn), box.Y().Mid())
	}
	return geom.Pt(box.Min.X+on(s, eyeIn), box.Y().Mid())
}

// rightward reports whether the eye of a label at a point turns right for a
// string to a target.
func rightward(at geom.Point, path []geom.Point) bool {
	return len(path) > 0 && path[0].X > at.X
}

// Label returns a tie-on label centred at a point, bold and framed 0.35 for a
// new piece, thin for the others. The string, when given, leaves the eye for
// the target, the last point, over one knee if there are two; it ends there in
// a dot.
func Label(mark string, isNew bool, at geom.Point, s paper.Scale, string_ ...geom.Point) drawing.Group {
	box := labelBox(mark, isNew, at, s)
	right := rightward(at, string_)
	eye := eyeOf(box, right, s)
	c := on(s, labelChamfer)
	outline := []geom.Point{
		{X: box.Min.X, Y: box.Max.Y - c}, {X: box.Min.X + c, Y: box.Max.Y}, box.Max,
		{X: box.Max.X, Y: box.Min.Y}, {X: box.Min.X + c, Y: box.Min.Y}, {X: box.Min.X, Y: box.Min.Y + c},
	}
	text := geom.Pt(box.Max.X-on(s, labelFlat), at.Y-on(s, labelCap)/2)
	anchor := drawing.End
	if right {
		for i, p := range outline {
			outline[i].X = box.Min.X + box.Max.X - p.X
		}
		text.X, anchor = box.Min.X+on(s, labelFlat), drawing.Start
	}
	pen := drawing.P18
	if isNew {
		pen = drawing.P35
	}
	g := drawing.Group{ID: "label-" + slug(mark), Title: "label " + mark}
	g.Elements = append(g.Elements,
		drawing.Area{Layer: drawing.Symbols, Outline: outline, Fill: drawing.White},
		drawing.Polyline{Style: ink(pen), Points: outline, Closed: true})
	from := eye
	for _, p := range string_ {
		if p != from {
			g.Elements = append(g.Elements, drawing.Line{Style: ink(drawing.P18), A: from, B: p})
		}
		from = p
	}
	if len(string_) > 0 {
		g.Elements = append(g.Elements, dimension.Dot(from, drawing.Symbols, s))
	}
	g.Elements = append(g.Elements,
		dimension.Disc(eye, paper.MM(eyeRadius), drawing.Black, drawing.Symbols, s),
		drawing.Text{Layer: drawing.Symbols, At: text, String: mark, Cap: paper.MM(labelCap), Bold: isNew, Anchor: anchor})
	return g
}

// Beside returns where the centre of a label lies so that its string runs
// straight to the target and shows for the length of gap: the label lies to the
// given way of the target.
func Beside(mark string, isNew bool, target geom.Point, way Way, gap paper.Length, s paper.Scale) geom.Point {
	w, h := LabelSize(mark, isNew)
	wide, high, free := s.Real(w), s.Real(h), s.Real(gap)
	eye := wide/2 - on(s, eyeIn) // the eye is at the left of a label above or below
	switch way {
	case Up:
		return target.Add(geom.Pt(eye, free+high-high/2))
	case Down:
		return target.Add(geom.Pt(eye, -free-high/2))
	case LeftWay:
		return target.Add(geom.Pt(-free-wide/2, 0))
	}
	return target.Add(geom.Pt(free+wide/2, 0))
}

// slug returns a text in lower case letters, digits and hyphens.
func slug(text string) string {
	return strings.Trim(strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= '0' && r <= '9':
			return r
		case r >= 'A' && r <= 'Z':
			return r - 'A' + 'a'
		}
		return '-'
	}, text), "-")
}
