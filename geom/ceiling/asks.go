package ceiling

import (
	"fmt"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/rules"
	"roomwright/geom/survey"
)

// builder carries one ceiling through its making.
type builder struct {
	settings
	room     *room.Room
	want     *room.Ceiling
	outline  geom.Polygon // finished
	sides    []survey.Side
	ground   ground
	taped    ground // what is there runs from the faces the tape touched
	over     overhead
	out      *Ceiling
	kinds    []kind
	search   search
	chosen   trial
	findings []finding.Finding
}

// find adds a finding about the ceiling.
func (b *builder) find(f finding.Finding) {
	f.On = "ceiling"
	if (f.Place == finding.Place{}) {
		f.Place = b.want.At
	}
	b.findings = append(b.findings, f)
}

// ask reads what the room file wants of the grid into the search. It is false
// when no grid can be laid.
func (b *builder) ask() bool {
	w := b.want
	s := &b.search
	s.step, s.close = b.step, b.close
	s.bare = b.leg + b.teeFace/2
	s.reach = b.ground.reach
	s.run = b.run()
	s.module = [2]geom.Length{b.short, b.short}
	s.module[s.run.other()] = b.long
	if b.short <= 0 {
		b.find(finding.Finding{
			Place: w.Grid.At, Kind: finding.Error, Rule: "module of the grid",
			What: "the grid has no module", Allowed: "two lengths, such as 24x24 or 600x600",
		})
		return false
	}
	m := b.module()
	if b.spacing != m && b.spacing != 2*m {
		b.find(finding.Finding{
			Place: w.Mains.Spacing.At, Kind: finding.Error, Rule: "main tee spacing",
			What:    "the spacing of the mains is not one or two modules",
			Found:   b.say(b.spacing),
			Allowed: b.say(m) + " or " + b.say(2*m),
			Hint:    "cross tees are sold in lengths of one and of two modules",
			Source:  rules.MainSpacingSource,
		})
		b.spacing = m
	}
	s.every = int(b.spacing / m)
	for _, a := range []axis{across, down} {
		if s.least[a] = s.module[a] / 2; w.Grid.Least.Given() {
			s.least[a] = w.Grid.Least.Value
		}
		if sl := s.reach[a].slant(); sl >= s.module[a]/2 {
			b.find(finding.Finding{
				Place: w.At, Kind: finding.Error, Rule: "room out of square",
				What:    "the walls are too far out of square for one grid",
				Found:   fmt.Sprintf("%s %s", b.say(sl), a.name()),
				Allowed: "less than half a module, " + b.say(s.module[a]/2),
				Hint:    "tape the walls and both diagonals again",
				Source:  rules.OutOfSquareSource,
			})
			return false
		}
	}
	for _, l := range w.Grid.Lines {
		b.line(l, false)
	}
	for _, l := range w.Mains.Line {
		b.line(l, true)
	}
	b.lights()
	return true
}

// module returns the module square to the mains.
func (b *builder) module() geom.Length { return b.long }

// line takes in a tee line asked for.
func (b *builder) line(l room.GridLine, main bool) {
	s := &b.search
	a := axisOf(l.Wall)
	at := b.ground.off(l.Wall, l.Value.Value)
	wall := b.room.Walls[l.Wall].Name
	bad := func(what, found, allowed, hint string) {
		b.find(finding.Finding{
			Place: l.Value.At, Kind: finding.Error, Rule: "line of the grid", What: what,
			Found: found, Allowed: allowed, Hint: hint, Source: rules.BorderSource,
		})
	}
	r := s.reach[a]
	switch {
	case main && a != s.run.other():
		bad("a main tee cannot lie on this line", fmt.Sprintf("a line off wall %s; the mains run the other way", wall),
			"a line off a wall that the mains run along", "")
		return
	case r.wide() <= s.module[a]:
		bad("a line of the grid where one module spans the room", fmt.Sprintf("%s from wall %s", b.say(l.Value.Value), wall),
			fmt.Sprintf("no line %s; the room is %s, a module %s", a.name(), b.say(r.wide()), b.say(s.module[a])), "leave the line out")
		return
	case at <= r.lowIn || at >= r.highIn:
		bad("a line of the grid outside the room", fmt.Sprintf("%s from wall %s", b.say(l.Value.Value), wall),
			fmt.Sprintf("more than 0 and less than %s", b.say(r.narrow())), "")
		return
	}
	if main {
		s.mains = append(s.mains, at)
	}
	if l.Value.IfFits {
		s.wish[a] = append(s.wish[a], at)
		return
	}
	if len(s.must[a]) > 0 {
		if d := mod(at-s.must[a][0], s.module[a]); d != 0 {
			d = min(d, s.module[a]-d)
			bad("two lines of the grid that are not whole modules apart", fmt.Sprintf("%s off a whole number of modules", b.say(d)),
				"one line in each direction, or lines whole modules apart", "make one of them a wish: if it fits")
			return
		}
	}
	if _, ok := layAt(r, s.module[a], at, s.bare); !ok {
		bad("a line of the grid brings a tee onto a wall",
			fmt.Sprintf("%s from wall %s", b.say(l.Value.Value), wall),
			fmt.Sprintf("every tee %s or more from the walls, so that it clears the wall angle", b.say(s.bare)), "make it a wish: if it fits")
		return
	}
	s.must[a] = append(s.must[a], at)
}

// lights takes in the light panels asked for.
func (b *builder) lights() {
	s := &b.search
	for i := range b.room.Lights {
		l := &b.room.Lights[i]
		short, long := min(l.Size.W, l.Size.H), max(l.Size.W, l.Size.H)
		k := kind{index: i, light: l, name: l.Name, count: l.Count, even: l.Arrange == "evenly", size: [2]int{1, 1}}
		if l.Depth.Known() {
			k.depth = l.Depth.Value
		}
		switch {
		case short == b.short && long == b.long:
		case short == b.short && b.short == b.long && long == 2*short:
			long := s.run.other() // a long light lies across the mains, in one bay
			if s.every == 1 {
				long = s.run
			}
			k.size[long] = 2
		default:
			allowed := b.say(b.short) + " x " + b.say(b.long)
			if b.short == b.long {
				allowed += ", " + b.say(b.short) + " x " + b.say(2*b.short)
			}
			b.find(finding.Finding{
				Place: l.Size.At, Kind: finding.Error, Rule: "light on whole modules",
				What:    "a light that is not a number of whole modules",
				Found:   b.say(l.Size.W) + " x " + b.say(l.Size.H),
				Allowed: allowed,
				Hint:    "give the size of the module that it fills, not of the light itself",
				Source:  rules.LightCellsSource,
			})
			continue
		}
		if len(l.Cells) > 0 {
			k.cells = l.Cells
			if each := k.size[across] * k.size[down]; k.count == 0 {
				k.count = len(l.Cells)
				if each > 1 && len(l.Cells)%each == 0 {
					k.count /= each
				}
			}
		}
		for _, c := range l.Centre {
			k.centre[axisOf(c.Wall)] = &centre{at: b.ground.off(c.Wall, c.Value.Value), want: c}
		}
		if k.count > 0 {
			b.kinds = append(b.kinds, k)
		}
	}
	s.kinds = b.kinds
	s.hits = func(box geom.Rect, depth geom.Length) bool {
		if depth == 0 || !b.over.known {
			return false
		}
		low, _ := b.over.lowest(box)
		return b.out.Face+depth > low
	}
	s.leans = func(at geom.Length) bool {
		if !b.over.known || b.over.along != s.run || len(b.over.joists) == 0 {
			return false
		}
		_, off := b.over.near(at)
		return off*rules.HangerPlumb > b.drop()
	}
}
