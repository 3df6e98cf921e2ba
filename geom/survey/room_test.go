package survey_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// taped reads one or several tapings, in inches or feet and inches; "about"
// before the first makes it rough, none is unknown.
func taped(line int, texts ...string) room.Reading {
	r := room.Reading{At: finding.Place{Line: line, Column: 26}}
	var sum geom.Length
	for _, text := range texts {
		rest, about := strings.CutPrefix(text, "about ")
		r.About = r.About || about
		l, err := measure.Parse(rest, measure.Inches)
		if err != nil {
			panic(err)
		}
		r.All = append(r.All, l)
		sum += l
	}
	if len(texts) == 0 {
		r.Unknown = true
		return r
	}
	r.Value = sum / geom.Length(len(texts))
	return r
}

// fourWalls makes a room of walls A to D; an empty length is unknown.
func fourWalls(a, b, c, d string) *room.Room {
	r := &room.Room{
		Title: "invented room",
		Show:  measure.DefaultShow(measure.Inches),
		Survey: room.Survey{
			TapeReadsTo: geom.Inch / 16, AboutMeans: geom.Inch, ClosesWithin: geom.Inch / 2,
		},
	}
	for i, text := range []string{a, b, c, d} {
		w := room.Wall{Name: string(rune('A' + i)), At: finding.Place{Line: i + 1, Column: 5}}
		if text == "" {
			w.Length = taped(i + 1)
		} else {
			w.Length = taped(i+1, strings.Split(text, ", ")...)
		}
		r.Walls = append(r.Walls, w)
	}
	return r
}

// diagonals adds the readings corner 0 to 2 and corner 1 to 3; empty is left out.
func diagonals(r *room.Room, d02, d13 string) *room.Room {
	if d02 != "" {
		r.Survey.Readings = append(r.Survey.Readings, room.Diagonal{From: 0, To: 2, Reading: taped(11, strings.Split(d02, ", ")...)})
	}
	if d13 != "" {
		r.Survey.Readings = append(r.Survey.Readings, room.Diagonal{From: 1, To: 3, Reading: taped(12, strings.Split(d13, ", ")...)})
	}
	return r
}

// mustSolve solves r and fails on an error among the findings.
func mustSolve(t *testing.T, r *room.Room) (survey.Plan, []finding.Finding) {
	t.Helper()
	p, found := survey.Solve(r)
	for _, f := range found {
		if f.Kind == finding.Error {
			t.Fatalf("unexpected error: %+v", f)
		}
	}
	return p, found
}

// inch returns x inches to the nearest sixteenth of a micrometre.
func inch(x float64) geom.Length { return geom.Length(math.Round(x * float64(geom.Inch))) }

// corners makes a polygon from inches.
func corners(xy ...float64) geom.Polygon {
	var p geom.Polygon
	for i := 0; i < len(xy); i += 2 {
		p = append(p, geom.Pt(inch(xy[i]), inch(xy[i+1])))
	}
	return p
}

// near fails unless every corner of got is within tol of want, each way.
func near(t *testing.T, what string, got, want geom.Polygon, tol geom.Length) {
	t.Helper()
	ok := len(got) == len(want)
	for i := 0; ok && i < len(got); i++ {
		d := got[i].Sub(want[i])
		ok = d.X.Abs() <= tol && d.Y.Abs() <= tol
	}
	if !ok {
		t.Errorf("%s: corners %v, want %v within %d", what, got, want, tol)
	}
}

// rules lists the rules of the findings of one kind.
func rules(found []finding.Finding, k finding.Kind) []string {
	var list []string
	for _, f := range found {
		if f.Kind == k {
			list = append(list, f.Rule)
		}
	}
	return list
}

// only returns the one finding with the given rule.
func only(t *testing.T, found []finding.Finding, rule string) finding.Finding {
	t.Helper()
	list := slices.DeleteFunc(slices.Clone(found), func(f finding.Finding) bool { return f.Rule != rule })
	if len(list) != 1 {
		t.Fatalf("%d findings of rule %q in %+v", len(list), rule, found)
	}
	return list[0]
}
