package framing

import (
	"testing"

	"roomwright/geom"
	"roomwright/geom/room"
)

// The same place given in every way: studs at 16 in a wall of 144.
func TestPlaces(t *testing.T) {
	ref := func(n int) room.StudRef { return room.StudRef{Number: n, At: at(13)} }
	for _, c := range []struct {
		name string
		a    room.Across
		left float64 // of the rough opening, 30 wide
	}{
		{"left edge from left", room.Across{Kind: room.EdgeFromEnd, Edge: room.LeftEdge, Value: inch(50)}, 50},
		{"right edge from left", room.Across{Kind: room.EdgeFromEnd, Edge: room.RightEdge, Value: inch(80)}, 50},
		{"centre from left", room.Across{Kind: room.EdgeFromEnd, Edge: room.Centre, Value: inch(65)}, 50},
		{"left edge from right", room.Across{Kind: room.EdgeFromEnd, Edge: room.LeftEdge, From: room.Right, Value: inch(94)}, 50},
		{"right edge from right", room.Across{Kind: room.EdgeFromEnd, Edge: room.RightEdge, From: room.Right, Value: inch(64)}, 50},
		{"from left, both edges", room.Across{Kind: room.SpanFromEnd, Value: inch(50), To: inch(80)}, 50},
		{"from right, both edges", room.Across{Kind: room.SpanFromEnd, From: room.Right, Value: inch(64), To: inch(94)}, 50},
		{"centred on wall", room.Across{Kind: room.CentredOnWall}, 57},
		{"centred on stud 5", room.Across{Kind: room.CentredOnStud, Stud: ref(5)}, 49},
		{"centred on stud at 64", room.Across{Kind: room.CentredOnStud, Stud: room.StudRef{Mark: inch(64), At: at(13)}}, 49},
		{"centred on a stud near 64-1/2", room.Across{Kind: room.CentredOnStud, Stud: room.StudRef{Mark: inch(64.5), At: at(13)}}, 49},
		{"centred between studs 4 and 7", room.Across{Kind: room.CentredBetween, Stud: ref(4), Stud2: ref(7)}, 57},
		{"centred between studs 7 and 4", room.Across{Kind: room.CentredBetween, Stud: ref(7), Stud2: ref(4)}, 57},
		{"left king: stud 4", room.Across{Kind: room.KingLeft, Stud: ref(4)}, 50.25},
		{"right king: stud 7", room.Across{Kind: room.KingRight, Stud: ref(7)}, 63.75},
	} {
		o := window()
		o.Kind, o.Liner, o.Shims = room.Rough, room.Want{}, room.Want{}
		o.Size.W = inch(30)
		c.a.At = at(13)
		o.Across = c.a
		w, _ := set(t, job(o))
		same(t, c.name, w.Openings[0].Rough.Min.X, inch(c.left))
		same(t, c.name+": width", w.Openings[0].Rough.W(), inch(30))
		if w.Openings[0].Clear != w.Openings[0].Rough || w.Openings[0].Sight != w.Openings[0].Rough {
			t.Errorf("%s: clear and sight differ from rough without a liner", c.name)
		}
	}
}

// The same height given in every way.
func TestHeights(t *testing.T) {
	for _, c := range []struct {
		name    string
		up      room.Up
		ceiling *room.Ceiling
	}{
		{"bottom from floor", room.Up{Kind: room.BottomFromFloor, Value: inch(37)}, nil},
		{"top from floor", room.Up{Kind: room.TopFromFloor, Value: inch(72.25)}, nil},
		{"centre from floor", room.Up{Kind: room.CentreFromFloor, Value: inch(54.625)}, nil},
		{"from floor, both edges", room.Up{Kind: room.SpanFromFloor, Value: inch(37), To: inch(72.25)}, nil},
		{"top from ceiling", room.Up{Kind: room.TopFromCeiling, Value: inch(17.75)}, &room.Ceiling{FaceFromFloor: want(90)}},
		{"top from a ceiling below the structure", room.Up{Kind: room.TopFromCeiling, Value: inch(17.75)}, &room.Ceiling{FaceBelowStructure: want(7)}},
	} {
		o := window()
		c.up.At = at(14)
		o.Up = c.up
		r := job(o)
		r.Ceiling = c.ceiling
		r.Walls[0].Structure = reading(inch(97.125), 7)
		if c.ceiling != nil && c.ceiling.FaceBelowStructure.Given() {
			r.Walls[0].Structure = reading(inch(97), 7)
		}
		w, _ := set(t, r)
		same(t, c.name, w.Openings[0].Rough.Min.Y, inch(36))
	}
	o := window()
	o.Up = room.Up{Kind: room.TopFromCeiling, Value: inch(17), At: at(14)}
	_, found := Build(job(o), 0, plan(job(o)))
	if has(found, "no ceiling to measure from") != 1 {
		t.Errorf("findings %+v", found)
	}
}

// Each size an opening can be given by comes to the same rough size: stops 3/4
// at each side (worked example computed for this project, framing E5 and E12b:
// clear 71-1/2 x 35-1/4, sight 70 x 33-3/4, rough 73-1/2 x 37-1/4).
func TestSizes(t *testing.T) {
	for _, c := range []struct {
		name string
		kind room.SizeKind
		w, h float64
		up   float64
	}{
		{"clear", room.Clear, 71.5, 35.25, 37},
		{"sight", room.Sight, 70, 33.75, 37.75},
		{"rough", room.Rough, 73.5, 37.25, 36},
		{"pane in hand, 1/8 less", room.PaneInHand, 71.375, 35.125, 37.0625},
	} {
		o := window()
		o.Kind, o.Size.W, o.Size.H, o.Stops = c.kind, inch(c.w), inch(c.h), want(0.75)
		o.Up.Value = inch(c.up)
		w, found := set(t, job(o))
		p := w.Openings[0]
		for _, r := range []struct {
			what string
			got  geom.Rect
			w, h float64
			low  float64
		}{{"rough", p.Rough, 73.5, 37.25, 36}, {"clear", p.Clear, 71.5, 35.25, 37}, {"sight", p.Sight, 70, 33.75, 37.75}} {
			same(t, c.name+": "+r.what+" width", r.got.W(), inch(r.w))
			same(t, c.name+": "+r.what+" height", r.got.H(), inch(r.h))
			same(t, c.name+": "+r.what+" bottom", r.got.Min.Y, inch(r.low))
		}
		if n := has(found, "room round a pane in hand"); (n == 1) != (c.kind == room.PaneInHand) {
			t.Errorf("%s: %d notes about a pane", c.name, n)
		}
	}
}
