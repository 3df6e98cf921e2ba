package floorplan

import (
	"slices"

	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
	"roomwright/layouts/planwalls"
)

// dimensions puts two rows outside every wall: what stands in it, and the
// whole. Rows of upright walls move out until they meet nothing at the corners.
func (v *view) dimensions() {
	names := min(drawing.Bounds(v.out, v.s).Min.X, v.r.Plan.Taped.Bounds().Min.X) - v.nameSpace()
	var done []drawing.Element
	for _, d := range v.sides {
		if !upright(d) {
			e, _ := v.chain(d, names, v.first(d)).Draw()
			done = append(done, e...)
		}
	}
	for _, d := range v.sides {
		if !upright(d) {
			continue
		}
		var e []drawing.Element
		for out := 0.0; out <= 40; out += 2 {
			if e, _ = v.chain(d, names, v.first(d)+paper.MM(out)).Draw(); !v.meet(done, e) {
				break
			}
		}
		done = append(done, e...)
		done = append(done, v.rowNames(d, e, done)...)
	}
	v.add(done...)
}

// upright reports whether a wall stands at the left or the right of the page.
func upright(d planwalls.Side) bool {
	return d.Page == dimension.LeftOf || d.Page == dimension.RightOf
}

// chain returns the rows outside a wall.
func (v *view) chain(d planwalls.Side, names geom.Length, first paper.Length) dimension.Chain {
	var rows []dimension.Row
	stops := []geom.Length{d.Along(0), d.Along(d.Length)}
	parts := append([]geom.Length{}, stops...)
	for _, g := range gaps(d) {
		parts = append(parts, d.Along(g.From), d.Along(g.To))
	}
	if len(parts) > 2 {
		parts = ascending(parts)
		rows = append(rows, dimension.Row{Name: partsName(d), At: parts, From: v.begins(d, parts)})
	}
	rows = append(rows, dimension.Row{Name: wholeName(d), At: ascending(stops), Also: true})
	return dimension.Chain{
		Side: d.Page, Object: d.Edge(), Rows: rows, Datum: d.Along(0),
		NamesX: names, Scale: v.s, Show: v.show, First: first,
	}
}

// begins returns where the extension lines of a wall begin: past the leaf of a
// door that stands open outside.
func (v *view) begins(d planwalls.Side, parts []geom.Length) []geom.Length {
	out := make([]geom.Length, len(parts))
	way := geom.Length(1)
	if d.Page == dimension.Below || d.Page == dimension.LeftOf {
		way = -1
	}
	for i, at := range parts {
		out[i] = d.Edge()
		for _, h := range d.Wall.Doors {
			if swingsOut(h) && (at == d.Along(h.Clear.Min.X) || at == d.Along(h.Clear.Max.X)) {
				out[i] += way * h.Clear.W()
			}
		}
	}
	return out
}

// first returns how far out the first row of a wall stands: past the marks of a
// section and past doors that open outwards.
func (v *view) first(d planwalls.Side) paper.Length {
	first := paper.MM(10)
	if len(d.Wall.Openings) > 0 {
		first = paper.MM(13)
		if upright(d) {
			first = paper.MM(17)
		}
	}
	for _, h := range d.Wall.Doors {
		if swingsOut(h) {
			first = max(first, v.s.OnPaper(h.Clear.W())+paper.MM(6))
		}
	}
	return first
}

// meet reports whether a figure of one list of dimensions is nearer to anything
// of the other than it should be.
func (v *view) meet(a, b []drawing.Element) bool {
	boxes := func(list []drawing.Element, all bool) []geom.Rect {
		var out []geom.Rect
		drawing.Walk(list, true, func(e drawing.Element) {
			_, text := e.(drawing.Text)
			_, line := e.(drawing.Line)
			if text || line && all {
				out = append(out, drawing.Bounds([]drawing.Element{e}, v.s).Inset(-v.mm(0.6)))
			}
		})
		return out
	}
	hit := func(texts, all []geom.Rect) bool {
		return slices.ContainsFunc(texts, func(t geom.Rect) bool { return slices.ContainsFunc(all, t.Overlaps) })
	}
	return hit(boxes(a, false), boxes(b, true)) || hit(boxes(b, false), boxes(a, true))
}

// rowNames names the rows of an upright wall, turned, above their upper ends or
// below their lower ends, where they meet nothing.
func (v *view) rowNames(d planwalls.Side, rows, others []drawing.Element) []drawing.Element {
	var at []geom.Length
	for _, e := range rows {
		if e, ok := e.(drawing.Dimension); ok && !slices.Contains(at, e.Line.X) {
			at = append(at, e.Line.X)
		}
	}
	slices.Sort(at)
	if d.Page == dimension.LeftOf {
		slices.Reverse(at) // the nearest first
	}
	names := []string{"wall " + d.Wall.Name}
	if len(at) > 1 {
		names = []string{"openings", names[0]}
	}
	b := drawing.Bounds(rows, v.s)
	for _, end := range []struct {
		y      geom.Length
		anchor drawing.Anchor
	}{{b.Max.Y + v.mm(1.6), drawing.Start}, {b.Min.Y - v.mm(1.6), drawing.End}} {
		var out []drawing.Element
		for i, x := range at {
			out = append(out, drawing.Text{Layer: drawing.Dims, At: geom.Pt(x+v.mm(0.9), end.y), String: names[min(i, len(names)-1)], Cap: paper.MM(2.4), Anchor: end.anchor, Turned: true})
		}
		if !v.meet(others, out) && !v.meet(v.out, out) {
			return out
		}
	}
	return nil
}

// nameSpace returns how far left of the walls the names of rows begin: past the
// rows at the left where those carry a figure out at their upper end.
func (v *view) nameSpace() geom.Length {
	wide, out := v.mm(27), v.mm(17)
	for _, d := range v.sides {
		if !upright(d) {
			for _, name := range []string{partsName(d), wholeName(d)} {
				wide = max(wide, v.s.Real(lettering.Width(name, paper.MM(2.4), false)))
			}
			continue
		}
		last := d.Length
		for _, g := range gaps(d) {
			last = min(last, g.From, d.Length-g.To)
		}
		if v.s.OnPaper(last) < paper.MM(1.8)+lettering.Width(v.show.Figure(last), paper.MM(2.8), false) {
			out = v.mm(36)
		}
	}
	return wide + out
}

// partsName and wholeName are the names of the two rows outside a wall.
func partsName(d planwalls.Side) string { return "openings, wall " + d.Wall.Name }
func wholeName(d planwalls.Side) string { return "wall " + d.Wall.Name + ", as taped" }

// ascending sorts positions and drops doubles.
func ascending(list []geom.Length) []geom.Length {
	out := slices.Clone(list)
	slices.Sort(out)
	return slices.Compact(out)
}
