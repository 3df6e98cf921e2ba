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

// Where the cases are from. The rules behind them are published; the figures
// were worked out for this project and are marked so.
const (
	worked   = "worked example computed for this project"
	navy516  = "US Navy builder training manual 14044, pp. 5-16 to 5-19"
	borders  = "opposite borders equal, none under half a panel: US project specification, acoustical ceilings; home-improvement guides"
	hangers  = "hangers at most 48 in apart: Daly City brochure on 1998 CBC Standard 25-2"
	plumb    = "wires not more than 1 in 6 out of plumb: Daly City brochure on 1998 CBC Standard 25-2"
	twoWires = "two wires above 10 lb: Everett (WA) permit sheet on suspended ceilings"
)

// inches returns v inches; v is a whole number of sixteenths.
func inches(v float64) geom.Length { return geom.Length(v*16) * geom.Inch / 16 }

// given is a wanted length that is a must.
func given(l geom.Length) room.Want {
	return room.Want{Value: l, At: finding.Place{Line: 20, Column: 5}}
}

// wish is a wanted length, if it fits.
func wish(l geom.Length) room.Want {
	w := given(l)
	w.IfFits = true
	return w
}

// taped is a reading of l.
func taped(l geom.Length) room.Reading {
	return room.Reading{Value: l, All: []geom.Length{l}, At: finding.Place{Line: 30, Column: 7}}
}

// quad is a room with the given corners, x to the right and y up the page: 24x24
// panels, tees that end at the wall face, 12 in over the tees, no joists.
func quad(p ...geom.Point) (*room.Room, survey.Plan) {
	r := &room.Room{Show: measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}}
	plan := survey.Plan{Taped: p, Rough: p, Finished: p}
	for _, name := range []string{"A", "B", "C", "D"} {
		r.Walls = append(r.Walls, room.Wall{Name: name})
		plan.Sides = append(plan.Sides, survey.Side{Wall: name, Structure: inches(109.5)})
	}
	at := finding.Place{Line: 10, Column: 3}
	r.Ceiling = &room.Ceiling{
		FaceFromFloor: given(geom.In(96)), Seismic: "B", EdgeGap: given(0),
		Grid:  room.Grid{Module: room.Size{W: geom.In(24), H: geom.In(24), At: at}, Follow: -1, At: at},
		Mains: room.Mains{Along: -1, At: at},
		Panel: room.Panel{Thick: given(inches(0.625))},
		At:    at,
	}
	return r, plan
}

// oblong is a rectangle, wide across the page and deep down it.
func oblong(wide, deep geom.Length) (*room.Room, survey.Plan) {
	return quad(geom.Pt(0, 0), geom.Pt(wide, 0), geom.Pt(wide, -deep), geom.Pt(0, -deep))
}

// base is the base room of the worked examples, 171-1/2 across the page and
// 139 down it, under joists that run down the page at 16, the first at 12.
func base() (*room.Room, survey.Plan) {
	r, plan := oblong(inches(171.5), geom.In(139))
	r.Above.Joists = &room.Joists{RunFrom: 0, RunTo: 2, Spacing: geom.In(16), From: 3, First: geom.In(12)}
	return r, plan
}

// light adds count lights of a size.
func light(r *room.Room, w, h geom.Length, count int) *room.Light {
	r.Lights = append(r.Lights, room.Light{
		Name: "panel", Size: room.Size{W: w, H: h, At: finding.Place{Line: 40, Column: 9}}, Count: count,
		Arrange: "symmetrical", Depth: taped(inches(2.5)), At: finding.Place{Line: 40, Column: 3},
	})
	return &r.Lights[len(r.Lights)-1]
}

// build sets out, and wants no error.
func build(t *testing.T, r *room.Room, plan survey.Plan) (*ceiling.Ceiling, []finding.Finding) {
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
	return c, list
}

// rule returns the findings of one rule.
func rule(list []finding.Finding, name string) []finding.Finding {
	var some []finding.Finding
	for _, f := range list {
		if f.Rule == name {
			some = append(some, f)
		}
	}
	return some
}

var printed = measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}

// places prints lengths one after another.
func places(list ...geom.Length) string {
	var s []string
	for _, l := range list {
		s = append(s, printed.Say(l))
	}
	return strings.Join(s, " ")
}

// off prints tee lines off their wall; a main has an M before it.
func off(lines []ceiling.TeeLine) string {
	var s []string
	for _, l := range lines {
		m := ""
		if l.Main {
			m = "M"
		}
		s = append(s, m+printed.Say(l.FromWall))
	}
	return strings.Join(s, " ")
}

// want compares two values.
func want[T comparable](t *testing.T, what string, got, wanted T, source string) {
	t.Helper()
	if got != wanted {
		t.Errorf("%s: got %v, want %v (%s)", what, got, wanted, source)
	}
}

// tees counts cross tees of a stock length and prints the lengths of those cut.
func tees(c *ceiling.Ceiling, stock geom.Length) (whole int, cut map[string]int) {
	cut = map[string]int{}
	for _, x := range c.Crosses {
		switch {
		case x.Stock != stock:
		case x.Whole:
			whole++
		default:
			cut[printed.Say(x.Length)]++
		}
	}
	return whole, cut
}

// kinds counts cells by kind.
func kinds(c *ceiling.Ceiling) (whole, edge, corner int) {
	for _, cell := range c.Cells {
		switch cell.Kind {
		case ceiling.Whole:
			whole++
		case ceiling.Border:
			edge++
		case ceiling.Corner:
			corner++
		}
	}
	return whole, edge, corner
}

// first and second take one of two results.
func first[A, B any](a A, _ B) A  { return a }
func second[A, B any](_ A, b B) B { return b }
