package ceiling

import (
	"cmp"
	"slices"

	"roomwright/geom"
)

// spots returns the first cells along a on which lights of k can lie: all that
// are whole, or the one nearest to the centre asked for.
func (p *placer) spots(k *kind, a axis) []int {
	var list []int
	for c := range p.g.lay[a].cells() {
		if p.g.fitsAlong(block{cell: [2]int{c, c}, size: k.size}, a) {
			list = append(list, c)
		}
	}
	if want := k.centre[a]; want != nil && len(list) > 0 {
		l := &p.g.lay[a]
		list = []int{slices.MinFunc(list, func(c, d int) int {
			return cmp.Compare((l.twiceAt(c, k.size[a]) - 2*want.at).Abs(), (l.twiceAt(d, k.size[a]) - 2*want.at).Abs())
		})}
	}
	return list
}

// arrange finds the places of all lights of k.
func (p *placer) arrange(k *kind) (best []block, m merit, ok bool) {
	spots := [2][]int{p.spots(k, across), p.spots(k, down)}
	for _, a := range []axis{down, across} { // lines of lights one below another, or side by side
		for _, pattern := range patterns(k.count) {
			level := slices.Min(pattern) == slices.Max(pattern)
			if len(pattern) > len(spots[a]) || slices.Max(pattern) > len(spots[a.other()]) || level && a == across {
				continue
			}
			blocks, found, fit := p.fill(k, a, pattern, spots)
			if !fit || ok && !k.even && (found.axes > m.axes || found.axes == m.axes && found.skew > m.skew) {
				continue
			}
			found.far = p.far(blocks)
			if !ok || found.compare(m, k.even) < 0 {
				best, m, ok = blocks, found, true
			}
		}
	}
	if !ok {
		best, ok = p.first(k, spots)
		m = merit{axes: 2}
	}
	return best, m, ok
}

// fill puts lights in lines after a pattern, the lines following each other
// along a, on the best free places.
func (p *placer) fill(k *kind, a axis, pattern []int, spots [2][]int) (blocks []block, m merit, ok bool) {
	b := a.other()
	lines := p.sets(k, a, spots[a], len(pattern))
	low, high := slices.Min(pattern), slices.Max(pattern)
	rows := [2][]set{p.sets(k, b, spots[b], low)}
	if rows[1] = rows[0]; high != low {
		rows[1] = p.sets(k, b, spots[b], high)
		rows[0], rows[1] = rows[0][:min(len(rows[0]), longestPair)], rows[1][:min(len(rows[1]), longestPair)]
	}
	if len(lines) == 0 || len(rows[0]) == 0 || len(rows[1]) == 0 {
		return nil, m, false
	}
	for i := range lines {
		if ok && p.weighAll(k, a, pattern, [3]*set{&lines[i], &rows[0][0], &rows[1][0]}).compare(m, k.even) >= 0 {
			break // the lines only get worse
		}
	row:
		for j := range rows[0] {
			for h := range rows[1] {
				if high == low && h != j {
					continue
				}
				trio := [3]*set{&lines[i], &rows[0][j], &rows[1][h]}
				got := p.weighAll(k, a, pattern, trio)
				if ok && got.compare(m, k.even) >= 0 {
					continue
				}
				if list, fit := p.lay(k, a, pattern, trio); fit {
					blocks, m, ok = list, got, true
					break row
				}
			}
		}
	}
	return blocks, m, ok
}

// setKey tells the sets of one kind of light apart.
type setKey struct {
	index, n int
	a        axis
}

// sets returns the ways to put n lights of k along a, found once for each grid.
func (p *placer) sets(k *kind, a axis, spots []int, n int) []set {
	key := setKey{k.index, n, a}
	list, ok := p.known[key]
	if !ok {
		list = sets(&p.g.lay[a], spots, k.size[a], n, k.even)
		p.known[key] = list
	}
	return list
}

// weighAll adds up the merits of the sets of an arrangement, all but how far
// the lights reach.
func (p *placer) weighAll(k *kind, a axis, pattern []int, s [3]*set) merit {
	var m merit
	skew := [2]geom.Length{}
	if skew[a] = s[0].skew; !alike(pattern) {
		skew[a] += p.g.lay[a].module
	}
	skew[a.other()] = max(s[1].skew, s[2].skew)
	for _, b := range []axis{across, down} {
		if skew[b] > 0 && k.centre[b] == nil {
			m.axes++
			m.skew += skew[b]
		}
	}
	m.uneven = s[0].uneven + s[1].uneven + s[2].uneven
	m.off = s[0].off + s[1].off + s[2].off
	return m
}

// lay makes the blocks of an arrangement, when they are all free.
func (p *placer) lay(k *kind, a axis, pattern []int, s [3]*set) ([]block, bool) {
	var list []block
	for i, n := range pattern {
		row := s[1]
		if n != len(row.cells) {
			row = s[2]
		}
		for _, c := range row.cells {
			b := block{size: k.size}
			b.cell[a], b.cell[a.other()] = s[0].cells[i], c
			if !p.free(b, k) {
				return nil, false
			}
			list = append(list, b)
		}
	}
	slices.SortFunc(list, func(b, c block) int {
		return cmp.Or(cmp.Compare(b.cell[down], c.cell[down]), cmp.Compare(b.cell[across], c.cell[across]))
	})
	return list, true
}

// first puts as many lights as go in on the free places in reading order; ok
// is false when some are left over.
func (p *placer) first(k *kind, spots [2][]int) (list []block, ok bool) {
	used := map[[2]int]bool{}
	for _, row := range spots[down] {
		for _, col := range spots[across] {
			b := block{cell: [2]int{col, row}, size: k.size}
			clear := len(list) < k.count && p.free(b, k)
			for c := range b.size[across] {
				for r := range b.size[down] {
					clear = clear && !used[[2]int{col + c, row + r}]
				}
			}
			if !clear {
				continue
			}
			for c := range b.size[across] {
				for r := range b.size[down] {
					used[[2]int{col + c, row + r}] = true
				}
			}
			list = append(list, b)
		}
	}
	return list, len(list) == k.count
}

// far returns four times the square of the greatest distance from a crossing
// of tee lines or walls to the nearest light.
func (p *placer) far(blocks []block) int64 {
	places := func(l *lay) []geom.Length {
		list := []geom.Length{l.lowIn + l.lowOut}
		for _, c := range l.lines {
			list = append(list, 2*c)
		}
		return append(list, l.highIn+l.highOut)
	}
	far := int64(0)
	for _, x := range places(&p.g.lay[across]) {
		for _, d := range places(&p.g.lay[down]) {
			near := int64(-1)
			for _, b := range blocks {
				u, v := int64(p.g.twice(b, across)-x), int64(p.g.twice(b, down)-d)
				if q := u*u + v*v; near < 0 || q < near {
					near = q
				}
			}
			far = max(far, near)
		}
	}
	return far
}
