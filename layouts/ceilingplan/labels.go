package ceilingplan

import (
	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/piece"
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
	v.overheadWords(pl)
	v.mainLabels(pl)
	v.panelLabels(pl)
	v.crossLabels(pl)
}

// put adds a label that found a place.
func (v *view) put(pl *marks.Placer, g drawing.Group, ok bool) bool {
	if ok {
		v.add(g)
		pl.BlockElements([]drawing.Element{g})
	}
	return ok
}

// lightLabels lays the mark of each light on it.
func (v *view) lightLabels(pl *marks.Placer) {
	for _, l := range v.c.Lights {
		mid := l.Box.Mid()
		g := marks.Label(string(l.Mark), true, mid, v.s)
		v.add(g)
		pl.Block(drawing.Bounds([]drawing.Element{g}, v.s))
		// The mitred frame of the light stays clear of other words.
		pl.Block(l.Box.Inset(-v.mm(0.3)))
	}
}

// letters puts the letter of each wall against its face, between hangers.
func (v *view) letters(pl *marks.Placer) {
	for _, d := range v.sides {
		step := v.mm(4)
		for k := geom.Length(0); k*step < d.Length/2; k++ {
			placed := false
			for _, x := range []geom.Length{d.Length/2 + k*step, d.Length/2 - k*step} {
				at := d.At(x, -d.Finished-v.mm(3.9))
				box := geom.Rect{Min: at, Max: at}.Inset(-v.mm(3.4))
				if pl.Free(box) && v.clearOfTees(box) {
					g := marks.WallLetter(d.Wall.Name, at, d.Page, v.s)
					v.add(g)
					pl.Block(box)
					placed = true
					break
				}
			}
			if placed {
				break
			}
		}
	}
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

// overheadWords names ducts and pipes, with their undersides.
func (v *view) overheadWords(pl *marks.Placer) {
	for _, o := range v.c.Obstacles {
		if o.Box.Empty() {
			continue
		}
		lines := []string{o.What + " above", "under " + v.show.Figure(o.Underside)}
		var places []geom.Point
		for _, c := range v.c.Cells {
			b := geom.Polygon(c.Shape).Bounds()
			if b.Overlaps(o.Box) && c.Light < 0 {
				places = append(places, geom.Pt(b.X().Overlap(o.Box.X()).Mid(), b.Y().Overlap(o.Box.Y()).Mid()), b.Mid())
			}
		}
		if e, ok := pl.Words(lines, paper.MM(2.4), false, drawing.Words, places...); ok {
			v.opaque(e)
			pl.BlockElements(e)
		}
	}
}

// opaque adds words on a white ground, so that no dashed line runs through them.
func (v *view) opaque(e []drawing.Element) {
	b := drawing.Bounds(e, v.s).Inset(-v.mm(0.5))
	v.add(drawing.Area{Layer: drawing.Words, Outline: b.Polygon(), Fill: drawing.White})
	v.add(e...)
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
				box := geom.Rect{Min: at, Max: at}
				box = geom.RectOf(at.X-v.s.Real(w)/2, at.Y-v.s.Real(h)/2, at.X+v.s.Real(w)/2, at.Y+v.s.Real(h)/2)
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
		v.add(g)
		pl.Block(drawing.Bounds([]drawing.Element{g}, v.s))
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
	for _, c := range v.c.Cells {
		if c.Mark == "" || c.Kind == ceiling.Whole {
			continue
		}
		b := geom.Polygon(c.Shape).Bounds()
		at := b.Mid()
		quarter := geom.Pt(b.W()/4, b.H()/4)
		g, ok := pl.Label(string(c.Mark), false, at, at,
			at.Add(geom.Pt(0, quarter.Y)), at.Add(geom.Pt(0, -quarter.Y)), at.Add(geom.Pt(quarter.X, 0)), at.Add(geom.Pt(-quarter.X, 0)),
			at.Add(quarter), at.Sub(quarter), at.Add(geom.Pt(quarter.X, -quarter.Y)), at.Add(geom.Pt(-quarter.X, quarter.Y)))
		v.put(pl, g, ok)
	}
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
		var places []geom.Point
		for _, d := range []float64{5, 7, 9} {
			for _, q := range []geom.Point{geom.Pt(v.mm(d), v.mm(d)), geom.Pt(-v.mm(d), v.mm(d)), geom.Pt(v.mm(d), -v.mm(d)), geom.Pt(-v.mm(d), -v.mm(d))} {
				places = append(places, target.Add(q))
			}
		}
		g, ok := pl.Label(string(t.Mark), true, target, places...)
		named[t.Mark] = v.put(pl, g, ok)
	}
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
