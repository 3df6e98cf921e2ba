package face

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// Places finds free places for words and labels on a wall. It keeps three
// kinds of ground apart: where nothing may stand, where a label may stand
// when there is no better place (over framing that is there), and what the
// string of a label may not cross.
type Places struct {
	Elements []drawing.Element // what was placed, in order
	Failed   []string          // what found no place
	Holes    []geom.Rect       // where words stand over framing, which is to be left out there

	scale   paper.Scale
	best    *marks.Placer // free of everything drawn
	second  *marks.Placer // free of all but framing
	strings *marks.Placer // free of words, labels and dimension lines
}

// NewPlaces returns an empty Places.
func NewPlaces(s paper.Scale) *Places {
	return &Places{scale: s, best: marks.NewPlacer(s), second: marks.NewPlacer(s), strings: marks.NewPlacer(s)}
}

func (p *Places) mm(v float64) geom.Length { return p.scale.Real(paper.MM(v)) }

// Soft keeps words and labels off r as long as they find another place.
func (p *Places) Soft(r geom.Rect) { p.best.Block(r) }

// Firm keeps words and labels off r; strings may cross it.
func (p *Places) Firm(r geom.Rect) {
	p.best.Block(r)
	p.second.Block(r)
}

// Hard keeps everything off r.
func (p *Places) Hard(r geom.Rect) {
	p.Firm(r)
	p.strings.Block(r)
}

// Drawn keeps everything off texts, labels and dimension work in elements.
func (p *Places) Drawn(elements []drawing.Element) {
	drawing.Walk(elements, true, func(e drawing.Element) {
		switch e := e.(type) {
		case drawing.Text:
			p.Hard(drawing.TextBox(e, p.scale))
		case drawing.Line:
			if e.A.X == e.B.X || e.A.Y == e.B.Y {
				p.Hard(geom.Polygon{e.A, e.B}.Bounds().Inset(-p.mm(0.3)))
			}
		case drawing.Polyline:
			p.Hard(geom.Polygon(e.Points).Bounds())
		}
	})
}

// Line is one line of words.
type Line struct {
	Text string
	Cap  paper.Length
	Bold bool
}

// block returns lines centred on at and the box that they cover.
func (p *Places) block(layer drawing.Layer, lines []Line, at geom.Point) ([]drawing.Element, geom.Rect) {
	pitch := p.mm(4.2)
	high := pitch*geom.Length(len(lines)-1) + p.scale.Real(lines[0].Cap)
	y := at.Y + high/2 - p.scale.Real(lines[0].Cap)
	var e []drawing.Element
	for _, l := range lines {
		e = append(e, drawing.Text{Layer: layer, At: geom.Pt(at.X, y), String: l.Text, Cap: l.Cap, Bold: l.Bold, Anchor: drawing.Middle})
		y -= pitch
	}
	return e, drawing.Bounds(e, p.scale)
}

// Words puts lines, centred, at the first of the points where they are free of
// everything, and reports whether there was one.
func (p *Places) Words(layer drawing.Layer, lines []Line, at ...geom.Point) bool {
	_, ok := p.words(p.best, layer, lines, at)
	return ok
}

// WordsOver is like Words but may stand over framing.
func (p *Places) WordsOver(layer drawing.Layer, lines []Line, at ...geom.Point) bool {
	hole, ok := p.words(p.second, layer, lines, at)
	if ok {
		p.Holes = append(p.Holes, hole)
	}
	return ok
}

// Try does what f does, and undoes it when f reports false.
func (p *Places) Try(f func() bool) bool {
	was, best, second, strings := *p, p.best.Now(), p.second.Now(), p.strings.Now()
	if f() {
		return true
	}
	*p = was
	p.best.Back(best)
	p.second.Back(second)
	p.strings.Back(strings)
	return false
}

func (p *Places) words(on *marks.Placer, layer drawing.Layer, lines []Line, at []geom.Point) (geom.Rect, bool) {
	for _, c := range at {
		e, box := p.block(layer, lines, c)
		if on.Free(box.Inset(-p.mm(0.5))) {
			p.Elements = append(p.Elements, e...)
			p.Hard(box)
			return box.Inset(-p.mm(0.8)), true
		}
	}
	return geom.Rect{}, false
}

// Turned puts one word, read from the right, with the middle of its baseline
// at the first of the points where it is free.
func (p *Places) Turned(word string, layer drawing.Layer, at ...geom.Point) bool {
	for _, c := range at {
		t := drawing.Text{Layer: layer, At: c, String: word, Cap: paper.MM(2.4), Anchor: drawing.Middle, Turned: true}
		box := drawing.TextBox(t, p.scale)
		if p.best.Free(box.Inset(-p.mm(0.25))) {
			p.Elements = append(p.Elements, t)
			p.Hard(box)
			return true
		}
	}
	return false
}

// Put adds elements if what they cover, with a margin, is free of everything.
func (p *Places) Put(e ...drawing.Element) bool {
	box := drawing.Bounds(e, p.scale)
	if !p.best.Free(box.Inset(-p.mm(0.6))) {
		return false
	}
	p.Elements = append(p.Elements, e...)
	p.Hard(box)
	return true
}

// Target is a piece that wants a label.
type Target struct {
	Mark      string
	New       bool
	Box       geom.Rect
	Upright   bool    // strings go sideways, else up and down
	LeftFirst bool    // an upright piece: try its left side first
	LowFirst  bool    // a lying piece: try below it first
	On        bool    // the label may lie on the piece itself if it is large enough
	Near      bool    // no farther than the next bay, and over nothing
	Try       []int64 // percents along the piece to try, in order; nil for the usual ones
}

// Label puts the label of t at the nearest free place.
func (p *Places) Label(t Target) bool {
	w, h := marks.LabelSize(t.Mark, t.New)
	size := geom.Pt(p.scale.Real(w), p.scale.Real(h))
	if t.On && t.Box.W() > size.X+p.mm(1.6) && t.Box.H() > size.Y+p.mm(1.8) {
		for _, k := range t.tries() {
			c := t.Box.Mid()
			if t.Box.W() > t.Box.H() {
				c.X = t.Box.Min.X + size.X/2 + p.mm(0.8) + (t.Box.W()-size.X-p.mm(1.6))*geom.Length(k)/100
			} else {
				c.Y = t.Box.Min.Y + size.Y/2 + p.mm(0.6) + (t.Box.H()-size.Y-p.mm(1.2))*geom.Length(k)/100
			}
			box := boxAt(c, size)
			if p.strings.Free(box.Inset(-p.mm(0.6))) {
				p.add(marks.Label(t.Mark, t.New, c, p.scale), box)
				return true
			}
		}
	}
	for _, a := range []struct {
		on       *marks.Placer
		from, to int
		sides    []bool
	}{
		{p.best, 0, 9, []bool{true}}, {p.best, 0, 9, []bool{false}},
		{p.second, 0, 9, []bool{true, false}}, {p.best, 9, 24, []bool{true, false}}, {p.second, 9, 24, []bool{true, false}},
	} {
		if t.Near && (a.on != p.best || a.from > 0) {
			continue
		}
		for step := a.from; step < a.to; step++ {
			if t.Near && step > 3 {
				break
			}
			gap := p.mm(2.4) + p.mm(1.5)*geom.Length(step)
			for _, k := range t.tries() {
				for _, way := range a.sides {
					if p.label(a.on, t, size, gap, k, way) {
						return true
					}
				}
			}
		}
	}
	p.Failed = append(p.Failed, t.Mark)
	return false
}

func (t Target) tries() []int64 {
	if len(t.Try) > 0 {
		return t.Try
	}
	if t.Upright {
		return []int64{50, 42, 58, 34, 66, 26, 74, 18, 82, 10, 90, 4, 96}
	}
	out := []int64{50}
	for k := int64(2); k < 50; k += 2 {
		out = append(out, 50-k, 50+k)
	}
	return out
}

// label tries one place: gap away from the piece, k percent along it, on the
// first side (way) or the other.
func (p *Places) label(on *marks.Placer, t Target, size geom.Point, gap geom.Length, k int64, way bool) bool {
	eye := size.X/2 - p.mm(1.15) // from the middle of the label
	mid := t.Box.Mid()
	var at, target geom.Point
	var str geom.Rect
	if t.Upright {
		y := t.Box.Min.Y + t.Box.H()*geom.Length(k)/100
		target = geom.Pt(mid.X, y)
		if t.LeftFirst == way {
			at = geom.Pt(t.Box.Min.X-gap-size.X/2, y)
			str = geom.RectOf(at.X+size.X/2, y, target.X, y)
		} else {
			at = geom.Pt(t.Box.Max.X+gap+size.X/2, y)
			str = geom.RectOf(target.X, y, at.X-size.X/2, y)
		}
	} else {
		x := t.Box.Min.X + t.Box.W()*geom.Length(k)/100
		target = geom.Pt(x, mid.Y)
		at = geom.Pt(x+eye, t.Box.Max.Y+gap+size.Y/2)
		str = geom.RectOf(x, target.Y, x, at.Y-size.Y/2)
		if t.LowFirst == way {
			at.Y = t.Box.Min.Y - gap - size.Y/2
			str = geom.RectOf(x, at.Y+size.Y/2, x, target.Y)
		}
	}
	box, line := boxAt(at, size), geom.RectOf(str.Min.X, str.Min.Y-p.mm(0.5), str.Max.X, str.Max.Y+p.mm(0.5))
	if !t.Upright {
		line = geom.RectOf(str.Min.X-p.mm(0.5), str.Min.Y, str.Max.X+p.mm(0.5), str.Max.Y)
	}
	if !on.Free(box.Inset(-p.mm(0.6))) || !p.strings.Free(line) {
		return false
	}
	p.add(marks.Label(t.Mark, t.New, at, p.scale, target), box)
	p.Hard(line)
	return true
}

func (p *Places) add(g drawing.Element, box geom.Rect) {
	p.Elements = append(p.Elements, g)
	p.Hard(box)
}

func boxAt(c, size geom.Point) geom.Rect {
	return geom.RectOf(c.X-size.X/2, c.Y-size.Y/2, c.X+size.X/2, c.Y+size.Y/2)
}

// Pointed puts one word beside a piece, with a string to a dot in it.
func (p *Places) Pointed(word string, layer drawing.Layer, piece geom.Rect) bool {
	wide := p.scale.Real(lettering.Width(word, paper.MM(2.4), false))
	return p.pointed(p.best, word, layer, piece, wide) || p.pointed(p.second, word, layer, piece, wide)
}

func (p *Places) pointed(on *marks.Placer, word string, layer drawing.Layer, piece geom.Rect, wide geom.Length) bool {
	mid := piece.Mid()
	for step := 0; step < 8; step++ {
		run := p.mm(2.7) + p.mm(1.5)*geom.Length(step)
		for _, k := range []geom.Length{50, 42, 58, 34, 66, 26, 74, 85, 15} {
			y := piece.Min.Y + piece.H()*k/100
			for _, way := range []geom.Length{-1, 1} {
				x := mid.X + way*(run+p.mm(0.6)+wide/2)
				text := drawing.Text{Layer: layer, At: geom.Pt(x, y-p.mm(1.2)), String: word, Cap: paper.MM(2.4), Anchor: drawing.Middle}
				box := drawing.TextBox(text, p.scale)
				str := geom.Polygon{{X: mid.X, Y: y}, {X: mid.X + way*run, Y: y}}.Bounds().Inset(-p.mm(0.4))
				if !on.Free(box.Inset(-p.mm(0.5))) || !p.strings.Free(str) {
					continue
				}
				p.Elements = append(p.Elements, text, drawing.Line{
					Style: drawing.Style{Layer: drawing.Symbols, Pen: drawing.P18}, A: geom.Pt(mid.X+way*run, y), B: geom.Pt(mid.X, y)})
				p.Elements = append(p.Elements, dimension.Dot(geom.Pt(mid.X, y), drawing.Symbols, p.scale))
				p.Hard(box)
				p.Hard(str)
				if on == p.second {
					p.Holes = append(p.Holes, box.Inset(-p.mm(0.5)))
				}
				return true
			}
		}
	}
	return false
}

// Free reports whether r is free of everything.
func (p *Places) Free(r geom.Rect) bool { return p.best.Free(r) }

// Fits reports whether what the elements cover is free of everything.
func (p *Places) Fits(e ...drawing.Element) bool { return p.fits(p.best, e) }

// FitsOver reports whether what the elements cover is free of all but framing
// that is there or is taken out.
func (p *Places) FitsOver(e ...drawing.Element) bool { return p.fits(p.second, e) }

func (p *Places) fits(on *marks.Placer, e []drawing.Element) bool {
	for _, x := range e {
		if !on.Free(drawing.Bounds([]drawing.Element{x}, p.scale).Inset(-p.mm(0.5))) {
			return false
		}
	}
	return true
}

// Add adds elements and keeps everything else off them.
func (p *Places) Add(e ...drawing.Element) {
	p.Elements = append(p.Elements, e...)
	for _, x := range e {
		p.Hard(drawing.Bounds([]drawing.Element{x}, p.scale))
	}
}

// LabelRow puts one thin label beside upright pieces that stand in a row, on a level
// string through all of them with a dot in each.
func (p *Places) LabelRow(mark string, boxes []geom.Rect, tries []int64) bool {
	w, h := marks.LabelSize(mark, false)
	size := geom.Pt(p.scale.Real(w), p.scale.Real(h))
	boxes = slices.Clone(boxes)
	slices.SortStableFunc(boxes, func(a, b geom.Rect) int { return cmp.Compare(a.Min.X, b.Min.X) })
	all := boxes[0]
	for _, b := range boxes {
		y := all.Y().Overlap(b.Y())
		all = geom.RectOf(min(all.Min.X, b.Min.X), y.From, max(all.Max.X, b.Max.X), y.To)
	}
	if all.H() <= 0 {
		return false
	}
	for _, on := range []*marks.Placer{p.best, p.second} {
		for step := 0; step < 16; step++ {
			gap := p.mm(2.4) + p.mm(1.5)*geom.Length(step)
			for _, k := range tries {
				y := all.Min.Y + all.H()*geom.Length(k)/100
				for _, left := range []bool{true, false} {
					at, far := geom.Pt(all.Max.X+gap+size.X/2, y), boxes[0].Mid().X
					str := geom.RectOf(far, y-p.mm(0.5), at.X-size.X/2, y+p.mm(0.5))
					if left {
						at, far = geom.Pt(all.Min.X-gap-size.X/2, y), boxes[len(boxes)-1].Mid().X
						str = geom.RectOf(at.X+size.X/2, y-p.mm(0.5), far, y+p.mm(0.5))
					}
					box := boxAt(at, size)
					if !on.Free(box.Inset(-p.mm(0.6))) || !p.strings.Free(str) {
						continue
					}
					p.add(marks.Label(mark, false, at, p.scale, geom.Pt(far, y)), box)
					for _, b := range boxes {
						p.Elements = append(p.Elements, dimension.Dot(geom.Pt(b.Mid().X, y), drawing.Symbols, p.scale))
					}
					p.Hard(str)
					return true
				}
			}
		}
	}
	return false
}
