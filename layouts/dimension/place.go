package dimension

import (
	"fmt"

	"roomwright/geom"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// place is where a figure stands.
type place struct {
	span   geom.Span // along, what it covers
	level  level
	shown  bool // whether there is a figure
	middle geom.Length
	also   bool // the same in feet and inches follows
}

// level is how a figure stands to its line.
type level int

const (
	inLine  level = iota
	outside       // beyond the end of the chain, the line carried under it
	lifted        // on a knee
)

func repeat(n int, each, all string) string { return fmt.Sprintf("%d × %s = %s", n, each, all) }

// Sizes of lifted figures on paper, in millimetres: between a knee and its
// figure, and between two figures, so wide that "1" and "1 1/2" are not read
// as one.
const (
	kneeAir   = 1.0
	liftApart = 2.6
)

// place settles where the figures of a line stand.
func (c Chain) place(f frame, l *line) {
	var up []int // segments whose figures are lifted
	for k := range l.segs {
		s := &l.segs[k]
		if s.figure == "" {
			continue
		}
		w := width(s.figure, figureCap, s.bold, c.Scale)
		s.place = place{shown: true}
		if s.also != "" {
			with := w + c.Scale.Real(lettering.Width(s.also, paper.MM(wordCap), false))
			if at, ok := c.inside(f, l, *s, with); ok {
				s.place = place{shown: true, also: true, span: at, middle: at.Mid()}
				continue
			}
		}
		if at, ok := c.inside(f, l, *s, w); ok {
			s.place.span = at
			continue
		}
		if at, ok := c.beyond(f, l, k, w); ok {
			s.place.span, s.place.level = at, outside
			continue
		}
		mid := geom.Span{From: s.from, To: s.to}.Mid()
		s.place.level, s.place.span = lifted, geom.Span{From: mid - w/2, To: mid - w/2 + w}
		up = append(up, k)
	}
	c.lift(f, l, up)
}

// tickLean is how far a tight figure gives way to the tick that leans over its
// segment: the first one across, the last one upright.
const tickLean = 0.25

// inside finds the place of a figure of width w in its segment: the middle, or
// the place nearest to it between lines that cross; ok is false where it does
// not fit at all.
func (c Chain) inside(f frame, l *line, s segment, w geom.Length) (geom.Span, bool) {
	room := geom.Span{From: s.from, To: s.to}
	if w+on(c.Scale, fitRoom) > room.Len() {
		return geom.Span{}, false
	}
	near, end := on(c.Scale, fitRoom/2+tickLean), on(c.Scale, fitRoom/2-tickLean)
	if f.upright() {
		near, end = end, near
	}
	center := func(m geom.Length) geom.Span { return geom.Span{From: m - w/2, To: m - w/2 + w} }
	best, found := geom.Span{}, false
	left := room.From
	try := func(right geom.Length) {
		lo, hi := left+near+w/2, right-end-(w-w/2)
		left = right
		if lo > hi {
			return
		}
		at := center(min(max(room.Mid(), lo), hi))
		if !found || (at.Mid()-room.Mid()).Abs() < (best.Mid()-room.Mid()).Abs() {
			best, found = at, true
		}
	}
	for _, p := range l.passes {
		if p > room.From && p < room.To {
			try(p)
		}
	}
	try(room.To)
	if !found {
		return center(min(max(room.Mid(), room.From+near+w/2), room.To-end-(w-w/2))), true // the crossing line breaks at the figure
	}
	return best, true
}

// beyond finds the place of a figure outside the chain, for the first or last
// segment of a run, when nothing else lies there.
func (c Chain) beyond(f frame, l *line, k int, w geom.Length) (geom.Span, bool) {
	s, off, need := l.segs[k], on(c.Scale, outsideOff), on(c.Scale, fitRoom)
	free := func(at geom.Span) bool {
		around := geom.Span{From: at.From - need/2, To: at.To + need/2}
		for _, p := range l.passes {
			if around.Holds(p) {
				return false
			}
		}
		for i, other := range l.segs {
			if i != k && (around.Overlaps(geom.Span{From: other.from, To: other.to}) ||
				other.place.level == outside && around.Overlaps(other.place.span)) {
				return false
			}
		}
		if l.row.Name != "" && !f.upright() {
			name := geom.Span{From: c.NamesX, To: c.NamesX + width(l.row.Name, wordCap, false, c.Scale)}
			return !around.Overlaps(name)
		}
		return true
	}
	if s.last {
		if at := (geom.Span{From: s.to + off, To: s.to + off + w}); free(at) {
			return at, true
		}
	}
	if s.first {
		if at := (geom.Span{From: s.from - off - w, To: s.from - off}); free(at) {
			return at, true
		}
	}
	return geom.Span{}, false
}

// lift spreads the lifted figures of a line and settles how high they stand.
func (c Chain) lift(f frame, l *line, up []int) {
	if len(up) == 0 {
		return
	}
	places, apart := make([]geom.Length, len(up)), make([]geom.Length, 0, len(up))
	for i, k := range up {
		p := l.segs[k].place.span
		places[i] = p.From
		if i+1 < len(up) {
			apart = append(apart, p.Len()+on(c.Scale, liftApart))
		}
	}
	// Left ends are spread, so that every figure is clear of the next.
	moved := Spread(places, apart)
	straight := true
	for i, k := range up {
		s := &l.segs[k]
		w := s.place.span.Len()
		s.place.span = geom.Span{From: moved[i], To: moved[i] + w}
		mid := geom.Span{From: s.from, To: s.to}.Mid()
		straight = straight && kneeEnd(s.place.span, mid, c.Scale) == mid
	}
	l.lift = on(c.Scale, kneeFoot(f)+kneeAir)
	if !straight {
		l.lift += on(c.Scale, 2.2)
	}
}

// kneeFoot is how far from its line a knee runs straight, in millimetres: past
// figures in the line, or past the ends of extension lines.
func kneeFoot(f frame) float64 {
	if f.textOut() {
		return textOff + figureCap + 0.4
	}
	return extPast + 0.3
}

// kneeEnd returns where along a knee from mid meets its figure.
func kneeEnd(span geom.Span, mid geom.Length, s paper.Scale) geom.Length {
	in := min(on(s, 0.8), span.Len()/2)
	return min(max(mid, span.From+in), span.To-in)
}
