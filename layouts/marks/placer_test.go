package marks

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

func half24() paper.Scale { return paper.Scale{Ratio: 24, Name: `1/2" = 1'-0"`} }

func point(t *rapid.T, label string) geom.Point {
	at := func(axis string) geom.Length {
		return geom.Length(rapid.IntRange(0, 120).Draw(t, label+axis)) * geom.Inch
	}
	return geom.Pt(at(" x"), at(" y"))
}

// occupied is what a view has drawn before labels are placed.
type occupied struct {
	blocks   []geom.Rect
	elements []drawing.Element
}

func scene(t *rapid.T) occupied {
	var o occupied
	for range rapid.IntRange(0, 6).Draw(t, "blocks") {
		p := point(t, "block")
		o.blocks = append(o.blocks, geom.RectOf(p.X, p.Y, p.X+geom.In(4), p.Y+geom.In(int64(rapid.IntRange(1, 60).Draw(t, "high")))))
	}
	for range rapid.IntRange(0, 6).Draw(t, "texts") {
		o.elements = append(o.elements, drawing.Text{At: point(t, "text"), String: "door, existing", Cap: paper.MM(2.4), Turned: rapid.Bool().Draw(t, "turned")})
	}
	for range rapid.IntRange(0, 6).Draw(t, "lines") {
		pen := rapid.SampledFrom([]drawing.Pen{drawing.P18, drawing.P25, drawing.P50}).Draw(t, "pen")
		o.elements = append(o.elements, drawing.Line{Style: drawing.Style{Pen: pen}, A: point(t, "from"), B: point(t, "to")})
	}
	return o
}

func (o occupied) placer() *Placer {
	p := NewPlacer(half24())
	for _, b := range o.blocks {
		p.Block(b)
	}
	p.BlockElements(o.elements)
	return p
}

// crosses reports whether a straight line passes through a box, by walking
// along it.
func crosses(a, b geom.Point, r geom.Rect) bool {
	const steps = 2000
	for i := range geom.Length(steps + 1) {
		p := geom.Pt(a.X+(b.X-a.X)*i/steps, a.Y+(b.Y-a.Y)*i/steps)
		if p.X > r.Min.X && p.X < r.Max.X && p.Y > r.Min.Y && p.Y < r.Max.Y {
			return true
		}
	}
	return false
}

// What the placer puts down lies on nothing that was there, whatever that is;
// no line of the view runs through it and no string through a text.
func TestPlacerNeverTakesAnOccupiedPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := scene(t)
		p := o.placer()
		s := half24()
		var boxes []geom.Rect // placed so far
		free := func(what string, box geom.Rect, least drawing.Pen) {
			for _, b := range append(o.blocks, boxes...) {
				if b.Overlaps(box) {
					t.Fatalf("%s at %v lies on %v", what, box, b)
				}
			}
			for _, e := range o.elements {
				switch e := e.(type) {
				case drawing.Text:
					if drawing.TextBox(e, s).Overlaps(box) {
						t.Fatalf("%s at %v lies on a text", what, box)
					}
				case drawing.Line:
					if e.Pen >= least && crosses(e.A, e.B, box) {
						t.Fatalf("%s at %v has a line through it", what, box)
					}
				}
			}
		}
		for range rapid.IntRange(1, 5).Draw(t, "labels") {
			target := point(t, "target")
			var candidates []geom.Point
			for range rapid.IntRange(0, 4).Draw(t, "candidates") {
				candidates = append(candidates, point(t, "candidate"))
			}
			g, ok := p.Label("A12", true, target, candidates...)
			if !ok {
				if len(g.Elements) > 0 {
					t.Fatal("no place, but something is drawn")
				}
				continue
			}
			box := geom.Polygon(g.Elements[0].(drawing.Area).Outline).Bounds()
			free("a label", box, drawing.P25)
			for _, e := range g.Elements {
				if l, ok := e.(drawing.Line); ok {
					for _, x := range o.elements {
						if x, ok := x.(drawing.Text); ok && crosses(l.A, l.B, drawing.TextBox(x, s).Inset(on(s, 0.05))) {
							t.Fatalf("a string from %v to %v runs through a text", l.A, l.B)
						}
					}
				}
			}
			boxes = append(boxes, box)
		}
		for range rapid.IntRange(0, 3).Draw(t, "words") {
			e, ok := p.Words([]string{"opening", "clear 66 x 34"}, paper.MM(2.4), false, drawing.Words, point(t, "here"), point(t, "or here"))
			if !ok {
				continue
			}
			box := drawing.Bounds(e, s).Inset(on(s, 0.2)) // the box of a text has air of its own
			free("words", box, drawing.P13)
			boxes = append(boxes, box)
		}
	})
}

func TestPlacerIsDeterministic(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := scene(t)
		a, b := o.placer(), o.placer()
		for range 4 {
			target := point(t, "target")
			g, _ := a.Label("A1", true, target)
			h, _ := b.Label("A1", true, target)
			if !reflect.DeepEqual(g, h) {
				t.Fatal("two placers, two places")
			}
		}
	})
}

func TestPlacerTakesTheFirstFreeCandidate(t *testing.T) {
	s := half24()
	p := NewPlacer(s)
	p.Block(geom.RectOf(0, 0, geom.In(10), geom.In(10)))
	if !p.Free(geom.RectOf(geom.In(10), 0, geom.In(20), geom.In(10))) {
		t.Error("what only touches a block is not free")
	}
	taken, first, second := geom.Pt(geom.In(5), geom.In(5)), geom.Pt(geom.In(50), geom.In(5)), geom.Pt(geom.In(50), geom.In(60))
	target := geom.Pt(geom.In(90), geom.In(5))
	for i, want := range []geom.Point{first, second} {
		target = target.Add(geom.Pt(0, geom.In(5)))
		g, ok := p.Label("A1", true, target, taken, first, second)
		if !ok || geom.Polygon(g.Elements[0].(drawing.Area).Outline).Bounds().Mid() != want {
			t.Errorf("label %d is not at %v", i+1, want)
		}
	}
	if _, ok := p.Label("A1", true, target, taken, first, second); ok {
		t.Error("a third label found a place between two")
	}
}

// A label may lie over a thin line, words may not; a label takes a place
// without one first.
func TestThinLinesKeepWordsAway(t *testing.T) {
	s := half24()
	p := NewPlacer(s)
	on, off := geom.Pt(geom.In(50), geom.In(50)), geom.Pt(geom.In(50), geom.In(80))
	p.BlockElements([]drawing.Element{drawing.Line{Style: drawing.Style{Pen: drawing.P18}, A: geom.Pt(0, geom.In(50)), B: geom.Pt(geom.In(99), geom.In(50))}})
	if _, ok := p.Words([]string{"words"}, paper.MM(2.4), false, drawing.Words, on); ok {
		t.Error("words lie on a thin line")
	}
	target := geom.Pt(geom.In(90), geom.In(60))
	if g, ok := p.Label("A1", true, target, on, off); !ok || geom.Polygon(g.Elements[0].(drawing.Area).Outline).Bounds().Mid() != off {
		t.Error("the label does not take the clear place first")
	}
	if _, ok := p.Label("A1", true, geom.Pt(geom.In(90), geom.In(50)), on); !ok {
		t.Error("the label does not lie over a thin line where there is no other place")
	}
}
