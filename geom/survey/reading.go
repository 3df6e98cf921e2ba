package survey

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// reading is a distance between two corners as taped.
type reading struct {
	name     string // for a list: "A", "A/B to C/D"
	said     string // for a sentence: "wall A (D/A to A/B)", "A/B to C/D"
	from, to int    // corners; from < to
	wall     int    // the wall, or -1
	taped    room.Reading
	value    geom.Length
	tol      geom.Length // of one taping
	rough    bool        // taped "about" or with a tolerance of its own
	at       finding.Place
}

// weight returns the weight of r: the more tapings and the finer, the more.
func (r reading) weight() float64 {
	t := float64(r.tol)
	return float64(max(1, len(r.taped.All))) / float64(t*t)
}

// pair numbers the six ways between four corners: the walls 0 to 3, the
// diagonal from corner 0 to 2, the one from 1 to 3.
func (r reading) pair() int { return pairOf(r.from, r.to) }

// pairOf is pair for two corners, in either order.
func pairOf(a, b int) int {
	switch {
	case (a+1)%4 == b:
		return a
	case (b+1)%4 == a:
		return b
	case a == 0 || b == 0:
		return 4
	}
	return 5
}

// finest is the finest tolerance that weighs: finer ones would only spoil the
// arithmetic.
const finest = geom.Millimetre / 10

// gather lists the readings of r, walls first, with the findings about
// readings that cannot be used.
func gather(r *room.Room) ([]reading, []finding.Finding) {
	var list []reading
	var found []finding.Finding
	add := func(n reading) {
		if !n.taped.Known() {
			return
		}
		n.value, n.at = n.taped.Value, n.taped.At
		n.tol, n.rough = tolerance(r, n.taped)
		if n.from > n.to {
			n.from, n.to = n.to, n.from
		}
		if f, bad := unusable(r, n); bad {
			found = append(found, f)
			return
		}
		list = append(list, n)
	}
	for i := range r.Walls {
		w := &r.Walls[i]
		add(reading{
			name: w.Name, from: i, to: (i + 1) % 4, wall: i, taped: w.Length,
			said: "wall " + w.Name + " (" + r.CornerName(i) + " to " + r.CornerName((i+1)%4) + ")",
		})
	}
	for _, d := range r.Survey.Readings {
		if d.From < 0 || d.From > 3 || d.To < 0 || d.To > 3 || d.From == d.To {
			found = append(found, finding.Finding{
				Place: d.At, Kind: finding.Error, Rule: "reading between two corners",
				What:    "a reading does not run between two corners of the room",
				Allowed: cornerList(r),
				Source:  practice,
			})
			continue
		}
		name := r.CornerName(d.From) + " to " + r.CornerName(d.To)
		add(reading{name: name, said: name, from: d.From, to: d.To, wall: -1, taped: d.Reading})
	}
	return list, found
}

// unusable reports a reading that is no distance within a room.
func unusable(r *room.Room, n reading) (finding.Finding, bool) {
	f := finding.Finding{
		Place: n.at, Kind: finding.Error, Rule: "reading too long or too short",
		Found: n.said + " is " + r.Show.Say(n.value), Source: practice,
	}
	switch {
	case n.value <= 0:
		f.What = "a reading is not more than nothing"
		f.Allowed = "more than " + r.Show.Say(0)
		return f, true
	case n.value > Longest:
		f.What = "a reading is longer than any room"
		f.Allowed = "at most 100 m (" + r.Show.Say(Longest) + ")"
		f.Hint = "is the unit right?"
		return f, true
	}
	return finding.Finding{}, false
}

// tolerance returns how far one taping of t is trusted, and whether it is
// trusted less than a plain one on its writer's word.
func tolerance(r *room.Room, t room.Reading) (geom.Length, bool) {
	switch {
	case t.Within > 0:
		return max(t.Within, finest), true
	case t.About:
		return max(aboutMeans(r), finest), true
	}
	return max(tapeReadsTo(r), finest), false
}

// tapeReadsTo returns the accuracy of a plain reading; 1/16 in or 1 mm when
// the room does not say (common practice, no source).
func tapeReadsTo(r *room.Room) geom.Length {
	return orElse(r.Survey.TapeReadsTo, r.Units, geom.Inch/16, geom.Millimetre)
}

// aboutMeans returns the accuracy of an "about" reading; 1 in or 25 mm when
// the room does not say (common practice, no source).
func aboutMeans(r *room.Room) geom.Length {
	return orElse(r.Survey.AboutMeans, r.Units, geom.Inch, 25*geom.Millimetre)
}

// closesWithin returns the greatest misfit accepted; 1/2 in or 12 mm when the
// room does not say (common practice, no source).
func closesWithin(r *room.Room) geom.Length {
	return orElse(r.Survey.ClosesWithin, r.Units, geom.Inch/2, 12*geom.Millimetre)
}

// orElse returns l, or the default for the units of the file when it is not set.
func orElse(l geom.Length, units measure.System, inches, metric geom.Length) geom.Length {
	switch {
	case l > 0:
		return l
	case units == measure.Millimetres:
		return metric
	}
	return inches
}
