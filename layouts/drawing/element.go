package drawing

import (
	"roomwright/geom"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// Element is one thing drawn. The list is closed.
type Element interface {
	// bounds returns what the element covers, text included, at scale s.
	bounds(s paper.Scale) geom.Rect
	// placed returns the element in paper: divided by the scale, then moved.
	placed(s paper.Scale, to geom.Point) Element
	element()
}

// Line is a straight line.
type Line struct {
	Style
	A, B geom.Point
}

// Polyline is an open or closed run of lines.
type Polyline struct {
	Style
	Points []geom.Point
	Closed bool
}

// Arc is a part of a circle, counter-clockwise from From to To, in degrees
// from the x axis; From 0 and To 360 are the whole circle.
type Arc struct {
	Style
	Center   geom.Point
	Radius   geom.Length
	From, To int
}

// Fill is the tone of an area.
type Fill int

// The fills.
const (
	White  Fill = iota // hides what was drawn before it
	Black              // solid
	Accent             // solid, in the accent colour
)

// Area is a filled outline without a line round it.
type Area struct {
	Layer   Layer
	Outline []geom.Point
	Fill    Fill
}

// Hatch is many lines of one pen, made by HatchLines.
type Hatch struct {
	Style
	Lines [][2]geom.Point
}

// Anchor is the part of a text that stands at its point.
type Anchor int

// The anchors.
const (
	Start Anchor = iota
	Middle
	End
)

// Text is one line of text; At is on its baseline.
type Text struct {
	Layer  Layer
	At     geom.Point
	String string
	Cap    paper.Length // cap height
	Bold   bool
	Accent bool
	Anchor Anchor
	Turned bool // a quarter turn counter-clockwise: read from the right
}

// Dimension is one linear dimension, across or up, with the picture that
// shows it.
type Dimension struct {
	Layer    Layer
	From, To geom.Point // where the extension lines begin
	Line     geom.Point // a point of the dimension line
	Vertical bool
	Figure   string     // as printed
	TextAt   geom.Point // middle of the figure
	Picture  []Element
}

// Measure returns the length that the dimension measures.
func (d Dimension) Measure() geom.Length {
	if d.Vertical {
		return (d.To.Y - d.From.Y).Abs()
	}
	return (d.To.X - d.From.X).Abs()
}

// Group is elements that belong together, with a title for people who cannot
// see the drawing.
type Group struct {
	ID       string // ours: lower case letters, digits and hyphens
	Title    string
	Elements []Element
}

// Drawing is one view in true size.
type Drawing struct {
	Name     string // short and unique in a set: "wall-a", "ceiling"
	Title    string
	Scale    paper.Scale // for which its text, ticks and symbols are sized
	Elements []Element
}

// Bounds returns all that the drawing covers, text included.
func (d Drawing) Bounds() geom.Rect { return Bounds(d.Elements, d.Scale) }

// Bounds returns what elements cover at scale s.
func Bounds(elements []Element, s paper.Scale) geom.Rect {
	var r geom.Rect
	for _, e := range elements {
		r = r.Union(e.bounds(s))
	}
	return r
}

// Place returns elements in paper: divided by the scale s, then moved so that
// the drawing's origin comes to at.
func Place(elements []Element, s paper.Scale, at geom.Point) []Element {
	out := make([]Element, len(elements))
	for i, e := range elements {
		out[i] = e.placed(s, at)
	}
	return out
}

// Walk calls visit for every element, those inside groups included and those
// inside the pictures of dimensions when pictures is true.
func Walk(elements []Element, pictures bool, visit func(Element)) {
	for _, e := range elements {
		visit(e)
		switch e := e.(type) {
		case Group:
			Walk(e.Elements, pictures, visit)
		case Dimension:
			if pictures {
				Walk(e.Picture, pictures, visit)
			}
		}
	}
}

func (Line) element()      {}
func (Polyline) element()  {}
func (Arc) element()       {}
func (Area) element()      {}
func (Hatch) element()     {}
func (Text) element()      {}
func (Dimension) element() {}
func (Group) element()     {}

func (e Line) bounds(paper.Scale) geom.Rect     { return geom.Polygon{e.A, e.B}.Bounds() }
func (e Polyline) bounds(paper.Scale) geom.Rect { return geom.Polygon(e.Points).Bounds() }
func (e Area) bounds(paper.Scale) geom.Rect     { return geom.Polygon(e.Outline).Bounds() }
func (e Arc) bounds(paper.Scale) geom.Rect {
	if e.Radius <= 0 {
		return geom.Rect{}
	}
	return geom.Rect{Min: e.Center, Max: e.Center}.Inset(-e.Radius)
}

func (e Hatch) bounds(paper.Scale) geom.Rect {
	var r geom.Rect
	for _, l := range e.Lines {
		r = r.Union(geom.Polygon{l[0], l[1]}.Bounds())
	}
	return r
}

func (e Dimension) bounds(s paper.Scale) geom.Rect { return Bounds(e.Picture, s) }
func (e Group) bounds(s paper.Scale) geom.Rect     { return Bounds(e.Elements, s) }
func (e Text) bounds(s paper.Scale) geom.Rect      { return TextBox(e, s) }

// TextBox returns the box of a text at scale s: as wide as it prints, from a
// fifth of a cap below the baseline (descenders) to a cap above it.
func TextBox(t Text, s paper.Scale) geom.Rect {
	if t.String == "" {
		return geom.Rect{}
	}
	w := s.Real(lettering.Width(t.String, t.Cap, t.Bold))
	up, down := s.Real(t.Cap+t.Cap/20), s.Real(t.Cap*3/10)
	left := geom.Length(0)
	switch t.Anchor {
	case Middle:
		left = -w / 2
	case End:
		left = -w
	}
	if t.Turned {
		return geom.RectOf(t.At.X-up, t.At.Y+left, t.At.X+down, t.At.Y+left+w)
	}
	return geom.RectOf(t.At.X+left, t.At.Y-down, t.At.X+left+w, t.At.Y+up)
}

// onto returns p in paper.
func onto(p geom.Point, s paper.Scale, to geom.Point) geom.Point {
	return geom.Pt(geom.Length(s.OnPaper(p.X))+to.X, geom.Length(s.OnPaper(p.Y))+to.Y)
}

func ontoAll(list []geom.Point, s paper.Scale, to geom.Point) []geom.Point {
	out := make([]geom.Point, len(list))
	for i, p := range list {
		out[i] = onto(p, s, to)
	}
	return out
}

func (e Line) placed(s paper.Scale, to geom.Point) Element {
	e.A, e.B = onto(e.A, s, to), onto(e.B, s, to)
	return e
}

func (e Polyline) placed(s paper.Scale, to geom.Point) Element {
	e.Points = ontoAll(e.Points, s, to)
	return e
}

func (e Arc) placed(s paper.Scale, to geom.Point) Element {
	e.Center, e.Radius = onto(e.Center, s, to), geom.Length(s.OnPaper(e.Radius))
	return e
}

func (e Area) placed(s paper.Scale, to geom.Point) Element {
	e.Outline = ontoAll(e.Outline, s, to)
	return e
}

func (e Hatch) placed(s paper.Scale, to geom.Point) Element {
	lines := make([][2]geom.Point, len(e.Lines))
	for i, l := range e.Lines {
		lines[i] = [2]geom.Point{onto(l[0], s, to), onto(l[1], s, to)}
	}
	e.Lines = lines
	return e
}

func (e Text) placed(s paper.Scale, to geom.Point) Element {
	e.At = onto(e.At, s, to)
	return e
}

func (e Dimension) placed(s paper.Scale, to geom.Point) Element {
	e.From, e.To, e.Line, e.TextAt = onto(e.From, s, to), onto(e.To, s, to), onto(e.Line, s, to), onto(e.TextAt, s, to)
	e.Picture = Place(e.Picture, s, to)
	return e
}

func (e Group) placed(s paper.Scale, to geom.Point) Element {
	e.Elements = Place(e.Elements, s, to)
	return e
}
