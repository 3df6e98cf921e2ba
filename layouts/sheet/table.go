package sheet

import (
	"slices"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// table is a list of rows under a heading.
type table struct {
	drawing.Table
	id    string
	more  bool
	again bool          // a further group of rows beside the first: no heading of its own
	cols  []geom.Length // the widths of all groups, nil for a table in one
}

const (
	rowPitch  = 455 * geom.Length(tenth) / 10
	columnGap = 50 * geom.Length(tenth)
)

// cellCap returns the cap height of a column: figures to be cut by are larger.
func cellCap(c drawing.Column) paper.Length {
	if c.Right && c.Bold {
		return capHeading
	}
	return capWords
}

// natural returns the widths of the columns when no cell is broken.
func (t table) natural() []geom.Length {
	w := make([]geom.Length, len(t.Columns))
	for i, c := range t.Columns {
		w[i] = width(c.Heading, capWords, false)
		for _, row := range t.Rows {
			if i < len(row) {
				w[i] = max(w[i], width(clean(row[i]), cellCap(c), c.Bold))
			}
		}
	}
	return w
}

// heads reports whether the columns have headings that need a line of their
// own: the first column's name, or names that would run into the heading.
func (t table) heads(w []geom.Length) bool {
	if len(t.Columns) > 0 && t.Columns[0].Heading != "" {
		return true
	}
	x := geom.Length(0)
	free := width(t.name(), capHeading, true) + mm(4)
	for i, c := range t.Columns {
		left := x
		if c.Right {
			left = x + w[i] - width(c.Heading, capWords, false)
		}
		if c.Heading != "" && left < free {
			return true
		}
		x += w[i] + columnGap
	}
	return false
}

func (t table) name() string {
	if t.more {
		return clean(t.Heading) + ", continued"
	}
	return clean(t.Heading)
}

// sum returns the width of the whole table.
func sum(w []geom.Length) geom.Length {
	total := geom.Length(0)
	for i, v := range w {
		if i > 0 {
			total += columnGap
		}
		total += v
	}
	return total
}

// wide returns the width at which no cell of t is broken.
func (t table) wide() geom.Length {
	return max(sum(t.natural()), width(t.name(), capHeading, true))
}

// columns returns the widths of the columns within w: the widest columns of
// words give way first.
func (t table) columns(w geom.Length) []geom.Length {
	if t.cols != nil {
		return slices.Clone(t.cols)
	}
	cols := t.natural()
	for stage := range stages {
		floors := t.floors(stage)
		for over := sum(cols) - w; over > 0; over = sum(cols) - w {
			i, give := giving(cols, floors)
			if i < 0 {
				break
			}
			cols[i] -= min(over, give)
		}
	}
	return cols
}

// floors returns the widths below which columns are not narrowed. Figures are
// cut to, so a column of them never gives way; words give way to 16 mm, then to
// their longest word, and at the very last are broken.
func (t table) floors(stage int) []geom.Length {
	natural := t.natural()
	out := make([]geom.Length, len(natural))
	for i, c := range t.Columns {
		switch {
		case c.Right:
			out[i] = natural[i]
		case stage == 0:
			out[i] = max(mm(16), t.longest(i))
		case stage == 1:
			out[i] = max(mm(8), t.longest(i))
		default:
			out[i] = mm(8)
		}
		out[i] = min(out[i], natural[i])
	}
	return out
}

// stages is how many times floors are lowered.
const stages = 3

// longest returns the width of the longest word of a column, its heading
// included.
func (t table) longest(i int) geom.Length {
	c := t.Columns[i]
	out := geom.Length(0)
	for _, word := range lettering.Words(clean(c.Heading)) {
		out = max(out, width(word, capWords, false))
	}
	for _, row := range t.Rows {
		if i < len(row) {
			for _, word := range lettering.Words(clean(row[i])) {
				out = max(out, width(word, cellCap(c), c.Bold))
			}
		}
	}
	return out
}

// giving returns the widest column above its floor, and by how much it can
// give way at once; -1 when none can.
func giving(cols, floors []geom.Length) (int, geom.Length) {
	first := -1
	for i := range cols {
		if cols[i] > floors[i] && (first < 0 || cols[i] > cols[first]) {
			first = i
		}
	}
	if first < 0 {
		return -1, 0
	}
	second := floors[first]
	for i := range cols {
		if i != first && cols[i] > floors[i] {
			second = max(second, cols[i])
		}
	}
	return first, max(min(max(cols[first]-second, mm(1)), cols[first]-floors[first]), 1)
}

func (t table) block(w geom.Length) block {
	cols := t.columns(w)
	// What is left over goes between the columns, as far as it helps the eye.
	spare, gap := w-sum(cols), columnGap
	if n := geom.Length(len(cols) - 1); n > 0 && spare > 0 {
		gap += min(spare/n, mm(7))
	}
	at := make([]geom.Length, len(cols))
	x := geom.Length(0)
	for i := range cols {
		at[i] = x
		x += cols[i] + gap
	}
	full := max(x-gap, min(w, width(t.name(), capHeading, true)))
	elements, y := heading(t.name(), full)
	if t.again {
		elements = elements[1:]
	}
	put := func(i int, y geom.Length, s string, cap paper.Length, bold bool) {
		if s == "" {
			return
		}
		text := words(at[i], y, s, cap, bold)
		if t.Columns[i].Right {
			text.At.X, text.Anchor = at[i]+cols[i], drawing.End
		}
		elements = append(elements, text)
	}
	base := -geom.Length(capHeading)
	own := t.heads(cols)
	if own {
		base = y
	}
	tall := 1
	for i, c := range t.Columns {
		lines := wrap(clean(c.Heading), capWords, false, max(cols[i], mm(8)))
		for k, line := range lines {
			put(i, base-pitch*geom.Length(k), line, capWords, false)
		}
		tall = max(tall, len(lines))
	}
	if own {
		y = base - pitch*geom.Length(tall-1) - rowPitch - mm(0.6)
	}
	for _, row := range t.Rows {
		lines := 1
		for i, c := range t.Columns {
			if i >= len(row) {
				continue
			}
			cap := cellCap(c)
			cell := wrap(clean(row[i]), cap, c.Bold, max(cols[i], mm(8)))
			for k, line := range cell {
				put(i, y-pitch*geom.Length(k), line, cap, c.Bold)
			}
			lines = max(lines, len(cell))
		}
		y -= pitch*geom.Length(lines-1) + rowPitch
	}
	return block{id: t.id, title: t.name(), elements: elements, w: full, h: -(y + rowPitch) + belowWords}
}

// foldApart is the white between two groups of rows.
const foldApart = 80 * geom.Length(tenth)

// folded returns the table with its rows in groups side by side under one
// heading.
func (t table) folded(groups int) block {
	t.cols = t.natural()
	each := (len(t.Rows) + groups - 1) / groups
	w := sum(t.cols) + mm(5)*geom.Length(len(t.Columns)-1)
	var out block
	for i := 0; i*each < len(t.Rows); i++ {
		some := t
		some.Rows, some.again = t.Rows[i*each:min((i+1)*each, len(t.Rows))], i > 0
		b := some.block(w)
		if i == 0 {
			out = b
			continue
		}
		out.elements = append(out.elements, drawing.Place(b.elements, paper.Full(), geom.Pt(out.w+foldApart, 0))...)
		out.w, out.h = out.w+foldApart+b.w, max(out.h, b.h)
	}
	return out
}

func (t table) part(w, h geom.Length) (matter, matter) {
	k := partAt(len(t.Rows), h, func(k int) geom.Length {
		some := t
		some.Rows = t.Rows[:k]
		return some.block(w).h
	})
	if k == len(t.Rows) {
		return t, nil
	}
	// One row alone under a heading is not worth parting a table for.
	if k == 0 || (k == 1 && len(t.Rows) > 1) {
		return nil, t
	}
	head, rest := t, t
	head.Rows, rest.Rows = t.Rows[:k], t.Rows[k:]
	rest.more = true
	return head, rest
}
