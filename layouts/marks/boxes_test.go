package marks

import (
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
)

// TestBucketsAnswerAsAList compares the buckets with looking at every box.
func TestBucketsAnswerAsAList(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := boxes{pitch: 1000}
		var list []geom.Rect
		draw := func(what string) geom.Rect {
			at := func() geom.Length { return geom.Length(rapid.IntRange(-9000, 9000).Draw(t, what)) }
			size := func() geom.Length { return geom.Length(rapid.IntRange(1, 30000).Draw(t, what)) }
			x, y := at(), at()
			if rapid.Bool().Draw(t, "small") {
				return geom.RectOf(x, y, x+1+size()%300, y+1+size()%300)
			}
			return geom.RectOf(x, y, x+size(), y+size())
		}
		for range rapid.IntRange(0, 30).Draw(t, "boxes") {
			r := draw("box")
			list = append(list, r)
			b.add(r)
		}
		keep := rapid.IntRange(0, len(list)).Draw(t, "keep")
		list = list[:keep]
		b.back(keep)
		for range 20 {
			r := draw("asked")
			want := true
			for _, q := range list {
				want = want && !q.Overlaps(r)
			}
			if got := b.clear(r); got != want {
				t.Fatalf("%v among %v: clear %v, want %v", r, list, got, want)
			}
		}
	})
}
