package ceilingplan

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/geom/setout"
	"roomwright/geom/survey"
	"roomwright/layouts/drawing"
	"roomwright/layouts/planwalls"
)

// ofResult is a view with nothing drawn.
func ofResult(res setout.Result) *view {
	return &view{r: res, c: res.Ceiling, s: at(24), sides: planwalls.Sides(res, at(24)), show: res.Room.Show, used: map[string]bool{}}
}

func table(t *testing.T, p drawing.Plate, heading string) drawing.Table {
	t.Helper()
	for _, l := range p.Tables {
		if l.Heading == heading {
			return l
		}
	}
	t.Fatalf("no table %q", heading)
	return drawing.Table{}
}

// TestPlacesCount holds the list of pieces to its own numbers: as many places
// are named as there are pieces of a mark.
func TestPlacesCount(t *testing.T) {
	all := rooms(t, 16)
	all["bow"], all["glaze"] = example(t, "bow-makers-room.yaml", ""), example(t, "glaze-test-room.yaml", "")
	counted := 0
	for name, res := range all {
		v := ofResult(res)
		_, cols := v.gridNames()
		total := 0
		for _, r := range v.pieces().Rows {
			n := 0
			fmt.Sscan(r[3], &n)
			total += n
			switch r[0][0] {
			case 'N':
				if got := len(cellsIn(v, r[2], len(cols))); got != n {
					t.Errorf("%s: %s is %d pieces, in %d cells: %s", name, r[0], n, got, r[2])
				}
				counted++
			case 'K':
				if strings.HasPrefix(r[2], "all others") {
					continue
				}
				if got := linesIn(v, r[2]); got != n {
					t.Errorf("%s: %s is %d pieces, on %d lines: %s", name, r[0], n, got, r[2])
				}
				counted++
			}
		}
		if total != len(res.Ceiling.Pieces) {
			t.Errorf("%s: %d pieces in the list, %d set out", name, total, len(res.Ceiling.Pieces))
		}
	}
	if counted < 80 {
		t.Errorf("%d marks counted, want at least 100", counted)
	}
}

// cellsIn reads back the cells that the list names.
func cellsIn(v *view, where string, cols int) []string {
	index := func(name string) int {
		return slices.IndexFunc(v.c.Cells, func(c ceiling.Cell) bool { return c.Name == name })
	}
	var out []string
	for _, part := range strings.Split(where, ", ") {
		from, to, run := strings.Cut(part, " to ")
		i := index(from)
		if i < 0 || run && index(to) < 0 {
			return nil
		}
		out = append(out, from)
		step := 1
		if run && v.c.Cells[i].Row != v.c.Cells[index(to)].Row {
			step = cols
		}
		for run && v.c.Cells[i].Name != to {
			i += step
			out = append(out, v.c.Cells[i].Name)
		}
	}
	return out
}

// linesIn counts the tee lines that the list names.
func linesIn(v *view, where string) int {
	rows, cols := v.gridNames()
	n := 0
	for _, group := range strings.Split(where, "; ") {
		_, list, _ := strings.Cut(group, ": ")
		for _, part := range strings.Split(list, ", ") {
			from, to, run := strings.Cut(part, " to ")
			n++
			if !run {
				continue
			}
			first := func(line string) int {
				name, _, _ := strings.Cut(line, "|")
				return max(slices.Index(rows, name), slices.Index(cols, name))
			}
			n += first(to) - first(from)
		}
	}
	return n
}

// TestCutsOfMains holds the cuts of the main tees to the length that they are
// cut from.
func TestCutsOfMains(t *testing.T) {
	all := rooms(t, 16)
	all["bow"] = example(t, "bow-makers-room.yaml", "")
	for name, res := range all {
		v := ofResult(res)
		rows := v.mainTable().Rows
		used := map[int]geom.Length{}
		i := 0
		for _, m := range v.c.Mains {
			for k, stick := range m.Sticks {
				row := rows[i]
				i++
				used[stick.Stock] += stick.Length
				if row[0] != string(stick.Mark) || row[1] != fmt.Sprint(stick.Stock) {
					t.Errorf("%s: row %v is not stick %+v", name, row, stick)
				}
				if last := k == len(m.Sticks)-1; !last && row[3] != "factory end" || k > 0 && row[2] != "factory end" {
					t.Errorf("%s: %v has no factory end at its splice", name, row)
				}
			}
		}
		for stock, l := range used {
			if l > v.c.MainStock {
				t.Errorf("%s: %s is cut from length %d of %s", name, v.show.Figure(l), stock, v.show.Figure(v.c.MainStock))
			}
		}
	}
	// By hand, in inches of 144: wall D to the first line 12 15/16, less the gap
	// 1/8; slots at 3 and every 6: the slot at 15, less 12 13/16, leaves 2 3/16
	// to come off where the border is that wide.
	c := &ceiling.Ceiling{MainsAlongX: true, MainStock: geom.In(144)}
	m := ceiling.Main{StartCut: geom.InFrac(2, 3, 16), Sticks: []ceiling.Stick{{Mark: "M1", Length: geom.In(100), Stock: 1}}}
	v := &view{c: c, show: measure.DefaultShow(measure.Inches)}
	for _, row := range []struct {
		again    bool
		from, to string
	}{{false, `cut 2 3/16" off`, "cut to length"}, {true, "cut to length", `cut 3'-5 13/16" off`}} {
		if from, to := v.ends(m, 0, row.again); from != row.from || to != row.to {
			t.Errorf("ends %q, %q, want %q, %q", from, to, row.from, row.to)
		}
	}
}

// TestWires holds the list of wires to the hangers.
func TestWires(t *testing.T) {
	for name, res := range rooms(t, 16) {
		v := ofResult(res)
		n := 0
		for _, r := range v.wires().Rows {
			k := 0
			fmt.Sscan(r[2], &k)
			n += k
			if r[0][0] == 'M' && k != len(strings.Split(r[1], ",  ")) {
				t.Errorf("%s: %d wires at %s", name, k, r[1])
			}
		}
		if n != len(res.Ceiling.Hangers) {
			t.Errorf("%s: %d wires in the list, %d hangers", name, n, len(res.Ceiling.Hangers))
		}
	}
	// Two wires at opposite corners and one: by weight, as set out.
	c := &ceiling.Ceiling{
		Lights:  []ceiling.Light{{Mark: "L1"}, {Mark: "L2"}, {Mark: "L3"}},
		Hangers: []ceiling.Hanger{{Light: "L1", Wire: geom.In(20)}, {Light: "L2", Wire: geom.In(20)}, {Light: "L2", Wire: geom.In(21)}, {Light: "L3", Wire: geom.In(20)}},
	}
	v := &view{c: c, show: measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}}
	want := [][]string{{"L1, L3", "upper left corner of each", "2", "20"}, {"L2", "upper left and lower right corners", "2", "21"}}
	if got := v.lightWires(); !slices.EqualFunc(got, want, slices.Equal) {
		t.Errorf("wires of lights %v, want %v", got, want)
	}
}

// TestStrings checks the marks of strings in a room out of square, worked by
// hand: wall B goes 3 aside in 144 down, so it is the square root of
// 144*144 + 3*3 = 144.0312 long, and a tee halfway down meets it at 72.0156.
func TestStrings(t *testing.T) {
	in := func(x, y int64) geom.Point { return geom.Pt(geom.In(x), geom.In(y)) }
	outline := geom.Polygon{in(0, 0), in(168, 0), in(171, -144), in(0, -144)}
	plan := survey.Plan{Taped: outline, Finished: outline, Rough: outline}
	long := []float64{168, 144.03125, 171, 144}
	for i, l := range long {
		plan.Sides = append(plan.Sides, survey.Side{
			Wall: string(rune('A' + i)), Start: []string{"D/A", "A/B", "B/C", "C/D"}[i], End: []string{"A/B", "B/C", "C/D", "D/A"}[i],
			Finished: geom.Length(math.Round(l * float64(geom.Inch))),
		})
	}
	res := setout.Result{
		Room: &room.Room{Show: measure.Show{Form: measure.InchesOnly, To: geom.Inch / 64}},
		Plan: plan,
		Ceiling: &ceiling.Ceiling{Outline: outline,
			XLines: []ceiling.TeeLine{{At: geom.In(24)}, {At: geom.In(48)}}, YLines: []ceiling.TeeLine{{At: geom.In(-72)}}},
	}
	v := &view{r: res, c: res.Ceiling, show: res.Room.Show}
	for _, c := range []struct {
		wall    int
		corner  string
		figures string
	}{
		{0, "D/A", "24, 48"}, {1, "A/B", "72 1/64"}, {2, "C/D", "24, 48"}, {3, "D/A", "72"},
	} {
		s := v.stringAt(c.wall)
		if got := strings.Join(v.figures(s), ", "); s.corner != c.corner || got != c.figures {
			t.Errorf("wall %s: %s from corner %s, want %s from %s", s.wall, got, s.corner, c.figures, c.corner)
		}
	}
	notes := strings.Join(v.stringNotes(), "\n")
	for _, want := range []string{"The same figures go on wall C from corner C/D.", "On wall B from corner A/B: 72 1/64."} {
		if !strings.Contains(notes, want) {
			t.Errorf("notes do not say %q:\n%s", want, notes)
		}
	}
}

// TestHeightOfTheAngle: the top edge of the wall angle is the face of the
// ceiling and its leg; home-improvement guides: level line, finished level plus
// the leg's height. 90 and 7/8, 2350 and 24.
func TestHeightOfTheAngle(t *testing.T) {
	for name, want := range map[string]string{"bow-makers-room.yaml": "top edge at 90 7/8 above", "glaze-test-room.yaml": "top edge at 2374 above"} {
		if p := Draw(example(t, name, ""), at(50)); !strings.Contains(strings.Join(p.Notes, "\n"), want) {
			t.Errorf("%s: no note says %q: %q", name, want, p.Notes)
		}
	}
}

// TestSkewPanel prints both ends of a panel out of square: a border cell 12 1/2
// wide at its top and 12 at its bottom takes a panel 1/4 less at both.
func TestSkewPanel(t *testing.T) {
	v := &view{show: measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}}
	half := geom.Inch / 2
	c := ceiling.Cell{
		Skew: true, CutW: geom.InFrac(12, 1, 4), CutH: geom.InFrac(23, 3, 4),
		Shape: geom.Polygon{geom.Pt(0, 0), geom.Pt(geom.In(12)+half, 0), geom.Pt(geom.In(12), geom.In(-24)), geom.Pt(0, geom.In(-24))},
	}
	if got, want := v.panelSize(c), "12 1/4 to 11 3/4 × 23 3/4"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// TestListedOnce: a mark has one row, and the tables name no mark that is not a
// piece.
func TestListedOnce(t *testing.T) {
	res := example(t, "glaze-test-room.yaml", "")
	seen := map[string]bool{}
	known := map[piece.Mark]bool{}
	for _, p := range res.Ceiling.Pieces {
		known[p.Mark] = true
	}
	for _, r := range table(t, Draw(res, at(25)), "Pieces on this sheet").Rows {
		if seen[r[0]] || !known[piece.Mark(r[0])] {
			t.Errorf("row %v", r)
		}
		seen[r[0]] = true
	}
	if len(seen) != len(known) {
		t.Errorf("%d marks listed of %d", len(seen), len(known))
	}
}
