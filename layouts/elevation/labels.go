package elevation

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/geom/piece"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
)

// placeLabels puts the marks of pieces on them or beside them.
func (v *view) placeLabels(p *face.Places) {
	v.labelOut(p)
	for _, m := range v.labelled() {
		t := face.Target{Mark: string(m.Mark), New: true, Box: m.Box, Upright: upright(m)}
		t.LeftFirst = t.Upright && v.leftOfOpening(m)
		switch m.Role {
		case framing.HeaderPly:
			t.On, t.LowFirst = true, true
			t.Try = []int64{70, 60, 80, 50, 40, 30, 20, 90, 10, 4, 96}
		case framing.Sill:
			t.On, t.LowFirst = true, true
			t.Try = []int64{66, 60, 72, 54, 48, 80, 42, 36, 30, 24, 18, 12, 88, 94, 6}
		case framing.TopPlate:
			t.LowFirst = true
		case framing.King:
			t.Try = []int64{94, 90, 86, 82, 96, 78, 74, 70, 60, 50, 40, 30, 20, 10}
		}
		p.Label(t)
	}
	for _, row := range v.Result.Boards {
		if row.Wall != v.Index || v.framed() && len(v.Wall.Openings) > 0 {
			continue
		}
		for _, sh := range row.Sheets {
			p.Label(face.Target{Mark: string(sh.Mark), New: true, Box: sh.Box, Upright: true, On: true})
		}
	}
	v.stubs(p)
}

// outTries is where along a piece that is taken out its label is tried, in
// percent from its lower end.
func outTries() []int64 { return []int64{14, 20, 26, 32, 40, 48, 56, 64, 72, 80, 88, 8, 94} }

// labelOut puts the marks of pieces that are taken out: each its own where all
// find a near place, else one label for those of an opening, on a string with
// a dot in each of them.
func (v *view) labelOut(p *face.Places) {
	for from := 0; from < len(v.out); {
		to := from + 1
		for to < len(v.out) && v.out[to].Opening == v.out[from].Opening {
			to++
		}
		list := v.out[from:to]
		from = to
		each := func(near bool) func() bool {
			return func() bool {
				for _, m := range list {
					t := face.Target{Mark: string(m.Mark), Box: m.Box, Upright: upright(m), Try: outTries(), Near: near}
					if !p.Label(t) {
						return false
					}
				}
				return true
			}
		}
		if p.Try(each(true)) || len(list) > 1 && v.labelTogether(p, list) {
			continue
		}
		each(false)()
	}
}

// labelTogether puts one label for pieces that stand side by side.
func (v *view) labelTogether(p *face.Places, list []framing.Member) bool {
	list = slices.Clone(list)
	slices.SortStableFunc(list, func(a, b framing.Member) int { return cmp.Compare(a.Box.Min.X, b.Box.Min.X) })
	boxes := make([]geom.Rect, len(list))
	var names []piece.Mark
	for i, m := range list {
		boxes[i] = m.Box
		if !slices.Contains(names, m.Mark) {
			names = append(names, m.Mark)
		}
	}
	return p.LabelRow(marksList(names), boxes, outTries())
}

// labelled returns the new pieces that bear a label: all those of an opening,
// and of what repeats along the wall one of each mark.
func (v *view) labelled() []framing.Member {
	var out []framing.Member
	once := map[piece.Mark]bool{}
	for _, m := range v.fresh {
		switch m.Role {
		case framing.Stud, framing.BottomPlate, framing.TopPlate, framing.CrippleAbove, framing.CrippleBelow, framing.DoorHeader:
			if once[m.Mark] {
				continue
			}
			once[m.Mark] = true
		}
		out = append(out, m)
	}
	return out
}

// leftOfOpening reports whether a member stands left of the middle of its
// opening, or of the wall.
func (v *view) leftOfOpening(m framing.Member) bool {
	mid := v.Length / 2
	for _, o := range v.Wall.Openings {
		if o.Index == m.Opening {
			mid = o.Rough.X().Mid()
		}
	}
	return m.Box.Mid().X < mid
}

// stubs writes "cripple" beside one kept stub above each opening and one below.
func (v *view) stubs(p *face.Places) {
	for _, o := range v.Wall.Openings {
		for _, role := range []framing.Role{framing.CrippleAbove, framing.CrippleBelow} {
			var boxes []geom.Rect
			for _, m := range v.kept {
				if m.Role == role && m.Opening == o.Index {
					boxes = append(boxes, m.Box)
				}
			}
			// The second one first, as the labels of the jacks stand by the first.
			for i := range boxes {
				if p.Pointed("cripple", drawing.Words, boxes[(i+1)%len(boxes)]) {
					break
				}
			}
		}
	}
}
