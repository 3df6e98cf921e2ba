package ceilingplan

import (
	"fmt"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/measure"
	"roomwright/layouts/marks"
)

// notes are the facts that the ceiling is hung with, in the order of the work.
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
		"Order: wall angle, strings, hanger wires, main tees, cross tees, lights and whole panels, border panels.",
	}
	out = append(out, v.heightNotes()...)
	out = append(out, v.stringNotes()...)
	out = append(out, "Cells are named by row and column, such as "+v.anyCell()+"."+v.lineNames())
	if len(c.Hangers) > 0 {
		good := "100 lb"
		if v.show.Form == measure.MillimetresOnly {
			good = "45 kg"
		}
		out = append(out, fmt.Sprintf("%d hanger wires, 12 gauge, cut as listed with both ties; plumb, three turns at each end, to a fastener good for %s in each joist.", len(c.Hangers), good))
	}
	out = append(out, v.teeNotes()...)
	out = append(out, fmt.Sprintf("%d cells: %d whole panels, %d cut, %d under lights.", len(c.Cells), c.Panels.Whole, c.Panels.Cut, c.Panels.Lit))
	if slices.ContainsFunc(c.Cells, func(c ceiling.Cell) bool { return c.Skew }) {
		out = append(out, "Panels out of square have two figures: widths at the upper and the lower end, heights at the left and the right.")
	}
	for _, o := range v.unnamed {
		out = append(out, fmt.Sprintf("Above the ceiling: %s, %s.", thing(o), v.underside(o)))
	}
	out = append(out, v.unmarked()...)
	return append(out, "Check each figure in the room before the saw. Do not scale.")
}

// unmarked says which marks the plan has no room for, and that it has none in
// some cells.
func (v *view) unmarked() []string {
	var none []string
	bare := false
	for _, m := range v.missing {
		switch {
		case v.used[marks.Label(m, false, geom.Point{}, v.s).ID]:
			bare = true
		case !slices.Contains(none, m):
			none = append(none, m)
		}
	}
	var out []string
	slices.SortFunc(none, byMark)
	switch n := len(none); {
	case n > 8:
		out = append(out, fmt.Sprintf("No room on the plan for %d of the marks: the list says where each piece goes.", n))
	case n > 0:
		out = append(out, "No room on the plan for "+strings.Join(none, ", ")+": the list says where they go.")
	}
	if bare {
		out = append(out, "A cell without a mark has a whole panel, unless the list names it.")
	}
	return out
}

// heightNotes give the heights that the ceiling is hung by.
func (v *view) heightNotes() []string {
	c := v.c
	var out []string
	if leg := v.angleLeg(); leg > 0 {
		out = append(out, fmt.Sprintf("Wall angle: top edge at %s above the finished floor, on a level line all round; its leg of %s brings the face of the ceiling to %s.",
			v.show.Figure(c.Face+leg), v.show.Figure(leg), v.show.Figure(c.Face)),
			"Fix the wall angle into studs, on masonry every "+v.pitch()+"; corners lapped.")
	}
	if c.Structure > 0 {
		out = append(out, fmt.Sprintf("Structure at %s above the finished floor. Free above the tees: %s at the least.",
			v.show.Figure(c.Structure), v.show.Figure(max(0, c.Clear))))
	}
	return out
}

// pitch is how far apart wall angle is fixed on masonry (US Navy builder
// training manual 14044).
func (v *view) pitch() string {
	if v.show.Form == measure.MillimetresOnly {
		return v.show.Figure(geom.MM(600))
	}
	return v.show.Figure(geom.In(24))
}

// angleLeg returns the leg of the wall angle.
func (v *view) angleLeg() geom.Length {
	for _, p := range v.c.Pieces {
		if slices.ContainsFunc(v.angleMarks(), func(m string) bool { return m == string(p.Mark) }) {
			return p.Profile.Thick
		}
	}
	return 0
}

func (v *view) angleMarks() []string {
	var out []string
	for _, a := range v.c.Angles {
		out = append(out, string(a.Mark))
	}
	return out
}

// stringNotes say where the figures of the strips go, and give those of the
// facing walls where they differ.
func (v *view) stringNotes() []string {
	if len(v.c.XLines)+len(v.c.YLines) == 0 {
		return nil
	}
	top, left := v.stringAt(0), v.stringAt(3)
	out := []string{fmt.Sprintf("String marks, tape hooked at corner %s: the figures at the top go on the wall angle of %s, those at the left on that of %s.", top.corner, top.wall, left.wall)}
	var same []string
	for _, pair := range [][2]stringMarks{{top, v.stringAt(2)}, {left, v.stringAt(1)}} {
		here, facing := v.figures(pair[0]), v.figures(pair[1])
		switch {
		case len(here) == 0:
		case slices.Equal(here, facing):
			same = append(same, "on wall "+atCorner(pair[1]))
		default:
			out = append(out, "On wall "+atCorner(pair[1])+": "+strings.Join(facing, ", ")+".")
		}
	}
	if len(same) > 0 {
		out = append(out, "The same figures go "+strings.Join(same, ", ")+".")
	}
	return append(out, "A string between two like marks lies under the centers of a line of tees. Strings must cross square: 3, 4 and 5.")
}

// atCorner names a wall and the corner where its tape is hooked.
func atCorner(s stringMarks) string { return s.wall + " from corner " + s.corner }

// anyCell names a cell to show how they are named: the first light's, else the first.
func (v *view) anyCell() string {
	if len(v.c.Lights) > 0 && len(v.c.Lights[0].Cells) > 0 {
		return v.c.Lights[0].Cells[0] + " (" + string(v.c.Lights[0].Mark) + ")"
	}
	return v.c.Cells[0].Name
}

// lineNames says how tee lines are named in the list, with one of this room.
func (v *view) lineNames() string {
	rows, cols := v.gridNames()
	switch {
	case len(cols) > 1:
		n := len(cols) / 2
		return fmt.Sprintf(" Line %s|%s lies between columns %s and %s.", cols[n-1], cols[n], cols[n-1], cols[n])
	case len(rows) > 1:
		n := len(rows) / 2
		return fmt.Sprintf(" Line %s|%s lies between rows %s and %s.", rows[n-1], rows[n], rows[n-1], rows[n])
	}
	return ""
}

// gridNames returns the names of rows from the top and of columns from the left.
func (v *view) gridNames() (rows, cols []string) {
	for _, c := range v.c.Cells {
		letter, number := split(c.Name)
		if c.Col == 0 {
			rows = append(rows, letter)
		}
		if c.Row == 0 {
			cols = append(cols, number)
		}
	}
	return rows, cols
}

// teeNotes say what the list of tees takes for granted.
func (v *view) teeNotes() []string {
	if len(v.c.Mains) == 0 {
		return nil
	}
	var out []string
	if len(v.c.Crosses) > 0 && v.slotted() {
		out = append(out, "Main tees cut as listed have a slot at every line of cross tees; they start at wall "+v.start()+".")
	}
	gap := v.c.Mains[0].Sticks[0].From
	ends := "Tees end " + v.show.Figure(gap) + " short of the wall face."
	if gap == 0 {
		ends = "Tees end at the wall face."
	}
	if slices.ContainsFunc(v.c.Crosses, func(t ceiling.Cross) bool { return t.Cuts == 1 }) {
		ends += " A cross tee cut at one end has its factory end in a tee and its cut end at the wall."
	}
	return append(out, ends)
}

// slotted reports whether slots of the mains meet all cross tees: the first is
// met by the way the mains are cut, the others when the module is a whole
// number of slots, which the set-out warns of.
func (v *view) slotted() bool {
	return !slices.ContainsFunc(v.r.Findings, isSlotFinding)
}
