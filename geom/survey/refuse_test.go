package survey_test

import (
	"slices"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// Each row is a mistake and the one error that answers it.
func TestSolveErrors(t *testing.T) {
	square := func(r *room.Room) *room.Room { r.Survey.Square = true; return r }
	tests := []struct {
		name string
		room *room.Room
		want finding.Finding
	}{
		{
			// The invented room of the first diagonal read 2 in short.
			name: "one diagonal read wrong",
			room: diagonals(fourWalls(`14' 7-1/2"`, `11' 3"`, `14' 7-3/8"`, `11' 3", 11' 3-1/8"`), `18' 5-7/16"`, `18' 3-3/8"`),
			want: finding.Finding{
				Place: finding.Place{Line: 12, Column: 26}, Rule: "survey closes", What: "the survey does not close",
				Found:   `A/B to C/D is 18' 3-3/8"; the other five want 18' 5-5/16"`,
				Allowed: "a misfit of 1/2 in (closes within)",
				Hint:    "tape it again, then the others; one spare reading shows that something is wrong, not what",
			},
		},
		{
			name: "a wall read wrong, both diagonals",
			room: diagonals(fourWalls("12'", "9'", "12' 6\"", "9'"), "15'", "15'"),
			want: finding.Finding{
				Place: finding.Place{Line: 3, Column: 26}, Rule: "survey closes", What: "the survey does not close",
				Found:   `wall C (B/C to C/D) is 12' 6"; the other five want 12' 0"`,
				Allowed: "a misfit of 1/2 in (closes within)",
				Hint:    "tape it again, then the others; one spare reading shows that something is wrong, not what",
			},
		},
		{
			name: "opposite walls differ",
			room: fourWalls("12'", "9'", "12'", "9' 3\""),
			want: finding.Finding{
				Place: finding.Place{Line: 4, Column: 26}, Rule: "survey closes", What: "the survey does not close",
				Found:   `wall D (C/D to D/A) is 9' 3"; wall B (A/B to B/C) wants 9' 0"`,
				Allowed: "a misfit of 1/2 in (closes within)",
				Hint:    "tape it again, then the others; if the corners are not square, tape the diagonals too",
			},
		},
		{
			name: "square, and a wall that no other reading wants",
			room: square(diagonals(fourWalls("12' 2\"", "9'", "12'", "9'"), "15'", "15'")),
			want: finding.Finding{
				Place: finding.Place{Line: 1, Column: 26}, Rule: "survey closes", What: "the survey does not close",
				Found:   `wall A (D/A to A/B) is 12' 2"; the other five and square corners want 12' 0"`,
				Allowed: "a misfit of 1/2 in (closes within)",
				Hint:    "tape it again, then the others; if the corners are not square, leave out `corners: square`",
			},
		},
		{
			name: "not enough for a free room, and a diagonal that square corners do not want",
			room: diagonals(fourWalls("12'", "9'", "", ""), "15' 2\"", ""),
			want: finding.Finding{
				Place: finding.Place{Line: 11, Column: 26}, Rule: "survey closes", What: "the survey does not close",
				Found:   `D/A to B/C is 15' 2"; the other two and square corners want 15' 0"`,
				Allowed: "a misfit of 1/2 in (closes within)",
				Hint:    "tape it again, then the others; if the corners are not square, tape all walls and both diagonals",
			},
		},
		{
			name: "a rough reading beyond what it may be",
			room: diagonals(fourWalls("12'", "9'", "12'", "9'"), "15'", "about 15' 3\""),
			want: finding.Finding{
				Place: finding.Place{Line: 12, Column: 26}, Rule: "survey closes", What: "the survey does not close",
				Found:   `A/B to C/D is 15' 3"; the other five want 15' 0"`,
				Allowed: "a misfit of 1 in (what the rough readings let it be)",
				Hint:    "tape it again, then the others; one spare reading shows that something is wrong, not what",
			},
		},
		{
			name: "two tapings apart",
			room: fourWalls("12', 12' 1\"", "9'", "12'", "9'"),
			want: finding.Finding{
				Place: finding.Place{Line: 1, Column: 26}, Rule: "taped more than once", What: "readings of one length do not agree",
				Found:   `wall A (D/A to A/B) is 12' 0", 12' 1"`,
				Allowed: "within 1/2 in of each other (closes within)",
				Hint:    "tape it again, and keep the readings that agree",
			},
		},
		{
			name: "diagonal too long",
			room: diagonals(fourWalls("12'", "9'", "12'", "9'"), "21' 6\"", ""),
			want: finding.Finding{
				Place: finding.Place{Line: 11, Column: 26}, Rule: "readings make a triangle", What: "no room has these readings",
				Found:   `D/A to B/C is 21' 6"; wall A (D/A to A/B) is 12' 0" and wall B (A/B to B/C) 9' 0"`,
				Allowed: `less than 21' 0", the two walls together`,
				Hint:    "tape the diagonal again, then the walls",
			},
		},
		{
			name: "diagonal too short",
			room: diagonals(fourWalls("12'", "9'", "12'", "9'"), "", "2'"),
			want: finding.Finding{
				Place: finding.Place{Line: 12, Column: 26}, Rule: "readings make a triangle", What: "no room has these readings",
				Found:   `A/B to C/D is 2' 0"; wall B (A/B to B/C) is 9' 0" and wall C (B/C to C/D) 12' 0"`,
				Allowed: `more than 3' 0", the difference of the two walls`,
				Hint:    "tape the diagonal again, then the walls",
			},
		},
		{
			name: "square, diagonal no longer than the only wall",
			room: square(diagonals(fourWalls("12'", "", "", ""), "11'", "")),
			want: finding.Finding{
				Place: finding.Place{Line: 11, Column: 26}, Rule: "readings make a triangle", What: "no room has these readings",
				Found:   `D/A to B/C is 11' 0"; wall A (D/A to A/B) is 12' 0"`,
				Allowed: "a diagonal longer than the wall, where corners are square",
				Hint:    "tape the diagonal again, then the walls",
			},
		},
		{
			// Two triangles, each with an obtuse corner at B/C: 6, 6 and 10.
			name: "a corner that turns left",
			room: diagonals(fourWalls("10", "6", "6", "10"), "6", ""),
			want: finding.Finding{
				Place: finding.Place{Line: 3, Column: 5}, Rule: "walls turn right",
				What:    "the readings make a room that does not turn right at corner B/C",
				Allowed: "four corners, each turning right as walked clockwise inside",
				Hint:    "tape the diagonals again, and see that the walls are listed clockwise",
			},
		},
		{
			name: "both walls of a pair unknown",
			room: fourWalls("12'", "", "12'", ""),
			want: finding.Finding{
				Place: finding.Place{Line: 2, Column: 26}, Rule: "readings fix the room",
				What:  "nothing gives the length of walls B and D",
				Found: "neither is taped, nor enough else to work them out",
				Hint:  "tape one of them, or a diagonal such as A/B to C/D",
			},
		},
		{
			name: "a reading of nothing",
			room: fourWalls("12'", "0", "12'", "9'"),
			want: finding.Finding{
				Place: finding.Place{Line: 2, Column: 26}, Rule: "reading too long or too short",
				What: "a reading is not more than nothing", Found: `wall B (A/B to B/C) is 0"`, Allowed: `more than 0"`,
			},
		},
		{
			name: "a reading that is no room's",
			room: fourWalls("12'", "9'", "12'", "500'"),
			want: finding.Finding{
				Place: finding.Place{Line: 4, Column: 26}, Rule: "reading too long or too short",
				What: "a reading is longer than any room", Found: `wall D (C/D to D/A) is 500' 0"`,
				Allowed: `at most 100 m (328' 1")`, Hint: "is the unit right?",
			},
		},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			p, found := survey.Solve(tt.room)
			if len(p.Taped) != 0 || len(p.Sides) != 0 {
				t.Errorf("a plan in spite of the error: %+v", p)
			}
			errs := slices.DeleteFunc(found, func(f finding.Finding) bool { return f.Kind != finding.Error })
			if len(errs) != 1 {
				t.Fatalf("%d errors: %+v", len(errs), errs)
			}
			got := errs[0]
			if got.Source == "" {
				t.Error("no source")
			}
			got.Source = ""
			if got != tt.want {
				t.Errorf("\n got %+v\nwant %+v", got, tt.want)
			}
		})
	}
}

func TestSolveOtherRooms(t *testing.T) {
	for _, n := range []int{0, 1, 3, 5, 6} {
		r := &room.Room{}
		for i := range n {
			r.Walls = append(r.Walls, room.Wall{Name: string(rune('A' + i)), Length: taped(i+1, "12'"), At: finding.Place{Line: i + 1, Column: 3}})
		}
		p, found := survey.Solve(r)
		if len(p.Taped) != 0 || len(found) != 1 || found[0].Rule != "four walls" || found[0].Kind != finding.Error {
			t.Errorf("%d walls: %+v, %+v", n, p, found)
		}
	}
}

func TestSolveOddReading(t *testing.T) {
	for _, d := range []room.Diagonal{{From: 0, To: 0}, {From: -1, To: 2}, {From: 0, To: 4}} {
		r := fourWalls("12'", "9'", "12'", "9'")
		d.Reading = taped(9, "15'")
		d.At = finding.Place{Line: 9, Column: 14}
		r.Survey.Readings = []room.Diagonal{d}
		_, found := survey.Solve(r)
		f := only(t, found, "reading between two corners")
		if f.Kind != finding.Error || f.Place.Line != 9 || f.Allowed != "A/B, B/C, C/D, D/A" {
			t.Errorf("%+v", f)
		}
	}
}

// A wall taped again as a reading from corner to corner is one reading more of
// that wall.
func TestWallTapedAsReading(t *testing.T) {
	r := fourWalls("12'", "9'", "12'", "9'")
	r.Survey.Readings = []room.Diagonal{{From: 1, To: 0, Reading: taped(9, "12' 0-3/8\"")}}
	p, _ := mustSolve(t, r)
	if got, want := p.Sides[0].Taped, geom.In(144)+geom.Inch/8; got != want {
		t.Errorf("wall A is %d, want %d", got, want)
	}
}

// A room that says nothing of its tolerances takes 1/16 in, 1 in and 1/2 in,
// or 1, 25 and 12 mm (common practice, no source).
func TestDefaultTolerances(t *testing.T) {
	r := fourWalls("12'", "9'", "12'", "9' 0-1/2\"")
	r.Survey = room.Survey{}
	mustSolve(t, r)
	r = fourWalls("12'", "9'", "12'", "9' 0-17/32\"")
	r.Survey = room.Survey{}
	if _, found := survey.Solve(r); finding.Errors(found) != 1 {
		t.Errorf("a misfit of 17/32 in passes: %+v", found)
	}
	r.Walls[3].Length.About = true
	mustSolve(t, r)
}
