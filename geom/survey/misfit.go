package survey

import (
	"cmp"
	"math"
	"slices"

	"roomwright/geom"
	"roomwright/geom/room"
)

// check is one reading against what all the others want it to be.
type check struct {
	reading
	ok     bool     // the others give it
	wanted float64  // what they want
	sigma  float64  // how far reading and want may well be apart, from their tolerances
	slack  float64  // how far readings that are only roughly trusted may put them apart
	others solution // the corners without it
}

// by returns how far the reading is from what the others want, more than zero
// when it is too long.
func (c check) by() geom.Length {
	if !c.ok {
		return 0
	}
	return c.value - nearest(c.wanted)
}

// strange returns how strange the misfit is, against what the tolerances let
// expect.
func (c check) strange() float64 {
	if c.sigma == 0 {
		return 0
	}
	return math.Abs(float64(c.value)-c.wanted) / c.sigma
}

// check works out each reading from all the others.
func (s solver) check() []check {
	list := make([]check, len(s.readings))
	for i, r := range s.readings {
		c := check{reading: r}
		c.others, c.ok = s.solve(i)
		if c.ok {
			c.ok = s.predict(&c, i)
		}
		list[i] = c
	}
	return list
}

// predict fills in what the readings without number i want, and how surely.
func (s solver) predict(c *check, i int) bool {
	d, g := c.others.distance(c.from, c.to)
	normal, _ := s.normal(c.others, i)
	y, ok := normal.solve(g, s.shape.count())
	if !ok {
		return false
	}
	c.wanted = d
	c.sigma = math.Sqrt(1/c.weight() + max(0, dot(g, y)))
	if c.rough {
		c.slack = float64(c.tol)
	}
	for j, r := range s.readings {
		if j == i || !r.rough {
			continue
		}
		_, gj := c.others.distance(r.from, r.to)
		c.slack += float64(math.Abs(float64(r.weight()*dot(gj, y))) * float64(r.tol))
	}
	return true
}

// misfits lists the checks for the plan.
func misfits(checks []check) []Misfit {
	list := make([]Misfit, 0, len(checks))
	for _, c := range checks {
		m := Misfit{Reading: c.name, Read: c.value, Wanted: c.value, Unchecked: !c.ok, At: c.at}
		if c.ok {
			m.Wanted = nearest(c.wanted)
		}
		list = append(list, m)
	}
	return list
}

// allowed returns the greatest misfit that is accepted of c: what the survey
// must close within, or more where readings given as rough let it be more.
func (c check) allowed(r *room.Room) geom.Length {
	return max(closesWithin(r), nearest(c.slack))
}

// suspect returns the check whose reading is most likely wrong among those
// whose misfit is not accepted; ok is false when all are accepted.
//
// One spare reading cannot tell: then every reading is as strange as the
// others. Rooms are built square, so among readings about as strange the one
// is named without which the room is nearest to square; then the one that is
// trusted least, then the last.
func (s solver) suspect(r *room.Room, checks []check) (check, bool) {
	var bad []check
	most := 0.0
	for _, c := range checks {
		if c.ok && c.by().Abs() > c.allowed(r) {
			bad = append(bad, c)
			most = max(most, c.strange())
		}
	}
	if len(bad) == 0 {
		return check{}, false
	}
	// With one spare reading they differ only because the corners, worked out
	// without the one or the other, differ a little.
	least := float64(most * aboutAsStrange)
	if s.spare() == 1 {
		least = 0
	}
	bad = slices.DeleteFunc(bad, func(c check) bool { return c.strange() < least })
	slices.Reverse(bad)
	return slices.MinFunc(bad, func(a, b check) int {
		x, y := a.others.outOfSquare(), b.others.outOfSquare()
		if math.Abs(x-y) > sameSquareness {
			return cmp.Compare(x, y)
		}
		return cmp.Compare(a.weight(), b.weight())
	}), true
}

// Misfits within a tenth of the strangest are about as strange, and corners
// whose cosines differ by a millionth are as square (of our own choosing).
const (
	aboutAsStrange = 0.9
	sameSquareness = 1e-6
)

// families parts the checks of a rectangle without diagonals into those of its
// width and those of its depth, which say nothing of each other; all others
// belong together.
func (s solver) families(checks []check) [][]check {
	if s.shape == free || s.diagonals() {
		return [][]check{checks}
	}
	var parts [2][]check
	for _, c := range checks {
		parts[c.pair()%2] = append(parts[c.pair()%2], c)
	}
	return parts[:]
}
