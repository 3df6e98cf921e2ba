package framing

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// fate is what becomes of a stud.
type fate int

const (
	kept  fate = iota
	king       // serves an opening as king
	cut        // between the kings of an opening, cut at two lines
	out        // where a new king must stand: taken out whole, or not put in
	under      // under an existing window: only the part below it is there
)

// upright is a stud as found or as laid out.
type upright struct {
	left    geom.Length
	no      int // counted from the left, the first is 1
	fate    fate
	opening int // that decided its fate
	hole    int // of a window it stands under
}

// right returns the right edge of stud i.
func (b *builder) right(i int) geom.Length { return b.studs[i].left + b.t }

// body returns the span of stud i.
func (b *builder) body(i int) geom.Span { return geom.Span{From: b.studs[i].left, To: b.right(i)} }

// layout returns the left edges of studs t thick at a spacing in a wall of
// length l, from its left end. The end studs are extra. Where the last one
// runs into the end stud it is slid tight against it, or left out if the
// gap without it is no more than the spacing; likewise at the near end.
func layout(l, t, spacing, first geom.Length) []geom.Length {
	switch {
	case l < t:
		return nil
	case l < 2*t:
		return []geom.Length{0}
	}
	lefts := []geom.Length{0}
	last, end := t/2, l-t/2 // centres of the stud before and of the end stud
	for c := first; c < end; c += spacing {
		at := c
		if c < t/2+t {
			if c <= t/2 {
				continue
			}
			at = t/2 + t
		}
		if at > end-t {
			if end-last > spacing && end-t >= last+t {
				lefts = append(lefts, end-t-t/2)
			}
			break
		}
		if at < last+t {
			continue
		}
		lefts = append(lefts, at-t/2)
		last = at
	}
	return append(lefts, l-t)
}

// standing finds where the studs stand.
func (b *builder) standing() {
	p := &b.wall.Frame.Studs
	var lefts []geom.Length
	if p.Spacing > 0 {
		lefts = b.beside(b.laidOut(p))
	} else {
		lefts = b.asFound(p)
	}
	for i, left := range lefts {
		b.studs = append(b.studs, upright{left: left, no: i + 1, opening: -1, hole: -1})
	}
	if p.Spacing <= 0 {
		b.checkFound(p)
	}
	b.underWindows()
}

// laidOut returns the left edges of studs at a spacing, and says so where
// they stand already.
func (b *builder) laidOut(p *room.StudPlan) []geom.Length {
	if !b.fresh() && b.wanted() {
		b.say(finding.Note, place(p.At, b.wall.At), "studs at a spacing",
			"the studs of wall "+b.w.Name+" are taken at a spacing and not as found",
			b.len(p.Spacing)+" from "+side(p.From), "",
			"list each stud as found before anything is cut", rules.AsFound)
	}
	return b.laid(p)
}

// laid returns the layout without regard to doors.
func (b *builder) laid(p *room.StudPlan) []geom.Length {
	first := p.First
	if first <= 0 {
		first = p.Spacing
	}
	lefts := layout(b.w.Length, b.t, p.Spacing, first)
	if p.From == room.Right {
		for i := range lefts {
			lefts[i] = b.w.Length - lefts[i] - b.t
		}
		slices.Reverse(lefts)
	}
	return lefts
}

// wanted reports whether an opening is wanted in this wall.
func (b *builder) wanted() bool {
	for i := range b.r.Openings {
		if b.r.Openings[i].Wall == b.w.Index {
			return true
		}
	}
	return false
}

// asFound returns the left edges of studs that were marked one by one.
func (b *builder) asFound(p *room.StudPlan) []geom.Length {
	var lefts []geom.Length
	for _, m := range p.Marks {
		if p.From == room.Right {
			m = b.w.Length - m
		}
		switch p.Edge {
		case room.RightEdge:
			m -= b.t
		case room.Centre:
			m -= b.t / 2
		}
		lefts = append(lefts, m)
	}
	slices.SortFunc(lefts, func(x, y geom.Length) int { return cmp.Compare(x, y) })
	return lefts
}

// checkFound reports marks that no wall can have.
func (b *builder) checkFound(p *room.StudPlan) {
	slip := max(rules.DoubleUp, 2*b.r.Survey.TapeReadsTo)
	far := max(b.closes(), slip)
	at := place(p.At, b.wall.At)
	for i := range b.studs {
		past := max(-b.studs[i].left, b.right(i)-b.w.Length)
		if past > slip {
			kind := finding.Warning
			if past > far {
				kind = finding.Error
			}
			b.say(kind, at, "stud past the end of its wall",
				fmt.Sprintf("stud %d of wall %s stands past the end of the wall", b.studs[i].no, b.w.Name),
				b.len(b.studs[i].left)+" to "+b.len(b.right(i))+" from left",
				"0 to "+b.len(b.w.Length),
				"check which edge was read, from which end, and the length of the wall", "")
		}
		if i == 0 {
			continue
		}
		over := b.right(i-1) - b.studs[i].left
		if over <= 0 {
			continue
		}
		kind := finding.Warning
		if over > slip {
			kind = finding.Error
		}
		b.say(kind, at, "studs run into each other",
			fmt.Sprintf("studs %d and %d of wall %s run into each other", b.studs[i-1].no, b.studs[i].no, b.w.Name),
			fmt.Sprintf("left edges %s and %s", b.len(b.studs[i-1].left), b.len(b.studs[i].left)),
			"at least "+b.len(b.t)+" apart, the thickness of a stud",
			"check the marks, and the edge that they are of", "")
	}
	for i := range b.studs {
		for j := range b.w.Doors {
			d := &b.w.Doors[j]
			if d.Window || d.Clear.Empty() || d.Clear.X().Overlap(b.body(i)).Len() <= slip {
				continue
			}
			b.say(finding.Error, at, "stud in a doorway",
				fmt.Sprintf("stud %d of wall %s stands in door %s", b.studs[i].no, b.w.Name, d.Name),
				"stud "+b.span(b.body(i))+"; door "+b.span(d.Clear.X())+" from left",
				"no stud between the sides of a door", "check the marks and the place of the door", "")
		}
	}
}

// span prints a span as it is written in the room file.
func (b *builder) span(s geom.Span) string { return b.len(s.From) + " to " + b.len(s.To) }

// side returns the word for an end.
func side(e room.End) string {
	if e == room.Right {
		return "right"
	}
	return "left"
}

// uprights puts in the studs that stand full height, and those cut short
// under windows. What an opening cuts, it has put in itself.
func (b *builder) uprights() {
	for i := range b.studs {
		u := &b.studs[i]
		m := b.stand(Stud, "stud", b.state(), u.left, b.w.PlateTop, b.w.PlateLow)
		m.StudNo = u.no
		if b.fresh() {
			m.StudNo = 0
		}
		switch u.fate {
		case king:
			m.Role, m.Opening = King, u.opening
			if b.fresh() {
				m.Name = "king stud"
			}
		case out:
			if b.fresh() {
				continue
			}
			m.State, m.Opening = piece.Removed, u.opening
			m.From = b.r.Openings[u.opening].At
		case cut:
			continue
		case under:
			d := &b.w.Doors[u.hole]
			m = b.stand(CrippleBelow, "cripple", b.state(), u.left, b.w.PlateTop, d.Rough.Min.Y-b.t)
			m.StudNo = u.no
		}
		b.put(m)
	}
}

// find returns the index of the stud that ref names, or -1 and a finding.
func (b *builder) find(ref room.StudRef) int {
	if ref.Number > 0 && ref.Number <= len(b.studs) {
		return ref.Number - 1
	}
	best := -1
	if ref.Number == 0 {
		for i := range b.studs {
			if best < 0 || (b.reading(i)-ref.Mark).Abs() < (b.reading(best)-ref.Mark).Abs() {
				best = i
			}
		}
		if best >= 0 && (b.reading(best)-ref.Mark).Abs() <= b.t/2 {
			return best
		}
	}
	named := "stud " + strconv.Itoa(ref.Number)
	hint := fmt.Sprintf("the end stud at the left is stud 1, at the right stud %d", len(b.studs))
	if ref.Number == 0 {
		named = "stud at " + b.len(ref.Mark)
		if best >= 0 {
			hint = "the nearest is stud at " + b.len(b.reading(best))
		}
	}
	b.say(finding.Error, ref.At, "no such stud", "wall "+b.w.Name+" has no "+named,
		named, b.listStuds(), hint, "")
	return -1
}

// reading returns where the tape reads stud i: the edge and the end of the
// marks, or the centre when studs are at a spacing.
func (b *builder) reading(i int) geom.Length {
	p := &b.wall.Frame.Studs
	x := b.studs[i].left
	edge := p.Edge
	if p.Spacing > 0 {
		edge = room.Centre
	}
	switch edge {
	case room.RightEdge:
		x += b.t
	case room.Centre:
		x += b.t / 2
	}
	if p.From == room.Right {
		x = b.w.Length - x
	}
	return x
}

// listStuds names the studs of the wall, with where the tape reads them.
func (b *builder) listStuds() string {
	if len(b.studs) == 0 {
		return "no studs"
	}
	var at []string
	for i := range b.studs {
		at = append(at, b.len(b.reading(i)))
	}
	return fmt.Sprintf("stud 1 to stud %d, at %s", len(b.studs), strings.Join(at, ", "))
}
