package ceiling

import (
	"slices"

	"roomwright/geom"
)

// lay is one way to lay tee lines in one direction.
type lay struct {
	reach
	module geom.Length
	lines  []geom.Length // tee lines, low end first; none when one module spans the room
}

// layAt lays lines a module apart, one of them at the place phase or whole
// modules from it. It is false when a line would run into a wall that is out
// of square, or come nearer to one than bare.
func layAt(r reach, module, phase, bare geom.Length) (lay, bool) {
	l := lay{reach: r, module: module}
	if r.wide() <= module {
		return l, true
	}
	for c := firstAfter(r.lowOut, module, phase); c < r.highOut; c += module {
		if in := min(c-r.lowIn, r.highIn-c); in <= 0 || in < bare {
			return l, false
		}
		l.lines = append(l.lines, c)
	}
	return l, true
}

// firstAfter returns the least place above from that is whole modules from phase.
func firstAfter(from, module, phase geom.Length) geom.Length {
	return from + module - mod(from-phase, module)
}

// mod returns the remainder of l by m that is not negative.
func mod(l, m geom.Length) geom.Length { return l - l.RoundDown(m) }

// low returns the border at the low end, where it is narrowest.
func (l *lay) low() geom.Length {
	if len(l.lines) == 0 {
		return l.narrow()
	}
	return l.lines[0] - l.lowIn
}

// high returns the border at the high end, where it is narrowest.
func (l *lay) high() geom.Length {
	if len(l.lines) == 0 {
		return l.narrow()
	}
	return l.highIn - l.lines[len(l.lines)-1]
}

// least returns the lesser border.
func (l *lay) least() geom.Length { return min(l.low(), l.high()) }

// uneven returns by how much the mean widths of the two borders differ.
func (l *lay) uneven() geom.Length {
	if len(l.lines) == 0 {
		return 0
	}
	low := 2*l.lines[0] - l.lowIn - l.lowOut
	high := l.highIn + l.highOut - 2*l.lines[len(l.lines)-1]
	if d := (low - high).Abs() / 2; d > 1 {
		return d
	}
	return 0
}

// cells returns the number of cells.
func (l *lay) cells() int { return len(l.lines) + 1 }

// inner reports whether cell i lies between two tee lines.
func (l *lay) inner(i int) bool { return i >= 1 && i < len(l.lines) }

// whole reports whether cell i is a full module wherever it is measured.
func (l *lay) whole(i int) bool {
	switch {
	case l.inner(i):
		return true
	case len(l.lines) == 0:
		return l.narrow() == l.module
	case i == 0:
		return l.low() == l.module
	}
	return l.high() == l.module
}

// count returns the number of whole cells.
func (l *lay) count() int {
	n := 0
	for i := range l.cells() {
		if l.whole(i) {
			n++
		}
	}
	return n
}

// middle returns twice the place of the room's axis, the mean of both walls.
func (r reach) middle() geom.Length {
	return (r.lowIn + r.lowOut + r.highIn + r.highOut) / 2
}

// phases returns the finitely many places of a tee line at which an aim can
// be met or lost, each less than a module: the two symmetric choices by the
// narrowest, the mean and the widest place, borders of just the least width or
// of a full module at either wall, and the places asked for.
func phases(r reach, module, least geom.Length, asked []geom.Length) []geom.Length {
	middles := []geom.Length{r.lowIn + r.highIn, r.middle(), r.lowOut + r.highOut}
	var list []geom.Length
	for _, twice := range middles {
		list = append(list, twice/2, (twice+module)/2)
	}
	list = append(list,
		r.lowIn+least, r.highIn-least,
		r.lowIn+module, r.lowOut+module,
		r.highIn-module, r.highOut-module,
	)
	list = append(list, asked...)
	for i := range list {
		list[i] = mod(list[i], module)
	}
	slices.Sort(list)
	return slices.Compact(list)
}
