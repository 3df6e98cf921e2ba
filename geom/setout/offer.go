package setout

import (
	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/framing"
	"roomwright/geom/lining"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/geom/rules"
	"roomwright/geom/survey"
)

// offers says of each wall what boards can be fixed to and must keep clear of.
func offers(r *room.Room, plan survey.Plan, walls []framing.Wall, c *ceiling.Ceiling) []lining.Wall {
	out := make([]lining.Wall, len(walls))
	for i := range walls {
		w, side := &walls[i], &plan.Sides[i]
		offer := lining.Wall{
			Index:    i,
			Length:   side.Taped,
			Finished: geom.Span{From: side.LeftOff, To: side.Taped - side.RightOff},
			Solid:    w.Make.Solid(),
			Backing:  backing(w.Members),
			Ceiling:  w.Structure,
		}
		if c != nil && c.Face > 0 {
			offer.Ceiling = c.Face
		}
		keepHoles(&offer, r, w)
		keepServices(&offer, w)
		out[i] = offer
	}
	return out
}

// backing returns the members that a screw can go into.
func backing(members []framing.Member) []lining.Backing {
	var out []lining.Backing
	for i := range members {
		m := &members[i]
		if m.State == piece.Removed {
			continue
		}
		b := lining.Backing{X: m.Box.X(), Y: m.Box.Y(), StudNo: m.StudNo}
		switch m.Role {
		case framing.Stud, framing.King, framing.Jack, framing.LowerJack, framing.UpperJack,
			framing.CrippleBelow, framing.CrippleAbove:
		case framing.BottomPlate, framing.TopPlate, framing.Sill, framing.HeaderPly, framing.DoorHeader:
			b.Level = true
		default:
			continue
		}
		out = append(out, b)
	}
	return out
}

// keepHoles keeps doors, windows and openings clear, with their casings.
func keepHoles(offer *lining.Wall, r *room.Room, w *framing.Wall) {
	add := func(box geom.Rect, casing geom.Length, name string) {
		if !box.Empty() {
			offer.Keep = append(offer.Keep, box.Inset(-casing))
			offer.Names = append(offer.Names, name)
		}
	}
	for i := range w.Doors {
		d := &w.Doors[i]
		word := "door "
		if d.Window {
			word = "window "
		}
		add(d.Clear, d.Thing.Casing, word+d.Name)
	}
	for i := range w.Openings {
		o := &w.Openings[i]
		name := "opening " + o.Name
		if trim := &r.Openings[o.Index].Casing; trim.Inside && trim.Width.Value > 0 {
			add(o.Clear, trim.Reveal.Value+trim.Width.Value, name)
			continue
		}
		add(o.Rough, 0, name)
	}
}

// keepServices sorts what is in the wall and on it into what boards keep clear
// of and what their screws could hit.
func keepServices(offer *lining.Wall, w *framing.Wall) {
	for i := range w.Services {
		s := &w.Services[i]
		front := s.OnFace
		switch s.What {
		case "box", "switch", "outlet":
			front = true
		case "blocking":
			continue
		}
		if !front || s.Unknown {
			offer.Services = append(offer.Services, s.Box)
			continue
		}
		box := s.Box
		if box.Empty() {
			box = box.Inset(-rules.BoxTaken)
		}
		offer.Keep = append(offer.Keep, box)
		offer.Names = append(offer.Names, s.What)
	}
}
