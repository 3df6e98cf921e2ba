package ceiling

import (
	"fmt"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/geom/rules"
)

// run returns the direction of the mains: as asked, or across the joists, or
// along the longer side.
func (b *builder) run() axis {
	if w := b.want.Mains.Along; w >= 0 && w < 4 {
		return axisOf(w).other()
	}
	if j := b.room.Above.Joists; j != nil {
		return axisOf(j.RunFrom).other()
	}
	if b.ground.reach[down].narrow() > b.ground.reach[across].narrow() {
		return down
	}
	return across
}

// rest is what is left of a stock length of main tee: its far factory end,
// and how much is used up at the other.
type rest struct {
	stock int
	used  geom.Length
}

// start is one way to begin a run.
type start struct {
	cut   geom.Length // off the factory end
	from  int         // index of the rest it is cut from, -1 for a new length
	both  bool        // the last stick is what was cut off the first
	sums  [4]geom.Length
	cover []geom.Length // ends of the sticks, along the run
}

// mains cuts every run of main tee.
func (b *builder) mains() {
	g := &b.chosen.grid
	run, square := g.run, g.square()
	cross := g.lay[run].lines
	var rests []rest
	var before []geom.Length // splices of the run before, on the page
	for n, i := range g.mains() {
		at := g.lay[square].lines[i]
		from, to := b.ends(run, at)
		m := Main{
			Mark: piece.Mark(fmt.Sprintf("M%d", n+1)),
			From: flip(run.at(from, at)), To: flip(run.at(to, at)),
		}
		length := to - from
		lead := geom.Length(-1) // no cross tee: any cut will do
		if len(cross) > 0 {
			lead = cross[0] - from
		}
		best := b.begin(length, lead, from, rests, before)
		m.StartCut = best.cut
		before = before[:0]
		pos := b.gap
		for k, end := range best.cover {
			s := Stick{Mark: m.Mark, From: pos, To: end, Length: end - pos}
			if len(best.cover) > 1 {
				s.Mark = piece.Mark(fmt.Sprintf("%s-%d", m.Mark, k+1))
			}
			last := k == len(best.cover)-1
			again := k == 0 && best.from >= 0
			switch {
			case again:
				s.Stock = rests[best.from].stock
				rests = append(rests[:best.from:best.from], rests[best.from+1:]...)
			case best.both && last:
				again = true
				s.Stock = m.Sticks[0].Stock
			default:
				b.out.MainSticks++
				s.Stock = b.out.MainSticks
			}
			m.Sticks = append(m.Sticks, s)
			switch {
			case !last:
				m.Splices = append(m.Splices, flip(run.at(from+end, at)))
				before = append(before, from+end)
			case again: // no more than two from one length
			case k > 0:
				rests = append(rests, rest{s.Stock, s.Length})
			default:
				rests = append(rests, rest{s.Stock, best.cut + s.Length})
			}
			pos = end
		}
		b.out.Mains = append(b.out.Mains, m)
	}
	b.slots()
}

// begin chooses how a run starts: with the fewest new lengths, no stick
// shorter than half a module, splices that do not stand beside those of the
// run before, the fewest splices, and then the longest first stick.
func (b *builder) begin(length, lead, from geom.Length, rests []rest, before []geom.Length) start {
	var best *start
	try := func(cut geom.Length, rest int) {
		s := b.cover(length, cut)
		s.from = rest
		if rest < 0 {
			s.sums[0]++
			if n := len(s.cover); n > 1 && length-b.gap-s.cover[n-2] <= cut {
				s.both = true
				s.sums[0]--
			}
		}
		for _, end := range s.cover[:len(s.cover)-1] {
			for _, other := range before {
				if (from + end - other).Abs() < b.short {
					s.sums[2]++
				}
			}
		}
		s.sums[3] = geom.Length(len(s.cover))
		if best == nil || less(s.sums, best.sums) {
			best = &s
		}
	}
	ways := func(used geom.Length, rest int) {
		if lead < 0 {
			try(used, rest)
			return
		}
		// The slot that meets the first cross line may be any whose cut takes at
		// least what is used up already.
		need := used + lead - b.gap
		for slot := b.slot + (max(0, need-b.slot)).RoundUp(b.pitch); slot <= b.stock; slot += b.pitch {
			try(slot-(lead-b.gap), rest)
		}
	}
	ways(0, -1)
	for i := range rests {
		ways(rests[i].used, i)
	}
	if best == nil {
		// No slot meets the first line: begin with a whole length.
		try(0, -1)
	}
	return *best
}

// cover lays sticks along a run whose first is cut by cut.
func (b *builder) cover(length, cut geom.Length) start {
	s := start{cut: cut}
	last := length - b.gap
	end := b.gap + b.stock - cut
	for end < last {
		s.cover = append(s.cover, end)
		end += b.stock
		s.sums[0]++
	}
	prev := b.gap
	if n := len(s.cover); n > 0 {
		prev = s.cover[n-1]
	}
	s.cover = append(s.cover, last)
	first := s.cover[0] - b.gap
	if len(s.cover) > 1 {
		for _, l := range []geom.Length{first, last - prev} {
			if l < b.short/2 {
				s.sums[1]++
			}
		}
	}
	return s
}

// less orders sums.
func less(a, b [4]geom.Length) bool {
	for i := range a {
		if a[i] != b[i] {
			return a[i] < b[i]
		}
	}
	return false
}

// slots says when the slots of the mains cannot meet the cross tees.
func (b *builder) slots() {
	g := &b.chosen.grid
	m := g.lay[g.run].module
	lines := g.lay[g.run].lines
	place := b.want.Mains.Pitch.At
	if len(lines) > 1 && m%b.pitch != 0 {
		b.find(finding.Finding{
			Place: place, Kind: finding.Warning, Rule: "slots of the mains",
			What:    "the slots of the mains do not meet the lines of cross tees",
			Found:   fmt.Sprintf("slots every %s, cross tees every %s", b.say(b.pitch), b.say(m)),
			Allowed: "a module that is a whole number of slot pitches",
			Source:  rules.SlotsLineSource,
		})
	}
	spliced := false
	for i := range b.out.Mains {
		spliced = spliced || len(b.out.Mains[i].Splices) > 0
	}
	if spliced && b.stock%b.pitch != 0 {
		b.find(finding.Finding{
			Place: b.want.Mains.Stock.At, Kind: finding.Warning, Rule: "slots of the mains",
			What:    "the slots fall out of step at each splice",
			Found:   fmt.Sprintf("main tees of %s with slots every %s", b.say(b.stock), b.say(b.pitch)),
			Allowed: "a length that is a whole number of slot pitches",
			Hint:    fmt.Sprintf("cut each length to %s before it is spliced on", b.say(b.stock.RoundDown(b.pitch))),
			Source:  rules.SlotsLineSource,
		})
	}
}
