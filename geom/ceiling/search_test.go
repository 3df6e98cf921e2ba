package ceiling

import (
	"slices"
	"testing"

	"roomwright/geom"
	"roomwright/geom/room"

	"pgregory.net/rapid"
)

// TestNoOffsetIsBetter tries every offset of the lines in 1/16 in, both ways
// and with either set of mains, and wants none to beat the search: with lights
// in its first aims, every light on whole modules, then no border short of the
// least; without them in every aim of the borders.
func TestNoOffsetIsBetter(t *testing.T) {
	const step = geom.Inch / 16
	rapid.Check(t, func(t *rapid.T) {
		sixteenths := func(low, high int64, name string) geom.Length {
			return geom.Length(rapid.Int64Range(low*16, high*16).Draw(t, name)) * step
		}
		s := search{module: [2]geom.Length{geom.In(6), geom.In(6)}, every: 2, step: step, close: step, bare: sixteenths(0, 1, "bare") / 2}
		for a := range s.reach {
			in, out := sixteenths(0, 1, "slant"), sixteenths(0, 1, "slant")
			l := sixteenths(4, 40, "length")
			s.reach[a] = reach{lowOut: -in, lowIn: 0, highIn: l, highOut: l + out}
			s.least[a] = sixteenths(0, 6, "least")
		}
		s.hits = func(geom.Rect, geom.Length) bool { return false }
		s.leans = func(geom.Length) bool { return false }
		if n := rapid.IntRange(0, 3).Draw(t, "lights"); n > 0 {
			k := kind{light: &room.Light{}, count: n, size: [2]int{1, 1}}
			if rapid.Bool().Draw(t, "long") {
				k.size[down] = 2
			}
			if rapid.Bool().Draw(t, "placed") {
				k.centre[across] = &centre{at: sixteenths(0, 40, "centre")}
			}
			s.kinds = []kind{k}
		}
		list := s.best()
		checkBest(t, &s, list)
		aimsTried := aimLeast + 1
		if len(s.kinds) == 0 {
			aimsTried = aimBorders + 1 // no aim is left but those of the mains
		}
		found := false
		for x := geom.Length(0); x < s.module[across]; x += step {
			lx, ok := layAt(s.reach[across], s.module[across], x, s.bare)
			if !ok {
				continue
			}
			for d := geom.Length(0); d < s.module[down]; d += step {
				ld, ok := layAt(s.reach[down], s.module[down], d, s.bare)
				if !ok || len(s.kinds) > 0 && d%(4*step) != 0 {
					continue
				}
				for first := range s.every {
					if len(ld.lines) == 1 && first > 0 {
						continue
					}
					found = true
					other := s.weigh(grid{lay: [2]lay{lx, ld}, every: s.every, first: first})
					if len(list) == 0 || slices.Compare(other.score[:aimsTried], list[0].score[:aimsTried]) < 0 {
						t.Fatalf("lines at %v, %v score %v; the search found %d ways", lx.lines, ld.lines, other.score, len(list))
					}
				}
			}
		}
		if found != (len(list) > 0) {
			t.Fatalf("a grid can be laid: %v; the search found %d ways", found, len(list))
		}
	})
}

// checkBest scores every set-out of the search with its lights, and wants the
// first and the runner-up to be those that the search gives.
func checkBest(t *rapid.T, s *search, list []trial) {
	grids := s.grids()
	if (len(grids) == 0) != (len(list) == 0) {
		t.Fatalf("%d set-outs, %d given", len(grids), len(list))
	}
	if len(grids) == 0 {
		return
	}
	every := make([]trial, len(grids))
	for i := range grids {
		every[i] = s.weigh(grids[i].grid)
		if slices.Compare(every[i].score[:], grids[i].score[:]) < 0 {
			t.Fatalf("lights made a score better: %v from %v", every[i].score, grids[i].score)
		}
	}
	slices.SortStableFunc(every, func(t, u trial) int { return slices.Compare(t.score[:], u.score[:]) })
	if every[0].score != list[0].score {
		t.Fatalf("best is %v, got %v", every[0].score, list[0].score)
	}
	p, q := s.runnerUp(every), s.runnerUp(list)
	if (p < 0) != (q < 0) || p >= 0 && every[p].score != list[q].score {
		t.Fatalf("runner-up %d of all, %d of those given", p, q)
	}
}

// TestPatterns: every pattern adds up, and the patterns of five hold the one
// that is alike from both ends.
func TestPatterns(t *testing.T) {
	for n := 1; n <= 24; n++ {
		for _, p := range patterns(n) {
			sum := 0
			for _, k := range p {
				sum += k
			}
			if sum != n || slices.Max(p)-slices.Min(p) > 1 || slices.Min(p) < 1 {
				t.Errorf("pattern %v of %d", p, n)
			}
		}
	}
	if !slices.ContainsFunc(patterns(5), func(p []int) bool { return slices.Equal(p, []int{2, 1, 2}) }) {
		t.Error("no 2, 1, 2 for five lights")
	}
}

// TestRowNames: rows run from P without I and O, then double.
func TestRowNames(t *testing.T) {
	for row, want := range map[int]string{0: "P", 1: "Q", 10: "Z", 11: "PP", 12: "QQ", 22: "PPP"} {
		if got := rowName(row); got != want {
			t.Errorf("row %d: got %s, want %s", row, got, want)
		}
		col, back, ok := cellOf(rowName(row) + "7")
		if !ok || col != 6 || back != row {
			t.Errorf("row %d reads back as %d, %d, %v", row, col, back, ok)
		}
	}
	for _, name := range []string{"", "P", "7", "PQ7", "A1", "P0", "P-1", "p1"} {
		if _, _, ok := cellOf(name); ok {
			t.Errorf("%q was read as a cell", name)
		}
	}
}

// TestTilt holds the formula to a table worked out for this project, in inches.
func TestTilt(t *testing.T) {
	mm := func(v float64) float64 { return v / 25.4 }
	for _, test := range []struct {
		name                                        string
		width, length, thick, a, c, face, tee, want float64
	}{
		{"5/8 panel", 23.75, 23.75, .625, 24, 24, .9375, 1.5, 5.82},
		{"tees 1 high", 23.75, 23.75, .625, 24, 24, .9375, 1, 4.63},
		{"tees 1-11/16 high", 23.75, 23.75, .625, 24, 24, .9375, 1.6875, 6.25},
		{"flanges only", 23.75, 23.75, .625, 24, 24, .9375, 0, 2.18},
		{"face 9/16", 23.75, 23.75, .625, 24, 24, .5625, 1.5, 5.68},
		{"1/2 panel", 23.75, 23.75, .5, 24, 24, .9375, 1.5, 5.39},
		{"1-1/2 light", 23.75, 23.75, 1.5, 24, 24, .9375, 1.5, 8.72},
		{"600 panel, 15 mm", mm(595), mm(595), mm(15), mm(600), mm(600), mm(24), mm(38), mm(146)},
		{"600 light, 10 mm", mm(595), mm(595), mm(10), mm(600), mm(600), mm(24), mm(38), mm(129)},
		{"long panel, a quarter turn", 23.75, 47.75, .625, 24, 48, .9375, 1.5, 4.92},
	} {
		l := func(v float64) geom.Length { return geom.Length(v * float64(geom.Inch)) }
		got := tilt(l(test.width), l(test.length), l(test.thick), l(test.a), l(test.c), l(test.face), l(test.tee)).Inches()
		if got < test.want-.02 || got > test.want+.02 {
			t.Errorf("%s: got %.3f, want %.3f", test.name, got, test.want)
		}
	}
}
