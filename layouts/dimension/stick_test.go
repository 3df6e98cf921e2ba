package dimension

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/drawing"
)

// Figures of a stick keep their order and their pitch of 3.9, touch nothing
// and read what the tape reads.
func TestStickKeepsOrderAndPitch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := half24()
		k := Stick{
			Upright: rapid.Bool().Draw(t, "upright"), Flip: rapid.Bool().Draw(t, "flip"),
			From: 0, To: geom.In(200), Scale: s, Show: inches(), NamesX: -geom.Metre * 3,
			Name: []string{"stud marks", "tape hooked at corner F/A"},
		}
		if rapid.Bool().Draw(t, "from the far end") {
			k.Datum = k.To
		}
		if rapid.Bool().Draw(t, "ends the other way") {
			k.From, k.To = k.To, k.From
		}
		for range rapid.IntRange(0, 14).Draw(t, "marks") {
			k.Marks = append(k.Marks, StickMark{
				At:    geom.Length(rapid.IntRange(0, 400).Draw(t, "at")) * geom.Inch / 2,
				Thick: geom.InFrac(1, 1, 2), Bold: rapid.Bool().Draw(t, "bold"), Plain: rapid.Bool().Draw(t, "plain"),
			})
		}
		e, outer := k.Draw()
		noClash(t, e, s)
		want := []geom.Length{0}
		for _, m := range k.Marks {
			want = append(want, (m.At - k.Datum).Abs())
		}
		slices.Sort(want)
		want = slices.Compact(want)
		var got, at []geom.Length
		f := k.frame()
		for _, x := range texts(e) {
			if x.Layer == drawing.Dims && !slices.Contains(k.Name, x.String) {
				v, err := measure.Parse(x.String, measure.Inches)
				if err != nil {
					t.Fatal(err)
				}
				got = append(got, v)
				place := x.At.X
				if k.Upright {
					place = x.At.Y
				}
				at = append(at, place)
			}
			if slices.Contains(k.Name, x.String) {
				continue
			}
			b := drawing.TextBox(x, s)
			far := max(f.out(b.Min.Y), f.out(b.Max.Y))
			if k.Upright {
				far = max(f.out(b.Min.X), f.out(b.Max.X))
			}
			if far > f.out(outer)+2 { // half of a width may be lost to rounding
				t.Fatalf("%q reaches %v beyond the outer edge", x.String, far-f.out(outer))
			}
		}
		for i := 1; i < len(at); i++ {
			if at[i]-at[i-1] < on(s, 3.9) {
				t.Fatalf("figures %v apart on paper", s.OnPaper(at[i]-at[i-1]).MM())
			}
		}
		rings := 0
		drawing.Walk(e, true, func(e drawing.Element) {
			if _, ok := e.(drawing.Arc); ok {
				rings++
			}
		})
		if rings != 1 {
			t.Fatalf("%d rings at one datum", rings)
		}
		slices.Sort(got)
		if !slices.Equal(got, want) {
			t.Fatalf("figures %v, marks at %v", got, want)
		}
	})
}

// A mark has its line at the edge the tape reads and a × on the side where the
// piece lies.
func TestMarkLiesOnTheSideOfThePiece(t *testing.T) {
	for _, thick := range []geom.Length{geom.InFrac(1, 1, 2), -geom.InFrac(1, 1, 2)} {
		at := geom.In(16)
		k := Stick{To: geom.In(40), Scale: half24(), Show: inches(), Marks: []StickMark{{At: at, Thick: thick}}}
		x := 0
		for _, e := range k.mark(k.frame(), k.Marks[0]) {
			l := e.(drawing.Line)
			if l.A.X != l.B.X {
				x++
				lo, hi := min(at, at+thick), max(at, at+thick)
				if min(l.A.X, l.B.X) < lo || max(l.A.X, l.B.X) > hi {
					t.Errorf("× from %v to %v outside the piece", l.A.X, l.B.X)
				}
			}
		}
		if x != 2 {
			t.Errorf("%d strokes for a ×", x)
		}
	}
}
