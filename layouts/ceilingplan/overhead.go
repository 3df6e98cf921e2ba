package ceilingplan

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// overheadWords names ducts and pipes, with their undersides: along them, on
// them where they are wide enough, else beside them.
func (v *view) overheadWords() {
	for _, o := range narrowFirst(v.things()) {
		turned := o.Box.H() > o.Box.W()
		wide := o.Box.W()
		if !turned {
			wide = o.Box.H()
		}
		lines := []string{thing(o) + " above", v.underside(o)}
		aside := geom.Length(0)
		if wide < v.mm(9) {
			aside = wide/2 + v.mm(4.9)
		}
		places := v.overheadPlaces(o.Box, turned)
		if e, ok := v.overhead(lines, places, aside, turned, v.apart); ok {
			v.say(e)
		} else if e, ok := v.overhead(lines, places, aside, turned, v.overTees); ok {
			v.say(e) // over a cross tee rather than not at all
		} else {
			v.unnamed = append(v.unnamed, o)
		}
	}
}

// thing names what hangs over the ceiling.
func thing(o ceiling.Obstacle) string {
	if o.What == "other" {
		return "thing"
	}
	return o.What
}

// underside says how low a thing hangs.
func (v *view) underside(o ceiling.Obstacle) string {
	if o.Underside <= 0 {
		return "height not known"
	}
	return "under " + v.show.Figure(o.Underside)
}

// overhead returns words set at the first place that is clear.
func (v *view) overhead(lines []string, places []geom.Point, aside geom.Length, turned bool, clear func(geom.Rect) bool) ([]drawing.Element, bool) {
	room := v.c.Outline.Bounds().Inset(v.mm(1.4))
	for _, at := range places {
		for _, off := range []geom.Length{aside, -aside} {
			to := geom.Pt(at.X, at.Y+off)
			if turned {
				to = geom.Pt(at.X-off, at.Y)
			}
			e := v.lines(lines, to, turned)
			box := drawing.Bounds(e, v.s).Inset(-v.mm(0.6))
			if room.Union(box) == room && clear(box) {
				return e, true
			}
		}
	}
	return nil, false
}

// say adds words on a white ground and keeps other things off them.
func (v *view) say(e []drawing.Element) {
	v.opaque(e)
	v.pl.BlockElements(e)
	v.labelled = append(v.labelled, drawing.Bounds(e, v.s))
}

// narrowFirst orders things above by how hard their words are to place.
func narrowFirst(list []ceiling.Obstacle) []ceiling.Obstacle {
	out := slices.Clone(list)
	slices.SortStableFunc(out, func(a, b ceiling.Obstacle) int {
		return cmp.Compare(min(a.Box.W(), a.Box.H()), min(b.Box.W(), b.Box.H()))
	})
	return out
}

// overheadPlaces returns the middles of the cells that a thing above crosses,
// those without a light first.
func (v *view) overheadPlaces(box geom.Rect, turned bool) []geom.Point {
	var free, lit, edges []geom.Point
	for _, c := range v.c.Cells {
		b := geom.Polygon(c.Shape).Bounds()
		if !b.Overlaps(box) {
			continue
		}
		at := geom.Pt(box.Mid().X, b.Mid().Y)
		if !turned {
			at = geom.Pt(b.Mid().X, box.Mid().Y)
		}
		if c.Light < 0 {
			free = append(free, at)
		} else {
			lit = append(lit, at)
		}
		edge := geom.Pt(at.X, b.Min.Y)
		if !turned {
			edge = geom.Pt(b.Max.X, at.Y)
		}
		edges = append(edges, edge)
	}
	return slices.Concat(free, lit, edges)
}

// lines sets words centred at a point, turned or level.
func (v *view) lines(words []string, at geom.Point, turned bool) []drawing.Element {
	const pitch, rise = 4.2, 2.4
	var out []drawing.Element
	for i, w := range words {
		off := v.mm((float64(len(words)-1)/2-float64(i))*pitch - rise/2)
		to := geom.Pt(at.X, at.Y+off)
		if turned {
			to = geom.Pt(at.X-off, at.Y)
		}
		out = append(out, drawing.Text{Layer: drawing.Words, At: to, String: w, Cap: paper.MM(rise), Anchor: drawing.Middle, Turned: turned})
	}
	return out
}

// opaque adds words on a white ground, so that no dashed line runs through them.
func (v *view) opaque(e []drawing.Element) {
	b := drawing.Bounds(e, v.s).Inset(-v.mm(0.5))
	v.add(drawing.Area{Layer: drawing.Words, Outline: b.Polygon(), Fill: drawing.White})
	v.add(e...)
}
