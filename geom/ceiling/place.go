package ceiling

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/room"
)

// kind is one kind of light as asked for.
type kind struct {
	index  int // in room.Lights
	light  *room.Light
	name   string
	count  int
	size   [2]int // cells it takes each way
	cells  []room.CellName
	centre [2]*centre
	even   bool // even spaces come before lying alike about the axis
	depth  geom.Length
}

// centre is a centre asked for in one direction.
type centre struct {
	at   geom.Length
	want room.GridLine
}

// spot is where one light goes.
type spot struct {
	kind   int // in the list of kinds
	nth    int // of its kind
	block  block
	placed bool
	missed [2]bool // not where it was asked to be, in that direction
	clash  bool    // something overhead is in its way
}

// outcome is what a grid makes of the lights.
type outcome struct {
	spots   []spot
	missing int // lights without a place
	missed  int // musts not met
	wishes  int // wishes not met
	clashes int
	merit   merit
	each    []merit     // of each kind
	off     geom.Length // from the centres wished for, summed
}

// placer puts lights on the whole cells of one grid.
type placer struct {
	g     *grid
	kinds []kind
	hits  func(geom.Rect, geom.Length) bool // does a light of this depth hit anything
	step  geom.Length
	taken map[[2]int]bool
	avoid bool // keep clear of what is overhead
	known map[setKey][]set
	out   outcome
}

// place puts every light on g.
func place(g *grid, kinds []kind, step geom.Length, hits func(geom.Rect, geom.Length) bool) outcome {
	p := placer{g: g, kinds: kinds, step: step, hits: hits, taken: map[[2]int]bool{}, known: map[setKey][]set{}}
	p.out.each = make([]merit, len(kinds))
	for rank := range 4 {
		for i := range kinds {
			if k := &kinds[i]; k.rank() == rank {
				p.put(i)
			}
		}
	}
	for _, s := range p.out.spots {
		if s.clash {
			p.out.clashes++
		}
	}
	return p.out
}

// rank orders kinds: those that say most about their place go first.
func (k *kind) rank() int {
	switch {
	case len(k.cells) > 0:
		return 0
	case k.centre[across] != nil && k.centre[down] != nil:
		return 1
	case k.centre[across] != nil || k.centre[down] != nil:
		return 2
	}
	return 3
}

// free reports whether b is whole, not taken, and clear when that is wanted.
func (p *placer) free(b block, k *kind) bool {
	if !p.g.fits(b) {
		return false
	}
	for col := range b.size[across] {
		for row := range b.size[down] {
			if p.taken[[2]int{b.cell[across] + col, b.cell[down] + row}] {
				return false
			}
		}
	}
	return !p.avoid || !p.hits(p.g.box(b), k.depth)
}

// take puts light nth of kind i on b.
func (p *placer) take(i, nth int, b block) *spot {
	for col := range b.size[across] {
		for row := range b.size[down] {
			p.taken[[2]int{b.cell[across] + col, b.cell[down] + row}] = true
		}
	}
	p.out.spots = append(p.out.spots, spot{
		kind: i, nth: nth, block: b, placed: true,
		clash: p.hits(p.g.box(b), p.kinds[i].depth),
	})
	return &p.out.spots[len(p.out.spots)-1]
}

// lose notes that light nth of kind i has no place.
func (p *placer) lose(i, nth int) {
	p.out.spots = append(p.out.spots, spot{kind: i, nth: nth})
	p.out.missing++
}

// put places the lights of kind i.
func (p *placer) put(i int) {
	k := &p.kinds[i]
	p.avoid = false
	switch k.rank() {
	case 0:
		for n := range k.count {
			if b, ok := k.named(n); ok && p.free(b, k) {
				p.take(i, n, b)
			} else {
				p.lose(i, n)
			}
		}
		return
	case 1:
		if b, ok := p.near(k); ok {
			p.judge(k, p.take(i, 0, b))
		} else {
			p.lose(i, 0)
		}
		for n := 1; n < k.count; n++ {
			p.lose(i, n)
		}
		return
	}
	var blocks []block
	var m merit
	ok := false
	for _, avoid := range []bool{true, false} {
		if p.avoid = avoid; !ok {
			blocks, m, ok = p.arrange(k)
		}
	}
	p.avoid = false
	p.out.each[i] = m
	p.out.merit.axes += m.axes
	p.out.merit.skew += m.skew
	p.out.merit.far = max(p.out.merit.far, m.far)
	p.out.merit.uneven += m.uneven
	p.out.merit.off += m.off
	for n, b := range blocks {
		p.judge(k, p.take(i, n, b))
	}
	for n := len(blocks); n < k.count; n++ {
		p.lose(i, n)
	}
}

// named returns the block of the nth light of a kind whose cells were given:
// one cell a light, the first it takes, or all its cells.
func (k *kind) named(n int) (block, bool) {
	each := 1
	if len(k.cells) >= k.count*k.size[across]*k.size[down] {
		each = k.size[across] * k.size[down]
	}
	b := block{size: k.size}
	if (n+1)*each > len(k.cells) {
		return b, false
	}
	for i, c := range k.cells[n*each : (n+1)*each] {
		col, row, ok := cellOf(c.Name)
		if !ok {
			return b, false
		}
		if i == 0 {
			b.cell = [2]int{col, row}
		}
		b.cell[across], b.cell[down] = min(b.cell[across], col), min(b.cell[down], row)
	}
	for _, c := range k.cells[n*each : (n+1)*each] {
		if each > 1 && !slices.Contains(b.names(), c.Name) {
			return b, false
		}
	}
	return b, true
}

// judge notes whether s lies where k asked for it.
func (p *placer) judge(k *kind, s *spot) {
	for _, a := range []axis{across, down} {
		c := k.centre[a]
		if c == nil {
			continue
		}
		off := (p.g.twice(s.block, a) - 2*c.at).Abs() / 2
		if off <= p.step/2 {
			continue
		}
		s.missed[a] = true
		p.out.off += off
		if c.want.Value.IfFits {
			p.out.wishes++
		} else {
			p.out.missed++
		}
	}
}

// near returns the free block nearest to both centres of k.
func (p *placer) near(k *kind) (best block, ok bool) {
	least := geom.Length(0)
	for row := range p.g.lay[down].cells() {
		for col := range p.g.lay[across].cells() {
			b := block{cell: [2]int{col, row}, size: k.size}
			if !p.free(b, k) {
				continue
			}
			d := (p.g.twice(b, across) - 2*k.centre[across].at).Abs() + (p.g.twice(b, down) - 2*k.centre[down].at).Abs()
			if !ok || d < least {
				best, least, ok = b, d, true
			}
		}
	}
	return best, ok
}

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
