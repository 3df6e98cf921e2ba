package ceiling_test

import (
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// in returns w inches and q quarters of a sixteenth... in whole 1/16 in.
func in(sixteenths int64) geom.Length { return geom.Length(sixteenths) * geom.Inch / 16 }

// inches returns a decimal number of inches that is a multiple of 1/16.
func inches(v float64) geom.Length { return in(int64(v * 16)) }

// given is a wanted length that must be.
func given(l geom.Length) room.Want {
	return room.Want{Value: l, At: finding.Place{Line: 20, Column: 5}}
}

// quad is a room with the given corners, x to the right and y up the page.
func quad(p ...geom.Point) (*room.Room, survey.Plan) {
	r := &room.Room{Show: measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}}
	plan := survey.Plan{Taped: p, Rough: p, Finished: p}
	for i, name := range []string{"A", "B", "C", "D"} {
		r.Walls = append(r.Walls, room.Wall{Name: name})
		plan.Sides = append(plan.Sides, survey.Side{Wall: name, Structure: geom.In(109), Start: r.CornerName(0), End: "", Finished: p[(i+1)%4].X - p[i].X})
	}
	at := finding.Place{Line: 10, Column: 3}
	r.Ceiling = &room.Ceiling{
		FaceFromFloor: given(geom.In(96)), Seismic: "B", EdgeGap: given(0),
		Grid:  room.Grid{Module: room.Size{W: geom.In(24), H: geom.In(24), At: at}, Follow: -1, At: at},
		Mains: room.Mains{Along: -1, At: at},
		Panel: room.Panel{Thick: given(5 * geom.Inch / 8)},
		At:    at,
	}
	return r, plan
}

// oblong is a rectangle, wide across the page.
func oblong(wide, deep geom.Length) (*room.Room, survey.Plan) {
	return quad(geom.Pt(0, 0), geom.Pt(wide, 0), geom.Pt(wide, -deep), geom.Pt(0, -deep))
}

// base is the base room of the worked examples, 171.5 across the page and 139
// down it, with joists that run down the page.
func base() (*room.Room, survey.Plan) {
	r, plan := oblong(inches(171.5), geom.In(139))
	r.Above.Joists = &room.Joists{RunFrom: 0, RunTo: 2, Spacing: geom.In(16), From: 3, First: geom.In(12)}
	return r, plan
}

// build sets out and wants no error.
func build(t *testing.T, r *room.Room, plan survey.Plan) *ceiling.Ceiling {
	t.Helper()
	c, list := ceiling.Build(r, plan)
	for _, f := range list {
		if f.Kind == finding.Error {
			t.Fatalf("error: %+v", f)
		}
	}
	if c == nil {
		t.Fatal("no ceiling")
	}
	return c
}

// at returns the places of tee lines off their wall.
func at(lines []ceiling.TeeLine) string {
	show := measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}
	var s []string
	for _, l := range lines {
		m := ""
		if l.Main {
			m = "M"
		}
		s = append(s, m+show.Say(l.FromWall))
	}
	return strings.Join(s, " ")
}

func TestDump(t *testing.T) {
	r, plan := base()
	c, list := ceiling.Build(r, plan)
	t.Log(at(c.XLines), "/", at(c.YLines), c.Panels, c.Strategy)
	for _, m := range c.Mains {
		t.Logf("%+v", m)
	}
	for _, h := range c.Hangers {
		t.Logf("%+v", h)
	}
	for _, f := range list {
		t.Logf("%+v", f)
	}
	t.Log(c.TiltFlat.Inches(), c.Clear.Inches())
}
