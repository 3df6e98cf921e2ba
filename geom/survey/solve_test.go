package survey_test

import (
	"slices"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/survey"
)

// Right triangles of whole sides (Pythagoras) give corners that are checked by
// head.
func TestSolveClosedForms(t *testing.T) {
	tests := []struct {
		name       string
		a, b, c, d string
		d02, d13   string
		square     bool
		want       geom.Polygon // inches
		isSquare   bool
	}{
		{name: "3-4-5, both diagonals", a: "12'", b: "9'", c: "12'", d: "9'", d02: "15'", d13: "15'",
			want: corners(0, 0, 144, 0, 144, -108, 0, -108)},
		{name: "3-4-5, one diagonal", a: "12'", b: "9'", c: "12'", d: "9'", d13: "15'",
			want: corners(0, 0, 144, 0, 144, -108, 0, -108)},
		{name: "3-4-5, square and one diagonal", a: "12'", b: "9'", c: "12'", d: "9'", d13: "15'", square: true,
			want: corners(0, 0, 144, 0, 144, -108, 0, -108), isSquare: true},
		{name: "3-4-5, depth from the diagonal", a: "12'", d02: "15'", square: true,
			want: corners(0, 0, 144, 0, 144, -108, 0, -108), isSquare: true},
		{name: "3-4-5, width from the diagonal, not said to be square", b: "9'", d13: "15'",
			want: corners(0, 0, 144, 0, 144, -108, 0, -108), isSquare: true},
		{name: "four walls alone", a: "14' 7-1/2\"", b: "11' 3\"", c: "14' 7-1/2\"", d: "11' 3\"",
			want: corners(0, 0, 175.5, 0, 175.5, -135, 0, -135), isSquare: true},
		{name: "means of opposite walls", a: "14' 7-1/2\"", b: "11' 3\"", c: "14' 7-3/8\"", d: "11' 3-1/8\"",
			want: corners(0, 0, 175.4375, 0, 175.4375, -135.0625, 0, -135.0625), isSquare: true},
		{name: "a wall taped twice weighs twice", a: "100", b: "60", c: "100", d: "60-3/8, 60-3/8", square: true,
			want: corners(0, 0, 100, 0, 100, -60.25, 0, -60.25), isSquare: true},
		{name: "about weighs 1/256", a: "100", b: "60", c: "100", d: "about 60-257/512", square: true,
			want: corners(0, 0, 100, 0, 100, -60-1.0/512, 0, -60-1.0/512), isSquare: true},
		{name: "two walls unknown", a: "7' 4\"", b: "4' 9\"",
			want: corners(0, 0, 88, 0, 88, -57, 0, -57), isSquare: true},
		// Triangles 3-4-5 and 5-12-13 on one diagonal: corner 3 is 12 from
		// (4, -3), square off the diagonal: (4 - 36/5, -3 - 48/5).
		{name: "two right triangles", a: "4'", b: "3'", c: "12'", d: "13'", d02: "5'",
			want: corners(0, 0, 48, 0, 48, -36, -38.4, -151.2)},
		// The same room, wall C not known, the other diagonal given:
		// from (4, 0) to (-3.2, -12.6) is the root of 210.6 ft.
		{name: "a wall from two diagonals", a: "4'", b: "3'", d: "13'", d02: "5'", d13: "174.144767652796",
			want: corners(0, 0, 48, 0, 48, -36, -38.4, -151.2)},
		{name: "the first wall from two diagonals", b: "3'", c: "12'", d: "13'", d02: "5'", d13: "174.144767652796",
			want: corners(0, 0, 48, 0, 48, -36, -38.4, -151.2)},
		// An isosceles trapezoid of two 5-12-13 triangles beside a square.
		{name: "trapezoid", a: "12", b: "13", c: "22", d: "13", d02: "20.80865204668", d13: "20.80865204668",
			want: corners(0, 0, 12, 0, 17, -12, -5, -12)},
		// Worked example computed for this project, ceiling W10: a room with one
		// wall 1.19 degrees off square; wall B is the root of 3² + 144².
		{name: "W10", a: "168", b: "144.031246", c: "171", d: "144", d02: "223.56", d13: "221.27",
			want: corners(0, 0, 168, 0, 171, -144, 0, -144)},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := diagonals(fourWalls(tt.a, tt.b, tt.c, tt.d), tt.d02, tt.d13)
			r.Survey.Square = tt.square
			p, _ := mustSolve(t, r)
			tol := geom.Length(3) // readings are rounded to 1/16 µm
			switch {
			case tt.isSquare:
				tol = 0
			case tt.name == "W10":
				tol = inch(0.01) // its diagonals are given to 1/100 in
			}
			near(t, "taped", p.Taped, tt.want, tol)
			if p.Square != tt.isSquare {
				t.Errorf("square: %v, want %v", p.Square, tt.isSquare)
			}
			// Without linings all outlines are one.
			if !slices.Equal(p.Taped, p.Rough) || !slices.Equal(p.Taped, p.Finished) {
				t.Errorf("outlines differ: %v, %v, %v", p.Taped, p.Rough, p.Finished)
			}
			for i, s := range p.Sides {
				if s.Finished != s.Taped || s.LeftOff != 0 || s.RightOff != 0 {
					t.Errorf("side %d: %+v", i, s)
				}
			}
		})
	}
}

func TestSolveSides(t *testing.T) {
	r := fourWalls("12'", "9'", "12'", "9'")
	r.Walls[1].Structure = taped(7, "99")
	p, _ := mustSolve(t, r)
	want := []survey.Side{
		{Wall: "A", Start: "D/A", End: "A/B", Taped: geom.In(144), Finished: geom.In(144)},
		{Wall: "B", Start: "A/B", End: "B/C", Taped: geom.In(108), Finished: geom.In(108), Structure: geom.In(99)},
		{Wall: "C", Start: "B/C", End: "C/D", Taped: geom.In(144), Finished: geom.In(144)},
		{Wall: "D", Start: "C/D", End: "D/A", Taped: geom.In(108), Finished: geom.In(108)},
	}
	if !slices.Equal(p.Sides, want) {
		t.Errorf("sides\n got %+v\nwant %+v", p.Sides, want)
	}
}

// A misfit is a reading less what the others want. In a rectangle 12' x 9' a
// diagonal may be worked out from five exact readings, so a diagonal read 1/4
// in long has a misfit of just that.
func TestMisfits(t *testing.T) {
	p, found := mustSolve(t, diagonals(fourWalls("12'", "9'", "12'", "9'"), "15' 0-1/4\"", "15'"))
	if len(p.Misfits) != 6 {
		t.Fatalf("%d misfits", len(p.Misfits))
	}
	m := p.Misfits[4]
	if m.Reading != "D/A to B/C" || m.Unchecked || (m.By()-geom.Inch/4).Abs() > 1 || m.At.Line != 11 {
		t.Errorf("misfit of the first diagonal: %+v", m)
	}
	// By first order the other diagonal would have to give way as much, a
	// wall by its share of the diagonal: 5/4 and 5/3 of it (balance of forces
	// in a braced rectangle).
	for i, want := range []float64{-5.0 / 16, -5.0 / 12, -5.0 / 16, -5.0 / 12, 0.25, 0.25} {
		if got := p.Misfits[i].By().Inches(); got < want-0.003 || got > want+0.003 {
			t.Errorf("misfit of %s is %.4f in, want about %.4f", p.Misfits[i].Reading, got, want)
		}
	}
	f := only(t, found, "greatest misfit")
	if f.Kind != finding.Note || f.What != "greatest misfit of the survey: 7/16 in at wall D (C/D to D/A)" && f.What != "greatest misfit of the survey: 7/16 in at wall B (A/B to B/C)" {
		t.Errorf("%+v", f)
	}
}

func TestNotes(t *testing.T) {
	_, found := mustSolve(t, fourWalls("14' 7-1/2\"", "11' 3\"", "14' 7-3/8\"", "11' 3\", 11' 3-1/8\""))
	if got := rules(found, finding.Note); !slices.Equal(got, []string{"taped more than once", "completed by square", "greatest misfit"}) {
		t.Errorf("notes %q", got)
	}
	f := only(t, found, "greatest misfit")
	if f.What != "greatest misfit of the survey: 1/8 in at wall A (D/A to A/B)" ||
		f.Found != `read 14' 7-1/2"; the others want 14' 7-3/8"` || f.Allowed != "a misfit of 1/2 in (closes within)" {
		t.Errorf("%+v", f)
	}
	f = only(t, found, "taped more than once")
	if f.What != "wall D (C/D to D/A) was taped two times, 1/8 in apart; the mean is used" ||
		f.Found != `11' 3", 11' 3-1/8"; mean 11' 3-1/16"` {
		t.Errorf("%+v", f)
	}

	_, found = mustSolve(t, fourWalls("88", "57", "", ""))
	if got := rules(found, finding.Note); !slices.Equal(got, []string{"completed by square", "wall worked out", "wall worked out", "greatest misfit"}) {
		t.Errorf("notes %q", got)
	}
	f = only(t, found, "greatest misfit")
	if f.What != "nothing checks the survey: no reading can be worked out from the others" {
		t.Errorf("%+v", f)
	}

	r := fourWalls("88", "57", "88", "57")
	r.Survey.Square = true
	_, found = mustSolve(t, r)
	if got := rules(found, finding.Note); !slices.Equal(got, []string{"greatest misfit"}) {
		t.Errorf("notes of a room said to be square: %q", got)
	}
}
