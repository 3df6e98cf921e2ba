package framing

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// services finds where the things in the wall and on it are, and says which of
// them an opening meets.
func (b *builder) services() {
	for i := range b.wall.Services {
		s := &b.wall.Services[i]
		at := ServiceAt{What: s.What, OnFace: s.OnFace, Note: s.Note}
		x, known := b.spot(s.Across, s.Size.W)
		if !known {
			x, at.Unknown = geom.Span{To: b.w.Length}, true
		}
		y, known := b.reach(s)
		if !known {
			y, at.Unknown = geom.Span{To: max(b.w.Structure, b.w.Top)}, true
		}
		at.Box = geom.RectOf(x.From, y.From, x.To, y.To)
		b.w.Services = append(b.w.Services, at)
		for j := range b.w.Openings {
			b.meets(&b.w.Openings[j], &at, s)
		}
	}
}

// reach returns the heights between which a thing in the wall is.
func (b *builder) reach(s *room.Service) (geom.Span, bool) {
	v, h := s.Up.Value, s.Size.H
	switch s.Up.Kind {
	case room.BottomFromFloor:
		return geom.Span{From: v, To: v + h}, true
	case room.TopFromFloor:
		return geom.Span{From: v - h, To: v}, true
	case room.CentreFromFloor:
		return geom.Span{From: v - h/2, To: v - h/2 + h}, true
	case room.SpanFromFloor:
		return geom.Span{From: min(v, s.Up.To), To: max(v, s.Up.To)}, true
	case room.TopFromCeiling:
		if face, ok := b.ceiling(); ok {
			return geom.Span{From: face - v - h, To: face - v}, true
		}
	}
	return geom.Span{}, false
}

// touch reports whether two spans share a point; a line thing has no width.
func touch(s, t geom.Span) bool { return s.From <= t.To && t.From <= s.To }

// meets warns of a thing that an opening, its saw cuts or its nails meet.
func (b *builder) meets(o *Opening, at *ServiceAt, s *room.Service) {
	low, high := o.Rough.Min.Y-o.Sill.H(), o.Header.Max.Y+o.LetIn
	between := touch(at.Box.X(), o.Kings)
	crossed := between && touch(at.Box.Y(), geom.Span{From: low, To: high})
	posts := geom.Span{From: o.Kings.From - b.t, To: o.Kings.To + b.t}
	what, a := "", article(s.What)
	switch {
	case s.What == "blocking" && crossed:
		b.say(finding.Note, s.At, "blocking cut out", "blocking is where opening "+o.Name+" is cut, and goes with the studs",
			b.across(at.Box.X())+" from left, "+b.across(at.Box.Y())+" from floor", "", "see what it holds on either face", rules.Habit)
		return
	case s.What == "blocking":
		return
	case !touch(at.Box.X(), posts):
		return
	case at.Unknown:
		what = "it is not known where " + a + " is in wall " + b.w.Name + ", in which opening " + o.Name + " is cut"
	case crossed:
		what = a + " is where opening " + o.Name + " is cut"
	case between && wired(s.What):
		what = a + " is in a bay that opening " + o.Name + " cuts: its cable runs up or down through it"
	case at.Box.Min.X <= o.Rough.Min.X || at.Box.Max.X >= o.Rough.Max.X:
		what = a + " is where the jacks and kings of opening " + o.Name + " are nailed"
	default:
		return
	}
	found := s.What
	if at.Unknown {
		found += ", place not known"
	} else {
		found += " " + b.across(at.Box.X()) + " from left, " + b.across(at.Box.Y()) + " from floor"
	}
	if s.Note != "" {
		found += " (" + s.Note + ")"
	}
	who, source := licensed(s.What)
	b.say(finding.Caution, s.At, "something in the way of an opening", what, found,
		"nothing is sawn or nailed before it is found, isolated and proved so", who, source)
}

// article names a thing as a sentence does.
func article(what string) string {
	switch what {
	case "outlet":
		return "an outlet"
	case "gas":
		return "a gas pipe"
	case "other":
		return "something"
	}
	return "a " + what
}

// across prints a span, or one figure when it has no width.
func (b *builder) across(s geom.Span) string {
	if s.From == s.To {
		return b.len(s.From)
	}
	return b.span(s)
}

// wired reports whether a thing has a cable.
func wired(what string) bool {
	switch what {
	case "cable", "box", "switch", "outlet":
		return true
	}
	return false
}

// licensed says who moves a thing, and the source.
func licensed(what string) (hint, source string) {
	switch what {
	case "cable", "box", "switch", "outlet", "heater":
		return "a licensed electrician moves it by the local code; where a cable then passes through studs it stays 1-1/4 in from their edges or behind a steel plate",
			rules.CableSetBackSource
	case "gas":
		return "a licensed gas fitter shuts it off and moves it; any gas pipe in the bay stops the job", rules.Habit
	case "pipe":
		return "a licensed plumber moves it; any pipe in the bay stops the job", rules.Habit
	case "post":
		return "it may carry load: ask an engineer before it is touched", rules.Habit
	case "duct":
		return "a licensed heating contractor moves it by the local code", rules.Habit
	}
	return "find out what it serves, and leave it to a licensed tradesperson under the local code", rules.Habit
}
