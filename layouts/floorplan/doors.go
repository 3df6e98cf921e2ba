package floorplan

import (
	"fmt"
	"math"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/geom/room"
	"roomwright/layouts/drawing"
	"roomwright/layouts/planwalls"
)

// doors draws existing doors with their swing, windows, and openings wanted.
func (v *view) doors() {
	for i, d := range v.sides {
		faces := geom.Span{From: -d.Finished, To: d.Outer}
		thin := drawing.Style{Layer: drawing.Glazing, Pen: drawing.P25}
		for k, h := range d.Wall.Doors {
			if h.Clear.Empty() {
				continue
			}
			g := drawing.Group{ID: fmt.Sprintf("plan-hole-%d-%d", i+1, k+1), Title: h.Name}
			if h.Window {
				v.used["window"] = true
				g.Elements = append(g.Elements, pane(d, h.Clear.X(), faces, thin)...)
			} else {
				g.Elements = append(g.Elements, v.swing(d, h)...)
			}
			v.add(g)
		}
		for k, o := range d.Wall.Openings {
			v.used["opening"] = true
			v.add(drawing.Group{
				ID: fmt.Sprintf("plan-opening-%d-%d", i+1, k+1), Title: "Opening " + o.Name,
				Elements: pane(d, o.Rough.X(), faces, drawing.Style{Layer: drawing.Opening, Pen: drawing.P25}),
			})
		}
	}
}

// pane draws the faces of the wall below a window or opening and its pane.
func pane(d planwalls.Side, x geom.Span, faces geom.Span, pen drawing.Style) []drawing.Element {
	var out []drawing.Element
	for _, y := range []geom.Length{faces.From, faces.Mid(), faces.To} {
		out = append(out, drawing.Line{Style: pen, A: d.At(x.From, y), B: d.At(x.To, y)})
	}
	return out
}

// swing draws a door leaf standing open at a right angle, and its swing.
func (v *view) swing(d planwalls.Side, h framing.Hole) []drawing.Element {
	v.used["door"] = true
	x, door := h.Clear.X(), h.Thing
	jambs := drawing.Style{Layer: drawing.Door, Pen: drawing.P18}
	out := []drawing.Element{
		drawing.Line{Style: jambs, A: d.At(x.From, -d.Finished), B: d.At(x.To, -d.Finished)},
		drawing.Line{Style: jambs, A: d.At(x.From, d.Outer), B: d.At(x.To, d.Outer)},
	}
	if !door.Hinged || (!door.OpensIn && !door.OpensOut) {
		return out
	}
	hinge, free, face, way := x.From, x.To, -d.Finished, geom.Length(-1)
	if door.Hinge == room.Right {
		hinge, free = x.To, x.From
	}
	if door.OpensOut {
		face, way = d.Outer, 1
	}
	width := x.Len()
	foot, tip, shut := d.At(hinge, face), d.At(hinge, face+way*width), d.At(free, face)
	arc := drawing.Arc{Style: drawing.Style{Layer: drawing.Door, Pen: drawing.P18}, Center: foot, Radius: width}
	a, b := degrees(foot, shut), degrees(foot, tip)
	if (b-a+360)%360 > 180 {
		a, b = b, a
	}
	arc.From, arc.To = a, b
	// The swing and the leaf, in pieces, so that letters and words keep off them.
	for k := 0; k <= 90; k += 5 {
		sin, cos := math.Sincos(float64(a+k) * math.Pi / 180)
		p := foot.Add(geom.Pt(geom.Length(math.Round(float64(width)*cos)), geom.Length(math.Round(float64(width)*sin))))
		v.swings = append(v.swings, geom.Rect{Min: p, Max: p}.Inset(-width/20))
	}
	v.swings = append(v.swings, geom.Polygon{foot, tip}.Bounds().Inset(-v.mm(0.3)))
	return append(out, drawing.Line{Style: drawing.Style{Layer: drawing.Door, Pen: drawing.P35}, A: foot, B: tip}, arc)
}

// swingsOut reports whether a door stands open outside the room.
func swingsOut(h framing.Hole) bool {
	return !h.Window && !h.Clear.Empty() && h.Thing.Hinged && h.Thing.OpensOut
}

// degrees returns the direction from a to b in whole degrees.
func degrees(a, b geom.Point) int {
	d := int(math.Round(math.Atan2(float64(b.Y-a.Y), float64(b.X-a.X)) * 180 / math.Pi))
	return (d + 360) % 360
}
