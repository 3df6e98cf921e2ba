package marks

import "roomwright/geom"

// boxes keeps many boxes in square buckets, so that looking for a free place
// costs the same on a large drawing as on a small one.
type boxes struct {
	pitch geom.Length
	at    map[[2]geom.Length][]geom.Rect
	large []geom.Rect // those that would fill too many buckets
	log   []geom.Rect // all, in the order in which they came
}

const (
	bucket  = 12  // millimetres on paper
	buckets = 256 // the most that one box may fill
)

// reach returns the first and the last bucket of a box, each way.
func (b *boxes) reach(r geom.Rect) (x, y [2]geom.Length) {
	down := func(l geom.Length) geom.Length { return l.RoundDown(b.pitch) / b.pitch }
	return [2]geom.Length{down(r.Min.X), down(r.Max.X)}, [2]geom.Length{down(r.Min.Y), down(r.Max.Y)}
}

// add keeps a box.
func (b *boxes) add(r geom.Rect) {
	b.log = append(b.log, r)
	x, y := b.reach(r)
	if many(x, y) {
		b.large = append(b.large, r)
		return
	}
	if b.at == nil {
		b.at = map[[2]geom.Length][]geom.Rect{}
	}
	for i := x[0]; i <= x[1]; i++ {
		for k := y[0]; k <= y[1]; k++ {
			b.at[[2]geom.Length{i, k}] = append(b.at[[2]geom.Length{i, k}], r)
		}
	}
}

// many reports whether a box fills too many buckets.
func many(x, y [2]geom.Length) bool { return (x[1]-x[0]+1)*(y[1]-y[0]+1) > buckets }

// back forgets all boxes but the first n; the last to come is the last in each
// of its buckets.
func (b *boxes) back(n int) {
	for len(b.log) > n {
		r := b.log[len(b.log)-1]
		b.log = b.log[:len(b.log)-1]
		x, y := b.reach(r)
		if many(x, y) {
			b.large = b.large[:len(b.large)-1]
			continue
		}
		for i := x[0]; i <= x[1]; i++ {
			for k := y[0]; k <= y[1]; k++ {
				key := [2]geom.Length{i, k}
				b.at[key] = b.at[key][:len(b.at[key])-1]
			}
		}
	}
}

// clear reports whether r shares no area with any box.
func (b *boxes) clear(r geom.Rect) bool {
	for _, t := range b.large {
		if t.Overlaps(r) {
			return false
		}
	}
	if b.at == nil {
		return true
	}
	x, y := b.reach(r)
	for i := x[0]; i <= x[1]; i++ {
		for k := y[0]; k <= y[1]; k++ {
			for _, t := range b.at[[2]geom.Length{i, k}] {
				if t.Overlaps(r) {
					return false
				}
			}
		}
	}
	return true
}
