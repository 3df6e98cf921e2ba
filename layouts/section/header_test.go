package section

import (
	"reflect"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts/cuts"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// cut is an invented room with an opening in an old wall that is lined on the
// far side, and a doorway with a flat header in a new one.
const cut = `
title: Oat store to print room
units: inches
show: inches to 1/32
every wall: {made of: block, tape on: masonry, floor to structure: 99}
walls:
  - wall: A
    length: 150
    made of: studs
    tape on: studs
    lining: {inside: none, outside: 1/2 gypsum}
    frame: {stud: 2x4, bearing: no, other duty: none, studs: 16 from left}
  - {wall: B, length: 120, made of: new studs, tape on: studs, frame: {stud: 2x4, bearing: no, studs: 16 from left}}
  - {wall: C, length: 150}
  - {wall: D, length: 120}
survey: {corners: square}
openings:
  - {opening: hatch, wall: A, rough: 40 x 36, left edge from left: 50, bottom from floor: 41, header: {plies: 2 of 2x8, filler: 15/32}, jacks: {a side: 1, at sill: split}, glazing: none}
  - {opening: doorway, wall: B, rough: 36 x 82, left edge from left: 40, bottom from floor: 0, header: flat 2x4, glazing: none}
`

func setOut(t testing.TB) setout.Result {
	t.Helper()
	r, found := roomfile.Read([]byte(cut))
	if finding.Errors(found) == 0 {
		res := setout.SetOut(r)
		if finding.Errors(res.Findings) == 0 {
			return res
		}
		found = res.Findings
	}
	t.Fatalf("%+v", found)
	return setout.Result{}
}

func quarter() paper.Scale { return paper.InchScales()[0] } // 3" = 1'-0"

// cutBoxes returns the outlines of what is cut, of the given pen.
func cutBoxes(p drawing.Plate, pen drawing.Pen) []geom.Rect {
	var out []geom.Rect
	drawing.Walk(p.Elements, false, func(e drawing.Element) {
		if l, ok := e.(drawing.Polyline); ok && l.Layer == drawing.Cut && l.Pen == pen && l.Closed {
			out = append(out, geom.Polygon(l.Points).Bounds())
		}
	})
	return out
}

// Two plies of 1-1/2 and a filler of 15/32 between them, 7-1/4 high from the
// rough opening's top at 77: arithmetic from the dressed sizes of the American
// Softwood Lumber Standard PS 20.
func TestHeaderIsCutAtTrueSize(t *testing.T) {
	p := Header(setOut(t), cuts.Cut{Letter: "X", Look: marks.LeftWay}, quarter())
	plies := cutBoxes(p, drawing.P50)
	want := []geom.Rect{
		geom.RectOf(0, geom.In(77), geom.InFrac(1, 1, 2), geom.InFrac(84, 1, 4)),
		geom.RectOf(geom.InFrac(1, 31, 32), geom.In(77), geom.InFrac(3, 15, 32), geom.InFrac(84, 1, 4)),
	}
	if !reflect.DeepEqual(plies, want) {
		t.Errorf("plies %v, want %v", plies, want)
	}
	thin := cutBoxes(p, drawing.P35) // lining and filler
	if len(thin) != 2 {
		t.Fatalf("%d thin things cut, want the lining and the filler", len(thin))
	}
	if lining := thin[0]; lining.Min.X != geom.InFrac(3, 1, 2) || lining.W() != geom.Inch/2 || lining.Min.Y != geom.In(77) {
		t.Errorf("lining %v, want it on the far side, flush under the header", lining)
	}
	accent := 0
	drawing.Walk(p.Elements, false, func(e drawing.Element) {
		if l, ok := e.(drawing.Line); ok && l.Layer == drawing.SawLine {
			accent++
			if l.A.Y != geom.InFrac(84, 3, 8) || !l.Accent || l.Pen != drawing.P70 {
				t.Errorf("saw cut %+v, want it 1/8 over the header", l)
			}
		}
	})
	if accent != 1 {
		t.Errorf("%d saw cuts, want 1", accent)
	}
}

// TestLookingTheOtherWayMirrors: who turns round has the far side at the other
// hand.
func TestLookingTheOtherWayMirrors(t *testing.T) {
	res := setOut(t)
	left := cutBoxes(Header(res, cuts.Cut{Letter: "X", Look: marks.LeftWay}, quarter()), drawing.P35)
	right := cutBoxes(Header(res, cuts.Cut{Letter: "X", Look: marks.RightWay}, quarter()), drawing.P35)
	core := geom.InFrac(3, 1, 2)
	for i := range left {
		if left[i].Min.X != core-right[i].Max.X || left[i].Max.X != core-right[i].Min.X {
			t.Errorf("%v is not the mirror image of %v", right[i], left[i])
		}
	}
}

func TestCalloutsNameTheParts(t *testing.T) {
	res := setOut(t)
	for _, c := range []struct {
		wall int
		want []string
		not  string
	}{
		{0, []string{"stub of the old stud", "gap 1/8", "far side", "filler 15/32", "2 plies 2×8", "upper jack stud"}, "cripple"},
		{1, []string{"cripple, beyond", "2×4", "jack stud, beyond"}, "stub"},
	} {
		all := ""
		drawing.Walk(Header(res, cuts.Cut{Letter: "X", Wall: c.wall, Look: marks.LeftWay}, quarter()).Elements, true, func(e drawing.Element) {
			if x, ok := e.(drawing.Text); ok {
				all += x.String + " "
			}
		})
		for _, w := range c.want {
			if !strings.Contains(all, w) {
				t.Errorf("wall %d: %q is not said in %q", c.wall, w, all)
			}
		}
		if strings.Contains(all, c.not) {
			t.Errorf("wall %d: %q is said in %q", c.wall, c.not, all)
		}
	}
}

func TestCutOfNothing(t *testing.T) {
	p := Header(setOut(t), cuts.Cut{Letter: "Z", Wall: 2}, quarter())
	if len(p.Elements) != 0 || p.Name != "section-z" {
		t.Errorf("a cut of no opening draws %d elements", len(p.Elements))
	}
}

func TestHeaderSectionIsLegible(t *testing.T) {
	res := setOut(t)
	for _, s := range append(paper.InchScales()[:3], paper.MetricScales()[1:3]...) {
		for _, look := range []marks.Way{marks.LeftWay, marks.RightWay} {
			for wall := range 2 {
				p := Header(res, cuts.Cut{Letter: "X", Wall: wall, Look: look}, s)
				for _, f := range legible.Faults(p.Elements, s) {
					t.Errorf("wall %d at 1:%d: %s", wall, s.Ratio, f)
				}
			}
		}
	}
}
