package ceiling

import (
	"cmp"
	"slices"

	"roomwright/geom"
)

// set is a choice of places along one direction for lights in a row: the
// first cell of each, and how well they lie.
type set struct {
	cells  []int
	skew   geom.Length // greatest distance from lying alike about the room's axis
	uneven geom.Length // how much the spaces between lights differ, summed
	off    geom.Length // from the places that part the room evenly, summed
}

// better orders sets: alike about the axis first, or even spaces first.
func (s *set) better(t *set, even bool) int {
	a, b := []geom.Length{s.skew, s.uneven, s.off}, []geom.Length{t.skew, t.uneven, t.off}
	if even {
		a[0], a[1], b[0], b[1] = a[1], a[0], b[1], b[0]
	}
	return cmp.Or(slices.Compare(a, b), slices.Compare(s.cells, t.cells))
}

// longestList bounds the sets tried in each direction, best first.
const longestList = 48

// longestPair bounds them where two lists are tried together.
const longestPair = 8

// sets returns the ways to put n lights, each size cells long, on spots along
// l, best first: every run of equal steps, and the one nearest to even.
func sets(l *lay, spots []int, size, n int, even bool) []set {
	var list []set
	add := func(cells []int) {
		list = append(list, weigh(l, cells, size))
	}
	if n == 1 {
		for _, c := range spots {
			add([]int{c})
		}
	}
	for i := 0; n > 1 && i < len(spots); i++ {
		for j := i + 1; j < len(spots); j++ {
			if step := spots[j] - spots[i]; step >= size {
				cells := []int{spots[i]}
				for len(cells) < n {
					next := spots[i] + step*len(cells)
					if _, ok := slices.BinarySearch(spots, next); !ok {
						break
					}
					cells = append(cells, next)
				}
				if len(cells) == n {
					add(cells)
				}
			}
		}
	}
	if cells := evenly(l, spots, size, n); n > 2 && cells != nil {
		add(cells)
	}
	slices.SortFunc(list, func(s, t set) int { return s.better(&t, even) })
	list = slices.CompactFunc(list, func(s, t set) bool { return slices.Equal(s.cells, t.cells) })
	return list[:min(len(list), longestList)]
}

// twiceAt returns twice the middle of a light of size cells from cell c.
func (l *lay) twiceAt(c, size int) geom.Length { return l.lines[c-1] + l.lines[c-1+size] }

// share returns twice the middle of part i of n equal parts of the room.
func (l *lay) share(i, n int) geom.Length {
	low := l.lowIn + l.lowOut
	return low + (l.highIn+l.highOut-low)*geom.Length(2*i+1)/geom.Length(2*n)
}

// evenly returns the spots nearest to the middles of n equal parts, nil when
// they do not go in.
func evenly(l *lay, spots []int, size, n int) []int {
	var cells []int
	for i := range n {
		best := -1
		for _, c := range spots {
			if len(cells) > 0 && c < cells[len(cells)-1]+size {
				continue
			}
			if best < 0 || (l.twiceAt(c, size)-l.share(i, n)).Abs() < (l.twiceAt(best, size)-l.share(i, n)).Abs() {
				best = c
			}
		}
		if best < 0 {
			return nil
		}
		cells = append(cells, best)
	}
	return cells
}

// weigh measures how well lights lie on cells.
func weigh(l *lay, cells []int, size int) set {
	s := set{cells: cells}
	n := len(cells)
	at := make([]geom.Length, n)
	for i, c := range cells {
		at[i] = l.twiceAt(c, size)
	}
	for i := range n {
		s.skew = max(s.skew, ((at[i]+at[n-1-i])/2-l.middle()).Abs()/2)
		s.off += (at[i] - l.share(i, n)).Abs() / 2
		if i > 1 {
			s.uneven += (at[i] - 2*at[i-1] + at[i-2]).Abs() / 2
		}
	}
	if s.skew <= fine {
		s.skew = 0
	}
	return s
}

// fine is less than any tape reads: half the least unit, over and over.
const fine geom.Length = 8

// patterns returns the numbers of lights in each of several lines that make n
// in all, none differing from another by more than one.
func patterns(n int) [][]int {
	var list [][]int
	for lines := 1; lines <= n; lines++ {
		base, more := n/lines, n%lines
		even := slices.Repeat([]int{base}, lines)
		if more == 0 {
			list = append(list, even)
			continue
		}
		front, back := slices.Clone(even), slices.Clone(even)
		for i := range more {
			front[i]++
			back[lines-1-i]++
		}
		list = append(list, front, back)
		if lines%2 == 0 && more%2 == 1 {
			continue // cannot be the same read from either end
		}
		outer, inner := slices.Clone(even), slices.Clone(even)
		if more%2 == 1 {
			outer[lines/2]++
			inner[lines/2]++
		}
		for i := range more / 2 {
			outer[i]++
			outer[lines-1-i]++
			inner[(lines-1)/2-i-lines%2]++
			inner[lines/2+i+lines%2]++
		}
		list = append(list, outer, inner)
	}
	return list
}

// alike reports whether a pattern is the same read from either end.
func alike(pattern []int) bool {
	for i, n := range pattern {
		if n != pattern[len(pattern)-1-i] {
			return false
		}
	}
	return true
}

// merit is how well an arrangement of lights lies; less is better.
type merit struct {
	axes   int         // directions in which it is not alike about the room's axis
	skew   geom.Length // by how much, summed
	far    int64       // greatest distance of a place from the nearest light, squared
	uneven geom.Length
	off    geom.Length
}

// compare orders merits as asked for.
func (m merit) compare(o merit, even bool) int {
	if even {
		return cmp.Or(cmp.Compare(m.far, o.far), cmp.Compare(m.axes, o.axes), cmp.Compare(m.skew, o.skew),
			cmp.Compare(m.uneven, o.uneven), cmp.Compare(m.off, o.off))
	}
	return cmp.Or(cmp.Compare(m.axes, o.axes), cmp.Compare(m.skew, o.skew), cmp.Compare(m.far, o.far),
		cmp.Compare(m.uneven, o.uneven), cmp.Compare(m.off, o.off))
}
