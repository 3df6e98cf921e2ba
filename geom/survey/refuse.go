package survey

import (
	"strconv"
	"strings"

	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// notFour says that only rooms of four walls are solved.
func notFour(r *room.Room) finding.Finding {
	f := finding.Finding{
		Kind: finding.Error, Rule: "four walls",
		What:    "only rooms of four walls, each turning right, are set out as yet",
		Found:   strconv.Itoa(len(r.Walls)) + " walls",
		Allowed: "four walls",
	}
	if len(r.Walls) > 0 {
		f.Place = r.Walls[min(4, len(r.Walls)-1)].At
	}
	return f
}

// cornerList names the corners of r.
func cornerList(r *room.Room) string {
	names := make([]string, 0, len(r.Walls))
	for i := range r.Walls {
		names = append(names, r.CornerName((i+1)%len(r.Walls)))
	}
	return strings.Join(names, ", ")
}

// notFixed says which length nothing gives.
func notFixed(r *room.Room, readings []reading) finding.Finding {
	var has [4]bool
	for _, n := range readings {
		if p := n.pair(); p < 4 {
			has[p] = true
		}
	}
	a := 0
	if has[0] || has[2] {
		a = 1
	}
	w, o := &r.Walls[a], &r.Walls[a+2]
	at := w.Length.At
	if at == (finding.Place{}) {
		at = w.At
	}
	return finding.Finding{
		Place: at, Kind: finding.Error, Rule: "readings fix the room",
		What:   "nothing gives the length of walls " + w.Name + " and " + o.Name,
		Found:  "neither is taped, nor enough else to work them out",
		Hint:   "tape one of them, or a diagonal such as " + r.CornerName(1) + " to " + r.CornerName(3),
		Source: practice,
	}
}

// impossible reports diagonals that make no triangle with two walls they meet,
// and in a square room those no longer than one wall.
func impossible(r *room.Room, readings []reading) []finding.Finding {
	var by [6]*reading
	for i := range readings {
		n := &readings[i]
		if p := n.pair(); by[p] == nil || n.weight() > by[p].weight() {
			by[p] = n
		}
	}
	var found []finding.Finding
	for i := range readings {
		d := &readings[i]
		if d.pair() < 4 {
			continue
		}
		for _, t := range [2][2]int{{d.from, d.from + 1}, {d.to, (d.to + 1) % 4}} {
			if f, bad := noTriangle(r, d, by[t[0]], by[t[1]]); bad {
				found = append(found, f)
				break
			}
		}
	}
	return found
}

// noTriangle reports diagonal d where it makes no triangle with walls a and b.
func noTriangle(r *room.Room, d, a, b *reading) (finding.Finding, bool) {
	f := finding.Finding{
		Place: d.at, Kind: finding.Error, Rule: "readings make a triangle",
		What:   "no room has these readings",
		Hint:   "tape the diagonal again, then the walls",
		Source: "a side of a triangle is less than the two others together",
	}
	switch {
	case a == nil && b == nil:
		return f, false
	case a == nil || b == nil:
		if a == nil {
			a = b
		}
		if !r.Survey.Square || d.value > a.value {
			return f, false
		}
		f.Found = d.said + " is " + r.Show.Say(d.value) + "; " + a.said + " is " + r.Show.Say(a.value)
		f.Allowed = "a diagonal longer than the wall, where corners are square"
		return f, true
	}
	f.Found = d.said + " is " + r.Show.Say(d.value) + "; " + a.said + " is " + r.Show.Say(a.value) +
		" and " + b.said + " " + r.Show.Say(b.value)
	sum, difference := a.value+b.value, (a.value - b.value).Abs()
	switch {
	case d.value >= sum:
		f.Allowed = "less than " + r.Show.Say(sum) + ", the two walls together"
		return f, true
	case d.value <= difference:
		f.Allowed = "more than " + r.Show.Say(difference) + ", the difference of the two walls"
		return f, true
	}
	return f, false
}

// wrongTurn says that the readings make a room that does not turn right at
// corner i.
func wrongTurn(r *room.Room, i int) finding.Finding {
	return finding.Finding{
		Place: r.Walls[i].At, Kind: finding.Error, Rule: "walls turn right",
		What:    "the readings make a room that does not turn right at corner " + r.CornerName(i),
		Allowed: "four corners, each turning right as walked clockwise inside",
		Hint:    "tape the diagonals again, and see that the walls are listed clockwise",
		Source:  practice,
	}
}

// noRoomLeft says that the linings of a wall's neighbours meet.
func noRoomLeft(r *room.Room, i int, s Side) finding.Finding {
	return finding.Finding{
		Place: r.Walls[i].At, Kind: finding.Error, Rule: "linings leave a room",
		What:    "the linings beside wall " + s.Wall + " leave nothing of it",
		Found:   "taped " + r.Show.Say(s.Taped) + "; linings take " + r.Show.Say(s.LeftOff) + " and " + r.Show.Say(s.RightOff),
		Allowed: "less than " + r.Show.Say(s.Taped) + " together",
		Hint:    "is the unit of the linings right?",
		Source:  practice,
		On:      "wall " + s.Wall,
	}
}
