package planwalls

import (
	"fmt"

	"roomwright/geom"
	"roomwright/geom/piece"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// The words under which Draw notes what it drew, for legends.
const (
	Masonry = "masonry"
	Framed  = "framed"
	Lining  = "lining"
	Stud    = "stud"
	New     = "new"
	Bare    = "bare"
)

// Draw draws every wall between its gaps, cut at a height above the floor, and
// notes in used what a legend has to explain.
func Draw(sides []Side, gaps func(Side) []geom.Span, level geom.Length, s paper.Scale, used map[string]bool) []drawing.Element {
	var out []drawing.Element
	n := len(sides)
	for i, d := range sides {
		next, prev := sides[(i+1)%n], sides[(i+n-1)%n]
		whole := geom.Span{From: 0, To: d.Length}
		if !next.Solid || d.Solid {
			whole.To += next.Outer
		}
		if d.Solid && !prev.Solid {
			whole.From -= prev.Outer
		}
		g := drawing.Group{ID: fmt.Sprintf("plan-wall-%d", i+1), Title: "Wall " + d.Wall.Name}
		for _, part := range Between(whole, gaps(d)) {
			g.Elements = append(g.Elements, d.part(part, s, used)...)
		}
		if !d.Solid {
			g.Elements = append(g.Elements, d.studs(level, s, used)...)
		}
		out = append(out, g)
	}
	return out
}

// Between returns what is left of whole when the gaps are taken out.
func Between(whole geom.Span, gaps []geom.Span) []geom.Span {
	out := []geom.Span{whole}
	for _, g := range gaps {
		var next []geom.Span
		for _, p := range out {
			if !p.Overlaps(g) {
				next = append(next, p)
				continue
			}
			if p.From < g.From {
				next = append(next, geom.Span{From: p.From, To: g.From})
			}
			if g.To < p.To {
				next = append(next, geom.Span{From: g.To, To: p.To})
			}
		}
		out = next
	}
	return out
}

// part draws one unbroken stretch of wall.
func (d Side) part(x geom.Span, s paper.Scale, used map[string]bool) []drawing.Element {
	heavy := drawing.Style{Layer: drawing.WallFull, Pen: drawing.P50}
	shape := d.Box(x, geom.Span{From: 0, To: d.Outer})
	if d.Bare {
		used[Bare] = true
		return []drawing.Element{drawing.Polyline{Style: heavy, Points: shape, Closed: true}}
	}
	if d.Solid {
		used[Masonry] = true
		return []drawing.Element{
			drawing.HatchLines(shape, drawing.Style{Layer: drawing.WallPattern, Pen: drawing.P18}, drawing.Rising45, paper.MM(1.7), s),
			drawing.Polyline{Style: heavy, Points: shape, Closed: true},
		}
	}
	used[Framed] = true
	out := []drawing.Element{drawing.Polyline{Style: heavy, Points: d.Box(x, d.Core), Closed: true}}
	for _, layer := range d.Linings {
		used[Lining] = true
		out = append(out, drawing.Polyline{Style: drawing.Style{Layer: drawing.WallFull, Pen: drawing.P18}, Points: d.Box(x, layer), Closed: true})
	}
	return out
}

// studs draws the uprights that the plane of the plan cuts.
func (d Side) studs(level geom.Length, s paper.Scale, used map[string]bool) []drawing.Element {
	var out []drawing.Element
	for _, m := range d.Wall.Members {
		upright := m.Box.W() < m.Box.H()
		if !upright || !m.Box.Y().Holds(level) || m.State == piece.Removed || m.Depth > 0 {
			continue
		}
		shape := d.Box(m.Box.X(), d.Core)
		if m.State == piece.New {
			used[New] = true
			out = append(out, NewStud(shape, s)...)
			continue
		}
		used[Stud] = true
		out = append(out, KeptStud(shape)...)
	}
	return out
}

// NewStud draws the section of a stud to be built.
func NewStud(shape []geom.Point, s paper.Scale) []drawing.Element {
	return []drawing.Element{
		drawing.Area{Layer: drawing.FrameNew, Outline: shape},
		drawing.HatchLines(shape, drawing.Style{Layer: drawing.FramePattern, Pen: drawing.P18}, drawing.Rising45, paper.MM(0.7), s),
		drawing.Polyline{Style: drawing.Style{Layer: drawing.FrameNew, Pen: drawing.P50}, Points: shape, Closed: true},
	}
}

// KeptStud draws the section of a stud that is there.
func KeptStud(shape []geom.Point) []drawing.Element {
	thin := drawing.Style{Layer: drawing.FrameKept, Pen: drawing.P13}
	return []drawing.Element{
		drawing.Line{Style: thin, A: shape[0], B: shape[2]},
		drawing.Line{Style: thin, A: shape[1], B: shape[3]},
		drawing.Polyline{Style: drawing.Style{Layer: drawing.FrameKept, Pen: drawing.P25}, Points: shape, Closed: true},
	}
}

// Samples returns the legend lines for what Draw noted in used.
func Samples(used map[string]bool) []drawing.Sample {
	full := paper.Full()
	mm := func(v float64) geom.Length { return geom.Length(paper.MM(v)) }
	box := geom.RectOf(0, mm(-1.6), mm(13), mm(1.6)).Polygon()
	stud := geom.RectOf(mm(5.7), mm(-1.6), mm(7.3), mm(1.6)).Polygon()
	heavy := drawing.Polyline{Style: drawing.Style{Layer: drawing.WallFull, Pen: drawing.P50}, Points: box, Closed: true}
	var out []drawing.Sample
	if used[Masonry] {
		out = append(out, drawing.Sample{Words: "masonry, cut", Swatch: []drawing.Element{
			drawing.HatchLines(box, drawing.Style{Layer: drawing.WallPattern, Pen: drawing.P18}, drawing.Rising45, paper.MM(1.7), full), heavy}})
	}
	if used[Bare] {
		out = append(out, drawing.Sample{Words: "stud wall, studs not found", Swatch: []drawing.Element{heavy}})
	}
	if used[Stud] {
		out = append(out, drawing.Sample{Words: "stud wall, stud as found", Swatch: append([]drawing.Element{heavy}, KeptStud(stud)...)})
	}
	if used[New] {
		out = append(out, drawing.Sample{Words: "new stud", Swatch: NewStud(stud, full)})
	}
	return out
}
