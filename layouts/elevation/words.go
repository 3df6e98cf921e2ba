package elevation

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/layouts/cuts"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/lettering"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// occupy tells p what is drawn already.
func (v *view) occupy(p *face.Places, dims []drawing.Element) {
	for _, m := range v.kept {
		p.Soft(m.Box)
	}
	for _, m := range v.out {
		p.Soft(m.Box.Inset(-v.MM(0.35)))
	}
	for _, m := range v.fresh {
		p.Firm(m.Box)
	}
	for _, o := range v.Wall.Openings {
		for _, c := range o.Cuts {
			p.Firm(geom.RectOf(c.X.From, c.Height, c.X.To, c.Height).Inset(-v.MM(2.0)))
		}
	}
	for _, l := range v.sawLines() {
		if b := drawing.Bounds([]drawing.Element{l}, v.Scale); true {
			p.Soft(b.Inset(-v.MM(0.4)))
		}
	}
	for _, sv := range v.Wall.Services {
		if !sv.Unknown {
			p.Firm(sv.Box.Inset(-v.MM(0.6)))
		}
	}
	for _, l := range v.ceiling() {
		p.Firm(drawing.Bounds([]drawing.Element{l}, v.Scale).Inset(-v.MM(0.4)))
	}
	for _, d := range v.Wall.Doors {
		if box := v.HoleBox(d); !box.Empty() {
			for _, side := range sides(box, v.MM(0.5)) {
				p.Firm(side)
			}
		}
	}
	for _, row := range v.Result.Boards {
		if row.Wall == v.Index {
			for _, sh := range row.Sheets {
				for _, side := range sides(sh.Box, v.MM(0.5)) {
					p.Firm(side)
				}
			}
		}
	}
	// What surrounds the wall.
	p.Hard(geom.RectOf(-v.MM(7.4), -v.MM(30), 0, v.Top+v.MM(3)))
	p.Hard(geom.RectOf(v.Length, -v.MM(30), v.Length+v.MM(8), v.Top+v.MM(3)))
	p.Hard(geom.RectOf(-v.MM(7.4), -v.MM(30), v.Length+v.MM(8), v.MM(0.4)))
	p.Firm(geom.RectOf(-v.MM(5), v.Top, v.Length+v.MM(5), v.Above()+v.MM(0.2)))
	p.Drawn(dims)
}

// sides returns the four sides of a box as thin boxes.
func sides(b geom.Rect, half geom.Length) [4]geom.Rect {
	return [4]geom.Rect{
		geom.RectOf(b.Min.X-half, b.Min.Y-half, b.Min.X+half, b.Max.Y+half),
		geom.RectOf(b.Max.X-half, b.Min.Y-half, b.Max.X+half, b.Max.Y+half),
		geom.RectOf(b.Min.X-half, b.Min.Y-half, b.Max.X+half, b.Min.Y+half),
		geom.RectOf(b.Min.X-half, b.Max.Y-half, b.Max.X+half, b.Max.Y+half),
	}
}

// inside returns the dimensions that stand inside openings and doors, and
// keeps words off them.
func (v *view) inside(p *face.Places) []drawing.Element {
	var e []drawing.Element
	add := func(box geom.Rect, from float64) {
		for k := 0; k < 12; k++ {
			x := box.Max.X - v.MM(from) - v.MM(1)*geom.Length(k)
			if x < box.Mid().X {
				return
			}
			d := dimension.Inside(geom.Pt(x, box.Min.Y), geom.Pt(x, box.Max.Y), true, v.Scale, v.Show)
			b := drawing.Bounds([]drawing.Element{d}, v.Scale)
			body := geom.RectOf(b.Min.X, box.Min.Y+v.MM(1.4), b.Max.X, box.Max.Y-v.MM(1.4))
			if p.Free(body) {
				e = append(e, d)
				p.Drawn([]drawing.Element{d})
				return
			}
		}
	}
	for _, o := range v.Wall.Openings {
		if v.roomInside(o.Rough) {
			add(o.Rough, 2.4)
		}
	}
	for _, d := range v.Wall.Doors {
		if box := v.HoleBox(d); v.framed() && !d.Window && v.roomInside(box) {
			add(box, 4)
		}
	}
	return e
}

// roomInside reports whether a height can be dimensioned inside box.
func (v *view) roomInside(box geom.Rect) bool {
	wide := v.Scale.Real(lettering.Width(v.Show.Figure(box.H()), paper.MM(2.8), false))
	return box.W() > v.MM(14) && box.H() > wide+v.MM(6)
}

// placeWords puts pennants and the names of openings, doors and services.
func (v *view) placeWords(p *face.Places) {
	v.pennants(p)
	for _, o := range v.Wall.Openings {
		v.nameOpening(p, o)
	}
	for _, d := range v.Wall.Doors {
		box := v.HoleBox(d)
		if box.Empty() {
			continue
		}
		for _, lines := range v.HoleWords(d) {
			if p.Words(drawing.Words, lines, spread(box, v.MM(2), v.MM(2), 2)...) {
				break
			}
		}
	}
	v.NameServices(p)
}

// nameOpening writes the name and clear size of an opening in a free bay, or
// else over the pieces that are taken out.
func (v *view) nameOpening(p *face.Places, o framing.Opening) {
	c24 := paper.MM(2.4)
	line := func(text string) face.Line { return face.Line{Text: text, Cap: c24} }
	what := face.Line{Text: "opening", Cap: c24, Bold: true}
	name := line(o.Name)
	kind := line("clear")
	if o.Clear == o.Rough {
		kind.Text = "rough"
	}
	w, h := v.Show.Figure(o.Clear.W()), v.Show.Figure(o.Clear.H())
	size, wide, high := line(w+" × "+h), line(w), line("× "+h)
	bold := name
	bold.Bold = true
	forms := [][]face.Line{{what, name, kind, size}, {what, name, kind, wide, high}, {bold, kind, size}}
	if len(v.Wall.Openings) == 1 {
		forms = append(forms, []face.Line{what, kind, size}, []face.Line{what, kind, wide, high})
	}
	at := v.bays(o)
	for _, lines := range forms {
		if p.Words(drawing.Words, lines, at...) {
			return
		}
	}
	forms = append(forms, []face.Line{bold, size}, []face.Line{bold})
	for _, lines := range forms {
		if p.WordsOver(drawing.Words, lines, at...) {
			return
		}
	}
	p.Failed = append(p.Failed, o.Name)
}

// bays returns places for words in an opening: the middles of the bays between
// pieces that are taken out, the nearest to the middle first, then anywhere.
func (v *view) bays(o framing.Opening) []geom.Point {
	at := []geom.Length{o.Rough.Min.X, o.Rough.Max.X}
	for _, m := range v.out {
		if m.Opening == o.Index {
			at = append(at, m.Box.Min.X, m.Box.Max.X)
		}
	}
	slices.Sort(at)
	var out []geom.Point
	mid := o.Rough.Mid()
	for i := 0; i+1 < len(at); i += 2 {
		x := (at[i] + at[i+1]) / 2
		for j := -o.Rough.H() / 2 / v.MM(1); j <= o.Rough.H()/2/v.MM(1); j++ {
			out = append(out, geom.Pt(x, mid.Y+j*v.MM(1)))
		}
	}
	slices.SortStableFunc(out, func(a, b geom.Point) int {
		return cmp.Or(cmp.Compare((a.X-mid.X).Abs(), (b.X-mid.X).Abs()), cmp.Compare((a.Y-mid.Y).Abs(), (b.Y-mid.Y).Abs()), cmp.Compare(b.Y, a.Y))
	})
	return append(out, spread(o.Rough, v.MM(1), v.MM(2), 1)...)
}

// spread returns points inside box, the middle first, then farther and farther
// from it; higher places first where two are as far.
func spread(box geom.Rect, dx, dy geom.Length, tall geom.Length) []geom.Point {
	c := box.Mid()
	var out []geom.Point
	nx, ny := box.W()/2/dx, box.H()/2/dy
	for i := -nx; i <= nx; i++ {
		for j := -ny; j <= ny; j++ {
			out = append(out, geom.Pt(c.X+i*dx, c.Y+j*dy))
		}
	}
	far := func(q geom.Point) geom.Length {
		return (q.X - c.X).Abs() + (q.Y-c.Y).Abs()/tall
	}
	slices.SortStableFunc(out, func(a, b geom.Point) int {
		return cmp.Or(cmp.Compare(far(a), far(b)), cmp.Compare(b.Y, a.Y), cmp.Compare(a.X, b.X))
	})
	return out
}

// pennants marks where headers are cut for their sections.
func (v *view) pennants(p *face.Places) {
	for _, c := range cuts.Of(v.Result) {
		if c.Kind != cuts.Header || c.Wall != v.Index {
			continue
		}
		if c.Opening < len(v.Wall.Openings) {
			v.pennant(p, c, v.Wall.Openings[c.Opening])
		}
	}
}

func (v *view) pennant(p *face.Places, c cuts.Cut, o framing.Opening) {
	mark := marks.Pennant(c.Letter, geom.Point{}, c.Look, v.Scale)
	b := drawing.Bounds([]drawing.Element{mark}, v.Scale)
	step := v.MM(1)
	mid := o.Rough.X().Mid()
	over := []geom.Length{o.Header.Max.Y + v.MM(1) - b.Min.Y, v.Above() + v.MM(0.9) - b.Min.Y}
	if o.UpperCut > 0 {
		over[0] = max(over[0], o.UpperCut+v.MM(1.6)-b.Min.Y)
	}
	under := o.Header.Min.Y - v.MM(1) - b.Max.Y
	for _, hard := range []bool{false, true} {
		for _, top := range over {
			for i := geom.Length(0); i*step < o.Rough.W()/2; i++ {
				for _, way := range []geom.Length{-1, 1} {
					x := mid + way*i*step
					up := marks.Pennant(c.Letter, geom.Pt(x, top), c.Look, v.Scale)
					down := marks.Pennant(c.Letter, geom.Pt(x, under), c.Look, v.Scale)
					if !hard && !p.Fits(up, down) {
						continue
					}
					if hard && !p.FitsOver(up, down) {
						continue
					}
					p.Add(up, down)
					if hard {
						p.Holes = append(p.Holes, drawing.Bounds([]drawing.Element{up}, v.Scale), drawing.Bounds([]drawing.Element{down}, v.Scale))
					}
					return
				}
			}
		}
	}
}
