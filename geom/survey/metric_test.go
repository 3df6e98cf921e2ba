package survey_test

import (
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// A room in millimetres speaks millimetres, and closes within 12 mm when it
// does not say (common practice, no source).
func TestMillimetres(t *testing.T) {
	r := fourWalls("1", "1", "1", "1")
	r.Units = measure.Millimetres
	r.Show = measure.DefaultShow(measure.Millimetres)
	r.Survey = room.Survey{}
	for i, mm := range []int64{4000, 3000, 4000, 3012} {
		r.Walls[i].Length = plain(i+1, geom.MM(mm))
	}
	p, found := mustSolve(t, r)
	if p.Sides[1].Taped != geom.MM(3006) {
		t.Errorf("wall B is %d", p.Sides[1].Taped)
	}
	if f := only(t, found, "greatest misfit"); f.What != "greatest misfit of the survey: 12 mm at wall B (A/B to B/C)" ||
		f.Found != "read 3000; the others want 3012" {
		t.Errorf("%+v", f)
	}
	r.Walls[3].Length = plain(4, geom.MM(3013))
	_, found = survey.Solve(r)
	if f := only(t, found, "survey closes"); f.Kind != finding.Error || f.Allowed != "a misfit of 12 mm (closes within)" ||
		f.Found != "wall D (C/D to D/A) is 3013; wall B (A/B to B/C) wants 3000" {
		t.Errorf("%+v", f)
	}
	r.Walls[3].Length = plain(4, geom.MM(3024))
	r.Walls[3].Length.About = true // 25 mm when the room does not say
	mustSolve(t, r)
	r.Walls[3].Length = plain(4, geom.MM(3040))
	r.Walls[3].Length.Within = geom.MM(40)
	mustSolve(t, r)
}
