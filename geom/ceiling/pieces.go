package ceiling

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
)

// pieces lists every tee, angle and panel.
func (b *builder) pieces() {
	tee := func(name string) piece.Profile {
		return piece.Profile{Name: name, Thick: b.teeFace, Wide: b.tee}
	}
	add := func(p piece.Piece, at finding.Place) {
		p.Trade, p.State, p.On, p.From = "ceiling", piece.New, "ceiling", at
		b.out.Pieces = append(b.out.Pieces, p)
	}
	run := b.chosen.run
	for i := range b.out.Angles {
		a := &b.out.Angles[i]
		add(piece.Piece{
			Mark: a.Mark, Name: "wall angle", Profile: piece.Profile{Name: "wall angle", Thick: b.leg, Wide: b.leg},
			Length: a.Length, Box: strip(a.From, a.To, 0), Ends: "square, lapped in the corners",
		}, b.want.Angle.At)
	}
	for i := range b.out.Mains {
		m := &b.out.Mains[i]
		from, _, at := b.along(m)
		for k := range m.Sticks {
			s := &m.Sticks[k]
			ends := "square, cut both ends"
			switch {
			case len(m.Sticks) > 1 && k == 0:
				ends = "square, factory end at the splice"
			case len(m.Sticks) > 1 && k == len(m.Sticks)-1:
				ends = "square, factory end at the splice"
			case len(m.Sticks) > 1:
				ends = "factory ends"
			}
			add(piece.Piece{
				Mark: s.Mark, Name: "main tee", Profile: tee("main tee"), Length: s.Length, Ends: ends,
				Box: strip(flip(run.at(from+s.From, at)), flip(run.at(from+s.To, at)), b.teeFace),
			}, b.want.Mains.At)
		}
	}
	for i := range b.out.Crosses {
		c := &b.out.Crosses[i]
		ends := "square, one factory end"
		switch {
		case c.Whole:
			ends = "factory ends"
		case c.Cuts == 2:
			ends = "square, cut both ends"
		}
		add(piece.Piece{
			Mark: c.Mark, Name: "cross tee", Profile: tee("cross tee " + b.say(c.Stock)), Length: c.Length, Ends: ends,
			Box: strip(c.From, c.To, b.teeFace),
		}, b.want.Grid.At)
	}
	for i := range b.out.Cells {
		c := &b.out.Cells[i]
		if c.Light >= 0 {
			continue
		}
		name, ends := "panel", "square"
		if c.Kind != Whole {
			name = "border panel"
		}
		if c.Skew {
			ends = "out of square"
		}
		box := c.Shape.Bounds()
		add(piece.Piece{
			Mark: c.Mark, Name: name, Profile: piece.Profile{Name: "lay-in panel", Thick: b.thick, Wide: c.CutW},
			Length: c.CutH, Ends: ends, Box: box,
		}, b.want.Panel.Thick.At)
	}
	for i := range b.out.Lights {
		l := &b.out.Lights[i]
		w, h := b.lightSize(l)
		add(piece.Piece{
			Mark: l.Mark, Name: "light panel", Profile: piece.Profile{Name: "light panel " + l.Name, Thick: l.Depth, Wide: w},
			Length: h, Ends: "as bought", Box: l.Box,
		}, b.room.Lights[l.Index].At)
	}
}

// lightSize returns the outside size of a light: its modules less what a panel
// is less than its module.
func (b *builder) lightSize(l *Light) (w, h geom.Length) {
	less := b.short - b.panel[0]
	return l.Box.W() - less, l.Box.H() - less
}

// strip returns the rectangle along the line from p to q, made wide to both sides.
func strip(p, q geom.Point, wide geom.Length) geom.Rect {
	r := geom.RectOf(min(p.X, q.X), min(p.Y, q.Y), max(p.X, q.X), max(p.Y, q.Y))
	if r.W() < r.H() {
		r.Min.X, r.Max.X = r.Min.X-wide/2, r.Max.X+wide/2
		return r
	}
	r.Min.Y, r.Max.Y = r.Min.Y-wide/2, r.Max.Y+wide/2
	return r
}
