package survey_test

import (
	"math"
	"slices"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// line puts a lining of t on the inside of wall i, taped on face.
func line(r *room.Room, i int, t geom.Length, face room.Face) {
	r.Walls[i].Inside = room.Material{Thick: t, What: "gypsum", At: finding.Place{Line: 20 + i, Column: 1}}
	r.Walls[i].TapeOn = face
}

func TestOutlinesOfRectangle(t *testing.T) {
	const half = geom.Inch / 2
	r := fourWalls("12'", "9'", "12'", "9'")
	line(r, 0, half, room.FaceStuds)     // finished inwards
	line(r, 1, 2*half, room.FaceLining)  // rough outwards
	line(r, 2, 3*half, room.FaceMasonry) // finished inwards
	line(r, 3, 4*half, room.FaceNotSaid) // taken as the face there now
	p, _ := mustSolve(t, r)
	if want := corners(0, 0, 144, 0, 144, -108, 0, -108); !slices.Equal(p.Taped, want) {
		t.Errorf("taped %v", p.Taped)
	}
	if want := corners(0, -0.5, 144, -0.5, 144, -106.5, 0, -106.5); !slices.Equal(p.Finished, want) {
		t.Errorf("finished %v, want %v", p.Finished, want)
	}
	if want := corners(-2, 0, 145, 0, 145, -108, -2, -108); !slices.Equal(p.Rough, want) {
		t.Errorf("rough %v, want %v", p.Rough, want)
	}
	wantSides := []survey.Side{
		{Wall: "A", Start: "D/A", End: "A/B", Taped: geom.In(144), Finished: geom.In(144)},
		{Wall: "B", Start: "A/B", End: "B/C", Taped: geom.In(108), Finished: geom.In(106), LeftOff: half, RightOff: 3 * half},
		{Wall: "C", Start: "B/C", End: "C/D", Taped: geom.In(144), Finished: geom.In(144)},
		{Wall: "D", Start: "C/D", End: "D/A", Taped: geom.In(108), Finished: geom.In(106), LeftOff: 3 * half, RightOff: half},
	}
	if !slices.Equal(p.Sides, wantSides) {
		t.Errorf("sides\n got %+v\nwant %+v", p.Sides, wantSides)
	}
}

func TestNoLining(t *testing.T) {
	r := fourWalls("12'", "9'", "12'", "9'")
	line(r, 0, geom.Inch, room.FaceStuds)
	r.Walls[0].Inside.None = true
	line(r, 1, geom.Inch, room.FaceLining)
	r.Walls[1].Inside.Unknown = true
	p, _ := mustSolve(t, r)
	if !slices.Equal(p.Finished, p.Taped) || !slices.Equal(p.Rough, p.Taped) {
		t.Errorf("outlines moved: %v, %v, %v", p.Taped, p.Rough, p.Finished)
	}
}

func TestFaceUnknown(t *testing.T) {
	r := fourWalls("12'", "9'", "12'", "9'")
	line(r, 0, geom.Inch/2, room.FaceUnknown)
	r.Walls[1].TapeOn = room.FaceUnknown // nothing on it: nothing to warn of
	p, found := mustSolve(t, r)
	if p.Finished[0].Y != 0 || p.Rough[0].Y != geom.Inch/2 {
		t.Errorf("finished %v, rough %v", p.Finished, p.Rough)
	}
	f := only(t, found, "face not known")
	if f.Kind != finding.Warning || f.On != "wall A" || f.Found != "tape on unknown; lining 1/2 in thick" {
		t.Errorf("%+v", f)
	}
}

func TestLiningsTooThick(t *testing.T) {
	r := fourWalls("12'", "9'", "12'", "9'")
	line(r, 1, geom.In(72), room.FaceStuds)
	line(r, 3, geom.In(72), room.FaceStuds)
	p, found := survey.Solve(r)
	if len(p.Taped) != 0 || finding.Errors(found) != 1 {
		t.Fatalf("%+v, %+v", p, found)
	}
	if f := only(t, found, "linings leave a room"); f.Found != `taped 12' 0"; linings take 6' 0" and 6' 0"` {
		t.Errorf("%+v", f)
	}
}

// In the trapezoid of 5-12-13 triangles the slanting walls run 12 down for 5
// across: moved inwards by 13/12 in, such a wall meets the top wall (13/12)·
// (13/12) in further in, from similar triangles.
func TestOutlinesOfTrapezoid(t *testing.T) {
	r := diagonals(fourWalls("12", "13", "22", "13"), "20.80865204668", "20.80865204668")
	thick := geom.Inch / 12 * 13
	line(r, 1, thick, room.FaceStuds)
	p, _ := mustSolve(t, r)
	by := 169.0 / 144
	near(t, "finished", p.Finished, corners(0, 0, 12-by, 0, 17-by, -12, -5, -12), 20)
	if got := p.Sides[0].RightOff.Inches(); math.Abs(got-by) > 1e-4 {
		t.Errorf("wall A ends %.5f in before its taped corner, want %.5f", got, by)
	}
	// Along the moved wall itself its ends slide by 5/12 of the thickness.
	slide := 13.0 / 12 * 5 / 12
	if s := p.Sides[1]; math.Abs(s.LeftOff.Inches()+slide) > 1e-4 || math.Abs(s.RightOff.Inches()-slide) > 1e-4 || (s.Finished-s.Taped).Abs() > 20 {
		t.Errorf("wall B: %+v, want ends to slide by %.5f in", s, slide)
	}
}
