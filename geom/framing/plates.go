package framing

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/piece"
)

// plates puts in the plates. The bottom plate is not there across a door, and
// is cut out between the jacks of a doorway.
func (b *builder) plates() {
	type gap struct {
		geom.Span
		opening int
	}
	var gaps []gap
	for i := range b.w.Doors {
		if d := &b.w.Doors[i]; !d.Window && d.known() && d.Rough.Min.Y < b.w.PlateTop {
			gaps = append(gaps, gap{b.between(d.Rough.X()), -1})
		}
	}
	for i := range b.w.Openings {
		if o := &b.w.Openings[i]; o.Rough.Min.Y < b.w.PlateTop {
			gaps = append(gaps, gap{o.Rough.X(), o.Index})
		}
	}
	slices.SortFunc(gaps, func(x, y gap) int { return cmp.Compare(x.From, y.From) })
	for y := geom.Length(0); y < b.w.PlateTop; y += b.t {
		box := func(from, to geom.Length) geom.Rect { return geom.RectOf(from, y, to, y+b.t) }
		from := geom.Length(0)
		for _, g := range gaps {
			b.put(b.lie(BottomPlate, "bottom plate", b.state(), box(from, g.From)))
			if g.opening >= 0 && !b.fresh() {
				m := b.lie(BottomPlate, "bottom plate, cut out", piece.Removed, box(g.From, g.To))
				m.Opening = g.opening
				m.From = b.r.Openings[g.opening].At
				b.put(m)
			}
			from = max(from, g.To)
		}
		b.put(b.lie(BottomPlate, "bottom plate", b.state(), box(from, b.w.Length)))
	}
	for y := b.w.PlateLow; y < b.w.Top; y += b.t {
		b.put(b.lie(TopPlate, "top plate", b.state(), geom.RectOf(0, y, b.w.Length, y+b.t)))
	}
}
