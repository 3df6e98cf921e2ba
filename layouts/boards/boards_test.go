package boards

import (
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/paper"
)

// lined is an invented room: on wall A a row of three boards on old studs at
// 16, bought 48 x 96 and cut to 60; wall B is masonry.
const lined = `
title: Map store to print room
units: inches
show: inches to 1/16
every wall: {made of: block, tape on: masonry, floor to structure: 100}
walls:
  - wall: A
    length: 160
    made of: studs
    tape on: lining
    lining: {inside: 1/2 gypsum, outside: unknown}
    frame: {stud: 2x4, bearing: no, other duty: none, studs: 16 from left}
  - {wall: B, length: 120}
  - {wall: C, length: 160, doors: [{door: entry, clear: 32 x 80, left edge from left: 4}]}
  - {wall: D, length: 120}
survey: {corners: square}
boards:
  - {board: print wall, wall: A, sheets: 3 of 48 x 96, sheet: 1/4 hardboard, cut to: 60, left edge from left: 0, bottom from floor: 30, gap: 0}
  - {board: tool wall, wall: C, sheets: 2 of 48 x 48, sheet: 3/4 plywood, left edge from left: 50, bottom from floor: 30}
`

func setOut(t testing.TB, text string) setout.Result {
	t.Helper()
	r, found := roomfile.Read([]byte(text))
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

func half() paper.Scale { return paper.InchScales()[4] }

func walk[T drawing.Element](p drawing.Plate, visit func(T)) {
	drawing.Walk(p.Elements, true, func(e drawing.Element) {
		if x, ok := e.(T); ok {
			visit(x)
		}
	})
}

// The seams of 48 wide sheets from the corner fall at 48 and 96, on the centres
// of studs set out at 16 from the end (US Navy builder training manual 14044,
// layout of studs: the first is set back so that sheets break on centres).
func TestRowOnStuds(t *testing.T) {
	res := setOut(t, lined)
	p := Draw(res, 0, half())
	labels, cut, outlines := 0, 0, 0
	walk(p, func(g drawing.Group) {
		if strings.HasPrefix(g.ID, "label-") {
			labels++
		}
	})
	var bold []string
	walk(p, func(x drawing.Text) {
		if strings.Contains(x.String, "60 high") {
			cut++
		}
		if x.Turned && x.Bold {
			bold = append(bold, x.String)
		}
	})
	walk(p, func(l drawing.Polyline) {
		if l.Layer == drawing.Board && l.Pen == drawing.P50 {
			outlines++
		}
	})
	if labels != 3 || cut != 3 || outlines != 3 {
		t.Errorf("%d labels, %d words of the cut, %d outlines, want 3 of each", labels, cut, outlines)
	}
	if want := []string{"0", "48", "96", "144"}; !slices.Equal(bold, want) {
		t.Errorf("bold running marks %q, want %q", bold, want)
	}
	seams := p.Tables[1].Rows
	if len(seams) != 4 || seams[1][0] != "48" || seams[1][1] != "seam" || seams[1][2] != "4" || seams[1][3] != "3/4" || seams[1][4] != "3/4" {
		t.Errorf("seams %q", seams)
	}
	if got := p.Tables[0].Rows; len(got) != 1 || got[0][2] != "48 × 96" || got[0][3] != "3" || got[0][4] != "48 × 60" {
		t.Errorf("boards %q", got)
	}
}

// TestStudsBehindAreHidden looks for solid lines of studs: behind a lining
// there must be none.
func TestStudsBehindAreHidden(t *testing.T) {
	hidden := 0
	walk(Draw(setOut(t, lined), 0, half()), func(l drawing.Line) {
		if l.Layer != drawing.FrameKept {
			return
		}
		if l.Dash != drawing.Hidden {
			t.Errorf("a stud behind the lining is drawn as seen: %+v", l)
		}
		hidden++
	})
	if hidden == 0 {
		t.Error("no stud is drawn")
	}
}

func TestRowOnMasonry(t *testing.T) {
	p := Draw(setOut(t, lined), 2, half())
	if len(p.Tables) != 1 {
		t.Errorf("tables %+v, want no seams to bear on studs", p.Tables)
	}
	if n := strings.Join(p.Notes, " "); !strings.Contains(n, "anchors") || strings.Contains(n, "stud behind") {
		t.Errorf("notes %q", n)
	}
	if got := p.Tables[0].Rows[0][4]; got != "whole" {
		t.Errorf("a whole board is cut to %q", got)
	}
	fixings := 0
	walk(p, func(l drawing.Line) {
		if l.Layer == drawing.Board && l.Dash == drawing.Joist {
			fixings++
		}
	})
	if fixings == 0 {
		t.Error("no line of fixings")
	}
}

// TestChainSumsToTheWall adds up the row of boards and margins.
func TestChainSumsToTheWall(t *testing.T) {
	for _, text := range []string{lined, example(t, "bow-makers-room.yaml"), example(t, "glaze-test-room.yaml")} {
		res := setOut(t, text)
		for _, b := range res.Boards {
			var rows = map[geom.Length]geom.Length{}
			walk(Draw(res, b.Wall, half()), func(d drawing.Dimension) {
				if !d.Vertical {
					rows[d.Line.Y] += d.Measure()
				}
			})
			side := res.Plan.Sides[b.Wall]
			for y, sum := range rows {
				if got := res.Room.Show.Round(sum - side.Finished); got != 0 {
					t.Errorf("the row at %v adds up to %v, the wall is %v", y, sum, side.Finished)
				}
			}
			if len(rows) != 2 {
				t.Errorf("%d rows, want 2", len(rows))
			}
		}
	}
}

func TestLegibleAtEveryScale(t *testing.T) {
	for name, text := range map[string]string{"lined": lined, "bow maker": example(t, "bow-makers-room.yaml"), "glaze test": example(t, "glaze-test-room.yaml")} {
		res := setOut(t, text)
		for _, s := range append(paper.InchScales()[2:9], paper.MetricScales()[2:7]...) {
			for _, b := range res.Boards {
				p := Draw(res, b.Wall, s)
				for _, f := range legible.Faults(p.Elements, s) {
					t.Errorf("%s at 1:%d: %s", name, s.Ratio, f)
				}
				if !reflect.DeepEqual(p, Draw(res, b.Wall, s)) {
					t.Errorf("%s at 1:%d: two drawings differ", name, s.Ratio)
				}
			}
		}
	}
}

func example(t testing.TB, name string) string {
	t.Helper()
	b, err := os.ReadFile("../../cmd/roomwright/examples/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}
