package ceilingplan

import (
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
// the chains on the other sides.
func (v *view) dimensions() {
	room, f := v.c.Outline.Bounds(), v.frame()
	strings := []string{"string marks from", "corner " + v.r.Plan.Sides[0].Start + "; bold: tees"}
	names := f.Min.X - v.mm(34)
	for _, line := range strings {
		names = min(names, room.Min.X-v.mm(4)-v.s.Real(lettering.Width(line, paper.MM(2.4), false)))
	}
	w := v.walls()
	v.names(stops(room.X(), v.c.XLines), stops(room.Y(), v.c.YLines), f)

	top := dimension.Stick{
		From: w.top.From, To: w.top.To, Edge: f.Max.Y + v.mm(7), Flip: true, Datum: w.top.From,
		Marks: teeMarks(v.c.XLines, w.top, w.top.From), Scale: v.s, Show: v.show,
	}
	e, _ := top.Draw()
	v.add(e...)
	for i, line := range strings {
		v.add(drawing.Text{Layer: drawing.Words, At: geom.Pt(names, f.Max.Y+v.mm(13.8-4.2*float64(i))), String: line, Cap: paper.MM(2.4)})
	}
	left := dimension.Stick{
		Upright: true, From: w.left.To, To: w.left.From, Edge: f.Min.X - v.mm(7), Datum: w.left.To,
		Marks: teeMarks(v.c.YLines, w.left, w.left.To), Scale: v.s, Show: v.show,
	}
	e, _ = left.Draw()
	v.add(e...)

	// The chains stand at the two other walls, and are true there.
	below := dimension.Chain{Side: dimension.Below, Object: f.Min.Y, Datum: w.bottom.From, NamesX: names, Scale: v.s, Show: v.show}
	right := dimension.Chain{Side: dimension.RightOf, Object: f.Max.X, Datum: w.right.To, Scale: v.s, Show: v.show}
	if j, along := v.joistStops(w); len(j) > 2 {
		row := dimension.Row{Name: "joist centers", At: j, Merge: true}
		if along {
			below.Rows = append(below.Rows, row)
		} else {
			right.Rows = append(right.Rows, row)
		}
	}
	below.Rows = append(below.Rows,
		dimension.Row{Name: "borders, panels", At: stops(w.bottom, v.c.XLines), Merge: v.narrow(v.c.ModuleX)},
		dimension.Row{Name: "wall " + v.r.Plan.Sides[2].Wall + ", finished", At: []geom.Length{w.bottom.From, w.bottom.To}, Also: true})
	right.Rows = append(right.Rows,
		dimension.Row{At: stops(w.right, v.c.YLines), Merge: v.narrow(v.c.ModuleY)},
		dimension.Row{At: []geom.Length{w.right.From, w.right.To}})
	right.First = v.besideRows(below, right)
	e, _ = below.Draw()
	v.add(e...)
	e, _ = right.Draw()
	v.add(e...)
}

// narrow reports whether a module has no room for its figure at this scale, so
// that equal ones are figured together.
func (v *view) narrow(module geom.Length) bool {
	return lettering.Width(v.show.Figure(module), paper.MM(2.8), false)+paper.MM(1.8) > v.s.OnPaper(module)
}

// walls is where each wall of the room begins and ends, along the page.
type walls struct{ top, right, bottom, left geom.Span }

// walls returns the ends of the four walls. In a room out of square the walls
// facing each other do not begin at the same place.
func (v *view) walls() walls {
	o := v.c.Outline
	return walls{
		top: geom.Span{From: o[0].X, To: o[1].X}, right: geom.Span{From: o[2].Y, To: o[1].Y},
		bottom: geom.Span{From: o[3].X, To: o[2].X}, left: geom.Span{From: o[3].Y, To: o[0].Y},
	}
}

// besideRows returns how far out the rows at the right begin: past the figures
// that the rows below carry out at their right ends, when the rows at the right
// carry one down as well.
func (v *view) besideRows(below, right dimension.Chain) paper.Length {
	const first = 10
	out := func(at []geom.Length, i int) paper.Length {
		w := lettering.Width(v.show.Figure(at[i+1]-at[i]), paper.MM(2.8), false)
		if w+paper.MM(1.8) <= v.s.OnPaper(at[i+1]-at[i]) {
			return 0
		}
		return w
	}
	down, wide := paper.Length(0), paper.Length(0)
	for _, r := range right.Rows {
		down = max(down, out(r.At, 0))
	}
	for _, r := range below.Rows {
		wide = max(wide, out(r.At, len(r.At)-2))
	}
	if down == 0 || wide == 0 {
		return paper.MM(first)
	}
	return max(paper.MM(first), wide+paper.MM(9)-v.s.OnPaper(below.Rows[0].At[len(below.Rows[0].At)-1]-v.c.Outline.Bounds().Max.X))
}

// stops returns the ends of a span and the tee lines in it, ascending.
func stops(whole geom.Span, lines []ceiling.TeeLine) []geom.Length {
	out := []geom.Length{whole.From}
	out = append(out, ordered(lines)...)
	return append(out, whole.To)
}

// ordered returns the places of tee lines, ascending.
func ordered(lines []ceiling.TeeLine) []geom.Length {
	var out []geom.Length
	for _, l := range lines {
		out = append(out, l.At)
	}
	if len(out) > 1 && out[0] > out[len(out)-1] {
		for i, k := 0, len(out)-1; i < k; i, k = i+1, k-1 {
			out[i], out[k] = out[k], out[i]
		}
	}
	return out
}

// teeMarks returns the marks of a string along one side: the datum, every tee
// line in bold, the far wall.
func teeMarks(lines []ceiling.TeeLine, whole geom.Span, datum geom.Length) []dimension.StickMark {
	far := whole.To
	if datum == whole.To {
		far = whole.From
	}
	out := []dimension.StickMark{{At: datum, Plain: true}}
	for _, l := range lines {
		out = append(out, dimension.StickMark{At: l.At, Bold: true, Plain: true})
	}
	return append(out, dimension.StickMark{At: far, Plain: true})
}

// joistStops returns the ends of the wall at which the joist centres are
// figured and the centres between them, and whether they run along the page.
func (v *view) joistStops(w walls) ([]geom.Length, bool) {
	if len(v.c.Joists) == 0 {
		return nil, true
	}
	j := v.c.Joists[0]
	upright := (j.To.Y - j.From.Y).Abs() > (j.To.X - j.From.X).Abs()
	span := w.bottom
	if !upright {
		span = w.right
	}
	out := []geom.Length{span.From, span.To}
	for _, j := range v.c.Joists {
		a, b := j.From, j.To
		at := a.X
		if upright && b.Y < a.Y {
			at = b.X
		}
		if !upright {
			at = a.Y
			if b.X > a.X {
				at = b.Y
			}
		}
		if span.From < at && at < span.To {
			out = append(out, at)
		}
	}
	return ascending(out), upright
}

// ascending sorts positions.
func ascending(list []geom.Length) []geom.Length {
	for i := range list {
		for k := i; k > 0 && list[k] < list[k-1]; k-- {
			list[k], list[k-1] = list[k-1], list[k]
		}
	}
	return list
}

// names writes the numbers of columns above and the letters of rows at the left.
func (v *view) names(xs, ys []geom.Length, f geom.Rect) {
	g := drawing.Group{ID: "grid-names", Title: "Names of columns and rows"}
	cols, rows := map[int]string{}, map[int]string{}
	for _, c := range v.c.Cells {
		letter, number := split(c.Name)
		cols[c.Col], rows[c.Row] = number, letter
	}
	y := f.Max.Y + v.mm(3.6)
	every := v.everyName(xs, lettering.Width(cols[len(xs)-2], paper.MM(3.2), true)+paper.MM(1.2))
	for i := 0; i+1 < len(xs); i += every {
		g.Elements = append(g.Elements, v.bracket(cols[i], geom.Pt(xs[i], y), geom.Pt(xs[i+1], y))...)
	}
	x := f.Min.X - v.mm(3.6)
	every = v.everyName(ys, paper.MM(4.6))
	for i := (len(ys) - 2) % every; i+1 < len(ys); i += every {
		row := len(ys) - 2 - i
		g.Elements = append(g.Elements, v.bracket(rows[row], geom.Pt(x, ys[i]), geom.Pt(x, ys[i+1]))...)
	}
	v.add(g)
}

// everyName returns 1, or at small scales 2, 3 and so on: how many panels there
// are from one name to the next, so that names need of paper stand apart.
func (v *view) everyName(stops []geom.Length, need paper.Length) int {
	least := stops[len(stops)-1] - stops[0]
	for i := 0; i+1 < len(stops); i++ {
		// The middles of neighbours are half of both apart.
		if i > 0 {
			least = min(least, (stops[i+1]-stops[i-1])/2)
		}
	}
	every := 1
	for v.s.OnPaper(least*geom.Length(every)) < need && every < len(stops) {
		every++
	}
	return every
}

// split parts the name of a cell into row letters and column number.
func split(name string) (letter, number string) {
	for i, r := range name {
		if r >= '0' && r <= '9' {
			return name[:i], name[i:]
		}
	}
	return name, ""
}

// bracket draws a thin bracket as wide as a panel, broken for its name.
func (v *view) bracket(name string, a, b geom.Point) []drawing.Element {
	pen := drawing.Style{Layer: drawing.Symbols, Pen: drawing.P18}
	cap := paper.MM(3.2)
	mid := geom.Polygon{a, b}.Bounds().Mid()
	inset, half, tick := v.mm(0.7), v.mm(2.9), v.mm(0.9)
	if len(name) > 1 {
		half = v.mm(3.4)
	}
	text := drawing.Text{Layer: drawing.Symbols, At: geom.Pt(mid.X, mid.Y-v.s.Real(cap)/2), String: name, Cap: cap, Bold: true, Anchor: drawing.Middle}
	out := []drawing.Element{text}
	if b.X-a.X+b.Y-a.Y < 2*(half+inset)+v.mm(0.4) {
		return out // no room for a bracket beside the name
	}
	if a.Y == b.Y {
		if b.X-a.X > 2*(half+inset) {
			out = append(out,
				drawing.Line{Style: pen, A: geom.Pt(a.X+inset, a.Y), B: geom.Pt(mid.X-half, a.Y)},
				drawing.Line{Style: pen, A: geom.Pt(mid.X+half, a.Y), B: geom.Pt(b.X-inset, a.Y)})
		}
		for _, x := range []geom.Length{a.X + inset, b.X - inset} {
			out = append(out, drawing.Line{Style: pen, A: geom.Pt(x, a.Y-tick), B: geom.Pt(x, a.Y+tick)})
		}
		return out
	}
	if b.Y-a.Y > 2*(half+inset) {
		out = append(out,
			drawing.Line{Style: pen, A: geom.Pt(a.X, a.Y+inset), B: geom.Pt(a.X, mid.Y-half)},
			drawing.Line{Style: pen, A: geom.Pt(a.X, mid.Y+half), B: geom.Pt(a.X, b.Y-inset)})
	}
	for _, y := range []geom.Length{a.Y + inset, b.Y - inset} {
		out = append(out, drawing.Line{Style: pen, A: geom.Pt(a.X-tick, y), B: geom.Pt(a.X+tick, y)})
	}
	return out
}
