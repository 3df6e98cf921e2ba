package framing

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// placeUp finds the height of an opening, moves it where it is only a wish,
// and says what does not fit under the plates.
func (b *builder) placeUp(p *opening) bool {
	o := p.o
	at := place(o.Up.At, o.At)
	low, ok := b.low(o)
	if !ok {
		return false
	}
	p.bottom = low - p.given.bottom
	least, most := b.w.PlateTop+p.sill, b.w.PlateLow-p.head-p.rough.h
	if p.doorway {
		least = 0
	}
	if most < least {
		b.tooTall(p, b.w.PlateLow-p.head-least)
		return false
	}
	easy := max(least, most-p.letIn) // with room to get the header in
	if o.Up.Wish && !p.doorway && (p.bottom < least || p.bottom > easy) {
		was := p.bottom
		p.bottom = min(max(p.bottom, b.even(p, least, true)), b.even(p, easy, false))
		b.say(finding.Warning, at, "opening moved",
			"opening "+o.Name+" does not fit at the height that was wished and is moved",
			b.height(p, was), "", "set out with "+b.height(p, p.bottom), "")
	}
	switch {
	case p.bottom < least:
		b.say(finding.Error, at, "opening too low",
			"opening "+o.Name+" leaves no room for its rough sill on the bottom plate",
			"top of the rough sill "+b.len(p.bottom), b.len(least)+" at least, plate and sill under it",
			b.height(p, b.even(p, least, true))+" fits; a doorway has its bottom at 0", "")
		return false
	case p.bottom > most:
		b.say(finding.Error, at, "no room for the header",
			"the header of opening "+o.Name+" runs into the top plate",
			"top of the header "+b.len(p.bottom+p.rough.h+p.head),
			b.len(b.w.PlateLow)+" at most, the underside of the top plates",
			b.height(p, b.even(p, easy, false))+" fits", "")
		return false
	case p.bottom > most-p.letIn:
		hint := ""
		if !p.doorway && easy >= least {
			hint = b.height(p, b.even(p, easy, false)) + " leaves it"
		}
		b.say(finding.Warning, at, "header tight under the plate",
			"there is less room over the header of opening "+o.Name+" than it takes to get it in",
			b.len(most-p.bottom), b.len(p.letIn)+" at least", hint, rules.Habit)
	}
	return true
}

// tooTall says that an opening and its header are taller than the wall.
func (b *builder) tooTall(p *opening, most geom.Length) {
	o := p.o
	hint := ""
	if h := (most - p.letIn - p.given.bottom - p.given.top).RoundDown(b.r.Show.To); h > 0 {
		hint = kindWord(o.Kind) + " " + b.size(o.Size.W, h) + " fits, or a shallower header"
	}
	found := "rough " + b.len(p.rough.h) + " and a header of " + b.len(p.head)
	if o.Kind != room.Rough {
		found = kindWord(o.Kind) + " " + b.len(o.Size.H) + ", " + found
	}
	b.say(finding.Error, place(o.Size.At, o.At), "opening taller than wall",
		"opening "+o.Name+" with its header is taller than its wall", found,
		"rough "+b.len(max(0, most))+" at most under this header and the top plates", hint, "")
}

// rise is how the height of an opening is written, and its value when the
// rough opening begins at a height.
func (b *builder) rise(p *opening, bottom geom.Length) (string, geom.Length) {
	low := bottom + p.given.bottom
	switch p.o.Up.Kind {
	case room.TopFromFloor:
		return "top from floor", low + p.o.Size.H
	case room.CentreFromFloor:
		return "centre from floor", low + p.o.Size.H/2
	case room.TopFromCeiling:
		if face, ok := b.ceiling(); ok {
			return "top from ceiling", face - low - p.o.Size.H
		}
	}
	return "bottom from floor", low
}

// height prints the height of an opening as it is written.
func (b *builder) height(p *opening, bottom geom.Length) string {
	k, v := b.rise(p, bottom)
	return k + ": " + b.len(v)
}

// even moves a height up or down to one that can be printed.
func (b *builder) even(p *opening, bottom geom.Length, up bool) geom.Length {
	_, v := b.rise(p, bottom)
	way := geom.Length(1)
	if p.o.Up.Kind == room.TopFromCeiling {
		way, up = -1, !up
	}
	if up {
		return bottom + way*(v.RoundUp(b.r.Show.To)-v)
	}
	return bottom + way*(v.RoundDown(b.r.Show.To)-v)
}
