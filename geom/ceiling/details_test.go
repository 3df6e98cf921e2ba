package ceiling_test

import (
	"fmt"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// unsquare is a room 168 across at the bottom and 171 at the top: wall B leans.
func unsquare() (*room.Room, survey.Plan) {
	return quad(geom.Pt(0, 0), geom.Pt(geom.In(171), 0), geom.Pt(geom.In(168), geom.In(-144)), geom.Pt(0, geom.In(-144)))
}

// TestShortRuns: runs that take less than half a main tee come two from one.
func TestShortRuns(t *testing.T) {
	src := worked + "; no more than two runs from one main tee: home-improvement guides"
	r, plan := oblong(geom.In(62), geom.In(200))
	r.Ceiling.Mains.Along = 0
	c, _ := build(t, r, plan)
	var stock []int
	for _, m := range c.Mains {
		want(t, "sticks of a run", len(m.Sticks), 1, src)
		stock = append(stock, m.Sticks[0].Stock)
	}
	want(t, "cut from", fmt.Sprint(stock), "[1 1 2 2]", src)
	want(t, "sticks", c.MainSticks, 2, src)
	// 62: border 19, a slot at 21, so 2 off the first; 64 are used, 45 more to
	// the next slot that is 19 from a cut end: 64 + 19 = 83, slot 87, cut 68.
	want(t, "cuts", places(c.Mains[0].StartCut, c.Mains[1].StartCut), "2 68", src)
}

// TestSplicesStagger: where an offcut is too short to start the next run, the
// splices still do not stand side by side.
func TestSplicesStagger(t *testing.T) {
	src := "common practice, no source"
	for _, wide := range []float64{145, 150, 200, 260, 280, 284, 300, 400} {
		r, plan := oblong(inches(wide), geom.In(200))
		r.Ceiling.Mains.Along = 0
		c, _ := build(t, r, plan)
		for i, m := range c.Mains {
			for _, s := range m.Sticks {
				if s.Length < geom.In(12) {
					t.Errorf("%v: %s is %s short (%s)", wide, s.Mark, places(s.Length), src)
				}
			}
			if i == 0 {
				continue
			}
			for _, p := range m.Splices {
				for _, q := range c.Mains[i-1].Splices {
					if (p.X - q.X).Abs() < geom.In(24) {
						t.Errorf("%v: splices of %s and the run before at %s and %s (%s)", wide, m.Mark, places(p.X), places(q.X), src)
					}
				}
			}
		}
	}
}

// TestEvenHangers: of as many hangers, those with the most even spaces.
func TestEvenHangers(t *testing.T) {
	r, plan := oblong(geom.In(120), geom.In(60))
	r.Above.Joists = &room.Joists{RunFrom: 0, RunTo: 2, From: 3}
	for _, u := range []int64{20, 55, 60, 65, 100} {
		r.Above.Joists.Centres = append(r.Above.Joists.Centres, geom.In(u))
	}
	c, _ := build(t, r, plan)
	var got []geom.Length
	for _, h := range c.Hangers {
		if h.Main == "M1" {
			got = append(got, h.At.X)
		}
	}
	want(t, "hangers", places(got...), "20 60 100", worked+"; "+hangers)
}

// TestWireLength: a wire is long enough where the structure is highest, and
// 12 in longer for its ties.
func TestWireLength(t *testing.T) {
	r, plan := base()
	plan.Sides[1].Structure = geom.In(112)
	c, _ := build(t, r, plan)
	want(t, "drop and wire", places(c.Hangers[0].Drop, c.Hangers[0].Wire), "12 26-1/2", worked+"; ties: common practice, no source")
}

// TestWireBesideDuct: a wire stays 1 in off a duct.
func TestWireBesideDuct(t *testing.T) {
	for _, test := range []struct {
		to   float64
		hung bool // from the joist at 60
	}{{58, true}, {59.5, false}} {
		r, plan := base()
		r.Above.InTheWay = []room.Obstacle{{
			What: "duct", Below: taped(geom.In(4)),
			Spans: []room.PlanSpan{{Wall: 3, From: geom.In(46), To: inches(test.to)}},
		}}
		c, _ := build(t, r, plan)
		hung := false
		for _, h := range c.Hangers {
			hung = hung || h.At.X == geom.In(60)
		}
		want(t, fmt.Sprint("duct to ", test.to), hung, test.hung, "not touched: Daly City brochure on 1998 CBC Standard 25-2; 1 in: common practice, no source")
	}
}

// TestOffLeaningWall: what is measured off a wall out of square. Lines start
// at its innermost place; a thing overhead may be anywhere between.
func TestOffLeaningWall(t *testing.T) {
	r, plan := unsquare()
	r.Ceiling.Grid.Lines = []room.GridLine{{Wall: 1, Value: given(inches(14))}}
	r.Above.InTheWay = []room.Obstacle{{
		What: "duct", Below: taped(geom.In(4)), Spans: []room.PlanSpan{{Wall: 1, From: geom.In(10), To: geom.In(20)}},
	}}
	r.Above.Joists = &room.Joists{RunFrom: 0, RunTo: 2, From: 1, Spacing: geom.In(16), First: geom.In(8), At: finding.Place{Line: 5, Column: 5}}
	c, list := build(t, r, plan)
	last := c.XLines[len(c.XLines)-1]
	want(t, "line 14 off the innermost place", places(last.At), "154", worked)
	want(t, "border", places(c.Strategy[0].RightBorder), "14", worked)
	want(t, "duct", places(c.Obstacles[0].Box.Min.X, c.Obstacles[0].Box.Max.X), "148 161", worked)
	want(t, "nearest joist, off the middle of the wall", places(c.Joists[len(c.Joists)-1].From.X), "161-1/2", worked)
	want(t, "said so", len(rule(list, "joists off a wall out of square")), 1, worked)

	// The same off wall D, leaning the other way.
	r, plan = quad(geom.Pt(0, 0), geom.Pt(geom.In(171), 0), geom.Pt(geom.In(171), geom.In(-144)), geom.Pt(geom.In(3), geom.In(-144)))
	r.Above.InTheWay = []room.Obstacle{{
		What: "duct", Below: taped(geom.In(4)), Spans: []room.PlanSpan{{Wall: 3, From: geom.In(10), To: geom.In(20)}},
	}}
	c, _ = build(t, r, plan)
	want(t, "duct off wall D", places(c.Obstacles[0].Box.Min.X, c.Obstacles[0].Box.Max.X), "10 23", worked)
}

// TestSkewPanels: a panel at a leaning wall is cut to its widest.
func TestSkewPanels(t *testing.T) {
	src := worked + ", W10: pieces 1/2 wider at one end"
	r, plan := unsquare()
	c, _ := build(t, r, plan)
	var got []geom.Length
	marks := map[string]bool{}
	for _, cell := range c.Cells {
		if cell.Skew {
			got = append(got, cell.CutW)
			marks[string(cell.Mark)] = true
		}
	}
	want(t, "widest", places(got...), "14-3/4 14-1/4 13-3/4 13-1/4 12-3/4 12-1/4", src)
	want(t, "marks of their own", len(marks), 6, src)

	// Wall C leans: pieces are longer at one side.
	r, plan = quad(geom.Pt(0, 0), geom.Pt(geom.In(144), 0), geom.Pt(geom.In(144), geom.In(-171)), geom.Pt(0, geom.In(-168)))
	c, _ = build(t, r, plan)
	got = nil
	for _, cell := range c.Cells {
		if cell.Skew {
			got = append(got, cell.CutH)
		}
	}
	want(t, "longest", places(got...), "12-1/4 12-3/4 13-1/4 13-3/4 14-1/4 14-3/4", src)
}

// TestHairOff: a room a sixteenth of a micrometre off an even number is as
// symmetric as any.
func TestHairOff(t *testing.T) {
	r, plan := oblong(inches(171.5)+1, geom.In(139)+1)
	light(r, geom.In(24), geom.In(24), 4)
	c, list := build(t, r, plan)
	want(t, "lights about the axis", len(rule(list, "lights about the axis of the room")), 0, worked)
	want(t, "borders", places(c.Strategy[0].LeftBorder, c.Strategy[0].TopBorder), "13-3/4 21-1/2", worked)
}

// TestArrangedOffDuct: where four lights would go if nothing were over them, a
// duct moves them.
func TestArrangedOffDuct(t *testing.T) {
	r, plan := base()
	light(r, geom.In(24), geom.In(24), 4)
	c, _ := build(t, r, plan)
	x := c.Lights[0].Box.X()
	r.Above.InTheWay = []room.Obstacle{{
		What: "duct", FromUp: taped(geom.In(98)), // the lights reach to 98-1/2
		Spans: []room.PlanSpan{{Wall: 3, From: x.From + geom.In(4), To: x.To - geom.In(4)}},
	}}
	c, list := build(t, r, plan)
	for _, l := range c.Lights {
		if l.Box.X() == x || l.Above < 0 {
			t.Errorf("%s is under the duct", l.Mark)
		}
	}
	want(t, "still about the axis", len(rule(list, "lights about the axis of the room")), 0, worked)

	// With a duct over everything they are drawn, and warned of.
	r.Above.InTheWay[0].Spans[0] = room.PlanSpan{Wall: 3, From: 0, To: inches(171.5)}
	c, list = build(t, r, plan)
	want(t, "lights", len(c.Lights), 4, worked)
	f := rule(list, "light under a thing overhead")
	want(t, "warned", len(f), 4, worked)
	if !strings.HasPrefix(f[0].Hint, "no free whole cell is clear") {
		t.Errorf("hint: %q", f[0].Hint)
	}
}

// TestLongLightTilt: a long light goes up a quarter turned: 4.92 above the
// flange where it is 5/8 thick.
func TestLongLightTilt(t *testing.T) {
	src := worked + ": 4.92 less tees 1-1/2 high, up to the next 1/16"
	r, plan := base()
	for i := range plan.Sides {
		plan.Sides[i].Structure = inches(100.5) // 3 above the tees
	}
	l := light(r, geom.In(24), geom.In(48), 1)
	l.Depth, l.Thick = taped(inches(2)), taped(inches(0.625))
	_, list := build(t, r, plan)
	f := rule(list, "tilting lights in")
	if len(f) != 1 || !strings.HasPrefix(f[0].Allowed, "3-7/16 above the tees, 4-15/16 above the flange") || strings.Contains(f[0].Hint, "thickness") {
		t.Errorf("%+v (%s)", f, src)
	}
	for i := range plan.Sides {
		plan.Sides[i].Structure = inches(101) // 3-1/2
	}
	_, list = build(t, r, plan)
	want(t, "3-1/2 above the tees", len(rule(list, "tilting lights in")), 0, src)
}

// TestNamedLongLights: a long light is named by its first cell, or by both.
func TestNamedLongLights(t *testing.T) {
	src := worked + ", W14"
	for name, cells := range map[string][]string{"first cells": {"Q3", "S6"}, "both cells": {"Q3", "R3", "S6", "T6"}} {
		r, plan := base()
		l := light(r, geom.In(24), geom.In(48), 2)
		for _, c := range cells {
			l.Cells = append(l.Cells, room.CellName{Name: c})
		}
		c, _ := build(t, r, plan)
		got := ""
		for _, l := range c.Lights {
			got += string(l.Mark) + strings.Join(l.Cells, "") + " "
		}
		want(t, name, got, "L1Q3R3 L2S6T6 ", src)
		want(t, name+": mains", off(c.YLines), "M21-1/2 45-1/2 M69-1/2 93-1/2 M117-1/2", src)
	}
	r, plan := base()
	l := light(r, geom.In(24), geom.In(48), 1)
	l.Cells = []room.CellName{{Name: "Q3"}, {Name: "S3"}}
	_, list := ceiling.Build(r, plan)
	if f := rule(list, "light on whole modules"); len(f) != 1 || f[0].Kind != finding.Error {
		t.Errorf("cells that do not touch: %+v", f)
	}
}

// TestLeastBeforeEqual: where equal mean borders would put one under the
// least, that one is the least, and the other no wider than it must be.
func TestLeastBeforeEqual(t *testing.T) {
	src := worked + ": 169 at the narrowest leaves 25 beside six modules; by the mean 13-1/4 and 11-3/4; " + borders
	r, plan := quad(geom.Pt(0, 0), geom.Pt(geom.In(172), 0), geom.Pt(geom.In(169), geom.In(-144)), geom.Pt(0, geom.In(-144)))
	c, _ := build(t, r, plan)
	want(t, "left and right", places(c.Strategy[0].LeftBorder, c.Strategy[0].RightBorder), "13 12", src)
}

// TestWallToWall: in a room no wider than a module the cross tees lie on the
// wall angle at both ends, and there are no mains to hang.
func TestWallToWall(t *testing.T) {
	r, plan := oblong(geom.In(100), geom.In(20))
	r.Ceiling.Mains.Along, r.Ceiling.EdgeGap = 0, given(inches(0.125))
	c, list := build(t, r, plan)
	want(t, "mains", len(c.Mains), 0, worked)
	want(t, "tees", len(c.Crosses), 4, worked)
	for _, p := range c.Pieces {
		if p.Name == "cross tee" && (p.Ends != "square, cut both ends" || p.Length != inches(19.75)) {
			t.Errorf("%+v", p)
		}
	}
	want(t, "hangers asked for", len(rule(list, "hangers at joists")), 0, worked)
}

func TestBearing(t *testing.T) {
	src := worked + ": half of 9/16 less 1/4 is 1/32; half of 15/16 less 1/4 is 7/32"
	for _, test := range []struct {
		face   geom.Length
		panel  geom.Length
		warned int
	}{{inches(0.9375), 0, 0}, {inches(0.5625), 0, 1}, {inches(0.5625), inches(23.875), 0}} {
		r, plan := base()
		r.Ceiling.Grid.TeeFace = given(test.face)
		if test.panel > 0 {
			r.Ceiling.Panel.Size = room.Size{W: test.panel, H: test.panel}
		}
		_, list := build(t, r, plan)
		want(t, places(test.face, test.panel), len(rule(list, "bearing of the panels")), test.warned, src)
	}
	r, plan := base()
	r.Ceiling.EdgeGap = given(inches(0.875))
	_, list := build(t, r, plan)
	want(t, "gap as wide as the leg", len(rule(list, "bearing on the wall angle")), 1, worked)
}

// TestCutAlike: a wall 1/16 out of square gives one size of border panel, one
// 1/2 out of square does not.
func TestCutAlike(t *testing.T) {
	for _, test := range []struct {
		out  float64
		want int // lengths of short tees at walls; the middle one of the slanting side is that of the other side
	}{{0.0625, 1}, {2, 3}} {
		r, plan := quad(geom.Pt(0, 0), geom.Pt(inches(171.5+test.out), 0), geom.Pt(inches(171.5), geom.In(-139)), geom.Pt(0, geom.In(-139)))
		c, _ := build(t, r, plan)
		_, cut := tees(c, geom.In(24))
		want(t, fmt.Sprint(test.out, " out of square"), len(cut), test.want, "common practice, no source")
		for _, x := range c.Crosses {
			run := max((x.To.X - x.From.X).Abs(), (x.To.Y - x.From.Y).Abs())
			if x.Length > run || run-x.Length > inches(0.125) {
				t.Errorf("%s: %s in a run of %s", x.Mark, places(x.Length), places(run))
			}
		}
	}
}

// TestMainsAlongJoists: hangers stand in the middles of equal parts no longer
// than their spacing, so that the ends are within half of it.
func TestMainsAlongJoists(t *testing.T) {
	r, plan := base()
	r.Ceiling.Mains.Along = 0
	r.Above.Joists = &room.Joists{RunFrom: 1, RunTo: 3, Spacing: geom.In(48), From: 0, First: inches(45.5)}
	c, list := build(t, r, plan)
	var got []geom.Length
	for _, h := range c.Hangers {
		if h.Main == "M1" && !h.Splice {
			got = append(got, h.At.X)
		}
	}
	want(t, "hangers", places(got...), "21-7/16 64-5/16 107-3/16 150-1/16", worked+"; "+hangers)
	want(t, "out of plumb", len(rule(list, "hanger out of plumb")), 0, plumb)
}

func TestWallThatTheGridFollows(t *testing.T) {
	r, plan := quad(geom.Pt(0, 0), geom.Pt(geom.In(171), 0), geom.Pt(geom.In(168), geom.In(-144)), geom.Pt(0, geom.In(-144)))
	for wall, warned := range []int{0, 1, 0, 0} {
		r.Ceiling.Grid.Follow = wall
		_, list := build(t, r, plan)
		f := rule(list, "wall that the grid follows")
		want(t, fmt.Sprint("wall ", wall), len(f), warned, "common practice, no source")
		for _, f := range f {
			want(t, "found", f.Found, "3 over the length of wall B", worked)
		}
	}
}
