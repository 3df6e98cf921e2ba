package face

import (
	"slices"

	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// Margin is the column of words and figures left of a wall.
type Margin struct {
	WordsX   geom.Length // words begin here
	FiguresX geom.Length // figures end here
	SpineX   geom.Length // the spine of the height ladder
}

// Margin returns the margin for the given heights, the names of rows, and a
// stick whose names stand left of all its figures.
func (f Face) Margin(heights []dimension.Height, stick dimension.Stick, names ...string) Margin {
	words, figures := dimension.LadderWidth(heights, f.Show)
	m := Margin{SpineX: -f.MM(8.4)}
	m.FiguresX = m.SpineX - f.MM(5.8)
	m.WordsX = m.FiguresX - f.Scale.Real(figures) - f.MM(3) - f.Scale.Real(words)
	beside := func(names []string, right geom.Length) {
		for _, n := range names {
			m.WordsX = min(m.WordsX, right-f.Scale.Real(lettering.Width(n, paper.MM(2.4), false)))
		}
	}
	beside(names, -f.MM(5.5))
	if called := stick.Name; len(called) > 0 {
		stick.Name = nil
		e, _ := stick.Draw()
		beside(called, min(-f.MM(5.5), drawing.Bounds(e, f.Scale).Min.X-f.MM(2)))
	}
	return m
}

// Ladder returns the height ladder of m.
func (f Face) Ladder(m Margin, heights []dimension.Height) drawing.Element {
	l := dimension.Ladder{WordsX: m.WordsX, FiguresX: m.FiguresX, SpineX: m.SpineX, Heights: heights, Scale: f.Scale, Show: f.Show}
	return drawing.Group{ID: "heights", Title: "Heights from the finished floor", Elements: l.Draw()}
}

// Around returns what keeps clear of a ladder whose figures had to be spread:
// the names of the neighbours, where the upper edge of the strip of running
// marks goes, and the printed distance of the first row of dimensions.
func (f Face) Around(ladder drawing.Element) (letters drawing.Element, edge geom.Length, first paper.Length) {
	var all []geom.Rect
	var words geom.Rect
	drawing.Walk([]drawing.Element{ladder}, false, func(e drawing.Element) {
		switch e := e.(type) {
		case drawing.Text:
			b := drawing.TextBox(e, f.Scale)
			words, all = words.Union(b), append(all, b)
		case drawing.Line:
			all = append(all, geom.Polygon{e.A, e.B}.Bounds().Inset(-f.MM(0.2)))
		}
	})
	letters = f.letters(all)
	top := max(words.Max.Y, drawing.Bounds([]drawing.Element{letters}, f.Scale).Max.Y+f.MM(0.6))
	edge = min(-f.MM(4.2), words.Min.Y-f.MM(0.9))
	first = max(paper.MM(10), f.Scale.OnPaper(top-f.Above())+paper.MM(2.4))
	return letters, edge, first
}

// Heights collects heights so that each is said once.
type Heights struct{ list []named }

type named struct {
	dimension.Height
	name string
}

// Add adds a height.
func (h *Heights) Add(word string, at geom.Length, accent bool) { h.Of(word, "", at, accent) }

// Of adds a height of a thing that has a name; the name is printed only when
// things of one word differ in height.
func (h *Heights) Of(word, name string, at geom.Length, accent bool) {
	h.list = append(h.list, named{dimension.Height{Word: word, At: at, Bold: accent, Accent: accent}, name})
}

// Merged returns the heights in the order in which they were added. The same
// height of the same word is said once; words that share a height share a line.
func (h *Heights) Merged() []dimension.Height {
	var out []dimension.Height
	for i, o := range h.list {
		several := false
		for _, p := range h.list {
			several = several || p.Word == o.Word && p.At != o.At
		}
		again := slices.ContainsFunc(h.list[:i], func(p named) bool { return p.Word == o.Word && p.At == o.At })
		if again {
			continue
		}
		if several && o.name != "" {
			o.Word += ", " + o.name
		}
		if j := slices.IndexFunc(out, func(p dimension.Height) bool { return p.At == o.At && p.Accent == o.Accent }); j >= 0 {
			out[j].Word += ", " + o.Word
			continue
		}
		out = append(out, o.Height)
	}
	return out
}

// Plain returns the heights as added, without words, each once.
func (h *Heights) Plain() []dimension.Height {
	var out []dimension.Height
	for _, o := range h.list {
		if !slices.ContainsFunc(out, func(p dimension.Height) bool { return p.At == o.At }) {
			o.Word = ""
			out = append(out, o.Height)
		}
	}
	return out
}
