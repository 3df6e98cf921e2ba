package boards

import (
	"cmp"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/lining"
	"roomwright/geom/setout"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/paper"
)

// view is one layout of boards while it is drawn.
type view struct {
	face.Face
	rows []lining.Row // of this wall
}

// Draw returns the layout of the boards on a wall at scale s.
func Draw(r setout.Result, wall int, s paper.Scale) drawing.Plate {
	v := view{Face: face.Of(r, wall, s)}
	for _, row := range r.Boards {
		if row.Wall == wall {
			v.rows = append(v.rows, row)
		}
	}
	var names []string
	for _, row := range v.rows {
		names = append(names, row.Name)
	}
	d := drawing.Drawing{Name: "boards-" + v.Slug(), Title: "Boards, seen from inside the room", Scale: s, Elements: v.draw()}
	return drawing.Plate{Drawing: d, Subtitle: strings.Join(names, ", "), Notes: v.notes(), Legend: v.legend(), Tables: v.tables()}
}

// draw puts the view together, back to front.
func (v *view) draw() []drawing.Element {
	heights := v.heights()
	rows := v.chain()
	stick := v.stick()
	var names []string
	for _, r := range rows {
		names = append(names, r.Name)
	}
	m := v.Margin(heights, stick, names...)
	dims := v.dimensions(rows, stick, m, heights)
	p := face.NewPlaces(v.Scale)
	v.occupy(p, dims)
	v.place(p)
	e := []drawing.Element{v.Surround(), v.Holes(), v.Services()}
	e = append(e, drawing.Group{ID: "sheets", Title: "Boards", Elements: v.sheets()})
	e = append(e, drawing.Group{ID: "studs", Title: "Studs behind", Elements: face.BrokenAll(v.behind(), p.Holes)})
	e = append(e, drawing.Group{ID: "fixings", Title: "Lines of fixings", Elements: face.BrokenAll(v.fixings(), p.Holes)})
	if c := v.CeilingLine(); c != nil {
		e = append(e, drawing.Group{ID: "ceiling-face", Title: "Face of the finished ceiling", Elements: c})
	}
	e = append(e, drawing.Group{ID: "dimensions", Title: "Dimensions", Elements: dims})
	e = append(e, drawing.Group{ID: "marks", Title: "Names and marks of boards", Elements: p.Elements})
	return e
}

// sheets returns the outlines of the boards.
func (v *view) sheets() []drawing.Element {
	var e []drawing.Element
	for _, row := range v.rows {
		for _, sh := range row.Sheets {
			e = append(e, Sheet(sh.Box)...)
		}
	}
	return e
}

// Sheet returns the outline of one new board.
func Sheet(box geom.Rect) []drawing.Element {
	return []drawing.Element{
		drawing.Area{Layer: drawing.Board, Outline: box.Polygon(), Fill: drawing.White},
		face.Outline(box, drawing.Style{Layer: drawing.Board, Pen: drawing.P50}),
	}
}

// behind returns the uprights of the wall: hidden behind boards and behind the
// lining that is there, thin where they are bare.
func (v *view) behind() []drawing.Element {
	hidden := drawing.Style{Layer: drawing.FrameKept, Pen: drawing.P35, Dash: drawing.Hidden}
	seen := drawing.Style{Layer: drawing.FrameKept, Pen: drawing.P25}
	var e []drawing.Element
	for _, m := range v.Wall.Members {
		if m.Depth > 0 || m.Box.Empty() || m.Box.W() > m.Box.H() || m.State == removed {
			continue
		}
		for _, x := range []geom.Length{m.Box.Min.X, m.Box.Max.X} {
			if v.onEdge(x) {
				continue
			}
			for _, part := range v.parts(x, m.Box.Y()) {
				style := seen
				if part.covered || !v.Room.Inside.None {
					style = hidden
				}
				e = append(e, drawing.Line{Style: style, A: geom.Pt(x, part.From), B: geom.Pt(x, part.To)})
			}
		}
	}
	return e
}

// onEdge reports whether an upright edge of a board lies so near x that the
// stud's edge would be drawn into it.
func (v *view) onEdge(x geom.Length) bool {
	for _, row := range v.rows {
		for _, sh := range row.Sheets {
			for _, edge := range []geom.Length{sh.Box.Min.X, sh.Box.Max.X} {
				if (edge - x).Abs() < v.MM(0.4) {
					return true
				}
			}
		}
	}
	return false
}

// part is a stretch of an upright line, behind a board or not.
type part struct {
	geom.Span
	covered bool
}

// parts cuts the upright line at x where boards begin and end.
func (v *view) parts(x geom.Length, y geom.Span) []part {
	at := []geom.Length{y.From, y.To}
	for _, row := range v.rows {
		for _, sh := range row.Sheets {
			if sh.Box.X().Holds(x) {
				at = append(at, sh.Box.Min.Y, sh.Box.Max.Y)
			}
		}
	}
	slices.Sort(at)
	at = slices.Compact(at)
	var out []part
	for i := 1; i < len(at); i++ {
		s := geom.Span{From: at[i-1], To: at[i]}
		if s.From < y.From || s.To > y.To {
			continue
		}
		covered := false
		for _, row := range v.rows {
			for _, sh := range row.Sheets {
				covered = covered || sh.Box.X().Holds(x) && sh.Box.Y().Holds(s.Mid())
			}
		}
		if n := len(out); n > 0 && out[n-1].covered == covered {
			out[n-1].To = s.To
			continue
		}
		out = append(out, part{s, covered})
	}
	return out
}

// fixStyle is the style of a line of fixings.
func fixStyle() drawing.Style {
	return drawing.Style{Layer: drawing.Board, Pen: drawing.P18, Dash: drawing.Joist}
}

// fixings returns the upright lines of fixings.
func (v *view) fixings() []drawing.Element {
	var e []drawing.Element
	for _, row := range v.rows {
		for _, f := range row.Fixing {
			e = append(e, drawing.Line{Style: fixStyle(),
				A: geom.Pt(f.X, row.Box.Min.Y+v.MM(1)), B: geom.Pt(f.X, row.Box.Max.Y-v.MM(1))})
		}
	}
	return e
}

func (v *view) heights() []dimension.Height {
	var h face.Heights
	if v.Capped {
		h.Add("structure", v.Top, false)
	}
	if c := v.Result.Ceiling; c != nil && c.Face > 0 && c.Face < v.Top {
		h.Add("ceiling face", c.Face, false)
	}
	for _, row := range v.rows {
		h.Of("board top", row.Name, row.Box.Max.Y, false)
		h.Of("board bottom", row.Name, row.Box.Min.Y, false)
	}
	h.Add("finished floor", 0, false)
	return h.Merged()
}

// chain returns the rows of dimensions above.
func (v *view) chain() []dimension.Row {
	ends := v.Finished()
	at := []geom.Length{ends.From, ends.To}
	list := slices.Clone(v.rows)
	slices.SortStableFunc(list, func(a, b lining.Row) int { return cmp.Compare(a.Box.Min.Y, b.Box.Min.Y) })
	var taken []geom.Span
	for _, row := range list {
		if slices.ContainsFunc(taken, func(s geom.Span) bool { return s.Overlaps(row.Box.X()) }) {
			continue
		}
		taken = append(taken, row.Box.X())
		at = append(at, row.Box.Min.X, row.Box.Max.X)
		for _, s := range row.Seams {
			if !s.End {
				at = append(at, s.X)
			}
		}
	}
	slices.Sort(at)
	at = slices.Compact(at)
	at = slices.DeleteFunc(at, func(x geom.Length) bool { return !ends.Holds(x) })
	return []dimension.Row{
		{Name: "boards and margins", At: at},
		{Name: "whole wall, finished", At: []geom.Length{ends.From, ends.To}, Also: true},
	}
}

// stick returns the strip of running marks: edges and seams bold, lines of
// fixings in the field between them.
func (v *view) stick() dimension.Stick {
	ends := v.Finished()
	k := dimension.Stick{From: ends.From, To: ends.To, Edge: -v.MM(4.2), Datum: ends.From, Scale: v.Scale, Show: v.Show}
	field := false
	for _, row := range v.rows {
		for _, s := range row.Seams {
			k.Marks = append(k.Marks, dimension.StickMark{At: s.X, Plain: true, Bold: true})
		}
		for _, f := range row.Fixing {
			if !f.Edge {
				k.Marks = append(k.Marks, dimension.StickMark{At: f.X, Plain: true})
				field = true
			}
		}
	}
	k.Marks = append(k.Marks, dimension.StickMark{At: ends.From, Plain: true}, dimension.StickMark{At: ends.To, Plain: true})
	slices.SortStableFunc(k.Marks, func(a, b dimension.StickMark) int {
		return cmp.Or(cmp.Compare(a.At, b.At), -cmp.Compare(bit(a.Bold), bit(b.Bold)))
	})
	k.Marks = slices.CompactFunc(k.Marks, func(a, b dimension.StickMark) bool { return a.At == b.At })
	for _, d := range v.Wall.Doors {
		if box := v.HoleBox(d); !d.Window && !box.Empty() && box.Min.Y <= 0 {
			k.Gaps = append(k.Gaps, box.X())
		}
	}
	k.Name = []string{"edges and seams", "from the finished", "corner " + v.LeftCorner()}
	if field {
		k.Name = []string{"bold: edges, seams", "others: fixings; from the", "finished corner " + v.LeftCorner()}
	}
	return k
}

func bit(b bool) int {
	if b {
		return 1
	}
	return 0
}

func (v *view) dimensions(rows []dimension.Row, stick dimension.Stick, m face.Margin, h []dimension.Height) []drawing.Element {
	ladder := v.Ladder(m, h)
	letters, edge, first := v.Around(ladder)
	c := dimension.Chain{
		Side: dimension.Above, Object: v.Above(), First: first, Rows: rows, Datum: v.Finished().From, NamesX: m.WordsX, Scale: v.Scale, Show: v.Show,
	}
	e, _ := c.Draw()
	stick.NamesX, stick.Edge = m.WordsX, edge
	strip, _ := stick.Draw()
	e = append(e, ladder, letters)
	return append(e, drawing.Group{ID: "stick", Title: "Running marks from the left corner", Elements: strip})
}
