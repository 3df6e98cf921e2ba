package dimension

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// Side is where something lies, seen from the object.
type Side int

// The sides.
const (
	Above Side = iota
	Below
	LeftOf
	RightOf
)

// Sizes on paper, in millimetres; our own choice (common practice, no source)
// but for the gap, which is the 1/16 in of common drafting practice.
const (
	figureCap  = 2.8
	wordCap    = 2.4
	extGap     = 1.6  // extension line off the object
	extPast    = 1.6  // and past the dimension line
	lineRun    = 1.4  // dimension line past its last tick
	tickHalf   = 1.05 // half the width and height of a tick
	textOff    = 1.1  // text off its line
	breakHalf  = 1.1  // half the gap of an extension line at an inner row
	fitRoom    = 1.8  // a figure fits where its width and this fit
	outsideOff = 2.6  // a figure beyond the chain, from the last tick
	rowFirst   = 10.0
	rowPitch   = 8.0
	nameDown   = 0.9 // baseline of a row's name below its line
	dotRadius  = 0.5
	ringRadius = 0.95
)

// on returns the real length that prints as so many millimetres.
func on(s paper.Scale, mm float64) geom.Length { return s.Real(paper.MM(mm)) }

// width returns the real width of a figure as it prints.
func width(text string, mm float64, bold bool, s paper.Scale) geom.Length {
	return s.Real(lettering.Width(text, paper.MM(mm), bold))
}

// frame turns along and out into points of the view.
type frame struct {
	side   Side
	object geom.Length
	scale  paper.Scale
}

// upright reports whether the chain runs up.
func (f frame) upright() bool { return f.side == LeftOf || f.side == RightOf }

// textOut reports whether text above its line stands on the outer side of it.
func (f frame) textOut() bool { return f.side == Above || f.side == LeftOf }

// across returns the coordinate across that lies out from the object.
func (f frame) across(out geom.Length) geom.Length {
	if f.side == Below || f.side == LeftOf {
		return f.object - out
	}
	return f.object + out
}

// out returns how far out a coordinate across lies.
func (f frame) out(across geom.Length) geom.Length {
	if f.side == Below || f.side == LeftOf {
		return f.object - across
	}
	return across - f.object
}

// pt returns a point.
func (f frame) pt(along, out geom.Length) geom.Point {
	if f.upright() {
		return geom.Pt(f.across(out), along)
	}
	return geom.Pt(along, f.across(out))
}

// thin is the style of all dimension work.
func thin() drawing.Style { return drawing.Style{Layer: drawing.Dims, Pen: drawing.P18} }

// stroke returns a line of dimension work.
func (f frame) stroke(a1, o1, a2, o2 geom.Length) drawing.Element {
	return drawing.Line{Style: thin(), A: f.pt(a1, o1), B: f.pt(a2, o2)}
}

// tick returns the tick on a point, rising to the right.
func (f frame) tick(along, out geom.Length) drawing.Element { return tick(f.pt(along, out), f.scale) }

func tick(p geom.Point, s paper.Scale) drawing.Element {
	h := on(s, tickHalf)
	return drawing.Line{
		Style: drawing.Style{Layer: drawing.Dims, Pen: drawing.P50},
		A:     geom.Pt(p.X-h, p.Y-h), B: geom.Pt(p.X+h, p.Y+h),
	}
}
