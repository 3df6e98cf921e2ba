package survey

import (
	"slices"
	"strconv"
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// practice is the source of what this package takes for granted.
const practice = "common practice, no source"

// doesNotClose reports the reading that is most likely wrong where a misfit is
// greater than what is accepted.
func doesNotClose(r *room.Room, s solver, checks []check) []finding.Finding {
	var found []finding.Finding
	for _, part := range s.families(checks) {
		c, bad := s.suspect(r, part)
		if !bad {
			continue
		}
		f := finding.Finding{
			Place: c.at, Kind: finding.Error, Rule: "survey closes",
			What:    "the survey does not close",
			Found:   c.said + " is " + r.Show.Say(c.value) + "; " + s.others(c, part) + " " + r.Show.Say(nearest(c.wanted)),
			Allowed: "a misfit of " + amount(r, c.allowed(r)) + " (" + allowedBy(r, c) + ")",
			Hint:    "tape it again, then the others",
			Source:  practice,
		}
		if more := s.doubt(r); more != "" {
			f.Hint += "; " + more
		}
		found = append(found, f)
	}
	return found
}

// allowedBy says what sets the greatest misfit accepted of c.
func allowedBy(r *room.Room, c check) string {
	if c.allowed(r) > closesWithin(r) {
		return "what the rough readings let it be"
	}
	return "closes within"
}

// doubt says what else than a slip of the tape may be wrong.
func (s solver) doubt(r *room.Room) string {
	switch {
	case s.shape == free && s.spare() == 1:
		return "one spare reading shows that something is wrong, not what"
	case s.shape == free:
		return ""
	case !s.diagonals():
		return "if the corners are not square, tape the diagonals too"
	case r.Survey.Square:
		return "if the corners are not square, leave out `corners: square`"
	}
	return "if the corners are not square, tape all walls and both diagonals"
}

// diagonals reports whether a diagonal was taped.
func (s solver) diagonals() bool {
	return slices.ContainsFunc(s.readings, func(r reading) bool { return r.pair() > 3 })
}

// spare returns how many readings there are beyond those that fix the corners.
func (s solver) spare() int { return len(s.readings) - s.shape.count() }

// others says which readings want c to be something else.
func (s solver) others(c check, part []check) string {
	if len(part) == 2 {
		for _, o := range part {
			if o.name != c.name {
				return o.said + " wants"
			}
		}
	}
	if s.shape == rectangle && s.diagonals() {
		return "the other " + number(len(part)-1) + " and square corners want"
	}
	return "the other " + number(len(part)-1) + " want"
}

// number spells small numbers.
func number(n int) string {
	words := []string{"none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"}
	if n < len(words) {
		return words[n]
	}
	return strconv.Itoa(n)
}

// amount prints a tolerance with its unit in words: 1/2 in, 12 mm.
func amount(r *room.Room, l geom.Length) string {
	show := r.Show
	if show.Form == measure.FeetAndInches {
		show.Form = measure.InchesOnly
	}
	show.Named = true
	return show.Say(l)
}

// spreads reports lengths that were taped more than once: how far apart the
// readings are.
func spreads(r *room.Room, readings []reading) []finding.Finding {
	var found []finding.Finding
	for _, n := range readings {
		all := n.taped.All
		if len(all) < 2 {
			continue
		}
		least, most, said := all[0], all[0], make([]string, 0, len(all))
		for _, l := range all {
			least, most = min(least, l), max(most, l)
			said = append(said, r.Show.Say(l))
		}
		f := finding.Finding{
			Place: n.at, Kind: finding.Note, Rule: "taped more than once",
			What:   n.said + " was taped " + number(len(all)) + " times, " + amount(r, most-least) + " apart; the mean is used",
			Found:  strings.Join(said, ", ") + "; mean " + r.Show.Say(n.value),
			Source: practice,
		}
		within := closesWithin(r)
		if n.rough {
			within = max(within, 2*n.tol)
		}
		if most-least > within {
			f.Kind = finding.Error
			f.What = "readings of one length do not agree"
			f.Found = n.said + " is " + strings.Join(said, ", ")
			f.Allowed = "within " + amount(r, within) + " of each other (closes within)"
			f.Hint = "tape it again, and keep the readings that agree"
		}
		found = append(found, f)
	}
	return found
}

// notes says what was assumed, what was worked out, and how well it closes.
func notes(r *room.Room, s solver, checks []check, plan Plan) []finding.Finding {
	var found []finding.Finding
	first := &r.Walls[0]
	if s.shape == rectangle && !r.Survey.Square {
		found = append(found, finding.Finding{
			Place: first.At, Kind: finding.Note, Rule: "completed by square",
			What:   "the corners are taken as square: the readings alone do not fix them",
			Hint:   "tape the diagonals " + r.CornerName(1) + " to " + r.CornerName(3) + " and " + r.CornerName(0) + " to " + r.CornerName(2),
			Source: practice,
		})
	}
	for i := range r.Walls {
		w := &r.Walls[i]
		if w.Length.Known() {
			continue
		}
		at := w.Length.At
		if at == (finding.Place{}) {
			at = w.At
		}
		found = append(found, finding.Finding{
			Place: at, Kind: finding.Note, Rule: "wall worked out",
			What:   "wall " + w.Name + " is worked out from the other readings",
			Found:  r.Show.Say(long(plan.Taped[(i+1)%4].Sub(plan.Taped[i]))),
			Source: practice,
		})
	}
	found = append(found, touched(r)...)
	return append(found, greatest(r, checks))
}

// greatest says which misfit is the greatest.
func greatest(r *room.Room, checks []check) finding.Finding {
	f := finding.Finding{Place: r.Walls[0].At, Kind: finding.Note, Rule: "greatest misfit", Source: practice}
	var most *check
	for i := range checks {
		c := &checks[i]
		if c.ok && (most == nil || c.by().Abs() > most.by().Abs()) {
			most = c
		}
	}
	if most == nil {
		f.What = "nothing checks the survey: no reading can be worked out from the others"
		f.Hint = "one reading more, such as a diagonal, would show a slip"
		return f
	}
	f.Place = most.at
	f.What = "greatest misfit of the survey: " + amount(r, most.by().Abs()) + " at " + most.said
	f.Found = "read " + r.Show.Say(most.value) + "; the others want " + r.Show.Say(nearest(most.wanted))
	f.Allowed = "a misfit of " + amount(r, most.allowed(r)) + " (" + allowedBy(r, *most) + ")"
	return f
}

// touched warns where it is not known which face the tape touched and it matters.
func touched(r *room.Room) []finding.Finding {
	var found []finding.Finding
	for i := range r.Walls {
		w := &r.Walls[i]
		t := lined(w)
		if w.TapeOn != room.FaceUnknown || t == 0 {
			continue
		}
		found = append(found, finding.Finding{
			Place: w.At, Kind: finding.Warning, Rule: "face not known",
			What:   "the tape on wall " + w.Name + " is taken to have touched the face there now, its lining",
			Found:  "tape on unknown; lining " + amount(r, t) + " thick",
			Hint:   "if it touched what is behind the lining, the room is " + amount(r, t) + " less here",
			Source: practice,
			On:     "wall " + w.Name,
		})
	}
	return found
}
