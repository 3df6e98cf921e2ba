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
			p.Edges(sh.Box)
		}
	}
	v.Occupy(p)
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
			if p.Words(drawing.Words, lines, face.Spread(box, v.MM(2), v.MM(2), 2)...) {
				break
			}
		}
	}
	v.NameServices(p)
}

// mark puts the label of a board near its middle, and what it is cut to under
// it: both in one bay between the lines behind, else over the lines.
func (v *view) mark(p *face.Places, sh lining.Sheet) {
	text := v.cutWords(sh)
	forms := [][]face.Line{nil}
	if text != "" {
		c24 := paper.MM(2.4)
		forms = [][]face.Line{{{Text: "cut to " + text, Cap: c24}}, {{Text: "cut to", Cap: c24}, {Text: text, Cap: c24}}}
	}
	for _, over := range []bool{false, true} {
		for _, at := range v.spots(sh) {
			for _, lines := range forms {
				if p.Try(func() bool { return v.markAt(p, sh, at, lines, over) }) {
					return
				}
			}
		}
	}
	// Too small for words: the mark alone, beside it if need be.
	p.Label(face.Target{Mark: string(sh.Mark), New: true, Box: sh.Box, Upright: true})
}

// spots returns places for the label of a board, its middle first.
func (v *view) spots(sh lining.Sheet) []geom.Point {
	w, h := marks.LabelSize(string(sh.Mark), true)
	c := sh.Box.Mid()
	nx := (sh.Box.W() - v.Scale.Real(w)) / 2 / v.MM(1)
	ny := min((sh.Box.H()-v.Scale.Real(h))/2/v.MM(3), 8)
	var out []geom.Point
	for j := geom.Length(0); j <= ny; j++ {
		for i := geom.Length(0); i <= nx; i++ {
			for _, q := range []geom.Point{{X: -i, Y: j}, {X: i, Y: j}, {X: -i, Y: -j}, {X: i, Y: -j}} {
				out = append(out, geom.Pt(c.X+q.X*v.MM(1), c.Y+q.Y*v.MM(3)))
			}
		}
	}
	return out
}

// markAt puts a label, and words under it, at one place.
func (v *view) markAt(p *face.Places, sh lining.Sheet, at geom.Point, lines []face.Line, over bool) bool {
	g := marks.Label(string(sh.Mark), true, at, v.Scale)
	if !p.Fits(g) && !(over && p.FitsOver(g)) {
		return false
	}
	p.Add(g)
	if len(lines) == 0 {
		return true
	}
	under := geom.Pt(at.X, at.Y-v.MM(5.2)-v.MM(2.1)*geom.Length(len(lines)-1))
	if !sh.Box.Y().Holds(under.Y - v.MM(2.1)*geom.Length(len(lines))) {
		return false
	}
	return p.Words(drawing.Words, lines, under) || over && p.WordsOver(drawing.Words, lines, under)
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
