package boards

import (
	"roomwright/geom"
	"roomwright/geom/lining"
	"roomwright/geom/piece"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

const removed = piece.Removed

// occupy tells p what is drawn already.
func (v *view) occupy(p *face.Places, dims []drawing.Element) {
	thin := v.MM(0.4)
	block := func(e []drawing.Element) {
		drawing.Walk(e, false, func(x drawing.Element) {
			if l, ok := x.(drawing.Line); ok {
				p.Soft(geom.Polygon{l.A, l.B}.Bounds().Inset(-thin))
			}
		})
	}
	block(v.behind())
	block(v.fixings())
	block(v.CeilingLine())
	for _, row := range v.rows {
		for _, sh := range row.Sheets {
			b := sh.Box
			for _, r := range []geom.Rect{
				geom.RectOf(b.Min.X, b.Min.Y, b.Min.X, b.Max.Y), geom.RectOf(b.Max.X, b.Min.Y, b.Max.X, b.Max.Y),
				geom.RectOf(b.Min.X, b.Min.Y, b.Max.X, b.Min.Y), geom.RectOf(b.Min.X, b.Max.Y, b.Max.X, b.Max.Y),
			} {
				p.Firm(r.Inset(-v.MM(0.5)))
			}
		}
	}
	for _, sv := range v.Wall.Services {
		if !sv.Unknown {
			p.Firm(sv.Box.Inset(-v.MM(0.6)))
		}
	}
	p.Hard(geom.RectOf(-v.MM(7.4), -v.MM(30), 0, v.Top+v.MM(3)))
	p.Hard(geom.RectOf(v.Length, -v.MM(30), v.Length+v.MM(8), v.Top+v.MM(3)))
	p.Hard(geom.RectOf(-v.MM(7.4), -v.MM(30), v.Length+v.MM(8), v.MM(0.4)))
	p.Drawn(dims)
}

// place puts the marks of the boards, what they are cut to, and the words of
// doors, windows and services.
func (v *view) place(p *face.Places) {
	for _, row := range v.rows {
		for _, sh := range row.Sheets {
			v.mark(p, sh)
		}
	}
	for _, d := range v.Wall.Doors {
		box := v.HoleBox(d)
		if box.Empty() {
			continue
		}
		for _, lines := range v.HoleWords(d) {
			if p.Words(drawing.Words, lines, box.Mid(), geom.Pt(box.Mid().X, box.Min.Y+box.H()/3), geom.Pt(box.Mid().X, box.Min.Y+box.H()*2/3)) {
				break
			}
		}
	}
	v.NameServices(p)
}

// mark puts the label of a board near its middle, and under it what it is cut
// to, between the lines behind it.
func (v *view) mark(p *face.Places, sh lining.Sheet) {
	w, h := marks.LabelSize(string(sh.Mark), true)
	size := geom.Pt(v.Scale.Real(w), v.Scale.Real(h))
	c := sh.Box.Mid()
	at := c
	found := false
	for _, over := range []bool{false, true} {
		for _, dy := range []geom.Length{0, 1, -1, 2, -2, 3, -3} {
			for i := geom.Length(0); i*v.MM(1) < sh.Box.W()/2-size.X/2; i++ {
				for _, way := range []geom.Length{-1, 1} {
					q := geom.Pt(c.X+way*i*v.MM(1), c.Y+dy*sh.Box.H()/9)
					g := marks.Label(string(sh.Mark), true, q, v.Scale)
					if !found && (p.Fits(g) || over && p.FitsOver(g)) {
						p.Add(g)
						at, found = q, true
					}
				}
			}
		}
	}
	text := v.cutWords(sh)
	if text == "" {
		return
	}
	one := []face.Line{{Text: "cut to " + text, Cap: paper.MM(2.4)}}
	two := []face.Line{{Text: "cut to", Cap: paper.MM(2.4)}, {Text: text, Cap: paper.MM(2.4)}}
	var try []geom.Point
	for _, dy := range []float64{6, -6, 9, -9, 12, -12, 16, -16, 20, -20} {
		for _, dx := range []float64{0, -2, 2, -4, 4, -6, 6, -8, 8} {
			try = append(try, geom.Pt(at.X+v.MM(dx), at.Y-v.MM(dy)))
		}
	}
	if p.Words(drawing.Words, one, try...) || p.Words(drawing.Words, two, try...) {
		return
	}
	p.WordsOver(drawing.Words, one, try...)
}

// cutWords says what a cut board is cut to; nothing for a whole one.
func (v *view) cutWords(sh lining.Sheet) string {
	w, h := v.Show.Figure(sh.Box.W()), v.Show.Figure(sh.Box.H())
	switch {
	case sh.CutW && sh.CutH:
		return w + " × " + h
	case sh.CutW:
		return w + " wide"
	case sh.CutH:
		return h + " high"
	}
	return ""
}
