package ceilingplan

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/layouts/drawing"
)

// isSlotFinding reports whether a finding is about slots that miss.
func isSlotFinding(f finding.Finding) bool { return f.Rule == "slots of the mains" }

// tables lists the sticks of main tee, all other pieces with the places where
// they go, and the wires.
func (v *view) tables() []drawing.Table {
	var out []drawing.Table
	for _, t := range []drawing.Table{v.pieces(), v.mainTable(), v.wires()} {
		if len(t.Rows) > 0 {
			out = append(out, t)
		}
	}
	return out
}

// pieces lists the pieces, equal ones together, in the order of the work.
func (v *view) pieces() drawing.Table {
	t := drawing.Table{
		Heading: "Pieces on this sheet",
		Columns: []drawing.Column{{Bold: true}, {}, {Heading: "where"}, {Heading: "no.", Right: true}, {Heading: "cut to", Right: true, Bold: true}},
	}
	count := map[piece.Mark]int{}
	for _, p := range v.c.Pieces {
		count[p.Mark]++
		if count[p.Mark] == 1 {
			t.Rows = append(t.Rows, []string{string(p.Mark), v.what(p), v.where(p), "", v.cutTo(p)})
		}
	}
	for _, r := range t.Rows {
		r[3] = fmt.Sprint(count[piece.Mark(r[0])])
	}
	slices.SortStableFunc(t.Rows, func(a, b []string) int { return byMark(a[0], b[0]) })
	return t
}

// byMark orders marks by their letters, then by their numbers.
func byMark(a, b string) int {
	la, na := split(a)
	lb, nb := split(b)
	return cmp.Or(cmp.Compare(order(la), order(lb)), cmp.Compare(la, lb), cmp.Compare(len(na), len(nb)), cmp.Compare(na, nb))
}

// order is the order in which a ceiling is hung.
func order(letters string) int { return strings.Index("JMKWNL", letters) }

// what names a piece; a cross tee with the length that it is cut from, a light
// with the name of its kind when there are several.
func (v *view) what(p piece.Piece) string {
	if p.Name == "cross tee" {
		return p.Profile.Name
	}
	for _, l := range v.c.Lights {
		if l.Mark == p.Mark && slices.ContainsFunc(v.c.Lights, func(o ceiling.Light) bool { return o.Index != l.Index }) {
			return p.Name + " " + l.Name
		}
	}
	return p.Name
}

// cutTo prints what a piece is cut to: a length, or width and height for a
// panel, those of both ends where it is out of square.
func (v *view) cutTo(p piece.Piece) string {
	for _, c := range v.c.Cells {
		if c.Mark == p.Mark && p.Mark != "" {
			return v.panelSize(c)
		}
	}
	for _, l := range v.c.Lights {
		if l.Mark == p.Mark {
			return v.show.Figure(l.Box.W()) + " × " + v.show.Figure(l.Box.H())
		}
	}
	return v.show.Figure(p.Length)
}

// panelSize prints the size of the panel in a cell: across, then up the page.
func (v *view) panelSize(c ceiling.Cell) string {
	if !c.Skew {
		return v.show.Figure(c.CutW) + " × " + v.show.Figure(c.CutH)
	}
	s := c.Shape
	// Both ends are as much less than their cell as the greater one is.
	both := func(a, b, cut geom.Length) string {
		one, other := v.show.Figure(a+cut-max(a, b)), v.show.Figure(b+cut-max(a, b))
		if one == other {
			return one
		}
		return one + " to " + other
	}
	return both(s[1].X-s[0].X, s[2].X-s[3].X, c.CutW) + " × " + both(s[0].Y-s[3].Y, s[1].Y-s[2].Y, c.CutH)
}

// where says where a piece goes.
func (v *view) where(p piece.Piece) string {
	for _, a := range v.c.Angles {
		if a.Mark == p.Mark {
			return "wall " + a.Wall
		}
	}
	for _, l := range v.c.Lights {
		if l.Mark == p.Mark {
			return strings.Join(l.Cells, ", ")
		}
	}
	for _, t := range v.c.Crosses {
		if t.Mark == p.Mark {
			return v.whereCross(p.Mark, t.Whole, t.Length)
		}
	}
	for _, m := range v.c.Mains {
		for _, k := range m.Sticks {
			if k.Mark == p.Mark {
				return v.whereMain(m)
			}
		}
	}
	return v.whereCells(p.Mark)
}

// whereMain names the line of a main tee.
func (v *view) whereMain(m ceiling.Main) string {
	rows, cols := v.gridNames()
	if v.c.MainsAlongX {
		return line(rows, lineIndex(v.c.YLines, m.From.Y))
	}
	return line(cols, lineIndex(v.c.XLines, m.From.X))
}

// line names the line after the cell so numbered.
func line(names []string, after int) string {
	if after < 0 || after+1 >= len(names) {
		return ""
	}
	return "line " + names[after] + "|" + names[after+1]
}

// lineIndex returns the number of the tee line at a place, -1 when none is.
func lineIndex(lines []ceiling.TeeLine, at geom.Length) int {
	return slices.IndexFunc(lines, func(l ceiling.TeeLine) bool { return l.At == at })
}

// whereCells names the cells of a panel; whole ones are all that bear no other
// mark.
func (v *view) whereCells(mark piece.Mark) string {
	left := map[[2]int]bool{}
	for _, c := range v.c.Cells {
		if c.Mark != mark {
			continue
		}
		if c.Kind == ceiling.Whole {
			return "all other cells"
		}
		left[[2]int{c.Row, c.Col}] = true
	}
	name := map[[2]int]string{}
	for _, c := range v.c.Cells {
		name[[2]int{c.Row, c.Col}] = c.Name
	}
	var out []string
	for _, c := range v.c.Cells {
		best := [][2]int{}
		for _, way := range [][2]int{{0, 1}, {1, 0}} {
			var run [][2]int
			for at := [2]int{c.Row, c.Col}; left[at]; at = [2]int{at[0] + way[0], at[1] + way[1]} {
				run = append(run, at)
			}
			if len(run) > len(best) {
				best = run
			}
		}
		for _, at := range best {
			left[at] = false
		}
		switch n := len(best); {
		case n > 2:
			out = append(out, name[best[0]]+" to "+name[best[n-1]])
		default:
			for _, at := range best {
				out = append(out, name[at])
			}
		}
	}
	return strings.Join(out, ", ")
}

// whereCross names the places of the cross tees of one mark: the cells that
// they lie between, and the lines.
func (v *view) whereCross(mark piece.Mark, whole bool, long geom.Length) string {
	if whole {
		return "all others of " + v.show.Figure(long)
	}
	rows, cols := v.gridNames()
	var order []string
	at := map[string][]int{}
	names := map[string][]string{}
	for _, t := range v.c.Crosses {
		if t.Mark != mark {
			continue
		}
		b := geom.Polygon{t.From, t.To}.Bounds()
		up := b.H() > b.W()
		along, lines, n := "column", cols, lineIndex(v.c.YLines, t.From.Y)
		cells, span := v.c.XLines, b.X()
		over := rows
		if up {
			along, lines, over, n = "row", rows, cols, lineIndex(v.c.XLines, t.From.X)
			cells, span = v.c.YLines, b.Y()
		}
		// The cells beside the tee, by the lines before and within it.
		first, last := 0, 0
		for _, l := range cells {
			before, within := l.At <= span.From, span.From < l.At && l.At < span.To
			if up {
				before = l.At >= span.To
			}
			if before {
				first++
			}
			if within {
				last++
			}
		}
		last += first
		key := along + " " + lines[first]
		if last > first {
			key = along + "s " + lines[first] + " to " + lines[last]
			if last == first+1 {
				key = along + "s " + lines[first] + ", " + lines[last]
			}
		}
		if at[key] == nil {
			order = append(order, key)
		}
		at[key], names[key] = append(at[key], n), over
	}
	var out []string
	for _, key := range order {
		out = append(out, key+": "+runs(at[key], names[key]))
	}
	return strings.Join(out, "; ")
}

// runs names lines by the cells beside them, three or more in a row by the
// first and the last.
func runs(lines []int, names []string) string {
	slices.Sort(lines)
	lines = slices.Compact(lines)
	one := func(n int) string { return names[n] + "|" + names[n+1] }
	var out []string
	for i := 0; i < len(lines); {
		k := i
		for k+1 < len(lines) && lines[k+1] == lines[k]+1 {
			k++
		}
		if k-i >= 2 {
			out = append(out, one(lines[i])+" to "+one(lines[k]))
		} else {
			for _, n := range lines[i : k+1] {
				out = append(out, one(n))
			}
		}
		i = k + 1
	}
	return strings.Join(out, ", ")
}
