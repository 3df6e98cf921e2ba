package sheet

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// arrangement is a way to part a sheet between the view and what is read.
type arrangement struct {
	field  geom.Rect // for the main view with its title
	column geom.Rect // the reading column at the right; empty when it is below
	under  bool      // the legend stands under the view, where the column has better use for its room
}

const (
	columnWide   = 1228 * geom.Length(tenth) // reading column of the large sheets
	columnClose  = 1100 * geom.Length(tenth) // where that lets the view be larger
	columnMiddle = 860 * geom.Length(tenth)  // of the small ones
	columnNarrow = 620 * geom.Length(tenth)
	fieldApart   = 150 * geom.Length(tenth) // between field and column
	fieldClose   = 100 * geom.Length(tenth) // on the small sheets
	underApart   = 120 * geom.Length(tenth) // between two columns below a view
)

// arrangements returns the ways to try on this paper, the better ones first.
func (c *composer) arrangements() []arrangement {
	f := c.form
	side := func(w, apart geom.Length) arrangement {
		return arrangement{
			field:  geom.RectOf(f.left, f.bottom-mm(2), f.right-w-apart, f.top),
			column: geom.RectOf(f.right-w, f.bottom, f.right, f.top),
		}
	}
	// Below: at least the key square and the cautions stand under the view.
	under := keySide
	if len(c.spec.Cautions) > 0 {
		w := f.wide() - keySide - underApart
		under = max(under, cautions{items: c.spec.Cautions}.block(c.under(w)[0].Len()).h)
	}
	below := arrangement{field: geom.RectOf(f.left, f.bottom+under+apart, f.right, f.top)}
	tight := arrangement{field: geom.RectOf(f.left, f.bottom+keySide+apart, f.right, f.top)} // cautions go on
	var out []arrangement
	switch {
	case f.kind == wideBand:
		out = []arrangement{side(columnWide, fieldApart), side(columnClose, fieldClose)}
	case f.size.H > f.size.W:
		out = []arrangement{below, tight, side(columnMiddle, fieldClose), side(columnNarrow, fieldClose)}
	default:
		out = []arrangement{side(columnMiddle, fieldClose), side(columnNarrow, fieldClose), below, tight}
	}
	for _, a := range out {
		if !a.column.Empty() {
			a.under = true
			out = append(out, a)
		}
	}
	return out
}

// under parts a width between one column or two.
func (c *composer) under(w geom.Length) []geom.Span {
	left := c.form.left
	if w < mm(180) {
		return []geom.Span{{From: left, To: left + w}}
	}
	half := (w - underApart) / 2
	return []geom.Span{{From: left, To: left + half}, {From: left + half + underApart, To: left + w}}
}

// home is a place that takes reading matter.
type home interface{ take(matter) bool }

// pack puts everything round the main view; sections that find no room go on
// to the next sheet with all that belongs to them.
func (c *composer) pack(a arrangement, v view) page {
	if p, ok := c.packWith(a, v, c.spec.Sections); ok {
		return p
	}
	p, _ := c.packWith(a, v, nil)
	p.rest.sections = c.spec.Sections
	return p
}

// packWith puts everything round the main view and says what is left over: what
// matters most finds its place first: the key square, cautions, the legend,
// warnings, tables, notes; sections take the largest scale for which there is
// room then, and the values assumed come last.
func (c *composer) packWith(a arrangement, v view, shown []Draw) (page, bool) {
	f := c.form
	p := page{main: &v}
	lower := geom.RectOf(a.field.Min.X, f.bottom, a.field.Max.X, f.top-v.h()-apart)
	var columns []*column
	var side *column // holds the key
	var row *strip
	if a.column.Empty() {
		for _, x := range c.under(f.wide() - keySide - underApart) {
			columns = append(columns, &column{box: geom.RectOf(x.From, lower.Min.Y, x.To, lower.Max.Y)})
		}
		side = &column{box: geom.RectOf(f.right-keySide, lower.Min.Y, f.right, lower.Max.Y)}
		columns = append(columns, side)
	} else {
		side = &column{box: a.column}
		columns = []*column{side}
		row = newStrip(lower)
	}
	homes := func(rowFirst bool) []home {
		var out []home
		for _, col := range columns {
			out = append(out, col)
		}
		if row != nil && rowFirst {
			return append([]home{row}, out...)
		}
		if row != nil {
			return append(out, row)
		}
		return out
	}
	settle := func(m matter, rowFirst bool) {
		if m == nil {
			return
		}
		for _, h := range homes(rowFirst) {
			if h.take(m) {
				p.text = true
				return
			}
		}
		p.rest.matter = append(p.rest.matter, m)
	}

	side.takeFoot(c.spec.Key.block())
	if len(c.spec.Cautions) > 0 {
		c.settleCautions(columns, row, &p)
	}
	sections := c.plates(shown)
	all := legendOf(append([]drawing.Plate{v.plate}, sections...)...)
	if len(all.samples) > 0 && !(a.under && row != nil && row.take(all)) && !side.takeFoot(all.block(side.legendWide())) {
		settle(all, true)
	}
	settle(c.warned(), false)
	reading := c.reading(append([]drawing.Plate{v.plate}, sections...)...)
	for _, m := range reading {
		if _, list := m.(table); list {
			settle(m, true)
		} else {
			settle(m, row != nil && len(row.blocks) > 0)
		}
	}
	if len(shown) > 0 {
		s, ok := c.settleSections(columns, shown)
		if !ok {
			return page{}, false
		}
		p.section, p.sections = s, len(shown)
	}
	settle(c.remarks(), false)
	if p.rest.assumed = c.assumed(); p.rest.assumed != nil {
		for _, h := range homes(false) {
			if h.take(p.rest.assumed) {
				p.rest.assumed, p.text = nil, true
				break
			}
		}
	}

	id := names()
	p.elements = append(p.elements, v.put(a.field.Min.X, f.top, a.field.Max.X, false, c.spec.Metric, id))
	if row != nil {
		p.elements = append(p.elements, row.draw(id)...)
	}
	for _, col := range columns {
		p.elements = append(p.elements, col.draw(c.spec.Metric, id)...)
	}
	return p, true
}

// settleCautions puts the cautions where they all fit; where they fit nowhere
// they go on from place to place and then to the next sheet.
func (c *composer) settleCautions(columns []*column, row *strip, p *page) {
	all := cautions{items: c.spec.Cautions}
	p.text = true
	if row != nil {
		if h := all.block(columns[0].box.W()).h; h > columns[0].free() && row.take(all) {
			return
		}
	}
	rest := spread(all, columns)
	if rest == nil || row != nil && row.take(rest) {
		return
	}
	p.parted = true
	p.rest.matter = append(p.rest.matter, rest)
}

// plates returns the sections' plates, for their legends and notes.
func (c *composer) plates(list []Draw) []drawing.Plate {
	var out []drawing.Plate
	scales := c.sectionScales()
	for _, d := range list {
		out = append(out, d(scales[len(scales)-1]))
	}
	return out
}

// sectionScales returns the candidates for sections, never none.
func (c *composer) sectionScales() []paper.Scale {
	if len(c.spec.SectionScales) > 0 {
		return c.spec.SectionScales
	}
	return []paper.Scale{paper.Full()}
}

// settleSections puts all sections at the head of one column, at the largest
// scale at which they fit.
func (c *composer) settleSections(columns []*column, list []Draw) (paper.Scale, bool) {
	for _, s := range c.sectionScales() {
		views := make([]view, len(list))
		for i, d := range list {
			views[i] = viewAt(d, s)
		}
		for _, col := range columns {
			if col.takeViews(views, c.spec.Metric) {
				return s, true
			}
		}
	}
	return paper.Scale{}, false
}
