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

// Height is one height of a ladder, from the datum of the view.
type Height struct {
	Word         string
	At           geom.Length
	Bold, Accent bool
}

// Ladder is the heights of an elevation or section at its left: word, figure,
// knee and a dot on the spine; a ring at 0.
type Ladder struct {
	WordsX   geom.Length // words flush left here
	FiguresX geom.Length // figures flush right here
	SpineX   geom.Length
	Heights  []Height
	Scale    paper.Scale
	Show     measure.Show
}

// Sizes of a ladder on paper, in millimetres.
const (
	ladderPitch = 4.6
	kneeIn      = 2.6 // from the spine to the knee
	figureAir   = 0.8 // from a figure to its line
	stub        = 2.4 // beyond the spine, towards the object
)

// once returns the heights in order, those of one place and one kind put
// together, so that every height stands once.
func once(heights []Height) []Height {
	list := slices.Clone(heights)
	kind := func(h Height) int {
		k := 0
		if h.Bold {
			k++
		}
		if h.Accent {
			k += 2
		}
		return k
	}
	slices.SortStableFunc(list, func(a, b Height) int {
		return cmp.Or(cmp.Compare(a.At, b.At), cmp.Compare(kind(a), kind(b)))
	})
	var out []Height
	for _, h := range list {
		if n := len(out) - 1; n >= 0 && out[n].At == h.At && kind(out[n]) == kind(h) {
			if h.Word != "" && h.Word != out[n].Word {
				if out[n].Word != "" {
					out[n].Word += ", "
				}
				out[n].Word += h.Word
			}
			continue
		}
		out = append(out, h)
	}
	return out
}

// Draw returns the elements of the ladder.
func (l Ladder) Draw() []drawing.Element {
	heights := once(l.Heights)
	if len(heights) == 0 {
		return nil
	}
	s := l.Scale
	places := make([]geom.Length, len(heights))
	for i, h := range heights {
		places[i] = h.At
	}
	places = Spread(places, even(len(places), on(s, ladderPitch)))
	elements := l.spine(heights)
	for i, h := range heights {
		elements = append(elements, l.entry(h, places[i])...)
	}
	return elements
}

// spine returns the upright line through the dots, open at rings.
func (l Ladder) spine(heights []Height) []drawing.Element {
	s := l.Scale
	from, to := heights[0].At, heights[len(heights)-1].At+on(s, 0.6)
	if l.zero(heights[0]) {
		from -= on(s, 2.5)
	} else {
		from -= on(s, 0.6)
	}
	var out []drawing.Element
	line := func(a, b geom.Length) {
		if a < b {
			out = append(out, drawing.Line{Style: thin(), A: geom.Pt(l.SpineX, a), B: geom.Pt(l.SpineX, b)})
		}
	}
	for _, h := range heights {
		if l.zero(h) {
			line(from, h.At-on(s, ringRadius))
			from = h.At + on(s, ringRadius)
		}
	}
	line(from, to)
	return out
}

// zero reports whether a height is the datum itself.
func (l Ladder) zero(h Height) bool { return l.Show.Round(h.At) == 0 }

// entry returns one height: word and figure at the place, the knee to the spine.
func (l Ladder) entry(h Height, place geom.Length) []drawing.Element {
	s := l.Scale
	knee, start := l.SpineX-on(s, kneeIn), l.FiguresX+on(s, figureAir)
	radius := on(s, dotRadius)
	at := geom.Pt(l.SpineX, h.At)
	var out []drawing.Element
	line := func(style drawing.Style, a, b geom.Point) {
		if a != b {
			out = append(out, drawing.Line{Style: style, A: a, B: b})
		}
	}
	stubStyle := thin()
	if h.Accent {
		stubStyle.Pen, stubStyle.Accent = drawing.P50, true
	}
	if l.zero(h) {
		radius = on(s, ringRadius)
		out = append(out, Ring(at, drawing.Dims, s))
	} else {
		out = append(out, Dot(at, drawing.Dims, s))
		line(stubStyle, at.Add(geom.Pt(radius, 0)), at.Add(geom.Pt(radius+on(s, stub), 0)))
	}
	if start < knee {
		line(thin(), geom.Pt(start, place), geom.Pt(knee, place))
	} else {
		knee = start
	}
	line(thin(), geom.Pt(knee, place), at.Sub(geom.Pt(radius, 0)))
	bold := h.Bold || h.Accent
	figure := l.Show.Figure(l.Show.Round(h.At))
	out = append(out, drawing.Text{
		Layer: drawing.Dims, At: geom.Pt(l.FiguresX, place-on(s, figureCap)/2), String: figure,
		Cap: paper.MM(figureCap), Bold: bold, Accent: h.Accent, Anchor: drawing.End,
	})
	if h.Word != "" {
		out = append(out, drawing.Text{
			Layer: drawing.Dims, At: geom.Pt(l.WordsX, place-on(s, wordCap)/2), String: h.Word,
			Cap: paper.MM(wordCap), Bold: bold, Accent: h.Accent,
		})
	}
	return out
}

// LadderWidth returns how wide the words and the figures of a ladder print.
func LadderWidth(heights []Height, show measure.Show) (words, figures paper.Length) {
	for _, h := range once(heights) {
		bold := h.Bold || h.Accent
		words = max(words, lettering.Width(h.Word, paper.MM(wordCap), bold))
		figures = max(figures, lettering.Width(show.Figure(show.Round(h.At)), paper.MM(figureCap), bold))
	}
	return words, figures
}
