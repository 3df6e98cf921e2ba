package ceiling

import (
	"fmt"
	"slices"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/rules"
)

// drop returns the least height from the top of the tees to the structure.
func (b *builder) drop() geom.Length { return b.over.structure - b.top() }

// top returns the height of the top of the tees above the floor.
func (b *builder) top() geom.Length { return b.out.Face + b.tee }

// hangers hangs every run of main tee.
func (b *builder) hangers() {
	o := &b.over
	if len(b.out.Mains) == 0 {
		return
	}
	if !o.known || len(o.joists) == 0 {
		at := b.want.At
		if j := b.room.Above.Joists; j != nil {
			at = j.At
		}
		b.find(finding.Finding{
			Place: at, Kind: finding.Warning, Rule: "hangers at joists",
			What:   "where the joists are is not known; no hangers are placed",
			Hint:   "give the joists: spacing, and the first centre off a wall they run along",
			Source: rules.MainsAcrossSource,
		})
		return
	}
	for i := range b.out.Mains {
		if o.along == b.chosen.run {
			b.hangBeside(&b.out.Mains[i])
		} else {
			b.hangAcross(&b.out.Mains[i])
		}
	}
}

// hang adds one hanger at u along the line v.
func (b *builder) hang(m *Main, u, v geom.Length, joist int, aside geom.Length, splice bool) {
	h := Hanger{At: flip(b.chosen.run.at(u, v)), Main: m.Mark, Joist: joist, Drop: b.drop(), Splice: splice}
	// Long enough where the structure is highest, and for a wire that leans.
	h.Wire = h.Drop + (b.over.highest - b.over.structure) + aside + b.ties
	b.out.Hangers = append(b.out.Hangers, h)
}

// line returns where m runs: its ends along the mains, and its place.
func (b *builder) along(m *Main) (from, to, at geom.Length) {
	a := b.chosen.run
	f, t := flip(m.From), flip(m.To)
	return a.of(f), a.of(t), a.other().of(f)
}

// blocked returns the index of the thing that a wire at p would touch, -1 when
// none is there.
func (b *builder) blocked(p geom.Point) int {
	for i := range b.over.things {
		box := b.over.things[i].box.Inset(-b.touch)
		if box.X().Holds(p.X) && box.Y().Holds(p.Y) {
			return i
		}
	}
	return -1
}

// hangAcross hangs m from the joists that it crosses.
func (b *builder) hangAcross(m *Main) {
	from, to, at := b.along(m)
	var free []int // joists that a wire can drop from
	for i, j := range b.over.joists {
		if j.at > from && j.at < to && b.blocked(flip(b.chosen.run.at(j.at, at))) < 0 {
			free = append(free, i)
		}
	}
	place := func(i int) geom.Length { return b.over.joists[i].at }
	picked := b.pick(from, to, free, place)
	splice := map[int]bool{}
	for _, p := range m.Splices {
		u := b.chosen.run.of(flip(p))
		before, after := -1, -1
		for _, i := range free {
			if place(i) <= u {
				before = i
			} else if after < 0 {
				after = i
			}
		}
		for _, i := range []int{before, after} {
			if i >= 0 && !slices.Contains(picked, i) {
				picked = append(picked, i)
				splice[i] = true
			}
		}
	}
	slices.Sort(picked)
	for _, i := range picked {
		b.hang(m, place(i), at, i, 0, splice[i])
	}
	b.spans(m, from, to, at, picked, place)
}

// pick chooses joists for the hangers of one run: gaps within the spacing,
// ends within the distance that is not warned of, none too near the end of the
// run; then the fewest, then the most even.
func (b *builder) pick(from, to geom.Length, free []int, place func(int) geom.Length) []int {
	type way struct {
		sums [4]geom.Length
		back int
	}
	n := len(free)
	if n == 0 {
		return nil
	}
	over := func(gap, limit geom.Length) geom.Length { return max(0, gap-limit) }
	end := func(gap geom.Length) [4]geom.Length {
		near := geom.Length(0)
		if gap < b.end {
			near = b.end - gap
		}
		return [4]geom.Length{over(gap, b.first), over(gap, b.warn) + near, 0, square(gap)}
	}
	best := make([]way, n)
	for i := range n {
		u := place(free[i])
		best[i] = way{end(u - from), -1}
		best[i].sums[2]++
		for k := range i {
			gap := u - place(free[k])
			s := best[k].sums
			s[0] += over(gap, b.wires)
			s[2]++
			s[3] += square(gap)
			if less(s, best[i].sums) {
				best[i] = way{s, k}
			}
		}
	}
	last, sums := -1, [4]geom.Length{}
	for i := range n {
		s, e := best[i].sums, end(to-place(free[i]))
		for k := range s {
			s[k] += e[k]
		}
		if last < 0 || less(s, sums) {
			last, sums = i, s
		}
	}
	var list []int
	for i := last; i >= 0; i = best[i].back {
		list = append(list, free[i])
	}
	slices.Reverse(list)
	return list
}

// square returns l squared in units that cannot overflow when added up.
func square(l geom.Length) geom.Length { return (l / 64) * (l / 64) }

// spans says where hangers are too far apart or too far from a wall.
func (b *builder) spans(m *Main, from, to, at geom.Length, picked []int, place func(int) geom.Length) {
	stops := []geom.Length{from}
	for _, i := range picked {
		stops = append(stops, place(i))
	}
	stops = append(stops, to)
	for k := 1; k < len(stops); k++ {
		gap := stops[k] - stops[k-1]
		limit, rule, source := b.wires, "hanger spacing", rules.HangerSpacingSource
		what := fmt.Sprintf("hangers of %s are too far apart", m.Mark)
		if k == 1 || k == len(stops)-1 {
			limit, rule, source = b.warn, "first hanger from the wall", rules.HangerFirstSource
			what = fmt.Sprintf("the last hanger of %s is far from the wall", m.Mark)
		}
		if len(stops) == 2 {
			what = fmt.Sprintf("no joist is free to hang %s from", m.Mark)
		}
		if gap <= limit && len(stops) > 2 {
			continue
		}
		f := finding.Finding{
			Place: b.want.HangerSpacing.At, Kind: finding.Warning, Rule: rule, What: what,
			Found:   fmt.Sprintf("%s, from %s to %s along it", b.say(gap), b.say(stops[k-1]-from), b.say(stops[k]-from)),
			Allowed: "at most " + b.say(limit),
			Hint:    "hang a bearer between two joists there, and the wire from it",
			Source:  source,
		}
		if i := b.between(stops[k-1], stops[k], at); i >= 0 {
			t := b.over.things[i]
			f.Place = b.room.Above.InTheWay[t.index].At
			f.Hint = fmt.Sprintf("the %s is in the way: bridge it with a trapeze, and hang the main tee from that", t.what)
			f.Source = rules.HangerTouchSource
		}
		b.find(f)
	}
}

// between returns a thing that keeps wires from joists between two places
// along the line at, -1 when none does.
func (b *builder) between(from, to, at geom.Length) int {
	for _, j := range b.over.joists {
		if j.at > from && j.at < to {
			if i := b.blocked(flip(b.chosen.run.at(j.at, at))); i >= 0 {
				return i
			}
		}
	}
	return -1
}

// hangBeside hangs m from the joist that runs beside it.
func (b *builder) hangBeside(m *Main) {
	from, to, at := b.along(m)
	joist, aside := b.over.near(at)
	allowed := b.drop() / rules.HangerPlumb
	if aside > allowed {
		b.find(finding.Finding{
			Place: b.want.Mains.At, Kind: finding.Warning, Rule: "hanger out of plumb",
			What:    fmt.Sprintf("the joist nearest to %s is too far aside for a wire from it", m.Mark),
			Found:   fmt.Sprintf("%s aside with a drop of %s", b.say(aside), b.say(b.drop())),
			Allowed: fmt.Sprintf("at most %s, one in %d", b.say(allowed), rules.HangerPlumb),
			Hint:    "fix blocking or a bearer between the joists over it, or run the mains across the joists",
			Source:  rules.HangerPlumbSource,
		})
		joist, aside = -1, 0
	}
	// Equal parts, a hanger in the middle of each: ends are half a space.
	n := geom.Length(1)
	for to-from > n*min(b.wires, 2*b.warn) {
		n++
	}
	var list []geom.Length
	for i := range n {
		list = append(list, from+(to-from)*(2*i+1)/(2*n))
	}
	for _, p := range m.Splices {
		u := b.chosen.run.of(flip(p))
		for _, at := range []geom.Length{u - b.end, u + b.end} {
			if at > from && at < to && !slices.ContainsFunc(list, func(v geom.Length) bool {
				return (v-u).Abs() <= 2*b.end && (v < u) == (at < u)
			}) {
				list = append(list, at)
			}
		}
	}
	base := int(n)
	for i, u := range list {
		if t := b.blocked(flip(b.chosen.run.at(u, at))); t >= 0 {
			b.find(finding.Finding{
				Place: b.room.Above.InTheWay[b.over.things[t].index].At, Kind: finding.Warning, Rule: "hanger past a thing overhead",
				What:   fmt.Sprintf("a hanger of %s would touch the %s", m.Mark, b.over.things[t].what),
				Found:  b.say(u-from) + " along it",
				Hint:   "bridge it with a trapeze, and hang the main tee from that",
				Source: rules.HangerTouchSource,
			})
			continue
		}
		b.hang(m, u, at, joist, aside, i >= base)
	}
}
