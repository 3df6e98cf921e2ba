package framing

import (
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

func at(line int) finding.Place { return finding.Place{Line: line, Column: 5} }

func reading(l geom.Length, line int) room.Reading {
	return room.Reading{Value: l, All: []geom.Length{l}, At: at(line)}
}

func want(x float64) room.Want { return room.Want{Value: inch(x), At: at(30)} }

func timber(name string) room.Timber {
	wide := map[string]float64{"2x3": 2.5, "2x4": 3.5, "2x6": 5.5, "2x8": 7.25, "2x10": 9.25, "2x12": 11.25} // DOC PS 20
	return room.Timber{Name: name, Thick: inch(1.5), Wide: inch(wide[name]), At: at(20)}
}

// job is the 12 ft wall of the worked examples: studs 16 on center from the
// left end, precut 92-5/8, a double top plate, nothing borne.
func job(openings ...room.Opening) *room.Room {
	r := &room.Room{
		Title: "invented",
		Show:  measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16},
		Survey: room.Survey{
			TapeReadsTo: geom.Inch / 16, AboutMeans: geom.Inch, ClosesWithin: geom.Inch / 2,
		},
		Walls: []room.Wall{{
			Name: "A", Length: reading(geom.In(144), 6), MadeOf: room.Studs, At: at(5),
			Frame: room.Frame{
				Stud: timber("2x4"), Bearing: room.No, BottomPlates: 1, TopPlates: 2,
				StudLength: reading(inch(92.625), 8), At: at(7),
				Studs: room.StudPlan{Given: true, Spacing: geom.In(16), At: at(9)},
			},
		}},
		Openings: openings,
	}
	return r
}

// window is the opening of the worked examples: clear 71-1/2 x 35-1/4, liner
// 3/4, 1/4 at each side, the stud at 32 as left king, sill at 36 (clear bottom
// 37: the liner and its gap stand on the sill).
func window() room.Opening {
	return room.Opening{
		Name: "light", Kind: room.Clear,
		Size:   room.Size{W: inch(71.5), H: inch(35.25), At: at(12)},
		Across: room.Across{Kind: room.KingLeft, Stud: room.StudRef{Mark: geom.In(32), At: at(13)}, At: at(13)},
		Up:     room.Up{Kind: room.BottomFromFloor, Value: geom.In(37), At: at(14)},
		Header: room.Header{Plies: 2, Timber: timber("2x6"), Filler: inch(0.5), At: at(15)},
		Jacks:  1, Sill: 1, Liner: want(0.75), Shims: want(0.25), At: at(11),
	}
}

func plan(r *room.Room) survey.Plan {
	var p survey.Plan
	for i := range r.Walls {
		w := &r.Walls[i]
		p.Sides = append(p.Sides, survey.Side{Wall: w.Name, Taped: w.Length.Value, Structure: w.Structure.Value})
	}
	return p
}

func set(t *testing.T, r *room.Room) (Wall, []finding.Finding) {
	t.Helper()
	w, found := Build(r, 0, plan(r))
	for _, f := range found {
		if f.Kind == finding.Error {
			t.Fatalf("error: %+v", f)
		}
	}
	return w, found
}

// of returns the members with a role and a state.
func (w *Wall) of(role Role, state piece.State) []Member {
	var list []Member
	for _, m := range w.Members {
		if m.Role == role && m.State == state {
			list = append(list, m)
		}
	}
	return list
}

func same(t *testing.T, what string, got, want geom.Length) {
	t.Helper()
	if got != want {
		t.Errorf("%s is %v in, want %v", what, got.Inches(), want.Inches())
	}
}

// Source: worked examples computed for this project, framing E5 to E8.
func TestWorkedWindow(t *testing.T) {
	w, found := set(t, job(window()))
	if len(w.Openings) != 1 {
		t.Fatalf("%d openings", len(w.Openings))
	}
	o := w.Openings[0]
	same(t, "E5 rough width", o.Rough.W(), inch(73.5))
	same(t, "E5 rough height", o.Rough.H(), inch(37.25))
	same(t, "E6 header", w.of(HeaderPly, piece.New)[0].Length, inch(76.5))
	same(t, "E6 over kings", o.Kings.Len()+2*inch(1.5), inch(79.5))
	jacks := w.of(Jack, piece.New)
	same(t, "E7 left jack", jacks[0].Box.Min.X, inch(32.75))
	same(t, "E7 rough, left", o.Rough.Min.X, inch(34.25))
	same(t, "E7 rough, right", o.Rough.Max.X, inch(107.75))
	same(t, "E7 right jack", jacks[1].Box.Max.X, inch(109.25))
	kings := w.of(King, piece.New)
	if len(kings) != 1 {
		t.Fatalf("E7: %d new kings, want 1", len(kings))
	}
	same(t, "E7 new king", kings[0].Box.Min.X, inch(109.25))
	same(t, "E7 new king", kings[0].Box.Max.X, inch(110.75))
	if k := w.Members[o.LeftKing]; k.State != piece.Existing || k.StudNo != 3 || k.Role != King {
		t.Errorf("E7 left king is %+v", k)
	}
	if k := w.Members[o.RightKing]; k.State != piece.New || k.Box != kings[0].Box {
		t.Errorf("E7 right king is %+v", k)
	}
	gone := w.of(Cutout, piece.Removed)
	if len(gone) != 4 {
		t.Fatalf("E7: %d studs cut, want 4", len(gone))
	}
	for i, x := range []float64{48, 64, 80, 96} {
		same(t, "E7 stud cut", gone[i].Box.X().Mid(), inch(x))
		same(t, "E8 removed piece", gone[i].Length, inch(44.25))
		if wanted := piece.Mark("R" + itoa(i+1)); gone[i].Mark != wanted {
			t.Errorf("mark %s, want %s", gone[i].Mark, wanted)
		}
	}
	if len(o.Packs) != 1 || o.Packs[0].StudNo != 8 || o.Packs[0].X.Len() != inch(0.5) {
		t.Errorf("E7 packing %+v, want 1/2 to stud 8", o.Packs)
	}
	same(t, "E8 jack", jacks[0].Length, inch(71.75))
	same(t, "E8 under header", o.Header.Min.Y, inch(73.25))
	same(t, "E8 top of header", o.Header.Max.Y, inch(78.75))
	same(t, "E8 lower cut", o.LowerCut, inch(34.5))
	same(t, "E8 upper cut", o.UpperCut, inch(78.75))
	same(t, "E8 cripple below", w.of(CrippleBelow, piece.Existing)[0].Length, inch(33))
	same(t, "E8 cripple above", w.of(CrippleAbove, piece.Existing)[0].Length, inch(15.375))
	same(t, "sill", w.of(Sill, piece.New)[0].Length, inch(73.5))
	if len(o.Cuts) != 8 {
		t.Errorf("%d strokes of the saw, want 8", len(o.Cuts))
	}
	for _, f := range found {
		if f.Kind == finding.Warning {
			t.Errorf("warning: %+v", f)
		}
	}
}

func TestTwoJacksASide(t *testing.T) { // E6
	o := window()
	o.Jacks = 2
	w, _ := set(t, job(o))
	same(t, "E6 header", w.of(HeaderPly, piece.New)[0].Length, inch(79.5))
	same(t, "E6 over kings", w.Openings[0].Kings.Len()+2*inch(1.5), inch(82.5))
}

func TestDeeperHeader(t *testing.T) { // E8b: 2x8 is 7-1/4, not 7-1/2
	o := window()
	o.Header.Timber = timber("2x8")
	w, _ := set(t, job(o))
	same(t, "top of header", w.Openings[0].Header.Max.Y, inch(80.5))
	same(t, "cripple above", w.of(CrippleAbove, piece.Existing)[0].Length, inch(13.625))
	same(t, "removed piece", w.of(Cutout, piece.Removed)[0].Length, inch(46))
}

// E9; IRC R602.7.4: up to 96 wide and 24 under the plates.
func TestFlatHeader(t *testing.T) {
	o := window()
	o.Header = room.Header{Plies: 1, Timber: timber("2x4"), Flat: true, At: at(15)}
	r := job(o)
	w, found := set(t, r)
	if !w.Openings[0].FlatOK {
		t.Error("not allowed, want allowed: 73-1/2 wide, 19-3/8 under the plates")
	}
	same(t, "top of header", w.Openings[0].Header.Max.Y, inch(74.75))
	same(t, "underside of plates", w.PlateLow, inch(94.125))
	if n := has(found, "flat header not allowed here"); n != 0 {
		t.Errorf("%d warnings", n)
	}
	r.Walls[0].Frame.StudLength = reading(inch(104.625), 8)
	w, found = set(t, r)
	if w.Openings[0].FlatOK {
		t.Error("allowed, want not allowed: 31-3/8 under the plates")
	}
	if n := has(found, "flat header not allowed here"); n != 1 {
		t.Errorf("%d warnings, want 1", n)
	}
	r.Walls[0].Frame.Bearing = room.Unknown
	_, found = Build(r, 0, plan(r))
	if n := has(found, "flat header where load may come"); n != 1 {
		t.Errorf("%d errors, want 1", n)
	}
}

func has(list []finding.Finding, rule string) int {
	n := 0
	for _, f := range list {
		if f.Rule == rule {
			n++
		}
	}
	return n
}
