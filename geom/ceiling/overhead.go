package ceiling

import (
	"fmt"
	"slices"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/rules"
)

// overhead is what is over the ceiling.
type overhead struct {
	known     bool        // the structure's height is known
	structure geom.Length // its lowest underside from the floor
	highest   geom.Length // its highest
	wall      string      // where it is lowest
	along     axis        // joists run along it
	joists    []joist     // sorted by place; none when not known
	things    []thing
}

// joist is one joist: its place square to its run.
type joist struct{ at geom.Length }

// thing is an obstacle with a place and an underside.
type thing struct {
	index     int // in room.Above.InTheWay
	what      string
	box       geom.Rect
	underside geom.Length
}

// lowest returns the lowest thing over box, and its name.
func (o *overhead) lowest(box geom.Rect) (geom.Length, string) {
	low, what := o.structure, "joists"
	if len(o.joists) == 0 {
		what = "structure"
	}
	for i := range o.things {
		if t := &o.things[i]; t.box.Overlaps(box) && t.underside < low {
			low, what = t.underside, t.what
		}
	}
	return low, what
}

// near returns the joist nearest to the place at, and how far it is.
func (o *overhead) near(at geom.Length) (int, geom.Length) {
	best, off := -1, geom.Length(0)
	for i, j := range o.joists {
		if d := (j.at - at).Abs(); best < 0 || d < off {
			best, off = i, d
		}
	}
	return best, off
}

// look finds the structure, the joists and the obstacles.
func (b *builder) look() {
	o := &b.over
	for _, w := range b.sides {
		h := w.Structure
		if h <= 0 {
			continue
		}
		if !o.known || h < o.structure {
			o.structure, o.wall = h, w.Wall
		}
		o.highest = max(o.highest, h)
		o.known = true
	}
	b.joists()
	for i := range b.room.Above.InTheWay {
		b.obstacle(i)
	}
}

// joists finds the centre lines of the joists.
func (b *builder) joists() {
	j := b.room.Above.Joists
	o := &b.over
	if j == nil {
		return
	}
	o.along = axisOf(j.RunFrom)
	if j.Unknown || axisOf(j.From) != o.along.other() || j.Spacing <= 0 && len(j.Centres) == 0 {
		return
	}
	// The places run off the face under the tape, square to it; a wall out of
	// square is taken at its middle.
	r := b.taped.reach[axisOf(j.From)]
	low := j.From == axisOf(j.From).low()
	from := (r.highIn + r.highOut) / 2
	if low {
		from = (r.lowIn + r.lowOut) / 2
	}
	put := func(v geom.Length) bool {
		at := from - v
		if low {
			at = from + v
		}
		room := b.ground.reach[axisOf(j.From)]
		if at > room.lowOut && at < room.highOut {
			o.joists = append(o.joists, joist{at})
		}
		return v < r.wide()
	}
	for _, c := range j.Centres {
		put(c)
	}
	if len(j.Centres) == 0 {
		for v := j.First; put(v); v += j.Spacing {
		}
	}
	slices.SortFunc(o.joists, func(p, q joist) int { return int(max(-1, min(1, p.at-q.at))) })
	if slant := (r.lowIn - r.lowOut); low && slant > b.close || !low && r.highOut-r.highIn > b.close {
		b.find(finding.Finding{
			Place: j.At, Kind: finding.Note, Rule: "joists off a wall out of square",
			What:   fmt.Sprintf("wall %s is out of square; the joists are set off its middle", b.room.Walls[j.From].Name),
			Source: rules.OutOfSquareSource,
		})
	}
	b.out.Joists = make([]Joist, len(o.joists))
	for i, q := range o.joists {
		from, to := b.ends(o.along, q.at)
		b.out.Joists[i] = Joist{
			From: flip(o.along.at(from, q.at)), To: flip(o.along.at(to, q.at)),
			Thick: j.Size.Thick, Deep: j.Size.Wide,
		}
	}
}

// ends returns the wall faces at both ends of the line at c that runs along a.
func (b *builder) ends(a axis, c geom.Length) (from, to geom.Length) {
	// A joist may lie just outside the faces at one end of a slanting wall.
	r := b.ground.reach[a.other()]
	c = min(max(c, r.lowOut), r.highOut)
	return b.ground.face(a.low(), c), b.ground.face(a.high(), c)
}

// obstacle takes in one thing that hangs below the structure.
func (b *builder) obstacle(i int) {
	t := &b.room.Above.InTheWay[i]
	o := &b.over
	x := geom.Span{From: b.taped.reach[across].lowOut, To: b.taped.reach[across].highOut}
	d := geom.Span{From: b.taped.reach[down].lowOut, To: b.taped.reach[down].highOut}
	for _, s := range t.Spans {
		a := axisOf(s.Wall)
		r := b.taped.reach[a]
		span := geom.Span{From: r.highIn - s.To, To: r.highOut - s.From}
		if s.Wall == a.low() {
			span = geom.Span{From: r.lowOut + s.From, To: r.lowIn + s.To}
		}
		if a == across {
			x = span
		} else {
			d = span
		}
	}
	box := geom.RectOf(x.From, -d.To, x.To, -d.From)
	out := Obstacle{What: t.What, Box: box, Access: t.Access, Note: t.Note}
	switch {
	case t.FromUp.Known():
		out.Underside = t.FromUp.Value
	case t.Below.Known() && o.known:
		out.Underside = o.structure - t.Below.Value
	default:
		b.find(finding.Finding{
			Place: t.At, Kind: finding.Warning, Rule: "height of a thing overhead",
			What:   fmt.Sprintf("how low the %s hangs is not known; nothing is checked against it", t.What),
			Hint:   "give below structure, or underside from floor",
			Source: rules.LowestSource,
		})
		b.out.Obstacles = append(b.out.Obstacles, out)
		return
	}
	o.things = append(o.things, thing{index: i, what: t.What, box: box, underside: out.Underside})
	b.out.Obstacles = append(b.out.Obstacles, out)
}
