package face

import (
	"cmp"
	"slices"

	"roomwright/geom"
)

// Occupy keeps words and labels off what surrounds the wall, and off its
// doors, windows and services.
func (f Face) Occupy(p *Places) {
	side, foot := f.MM(floorLeft), -f.MM(30)
	p.Hard(geom.RectOf(-side, foot, 0, f.Above()))
	p.Hard(geom.RectOf(f.Length, foot, f.Length+f.MM(floorRight), f.Above()))
	p.Hard(geom.RectOf(-side, foot, f.Length+f.MM(floorRight), f.MM(0.35)))
	p.Firm(geom.RectOf(-f.MM(neighbourWide), f.Top, f.Length+f.MM(neighbourWide), f.Above()+f.MM(0.2)))
	for _, d := range f.Wall.Doors {
		if box := f.HoleBox(d); !box.Empty() {
			p.Edges(box)
			if d.Window {
				p.Edges(box.Inset(f.MM(windowFrame)))
			}
		}
	}
	for _, s := range f.Wall.Services {
		if len(f.service(s)) > 0 {
			p.Firm(s.Box.Inset(-f.MM(0.6)))
		}
	}
}

// Edges keeps words and labels off the four sides of a box.
func (p *Places) Edges(b geom.Rect) {
	half := p.mm(0.5)
	for _, r := range []geom.Rect{
		geom.RectOf(b.Min.X, b.Min.Y, b.Min.X, b.Max.Y), geom.RectOf(b.Max.X, b.Min.Y, b.Max.X, b.Max.Y),
		geom.RectOf(b.Min.X, b.Min.Y, b.Max.X, b.Min.Y), geom.RectOf(b.Min.X, b.Max.Y, b.Max.X, b.Max.Y),
	} {
		p.Firm(r.Inset(-half))
	}
}

// Spread returns points inside box, the middle first, then farther and farther
// from it; higher places first where two are as far.
func Spread(box geom.Rect, dx, dy geom.Length, tall geom.Length) []geom.Point {
	c := box.Mid()
	dx, dy = max(dx, box.W()/60), max(dy, box.H()/40)
	var out []geom.Point
	nx, ny := box.W()/2/dx, box.H()/2/dy
	for i := -nx; i <= nx; i++ {
		for j := -ny; j <= ny; j++ {
			out = append(out, geom.Pt(c.X+i*dx, c.Y+j*dy))
		}
	}
	far := func(q geom.Point) geom.Length {
		return (q.X - c.X).Abs() + (q.Y-c.Y).Abs()/tall
	}
	slices.SortStableFunc(out, func(a, b geom.Point) int {
		return cmp.Or(cmp.Compare(far(a), far(b)), cmp.Compare(b.Y, a.Y), cmp.Compare(a.X, b.X))
	})
	return out
}
