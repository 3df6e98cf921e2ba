package dimension

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
)

// Spread keeps the order and the distances, and no arrangement on a grid, tried
// one by one, moves the places less.
func TestSpreadIsLeastSquares(t *testing.T) {
	const grid, steps = 1000, 14
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 4).Draw(t, "n")
		places := make([]geom.Length, n)
		for i := range places {
			places[i] = geom.Length(rapid.IntRange(3, steps-3).Draw(t, "place")) * grid
		}
		slices.Sort(places)
		apart := make([]geom.Length, 0, n)
		for range n - 1 {
			apart = append(apart, geom.Length(rapid.IntRange(0, 3).Draw(t, "apart"))*grid)
		}
		got := Spread(places, apart)
		if len(got) != n {
			t.Fatalf("%d places became %d", n, len(got))
		}
		for i := 1; i < n; i++ {
			if got[i]-got[i-1] < apart[i-1] {
				t.Fatalf("places %v and %v are nearer than %v", got[i-1], got[i], apart[i-1])
			}
		}
		cost := func(list []geom.Length) (sum geom.Length) {
			for i, p := range list {
				sum += (p - places[i]) * (p - places[i])
			}
			return sum
		}
		least := geom.Length(-1)
		try := make([]geom.Length, n)
		var search func(i int, from geom.Length)
		search = func(i int, from geom.Length) {
			if i == n {
				if c := cost(try); least < 0 || c < least {
					least = c
				}
				return
			}
			for p := from; p <= steps*grid; p += grid {
				try[i] = p
				next := p
				if i < len(apart) {
					next += apart[i]
				}
				search(i+1, next)
			}
		}
		search(0, -6*grid)
		// Means are rounded to whole units: at most one unit a place.
		if slack := geom.Length(n) * 2 * steps * grid; least >= 0 && cost(got) > least+slack {
			t.Fatalf("moved %v to %v, cost %v; the grid has %v", places, got, cost(got), least)
		}
	})
}

func TestSpreadLeavesWhatIsFarApart(t *testing.T) {
	in := []geom.Length{0, 100, 250}
	if got := Spread(in, even(3, 100)); !slices.Equal(got, in) {
		t.Errorf("moved to %v", got)
	}
	if got := Spread(nil, nil); len(got) != 0 {
		t.Errorf("nothing became %v", got)
	}
}
