package ceilingplan

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
	"roomwright/layouts/drawing"
)

// notes are the facts that the ceiling is hung with.
func (v *view) notes() []string {
	c := v.c
	unit := "Inches"
	switch v.show.Form {
	case measure.MillimetresOnly:
		unit = "Millimetres"
	case measure.FeetAndInches:
		unit = "Feet and inches"
	}
	out := []string{
		unit + ", to finished faces at ceiling height. Borders run from wall face to tee center.",
		fmt.Sprintf("Face of the ceiling at %s above the finished floor; structure at %s. Free above the tees: %s at the least.",
			v.show.Figure(c.Face), v.show.Figure(c.Structure), v.show.Figure(max(0, c.Clear))),
		"Wall angle: level line round the room; its top edge at " + v.show.Figure(c.Face+v.r.Room.Ceiling.Angle.Value) + ", the leg above the face. Fix it into studs, on masonry every " + v.pitch() + ".",
		v.stringNote(),
		"Panels are named by row and column, such as " + v.anyCell() + ".",
	}
	out = append(out, v.mainNotes()...)
	if n := len(c.Hangers); n > 0 {
		out = append(out, fmt.Sprintf("%d hanger wires, 12 gauge, each cut to the length in the list: three turns at both ends, plumb, to a fastener good for 100 lb in each joist.", n))
	}
	out = append(out, fmt.Sprintf("%d cells: %d whole panels, %d cut, %d under lights.", len(c.Cells), c.Panels.Whole, c.Panels.Cut, c.Panels.Lit))
	return append(out, "Check each figure in the room before the saw. Do not scale.")
}

// pitch is how far apart wall angle is fixed on masonry (US Navy builder
// training manual 14044).
func (v *view) pitch() string {
	if v.show.Form == measure.MillimetresOnly {
		return v.show.Figure(geom.MM(600))
	}
	return v.show.Figure(geom.In(24))
}

// anyCell names a cell to show how they are named: the first light's, else the first.
func (v *view) anyCell() string {
	if len(v.c.Lights) > 0 && len(v.c.Lights[0].Cells) > 0 {
		return v.c.Lights[0].Cells[0] + " (" + string(v.c.Lights[0].Mark) + ")"
	}
	return v.c.Cells[0].Name
}

// mainNotes say how each main tee is cut and spliced; mains alike share a line.
func (v *view) mainNotes() []string {
	type how struct {
		text  string
		marks []string
	}
	var list []how
	seen := map[string]int{}
	for _, m := range v.c.Mains {
		end := "left"
		at := func(p geom.Point) geom.Length { return p.X - v.c.Outline.Bounds().Min.X }
		if !v.c.MainsAlongX {
			end = "top"
			at = func(p geom.Point) geom.Length { return v.c.Outline.Bounds().Max.Y - p.Y }
		}
		text := fmt.Sprintf("cut %s off the factory end at the %s wall, so that a slot meets the first cross tee", v.show.Figure(m.StartCut), end)
		for _, p := range m.Splices {
			text += fmt.Sprintf("; splice at %s", v.show.Figure(at(p)))
		}
		k, ok := seen[text]
		if !ok {
			k = len(list)
			seen[text] = k
			list = append(list, how{text: text})
		}
		list[k].marks = append(list[k].marks, string(m.Mark))
	}
	var out []string
	for _, h := range list {
		out = append(out, strings.Join(h.marks, ", ")+": "+h.text+".")
	}
	return out
}

// tables lists the pieces of the ceiling, equal ones together, then the wires
// and the light panels.
func (v *view) tables() []drawing.Table {
	pieces := drawing.Table{
		Heading: "Pieces on this sheet",
		Columns: []drawing.Column{{Heading: "", Bold: true}, {Heading: ""}, {Heading: ""}, {Heading: "no.", Right: true}, {Heading: "cut to", Right: true, Bold: true}},
	}
	index := map[piece.Mark]int{}
	counts := []int{}
	for _, p := range v.c.Pieces {
		key := p.Mark
		k, ok := index[key]
		if !ok {
			k = len(pieces.Rows)
			index[key] = k
			counts = append(counts, 0)
			pieces.Rows = append(pieces.Rows, []string{string(p.Mark), v.what(p), v.where(p), "", v.cutTo(p)})
		}
		counts[k]++
		pieces.Rows[k][3] = fmt.Sprint(counts[k])
	}
	slices.SortStableFunc(pieces.Rows, func(a, b []string) int { return byMark(a[0], b[0]) })
	return append(append([]drawing.Table{pieces}, v.wires()...), v.facing()...)
}

// what names a piece; a wall angle with its wall.
func (v *view) what(p piece.Piece) string {
	for _, a := range v.c.Angles {
		if a.Mark == p.Mark {
			return p.Name + ", wall " + a.Wall
		}
	}
	return p.Name
}

// where says in which cells a panel or light lies, else of what a piece is cut.
func (v *view) where(p piece.Piece) string {
	for _, l := range v.c.Lights {
		if l.Mark == p.Mark {
			return "in " + strings.Join(l.Cells, ", ")
		}
	}
	var cells []string
	first, last := -1, -1 // of a run in one row, in v.c.Cells
	flush := func() {
		switch {
		case first < 0:
		case first == last:
			cells = append(cells, v.c.Cells[first].Name)
		default:
			cells = append(cells, v.c.Cells[first].Name+" to "+v.c.Cells[last].Name)
		}
		first = -1
	}
	for i, c := range v.c.Cells {
		if c.Mark != p.Mark || c.Kind == ceiling.Whole {
			continue
		}
		if first >= 0 && (i != last+1 || c.Row != v.c.Cells[last].Row) {
			flush()
		}
		if first < 0 {
			first = i
		}
		last = i
	}
	flush()
	if len(cells) > 0 {
		return "in " + strings.Join(cells, ", ")
	}
	return p.Profile.Name
}

// byMark orders marks by their letters, then by their numbers.
func byMark(a, b string) int {
	la, na := split(a)
	lb, nb := split(b)
	return cmp.Or(cmp.Compare(order(la), order(lb)), cmp.Compare(la, lb), cmp.Compare(len(na), len(nb)), cmp.Compare(na, nb))
}

// order is the order in which a ceiling is hung.
func order(letters string) int { return strings.Index("JMKWNL", letters) }

// cutTo prints what a piece is cut to: a length, or width and height for a panel.
func (v *view) cutTo(p piece.Piece) string {
	for _, c := range v.c.Cells {
		if c.Mark == p.Mark && p.Mark != "" {
			return v.show.Figure(c.CutW) + " × " + v.show.Figure(c.CutH)
		}
	}
	for _, l := range v.c.Lights {
		if l.Mark == p.Mark {
			return v.show.Figure(l.Box.W()) + " × " + v.show.Figure(l.Box.H())
		}
	}
	return v.show.Figure(p.Length)
}

// wires lists the hanger wires by main tee: where each hangs and how long it is cut.
func (v *view) wires() []drawing.Table {
	if len(v.c.Hangers) == 0 {
		return nil
	}
	t := drawing.Table{
		Heading: "Hanger wires",
		Columns: []drawing.Column{{Heading: "on", Bold: true}, {Heading: "from the wall at its start"}, {Heading: "no.", Right: true}, {Heading: "wire", Right: true, Bold: true}},
	}
	room := v.c.Outline.Bounds()
	for _, m := range v.c.Mains {
		var at []string
		n, wire := 0, geom.Length(0)
		for _, h := range v.c.Hangers {
			if h.Main != m.Mark || h.Light != "" {
				continue
			}
			n++
			wire = max(wire, h.Wire)
			if v.c.MainsAlongX {
				at = append(at, v.show.Figure(h.At.X-room.Min.X))
			} else {
				at = append(at, v.show.Figure(room.Max.Y-h.At.Y))
			}
		}
		if n > 0 {
			t.Rows = append(t.Rows, []string{string(m.Mark), strings.Join(at, ",  "), fmt.Sprint(n), v.show.Figure(wire)})
		}
	}
	lit := 0
	for _, h := range v.c.Hangers {
		if h.Light != "" {
			lit++
		}
	}
	if lit > 0 {
		t.Rows = append(t.Rows, []string{"lights", "at opposite corners of each", fmt.Sprint(lit), ""})
	}
	return []drawing.Table{t}
}
