package ceilingplan

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// names writes the numbers of columns above and the letters of rows at the left.
func (v *view) names(xs, ys []geom.Length, f geom.Rect) {
	g := drawing.Group{ID: "grid-names", Title: "Names of columns and rows"}
	cols, rows := map[int]string{}, map[int]string{}
	for _, c := range v.c.Cells {
		letter, number := split(c.Name)
		cols[c.Col], rows[c.Row] = number, letter
	}
	y := f.Max.Y + v.mm(4)
	every := v.everyName(xs, lettering.Width(cols[len(xs)-2], paper.MM(3.2), true)+paper.MM(1.2))
	for i := 0; i+1 < len(xs); i += every {
		g.Elements = append(g.Elements, v.bracket(cols[i], xs, i, false, y)...)
	}
	off, _ := v.rowNames()
	x := f.Min.X - off
	every = v.everyName(ys, paper.MM(4.6))
	for i := (len(ys) - 2) % every; i+1 < len(ys); i += every {
		row := len(ys) - 2 - i
		g.Elements = append(g.Elements, v.bracket(rows[row], ys, i, true, x)...)
	}
	v.add(g)
}

// rowNames returns how far left of the walls the names of rows have their
// middle, and how far the strip beside them lies.
func (v *view) rowNames() (middle, strip geom.Length) {
	rows, _ := v.gridNames()
	half := v.mm(1.2)
	for _, r := range rows {
		half = max(half, v.s.Real(lettering.Width(r, paper.MM(3.2), true))/2)
	}
	return v.mm(2.8) + half, v.mm(5) + 2*half
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

// bracket draws a thin bracket as wide as the panel between two stops, broken
// for its name. It keeps off the names of neighbours narrower than their names.
func (v *view) bracket(name string, stops []geom.Length, i int, upright bool, across geom.Length) []drawing.Element {
	pen := drawing.Style{Layer: drawing.Symbols, Pen: drawing.P18}
	cap := paper.MM(3.2)
	wide := v.s.Real(lettering.Width(name, cap, true))
	half, tick := max(v.mm(2.9), wide/2+v.mm(1.1)), v.mm(0.9)
	long := wide
	if upright {
		long = v.s.Real(cap)
	}
	inset := func(k int) geom.Length { // from the edge towards the neighbour k
		if k < 0 || k+1 >= len(stops) {
			return v.mm(0.7)
		}
		return max(v.mm(0.7), (long-(stops[k+1]-stops[k]))/2+v.mm(1))
	}
	from, to := stops[i]+inset(i-1), stops[i+1]-inset(i+1)
	mid := geom.Span{From: stops[i], To: stops[i+1]}.Mid()
	at := func(along, out geom.Length) geom.Point {
		if upright {
			return geom.Pt(across+out, along)
		}
		return geom.Pt(along, across+out)
	}
	p := at(mid, 0)
	out := []drawing.Element{drawing.Text{Layer: drawing.Symbols, At: geom.Pt(p.X, p.Y-v.s.Real(cap)/2), String: name, Cap: cap, Bold: true, Anchor: drawing.Middle}}
	if mid-half < from+v.mm(0.2) || to-v.mm(0.2) < mid+half {
		return out // no room for a bracket beside the name
	}
	line := func(a1, o1, a2, o2 geom.Length) drawing.Line {
		return drawing.Line{Style: pen, A: at(a1, o1), B: at(a2, o2)}
	}
	return append(out, line(from, 0, mid-half, 0), line(mid+half, 0, to, 0), line(from, -tick, from, tick), line(to, -tick, to, tick))
}
