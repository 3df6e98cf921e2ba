package sheet

import (
	"sort"
	"strconv"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// block is something to be placed: its elements hang down from the origin.
type block struct {
	id, title string
	elements  []drawing.Element
	w, h      geom.Length
}

// at returns the block as a group with its top left corner at x, top.
func (b block) at(x, top geom.Length, id func(string) string) drawing.Group {
	return drawing.Group{ID: id(b.id), Title: b.title, Elements: drawing.Place(b.elements, paper.Full(), geom.Pt(x, top))}
}

// matter is something to read that can be set in a column of any width and, at
// need, be parted between two.
type matter interface {
	block(w geom.Length) block
	// part returns the part that fits h, nil when none does, and the rest, nil
	// when there is none.
	part(w, h geom.Length) (head, rest matter)
}

// The spacing of reading matter.
const (
	pitch       = 43 * geom.Length(tenth) // from line to line
	belowWords  = 9 * geom.Length(tenth)  // from the last baseline to the end of a block
	paragraph   = 14 * geom.Length(tenth) // more between two cautions
	headingDown = 19 * geom.Length(tenth) // from a heading's baseline to its rule
	firstRow    = 66 * geom.Length(tenth) // from a heading's baseline to the first row's
)

// heading returns a heading with its rule, and the baseline of the first row.
func heading(s string, w geom.Length) ([]drawing.Element, geom.Length) {
	base := -geom.Length(capHeading)
	lines, cap := fit(s, true, w, 1, capHeading, capWords)
	return []drawing.Element{
		words(0, base, lines[0], cap, true),
		rule(drawing.Words, 0, w, base-headingDown, drawing.P50),
	}, base - firstRow
}

// notes is a numbered list under a heading.
type notes struct {
	id, heading string
	items       []string
	first       int // number of the first, less one
}

func (n notes) block(w geom.Length) block {
	elements, y := heading(n.heading, w)
	indent := max(50*geom.Length(tenth), width(strconv.Itoa(n.first+len(n.items)), capWords, true)+mm(1.6))
	for i, item := range n.items {
		elements = append(elements, words(0, y, strconv.Itoa(n.first+i+1), capWords, true))
		for _, line := range wrap(item, capWords, false, min(w, widest)-indent) {
			elements = append(elements, words(indent, y, line, capWords, false))
			y -= pitch
		}
	}
	return block{id: n.id, title: n.heading, elements: elements, w: w, h: -(y + pitch) + belowWords}
}

func (n notes) part(w, h geom.Length) (matter, matter) {
	k := partAt(len(n.items), h, func(k int) geom.Length {
		return notes{items: n.items[:k]}.block(w).h
	})
	if k == 1 && len(n.items) > 2 && h < mm(60) {
		k = 0 // one item alone under a heading
	}
	switch k {
	case 0:
		return nil, n
	case len(n.items):
		return n, nil
	}
	head, rest := n, n
	head.items, rest.items = n.items[:k], n.items[k:]
	rest.first = n.first + k
	return head, rest
}

// partAt returns how many of n items fit h; height grows with the items.
func partAt(n int, h geom.Length, height func(int) geom.Length) int {
	return sort.Search(n, func(k int) bool { return height(k+1) > h })
}

// cautions is what can hurt somebody, beside a red bar.
type cautions struct {
	items  []string
	more   bool // carried over from another place
	follow bool // the rest stands in another place
}

func (c cautions) block(w geom.Length) block {
	const indent = 70 * geom.Length(tenth)
	word := "Caution"
	if c.more {
		word = "Caution, continued"
	}
	y := -geom.Length(capKey)
	elements := []drawing.Element{words(indent, y, word, capKey, true)}
	y -= 58 * geom.Length(tenth)
	for i, item := range c.items {
		if i > 0 {
			y -= paragraph
		}
		for _, line := range wrap(item, capWords, false, min(w-indent, widest)) {
			elements = append(elements, words(indent, y, line, capWords, false))
			y -= pitch
		}
	}
	if c.follow {
		y -= paragraph
		for _, line := range wrap("More cautions follow. Read them too.", capWords, true, w-indent) {
			elements = append(elements, words(indent, y, line, capWords, true))
			y -= pitch
		}
	}
	h := -(y + pitch) + belowWords
	bar := drawing.Area{
		Layer: drawing.Words, Fill: drawing.Accent,
		Outline: geom.RectOf(0, -h, mm(3), 0).Polygon(),
	}
	return block{id: "caution", title: "Caution", elements: append([]drawing.Element{bar}, elements...), w: w, h: h}
}

func (c cautions) part(w, h geom.Length) (matter, matter) {
	k := partAt(len(c.items), h, func(k int) geom.Length {
		return cautions{items: c.items[:k], follow: k < len(c.items)}.block(w).h
	})
	switch k {
	case 0:
		return nil, c
	case len(c.items):
		return c, nil
	}
	return cautions{items: c.items[:k], more: c.more, follow: true}, cautions{items: c.items[k:], more: true}
}

// legend is the list of what the lines and marks of a sheet mean.
type legend struct{ samples []drawing.Sample }

const (
	swatchWide  = 170 * geom.Length(tenth) // from the swatch's left edge to the words
	legendRow   = 575 * geom.Length(tenth) / 10
	legendTwice = 1120 * geom.Length(tenth) // from this width on a legend has two columns
	legendApart = 60 * geom.Length(tenth)
)

// row is one sample of a legend with its words broken.
type row struct {
	sample drawing.Sample
	words  geom.Length // where its words begin
	lines  []string
	h      geom.Length
}

func (l legend) block(w geom.Length) block {
	n := 1
	if w >= legendTwice && len(l.samples) > 3 {
		n = 2
	}
	each := (w - legendApart*geom.Length(n-1)) / geom.Length(n)
	rows, total := make([]row, len(l.samples)), geom.Length(0)
	for i, s := range l.samples {
		box := drawing.Bounds(s.Swatch, paper.Full())
		at := max(swatchWide, box.Max.X+mm(2))
		lines := wrap(clean(s.Words), capWords, false, max(each-at, mm(20)))
		rows[i] = row{s, at, lines, max(legendRow, box.H()+mm(1.2), pitch*geom.Length(len(lines))+mm(1.4))}
		total += rows[i].h
	}
	elements, first := heading("Legend", w)
	first += mm(2.3) // the top of the first row
	low, x, y := first, geom.Length(0), first
	for i, r := range rows {
		// The second column begins at the row that passes the middle.
		if n == 2 && x == 0 && i > 0 && 2*(first-y) >= total {
			x, y = each+legendApart, first
		}
		mid := y - r.h/2
		elements = append(elements, drawing.Place(r.sample.Swatch, paper.Full(), geom.Pt(x, mid))...)
		base := mid - geom.Length(capWords)/2 + pitch*geom.Length(len(r.lines)-1)/2
		for _, line := range r.lines {
			elements = append(elements, words(x+r.words, base, line, capWords, false))
			base -= pitch
		}
		y -= r.h
		low = min(low, y)
	}
	return block{id: "legend", title: "Legend", elements: elements, w: w, h: -low - mm(1)}
}

func (l legend) part(w, h geom.Length) (matter, matter) {
	k := partAt(len(l.samples), h, func(k int) geom.Length {
		return legend{l.samples[:k]}.block(w).h
	})
	switch k {
	case 0:
		return nil, l
	case len(l.samples):
		return l, nil
	}
	return legend{l.samples[:k]}, legend{l.samples[k:]}
}
