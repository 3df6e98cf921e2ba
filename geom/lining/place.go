package lining

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/room"
)

// start returns where the room file puts the left edge of a row that is whole
// long; asked is false when the place is left to the search, and trouble says
// why the place cannot be made out.
func (j *job) start(whole geom.Length) (start geom.Length, asked bool, trouble string) {
	a := &j.board.Across
	centred := func(x geom.Length) geom.Length { return x - whole/2 }
	switch a.Kind {
	case room.EdgeFromEnd:
		return j.edgeFromEnd(whole), true, ""
	case room.CentredOnWall:
		return centred(j.wall.Finished.Mid()), true, ""
	case room.CentredOnStud:
		x, trouble := j.stud(a.Stud)
		return centred(x), true, trouble
	case room.CentredBetween:
		x, trouble := j.stud(a.Stud)
		y, other := j.stud(a.Stud2)
		if trouble == "" {
			trouble = other
		}
		return centred((x + y) / 2), true, trouble
	case room.CentredOnThing:
		x, trouble := j.thing(a.Thing)
		return centred(x), true, trouble
	case room.Nowhere:
		return 0, false, ""
	}
	return 0, true, "a way of placing that boards do not have"
}

// edgeFromEnd resolves "left edge from right: X" and its like.
func (j *job) edgeFromEnd(whole geom.Length) geom.Length {
	a := &j.board.Across
	x := j.wall.Finished.From + a.Value
	if a.From == room.Right {
		x = j.wall.Finished.To - a.Value
	}
	switch a.Edge {
	case room.RightEdge:
		return x - whole
	case room.Centre:
		return x - whole/2
	}
	return x
}

// stud returns the middle of the stud that ref names.
func (j *job) stud(ref room.StudRef) (geom.Length, string) {
	number := ref.Number
	frame := &j.room.Walls[j.board.Wall].Frame.Studs
	if number == 0 {
		for i, m := range frame.Marks {
			if m == ref.Mark {
				number = i + 1
				if frame.From == room.Right {
					number = len(frame.Marks) - i
				}
			}
		}
	}
	uprights := j.uprights()
	last := 0
	for i, b := range uprights {
		if j.made == room.NewStuds {
			b.StudNo = i + 1 // studs of a wall to be built are counted as they will stand
		}
		last = max(last, b.StudNo)
		if number > 0 && b.StudNo == number {
			return b.X.Mid(), ""
		}
	}
	if number > 0 {
		return 0, fmt.Sprintf("stud %d; the last one of wall %s is stud %d", number, j.wallName(), last)
	}
	near, ok := geom.Length(0), false
	for _, b := range uprights {
		away := (b.X.Mid() - ref.Mark).Abs()
		if 2*away <= b.X.Len() && (!ok || away < (near-ref.Mark).Abs()) {
			near, ok = b.X.Mid(), true
		}
	}
	if !ok {
		return 0, "no stud at " + j.say(ref.Mark)
	}
	return near, ""
}

// uprights returns the uprights of the wall left to right, those that stand on
// each other once.
func (j *job) uprights() []Backing {
	var out []Backing
	for _, b := range j.wall.Backing {
		if !b.Level {
			out = append(out, b)
		}
	}
	slices.SortStableFunc(out, func(a, b Backing) int { return cmp.Compare(a.X.From, b.X.From) })
	return slices.CompactFunc(out, func(a, b Backing) bool { return a.X == b.X && a.StudNo == b.StudNo })
}

// thing returns the middle of the door, window or opening called name.
func (j *job) thing(name string) (geom.Length, string) {
	for i, full := range j.wall.Names {
		if full == name || hard(full) && strings.HasSuffix(full, " "+name) {
			return j.wall.Keep[i].X().Mid(), ""
		}
	}
	return 0, fmt.Sprintf("`%s` is not in wall %s", name, j.wallName())
}

// hard reports whether nothing can hang over the thing called name: it is a
// door, a window or an opening, not a box.
func hard(name string) bool {
	for _, word := range []string{"door ", "window ", "opening "} {
		if strings.HasPrefix(name, word) {
			return true
		}
	}
	return false
}

// typed says a place in the words of the room file: the row's outer edge from
// the end of the wall that the file measures from.
func (j *job) typed(start, whole geom.Length) (text string, value geom.Length) {
	if a := &j.board.Across; a.Kind == room.EdgeFromEnd && a.From == room.Right {
		value = j.wall.Finished.To - (start + whole)
		return "right edge from right: ", value
	}
	return "left edge from left: ", start - j.wall.Finished.From
}

// bottoms returns the heights at which the bottom of a row h high may stand:
// the one asked for, and, where that is a wish, the others at which it
// touches the floor, the ceiling or something on the wall, the nearest first.
func (j *job) bottoms(h geom.Length) (list []geom.Length, asked geom.Length) {
	u := &j.board.Up
	switch u.Kind {
	case room.BottomFromFloor:
		asked = u.Value
	case room.TopFromFloor:
		asked = u.Value - h
	case room.CentreFromFloor:
		asked = u.Value - h/2
	case room.TopFromCeiling:
		asked = j.wall.Ceiling - u.Value - h
	}
	if !u.Wish {
		return []geom.Length{asked}, asked
	}
	list = []geom.Length{asked, 0}
	if j.wall.Ceiling > 0 {
		list = append(list, j.wall.Ceiling-h)
	}
	for _, k := range j.wall.Keep {
		list = append(list, k.Max.Y, k.Min.Y-h)
	}
	return j.standing(list, asked, h), asked
}
