package elevation

import (
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/framing"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/setout"
	"roomwright/geom/survey"
)

// at marks a value as written.
var at = finding.Place{Line: 1, Column: 1}

func reading(l geom.Length) room.Reading {
	return room.Reading{Value: l, All: []geom.Length{l}, At: at}
}

func want(l geom.Length) room.Want { return room.Want{Value: l, At: at} }

func timber(name string, thick, wide geom.Length) room.Timber {
	return room.Timber{Name: name, Thick: thick, Wide: wide, At: at}
}

// half returns n half inches.
func eighth(n int64) geom.Length { return geom.InFrac(0, n, 8) }

// rectangle returns an invented room of four block walls.
func rectangle(show measure.Show, long, short, high geom.Length) *room.Room {
	r := &room.Room{Title: "Old laundry to bindery", Units: measure.Inches, Show: show, PaidWork: room.No}
	for i, name := range []string{"A", "B", "C", "D"} {
		l := long
		if i%2 == 1 {
			l = short
		}
		r.Walls = append(r.Walls, room.Wall{
			Name: name, Length: reading(l), TapeOn: room.FaceMasonry, MadeOf: room.Block, Structure: reading(high), At: at,
		})
	}
	r.Survey = room.Survey{Square: true, TapeReadsTo: geom.Inch / 16, AboutMeans: geom.Inch, ClosesWithin: geom.Inch / 2, At: at}
	return r
}

// laundry returns a wall of studs as found with an opening, a door and a cable.
func laundry(show measure.Show) *room.Room {
	r := rectangle(show, geom.InFrac(182, 1, 4), geom.In(130), geom.InFrac(96, 1, 4))
	w := &r.Walls[0]
	w.MadeOf, w.TapeOn = room.Studs, room.FaceStuds
	w.Outside = room.Material{Thick: geom.Inch / 2, What: "gypsum", At: at}
	w.Inside = room.Material{None: true, At: at}
	var studs []geom.Length
	for _, n := range []int64{0, 118, 248, 375, 504, 633, 760, 890, 1017, 1124, 1136, 1408, 1420, 1446} {
		studs = append(studs, eighth(n))
	}
	w.Frame = room.Frame{
		Stud: timber("2x4", eighth(12), eighth(28)), Bearing: room.Unknown, OtherDuty: []string{"none"},
		BottomPlates: 1, TopPlates: 2, StudLength: reading(geom.InFrac(91, 3, 4)), At: at,
		Studs: room.StudPlan{Given: true, Edge: room.LeftEdge, Marks: studs, At: at},
	}
	w.Doors = []room.Existing{{
		Name: "entry", Kind: room.Rough, Size: room.Size{W: eighth(260), H: geom.In(82), At: at}, Bottom: reading(0),
		Across: room.Across{Kind: room.EdgeFromEnd, Edge: room.LeftEdge, Value: eighth(1148), At: at}, At: at,
	}}
	w.Services = []room.Service{
		{What: "cable", Across: room.Across{Kind: room.EdgeFromEnd, Edge: room.Centre, Value: geom.In(132), At: at},
			Up: room.Up{Kind: room.SpanFromFloor, To: geom.In(46), At: at}, At: at},
		{What: "outlet", Across: room.Across{Kind: room.EdgeFromEnd, Edge: room.Centre, Value: geom.In(132), At: at},
			Up: room.Up{Kind: room.CentreFromFloor, Value: geom.In(48), At: at}, Size: room.Size{W: geom.In(2), H: geom.In(3), At: at}, At: at},
	}
	r.Openings = []room.Opening{{
		Name: "borrowed light", Wall: 0, Kind: room.Clear, Size: room.Size{W: geom.In(66), H: geom.In(34), At: at},
		Across: room.Across{Kind: room.KingRight, Stud: room.StudRef{Number: 8, At: at}, At: at},
		Up:     room.Up{Kind: room.BottomFromFloor, Value: geom.In(42), At: at},
		Header: room.Header{Plies: 2, Timber: timber("2x8", eighth(12), eighth(58)), Filler: geom.InFrac(0, 15, 32), LetIn: want(geom.Inch / 8), At: at},
		Jacks:  1, Split: true, Sill: 1, Liner: want(geom.InFrac(0, 3, 4)), LinerRun: "head and sill", Shims: want(geom.Inch / 4), At: at,
	}}
	return r
}

func setOut(t testing.TB, r *room.Room) setout.Result {
	t.Helper()
	plan, found := survey.Solve(r)
	res := setout.Result{Room: r, Plan: plan, Findings: found}
	for i := range r.Walls {
		w, more := framing.Build(r, i, plan)
		res.Walls = append(res.Walls, w)
		res.Findings = append(res.Findings, more...)
	}
	for _, f := range res.Findings {
		if f.Kind == finding.Error {
			t.Fatalf("%s: %s; found %s; allowed %s", f.Rule, f.What, f.Found, f.Allowed)
		}
	}
	return res
}

func inches() measure.Show { return measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16} }
