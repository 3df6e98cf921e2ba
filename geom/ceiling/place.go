package ceiling

import (
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
