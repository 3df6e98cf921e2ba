package framing

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/geom/rules"
)

// post is an upright that stands full height beside a king.
type post struct {
	geom.Span
	no int // of the stud, 0 for the new king of an opening
}

// posts returns what stands full height once every opening is placed.
func (b *builder) posts() []post {
	var list []post
	for i := range b.studs {
		if u := &b.studs[i]; u.fate == kept || u.fate == king {
			list = append(list, post{b.body(i), u.no})
		}
	}
	for i := range b.sticks {
		if m := &b.sticks[i]; m.Role == King && m.State == piece.New {
			list = append(list, post{m.Box.X(), 0})
		}
	}
	return list
}

// packs finds the gaps beside new kings that are too narrow for a bay, and
// fills them. A gap between the kings of two openings belongs to the one that
// was placed first.
func (b *builder) packs(p *opening, o *Opening) {
	if b.fresh() {
		return
	}
	outer := p.outer(b.t)
	left, right := post{Span: geom.Span{To: -far}}, post{Span: geom.Span{From: far}}
	for _, s := range b.posts() {
		if s.To <= outer.From && s.To > left.To {
			left = s
		}
		if s.From >= outer.To && s.From < right.From {
			right = s
		}
	}
	if p.left == newKing {
		b.pack(p, o, geom.Span{From: left.To, To: outer.From}, left.no)
	}
	if p.right == newKing {
		b.pack(p, o, geom.Span{From: outer.To, To: right.From}, right.no)
	}
}

// pack fills one gap beside a king of an opening.
func (b *builder) pack(p *opening, o *Opening, x geom.Span, no int) {
	if x.Len() < rules.PackFrom || x.Len() >= rules.PackUpTo {
		return
	}
	for i := range b.w.Openings {
		for _, other := range b.w.Openings[i].Packs {
			if other.X == x {
				return
			}
		}
	}
	o.Packs = append(o.Packs, Pack{X: x, StudNo: no})
	m := b.stand(Packing, "packing", piece.New, x.From, b.w.PlateTop, b.w.PlateLow)
	m.Box.Max.X = x.To
	what := "one " + b.wall.Frame.Stud.Name
	if x.Len() != b.t {
		m.Profile = piece.Profile{Name: "plywood packing", Thick: x.Len(), Wide: b.w.Depth}
		what = "plywood"
		if x.Len() > b.t {
			what = "one " + b.wall.Frame.Stud.Name + " and " + b.len(x.Len()-b.t) + " of plywood"
		}
	}
	b.add(p, m)
	beside := "the king of the next opening"
	if no > 0 {
		beside = "stud " + itoa(no)
	}
	b.say(finding.Note, place(p.o.Across.At, p.o.At), "gap beside a king",
		"there is a narrow gap between a new king of opening "+p.o.Name+" and "+beside,
		b.len(x.Len()), "a bay of "+b.len(rules.PackUpTo)+" or more, or packed",
		"pack it with "+what, rules.PackSource)
}
