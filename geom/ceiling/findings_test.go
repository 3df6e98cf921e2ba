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

func TestNoCeilingWanted(t *testing.T) {
	r, plan := base()
	r.Ceiling = nil
	if c, list := ceiling.Build(r, plan); c != nil || list != nil {
		t.Errorf("got %v, %v", c, list)
	}
}

// TestAboveStructure: tees 1-1/2 high go in under the structure, or nothing
// does; 3 in above the tees is usual (home-improvement guides).
func TestAboveStructure(t *testing.T) {
	r, plan := base()
	for i := range plan.Sides {
		plan.Sides[i].Structure = geom.In(99)
	}
	plan.Sides[2].Structure = inches(99.5)
	r.Ceiling.FaceFromFloor = given(geom.In(100))
	c, list := ceiling.Build(r, plan)
	if c != nil || len(list) != 1 {
		t.Fatalf("got %v, %+v", c, list)
	}
	f := list[0]
	for _, test := range [][3]string{
		{"what", f.What, "the ceiling is above the structure"},
		{"found", f.Found, "100; lowest structure 99, at wall A"},
		{"allowed", f.Allowed, "less than 97-1/2 (tees 1-1/2 high under 99)"},
		{"hint", f.Hint, "94-1/2 leaves 3 clear above the tees"},
	} {
		want(t, test[0], test[1], test[2], "3 in above the tees: home-improvement guides")
	}
	if f.Kind != finding.Error || f.Place != r.Ceiling.FaceFromFloor.At || f.On != "ceiling" {
		t.Errorf("%+v", f)
	}

	for _, test := range []struct {
		face geom.Length
		ok   bool
	}{{inches(97.5), false}, {inches(97.4375), true}} {
		r.Ceiling.FaceFromFloor = given(test.face)
		c, list = ceiling.Build(r, plan)
		if (c != nil) != test.ok {
			t.Errorf("face %s: got %v, %+v", places(test.face), c != nil, list)
		}
	}
	r.Ceiling.FaceFromFloor, r.Ceiling.FaceBelowStructure = room.Want{}, given(inches(5.5))
	c, _ = ceiling.Build(r, plan)
	want(t, "face below the structure", places(c.Face, c.Structure, c.Clear), "93-1/2 99 4", worked)
}

func TestClearHeight(t *testing.T) {
	src := worked + "; 3 in above the tees: home-improvement guides"
	r, plan := base()
	r.Above.InTheWay = []room.Obstacle{{
		What: "duct", Below: taped(geom.In(10)), At: finding.Place{Line: 15, Column: 7},
		Spans: []room.PlanSpan{{Wall: 3, From: 0, To: geom.In(14)}},
	}}
	c, list := build(t, r, plan) // 109-1/2 - 10 = 99-1/2; tops of the tees at 97-1/2
	want(t, "clear", places(c.Clear, c.Obstacles[0].Clear, c.Obstacles[0].Underside), "2 2 99-1/2", src)
	want(t, "duct", places(c.Obstacles[0].Box.Min.X, c.Obstacles[0].Box.Max.X, c.Obstacles[0].Box.H()), "0 14 139", src)
	f := rule(list, "clear height above the tees")
	if len(f) != 1 || f[0].Found != "2 under the duct, at 99-1/2 from the floor" || f[0].Hint != "face from floor 95 leaves 3" {
		t.Errorf("%+v (%s)", f, src)
	}
	r.Above.InTheWay[0].Below = taped(geom.In(13)) // 96-1/2: under the tops of the tees
	_, list = build(t, r, plan)
	f = rule(list, "ceiling above a thing overhead")
	if len(f) != 1 || f[0].Kind != finding.Warning || !strings.HasPrefix(f[0].Allowed, "a face at 95 or lower") || !strings.Contains(f[0].Hint, "92 leaves 3") {
		t.Errorf("%+v (%s)", f, src)
	}
	r.Above.InTheWay[0].Below = room.Reading{Unknown: true, At: finding.Place{Line: 15, Column: 9}}
	_, list = build(t, r, plan)
	want(t, "not known", len(rule(list, "height of a thing overhead")), 1, src)
}

// TestLightsKeepClear: lights that may go anywhere keep clear of a duct; one
// that must lie under it is drawn and warned of.
func TestLightsKeepClear(t *testing.T) {
	r, plan := base()
	// A duct over the middle of the room, 1 over the tops of the tees: a light
	// 3 deep, from 96 to 99, runs into its underside at 98-1/2.
	r.Above.InTheWay = []room.Obstacle{{
		What: "duct", FromUp: taped(inches(98.5)),
		Spans: []room.PlanSpan{{Wall: 3, From: geom.In(64), To: geom.In(108)}},
	}}
	l := light(r, geom.In(24), geom.In(24), 2)
	l.Depth = taped(geom.In(3))
	c, list := build(t, r, plan)
	for _, l := range c.Lights {
		if x := l.Box.X(); x.Overlaps(geom.Span{From: geom.In(64), To: geom.In(108)}) {
			t.Errorf("light %s under the duct, %s to %s", l.Mark, places(x.From), places(x.To))
		}
		want(t, "over the light", places(l.Above)+l.Under, "10-1/2joists", worked)
	}
	want(t, "clashes", len(rule(list, "light under a thing overhead")), 0, worked)

	l.Count, l.Cells = 1, []room.CellName{{Name: "R4"}}
	c, list = build(t, r, plan)
	want(t, "over the light", places(c.Lights[0].Above)+c.Lights[0].Under, "-1/2duct", worked)
	f := rule(list, "light under a thing overhead")
	if len(f) != 1 || f[0].Allowed != "a light 2-1/2 deep at most" || f[0].Found != "its top at 99; the duct at 98-1/2" ||
		!strings.HasSuffix(f[0].Hint, "R2") && !strings.HasSuffix(f[0].Hint, "R3") && !strings.HasSuffix(f[0].Hint, "R6") {
		t.Errorf("%+v", f)
	}
}

func TestTooManyLights(t *testing.T) {
	src := worked + "; never a border cell: common practice, no source"
	r, plan := base() // 6 x 4 whole cells
	light(r, geom.In(24), geom.In(24), 24)
	c, _ := build(t, r, plan)
	want(t, "every whole cell", fmt.Sprint(len(c.Lights), c.Panels), "24 {0 24 24}", src)
	r.Lights[0].Count = 25
	_, list := ceiling.Build(r, plan)
	// A panel less wide at the borders makes no room for more: 7 x 5 whole
	// cells want borders of 1-3/4 and 9-1/2, and there they go.
	if f := rule(list, "border under the least"); len(f) == 0 {
		t.Errorf("25 lights, and borders of half a panel (%s)", src)
	}
	r.Lights[0].Count = 36
	_, list = ceiling.Build(r, plan)
	f := rule(list, "light on whole modules")
	if len(f) != 1 || f[0].Kind != finding.Error || f[0].Found != "36 lights" || f[0].Allowed != "35 lights" {
		t.Errorf("%+v (%s)", f, src)
	}
}

func TestLightSizes(t *testing.T) {
	r, plan := base()
	light(r, geom.In(2), geom.In(4), 4)
	_, list := ceiling.Build(r, plan)
	f := rule(list, "light on whole modules")
	if len(f) != 1 || f[0].Found != "2 x 4" || f[0].Allowed != "24 x 24, 24 x 48" || f[0].Place != r.Lights[0].Size.At {
		t.Errorf("%+v", f)
	}
	// Mains 24 apart: a long light lies along them, and the cross tee between is left out.
	r, plan = base()
	r.Ceiling.Mains.Spacing = given(geom.In(24))
	light(r, geom.In(48), geom.In(24), 1)
	c, _ := build(t, r, plan)
	want(t, "along the mains", places(c.Lights[0].Box.W(), c.Lights[0].Box.H()), "48 24", worked)
	whole, _ := tees(c, geom.In(24))
	want(t, "mains and whole tees", fmt.Sprint(len(c.Mains), whole), fmt.Sprint(5, 7*4-1), worked)
}

func TestHangersPastDuct(t *testing.T) {
	src := worked + "; a trapeze past ducts: Daly City brochure on 1998 CBC Standard 25-2; " + hangers
	r, plan := base()
	// The joist at 60 is over a duct: the next ones are 44 and 76.
	r.Above.InTheWay = []room.Obstacle{{
		What: "duct", Below: taped(geom.In(6)), At: finding.Place{Line: 15, Column: 7},
		Spans: []room.PlanSpan{{Wall: 3, From: geom.In(54), To: geom.In(66)}},
	}}
	c, list := build(t, r, plan)
	for _, h := range c.Hangers {
		if h.At.X == geom.In(60) {
			t.Errorf("a hanger in the duct (%s)", src)
		}
	}
	want(t, "warnings", len(rule(list, "hanger spacing")), 0, src)
	// A wide one: no joist is free from 44 to 108.
	r.Above.InTheWay[0].Spans[0].To = geom.In(100)
	_, list = build(t, r, plan)
	f := rule(list, "hanger spacing")
	if len(f) != 2 || f[0].Place != r.Above.InTheWay[0].At || !strings.Contains(f[0].Hint, "trapeze") || !strings.HasPrefix(f[0].Found, "64,") {
		t.Errorf("%+v (%s)", f, src)
	}
}

func TestFirstHanger(t *testing.T) {
	src := worked + ", W6, three hangers; warned above 24: common practice, no source"
	r, plan := base()
	r.Above.Joists.Spacing, r.Above.Joists.Centres = 0, []geom.Length{geom.In(44), geom.In(92), geom.In(140)}
	_, list := build(t, r, plan)
	want(t, "warned, both ends of both mains", len(rule(list, "first hanger from the wall")), 4, src)
	r.Ceiling.HangerFirst = given(geom.In(44))
	_, list = build(t, r, plan)
	want(t, "set by the person", len(rule(list, "first hanger from the wall")), 0, src)
}

func TestJoistsNotKnown(t *testing.T) {
	for name, joists := range map[string]*room.Joists{
		"none": nil, "answered unknown": {RunFrom: 0, RunTo: 2, Unknown: true, At: finding.Place{Line: 12, Column: 3}},
	} {
		r, plan := base()
		r.Above.Joists = joists
		c, list := build(t, r, plan)
		if f := rule(list, "hangers at joists"); len(f) != 1 || f[0].Kind != finding.Warning || len(c.Hangers) > 0 {
			t.Errorf("%s: %+v, %d hangers", name, f, len(c.Hangers))
		}
		if len(c.Mains) != 2 || !c.MainsAlongX {
			t.Errorf("%s: %d mains", name, len(c.Mains))
		}
	}
}

func TestParityJump(t *testing.T) {
	src := worked + ": 143-3/4 gives 23-7/8, 144-1/4 gives 12-1/8"
	for _, test := range []struct {
		wide   geom.Length
		border string
		warned int
	}{
		{inches(143.75), "23-7/8", 1}, {inches(144.25), "12-1/8", 1}, {inches(144), "24", 1}, {inches(147), "13-1/2", 0}, {inches(141), "22-1/2", 0},
	} {
		r, plan := oblong(test.wide, geom.In(139))
		c, list := build(t, r, plan)
		want(t, places(test.wide), places(c.Strategy[0].LeftBorder), test.border, src)
		want(t, places(test.wide)+" warned", len(rule(list, "length near a whole number of modules")), test.warned, src)
	}
}

func TestSmallRooms(t *testing.T) {
	src := worked + ", a room smaller than a module or two"
	for _, test := range []struct {
		deep       geom.Length
		lines      string
		mains, row int // and rows of cells
	}{
		{inches(20), "", 0, 1}, {inches(24), "", 0, 1}, {inches(30), "M15", 1, 2}, {inches(47), "M23-1/2", 1, 2}, {inches(48), "M24", 1, 2},
	} {
		r, plan := oblong(geom.In(100), test.deep)
		r.Ceiling.Mains.Along = 0
		c, _ := build(t, r, plan)
		want(t, places(test.deep), off(c.YLines), test.lines, src)
		want(t, places(test.deep)+" mains", len(c.Mains), test.mains, src)
		want(t, places(test.deep)+" cells", len(c.Cells), test.row*len(c.XLines)+test.row, src)
	}
}

func TestSeismicWires(t *testing.T) {
	src := twoWires + "; one up to 10 lb, carried by the structure from 56 lb"
	for _, test := range []struct {
		category string
		grams    int64
		wires    int
	}{
		{"none", 9000, 0}, {"A", 9000, 0}, {"B", 30000, 0}, {"C", 4536, 1}, {"C", 4537, 2}, {"D", 25400, 2},
		{"E", 25401, 4}, {"unknown", 5443, 2}, {"", 5443, 2}, {"C", 0, 2},
	} {
		r, plan := base()
		r.Ceiling.Seismic = test.category
		light(r, geom.In(24), geom.In(24), 1).Weight = room.Mass{Grams: test.grams}
		c, list := build(t, r, plan)
		want(t, fmt.Sprint(test.category, test.grams), c.Lights[0].Wires, test.wires, src)
		asked := 1
		if test.category == "none" {
			asked = 0
		}
		f := rule(list, "earthquakes")
		want(t, test.category+" asked", len(f), asked, "ASTM C636 and E580, scope")
		for _, f := range f {
			if f.Kind != finding.Caution || strings.Contains(f.What, "compl") {
				t.Errorf("%s: %+v", test.category, f)
			}
		}
	}
}

func TestLinesAsked(t *testing.T) {
	src := worked
	r, plan := base()
	r.Ceiling.Grid.Lines = []room.GridLine{{Wall: 1, Value: given(geom.In(20))}, {Wall: 2, Value: wish(geom.In(20))}}
	c, list := build(t, r, plan)
	want(t, "right and bottom", places(c.Strategy[0].RightBorder, c.Strategy[0].BottomBorder), "20 20", src)
	want(t, "left and top", places(c.Strategy[0].LeftBorder, c.Strategy[0].TopBorder), "7-1/2 23", src)
	want(t, "the left border is under the least", len(rule(list, "border under the least")), 1, src)
	want(t, "missed", len(rule(list, "line of the grid")), 0, src)

	// 15 would leave 4 at the other end: the least border comes before a wish.
	r.Ceiling.Grid.Lines[1].Value = wish(geom.In(15))
	c, list = build(t, r, plan)
	want(t, "top", places(c.Strategy[0].TopBorder), "21-1/2", src)
	if f := rule(list, "line of the grid"); len(f) != 1 || f[0].Kind != finding.Warning || f[0].Allowed != "21-1/2 is the nearest" {
		t.Errorf("%+v", f)
	}
	// As a must it comes first, and the border is warned of.
	r.Ceiling.Grid.Lines[1].Value = given(geom.In(15))
	c, _ = build(t, r, plan)
	want(t, "top", places(c.Strategy[0].TopBorder), "4", src)
	// Two musts that are not whole modules apart, and a main the wrong way round.
	r.Ceiling.Grid.Lines = []room.GridLine{{Wall: 1, Value: given(geom.In(20))}, {Wall: 3, Value: given(geom.In(12))}}
	r.Ceiling.Mains.Line = []room.GridLine{{Wall: 3, Value: given(geom.In(12))}}
	_, list = ceiling.Build(r, plan)
	want(t, "errors", finding.Errors(list), 2, src)
}

func TestWallsFarOutOfSquare(t *testing.T) {
	r, plan := quad(geom.Pt(0, 0), geom.Pt(geom.In(171), 0), geom.Pt(geom.In(150), geom.In(-144)), geom.Pt(0, geom.In(-144)))
	c, list := ceiling.Build(r, plan)
	if c != nil || len(rule(list, "room out of square")) != 1 {
		t.Errorf("%v %+v", c, list)
	}
	plan.Finished = plan.Finished[:3]
	c, list = ceiling.Build(r, plan)
	if c != nil || len(rule(list, "shape of the room")) != 1 {
		t.Errorf("%v %+v", c, list)
	}
}

func TestMarks(t *testing.T) {
	r, plan := base()
	c, _ := build(t, r, plan)
	alike := map[string]string{}
	for _, p := range c.Pieces {
		if p.Trade != "ceiling" || p.On != "ceiling" || p.Mark == "" || p.Length <= 0 {
			t.Errorf("piece %+v", p)
		}
		key := fmt.Sprint(p.Name, p.Profile, printed.Say(p.Length), p.Ends)
		if old, ok := alike[string(p.Mark)]; ok && old != key {
			t.Errorf("mark %s is both %s and %s", p.Mark, old, key)
		}
		alike[string(p.Mark)] = key
	}
	want(t, "pieces", len(c.Pieces), 4+4+21+24+48, worked+", W1 and W4: angles, sticks, long and short tees, panels")
	want(t, "a cell", string(c.Cells[0].Mark)+string(c.Cells[9].Mark), "N1W", worked)
}

func TestFeetAndInches(t *testing.T) {
	r, plan := base()
	r.Show = measure.Show{Form: measure.FeetAndInches, To: geom.Inch / 16}
	r.Ceiling.FaceFromFloor = given(geom.In(120))
	_, list := ceiling.Build(r, plan)
	if len(list) != 1 || list[0].Found != `10' 0"; lowest structure 9' 1-1/2", at wall A` {
		t.Errorf("%+v", list)
	}
}
