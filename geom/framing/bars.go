package framing

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/rules"
)

// bar is a stretch of the wall that no opening, king or jack can run into.
type bar struct {
	geom.Span
	leftStud  bool   // its left edge is that of a stud, which can serve as king
	rightStud bool   // likewise the right edge
	what      string // for messages: "the left end of wall A", "door entry"
	end       bool   // an end of the wall
}

// far is farther than any wall reaches.
const far = 1000 * geom.Metre

// doorReach is how far from a door the stud beside it is looked for.
const doorReach = 3 * geom.Inch

// bar finds the stretches that are there before any opening: the ends of the
// wall with their end studs, and doors and windows with the studs beside them.
func (b *builder) bar() {
	left := bar{Span: geom.Span{From: -far, To: 0}, what: "the left end of wall " + b.w.Name, end: true}
	right := bar{Span: geom.Span{From: b.w.Length, To: far}, what: "the right end of wall " + b.w.Name, end: true}
	if n := len(b.studs); n > 0 {
		if b.studs[0].left < b.t {
			left.To, left.rightStud = b.right(0), true
		}
		if b.w.Length-b.right(n-1) < b.t {
			right.From, right.leftStud = b.studs[n-1].left, true
		}
	}
	b.bars = append(b.bars, left, right)
	for i := range b.w.Doors {
		d := &b.w.Doors[i]
		if !d.known() {
			continue
		}
		x := bar{Span: d.Rough.X(), what: d.word()}
		if j := b.doorStud(x.Span, -1); j >= 0 {
			x.From, x.leftStud = b.studs[j].left, true
		}
		if j := b.doorStud(x.Span, +1); j >= 0 {
			x.To, x.rightStud = b.right(j), true
		}
		b.bars = append(b.bars, x)
	}
}

// doorStud returns the outermost of the studs that stand together at one side
// of a door, or -1.
func (b *builder) doorStud(x geom.Span, way int) int {
	best := -1
	for i := range b.studs {
		if b.studs[i].fate == under {
			continue
		}
		away := x.From - b.right(i)
		if way > 0 {
			away = b.studs[i].left - x.To
		}
		if away < -rules.DoubleUp || away > doorReach {
			continue
		}
		if best < 0 || (b.studs[i].left-b.studs[best].left)*geom.Length(way) < 0 {
			best = i
		}
	}
	for best >= 0 {
		next := best + way
		if next < 0 || next >= len(b.studs) || b.studs[next].fate == under {
			break
		}
		gap := b.studs[max(best, next)].left - b.right(min(best, next))
		if gap > rules.DoubleUp {
			break
		}
		best = next
	}
	return best
}

// fit is how an opening would stand with its kings' inner faces at a place.
type fit struct {
	kings     geom.Span // between the inner faces
	left      int       // stud that serves as left king, newKing or sharedKing
	right     int
	bars      []bar // that it runs into
	displaced []int // studs that stand where a new king or jack must
}

// What a king is when it is no stud of the wall.
const (
	newKing    = -1
	sharedKing = -2 // the king of another opening
)

// outer returns the span over the kings that are new.
func (f *fit) outer(t geom.Length) geom.Span {
	s := f.kings
	if f.left == newKing {
		s.From -= t
	}
	if f.right == newKing {
		s.To += t
	}
	return s
}

// try works out how an opening stands between kings, with so many jacks.
func (b *builder) try(kings geom.Span, jacks int) fit {
	f := fit{kings: kings, left: newKing, right: newKing}
	for i := range b.studs {
		if u := &b.studs[i]; u.fate == kept || u.fate == king {
			if b.right(i) == kings.From {
				f.left = i
			}
			if u.left == kings.To {
				f.right = i
			}
		}
	}
	for i := range b.w.Openings {
		o := &b.w.Openings[i]
		if f.left == newKing && o.Kings.To+b.t == kings.From {
			f.left = sharedKing
		}
		if f.right == newKing && o.Kings.From-b.t == kings.To {
			f.right = sharedKing
		}
	}
	outer := f.outer(b.t)
	for _, x := range b.bars {
		if x.Overlaps(outer) {
			f.bars = append(f.bars, x)
		}
	}
	wide := geom.Length(jacks) * b.t
	sides := []geom.Span{{From: outer.From, To: kings.From + wide}, {From: kings.To - wide, To: outer.To}}
	for i := range b.studs {
		if u := &b.studs[i]; u.fate == kept && (b.body(i).Overlaps(sides[0]) || b.body(i).Overlaps(sides[1])) {
			f.displaced = append(f.displaced, i)
		}
	}
	return f
}

// nearest returns the place of the left king's inner face nearest to want at
// which an opening stands well; snap moves a place to one that can be printed
// exactly, downwards and upwards.
func (b *builder) nearest(want, width geom.Length, jacks int, snap func(geom.Length) []geom.Length) (geom.Length, bool) {
	wide := geom.Length(jacks) * b.t
	places := []geom.Length{want}
	edge := func(left, right geom.Length) {
		places = append(places,
			right, right+b.t, left-wide, // left king, new king beside, jack against
			left-width, left-b.t-width, right+wide-width)
	}
	for i := range b.studs {
		edge(b.studs[i].left, b.right(i))
	}
	for _, x := range b.bars {
		edge(x.From, x.To)
	}
	var fits []geom.Length
	for _, p := range places {
		for _, s := range snap(p) {
			if f := b.try(geom.Span{From: s, To: s + width}, jacks); b.agreeable(&f) {
				fits = append(fits, s)
			}
		}
	}
	if len(fits) == 0 {
		return 0, false
	}
	return slices.MinFunc(fits, func(x, y geom.Length) int {
		return cmp.Or(cmp.Compare((x-want).Abs(), (y-want).Abs()), cmp.Compare(x, y))
	}), true
}

// agreeable reports whether an opening can stand so and costs no whole stud;
// in a wall to be built a stud that is left out costs nothing.
func (b *builder) agreeable(f *fit) bool {
	inside := f.kings.From >= 0 && f.kings.To <= b.w.Length
	return inside && len(f.bars) == 0 && (b.fresh() || len(f.displaced) == 0)
}

// widest returns the widest rough opening between the bars that which accepts.
func (b *builder) widest(jacks int, which func(bar) bool) geom.Length {
	var list []bar
	for _, x := range b.bars {
		if which(x) {
			list = append(list, x)
		}
	}
	slices.SortFunc(list, func(x, y bar) int { return cmp.Compare(x.From, y.From) })
	var best geom.Length
	for i := 1; i < len(list); i++ {
		l, r := list[i-1], list[i]
		w := r.From - l.To - 2*geom.Length(jacks)*b.t
		if !l.rightStud {
			w -= b.t
		}
		if !r.leftStud {
			w -= b.t
		}
		best = max(best, w)
	}
	return best
}
