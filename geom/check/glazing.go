package check

import (
	"fmt"
	"math"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/framing"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// glazing judges the pane of an opening by the two places at which glass has
// to be safe; the four answers for windows are always printed.
func (k *checker) glazing(i int, o *framing.Opening) {
	g := &k.room.Openings[o.Index].Glazing
	if !g.Given || g.Sheet.None || o.Sight.Empty() {
		return
	}
	place := g.Sheet.At
	if place == (finding.Place{}) {
		place = o.At
	}
	k.window(i, o, place)
	for j := range k.walls {
		k.besideDoors(i, j, o, place)
	}
}

// window gives the four answers for a pane that is a window.
func (k *checker) window(i int, o *framing.Opening, place finding.Place) {
	s := o.Sight
	answers := [4]bool{
		s.W()*s.H() > rules.GlazingSquareFeet*geom.Foot*geom.Foot,
		s.Min.Y < rules.GlazingBottomBelow,
		s.Max.Y > rules.GlazingTopAbove,
		true,
	}
	word := func(n int) string {
		if answers[n] {
			return "yes"
		}
		return "no"
	}
	found := fmt.Sprintf("exposed area %s, more than %s: %s; bottom edge %s above the floor, less than %s: %s; top edge %s, more than %s: %s; walking surface taken to be at the pane, within %s: %s",
		k.area(s.W(), s.H()), k.nine(), word(0),
		k.say(s.Min.Y), k.say(rules.GlazingBottomBelow), word(1),
		k.say(s.Max.Y), k.say(rules.GlazingTopAbove), word(2),
		k.say(rules.GlazingWalkingWithin), word(3))
	f := finding.Finding{
		Place: place, Kind: finding.Note, Rule: "safety glazing, window",
		What:    "the pane of opening " + o.Name + " is not in a hazardous place by the four tests for windows",
		Found:   found,
		Allowed: "hazardous when all four are yes; the code adopted where you are decides",
		Source:  rules.GlazingSource,
	}
	if answers == [4]bool{true, true, true, true} {
		f.Kind = finding.Caution
		f.What = "The pane of opening " + o.Name + " is in a hazardous place by all four tests for windows: it has to be safety glazing. " + k.marked(s)
	}
	k.on(i, f)
}

// nine prints the area from which a pane is large.
func (k *checker) nine() string {
	if k.room.Units == measure.Millimetres {
		return "0.84 m2 (9 ft2)"
	}
	return "9 ft2"
}

// marked says to what safety glazing of this size is marked.
func (k *checker) marked(s geom.Rect) string {
	category := "Category I"
	if s.W()*s.H() > rules.GlazingSquareFeet*geom.Foot*geom.Foot {
		category = "Category II"
	}
	return "Look for the mark of 16 CFR 1201 " + category + "; whether a plastic sheet counts is for the building department."
}

// besideDoors cautions of a pane in wall i beside a door in wall j.
func (k *checker) besideDoors(i, j int, o *framing.Opening, place finding.Place) {
	if o.Sight.Min.Y >= rules.GlazingDoorBelow {
		return
	}
	for n := range k.walls[j].Doors {
		d := &k.walls[j].Doors[n]
		if d.Window || d.Clear.Empty() {
			continue
		}
		away, near := k.away(i, j, o.Sight.X(), d)
		if !near {
			continue
		}
		k.on(i, finding.Finding{
			Place: place, Kind: finding.Caution, Rule: "safety glazing, door",
			What: "The pane of opening " + o.Name + " is beside door " + d.Name + " and low enough to be walked into: it has to be safety glazing. " + k.marked(o.Sight),
			Found: fmt.Sprintf("nearest edge %s from the door, bottom edge %s above the floor",
				k.say(away), k.say(o.Sight.Min.Y)),
			Allowed: fmt.Sprintf("more than %s from the door, or a bottom edge %s above the floor; exceptions are for the building department",
				k.say(rules.GlazingDoorWithin), k.say(rules.GlazingDoorBelow)),
			Source: rules.GlazingDoorSource,
		})
	}
}

// away returns how far a pane in wall i is from a door in wall j, and whether
// that is near: at either side of the door in its own wall, or at the hinge
// side of a door that opens in, across a corner. A hinge side or a way of
// opening that is not given counts as the worse one.
func (k *checker) away(i, j int, pane geom.Span, d *framing.Hole) (geom.Length, bool) {
	door := d.Clear.X()
	const within = rules.GlazingDoorWithin
	n := len(k.walls)
	switch {
	case i == j:
		gap := max(0, pane.From-door.To, door.From-pane.To)
		return gap, gap <= within
	case d.Thing.OpensOut && !d.Thing.OpensIn:
		return 0, false
	case i == (j+1)%n && !(d.Thing.Hinged && d.Thing.Hinge == room.Left):
		// The pane's wall begins where the door's wall ends.
		return across(k.walls[j].Length-door.To, pane.From)
	case j == (i+1)%n && !(d.Thing.Hinged && d.Thing.Hinge == room.Right):
		return across(door.From, k.walls[i].Length-pane.To)
	}
	return 0, false
}

// across returns the straight way across a square corner from a point that is
// x along one wall from it to a point y along the other.
func across(x, y geom.Length) (geom.Length, bool) {
	x, y = max(0, x), max(0, y)
	const within = rules.GlazingDoorWithin
	if x > within || y > within {
		return max(x, y), false
	}
	sum := x*x + y*y
	return geom.Length(math.Sqrt(float64(sum))), sum <= within*within
}
