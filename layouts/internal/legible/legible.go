// Package legible finds what makes a drawing hard to read: text over text,
// lines through text, and text or dimension lines that are covered. Tests of
// views use it.
//
// In and out: elements and their scale in; one sentence for each fault out.
//
// Units and axes: those of the drawing. Errors: none.
//
// Limits: a label, a letter in its box and a dimension are taken as wholes:
// their own lines may touch their own text; a white area hides what was drawn
// before it.
package legible

import (
	"fmt"
	"strings"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// item is one text, line or white area with the whole that it belongs to.
type item struct {
	owner int // 0 for none
	text  *drawing.Text
	box   geom.Rect // of a text or a white area
	a, b  geom.Point
	pen   drawing.Pen
	layer drawing.Layer
	kind  kind
}

type kind int

const (
	aText kind = iota
	aLine
	aWhite
)

// reader gathers the items of a drawing in the order in which they are drawn.
type reader struct {
	scale  paper.Scale
	items  []item
	owners int
}

// Faults returns what is wrong, one sentence each.
func Faults(elements []drawing.Element, s paper.Scale) []string {
	r := reader{scale: s}
	r.gather(elements, 0)
	var out []string
	air := s.Real(paper.MM(0.1))
	for i, t := range r.items {
		if t.kind != aText {
			continue
		}
		tight := t.box.Inset(air)
		for j, o := range r.items {
			switch o.kind {
			case aText:
				if j > i && tight.Overlaps(o.box.Inset(air)) {
					out = append(out, fmt.Sprintf("%q and %q stand on each other", t.text.String, o.text.String))
				}
			case aLine:
				if o.owner != 0 && o.owner == t.owner || o.pen < drawing.P18 || !crosses(o.a, o.b, tight) || r.hidden(j, i, tight) {
					continue
				}
				out = append(out, fmt.Sprintf("a line of pen %d from %s to %s runs through %q at %s",
					o.pen, say(o.a), say(o.b), t.text.String, say(t.box.Mid())))
			case aWhite:
				if j > i && tight.Overlaps(o.box) {
					out = append(out, fmt.Sprintf("%q at %s is covered", t.text.String, say(t.box.Mid())))
				}
			}
		}
	}
	return append(out, r.covered()...)
}

// covered finds dimension lines under something white.
func (r *reader) covered() []string {
	var out []string
	air := r.scale.Real(paper.MM(0.1))
	for i, l := range r.items {
		if l.kind != aLine || l.layer != drawing.Dims {
			continue
		}
		for _, o := range r.items[i+1:] {
			if o.kind == aWhite && o.layer != drawing.Dims && crosses(l.a, l.b, o.box.Inset(air)) {
				out = append(out, fmt.Sprintf("a dimension line from %s to %s is covered at %s", say(l.a), say(l.b), say(o.box.Mid())))
			}
		}
	}
	return out
}

func say(p geom.Point) string {
	return fmt.Sprintf("(%.0f, %.0f) mm", p.X.Millimetres(), p.Y.Millimetres())
}

// hidden reports whether a white area drawn after the line and not after the
// text covers the box.
func (r *reader) hidden(line, text int, box geom.Rect) bool {
	for j := line + 1; j < text; j++ {
		o := r.items[j]
		if o.kind == aWhite && o.box.X().Holds(box.Min.X) && o.box.X().Holds(box.Max.X) && o.box.Y().Holds(box.Min.Y) && o.box.Y().Holds(box.Max.Y) {
			return true
		}
	}
	return false
}

func (r *reader) gather(elements []drawing.Element, owner int) {
	for _, e := range elements {
		switch e := e.(type) {
		case drawing.Group:
			if owner == 0 && whole(e.ID) {
				r.owners++
				r.gather(e.Elements, r.owners)
				continue
			}
			r.gather(e.Elements, owner)
		case drawing.Dimension:
			o := owner
			if o == 0 {
				r.owners++
				o = r.owners
			}
			r.gather(e.Picture, o)
		case drawing.Text:
			if e.String != "" {
				r.items = append(r.items, item{owner: owner, kind: aText, text: &e, box: drawing.TextBox(e, r.scale)})
			}
		case drawing.Line:
			r.line(owner, e.Style, e.A, e.B)
		case drawing.Polyline:
			for i := 1; i < len(e.Points); i++ {
				r.line(owner, e.Style, e.Points[i-1], e.Points[i])
			}
			if n := len(e.Points); e.Closed && n > 2 {
				r.line(owner, e.Style, e.Points[n-1], e.Points[0])
			}
		case drawing.Hatch:
			for _, l := range e.Lines {
				r.line(owner, e.Style, l[0], l[1])
			}
		case drawing.Area:
			if e.Fill == drawing.White {
				r.items = append(r.items, item{owner: owner, kind: aWhite, box: geom.Polygon(e.Outline).Bounds(), layer: e.Layer})
				continue
			}
			b := geom.Polygon(e.Outline).Bounds()
			style := drawing.Style{Pen: drawing.P18}
			r.line(owner, style, b.Min, b.Max)
			r.line(owner, style, geom.Pt(b.Min.X, b.Max.Y), geom.Pt(b.Max.X, b.Min.Y))
		}
	}
}

func (r *reader) line(owner int, s drawing.Style, a, b geom.Point) {
	r.items = append(r.items, item{owner: owner, kind: aLine, a: a, b: b, pen: s.Pen, layer: s.Layer})
}

// whole reports whether a group is one sign, whose lines belong to its text.
func whole(id string) bool {
	for _, p := range []string{"label-", "wall-letter-"} {
		if strings.HasPrefix(id, p) {
			return true
		}
	}
	return false
}

// crosses reports whether the line from a to b passes through the inside of box.
func crosses(a, b geom.Point, box geom.Rect) bool {
	if box.Empty() {
		return false
	}
	t0, t1 := 0.0, 1.0
	dx, dy := float64(b.X-a.X), float64(b.Y-a.Y)
	for _, side := range [4][2]float64{
		{-dx, float64(a.X - box.Min.X)}, {dx, float64(box.Max.X - a.X)},
		{-dy, float64(a.Y - box.Min.Y)}, {dy, float64(box.Max.Y - a.Y)},
	} {
		p, q := side[0], side[1]
		switch {
		case p == 0:
			if q <= 0 {
				return false
			}
		case p < 0:
			t0 = max(t0, q/p)
		default:
			t1 = min(t1, q/p)
		}
	}
	return t0 < t1
}
