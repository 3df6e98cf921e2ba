package marks

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// Callout is words in a column with a line to what they tell of; a label may
// stand before the words.
type Callout struct {
	Lines  []string
	Mark   string // empty for none
	Target geom.Point
}

// Sizes of callouts on paper, in millimetres.
const (
	calloutPitch = 4.2
	calloutGap   = 2.4 // between blocks
	calloutLevel = 4.5 // the level part of the line
	calloutAir   = 1.2 // from the line to the words
)

// Callouts returns words flush left in a column at columnX, each with a level
// line and then a straight one to its target. They are spread so that they do
// not touch, in the order of their targets, and neighbours change places when
// their lines would cross.
func Callouts(items []Callout, columnX geom.Length, s paper.Scale) []drawing.Element {
	list := slices.Clone(items)
	slices.SortStableFunc(list, func(a, b Callout) int { return cmp.Compare(a.Target.Y, b.Target.Y) })
	var places []geom.Length
	for range len(list) + 1 {
		places = calloutPlaces(list, s)
		swapped := false
		for i := 0; i+1 < len(list); i++ {
			if crossing(list[i], list[i+1], places[i], places[i+1], columnX, s) {
				list[i], list[i+1] = list[i+1], list[i]
				swapped = true
			}
		}
		if !swapped {
			break
		}
	}
	places = calloutPlaces(list, s)
	var out []drawing.Element
	for i, c := range list {
		out = append(out, callout(c, places[i], columnX, s)...)
	}
	return out
}

// high returns the height of a block of words.
func (c Callout) high(s paper.Scale) geom.Length {
	h := on(s, labelCap*1.3) + on(s, calloutPitch)*geom.Length(max(0, len(c.Lines)-1))
	if c.Mark != "" {
		h = max(h, on(s, labelHigh))
	}
	return h
}

// calloutPlaces returns the heights of the blocks in their order.
func calloutPlaces(list []Callout, s paper.Scale) []geom.Length {
	wanted, apart := make([]geom.Length, len(list)), make([]geom.Length, 0, len(list))
	for i, c := range list {
		wanted[i] = c.Target.Y
		if i+1 < len(list) {
			apart = append(apart, (c.high(s)+list[i+1].high(s))/2+on(s, calloutGap))
		}
	}
	return dimension.Spread(wanted, apart)
}

// elbow returns where the line of a callout turns.
func elbow(c Callout, y, columnX geom.Length, s paper.Scale) geom.Point {
	if c.Target.X > columnX {
		return geom.Pt(columnX+c.wide(s)+on(s, calloutAir+calloutLevel), y)
	}
	return geom.Pt(columnX-on(s, calloutAir+calloutLevel), y)
}

// wide returns the width of a block of words.
func (c Callout) wide(s paper.Scale) geom.Length {
	w := paper.Length(0)
	for _, l := range c.Lines {
		w = max(w, lettering.Width(l, paper.MM(labelCap), false))
	}
	if c.Mark != "" {
		m, _ := LabelSize(c.Mark, true)
		w += m + paper.MM(1.8)
	}
	return s.Real(w)
}

// crossing reports whether the slanting parts of two callouts cross.
func crossing(a, b Callout, ya, yb, columnX geom.Length, s paper.Scale) bool {
	p, q := elbow(a, ya, columnX, s), elbow(b, yb, columnX, s)
	side := func(o, u, v geom.Point) int {
		x := float64(float64(u.X-o.X)*float64(v.Y-o.Y)) - float64(float64(u.Y-o.Y)*float64(v.X-o.X))
		return cmp.Compare(x, 0)
	}
	return side(p, a.Target, q)*side(p, a.Target, b.Target) < 0 && side(q, b.Target, p)*side(q, b.Target, a.Target) < 0
}

// callout returns one callout, its block centred on a height.
func callout(c Callout, y, columnX geom.Length, s paper.Scale) []drawing.Element {
	layer := drawing.Words
	style := drawing.Style{Layer: layer, Pen: drawing.P18}
	turn := elbow(c, y, columnX, s)
	start := geom.Pt(columnX-on(s, calloutAir), y)
	if c.Target.X > columnX {
		start.X = columnX + c.wide(s) + on(s, calloutAir)
	}
	var out []drawing.Element
	textX := columnX
	if c.Mark != "" {
		w, _ := LabelSize(c.Mark, true)
		at := geom.Pt(columnX+s.Real(w)/2, y)
		textX += s.Real(w) + on(s, 1.8)
		if c.Target.X <= columnX {
			start = eyeOf(labelBox(c.Mark, true, at, s), false, s)
		}
		out = append(out, Label(c.Mark, true, at, s))
	}
	out = append(out,
		drawing.Line{Style: style, A: start, B: turn},
		drawing.Line{Style: style, A: turn, B: c.Target},
		dimension.Dot(c.Target, layer, s))
	first := y + on(s, calloutPitch)*geom.Length(max(0, len(c.Lines)-1))/2 - on(s, labelCap)/2
	for i, l := range c.Lines {
		out = append(out, drawing.Text{
			Layer: layer, At: geom.Pt(textX, first-on(s, calloutPitch)*geom.Length(i)), String: l, Cap: paper.MM(labelCap),
		})
	}
	return out
}
