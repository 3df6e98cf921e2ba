package elevation

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/piece"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
)

// heights returns what the ladder at the left says.
func (v *view) heights() []dimension.Height {
	var h face.Heights
	if v.Capped {
		h.Add("structure", v.Top, false)
	}
	if v.framed() && v.Wall.PlateLow > 0 {
		h.Add("under plates", v.Wall.PlateLow, false)
		if v.Wall.Top > 0 && v.Wall.Top < v.Top {
			h.Add("top of plates", v.Wall.Top, false)
		}
	}
	if c := v.Result.Ceiling; c != nil && c.Face > 0 && c.Face < v.Top {
		h.Add("ceiling face", c.Face, false)
	}
	for _, o := range v.Wall.Openings {
		if o.UpperCut > 0 {
			h.Of("upper saw cut", o.Name, o.UpperCut, true)
		}
		h.Of("under header", o.Name, o.Rough.Max.Y, false)
		if !o.Sill.Empty() {
			h.Of("on rough sill", o.Name, o.Rough.Min.Y, false)
		}
		if o.LowerCut > 0 {
			h.Of("lower saw cut", o.Name, o.LowerCut, true)
		}
	}
	for _, d := range v.Wall.Doors {
		box := v.HoleBox(d)
		if box.Empty() {
			continue
		}
		if d.Window {
			h.Of("window head", d.Name, box.Max.Y, false)
			h.Of("window sill", d.Name, box.Min.Y, false)
		} else if !v.framed() || !v.roomInside(box) {
			h.Of("door head", d.Name, box.Max.Y, false)
		}
	}
	if !v.framed() {
		for _, s := range v.Wall.Services {
			if drawn, _ := v.Seen(s); !drawn {
				continue
			}
			if s.Box.Max.Y < v.Top {
				h.Add("top of "+s.What, s.Box.Max.Y, false)
			}
			if s.Box.Min.Y > 0 && s.Box.H() > 0 {
				h.Add("foot of "+s.What, s.Box.Min.Y, false)
			}
		}
	}
	if !v.framed() || len(v.Wall.Openings) == 0 {
		for _, b := range v.Result.Boards {
			if b.Wall == v.Index {
				h.Of("board top", b.Name, b.Box.Max.Y, false)
				h.Of("board bottom", b.Name, b.Box.Min.Y, false)
			}
		}
	}
	h.Add("finished floor", 0, false)
	return h.Merged()
}

// rows returns the chains above the wall, nearest first, and their names.
func (v *view) rows() ([]dimension.Row, []string) {
	var rows []dimension.Row
	var rough, major []geom.Span
	for _, o := range v.Wall.Openings {
		rough = append(rough, o.Rough.X())
		major = append(major, o.Kings)
	}
	kinds := []string{}
	if n := len(v.Wall.Openings); n > 0 {
		kinds = append(kinds, "kings")
	}
	doors, windows := 0, 0
	for _, d := range v.Wall.Doors {
		if box := v.HoleBox(d); !box.Empty() {
			major = append(major, box.X())
			if d.Window {
				windows++
			} else {
				doors++
			}
		}
	}
	kinds = append(kinds, plural("door", doors)...)
	kinds = append(kinds, plural("window", windows)...)
	if row, ok := spans(rough); ok {
		row.Name = "rough opening"
		if len(rough) > 1 {
			row.Name = "rough openings"
		}
		rows = append(rows, row)
	}
	if len(major) > 0 {
		rows = append(rows, dimension.Row{Name: list(kinds), At: v.ends(major)})
	} else if row, ok := v.boardRow(); ok {
		rows = append(rows, row)
	}
	rows = append(rows, dimension.Row{Name: "whole wall", At: []geom.Length{0, v.Length}, Also: true})
	var names []string
	for _, r := range rows {
		names = append(names, r.Name)
	}
	return rows, names
}

// boardRow returns the chain of the boards on a wall that has nothing else.
func (v *view) boardRow() (dimension.Row, bool) {
	var edges []geom.Span
	for _, b := range v.Result.Boards {
		if b.Wall == v.Index {
			edges = append(edges, b.Box.X())
		}
	}
	if len(edges) == 0 {
		return dimension.Row{}, false
	}
	return dimension.Row{Name: "boards", At: v.ends(edges)}, true
}

// ends returns both corners and the ends of spans between them, in order.
func (v *view) ends(spans []geom.Span) []geom.Length {
	at := []geom.Length{0, v.Length}
	for _, s := range spans {
		at = append(at, s.From, s.To)
	}
	slices.Sort(at)
	at = slices.Compact(at)
	return slices.DeleteFunc(at, func(x geom.Length) bool { return x < 0 || x > v.Length })
}

// spans returns a row that measures spans and leaves out what lies between.
func spans(list []geom.Span) (dimension.Row, bool) {
	list = slices.Clone(list)
	slices.SortFunc(list, func(a, b geom.Span) int { return cmp.Compare(a.From, b.From) })
	var row dimension.Row
	for _, s := range list {
		if n := len(row.At); n > 0 {
			if s.From <= row.At[n-1] {
				continue // above or below another one: its size stands inside it
			}
			row.Gap = append(row.Gap, true)
		}
		row.At = append(row.At, s.From, s.To)
		row.Gap = append(row.Gap, false)
	}
	return row, len(row.At) > 1
}

func plural(word string, n int) []string {
	switch n {
	case 0:
		return nil
	case 1:
		return []string{word}
	}
	return []string{word + "s"}
}

// list joins words: "kings, doors and window".
func list(words []string) string {
	out := ""
	for i, w := range words {
		switch {
		case i == 0:
		case i == len(words)-1:
			out += " and "
		default:
			out += ", "
		}
		out += w
	}
	return out
}

// stick returns the strip of running marks under the wall; it has no name, and
// is not to be drawn, when there is no mark between the corners.
func (v *view) stick() dimension.Stick {
	k := dimension.Stick{From: 0, To: v.Length, Edge: -v.MM(4.2), Scale: v.Scale, Show: v.Show}
	fresh, old := false, false
	for _, s := range v.Wall.Studs {
		isNew := s.State == piece.New
		fresh, old = fresh || isNew, old || !isNew
		k.Marks = append(k.Marks, dimension.StickMark{At: s.Left, Thick: s.Thick, Bold: isNew})
	}
	name := "stud marks"
	edge := "left edge, tape hooked"
	if len(v.Wall.Studs) == 0 {
		name, edge = "running marks", "tape hooked at"
		k.Marks = append(k.Marks, dimension.StickMark{At: 0, Plain: true})
		for _, d := range v.Wall.Doors {
			if box := v.HoleBox(d); !box.Empty() {
				k.Marks = append(k.Marks, dimension.StickMark{At: box.Min.X, Plain: true}, dimension.StickMark{At: box.Max.X, Plain: true})
			}
		}
		for _, s := range v.Wall.Services {
			if drawn, _ := v.Seen(s); drawn {
				k.Marks = append(k.Marks, dimension.StickMark{At: s.Box.Min.X, Plain: true})
			}
		}
		for _, b := range v.Result.Boards {
			if b.Wall != v.Index {
				continue
			}
			for _, sh := range b.Sheets {
				k.Marks = append(k.Marks, dimension.StickMark{At: sh.Box.Min.X, Plain: true, Bold: true})
				fresh = true
			}
			k.Marks = append(k.Marks, dimension.StickMark{At: b.Box.Max.X, Plain: true, Bold: true})
		}
	}
	k.Marks = append(k.Marks, dimension.StickMark{At: v.Length, Plain: true})
	slices.SortStableFunc(k.Marks, func(a, b dimension.StickMark) int { return cmp.Compare(a.At, b.At) })
	k.Marks = slices.CompactFunc(k.Marks, func(a, b dimension.StickMark) bool { return a.At == b.At })
	for _, d := range v.Wall.Doors {
		if box := v.HoleBox(d); !d.Window && box.Min.Y <= v.Wall.PlateTop && !box.Empty() {
			k.Gaps = append(k.Gaps, box.X())
		}
	}
	for _, o := range v.Wall.Openings {
		if o.Sill.Empty() && o.Rough.Min.Y <= v.Wall.PlateTop {
			k.Gaps = append(k.Gaps, o.Rough.X())
		}
	}
	slices.SortFunc(k.Gaps, func(a, b geom.Span) int { return cmp.Compare(a.From, b.From) })
	corner := "corner " + v.LeftCorner()
	switch {
	case len(v.Wall.Studs) == 0:
		k.Name = []string{name, edge, corner}
		if fresh {
			k.Name = []string{name, edge, corner + "; bold: boards"}
		}
	case fresh && old:
		k.Name = []string{name, edge, "at " + corner + "; bold: new"}
	default:
		k.Name = []string{name, edge, "at " + corner}
	}
	if len(k.Marks) < 3 {
		k.Name = nil
	}
	return k
}

// dimensions returns the rows above, the ladder and the stick.
func (v *view) dimensions(rows []dimension.Row, stick dimension.Stick, m face.Margin, h []dimension.Height) []drawing.Element {
	ladder := v.Ladder(m, h)
	letters, edge, first := v.Around(ladder)
	c := dimension.Chain{
		Side: dimension.Above, Object: v.Above(), First: first, Rows: rows, NamesX: m.WordsX, Scale: v.Scale, Show: v.Show,
	}
	e, _ := c.Draw()
	e = append(e, ladder, letters)
	stick.Edge = edge
	if len(stick.Name) == 0 {
		return e
	}
	stick.NamesX = m.WordsX
	marks, _ := stick.Draw()
	return append(e, drawing.Group{ID: "stick", Title: "Running marks from the left corner", Elements: marks})
}
