package dimension

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

func half24() paper.Scale { return paper.Scale{Ratio: 24, Name: `1/2" = 1'-0"`} }

func inches() measure.Show { return measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16} }

// figures returns the dimensions of a drawing in their order.
func figures(e []drawing.Element) []drawing.Dimension {
	var out []drawing.Dimension
	drawing.Walk(e, false, func(e drawing.Element) {
		if d, ok := e.(drawing.Dimension); ok {
			out = append(out, d)
		}
	})
	return out
}

// texts returns every text of a drawing.
func texts(e []drawing.Element) []drawing.Text {
	var out []drawing.Text
	drawing.Walk(e, true, func(e drawing.Element) {
		if t, ok := e.(drawing.Text); ok {
			out = append(out, t)
		}
	})
	return out
}

// lines returns every line of a drawing.
func lines(e []drawing.Element) []drawing.Line {
	var out []drawing.Line
	drawing.Walk(e, true, func(e drawing.Element) {
		if l, ok := e.(drawing.Line); ok {
			out = append(out, l)
		}
	})
	return out
}

// meets reports whether a line passes through a box, by halving it.
func meets(l drawing.Line, r geom.Rect) bool {
	b := geom.Polygon{l.A, l.B}.Bounds()
	switch {
	case b.Max.X <= r.Min.X || b.Min.X >= r.Max.X || b.Max.Y <= r.Min.Y || b.Min.Y >= r.Max.Y:
		return false
	case in(l.A, r), in(l.B, r), l.A.X == l.B.X, l.A.Y == l.B.Y, b.W() < 8 && b.H() < 8:
		return true
	}
	mid := geom.Pt((l.A.X+l.B.X)/2, (l.A.Y+l.B.Y)/2)
	return meets(drawing.Line{A: l.A, B: mid}, r) || meets(drawing.Line{A: mid, B: l.B}, r)
}

func in(p geom.Point, r geom.Rect) bool {
	return p.X > r.Min.X && p.X < r.Max.X && p.Y > r.Min.Y && p.Y < r.Max.Y
}

// ink returns the box that a text fills; figures have nothing below the
// baseline.
func ink(t drawing.Text, s paper.Scale) geom.Rect {
	r := drawing.TextBox(t, s)
	if strings.ContainsAny(t.String, "gjpqy,") {
		return r.Inset(on(s, 0.1))
	}
	if t.Turned {
		r.Max.X = t.At.X
	} else {
		r.Min.Y = t.At.Y
	}
	return r.Inset(on(s, 0.1))
}

// noClash fails when two texts touch or a line passes through a text.
func noClash(t *rapid.T, e []drawing.Element, s paper.Scale) {
	list := texts(e)
	boxes := make([]geom.Rect, len(list))
	for i, x := range list {
		boxes[i] = drawing.TextBox(x, s).Inset(on(s, 0.1))
	}
	for i := range list {
		for j := range i {
			if boxes[i].Overlaps(boxes[j]) {
				t.Fatalf("%q at %v and %q at %v overlap", list[i].String, boxes[i], list[j].String, boxes[j])
			}
		}
		for _, l := range lines(e) {
			if meets(l, ink(list[i], s)) {
				t.Fatalf("a line from %v to %v passes through %q at %v", l.A, l.B, list[i].String, boxes[i])
			}
		}
	}
}

// draws an ascending list of positions, tiny segments among them.
func positions(t *rapid.T, label string) []geom.Length {
	n := rapid.IntRange(1, 12).Draw(t, label+" segments")
	at := geom.Length(rapid.Int64Range(-5000, 5000).Draw(t, label+" start")) * 3175
	out := []geom.Length{at}
	for range n {
		size := rapid.SampledFrom([]int64{0, 1, 3, 40, 96, 192, 200, 700, 2048, 2048, 5000}).Draw(t, label+" size")
		at += geom.Length(size+rapid.Int64Range(0, 9).Draw(t, label+" more")) * 3175
		out = append(out, at)
	}
	return out
}

func flags(t *rapid.T, label string, n int) []bool {
	return rapid.SliceOfN(rapid.Bool(), 0, n).Draw(t, label)
}

// A chain adds up: its figures sum to the figure of its overall (derived:
// differences of positions rounded once from the datum telescope).
func TestFiguresAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := positions(t, "row")
		show := rapid.SampledFrom([]measure.Show{
			inches(), {Form: measure.FeetAndInches, To: geom.Inch / 8}, {Form: measure.MillimetresOnly, To: geom.Millimetre},
		}).Draw(t, "show")
		system := measure.Inches
		if show.Form == measure.MillimetresOnly {
			system = measure.Millimetres
		}
		c := Chain{
			Side: rapid.SampledFrom([]Side{Above, Below, LeftOf, RightOf}).Draw(t, "side"), Scale: half24(), Show: show,
			Datum: geom.Length(rapid.Int64Range(-99999, 99999).Draw(t, "datum")),
			Rows:  []Row{{At: at}, {At: []geom.Length{at[0], at[len(at)-1]}}},
		}
		e, _ := c.Draw()
		var sum, overall geom.Length
		for _, d := range figures(e) {
			v, err := measure.Parse(d.Figure, system)
			if err != nil {
				t.Fatalf("figure %q: %v", d.Figure, err)
			}
			if d.Line != (geom.Point{}) && outOf(c, d) == rowTwo(e, c) {
				overall += v
			} else {
				sum += v
			}
		}
		if sum != overall {
			t.Fatalf("segments sum to %v, the overall says %v", sum, overall)
		}
	})
}

func outOf(c Chain, d drawing.Dimension) geom.Length {
	f := frame{c.Side, c.Object, c.Scale}
	if f.upright() {
		return f.out(d.Line.X)
	}
	return f.out(d.Line.Y)
}

// rowTwo returns the distance of the outermost row.
func rowTwo(e []drawing.Element, c Chain) geom.Length {
	far := geom.Length(0)
	for _, d := range figures(e) {
		far = max(far, outOf(c, d))
	}
	return far
}

// No figure touches another, and no line passes through one, whatever the
// rows; nothing reaches beyond what Draw says it uses.
func TestChainsNeverClash(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.SampledFrom([]paper.Scale{half24(), {Ratio: 4, Name: "1:4"}, {Ratio: 50, Name: "1:50"}}).Draw(t, "scale")
		c := Chain{
			Side: rapid.SampledFrom([]Side{Above, Below, LeftOf, RightOf}).Draw(t, "side"), Scale: s, Show: inches(),
			NamesX: -geom.Metre * 20, Object: geom.Length(rapid.Int64Range(-9999, 9999).Draw(t, "object")) * 1000,
		}
		for i := range rapid.IntRange(1, 4).Draw(t, "rows") {
			at := positions(t, fmt.Sprint("row ", i))
			r := Row{At: at, Also: rapid.Bool().Draw(t, "also"), Merge: rapid.Bool().Draw(t, "merge")}
			r.Quiet, r.Gap, r.Bold = flags(t, "quiet", len(at)), flags(t, "gap", len(at)), flags(t, "bold", len(at))
			if rapid.Bool().Draw(t, "named") {
				r.Name = "kings and door"
			}
			c.Rows = append(c.Rows, r)
		}
		e, outer := c.Draw()
		noClash(t, e, s)
		f := frame{c.Side, c.Object, s}
		for _, x := range e {
			b := drawing.Bounds([]drawing.Element{x}, s)
			far := max(f.out(b.Min.X), f.out(b.Max.X))
			if !f.upright() {
				far = max(f.out(b.Min.Y), f.out(b.Max.Y))
			}
			if far > f.out(outer) {
				t.Fatalf("%T reaches %v beyond the outer edge", x, far-f.out(outer))
			}
		}
	})
}

func row(e []drawing.Element) []string {
	var out []string
	for _, d := range figures(e) {
		out = append(out, d.Figure)
	}
	return out
}

func TestChainFigures(t *testing.T) {
	in := func(v float64) geom.Length { return geom.Length(v * float64(geom.Inch)) }
	at := func(v ...float64) (out []geom.Length) {
		for _, x := range v {
			out = append(out, in(x))
		}
		return out
	}
	for _, c := range []struct {
		name string
		row  Row
		want []string
	}{
		{"end to end", Row{At: at(0, 40.25, 111.25, 143.5)}, []string{"40 1/4", "71", "32 1/4"}},
		{"rounded from the datum, not by piece", Row{At: at(0, 1.0/64*3, 1.0/64*6)}, []string{"1/16", "1/16"}},
		{"quiet segments give no figure", Row{At: at(0, 10, 20), Quiet: []bool{true}}, []string{"10"}},
		{"gaps draw nothing", Row{At: at(0, 10, 20, 35), Gap: []bool{false, true}}, []string{"10", "15"}},
		{"repeats", Row{At: at(0, 9.5, 25.5, 41.5, 57.5, 60), Merge: true}, []string{"9 1/2", "3 × 16 = 48", "2 1/2"}},
		{"two alike are no repeat", Row{At: at(0, 9.5, 25.5, 41.5), Merge: true}, []string{"9 1/2", "16", "16"}},
		{"a repeat does not cross a gap", Row{At: at(0, 16, 32, 48, 64), Merge: true, Gap: []bool{false, false, true}}, []string{"16", "16", "16"}},
		{"bold breaks a repeat", Row{At: at(0, 16, 32, 48, 64), Merge: true, Bold: []bool{true}}, []string{"16", "3 × 16 = 48"}},
		{"coinciding positions", Row{At: at(0, 10, 10, 20)}, []string{"10", "10"}},
		{"nothing", Row{}, nil},
	} {
		e, _ := Chain{Scale: half24(), Show: inches(), Rows: []Row{c.row}}.Draw()
		if got := row(e); !slices.Equal(got, c.want) {
			t.Errorf("%s: figures %q, want %q", c.name, got, c.want)
		}
	}
}

func TestAlsoInFeet(t *testing.T) {
	e, _ := Chain{Scale: half24(), Show: inches(), Rows: []Row{{At: []geom.Length{0, geom.InFrac(182, 1, 4)}, Also: true}}}.Draw()
	var all []string
	for _, x := range texts(e) {
		all = append(all, x.String)
	}
	if want := []string{"182 1/4", ` = 15'-2 1/4"`}; !slices.Equal(all, want) {
		t.Errorf("overall reads %q, want %q", all, want)
	}
}

// Sizes on paper: extension line 1.6 off the object (1/16 in, common drafting
// practice), first row 10 (not under 3/8 in), rows 8 apart (not under 1/4 in).
func TestDistancesOnPaper(t *testing.T) {
	s := half24()
	for _, side := range []Side{Above, Below, LeftOf, RightOf} {
		c := Chain{Side: side, Object: geom.Foot, Scale: s, Show: inches(), Rows: []Row{
			{At: []geom.Length{0, geom.In(40)}}, {At: []geom.Length{0, geom.In(80)}},
		}}
		e, _ := c.Draw()
		d := figures(e)
		f := frame{side, c.Object, s}
		if got := s.OnPaper(outOf(c, d[0])); got != paper.MM(10) {
			t.Errorf("side %d: first row %v mm off", side, got.MM())
		}
		if got := s.OnPaper(outOf(c, d[1]) - outOf(c, d[0])); got != paper.MM(8) {
			t.Errorf("side %d: rows %v mm apart", side, got.MM())
		}
		nearest := geom.Metre
		for _, l := range lines(e) {
			for _, p := range []geom.Point{l.A, l.B} {
				across := p.Y
				if f.upright() {
					across = p.X
				}
				nearest = min(nearest, f.out(across))
			}
		}
		if got := s.OnPaper(nearest); got != paper.MM(1.6) {
			t.Errorf("side %d: extension lines begin %v mm off", side, got.MM())
		}
	}
}

// A line that crosses an inner row breaks there, 1.1 each side.
func TestExtensionBreaksAtInnerRow(t *testing.T) {
	s := half24()
	e, _ := Chain{Side: Above, Scale: s, Show: inches(), Rows: []Row{
		{At: []geom.Length{0, geom.In(80)}}, {At: []geom.Length{0, geom.In(30), geom.In(80)}},
	}}.Draw()
	var spans []geom.Span
	for _, l := range lines(e) {
		if l.A.X == geom.In(30) && l.B.X == geom.In(30) {
			spans = append(spans, geom.Span{From: l.A.Y, To: l.B.Y})
		}
	}
	want := []geom.Span{{From: on(s, 1.6), To: on(s, 8.9)}, {From: on(s, 11.1), To: on(s, 19.6)}}
	if !slices.Equal(spans, want) {
		t.Errorf("pieces %v, want %v", spans, want)
	}
}

func TestInsideStandsOnTheEdges(t *testing.T) {
	s := half24()
	d := Inside(geom.Pt(geom.In(100), geom.In(41)), geom.Pt(geom.In(100), geom.In(77)), true, s, inches())
	if d.Figure != "36" || d.Measure() != geom.In(36) {
		t.Errorf("figure %q of %v", d.Figure, d.Measure())
	}
	if l := d.Picture[0].(drawing.Line); l.A.Y != geom.In(41) || l.B.Y != geom.In(77) {
		t.Errorf("line from %v to %v, not edge to edge", l.A, l.B)
	}
	small := Inside(geom.Pt(0, 0), geom.Pt(geom.In(2), 0), false, s, inches())
	if box := drawing.TextBox(small.Picture[3].(drawing.Text), s); box.Min.X < geom.In(2) {
		t.Errorf("a figure that does not fit stands at %v, inside", box)
	}
}
