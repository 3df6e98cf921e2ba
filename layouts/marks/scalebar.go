package marks

import (
	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// bar is a scale bar: marks in a unit.
type bar struct {
	unit  geom.Length
	marks [4]geom.Length // 0 and the others; the last one may be unused
	words [4]string
}

// bars returns the scale bars to choose from, longest first.
func bars(metric bool) []bar {
	if metric {
		const m, mm = geom.Metre, geom.Millimetre
		return []bar{
			{m, [4]geom.Length{0, 5, 10, 20}, [4]string{"0", "5", "10", "20 m"}},
			{m, [4]geom.Length{0, 2, 4, 10}, [4]string{"0", "2", "4", "10 m"}},
			{m, [4]geom.Length{0, 1, 2, 5}, [4]string{"0", "1", "2", "5 m"}},
			{m / 2, [4]geom.Length{0, 1, 2, 4}, [4]string{"0", "0.5", "1", "2 m"}},
			{m / 4, [4]geom.Length{0, 1, 2, 4}, [4]string{"0", "0.25", "0.5", "1 m"}},
			{mm * 100, [4]geom.Length{0, 1, 2, 5}, [4]string{"0", "100", "200", "500 mm"}},
			{mm * 50, [4]geom.Length{0, 1, 2, 4}, [4]string{"0", "50", "100", "200 mm"}},
			{mm * 10, [4]geom.Length{0, 2, 4, 10}, [4]string{"0", "20", "40", "100 mm"}},
			{mm * 10, [4]geom.Length{0, 1, 2, 5}, [4]string{"0", "10", "20", "50 mm"}},
		}
	}
	const ft, in = geom.Foot, geom.Inch
	return []bar{
		{ft, [4]geom.Length{0, 8, 16, 32}, [4]string{"0", "8", "16", "32 ft"}},
		{ft, [4]geom.Length{0, 4, 8, 16}, [4]string{"0", "4", "8", "16 ft"}},
		{ft, [4]geom.Length{0, 2, 4, 8}, [4]string{"0", "2", "4", "8 ft"}},
		{ft, [4]geom.Length{0, 1, 2, 4}, [4]string{"0", "1", "2", "4 ft"}},
		{ft, [4]geom.Length{0, 1, 2, 0}, [4]string{"0", "1", "2 ft", ""}},
		{in, [4]geom.Length{0, 3, 6, 12}, [4]string{"0", "3", "6", "12 in"}},
		{in, [4]geom.Length{0, 1, 2, 6}, [4]string{"0", "1", "2", "6 in"}},
		{in, [4]geom.Length{0, 1, 2, 0}, [4]string{"0", "1", "2 in", ""}},
	}
}

// ScaleBar returns, in paper, the scale bar of a view at a scale: the longest
// that prints within 52 mm, its right end at the point and its lower edge on
// it, fields black and white in turn and figures above.
func ScaleBar(at geom.Point, s paper.Scale, metric bool) drawing.Group {
	const most, high, textOff = 52.0, 1.3, 1.1
	list := bars(metric)
	pick := list[len(list)-1]
	for _, b := range list {
		if s.OnPaper(b.length()) <= paper.MM(most) {
			pick = b
			break
		}
	}
	left := at.X - geom.Length(s.OnPaper(pick.length()))
	x := func(i int) geom.Length { return left + geom.Length(s.OnPaper(pick.unit*pick.marks[i])) }
	full := paper.Full()
	up := on(full, high)
	g := drawing.Group{ID: "scale-bar", Title: "scale bar, " + s.Name}
	last := pick.fields()
	for i := range last {
		box := geom.RectOf(x(i), at.Y, x(i+1), at.Y+up)
		if i%2 == 0 {
			g.Elements = append(g.Elements, drawing.Area{Layer: drawing.TitleBlock, Outline: box.Polygon(), Fill: drawing.Black})
			continue
		}
		g.Elements = append(g.Elements, drawing.Polyline{
			Style:  drawing.Style{Layer: drawing.TitleBlock, Pen: drawing.P18},
			Points: box.Inset(on(full, 0.09)).Polygon(), Closed: true,
		})
	}
	for i := range last + 1 {
		t := drawing.Text{
			Layer: drawing.TitleBlock, At: geom.Pt(x(i), at.Y+up+on(full, textOff)), String: pick.words[i],
			Cap: paper.MM(labelCap), Anchor: drawing.Middle,
		}
		if i == last {
			t.Anchor = drawing.End
		}
		g.Elements = append(g.Elements, t)
	}
	return g
}

// fields returns how many fields the bar has.
func (b bar) fields() int {
	if b.marks[3] == 0 {
		return 2
	}
	return 3
}

// length returns the real length of the bar.
func (b bar) length() geom.Length { return b.unit * b.marks[b.fields()] }
