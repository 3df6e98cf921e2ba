package dimension

import (
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// Entries keep their order and their pitch of 4.6, touch nothing, and every
// height stands once.
func TestLadderKeepsOrderAndPitch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := half24()
		var heights []Height
		seen := map[Height]bool{}
		for range rapid.IntRange(1, 9).Draw(t, "heights") {
			h := Height{
				At:   geom.Length(rapid.IntRange(0, 40).Draw(t, "at")) * 40 * geom.Inch / 16,
				Bold: rapid.Bool().Draw(t, "bold"), Accent: rapid.Bool().Draw(t, "accent"),
			}
			seen[h] = true
			h.Word = rapid.SampledFrom([]string{"under plates", "on rough sill", ""}).Draw(t, "word")
			heights = append(heights, h)
		}
		words, figs := LadderWidth(heights, inches())
		l := Ladder{Heights: heights, Scale: s, Show: inches()}
		l.FiguresX = s.Real(words + paper.MM(3) + figs)
		l.SpineX = l.FiguresX + on(s, 5.8)
		e := l.Draw()
		noClash(t, e, s)
		var last geom.Length
		n := 0
		for _, x := range texts(e) {
			box := drawing.TextBox(x, s)
			if box.Min.X < 0 || box.Max.X > l.FiguresX {
				t.Fatalf("%q at %v leaves the columns 0 to %v", x.String, box, l.FiguresX)
			}
			if x.Anchor != drawing.End {
				continue
			}
			if n > 0 && x.At.Y-last < on(s, 4.6) {
				t.Fatalf("%q is %v above the one below", x.String, s.OnPaper(x.At.Y-last).MM())
			}
			last = x.At.Y
			n++
		}
		if n != len(seen) {
			t.Fatalf("%d figures for %d heights", n, len(seen))
		}
	})
}

func TestLadderRingOnlyAtZero(t *testing.T) {
	l := Ladder{SpineX: 100, Scale: half24(), Show: inches(), Heights: []Height{{Word: "finished floor"}, {Word: "top", At: geom.In(90)}}}
	rings := 0
	drawing.Walk(l.Draw(), true, func(e drawing.Element) {
		if a, ok := e.(drawing.Arc); ok {
			rings++
			if a.Center != geom.Pt(100, 0) {
				t.Errorf("ring at %v", a.Center)
			}
		}
	})
	if rings != 1 {
		t.Errorf("%d rings", rings)
	}
	if (Ladder{}).Draw() != nil {
		t.Error("an empty ladder draws")
	}
}
