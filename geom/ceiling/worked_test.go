package ceiling_test

import (
	"fmt"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

func TestBaseRoom(t *testing.T) {
	src := worked + ", W1; " + borders
	c, _ := build(t, first(base()), second(base()))
	want(t, "lines across", off(c.XLines), "13-3/4 37-3/4 61-3/4 85-3/4 109-3/4 133-3/4 157-3/4", src)
	want(t, "lines down", strings.ReplaceAll(off(c.YLines), "M", ""), "21-1/2 45-1/2 69-1/2 93-1/2 117-1/2", src)
	whole, edge, corner := kinds(c)
	want(t, "cells", fmt.Sprint(len(c.Cells), whole, edge, corner), "48 24 20 4", src)
	first, last := c.Cells[0], c.Cells[len(c.Cells)-1]
	want(t, "first cell", first.Name+" "+places(first.CutW, first.CutH), "P1 13-1/2 21-1/4", src)
	want(t, "last cell", last.Name+" "+places(last.CutW, last.CutH), "U8 13-1/2 21-1/4", src)
	want(t, "a whole cell", places(c.Cells[9].CutW, c.Cells[9].CutH), "23-3/4 23-3/4", src)
	want(t, "counts", c.Panels, ceiling.Count{Whole: 24, Cut: 24}, src)
}

func TestSliver(t *testing.T) {
	src := worked + ", W2; " + borders
	c, list := build(t, first(base()), second(base()))
	want(t, "chosen", places(c.Strategy[0].LeftBorder, c.Strategy[0].RightBorder), "13-3/4 13-3/4", src)
	want(t, "warnings", len(rule(list, "border under the least")), 0, src)

	// With a line asked for that puts a panel on the centre line.
	r, plan := base()
	r.Ceiling.Grid.Lines = []room.GridLine{{Wall: 3, Value: given(inches(1.75))}}
	c, list = build(t, r, plan)
	want(t, "asked", places(c.Strategy[0].LeftBorder, c.Strategy[0].RightBorder), "1-3/4 1-3/4", src)
	want(t, "lines", len(c.XLines), 8, src)
	f := rule(list, "border under the least")
	if len(f) != 1 || f[0].Found != "1-3/4 at wall D, 1-3/4 at wall B" || !strings.Contains(f[0].Hint, "13-3/4") {
		t.Errorf("sliver: %+v (%s)", f, src)
	}
}

func TestMainSets(t *testing.T) {
	for _, test := range []struct {
		name, down string
		line       geom.Length // main asked for off wall A
		whole48    int
		cut48      map[string]int
		whole24    int
		cut24      map[string]int
		source     string
	}{
		{
			"fewest mains", "21-1/2 M45-1/2 69-1/2 M93-1/2 117-1/2", 0,
			7, map[string]int{"45-1/2": 14}, 18, map[string]int{"13-3/4": 6},
			worked + ", W3 and W4, second set; " + navy516,
		},
		{
			"a main on the first line", "M21-1/2 45-1/2 M69-1/2 93-1/2 M117-1/2", inches(21.5),
			14, map[string]int{"21-1/2": 14}, 12, map[string]int{"13-3/4": 4},
			worked + ", W3 and W4, first set; " + navy516,
		},
	} {
		r, plan := base()
		if test.line > 0 {
			r.Ceiling.Mains.Line = []room.GridLine{{Wall: 0, Value: given(test.line)}}
		}
		c, _ := build(t, r, plan)
		want(t, test.name+": down", off(c.YLines), test.down, test.source)
		whole, cut := tees(c, geom.In(48))
		want(t, test.name+": 48 in tees", fmt.Sprint(whole, cut), fmt.Sprint(test.whole48, test.cut48), test.source)
		whole, cut = tees(c, geom.In(24))
		want(t, test.name+": 24 in tees", fmt.Sprint(whole, cut), fmt.Sprint(test.whole24, test.cut24), test.source)
	}
}

func TestMainCuts(t *testing.T) {
	src := worked + ", W5; start cut and re-use of offcuts: home-improvement guides"
	r, plan := base()
	c, _ := build(t, r, plan)
	m := c.Mains
	want(t, "start cut", places(m[0].StartCut), "1-1/4", src)
	want(t, "first run", places(m[0].Sticks[0].Length, m[0].Sticks[1].Length), "142-3/4 28-3/4", src)
	want(t, "second run", places(m[1].Sticks[0].Length, m[1].Sticks[1].Length), "112-3/4 58-3/4", src)
	want(t, "its first stick is cut from stick", m[1].Sticks[0].Stock, m[0].Sticks[1].Stock, src)
	want(t, "sticks for two runs", c.MainSticks, 3, src)

	r.Ceiling.Mains.Line = []room.GridLine{{Wall: 0, Value: given(inches(21.5))}}
	c, _ = build(t, r, plan)
	want(t, "sticks for three runs", c.MainSticks, 4, src)

	r, plan = base()
	r.Ceiling.Mains.Slot, r.Ceiling.Mains.Pitch = given(geom.In(6)), given(geom.In(12))
	c, _ = build(t, r, plan)
	want(t, "start cut, slots every 12", places(c.Mains[0].StartCut), "4-1/4", src)
}

func TestHangersAtJoists(t *testing.T) {
	src := worked + ", W6; " + hangers + "; a hanger at each side of a splice: " + navy516
	c, list := build(t, first(base()), second(base()))
	want(t, "joists", len(c.Joists), 10, src)
	of := func(m ceiling.Main) (all, splice string) {
		var u, v []geom.Length
		for _, h := range c.Hangers {
			if h.Main != m.Mark {
				continue
			}
			u = append(u, h.At.X)
			if h.Splice {
				v = append(v, h.At.X)
			}
		}
		return places(u...), places(v...)
	}
	all, splice := of(c.Mains[0])
	want(t, "first run", all, "12 60 108 140 156", src)
	want(t, "put in for its splice at 142-3/4", splice, "140", src)
	all, splice = of(c.Mains[1])
	want(t, "second run", all, "12 60 108 124 156", src)
	want(t, "put in for its splice at 112-3/4", splice, "124", src)
	want(t, "in all", len(c.Hangers), 2*4+2, src)
	want(t, "warnings", len(rule(list, "first hanger from the wall"))+len(rule(list, "hanger spacing")), 0, src)
	// 109-1/2 less 96 and 1-1/2 is 12; 12 in for the ties is common practice, no source.
	want(t, "drop and wire", places(c.Hangers[0].Drop, c.Hangers[0].Wire), "12 24", worked)
}

func TestMetricRoom(t *testing.T) {
	src := worked + ", W7; 1200 between mains: European supplier's instructions under EN 13964:2004 Annex A"
	r, plan := oblong(geom.MM(4830), geom.MM(3470))
	r.Units, r.Show = measure.Millimetres, measure.Show{Form: measure.MillimetresOnly, To: geom.Millimetre}
	r.Ceiling.Grid.Module = room.Size{W: geom.MM(600), H: geom.MM(600)}
	r.Above.Joists = &room.Joists{RunFrom: 0, RunTo: 2, Spacing: geom.MM(400), From: 3, First: geom.MM(230)}
	c, _ := build(t, r, plan)
	s := c.Strategy[0]
	mm := func(list ...geom.Length) string {
		var v []string
		for _, l := range list {
			v = append(v, r.Show.Say(l))
		}
		return strings.Join(v, " ")
	}
	want(t, "borders", mm(s.LeftBorder, s.RightBorder, s.TopBorder, s.BottomBorder), "315 315 535 535", src)
	whole, _, _ := kinds(c)
	want(t, "cells", fmt.Sprint(len(c.Cells), whole), "54 28", src)
	var mains []geom.Length
	for _, l := range c.YLines {
		if l.Main {
			mains = append(mains, l.FromWall)
		}
	}
	want(t, "mains", mm(mains...), "1135 2335", src)
	count := map[string]int{}
	for _, x := range c.Crosses {
		count[fmt.Sprint(mm(x.Stock, x.Length), x.Whole)]++
	}
	want(t, "1200 tees, whole", count["1200 1200true"], 8, src)
	want(t, "1200 tees, cut", count["1200 1135false"], 16, src)
	want(t, "600 tees, whole", count["600 600true"], 21, src)
	want(t, "600 tees, cut", count["600 315false"], 6, src)
	want(t, "corner panel", mm(c.Cells[0].CutW, c.Cells[0].CutH), "310 530", src)
}

func TestOutOfSquare(t *testing.T) {
	src := worked + ", W10; the grid stays square to one wall: common practice, no source"
	r, plan := quad(geom.Pt(0, 0), geom.Pt(geom.In(171), 0), geom.Pt(geom.In(168), geom.In(-144)), geom.Pt(0, geom.In(-144)))
	c, list := build(t, r, plan)
	s := c.Strategy[0]
	want(t, "left and right, narrowest", places(s.LeftBorder, s.RightBorder), "12 12", src)
	want(t, "six full rows", len(c.YLines), 5, src)
	want(t, "top and bottom", places(s.TopBorder, s.BottomBorder), "24 24", src)
	var right []geom.Length
	skew := 0
	for _, cell := range c.Cells {
		if cell.Skew {
			skew++
		}
		if cell.Col == len(c.XLines) {
			right = append(right, cell.Shape[1].X-cell.Shape[0].X)
			if cell.Row == len(c.YLines) {
				right = append(right, cell.Shape[2].X-cell.Shape[3].X)
			}
		}
	}
	want(t, "right border at the seven lines", places(right...), "15 14-1/2 14 13-1/2 13 12-1/2 12", src)
	want(t, "out-of-square panels", skew, 6, src)
	want(t, "slivers", len(rule(list, "border under the least")), 0, src)
	if !strings.Contains(s.Why, "narrowest place, 168, governs") {
		t.Errorf("which length governs: %q (%s)", s.Why, src)
	}
}

func TestLightOnBorder(t *testing.T) {
	src := worked + ", W11; never a border cell: common practice, no source"
	r, plan := base()
	l := light(r, geom.In(24), geom.In(24), 1)
	l.Centre = []room.GridLine{{Wall: 3, Value: given(geom.In(8))}}
	c, list := ceiling.Build(r, plan)
	f := rule(list, "light on whole modules")
	if len(f) != 1 || f[0].Kind != finding.Error || !strings.Contains(f[0].Allowed, "25-3/4") {
		t.Fatalf("a must: %+v (%s)", f, src)
	}
	want(t, "grid", places(c.Strategy[0].LeftBorder), "13-3/4", src)

	l.Centre[0].Value.IfFits = true
	c, list = build(t, r, plan)
	f = rule(list, "light on whole modules")
	if len(f) != 1 || f[0].Kind != finding.Warning {
		t.Fatalf("a wish: %+v (%s)", f, src)
	}
	want(t, "nearest whole cell", places(c.Lights[0].Box.Min.X, c.Lights[0].Box.Mid().X), "13-3/4 25-3/4", src)

	l.Centre, l.Count, l.Cells = nil, 0, []room.CellName{{Name: "R1", At: finding.Place{Line: 41, Column: 2}}}
	_, list = ceiling.Build(r, plan)
	f = rule(list, "light on whole modules")
	if len(f) != 1 || f[0].Found != "R1 is at a wall, 13-3/4 x 24" || !strings.Contains(f[0].Hint, "R2") {
		t.Fatalf("a cell: %+v (%s)", f, src)
	}
}

func TestCorridor(t *testing.T) {
	src := worked + ", W12; " + borders
	r, plan := oblong(geom.In(120), geom.In(44))
	c, _ := build(t, r, plan)
	want(t, "without lights", places(c.Strategy[0].TopBorder)+" "+off(c.YLines), "22 M22", src)
	light(r, geom.In(24), geom.In(24), 2)
	c, list := build(t, r, plan)
	want(t, "with lights", places(c.Strategy[0].TopBorder, c.Strategy[0].BottomBorder), "10 10", src)
	f := rule(list, "border under the least")
	if len(f) != 1 || !strings.Contains(f[0].Hint, "without the lights asked for, the narrowest border is 22") {
		t.Errorf("warn and offer: %+v (%s)", f, src)
	}
	for _, l := range c.Lights {
		want(t, "on the axis", places(-l.Box.Mid().Y), "22", src)
	}
}

func TestParityDecidesLights(t *testing.T) {
	src := worked + ", W13"
	r, plan := oblong(geom.In(150), geom.In(114))
	r.Ceiling.Mains.Along = 0
	light(r, geom.In(24), geom.In(48), 1)
	c, list := build(t, r, plan)
	want(t, "border and whole modules", places(c.Strategy[0].TopBorder)+fmt.Sprint(" ", len(c.YLines)-1), "21 3", src)
	mid := places(-c.Lights[0].Box.Mid().Y)
	if mid != "45" && mid != "69" {
		t.Errorf("the middle of the light: got %s, want 45 or 69 (%s)", mid, src)
	}
	want(t, "said so", len(rule(list, "lights about the axis of the room")), 1, src)
}

func TestFourLongLights(t *testing.T) {
	src := worked + ", W14; a long light fills one bay: European supplier's instructions under EN 13964:2004 Annex A; " + twoWires
	r, plan := base()
	r.Ceiling.Seismic = "C"
	light(r, geom.In(24), geom.In(48), 4).Weight = room.Mass{Grams: 5443} // 12 lb
	c, _ := build(t, r, plan)
	want(t, "mains", off(c.YLines), "M21-1/2 45-1/2 M69-1/2 93-1/2 M117-1/2", src)
	var mids []string
	wires := 0
	for _, l := range c.Lights {
		mids = append(mids, places(l.Box.Mid().X, -l.Box.Mid().Y))
		wires += l.Wires
	}
	want(t, "middles", strings.Join(mids, "; "), "49-3/4 45-1/2; 121-3/4 45-1/2; 49-3/4 93-1/2; 121-3/4 93-1/2", src)
	want(t, "cells of L1", strings.Join(c.Lights[0].Cells, " "), "Q3 R3", src)
	want(t, "panels to buy", fmt.Sprint(c.Panels.Whole, c.Panels.Cut, c.Panels.Lit), "16 24 8", src)
	whole, cut := tees(c, geom.In(24))
	want(t, "24 in tees", fmt.Sprint(whole, cut), fmt.Sprint(8, map[string]int{"13-3/4": 4}), src)
	want(t, "wires of lights", wires, 8, src)
	hung := 0
	for _, h := range c.Hangers {
		if h.Light != "" {
			hung++
		}
	}
	want(t, "hangers of lights", hung, 8, src)
}

func TestLongPanels(t *testing.T) {
	src := worked + ", W20; long side across the mains: home-improvement guides"
	r, plan := base()
	r.Ceiling.Grid.Module = room.Size{W: geom.In(24), H: geom.In(48)}
	c, _ := build(t, r, plan)
	want(t, "across", off(c.XLines), "13-3/4 37-3/4 61-3/4 85-3/4 109-3/4 133-3/4 157-3/4", src)
	want(t, "down", off(c.YLines), "M45-1/2 M93-1/2", src)
	whole, edge, corner := kinds(c)
	want(t, "cells", fmt.Sprint(len(c.Cells), whole, edge+corner), "24 6 18", src)
	n, cut := tees(c, geom.In(24))
	want(t, "24 in tees", n+len(cut), 0, src)
	want(t, "a corner panel", places(c.Cells[0].CutW, c.Cells[0].CutH), "13-1/2 45-1/4", src)
	want(t, "module", places(c.ModuleX, c.ModuleY), "24 48", src)
}

func TestWireOutOfPlumb(t *testing.T) {
	src := worked + ", W23; " + plumb
	r, plan := base()
	for i := range plan.Sides {
		plan.Sides[i].Structure = inches(96 + 1.5 + 10)
	}
	// Joists across the page, as the mains are asked to run; the nearest to each main is 2 off.
	r.Ceiling.Mains.Along = 0
	r.Above.Joists = &room.Joists{RunFrom: 1, RunTo: 3, Spacing: geom.In(48), From: 0, First: inches(47.5)}
	_, list := build(t, r, plan)
	f := rule(list, "hanger out of plumb")
	if len(f) != 2 || f[0].Found != "2 aside with a drop of 10" || !strings.HasPrefix(f[0].Allowed, "at most 1-11/16") {
		t.Errorf("%+v (%s)", f, src)
	}
}

func TestTiltBetween(t *testing.T) {
	src := worked + ", W24"
	r, plan := base()
	for i := range plan.Sides {
		plan.Sides[i].Structure = geom.In(100) // 4 over the flange
	}
	c, list := build(t, r, plan)
	if h := c.TiltFlat + c.TeeHeight; h < inches(5.8125) || h > inches(5.875) {
		t.Errorf("height above the flange: got %s, want 5.82 rounded up (%s)", places(h), src)
	}
	f := rule(list, "tilting panels in")
	if len(f) != 1 || f[0].Kind != finding.Warning {
		t.Errorf("a warning, not an error: %+v (%s)", f, src)
	}
}
