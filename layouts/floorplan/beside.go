package floorplan

import (
	"math"
	"slices"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
	"roomwright/layouts/planwalls"
)

// degrees returns the direction from a to b in whole degrees.
func degrees(a, b geom.Point) int {
	d := int(math.Round(math.Atan2(float64(b.Y-a.Y), float64(b.X-a.X)) * 180 / math.Pi))
	return (d + 360) % 360
}

// dimensions puts two rows outside every wall: what stands in it, and the whole.
func (v *view) dimensions() {
	all := drawing.Bounds(v.out, v.s)
	outer := v.r.Plan.Taped.Bounds()
	names := min(all.Min.X, outer.Min.X) - v.nameSpace()
	var drawn []drawing.Element
	for _, d := range v.sides {
		var rows []dimension.Row
		stops := []geom.Length{d.Along(0), d.Along(d.Length)}
		parts := append([]geom.Length{}, stops...)
		for _, g := range gaps(d) {
			parts = append(parts, d.Along(g.From), d.Along(g.To))
		}
		if len(parts) > 2 {
			rows = append(rows, dimension.Row{Name: partsName(d), At: ascending(parts)})
		}
		rows = append(rows, dimension.Row{Name: wholeName(d), At: ascending(stops), Also: true})
		c := dimension.Chain{
			Side: d.Page, Object: d.Edge(), Rows: rows, Datum: d.Along(0),
			NamesX: names, Scale: v.s, Show: v.show,
		}
		if len(d.Wall.Openings) > 0 {
			// The marks of its section stand before the first row.
			c.First = paper.MM(13)
			if d.Page == dimension.LeftOf || d.Page == dimension.RightOf {
				c.First = paper.MM(17)
			}
		}
		e := v.apart(c, drawn)
		drawn = append(drawn, e...)
		v.add(e...)
	}
}

// apart draws a chain, moved out until it meets nothing of those already drawn:
// at a corner of the room the last figures of two chains may stand outside both.
func (v *view) apart(c dimension.Chain, drawn []drawing.Element) []drawing.Element {
	least := max(c.First, paper.MM(10))
	var e []drawing.Element
	for out := 0.0; out <= 40; out += 2 {
		c.First = least + paper.MM(out)
		if e, _ = c.Draw(); !v.meet(e, drawn) {
			break
		}
	}
	return e
}

// meet reports whether a figure or name of one list is over, or nearly over,
// anything of the other.
func (v *view) meet(a, b []drawing.Element) bool {
	return v.over(a, b) || v.over(b, a)
}

// over reports whether a text of one list meets a text or line of the other.
func (v *view) over(texts, others []drawing.Element) bool {
	var boxes []geom.Rect
	drawing.Walk(texts, true, func(e drawing.Element) {
		if t, ok := e.(drawing.Text); ok {
			boxes = append(boxes, drawing.TextBox(t, v.s).Inset(-v.mm(0.6)))
		}
	})
	found := false
	drawing.Walk(others, true, func(e drawing.Element) {
		switch e.(type) {
		case drawing.Text, drawing.Line:
			b := drawing.Bounds([]drawing.Element{e}, v.s).Inset(-v.mm(0.1))
			found = found || slices.ContainsFunc(boxes, b.Overlaps)
		}
	})
	return found
}

// nameSpace returns how far left of the walls the names of rows begin: past the
// rows at the left where those carry a figure out at their upper end.
func (v *view) nameSpace() geom.Length {
	wide, out := v.mm(27), v.mm(17)
	for _, d := range v.sides {
		if d.Page == dimension.Above || d.Page == dimension.Below {
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
	out := append([]geom.Length{}, list...)
	for i := range out {
		for k := i + 1; k < len(out); k++ {
			if out[k] < out[i] {
				out[i], out[k] = out[k], out[i]
			}
		}
	}
	n := 0
	for i, x := range out {
		if i == 0 || x != out[n-1] {
			out[n] = x
			n++
		}
	}
	return out[:n]
}

// notes are the facts that the plan is read with.
func (v *view) notes() []string {
	unit, height := "Inches", "4 ft"
	if v.show.Form == measure.MillimetresOnly {
		unit, height = "Millimetres", "1.2 m"
	} else if v.show.Form == measure.FeetAndInches {
		unit = "Feet and inches"
	}
	out := []string{
		unit + ", taped " + v.faces() + ".",
		"Walls are cut " + height + " above the floor. Corners are named by two walls: " + v.r.Plan.Sides[0].Start + " is the left end of wall " + v.r.Plan.Sides[0].Wall + ".",
	}
	if v.used[planwalls.Masonry] || v.used[planwalls.Bare] {
		out = append(out, "The thickness of masonry walls, and of stud walls whose studs were not found, was not taped: their far face is not to scale.")
	}
	if len(v.r.Plan.Misfits) > 0 {
		out = append(out, "Misfit in the survey: a reading less what all the other readings want it to be.")
	}
	if v.used["section"] {
		out = append(out, "Sections are drawn on the sheet of the wall or ceiling that they cut.")
	}
	return append(out, "Check each figure in the room before anything is cut. Do not scale.")
}

// tables lists the survey: each reading beside what all of them together want.
func (v *view) tables() []drawing.Table {
	t := drawing.Table{
		Heading: "Survey",
		Columns: []drawing.Column{{Heading: "reading"}, {Heading: "taped", Right: true}, {Heading: "set out as", Right: true}, {Heading: "misfit", Right: true}},
	}
	for i, m := range v.r.Plan.Misfits {
		as := m.Wanted
		if i < len(v.r.Plan.Sides) && m.Reading == v.r.Plan.Sides[i].Wall {
			as = v.r.Plan.Sides[i].Taped
		}
		t.Rows = append(t.Rows, []string{m.Reading, v.show.Figure(m.Read), v.show.Figure(as), v.misfit(m.Read - m.Wanted)})
	}
	if len(t.Rows) == 0 {
		return nil
	}
	return []drawing.Table{t}
}

// misfit prints a difference with its sign.
func (v *view) misfit(l geom.Length) string {
	f := v.show.Figure(l.Abs())
	switch {
	case v.show.Round(l) == 0:
		return f
	case l < 0:
		return "−" + f
	}
	return "+" + f
}

// legend explains what is in the plan.
func (v *view) legend() []drawing.Sample {
	var out []drawing.Sample
	full := paper.Full()
	mm := func(v float64) geom.Length { return geom.Length(paper.MM(v)) }
	out = planwalls.Samples(v.used)
	add := func(key, words string, e ...drawing.Element) {
		if v.used[key] {
			out = append(out, drawing.Sample{Words: words, Swatch: e})
		}
	}
	add("section", "section, looking the way it points",
		marks.Pennant("X", geom.Pt(mm(6), 0), marks.RightWay, full))
	tri := []geom.Point{geom.Pt(mm(6.5), mm(1.6)), geom.Pt(mm(4.9), mm(-1.6)), geom.Pt(mm(8.1), mm(-1.6))}
	v.used["elevation"] = true
	add("elevation", "elevation of that wall", drawing.Area{Layer: drawing.Symbols, Outline: tri, Fill: drawing.Black})
	return out
}
