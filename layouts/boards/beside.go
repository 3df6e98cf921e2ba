package boards

import (
	"fmt"
	"slices"

	"roomwright/geom"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// tables returns the table of boards and, on studs, that of seams.
func (v *view) tables() []drawing.Table {
	out := []drawing.Table{v.boards()}
	if t := v.seams(); len(t.Rows) > 0 {
		out = append(out, t)
	}
	return out
}

// wanted returns the row as it was asked for.
func (v *view) wanted(index int) room.Board {
	if index >= 0 && index < len(v.Result.Room.Boards) {
		return v.Result.Room.Boards[index]
	}
	return room.Board{}
}

func (v *view) boards() drawing.Table {
	t := drawing.Table{Heading: "Boards on this sheet", Columns: []drawing.Column{
		{Heading: "mark", Bold: true}, {Heading: "board"}, {Heading: "as bought", Right: true}, {Heading: "no.", Right: true},
		{Heading: "cut to, " + v.Show.Unit(), Right: true, Bold: true},
	}}
	var seen []piece.Mark
	for _, row := range v.rows {
		want := v.wanted(row.Index)
		for _, sh := range row.Sheets {
			if slices.Contains(seen, sh.Mark) {
				continue
			}
			seen = append(seen, sh.Mark)
			n := 0
			for _, r := range v.rows {
				for _, o := range r.Sheets {
					if o.Mark == sh.Mark {
						n++
					}
				}
			}
			bought := ""
			if want.Size.Given() {
				bought = v.Show.Figure(want.Size.W) + " × " + v.Show.Figure(want.Size.H)
			}
			cut := "whole"
			if sh.CutW || sh.CutH {
				cut = v.Show.Figure(sh.Box.W()) + " × " + v.Show.Figure(sh.Box.H())
			}
			t.Rows = append(t.Rows, []string{string(sh.Mark), face.Times(sh.Profile.Name), bought, fmt.Sprint(n), cut})
		}
	}
	return t
}

func (v *view) seams() drawing.Table {
	t := drawing.Table{Heading: "Seams and ends, from the left finished corner", Columns: []drawing.Column{
		{Heading: "at", Right: true, Bold: true}, {Heading: "what"}, {Heading: "stud"},
		{Heading: "bears left", Right: true}, {Heading: "bears right", Right: true},
	}}
	datum := v.Finished().From
	for _, row := range v.rows {
		if row.Bearer != "studs" {
			continue
		}
		for _, s := range row.Seams {
			what := "seam"
			if s.End {
				what = "end"
			}
			stud := "none"
			if s.StudNo > 0 {
				stud = fmt.Sprint(s.StudNo)
			} else if s.Borne {
				stud = "new or strip"
			}
			left, right := v.Show.Figure(s.OnLeft), v.Show.Figure(s.OnRight)
			if s.End && s.X <= row.Box.Min.X {
				left = ""
			}
			if s.End && s.X >= row.Box.Max.X {
				right = ""
			}
			t.Rows = append(t.Rows, []string{v.Show.Figure(v.Show.Round(s.X - datum)), what, stud, left, right})
		}
	}
	return t
}

// notes returns what is to be known beside the figures.
func (v *view) notes() []string {
	n := []string{face.Units(v.Show) + ", to finished faces. Heights from the finished floor."}
	if off := v.Side.LeftOff; off != 0 {
		n = append(n, fmt.Sprintf("The finished face at the left is %s from corner %s as taped, where stud marks run from.",
			v.Show.Figure(off.Abs()), v.LeftCorner()))
	}
	for _, row := range v.rows {
		if row.Gap > 0 && len(row.Sheets) > 1 {
			n = append(n, fmt.Sprintf("Leave a gap of %s between boards; widths run to the middle of it.", v.Show.Figure(row.Gap)))
			break
		}
	}
	studs, masonry := false, false
	for _, row := range v.rows {
		studs = studs || row.Bearer == "studs"
		masonry = masonry || row.Bearer == "masonry"
	}
	if studs {
		n = append(n, "Fix along every stud behind a board; seams and ends bear as the table says.")
	}
	if masonry {
		n = append(n, "On masonry: anchors made for it, on the lines of fixings.")
	}
	n = append(n, v.spacing()...)
	for _, row := range v.rows {
		for _, s := range row.Seams {
			if !s.Borne && row.Bearer == "studs" {
				what := "seam"
				if s.End {
					what = "end"
				}
				n = append(n, fmt.Sprintf("The %s at %s does not bear on a stud: put in blocking or a strip first.",
					what, v.Show.Figure(v.Show.Round(s.X-v.Finished().From))))
			}
		}
		if w := v.wanted(row.Index); w.Note != "" {
			n = append(n, w.Note)
		}
	}
	return append(n, "Check each figure on the wall before the saw. Do not scale.")
}

// legend returns samples of what is on the drawing.
func (v *view) legend() []drawing.Sample {
	full := paper.Full()
	mm := func(x float64) geom.Length { return geom.Length(paper.MM(x)) }
	line := func(s drawing.Style) []drawing.Element {
		return []drawing.Element{drawing.Line{Style: s, A: geom.Pt(0, 0), B: geom.Pt(mm(13), 0)}}
	}
	var out []drawing.Sample
	if len(v.rows) > 0 {
		out = append(out, drawing.Sample{Words: "new board", Swatch: Sheet(geom.RectOf(0, -mm(1.8), mm(13), mm(1.8)))})
	}
	if len(v.fixings()) > 0 {
		out = append(out, drawing.Sample{Words: "line of fixings", Swatch: line(fixStyle())})
	}
	if len(v.rows) > 0 && len(v.rows[0].Sheets) > 0 {
		mark := string(v.rows[0].Sheets[0].Mark)
		w, _ := marks.LabelSize(mark, true)
		out = append(out, drawing.Sample{Words: "board mark, as on the cut list",
			Swatch: []drawing.Element{marks.Label(mark, true, geom.Pt(geom.Length(w/2)+mm(1.5), 0), full)}})
	}
	if len(v.behind()) > 0 {
		out = append(out, drawing.Sample{Words: "stud behind", Swatch: line(drawing.Style{Layer: drawing.FrameKept, Pen: drawing.P35, Dash: drawing.Hidden})})
	}
	if v.CeilingLine() != nil {
		out = append(out, drawing.Sample{Words: "face of the finished ceiling", Swatch: line(drawing.Style{Layer: drawing.CeilPanel, Pen: drawing.P35, Dash: drawing.Overhead})})
	}
	return out
}

// spacing says how far apart the fixings of a line are.
func (v *view) spacing() []string {
	var edge, field geom.Length
	for _, row := range v.rows {
		for _, f := range row.Fixing {
			if f.Edge {
				edge = max(edge, f.Pitch)
			} else {
				field = max(field, f.Pitch)
			}
		}
	}
	if edge == 0 || field == 0 {
		return nil
	}
	return []string{"Fixings: at most " + v.Show.Figure(edge) + " apart along edges and " + v.Show.Figure(field) + " in the field, of a kind that the maker of the board names."}
}
