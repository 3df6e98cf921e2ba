package ceiling

import (
	"cmp"
	"slices"

	"roomwright/geom"
)

// The aims of the set-out, in the order in which they count. Each is a figure
// of which less is better.
const (
	aimMusts   = iota // lights without a place, and places asked for that are missed
	aimLeast          // by how much borders fall short of the least, summed over both directions
	aimLines          // lines wished for that are missed
	aimClear          // lights with something in their way
	aimLights         // lights not where they were wished, or not alike about an axis of the room
	aimEqual          // by how much opposite borders differ, summed
	aimCuts           // cut panels
	aimWidest         // the least border of all, less is wider
	aimBorders        // the least borders of both directions, less is wider
	aimSkew           // how far from alike about the axes the lights lie
	aimFar            // how far the lights reach
	aimUneven         // how much the spaces between lights differ
	aimOff            // how far lights lie from where they are wished
	aimPlumb          // mains too far from a joist that runs along them
	aimMains          // number of mains
	aimEnd            // greatest distance from a wall to the nearest main
	aims
)

// score is what a set-out makes of each aim.
type score [aims]int64

// trial is one set-out with its score and its lights.
type trial struct {
	grid
	score  score
	lights outcome
}

// search is everything that the set-out is searched with.
type search struct {
	reach  [2]reach
	module [2]geom.Length
	least  [2]geom.Length
	bare   geom.Length      // no border is narrower: tee and wall angle would touch
	must   [2][]geom.Length // places that a line must have
	wish   [2][]geom.Length // places that a line is wished at
	mains  []geom.Length    // of these, places where the line is a main
	run    axis
	every  int
	kinds  []kind
	step   geom.Length
	close  geom.Length // set-outs that differ by less are one
	hits   func(geom.Rect, geom.Length) bool
	leans  func(geom.Length) bool // is a main at this place too far from a joist along it
}

// candidates returns the phases that are tried along a.
func (s *search) candidates(a axis) []geom.Length {
	m := s.module[a]
	if len(s.must[a]) > 0 {
		return []geom.Length{mod(s.must[a][0], m)}
	}
	asked := slices.Clone(s.wish[a])
	for i := range s.kinds {
		if c := s.kinds[i].centre[a]; c != nil {
			asked = append(asked, c.at-m*geom.Length(s.kinds[i].size[a])/2)
		}
	}
	return phases(s.reach[a], m, s.least[a], asked)
}

// grids returns every set-out that can be built, with the score that it has
// when the lights take nothing from it.
func (s *search) grids() []trial {
	var lays [2][]lay
	for _, a := range []axis{across, down} {
		for _, p := range s.candidates(a) {
			if l, ok := layAt(s.reach[a], s.module[a], p, s.bare); ok {
				lays[a] = append(lays[a], l)
			}
		}
	}
	var list []trial
	for _, x := range lays[across] {
		for _, d := range lays[down] {
			for first := range s.every {
				g := grid{lay: [2]lay{x, d}, run: s.run, every: s.every, first: first}
				if len(g.lay[g.square()].lines) == 1 && first > 0 {
					continue // no main at all
				}
				list = append(list, trial{grid: g, score: s.bareScore(&g)})
			}
		}
	}
	return list
}

// best returns the best set-outs, best first: at least the best of all and the
// best whose lines are not those of it. Lights only add to a score, so that a
// set-out which is worse without them need not be tried with them.
func (s *search) best() []trial {
	rest := s.grids()
	byScore := func(t, u trial) int { return slices.Compare(t.score[:], u.score[:]) }
	slices.SortStableFunc(rest, byScore)
	var list []trial
	for _, t := range rest {
		if next := s.runnerUp(list); next >= 0 && byScore(t, list[next]) > 0 {
			break
		}
		t = s.weigh(t.grid)
		at, _ := slices.BinarySearchFunc(list, t, func(u, t trial) int {
			if c := byScore(u, t); c != 0 {
				return c
			}
			return -1 // of equals the first stays first
		})
		list = slices.Insert(list, at, t)
	}
	return list
}

// weigh scores g with its lights.
func (s *search) weigh(g grid) trial {
	t := trial{grid: g, score: s.bareScore(&g)}
	t.lights = place(&g, s.kinds, s.step, s.hits)
	o := &t.lights
	t.score[aimMusts] = int64(o.missing + o.missed)
	t.score[aimClear] = int64(o.clashes)
	t.score[aimLights] = int64(o.wishes + o.merit.axes)
	t.score[aimSkew] = int64(o.merit.skew)
	t.score[aimFar] = o.merit.far
	t.score[aimUneven] = int64(o.merit.uneven)
	t.score[aimOff] = int64(o.off + o.merit.off)
	return t
}

// bareScore scores g without its lights.
func (s *search) bareScore(g *grid) score {
	var t score
	whole, cells := 1, 1
	widest := min(g.lay[across].least(), g.lay[down].least())
	for _, a := range []axis{across, down} {
		l := &g.lay[a]
		t[aimLeast] += int64(max(0, s.least[a]-l.least()))
		t[aimEqual] += int64(l.uneven())
		t[aimBorders] -= int64(l.least())
		whole *= l.count()
		cells *= l.cells()
		for _, w := range s.wish[a] {
			if len(l.lines) == 0 || mod(l.lines[0]-w, l.module) != 0 {
				t[aimLines]++
			}
		}
	}
	lines := g.lay[g.square()].lines
	for _, w := range s.mains {
		if i, ok := slices.BinarySearch(lines, w); !ok || !g.main(i) {
			t[aimLines]++
		}
	}
	t[aimCuts] = int64(cells - whole)
	t[aimWidest] = -int64(widest)
	mains := g.mains()
	for _, i := range mains {
		if s.leans(lines[i]) {
			t[aimPlumb]++
		}
	}
	t[aimMains] = int64(len(mains))
	if len(mains) > 0 {
		l := &g.lay[g.square()]
		t[aimEnd] = int64(max(lines[mains[0]]-l.lowOut, l.highOut-lines[mains[len(mains)-1]]))
	}
	return t
}

// runnerUp returns the index of the best set-out whose lines are not those of
// the first, -1 when there is none.
func (s *search) runnerUp(list []trial) int {
	for i := 1; i < len(list); i++ {
		for _, a := range []axis{across, down} {
			p, q := list[0].lay[a].lines, list[i].lay[a].lines
			if len(p) != len(q) || len(p) > 0 && (p[0]-q[0]).Abs() > s.close {
				return i
			}
		}
	}
	return -1
}

// decided returns the first aim in which two scores differ.
func decided(t, u score) int {
	for i := range aims {
		if cmp.Compare(t[i], u[i]) != 0 {
			return i
		}
	}
	return aims
}
