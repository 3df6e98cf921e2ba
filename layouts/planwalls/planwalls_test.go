package planwalls

import (
	"math/rand/v2"
	"os"
	"slices"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/anyroom"
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

func example(t *testing.T, name string) setout.Result {
	t.Helper()
	b, err := os.ReadFile("../../cmd/roomwright/examples/" + name)
	if err != nil {
		t.Fatal(err)
	}
	res, ok := setOut(string(b))
	if !ok {
		t.Fatalf("%s has errors", name)
	}
	return res
}

func TestBetween(t *testing.T) {
	span := func(a, b int64) geom.Span { return geom.Span{From: geom.In(a), To: geom.In(b)} }
	for _, c := range []struct {
		name string
		gaps []geom.Span
		want []geom.Span
	}{
		{"none", nil, []geom.Span{span(0, 100)}},
		{"one", []geom.Span{span(20, 30)}, []geom.Span{span(0, 20), span(30, 100)}},
		{"at an end", []geom.Span{span(-5, 30)}, []geom.Span{span(30, 100)}},
		{"two that overlap, in any order", []geom.Span{span(50, 70), span(40, 60)}, []geom.Span{span(0, 40), span(70, 100)}},
		{"all of it", []geom.Span{span(-1, 101)}, nil},
		{"beside it", []geom.Span{span(100, 120)}, []geom.Span{span(0, 100)}},
	} {
		if got := Between(span(0, 100), c.gaps); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// TestSides: the walls of the invented bow maker's room, in inches. Wall A is
// bare 2x4 studs with 1/2 outside; wall C is lined 1/2 inside and taped to it;
// B and D are masonry, a band of one width on paper.
func TestSides(t *testing.T) {
	s := paper.Scale{Ratio: 32}
	sides := Sides(example(t, "bow-makers-room.yaml"), s)
	pages := []dimension.Side{dimension.Above, dimension.RightOf, dimension.Below, dimension.LeftOf}
	half, stud := geom.Inch/2, 7*geom.Inch/2
	for i, want := range []struct {
		solid bool
		core  geom.Span
		outer geom.Length
	}{
		{false, geom.Span{From: 0, To: stud}, stud + half},
		{true, geom.Span{}, s.Real(paper.MM(bandMM))},
		{false, geom.Span{From: half, To: half + stud}, half + stud},
		{true, geom.Span{}, s.Real(paper.MM(bandMM))},
	} {
		d := sides[i]
		if d.Page != pages[i] || d.Solid != want.solid || d.Core != want.core || d.Outer != want.outer || d.Finished != 0 {
			t.Errorf("wall %s: %+v, want %+v", d.Wall.Name, d, want)
		}
	}
}

// TestPlaces: At and Foot are each other's inverse, Along runs with the page.
func TestPlaces(t *testing.T) {
	seen := 0
	for seed := uint64(0); seen < 12 && seed < 500; seed++ {
		r := rand.New(rand.NewPCG(seed, 19))
		res, ok := setOut(anyroom.File(func(_ string, low, high int) int { return low + r.IntN(high-low+1) }))
		if !ok {
			continue
		}
		seen++
		for _, d := range Sides(res, paper.Scale{Ratio: 24}) {
			for range 20 {
				x := geom.Length(r.Int64N(int64(d.Length)))
				in := geom.Length(r.Int64N(int64(geom.In(40))))
				along, deep := d.Foot(d.At(x, -d.Finished-in))
				if (along-x).Abs() > 4 || (deep-in).Abs() > 4 {
					t.Fatalf("seed %d, wall %s: %d, %d became %d, %d", seed, d.Wall.Name, x, in, along, deep)
				}
				p := d.At(x, 0)
				page := p.X
				if d.Page == dimension.LeftOf || d.Page == dimension.RightOf {
					page = p.Y
				}
				// A wall out of square is longer than it reaches along the page.
				if (page - d.Along(x)).Abs() > d.Length/100 {
					t.Fatalf("seed %d, wall %s: %d along the page, not %d", seed, d.Wall.Name, page, d.Along(x))
				}
			}
		}
	}
	if seen < 12 {
		t.Fatalf("only %d rooms", seen)
	}
}

// TestDraw counts what a plan at 48 in cuts of wall A of the bow maker's room:
// nine studs that stay, the jacks and kings that are new, no stud in the
// opening, and notes for the legend what it drew.
func TestDraw(t *testing.T) {
	res := example(t, "bow-makers-room.yaml")
	s := paper.Scale{Ratio: 32}
	sides := Sides(res, s)
	used := map[string]bool{}
	opening := res.Walls[0].Openings[0].Rough.X()
	out := Draw(sides, func(d Side) []geom.Span {
		if d.Wall.Name == "A" {
			return []geom.Span{opening}
		}
		return nil
	}, geom.In(48), s, used)
	if len(out) != 4 {
		t.Fatalf("%d walls", len(out))
	}
	kept, cut := 0, 0
	drawing.Walk(out[:1], false, func(e drawing.Element) {
		p, ok := e.(drawing.Polyline)
		if !ok {
			return
		}
		switch p.Layer {
		case drawing.FrameKept:
			kept++
		case drawing.FrameNew:
			cut++
		default:
			return
		}
		if b := geom.Polygon(p.Points).Bounds(); b.X().Overlaps(opening) {
			t.Errorf("a stud at %.2f in stands in the opening", b.Min.X.Inches())
		}
	})
	wantKept, wantNew := 0, 0
	for _, m := range res.Walls[0].Members {
		if m.Box.H() <= m.Box.W() || !m.Box.Y().Holds(geom.In(48)) || m.Depth > 0 {
			continue
		}
		switch m.State.String() {
		case "new":
			wantNew++
		case "existing":
			wantKept++
		}
	}
	if kept != wantKept || cut != wantNew || kept < 9 || cut < 2 {
		t.Errorf("%d studs kept and %d new, want %d and %d", kept, cut, wantKept, wantNew)
	}
	for _, key := range []string{Masonry, Framed, Stud, New, Lining} {
		if !used[key] {
			t.Errorf("%s is drawn and not noted", key)
		}
	}
	if n := len(Samples(used)); n != 3 {
		t.Errorf("%d lines of legend, want masonry, stud as found, new stud", n)
	}
	if n := len(Samples(map[string]bool{Bare: true})); n != 1 {
		t.Errorf("%d lines of legend for a wall whose studs are not known", n)
	}
}
