package ceilingplan

import (
	"slices"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/piece"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
	"roomwright/layouts/planwalls"
)

// labels puts the letters of walls, the names of what is above and the marks
// of pieces where they are clear of each other.
func (v *view) labels() {
	pl := marks.NewPlacer(v.s)
	pl.BlockElements(v.out)
	for _, r := range v.keep {
		pl.Block(r)
	}
	v.lightLabels(pl)
	v.letters(pl)
	v.mainLabels(pl)
	v.overheadWords(pl)
	v.panelLabels(pl)
	v.crossLabels(pl)
	v.angleLabels(pl)
}

// put adds a label that found a place.
func (v *view) put(pl *marks.Placer, g drawing.Group, ok bool) bool {
	if ok {
		v.add(g)
		pl.BlockElements([]drawing.Element{g})
		v.labelled = append(v.labelled, drawing.Bounds([]drawing.Element{g}, v.s))
	}
	return ok
}

// lightLabels lays the mark of each light on it.
func (v *view) lightLabels(pl *marks.Placer) {
	for _, l := range v.c.Lights {
		mid := l.Box.Mid()
		g := marks.Label(string(l.Mark), true, mid, v.s)
		if clash(v.labelled, drawing.Bounds([]drawing.Element{g}, v.s)) {
			var ok bool
			if g, ok = pl.Label(string(l.Mark), true, mid, v.around(mid)...); !ok {
				continue
			}
		}
		v.put(pl, g, true)
		// The mitred frame of the light stays clear of other words.
		pl.Block(l.Box.Inset(-v.mm(0.3)))
	}
}

// letters puts the letter of each wall against its face, between hangers.
func (v *view) letters(pl *marks.Placer) {
	for _, d := range v.sides {
		if g, ok := v.letter(d); ok {
			v.put(pl, g, true)
			pl.Block(drawing.Bounds([]drawing.Element{g}, v.s))
		}
	}
}

// letter returns the letter of a wall at the clear place nearest to its middle.
func (v *view) letter(d planwalls.Side) (drawing.Group, bool) {
	box := drawing.Bounds([]drawing.Element{marks.WallLetter(d.Wall.Name, geom.Point{}, d.Page, v.s)}, v.s)
	deep, half := box.H()/2, box.W()/2
	if d.Page == dimension.LeftOf || d.Page == dimension.RightOf {
		deep, half = half, deep
	}
	step := v.mm(2)
	for k := geom.Length(0); k*step < d.Length/2-half; k++ {
		for _, x := range []geom.Length{d.Length/2 + k*step, d.Length/2 - k*step} {
			g := marks.WallLetter(d.Wall.Name, d.At(x, -d.Finished-v.mm(1.2)-deep), d.Page, v.s)
			at := drawing.Bounds([]drawing.Element{g}, v.s).Inset(-v.mm(0.5))
			if v.apart(at) && v.farFromSections(at) {
				return g, true
			}
		}
	}
	return drawing.Group{}, false
}

// farFromSections reports whether a box leaves room beside section marks for
// the mark of a panel.
func (v *view) farFromSections(box geom.Rect) bool {
	return !clash(v.pennants, box.Inset(-v.mm(9)))
}

// clash reports whether a box meets any of a list.
func clash(list []geom.Rect, box geom.Rect) bool {
	return slices.ContainsFunc(list, box.Overlaps)
}

// clearOfTees reports whether no tee runs through a box.
func (v *view) clearOfTees(box geom.Rect) bool {
	for _, l := range v.c.XLines {
		if box.X().Holds(l.At) {
			return false
		}
	}
	for _, l := range v.c.YLines {
		if box.Y().Holds(l.At) {
			return false
		}
	}
	return true
}

// apart reports whether a box is clear of tees, hangers, labels and lights.
func (v *view) apart(box geom.Rect) bool { return v.overTees(box) && v.clearOfTees(box) }

// overTees reports whether a box is clear of all that a white ground may not
// hide: main tees, hangers, labels and lights.
func (v *view) overTees(box geom.Rect) bool {
	if clash(v.keep, box) || clash(v.labelled, box) {
		return false
	}
	for _, l := range v.c.Lights {
		if l.Box.Overlaps(box) {
			return false
		}
	}
	return true
}

// mainLabels lays the mark of each main tee on it, between hangers.
func (v *view) mainLabels(pl *marks.Placer) {
	w, h := marks.LabelSize("M99", true)
	for _, m := range v.c.Mains {
		b := geom.Polygon{m.From, m.To}.Bounds()
		var best geom.Point
		found := false
		for k := geom.Length(0); k < 60 && !found; k++ {
			for _, sign := range []geom.Length{1, -1} {
				at := b.Mid()
				if v.c.MainsAlongX {
					at.X += sign * k * v.mm(2)
				} else {
					at.Y += sign * k * v.mm(2)
				}
				box := geom.RectOf(at.X-v.s.Real(w)/2, at.Y-v.s.Real(h)/2, at.X+v.s.Real(w)/2, at.Y+v.s.Real(h)/2)
				if !v.onMain(m, at, b) || !v.freeButMain(pl, box, m) {
					continue
				}
				best, found = at, true
				break
			}
		}
		if !found {
			continue
		}
		g := marks.Label(string(m.Mark), true, best, v.s)
		v.put(pl, g, true)
	}
}

// onMain reports whether a place lies well inside a main tee.
func (v *view) onMain(m ceiling.Main, at geom.Point, b geom.Rect) bool {
	if v.c.MainsAlongX {
		return b.Min.X+v.mm(8) < at.X && at.X < b.Max.X-v.mm(8)
	}
	return b.Min.Y+v.mm(8) < at.Y && at.Y < b.Max.Y-v.mm(8)
}

// freeButMain reports whether a box is free when the tee it lies on is not
// counted, nor the crossing lines.
func (v *view) freeButMain(pl *marks.Placer, box geom.Rect, m ceiling.Main) bool {
	for _, h := range v.c.Hangers {
		if box.Inset(-v.mm(1.6)).X().Holds(h.At.X) && box.Inset(-v.mm(1.6)).Y().Holds(h.At.Y) {
			return false
		}
	}
	for _, p := range m.Splices {
		if box.Inset(-v.mm(1.6)).X().Holds(p.X) && box.Inset(-v.mm(1.6)).Y().Holds(p.Y) {
			return false
		}
	}
	for _, l := range v.c.Lights {
		if l.Box.Overlaps(box) {
			return false
		}
	}
	if clash(v.pennants, box) || clash(v.labelled, box) {
		return false
	}
	lines := v.c.XLines
	at := func(l ceiling.TeeLine) bool { return box.X().Holds(l.At) }
	if !v.c.MainsAlongX {
		lines = v.c.YLines
		at = func(l ceiling.TeeLine) bool { return box.Y().Holds(l.At) }
	}
	for _, l := range lines {
		if at(l) {
			return false
		}
	}
	return true
}

// panelLabels writes in each cut panel's cell the mark of its panel.
func (v *view) panelLabels(pl *marks.Placer) {
	whole := map[piece.Mark]bool{} // whole panels are alike: one bears the mark
	for _, c := range v.c.Cells {
		if c.Mark == "" || (c.Kind == ceiling.Whole && whole[c.Mark]) {
			continue
		}
		b := geom.Polygon(c.Shape).Bounds()
		at := b.Mid()
		places := []geom.Point{at}
		for _, q := range [][2]geom.Length{{0, 1}, {0, -1}, {1, 0}, {-1, 0}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}, {0, 2}, {0, -2}, {2, 0}, {-2, 0}, {2, 2}, {-2, 2}, {2, -2}, {-2, -2}} {
			places = append(places, at.Add(geom.Pt(q[0]*b.W()/7, q[1]*b.H()/7)))
		}
		if g, ok := v.onCell(string(c.Mark), b, places); ok {
			v.put(pl, g, true)
			whole[c.Mark] = c.Kind == ceiling.Whole
			continue
		}
		if c.Kind == ceiling.Whole {
			continue
		}
		for _, p := range places { // a string ends clear of letters
			if dot := (geom.Rect{Min: p, Max: p}).Inset(-v.mm(1.6)); !clash(v.labelled, dot) && !clash(v.keep, dot) {
				at = p
				break
			}
		}
		g, ok := pl.Label(string(c.Mark), false, at, v.around(at)...)
		v.put(pl, g, ok)
	}
}

// angleLabels names the wall angle of each wall, with a string to it.
func (v *view) angleLabels(pl *marks.Placer) {
	for _, a := range v.c.Angles {
		for _, d := range v.sides {
			if d.Wall.Name != a.Wall {
				continue
			}
			for _, eighth := range []geom.Length{2, 6, 3, 5, 1, 7, 4} {
				target := d.At(d.Length*eighth/8+v.mm(2), -d.Finished-v.leg()/2)
				if g, ok := pl.Label(string(a.Mark), true, target, v.around(target)...); v.put(pl, g, ok) {
					break
				}
			}
		}
	}
}

// onCell lays a mark on a cell without a string, at the first clear place.
func (v *view) onCell(mark string, cell geom.Rect, places []geom.Point) (drawing.Group, bool) {
	for _, at := range places {
		g := marks.Label(mark, false, at, v.s)
		box := drawing.Bounds([]drawing.Element{g}, v.s).Inset(-v.mm(0.2))
		if cell.Union(box) == cell && v.apart(box) {
			return g, true
		}
	}
	return drawing.Group{}, false
}

// crossLabels names one cross tee of each mark, with a string to it.
func (v *view) crossLabels(pl *marks.Placer) {
	named := map[piece.Mark]bool{}
	for _, t := range v.c.Crosses {
		if named[t.Mark] {
			continue
		}
		b := geom.Polygon{t.From, t.To}.Bounds()
		target := b.Mid()
		g, ok := pl.Label(string(t.Mark), true, target, v.around(target)...)
		named[t.Mark] = v.put(pl, g, ok)
	}
}

// around returns places round a target at growing distance, inside the room.
func (v *view) around(target geom.Point) []geom.Point {
	room := v.c.Outline.Bounds().Inset(v.mm(6))
	var out []geom.Point
	for d := 5.0; d <= 29; d += 3 {
		for _, q := range [][2]float64{{1, 1}, {-1, 1}, {1, -1}, {-1, -1}, {1.4, 0}, {-1.4, 0}, {0, 1.4}, {0, -1.4}} {
			at := target.Add(geom.Pt(v.mm(d*q[0]), v.mm(d*q[1])))
			if room.X().Holds(at.X) && room.Y().Holds(at.Y) {
				out = append(out, at)
			}
		}
	}
	return out
}

// legend explains what is in the plan.
func (v *view) legend() []drawing.Sample {
	full := paper.Full()
	mm := func(x float64) geom.Length { return geom.Length(paper.MM(x)) }
	line := func(pen drawing.Style, y float64) drawing.Line {
		return drawing.Line{Style: pen, A: geom.Pt(0, mm(y)), B: geom.Pt(mm(13), mm(y))}
	}
	half := func(pen drawing.Style, a, b float64) drawing.Line {
		return drawing.Line{Style: pen, A: geom.Pt(mm(a), 0), B: geom.Pt(mm(b), 0)}
	}
	out := []drawing.Sample{
		{Words: "main tee; cross tee", Swatch: []drawing.Element{half(mainPen(), 0, 6), half(crossPen(), 8, 13)}},
		{Words: "wall face and wall angle", Swatch: []drawing.Element{line(drawing.Style{Layer: drawing.WallFull, Pen: drawing.P50}, 0.6), line(anglePen(), -0.6)}},
	}
	if v.used["hanger"] {
		out = append(out, drawing.Sample{Words: "hanger wire; splice of a main", Swatch: append(marks.Hanger(geom.Pt(mm(4), 0), full), marks.Splice(geom.Pt(mm(10), 0), true, full)...)})
	}
	if v.used["light"] {
		out = append(out, drawing.Sample{Words: "light panel", Swatch: marks.LightPanel(geom.RectOf(mm(4.3), mm(-2.2), mm(8.7), mm(2.2)), full)})
	}
	if v.used["joist"] {
		out = append(out, drawing.Sample{Words: "joist center, above", Swatch: []drawing.Element{line(joistPen(), 0)}})
	}
	if v.used["over"] {
		out = append(out, drawing.Sample{Words: "duct or pipe, above", Swatch: []drawing.Element{line(overPen(), 0)}})
	}
	if v.used["section"] {
		out = append(out, drawing.Sample{Words: "section, looking the way it points", Swatch: []drawing.Element{marks.Pennant("X", geom.Pt(mm(6), 0), marks.RightWay, full)}})
	}
	if v.used[planwalls.Stud] || v.used[planwalls.Masonry] {
		out = append(out, planwalls.Samples(v.used)...)
	}
	return append(out, drawing.Sample{Words: "piece mark, as on the list", Swatch: []drawing.Element{marks.Label("M1", true, geom.Pt(mm(6.5), 0), full)}})
}
