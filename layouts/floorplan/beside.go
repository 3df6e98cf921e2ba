package floorplan

import (
	"math"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/geom/survey"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
	"roomwright/layouts/planwalls"
)

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
	for _, u := range v.unnamed {
		out = append(out, "Not named on the plan: "+u+".")
	}
	if v.used["section"] {
		out = append(out, "Sections are drawn on the sheet of the wall or ceiling that they cut.")
	}
	return append(out, "Check each figure in the room before anything is cut. Do not scale.")
}

// tables lists the survey: each reading, what it was set out as, and how far it
// is from what all the others want.
func (v *view) tables() []drawing.Table {
	t := drawing.Table{
		Heading: "Survey",
		Columns: []drawing.Column{{Heading: "reading"}, {Heading: "taped", Right: true}, {Heading: "set out as", Right: true}, {Heading: "misfit", Right: true}},
	}
	for _, m := range v.r.Plan.Misfits {
		by := v.misfit(m.By())
		if m.Unchecked {
			by = "unchecked"
		}
		t.Rows = append(t.Rows, []string{m.Reading, v.show.Figure(m.Read), v.show.Figure(v.setOut(m)), by})
	}
	if len(t.Rows) == 0 {
		return nil
	}
	return []drawing.Table{t}
}

// setOut returns what a reading measures between the corners as set out.
func (v *view) setOut(m survey.Misfit) geom.Length {
	p := v.r.Plan
	for i, s := range p.Sides {
		if s.Wall == m.Reading {
			return s.Taped
		}
		for k, o := range p.Sides {
			if m.Reading == s.Start+" to "+o.Start {
				d := p.Taped[k].Sub(p.Taped[i])
				return geom.Length(math.Round(math.Hypot(float64(d.X), float64(d.Y))))
			}
		}
	}
	return m.Wanted
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
