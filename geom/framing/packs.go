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
		b.pack(p, o, geom.Span{From: left.To, To: outer.From}, left.no, -1)
	}
	if p.right == newKing {
		b.pack(p, o, geom.Span{From: outer.To, To: right.From}, right.no, +1)
	}
}

// pack fills one gap beside a king of an opening, from the king outwards: with
// as many sticks of the studs' section as go in, and plywood for the rest. In
// a wall to be built it only speaks of it.
func (b *builder) pack(p *opening, o *Opening, x geom.Span, no, way int) {
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
	at := place(p.o.Across.At, p.o.At)
	beside := "the king of the next opening"
	if no > 0 {
		beside = "stud " + itoa(no)
	}
	what := "there is a narrow gap between a new king of opening " + p.o.Name + " and " + beside
	allowed := "a bay of " + b.len(rules.PackUpTo) + " or more, or packed"
	if b.fresh() {
		b.say(finding.Note, at, "gap beside a king", what, b.len(x.Len()), allowed,
			"the stud stays for the edges of the sheets; move the opening, or pack it", rules.Habit)
		return
	}
	o.Packs = append(o.Packs, Pack{X: x, StudNo: no})
	sticks, rest := x.Len()/b.t, x.Len()%b.t
	fill := func(name string, profile piece.Profile, wide geom.Length) {
		s := geom.Span{From: x.From, To: x.From + wide}
		x.From += wide
		if way < 0 {
			x.From -= wide
			s = geom.Span{From: x.To - wide, To: x.To}
			x.To -= wide
		}
		m := b.stand(Packing, name, piece.New, s.From, b.w.PlateTop, b.w.PlateLow)
		m.Box.Max.X = s.To
		m.Profile = profile
		b.add(p, m)
	}
	with := ""
	for range sticks {
		fill("packing", piece.Profile{}, b.t)
	}
	if sticks > 0 {
		with = itoa(int(sticks)) + " of " + b.wall.Frame.Stud.Name
	}
	if rest >= rules.PackFrom {
		fill("packing", piece.Profile{Name: b.r.Show.Say(rest) + " plywood", Thick: rest, Wide: b.w.Depth}, rest)
		if with != "" {
			with += " and "
		}
		with += b.len(rest) + " of plywood"
	}
	b.say(finding.Note, at, "gap beside a king", what, b.len(o.Packs[len(o.Packs)-1].X.Len()), allowed,
		"pack it with "+with, rules.PackSource)
}
