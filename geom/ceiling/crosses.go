package ceiling

import (
	"cmp"
	"fmt"
	"slices"

	"roomwright/geom"
	"roomwright/geom/piece"
)

// crosses lays the cross tees: long ones from main to main and from the mains
// to the walls, and, where mains are two modules apart, short ones along the
// lines between the mains.
func (b *builder) crosses() {
	g := &b.chosen.grid
	run, square := g.run, g.square()
	lines, mains := g.lay[run].lines, g.lay[square].lines
	for i, u := range lines {
		from, to := b.ends(square, u)
		stops := []int{-1} // lines of the mains; -1 and the last are walls
		stops = append(stops, g.mains()...)
		stops = append(stops, len(mains))
		for k := 1; k < len(stops); k++ {
			low, high := from, to
			walls := 0
			if stops[k-1] >= 0 {
				low = mains[stops[k-1]]
			} else {
				walls++
			}
			if stops[k] < len(mains) {
				high = mains[stops[k]]
			} else {
				walls++
			}
			if b.lit(stops[k-1], stops[k], i) {
				continue
			}
			b.cross(square.at(low, u), square.at(high, u), high-low, walls, b.spacing)
		}
	}
	for j, v := range mains {
		if g.main(j) {
			continue
		}
		from, to := b.ends(run, v)
		for k := 0; k <= len(lines); k++ {
			low, high, walls := from, to, 0
			if k > 0 {
				low = lines[k-1]
			} else {
				walls++
			}
			if k < len(lines) {
				high = lines[k]
			} else {
				walls++
			}
			if b.spanned(k, j) {
				continue
			}
			b.cross(run.at(low, v), run.at(high, v), high-low, walls, g.lay[run].module)
		}
	}
	b.markCrosses()
}

// lit reports whether a light lies over the long cross tee on line i between
// two stops.
func (b *builder) lit(low, high, i int) bool {
	g := &b.chosen.grid
	for _, s := range b.chosen.lights.spots {
		if !s.placed || s.block.size[g.run] == 1 {
			continue
		}
		first := s.block.cell[g.run]
		row := s.block.cell[g.square()] // lies between lines row-1 and row
		if first == i && low <= row-1 && row <= high {
			return true
		}
	}
	return false
}

// spanned reports whether a light lies over the short cross tee on line j in
// the k-th space along the run.
func (b *builder) spanned(k, j int) bool {
	g := &b.chosen.grid
	for _, s := range b.chosen.lights.spots {
		if s.placed && s.block.size[g.square()] == 2 && s.block.cell[g.square()] == j && s.block.cell[g.run] == k {
			return true
		}
	}
	return false
}

// cross adds a cross tee of the given length between centre lines, less the
// gap at walls.
func (b *builder) cross(from, to geom.Point, length geom.Length, walls int, stock geom.Length) {
	c := Cross{From: flip(from), To: flip(to), Length: length - geom.Length(walls)*b.gap, Stock: stock, Cuts: walls}
	c.Whole = walls == 0 && length == stock
	b.out.Crosses = append(b.out.Crosses, c)
}

// together makes lengths that differ by no more than step the least of them,
// so that they are cut alike: a tee or a panel that much short still lies well
// on the wall angle.
func together(list []*geom.Length, step geom.Length) {
	slices.SortFunc(list, func(p, q *geom.Length) int { return cmp.Compare(*p, *q) })
	least := geom.Length(0)
	for i, l := range list {
		if i == 0 || *l > least+step {
			least = *l
		}
		*l = least
	}
}

// markCrosses gives cross tees of one length one mark: the longest stock
// first, whole tees before cut ones.
func (b *builder) markCrosses() {
	for _, stock := range []geom.Length{b.spacing, b.chosen.lay[b.chosen.run].module} {
		var cut []*geom.Length
		for i := range b.out.Crosses {
			if c := &b.out.Crosses[i]; c.Stock == stock && !c.Whole {
				cut = append(cut, &c.Length)
			}
		}
		together(cut, b.alike)
	}
	type class struct {
		stock, length geom.Length
		whole         bool
	}
	of := func(c *Cross) class { return class{c.Stock, b.show.Round(c.Length), c.Whole} }
	var list []class
	for i := range b.out.Crosses {
		if k := of(&b.out.Crosses[i]); !slices.Contains(list, k) {
			list = append(list, k)
		}
	}
	rank := map[bool]int{true: 0, false: 1}
	slices.SortFunc(list, func(p, q class) int {
		return cmp.Or(-cmp.Compare(p.stock, q.stock), cmp.Compare(rank[p.whole], rank[q.whole]), -cmp.Compare(p.length, q.length))
	})
	for i := range b.out.Crosses {
		c := &b.out.Crosses[i]
		c.Mark = piece.Mark(fmt.Sprintf("K%d", 1+slices.Index(list, of(c))))
	}
}
