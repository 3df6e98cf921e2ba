package ceiling

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// setLights gives the lights their places and marks in reading order.
func (b *builder) setLights() {
	spots := slices.Clone(b.chosen.lights.spots)
	spots = slices.DeleteFunc(spots, func(s spot) bool { return !s.placed })
	slices.SortStableFunc(spots, func(s, t spot) int {
		return cmp.Or(cmp.Compare(s.block.cell[down], t.block.cell[down]), cmp.Compare(s.block.cell[across], t.block.cell[across]))
	})
	for i, s := range spots {
		k := &b.kinds[s.kind]
		l := Light{
			Mark:  piece.Mark(fmt.Sprintf("L%d", i+1)),
			Name:  k.name,
			Index: k.index,
			Cells: s.block.names(),
			Box:   b.chosen.box(s.block),
			Depth: k.depth,
			Grams: k.light.Weight.Grams,
			Wires: b.wiresOf(k.light),
		}
		if b.over.known {
			low, what := b.over.lowest(l.Box)
			l.Above, l.Under = low-b.out.Face-l.Depth, what
		}
		b.out.Lights = append(b.out.Lights, l)
		b.checkLight(&l, k)
	}
}

// shaken reports whether earthquakes must be reckoned with: category C and
// above, or not known.
func (b *builder) shaken() bool {
	switch b.want.Seismic {
	case "none", "A", "B":
		return false
	}
	return true
}

// wiresOf returns the number of wires from a light to the structure.
func (b *builder) wiresOf(l *room.Light) int {
	switch g := l.Weight.Grams; {
	case !b.shaken():
		return 0
	case g > 0 && g <= rules.LightOneWireGrams:
		return 1
	case g < rules.LightTwoWiresBelow:
		return 2
	}
	return 4
}

// hangLights adds the wires of the lights: at opposite corners, the corner
// nearest to a joist first.
func (b *builder) hangLights() {
	if !b.over.known || len(b.over.joists) == 0 {
		return
	}
	for i := range b.out.Lights {
		l := &b.out.Lights[i]
		p := l.Box.Polygon()
		for _, c := range []int{0, 2, 1, 3}[:l.Wires] {
			at := flip(p[c])
			j, aside := b.over.near(b.over.along.other().of(at))
			h := Hanger{At: p[c], Light: l.Mark, Joist: j, Drop: b.drop()}
			h.Wire = h.Drop + (b.over.highest - b.over.structure) + aside + b.ties
			b.out.Hangers = append(b.out.Hangers, h)
		}
	}
}

// checkLight says what stands in the way of a light.
func (b *builder) checkLight(l *Light, k *kind) {
	if !b.over.known {
		return
	}
	if k.depth == 0 {
		if k.light.Depth.Unknown || !k.light.Depth.Given() {
			b.find(finding.Finding{
				Place: k.light.At, Kind: finding.Warning, Rule: "depth of a light",
				What: fmt.Sprintf("how deep light %s is, is not known; what is over it is not checked", k.name),
				Hint: "give its depth, from its face to its highest part",
			})
		}
		return
	}
	where := strings.Join(l.Cells, " and ")
	if l.Above < 0 {
		b.find(finding.Finding{
			Place: k.light.At, Kind: finding.Warning, Rule: "light under a thing overhead",
			What:    fmt.Sprintf("light %s in %s runs into the %s", l.Mark, where, l.Under),
			Found:   fmt.Sprintf("its top at %s; the %s at %s", b.say(b.out.Face+l.Depth), l.Under, b.say(b.out.Face+l.Depth+l.Above)),
			Allowed: fmt.Sprintf("a light %s deep at most", b.say(l.Depth+l.Above)),
			Hint:    b.clearCell(l, k),
			Source:  rules.LowestSource,
		})
		return
	}
}

// tiltLights says, kind by kind, which lights may not tilt in.
func (b *builder) tiltLights() {
	for i := range b.kinds {
		k := &b.kinds[i]
		if !b.over.known || k.depth == 0 {
			continue
		}
		flat, assumed := k.depth, true
		if k.light.Thick.Known() {
			flat, assumed = k.light.Thick.Value, k.light.Thick.At == finding.Place{}
		}
		var need, least geom.Length
		var marks []string
		under := ""
		for n := range b.out.Lights {
			l := &b.out.Lights[n]
			if l.Index != k.index {
				continue
			}
			w, h := b.lightSize(l)
			need = b.tiltOver(min(w, h), max(w, h), flat)
			low, what := b.over.lowest(l.Box.Inset(-b.short)) // over its cells and those beside them
			free := low - b.top()
			if need <= free {
				continue
			}
			marks = append(marks, string(l.Mark))
			if under == "" || free < least {
				least, under = free, what
			}
		}
		if len(marks) == 0 {
			continue
		}
		f := finding.Finding{
			Place: k.light.At, Kind: finding.Warning, Rule: "tilting lights in",
			What:    fmt.Sprintf("%s of kind %s may not tilt in: %s", plural(len(marks), "light"), k.name, strings.Join(marks, ", ")),
			Found:   fmt.Sprintf("as little as %s clear above the tees, %s above the flange, under the %s", b.say(least), b.say(least+b.tee), under),
			Allowed: fmt.Sprintf("%s above the tees, %s above the flange, for a rigid light %s thick", b.say(need), b.say(need+b.tee), b.say(flat)),
			Hint:    "leave out one cross tee beside each until it is up",
			Source:  rules.TiltSource,
		}
		if assumed {
			f.Hint += "; its whole depth was taken as its thickness: give the thickness of its flat body"
		}
		b.find(f)
	}
}

// clearCell names the nearest free cells over which nothing is in the way.
func (b *builder) clearCell(l *Light, k *kind) string {
	g := &b.chosen.grid
	used := map[string]bool{}
	for i := range b.out.Lights {
		for _, n := range b.out.Lights[i].Cells {
			used[n] = true
		}
	}
	for _, s := range b.chosen.lights.spots {
		if s.placed {
			for _, n := range s.block.names() {
				used[n] = true
			}
		}
	}
	best, least := "", geom.Length(-1)
	for row := range g.lay[down].cells() {
		for col := range g.lay[across].cells() {
			o := block{cell: [2]int{col, row}, size: k.size}
			if !g.fits(o) || slices.ContainsFunc(o.names(), func(n string) bool { return used[n] }) || b.search.hits(g.box(o), k.depth) {
				continue
			}
			p, q := g.box(o).Mid(), l.Box.Mid()
			if d := (p.X - q.X).Abs() + (p.Y - q.Y).Abs(); least < 0 || d < least {
				best, least = strings.Join(o.names(), " and "), d
			}
		}
	}
	if best == "" {
		return "no free whole cell is clear; lower the ceiling or take a flatter light"
	}
	return "the nearest free place with nothing in the way is " + best
}

// judgeLights says which lights have no place, or not the one asked for.
func (b *builder) judgeLights() {
	lost := make([]int, len(b.kinds))
	for _, s := range b.chosen.lights.spots {
		k := &b.kinds[s.kind]
		switch {
		case !s.placed && len(k.cells) > 0:
			b.lostCell(k, s.nth)
		case !s.placed:
			lost[s.kind]++
		default:
			b.movedLight(k, &s)
		}
	}
	for i, n := range lost {
		if n == 0 {
			continue
		}
		k := &b.kinds[i]
		f := finding.Finding{
			Place: k.light.At, Kind: finding.Error, Rule: "light on whole modules",
			What:    fmt.Sprintf("%s %s, and whole cells for %d", plural(k.count, "light"), k.name, k.count-n),
			Found:   plural(k.count, "light"),
			Allowed: plural(k.count-n, "light"),
			Hint:    fmt.Sprintf("count %d goes in; a light takes whole cells with tees all round", k.count-n),
			Source:  rules.LightCellsSource,
		}
		if k.rank() == 1 && k.count > 1 {
			f.What = fmt.Sprintf("%s %s with one centre", plural(k.count, "light"), k.name)
			f.Allowed, f.Hint = "one light where both centres are given", "give one centre, and the lights are spaced along the other direction"
		} else if k.count == n {
			f.Hint = "no whole cell is free; take fewer lights, or a smaller border"
		}
		b.find(f)
	}
}

// plural returns n and a word, with its s.
func plural(n int, word string) string {
	if n == 1 {
		return "1 " + word
	}
	return fmt.Sprintf("%d %ss", n, word)
}

// lostCell says why a light cannot go in the cell it was given.
func (b *builder) lostCell(k *kind, nth int) {
	g := &b.chosen.grid
	c := k.cells[min(nth, len(k.cells)-1)]
	last := cellName(g.lay[across].cells()-1, g.lay[down].cells()-1)
	f := finding.Finding{
		Place: c.At, Kind: finding.Error, Rule: "light on whole modules",
		What:    fmt.Sprintf("light %s cannot go in cell %s", k.name, c.Name),
		Allowed: "free whole cells with tees all round",
		Source:  rules.LightCellsSource,
	}
	col, row, ok := cellOf(c.Name)
	switch {
	case !ok || col >= g.lay[across].cells() || row >= g.lay[down].cells():
		f.Found = fmt.Sprintf("no cell %s; the grid runs from P1 to %s", c.Name, last)
	case !g.lay[across].inner(col) || !g.lay[down].inner(row):
		p, q := b.node(col, row), b.node(col+1, row+1)
		f.Found = fmt.Sprintf("%s is at a wall, %s x %s", c.Name, b.say(q.X-p.X), b.say(q.Y-p.Y))
	case k.size[across]*k.size[down] > 1:
		f.Found = fmt.Sprintf("no bay of two whole cells begins at %s, or it is taken", c.Name)
		f.Source = rules.LightAcrossSource
	default:
		f.Found = c.Name + " is taken"
	}
	if ok {
		if near := b.nearestFree(k, col, row); near != "" {
			f.Hint = "the nearest whole cell is " + near
		}
	}
	b.find(f)
}

// nearestFree names the free place nearest to a cell.
func (b *builder) nearestFree(k *kind, col, row int) string {
	g := &b.chosen.grid
	p := placer{g: g, taken: map[[2]int]bool{}, hits: b.search.hits}
	for _, s := range b.chosen.lights.spots {
		for c := range s.block.size[across] {
			for r := range s.block.size[down] {
				if s.placed {
					p.taken[[2]int{s.block.cell[across] + c, s.block.cell[down] + r}] = true
				}
			}
		}
	}
	best, least := "", -1
	for r := range g.lay[down].cells() {
		for c := range g.lay[across].cells() {
			o := block{cell: [2]int{c, r}, size: k.size}
			d := max(c-col, col-c) + max(r-row, row-r)
			if p.free(o, k) && (least < 0 || d < least) {
				best, least = strings.Join(o.names(), " and "), d
			}
		}
	}
	return best
}

// movedLight says that a light is not where it was asked for, and where it is.
func (b *builder) movedLight(k *kind, s *spot) {
	for _, a := range []axis{across, down} {
		if !s.missed[a] {
			continue
		}
		c := k.centre[a]
		wall := c.want.Wall
		at := (b.chosen.twice(s.block, a)) / 2
		r := b.ground.reach[a]
		got := r.highIn - at
		if wall == a.low() {
			got = at - r.lowIn
		}
		f := finding.Finding{
			Place: c.want.Value.At, Kind: finding.Error, Rule: "light on whole modules",
			What:    fmt.Sprintf("no whole cell lies where light %s is wanted", k.name),
			Found:   fmt.Sprintf("centre from wall %s: %s", b.room.Walls[wall].Name, b.say(c.want.Value.Value)),
			Allowed: fmt.Sprintf("%s, in %s, is the nearest whole cell", b.say(got), strings.Join(s.block.names(), " and ")),
			Hint:    fmt.Sprintf("write centre from %s: %s; or %s if it fits", b.room.Walls[wall].Name, b.say(got), b.say(c.want.Value.Value)),
			Source:  rules.LightCellsSource,
		}
		if c.want.Value.IfFits {
			f.Kind = finding.Warning
			f.Hint = "it is drawn there"
		}
		b.find(f)
	}
}

// symmetry says when lights that are to lie alike about the axes of the room
// do not.
func (b *builder) symmetry() {
	for i := range b.kinds {
		m := b.chosen.lights.each[i]
		if k := &b.kinds[i]; k.even || m.skew == 0 {
			continue
		}
		b.find(finding.Finding{
			Place: b.kinds[i].light.At, Kind: finding.Warning, Rule: "lights about the axis of the room",
			What:    fmt.Sprintf("the lights of kind %s do not lie alike about the axes of the room", b.kinds[i].name),
			Found:   fmt.Sprintf("%s off, summed over both directions", b.say(m.skew)),
			Allowed: "whole cells, and borders of the least width or more",
			Hint:    "one module lies on the axis where the number of whole modules is odd, two where it is even; another count, or a less wide least border, changes that",
			Source:  rules.BorderParity,
		})
	}
}
