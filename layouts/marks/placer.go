package marks

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// Placer keeps what is occupied on a view and finds free places for labels and
// words. What it has placed is occupied from then on. Same calls, same places.
type Placer struct {
	scale paper.Scale
	taken boxes // nothing may be put here
	faint boxes // thin lines: no words; a label, being opaque, may lie here
	hard  boxes // of those taken, what no string may cross
}

// NewPlacer returns a placer for a view at a scale, with nothing occupied.
func NewPlacer(s paper.Scale) *Placer {
	pitch := on(s, bucket)
	return &Placer{scale: s, taken: boxes{pitch: pitch}, faint: boxes{pitch: pitch}, hard: boxes{pitch: pitch}}
}

// Moment is what a placer knew at some time.
type Moment struct{ taken, faint, hard int }

// Now returns the moment to which Back can go.
func (p *Placer) Now() Moment {
	return Moment{taken: len(p.taken.log), faint: len(p.faint.log), hard: len(p.hard.log)}
}

// Back forgets everything that came after a moment.
func (p *Placer) Back(m Moment) {
	p.taken.back(m.taken)
	p.faint.back(m.faint)
	p.hard.back(m.hard)
}

// Block says that nothing may be put on r; strings may cross it.
func (p *Placer) Block(r geom.Rect) {
	if !r.Empty() {
		p.taken.add(r)
	}
}

// shield is Block, and strings may not cross r either.
func (p *Placer) shield(r geom.Rect) {
	if !r.Empty() {
		p.taken.add(r)
		p.hard.add(r)
	}
}

// BlockElements says that nothing may be put on texts, labels, dimensions,
// hatches and drawn lines of 0.25 and more, and no words on thinner lines;
// strings may cross lines and hatches but no text, label or dimension.
func (p *Placer) BlockElements(elements []drawing.Element) {
	for _, e := range elements {
		switch e := e.(type) {
		case drawing.Text:
			p.shield(drawing.TextBox(e, p.scale))
		case drawing.Dimension:
			for _, part := range e.Picture {
				p.blockDimension(part)
			}
		case drawing.Group:
			p.BlockElements(e.Elements)
		case drawing.Line:
			p.blockLine(e.Style, e.A, e.B)
		case drawing.Polyline:
			for i := 1; i < len(e.Points); i++ {
				p.blockLine(e.Style, e.Points[i-1], e.Points[i])
			}
			if n := len(e.Points); e.Closed && n > 2 {
				p.blockLine(e.Style, e.Points[n-1], e.Points[0])
			}
		case drawing.Hatch:
			for _, l := range e.Lines {
				for _, r := range p.pieces(l[0], l[1], e.Pen) {
					p.Block(r)
				}
			}
		case drawing.Arc:
			if e.Pen >= drawing.P25 && e.Radius > 0 {
				p.Block(drawing.Bounds([]drawing.Element{e}, p.scale))
			}
		case drawing.Area:
			switch {
			case len(e.Outline) < 3:
			case e.Fill != drawing.White:
				p.Block(geom.Polygon(e.Outline).Bounds())
			case e.Layer == drawing.Symbols: // a label or letter
				p.shield(geom.Polygon(e.Outline).Bounds())
			}
		}
	}
}

// blockDimension shields the parts of a dimension.
func (p *Placer) blockDimension(e drawing.Element) {
	switch e := e.(type) {
	case drawing.Text:
		p.shield(drawing.TextBox(e, p.scale))
	case drawing.Line:
		for _, r := range p.pieces(e.A, e.B, e.Pen) {
			p.shield(r)
		}
	case drawing.Area:
		p.shield(geom.Polygon(e.Outline).Bounds())
	}
}

// blockLine blocks a line that matters.
func (p *Placer) blockLine(style drawing.Style, a, b geom.Point) {
	shielded := style.Layer == drawing.Dims || style.Layer == drawing.Symbols
	for _, r := range p.pieces(a, b, style.Pen) {
		switch {
		case shielded:
			p.shield(r)
		case style.Pen < drawing.P25:
			p.faint.add(r)
		default:
			p.Block(r)
		}
	}
}

// pieces returns a line as thin boxes; a slanting one is cut into small ones.
func (p *Placer) pieces(a, b geom.Point, pen drawing.Pen) []geom.Rect {
	half := on(p.scale, float64(pen)/200)
	n := geom.Length(1)
	if a.X != b.X && a.Y != b.Y {
		d := b.Sub(a)
		n += max(d.X.Abs(), d.Y.Abs()) / on(p.scale, 1)
		n = min(n, 400)
	}
	out := make([]geom.Rect, 0, n)
	for i := range n {
		q := a.Add(geom.Pt((b.X-a.X)*i/n, (b.Y-a.Y)*i/n))
		r := a.Add(geom.Pt((b.X-a.X)*(i+1)/n, (b.Y-a.Y)*(i+1)/n))
		out = append(out, geom.Polygon{q, r}.Bounds().Inset(-half))
	}
	return out
}

// Free reports whether r shares no area with what is occupied.
func (p *Placer) Free(r geom.Rect) bool { return p.taken.clear(r) && p.faint.clear(r) }

// airMM is the white round what a placer puts down, in millimetres.
const airMM = 0.6

// Label puts a label with a string to its target at the first candidate where
// label and string are free; without candidates places round the target are
// tried, nearest first. It reports false, and draws nothing, when none is free.
func (p *Placer) Label(mark string, isNew bool, target geom.Point, candidates ...geom.Point) (drawing.Group, bool) {
	if len(candidates) == 0 {
		candidates = p.around(mark, isNew, target)
	}
	for i := range 2 * len(candidates) {
		at := candidates[i%len(candidates)]
		box := labelBox(mark, isNew, at, p.scale)
		around := box.Inset(-on(p.scale, airMM))
		if !p.taken.clear(around) || i < len(candidates) && !p.faint.clear(around) {
			continue // places over thin lines only when there is no other
		}
		if box.Inset(on(p.scale, -0.5)).X().Holds(target.X) && box.Y().Holds(target.Y) {
			p.shield(box)
			return Label(mark, isNew, at, p.scale), true // it lies on its piece
		}
		eye := eyeOf(box, target.X > at.X, p.scale)
		cord := p.pieces(eye, target, drawing.P18)
		if !p.open(cord) {
			continue
		}
		p.shield(box)
		for _, r := range cord {
			p.shield(r)
		}
		p.shield(boxAt(target, on(p.scale, 1), on(p.scale, 1)))
		return Label(mark, isNew, at, p.scale, target), true
	}
	return drawing.Group{}, false
}

// open reports whether a string may pass.
func (p *Placer) open(cord []geom.Rect) bool {
	for _, r := range cord {
		if !p.hard.clear(r) {
			return false
		}
	}
	return true
}

// around returns places for a label round a target, at growing distance: left
// and right on its height, above and below, then aslant.
func (p *Placer) around(mark string, isNew bool, target geom.Point) []geom.Point {
	s := p.scale
	var out []geom.Point
	for step := 3; step <= 39; step += 2 {
		gap := paper.MM(float64(step))
		left := Beside(mark, isNew, target, LeftWay, gap, s)
		right := Beside(mark, isNew, target, RightWay, gap, s)
		d := geom.Pt(0, s.Real(gap))
		out = append(out, left, right,
			Beside(mark, isNew, target, Up, gap, s), Beside(mark, isNew, target, Down, gap, s),
			left.Add(d), right.Add(d), left.Sub(d), right.Sub(d))
	}
	return out
}

// linePitch is from baseline to baseline, as a share of the cap height.
func linePitch(size paper.Length) paper.Length { return size * 42 / 24 }

// Words puts lines of text, centred, at the first candidate where they are
// free; it reports false, and draws nothing, when none is.
func (p *Placer) Words(lines []string, size paper.Length, bold bool, layer drawing.Layer, candidates ...geom.Point) ([]drawing.Element, bool) {
	if len(lines) == 0 {
		return nil, false
	}
	s := p.scale
	w := paper.Length(0)
	for _, l := range lines {
		w = max(w, lettering.Width(l, size, bold))
	}
	pitch := linePitch(size)
	high := size + size*3/10 + pitch*paper.Length(len(lines)-1)
	for _, at := range candidates {
		box := boxAt(at, s.Real(w), s.Real(high))
		if !p.Free(box.Inset(-on(s, airMM))) {
			continue
		}
		p.shield(box)
		var out []drawing.Element
		y := box.Max.Y - s.Real(size)
		for i, l := range lines {
			out = append(out, drawing.Text{
				Layer: layer, At: geom.Pt(at.X, y-s.Real(pitch)*geom.Length(i)), String: l,
				Cap: size, Bold: bold, Anchor: drawing.Middle,
			})
		}
		return out, true
	}
	return nil, false
}
