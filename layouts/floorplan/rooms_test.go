package floorplan

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/geom/survey"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/anyroom"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/paper"
)

func setOut(text string) (setout.Result, bool) {
	r, found := roomfile.Read([]byte(text))
	if finding.Errors(found) > 0 {
		return setout.Result{}, false
	}
	res := setout.SetOut(r)
	return res, finding.Errors(res.Findings) == 0
}

// straight returns elements with each arc as short lines, and the boxes of
// signs that are one.
func straight(list []drawing.Element) []drawing.Element {
	var out []drawing.Element
	for _, e := range list {
		switch e := e.(type) {
		case drawing.Group:
			e.Elements = straight(e.Elements)
			out = append(out, e)
		case drawing.Arc:
			at := func(t int) geom.Point {
				sin, cos := math.Sincos(float64(t) * math.Pi / 180)
				return e.Center.Add(geom.Pt(geom.Length(float64(e.Radius)*cos), geom.Length(float64(e.Radius)*sin)))
			}
			to := e.To
			if to < e.From {
				to += 360
			}
			for t := e.From; t < to; t += 3 {
				out = append(out, drawing.Line{Style: e.Style, A: at(t), B: at(min(t+3, to))})
			}
		default:
			out = append(out, e)
		}
	}
	return out
}

// signs returns the boxes of the letters of walls and of section marks.
func signs(p drawing.Plate) map[string]geom.Rect {
	out := map[string]geom.Rect{}
	for _, e := range p.Elements {
		if g, ok := e.(drawing.Group); ok && (strings.HasPrefix(g.ID, "wall-letter-") || strings.HasPrefix(g.ID, "section-")) {
			out[fmt.Sprint(g.ID, " ", len(out))] = drawing.Bounds([]drawing.Element{g}, p.Scale)
		}
	}
	return out
}

func judge(t *testing.T, name string, res setout.Result, s paper.Scale) drawing.Plate {
	t.Helper()
	p := Draw(res, s)
	for _, f := range legible.Faults(straight(p.Elements), s) {
		t.Errorf("%s, 1:%d: %s", name, s.Ratio, f)
	}
	list := signs(p)
	for a, x := range list {
		for b, y := range list {
			if a < b && x.Overlaps(y) {
				t.Errorf("%s, 1:%d: %s meets %s", name, s.Ratio, a, b)
			}
		}
	}
	// Every door, window and opening is named, on the plan or in the notes.
	all := strings.Join(append(texts(p), p.Notes...), "\n")
	for _, w := range res.Walls {
		for _, h := range w.Doors {
			if !h.Clear.Empty() && !strings.Contains(all, h.Name) {
				t.Errorf("%s, 1:%d: %s is not named", name, s.Ratio, h.Name)
			}
		}
		for _, o := range w.Openings {
			if !strings.Contains(all, o.Name) {
				t.Errorf("%s, 1:%d: %s is not named", name, s.Ratio, o.Name)
			}
		}
	}
	return p
}

func texts(p drawing.Plate) []string {
	var out []string
	drawing.Walk(p.Elements, true, func(e drawing.Element) {
		if t, ok := e.(drawing.Text); ok {
			out = append(out, t.String)
		}
	})
	return out
}

// TestExamples judges the plans of the examples in each form of figures; at the
// scales that a tabloid or A3 sheet takes, all four walls have their letters.
func TestExamples(t *testing.T) {
	for name, scales := range map[string][]int64{"bow-makers-room.yaml": {16, 24, 32, 48}, "glaze-test-room.yaml": {20, 25, 50}} {
		b, err := os.ReadFile("../../cmd/roomwright/examples/" + name)
		if err != nil {
			t.Fatal(err)
		}
		for _, show := range []string{"inches to 1/16", "feet and inches to 1/16"} {
			res, ok := setOut(strings.Replace(string(b), "\nshow: inches to 1/16\n", "\nshow: "+show+"\n", 1))
			if !ok {
				t.Fatalf("%s has errors", name)
			}
			for _, n := range scales {
				list := signs(judge(t, name, res, paper.Scale{Ratio: n}))
				for _, wall := range []string{"a", "b", "c", "d"} {
					if !slices.ContainsFunc(keys(list), func(k string) bool { return strings.HasPrefix(k, "wall-letter-"+wall+" ") }) {
						t.Errorf("%s, 1:%d: no letter of wall %s", name, n, wall)
					}
				}
			}
		}
	}
}

func keys(m map[string]geom.Rect) []string {
	var out []string
	for k := range m {
		out = append(out, k)
	}
	return out
}

// TestAnyRoom judges the plans of rooms that nobody thought of, from 5 to 30 ft;
// the seeds are fixed.
func TestAnyRoom(t *testing.T) {
	drawn := 0
	for seed := uint64(0); drawn < 40; seed++ {
		if seed == 1500 {
			t.Fatalf("only %d rooms", drawn)
		}
		r := rand.New(rand.NewPCG(seed, 17))
		res, ok := setOut(anyroom.File(func(_ string, low, high int) int { return low + r.IntN(high-low+1) }))
		if !ok {
			continue
		}
		drawn++
		for _, n := range []int64{16, 20, 24, 25, 32, 48, 50, 64, 100} {
			judge(t, fmt.Sprint("seed ", seed), res, paper.Scale{Ratio: n})
		}
	}
}

// TestSurvey: a 3-4-5 room, its diagonals taped. The one taped 1/8 too long is
// still set out as the corners give it, 25 ft; of the others, one is checked by
// nothing.
func TestSurvey(t *testing.T) {
	in := func(x, y int64) geom.Point { return geom.Pt(geom.In(x), geom.In(y)) }
	taped := geom.Polygon{in(0, 0), in(240, 0), in(240, -180), in(0, -180)}
	plan := survey.Plan{Taped: taped}
	for i, n := range []string{"A", "B", "C", "D"} {
		plan.Sides = append(plan.Sides, survey.Side{Wall: n, Start: []string{"D/A", "A/B", "B/C", "C/D"}[i], Taped: []geom.Length{geom.In(240), geom.In(180)}[i%2]})
	}
	plan.Misfits = []survey.Misfit{
		{Reading: "A", Read: geom.In(240), Wanted: geom.InFrac(239, 15, 16)},
		{Reading: "A/B to C/D", Read: geom.InFrac(300, 1, 8), Wanted: geom.In(300)},
		{Reading: "D/A to B/C", Read: geom.In(300), Wanted: geom.In(300), Unchecked: true},
	}
	v := &view{r: setout.Result{Room: &room.Room{}, Plan: plan}, show: measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}}
	want := [][]string{
		{"A", "240", "240", "+1/16"},
		{"A/B to C/D", "300 1/8", "300", "+1/8"},
		{"D/A to B/C", "300", "300", "unchecked"},
	}
	got := v.tables()
	if len(got) != 1 || !slices.EqualFunc(got[0].Rows, want, slices.Equal) {
		t.Errorf("%v, want %v", got, want)
	}
	if v.r.Plan.Misfits = nil; v.tables() != nil {
		t.Error("a table of no readings")
	}
}

// TestDoorsThatOpenOut keeps the rows of dimensions past the leaf of a door: the
// leaf is 32 wide, at 1:32 it reaches 25.4 mm out of the wall.
func TestDoorsThatOpenOut(t *testing.T) {
	const file = `title: Shed, invented
units: inches
show: inches to 1/16
every wall: {made of: block, tape on: masonry}
walls:
  - {wall: A, length: 120, doors: [{door: out, clear: 32 x 80, left edge from left: 40, hinge: left, opens: out}]}
  - {wall: B, length: 100}
  - {wall: C, length: 120}
  - {wall: D, length: 100}
survey: {corners: square}
`
	res, ok := setOut(file)
	if !ok {
		t.Fatal("has errors")
	}
	s := paper.Scale{Ratio: 32}
	p := judge(t, "shed", res, s)
	n := 0
	for _, e := range p.Elements {
		if d, ok := e.(drawing.Dimension); ok && !d.Vertical && d.Line.Y > 0 {
			n++
			if d.Line.Y < geom.In(32) {
				t.Errorf("the row of %s lies %.2f in out, through the swing", d.Figure, d.Line.Y.Inches())
			}
		}
	}
	if n != 4 {
		t.Errorf("%d dimensions above, want 40, 32, 48 and 120", n)
	}
}
