package lining

import (
	"slices"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// in returns n sixteenths of an inch over whole inches.
func in(whole, sixteenths int64) geom.Length { return geom.InFrac(whole, sixteenths, 16) }

// studs16 returns studs at 16 in on a wall, the end studs included, as framing
// E1 has them (US Navy builder training manual 14044, plate layout).
func studs16(length geom.Length) []Backing {
	var out []Backing
	add := func(left geom.Length) {
		out = append(out, Backing{X: geom.Span{From: left, To: left + in(1, 8)}, StudNo: len(out) + 1})
	}
	add(0)
	for x := geom.In(16); x+in(0, 12) <= length-in(1, 8); x += geom.In(16) {
		add(x - in(0, 12))
	}
	add(length - in(1, 8))
	return out
}

// job144 is a room with one wall of 144 in, studs at 16 in, and one row.
func job144(b room.Board, finished geom.Span, change func(*Wall)) ([]Row, []finding.Finding) {
	b.Name, b.At = "test", finding.Place{Line: 9, Column: 5}
	b.Gap.At = finding.Place{Line: 9, Column: 9}
	r := &room.Room{
		Units: measure.Inches,
		Show:  measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16},
		Walls: []room.Wall{
			{Name: "A", MadeOf: room.Studs}, {Name: "B"}, {Name: "C"}, {Name: "D"},
		},
		Boards: []room.Board{b},
	}
	w := Wall{Length: geom.In(144), Finished: finished, Backing: studs16(geom.In(144)), Ceiling: geom.In(97)}
	if change != nil {
		change(&w)
	}
	return Build(r, survey.Plan{}, []Wall{w})
}

// fromLeft is "left edge from left: x".
func fromLeft(x geom.Length) room.Across {
	return room.Across{Kind: room.EdgeFromEnd, Value: x, At: finding.Place{Line: 10, Column: 1}}
}

// up is "bottom from floor: y".
func up(y geom.Length) room.Up { return room.Up{Kind: room.BottomFromFloor, Value: y} }

// size is a sheet as hung.
func size(w, h int64) room.Size { return room.Size{W: geom.In(w), H: geom.In(h)} }

// rule returns the one finding of a rule, or fails.
func rule(t *testing.T, list []finding.Finding, name string) finding.Finding {
	t.Helper()
	for _, f := range list {
		if f.Rule == name {
			return f
		}
	}
	t.Fatalf("no finding %q among %v", name, ruleNames(list))
	return finding.Finding{}
}

// ruleNames returns the rules of all warnings and errors.
func ruleNames(list []finding.Finding) []string {
	var out []string
	for _, f := range list {
		if f.Kind <= finding.Warning {
			out = append(out, f.Rule)
		}
	}
	return out
}

// seamsAt returns where the seams of a row are, the ends left out.
func seamsAt(row Row) []geom.Length {
	var out []geom.Length
	for _, s := range row.Seams {
		if !s.End {
			out = append(out, s.X)
		}
	}
	return out
}

func wall(from, to geom.Length) geom.Span { return geom.Span{From: from, To: to} }

// Worked example computed for this project, boards E16, from the panel rule of
// a home-improvement guide to wall panels (far edge centred on a stud) and the
// 16 in layout of US Navy builder training manual 14044.
func TestThreePanelsFromTheEndOfTheLayout(t *testing.T) {
	rows, found := job144(room.Board{Count: 3, Size: size(48, 96), Across: fromLeft(0), Up: up(0)}, wall(0, geom.In(144)), nil)
	row := rows[0]
	if got, want := seamsAt(row), []geom.Length{geom.In(48), geom.In(96)}; !slices.Equal(got, want) {
		t.Fatalf("seams at %v, want %v", got, want)
	}
	for _, s := range row.Seams[1:3] {
		if !s.Borne || s.OnLeft != in(0, 12) || s.OnRight != in(0, 12) {
			t.Errorf("seam %v, want 3/4 each side", s)
		}
	}
	// The third and the sixth mark of the layout are studs 4 and 7, the end stud being 1.
	if row.Seams[1].StudNo != 4 || row.Seams[2].StudNo != 7 {
		t.Errorf("seams on studs %d and %d, want 4 and 7", row.Seams[1].StudNo, row.Seams[2].StudNo)
	}
	if got := ruleNames(found); len(got) > 0 {
		t.Errorf("findings %v, want none", got)
	}
}

// Worked example computed for this project, boards E17: the side walls lined
// with 1/2 in first.
func TestSideWallLinedFirst(t *testing.T) {
	finished := wall(in(0, 8), in(143, 8))
	board := room.Board{Count: 3, Size: size(48, 96), Across: fromLeft(0), Up: up(0)}
	rows, found := job144(board, finished, nil)
	first := rows[0].Seams[1]
	if first.X != in(48, 8) || first.OnRight != in(0, 4) || first.Borne {
		t.Errorf("first seam %+v, want 48-1/2 with 1/4 on the right, not borne", first)
	}
	f := rule(t, found, "seam not borne")
	for text, want := range map[string]string{f.Found: "the sheet right of it bears 1/4 on stud 4 (47-1/4 to 48-3/4)", f.Hint: "first sheet cut to 47-1/2 puts the seams on 48 and 96"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q, want %q in it", text, want)
		}
	}
	board.Across = room.Across{}
	rows, found = job144(board, finished, nil)
	row := rows[0]
	if got, want := seamsAt(row), []geom.Length{geom.In(48), geom.In(96)}; !slices.Equal(got, want) {
		t.Fatalf("searched seams at %v, want %v", got, want)
	}
	if a, c := row.Sheets[0].Profile.Wide, row.Sheets[2].Profile.Wide; a != in(47, 8) || c != in(47, 8) {
		t.Errorf("first and last sheet %v and %v, want 47-1/2", a, c)
	}
	if row.Sheets[0].Mark != row.Sheets[2].Mark || row.Sheets[0].Mark == row.Sheets[1].Mark {
		t.Errorf("marks %v %v %v: equal sheets share one", row.Sheets[0].Mark, row.Sheets[1].Mark, row.Sheets[2].Mark)
	}
	if got := ruleNames(found); len(got) > 0 {
		t.Errorf("findings %v, want none", got)
	}
}

// Worked example computed for this project, boards E18: bearing of the right
// panel at seam k is 3/4 - k g.
func TestGapDrift(t *testing.T) {
	cases := []struct {
		gap  geom.Length
		want []geom.Length // sixteenths
	}{
		{in(0, 1), []geom.Length{in(0, 11), in(0, 10), in(0, 9), in(0, 8), in(0, 7), in(0, 6), in(0, 5)}},
		{in(0, 2), []geom.Length{in(0, 10), in(0, 8), in(0, 6), in(0, 4)}},
	}
	for _, c := range cases {
		n := len(c.want) + 1
		length := geom.In(48 * int64(n+1))
		board := room.Board{Count: n, Size: size(48, 48), Across: fromLeft(0), Up: up(geom.In(30)), Gap: room.Want{Value: c.gap}}
		rows, _ := job144(board, wall(0, length), func(w *Wall) { w.Length, w.Backing = length, studs16(length) })
		for k, want := range c.want {
			s := rows[0].Seams[k+1]
			if s.OnRight != want || s.Borne != (want >= in(0, 6)) {
				t.Errorf("gap %v seam %d: bears %v, borne %v; want %v", c.gap, k+1, s.OnRight, s.Borne, want)
			}
		}
	}
}

// Worked example computed for this project, boards E25, from a writing-board
// supplier's note: centre at 54 or 60.
func TestCentreHeights(t *testing.T) {
	for centre, want := range map[int64]geom.Span{54: wall(geom.In(30), geom.In(78)), 60: wall(geom.In(36), geom.In(84))} {
		board := room.Board{Count: 2, Size: size(48, 48), Up: room.Up{Kind: room.CentreFromFloor, Value: geom.In(centre)}}
		rows, _ := job144(board, wall(0, geom.In(144)), nil)
		if got := rows[0].Box.Y(); got != want {
			t.Errorf("centre %d: %v, want %v", centre, got, want)
		}
	}
}

func TestRefused(t *testing.T) {
	door := func(w *Wall) {
		w.Keep = []geom.Rect{geom.RectOf(geom.In(60), 0, geom.In(96), geom.In(82))}
		w.Names = []string{"door entry"}
	}
	cases := []struct {
		name   string
		board  room.Board
		change func(*Wall)
		rule   string
		want   string // in found, allowed or hint
	}{
		{"upright under a lowered ceiling", room.Board{Count: 1, Size: size(48, 96), Across: fromLeft(0), Up: up(geom.In(4))},
			func(w *Wall) { w.Ceiling = geom.In(92) }, "board taller than the space", "cut to: 87-3/4"},
		{"too long", room.Board{Count: 4, Size: size(48, 48), Across: fromLeft(0), Up: up(geom.In(4))}, nil,
			"row longer than its wall", "3 whole sheets fit"},
		{"across a door", room.Board{Count: 1, Size: size(48, 48), Across: fromLeft(geom.In(40)), Up: up(geom.In(30))}, door,
			"board over an opening", "is clear of it"},
		{"on a stud that is not there", room.Board{Count: 1, Size: size(48, 48), Up: up(0),
			Across: room.Across{Kind: room.CentredOnStud, Stud: room.StudRef{Number: 14}}}, nil,
			"board placed on nothing", "the last one of wall A is stud 10"},
		{"cut longer", room.Board{Count: 1, Size: size(48, 48), Across: fromLeft(0), Up: up(0), CutTo: room.Want{Value: geom.In(60)}}, nil,
			"board cut to more than it is", "at most 48"},
		{"in the floor", room.Board{Count: 1, Size: size(48, 48), Across: fromLeft(0),
			Up: room.Up{Kind: room.TopFromFloor, Value: geom.In(40)}}, nil, "board below the floor", "cut to 40"},
		{"nowhere up", room.Board{Count: 1, Size: size(48, 48), Across: fromLeft(0)}, nil, "board without a height", "centre from floor"},
		{"nothing clear", room.Board{Count: 3, Size: size(48, 48), Up: up(0)}, door, "row longer than its wall", "another height"},
		{"none", room.Board{Size: size(48, 48), Up: up(0)}, nil, "board without a size", "one sheet or more"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			_, found := job144(c.board, wall(0, geom.In(144)), c.change)
			f := rule(t, found, c.rule)
			if f.Kind != finding.Error || f.On != "board test" || f.Place.Line == 0 || f.Source == "" {
				t.Errorf("finding %+v", f)
			}
			if !strings.Contains(f.Found+"|"+f.Allowed+"|"+f.Hint, c.want) {
				t.Errorf("%+v, want %q in it", f, c.want)
			}
		})
	}
}

func TestWarned(t *testing.T) {
	box := func(w *Wall) {
		w.Keep = []geom.Rect{geom.RectOf(geom.In(20), geom.In(40), geom.In(22), geom.In(43))}
		w.Names = []string{"outlet"}
	}
	cable := func(w *Wall) {
		w.Services = []geom.Rect{geom.RectOf(geom.In(20), 0, geom.In(20), geom.In(48))}
	}
	wish := up(geom.In(4))
	wish.Wish = true
	cases := []struct {
		name   string
		board  room.Board
		change func(*Wall)
		kind   finding.Kind
		rule   string
		want   string
	}{
		{"over an outlet", room.Board{Count: 1, Size: size(48, 48), Across: fromLeft(0), Up: up(geom.In(30))}, box,
			finding.Warning, "board over a box", "20 to 22"},
		{"over a cable", room.Board{Count: 1, Size: size(48, 48), Across: fromLeft(0), Up: up(geom.In(30))}, cable,
			finding.Caution, "services behind screws", "1-1/4"},
		{"last sheet cut", room.Board{Count: 2, Size: size(48, 48), Across: fromLeft(geom.In(60)), Up: up(0)}, nil,
			finding.Warning, "row runs past its wall", "left edge from left: 48 needs no cut"},
		{"height that is a wish", room.Board{Count: 1, Size: size(48, 94), Across: fromLeft(0), Up: wish}, nil,
			finding.Warning, "height moved", "bottom 3 above the floor"},
		{"cut that is a wish", room.Board{Count: 1, Size: size(48, 96), Across: fromLeft(0), Up: up(geom.In(4)), CutTo: room.Want{Value: geom.In(95), IfFits: true}}, nil,
			finding.Warning, "board cut shorter", "cut to 93"},
		{"no gap over it", room.Board{Count: 1, Size: size(48, 96), Across: fromLeft(0), Up: up(geom.In(1))}, nil,
			finding.Warning, "no gap over the boards", "cut to: 95-3/4"},
		{"between studs", room.Board{Count: 1, Size: size(50, 48), Across: fromLeft(geom.In(20)), Up: up(0)}, nil,
			finding.Warning, "outer edge not borne", "left edge at 20 bears 0, the nearest upright is at 15-1/4 to 16-3/4"},
		{"studs not known", room.Board{Count: 1, Size: size(48, 48), Across: fromLeft(0), Up: up(0)}, func(w *Wall) { w.Backing = nil },
			finding.Warning, "nothing known to fix to", "find the studs"},
		{"masonry", room.Board{Count: 1, Size: size(48, 96), Across: fromLeft(0), Up: up(0)}, func(w *Wall) { w.Backing, w.Solid = nil, true },
			finding.Caution, "anchors in masonry", "wall A"},
		{"heavy", room.Board{Count: 1, Size: size(48, 96), Across: fromLeft(0), Up: up(0)}, nil,
			finding.Caution, "two-person lift", "1 sheets of 48 x 96"},
		{"height said", room.Board{Count: 1, Size: size(48, 48), Across: fromLeft(0), Up: up(geom.In(30))}, nil,
			finding.Note, "height of boards", "bottom 30, centre 54, top 78"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			rows, found := job144(c.board, wall(0, geom.In(144)), c.change)
			if len(rows[0].Sheets) != c.board.Count {
				t.Fatalf("%d sheets, want %d; findings %v", len(rows[0].Sheets), c.board.Count, found)
			}
			f := rule(t, found, c.rule)
			if f.Kind != c.kind || f.Source == "" {
				t.Errorf("finding %+v, want a %v with a source", f, c.kind)
			}
			if !strings.Contains(f.Found+"|"+f.Allowed+"|"+f.Hint+"|"+f.What, c.want) {
				t.Errorf("%+v, want %q in it", f, c.want)
			}
		})
	}
}

// A wish across gives way to the nearest place at which the seam bears.
func TestWishAcross(t *testing.T) {
	a := fromLeft(geom.In(3))
	a.Wish = true
	rows, found := job144(room.Board{Count: 2, Size: size(48, 48), Across: a, Up: up(geom.In(30))}, wall(0, geom.In(144)), nil)
	if got, want := rows[0].Box.Min.X, in(0, 6); got != want {
		t.Errorf("left edge %v, want %v: the seam then bears 3/8 on the right", got, want)
	}
	rule(t, found, "place across moved")
}

// Rows of cut studs under and over an opening bear on the cripples at their
// own height alone.
func TestBackingByHeight(t *testing.T) {
	backing := []Backing{
		{X: wall(0, in(1, 8)), Y: wall(in(1, 8), geom.In(94)), StudNo: 1},
		{X: wall(in(15, 4), in(16, 12)), Y: wall(in(1, 8), geom.In(33)), StudNo: 2},
		{X: wall(in(15, 4), in(16, 12)), Y: wall(geom.In(78), geom.In(94)), StudNo: 2},
		{X: wall(0, geom.In(32)), Y: wall(geom.In(33), geom.In(36)), Level: true},
	}
	cases := []struct {
		y    geom.Span
		want int
	}{
		{wall(geom.In(0), geom.In(32)), 2},
		{wall(geom.In(0), geom.In(40)), 2}, // the sill bears it up to 36
		{wall(geom.In(0), geom.In(48)), 1},
		{wall(geom.In(72), geom.In(96)), 2},
		{wall(geom.In(4), geom.In(88)), 1},
	}
	for _, c := range cases {
		if got := barsAt(backing, c.y); len(got.parts) != c.want {
			t.Errorf("%v: %d uprights, want %d", c.y, len(got.parts), c.want)
		}
	}
}

// Screws along edges every 6 in and between every 12 in (Ontario code note on
// hardboard cladding): 96 high, 3/8 from the ends, is 17 and 9.
func TestScrewRows(t *testing.T) {
	rows, _ := job144(room.Board{Count: 3, Size: size(48, 96), Across: fromLeft(0), Up: up(0)}, wall(0, geom.In(144)), nil)
	var x []geom.Length
	for _, f := range rows[0].Fixing {
		if f.Sheet == 1 {
			x = append(x, f.X)
		}
		if want := map[bool]int{true: 17, false: 9}[f.Edge]; f.Count != want {
			t.Errorf("%+v, want %d fixings", f, want)
		}
	}
	if want := []geom.Length{in(48, 6), geom.In(64), geom.In(80), in(95, 10)}; !slices.Equal(x, want) {
		t.Errorf("middle sheet fixed at %v, want %v", x, want)
	}
}

func TestAnchorRows(t *testing.T) {
	rows, _ := job144(room.Board{Count: 1, Size: size(48, 96), Across: fromLeft(0), Up: up(0)}, wall(0, geom.In(144)),
		func(w *Wall) { w.Backing, w.Solid = nil, true })
	fixing := rows[0].Fixing
	if len(fixing) != 4 || fixing[0].X != geom.In(1) || fixing[3].X != geom.In(47) || !fixing[3].Edge || fixing[1].Edge {
		t.Errorf("anchors %+v, want four lines from 1 to 47", fixing)
	}
}

func TestCentred(t *testing.T) {
	door := func(w *Wall) {
		w.Keep = []geom.Rect{geom.RectOf(geom.In(60), 0, geom.In(96), geom.In(82))}
		w.Names = []string{"door entry"}
	}
	unnumbered := func(w *Wall) {
		for i := range w.Backing {
			w.Backing[i].StudNo = 0
		}
	}
	cases := []struct {
		name   string
		across room.Across
		make   room.Make
		change func(*Wall)
		centre geom.Length
	}{
		{"wall", room.Across{Kind: room.CentredOnWall}, room.Studs, nil, geom.In(72)},
		{"stud 4", room.Across{Kind: room.CentredOnStud, Stud: room.StudRef{Number: 4}}, room.Studs, nil, geom.In(48)},
		{"stud 4 of a wall to be built", room.Across{Kind: room.CentredOnStud, Stud: room.StudRef{Number: 4}}, room.NewStuds, unnumbered, geom.In(48)},
		{"stud at 64-1/2", room.Across{Kind: room.CentredOnStud, Stud: room.StudRef{Mark: in(64, 8)}}, room.Studs, nil, geom.In(64)},
		{"between 4 and 7", room.Across{Kind: room.CentredBetween, Stud: room.StudRef{Number: 4}, Stud2: room.StudRef{Number: 7}}, room.Studs, nil, geom.In(72)},
		{"door", room.Across{Kind: room.CentredOnThing, Thing: "entry"}, room.Studs, door, geom.In(78)},
		{"centre from right", room.Across{Kind: room.EdgeFromEnd, Edge: room.Centre, From: room.Right, Value: geom.In(40)}, room.Studs, nil, geom.In(104)},
		{"right edge from left", room.Across{Kind: room.EdgeFromEnd, Edge: room.RightEdge, Value: geom.In(60)}, room.Studs, nil, geom.In(36)},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			board := room.Board{Name: "over", Count: 1, Size: size(48, 12), Across: c.across, Up: up(geom.In(84))}
			r := &room.Room{Walls: []room.Wall{{Name: "A", MadeOf: c.make}}, Boards: []room.Board{board}}
			w := Wall{Finished: wall(0, geom.In(144)), Backing: studs16(geom.In(144)), Ceiling: geom.In(97)}
			if c.change != nil {
				c.change(&w)
			}
			rows, found := Build(r, survey.Plan{}, []Wall{w})
			if got := rows[0].Box.X().Mid(); got != c.centre || len(rows[0].Sheets) != 1 {
				t.Errorf("centre %v, want %v; %v", got, c.centre, found)
			}
		})
	}
}

// The mark that a stud was written with names it, from whichever end it ran.
func TestStudByMark(t *testing.T) {
	frame := room.Frame{Studs: room.StudPlan{Given: true, From: room.Right, Marks: []geom.Length{0, in(31, 4), in(95, 4)}}}
	r := &room.Room{
		Walls: []room.Wall{{Name: "A", MadeOf: room.Studs, Frame: frame}},
		Boards: []room.Board{{Name: "b", Count: 1, Size: size(48, 12), Up: up(0),
			Across: room.Across{Kind: room.CentredOnStud, Stud: room.StudRef{Mark: in(95, 4)}}}},
	}
	w := Wall{Finished: wall(0, geom.In(144)), Ceiling: geom.In(97), Backing: []Backing{
		{X: wall(in(47, 4), in(48, 12)), StudNo: 1}, {X: wall(in(111, 4), in(112, 12)), StudNo: 2}, {X: wall(in(142, 8), geom.In(144)), StudNo: 3}}}
	rows, _ := Build(r, survey.Plan{}, []Wall{w})
	if got := rows[0].Box.X().Mid(); got != geom.In(48) {
		t.Errorf("centre %v, want 48 in: the last mark from the right is the first stud", got)
	}
}
