package marks

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

func linesOf(e []drawing.Element) (out []drawing.Line) {
	drawing.Walk(e, true, func(e drawing.Element) {
		if l, ok := e.(drawing.Line); ok {
			out = append(out, l)
		}
	})
	return out
}

func areasOf(e []drawing.Element) (out []drawing.Area) {
	drawing.Walk(e, true, func(e drawing.Element) {
		if a, ok := e.(drawing.Area); ok {
			out = append(out, a)
		}
	})
	return out
}

func textsOf(e []drawing.Element) (out []drawing.Text) {
	drawing.Walk(e, true, func(e drawing.Element) {
		if x, ok := e.(drawing.Text); ok {
			out = append(out, x)
		}
	})
	return out
}

// A label put beside its target on any side has a straight string of the
// length asked for, with the eye towards the target; its text lies inside it.
func TestLabelBesideHasAStraightString(t *testing.T) {
	s := half24()
	target := geom.Pt(geom.In(40), geom.In(30))
	for _, way := range []Way{Up, Down, LeftWay, RightWay} {
		for _, mark := range []string{"A1", "R12"} {
			at := Beside(mark, true, target, way, paper.MM(5), s)
			g := Label(mark, true, at, s, target)
			l := linesOf(g.Elements)
			if len(l) != 1 || l[0].B != target {
				t.Fatalf("way %d: string %v does not end at %v", way, l, target)
			}
			if l[0].A.X != target.X && l[0].A.Y != target.Y {
				t.Errorf("way %d: the string slants from %v", way, l[0].A)
			}
			box := geom.Polygon(areasOf(g.Elements)[0].Outline).Bounds()
			if w, h := LabelSize(mark, true); box.W() != s.Real(w) || box.H() != s.Real(h) || h != paper.MM(4.6) {
				t.Errorf("label is %v by %v", box.W(), box.H())
			}
			shows := max(box.Min.X-target.X, target.X-box.Max.X, box.Min.Y-target.Y, target.Y-box.Max.Y)
			if d := shows - on(s, 5); d.Abs() > 2 {
				t.Errorf("way %d: the string shows for %v mm", way, s.OnPaper(shows).MM())
			}
			x := drawing.TextBox(textsOf(g.Elements)[0], s)
			if x.Min.X < box.Min.X || x.Max.X > box.Max.X || x.Min.Y < box.Min.Y || x.Max.Y > box.Max.Y {
				t.Errorf("text %v leaves the label %v", x, box)
			}
			eye := areasOf(g.Elements)[len(areasOf(g.Elements))-1]
			if x.Overlaps(geom.Polygon(eye.Outline).Bounds()) {
				t.Errorf("way %d: the text lies on the eye", way)
			}
		}
	}
}

func TestWallLetterIsHeavyTowardsItsWall(t *testing.T) {
	s := half24()
	at := geom.Pt(geom.In(10), geom.In(10))
	for side, where := range map[dimension.Side]func(geom.Point) bool{
		dimension.Above:   func(p geom.Point) bool { return p.Y > at.Y },
		dimension.Below:   func(p geom.Point) bool { return p.Y < at.Y },
		dimension.LeftOf:  func(p geom.Point) bool { return p.X < at.X },
		dimension.RightOf: func(p geom.Point) bool { return p.X > at.X },
	} {
		heavy := linesOf(WallLetter("A", at, side, s).Elements)[0]
		if heavy.Pen != drawing.P100 || !where(heavy.A) || !where(heavy.B) {
			t.Errorf("side %d: heavy line from %v to %v", side, heavy.A, heavy.B)
		}
	}
}

func TestPennantPointsWhereOneLooks(t *testing.T) {
	s := half24()
	at := geom.Pt(geom.In(10), geom.In(10))
	tip := func(w Way) geom.Point { return areasOf(Pennant("X", at, w, s).Elements)[0].Outline[1].Sub(at) }
	for w, want := range map[Way]geom.Point{
		Up: {Y: on(s, 3)}, Down: {Y: -on(s, 3)}, LeftWay: {X: -on(s, 3)}, RightWay: {X: on(s, 3)},
	} {
		if got := tip(w); got != want {
			t.Errorf("way %d: tip at %v, want %v", w, got, want)
		}
		g := Pennant("X", at, w, s)
		x, solid := drawing.TextBox(textsOf(g.Elements)[0], s), geom.Polygon(areasOf(g.Elements)[0].Outline).Bounds()
		if x.Overlaps(solid) {
			t.Errorf("way %d: the letter lies on the triangle", w)
		}
	}
}

func TestSawStrokeStandsBetweenItsNibs(t *testing.T) {
	s := half24()
	x := geom.Span{From: geom.In(46), To: geom.InFrac(47, 1, 2)}
	e := SawStroke(x, geom.In(84), s)
	if l := linesOf(e)[0]; l.A != geom.Pt(x.From, geom.In(84)) || l.B != geom.Pt(x.To, geom.In(84)) || l.Pen != drawing.P70 || !l.Accent {
		t.Errorf("stroke %+v", l)
	}
	nibs := areasOf(e)
	left, right := geom.Polygon(nibs[0].Outline).Bounds(), geom.Polygon(nibs[1].Outline).Bounds()
	if left.Max.X != x.From || right.Min.X != x.To {
		t.Errorf("tips at %v and %v, piece from %v to %v", left.Max.X, right.Min.X, x.From, x.To)
	}
	if w, h := s.OnPaper(left.W()), s.OnPaper(left.H()); w != paper.MM(1.75) || h != paper.MM(1.9) {
		t.Errorf("nib %v by %v mm", w.MM(), h.MM())
	}
}

// Every piece taken out has dashed long sides and crosses about every 8 mm, at
// least one, all over its length.
func TestCrossesOverAPiece(t *testing.T) {
	s := half24()
	rapid.Check(t, func(t *rapid.T) {
		long := geom.Length(rapid.IntRange(1, 300).Draw(t, "long")) * geom.Inch / 2
		upright := rapid.Bool().Draw(t, "upright")
		box := geom.RectOf(0, 0, geom.InFrac(1, 1, 2), long)
		if !upright {
			box = geom.RectOf(0, 0, long, geom.InFrac(1, 1, 2))
		}
		dashed, strokes := 0, 0
		for _, l := range linesOf(Crosses(box, upright, s)) {
			if l.Dash == drawing.Taken {
				dashed++
				if along := l.B.Sub(l.A); upright && along.Y != long || !upright && along.X != long {
					t.Fatalf("a side runs %v", along)
				}
			} else {
				strokes++
			}
		}
		n := strokes / 2
		if dashed != 2 || strokes%2 != 0 || n < 1 {
			t.Fatalf("%d sides, %d strokes", dashed, strokes)
		}
		if pitch := s.OnPaper(long).MM() / float64(n); n > 1 && (pitch < 5.3 || pitch > 12) {
			t.Fatalf("a × every %v mm", pitch)
		}
	})
	if Crosses(geom.Rect{}, true, s) != nil {
		t.Error("an empty piece is drawn")
	}
}

func TestLightPanelStaysInItsBox(t *testing.T) {
	s := half24()
	for _, size := range []geom.Length{geom.Inch, geom.In(6), geom.In(24)} {
		box := geom.RectOf(0, 0, size, 2*size)
		if got := drawing.Bounds(LightPanel(box, s), s); got != box {
			t.Errorf("a panel of %v covers %v", box, got)
		}
	}
	if LightPanel(geom.Rect{}, s) != nil {
		t.Error("an empty panel is drawn")
	}
}

// A scale bar is as long as its last figure says, ends at its point, is at
// most 52 mm long and, but at the smallest scales, at least 15.
func TestScaleBarIsTrue(t *testing.T) {
	at := geom.Pt(geom.MM(200), geom.MM(50))
	for _, metric := range []bool{false, true} {
		scales := paper.InchScales()
		if metric {
			scales = paper.MetricScales()
		}
		for _, s := range scales {
			g := ScaleBar(at, s, metric)
			words := textsOf(g.Elements)
			last := words[len(words)-1].String
			number, unit, _ := strings.Cut(last, " ")
			n := map[string]geom.Length{"1": 1, "2": 2, "4": 4, "5": 5, "6": 6, "8": 8, "10": 10, "12": 12, "16": 16, "20": 20, "32": 32, "50": 50, "100": 100, "200": 200, "500": 500}[number]
			real := n * map[string]geom.Length{"ft": geom.Foot, "in": geom.Inch, "m": geom.Metre, "mm": geom.Millimetre}[unit]
			var bar geom.Rect
			for _, a := range areasOf(g.Elements) {
				bar = bar.Union(geom.Polygon(a.Outline).Bounds())
			}
			left := words[0].At.X
			if got := paper.Length(at.X - left); real == 0 || got != s.OnPaper(real) {
				t.Errorf("%s: %v mm for %s", s.Name, got.MM(), last)
			}
			if bar.Min.X != left || bar.Min.Y != at.Y {
				t.Errorf("%s: bar %v does not begin under its 0", s.Name, bar)
			}
			if mm := paper.Length(at.X - left).MM(); mm > 52 || mm < 15 {
				t.Errorf("%s: bar of %v mm", s.Name, mm)
			}
			var boxes []geom.Rect
			for _, x := range words {
				b := drawing.TextBox(x, paper.Full())
				for _, o := range boxes {
					if o.Overlaps(b) {
						t.Errorf("%s: figures of the bar touch at %q", s.Name, x.String)
					}
				}
				boxes = append(boxes, b)
			}
		}
	}
}

// The words of callouts never touch, each ends in a dot on its target.
func TestCalloutsDoNotTouch(t *testing.T) {
	s := half24()
	rapid.Check(t, func(t *rapid.T) {
		var items []Callout
		for range rapid.IntRange(0, 7).Draw(t, "items") {
			c := Callout{Target: point(t, "target"), Lines: []string{"stub of the old stud, kept"}}
			if rapid.Bool().Draw(t, "two lines") {
				c.Lines = append(c.Lines, "and the other one")
			}
			if rapid.Bool().Draw(t, "mark") {
				c.Mark = "A6"
			}
			items = append(items, c)
		}
		e := Callouts(items, geom.In(150), s)
		var boxes []geom.Rect
		for _, x := range textsOf(e) {
			b := drawing.TextBox(x, s)
			for _, o := range boxes {
				if o.Overlaps(b) {
					t.Fatalf("%q touches another", x.String)
				}
			}
			boxes = append(boxes, b)
		}
		ends := map[geom.Point]int{}
		for _, l := range linesOf(e) {
			ends[l.B]++
		}
		for _, c := range items {
			if ends[c.Target] == 0 {
				t.Fatalf("no line ends at %v", c.Target)
			}
		}
	})
}

func TestCalloutLinesOfNeighboursDoNotCross(t *testing.T) {
	s := half24()
	// The far target lies a little higher, but its line would cut the other's.
	items := []Callout{
		{Lines: []string{"near"}, Target: geom.Pt(geom.In(148), geom.In(50))},
		{Lines: []string{"far"}, Target: geom.Pt(geom.In(20), geom.In(51))},
		{Lines: []string{"last"}, Target: geom.Pt(geom.In(120), geom.In(52))},
	}
	l := linesOf(Callouts(items, geom.In(160), s))
	for i := range l {
		for j := range i {
			a, b := Callout{Target: l[i].B}, Callout{Target: l[j].B}
			if l[i].A == l[j].B || l[i].B == l[j].A {
				continue
			}
			if cut(l[i].A, a.Target, l[j].A, b.Target) {
				t.Errorf("lines to %v and %v cross", l[i].B, l[j].B)
			}
		}
	}
}

// cut reports whether two straight lines cross, by their orientation.
func cut(a, b, c, d geom.Point) bool {
	turn := func(o, p, q geom.Point) float64 {
		return float64(p.X-o.X)*float64(q.Y-o.Y) - float64(p.Y-o.Y)*float64(q.X-o.X)
	}
	return turn(a, b, c)*turn(a, b, d) < 0 && turn(c, d, a)*turn(c, d, b) < 0
}
