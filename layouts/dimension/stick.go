package dimension

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// StickMark is one mark on a stick: the line that the tape reads and, with a ×
// between them, the far side of what is to stand there.
type StickMark struct {
	At    geom.Length
	Thick geom.Length // negative when the piece lies on the other side of the line
	Bold  bool        // new work, tee lines
	Plain bool        // a line only: a corner or an edge
}

// Stick is the strip that is really marked, a plate or a string, with running
// figures from the datum. The strip is 3.2 wide and lies from Edge towards its
// figures.
type Stick struct {
	Upright  bool        // along y instead of x
	From, To geom.Length // ends of the strip along, in either order
	Edge     geom.Length // the edge of the strip nearest the object, across
	Flip     bool        // strip and figures lie above or right of Edge instead of below or left
	Marks    []StickMark
	Gaps     []geom.Span // dashed, as at a door
	Name     []string
	NamesX   geom.Length
	Datum    geom.Length
	Scale    paper.Scale
	Show     measure.Show
}

// Sizes of a stick on paper, in millimetres.
const (
	stripWide  = 3.2
	stickPitch = 3.9
	kneeShort  = 1.2 // straight from the strip
	kneeLong   = 3.0 // then slanted to the figure
	namePitch  = 4.5
)

// frame returns the stick's own frame: out from the near edge.
func (k Stick) frame() frame {
	side := Below
	switch {
	case k.Upright && k.Flip:
		side = RightOf
	case k.Upright:
		side = LeftOf
	case k.Flip:
		side = Above
	}
	return frame{side, k.Edge, k.Scale}
}

// ordered returns the marks in order, with the datum among them when it lies
// on the strip, and without marks that repeat a place.
func (k Stick) ordered() []StickMark {
	marks := slices.Clone(k.Marks)
	if !slices.ContainsFunc(marks, func(m StickMark) bool { return m.At == k.Datum }) &&
		(geom.Span{From: k.From, To: k.To}).Holds(k.Datum) {
		marks = append(marks, StickMark{At: k.Datum, Plain: true})
	}
	slices.SortStableFunc(marks, func(a, b StickMark) int { return cmp.Compare(a.At, b.At) })
	return marks
}

// Draw returns the elements of the stick and the farthest coordinate across
// that its figures use.
func (k Stick) Draw() (elements []drawing.Element, outer geom.Length) {
	k.From, k.To = min(k.From, k.To), max(k.From, k.To)
	f, s := k.frame(), k.Scale
	marks := k.ordered()
	elements = k.strip(f)
	for _, m := range marks {
		elements = append(elements, k.mark(f, m)...)
	}
	figured := slices.CompactFunc(slices.Clone(marks), func(a, b StickMark) bool { return a.At == b.At })
	for i, m := range figured { // bold when any mark of the place is
		figured[i].Bold = slices.ContainsFunc(marks, func(o StickMark) bool { return o.At == m.At && o.Bold })
	}
	places := make([]geom.Length, len(figured))
	for i, m := range figured {
		places[i] = m.At
	}
	places = Spread(places, even(len(places), on(s, stickPitch)))
	far := on(s, stripWide)
	back := k.backwards(figured)
	for i, m := range figured {
		e, reach := k.figure(f, m, places[i], back)
		elements = append(elements, e...)
		far = max(far, reach)
	}
	names, reach := k.names(f)
	return append(elements, names...), f.across(max(far, reach))
}

// strip returns the two edges and the ends of the strip.
func (k Stick) strip(f frame) []drawing.Element {
	wide := on(k.Scale, stripWide)
	var out []drawing.Element
	line := func(a1, o1, a2, o2 geom.Length, pen drawing.Pen, dash drawing.Dash) {
		if a1 != a2 || o1 != o2 {
			out = append(out, drawing.Line{
				Style: drawing.Style{Layer: drawing.Dims, Pen: pen, Dash: dash}, A: f.pt(a1, o1), B: f.pt(a2, o2),
			})
		}
	}
	gaps := slices.Clone(k.Gaps)
	slices.SortFunc(gaps, func(a, b geom.Span) int { return cmp.Compare(a.From, b.From) })
	from := k.From
	for _, g := range gaps {
		g = g.Overlap(geom.Span{From: from, To: k.To})
		if g.Len() == 0 {
			continue
		}
		for _, o := range []geom.Length{0, wide} {
			line(from, o, g.From, o, drawing.P25, drawing.Solid)
			line(g.From, o, g.To, o, drawing.P18, drawing.Taken)
		}
		from = g.To
	}
	for _, o := range []geom.Length{0, wide} {
		line(from, o, k.To, o, drawing.P25, drawing.Solid)
	}
	line(k.From, 0, k.From, wide, drawing.P25, drawing.Solid)
	line(k.To, 0, k.To, wide, drawing.P25, drawing.Solid)
	return out
}

// mark returns a mark on the strip, as it is pencilled.
func (k Stick) mark(f frame, m StickMark) []drawing.Element {
	wide := on(k.Scale, stripWide)
	line := func(a1, o1, a2, o2 geom.Length, pen drawing.Pen) drawing.Element {
		return drawing.Line{Style: drawing.Style{Layer: drawing.Dims, Pen: pen}, A: f.pt(a1, o1), B: f.pt(a2, o2)}
	}
	edge, cross := drawing.P35, drawing.P25
	if m.Bold {
		edge, cross = drawing.P50, drawing.P50
	}
	out := []drawing.Element{line(m.At, 0, m.At, wide, edge)}
	if m.Plain || m.Thick == 0 {
		return out
	}
	lo, hi := min(m.At, m.At+m.Thick), max(m.At, m.At+m.Thick)
	in, deep := min(on(k.Scale, 0.25), (hi-lo)/5), on(k.Scale, 0.5)
	return append(out,
		line(m.At+m.Thick, 0, m.At+m.Thick, wide, drawing.P18),
		line(lo+in, deep, hi-in, wide-deep, cross),
		line(lo+in, wide-deep, hi-in, deep, cross))
}

// backwards reports whether all marks lie before the datum, so that figures
// run from the far end.
func (k Stick) backwards(marks []StickMark) bool {
	return !slices.ContainsFunc(marks, func(m StickMark) bool { return m.At > k.Datum })
}

// figure returns the figure of a mark at its place, with its knee, or the ring
// at the datum; reach is how far out it goes.
func (k Stick) figure(f frame, m StickMark, place geom.Length, back bool) (out []drawing.Element, reach geom.Length) {
	s := k.Scale
	value := k.Show.Round(m.At - k.Datum)
	if back {
		value = k.Show.Round(k.Datum - m.At)
	}
	edge := on(s, stripWide)
	turn, end := edge+on(s, kneeShort), edge+on(s, kneeShort+kneeLong)
	if m.At == k.Datum {
		ring := edge + on(s, 2.2)
		out = append(out, f.stroke(m.At, edge, m.At, ring-on(s, ringRadius)), Ring(f.pt(m.At, ring), drawing.Dims, s))
		if place != m.At {
			out = append(out, f.stroke(m.At, ring+on(s, ringRadius), place, end))
		}
	} else {
		out = append(out, f.stroke(m.At, edge, m.At, turn), f.stroke(m.At, turn, place, end))
	}
	figure := k.Show.Figure(value)
	t := drawing.Text{
		Layer: drawing.Dims, String: figure, Cap: paper.MM(figureCap), Bold: m.Bold,
		Turned: !k.Upright, Anchor: drawing.End,
	}
	start := end + on(s, figureAir)
	t.At = f.pt(place, start)
	if k.Flip {
		t.Anchor = drawing.Start
	}
	if k.Upright {
		t.At.Y -= on(s, figureCap) / 2
	} else {
		t.At.X += on(s, figureCap) / 2
	}
	return append(out, t), start + s.Real(lettering.Width(figure, t.Cap, t.Bold))
}

// names returns what the stick is called: beside a horizontal one, above an
// upright one.
func (k Stick) names(f frame) (out []drawing.Element, reach geom.Length) {
	s := k.Scale
	pitch := on(s, namePitch)
	first := min(f.across(0), f.across(on(s, stripWide))) + on(s, 0.6)
	if k.Upright {
		first = k.To + on(s, 4) + pitch*geom.Length(max(0, len(k.Name)-1))
	}
	for i, n := range k.Name {
		at := geom.Pt(k.NamesX, first-pitch*geom.Length(i))
		out = append(out, drawing.Text{Layer: drawing.Dims, At: at, String: n, Cap: paper.MM(wordCap)})
		if !k.Upright && !k.Flip {
			reach = max(reach, f.out(at.Y))
		}
	}
	return out, reach
}
