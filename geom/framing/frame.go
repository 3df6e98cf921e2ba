package framing

import (
	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
)

// frameOpening decides what becomes of the studs at an opening and puts in its
// sticks.
func (b *builder) frameOpening(p *opening) {
	b.fates(p)
	jack := p.wide(b.t)
	rough := geom.RectOf(p.kings.From+jack, p.bottom, p.kings.To-jack, p.bottom+p.rough.h)
	gap := p.letIn / 2
	o := Opening{
		Name: p.o.Name, Index: p.index, At: p.o.At,
		Rough: rough, Clear: p.clear.of(rough), Sight: p.sight.of(rough),
		Header: geom.RectOf(p.kings.From+gap, rough.Max.Y, p.kings.To-p.letIn+gap, rough.Max.Y+p.head),
		Kings:  p.kings, LetIn: p.letIn, LeftKing: -1, RightKing: -1,
	}
	o.FlatOK = b.flatOK(&o)
	b.kings(p)
	b.jacks(p, &o)
	b.sills(p, &o)
	b.header(p, &o)
	if b.fresh() {
		b.cripples(p, &o)
	} else {
		b.cuts(p, &o)
	}
	b.checkHeader(p, &o)
	b.w.Openings = append(b.w.Openings, o)
	b.waits = append(b.waits, p)
	b.bars = append(b.bars, bar{
		Span:     geom.Span{From: p.kings.From - b.t, To: p.kings.To + b.t},
		leftStud: true, rightStud: true, what: "opening " + p.o.Name,
	})
}

// fates decides which studs serve as kings, are cut, or are taken out.
func (b *builder) fates(p *opening) {
	set := func(i int, f fate) { b.studs[i].fate, b.studs[i].opening = f, p.index }
	for _, i := range []int{p.left, p.right} {
		if i >= 0 && b.studs[i].fate == kept {
			set(i, king)
		}
	}
	for _, i := range p.displaced {
		if !b.within(i, p.kings) {
			set(i, out)
		}
	}
	for i := range b.studs {
		if b.studs[i].fate == kept && b.body(i).Overlaps(p.kings) {
			set(i, cut)
		}
	}
}

// within reports whether stud i stands wholly in a span.
func (b *builder) within(i int, s geom.Span) bool {
	return b.studs[i].left >= s.From && b.right(i) <= s.To
}

// add puts in a stick of an opening.
func (b *builder) add(p *opening, m Member) {
	m.Opening = p.index
	m.From = p.o.At
	b.put(m)
}

// kings puts in the kings that are no studs of the wall.
func (b *builder) kings(p *opening) {
	for _, side := range []struct {
		which int
		left  geom.Length
	}{{p.left, p.kings.From - b.t}, {p.right, p.kings.To}} {
		if side.which == newKing {
			b.add(p, b.stand(King, "king stud", piece.New, side.left, b.w.PlateTop, b.w.PlateLow))
		}
	}
}

// jacks puts in the jacks at both sides.
func (b *builder) jacks(p *opening, o *Opening) {
	for i := range geom.Length(p.jacks) {
		for _, left := range []geom.Length{p.kings.From + i*b.t, p.kings.To - (i+1)*b.t} {
			if p.split() {
				b.add(p, b.stand(LowerJack, "jack stud, lower", piece.New, left, b.w.PlateTop, o.Rough.Min.Y-p.sill))
				b.add(p, b.stand(UpperJack, "jack stud, upper", piece.New, left, o.Rough.Min.Y, o.Rough.Max.Y))
				continue
			}
			b.add(p, b.stand(Jack, "jack stud", piece.New, left, b.w.PlateTop, o.Rough.Max.Y))
		}
	}
}

// split reports whether the jacks stop at the rough sill, which then runs from
// king to king.
func (p *opening) split() bool { return p.o.Split && p.sill > 0 }

// sills puts in the rough sill.
func (b *builder) sills(p *opening, o *Opening) {
	if p.sill <= 0 {
		return
	}
	x := o.Rough.X()
	if p.split() {
		x = o.Header.X()
	}
	o.Sill = geom.RectOf(x.From, o.Rough.Min.Y-p.sill, x.To, o.Rough.Min.Y)
	for y := o.Sill.Min.Y; y < o.Sill.Max.Y; y += b.t {
		b.add(p, b.lie(Sill, "rough sill", piece.New, geom.RectOf(x.From, y, x.To, y+b.t)))
	}
}

// header puts in the plies of the header and the fillers between them, counted
// from the room side; flat ones lie on each other.
func (b *builder) header(p *opening, o *Opening) {
	h := &p.o.Header
	ply := piece.Profile{Name: h.Timber.Name, Thick: h.Timber.Thick, Wide: h.Timber.Wide}
	depth := 0
	for i := range plies(h) {
		m := b.lie(HeaderPly, "header ply", piece.New, o.Header)
		m.Profile = ply
		if h.Flat {
			m.Name = "flat header"
			m.Box.Min.Y = o.Header.Min.Y + geom.Length(i)*h.Timber.Thick
			m.Box.Max.Y = m.Box.Min.Y + h.Timber.Thick
			b.add(p, m)
			continue
		}
		m.Depth = depth
		b.add(p, m)
		depth++
		if h.Filler > 0 && i+1 < plies(h) {
			f := b.lie(HeaderFiller, "header filler", piece.New, o.Header)
			f.Profile = piece.Profile{Name: b.sheet(h.Filler) + " plywood", Thick: h.Filler, Wide: h.Timber.Wide}
			f.Depth = depth
			b.add(p, f)
			depth++
		}
	}
}

// sheet prints the thickness of a sheet as it is sold.
func (b *builder) sheet(l geom.Length) string {
	if b.inMillimetres() {
		return measure.Show{Form: measure.MillimetresOnly, To: geom.Millimetre / 10}.Say(l) + " mm"
	}
	return measure.Show{Form: measure.InchesOnly, To: geom.Inch / 64}.Say(l)
}

// cuts cuts the studs between the kings at two lines: the stubs stay as
// cripples, the middles go. In a doorway, and where a jack must stand, the stud
// goes from the plate up.
func (b *builder) cuts(p *opening, o *Opening) {
	upper := min(o.Header.Max.Y+p.letIn, b.w.PlateLow)
	lower := max(b.w.PlateTop, o.Rough.Min.Y-p.sill)
	for i := range b.studs {
		u := &b.studs[i]
		if u.fate != cut || u.opening != p.index {
			continue
		}
		lower := lower
		if !b.within(i, o.Rough.X()) {
			lower = b.w.PlateTop
		}
		for _, m := range []Member{
			b.stand(CrippleBelow, "cripple, stub of a stud", piece.Existing, u.left, b.w.PlateTop, lower),
			b.stand(Cutout, "stud middle", piece.Removed, u.left, lower, upper),
			b.stand(CrippleAbove, "cripple, stub of a stud", piece.Existing, u.left, upper, b.w.PlateLow),
		} {
			m.StudNo = u.no
			b.add(p, m)
		}
		if upper < b.w.PlateLow {
			o.UpperCut = upper
			o.Cuts = append(o.Cuts, Cut{StudNo: u.no, X: b.body(i), Height: upper, Upper: true})
		}
		if lower > b.w.PlateTop {
			o.LowerCut = lower
			o.Cuts = append(o.Cuts, Cut{StudNo: u.no, X: b.body(i), Height: lower})
		}
	}
}

// cripples puts in those of a wall to be built: on the layout, and one under
// each end of a rough sill that runs between jacks.
func (b *builder) cripples(p *opening, o *Opening) {
	top := o.Rough.Min.Y - p.sill
	var ends []geom.Length
	if p.sill > 0 && !p.split() && o.Rough.W() >= 2*b.t {
		ends = []geom.Length{o.Rough.Min.X, o.Rough.Max.X - b.t}
	}
	for _, left := range ends {
		b.add(p, b.stand(CrippleBelow, "cripple", piece.New, left, b.w.PlateTop, top))
	}
	for i := range b.studs {
		s := b.body(i)
		if s.From < p.kings.From || s.To > p.kings.To {
			continue
		}
		b.add(p, b.stand(CrippleAbove, "cripple", piece.New, s.From, o.Header.Max.Y, b.w.PlateLow))
		free := p.sill > 0 && s.From >= o.Rough.Min.X && s.To <= o.Rough.Max.X
		for _, left := range ends {
			free = free && !s.Overlaps(geom.Span{From: left, To: left + b.t})
		}
		if free {
			b.add(p, b.stand(CrippleBelow, "cripple", piece.New, s.From, b.w.PlateTop, top))
		}
	}
}
