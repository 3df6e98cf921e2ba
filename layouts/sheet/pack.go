package sheet

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
)

// apart is the white between two blocks of a column.
const apart = 100 * geom.Length(tenth)

// column is a place in which blocks stand under each other.
type column struct {
	box  geom.Rect
	head []view // sections, above everything else
	body []block
	foot []block // one above the other, or side by side, at the lower end
}

// used returns the height that is taken, with the white after it.
func (c *column) used() geom.Length {
	h := geom.Length(0)
	for _, v := range c.head {
		h += v.h() + apart
	}
	for _, b := range c.body {
		h += b.h + apart
	}
	if f := c.footHeight(); f > 0 {
		h += f + apart
	}
	return h
}

// free returns the height that one more block may have.
func (c *column) free() geom.Length { return c.box.H() - c.used() }

// take puts m into the column when it fits whole.
func (c *column) take(m matter) bool {
	b := m.block(c.box.W())
	if b.h > c.free() || b.w > c.box.W() {
		return false
	}
	c.body = append(c.body, b)
	return true
}

// takeViews puts views at the head of the column when all of them fit.
func (c *column) takeViews(views []view, metric bool) bool {
	h := geom.Length(0)
	for _, v := range views {
		h += v.h() + apart
		if v.wide(metric) > c.box.W() {
			return false
		}
	}
	if h-apart > c.free() {
		return false
	}
	c.head = append(c.head, views...)
	return true
}

// footBeside is the white between legend and key side by side.
const footBeside = 80 * geom.Length(tenth)

// beside reports whether the legend has room to the left of the key.
func (c *column) beside() bool { return c.box.W() >= keySide+footBeside+mm(50) }

// legendWide returns the width of a legend in the foot.
func (c *column) legendWide() geom.Length {
	if c.beside() {
		return c.box.W() - keySide - footBeside
	}
	return c.box.W()
}

func (c *column) footHeight() geom.Length {
	h := geom.Length(0)
	for i, b := range c.foot {
		switch {
		case c.beside():
			h = max(h, b.h)
		case i > 0:
			h += apart*7/10 + b.h
		default:
			h += b.h
		}
	}
	return h
}

// takeFoot puts the key or the legend at the lower end when it fits.
func (c *column) takeFoot(b block) bool {
	before := c.foot
	c.foot = append(c.foot[:len(c.foot):len(c.foot)], b)
	if c.used()-apart > c.box.H() || b.w > c.box.W() {
		c.foot = before
		return false
	}
	return true
}

// draw returns everything in place, from the top of the column down.
func (c *column) draw(metric bool, id func(string) string) []drawing.Element {
	var out []drawing.Element
	top := c.box.Max.Y
	for _, v := range c.head {
		out = append(out, v.put(c.box.Min.X, top, c.box.Max.X, true, metric, id))
		top -= v.h() + apart
	}
	for _, b := range c.body {
		out = append(out, b.at(c.box.Min.X, top, id))
		top -= b.h + apart
	}
	y := c.box.Min.Y
	for _, b := range c.foot {
		x := c.box.Min.X
		if b.id == "key" {
			x = c.box.Max.X - b.w
		}
		out = append(out, b.at(x, y+b.h, id))
		if !c.beside() {
			y += b.h + apart*7/10
		}
	}
	return out
}

// strip is the place under the main view, where blocks stand side by side.
type strip struct {
	box    geom.Rect
	blocks []block
	at     []geom.Length
	x      geom.Length
}

// stripApart is the white between two blocks of a strip.
const stripApart = 150 * geom.Length(tenth)

// newStrip returns the strip in box.
func newStrip(box geom.Rect) *strip { return &strip{box: box, x: box.Min.X} }

// take puts m into the strip when it fits whole.
func (s *strip) take(m matter) bool {
	left := s.box.Max.X - s.x
	if left <= 0 || s.box.H() <= 0 {
		return false
	}
	w := min(left, widest)
	switch m := m.(type) {
	case table:
		if w = m.wide(); w > left {
			return false
		}
		// A little more than needed, so that columns stand apart.
		w = min(w+mm(5)*geom.Length(len(m.Columns)), left)
	case legend:
		if w = min(left, mm(124)); w < legendTwice {
			w = min(left, mm(64))
		}
	default:
		if left < mm(74) {
			return false
		}
	}
	b := m.block(w)
	if t, ok := m.(table); ok && b.h > s.box.H() && len(t.Rows) >= 4 {
		b = t.folded(2)
	}
	if b.h > s.box.H() || b.w > left {
		return false
	}
	s.blocks, s.at = append(s.blocks, b), append(s.at, s.x)
	s.x += b.w + stripApart
	return true
}

// draw returns the blocks in place: they share the line of their headings, and
// the tallest stands on the lower end.
func (s *strip) draw(id func(string) string) []drawing.Element {
	tall := geom.Length(0)
	for _, b := range s.blocks {
		tall = max(tall, b.h)
	}
	var out []drawing.Element
	for i, b := range s.blocks {
		out = append(out, b.at(s.at[i], s.box.Min.Y+tall, id))
	}
	return out
}
