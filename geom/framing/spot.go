package framing

import (
	"fmt"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// spot returns the span that a place across the wall gives a thing of width w.
// A king has no spot: it needs the jacks. What refers to a stud or to another
// thing is resolved too; where that fails there is a finding.
func (b *builder) spot(a room.Across, w geom.Length) (geom.Span, bool) {
	centred := func(c geom.Length) geom.Span { return geom.Span{From: c - w/2, To: c - w/2 + w} }
	switch a.Kind {
	case room.EdgeFromEnd:
		x, e := a.Value, a.Edge
		if a.From == room.Right {
			x = b.w.Length - x
		}
		switch e {
		case room.RightEdge:
			return geom.Span{From: x - w, To: x}, true
		case room.Centre:
			return centred(x), true
		}
		return geom.Span{From: x, To: x + w}, true
	case room.SpanFromEnd:
		s := geom.Span{From: min(a.Value, a.To), To: max(a.Value, a.To)}
		if a.From == room.Right {
			s = geom.Span{From: b.w.Length - s.To, To: b.w.Length - s.From}
		}
		return s, true
	case room.CentredOnWall:
		return centred(b.w.Length / 2), true
	case room.CentredOnStud:
		i := b.find(a.Stud)
		if i < 0 {
			return geom.Span{}, false
		}
		return centred(b.body(i).Mid()), true
	case room.CentredBetween:
		i, j := b.find(a.Stud), b.find(a.Stud2)
		if i < 0 || j < 0 {
			return geom.Span{}, false
		}
		return centred(geom.Span{From: b.studs[min(i, j)].left, To: b.right(max(i, j))}.Mid()), true
	case room.CentredOnThing:
		c, ok := b.thing(a)
		return centred(c), ok
	}
	return geom.Span{}, false
}

// thing returns the centre of the door, window or opening that a place names.
func (b *builder) thing(a room.Across) (geom.Length, bool) {
	for i := range b.w.Doors {
		if d := &b.w.Doors[i]; d.Name == a.Thing && d.known() {
			return d.Clear.X().Mid(), true
		}
	}
	for i := range b.r.Openings {
		if o := &b.r.Openings[i]; o.Name == a.Thing && o.Wall == b.w.Index && b.framing {
			if b.progress[i] == placing {
				b.say(finding.Error, a.At, "openings placed on each other",
					"the place of opening "+o.Name+" leads back to itself",
					"centred on: opening "+o.Name, "a place from an end of the wall", "", "")
				return 0, false
			}
			b.open(i)
			for j := range b.w.Openings {
				if b.w.Openings[j].Index == i {
					return b.w.Openings[j].Clear.X().Mid(), true
				}
			}
			return 0, false // it has its own finding
		}
	}
	b.say(finding.Error, a.At, "no such thing on the wall",
		fmt.Sprintf("wall %s has no door, window or opening %s to be centred on", b.w.Name, a.Thing),
		a.Thing, "a door, window or opening on wall "+b.w.Name+" whose place is known", "", "")
	return 0, false
}

// insets are the distances from the edges of the rough size to those of another.
type insets struct{ side, bottom, top geom.Length }

// of returns r made smaller by i.
func (i insets) of(r geom.Rect) geom.Rect {
	return geom.RectOf(r.Min.X+i.side, r.Min.Y+i.bottom, r.Max.X-i.side, r.Max.Y-i.top)
}

// sizes are the sizes of an opening, from the one that was given.
type sizes struct {
	doorway bool
	rough   struct{ w, h geom.Length }
	clear   insets // from rough to clear
	sight   insets // from rough to sight
	given   insets // from rough to the size that was given
}

// sized works out the sizes of an opening. In a doorway neither liner nor
// stops run along the floor.
func (b *builder) sized(o *room.Opening) (sizes, bool) {
	var s sizes
	if o.Size.W <= 0 || o.Size.H <= 0 {
		b.say(finding.Error, place(o.Size.At, o.At), "opening without a size",
			"opening "+o.Name+" has no size", b.size(o.Size.W, o.Size.H), "more than zero each way", "", "")
		return s, false
	}
	low, ok := b.low(o)
	if !ok {
		return s, false
	}
	s.doorway = low == 0
	even := func(d geom.Length) insets {
		if s.doorway {
			return insets{side: d, top: d}
		}
		return insets{side: d, bottom: d, top: d}
	}
	if o.Liner.Given() {
		s.clear = even(o.Liner.Value + o.Shims.Value)
	}
	s.sight = s.clear
	if o.Stops.Given() {
		s.sight = even(s.clear.side + o.Stops.Value)
	}
	switch o.Kind {
	case room.Clear:
		s.given = s.clear
	case room.Sight:
		s.given = s.sight
	case room.PaneInHand:
		gap := rules.PaneGapInches
		if b.inMillimetres() {
			gap = rules.PaneGapMillimetres
		}
		s.given = even(s.clear.side + gap/2)
		b.say(finding.Note, place(o.Size.At, o.At), "room round a pane in hand",
			"the clear size of opening "+o.Name+" is taken larger than the pane in hand",
			b.len(gap)+" in all, each way", "", "a sheet moves with warmth and damp: see the figures of the pane", rules.Habit)
	}
	s.rough.w = o.Size.W + 2*s.given.side
	s.rough.h = o.Size.H + s.given.bottom + s.given.top
	for _, in := range []insets{s.clear, s.sight} {
		if s.rough.w-2*in.side <= 0 || s.rough.h-in.bottom-in.top <= 0 {
			b.say(finding.Error, place(o.Size.At, o.At), "nothing left of an opening",
				"liners and stops leave nothing of opening "+o.Name,
				"rough "+b.size(s.rough.w, s.rough.h)+", less "+b.len(in.side)+" at each side",
				"more than zero", "", "")
			return s, false
		}
	}
	return s, true
}

// low returns the height of the lower edge of the size that was given.
func (b *builder) low(o *room.Opening) (geom.Length, bool) {
	v, at := o.Up.Value, place(o.Up.At, o.At)
	switch o.Up.Kind {
	case room.BottomFromFloor:
		return v, true
	case room.TopFromFloor:
		return v - o.Size.H, true
	case room.CentreFromFloor:
		return v - o.Size.H/2, true
	case room.TopFromCeiling:
		face, ok := b.ceiling()
		if !ok {
			b.say(finding.Error, at, "no ceiling to measure from",
				"the height of opening "+o.Name+" is given from a ceiling that is not there",
				"top from ceiling: "+b.len(v), "top from floor, or a ceiling in the file", "", "")
			return 0, false
		}
		return face - v - o.Size.H, true
	case room.SpanFromFloor:
		if o.Up.To-v != o.Size.H {
			b.say(finding.Error, at, "two heights for an opening",
				"the height of opening "+o.Name+" is given twice",
				b.len(o.Size.H)+" as its size; "+b.len(o.Up.To-v)+" from "+b.len(v)+" to "+b.len(o.Up.To),
				"one height", "give bottom from floor: "+b.len(v), "")
			return 0, false
		}
		return v, true
	}
	b.say(finding.Error, at, "height of an opening not known",
		"how high opening "+o.Name+" sits is not given", "nothing", "bottom from floor, top from floor or top from ceiling", "", "")
	return 0, false
}

// ceiling returns the height of the finished ceiling face.
func (b *builder) ceiling() (geom.Length, bool) {
	c := b.r.Ceiling
	if c == nil {
		return 0, false
	}
	if c.FaceFromFloor.Given() {
		return c.FaceFromFloor.Value, true
	}
	var lowest geom.Length
	for _, s := range b.plan.Sides {
		if s.Structure > 0 && (lowest == 0 || s.Structure < lowest) {
			lowest = s.Structure
		}
	}
	if lowest == 0 {
		lowest = b.w.Structure
	}
	return lowest - c.FaceBelowStructure.Value, c.FaceBelowStructure.Given() && lowest > 0
}
