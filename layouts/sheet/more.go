package sheet

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// more arranges a continuation sheet: sections at the head of columns, or in
// rows above them where they are wider, reading matter in the columns, the key
// square in its usual corner. The sections get the largest of their scales at
// which nothing is left over; when something always is, the largest.
func (c *composer) more(r rest) page {
	least := c.form.top - c.form.bottom - keySide - apart
	var best page
	asked := c.sectionScales()
	for i, shown := range c.shelves(r.sections, least) {
		if i > 0 && shown[0].scale.Ratio > asked[len(asked)-1].Ratio {
			break // smaller than anybody asked for: another sheet is better
		}
		p := c.moreWith(r, shown)
		if !p.rest.any() && p.rest.assumed == nil {
			return p
		}
		if i == 0 || best.rest.any() && !p.rest.any() {
			best = p
		}
		if i == 0 {
			if none := c.moreWith(rest{matter: r.matter}, nil); none.rest.any() {
				break // the reading matter alone fills more than a sheet
			}
		}
	}
	return best
}

// moreWith arranges a continuation sheet with some sections at their scale.
func (c *composer) moreWith(r rest, shown []view) page {
	p := page{}
	p.rest.sections, p.rest.assumed = r.sections[len(shown):], r.assumed
	id := names()
	var plates []drawing.Plate
	for _, v := range shown {
		plates = append(plates, v.plate)
		p.section, p.sections = v.scale, len(shown)
	}
	need := leastWide(append(r.matter[:len(r.matter):len(r.matter)], c.reading(plates...)...))
	columns, ok := c.heads(shown, need)
	if !ok {
		columns = c.columns(c.rows(shown, &p, id), need)
	}
	last := columns[len(columns)-1]
	last.takeFoot(c.spec.Key.block())
	flow := joined(append(r.matter[:len(r.matter):len(r.matter)], c.reading(plates...)...))
	flow = oneLegend(flow, legendOf(plates...), last)
	// A sheet that goes on sends back to the cautions, unless it begins with
	// their rest.
	if len(c.spec.Cautions) > 0 && !carried(flow) {
		flow = append([]matter{cautions{items: []string{reminder}}}, flow...)
	}
	p.rest.matter = settle(flow, columns, len(shown) == 0, c.loose)
	p.text = len(flow) > 0
	if p.rest.assumed != nil {
		before := heights(columns)
		if spread(p.rest.assumed, columns) == nil {
			p.rest.assumed = nil
		} else {
			undo(columns, before)
		}
	}
	for _, col := range columns {
		p.elements = append(p.elements, col.draw(c.spec.Metric, id)...)
	}
	return p
}

// leastWide returns the width below which a table of the matter would have to
// break a word.
func leastWide(flow []matter) geom.Length {
	need := geom.Length(0)
	for _, m := range flow {
		if t, ok := m.(table); ok {
			need = max(need, sum(t.floors(1)))
		}
	}
	return need
}

// heads puts sections at the heads of columns, one to each; it reports false
// when one is too wide for that or there are more sections than columns.
func (c *composer) heads(shown []view, need geom.Length) ([]*column, bool) {
	columns := c.columns(c.form.top, need)
	if len(shown) > len(columns) {
		return nil, false
	}
	for i, v := range shown {
		if !columns[i].takeViews([]view{v}, c.spec.Metric) {
			return nil, false
		}
	}
	return columns, true
}

// rows puts sections in rows across the sheet and returns where the columns
// under them begin.
func (c *composer) rows(shown []view, p *page, id func(string) string) geom.Length {
	f := c.form
	x, top, tall := f.left, f.top, geom.Length(0)
	for _, v := range shown {
		w := v.wide(c.spec.Metric)
		if x > f.left && x+w > f.right {
			x, top, tall = f.left, top-tall-apart, 0
		}
		p.elements = append(p.elements, v.put(x, top, min(f.right, x+w), false, c.spec.Metric, id))
		x += w + stripApart
		tall = max(tall, v.h())
	}
	if tall > 0 {
		top -= tall + apart
	}
	return top
}

// reminder stands for the cautions on a continuation sheet.
const reminder = "The cautions on the sheet that this one belongs to hold here too: read them first."

// settle puts matter into the first column that takes it whole, and returns
// what is left. A list is parted between columns where all its parts find room
// on the sheet, where it is longer than any column, and where it would be the
// first on a sheet without sections, which must not stay empty; with loose, it
// is parted wherever it does not fit whole.
func settle(flow []matter, columns []*column, bare, loose bool) []matter {
	var left []matter
	tall := geom.Length(0)
	for _, col := range columns {
		tall = max(tall, col.free())
	}
	for _, m := range flow {
		_, sign := m.(cautions)
		before := heights(columns)
		rest := spread(m, columns)
		if rest != nil && !sign && !bare && !loose && m.block(columns[0].box.W()).h <= tall {
			undo(columns, before)
			left = append(left, m)
			continue
		}
		if rest != nil {
			left = append(left, rest)
		}
		bare = bare && sign
	}
	return left
}

// spread puts m into the first column that takes it whole, else in parts from
// column to column, and returns what found no room, nil when all did.
func spread(m matter, columns []*column) matter {
	for _, col := range columns {
		if col.take(m) {
			return nil
		}
	}
	for _, col := range columns {
		head, rest := m.part(col.box.W(), col.free())
		if head == nil || !col.take(head) {
			continue
		}
		if m = rest; m == nil {
			break
		}
	}
	return m
}

// heights returns how many blocks each column has, and undo takes those away
// that came later.
func heights(columns []*column) []int {
	out := make([]int, len(columns))
	for i, col := range columns {
		out[i] = len(col.body)
	}
	return out
}

func undo(columns []*column, before []int) {
	for i, col := range columns {
		col.body = col.body[:before[i]]
	}
}

// oneLegend joins the samples of a sheet's sections with a legend left over
// from the sheet before, and puts it over the key square when it fits there.
func oneLegend(flow []matter, l legend, last *column) []matter {
	var out []matter
	for _, m := range flow {
		if old, ok := m.(legend); ok {
			l = legendOf(drawing.Plate{Legend: old.samples}, drawing.Plate{Legend: l.samples})
			continue
		}
		out = append(out, m)
	}
	if len(l.samples) == 0 || last.takeFoot(l.block(last.legendWide())) {
		return out
	}
	for i, m := range out {
		if _, ok := m.(cautions); !ok {
			return append(out[:i:i], append([]matter{l}, out[i:]...)...)
		}
	}
	return append(out, l)
}

// joined puts lists of the same kind together.
func joined(flow []matter) []matter {
	var out []matter
next:
	for _, m := range flow {
		n, ok := m.(notes)
		for i := range out {
			if old, same := out[i].(notes); ok && same && old.id == n.id && old.heading == n.heading {
				old.items = append(old.items[:len(old.items):len(old.items)], n.items...)
				out[i] = old
				continue next
			}
		}
		out = append(out, m)
	}
	return out
}

// carried reports whether the matter begins with cautions carried over.
func carried(flow []matter) bool {
	if len(flow) == 0 {
		return false
	}
	_, ok := flow[0].(cautions)
	return ok
}

// shelves returns as many sections as go into the given height, at each scale
// at which that is so, the largest first. It never returns nothing.
func (c *composer) shelves(list []Draw, h geom.Length) [][]view {
	if len(list) == 0 {
		return [][]view{nil}
	}
	var out [][]view
	for n := len(list); n > 0 && out == nil; n-- {
		for _, s := range smaller(c.sectionScales()) {
			views := make([]view, n)
			for i, d := range list[:n] {
				views[i] = viewAt(d, s)
			}
			if c.shelved(views) <= h {
				out = append(out, views)
			}
		}
	}
	if out != nil {
		return out
	}
	// Too large at any scale: better over the edge of its place than lost.
	s := c.sectionScales()
	v := viewAt(list[0], s[len(s)-1])
	c.say("the view %q does not fit %s at any scale", v.plate.Title, c.spec.Size.Name)
	return [][]view{{v}}
}

// smaller returns scales with some more, each half as large as the one before.
func smaller(list []paper.Scale) []paper.Scale {
	out := list[:len(list):len(list)]
	last := int64(1)
	for _, s := range list {
		last = max(last, s.Ratio)
	}
	for range 4 {
		last *= 2
		s := paper.Scale{Ratio: last}
		s.Name = ratioOf(s)
		out = append(out, s)
	}
	return out
}

// shelved returns the height of views set in rows; more than any sheet when
// one is too wide.
func (c *composer) shelved(views []view) geom.Length {
	x, total, tall := geom.Length(0), geom.Length(0), geom.Length(0)
	for _, v := range views {
		w := v.wide(c.spec.Metric)
		if w > c.form.wide() {
			return geom.Metre * 10
		}
		if x > 0 && x+w > c.form.wide() {
			total, x, tall = total+tall+apart, 0, 0
		}
		x += w + stripApart
		tall = max(tall, v.h())
	}
	return total + tall
}

// columns parts the sheet below top into columns of text, none narrower than
// need where the sheet allows.
func (c *composer) columns(top, need geom.Length) []*column {
	f := c.form
	gap := underApart
	n := max((f.wide()+gap)/(mm(80)+gap), 1)
	if n > 2 {
		n, gap = max((f.wide()+fieldApart)/(mm(118)+fieldApart), 1), fieldApart
	}
	w := (f.wide() - gap*(n-1)) / n
	for ; n > 1 && w < need; w = (f.wide() - gap*(n-1)) / n {
		n--
	}
	var out []*column
	for i := geom.Length(0); i < n; i++ {
		x := f.left + (w+gap)*i
		out = append(out, &column{box: geom.RectOf(x, f.bottom, x+w, top)})
	}
	return out
}
