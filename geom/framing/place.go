package framing

import (
	"fmt"
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// progress is how far an opening has come.
type progress int

const (
	waiting progress = iota
	placing
	placed
)

// opening is an opening with its place, before the sticks are put in.
type opening struct {
	o     *room.Opening
	index int
	sizes
	jacks int
	sill  geom.Length // thickness of all rough sill members
	head  geom.Length // depth of the header
	letIn geom.Length
	fit
	bottom geom.Length // of the rough opening
}

// wide is the thickness of the jacks at one side.
func (p *opening) wide(t geom.Length) geom.Length { return geom.Length(p.jacks) * t }

// width is the distance between the inner faces of the kings.
func (p *opening) width(t geom.Length) geom.Length { return p.rough.w + 2*p.wide(t) }

// open places opening i and puts in its sticks, unless that was done already.
func (b *builder) open(i int) {
	if b.progress[i] != waiting {
		return
	}
	b.progress[i] = placing
	defer func() { b.progress[i] = placed }()
	p, ok := b.wants(i)
	if !ok {
		return
	}
	up := b.placeUp(p)
	across := b.placeAcross(p)
	if up && across {
		b.frameOpening(p)
	}
}

// wants works out what opening i wants, whatever its place.
func (b *builder) wants(i int) (*opening, bool) {
	o := &b.r.Openings[i]
	s, ok := b.sized(o)
	p := &opening{o: o, index: i, sizes: s, jacks: o.Jacks, letIn: o.Header.LetIn.Value}
	h := &o.Header
	if !h.Timber.Given() || h.Timber.Thick <= 0 {
		b.say(finding.Error, place(h.At, o.At), "no header",
			"opening "+o.Name+" has no header", "no plies", "2 of 2x6, or flat 2x4 where the wall carries nothing",
			"in a wall that carries load the header is as the engineer says", "")
		ok = false
	}
	if p.jacks < 1 {
		b.say(finding.Error, o.At, "no jacks",
			"nothing holds up the header of opening "+o.Name, fmt.Sprintf("%d jacks a side", p.jacks), "1 or more", "", "")
		ok = false
	}
	p.head = h.Timber.Wide
	if h.Flat {
		p.head = h.Timber.Thick * geom.Length(plies(h))
	}
	if !p.doorway {
		p.sill = geom.Length(max(0, o.Sill)) * b.t
	}
	if b.fresh() && h.LetIn.At == (finding.Place{}) && p.letIn != 0 {
		b.say(finding.Note, place(h.At, o.At), "no clearance in new work",
			"the header of opening "+o.Name+" goes in while its wall is built: no clearance is taken off",
			b.len(0), "", "write let-in to have one", "")
		p.letIn = 0
	}
	return p, ok
}

// plies returns how many plies a header has.
func plies(h *room.Header) int { return max(1, h.Plies) }

// placeAcross finds the place across the wall, moves it where it is only a
// wish, and says what is in the way.
func (b *builder) placeAcross(p *opening) bool {
	want, ok := b.leftFace(p)
	if !ok {
		return false
	}
	width := p.width(b.t)
	ends := func(x bar) bool { return x.end }
	if most := b.widest(p.jacks, ends); p.rough.w > most {
		b.tooWide(p, most)
		return false
	}
	p.fit = b.try(geom.Span{From: want, To: want + width}, p.jacks)
	if p.o.Across.Wish && !b.agreeable(&p.fit) {
		if near, ok := b.nearest(want, width, p.jacks, b.snap(p)); ok {
			f := b.try(geom.Span{From: near, To: near + width}, p.jacks)
			b.say(finding.Warning, place(p.o.Across.At, p.o.At), "opening moved",
				"opening "+p.o.Name+" does not fit where it was wished and is moved",
				b.at(p, want)+": "+b.inTheWay(&p.fit), "", "set out at "+b.at(p, near), "")
			p.fit = f
		}
	}
	if len(p.bars) > 0 {
		b.blocked(p)
		return false
	}
	if !b.fresh() {
		b.displacing(p)
	}
	return true
}

// leftFace returns where the inner face of the left king is wanted.
func (b *builder) leftFace(p *opening) (geom.Length, bool) {
	a := &p.o.Across
	switch a.Kind {
	case room.Nowhere, room.UnknownPlace:
		b.say(finding.Error, place(a.At, p.o.At), "place of an opening not known",
			"where opening "+p.o.Name+" is across wall "+b.w.Name+" is not given", "nothing",
			"an edge from left or right, centred on something, or the stud that is to be king", "", "")
		return 0, false
	case room.KingLeft, room.KingRight:
		i := b.find(a.Stud)
		if i < 0 {
			return 0, false
		}
		face := b.right(i)
		if a.Kind == room.KingRight {
			face = b.studs[i].left - p.width(b.t)
		}
		if f := b.studs[i].fate; f == cut || f == out || f == under {
			b.say(finding.Error, place(a.Stud.At, a.At), "stud cannot be king",
				fmt.Sprintf("stud %d cannot be king of opening %s: it does not stand full height", b.studs[i].no, p.o.Name),
				fmt.Sprintf("stud %d", b.studs[i].no), "a stud from plate to plate", "", "")
			return 0, false
		}
		return face, true
	case room.SpanFromEnd:
		if w := (a.To - a.Value).Abs(); w != p.o.Size.W {
			b.say(finding.Error, place(a.At, p.o.At), "two widths for an opening",
				"the width of opening "+p.o.Name+" is given twice",
				b.len(p.o.Size.W)+" as its size; "+b.len(w)+" from "+b.len(a.Value)+" to "+b.len(a.To),
				"one width", "give an edge from "+side(a.From)+": "+b.len(a.Value), "")
			return 0, false
		}
	}
	s, ok := b.spot(*a, p.o.Size.W)
	return s.From - p.given.side - p.wide(b.t), ok
}

// key is how the place of an opening is written, and the value at a place of
// the left king's inner face.
func (b *builder) key(p *opening, face geom.Length) (string, geom.Length) {
	a := &p.o.Across
	edge, from := room.LeftEdge, room.Left
	if a.Kind == room.EdgeFromEnd {
		edge, from = a.Edge, a.From
	}
	word := "left edge"
	x := face + p.wide(b.t) + p.given.side
	switch edge {
	case room.RightEdge:
		word, x = "right edge", x+p.o.Size.W
	case room.Centre:
		word, x = "centre", x+p.o.Size.W/2
	}
	if from == room.Right {
		x = b.w.Length - x
	}
	return word + " from " + side(from), x
}

// at prints a place of an opening as it is written.
func (b *builder) at(p *opening, face geom.Length) string {
	k, v := b.key(p, face)
	return k + ": " + b.len(v)
}

// snap returns the function that moves a place to those on both sides of it
// that can be printed.
func (b *builder) snap(p *opening) func(geom.Length) []geom.Length {
	return func(face geom.Length) []geom.Length {
		_, v := b.key(p, face)
		way := geom.Length(1)
		if p.o.Across.Kind == room.EdgeFromEnd && p.o.Across.From == room.Right {
			way = -1
		}
		step := b.r.Show.To
		return []geom.Length{face + way*(v.RoundDown(step)-v), face + way*(v.RoundUp(step)-v)}
	}
}

// near says where an opening would stand well, nearest to a place.
func (b *builder) near(p *opening, want geom.Length) string {
	width := p.width(b.t)
	if k := p.o.Across.Kind; k == room.KingLeft || k == room.KingRight {
		best := -1
		var least geom.Length
		for i := range b.studs {
			face := b.right(i)
			if k == room.KingRight {
				face = b.studs[i].left - width
			}
			f := b.try(geom.Span{From: face, To: face + width}, p.jacks)
			if u := b.studs[i].fate; u != kept && u != king || !b.agreeable(&f) {
				continue
			}
			if best < 0 || (face-want).Abs() < least {
				best, least = i, (face - want).Abs()
			}
		}
		if best >= 0 {
			if k == room.KingLeft {
				return fmt.Sprintf("left king: stud %d", b.studs[best].no)
			}
			return fmt.Sprintf("right king: stud %d", b.studs[best].no)
		}
	}
	face, ok := b.nearest(want, width, p.jacks, b.snap(p))
	if !ok {
		return ""
	}
	return b.at(p, face)
}

// inTheWay names what an opening runs into.
func (b *builder) inTheWay(f *fit) string {
	var list []string
	for _, x := range f.bars {
		list = append(list, x.what)
	}
	for _, i := range f.displaced {
		list = append(list, fmt.Sprintf("stud %d (%s)", b.studs[i].no, b.span(b.body(i))))
	}
	return strings.Join(list, ", ") + " in the way"
}

// tooWide says that an opening is wider than its wall.
func (b *builder) tooWide(p *opening, most geom.Length) {
	o := p.o
	found := "rough " + b.len(p.rough.w)
	if o.Kind != room.Rough {
		found = kindWord(o.Kind) + " " + b.len(o.Size.W) + ", " + found
	}
	hint := ""
	if w := most - 2*p.given.side; w > 0 {
		hint = kindWord(o.Kind) + " " + b.size(w.RoundDown(b.r.Show.To), o.Size.H) + " fits"
	}
	for i := range b.r.Walls {
		w := &b.r.Walls[i]
		if i != b.w.Index && w.MadeOf.Framed() && i < len(b.plan.Sides) {
			l := b.plan.Sides[i].Taped
			if l-(b.w.Length-most) >= p.rough.w {
				hint = strings.TrimPrefix(hint+"; or give the opening on wall "+w.Name+" ("+b.len(l)+")", "; ")
				break
			}
		}
	}
	b.say(finding.Error, place(o.Size.At, o.At), "opening wider than wall",
		"opening "+o.Name+" is wider than its wall", found,
		"rough "+b.len(most)+" at most between the end studs of wall "+b.w.Name, hint, "")
}

// kindWord is the key of a size.
func kindWord(k room.SizeKind) string {
	switch k {
	case room.Rough:
		return "rough"
	case room.Sight:
		return "sight"
	case room.PaneInHand:
		return "pane in hand"
	}
	return "clear"
}

// blocked says what an opening runs into that cannot give way.
func (b *builder) blocked(p *opening) {
	at := place(p.o.Across.At, p.o.At)
	outer := p.outer(b.t)
	hint := b.near(p, p.kings.From)
	if hint != "" {
		hint += " fits"
	} else if most := b.widest(p.jacks, func(bar) bool { return true }); most > 2*p.given.side {
		hint = "the widest that fits anywhere on wall " + b.w.Name + " is " +
			kindWord(p.o.Kind) + " " + b.len((most - 2*p.given.side).RoundDown(b.r.Show.To))
	}
	for _, x := range p.bars {
		rule, what := "openings run into each other", "opening "+p.o.Name+" runs into "+x.what
		allowed := "clear of " + b.span(x.Span)
		switch {
		case x.end:
			rule, what = "no room for jack and king", "no room for opening "+p.o.Name+" with its jacks and kings at "+x.what
			allowed = "from " + b.len(x.To)
			if x.To == far {
				allowed = "up to " + b.len(x.From)
			}
		case strings.HasPrefix(x.what, "door") || strings.HasPrefix(x.what, "window"):
			rule = "opening across a door"
		}
		b.say(finding.Error, at, rule, what,
			"jacks and kings included "+b.span(outer)+" from left", allowed, hint, "")
	}
}

// displacing says which studs a new king or jack takes the place of. One that
// is clear of the kings keeps its upper stub over the header.
func (b *builder) displacing(p *opening) {
	for _, i := range p.displaced {
		wide := p.wide(b.t)
		where := "left"
		stretch := geom.Span{From: p.outer(b.t).From, To: p.kings.From + wide}
		if !b.body(i).Overlaps(stretch) {
			where = "right"
			stretch = geom.Span{From: p.kings.To - wide, To: p.outer(b.t).To}
		}
		hint := b.near(p, p.kings.From)
		if hint != "" {
			hint += " leaves it standing"
		}
		goes := "is taken out whole"
		if b.within(i, p.kings) {
			goes = "is taken out from the plate up to the upper saw cut"
		}
		b.say(finding.Warning, place(p.o.Across.At, p.o.At), "stud where a king or jack must stand",
			fmt.Sprintf("stud %d of wall %s stands where the king and jacks at the %s of opening %s must, and %s",
				b.studs[i].no, b.w.Name, where, p.o.Name, goes),
			"stud "+b.span(b.body(i))+"; king and jacks "+b.span(stretch), "", hint, "")
	}
}

// inMillimetres reports whether the file is in millimetres.
func (b *builder) inMillimetres() bool { return b.r.Units == measure.Millimetres }
