package dxf

import (
	"fmt"

	"github.com/yofu/dxf/entity"
	"github.com/yofu/dxf/handle"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// place turns elements of one view into entities.
type place struct {
	w     *writer
	at    geom.Point
	scale paper.Scale
	owner *record
	on    drawing.Layer // the layer that a dimension's picture is put on, else empty
}

// xy returns a point in the file's unit.
func (p place) xy(q geom.Point) [2]float64 {
	q = q.Add(p.at)
	return [2]float64{p.w.real(q.X), p.w.real(q.Y)}
}

// all turns elements into entities, in order.
func (p place) all(elements []drawing.Element) []item {
	var out []item
	for _, e := range elements {
		out = append(out, p.one(e)...)
	}
	return out
}

// layer returns the layer that an element of layer l goes on.
func (p place) layer(l drawing.Layer) drawing.Layer {
	if p.on != "" {
		return p.on
	}
	return l
}

func (p place) base(kind string, l drawing.Layer, s style) base {
	return base{kind: kind, owner: p.owner, layer: p.w.layer(p.layer(l)), style: s}
}

func (p place) one(e drawing.Element) []item {
	switch e := e.(type) {
	case drawing.Line:
		return p.line(e.Style, e.A, e.B)
	case drawing.Hatch:
		var out []item
		for _, l := range e.Lines {
			out = append(out, p.line(e.Style, l[0], l[1])...)
		}
		return out
	case drawing.Polyline:
		return p.polyline(e)
	case drawing.Arc:
		return p.arc(e)
	case drawing.Area:
		return p.area(e)
	case drawing.Text:
		return p.text(e)
	case drawing.Dimension:
		return p.dimension(e)
	case drawing.Group:
		return p.all(e.Elements)
	}
	panic(fmt.Sprintf("dxf: an element of a kind that is not in the list: %T", e))
}

// dress gives a library entity its layer, owner, style and line type scale.
func (p place) dress(e interface {
	entity.Entity
	SetOwner(handle.Handler)
}, s drawing.Style) item {
	e.SetLayer(p.w.layer(p.layer(s.Layer)))
	e.SetOwner(p.owner)
	if s.Dash != drawing.Solid {
		e.SetLtscale(float64(p.scale.Ratio))
	}
	return styled{Entity: e, style: of(s)}
}

func (p place) line(s drawing.Style, a, b geom.Point) []item {
	if a == b {
		return nil
	}
	l := entity.NewLine()
	from, to := p.xy(a), p.xy(b)
	l.Start, l.End = []float64{from[0], from[1], 0}, []float64{to[0], to[1], 0}
	p.reach(from, to)
	return []item{p.dress(l, s)}
}

func (p place) polyline(e drawing.Polyline) []item {
	if len(e.Points) < 2 {
		return nil
	}
	l := entity.NewLwPolyline(len(e.Points))
	for i, q := range e.Points {
		v := p.xy(q)
		l.Vertices[i] = []float64{v[0], v[1]}
		p.reach(v)
	}
	if e.Closed {
		l.Close()
	}
	return []item{p.dress(l, e.Style)}
}

func (p place) arc(e drawing.Arc) []item {
	if e.Radius <= 0 {
		return nil
	}
	c := entity.NewCircle()
	m := p.xy(e.Center)
	r := p.w.real(e.Radius)
	c.Center, c.Radius = []float64{m[0], m[1], 0}, r
	p.reach([2]float64{m[0] - r, m[1] - r}, [2]float64{m[0] + r, m[1] + r})
	if e.To-e.From >= 360 {
		return []item{p.dress(c, e.Style)}
	}
	a := entity.NewArc(c)
	a.Angle = []float64{float64(e.From), float64(e.To)}
	return []item{p.dress(a, e.Style)}
}

// area fills what is black or in the accent; white hides nothing in a model.
func (p place) area(e drawing.Area) []item {
	if e.Fill == drawing.White || len(e.Outline) < 3 {
		return nil
	}
	s := &solid{base: p.base("HATCH", e.Layer, style{accent: e.Fill == drawing.Accent})}
	for _, q := range e.Outline {
		v := p.xy(q)
		p.reach(v)
		s.points = append(s.points, v)
	}
	return []item{s}
}

func (p place) text(e drawing.Text) []item {
	value := encode(e.String)
	if value == "" || e.Cap <= 0 {
		return nil
	}
	font := p.w.fonts[0].Name()
	if e.Bold {
		font = p.w.fonts[1].Name()
	}
	at := p.xy(e.At)
	box := drawing.TextBox(e, p.scale)
	p.reach(p.xy(box.Min), p.xy(box.Max))
	return []item{&text{
		base: p.base("TEXT", e.Layer, style{accent: e.Accent}),
		x:    at[0], y: at[1], height: p.w.real(p.scale.Real(e.Cap)), value: value, anchor: e.Anchor, turned: e.Turned, font: font,
	}}
}

// dimension writes a DIMENSION and the block that shows it.
func (p place) dimension(e drawing.Dimension) []item {
	r := &record{name: fmt.Sprintf("*D%d", len(p.w.blocks)-1)}
	p.w.tables[tRecord].add(r)
	b := &block{record: r, layer: p.w.zero, anonymous: true}
	p.w.blocks = append(p.w.blocks, b)
	inside := place{w: p.w, at: p.at, scale: p.scale, owner: r, on: p.layer(e.Layer)}
	b.items = inside.all(e.Picture)
	from, to, line := p.xy(e.From), p.xy(e.To), p.xy(e.Line)
	end := [2]float64{to[0], line[1]}
	if e.Vertical {
		end = [2]float64{line[0], to[1]}
	}
	for _, q := range [][2]float64{from, to, end} {
		b.items = append(b.items, &dot{base: base{kind: "POINT", owner: r, layer: p.w.points}, x: q[0], y: q[1]})
	}
	return []item{&dimensionEntity{
		base: p.base("DIMENSION", e.Layer, style{}), block: b, dims: p.w.dimStyleFor(p.scale),
		from: from, to: to, line: line, text: p.xy(e.TextAt), vertical: e.Vertical,
		measure: p.w.real(e.Measure()), figure: encode(e.Figure),
	}}
}

func (p place) reach(points ...[2]float64) {
	for _, q := range points {
		p.w.reach(q[0], q[1])
	}
}
