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
	for _, l := range v.ceiling() {
		p.Firm(drawing.Bounds([]drawing.Element{l}, v.Scale).Inset(-v.MM(0.4)))
	}
	for _, row := range v.Result.Boards {
		if row.Wall == v.Index {
			for _, sh := range row.Sheets {
				p.Edges(sh.Box)
			}
		}
	}
	v.Occupy(p)
	p.Drawn(dims)
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
	for i, o := range v.Wall.Openings {
		v.nameOpening(p, i, o)
	}
	for _, d := range v.Wall.Doors {
		box := v.HoleBox(d)
		if box.Empty() {
			continue
		}
		for _, lines := range v.HoleWords(d) {
			if p.Words(drawing.Words, lines, face.Spread(box, v.MM(2), v.MM(2), 2)...) {
				break
			}
		}
	}
	v.NameServices(p)
}

// nameOpening writes the name and clear size of an opening in a free bay, or
// else over the pieces that are taken out, and puts the pennants of its
// section; the longest words go that leave a place for the pennants.
func (v *view) nameOpening(p *face.Places, i int, o framing.Opening) {
	full, short := v.openingForms(o)
	at := v.bays(o)
	puts := []func(drawing.Layer, []face.Line, ...geom.Point) bool{p.Words, p.WordsOver}
	for _, forms := range [][][]face.Line{full, short} {
		for _, put := range puts {
			for _, lines := range forms {
				if p.Try(func() bool { return put(drawing.Words, lines, at...) && v.pennants(p, i, o) }) {
					return
				}
			}
		}
	}
	if !v.pennants(p, i, o) {
		p.Failed = append(p.Failed, "section of "+o.Name)
	}
	for _, lines := range append(full, short...) {
		if p.Words(drawing.Words, lines, at...) || p.WordsOver(drawing.Words, lines, at...) {
			return
		}
	}
	p.Failed = append(p.Failed, o.Name)
}

// openingForms returns what is written in an opening, longest first: with its
// size, and where that finds no place, without.
func (v *view) openingForms(o framing.Opening) (full, short [][]face.Line) {
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
	full = [][]face.Line{{what, name, kind, size}, {what, name, kind, wide, high}, {bold, kind, size}, {bold, kind, wide, high}}
	if len(v.Wall.Openings) == 1 {
		full = append(full, []face.Line{what, kind, size}, []face.Line{what, kind, wide, high})
	}
	return full, [][]face.Line{{bold}, {what}}
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
		step := max(v.MM(1), o.Rough.H()/60)
		for j := -o.Rough.H() / 2 / step; j <= o.Rough.H()/2/step; j++ {
			out = append(out, geom.Pt(x, mid.Y+j*step))
		}
	}
	slices.SortStableFunc(out, func(a, b geom.Point) int {
		return cmp.Or(cmp.Compare((a.X-mid.X).Abs(), (b.X-mid.X).Abs()), cmp.Compare((a.Y-mid.Y).Abs(), (b.Y-mid.Y).Abs()), cmp.Compare(b.Y, a.Y))
	})
	return append(out, face.Spread(o.Rough, v.MM(1), v.MM(2), 1)...)
}

// pennants marks where the header of opening number i of the wall is cut for
// its section; it reports whether there was a place, or nothing to mark.
func (v *view) pennants(p *face.Places, i int, o framing.Opening) bool {
	for _, c := range cuts.Of(v.Result) {
		if c.Kind == cuts.Header && c.Wall == v.Index && c.Opening == i {
			return v.pennant(p, c, o)
		}
	}
	return true
}

// pennant puts one over the header and one under it, in one line; over the
// structure or under the sill where there is no place nearer.
func (v *view) pennant(p *face.Places, c cuts.Cut, o framing.Opening) bool {
	mark := func(x, y geom.Length) drawing.Element { return marks.Pennant(c.Letter, geom.Pt(x, y), c.Look, v.Scale) }
	at := func(x, y geom.Length) geom.Rect { return drawing.Bounds([]drawing.Element{mark(x, y)}, v.Scale) }
	b := at(0, 0)
	over := []geom.Length{o.Header.Max.Y + v.MM(1) - b.Min.Y, v.Above() + v.MM(0.9) - b.Min.Y}
	if o.UpperCut > 0 { // clear of the saw strokes, in a bay or over studs
		over = []geom.Length{o.UpperCut + v.MM(1.6) - b.Min.Y, o.UpperCut + v.MM(2.6) - b.Min.Y, over[1]}
	}
	under := []geom.Length{o.Header.Min.Y - v.MM(1) - b.Max.Y}
	if !o.Sill.Empty() {
		under = append(under, o.Sill.Min.Y-v.MM(1)-b.Max.Y)
		if o.LowerCut > 0 {
			under[1] = o.LowerCut - v.MM(2.6) - b.Max.Y
		}
	}
	half := o.Rough.W() / 2
	step := max(v.MM(1), half/40)
	for _, low := range under {
		for _, fits := range []func(...drawing.Element) bool{p.Fits, p.FitsOver} {
			for _, high := range over {
				for k := geom.Length(0); k*step < half; k++ {
					for _, way := range []geom.Length{-1, 1} {
						x := o.Rough.X().Mid() + way*k*step
						up, down := mark(x, high), mark(x, low)
						if !fits(up, down) {
							continue
						}
						if !p.Fits(up, down) {
							p.Holes = append(p.Holes, at(x, high), at(x, low))
						}
						p.Add(up, down)
						return true
					}
				}
			}
		}
	}
	return false
}
