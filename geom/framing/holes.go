package framing

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// holes finds the doors and windows that are there.
func (b *builder) holes() {
	for i := range b.wall.Doors {
		b.hole(&b.wall.Doors[i], false)
	}
	for i := range b.wall.Windows {
		b.hole(&b.wall.Windows[i], true)
	}
	for i := range b.w.Doors {
		for j := range i {
			d, e := &b.w.Doors[j], &b.w.Doors[i]
			if d.Rough.Overlaps(e.Rough) {
				b.say(finding.Error, e.Thing.At, "doors or windows run into each other",
					d.word()+" and "+e.word()+" run into each other",
					b.span(d.Rough.X())+" and "+b.span(e.Rough.X())+" from left", "apart", "tape both again", "")
			}
		}
	}
	if b.fresh() && len(b.w.Doors) > 0 {
		d := &b.w.Doors[0]
		b.say(finding.Error, d.Thing.At, "existing door in a new wall",
			"wall "+b.w.Name+" is to be built and cannot have "+d.word()+" yet",
			d.word(), "openings", "give it under openings", "")
	}
}

// word names a hole in messages.
func (h *Hole) word() string {
	if h.Window {
		return "window " + h.Name
	}
	return "door " + h.Name
}

// known reports whether the place of a hole is known.
func (h *Hole) known() bool { return !h.Rough.Empty() }

// hole adds one door or window; one whose place is not known has empty rectangles.
func (b *builder) hole(d *room.Existing, window bool) {
	h := Hole{Name: d.Name, Window: window || d.Window, Thing: *d}
	x, ok := b.spot(d.Across, d.Size.W)
	if off := x.Len() - d.Size.W; ok && off.Abs() > b.closes() {
		b.say(finding.Error, place(d.Across.At, d.At), "two widths for a door",
			"the width of "+h.word()+" is given twice",
			b.len(d.Size.W)+" as its size; "+b.len(x.Len())+" from edge to edge",
			"no more than "+b.len(b.closes())+" apart", "tape it again", "")
	}
	if ok && (!h.Window || d.Bottom.Known()) && !d.Bottom.Unknown {
		h.Clear = geom.RectOf(x.From, d.Bottom.Value, x.To, d.Bottom.Value+d.Size.H)
		h.Rough = h.Clear
		past := max(-x.From, x.To-b.w.Length)
		if past > b.closes() {
			b.say(finding.Error, place(d.Across.At, d.At), "door past the end of its wall",
				h.word()+" runs past the end of wall "+b.w.Name,
				b.span(x)+" from left", "0 to "+b.len(b.w.Length), "tape it again", "")
		}
	} else if b.wanted() {
		b.say(finding.Warning, d.At, "place of a door not known",
			"where "+h.word()+" is in wall "+b.w.Name+" is not known, though the wall is to be cut",
			"position unknown", "its edges from an end of the wall", "nothing on this wall is kept clear of it", "")
	}
	b.w.Doors = append(b.w.Doors, h)
}

// beside takes the studs of a layout that a door or window leaves no room for
// out of it, and stands one at each side of it.
func (b *builder) beside(lefts []geom.Length) []geom.Length {
	inside := func(x geom.Length) bool { return x >= 0 && x+b.t <= b.w.Length }
	for i := range b.w.Doors {
		d := &b.w.Doors[i]
		if !d.known() {
			continue
		}
		x := d.Rough.X()
		around := geom.Span{From: x.From - b.t, To: x.To + b.t}
		last := len(lefts) - 1
		var keep []geom.Length
		for j, left := range lefts {
			s := geom.Span{From: left, To: left + b.t}
			if !s.Overlaps(around) || (j == 0 || j == last) && !s.Overlaps(x) {
				keep = append(keep, left)
			} else if d.Window && s.Overlap(x).Len() == b.t {
				keep = append(keep, left)
			}
		}
		for _, left := range []geom.Length{around.From, x.To} {
			s := geom.Span{From: left, To: left + b.t}
			free := inside(left)
			for _, k := range keep {
				free = free && !s.Overlaps(geom.Span{From: k, To: k + b.t})
			}
			if free {
				keep = append(keep, left)
			}
		}
		slices.SortFunc(keep, func(x, y geom.Length) int { return cmp.Compare(x, y) })
		lefts = keep
	}
	return lefts
}

// underWindows finds the studs that end under a window.
func (b *builder) underWindows() {
	for i := range b.studs {
		for j := range b.w.Doors {
			d := &b.w.Doors[j]
			if d.Window && d.known() && d.Rough.X().Overlap(b.body(i)).Len() > rules.DoubleUp {
				b.studs[i].fate, b.studs[i].hole = under, j
			}
		}
	}
}

// overHoles puts in the framing over doors and windows that are there, which
// nobody has seen: a header of the studs' section on edge, and cripples on the
// layout where there is one.
func (b *builder) overHoles() {
	for i := range b.w.Doors {
		d := &b.w.Doors[i]
		if !d.known() || b.fresh() {
			continue
		}
		x := b.between(d.Rough.X())
		head := geom.RectOf(x.From, d.Rough.Max.Y, x.To, min(d.Rough.Max.Y+b.w.Depth, b.w.PlateLow))
		if head.Empty() {
			continue
		}
		b.put(b.lie(DoorHeader, "header as there", piece.Existing, head))
		if d.Window && d.Rough.Min.Y-b.t >= b.w.PlateTop {
			b.put(b.lie(Sill, "rough sill as there", piece.Existing,
				geom.RectOf(x.From, d.Rough.Min.Y-b.t, x.To, d.Rough.Min.Y)))
		}
		if p := &b.wall.Frame.Studs; p.Spacing > 0 {
			for _, left := range b.laid(p) {
				if left >= x.From && left+b.t <= x.To {
					b.put(b.stand(CrippleAbove, "cripple", piece.Existing, left, head.Max.Y, b.w.PlateLow))
				}
			}
		}
		b.say(finding.Note, d.Thing.At, "framing round a door not known",
			"the framing round "+d.word()+" is not known and is drawn with a header of "+b.wall.Frame.Stud.Name+" on edge",
			"", "", "look before anything is fixed there", rules.Habit)
	}
}

// between narrows a span to what full-height studs leave of it.
func (b *builder) between(x geom.Span) geom.Span {
	for i := range b.studs {
		if b.studs[i].fate == under || !b.body(i).Overlaps(x) {
			continue
		}
		if b.body(i).Mid() < x.Mid() {
			x.From = max(x.From, b.right(i))
		} else {
			x.To = min(x.To, b.studs[i].left)
		}
	}
	return x
}
