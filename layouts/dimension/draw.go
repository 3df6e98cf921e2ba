package dimension

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// extension is the extension line of one position through all rows.
type extension struct {
	at          geom.Length
	start, stop geom.Length // out
	row         int         // the outermost row it serves, which draws it
}

// extensions gathers the extension lines of all rows; a position that several
// rows use has one line.
func (c Chain) extensions(f frame, lines []line) []extension {
	var all []extension
	add := func(at, start geom.Length, row int) {
		stop := lines[row].out + on(c.Scale, extPast)
		start += on(c.Scale, extGap)
		for i := range all {
			if all[i].at == at {
				all[i].start = min(all[i].start, start)
				all[i].stop, all[i].row = stop, row
				return
			}
		}
		all = append(all, extension{at, start, stop, row})
	}
	for i, l := range lines {
		for _, s := range l.segs {
			add(s.from, s.start, i)
			add(s.to, s.end, i)
		}
	}
	return all
}

// pieces returns an extension line in the pieces that are left after it breaks
// at inner rows that it crosses and at figures.
func (c Chain) pieces(f frame, lines []line, e extension) []drawing.Element {
	var breaks []geom.Span
	half, air := on(c.Scale, breakHalf), on(c.Scale, 0.6)
	for i, l := range lines {
		if _, tick := slices.BinarySearch(l.ticks, e.at); !tick && i < e.row && l.covers(e.at, c.Scale) {
			breaks = append(breaks, geom.Span{From: l.out - half, To: l.out + half})
		}
		for _, s := range l.segs {
			around := geom.Span{From: s.place.span.From - air, To: s.place.span.To + air}
			if s.place.shown && around.Holds(e.at) {
				b := c.band(f, l, s)
				foot, head := on(c.Scale, figureCap*0.35), on(c.Scale, figureCap*0.1)
				if !f.textOut() {
					foot, head = head, foot
				}
				breaks = append(breaks, geom.Span{From: b.From - foot, To: b.To + head})
			}
		}
	}
	slices.SortFunc(breaks, func(a, b geom.Span) int { return cmp.Compare(a.From, b.From) })
	var out []drawing.Element
	from := e.start
	for _, b := range breaks {
		if b.From >= e.stop {
			break
		}
		if b.From > from {
			out = append(out, f.stroke(e.at, from, e.at, b.From))
		}
		from = max(from, b.To)
	}
	if from < e.stop {
		out = append(out, f.stroke(e.at, from, e.at, e.stop))
	}
	return out
}

// covers reports whether the drawn line of a row passes a position.
func (l line) covers(at geom.Length, s paper.Scale) bool {
	for _, g := range l.segs {
		span := g.drawn(s)
		if span.From < at && at < span.To {
			return true
		}
	}
	return false
}

// drawn returns the dimension line of a segment, with its run past the last
// tick and what is carried under a figure outside.
func (g segment) drawn(s paper.Scale) geom.Span {
	span := geom.Span{From: g.from, To: g.to}
	if g.first {
		span.From -= on(s, lineRun)
	}
	if g.last {
		span.To += on(s, lineRun)
	}
	if g.place.level == outside {
		span = geom.Span{From: min(span.From, g.place.span.From), To: max(span.To, g.place.span.To)}
	}
	return span
}

// band returns what a figure covers, out.
func (c Chain) band(f frame, l line, s segment) geom.Span {
	size := on(c.Scale, figureCap)
	switch {
	case s.place.level == lifted:
		return geom.Span{From: l.out + l.lift, To: l.out + l.lift + size}
	case f.textOut():
		off := on(c.Scale, textOff)
		return geom.Span{From: l.out + off, To: l.out + off + size}
	}
	off := on(c.Scale, textOff)
	return geom.Span{From: l.out - off - size, To: l.out - off}
}

// draw returns the dimension of segment k of a line, or its bare lines when it
// has no figure.
func (c Chain) draw(f frame, lines []line, row, k int, ext []extension) []drawing.Element {
	l := lines[row]
	s := l.segs[k]
	var pic []drawing.Element
	own := []geom.Length{s.to}
	if s.first {
		own = []geom.Length{s.from, s.to}
	}
	for _, at := range own {
		for _, e := range ext {
			if e.at == at && e.row == row {
				pic = append(pic, c.pieces(f, lines, e)...)
			}
		}
	}
	span := s.drawn(c.Scale)
	pic = append(pic, f.stroke(span.From, l.out, span.To, l.out))
	for _, at := range own {
		pic = append(pic, f.tick(at, l.out))
	}
	if !s.place.shown {
		return pic
	}
	band := c.band(f, l, s)
	base := band.From
	if !f.textOut() {
		base = band.To
	}
	size := paper.MM(figureCap)
	text := drawing.Text{
		Layer: drawing.Dims, At: f.pt(s.place.span.From, base), String: s.figure, Cap: size,
		Bold: s.bold, Turned: f.upright(),
	}
	w := width(s.figure, figureCap, s.bold, c.Scale)
	pic = append(pic, text)
	if s.place.also {
		also := text
		also.At, also.String, also.Cap, also.Bold = f.pt(s.place.span.From+w, base), s.also, paper.MM(wordCap), false
		pic = append(pic, also)
	}
	mid := geom.Span{From: s.from, To: s.to}.Mid()
	if s.place.level == lifted {
		foot, end := l.out+on(c.Scale, kneeFoot(f)), band.From-on(c.Scale, kneeAir)
		to := kneeEnd(s.place.span, mid, c.Scale)
		pic = append(pic, Dot(f.pt(mid, l.out), drawing.Dims, c.Scale), f.stroke(mid, l.out, mid, foot))
		if to != mid {
			pic = append(pic, f.stroke(mid, foot, to, end))
		}
	}
	return []drawing.Element{drawing.Dimension{
		Layer: drawing.Dims, From: f.pt(s.from, s.start), To: f.pt(s.to, s.end), Line: f.pt(mid, l.out),
		Vertical: f.upright(), Figure: s.figure,
		TextAt: f.pt(s.place.span.From+w/2, band.Mid()), Picture: pic,
	}}
}
