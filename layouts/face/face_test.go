package face

import (
	"reflect"
	"slices"
	"testing"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/setout"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

func mm(n int64) geom.Length { return geom.MM(n) }

func rect(l, b, r, t int64) geom.Rect { return geom.RectOf(mm(l), mm(b), mm(r), mm(t)) }

func TestHeightsAreSaidOnce(t *testing.T) {
	var h Heights
	h.Add("structure", mm(2600), false)
	h.Of("under header", "hatch", mm(2000), false)
	h.Of("under header", "way in", mm(2100), false)
	h.Of("under header", "slot", mm(2100), false)
	h.Of("on rough sill", "hatch", mm(900), false)
	h.Of("on rough sill", "slot", mm(900), false)
	h.Of("lower saw cut", "slot", mm(900), true)
	h.Add("door head", mm(2000), false)
	got := h.Merged()
	want := []dimension.Height{
		{Word: "structure", At: mm(2600)},
		{Word: "under header, hatch, door head", At: mm(2000)},
		{Word: "under header, way in", At: mm(2100)},
		{Word: "on rough sill", At: mm(900)},
		{Word: "lower saw cut", At: mm(900), Bold: true, Accent: true},
	}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v, want %+v", got, want)
	}
	if n := len(h.Plain()); n != 4 {
		t.Errorf("%d plain heights, want each of 4 once", n)
	}
}

func TestBrokenLines(t *testing.T) {
	style := drawing.Style{Pen: drawing.P25}
	for _, c := range []struct {
		name  string
		holes []geom.Rect
		want  []geom.Span
	}{
		{"no hole", nil, []geom.Span{{From: 0, To: mm(100)}}},
		{"beside it", []geom.Rect{rect(5, 20, 9, 40)}, []geom.Span{{From: 0, To: mm(100)}}},
		{"in the middle", []geom.Rect{rect(-5, 20, 5, 40)}, []geom.Span{{From: 0, To: mm(20)}, {From: mm(40), To: mm(100)}}},
		{"over the end", []geom.Rect{rect(-5, 70, 5, 140)}, []geom.Span{{From: 0, To: mm(70)}}},
		{"two that overlap", []geom.Rect{rect(-5, 20, 5, 40), rect(-5, 30, 5, 60)}, []geom.Span{{From: 0, To: mm(20)}, {From: mm(60), To: mm(100)}}},
		{"all of it", []geom.Rect{rect(-5, -1, 5, 101)}, nil},
	} {
		var got []geom.Span
		for _, e := range Broken(geom.Pt(0, mm(100)), geom.Pt(0, 0), style, c.holes) {
			l := e.(drawing.Line)
			got = append(got, geom.Span{From: l.A.Y, To: l.B.Y})
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// TestSignsKeepOutOfHoles takes words of every height through a piece that is
// taken out: nothing of it may be drawn where they stand.
func TestSignsKeepOutOfHoles(t *testing.T) {
	s := paper.Full()
	for low := int64(0); low < 60; low += 3 {
		hole := rect(-4, low, 4, low+9)
		for _, e := range Out(rect(0, 0, 2, 60), true, s, hole) {
			if drawing.Bounds([]drawing.Element{e}, s).Overlaps(hole) {
				t.Errorf("words at %d: %+v is drawn into them", low, e)
			}
		}
	}
}

func TestTryUndoes(t *testing.T) {
	p := NewPlaces(paper.Full())
	word := []Line{{Text: "word", Cap: paper.MM(2.4)}}
	if p.Try(func() bool { return p.Words(drawing.Words, word, geom.Point{}) && false }) {
		t.Fatal("a try that failed was taken for done")
	}
	if len(p.Elements) != 0 || !p.Words(drawing.Words, word, geom.Point{}) {
		t.Error("what was tried still holds its place")
	}
	if p.Words(drawing.Words, word, geom.Point{}) {
		t.Error("words stand on words")
	}
}

func TestLabelsKeepApart(t *testing.T) {
	p := NewPlaces(paper.Full())
	stud := rect(0, 0, 2, 80)
	p.Firm(stud)
	for range 12 {
		if !p.Label(Target{Mark: "A1", New: true, Box: stud, Upright: true}) {
			t.Fatal("no place for a label on an empty wall")
		}
	}
	var boxes []geom.Rect
	for _, e := range p.Elements {
		for _, x := range e.(drawing.Group).Elements {
			if a, ok := x.(drawing.Area); ok && a.Fill == drawing.White {
				boxes = append(boxes, geom.Polygon(a.Outline).Bounds())
			}
		}
	}
	for i, a := range boxes {
		if a.Overlaps(stud) {
			t.Errorf("label %d lies on the piece", i)
		}
		for _, b := range boxes[:i] {
			if a.Overlaps(b) {
				t.Errorf("labels %v and %v lie on each other", a, b)
			}
		}
	}
}

func TestSlugsAreUnique(t *testing.T) {
	r := &room.Room{Walls: []room.Wall{{Name: "P Q"}, {Name: "P-Q"}, {Name: "Süd"}, {Name: "N"}}}
	seen := map[string]bool{}
	for i := range r.Walls {
		s := Of(setout.Result{Room: r}, i, paper.Full()).Slug()
		if seen[s] {
			t.Errorf("slug %q twice", s)
		}
		seen[s] = true
	}
}

func TestTimes(t *testing.T) {
	for in, want := range map[string]string{"2x4": "2×4", "38 x 89": "38 × 89", "1/4 hardboard": "1/4 hardboard", "15/32 plywood": "15/32 plywood", "box": "box"} {
		if got := Times(in); got != want {
			t.Errorf("Times(%q) = %q, want %q", in, got, want)
		}
	}
}

// TestWallOfUnknownHeight is drawn without a structure, and as high as a door
// at least.
func TestWallOfUnknownHeight(t *testing.T) {
	r := &room.Room{Walls: []room.Wall{{Name: "A"}, {Name: "B"}}, Show: measure.DefaultShow(measure.Millimetres)}
	f := Of(setout.Result{Room: r}, 0, paper.Full())
	if f.Capped || f.Top < mm(2000) || f.Above() != f.Top {
		t.Errorf("capped %v, %v high, dimensions from %v", f.Capped, f.Top, f.Above())
	}
}
