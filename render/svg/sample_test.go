package svg

import (
	"os"
	"path/filepath"
	"testing"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// sample is a sheet with an invented wall: studs, an opening, chains on three
// sides, a ladder, a stick and every mark.
func sample() page {
	s := paper.Scale{Ratio: 24, Name: `1/2" = 1'-0"`}
	show := measure.Show{Form: measure.InchesOnly, To: geom.Inch / 8}
	mm := func(v float64) geom.Length { return s.Real(paper.MM(v)) }
	in := func(v float64) geom.Length { return geom.Length(v * float64(geom.Inch)) }
	var e []drawing.Element
	box := func(l, b, r, t float64, style drawing.Style) {
		e = append(e, drawing.Polyline{Style: style, Points: geom.RectOf(in(l), in(b), in(r), in(t)).Polygon(), Closed: true})
	}
	kept := drawing.Style{Layer: drawing.FrameKept, Pen: drawing.P25}
	fresh := drawing.Style{Layer: drawing.FrameNew, Pen: drawing.P50}
	studs := []float64{0, 14.75, 31, 46.875, 63, 79.125, 95, 111.25, 127.125, 140.5, 142, 176, 177.5, 180.75}
	e = append(e, marks.SawLine(geom.Span{From: 0, To: in(182.25)}, in(84.375), s))
	for _, x := range studs {
		box(x, 1.5, x+1.5, 93.25, kept)
	}
	box(0, 0, 182.25, 1.5, kept)
	box(0, 93.25, 182.25, 96.25, kept)
	for _, x := range []float64{38.75, 109.75} {
		box(x, 1.5, x+1.5, 93.25, fresh)
		outline := geom.RectOf(in(x), in(1.5), in(x+1.5), in(93.25)).Polygon()
		e = append(e, drawing.HatchLines(outline, drawing.Style{Layer: drawing.FramePattern, Pen: drawing.P18}, drawing.Rising45, paper.MM(1), s))
	}
	above := dimension.Chain{
		Side: dimension.Above, Object: in(96.25) + mm(3), NamesX: -mm(51), Scale: s, Show: show,
		Rows: []dimension.Row{
			{Name: "rough opening", At: []geom.Length{in(41.75), in(109.75)}},
			{Name: "kings and door", At: []geom.Length{0, in(40.25), in(111.25), in(143.5), in(176), in(182.25)}},
			{Name: "jacks", At: []geom.Length{0, in(38.75), in(40.25), in(41.75), in(109.75), in(111.25), in(182.25)}, Bold: []bool{false, true, true, false, true}},
			{Name: "whole wall", At: []geom.Length{0, in(182.25)}, Also: true},
		},
	}
	below := dimension.Chain{
		Side: dimension.Below, Object: -mm(28), NamesX: -mm(51), Scale: s, Show: show,
		Rows: []dimension.Row{
			{Name: "joist centers", At: []geom.Length{0, in(9.5), in(25.5), in(41.5), in(57.5), in(73.5), in(89.5), in(105.5), in(121.5), in(127.75)}, Merge: true},
			{Name: "borders", At: []geom.Length{0, in(18.25), in(39.75), in(63.75), in(87.75), in(111.75), in(112.5), in(114), in(127.75)}},
			{Name: "walls", At: []geom.Length{0, in(127.75), in(182.25)}},
		},
	}
	right := dimension.Chain{
		Side: dimension.RightOf, Object: in(182.25) + mm(4), Scale: s, Show: show,
		Rows: []dimension.Row{
			{At: []geom.Length{0, in(19.5), in(43.5), in(67.5), in(69), in(96.25)}},
			{At: []geom.Length{0, in(50), in(96.25)}},
		},
	}
	left := dimension.Ladder{WordsX: -mm(51), FiguresX: -mm(14.2), SpineX: -mm(8.4), Scale: s, Show: show, Heights: []dimension.Height{
		{Word: "finished floor"}, {Word: "lower saw cut", At: in(39.5), Accent: true}, {Word: "on rough sill", At: in(41)},
		{Word: "under header", At: in(77)}, {Word: "upper saw cut", At: in(84.375), Accent: true},
		{Word: "under plates", At: in(93.25)}, {Word: "structure", At: in(96.25)},
	}}
	stick := dimension.Stick{
		From: 0, To: in(182.25), Edge: -mm(4.2), Name: []string{"stud marks", "left edge, tape hooked", "at corner F/A; bold: new"},
		NamesX: -mm(51), Gaps: []geom.Span{{From: in(143.5), To: in(176)}}, Scale: s, Show: show,
		Marks: []dimension.StickMark{{At: in(38.75), Thick: in(1.5), Bold: true}, {At: in(40.25), Thick: in(1.5), Bold: true}, {At: in(109.75), Thick: in(1.5), Bold: true}, {At: in(182.25), Plain: true}},
	}
	for _, x := range studs {
		stick.Marks = append(stick.Marks, dimension.StickMark{At: in(x), Thick: in(1.5)})
	}
	for _, c := range []dimension.Chain{above, below, right} {
		list, _ := c.Draw()
		e = append(e, list...)
	}
	e = append(e, left.Draw()...)
	list, _ := stick.Draw()
	e = append(e, list...)
	for _, x := range []float64{46.875, 63, 79.125, 95} {
		e = append(e, marks.SawStroke(geom.Span{From: in(x), To: in(x + 1.5)}, in(84.375), s)...)
		e = append(e, marks.Crosses(geom.RectOf(in(x), in(41), in(x+1.5), in(77)), true, s)...)
	}
	e = append(e, dimension.Inside(geom.Pt(in(105), in(41)), geom.Pt(in(105), in(77)), true, s, show))
	p := marks.NewPlacer(s)
	p.BlockElements(e)
	for _, l := range []struct {
		mark  string
		isNew bool
		x, y  float64
	}{{"A1", true, 39.5, 90}, {"A3", true, 110.5, 60}, {"R1", false, 47.6, 50}, {"R2", false, 63.7, 50}, {"R3", false, 79.9, 50}, {"A2", true, 39.5, 20}} {
		if g, ok := p.Label(l.mark, l.isNew, geom.Pt(in(l.x), in(l.y))); ok {
			e = append(e, g)
		}
	}
	words, _ := p.Words([]string{"door", "existing"}, paper.MM(2.4), true, drawing.Words, geom.Pt(in(160), in(40)))
	e = append(e, words...)
	e = append(e,
		marks.WallLetter("F", geom.Pt(-mm(6), in(96.25)+mm(4)), dimension.Below, s),
		marks.WallLetter("B", geom.Pt(in(182.25)+mm(6), in(96.25)+mm(10)), dimension.LeftOf, s),
		marks.Pennant("X", geom.Pt(in(70), in(90)), marks.RightWay, s), marks.Pennant("Y", geom.Pt(in(155), in(70)), marks.Up, s))
	e = append(e, marks.LightPanel(geom.RectOf(in(146), in(8), in(170), in(32)), s)...)
	e = append(e, marks.Hanger(geom.Pt(in(152), in(55)), s)...)
	e = append(e, drawing.Line{Style: drawing.Style{Layer: drawing.MainTee, Pen: drawing.P100}, A: geom.Pt(in(155), in(55)), B: geom.Pt(in(172), in(55))})
	e = append(e, marks.Splice(geom.Pt(in(165), in(55)), true, s)...)
	e = append(e, marks.Callouts([]marks.Callout{
		{Lines: []string{"stub of the old stud, kept"}, Target: geom.Pt(in(181), in(91))},
		{Lines: []string{"lining, far side, cut", "flush under the header"}, Target: geom.Pt(in(178), in(86))},
		{Lines: []string{"filler 15/32"}, Mark: "A6", Target: geom.Pt(in(170), in(84))},
		{Lines: []string{"upper jack, beyond"}, Mark: "A3", Target: geom.Pt(in(178), in(40))},
	}, in(182.25)+mm(55), s)...)
	placed := drawing.Place(e, s, geom.Pt(geom.MM(71), geom.MM(104)))
	placed = append(placed,
		marks.ScaleBar(geom.Pt(geom.MM(264), geom.MM(258)), s, false),
		drawing.Text{At: geom.Pt(geom.MM(20), geom.MM(259)), String: "Framing, seen from inside the room", Cap: paper.MM(4.2), Bold: true},
		drawing.Text{At: geom.Pt(geom.MM(20), geom.MM(253)), String: `scale 1/2" = 1'-0"  (1:24)`, Cap: paper.MM(2.4)})
	size, _ := paper.ByName("tabloid", false)
	return page{title: "Wall A, an invented sample", desc: "Every mark once.", size: size, elements: placed}
}

// samplePlan is a sheet with an invented ceiling: sticks above and at the left,
// chains below and at the right with segments too small for their figures, and
// the signs in every direction.
func samplePlan() page {
	s := paper.Scale{Ratio: 24, Name: `1/2" = 1'-0"`}
	show := measure.Show{Form: measure.InchesOnly, To: geom.Inch / 8}
	mm := func(v float64) geom.Length { return s.Real(paper.MM(v)) }
	in := func(v float64) geom.Length { return geom.Length(v * float64(geom.Inch)) }
	list := func(v ...float64) (out []geom.Length) {
		for _, x := range v {
			out = append(out, in(x))
		}
		return out
	}
	var e []drawing.Element
	add := func(more []drawing.Element, _ geom.Length) { e = append(e, more...) }
	room := geom.RectOf(0, -in(131), in(181.25), 0)
	e = append(e, drawing.Polyline{Style: drawing.Style{Layer: drawing.WallFull, Pen: drawing.P50}, Points: room.Polygon(), Closed: true})
	tees := []float64{39.75, 63.75, 87.75, 111.75, 135.75, 159.75}
	top := dimension.Stick{From: 0, To: in(181.25), Edge: mm(14), Flip: true, Name: []string{"string marks, tape", "hooked at corner F/A;", "bold: tee line"}, NamesX: -mm(51), Scale: s, Show: show}
	top.Marks = append(top.Marks, dimension.StickMark{At: in(18.25), Plain: true}, dimension.StickMark{At: in(181.25), Plain: true})
	for _, x := range tees {
		top.Marks = append(top.Marks, dimension.StickMark{At: in(x), Plain: true, Bold: true})
		e = append(e, drawing.Line{Style: drawing.Style{Layer: drawing.Grid, Pen: drawing.P25}, A: geom.Pt(in(x), -in(131)), B: geom.Pt(in(x), 0)})
	}
	add(top.Draw())
	side := dimension.Stick{Upright: true, From: -in(131), To: 0, Edge: -mm(14), Datum: 0, Scale: s, Show: show}
	for _, y := range []float64{17.5, 41.5, 65.5, 66.5, 67.5, 89.5, 113.5, 131} {
		side.Marks = append(side.Marks, dimension.StickMark{At: -in(y), Plain: true, Bold: y != 131})
	}
	add(side.Draw())
	add(dimension.Chain{Side: dimension.Below, Object: -in(131) - mm(4), NamesX: -mm(51), Scale: s, Show: show, Rows: []dimension.Row{
		{Name: "joist centers", At: list(0, 9.5, 25.5, 41.5, 57.5, 73.5, 89.5, 105.5, 121.5, 127.75), Merge: true},
		{Name: "tiny ones", At: list(0, 1, 2.5, 4, 5, 6.5, 60, 61, 120, 121.5, 123, 127.75)},
		{Name: "walls", At: list(0, 127.75, 181.25)},
	}}.Draw())
	add(dimension.Chain{Side: dimension.Above, Object: mm(34), NamesX: -mm(51), Scale: s, Show: show, Rows: []dimension.Row{
		{Name: "tiny ones", At: list(0, 1, 2.5, 4, 5, 6.5, 60, 61, 120, 121.5, 123, 181.25), Bold: []bool{true, false, true}},
		{Name: "doors", At: list(0, 20, 50, 51, 90, 96, 140, 181.25), Gap: []bool{false, true, false, true, false, true}},
	}}.Draw())
	add(dimension.Chain{Side: dimension.RightOf, Object: in(181.25) + mm(4), Scale: s, Show: show, Rows: []dimension.Row{
		{At: list(-131, -113.5, -89.5, -88, -86.5, -65.5, -41.5, -17.5, 0)},
		{At: list(-131, -85, 0)},
	}}.Draw())
	for i, side := range []dimension.Side{dimension.Above, dimension.Below, dimension.LeftOf, dimension.RightOf} {
		e = append(e, marks.WallLetter(string(rune('A'+i)), geom.Pt(in(100+12*float64(i)), -in(10)), side, s),
			marks.Pennant("Y", geom.Pt(in(52+24*float64(i)), -in(30)), marks.Way(i), s))
	}
	e = append(e, marks.WallLetter("F/A", geom.Pt(in(150), -in(10)), dimension.Above, s))
	e = append(e, marks.Crosses(geom.RectOf(in(20), -in(60), in(110), -in(58)), false, s)...)
	e = append(e,
		marks.Label("A4", true, geom.Pt(in(30), -in(85)), s, geom.Pt(in(26), -in(59))),
		marks.Label("R12", false, geom.Pt(in(50), -in(85)), s, geom.Pt(in(80), -in(85)), geom.Pt(in(80), -in(60))),
		marks.Label("M1", true, geom.Pt(in(120), -in(85)), s))
	targets := []geom.Point{{X: in(160), Y: -in(60)}, {X: in(178), Y: -in(61)}, {X: in(165), Y: -in(62)}, {X: in(170), Y: -in(100)}}
	items := make([]marks.Callout, len(targets))
	for i, p := range targets {
		items[i] = marks.Callout{Lines: []string{"words about it", "and a second line"}[:1+i%2], Target: p}
	}
	e = append(e, marks.Callouts(items, in(181.25)+mm(38), s)...)
	placed := drawing.Place(e, s, geom.Pt(geom.MM(75), geom.MM(196)))
	for i, r := range []int64{2, 4, 8, 12, 16, 24, 48, 96} {
		placed = append(placed, marks.ScaleBar(geom.Pt(geom.MM(410), geom.MM(int64(60+12*i))), paper.Scale{Ratio: r}, false))
	}
	for i, r := range []int64{2, 5, 10, 20, 25, 50, 100} {
		placed = append(placed, marks.ScaleBar(geom.Pt(geom.MM(350), geom.MM(int64(60+12*i))), paper.Scale{Ratio: r}, true))
	}
	size, _ := paper.ByName("tabloid", false)
	return page{title: "Ceiling, an invented sample", desc: "Every mark once.", size: size, elements: placed}
}

// TestSample writes the samples and reads them; with LOOK set to a folder the
// files are left there to be looked at.
func TestSample(t *testing.T) {
	for name, p := range map[string]page{"dimlook.svg": sample(), "dimlook-plan.svg": samplePlan()} {
		out := write(t, p)
		read(t, out)
		if dir := os.Getenv("LOOK"); dir != "" {
			if err := os.WriteFile(filepath.Join(dir, name), out, 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
}
