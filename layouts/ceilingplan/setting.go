package ceilingplan

import (
	"slices"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// frame is the walls as drawn, from outer face to outer face.
func (v *view) frame() geom.Rect {
	r := v.c.Outline.Bounds()
	for _, d := range v.sides {
		e := d.Edge()
		switch d.Page {
		case dimension.Above:
			r.Max.Y = max(r.Max.Y, e)
		case dimension.Below:
			r.Min.Y = min(r.Min.Y, e)
		case dimension.RightOf:
			r.Max.X = max(r.Max.X, e)
		default:
			r.Min.X = min(r.Min.X, e)
		}
	}
	return r
}

// dimensions draws the names of rows and columns, the two marking strips and
// the chains on the other sides. Each side has the figures of its own wall.
func (v *view) dimensions() {
	room, f := v.c.Outline.Bounds(), v.frame()
	top, left := v.stringAt(0), v.stringAt(3)
	words := []string{"string marks, tape", "hooked at corner " + top.corner + ";", "bold: tee centers"}
	_, strip := v.rowNames()
	names := f.Min.X - strip - v.mm(26.6)
	for _, line := range words {
		names = min(names, room.Min.X-v.mm(4)-v.s.Real(lettering.Width(line, paper.MM(2.4), false)))
	}
	v.names(stops(v.c.Outline[0].X, v.c.Outline[1].X, v.c.XLines), stops(v.c.Outline[3].Y, v.c.Outline[0].Y, v.c.YLines), f)

	e, _ := dimension.Stick{
		From: top.datum, To: top.datum + top.length, Edge: f.Max.Y + v.mm(7.4), Flip: true, Datum: top.datum,
		Marks: top.marks(1), Scale: v.s, Show: v.show,
	}.Draw()
	v.add(e...)
	for _, line := range words { // left of the figures, however far those are spread
		names = min(names, drawing.Bounds(e, v.s).Min.X-v.mm(2)-v.s.Real(lettering.Width(line, paper.MM(2.4), false)))
	}
	e, _ = dimension.Stick{
		Upright: true, From: left.datum, To: left.datum - left.length, Edge: f.Min.X - strip, Datum: left.datum,
		Marks: left.marks(-1), Scale: v.s, Show: v.show,
	}.Draw()
	v.add(e...)
	// The words stand over the figures at the left, however far those are spread.
	low := max(f.Max.Y+v.mm(7.8), drawing.Bounds(e, v.s).Max.Y+v.mm(2))
	for i, line := range words {
		v.add(drawing.Text{Layer: drawing.Words, At: geom.Pt(names, low+v.mm(4.2*float64(len(words)-1-i))), String: line, Cap: paper.MM(2.4)})
	}

	south, east := v.stringAt(2), v.stringAt(1)
	below := dimension.Chain{Side: dimension.Below, Object: f.Min.Y, Datum: south.datum, NamesX: names, Scale: v.s, Show: v.show}
	right := dimension.Chain{Side: dimension.RightOf, Object: f.Max.X, Datum: east.datum, Scale: v.s, Show: v.show}
	var rightNames []string
	if j, along := v.joistStops(); len(j) > 2 {
		row := dimension.Row{Name: "joist centers", At: j, Merge: true}
		if along {
			below.Rows = append(below.Rows, row)
		} else {
			right.Rows = append(right.Rows, row)
			rightNames = append(rightNames, row.Name)
		}
	}
	const tees, whole = "borders, panels", "wall "
	below.Rows = append(below.Rows,
		dimension.Row{Name: tees, At: south.stops(1), Merge: v.tight(v.c.ModuleX)},
		dimension.Row{Name: whole + v.sides[2].Wall.Name, At: []geom.Length{south.datum, south.datum + south.length}, Also: true})
	right.Rows = append(right.Rows,
		dimension.Row{Name: tees, At: east.stops(-1), Merge: v.tight(v.c.ModuleY)},
		dimension.Row{Name: whole + v.sides[1].Wall.Name, At: []geom.Length{east.datum - east.length, east.datum}, Also: true})
	v.chains(below, right, append(rightNames, tees, whole+v.sides[1].Wall.Name))
}

// tight reports whether figures of a module do not fit between its lines, so
// that equal ones become one.
func (v *view) tight(module geom.Length) bool {
	return v.s.OnPaper(module) < lettering.Width(v.show.Figure(module), paper.MM(2.8), false)+paper.MM(1.8)
}

// chains draws the rows below and those at the right, the latter so far out
// that figures carried out at the corner do not meet, and names the latter
// above their upper ends.
func (v *view) chains(below, right dimension.Chain, names []string) {
	nearest := v.nearest
	below.First = paper.MM(nearest)
	under, _ := below.Draw()
	var beside []drawing.Element
	for first := nearest; first <= 40; first += 2 {
		right.First = paper.MM(first)
		beside, _ = right.Draw()
		if !v.meet(under, beside) {
			break
		}
	}
	v.add(under...)
	v.add(beside...)
	y := max(drawing.Bounds(beside, v.s).Max.Y, v.frame().Max.Y) + v.mm(1.6)
	for i, x := range rowLines(beside) {
		if i < len(names) {
			v.add(drawing.Text{Layer: drawing.Dims, At: geom.Pt(x+v.mm(0.9), y), String: names[i], Cap: paper.MM(2.4), Turned: true})
		}
	}
}

// rowLines returns where the dimension lines of upright rows stand, from left to
// right.
func rowLines(e []drawing.Element) []geom.Length {
	var out []geom.Length
	for _, d := range e {
		if d, ok := d.(drawing.Dimension); ok && !slices.Contains(out, d.Line.X) {
			out = append(out, d.Line.X)
		}
	}
	slices.Sort(out)
	return out
}

// meet reports whether a figure of one list of dimensions is nearer to anything
// of the other than it should be.
func (v *view) meet(a, b []drawing.Element) bool {
	boxes := func(list []drawing.Element, texts bool) []geom.Rect {
		var out []geom.Rect
		drawing.Walk(list, true, func(e drawing.Element) {
			_, text := e.(drawing.Text)
			_, line := e.(drawing.Line)
			if text || line && !texts {
				out = append(out, drawing.Bounds([]drawing.Element{e}, v.s).Inset(-v.mm(0.6)))
			}
		})
		return out
	}
	hit := func(texts, all []geom.Rect) bool {
		return slices.ContainsFunc(texts, func(t geom.Rect) bool { return clash(all, t) })
	}
	return hit(boxes(a, true), boxes(b, false)) || hit(boxes(b, true), boxes(a, false))
}

// stops returns two ends and the tee lines between them, ascending.
func stops(from, to geom.Length, lines []ceiling.TeeLine) []geom.Length {
	out := []geom.Length{from, to}
	for _, l := range lines {
		out = append(out, l.At)
	}
	slices.Sort(out)
	return out
}

// joistStops returns the walls and the joist centres between them, along the
// lower or the right wall, and whether they run along the page.
func (v *view) joistStops() ([]geom.Length, bool) {
	if len(v.c.Joists) == 0 {
		return nil, true
	}
	o, j := v.c.Outline, v.c.Joists[0]
	upright := (j.To.Y - j.From.Y).Abs() > (j.To.X - j.From.X).Abs()
	span := geom.Span{From: o[3].X, To: o[2].X}
	if !upright {
		span = geom.Span{From: o[2].Y, To: o[1].Y}
	}
	out := []geom.Length{span.From, span.To}
	for _, j := range v.c.Joists {
		// Where the joist meets the wall.
		at := j.From.X
		if upright && j.To.Y < j.From.Y {
			at = j.To.X
		}
		if !upright {
			if at = j.From.Y; j.To.X > j.From.X {
				at = j.To.Y
			}
		}
		if span.From < at && at < span.To {
			out = append(out, at)
		}
	}
	slices.Sort(out)
	return slices.Compact(out), upright
}
