package face

import (
	"strings"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/geom/room"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// windowFrame is how wide the frame of a window is drawn, in millimetres.
const windowFrame = 0.9

// HoleBox returns the hole of a door or window that is drawn: in framing the
// rough one, else the clear one.
func (f Face) HoleBox(h framing.Hole) geom.Rect {
	if len(f.Wall.Members) > 0 && !h.Rough.Empty() {
		return h.Rough
	}
	return h.Clear
}

// Holes returns the doors and windows that are there.
func (f Face) Holes() drawing.Element {
	var e []drawing.Element
	for _, h := range f.Wall.Doors {
		box := f.HoleBox(h)
		if box.Empty() {
			continue
		}
		layer := drawing.Door
		if h.Window {
			layer = drawing.Glazing
		}
		e = append(e, drawing.Area{Layer: layer, Outline: box.Polygon(), Fill: drawing.White})
		style := drawing.Style{Layer: layer, Pen: drawing.P25}
		if !h.Window && box.Min.Y <= 0 {
			e = append(e, drawing.Polyline{Style: style, Points: []geom.Point{
				box.Min, {X: box.Min.X, Y: box.Max.Y}, box.Max, {X: box.Max.X, Y: box.Min.Y},
			}})
			continue
		}
		e = append(e, Outline(box, style))
		inner := box.Inset(f.MM(windowFrame))
		if h.Window && !inner.Empty() {
			e = append(e, Outline(inner, style))
		}
	}
	return drawing.Group{ID: "holes", Title: "Doors and windows that are there", Elements: append(e, f.floor())}
}

// HoleWords returns what is written in a door or window, and shorter forms of
// it to be tried in turn where it does not fit.
func (f Face) HoleWords(h framing.Hole) [][]Line {
	what := "door"
	if h.Window {
		what = "window"
	}
	head := Line{Text: what, Cap: paper.MM(2.8), Bold: true}
	name := Line{Text: h.Name, Cap: paper.MM(2.4)}
	w, hi := h.Thing.Size.W, h.Thing.Size.H
	kind := Line{Text: sizeWord(h.Thing.Kind), Cap: paper.MM(2.4)}
	if w <= 0 || hi <= 0 {
		w, hi = h.Clear.W(), h.Clear.H()
	}
	size := Line{Text: f.Show.Figure(w) + " × " + f.Show.Figure(hi), Cap: paper.MM(2.4)}
	wide := Line{Text: f.Show.Figure(w), Cap: paper.MM(2.4)}
	high := Line{Text: "× " + f.Show.Figure(hi), Cap: paper.MM(2.4)}
	existing := Line{Text: "existing", Cap: paper.MM(2.4)}
	small := head
	small.Cap = paper.MM(2.4)
	small.Bold = false
	named := h.Name != "" && !strings.Contains(h.Name, what)
	if !named {
		name = existing
		if h.Name != "" {
			head.Text = h.Name
		}
	}
	forms := [][]Line{{head, name, kind, size}, {head, name, kind, wide, high}}
	if kind.Text == "clear" { // what is said of no other size
		forms = append(forms, []Line{head, name, size}, []Line{head, name, wide, high}, []Line{head, size}, []Line{head, wide, high})
	} else {
		forms = append(forms, []Line{head, kind, size}, []Line{head, kind, wide, high})
	}
	return append(forms, []Line{head, name}, []Line{head, existing}, []Line{head}, []Line{small})
}

// sizeWord returns the word for the kind of size that was given.
func sizeWord(k room.SizeKind) string {
	switch k {
	case room.Rough:
		return "rough"
	case room.Leaf:
		return "leaf"
	}
	return "clear"
}

// Services returns what is in the wall or on it, where its place is known.
func (f Face) Services() drawing.Element {
	var e []drawing.Element
	for _, sv := range f.Wall.Services {
		e = append(e, f.service(sv)...)
	}
	return drawing.Group{ID: "services", Title: "What is in the wall or on it", Elements: e}
}

// Seen reports whether a service is drawn, and whether it is hidden.
func (f Face) Seen(sv framing.ServiceAt) (drawn, hidden bool) {
	drawn = len(f.service(sv)) > 0
	return drawn, drawn && !sv.OnFace
}

func (f Face) service(sv framing.ServiceAt) []drawing.Element {
	b := sv.Box
	if sv.Unknown || (b.W() <= 0 && b.H() <= 0) && b == (geom.Rect{}) {
		return nil
	}
	style := drawing.Style{Layer: drawing.Service, Pen: drawing.P35, Dash: drawing.Hidden}
	if sv.OnFace {
		style = drawing.Style{Layer: drawing.Service, Pen: drawing.P25}
	}
	if b.W() <= 0 != (b.H() <= 0) {
		return []drawing.Element{drawing.Line{Style: style, A: b.Min, B: b.Max}}
	}
	if b.W() < f.MM(5) && b.H() < f.MM(5) {
		// Too small for dashes: a solid outline that can be seen, with a dot.
		c, least := b.Mid(), f.MM(2.2)
		w, h := max(b.W(), least)/2, max(b.H(), least)/2
		sq := geom.RectOf(c.X-w, c.Y-h, c.X+w, c.Y+h)
		return append(Kept(sq, drawing.Service), dimension.Disc(c, paper.MM(0.4), drawing.Black, drawing.Service, f.Scale))
	}
	if sv.OnFace {
		return Kept(b, drawing.Service)
	}
	return Hidden(b, drawing.Service)
}

// NameServices puts the word of each service beside it.
func (f Face) NameServices(p *Places) {
	for _, sv := range f.Wall.Services {
		if len(f.service(sv)) == 0 {
			continue
		}
		b, c := sv.Box, sv.Box.Mid()
		word := sv.What
		half := f.Scale.Real(lettering.Width(word, paper.MM(2.4), false)) / 2
		var at []geom.Point
		tall := b.H() > 2*half && b.H() > 2*b.W()
		if tall {
			for _, k := range []geom.Length{50, 40, 60, 30, 70, 20, 80} {
				y := b.Min.Y + b.H()*k/100
				at = append(at, geom.Pt(b.Max.X+f.MM(3.5), y), geom.Pt(b.Min.X-f.MM(1.65), y))
			}
			if p.Turned(word, drawing.Service, at...) {
				continue
			}
			at = nil
		}
		box := b.Inset(-f.MM(1.1))
		for k := geom.Length(0); k < 4; k++ {
			d := f.MM(1.6) + k*f.MM(1.5)
			at = append(at,
				geom.Pt(box.Max.X+d+half-f.MM(1.6), c.Y), geom.Pt(box.Min.X-d-half+f.MM(1.6), c.Y))
			if !tall {
				at = append(at, geom.Pt(c.X, box.Max.Y+d), geom.Pt(c.X, box.Min.Y-d))
			}
		}
		lines := []Line{{Text: word, Cap: paper.MM(2.4)}}
		if !p.Words(drawing.Service, lines, at...) && !p.Pointed(word, drawing.Service, b) && !p.WordsOver(drawing.Service, lines, at...) {
			p.Failed = append(p.Failed, word)
		}
	}
}
